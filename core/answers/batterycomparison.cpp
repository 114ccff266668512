// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/batterycomparison.h"

#include "core/answers/figures.h"
#include "core/answers/smallest.h"
#include "core/answers/testsmallest.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

constexpr double fewPairs = 2; // what so few say of noise may lie under what attempts show

Conditions conditionsOfTest(const Battery& battery, TestKindId kind) {
    const TestAttempts* test = battery.test(kind);
    return test == nullptr ? Conditions{} : test->conditions;
}

/// The latest session that has the test, else the latest that says why not.
SeenTest seen(const Stored<TestKindId, TestKind>& kind, const TestDays& days, BodySide side) {
    SeenTest found;
    for (const BatterySession& session : days.sessions) {
        auto value = testValue(kind, session, side);
        const bool tells = value || value.why().why != NoAnswer::Why::NotTested;
        if (value || (tells && !found.value))
            found = {.value = std::move(value),
                     .session = session.session,
                     .date = session.date,
                     .conditions = conditionsOfTest(session.battery, kind.id)};
    }
    return found;
}

void readTest(TestChange& test, AthleteId athlete, const SquadTests& squad, double level,
              Devices devices) {
    const auto& before = test.before.value;
    const auto& after = test.after.value;
    if (!before || !after) {
        const Words& why = (before ? after : before).why().reason;
        test.noReading = !before && !after ? say("on both sides %1", why)
                         : !before         ? say("before: %1", why)
                                           : say("after: %1", why);
        return;
    }
    const double change = after->value - before->value;
    test.change = change;
    test.percent = 100 * change / before->value;
    test.conditions = conditionChanges(test.before.conditions, test.after.conditions, devices);
    test.noise =
        testNoise(test.kind, test.side, athlete, squad, (before->value + after->value) / 2);
    test.attemptNoise = attemptNoise(*before, *after);
    if (test.noise && test.attemptNoise && test.noise->df <= fewPairs) // its least is known
        test.noise->te = std::max(test.noise->te, *test.attemptNoise);
    if (!test.noise) {
        test.read.change = change;
        test.read.smallest = smallestOfTest(test.kind, test.side, squad);
        test.noReading = say("no typical error is known: repeat the test, or give the test one");
        if (test.attemptNoise)
            test.noReading =
                say("its attempts alone spread by %1 %2, a lower bound of its noise: the same test "
                    "on two days of one week, the second marked as a repeat, gives the whole",
                    figure(fixed(*test.attemptNoise, test.kind.value.decimals + 1)),
                    test.kind.value.unit);
        return;
    }
    test.read =
        read(change, changeInterval(change, test.noise->te, test.noise->df, level),
             changeInterval(change, test.noise->te, test.noise->df, equivalenceLevel(level)),
             smallestOfTest(test.kind, test.side, squad), test.kind.value.higherIsBetter);
    test.read.at80 = changeInterval(change, test.noise->te, test.noise->df, leaningLevel);
    const Under under{test.conditions,
                      notComparableWords(test.before.conditions, test.after.conditions)};
    setUnder(test.read, under);
    if (!under.notComparable.empty())
        test.noReading = say("not comparable: %1", under.notComparable);
}

void addForest(BatteryComparison& battery, const Words& label, const ReadChange& change,
               bool higherIsBetter, bool flagged) {
    if (!change.smallest) {
        battery.notDrawn.push_back(
            say("%1: %2", label, say("no smallest change that matters is known")));
        return;
    }
    const double m = change.smallest->value * (higherIsBetter ? 1 : -1);
    const double a = change.interval.low / m;
    const double b = change.interval.high / m;
    battery.forest.push_back({.label = label,
                              .change = change.change / m,
                              .interval = {std::min(a, b), std::max(a, b)},
                              .reading = change.reading,
                              .flagged = flagged,
                              .leans = change.leans() * (higherIsBetter ? 1 : -1),
                              .notComparable = !change.notComparable.empty()});
}

void addMissing(BatteryComparison& battery, std::span<const Stored<TestKindId, TestKind>> kinds,
                std::span<const Stored<LiftId, Lift>> lifts, const TestDays& days) {
    for (const BatterySession& session : days.sessions)
        for (const Gap& gap : session.battery.gaps) {
            Words what;
            for (const auto& kind : kinds)
                if (gap.kind == kind.id)
                    what = sided(asIs(kind.value.name), gap.side);
            for (const auto& lift : lifts)
                if (gap.lift == lift.id)
                    what = gap.load ? say("%1, %2", lift.value.name, *gap.load)
                                    : sided(asIs(lift.value.name), gap.side);
            battery.missing.push_back(
                {.label = days.label, .date = session.date, .what = what, .reason = gap.reason});
        }
}

void addContextNotes(BatteryComparison& battery) {
    std::vector<ConditionChange> told;
    for (const TestChange& test : battery.tests)
        for (const ConditionChange& change : test.conditions)
            if (std::find(told.begin(), told.end(), change) == told.end()) {
                told.push_back(change);
                battery.notes.push_back({Note::Kind::ContextChanged, conditionNote(change)});
            }
}

} // namespace

