// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tracecsv.h"

#include "core/exchange/cells.h"
#include "core/exchange/csvreader.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

namespace slopebook::exchange {

namespace {

constexpr long longestPreamble = 200;
struct EnoughSeen {}; // stops reading

std::optional<double> numberIn(std::string text, char delimiter) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string::npos)
        return {};
    text = text.substr(first, text.find_last_not_of(" \t") - first + 1);
    if (delimiter != ',')
        std::replace(text.begin(), text.end(), ',', '.');
    return readNumber(text);
}

std::size_t numbersIn(const CsvRow& row, char delimiter) {
    return static_cast<std::size_t>(
        std::count_if(row.fields.begin(), row.fields.end(), [&](const std::string& field) {
            return numberIn(field, delimiter).has_value();
        }));
}

/// A layout, and how much speaks for it: a semicolon file with decimal commas makes three cells a
/// row when it is cut at commas, but one of them is no number then.
struct TraceCandidate {
    TraceFile layout;
    bool numbersAlone = false; ///< of its first row
    std::pair<bool, std::size_t> rank() const { return {numbersAlone, layout.columns.size()}; }
};

std::optional<TraceCandidate> layoutBy(const std::filesystem::path& file, char delimiter) {
    TraceFile layout{.delimiter = delimiter, .columns = {}, .firstLine = 0};
    bool numbersAlone = false;
    std::vector<std::string> before;
    try {
        readCsv(file, delimiter, [&](const CsvRow& row) {
            if (row.fields.size() >= 2 && numbersIn(row, delimiter) >= 2) {
                layout.firstLine = row.line;
                numbersAlone = std::ranges::all_of(row.fields, [&](const std::string& field) {
                    return field.find_first_not_of(" \t") == std::string::npos ||
                           numberIn(field, delimiter);
                });
                const bool named = before.size() >= row.fields.size();
                for (std::size_t i = 0; i < row.fields.size(); ++i)
                    layout.columns.push_back(named && !before[i].empty() ? before[i]
                                                                         : std::to_string(i + 1));
                throw EnoughSeen{};
            }
            if (row.line > longestPreamble)
                throw EnoughSeen{};
            before = row.fields;
        });
    } catch (const EnoughSeen&) { // NOLINT(bugprone-empty-catch): that is what it is for
    }
    if (layout.firstLine == 0)
        return {};
    return TraceCandidate{std::move(layout), numbersAlone};
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
}

std::size_t columnIn(const std::filesystem::path& file, const TraceFile& layout,
                     const std::string& name) {
    const auto same = [&](const std::string& column) {
        return std::ranges::equal(column, name, {}, lower, lower);
    };
    const auto found = std::ranges::find_if(layout.columns, same);
    if (found != layout.columns.end())
        return static_cast<std::size_t>(found - layout.columns.begin());
    std::size_t number = 0;
    const auto end = std::from_chars(name.data(), name.data() + name.size(), number);
    if (end.ec == std::errc{} && end.ptr == name.data() + name.size() && number >= 1 &&
        number <= layout.columns.size())
        return number - 1;
    std::string all;
    for (const std::string& column : layout.columns)
        all += (all.empty() ? "" : ", ") + column;
    throw BadInput({file.string(), std::max(1L, layout.firstLine - 1), asIs(name)},
                   say("no such column"), say("one of %1, or its number", all));
}

} // namespace

TraceFile traceFile(const std::filesystem::path& file) {
    std::optional<TraceCandidate> best;
    for (const char delimiter : {',', ';', '\t'})
        if (auto found = layoutBy(file, delimiter))
            if (!best || best->rank() < found->rank())
                best = std::move(found);
    if (!best)
        throw BadInput({file.string(), 1, {}}, say("no row of numbers"),
                       say("rows of samples: time in s and force in N or displacement in m, "
                           "separated by commas, semicolons or tabs"));
    return best->layout;
}

TraceColumns readTrace(const std::filesystem::path& file, const TraceFile& layout,
                       const std::string& time, const std::string& value) {
    const std::array<std::size_t, 2> at{columnIn(file, layout, time),
                                        columnIn(file, layout, value)};
    TraceColumns columns;
    readCsv(file, layout.delimiter, [&](const CsvRow& row) {
        if (row.line < layout.firstLine)
            return;
        std::array<double, 2> pair{};
        for (std::size_t i = 0; i < 2; ++i) {
            const std::string cell = at[i] < row.fields.size() ? row.fields[at[i]] : std::string{};
            const auto number = numberIn(cell, layout.delimiter);
            if (!number)
                throw BadInput({file.string(), row.line, asIs(layout.columns[at[i]])}, found(cell),
                               say("a number"));
            pair[i] = *number;
        }
        columns.times.push_back(pair[0]);
        columns.values.push_back(pair[1]);
        columns.lines.push_back(row.line);
    });
    return columns;
}

std::pair<std::string, std::string> likelyColumns(const TraceFile& layout) {
    const auto isTime = [](const std::string& column) {
        std::string small;
        std::ranges::transform(column, std::back_inserter(small), lower);
        return small.find("time") != std::string::npos || small.starts_with("zeit") ||
               small == "t" || small == "s" || small.starts_with("t (") || small == "time_s";
    };
    const auto time = std::ranges::find_if(layout.columns, isTime);
    const std::size_t t =
        time == layout.columns.end() ? 0 : static_cast<std::size_t>(time - layout.columns.begin());
    return {layout.columns[t], layout.columns[t == 0 ? 1 : 0]};
}

} // namespace slopebook::exchange
