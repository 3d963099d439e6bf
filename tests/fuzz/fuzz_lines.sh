#!/bin/sh
# fuzz_lines.sh PROGRAM CASES CORPUS [INPUTS]: feeds the reader of lines with the cases and what grows
# out of them, ten million inputs where no number is given.
set -eu

program=$1
cases=$2
corpus=$3
inputs=${4:-10000000}

mkdir -p "$corpus"
grep -v '^# ' "$cases" | sed 's/ | .*//' | awk -v folder="$corpus" '
    { name = folder "/case_" NR; printf "%s", $0 > name; close(name) }'

# 300 bytes are more than any line of a recipe has.
cd "$corpus/.."
exec "$program" "$corpus" -runs="$inputs" -max_len=300 -timeout=5 -print_final_stats=1
