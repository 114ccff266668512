// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/laidrows.h"

#include "core/exchange/headings.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace slopebook::exchange {

namespace {

constexpr std::array<std::string_view, 34> totalsWords{
    "total",   "totals",      "sum",         "sums",      "summe",    "summen",       "gesamt",
    "mean",    "means",       "average",     "averages",  "avg",      "mittel",       "mittelwert",
    "schnitt", "median",      "sd",          "std",       "min",      "max",          "minimum",
    "maximum", "somme",       "moyenne",     "suma",      "promedio", "durchschnitt", "media",
    "moy",     "m\u00E1ximo", "m\u00EDnimo", "insgesamt", "subtotal", "zwischensumme"};

// What stands under a name beside units of loads and speeds.
constexpr std::array<std::string_view, 30> unitRemarks{
    "-",          "--",         "n",          "no",         "no.",        "nr",    "nr.",  "#",
    "rep",        "reps",       "wdh",        "wdh.",       "set",        "text",  "date", "datum",
    "yyyy-mm-dd", "dd.mm.yyyy", "dd/mm/yyyy", "mm/dd/yyyy", "tt.mm.jjjj", "s",     "ms",   "w",
    "cm",         "mm",         "m",          "%",          "j",          "anzahl"};

std::string bare(std::string_view cell) {
    std::string folded = foldCase(cell);
    std::erase_if(folded, [](char c) {
        return c == '[' || c == ']' || c == '(' || c == ')' || c == ' ' || c == '\t';
    });
    return folded;
}

bool isMassUnit(std::string_view word) {
    return word == "kg" || word == "lb" || word == "lbs" || word == "kilo" || word == "kilos";
}

bool isSpeedUnit(std::string_view word) {
    return word == "m/s" || word == "cm/s" || word == "ms-1" || word == "m\u00B7s-1" ||
           word == "ms\u207B\u00B9" || word == "m\u00B7s\u207B\u00B9" || word == "m*s-1";
}

/// The cell where it is one word, without the colon behind it. A name of two words begins like one
/// of totals, too.
std::string onlyWord(std::string_view cell) {
    const auto begin = cell.find_first_not_of(" \t");
    if (begin == std::string_view::npos)
        return {};
    const auto end = cell.find_last_not_of(" \t:=") + 1;
    if (end <= begin)
        return {};
    const std::string_view word = cell.substr(begin, end - begin);
    return word.find_first_of(" \t") == std::string_view::npos ? std::string(word) : std::string();
}

/// Beside its word a row of totals has figures alone: a name or a lift makes it a row like others.
bool holdsWords(std::string_view cell) {
    return std::ranges::any_of(cell, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
               static_cast<unsigned char>(c) >= 0x80;
    });
}

bool holdsDay(const std::string& cell) {
    return std::ranges::any_of(writtenOrders,
                               [&](DateOrder order) { return readDate(cell, order).has_value(); });
}

} // namespace

std::optional<HeadingLoad> loadOfHeading(std::string_view heading) {
    std::string_view text =
        heading.substr(0, std::min(heading.find_first_of("(["), heading.size()));
    const auto first = text.find_first_of("0123456789");
    if (first == std::string_view::npos)
        return {};
    const std::string before = bare(text.substr(0, first));
    text.remove_prefix(first);
    std::size_t end = std::min(text.find_first_not_of("0123456789.,"), text.size());
    while (end > 0 && (text[end - 1] == '.' || text[end - 1] == ','))
        --end;
    std::string number(text.substr(0, end));
    std::ranges::replace(number, ',', '.');
    const std::string behind = bare(text.substr(end));
    double value = 0;
    const auto read = std::from_chars(number.data(), number.data() + number.size(), value);
    if (read.ec != std::errc{} || read.ptr != number.data() + number.size() || !(value > 0))
        return {};
    if (isMassUnit(behind))
        return HeadingLoad{.number = number,
                           .unit = behind.starts_with('l') ? MassUnit::Pound : MassUnit::Kilogram};
    if (!behind.empty() || !before.empty() || value < 10 || value > 1000)
        return {};
    return HeadingLoad{.number = number, .unit = {}};
}

bool isUnitsRow(const CsvRow& row) {
    bool unit = false;
    for (const std::string& cell : row.fields) {
        const std::string word = bare(cell);
        if (word.empty())
            continue;
        const bool ofFigure = isMassUnit(word) || isSpeedUnit(word);
        if (!ofFigure && std::ranges::find(unitRemarks, word) == unitRemarks.end())
            return false;
        unit = unit || ofFigure;
    }
    return unit;
}

bool sameTotals(std::string_view a, std::string_view b) {
    return foldCase(a) == foldCase(b);
}

std::optional<std::string> totalsWord(const CsvRow& row, std::size_t width) {
    std::size_t said = 0;
    std::string word;
    for (const std::string& cell : row.fields) {
        if (cell.empty())
            continue;
        if (said++ == 0) {
            word = onlyWord(cell);
            if (std::ranges::find(totalsWords, foldCase(word)) == totalsWords.end())
                return {};
            continue;
        }
        if (holdsDay(cell) || holdsWords(cell))
            return {};
    }
    return said > 0 && said + 2 <= std::max(width, row.fields.size()) ? std::optional(word)
                                                                      : std::nullopt;
}

