// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/testkinds.h"

#include "core/answers/embeddedcsv.h"
#include "core/model/errors.h"
#include "core/model/phrases/names.h"
#include "resources/embedded.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace slopebook::answers {

namespace {

constexpr const char* file = "testkinds.csv";
constexpr std::array<std::string_view, 14> testColumns{"name",
                                                       "unit",
                                                       "better",
                                                       "sides",
                                                       "rule",
                                                       "attempts",
                                                       "formula",
                                                       "decimals",
                                                       "typical_error",
                                                       "typical_error_in",
                                                       "typical_error_source",
                                                       "smallest",
                                                       "smallest_source",
                                                       "note"};
enum TestColumn {
    Name,
    Unit,
    Better,
    Sides,
    Rule,
    Attempts,
    Formula,
    Decimals,
    Error,
    ErrorIn,
    ErrorSource,
    SmallestValue,
    SmallestSource,
    NoteText
};

class TestCells {
public:
    TestCells(const std::vector<std::string>& row, long line) : m_row(row), m_line(line) {
        if (row.size() != testColumns.size())
            throw BadInput({file, line, {}}, asIs(std::to_string(row.size()) + " columns"),
                           inWords(testColumns.size()));
    }
    const std::string& text(TestColumn column) const { return m_row[column]; }
    bool oneOf(TestColumn column, std::string_view yes, std::string_view no) const {
        if (text(column) != yes && text(column) != no)
            fail(column, std::string(yes) + " or " + std::string(no));
        return text(column) == yes;
    }
    int whole(TestColumn column) const {
        int value = 0;
        const std::string& shown = text(column);
        const auto end = std::from_chars(shown.data(), shown.data() + shown.size(), value);
        if (end.ec != std::errc{} || end.ptr != shown.data() + shown.size())
            fail(column, "a whole number");
        return value;
    }
    std::optional<double> figure(TestColumn column, TestColumn source) const {
        const std::string& shown = text(column);
        if (shown.empty())
            return std::nullopt;
        double value = 0;
        const auto end = std::from_chars(shown.data(), shown.data() + shown.size(), value);
        if (end.ec != std::errc{} || end.ptr != shown.data() + shown.size() || !(value > 0))
            fail(column, "a positive figure");
        if (text(source).empty())
            fail(source, "the source of " + shown);
        return value;
    }
    template <class T>
    T named(TestColumn column, std::optional<T> value, const char* expected) const {
        if (!value)
            fail(column, expected);
        return *value;
    }
    [[noreturn]] void fail(TestColumn column, const std::string& expected) const {
        throw BadInput({file, m_line, inWords(testColumns[column])},
                       asIs("\"" + text(column) + "\""), asIs(expected));
    }

private:
    const std::vector<std::string>& m_row;
    long m_line;
};

TestKind kindOf(const TestCells& cells) {
    TestKind kind{.name = cells.text(Name),
                  .unit = cells.text(Unit),
                  .higherIsBetter = cells.oneOf(Better, "higher", "lower"),
                  .twoSided = cells.oneOf(Sides, "two", "one"),
                  .rule = cells.named(Rule, attemptRuleFromWord(cells.text(Rule)), "best or mean"),
                  .attempts = cells.whole(Attempts),
                  .formula = cells.named(Formula, testFormulaFromWord(cells.text(Formula)),
                                         "one of the formulas"),
                  .decimals = cells.whole(Decimals),
                  .noise = {},
                  .smallest = cells.figure(SmallestValue, SmallestSource),
                  .smallestSource = cells.text(SmallestSource),
                  .note = cells.text(NoteText)};
    if (const auto error = cells.figure(Error, ErrorSource))
        kind.noise = TestNoise{.value = *error,
                               .percent = cells.oneOf(ErrorIn, "percent", "unit"),
                               .source = cells.text(ErrorSource)};
    validate(kind);
    return kind;
}

} // namespace

std::vector<TestKind> parseTestKinds(std::string_view csv) {
    const auto rows = csvRows(csv, file);
    if (rows.empty() || !std::ranges::equal(rows.front(), testColumns))
        throw BadInput({file, 1, {}}, asIs("another header row"), asIs("name, unit, ..., note"));
    std::vector<TestKind> kinds;
    for (std::size_t i = 1; i < rows.size(); ++i)
        kinds.push_back(kindOf(TestCells(rows[i], static_cast<long>(i) + 1)));
    return kinds;
}

std::span<const TestKind> builtInTestKinds() {
    static const std::vector<TestKind> kinds = parseTestKinds(resources::testKinds().front().text);
    return kinds;
}

Words testName(const std::string& name) {
    return std::ranges::find(phrases::testNames, name) == std::end(phrases::testNames)
               ? asIs(name)
               : filled(name);
}

std::optional<TestKind> builtInTestKind(std::string_view name) {
    const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; };
    for (const TestKind& kind : builtInTestKinds())
        if (std::ranges::equal(kind.name, name, {}, lower, lower))
            return kind;
    return std::nullopt;
}

} // namespace slopebook::answers
