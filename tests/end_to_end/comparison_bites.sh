#!/usr/bin/env bash
# comparison_bites.sh NETTARE DOCUMENT SHOWN: fails if the comparison still agrees when the second
# calculation reads the scale reading SHOWN as one tenth of its last digit more.
set -euo pipefail
here=$(CDPATH='' cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd)
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT
altered=$scratch/altered.json
point=.
case $3 in *.*) point= ;; esac
sed "s/\"shown\": \"$3\"/\"shown\": \"$3${point}1\"/" "$2" >"$altered"
if cmp -s "$2" "$altered"; then
    echo "No indication of $2 shows $3." >&2
    exit 1
fi
if "$here/figures_agree.sh" "$1" "$2" "$altered" >"$scratch/verdict"; then
    echo "A reading moved by a tenth of its last digit, and the two calculations still agree." >&2
    exit 1
fi
grep -q '^value of NA per portion: the program says' "$scratch/verdict"
