// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/lasttests.h"

#include "core/log/impl.h"
#include "core/log/query.h"

namespace slopebook::log {

std::vector<LastTest> lastTests(const Log& log) {
    Log::Impl& impl = log.impl();
    const ReadScope moment(impl.db);
    std::vector<LastTest> all;
    Query lifts(impl.db, "SELECT s.athlete, t.lift, max(s.day) FROM sessions AS s "
                         "JOIN sets AS t ON t.session = s.id WHERE t.point IS NOT NULL "
                         "GROUP BY s.athlete, t.lift ORDER BY s.athlete, t.lift");
    while (lifts.next())
        all.push_back({.athlete = lifts.id<AthleteId>(0),
                       .lift = lifts.id<LiftId>(1),
                       .last = lifts.date(2)});
    Query tests(impl.db, "SELECT s.athlete, a.test, max(s.day) FROM sessions AS s "
                         "JOIN attempts AS a ON a.session = s.id WHERE a.excluded = '' "
                         "GROUP BY s.athlete, a.test ORDER BY s.athlete, a.test");
    while (tests.next())
        all.push_back({.athlete = tests.id<AthleteId>(0),
                       .test = tests.id<TestKindId>(1),
                       .last = tests.date(2)});
    return all;
}

} // namespace slopebook::log
