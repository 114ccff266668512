// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/batterycomparison.h"

#include "core/answers/amongblocks.h"
#include "core/answers/figures.h"
#include "core/answers/readingwords.h"
#include "core/answers/smallest.h"
#include "core/answers/testblock.h"
#include "core/answers/testkinds.h"
#include "core/answers/testsmallest.h"
#include "core/answers/toldreadings.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace slopebook::answers {

namespace {

TestBlock blockOf(const Stored<TestKindId, TestKind>& kind, const TestDays& days, BodySide side) {
    return days.means ? testBlock(kind, days.sessions, side) : latestOf(kind, days.sessions, side);
}

/// What stands for a side, else the latest session that says why there is nothing.
SeenTest seen(const TestBlock& block, const TestKind& kind) {
    if (block.values.empty()) {
        SeenTest none{.value = block.why};
        if (block.whySaid) {
            none.session = block.whySaid->session;
            none.first = none.date = block.whySaid->date;
            none.conditions = block.whyConditions;
        }
        return none;
    }
    return {.value = valueOf(block, kind),
            .session = block.sessions.back().session,
            .first = block.sessions.front().date,
            .date = block.sessions.back().date,
            .conditions = block.conditions.back(),
            .sessions = static_cast<int>(block.values.size())};
}

/// One test on one side of the body, from both sides of the comparison.
class TestReader {
public:
    TestReader(TestChange& test, AthleteId athlete, const SquadTests& squad, double level,
               Devices devices, const std::array<TestBlock, 2>& blocks)
        : m_test(test), m_athlete(athlete), m_squad(squad), m_level(level), m_devices(devices),
          m_blocks(blocks) {}

    void read() {
        m_test.before = seen(m_blocks[0], m_test.kind.value);
        m_test.after = seen(m_blocks[1], m_test.kind.value);
        giveInterval(m_test.before, m_blocks[0]);
        giveInterval(m_test.after, m_blocks[1]);
        const auto& before = m_test.before.value;
        const auto& after = m_test.after.value;
        if (!before || !after) {
            const Words& why = (before ? after : before).why().reason;
            m_test.noReading = !before && !after ? say("on both sides %1", why)
                               : !before         ? say("before: %1", why)
                                                 : say("after: %1", why);
            return;
        }
        const double change = after->value - before->value;
        m_test.change = change;
        m_test.percent = 100 * change / before->value;
        m_test.noise = noise(m_blocks[0], m_blocks[1]);
        m_test.attemptNoise = leastNoise(m_blocks[0], m_blocks[1]);
        const Under under = underOfBlocks(m_blocks[0], m_blocks[1], m_devices);
        m_test.conditions = under.changes;
        if (m_test.noise)
            readChange(change, under);
        else
            sayNoNoise(change);
    }

private:
    std::optional<TestNoiseUsed> noise(const TestBlock& from, const TestBlock& to) const {
        return noiseBetween(m_test.kind, m_test.side, m_athlete, m_squad, from, to, m_blocks);
    }

    void giveInterval(SeenTest& seen, const TestBlock& block) const {
        if (!seen.value)
            return;
        if (const auto known = noise(block, block))
            seen.interval = meanInterval(*block.mean(), {known->te, known->df}, m_level);
    }

    void readChange(double change, const Under& under) {
        const double te = std::sqrt(
            varianceOfMeans(m_test.noise->te, m_test.before.sessions, m_test.after.sessions));
        const auto interval = [&](double level) {
            return changeInterval(change, te, m_test.noise->df, level);
        };
        m_test.read = answers::read(change, interval(m_level), interval(equivalenceLevel(m_level)),
                                    smallestOfTest(m_test.kind, m_test.side, m_squad),
                                    m_test.kind.value.higherIsBetter);
        m_test.read.at80 = interval(leaningLevel);
        setUnder(m_test.read, under);
        if (!under.notComparable.empty())
            m_test.noReading = say("not comparable: %1", under.notComparable);
    }

