// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/battery.h"

#include "core/model/errors.h"

#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace slopebook {
namespace {

template <class Enum, std::size_t N>
using Words = std::array<std::pair<Enum, std::string_view>, N>;

constexpr Words<BodySide, 3> sides{
    {{BodySide::Both, "both"}, {BodySide::Left, "left"}, {BodySide::Right, "right"}}};
constexpr Words<TestFormula, 5> formulas{{{TestFormula::Value, "value"},
                                          {TestFormula::FlightHeight, "flight height"},
                                          {TestFormula::HeightRsi, "height rsi"},
                                          {TestFormula::FlightRsi, "flight rsi"},
                                          {TestFormula::PerBodyMass, "per body mass"}}};
constexpr Words<AttemptRule, 2> rules{{{AttemptRule::Best, "best"}, {AttemptRule::Mean, "mean"}}};

template <class Enum, std::size_t N>
std::string_view wordIn(const Words<Enum, N>& words, Enum value) {
    for (const auto& [one, text] : words)
        if (one == value)
            return text;
    return "";
}

template <class Enum, std::size_t N>
std::optional<Enum> valueIn(const Words<Enum, N>& words, std::string_view word) {
    for (const auto& [one, text] : words)
        if (text == word)
            return one;
    return {};
}

std::string shown(double value) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value);
    return {text.data(), end.ptr};
}

bool blank(const std::string& text) {
    return text.find_first_not_of(" \t\r\n") == std::string::npos;
}

void requirePositive(const std::optional<double>& value, const char* expected) {
    if (value && !(*value > 0 && *value < largestTestValue))
        throw BadInput(shown(*value), expected);
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

void validate(const TestKind& kind) {
    if (blank(kind.name))
        throw BadInput("a blank name", "the name of the test");
    if (blank(kind.unit))
        throw BadInput("no unit", "the unit of " + kind.name + ", such as m, s, N or points");
    if (kind.attempts < 1 || kind.attempts > 50)
        throw BadInput(std::to_string(kind.attempts), "1 to 50 attempts");
    if (kind.decimals < 0 || kind.decimals > 4)
        throw BadInput(std::to_string(kind.decimals), "0 to 4 decimals");
    if (kind.noise) {
        requirePositive(kind.noise->value, "a typical error above 0");
        if (blank(kind.noise->source))
            throw BadInput("no source", "where the typical error comes from");
    }
    requirePositive(kind.smallest, "a smallest change that matters above 0");
}

void validate(const Attempt& attempt, const TestKind& kind) {
    if (!(attempt.value > 0 && attempt.value < largestTestValue))
        throw BadInput(shown(attempt.value), "a value above 0; a test that was not possible is "
                                             "written down as such");
    if (takesContact(kind.formula) != attempt.contact.has_value())
        throw BadInput(attempt.contact ? "a contact time" : "no contact time",
                       attempt.contact ? kind.name + " takes none"
                                       : "the contact time in s after the first number");
    if (attempt.contact && !(*attempt.contact > 0 && *attempt.contact < longestContactTime))
        throw BadInput(shown(*attempt.contact), "a contact time above 0 and below 10 s");
    if (kind.twoSided != (attempt.side != BodySide::Both))
        throw BadInput(std::string(word(attempt.side)),
                       kind.twoSided ? "left or right: " + kind.name + " is tested side by side"
                                     : "no side: " + kind.name + " has none");
}

void validate(const Battery& battery) {
    for (std::size_t i = 0; i < battery.tests.size(); ++i)
        for (std::size_t k = i + 1; k < battery.tests.size(); ++k)
            if (battery.tests[i].kind == battery.tests[k].kind)
                throw BadInput("a test twice", "each test once in a session");
    for (const Gap& gap : battery.gaps) {
        if (gap.kind.has_value() == gap.lift.has_value())
            throw BadInput("a gap about nothing", "the test or the lift that was not possible");
        if (blank(gap.reason))
            throw BadInput("no reason", "why it was not possible");
    }
}

} // namespace slopebook
