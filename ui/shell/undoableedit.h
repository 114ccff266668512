// SPDX-License-Identifier: GPL-3.0-or-later
// A line that, while it is empty, leaves undo and redo to the window: what was entered from it is
// meant, not its letters.
#pragma once

#include <QKeyEvent>
#include <QLineEdit>

namespace slopebook::ui {

class UndoableEdit : public QLineEdit {
    Q_OBJECT
public:
    using QLineEdit::QLineEdit;

protected:
    bool event(QEvent* event) override {
        if (event->type() == QEvent::ShortcutOverride && text().isEmpty()) {
            const auto* key = static_cast<QKeyEvent*>(event);
            if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo))
                return false;
        }
        return QLineEdit::event(event);
    }
};

} // namespace slopebook::ui
