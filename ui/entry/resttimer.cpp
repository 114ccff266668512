// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/entry/resttimer.h"

namespace slopebook::ui {

QString restText(std::chrono::seconds rested) {
    const auto all = rested.count();
    return RestTimer::tr("Rest %1:%2").arg(all / 60).arg(all % 60, 2, 10, QLatin1Char('0'));
}

RestTimer::RestTimer(QWidget* parent) : QLabel(parent) {
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

void RestTimer::restart() {
    m_since.start();
    fit();
}

void RestTimer::stop() {
    m_since.invalidate();
    fit();
}

void RestTimer::fit() {
    const bool counts = m_wanted && m_since.isValid();
    setVisible(counts);
    if (!counts) {
        m_tick.stop();
        return;
    }
    if (!m_tick.isActive())
        m_tick.start();
    setText(restText(std::chrono::seconds(m_since.elapsed() / 1000)));
}

} // namespace slopebook::ui
