#!/usr/bin/env bash
# walk.sh PROGRAM SHARE_FOLDER: opens the workbench on a screen of its own, with a message bus and
# an accessibility bus of their own, and walks it (walk.py). Exits 77 where a tool is missing.
set -euo pipefail
program=$1
share=$2
here=$(CDPATH='' cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd)

launcher=/usr/libexec/at-spi-bus-launcher
for tool in Xvfb xdotool dbus-run-session dbus-send "$launcher"; do
    command -v "$tool" >/dev/null || { echo "$tool is not installed."; exit 77; }
done
/usr/bin/python3 -c 'import pyatspi' 2>/dev/null || { echo "pyatspi is not installed."; exit 77; }

if [ -z "${WALK_INSIDE:-}" ]; then
    folder=$(mktemp -d)
    trap 'kill "$screen" 2>/dev/null || true; rm -rf "$folder"' EXIT
    mkfifo "$folder/number"
    Xvfb -displayfd 3 -screen 0 1280x800x24 -nolisten tcp 3>"$folder/number" 2>/dev/null &
    screen=$!
    read -r number <"$folder/number"
    env -u WAYLAND_DISPLAY DISPLAY=":$number" WALK_INSIDE=1 HOME="$folder" \
        XDG_CONFIG_HOME="$folder/config" XDG_DATA_HOME="$folder/data" \
        XDG_STATE_HOME="$folder/state" XDG_CACHE_HOME="$folder/cache" \
        XDG_RUNTIME_DIR="$folder" \
        dbus-run-session -- "$0" "$program" "$share"
    exit
fi

"$launcher" --launch-immediately &
dbus-send --session --print-reply --dest=org.a11y.Bus /org/a11y/bus \
    org.freedesktop.DBus.Properties.Set string:org.a11y.Status string:IsEnabled \
    variant:boolean:true >/dev/null
QT_QPA_PLATFORM=xcb QT_LINUX_ACCESSIBILITY_ALWAYS_ON=1 NETTARE_SHARE=$share "$program" &
window=$!
status=0
/usr/bin/python3 "$here/walk.py" nettare || status=$?
kill "$window" 2>/dev/null || true
wait "$window" 2>/dev/null || true
exit "$status"
