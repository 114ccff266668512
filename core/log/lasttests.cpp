// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/lasttests.h"

#include "core/log/impl.h"
#include "core/log/query.h"

namespace slopebook::log {

namespace {
constexpr char lastLifts[] = "SELECT s.athlete, t.lift, max(s.day) FROM sessions AS s "
                             "JOIN sets AS t ON t.session = s.id WHERE t.point IS NOT NULL ";
constexpr char byLift[] = "GROUP BY s.athlete, t.lift ORDER BY s.athlete, t.lift";
constexpr auto liftsOfAll = joined(lastLifts, byLift);
constexpr auto liftsOfOne = joined(lastLifts, "AND s.athlete = ? ", byLift);
constexpr char lastAttempts[] = "SELECT s.athlete, a.test, max(s.day) FROM sessions AS s "
                                "JOIN attempts AS a ON a.session = s.id WHERE a.excluded = '' ";
constexpr char byTest[] = "GROUP BY s.athlete, a.test ORDER BY s.athlete, a.test";
constexpr auto testsOfAll = joined(lastAttempts, byTest);
constexpr auto testsOfOne = joined(lastAttempts, "AND s.athlete = ? ", byTest);
} // namespace

std::vector<LastTest> lastTests(const Log& log, std::optional<AthleteId> athlete) {
    Log::Impl& impl = log.impl();
    const ReadScope moment(impl.db);
    std::vector<LastTest> all;
    Query lifts(impl.db, athlete ? liftsOfOne.data() : liftsOfAll.data());
    if (athlete)
        lifts.bind(1, *athlete);
    while (lifts.next())
        all.push_back({.athlete = lifts.id<AthleteId>(0),
                       .lift = lifts.id<LiftId>(1),
                       .last = lifts.date(2)});
    Query tests(impl.db, athlete ? testsOfOne.data() : testsOfAll.data());
    if (athlete)
        tests.bind(1, *athlete);
    while (tests.next())
        all.push_back({.athlete = tests.id<AthleteId>(0),
                       .test = tests.id<TestKindId>(1),
                       .last = tests.date(2)});
    return all;
}

} // namespace slopebook::log