Words sided(const Words& name, BodySide side) {
    switch (side) {
    case BodySide::Left:
        return say("%1, left", name);
    case BodySide::Right:
        return say("%1, right", name);
    case BodySide::Both:
        break;
    }
    return name;
}

std::optional<Smallest> smallestOfTest(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                       const SquadTests& squad) {
    const TestKind& k = kind.value;
    std::optional<std::pair<double, std::string>> published;
    if (k.smallest && !k.smallestSource.empty())
        published.emplace(*k.smallest, cited(k.smallestSource));
    return chooseSmallest(squad.latest(kind.id, side), published ? std::nullopt : k.smallest,
                          published);
}

BatteryComparison compareBattery(std::span<const Stored<TestKindId, TestKind>> kinds,
                                 AthleteId athlete, const TestDays& from, const TestDays& to,
                                 const SquadTests& squad,
                                 std::span<const Stored<LiftId, Lift>> lifts, double level,
                                 Devices devices) {
    BatteryComparison battery{.level = level, .fromLabel = from.label, .toLabel = to.label};
    for (const auto& kind : kinds) {
        const auto sides = sidesOf(kind.value);
        const std::size_t first = battery.tests.size();
        bool anything = false;
        for (const BodySide side : sides) {
            TestChange test{.kind = kind, .side = side};
            test.before = seen(kind, from, side);
            test.after = seen(kind, to, side);
            anything = anything || test.before.session || test.after.session;
            readTest(test, athlete, squad, level, devices);
            battery.tests.push_back(std::move(test));
        }
        if (!anything) {
            battery.tests.resize(first);
            continue;
        }
        if (kind.value.twoSided)
            battery.leftRight.push_back(
                leftRightOf(battery.tests[first], battery.tests[first + 1], level));
    }
    for (const TestChange& test : battery.tests) {
        const Words label = sided(asIs(test.kind.value.name), test.side);
        if (test.noReading.empty())
            addForest(battery, label, test.read, test.kind.value.higherIsBetter,
                      !test.conditions.empty());
        else if (!test.read.notComparable.empty() && test.read.smallest)
            addForest(battery, label, test.read, test.kind.value.higherIsBetter, false);
        else
            battery.notDrawn.push_back(say("%1: %2", label, test.noReading));
    }
    addMissing(battery, kinds, lifts, from);
    addMissing(battery, kinds, lifts, to);
    addContextNotes(battery);
    return battery;
}

void addLift(BatteryComparison& battery, const Lift& lift, const Comparison& comparison) {
    for (const ChangeAt& at : comparison.at)
        if (at.checkLoad)
            addForest(battery, say("%1, speed at %2", lift.name, at.load), at.read, true,
                      at.extrapolated);
    const Words label = say("%1, estimated 1RM", lift.name);
    if (!comparison.oneRm)
        battery.notDrawn.push_back(say("%1: %2", label, comparison.oneRm.why().reason));
    else if (comparison.oneRm->read.reading == Reading::NoFigure &&
             comparison.under.notComparable.empty())
        battery.notDrawn.push_back(say("%1: %2", label, say("the change cannot be bounded")));
    else if (const stats::Interval& i = comparison.oneRm->read.interval;
             !std::isfinite(i.high - i.low))
        battery.notDrawn.push_back(say("%1: %2", label, comparison.under.notComparable));
    else
        addForest(battery, label, comparison.oneRm->read, true, false);
}

Words testLabel(const TestKind& kind, BodySide side) {
    return sided(asIs(kind.name), side);
}

Words forestReading(const ForestRow& row) {
    return row.notComparable ? say("not comparable")
           : row.leans > 0   ? say("unclear, leaning to better")
           : row.leans < 0   ? say("unclear, leaning to worse")
           : row.reading == Reading::Unclear
               ? say("%1; shows from %2", readingWords(row.reading),
                     figure((row.interval.high - row.interval.low) / 2, 1))
               : readingWords(row.reading);
}

Words unclearTestWords(const TestChange& test) {
    const TestKind& kind = test.kind.value;
    const ReadChange& read = test.read;
    const Words label = testLabel(kind, test.side);
    const Words by = signedFigure(read.change, kind.decimals);
    const Words low = signedFigure(read.interval.low, kind.decimals);
    const Words high = signedFigure(read.interval.high, kind.decimals);
    const Words shows = figure(read.shows(), kind.decimals);
    return read.leans() > 0 ? say("%1 (leaning up: %2 %3, %4 to %5; shows from %6)", label, by,
                                  kind.unit, low, high, shows)
           : read.leans() < 0
               ? say("%1 (leaning down: %2 %3, %4 to %5; shows from %6)", label, by, kind.unit, low,
                     high, shows)
               : say("%1 (%2 %3, %4 to %5; shows from %6)", label, by, kind.unit, low, high, shows);
}

} // namespace slopebook::answers
