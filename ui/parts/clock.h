// SPDX-License-Identifier: GPL-3.0-or-later
// Where the windows have day and time from: handed in by the program, asked anew each time. A
// window stays open over midnight and over a sleep: nobody keeps a day.
#pragma once

#include "core/model/date.h"

#include <QDateTime>

#include <chrono>
#include <concepts>
#include <functional>
#include <utility>

namespace slopebook::ui {

class Clock {
public:
    /// None: false, and not to be asked.
    Clock() = default;
    /// now: local time.
    explicit Clock(std::function<QDateTime()> now) : m_now(std::move(now)) {}
    /// Of what knows the day alone: noon of it.
    template <std::invocable Day>
    requires std::same_as<std::invoke_result_t<Day>, Date> Clock(Day day)
        : m_now([day = std::move(day)] { return noonOf(day()); }) {}

    explicit operator bool() const { return m_now != nullptr; }
    QDateTime now() const { return m_now(); }
    /// The day by the calendar on the wall.
    Date today() const;
    std::chrono::sys_seconds seconds() const;

private:
    static QDateTime noonOf(Date date);

    std::function<QDateTime()> m_now;
};

} // namespace slopebook::ui
