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

// Nothing is taken back that is not seen: whose it is, is shown by a first press, and taken back by
// the second.
void Monkey::goUndo(bool back) {
    QUndoStack& stack = *m_window->workspace()->logbook().undoStack();
    if (!(back ? stack.canUndo() : stack.canRedo()))
        return;
    const auto known = m_steps.find(stack.index() + (back ? -1 : 1));
    m_loose = known == m_steps.end();
    if (m_loose && m_plan.known)
        return;
    if (!m_loose)
        allow(known->second);
    say(back ? stack.undoText() : stack.redoText());
    allowOtherChoice();
    const bool byMenu = m_dice.oneIn(3);
    std::string seen;
    for (int press = 0; press < 2 && !changed(); ++press) {
        seen = shown().athlete;
        if (byMenu || press > 0) { // to go elsewhere between the two would be to think anew
            (back ? m_window->actions().undo : m_window->actions().redo)->trigger();
            continue;
        }
        goToLine();
        m_hands->key(Qt::Key_Z,
                     back ? Qt::ControlModifier : Qt::ControlModifier | Qt::ShiftModifier);
    }
    if (!changed() && !m_loose && known->second != m_book)
        fail(QStringLiteral("Pressed twice, nothing was taken back or done again"));
    for (const std::string& owner : owners(m_book, disk()))
        if (owner != seen && m_book.rest == disk().rest)
            fail(QStringLiteral("Taken back or done again for %1, while %2 was shown:\n%3")
                     .arg(QString::fromStdString(owner), QString::fromStdString(seen),
                          QString::fromStdString(difference(m_book, disk()))));
}

} // namespace slopebook::monkey
