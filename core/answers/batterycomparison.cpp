// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/batterycomparison.h"

#include "core/answers/figures.h"
#include "core/answers/smallest.h"
#include "core/model/phrases/answers.h"
#include "core/stats/moderation.h"
#include "core/stats/repeats.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace slopebook::answers {

namespace {

/// Whose repeat tests a typical error comes from: of one, of several.
struct Whose {
    TestNoiseUsed::Origin origin;
    Phrase one, several;
};
constexpr double fewPairs = 2; // what so few say of noise may lie under what attempts show

constexpr Whose athletesOwn{TestNoiseUsed::Origin::Athlete, "the athlete's own, 1 repeat test",
                            "the athlete's own, %1 repeat tests"};
constexpr Whose thisLogs{TestNoiseUsed::Origin::Log, "this log's, 1 repeat test",
                         "this log's, %1 repeat tests"};

std::optional<TestNoiseUsed> noiseOf(const std::vector<RepeatedTest>& pairs, const Whose& whose) {
    std::vector<double> first;
    std::vector<double> second;
    for (const RepeatedTest& pair : pairs) {
        first.push_back(pair.first);
        second.push_back(pair.second);
    }
    const auto error = stats::typicalError(first, second);
    if (!error || !(error->value > 0))
        return std::nullopt;
    return TestNoiseUsed{.te = error->value,
                         .df = error->df,
                         .origin = whose.origin,
                         .source =
                             say(pairs.size() == 1 ? whose.one : whose.several, pairs.size())};
}

/// Two short sessions, the second marked as a repeat, where a test has no other noise: what the one
/// pair, or that of each side, comes to, no change of the mean taken off.
std::optional<TestNoiseUsed> noiseOfFew(const Stored<TestKindId, TestKind>& kind, AthleteId athlete,
                                        const SquadTests& squad) {
    double squares = 0;
    int count = 0;
    for (const BodySide each : sidesOf(kind.value))
        for (const RepeatedTest& pair : squad.repeats(kind.id, each, athlete)) {
            squares += (pair.second - pair.first) * (pair.second - pair.first) / 2;
            ++count;
        }
    if (count == 0 || !(squares > 0))
        return std::nullopt;
    return TestNoiseUsed{.te = std::sqrt(squares / count),
                         .df = static_cast<double>(count),
                         .origin = athletesOwn.origin,
                         .source = say(count == 1 ? athletesOwn.one : athletesOwn.several, count)};
}

/// A test or a lift with its side.
Words sided(const std::string& name, BodySide side) {
    switch (side) {
    case BodySide::Left:
        return say("%1, left", name);
    case BodySide::Right:
        return say("%1, right", name);
    case BodySide::Both:
        break;
    }
    return asIs(name);
}

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

std::optional<Smallest> smallestOf(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                   const SquadTests& squad) {
    const TestKind& k = kind.value;
    std::optional<std::pair<double, std::string>> published;
    if (k.smallest && !k.smallestSource.empty())
        published.emplace(*k.smallest, cited(k.smallestSource));
    return chooseSmallest(squad.latest(kind.id, side), published ? std::nullopt : k.smallest,
                          published);
}

/// The spread of the attempts within each day as noise of the day's value: a lower bound, for what
/// differs between days is not in it. The best of n is taken as steady as their mean.
std::optional<double> attemptNoise(const TestValue& before, const TestValue& after) {
    double squares = 0;
    int df = 0;
    for (const TestValue* value : {&before, &after})
        if (value->sd) {
            squares += *value->sd * *value->sd * (value->counted - 1);
            df += value->counted - 1;
        }
    if (df == 0 || !(squares > 0))
        return std::nullopt;
    const double each = 2.0 / (1.0 / before.counted + 1.0 / after.counted);
    return std::sqrt(squares / df / each);
}

void readTest(TestChange& test, AthleteId athlete, const SquadTests& squad, double level,
              std::span<const Stored<DeviceId, Device>> devices) {
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
    test.context = contextChanges(test.before.conditions, test.after.conditions, devices);
    test.noise =
        testNoise(test.kind, test.side, athlete, squad, (before->value + after->value) / 2);
    test.attemptNoise = attemptNoise(*before, *after);
    if (test.noise && test.attemptNoise && test.noise->df <= fewPairs) // its least is known
        test.noise->te = std::max(test.noise->te, *test.attemptNoise);
    if (!test.noise) {
        test.read.change = change;
        test.read.smallest = smallestOf(test.kind, test.side, squad);
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
             smallestOf(test.kind, test.side, squad), test.kind.value.higherIsBetter);
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
                              .flagged = flagged});
}

