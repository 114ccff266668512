// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/batterycsv.h"

#include "core/exchange/batterycolumns.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>

namespace slopebook::exchange {

namespace {

constexpr Phrase loadAtMost = "a load in kg from 0 to 2000, such as 60";

/// One of two words; blank is the second.
bool oneOf(const Cells& cells, std::size_t column, std::string_view yes, std::string_view no) {
    if (!cells.said(column) || cells.raw(column) == no)
        return false;
    if (cells.raw(column) != yes)
        cells.refuse(column, say("%1 or %2", yes, no));
    return true;
}

TestKind readTest(const Cells& cells) {
    constexpr Phrase positive = "a number above 0, such as 0.05";
    TestKind kind;
    kind.name = cells.name(TestName);
    kind.unit = cells.name(TestUnit);
    kind.higherIsBetter = !oneOf(cells, TestBetter, "lower", "higher");
    kind.bothToo = cells.raw(TestSides) == bothTooWord;
    kind.twoSided = kind.bothToo || oneOf(cells, TestSides, "two", "one");
    if (cells.said(TestRule))
        kind.rule = need(cells, TestRule, attemptRuleFromWord(cells.raw(TestRule)), "best or mean");
    kind.bestOf = cells.count(TestBestOf).value_or(0);
    kind.attempts = cells.count(TestPlanned).value_or(3);
    if (cells.said(TestFormulaWord))
        kind.formula = need(cells, TestFormulaWord, testFormulaFromWord(cells.raw(TestFormulaWord)),
                            "value, flight height, height rsi, flight rsi or per body mass");
    if (const auto decimals = cells.number(TestDecimals, 0, 4, false, "0 to 4"))
        kind.decimals = static_cast<int>(*decimals);
    if (const auto error = cells.number(TestError, 0, largestTestValue, true, positive))
        kind.noise = TestNoise{.value = *error,
                               .percent = oneOf(cells, TestErrorIn, "percent", "unit"),
                               .source = cells.name(TestErrorSource)};
    kind.smallest = cells.number(TestSmallest, 0, largestTestValue, true, positive);
    kind.smallestSource = cells.text(TestSmallestSource);
    kind.note = cells.text(TestNote);
    return kind;
}

void fill(const Cells& cells, std::size_t column, std::string& held, Phrase otherwise) {
    const std::string said = cells.text(column);
    if (said.empty() || said == held)
        return;
    if (!held.empty())
        cells.refuse(column, say(otherwise, held));
    held = said;
}

void fillContext(const Cells& cells, StagedBattery::Context& held, Phrase otherwise) {
    fill(cells, AttemptSurface, held.surface, otherwise);
    fill(cells, AttemptDevice, held.device, otherwise);
    fill(cells, AttemptFootwear, held.footwear, otherwise);
    fill(cells, AttemptTechnique, held.technique, otherwise);
    fill(cells, AttemptPlace, held.place, otherwise);
    fill(cells, AttemptNotComparable, held.notComparable, otherwise);
}

bool saysContext(const Cells& cells) {
    for (const AttemptColumn column : {AttemptSurface, AttemptDevice, AttemptFootwear,
                                       AttemptTechnique, AttemptPlace, AttemptNotComparable})
        if (cells.said(column))
            return true;
    return false;
}

Attempt readAttempt(const Cells& cells) {
    constexpr Phrase expected = "a value above 0; where the test was not possible, the reason "
                                "under not_possible and nothing here";
    constexpr Phrase contact = "a contact time in s above 0 and under 10";
    Attempt attempt;
    if (cells.said(AttemptSide))
        attempt.side = need(cells, AttemptSide, bodySideFromWord(cells.raw(AttemptSide)),
                            "left, right, both or nothing");
    attempt.value = need(cells, AttemptValue,
                         cells.number(AttemptValue, 0, largestTestValue, true, expected), expected);
    attempt.contact = cells.number(AttemptContact, 0, longestContactTime, true, contact);
    attempt.note = cells.text(AttemptNote);
    attempt.excluded = cells.text(AttemptExcluded);
    return attempt;
}

void takeMissing(const Cells& cells, const Where& where, StagedBattery& session) {
    StagedBattery::Missing missing{.test = cells.text(AttemptTest),
                                   .lift = cells.text(AttemptLift),
                                   .side = BodySide::Both,
                                   .load = cells.mass(AttemptLoad, storableLoadLimit, loadAtMost),
                                   .reason = cells.text(AttemptNotPossible),
                                   .where = where};
    if (missing.test.empty() == missing.lift.empty())
        cells.refuse(AttemptNotPossible, "a test or a lift that it is about, one of them");
    if (missing.load && missing.lift.empty())
        cells.refuse(AttemptLoad, "no load of a test");
    if (cells.said(AttemptValue))
        cells.refuse(AttemptValue, "no value where the test was not possible");
    if (cells.said(AttemptSide))
        missing.side = need(cells, AttemptSide, bodySideFromWord(cells.raw(AttemptSide)),
                            "left, right, both or nothing");
    session.missing.push_back(std::move(missing));
}

} // namespace

bool isTestsHeader(const std::vector<std::string>& header) {
    return hasColumns(header, {"test", "unit", "better"});
}

bool isAttemptsHeader(const std::vector<std::string>& header) {
    return hasColumns(header, {"date", "athlete", "test", "value"});
}

std::vector<std::string> BatteryTables::readTests(const std::filesystem::path& file) {
    return readTable(file, testColumns, testRequired, [&](const Cells& cells, const Where& where) {
        TestKind kind = readTest(cells);
        try {
            validate(kind);
        } catch (const BadInput& bad) {
            throw BadInput(where, bad.found(), bad.expected());
        }
        tests.push_back({std::move(kind), where});
    });
}

std::vector<std::string> BatteryTables::readAttempts(const std::filesystem::path& file) {
    constexpr Phrase dateExpected = "a date written year-month-day, such as 2026-03-14";
    const bool eachTest = hasColumns(headerOf(file), {attemptColumns[AttemptPlace]});
    return readTable(
        file, attemptColumns, attemptRequired, [&](const Cells& cells, const Where& where) {
            const std::string athlete = cells.name(AttemptAthlete);
            const Date date = need(cells, AttemptDate, cells.date(AttemptDate), dateExpected);
            const int ordinal = cells.count(AttemptSession).value_or(1);
            // Rows of one session mostly stand together.
            auto at = std::find_if(sessions.rbegin(), sessions.rend(), [&](const auto& s) {
                return s.date == date && s.ordinal == ordinal && s.athlete == athlete;
            });
            StagedBattery& session = at != sessions.rend()
                                         ? *at
                                         : sessions.emplace_back(StagedBattery{.athlete = athlete,
                                                                               .date = date,
                                                                               .ordinal = ordinal,
                                                                               .where = where,
                                                                               .context = {},
                                                                               .tests = {},
                                                                               .missing = {}});
            if (!eachTest)
                fillContext(cells, session.context,
                            "\"%1\", as an earlier row of this session says");
            if (cells.said(AttemptNotPossible)) {
                takeMissing(cells, where, session);
                return;
            }
            if (!cells.said(AttemptTest) && !cells.said(AttemptValue) && !cells.said(AttemptLift))
                return; // a context alone
            const std::string name = cells.name(AttemptTest);
            auto test = std::ranges::find(session.tests, nameKey(name),
                                          [](const auto& each) { return nameKey(each.name); });
            if (test == session.tests.end())
                test = session.tests.insert(test, {.name = name, .attempts = {}, .where = where});
            if (eachTest)
                fillContext(cells, test->context, "\"%1\", as an earlier row of this test says");
            if (cells.said(AttemptUnit)) {
                const std::string unit = cells.text(AttemptUnit);
                if (!test->unit.empty() && test->unit != unit)
                    cells.refuse(AttemptUnit,
                                 say("\"%1\", as an earlier row of this test says", test->unit));
                test->unit = unit;
            }
            if (cells.said(AttemptValue) || !saysContext(cells) || !eachTest)
                test->attempts.push_back(readAttempt(cells));
        });
}

} // namespace slopebook::exchange
