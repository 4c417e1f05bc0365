"""Reads the window as a screen reader does, over AT-SPI; exits 1 with what is wrong."""

import os
import subprocess
import sys
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, Gio, GLib  # noqa: E402

PROGRAM, CLUB = sys.argv[1:3]
PLACES = ["Session", "People", "Boards", "Checks", "Print"]
# What can be pressed, typed in or chosen must have a name.
ACTING = {
    Atspi.Role.PUSH_BUTTON,
    Atspi.Role.TOGGLE_BUTTON,
    Atspi.Role.CHECK_BOX,
    Atspi.Role.RADIO_BUTTON,
    Atspi.Role.ENTRY,
    Atspi.Role.COMBO_BOX,
    Atspi.Role.LIST_ITEM,
    Atspi.Role.PAGE_TAB,
    Atspi.Role.SLIDER,
    Atspi.Role.SPIN_BUTTON,
    Atspi.Role.MENU_ITEM,
    Atspi.Role.LINK,
}
wrong = []
heard = []


def bus_is_on():
    """Tells programs that a screen reader is there, as one does when it starts."""
    bus = Gio.bus_get_sync(Gio.BusType.SESSION)
    for name in ("IsEnabled", "ScreenReaderEnabled"):
        value = GLib.Variant("(ssv)", ("org.a11y.Status", name, GLib.Variant("b", True)))
        bus.call_sync(
            "org.a11y.Bus",
            "/org/a11y/bus",
            "org.freedesktop.DBus.Properties",
            "Set",
            value,
            None,
            Gio.DBusCallFlags.NONE,
            10_000,
        )


def nodes(node):
    """A node and all below it, in the order of the tree."""
    yield node
    for i in range(node.get_child_count()):
        child = node.get_child_at_index(i)
        if child is not None:
            yield from nodes(child)


def wait(seconds):
    """Lets events come in for a while."""
    context = GLib.MainContext.default()
    end = time.time() + seconds
    while time.time() < end:
        while context.pending():
            context.iteration(False)
        time.sleep(0.02)


def window():
    """The program's root, once it is there."""
    for _ in range(80):
        desktop = Atspi.get_desktop(0)
        for i in range(desktop.get_child_count()):
            app = desktop.get_child_at_index(i)
            if app is not None and app.get_child_count() > 0:
                return app
        wait(0.5)
    sys.exit("spoken: no program appeared on the accessibility bus")


def key(*names):
    subprocess.run(["xdotool", "key", "--clearmodifiers", *names], check=True)
    wait(1.2)


def named(app, part, role=None):
    for n in nodes(app):
        if part in (n.get_name() or "") and role in (None, n.get_role()):
            return n
    return None


def look_at(app, place):
    """Every control of a place has a name; names of what can be pressed are not all the same."""
    count = 0
    for n in nodes(app):
        role = n.get_role()
        if role not in ACTING:
            continue
        count += 1
        if not (n.get_name() or "").strip():
            wrong.append(f"{place}: a {n.get_role_name()} without a name")
    tab = named(app, f"{place}: ", Atspi.Role.PAGE_TAB)
    if tab is None:
        wrong.append(f"{place}: its tab is not read")
    elif not tab.get_state_set().contains(Atspi.StateType.SELECTED):
        wrong.append(f"{place}: its tab is not said to be chosen")
    if count < 10:
        wrong.append(f"{place}: only {count} controls are read")
    return count


def board(app):
    """The board is read as a list, each step with its number."""
    steps = [n.get_name() for n in nodes(app) if ", step " in (n.get_name() or "")]
    for i, name in enumerate(steps):
        if f"step {i + 1} of {len(steps)}" not in name:
            wrong.append(f"the board: “{name}” is not step {i + 1} of {len(steps)}")
    if len(steps) < 5:
        wrong.append(f"the board: only {len(steps)} steps are read")
    return steps


def on_event(event):
    source = event.source
    text = event.any_data if isinstance(event.any_data, str) else ""
    heard.append(f"{event.type}: {text or (source.get_name() if source else '')}")


def main():
    bus_is_on()
    listener = Atspi.EventListener.new(on_event)
    for kind in ("object:announcement", "object:text-changed", "object:property-change"):
        listener.register(kind)
    program = subprocess.Popen([PROGRAM, "open", CLUB], stdout=subprocess.DEVNULL)
    try:
        app = window()
        wait(3)
        found = subprocess.run(
            ["xdotool", "search", "--name", "aystrand"], capture_output=True, text=True, check=True
        )
        subprocess.run(["xdotool", "windowfocus", found.stdout.split()[-1]], check=True)
        counts = {}
        for i, place in enumerate(PLACES):
            key(f"ctrl+{i + 1}")
            counts[place] = look_at(app, place)
        key("ctrl+3")
        before = board(app)
        # The keyboard goes to the strand, on to the second step, and the step is moved.
        for _ in range(10):
            focused = [n for n in nodes(app) if n.get_state_set().contains(Atspi.StateType.FOCUSED)]
            if any(", step " in (n.get_name() or "") for n in focused):
                break
            key("F6")
        else:
            wrong.append("the board: F6 does not reach it")
        key("Right")
        heard.clear()
        key("alt+Right")
        after = board(app)
        first = before[1].split(",")[0]
        if not after[2].startswith(first):
            wrong.append(f"the board: {first} did not move: {after[:4]}")
        told = f"{first} moved before {after[3].split(',')[0]}, 3 of {len(after)}"
        if not any(told in h for h in heard):
            wrong.append(f"the board: “{told}” is not announced: {heard[:6]}")
        print(f"read over AT-SPI: {counts}, a board of {len(after)} steps, a move announced")
    finally:
        program.terminate()
    if program.wait(10) not in (0, -15):
        wrong.append(f"the program ended with {program.returncode}")
    if wrong:
        sys.exit("spoken:\n  " + "\n  ".join(dict.fromkeys(wrong)))


main()
