// SPDX-License-Identifier: GPL-3.0-or-later
// A date field, made in a word.
#pragma once

#include "ui/records/dayedit.h"
#include "ui/shell/format.h"

namespace slopebook::ui {

inline QDateEdit* dateEdit(Date date) {
    return new DayEdit(date);
}

} // namespace slopebook::ui
