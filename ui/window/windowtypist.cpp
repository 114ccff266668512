// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/windowtypist.h"

#include "ui/parts/undoableedit.h"

#include <QCoreApplication>
#include <QEvent>

#include <algorithm>

namespace slopebook::ui {

WindowTypist::WindowTypist(const std::filesystem::path& log, Times times, QObject* parent)
    : QObject(parent), m_typist(log) {
    for (const auto& [timer, time] : {std::pair{&m_key, times.key}, {&m_line, times.line}}) {
        timer->setSingleShot(true);
        timer->setInterval(time);
        connect(timer, &QTimer::timeout, this, &WindowTypist::tell);
    }
    qApp->installEventFilter(this);
}

void WindowTypist::watch(const QWidget& page) {
    for (UndoableEdit* line : page.findChildren<UndoableEdit*>()) {
        m_lines.emplace_back(line);
        connect(line, &QLineEdit::textChanged, this, [this] {
            m_line.start();
            tell();
        });
    }
}

bool WindowTypist::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        m_key.start();
        m_line.start();
        tell();
    } else if ((event->type() == QEvent::Show || event->type() == QEvent::Hide) &&
               std::ranges::any_of(m_lines, [&](const auto& line) { return line == watched; })) {
        tell();
    }
    return QObject::eventFilter(watched, event);
}

// A line that is not shown is typed in no more: to come back to it takes a key, or longer.
void WindowTypist::tell() {
    const bool begun = std::ranges::any_of(m_lines, [](const QPointer<QLineEdit>& line) {
        return line && line->isVisible() && !line->text().isEmpty();
    });
    m_typist.setTypes(m_key.isActive() || (begun && m_line.isActive()));
}

} // namespace slopebook::ui
