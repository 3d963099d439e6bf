#!/usr/bin/env bash
# bounded_memory.sh WRITE_DOWNLOAD IMPORT_DOWNLOAD RUN_MEASURED MOST_MB MOST_GROWTH_MB FOODS...: imports
# generated downloads like FoodData Central's, of so many foods and 12.5 times as many values. Fails
# where a food or value is missing, where an import holds more than MOST_MB, or where the last holds
# more than MOST_GROWTH_MB above the first. 2,000,000 foods take some 5 GB in TMPDIR while it runs.
set -euo pipefail
write_download=$1
import_download=$2
run_measured=$3
most_mb=$4
most_growth_mb=$5
shift 5
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT
failed=0
first_mb=

for foods in "$@"; do
    values=$((foods * 25 / 2))
    mkdir "$scratch/download"
    "$write_download" "$scratch/download" "$foods" "$values"
    "$run_measured" "$import_download" "$scratch/download" "$scratch/tables" \
        >"$scratch/said" 2>"$scratch/measured"
    echo "$(<"$scratch/said"): $(<"$scratch/measured"), table of \
$(du -m "$scratch/tables" | cut -f 1) MB"
    if ! grep -q "^$foods foods, $values values, .* 0 rejected$" "$scratch/said"; then
        echo "$foods foods and $values values were written"
        failed=1
    fi
    mb=$(sed -n 's/.* \([0-9]*\) MB at most.*/\1/p' "$scratch/measured")
    first_mb=${first_mb:-$mb}
    if [ "$mb" -gt "$most_mb" ]; then
        echo "$mb MB are more than $most_mb"
        failed=1
    fi
    rm -r "$scratch/download" "$scratch/tables"
done
if [ $((mb - first_mb)) -gt "$most_growth_mb" ]; then
    echo "$mb MB are more than $most_growth_mb above $first_mb"
    failed=1
fi
exit $failed
