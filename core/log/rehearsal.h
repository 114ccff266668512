// SPDX-License-Identifier: GPL-3.0-or-later
// A log that an older program wrote is brought up to date as soon as it is opened for writing. What
// may be refused is tried on a copy first, so that a refusal leaves the log as it was.
#pragma once

#include "core/log/log.h"
#include "core/log/passingfolder.h"

#include <filesystem>
#include <memory>
#include <optional>

namespace slopebook::log {

class Rehearsal {
public:
    /// A copy for this program alone in the system's folder for such, brought up to date and open
    /// for writing; it speaks under the log's name, and goes with this. None of a log of today's
    /// layout, and none of one that cannot be brought up to date: it says why itself. Throws
    /// LogError where there is no room for it: nothing is said to be tried that was not.
    explicit Rehearsal(const std::filesystem::path& file);

    /// Nothing: there is no need to try.
    Log* log() const { return m_log.get(); }

private:
    std::optional<PassingFolder> m_folder; ///< outlives the log in it
    std::unique_ptr<Log> m_log;
};

} // namespace slopebook::log
