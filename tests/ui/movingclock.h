// SPDX-License-Identifier: GPL-3.0-or-later
// A clock that stands until a test moves it.
#pragma once

#include "ui/parts/clock.h"

#include <QDateTime>

#include <chrono>
#include <memory>

namespace slopebook::test {

class MovingClock {
public:
    explicit MovingClock(const QDateTime& at) : m_at(std::make_shared<QDateTime>(at)) {}

    /// Goes by this one for as long as it is asked.
    ui::Clock clock() const {
        return ui::Clock([at = m_at] { return *at; });
    }
    void moveOn(std::chrono::seconds by) { *m_at = m_at->addSecs(by.count()); }
    void moveTo(const QDateTime& at) { *m_at = at; }
    const QDateTime& now() const { return *m_at; }

private:
    std::shared_ptr<QDateTime> m_at;
};

} // namespace slopebook::test
