#!/usr/bin/env bash
# comparison_bites.sh SCRIPT NETTARE DOCUMENT SHOWN OTHER: fails unless SCRIPT names a difference
# when one side reads the document with the indication SHOWN changed to OTHER.
set -euo pipefail
here=$(CDPATH='' cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd)
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT
sed "s/\"shown\": \"$4\"/\"shown\": \"$5\"/" "$3" >"$scratch/altered.json"
if cmp -s "$3" "$scratch/altered.json"; then
    echo "No indication of $3 shows $4." >&2
    exit 1
fi
if "$here/$1" "$2" "$3" "$scratch/altered.json" >"$scratch/verdict"; then
    echo "An indication changed from $4 to $5, and $1 still agrees." >&2
    exit 1
fi
grep -Eq '^< |: the program says ' "$scratch/verdict"
