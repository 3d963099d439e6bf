#!/usr/bin/env bash
# all_figures_end.sh NETTARE KITCHEN: `figures --all` into a disk that is full and to a reader that
# leaves. Either ends the run with exit code 1 and a sentence; where nobody asked for more than the
# system's way, a reader that leaves ends it in silence.
set -uo pipefail
nettare=$1
folder=$(mktemp -d)
trap 'rm -rf -- "$folder"' EXIT
cp "$2" "$folder/home.nettare"
chmod u+w "$folder/home.nettare"
sentence="nettare: standard output: this file cannot be written, the disk may be full or its reader gone; nothing was changed there."

# refused WHAT CODE: the run said the sentence and ended with 1.
refused() {
    if [ "$2" -ne 1 ] || [ "$(cat "$folder/err")" != "$sentence" ]; then
        echo "$1: exit code $2, $(cat "$folder/err")"
        exit 1
    fi
}

"$nettare" --kitchen "$folder/home.nettare" figures --all --json >/dev/full 2>"$folder/err"
refused "a full disk" $?

mkfifo "$folder/pipe"
(
    trap '' PIPE
    "$nettare" --kitchen "$folder/home.nettare" figures --all --json >"$folder/pipe" \
        2>"$folder/err"
    echo $? >"$folder/code"
) &
: <"$folder/pipe" # opens it, reads nothing and leaves
wait
refused "a reader that left" "$(cat "$folder/code")"

lines=$("$nettare" --kitchen "$folder/home.nettare" figures --all --json 2>"$folder/err" |
    head -n 1 | wc -l)
if [ "$lines" -ne 1 ] || [ -s "$folder/err" ]; then
    echo "one line was asked for and $lines came: $(cat "$folder/err")"
    exit 1
fi
