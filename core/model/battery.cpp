// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/battery.h"

#include "core/model/errors.h"
#include "core/model/phrases/model.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace slopebook {
namespace {

template <class Enum, std::size_t N>
using Named = std::array<std::pair<Enum, std::string_view>, N>;

constexpr Named<BodySide, 3> sides{
    {{BodySide::Both, "both"}, {BodySide::Left, "left"}, {BodySide::Right, "right"}}};
constexpr Named<TestFormula, 5> formulas{{{TestFormula::Value, "value"},
                                          {TestFormula::FlightHeight, "flight height"},
                                          {TestFormula::HeightRsi, "height rsi"},
                                          {TestFormula::FlightRsi, "flight rsi"},
                                          {TestFormula::PerBodyMass, "per body mass"}}};
constexpr Named<AttemptRule, 2> rules{{{AttemptRule::Best, "best"}, {AttemptRule::Mean, "mean"}}};

template <class Enum, std::size_t N>
std::string_view wordIn(const Named<Enum, N>& words, Enum value) {
    for (const auto& [one, text] : words)
        if (one == value)
            return text;
    return "";
}

template <class Enum, std::size_t N>
std::optional<Enum> valueIn(const Named<Enum, N>& words, std::string_view word) {
    for (const auto& [one, text] : words)
        if (text == word)
            return one;
    return {};
}

Words shownValue(double value) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value);
    return figure({text.data(), end.ptr});
}

bool blank(const std::string& text) {
    return text.find_first_not_of(" \t\r\n") == std::string::npos;
}

Words sideWords(BodySide side) {
    switch (side) {
    case BodySide::Left:
        return say("left");
    case BodySide::Right:
        return say("right");
    case BodySide::Both:
        break;
    }
    return say("both");
}

void requirePositive(const std::optional<double>& value, Phrase expected) {
    if (value && !(*value > 0 && *value < largestTestValue))
        throw BadInput(shownValue(*value), say(expected));
}

} // namespace

std::string_view word(BodySide side) {
    return wordIn(sides, side);
}
std::optional<BodySide> bodySideFromWord(std::string_view word) {
    return valueIn(sides, word);
}
std::string_view word(TestFormula formula) {
    return wordIn(formulas, formula);
}
std::optional<TestFormula> testFormulaFromWord(std::string_view word) {
    return valueIn(formulas, word);
}
std::string_view word(AttemptRule rule) {
    return wordIn(rules, rule);
}
std::optional<AttemptRule> attemptRuleFromWord(std::string_view word) {
    return valueIn(rules, word);
}

bool takesContact(TestFormula formula) {
    return formula == TestFormula::HeightRsi || formula == TestFormula::FlightRsi;
}

const TestAttempts* Battery::test(TestKindId kind) const {
    const auto found = std::ranges::find(tests, kind, &TestAttempts::kind);
    return found == tests.end() ? nullptr : &*found;
}

Battery asKept(Battery battery) {
    auto& tests = battery.tests;
    const auto hasAttempts = [](const TestAttempts& test) { return !test.attempts.empty(); };
    std::erase_if(tests, [&](const TestAttempts& test) {
        return !hasAttempts(test) && test.conditions == Conditions{};
    });
    const auto without = std::stable_partition(tests.begin(), tests.end(), hasAttempts);
    std::sort(without, tests.end(),
              [](const TestAttempts& a, const TestAttempts& b) { return a.kind < b.kind; });
    return battery;
}

Conditions& conditionsOf(Battery& battery, TestKindId kind) {
    auto held = std::ranges::find(battery.tests, kind, &TestAttempts::kind);
    if (held == battery.tests.end())
        held = battery.tests.insert(held, {.kind = kind, .attempts = {}});
    return held->conditions;
}

void validate(const TestKind& kind) {
    if (blank(kind.name))
        throw BadInput(say("a blank name"), say("the name of the test"));
    if (blank(kind.unit))
        throw BadInput(say("no unit"), say("the unit of %1, such as m, s, N or points", kind.name));
    if (kind.attempts < 1 || kind.attempts > 50)
        throw BadInput(inWords(kind.attempts), say("1 to 50 attempts"));
    if (kind.bothToo && !kind.twoSided)
        throw BadInput(say("both at once of a test without sides"),
                       say("left and right, where both are tested as well"));
    if (kind.bestOf < 0 || kind.bestOf > 50)
        throw BadInput(inWords(kind.bestOf), say("the best 1 to 50 attempts, or all"));
    if (kind.bestOf > 0 && kind.rule != AttemptRule::Mean)
        throw BadInput(say("the best %1 of which the best counts", kind.bestOf),
                       say("the mean of the best attempts, or the best one"));
    if (kind.decimals < 0 || kind.decimals > 4)
        throw BadInput(inWords(kind.decimals), say("0 to 4 decimals"));
    if (kind.noise) {
        requirePositive(kind.noise->value, "a typical error above 0");
        if (blank(kind.noise->source))
            throw BadInput(say("no source"), say("where the typical error comes from"));
    }
    requirePositive(kind.smallest, "a smallest change that matters above 0");
}

void validate(const Attempt& attempt, const TestKind& kind) {
    if (!(attempt.value > 0 && attempt.value < largestTestValue))
        throw BadInput(shownValue(attempt.value),
                       say("a value above 0; a test that was not possible is "
                           "written down as such"));
    if (takesContact(kind.formula) != attempt.contact.has_value())
        throw BadInput(attempt.contact ? say("a contact time") : say("no contact time"),
                       attempt.contact ? say("%1 takes none", kind.name)
                                       : say("the contact time in s after the first number"));
    if (attempt.contact && !(*attempt.contact > 0 && *attempt.contact < longestContactTime))
        throw BadInput(shownValue(*attempt.contact), say("a contact time above 0 and below 10 s"));
    if (kind.twoSided != (attempt.side != BodySide::Both) &&
        !(kind.bothToo && attempt.side == BodySide::Both))
        throw BadInput(sideWords(attempt.side),
                       kind.twoSided ? say("left or right: %1 is tested side by side", kind.name)
                                     : say("no side: %1 has none", kind.name));
}

void validate(const Battery& battery) {
    for (std::size_t i = 0; i < battery.tests.size(); ++i)
        for (std::size_t k = i + 1; k < battery.tests.size(); ++k)
            if (battery.tests[i].kind == battery.tests[k].kind)
                throw BadInput(say("a test twice"), say("each test once in a session"));
    for (const Gap& gap : battery.gaps) {
        if (gap.kind.has_value() == gap.lift.has_value())
            throw BadInput(say("a gap about nothing"),
                           say("the test or the lift that was not possible"));
        if (gap.load && !gap.lift)
            throw BadInput(say("a load of a test"), say("a load of a lift that was not possible"));
        if (blank(gap.reason))
            throw BadInput(say("no reason"), say("why it was not possible"));
    }
}

} // namespace slopebook
