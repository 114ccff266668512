// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/quietlook.h"

#include <QApplication>
#include <QEvent>

#include <algorithm>
#include <utility>

namespace slopebook::ui {

namespace {
constexpr int soonest = 300;  // ms: more often than that nobody reads
constexpr int keyPause = 300; // ms without a key
constexpr qint64 late = 3000; // ms: then it is shown between two keys all the same
} // namespace

QuietLook::QuietLook(std::function<void()> look, QObject* parent)
    : QObject(parent), m_look(std::move(look)) {
    m_due.setSingleShot(true);
    connect(&m_due, &QTimer::timeout, this, [this] {
        qApp->removeEventFilter(this);
        m_look();
    });
}

void QuietLook::want() {
    if (m_due.isActive())
        return;
    m_wanted.start();
    m_due.start(soonest);
    qApp->installEventFilter(this);
}

bool QuietLook::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && m_due.isActive())
        m_due.start(static_cast<int>(std::clamp<qint64>(late - m_wanted.elapsed(), 0, keyPause)));
    return QObject::eventFilter(watched, event);
}

} // namespace slopebook::ui
