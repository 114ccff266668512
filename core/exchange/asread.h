// SPDX-License-Identifier: GPL-3.0-or-later
// An import that writes while it reads, session by session, so that a file in order may be of any
// length. Whatever is not plain sailing takes it all back, and the caller reads everything first.
#pragma once

#include "core/exchange/merge.h"
#include "core/log/newsessions.h"

#include <algorithm>
#include <functional>
#include <utility>

namespace slopebook::exchange {

struct DryRunDone {}; ///< takes a transaction back

/// Does the work in one transaction of a bounded cache, with a report that starts as the given one
/// and takes its place. False, with nothing written and the report as it was, where something was
/// refused or a session's rows stood far apart. Undecided, LogError and Cancelled are thrown on.
template <class Report, class Work>
bool asRead(log::Log& log, Report& report, const Work& work) {
    Report made = report;
    try {
        const log::BoundedCache bounded(log);
        log.together([&] { work(made); });
    } catch (const DryRunDone&) { // NOLINT(bugprone-empty-catch): that is what it is for
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