    void sayNoNoise(double change) {
        m_test.read.change = change;
        m_test.read.smallest = smallestOfTest(m_test.kind, m_test.side, m_squad);
        m_test.noReading = say("no typical error is known: repeat the test, or give the test one");
        if (m_test.attemptNoise)
            m_test.noReading =
                say("its attempts alone spread by %1 %2, a lower bound of its noise: the same test "
                    "on two days of one week, the second marked as a repeat, gives the whole",
                    figure(fixed(*m_test.attemptNoise, m_test.kind.value.decimals + 1)),
                    m_test.kind.value.unit);
    }

    TestChange& m_test;
    AthleteId m_athlete;
    const SquadTests& m_squad;
    double m_level;
    Devices m_devices;
    const std::array<TestBlock, 2>& m_blocks;
};

/// In its own unit, which is said: the bars about it are in units of the smallest change.
Words ownUnit(const Measure& measure, const ReadChange& read) {
    if (measure.kind == Measure::Kind::OneRm)
        return maxCell(read);
    const Words cell = sizedCell(read, measure.saidDecimals());
    return cell == sizedReading(read) ? cell : say("%1 %2", cell, measure.unit);
}

/// A row without a bar: why it has none.
void addWithoutBar(BatteryComparison& battery, const Words& label, const Measure& measure,
                   const ReadChange& read, const Words& why) {
    const bool apart = !read.notComparable.empty();
    const bool figure = !apart && read.reading != Reading::NoFigure;
    battery.forest.push_back({.label = label,
                              .named = figure ? namedReading(label, measure, read).name : label,
                              .noBar = why,
                              .word = figure ? ownUnit(measure, read) : readingWords(read.reading),
                              .reading = figure ? read.reading : Reading::NoFigure,
                              .otherConditions = figure && !read.under.empty(),
                              .tells = figure ? read.tells() : 0,
                              .notComparable = apart});
}

void addForest(BatteryComparison& battery, const Words& label, const Measure& measure,
               const ReadChange& change, bool extrapolated = false) {
    if (!change.smallest) {
        addWithoutBar(battery, label, measure, change,
                      say("no smallest change that matters is known"));
        return;
    }
    const bool apart = !change.notComparable.empty();
    const double m = change.smallest->value * (measure.higherIsBetter ? 1 : -1);
    const double a = change.interval.low / m;
    const double b = change.interval.high / m;
    battery.forest.push_back({.label = label,
                              .named = namedReading(label, measure, change).name,
                              .word = ownUnit(measure, change),
                              .change = change.change / m,
                              .interval = {std::min(a, b), std::max(a, b)},
                              .reading = change.reading,
                              .otherConditions = !apart && !change.under.empty(),
                              .extrapolated = !apart && extrapolated,
                              .brief = leaningReading(change),
                              .tells = change.tells(),
                              .notComparable = apart});
}

Measure measureOf(const TestKind& kind) {
    return {.kind = Measure::Kind::Test,
            .unit = kind.unit,
            .decimals = kind.decimals,
            .higherIsBetter = kind.higherIsBetter};
}

void addMissing(BatteryComparison& battery, std::span<const Stored<TestKindId, TestKind>> kinds,
                std::span<const Stored<LiftId, Lift>> lifts, const TestDays& days) {
    for (const BatterySession& session : days.sessions)
        for (const Gap& gap : session.battery.gaps) {
            Words what;
            for (const auto& kind : kinds)
                if (gap.kind == kind.id)
                    what = sided(testName(kind.value.name), gap.side);
            for (const auto& lift : lifts)
                if (gap.lift == lift.id)
                    what = gap.load ? say("%1, %2", lift.value.name, *gap.load)
                                    : sided(asIs(lift.value.name), gap.side);
            battery.missing.push_back(
                {.label = days.label, .date = session.date, .what = what, .reason = gap.reason});
        }
}

/// One difference, with the tests that it is about where others were done without it.
Note contextNote(const BatteryComparison& battery, const ConditionChange& change) {
    std::vector<Words> names; // of the sides of a test once
    bool all = true;
    for (const TestChange& test : battery.tests) {
        if (std::ranges::find(test.conditions, change) == test.conditions.end()) {
            all = all && !test.change; // nothing is read of it
            continue;
        }
        Words name = testName(test.kind.value.name);
        if (std::ranges::find(names, name) == names.end())
            names.push_back(std::move(name));
    }
    const Words note = conditionNote(change);
    return {Note::Kind::ContextChanged, all ? note : say("%1: %2", listed(std::move(names)), note)};
}

/// Each difference once.
void addContextNotes(BatteryComparison& battery) {
    std::vector<ConditionChange> told;
    for (const TestChange& test : battery.tests)
        for (const ConditionChange& change : test.conditions)
            if (std::ranges::find(told, change) == told.end())
                told.push_back(change);
    for (const ConditionChange& change : told)
        battery.notes.push_back(contextNote(battery, change));
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
    if (auto own = squad.ownSmallest(kind.id, side))
        return own;
    const TestKind& k = kind.value;
    std::optional<std::pair<double, std::string>> published;
    if (k.smallest && !k.smallestSource.empty())
        published.emplace(*k.smallest, cited(k.smallestSource));
    return chooseSmallest({}, published ? std::nullopt : k.smallest, published);
}

BatteryComparison compareBattery(std::span<const Stored<TestKindId, TestKind>> kinds,
                                 AthleteId athlete, const TestDays& from, const TestDays& to,
                                 const SquadTests& squad,
                                 std::span<const Stored<LiftId, Lift>> lifts, double level,
                                 Devices devices, const AmongBlocks* among) {
    BatteryComparison battery{.level = level,
                              .allAtOnce = among && !among->empty(),
                              .fromLabel = from.label,
                              .toLabel = to.label};
    for (const auto& kind : kinds) {
        const auto sides = sidesOf(kind.value);
        const std::size_t first = battery.tests.size();
        bool anything = false;
        for (const BodySide side : sides) {
            TestChange test{.kind = kind, .side = side};
            const std::array blocks{blockOf(kind, from, side), blockOf(kind, to, side)};
            TestReader(test, athlete, squad, level, devices, blocks).read();
            if (among)
                among->tell(test.read,
                            {.kind = Measure::Kind::Test, .test = kind.id, .side = side});
            anything = anything || test.before.session || test.after.session;
            battery.tests.push_back(std::move(test));
        }
        if (!anything) {
            battery.tests.resize(first);
            continue;
        }
        if (kind.value.twoSided) {
            battery.leftRight.push_back(
                leftRightOf(battery.tests[first], battery.tests[first + 1], level));
            if (among)
                among->tell(battery.leftRight.back().read,
                            {.kind = Measure::Kind::Asymmetry, .test = kind.id});
        }
    }
    for (const TestChange& test : battery.tests) {
        const Words label = sided(testName(test.kind.value.name), test.side);
        const Measure measure = measureOf(test.kind.value);
        if (test.noReading.empty() || (!test.read.notComparable.empty() && test.read.smallest))
            addForest(battery, label, measure, test.read);
        else
            addWithoutBar(battery, label, measure, test.read, test.noReading);
    }
    addMissing(battery, kinds, lifts, from);
    addMissing(battery, kinds, lifts, to);
    addContextNotes(battery);
    return battery;
}

void addLift(BatteryComparison& battery, const Lift& lift, const Comparison& comparison) {
    const Measure speed{.kind = Measure::Kind::Speed, .unit = "m/s"};
    const Measure mass{.kind = Measure::Kind::OneRm, .unit = "kg", .decimals = 1};
    for (const ChangeAt& at : comparison.at)
        if (at.checkLoad)
            addForest(battery, say("%1, speed at %2", lift.name, at.load), speed, at.read,
                      at.extrapolated);
    if (lift.ballistic)
        return; // thrown or jumped: nobody asks for its 1RM
    const Words label = say("%1, estimated 1RM", lift.name);
    if (!comparison.oneRm)
        addWithoutBar(battery, label, mass, {}, comparison.oneRm.why().reason);
    else if (const ReadChange& read = comparison.oneRm->read;
             read.reading == Reading::NoFigure && comparison.under.notComparable.empty())
        addWithoutBar(battery, label, mass, read, say("the change cannot be bounded"));
    else if (!std::isfinite(read.interval.high - read.interval.low))
        addWithoutBar(battery, label, mass, read, comparison.under.notComparable);
    else
        addForest(battery, label, mass, read,
                  comparison.from.oneRm->extrapolatedFar() ||
                      comparison.to.oneRm->extrapolatedFar());
}

Words testLabel(const TestKind& kind, BodySide side) {
    return sided(testName(kind.name), side);
}

Words forestReading(const ForestRow& row) {
    return row.notComparable                                   ? say("not comparable")
           : !row.noBar.empty()                                ? row.word
           : row.reading == Reading::Unclear && row.tells == 0 ? row.word
                                                               : row.brief;
}

namespace {

bool hasAFigure(const ForestRow& row) {
    return !row.notComparable && row.reading != Reading::NoFigure;
}

/// Where one in five or fewer is not so, a mark on each of the others says nothing any more.
ForestKey::Marked markedOf(std::span<const ForestRow> rows, bool ForestRow::*so) {
    constexpr long fewest = 4;
    const auto all = std::ranges::count_if(rows, hasAFigure);
    const auto these = std::ranges::count_if(
        rows, [so](const ForestRow& row) { return hasAFigure(row) && row.*so; });
    if (these == 0)
        return ForestKey::Marked::None;
    if (these < fewest || (all - these) * 5 > all)
        return ForestKey::Marked::These;
    return these == all ? ForestKey::Marked::All : ForestKey::Marked::Others;
}

std::string markOf(bool so, ForestKey::Marked marked, const char* these, const char* others) {
    return so && marked == ForestKey::Marked::These     ? these
           : !so && marked == ForestKey::Marked::Others ? others
                                                        : "";
}

} // namespace

ForestKey forestKey(std::span<const ForestRow> rows) {
    return {.conditions = markedOf(rows, &ForestRow::otherConditions),
            .extrapolated = markedOf(rows, &ForestRow::extrapolated)};
}

std::string forestMarks(const ForestRow& row, const ForestKey& key) {
    if (!hasAFigure(row))
        return {};
    return markOf(row.otherConditions, key.conditions, "*", "\u00b0") +
           markOf(row.extrapolated, key.extrapolated, "\u2020", "\u2021");
}

std::vector<Words> forestMarkWords(const ForestKey& key) {
    using Marked = ForestKey::Marked;
    std::vector<Words> words;
    if (key.conditions == Marked::These)
        words.push_back(say("*: under other conditions than before"));
    if (key.conditions == Marked::Others)
        words.push_back(say("\u00b0: under the same conditions"));
    if (key.extrapolated == Marked::These)
        words.push_back(say("\u2020: drawn beyond the loads lifted"));
    if (key.extrapolated == Marked::Others)
        words.push_back(say("\u2021: within the loads lifted"));
    return words;
}

std::vector<Words> forestAllWords(const ForestKey& key) {
    using Marked = ForestKey::Marked;
    std::vector<Words> words;
    if (key.conditions == Marked::All)
        words.push_back(say("All under other conditions than before"));
    if (key.conditions == Marked::Others)
        words.push_back(say("Under other conditions than before: all but those marked \u00b0"));
    if (key.extrapolated == Marked::All)
        words.push_back(say("All drawn beyond the loads lifted"));
    if (key.extrapolated == Marked::Others)
        words.push_back(say("Drawn beyond the loads lifted: all but those marked \u2021"));
    return words;
}

} // namespace slopebook::answers
