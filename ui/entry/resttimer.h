// SPDX-License-Identifier: GPL-3.0-or-later
// How long ago the last set was typed: small, silent, and only where it is wanted.
#pragma once

#include <QElapsedTimer>
#include <QLabel>
#include <QTimer>

#include <chrono>

namespace slopebook::ui {

/// "Rest 1:05".
QString restText(std::chrono::seconds rested);

class RestTimer final : public QLabel {
    Q_OBJECT
public:
    explicit RestTimer(QWidget* parent = nullptr);

    /// Off at first.
    void setWanted(bool wanted);
    /// A set has just been taken.
    void restart();
    /// Another session or athlete: nobody rests.
    void stop();

private:
    void fit();

    bool m_wanted = false;
    QElapsedTimer m_since;
    QTimer m_tick;
};

} // namespace slopebook::ui
