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

PAGES = ["Session", "Profile", "History", "Comparison", "Season", "Battery", "Plan", "Blocks",
         "Squad", "Noise"]
MAY_BE_SILENT = {"Messages"}  # nothing to say is nothing to hear
WAIT = 60  # s; watched by the sanitizers a start takes some


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


def tab_of(window, page):
    # The last of that name: a page of Plan is called Squad too.
    return [node for node in below(window)
            if node.get_role() == Atspi.Role.PAGE_TAB and node.get_name() == page][-1]


def labels_in_sight(window):
    for node in below(window):
        if node.get_role() == Atspi.Role.LABEL and has(node, Atspi.StateType.SHOWING):
            yield (node.get_name() or "").strip(), (node.get_description() or "").strip()


def walk(window):
    wrong, described, before = [], set(), []
    for page in PAGES:
        tab = tab_of(window, page)
        tab.get_action_iface().do_action(0)

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
            wrong = walk(within(window_on_the_bus))
        finally:
            running.kill()
            running.wait()
    for line in wrong:
        print("FAIL:", line)
    sys.exit(1 if wrong else 0)


main()
