// SPDX-License-Identifier: GPL-3.0-or-later
// Whether somebody types just now: what writes beside the window gives way to what is entered.
#pragma once

#include "core/model/progress.h"

#include <QObject>

#include <atomic>
#include <chrono>
#include <memory>

namespace slopebook::ui {

class Typing final : public QObject {
    Q_OBJECT
public:
    /// Of every window of the program.
    explicit Typing(QObject* parent = nullptr);

    /// For a thread beside the window; it may outlive this.
    using Last = std::shared_ptr<std::atomic<std::chrono::steady_clock::duration>>;
    const Last& last() const { return m_last; }
    /// The same, but each part of the work that is told with a total begins in a pause of the
    /// typing, or after a second of it.
    static Progress givingWay(const Last& last, const Progress& work);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    Last m_last; ///< when a key was pressed
};

} // namespace slopebook::ui
