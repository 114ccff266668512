// SPDX-License-Identifier: GPL-3.0-or-later
// Rounds of the monkey, each on a log of its own, and what to do with one that found something.
#pragma once

#include "tests/ui/monkey/monkey.h"

#include <QStringList>

namespace slopebook::monkey {

/// The steps that SLOPEBOOK_MONKEY_ONLY and SLOPEBOOK_MONKEY_KEPT say: kinds, and numbers.
Plan plannedByHand();

struct Found {
    int step = 0;
    std::string kind;
    QString what;
    QStringList trace;
};

/// One round on a new log, or on the given one. Adds to the tally.
std::optional<Found> go(const Plan& plan, std::map<std::string, Tally>& tally);

/// Leaves out steps for which the same is still found, for as long as that many seconds; gives the
/// round that is left. plan must find `found`.
std::pair<Plan, Found> shortened(Plan plan, Found found, int seconds = 10);

/// The round in words: how to do it again, and its steps.
QString told(const Plan& plan, const Found& found);

/// The shares of steps that edited, by kind; the whole first.
QString table(const std::map<std::string, Tally>& tally);
Tally sum(const std::map<std::string, Tally>& tally);

} // namespace slopebook::monkey
