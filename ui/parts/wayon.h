// SPDX-License-Identifier: GPL-3.0-or-later
// The button under a sentence that says what is missing: it goes where that can be done.
#pragma once

#include "ui/parts/taskpage.h"

#include <QPushButton>

namespace slopebook::ui {

class WayOn final : public QPushButton {
    Q_OBJECT
public:
    /// Sends the page's coach there. Hidden until something is missing.
    WayOn(TaskPage& page, TaskPage::Place place, QWidget* parent = nullptr);

    /// What the page's sentence says where it has nothing to show: that an athlete or a lift is to
    /// be added first, where the log has none, and then the button leads there; else `otherwise`,
    /// and the button leads where it was made for, if anywhere is wanted. Shows or hides itself.
    QString sayMissing(const log::Log& log, const QString& otherwise, bool wanted = true,
                       bool ofLift = true);

private:
    void leadTo(TaskPage::Place place);
    TaskPage::Place m_usual, m_place;
};

} // namespace slopebook::ui
