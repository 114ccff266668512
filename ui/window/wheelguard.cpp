// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/wheelguard.h"

#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QCalendarWidget>
#include <QComboBox>
#include <QEvent>
#include <QScrollBar>
#include <QTabBar>

namespace slopebook::ui {

namespace {

bool takesWheel(const QWidget& widget) {
    return qobject_cast<const QComboBox*>(&widget) ||
           qobject_cast<const QAbstractSpinBox*>(&widget) ||
           qobject_cast<const QTabBar*>(&widget) || qobject_cast<const QCalendarWidget*>(&widget) ||
           (qobject_cast<const QAbstractSlider*>(&widget) &&
            !qobject_cast<const QScrollBar*>(&widget));
}

bool holdsFocus(const QWidget& control) {
    const QWidget* focus = QApplication::focusWidget();
    // A calendar stands in a window of its own while a day is chosen from it.
    return focus && (focus == &control || control.isAncestorOf(focus));
}

} // namespace

WheelGuard::WheelGuard(QObject* parent) : QObject(parent) {
    for (QWidget* widget : QApplication::allWidgets())
        if (widget->focusPolicy() == Qt::WheelFocus)
            widget->setFocusPolicy(Qt::StrongFocus);
    qApp->installEventFilter(this);
}

// The list of a combo box hangs below it in a window of its own: there the wheel only scrolls.
QWidget* WheelGuard::controlAt(QWidget* widget) {
    for (QWidget* at = widget; at; at = at->isWindow() ? nullptr : at->parentWidget())
        if (takesWheel(*at))
            return at;
    return nullptr;
}

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel && event->type() != QEvent::Polish)
        return false;
    auto* widget = qobject_cast<QWidget*>(watched);
    if (!widget)
        return false;
    if (event->type() == QEvent::Polish) {
        // Qt would give such a widget the focus before it hears of the wheel.
        if (widget->focusPolicy() == Qt::WheelFocus)
            widget->setFocusPolicy(Qt::StrongFocus);
        return false;
    }
    const QWidget* control = controlAt(widget);
    if (!control || holdsFocus(*control))
        return false;
    event->ignore(); // on to what lies around it
    return true;
}

} // namespace slopebook::ui
