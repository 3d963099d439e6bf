#!/usr/bin/env bash
# run_part.sh SUITE PART OF: one process that runs every OF-th test case of a Catch2 suite, from the
# PART-th on (1 is the first). Where a start costs more than most cases do, as under AddressSanitizer,
# a few parts take far less time than a process for each case. How long each case took is printed, so
# that the case after the last one named is where a process died.
set -euo pipefail

suite=$1
part=$2
of=$3
names=$(mktemp)
trap 'rm -f -- "$names"' EXIT

# names_of OPTION...: the cases that these choose, one a line. Catch2 exits with their number.
names_of() {
    "$suite" "$@" --list-test-names-only || true
}

# A name may hold what ends a name for Catch2.
names_of | awk -v part="$part" -v of="$of" 'NR % of == part % of' | sed -e 's/[\\",]/\\&/g' >"$names"
wanted=$(wc -l <"$names")
found=$(names_of --input-file "$names" | wc -l)
if [ "$wanted" -eq 0 ] || [ "$wanted" -ne "$found" ]; then
    echo "$suite: of the $wanted cases of part $part, $found were found by name." >&2
    exit 1
fi
"$suite" --input-file "$names" --durations yes
