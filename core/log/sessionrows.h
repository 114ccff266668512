// SPDX-License-Identifier: GPL-3.0-or-later
// What a session holds, row by row: the columns of its sets, attempts and gaps, once for reading,
// writing and checksums, and how all of it is read, unverified.
#pragma once

#include "core/log/connection.h"
#include "core/log/log.h"
#include "core/log/points.h"

#include <vector>

namespace slopebook::log {

template <class Held, class Visitor>
void setColumns(Held& set, Visitor& visit) {
    visit("load_g", set.load);
    visit("maximum", set.trueMaximum);
    visit("outcome", set.outcome);
    visit("reason", set.reason);
    visit("rpe", set.effort);
    visit("excluded", set.excluded);
    visit("note", set.note);
}

template <class Held, class Visitor>
void attemptColumns(Held& attempt, Visitor& visit) {
    visit("side", attempt.side);
    visit("value", attempt.value);
    visit("contact", attempt.contact);
    visit("note", attempt.note);
    visit("excluded", attempt.excluded);
}

template <class Held, class Visitor>
void gapColumns(Held& gap, Visitor& visit) {
    visit("test", gap.kind);
    visit("lift", gap.lift);
    visit("load_g", gap.load);
    visit("side", gap.side);
    visit("reason", gap.reason);
}

std::vector<Rep> readReps(Connection& db, SetId id);
/// Nothing where it is not there.
std::optional<StoredSet> readSet(Connection& db, SetId id);
/// In order of lift and ordinal.
std::vector<StoredSet> readSets(Connection& db, SessionId session);
/// In order of lift; those of lifts with conditions alone.
std::vector<LiftConditions> readConditions(Connection& db, SessionId session);
Battery readBattery(Connection& db, SessionId session);

void insertSet(Connection& db, const StoredSet& stored);
void updateSet(Connection& db, const StoredSet& stored);
/// Puts them in place of what stood there; none where they say nothing.
void writeConditions(Connection& db, SessionId session, LiftId lift, const Conditions& conditions);
/// Where none of the session stands yet.
void insertBattery(Connection& db, SessionId session, const Battery& battery);

} // namespace slopebook::log
