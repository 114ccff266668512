// SPDX-License-Identifier: GPL-3.0-or-later
// A turn of the wheel as the desktop sends it: to the window, which finds the widget below the
// pointer. (QTest 6.4 has none.)
#pragma once

#include <QApplication>
#include <QWheelEvent>
#include <QWidget>
#include <QWindow>
#include <QtTest/qtestspontaneevent.h>

namespace slopebook::test {

/// notches > 0: away from the hand. Over the middle of the widget, or at that place in it.
inline void turnWheel(QWidget& over, int notches, QPoint at = {-1, -1}) {
    if (at == QPoint(-1, -1))
        at = over.rect().center();
    QWindow* window = over.window()->windowHandle();
    const QPointF in = over.mapTo(over.window(), at);
    QWheelEvent wheel(in, over.mapToGlobal(at), {}, {0, 120 * notches}, Qt::NoButton,
                      Qt::NoModifier, Qt::NoScrollPhase, false);
    QSpontaneKeyEvent::setSpontaneous(&wheel);
    qApp->notify(window, &wheel);
}

} // namespace slopebook::test
