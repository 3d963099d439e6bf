#!/usr/bin/env bash
# many_revisions.sh NETTARE KEEP_MANY RUN_MEASURED TABLE [RECIPES...]: kitchens of so many generated
# recipes with 50 kept revisions each (200 and 2,000 by default) are computed anew by `figures --all
# --json`. Says how many revisions a second one and two threads do and how much memory they hold at
# most; fails where a line is missing, where stored figures come out otherwise, or where two threads
# give other bytes than one. 100,000 revisions take some 4 GB in TMPDIR while it runs.
set -euo pipefail
nettare=$1
keep_many=$2
run_measured=$3
table=$4
shift 4
[ $# -gt 0 ] || set -- 200 2000
revisions=50
folder=$(mktemp -d)
trap 'rm -rf -- "$folder"' EXIT
failed=0

# checked JOBS KITCHEN COUNT: the lines go through three checks and are not kept.
checked() {
    "$run_measured" "$nettare" --kitchen "$2" figures --all --json --jobs "$1" \
        2>"$folder/measured" |
        tee >(sha256sum >"$folder/sum.$1") >(grep -c '"kept":' >"$folder/kept" || true) |
        wc -l >"$folder/lines"
    # The lists behind tee may end a moment later.
    while [ ! -s "$folder/sum.$1" ] || [ ! -s "$folder/kept" ]; do sleep 0.05; done
    local lines kept seconds
    lines=$(<"$folder/lines")
    kept=$(<"$folder/kept")
    seconds=$(awk 'END { print $1 }' "$folder/measured")
    echo "$3 revisions, $1 threads: $(awk -v n="$3" -v s="$seconds" \
        'BEGIN { printf "%.0f", n / s }') a second; $(tail -n 1 "$folder/measured")"
    if [ "$lines" -ne "$3" ]; then
        echo "$lines lines for $3 revisions"
        failed=1
    fi
    if [ "$kept" -ne 0 ]; then
        echo "$kept revisions come out otherwise than they were kept"
        failed=1
    fi
    rm -f "$folder/kept"
}

for recipes in "$@"; do
    kitchen=$folder/many-$recipes.nettare
    count=$((recipes * revisions))
    "$run_measured" "$keep_many" "$table" "$kitchen" "$recipes" "$revisions" 2>"$folder/measured"
    echo "$count revisions kept: $(tail -n 1 "$folder/measured"), $(du -m "$kitchen" | cut -f 1) MB"
    rm -f "$folder"/sum.*
    checked 1 "$kitchen" "$count"
    checked 2 "$kitchen" "$count"
    if ! cmp -s "$folder/sum.1" "$folder/sum.2"; then
        echo "two threads give other bytes than one"
        failed=1
    fi
    rm -f "$kitchen"
done
exit $failed
