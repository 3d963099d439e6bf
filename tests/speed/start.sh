#!/usr/bin/env bash
# start.sh PROGRAM BARE_WINDOW [ROUNDS]: from the start of the process to the first paint, the
# workbench on the sample beside a bare window of the same toolkit, in turn. Prints the medians, and
# the aim: twice the bare window and 100 ms.
set -euo pipefail
program=$1
bare=$2
rounds=${3:-20}
export QT_QPA_PLATFORM=${QT_QPA_PLATFORM:-offscreen}
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
export XDG_CONFIG_HOME=$folder XDG_DATA_HOME=$folder XDG_STATE_HOME=$folder XDG_CACHE_HOME=$folder

# took COMMAND...: its milliseconds.
took() {
    local before after
    before=$(date +%s%N)
    "$@" >/dev/null 2>&1 || { echo "$1 failed" >&2; exit 1; }
    after=$(date +%s%N)
    echo $(((after - before) / 1000000))
}

median() {
    sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'
}

for ((i = 0; i < rounds; i++)); do
    took "$bare" >>"$folder/bare.ms"
    took "$program" --exit-after-first-paint >>"$folder/program.ms"
done
bare_ms=$(median <"$folder/bare.ms")
program_ms=$(median <"$folder/program.ms")
printf 'bare window %s ms, workbench on the sample %s ms; the aim is %s ms\n' \
    "$bare_ms" "$program_ms" $((2 * bare_ms + 100))
