// SPDX-License-Identifier: GPL-3.0-or-later
// The wheel scrolls the page: a field under the pointer that was never clicked keeps its value.
#pragma once

#include <QObject>

class QWidget;

namespace slopebook::ui {

/// Stands over the whole program from when it is made until it goes. A control takes the wheel only
/// while it has the focus, and gets none by the wheel; what lies around it scrolls instead. So for
/// controls of any page, dialog or table cell, made before or after.
class WheelGuard final : public QObject {
    Q_OBJECT
public:
    explicit WheelGuard(QObject* parent);

    /// The control that would take a wheel turned over widget as a change of its value; or none.
    static QWidget* controlAt(QWidget* widget);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace slopebook::ui
