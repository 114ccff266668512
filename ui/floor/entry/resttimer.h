// SPDX-License-Identifier: GPL-3.0-or-later
// How long ago the last set was typed: small, silent, and only where it is wanted.
#pragma once

#include "core/model/ids.h"
#include "ui/parts/clock.h"

#include <QLabel>
#include <QTimer>

#include <chrono>
#include <map>
#include <optional>

namespace slopebook::ui {

/// "Rest 1:05".
QString restText(std::chrono::seconds rested);

class RestTimer final : public QLabel {
    Q_OBJECT
public:
    explicit RestTimer(Clock clock, QWidget* parent = nullptr);

    /// Off at first.
    void setWanted(bool wanted);
    /// Whose rest is shown; each has their own, which goes on meanwhile.
    void setAthlete(std::optional<AthleteId> athlete);
    /// A set of that athlete has just been taken.
    void restart();

private:
    void fit();

    Clock m_clock;
    bool m_wanted = false;
    std::optional<AthleteId> m_athlete;
    std::map<AthleteId, std::chrono::sys_seconds> m_since;
    QTimer m_tick;
};

} // namespace slopebook::ui
