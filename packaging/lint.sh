# shellcheck shell=bash disable=SC2154
# The checks of the stage "lint" of test.sh; sourced, not run. Needs `root` from common.sh.

# A checkout may belong to another user than the one who tests it.
project_git() {
    git -c safe.directory="$root" -C "$root" "$@"
}

# all_sources SUFFIX...: paths of the project's own files, from git or, without it, from the folders.
all_sources() {
    local suffix
    for suffix in "$@"; do
        project_git ls-files -- "*.$suffix" 2>/dev/null ||
            in_root find core db app tests -name "*.$suffix"
    done
}

# lint_base: the commit with which "changed" compares; nothing where every file is meant.
lint_base() {
    local base
    if [ "${LINT_ALL:-}" = 1 ]; then return; fi
    if [ -n "${LINT_BASE:-}" ]; then
        echo "$LINT_BASE"
        return
    fi
    base=$(project_git merge-base HEAD origin/main 2>/dev/null) || base=
    if [ -n "$base" ] && [ "$base" != "$(project_git rev-parse HEAD)" ]; then
        echo "$base"
        return
    fi
    project_git rev-parse --quiet --verify HEAD~20 2>/dev/null || true
}

# sources_to_tidy: changed .cpp files, and those beside a changed header.
sources_to_tidy() {
    local base
    base=$(lint_base)
    if [ -z "$base" ]; then
        all_sources cpp
    else
        project_git diff --name-only --diff-filter=d "$base" -- '*.cpp' '*.h' |
            sed 's/\.h$/.cpp/' | sort -u
    fi
}

# Planted and generated files are in no compile command of their own, and left out by that.
check_tidy() {
    local commands=$root/build/clang/compile_commands.json
    local list=$root/build/clang/sources_to_tidy.txt
    local file
    sources_to_tidy | while read -r file; do
        if grep -qF "\"file\": \"$root/$file\"" "$commands"; then echo "$file"; fi
    done >"$list"
    echo "clang-tidy reads $(wc -l <"$list") files"
    (cd -- "$root" && xargs -r -n 1 -P "$CMAKE_BUILD_PARALLEL_LEVEL" \
        clang-tidy-14 -p build/clang --quiet <"$list")
}

check_format() {
    all_sources cpp h | (cd -- "$root" && xargs -r clang-format-14 --dry-run --Werror)
}

check_scripts() {
    (cd -- "$root" && shellcheck --external-sources packaging/*.sh tests/*/*.sh .ci/run)
}
