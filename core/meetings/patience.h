// SPDX-License-Identifier: GPL-3.0-or-later
// What a meeting can only write in one long transaction waits until nobody enters anything; and
// where its commit, which cannot give way, and its taking back will take longer than others, until
// nobody is in the middle of typing what will be entered: from an empty line to Enter it is longer
// than either.
#pragma once

#include "core/log/log.h"
#include "core/log/typists.h"
#include "core/model/errors.h"
#include "core/model/progress.h"

#include <chrono>
#include <cstddef>
#include <optional>

namespace slopebook::meetings {

/// A test has less of it.
struct Patience {
    std::chrono::milliseconds pause{5'000};    ///< nothing entered, nobody types: it is tried again
    std::chrono::milliseconds longest{60'000}; ///< from the first time that it gave way
    /// So many things make a commit longer (a hundredth of a second here) than any takes.
    std::size_t many = 1'000;
};

/// Nobody paused for so long. Nothing is lost: the next meeting tries it again.
class WaitsForPause : public LogError {
public:
    explicit WaitsForPause(const Patience& patience);
};

/// What a pause is.
enum class Quiet { NothingEntered, NobodyTypes };

/// Of one long piece of work: waits for pauses in what others enter.
class Pauses {
public:
    Pauses(const log::Log& log, const Patience& patience, const Progress& progress)
        : m_log(log), m_typists(log.file()), m_patience(patience), m_progress(progress) {}
    /// Until nobody has written for that long, nor typed where that is asked for. Throws
    /// WaitsForPause; LogError; Cancelled.
    void await(Quiet quiet);

private:
    const log::Log& m_log;
    const log::Typists m_typists;
    const Patience m_patience;
    const Progress& m_progress;
    std::optional<std::chrono::steady_clock::time_point> m_since; ///< when it first gave way
};

} // namespace slopebook::meetings
