// SPDX-License-Identifier: GPL-3.0-or-later
// An import that writes while it reads, session by session, so that a file in order may be of any
// length. Whatever is not plain sailing takes it all back, and the caller reads everything first.
#pragma once

#include "core/exchange/merge.h"
#include "core/exchange/staging.h"
#include "core/log/newsessions.h"

#include <algorithm>
#include <functional>
#include <utility>

namespace slopebook::exchange {

struct DryRunDone {}; ///< takes a transaction back

/// Whether rows may be written as they are read. Who only looks holds no lock meanwhile.
inline bool writesAsRead(const ImportSettings& settings) {
    return settings.setsHeld != 0 && !settings.dryRun;
}

/// What is staged goes on to the merge as soon as so many sets are held.
inline void handOver(Staging& staging, Merge& merge, const ImportSettings& settings) {
    staging.setsHeld = settings.setsHeld;
    staging.handOver = [&staging, &merge] { merge.rows(staging); };
}

/// What the rows were flagged for, before what the merge has told already.
inline void tellFlagged(const Staging& staging, ImportReport& report) {
    report.flagged.insert(report.flagged.begin(), staging.flagged.begin(), staging.flagged.end());
    report.flaggedMore += staging.flaggedMore;
}

/// Does the work in one transaction of a bounded cache, with a report that starts as the given one
/// and takes its place. False, with nothing written and the report as it was, where something was
/// refused or a session's rows stood far apart. Undecided, LogError and Cancelled are thrown on.
template <class Report, class Work>
bool asRead(log::Log& log, Report& report, const Work& work) {
    Report made = report;
    try {
        const log::BoundedCache bounded(log);
        log.together([&] { work(made); });
    } catch (const NotInOrder&) {
        return false;
    } catch (const Undecided&) {
        throw;
    } catch (const BadInput&) {
        return false; // told with all the others
    }
    report = std::move(made);
    return true;
}

/// The same progress, never told to go back.
inline Progress onward(const Progress& progress) {
    if (!progress)
        return {};
    return [&progress, furthest = 0.0](std::int64_t done, std::int64_t total) mutable {
        if (total > 0)
            furthest = std::max(furthest, static_cast<double>(done) / static_cast<double>(total));
        return progress(static_cast<std::int64_t>(furthest * 1000), 1000);
    };
}

} // namespace slopebook::exchange