void LaidRows::take(const CsvRow& row) {
    if (m_passed < m_layout.skip) {
        ++m_passed;
        if (m_out.above)
            m_out.above(row);
        return;
    }
    if (m_layout.header && !std::exchange(m_headerRead, true)) {
        takeHeader(row);
        return;
    }
    if (m_layout.header && m_layout.unitsRow && !std::exchange(m_unitsRead, true)) {
        if (m_out.units)
            m_out.units(plain(row));
        return;
    }
    if (m_every || !m_layout.leftOut.empty())
        if (const auto word = totalsWord(row, m_width);
            word && (m_every || std::ranges::any_of(m_layout.leftOut, [&](const auto& each) {
                         return sameTotals(each, *word);
                     }))) {
            if (m_out.leftOut)
                m_out.leftOut(row, *word);
            return;
        }
    if (m_loads.empty())
        m_out.row(row);
    else
        unfold(row);
}

void LaidRows::takeHeader(const CsvRow& row) {
    m_width = row.fields.size();
    if (!m_layout.loadsAsColumns) {
        if (m_out.header)
            m_out.header(row);
        return;
    }
    bool pounds = false, kilograms = false;
    for (std::size_t i = 0; i < row.fields.size(); ++i)
        if (const auto load = loadOfHeading(row.fields[i])) {
            m_loads.emplace_back(i, load->number);
            pounds = pounds || load->unit == MassUnit::Pound;
            kilograms = kilograms || load->unit == MassUnit::Kilogram;
        } else {
            m_others.push_back(i);
        }
    if (pounds && kilograms)
        throw BadInput({.file = {}, .line = row.line, .column = {}},
                       say("columns of loads in kg and in lb side by side"), say("one unit"));
    CsvRow header{.line = row.line, .fields = {}};
    for (const std::size_t at : m_others)
        header.fields.push_back(row.fields[at]);
    header.fields.emplace_back(pounds ? "load (lb)" : kilograms ? "load (kg)" : "load");
    header.fields.emplace_back("velocity");
    if (m_out.header)
        m_out.header(header);
}

CsvRow LaidRows::plain(const CsvRow& row) const {
    if (m_loads.empty())
        return row;
    CsvRow made{.line = row.line, .fields = {}};
    for (const std::size_t at : m_others)
        made.fields.push_back(at < row.fields.size() ? row.fields[at] : std::string());
    const std::size_t first = m_loads.front().first;
    made.fields.emplace_back();
    made.fields.push_back(first < row.fields.size() ? row.fields[first] : std::string());
    return made;
}

// A row of the table for each load that has something under it.
void LaidRows::unfold(const CsvRow& row) {
    const auto said = [&](std::size_t at) {
        return at < row.fields.size() && !row.fields[at].empty();
    };
    if (std::ranges::none_of(m_loads, [&](const auto& load) { return said(load.first); }) &&
        std::ranges::any_of(m_others, said)) {
        if (m_out.noLoad)
            m_out.noLoad(row);
        return;
    }
    CsvRow made = plain(row);
    for (std::size_t i = 0; i < m_others.size(); ++i)
        for (const CellFault& fault : row.faults)
            if (fault.at == m_others[i])
                made.faults.push_back({.at = i, .found = fault.found});
    // What stands beyond the named columns is refused where it is read.
    for (std::size_t i = m_width; i < row.fields.size(); ++i)
        made.fields.push_back(row.fields[i]);
    const std::size_t load = m_others.size(), speed = load + 1, faults = made.faults.size();
    for (const auto& [at, number] : m_loads) {
        if (!said(at))
            continue;
        made.fields[load] = number;
        made.fields[speed] = row.fields[at];
        made.faults.resize(faults);
        for (const CellFault& fault : row.faults)
            if (fault.at == at)
                made.faults.push_back({.at = speed, .found = fault.found});
        m_out.row(made);
    }
}

namespace {
/// "9:05", "09:05:30.5", "9:05 pm" from its first digit on, in seconds; the rest is left in text.
double secondsOfDay(std::string_view& text) {
    std::array<double, 3> parts{};
    for (double& part : parts) {
        const auto end = std::min(text.find_first_not_of("0123456789."), text.size());
        std::from_chars(text.data(), text.data() + end, part);
        text.remove_prefix(end);
        if (!text.starts_with(':'))
            break;
        text.remove_prefix(1);
    }
    const std::string behind = bare(text);
    if (behind.starts_with("pm") && parts[0] < 12)
        parts[0] += 12;
    else if (behind.starts_with("am") && parts[0] == 12)
        parts[0] = 0;
    return parts[0] * 3600 + parts[1] * 60 + parts[2];
}
} // namespace

std::optional<double> momentOf(std::string_view cell, DateOrder order) {
    const auto day = readDate(cell, order);
    const auto colon = cell.find(':');
    if (!day || colon == std::string_view::npos)
        return {};
    auto begin = colon;
    while (begin > 0 && cell[begin - 1] >= '0' && cell[begin - 1] <= '9')
        --begin;
    std::string_view text = cell.substr(begin);
    const auto days = std::chrono::sys_days{*day}.time_since_epoch().count();
    return static_cast<double>(days) * secondsADay + secondsOfDay(text);
}

std::optional<double> timeOfDay(std::string_view cell) {
    const auto begin = cell.find_first_not_of(" \t");
    const auto colon = cell.find(':');
    if (colon == std::string_view::npos || begin >= colon || colon - begin > 2 ||
        cell.substr(begin).find_first_not_of("0123456789") != colon - begin)
        return {};
    std::string_view text = cell.substr(begin);
    const double seconds = secondsOfDay(text);
    const std::string behind = bare(text);
    const bool clock = behind.empty() || behind == "am" || behind == "pm" || behind == "z" ||
                       behind == "h" || behind == "uhr";
    return clock && seconds < secondsADay ? std::optional(seconds) : std::nullopt;
}

} // namespace slopebook::exchange
