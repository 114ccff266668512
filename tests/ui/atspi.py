# SPDX-License-Identifier: GPL-3.0-or-later
"""What a screen reader is told, over its own bus (AT-SPI): every label in sight of every page is
heard by the words that it shows. atspi.py PROGRAM LOG, inside a session bus and with a display."""
import os
import shutil
import subprocess
import sys
import tempfile
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi  # noqa: E402

PAGES = ["1 Session", "T Stations", "R Overview", "2 Lines", "3 History", "4 Comparison", "5 Season", "M Whole season",
         "6 Battery", "7 Plan",
         "8 Changes", "9 Blocks", "U What is due", "0 Noise and devices"]  # as the menu Go has them
PARTS = {"Floor": 2, "Athlete": 8, "Squad": 4}  # and how many pages each has
MAY_BE_SILENT = {"Messages", "Answer to the typed line"}  # nothing to say is nothing to hear
WAIT = 60  # s; watched by the sanitizers a start takes some
Atspi.set_timeout(WAIT * 1000, WAIT * 1000)  # a page is built when it is first shown, on a machine that does more


def within(what):
    until = time.monotonic() + WAIT
    while time.monotonic() < until:
        found = what()
        if found:
            return found
        time.sleep(0.1)
    sys.exit("waited in vain: " + what.__name__)


def below(node):
    yield node
    if node.get_role() in (Atspi.Role.TABLE, Atspi.Role.TREE_TABLE, Atspi.Role.COMBO_BOX):
        return  # hundreds of cells, and no label
    for i in range(node.get_child_count()):
        child = node.get_child_at_index(i)
        if child is not None:
            yield from below(child)


def has(node, state):
    return node.get_state_set().contains(state)


def window_on_the_bus():
    desktop = Atspi.get_desktop(0)
    for i in range(desktop.get_child_count()):
        app = desktop.get_child_at_index(i)
        if app is not None and "lopebook" in (app.get_name() or "") and app.get_child_count() > 0:
            return app.get_child_at_index(0)
    return None


def entries_of(window):
    return {node.get_name(): node for node in below(window)
            if node.get_role() == Atspi.Role.MENU_ITEM and node.get_name() in PAGES}


def parts_of(window):
    for node in below(window):
        if (node.get_role() == Atspi.Role.PAGE_TAB and node.get_name() in PARTS
                and has(node, Atspi.StateType.SHOWING)):
            yield node


def rows_of_index(window):
    for node in below(window):
        if node.get_role() == Atspi.Role.LIST and node.get_name() == "Index":
            return [node.get_child_at_index(i) for i in range(node.get_child_count())]
    return []


def walk_index(window):
    """The three parts are heard, and in each its pages, the shown one as chosen."""
    wrong = []
    parts = list(parts_of(window))
    if [part.get_name() for part in parts] != list(PARTS):
        wrong.append("parts: " + ", ".join(part.get_name() for part in parts))
    for part in parts:
        part.get_action_iface().do_action(0)
        time.sleep(0.5)
        rows = [(row.get_name(), row.get_description()) for row in rows_of_index(window)]
        if not all(name for name, _ in rows) or len(rows) < PARTS[part.get_name()]:
            wrong.append(f"{part.get_name()}: rows {rows}")
        if not any(about == "chosen" for _, about in rows):
            wrong.append(f"{part.get_name()}: nothing is heard as chosen")
    return wrong


def labels_in_sight(window):
    for node in below(window):
        if node.get_role() == Atspi.Role.LABEL and has(node, Atspi.StateType.SHOWING):
            yield (node.get_name() or "").strip(), (node.get_description() or "").strip()


def walk(window):
    wrong, described, before = [], set(), []
    entries = entries_of(window)
    for page in PAGES:
        entries[page].get_action_iface().do_action(0)

        def page_is_filled():
            labels = list(labels_in_sight(window))
            time.sleep(0.3)
            settled = labels == list(labels_in_sight(window))
            return labels if settled and (page == PAGES[0] or labels != before) else None
        labels = before = within(page_is_filled)
        if not labels:
            wrong.append(page + ": no label is heard")
        for words, about in labels:
            if about:
                described.add(about)
            if about not in MAY_BE_SILENT and (not words or words == about):
                wrong.append(f"{page}: '{about}' is heard as '{words}'")
    if len(described) < 8:
        wrong.append("labels that say what they are about: " + ", ".join(sorted(described)))
    return wrong


def main():
    program, sample = sys.argv[1:]
    with tempfile.TemporaryDirectory() as folder:
        log = os.path.join(folder, "squad.slopebook")
        shutil.copy(sample, log)
        running = subprocess.Popen(
            [program, log],
            env=dict(os.environ, QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1", QT_QPA_PLATFORM="xcb",
                     HOME=folder, XDG_CONFIG_HOME=folder, XDG_DATA_HOME=folder))
        try:
            window = within(window_on_the_bus)
            wrong = walk(window) + walk_index(window)
        finally:
            running.kill()
            running.wait()
    for line in wrong:
        print("FAIL:", line)
    sys.exit(1 if wrong else 0)


main()
