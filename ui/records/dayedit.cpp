// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/dayedit.h"

#include "ui/shell/format.h"

#include <QKeyEvent>

#include <utility>

namespace slopebook::ui {

DayEdit::DayEdit(QWidget* parent) : QDateEdit(parent) {
    setCalendarPopup(true);
    setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
}

DayEdit::DayEdit(Date date, QWidget* parent) : DayEdit(parent) {
    setDate(qtDate(date));
}

// Qt's field goes to the next part by itself once a part is full; the mark typed next would take it
// one part further, and the month would land in the day.
void DayEdit::keyPressEvent(QKeyEvent* event) {
    const QString typed = event->text();
    const bool mark =
        typed == QLatin1String("-") || typed == QLatin1String(".") || typed == QLatin1String("/");
    const bool movedOn = std::exchange(m_movedOn, false);
    if (mark && movedOn)
        return;
    const int before = currentSectionIndex();
    QDateEdit::keyPressEvent(event);
    m_movedOn = !typed.isEmpty() && typed.front().isDigit() && currentSectionIndex() != before;
}

} // namespace slopebook::ui
