// SPDX-License-Identifier: GPL-3.0-or-later
// Two log files meet: one takes what the other holds. The other is only read.
#pragma once

#include "core/desks/conflictsides.h"
#include "core/desks/taking.h"
#include "core/log/log.h"
#include "core/model/progress.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::desks {

/// A thing as the coach knows it: "Ada Kern, 14 March 2026, Bench pull, set 3".
struct Named {
    std::string kind{}; ///< "athlete", "set", ...
    Words name{};
    friend bool operator==(const Named&, const Named&) = default;
};

struct MergeReport {
    struct Joined {
        Named from{}, into{};
        friend bool operator==(const Joined&, const Joined&) = default;
    };
    struct Renamed {
        Named now{};
        std::string before{};
        friend bool operator==(const Renamed&, const Renamed&) = default;
    };
    /// Athletes that are in the logs, and in both: by what they are, not by their names.
    struct Athletes {
        std::size_t here = 0, there = 0, both = 0;
        friend bool operator==(const Athletes&, const Athletes&) = default;
    };
    Athletes athletes{};
    /// Nothing is in both logs, living or removed, but the tests that every log has: neither was
    /// ever a copy of the other. It is not said where one has no athletes.
    bool noCommonPast = false;
    bool nothingNew = true;
    /// What both hold is the same already; how the other came to it is all that is written down.
    bool pastAlone = false;
    /// Of athletes, sessions, sets, ...: by what the other desk did.
    std::size_t added = 0, changed = 0, removed = 0;
    std::size_t becameOne =
        0; ///< with another, of those that are in `joined` and of what they hold
    std::vector<Joined> joined{};
    std::vector<Named> revived{};
    std::vector<Renamed> renamed{};      ///< and sessions with another number
    std::vector<ShownConflict> listed{}; ///< new with this merge, and open
    std::filesystem::path backup{};      ///< made before anything was written; empty: nothing was
    friend bool operator==(const MergeReport&, const MergeReport&) = default;
};

/// What a desk was told when it took another's. before and after: what it holds, or that part of it
/// which matters.
MergeReport reportOf(Slots& known, const Desk& before, const Desk& after, const Taken& taken);

/// Another log, read once and known to be sound: what would come of it is told first, and then just
/// that is taken, whatever is written into it meanwhile. On one thread at a time.
class ComingLog {
public:
    /// An older layout is read through a copy of it that is brought up to date. Throws LogError: it
    /// is no log, newer, damaged, the very file of `mine`, busy; BadInput: it holds what may not
    /// stand in a log; Cancelled.
    ComingLog(const std::filesystem::path& other, const log::Log& mine,
              const Progress& progress = {});
    ~ComingLog();
    ComingLog(const ComingLog&) = delete;
    ComingLog& operator=(const ComingLog&) = delete;

    /// What would come into the log; nothing is written. Throws LogError, BadInput, Cancelled.
    MergeReport preview(const log::Log& log, const Progress& progress = {}) const;
    /// Takes it, in one transaction or as a part of the one under way, without a backup. Throws
    /// LogError: the log is damaged, cannot be written, its disk is full; BadInput; Cancelled. Then
    /// nothing was written.
    MergeReport takeInto(log::Log& log, const Progress& progress = {}) const;
    /// The same after a checked backup, where anything is new.
    MergeReport mergeInto(log::Log& log, const Progress& progress = {}) const;

private:
    struct Read;
    std::unique_ptr<Read> m_read;
};

/// The two of a log that is read for them alone.
MergeReport previewMerge(const log::Log& log, const std::filesystem::path& other);
MergeReport mergeInto(log::Log& log, const std::filesystem::path& other);

} // namespace slopebook::desks
