#!/usr/bin/python3
"""Walks the window through AT-SPI, as a screen reader does, and by the Tab key.

    walk.py PROGRAM_NAME

Says what it found on standard output, one fault a line after "fault:"; exits 1 where there is one.
Every object that takes the focus must have a name; Tab must reach each of them once and come back.
"""
import subprocess
import sys
import time

import pyatspi

PATIENCE_S = 60
# Inside these one thing has the focus at a time: Tab stops once, arrows do the rest.
ONE_STOP = {pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE, pyatspi.ROLE_TREE_TABLE, pyatspi.ROLE_LIST,
            pyatspi.ROLE_MENU_BAR, pyatspi.ROLE_MENU, pyatspi.ROLE_POPUP_MENU,
            pyatspi.ROLE_COMBO_BOX, pyatspi.ROLE_PAGE_TAB_LIST}


def has(node, state):
    return node.getState().contains(state)


def application(name):
    end = time.monotonic() + PATIENCE_S
    while time.monotonic() < end:
        for app in pyatspi.Registry.getDesktop(0):
            if app is not None and app.name == name and app.childCount > 0:
                return app
        time.sleep(0.2)
    sys.exit(f"fault: no accessible program named {name}")


def below(node, inside=False):
    """Every visible object with whether it is inside something of one stop."""
    if node is None:
        return
    yield node, inside
    inside = inside or node.getRole() in ONE_STOP
    for child in node:
        if child is not None and has(child, pyatspi.STATE_VISIBLE):
            yield from below(child, inside)


def words(node):
    return f"{node.getRoleName()} “{node.name}”"


def key(name):
    subprocess.run(["xdotool", "key", "--clearmodifiers", name], check=True)


def focus_window():
    """Without a window manager nobody gives the window the keys."""
    found = subprocess.run(["xdotool", "search", "--onlyvisible", "--name", "Nettare"],
                           check=True, capture_output=True, text=True).stdout.split()
    subprocess.run(["xdotool", "windowfocus", "--sync", found[-1]], check=True)
    time.sleep(0.5)


def focused(app):
    """What Tab stopped at. Cells and viewports say that they have the focus when they do not."""
    found = [n for n, inside in below(app)
             if not inside and has(n, pyatspi.STATE_FOCUSED) and has(n, pyatspi.STATE_FOCUSABLE)]
    return found[-1] if found else None


def in_a_group_visited(stops, visited, stop):
    """One of several to choose from, side by side: Tab stops at the chosen one, arrows do the rest."""
    return (stops[stop].startswith("check box")
            and any(other[:-1] == stop[:-1] and stops.get(other, "").startswith("check box")
                    for other in visited))


def place_of(app, node):
    path = []
    while node is not None and node != app:
        path.append(node.getIndexInParent())
        node = node.parent
    return tuple(reversed(path))


def main():
    app = application(sys.argv[1])
    time.sleep(2)
    focus_window()
    faults = []
    stops = {}
    for node, inside in below(app):
        if not has(node, pyatspi.STATE_FOCUSABLE) or not has(node, pyatspi.STATE_SHOWING):
            continue
        if not node.name.strip():
            faults.append(f"{words(node)} at {place_of(app, node)} has no name")
        if not inside and has(node, pyatspi.STATE_ENABLED):
            stops[place_of(app, node)] = words(node)

    visited = []
    names = {}
    for _ in range(3 * len(stops) + 10):
        key("Tab")
        time.sleep(0.15)
        node = focused(app)
        if node is None:
            faults.append("after Tab nothing has the focus")
            break
        stop = place_of(app, node)
        if visited and stop == visited[0]:
            break
        if stop in visited:
            faults.append(f"Tab comes back to {words(node)} before it went round: a trap")
            break
        visited.append(stop)
        names[stop] = words(node)
    print(f"{len(stops)} focusable objects, {len(visited)} stops of Tab")
    for stop in visited:
        print("  ", names[stop])
    for stop, name in stops.items():
        if stop not in visited and not in_a_group_visited(stops, visited, stop):
            faults.append(f"Tab does not reach {name} at {stop}")
    for fault in faults:
        print("fault:", fault)
    sys.exit(1 if faults else 0)


main()
