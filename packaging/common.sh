# shellcheck shell=bash
# What run.sh and test.sh share; sourced, not run. Sets `root`, the folder of the source tree.

root=$(CDPATH='' cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd)

# cmake --build runs as many compilers as there are cores unless this is set already.
export CMAKE_BUILD_PARALLEL_LEVEL=${CMAKE_BUILD_PARALLEL_LEVEL:-$(nproc)}
if command -v ccache >/dev/null; then
    export CMAKE_CXX_COMPILER_LAUNCHER=${CMAKE_CXX_COMPILER_LAUNCHER-ccache}
fi

# stop SENTENCE: says why the script cannot go on, and ends it.
stop() {
    printf '%s: %s\n' "${0##*/}" "$1" >&2
    exit 1
}

# in_root COMMAND...: runs it in the source tree; what it reads is never the terminal.
in_root() {
    (cd -- "$root" && "$@" </dev/null)
}

# packages_of GROUP...: the package names of these groups, one a line.
packages_of() {
    local group
    for group in "$@"; do
        awk -v group="[$group]" '
            /^\[/ { inside = $1 == group; next }
            inside && NF && !/^#/ { print $1 }' "$root/packaging/packages.txt"
    done
}

# as_root COMMAND...: runs it as root, through sudo where we are somebody else.
as_root() {
    if [ "$(id -u)" -eq 0 ]; then
        "$@" </dev/null
    else
        sudo -- "$@"
    fi
}

# install_packages GROUP...: installs what is missing of these groups; touches no network else.
install_packages() {
    local package
    local missing=()
    command -v dpkg-query >/dev/null ||
        stop "dpkg-query was not found; this script needs Debian 12."
    for package in $(packages_of "$@"); do
        if [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" != installed ]; then
            missing+=("$package")
        fi
    done
    if [ "${#missing[@]}" -eq 0 ]; then return; fi
    if [ "$(id -u)" -ne 0 ] && ! command -v sudo >/dev/null; then
        stop "these packages are missing and sudo is not there to install them: ${missing[*]}."
    fi
    echo "Installing ${missing[*]}"
    export DEBIAN_FRONTEND=noninteractive
    as_root apt-get -q update ||
        stop "the list of Debian packages could not be renewed; is the network there?"
    as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -y --no-install-recommends \
        -o DPkg::Lock::Timeout=300 install "${missing[@]}" ||
        stop "apt-get could not install ${missing[*]}."
}
