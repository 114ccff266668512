// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/clock.h"

#include "ui/words/format.h"

namespace slopebook::ui {

Date Clock::today() const {
    return modelDate(now().date());
}

std::chrono::sys_seconds Clock::seconds() const {
    return std::chrono::sys_seconds{std::chrono::seconds{now().toSecsSinceEpoch()}};
}

QDateTime Clock::noonOf(Date date) {
    return QDateTime(qtDate(date), QTime(12, 0));
}

} // namespace slopebook::ui
