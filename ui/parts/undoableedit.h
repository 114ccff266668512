// SPDX-License-Identifier: GPL-3.0-or-later
// A line that is typed, answered, and typed anew: while it is empty it leaves undo and redo to the
// window (what was entered from it is meant, not its letters), and what was refused gives way to
// what is typed next.
#pragma once

#include <QKeyEvent>
#include <QLineEdit>

#include <utility>

namespace slopebook::ui {

class UndoableEdit : public QLineEdit {
    Q_OBJECT
public:
    using QLineEdit::QLineEdit;

    /// What stands in the line was not taken: all of it is marked, so that the next line typed
    /// takes its place whole. Up brings it back, what was wrong (from start on) marked to be
    /// mended; Down puts there what would be taken, where that is said.
    void markRefused(int start = 0, int length = 0, const QString& instead = {}) {
        m_refused = text();
        m_instead = instead;
        m_start = start;
        m_length = length;
        selectAll();
    }
    /// What stands or stood in the line has been taken, or is not wanted any more.
    void forgetRefused() {
        m_refused.clear();
        m_instead.clear();
    }

protected:
    bool event(QEvent* event) override {
        if (event->type() == QEvent::ShortcutOverride && text().isEmpty()) {
            const auto* key = static_cast<QKeyEvent*>(event);
            if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo))
                return false;
        }
        return QLineEdit::event(event);
    }
    void keyPressEvent(QKeyEvent* event) override {
        const bool done = (event->key() == Qt::Key_Up && bringBack()) ||
                          (event->key() == Qt::Key_Down && takeInstead());
        if (!done)
            QLineEdit::keyPressEvent(event);
    }
    /// False where nothing was refused.
    bool bringBack() {
        if (m_refused.isEmpty())
            return false;
        setText(m_refused);
        m_refused.clear();
        if (m_length > 0)
            setSelection(m_start, m_length);
        return true;
    }
    /// False where nothing is offered, or the refused line does not stand there any more.
    bool takeInstead() {
        if (m_instead.isEmpty() || text() != m_refused)
            return false;
        setText(std::exchange(m_instead, {}));
        m_refused.clear();
        Q_EMIT textEdited(text()); // it stands as if it had been typed
        return true;
    }

private:
    QString m_refused, m_instead;
    int m_start = 0, m_length = 0;
};

} // namespace slopebook::ui
