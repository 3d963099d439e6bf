#!/usr/bin/env bash
# Installs what is missing, builds the program and runs it.
#   packaging/run.sh                     opens the workbench; without a display it shows the demo
#                                        and writes its panels as PDF
#   packaging/run.sh -- ARGUMENTS...     runs nettare with these arguments
set -euo pipefail
# shellcheck source=packaging/common.sh
. "$(dirname -- "${BASH_SOURCE[0]}")/common.sh"

program=$root/build/release/bin/nettare

build_program() {
    local log=$root/build/release.log
    mkdir -p "$root/build"
    if [ ! -x "$program" ]; then
        echo "Building nettare; the first time takes some minutes." >&2
    fi
    in_root cmake --preset release >"$log" 2>&1 ||
        { cat "$log" >&2; stop "the release build could not be configured; the reason stands above."; }
    in_root cmake --build --preset release >"$log" 2>&1 ||
        { cat "$log" >&2; stop "the program did not compile; the reason stands above."; }
    [ -x "$program" ] || stop "the build made no program $program."
}

has_display() {
    [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]
}

show_demo() {
    local folder=$root/build/demo
    mkdir -p "$folder"
    "$program" demo --out "$folder" || stop "the demo failed with exit code $?."
    find "$folder" -name '*.pdf' -exec printf 'Panel written: %s\n' '{}' +
}

if [ $# -gt 0 ] && [ "$1" != -- ]; then
    stop "arguments for nettare stand after --, as in: packaging/run.sh -- demo --out FOLDER."
fi
if [ $# -gt 0 ]; then shift; fi

install_packages build >&2
build_program
if [ $# -gt 0 ]; then
    if ! has_display; then export QT_QPA_PLATFORM=${QT_QPA_PLATFORM:-offscreen}; fi
    exec "$program" "$@"
fi
if has_display; then exec "$program"; fi
export QT_QPA_PLATFORM=${QT_QPA_PLATFORM:-offscreen}
show_demo