/// Positive where the left is ahead.
double signedPercent(const Asymmetry& a) {
    return a.better == BodySide::Left ? a.percent : -a.percent;
}

void readAsymmetry(LeftRight& sides, const TestChange& left, const TestChange& right,
                   double level) {
    if (!sides.before || !sides.after) {
        sides.noReading = (sides.before ? sides.after : sides.before).why().reason;
        return;
    }
    sides.change = signedPercent(*sides.after) - signedPercent(*sides.before);
    if (!left.noise || !right.noise) {
        sides.noReading = say("no typical error is known: repeat the test, or give the test one");
        return;
    }
    const auto mean = [](const TestChange& t) {
        return (t.before.value->value + t.after.value->value) / 2;
    };
    const auto half = [&](double at) {
        double worst = 0;
        for (const TestChange* side : {&left, &right}) {
            const bool prior = std::isinf(side->noise->df);
            const double better = std::max(mean(left), mean(right));
            const double weaker = std::min(mean(left), mean(right));
            const double se = asymmetryChangeSe(side->noise->te, better, weaker);
            worst = std::max(worst, prior ? stats::publishedShrink *
                                                stats::tCritical(at, stats::publishedDf) * se
                                          : stats::tCritical(at, side->noise->df) * se);
        }
        return worst;
    };
    const double size = sides.after->percent - sides.before->percent;
    const auto interval = [&](double at) {
        return stats::Interval{size - half(at), size + half(at)};
    };
    sides.read =
        read(size, interval(level), interval(equivalenceLevel(level)), std::nullopt, false);
}

LeftRight leftRightOf(const TestChange& left, const TestChange& right, double level) {
    const auto of = [&](const SeenTest& l, const SeenTest& r) -> Answer<Asymmetry> {
        if (!l.value)
            return NoAnswer{l.value.why().why, say("left %1", l.value.why().reason)};
        if (!r.value)
            return NoAnswer{r.value.why().why, say("right %1", r.value.why().reason)};
        return asymmetry(l.value->value, r.value->value, left.kind.value.higherIsBetter);
    };
    LeftRight sides{.kind = left.kind,
                    .before = of(left.before, right.before),
                    .after = of(left.after, right.after)};
    readAsymmetry(sides, left, right, level);
    return sides;
}

void addMissing(BatteryComparison& battery, std::span<const Stored<TestKindId, TestKind>> kinds,
                std::span<const Stored<LiftId, Lift>> lifts, const TestDays& days) {
    for (const BatterySession& session : days.sessions)
        for (const Gap& gap : session.battery.gaps) {
            Words what;
            for (const auto& kind : kinds)
                if (gap.kind == kind.id)
                    what = sided(kind.value.name, gap.side);
            for (const auto& lift : lifts)
                if (gap.lift == lift.id)
                    what = sided(lift.value.name, gap.side);
            battery.missing.push_back(
                {.label = days.label, .date = session.date, .what = what, .reason = gap.reason});
        }
}

Words contextNote(const ContextChange& change) {
    switch (change.what) {
    case ContextChange::Of::Surface:
        return say("The surface changed (%1, then %2): a difference may be its doing. Tests over "
                   "that change are marked.",
                   change.before, change.after);
    case ContextChange::Of::Device:
        return say("The device changed (%1, then %2): a difference may be its doing. Tests over "
                   "that change are marked.",
                   change.before, change.after);
    case ContextChange::Of::Footwear:
        return say("The footwear changed (%1, then %2): a difference may be its doing. Tests over "
                   "that change are marked.",
                   change.before, change.after);
    case ContextChange::Of::Technique:
        break;
    }
    return say("The technique changed (%1, then %2): a difference may be its doing. Tests over "
               "that change are marked.",
               change.before, change.after);
}

void addContextNotes(BatteryComparison& battery) {
    std::vector<ContextChange> told;
    for (const TestChange& test : battery.tests)
        for (const ContextChange& change : test.context)
            if (std::find(told.begin(), told.end(), change) == told.end()) {
                told.push_back(change);
                battery.notes.push_back({Note::Kind::ContextChanged, contextNote(change)});
            }
}

} // namespace

stats::Interval changeInterval(double change, double te, double df, double level) {
    const double half = stats::tCritical(level, df) * std::numbers::sqrt2 * te;
    return {change - half, change + half};
}

