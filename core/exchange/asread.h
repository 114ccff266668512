// SPDX-License-Identifier: GPL-3.0-or-later
// An import that writes while it reads, session by session, so that a file in order may be of any
// length; one out of order is sorted first. Whatever is refused takes it all back, and the caller
// reads everything to tell all of it.
#pragma once

#include "core/exchange/merge.h"
#include "core/exchange/staging.h"
#include "core/log/newsessions.h"

#include <algorithm>
#include <functional>
#include <utility>
#include <vector>

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
    std::vector<Words> told;
    for (const auto& [place, words] : staging.flagged)
        told.push_back(words);
    report.flagged.insert(report.flagged.begin(), told.begin(), told.end());
    report.flaggedMore += staging.flaggedMore;
}

/// How an attempt to write as it is read ended.
enum class AsRead { Done, Refused, OutOfOrder };

/// Does the work in one transaction of a bounded cache, with a report that starts as the given one
/// and takes its place. With nothing written and the report as it was: Refused where something was,
/// OutOfOrder where a session's rows stood far apart. Undecided, LogError (also of the place where
/// rows are sorted) and Cancelled are thrown on.
template <class Report, class Work>
AsRead asRead(log::Log& log, Report& report, const Work& work) {
    Report made = report;
    try {
        const log::BoundedCache bounded(log);
        log.together([&] { work(made); });
    } catch (const NotInOrder&) {
        return AsRead::OutOfOrder;
    } catch (const Undecided&) {
        throw;
    } catch (const BadInput&) {
        return AsRead::Refused; // told with all the others
    }
    report = std::move(made);
    return AsRead::Done;
}

/// First as the rows come, then, where they come out of order, sorted. Whether it was done.
template <class Attempt>
bool asReadOrSorted(const Attempt& attempt) {
    const AsRead first = attempt(false);
    return first == AsRead::Done || (first == AsRead::OutOfOrder && attempt(true) == AsRead::Done);
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
