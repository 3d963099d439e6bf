#!/usr/bin/env bash
# panel_agrees.sh NETTARE DOCUMENT [OTHER_DOCUMENT]: fails unless every line of the panel's PDF, as
# pdftotext reads it, is what panel_lines.awk makes of the JSON figures of one portion (of another
# document, to show that the comparison bites).
set -euo pipefail
here=$(CDPATH='' cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd)
nettare=$1
document=$2
figures_document=${3:-$2}
export LC_ALL=C

# need PROGRAM PACKAGE: fails with a sentence where the program is missing.
need() {
    if command -v "$1" >/dev/null; then return; fi
    echo "The program $1 is missing; install the package $2." >&2
    exit 1
}
need sqlite3 sqlite3
need pdftotext poppler-utils
need awk mawk
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT

for basis in portion 100g batch; do
    "$nettare" figures --per "$basis" --json "$figures_document" >"$scratch/$basis.json"
done
(cd -- "$scratch" && sqlite3 -bail :memory: ".read $here/panel_amounts.sql") >"$scratch/amounts"
awk -f "$here/panel_lines.awk" "$scratch/amounts" >"$scratch/wanted"

"$nettare" panel "$document" --rules us --out "$scratch/panel.pdf" >/dev/null
pdftotext -layout "$scratch/panel.pdf" - | tr -s ' ' |
    sed -E -e '/^ ?\*The % Daily Value/,$d' -e 's/^ //' \
        -e '/^(Nutrition Facts|Amount per serving|% Daily Value\*|)$/d' >"$scratch/printed"

wc -l <"$scratch/wanted" | grep -qx '17'
diff "$scratch/wanted" "$scratch/printed"
