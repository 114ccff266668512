// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/monkey/monkey.h"

#include <QUndoStack>

namespace slopebook::monkey {

void Monkey::undo() {
    goUndo(true);
}

void Monkey::redo() {
    goUndo(false);
}

// What is undone is shown: nobody's work goes unseen.
void Monkey::goUndo(bool back) {
    QUndoStack& stack = *m_window->workspace()->logbook().undoStack();
    if (!(back ? stack.canUndo() : stack.canRedo()))
        return;
    const int to = stack.index() + (back ? -1 : 1);
    const auto known = m_steps.find(to);
    if (known != m_steps.end())
        allow(known->second);
    else if (m_plan.known)
        return;
    m_loose = known == m_steps.end();
    const Shown before = shown();
    say(back ? stack.undoText() : stack.redoText());
    if (m_dice.oneIn(3)) {
        (back ? m_window->actions().undo : m_window->actions().redo)->trigger();
    } else {
        goToLine();
        m_hands->key(Qt::Key_Z,
                     back ? Qt::ControlModifier : Qt::ControlModifier | Qt::ShiftModifier);
    }
    allowOtherChoice();
    m_newDay.reset();
    const Shown after = shown();
    if (!changed()) {
        if (after == before && m_hands->seen() == 0 && (!known->second.sessions.empty()) &&
            known->second != m_book)
            fail(QStringLiteral("Nothing was undone or redone, and nothing shown"));
        return;
    }
    for (const std::string& owner : owners(m_book, disk()))
        if (owner != after.athlete)
            fail(QStringLiteral("Undone or redone for %1, while %2 is shown:\n%3")
                     .arg(QString::fromStdString(owner), QString::fromStdString(after.athlete),
                          QString::fromStdString(difference(m_book, disk()))));
}

} // namespace slopebook::monkey
