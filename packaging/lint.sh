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

# big_sources: what the preset clang gathers the sources of a target into. What AUTOMOC writes is
# none of them.
big_sources() {
    sed -n 's|^ *"file": "\(.*/Unity/unity_[^"]*\)".*|\1|p' "$root/build/clang/compile_commands.json"
}

# sources_with_using: compiled sources that take over a name or a namespace; planted ones are not compiled.
sources_with_using() {
    local file
    all_sources cpp |
        (cd -- "$root" && xargs grep -lE '^ *(using [^=]*::[^=]*;|namespace [a-z]+ =)') |
        while read -r file; do
            if grep -qF "\"file\": \"$root/$file\"" "$root/build/single/compile_commands.json"; then
                echo "$file"
            fi
        done
}

# tidy_each LIST OPTION...: clang-tidy with these options on every file that LIST names.
tidy_each() {
    local list=$1
    shift
    echo "clang-tidy reads $(wc -l <"$list") files"
    (cd -- "$root" && xargs -d '\n' -n 1 -P "$CMAKE_BUILD_PARALLEL_LEVEL" \
        clang-tidy-14 --quiet "$@" <"$list")
}

# Nearly all the time of reading a source goes into the headers of Qt and of the standard library, so
# clang-tidy reads few big sources. Configuring is enough, since no source includes a generated file.
# The check left out is about including a .cpp file, which is what a big source does; the two named
# last look at no file but the one that is read, so those that matter to them are read alone.
check_tidy() {
    local folder=$root/build/clang
    local status=0
    in_root cmake --preset clang && in_root cmake --preset single || return
    big_sources >"$folder/big_sources.txt"
    sources_with_using >"$folder/sources_with_using.txt"
    tidy_each "$folder/big_sources.txt" -p build/clang --checks=-bugprone-suspicious-include || status=1
    tidy_each "$folder/sources_with_using.txt" -p build/single \
        --checks='-*,misc-unused-using-decls,misc-unused-alias-decls' || status=1
    return "$status"
}

check_format() {
    all_sources cpp h | (cd -- "$root" && xargs -r clang-format-14 --dry-run --Werror)
}

check_scripts() {
    (cd -- "$root" && shellcheck --external-sources packaging/*.sh tests/*/*.sh .ci/run)
}
