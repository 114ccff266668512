// SPDX-License-Identifier: GPL-3.0-or-later
// A shape as text that a coach can read and edit.
#include "core/exchange/cells.h"
#include "core/exchange/csvreader.h"
#include "core/exchange/shape.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <charconv>
#include <functional>

namespace slopebook::exchange {

namespace {

constexpr std::array<std::pair<char, std::string_view>, 3> delimiters{
    {{',', "comma"}, {';', "semicolon"}, {'\t', "tab"}}};
constexpr std::array<std::pair<DateOrder, std::string_view>, 5> dateOrders{
    {{DateOrder::YearMonthDay, "year month day"},
     {DateOrder::DayMonthYear, "day month year"},
     {DateOrder::MonthDayYear, "month day year"},
     {DateOrder::DaysFrom1900, "days from 1900"},
     {DateOrder::DaysFrom1904, "days from 1904"}}};

template <class List, class Key>
std::string_view wordOf(const List& list, const Key& key) {
    for (const auto& [value, text] : list)
        if (value == key)
            return text;
    return {};
}

constexpr std::string_view timeOfDayName = "time of day"; // no role: it only orders

// The role's name in this text: as tidy CSV has it, without its unit.
std::string_view roleName(std::size_t role) {
    return role == TidyLoad ? "load" : role == TidyBodyMass ? "body_mass" : tidyColumns[role];
}

std::string columnText(std::size_t at, const std::vector<std::string>& headings) {
    const bool named = at < headings.size() && !headings[at].empty() &&
                       !headings[at].starts_with('#') &&
                       headings[at].find_first_of("\r\n") == std::string::npos &&
                       std::ranges::count(headings, headings[at]) == 1;
    return named ? headings[at] : "#" + std::to_string(at + 1);
}

// Goes through the facts of a text: "key: value", line by line; # begins a remark.
class Facts {
public:
    explicit Facts(std::string name) : m_name(std::move(name)) {}
    [[noreturn]] void refuse(const Words& found, const Words& expected) const {
        throw BadInput({.file = m_name, .line = m_line, .column = {}}, found, expected);
    }
    void read(const std::string& text,
              const std::function<void(std::string_view, const std::string&)>& take) {
        std::size_t begin = 0;
        while (begin < text.size()) {
            ++m_line;
            const std::size_t end = std::min(text.find('\n', begin), text.size());
            std::string line = text.substr(begin, end - begin);
            begin = end + 1;
            if (line.ends_with('\r'))
                line.pop_back();
            if (line.find_first_not_of(" \t") == std::string::npos || line.starts_with('#'))
                continue;
            const auto colon = line.find(": ");
            if (colon == std::string::npos)
                refuse(found(line), say("a line such as \"column date: Datum\""));
            take(std::string_view(line).substr(0, colon), line.substr(colon + 2));
        }
    }
    template <class List>
    auto oneOf(const List& list, const std::string& value) const {
        std::string all;
        for (const auto& [key, text] : list) {
            if (text == value)
                return key;
            all += (all.empty() ? "" : ", ") + std::string(text);
        }
        refuse(found(value), say("one of %1", all));
    }
    bool yesOrNo(const std::string& value) const {
        constexpr std::array<std::pair<bool, std::string_view>, 2> words{
            {{true, "yes"}, {false, "no"}}};
        return oneOf(words, value);
    }
    Tidy role(std::string_view name) const {
        for (std::size_t i = 0; i < TidyCount; ++i)
            if (roleName(i) == name)
                return static_cast<Tidy>(i);
        refuse(found(name), say("a role, such as date, athlete, lift, load, velocity"));
    }

private:
    std::string m_name;
    long m_line = 0;
};

constexpr std::array<std::pair<bool, std::string_view>, 2> rowOrders{
    {{false, "as they stand"}, {true, "by time"}}};

std::vector<std::string> wordsOf(const std::string& value) {
    std::vector<std::string> words;
    for (std::size_t begin = 0; begin <= value.size();) {
        const std::size_t end = std::min(value.find(", ", begin), value.size());
        if (end > begin && value != "none")
            words.push_back(value.substr(begin, end - begin));
        begin = end + 2;
    }
    return words;
}

bool takeLayout(const Facts& facts, std::string_view key, const std::string& value,
                TextLayout& layout) {
    if (key == "sheet") {
        layout.sheet = value;
    } else if (key == "delimiter") {
        layout.delimiter = facts.oneOf(delimiters, value);
    } else if (key == "encoding") {
        const auto encoding = encodingFromWord(value);
        if (!encoding)
            facts.refuse(found(value), say("utf-8, utf-16le, utf-16be or latin-1"));
        layout.encoding = *encoding;
    } else if (key == "rows passed over") {
        const auto end = std::from_chars(value.data(), value.data() + value.size(), layout.skip);
        if (end.ec != std::errc{} || layout.skip < 0 || layout.skip > 100'000)
            facts.refuse(found(value), say("a number of rows from 0 on"));
    } else if (key == "header") {
        layout.header = facts.yesOrNo(value);
    } else if (key == "units row") {
        layout.unitsRow = facts.yesOrNo(value);
    } else if (key == "rows left out") {
        layout.leftOut = wordsOf(value);
    } else if (key == "loads are columns") {
        layout.loadsAsColumns = facts.yesOrNo(value);
    } else if (key == "rows in order") {
        layout.byTime = facts.oneOf(rowOrders, value);
    } else {
        return false;
    }
    return true;
}

ColumnUse columnNamed(const Facts& facts, const std::string& name,
                      const std::vector<std::string>& headings) {
    if (const auto it = std::ranges::find(headings, name); it != headings.end())
        return {.at = static_cast<std::size_t>(it - headings.begin()), .decimal = {}};
    const auto number =
        name.starts_with('#') ? readCount(std::string_view(name).substr(1)) : std::nullopt;
    if (!number || static_cast<std::size_t>(*number) > headings.size())
        facts.refuse(say("the column %1", found(name)), say("a column of the table"));
    return {.at = static_cast<std::size_t>(*number) - 1, .decimal = {}};
}

// "load, decimal comma, lb" after "column ".
void takeColumn(const Facts& facts, std::string_view what, ColumnUse use, Shape& shape) {
    const auto next = [&what] {
        const auto comma = std::min(what.find(", "), what.size());
        const std::string_view part = what.substr(0, comma);
        what.remove_prefix(std::min(comma + 2, what.size()));
        return part;
    };
    if (what == timeOfDayName) {
        shape.timeOfDay = use.at;
        return;
    }
    const Tidy role = facts.role(next());
    while (!what.empty()) {
        const std::string_view part = next();
        const auto unit = massUnitFromWord(part);
        if (role == TidyVelocity && part == "several in a cell")
            shape.lists = shape.rowIsSet = true;
        else if (part == "decimal comma" || part == "decimal point")
            use.decimal = part == "decimal comma" ? Decimal::Comma : Decimal::Point;
        else if (role == TidyVelocity && (part == "m/s" || part == "cm/s"))
            shape.speed =
                part == "m/s" ? SpeedUnit::MetresPerSecond : SpeedUnit::CentimetresPerSecond;
        else if (unit && (role == TidyLoad || role == TidyBodyMass))
            (role == TidyLoad ? shape.load : shape.bodyMass) = *unit;
        else
            facts.refuse(
                found(part),
                say("decimal comma, decimal point, kg, lb, m/s, cm/s or several in a cell"));
    }
    const std::size_t most = role == TidyAthlete ? 2 : 1; // the halves of a name
    if (role != TidyVelocity && shape.columns[role].size() >= most)
        facts.refuse(most == 1 ? say("a second column for %1", roleName(role))
                               : say("a third column for %1", roleName(role)),
                     most == 1 ? say("one") : say("two, the halves of a name"));
    shape.columns[role].push_back(use);
}

} // namespace

std::string shapeText(const Shape& shape, const std::vector<std::string>& headings) {
    std::string text;
    const auto line = [&](const std::string& key, std::string_view value) {
        text += key + ": " + std::string(value) + "\n";
    };
    if (!shape.layout.sheet.empty())
        line("sheet", shape.layout.sheet);
    line("delimiter", wordOf(delimiters, shape.layout.delimiter));
    line("encoding", word(shape.layout.encoding));
    line("rows passed over", std::to_string(shape.layout.skip));
    line("header", shape.layout.header ? "yes" : "no");
    if (shape.layout.unitsRow)
        line("units row", "yes");
    if (!shape.layout.leftOut.empty()) {
        std::string words;
        for (const std::string& word : shape.layout.leftOut)
            words += (words.empty() ? "" : ", ") + word;
        line("rows left out", words);
    }
    if (shape.layout.loadsAsColumns)
        line("loads are columns", "yes");
    if (shape.layout.byTime)
        line("rows in order", "by time");
    if (shape.timeOfDay)
        line("column " + std::string(timeOfDayName), columnText(*shape.timeOfDay, headings));
    line("a row is", shape.rowIsSet ? "a set" : "a rep");
    line("blank is as above", shape.blankAsAbove ? "yes" : "no");
    if (shape.dates)
        line("dates", wordOf(dateOrders, *shape.dates));
    for (std::size_t i = 0; i < TidyCount; ++i) {
        const auto role = static_cast<Tidy>(i);
        for (const ColumnUse& use : shape.columns[role]) {
            std::string key = "column " + std::string(roleName(i));
            if (isMeasure(role) && use.decimal)
                key += use.decimal == Decimal::Comma ? ", decimal comma" : ", decimal point";
            if (role == TidyVelocity && shape.lists)
                key += ", several in a cell";
            if (role == TidyVelocity && shape.speed)
                key += shape.speed == SpeedUnit::MetresPerSecond ? ", m/s" : ", cm/s";
            if (role == TidyLoad || role == TidyBodyMass)
                key += ", " + std::string(word(role == TidyLoad ? shape.load : shape.bodyMass));
            line(key, columnText(use.at, headings));
        }
        if (!shape.fixed[role].empty())
            line("all " + std::string(roleName(i)), shape.fixed[role]);
    }
    return text;
}

TextLayout parseLayout(const std::string& text, const std::string& name) {
    TextLayout layout;
    Facts facts(name);
    facts.read(text, [&](std::string_view key, const std::string& value) {
        takeLayout(facts, key, value, layout);
    });
    return layout;
}

Shape parseShape(const std::string& text, const std::vector<std::string>& headings,
                 const std::string& name) {
    constexpr std::array<std::pair<bool, std::string_view>, 2> rows{
        {{true, "a set"}, {false, "a rep"}}};
    Shape shape;
    Facts facts(name);
    facts.read(text, [&](std::string_view key, const std::string& value) {
        if (takeLayout(facts, key, value, shape.layout))
            return;
        if (key == "a row is")
            shape.rowIsSet = facts.oneOf(rows, value);
        else if (key == "blank is as above")
            shape.blankAsAbove = facts.yesOrNo(value);
        else if (key == "dates")
            shape.dates = facts.oneOf(dateOrders, value);
        else if (key.starts_with("column "))
            takeColumn(facts, key.substr(7), columnNamed(facts, value, headings), shape);
        else if (key.starts_with("all "))
            shape.fixed[facts.role(key.substr(4))] = value;
        else
            facts.refuse(
                found(key),
                say("sheet, delimiter, encoding, rows passed over, header, units row, rows left "
                    "out, loads are columns, rows in order, a row is, blank is as above, "
                    "dates, column ... or all ..."));
    });
    if ((shape.columns[TidyVelocity].size() > 1 || shape.lists) && !shape.rowIsSet)
        facts.refuse(say("several columns of velocities in a row that is a rep"),
                     say("a row is: a set"));
    return shape;
}

} // namespace slopebook::exchange
