// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sheetcells.h"

#include "core/exchange/cells.h"
#include "core/model/date.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <cmath>

namespace slopebook::exchange {

namespace {

constexpr std::size_t mostSheetColumns = 500;
constexpr std::size_t mostCellBytes = 1'000'000;
constexpr double daysEnd = 2958466; // 10000-01-01 in days from 1899-12-30
constexpr long wholeDay = 86400;

std::string clock(long seconds) {
    const auto two = [](long value) { return padded(static_cast<unsigned>(value), 2); };
    return two(seconds / 3600) + ":" + two(seconds / 60 % 60) + ":" + two(seconds % 60);
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace

std::string sheetNumber(double value) {
    std::string text = writeNumber(value);
    const auto point = text.find('.');
    if (point != std::string::npos && text.size() - point == 4)
        text += '0';
    return text;
}

SheetFormat formatOfCode(std::string_view code) {
    bool moment = false;
    for (std::size_t i = 0; i < code.size() && code[i] != ';'; ++i) {
        const char c = lower(code[i]);
        if (c == '"') {
            i = std::min(code.find('"', i + 1), code.size());
        } else if (c == '\\' || c == '_' || c == '*') {
            ++i; // the next one is shown, or left or filled as wide as it is
        } else if (c == '[') {
            const auto close = std::min(code.find(']', i), code.size());
            const auto inside = code.substr(i + 1, close - i - 1);
            const char first = inside.empty() ? '\0' : lower(inside[0]);
            const bool alike = !inside.empty() && std::ranges::all_of(inside, [&](char each) {
                return lower(each) == first;
            });
            if (alike && (first == 'h' || first == 'm' || first == 's'))
                return SheetFormat::Elapsed;
            i = close;
        } else if (code.substr(i).starts_with("General")) {
            i += 6;
        } else if (c == 'y' || c == 'd' || c == 'h' || c == 'm' || c == 's') {
            moment = true;
        }
    }
    return moment ? SheetFormat::Moment : SheetFormat::Number;
}

SheetFormat builtInFormat(long number) {
    const auto within = [number](long from, long to) { return number >= from && number <= to; };
    if (number == 46)
        return SheetFormat::Elapsed;
    // 27 to 36 and 50 to 58 are dates of East Asian languages.
    return within(14, 22) || within(27, 36) || within(45, 47) || within(50, 58)
               ? SheetFormat::Moment
               : SheetFormat::Number;
}

std::string momentText(double days, bool from1904) {
    if (!(days >= 0) || days >= daysEnd - (from1904 ? 1462 : 0))
        return sheetNumber(days);
    long whole = static_cast<long>(std::floor(days));
    long seconds = std::lround((days - static_cast<double>(whole)) * wholeDay);
    if (seconds == wholeDay) {
        ++whole;
        seconds = 0;
    }
    if (whole == 0 && !from1904)
        return clock(seconds);
    if (whole == 60 && !from1904) // a day that never was
        return sheetNumber(days);
    const std::chrono::sys_days zero =
        from1904     ? std::chrono::sys_days(std::chrono::year(1904) / 1 / 1)
        : whole < 60 ? std::chrono::sys_days(std::chrono::year(1899) / 12 / 31)
                     : std::chrono::sys_days(std::chrono::year(1899) / 12 / 30);
    const std::string day = isoDate(Date(zero + std::chrono::days(whole)));
    return seconds == 0 ? day : day + " " + clock(seconds);
}

std::string elapsedText(double days) {
    if (!(std::abs(days) < daysEnd))
        return sheetNumber(days);
    const long seconds = std::lround(std::abs(days) * wholeDay);
    return (days < 0 && seconds > 0 ? "-" : "") + clock(seconds);
}

std::string isoMomentText(std::string_view iso) {
    const auto t = iso.find('T');
    if (t == std::string_view::npos)
        return std::string(iso);
    const std::string_view time = iso.substr(t + 1);
    const bool midnight = time.find_first_not_of("0:.Z") == std::string_view::npos;
    return std::string(iso.substr(0, t)) + (midnight ? "" : " " + std::string(time));
}

std::string columnLetters(std::size_t column) {
    std::string letters;
    for (std::size_t left = column + 1; left > 0; left = (left - 1) / 26)
        letters.insert(letters.begin(),
                       static_cast<char>('A' + static_cast<char>((left - 1) % 26)));
    return letters;
}

std::optional<std::size_t> columnOfCell(std::string_view reference) {
    std::size_t column = 0, letters = 0;
    for (const char each : reference) {
        const char c = lower(each);
        if (c < 'a' || c > 'z' || ++letters > 4)
            break;
        column = column * 26 + static_cast<std::size_t>(c - 'a') + 1;
    }
    return letters == 0 || letters > 3 ? std::nullopt : std::optional(column - 1);
}

// What stands twice, or out of its order, would be lost or told of by a wrong number.
void SheetRows::begin(long number) {
    if (number <= m_cells.line || m_open)
        throw BadInput({.file = m_file, .line = number, .column = {}},
                       say("a row that is there already, or after a later one"),
                       say("a whole one (open it where it was made and save it again)"));
    m_open = true;
    m_cells.line = number;
    m_cells.fields.clear();
    m_cells.faults.clear();
}

void SheetRows::put(std::size_t column, std::string text) {
    if (text.empty())
        return;
    if (column >= mostSheetColumns)
        refuse(column, say("a cell beyond the 500th column"), say("at most 500"));
    if (text.size() > mostCellBytes)
        refuse(column, say("a cell of more than 1,000,000 bytes"), say("shorter cells"));
    if (m_cells.fields.size() <= column)
        m_cells.fields.resize(column + 1);
    if (!m_cells.fields[column].empty())
        refuse(column, say("a second value of the same cell"), say("one"));
    m_cells.fields[column] = std::move(text);
}

void SheetRows::putFault(std::size_t column, std::string text, const Words& found) {
    put(column, std::move(text));
    m_cells.faults.push_back({.at = column, .found = found});
}

void SheetRows::end() {
    m_open = false;
    if (blank())
        return;
    m_width = std::max(m_width, m_cells.fields.size());
    m_cells.fields.resize(m_width);
    m_visit(m_cells);
}

void SheetRows::refuse(std::size_t column, const Words& found, const Words& expected) const {
    throw BadInput({.file = m_file, .line = m_cells.line, .column = asIs(columnLetters(column))},
                   found, expected);
}

} // namespace slopebook::exchange