std::optional<TestNoiseUsed> testNoise(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                       AthleteId athlete, const SquadTests& squad, double value) {
    using Origin = TestNoiseUsed::Origin;
    if (auto own = noiseOf(squad.repeats(kind.id, side, athlete), athletesOwn))
        return own;
    if (auto log = noiseOf(squad.repeats(kind.id, side), thisLogs))
        return log;
    const auto& given = kind.value.noise;
    if (!given)
        return noiseOfFew(kind, athlete, squad);
    return TestNoiseUsed{.te = given->percent ? given->value / 100 * value : given->value,
                         .df = std::numeric_limits<double>::infinity(),
                         .origin = Origin::Kind,
                         .source = asIs(cited(given->source))};
}

double asymmetryChangeSe(double te, double better, double weaker) {
    const double r = weaker / better;
    return 100 * te * std::sqrt(2 * (1 + r * r)) / better;
}

std::string_view word(ContextChange::Of what) {
    switch (what) {
    case ContextChange::Of::Surface:
        return "surface";
    case ContextChange::Of::Device:
        return "device";
    case ContextChange::Of::Footwear:
        return "footwear";
    case ContextChange::Of::Technique:
        break;
    }
    return "technique";
}

Words changeWords(const ContextChange& change) {
    switch (change.what) {
    case ContextChange::Of::Surface:
        return say("surface: %1, then %2", change.before, change.after);
    case ContextChange::Of::Device:
        return say("device: %1, then %2", change.before, change.after);
    case ContextChange::Of::Footwear:
        return say("footwear: %1, then %2", change.before, change.after);
    case ContextChange::Of::Technique:
        break;
    }
    return say("technique: %1, then %2", change.before, change.after);
}

std::vector<ContextChange> contextChanges(const Conditions& before, const Conditions& after,
                                          std::span<const Stored<DeviceId, Device>> devices) {
    using Of = ContextChange::Of;
    std::vector<ContextChange> changes;
    const auto look = [&](Of what, const std::string& a, const std::string& b) {
        if (!a.empty() && !b.empty() && a != b)
            changes.push_back({what, a, b});
    };
    look(Of::Surface, before.surface, after.surface);
    const auto name = [devices](const std::optional<DeviceId>& id) {
        const auto held = std::ranges::find_if(
            devices, [&](const Stored<DeviceId, Device>& device) { return id == device.id; });
        return held != devices.end() ? held->value.name
               : id                  ? std::to_string(raw(*id))
                                     : std::string();
    };
    look(Of::Device, name(before.device), name(after.device));
    look(Of::Footwear, before.footwear, after.footwear);
    look(Of::Technique, before.technique, after.technique);
    return changes;
}

BatteryComparison compareBattery(std::span<const Stored<TestKindId, TestKind>> kinds,
                                 AthleteId athlete, const TestDays& from, const TestDays& to,
                                 const SquadTests& squad,
                                 std::span<const Stored<LiftId, Lift>> lifts, double level,
                                 std::span<const Stored<DeviceId, Device>> devices) {
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
        const Words label = sided(test.kind.value.name, test.side);
        if (test.noReading.empty())
            addForest(battery, label, test.read, test.kind.value.higherIsBetter,
                      !test.context.empty());
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
    else if (comparison.oneRm->read.reading == Reading::NoFigure)
        battery.notDrawn.push_back(say("%1: %2", label, say("the change cannot be bounded")));
    else
        addForest(battery, label, comparison.oneRm->read, true, false);
}

Words testLabel(const TestKind& kind, BodySide side) {
    return sided(kind.name, side);
}

Words asymmetryWords(const Asymmetry& asymmetry) {
    const Words percent = figure(asymmetry.percent, 1);
    switch (asymmetry.better) {
    case BodySide::Left:
        return say("left by %1 %", percent);
    case BodySide::Right:
        return say("right by %1 %", percent);
    case BodySide::Both:
        break;
    }
    return say("even");
}

Words asymmetryChangeWords(const LeftRight& row) {
    if (!row.change)
        return {};
    if (!row.noReading.empty())
        return row.noReading;
    const Words by = signedFigure(row.read.change, 1);
    const Words low = signedFigure(row.read.interval.low, 1);
    const Words high = signedFigure(row.read.interval.high, 1);
    return row.read.reading == Reading::Better
               ? say("%1 points (%2 to %3): less uneven", by, low, high)
           : row.read.reading == Reading::Worse
               ? say("%1 points (%2 to %3): more uneven", by, low, high)
               : say("%1 points (%2 to %3): no clear change", by, low, high);
}

} // namespace slopebook::answers
