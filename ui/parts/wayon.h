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
};

} // namespace slopebook::ui
