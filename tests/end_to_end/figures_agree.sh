#!/usr/bin/env bash
# figures_agree.sh NETTARE DOCUMENT [SECOND_DOCUMENT]: fails unless the program's figures of the
# document agree with those of the second calculation, in SQL, of the same document (or of another,
# to show that the comparison bites): all components, all bases, value, bounds and known share.
set -euo pipefail
here=$(CDPATH='' cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd)
nettare=$1
document=$2
second_document=${3:-$2}

if ! command -v sqlite3 >/dev/null; then
    echo "The program sqlite3 is missing; install the package sqlite3." >&2
    exit 1
fi
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT

{
    separator='['
    for basis in piece portion 100g batch; do
        printf '%s' "$separator"
        "$nettare" figures --per "$basis" --json "$document"
        separator=','
    done
    printf ']'
} >"$scratch/figures.json"

cd -- "$here/../data/end_to_end"
sqlite3 -bail -cmd ".parameter set :document \"'$second_document'\"" :memory: \
    ".read $here/second_calculation.sql" >"$scratch/second.csv"

sqlite3 -bail -cmd ".parameter set :figures \"'$scratch/figures.json'\"" \
    -cmd ".import --csv $scratch/second.csv second" :memory: \
    ".read $here/compare_figures.sql" | tee "$scratch/verdict"
grep -qx '656 of 656 numbers agree' "$scratch/verdict"
