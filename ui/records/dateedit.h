// SPDX-License-Identifier: GPL-3.0-or-later
// A date field with a calendar, the same everywhere.
#pragma once

#include "ui/shell/format.h"

#include <QDateEdit>

namespace slopebook::ui {

inline QDateEdit* dateEdit(Date date) {
    auto* edit = new QDateEdit(qtDate(date));
    edit->setCalendarPopup(true);
    edit->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    return edit;
}

} // namespace slopebook::ui
