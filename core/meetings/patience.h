// SPDX-License-Identifier: GPL-3.0-or-later
// What a meeting can only write in one long transaction waits until nobody enters anything.
#pragma once

#include "core/log/log.h"
#include "core/model/errors.h"
#include "core/model/progress.h"

#include <chrono>
#include <optional>

namespace slopebook::meetings {

/// A test has less of it.
struct Patience {
    std::chrono::milliseconds pause{5'000};    ///< without an entry: then it is tried again
    std::chrono::milliseconds longest{60'000}; ///< from the first time that it gave way
};

/// Nobody paused for so long. Nothing is lost: the next meeting tries it again.
class WaitsForPause : public LogError {
public:
    explicit WaitsForPause(const Patience& patience);
};

/// Of one long piece of work: waits for pauses in what others enter.
class Pauses {
public:
    Pauses(const log::Log& log, const Patience& patience, const Progress& progress)
        : m_log(log), m_patience(patience), m_progress(progress) {}
    /// Until nobody has written for that long. Throws WaitsForPause; LogError; Cancelled.
    void await();

private:
    const log::Log& m_log;
    const Patience m_patience;
    const Progress& m_progress;
    std::optional<std::chrono::steady_clock::time_point> m_since; ///< when it first gave way
};

} // namespace slopebook::meetings
