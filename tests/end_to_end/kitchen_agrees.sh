#!/usr/bin/env bash
# kitchen_agrees.sh NETTARE SHARE DOCUMENT RECIPE [DOCUMENT RECIPE]...: fails unless documents that
# were added to a new kitchen give the same bytes there, as JSON of all bases and as a panel, the
# kitchen and its backup are whole, and both keep their figures when the table of foods changes.
set -euo pipefail
nettare=$1
share=$2
shift 2
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT
export QT_QPA_PLATFORM=offscreen

documents=()
recipes=()
while [ $# -gt 0 ]; do
    documents+=("$1")
    recipes+=("$2")
    shift 2
done

complain() {
    printf '%s\n' "$1" >&2
    exit 1
}

# figures_of NAME [OPTION]...: of all bases, one after the other.
figures_of() {
    local basis
    for basis in piece portion 100g batch; do
        "$nettare" figures "$@" --per "$basis" --json
    done
}

# same_as_documents KITCHEN [OPTION]...: figures and panels are those taken of the documents before.
same_as_documents() {
    local kitchen=$1 index
    shift
    for index in "${!recipes[@]}"; do
        figures_of "${recipes[index]}" --kitchen "$kitchen" "$@" >"$scratch/figures.json"
        cmp -- "$scratch/figures.json" "$scratch/document$index.json" ||
            complain "${recipes[index]} has other figures in $kitchen."
        "$nettare" --kitchen "$kitchen" panel "${recipes[index]}" "$@" --out "$scratch/panel.pdf" >/dev/null
        cmp -- "$scratch/panel.pdf" "$scratch/document$index.pdf" ||
            complain "${recipes[index]} has another panel in $kitchen."
    done
}

whole() {
    "$nettare" --kitchen "$1" verify >"$scratch/verified" || complain "$1 is not whole."
    grep -qx 'No fault found.' "$scratch/verified"
}

for index in "${!documents[@]}"; do
    figures_of "${documents[index]}" >"$scratch/document$index.json"
    "$nettare" panel "${documents[index]}" --out "$scratch/document$index.pdf" >/dev/null
done

kitchen=$scratch/home.nettare
"$nettare" --kitchen "$kitchen" add "${documents[@]}" >/dev/null
[ "$("$nettare" --kitchen "$kitchen" list | wc -l)" -eq "${#documents[@]}" ] ||
    complain "The list does not show every document that was added."
same_as_documents "$kitchen"
same_as_documents "$kitchen" --revision 1
whole "$kitchen"
backup=$scratch/backup.nettare
"$nettare" --kitchen "$kitchen" backup "$backup" >/dev/null
whole "$backup"
same_as_documents "$backup" --revision 1

# Another table: each energy twice as high.
cp -R -- "$share" "$scratch/share"
chmod -R u+w -- "$scratch/share"
sqlite3 -bail "$scratch/share/starter.table" \
    "UPDATE food_component SET value_per_100g = 2 * value_per_100g WHERE component_id IN
     (SELECT component_id FROM component WHERE tagname LIKE 'ENERC%')"
export NETTARE_SHARE=$scratch/share
for index in "${!documents[@]}"; do
    figures_of "${documents[index]}" >"$scratch/figures.json"
    if cmp -s -- "$scratch/figures.json" "$scratch/document$index.json"; then
        complain "The changed table does not change ${documents[index]}, so this shows nothing."
    fi
done
same_as_documents "$kitchen"
same_as_documents "$kitchen" --revision 1
same_as_documents "$backup" --revision 1
