// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan says over its loads: how old its line is, what it aims at, what the next test can be
// expected to give, what a relation of other people rests on.
#pragma once

#include "core/answers/nexttest.h"
#include "core/answers/squadrelation.h"

#include <optional>
#include <vector>

namespace slopebook::answers {

/// "The line is of 14 March 2026." With today: its age, and from four weeks on that it is old.
std::vector<Words> lineAge(Date test, std::optional<Date> today);
/// "end a set 20 % under the day's fastest rep: at 0.67 m/s if that is the expected 0.84 m/s", on
/// screen and card alike: the one rule by which a set ends. Empty where the load has no stop speed.
Words stopRule(const PlannedLoad& load, double lossPercent);
/// "Lift 60 kg; ...", with the stop rule: what is done with the plan. No stop speed under the MVT,
/// and no load over the estimated 1RM is one to lift. Empty where none is chosen, or of several all
/// lie over it.
Words liftWords(const Plan& plan);
/// The aim, with what of it lies over the estimated 1RM, or that every load is shown.
Words aimWords(const Plan& plan);
/// That the load lies outside those of the test; empty where it does not.
Words drawnOnWords(const PlannedLoad& load);
/// The same where a share of a 1RM was asked of a thrown or jumped lift.
std::vector<Words> noShareWords();
/// What the best ladder can be expected to give, its flaws, what two extremes would, the scatter.
std::vector<Words> nextTestWords(const NextTest& next);
/// What the squad's own relation, or why there is none, and the published one rest on.
std::vector<Words> relationWords(const Answer<SquadRelation>& squad,
                                 const std::optional<PublishedRelation>& published);

} // namespace slopebook::answers
