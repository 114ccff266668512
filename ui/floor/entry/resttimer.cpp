// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/resttimer.h"

#include <algorithm>
#include <utility>

namespace slopebook::ui {

namespace {
// Who has not lifted for an hour is not between two sets.
constexpr std::chrono::hours longestRest{1};
} // namespace

QString restText(std::chrono::seconds rested) {
    const auto all = rested.count();
    return RestTimer::tr("Rest %1:%2").arg(all / 60).arg(all % 60, 2, 10, QLatin1Char('0'));
}

RestTimer::RestTimer(Clock clock, QWidget* parent) : QLabel(parent), m_clock(std::move(clock)) {
    setObjectName(QStringLiteral("rest"));
    setAccessibleDescription(tr("Rest since the last set"));
    setContentsMargins(6, 0, 6, 0);
    m_tick.setInterval(1000);
    connect(&m_tick, &QTimer::timeout, this, &RestTimer::fit);
    fit();
}

void RestTimer::setWanted(bool wanted) {
    m_wanted = wanted;
    fit();
}

void RestTimer::setAthlete(std::optional<AthleteId> athlete) {
    m_athlete = athlete;
    fit();
}

void RestTimer::restart() {
    if (m_athlete)
        m_since[*m_athlete] = m_clock.seconds();
    fit();
}

void RestTimer::fit() {
    const auto since = m_athlete ? m_since.find(*m_athlete) : m_since.end();
    std::optional<std::chrono::seconds> rested;
    if (m_wanted && since != m_since.end())
        rested = std::max(m_clock.seconds() - since->second, std::chrono::seconds::zero());
    if (rested && *rested > longestRest)
        rested.reset();
    setVisible(rested.has_value());
    if (!rested) {
        m_tick.stop();
        return;
    }
    if (!m_tick.isActive())
        m_tick.start();
    setText(restText(*rested));
}

} // namespace slopebook::ui
