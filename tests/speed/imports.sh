#!/usr/bin/env bash
# imports.sh IMPORT_ONCE RUN_MEASURED ZIP: how long an import of SR28 takes beside the bare .import of
# the same seven files by the sqlite3 shell, into plain tables of one file; best of three, in turn.
set -euo pipefail
import_once=$1 run_measured=$2 zip=$(realpath -- "$3")
folder=$(mktemp -d)
trap 'rm -rf -- "$folder"' EXIT
mkdir "$folder/sr28"
(cd "$folder/sr28" && cmake -E tar xf "$zip")

declare -A fields=([FOOD_DES]=14 [NUT_DATA]=18 [WEIGHT]=7 [NUTR_DEF]=6 [FD_GROUP]=2 [SRC_CD]=2
                   [DERIV_CD]=2)
{
    echo '.mode list'
    printf '.separator ^ \\n\n'
    for file in "${!fields[@]}"; do
        echo "CREATE TABLE $file ($(seq -s, -f 'f%g' "${fields[$file]}"));"
        echo ".import $folder/sr28/$file.txt $file"
    done
} >"$folder/bare.sql"

# Prints "seconds MB" of a run.
measured() { "$run_measured" "$@" 2>&1 >/dev/null | awk 'END { print $1, $(NF - 3) }'; }

for _ in 1 2 3; do
    rm -rf "$folder/bare.db" "$folder/tables"
    echo bare "$(measured sqlite3 -init "$folder/bare.sql" "$folder/bare.db" 'SELECT 1')"
    echo zip "$(measured "$import_once" "$zip" "$folder/tables")"
    rm -rf "$folder/tables"
    echo folder "$(measured "$import_once" "$folder/sr28" "$folder/tables")"
done | awk '
    !($1 in best) || $2 < best[$1] { best[$1] = $2 }
    $3 > most[$1] { most[$1] = $3 }
    END {
        printf "bare .import by sqlite3: %.2f s\n", best["bare"]
        printf "import of the zip: %.2f s, %.2f of that, %d MB at most (bar: 2, 200 MB)\n",
            best["zip"], best["zip"] / best["bare"], most["zip"]
        printf "import of the folder: %.2f s, %.2f of that, %d MB at most\n",
            best["folder"], best["folder"] / best["bare"], most["folder"]
    }'
