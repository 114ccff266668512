// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/batteryatoms.h"

#include <algorithm>

namespace slopebook::log {

namespace {
/// For each of now the number that it had before, from 1 on; 0 where it is new. alike: whether one
/// may be the other, changed.
template <class Thing, class Alike>
std::vector<int> cameFrom(const std::vector<Thing>& before, const std::vector<Thing>& now,
                          const Alike& alike) {
    std::vector<int> was(now.size(), 0);
    std::vector<bool> taken(before.size(), false);
    const auto match = [&](const auto& fits) {
        std::size_t from = 0;
        for (std::size_t i = 0; i < now.size(); ++i) {
            if (was[i] != 0)
                continue;
            for (std::size_t k = from; k < before.size(); ++k)
                if (!taken[k] && fits(before[k], now[i])) {
                    was[i] = static_cast<int>(k) + 1;
                    taken[k] = true;
                    from = k + 1;
                    break;
                }
        }
    };
    match([](const Thing& a, const Thing& b) { return a == b; });
    match(alike);
    return was;
}
} // namespace

std::vector<PlacedAttempt> attemptsOf(const Battery& battery) {
    std::vector<PlacedAttempt> all;
    for (const TestAttempts& test : battery.tests)
        for (const Attempt& attempt : test.attempts)
            all.push_back({.test = test.kind, .attempt = attempt});
    return all;
}

namespace {
std::vector<Content> contentsOf(const UuidOf& uuids, SessionId session,
                                const std::vector<PlacedAttempt>& attempts) {
    std::vector<Content> all;
    for (const PlacedAttempt& one : attempts)
        all.push_back(
            contentOf(uuids, session, one.test, static_cast<int>(all.size()) + 1, one.attempt));
    return all;
}

std::vector<Content> contentsOf(const UuidOf& uuids, SessionId session,
                                const std::vector<Gap>& gaps) {
    std::vector<Content> all;
    for (const Gap& gap : gaps)
        all.push_back(contentOf(uuids, session, static_cast<int>(all.size()) + 1, gap));
    return all;
}
} // namespace

void keepBattery(Connection& db, SessionId session, const Battery& before, const Battery& now) {
    const UuidOf uuids = rememberedUuidsIn(db);
    const auto attemptsBefore = attemptsOf(before), attempts = attemptsOf(now);
    placeAtoms(
        db, "attempt", raw(session), contentsOf(uuids, session, attemptsBefore),
        contentsOf(uuids, session, attempts),
        cameFrom(attemptsBefore, attempts, [](const PlacedAttempt& a, const PlacedAttempt& b) {
            return a.test == b.test && a.attempt.side == b.attempt.side;
        }));
    placeAtoms(db, "gap", raw(session), contentsOf(uuids, session, before.gaps),
               contentsOf(uuids, session, now.gaps),
               cameFrom(before.gaps, now.gaps, [](const Gap& a, const Gap& b) {
                   return a.kind == b.kind && a.lift == b.lift && a.load == b.load &&
                          a.side == b.side;
               }));
    const auto key = [&](const TestAttempts& test) {
        return AtomKey{.kind = "test conditions", .one = raw(session), .two = raw(test.kind)};
    };
    for (const TestAttempts& test : before.tests)
        if (const TestAttempts* still = now.test(test.kind);
            test.conditions != Conditions{} &&
            (still == nullptr || still->conditions == Conditions{}))
            dropAtom(db, key(test), contentOf(uuids, session, test.kind, test.conditions));
    for (const TestAttempts& test : now.tests)
        if (test.conditions != Conditions{})
            keepAtom(db, key(test), contentHash(uuids, session, test.kind, test.conditions));
}

} // namespace slopebook::log
