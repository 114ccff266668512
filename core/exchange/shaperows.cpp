// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/shaperows.h"

#include "core/exchange/cells.h"
#include "core/exchange/headings.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"
#include "core/model/session.h"

#include <algorithm>
#include <array>

namespace slopebook::exchange {

namespace {

Words loadExpected(MassUnit unit, std::optional<Decimal> mark) {
    const bool comma = mark == Decimal::Comma;
    if (unit == MassUnit::Pound)
        return comma ? say("a load in lb from 0 to 4409 with a decimal comma")
                     : say("a load in lb from 0 to 4409 with a decimal point");
    return comma ? say("a load in kg from 0 to 2000 with a decimal comma")
                 : say("a load in kg from 0 to 2000 with a decimal point");
}

Words bodyMassExpected(MassUnit unit, std::optional<Decimal> mark) {
    const bool comma = mark == Decimal::Comma;
    if (unit == MassUnit::Pound)
        return comma ? say("a body mass in lb from 0 to 4409 with a decimal comma")
                     : say("a body mass in lb from 0 to 4409 with a decimal point");
    return comma ? say("a body mass in kg from 0 to 2000 with a decimal comma")
                 : say("a body mass in kg from 0 to 2000 with a decimal point");
}

Words speedExpected(bool centimetres, std::optional<Decimal> mark) {
    const bool comma = mark == Decimal::Comma;
    if (centimetres)
        return comma ? say("a speed in cm/s above 0 and under 1000 with a decimal comma")
                     : say("a speed in cm/s above 0 and under 1000 with a decimal point");
    return comma ? say("a speed in m/s above 0 and under 10 with a decimal comma")
                 : say("a speed in m/s above 0 and under 10 with a decimal point");
}

Words dateText(std::optional<DateOrder> order) {
    switch (order.value_or(DateOrder::YearMonthDay)) {
    case DateOrder::DayMonthYear:
        return say("a date written day, month, year, such as 14.3.2026");
    case DateOrder::MonthDayYear:
        return say("a date written month, day, year, such as 3/14/2026");
    case DateOrder::DaysFrom1900:
    case DateOrder::DaysFrom1904:
        return say("a day as a spreadsheet counts it, such as 46095");
    case DateOrder::YearMonthDay:
        break;
    }
    return say("a date written year, month, day, such as 2026-03-14");
}

constexpr std::array<std::string_view, 8> yes{"1", "yes", "y", "true", "x", "ja", "j", "wahr"};
constexpr std::array<std::string_view, 7> no{"0", "no", "n", "false", "nein", "falsch", "-"};

bool isAbove(Tidy role) {
    return role == TidyDate || role == TidyAthlete || role == TidyLift || role == TidyLoad;
}

} // namespace

ShapeRows::ShapeRows(const Shape& shape, std::vector<std::string> headings, std::string name)
    : m_shape(shape), m_headings(std::move(headings)), m_name(std::move(name)) {
    m_tidy.fields.resize(TidyCount);
    checkFixed();
}

CsvRow ShapeRows::header() {
    CsvRow row{.line = 1, .fields = {}};
    for (const auto column : tidyColumns)
        row.fields.emplace_back(column);
    return row;
}

void ShapeRows::checkFixed() const {
    const auto& fixed = m_shape.fixed;
    if (m_shape.columns[TidyVelocity].empty())
        throw BadInput({.file = m_name, .line = 0, .column = {}}, say("no column of velocities"),
                       say("one, or several side by side"));
    const auto refuseFixed = [&](Tidy role, const Words& expected) {
        throw BadInput({.file = m_name, .line = 0, .column = inWords(tidyColumns[role])},
                       say("%1 for all rows", exchange::found(fixed[role])), expected);
    };
    if (!fixed[TidyDate].empty() && !parseIsoDate(fixed[TidyDate]))
        refuseFixed(TidyDate, dateText(DateOrder::YearMonthDay));
    for (const Tidy role : {TidyLoad, TidyBodyMass})
        if (!fixed[role].empty() && !readNumber(fixed[role]))
            refuseFixed(role, say("a weight in kg with a decimal point, such as 72.5"));
    if (!fixed[TidyKind].empty() && !velocityKindFromWord(fixed[TidyKind]))
        refuseFixed(TidyKind, say("mean, propulsive or peak"));
}

Words ShapeRows::columnName(Tidy role) const {
    return m_shape.columns[role].empty() ? inWords(tidyColumns[role])
                                         : headingOf(m_shape.columns[role].front().at);
}

Words ShapeRows::headingOf(std::size_t at) const {
    return at < m_headings.size() && !m_headings[at].empty() ? asIs(m_headings[at])
                                                             : say("column %1", at + 1);
}

void ShapeRows::refuse(const CsvRow& row, const Words& column, std::string_view cell,
                       const Words& expected) const {
    throw BadInput({.file = m_name, .line = row.line, .column = column}, exchange::found(cell),
                   expected);
}

void ShapeRows::requireWidth(const CsvRow& row) const {
    for (std::size_t i = m_headings.size(); i < row.fields.size(); ++i)
        if (!row.fields[i].empty())
            refuse(
                row, say("column %1", i + 1), row.fields[i],
                say("no more than the %1 cells of the header row (a decimal comma, or a comma in a "
                    "name that is not in quotes, makes one more)",
                    m_headings.size()));
}

// A cell without a value is refused where it is used, and only there.
void ShapeRows::requireValues(const CsvRow& row) const {
    for (const CellFault& fault : row.faults)
        for (const auto& uses : m_shape.columns)
            if (std::ranges::find(uses, fault.at, &ColumnUse::at) != uses.end())
                throw BadInput({.file = m_name, .line = row.line, .column = headingOf(fault.at)},
                               fault.found, say("a value, or nothing"));
}

std::string_view ShapeRows::cell(const CsvRow& row, Tidy role) const {
    if (m_shape.columns[role].empty())
        return {};
    const std::size_t at = m_shape.columns[role].front().at;
    return at < row.fields.size() ? std::string_view(row.fields[at]) : std::string_view{};
}

// The halves of a name in their order.
std::string ShapeRows::athleteCells(const CsvRow& row) const {
    std::string name;
    for (const ColumnUse& use : m_shape.columns[TidyAthlete])
        if (use.at < row.fields.size() && !row.fields[use.at].empty())
            name += (name.empty() ? "" : " ") + row.fields[use.at];
    return name;
}

// What stands in the table for a role, or above it, or for all rows.
std::string ShapeRows::headCell(const CsvRow& row, Tidy role) {
    const std::string joined = role == TidyAthlete ? athleteCells(row) : std::string();
    const std::string_view text = role == TidyAthlete ? joined : cell(row, role);
    if (text.find_first_not_of(" \t") == std::string_view::npos) {
        if (!m_shape.columns[role].empty() && m_shape.blankAsAbove && isAbove(role))
            return m_above[role];
        return m_shape.fixed[role];
    }
    std::string read = value(row, role, text);
    if (isAbove(role))
        m_above[role] = read;
    return read;
}

std::string ShapeRows::value(const CsvRow& row, Tidy role, std::string_view text) const {
    switch (role) {
    case TidyDate:
        return dayText(row, text);
    case TidyLoad:
    case TidyBodyMass:
        return massText(row, role, text);
    case TidyRpe: {
        auto number = readMarked(text, Decimal::Point);
        if (!number)
            number = readMarked(text, Decimal::Comma);
        if (!number || !effort(*number))
            refuse(row, columnName(role), text, say("an RPE from 1 to 10 in halves, such as 8.5"));
        return writeNumber(*number);
    }
    case TidyMaximum:
        return yesOrNo(row, text);
    case TidyKind:
        return kindText(row, text);
    case TidySet:
    case TidyRep:
    case TidySession: {
        const auto number = readMarked(text, Decimal::Point);
        const auto whole = number ? readCount(writeNumber(*number)) : std::nullopt;
        if (!whole)
            refuse(row, columnName(role), text, say("a whole number from 1 on"));
        return std::to_string(*whole);
    }
    default:
        return std::string(text);
    }
}

std::string ShapeRows::dayText(const CsvRow& row, std::string_view text) const {
    const auto date = readDate(text, m_shape.dates.value_or(DateOrder::YearMonthDay));
    if (!date)
        refuse(row, columnName(TidyDate), text, dateText(m_shape.dates));
    return isoDate(*date);
}

std::string ShapeRows::massText(const CsvRow& row, Tidy role, std::string_view text) const {
    const ColumnUse& use = m_shape.columns[role].front();
    const MassUnit unit = role == TidyLoad ? m_shape.load : m_shape.bodyMass;
    const WithUnit parts = splitUnit(text);
    const auto number = readMarked(parts.number, use.decimal.value_or(Decimal::Point));
    const bool otherUnit = !parts.unit.empty() && massUnitOf(parts.unit) != unit;
    const double most =
        unit == MassUnit::Pound ? pounds(storableLoadLimit) : kilograms(storableLoadLimit);
    if (!number || otherUnit || *number < 0 || *number > most ||
        (role == TidyBodyMass && *number == 0))
        refuse(row, columnName(role), text,
               role == TidyLoad ? loadExpected(unit, use.decimal)
                                : bodyMassExpected(unit, use.decimal));
    const Mass mass =
        unit == MassUnit::Pound ? massFromPounds(*number) : massFromKilograms(*number);
    return writeKilograms(mass);
}

std::string_view ShapeRows::speedCell(const CsvRow& row, const ColumnUse& use) {
    return use.at < row.fields.size() ? std::string_view(row.fields[use.at]) : std::string_view{};
}

std::string ShapeRows::speedText(const CsvRow& row, const ColumnUse& use,
                                 std::string_view text) const {
    if (text.find_first_not_of(" \t") == std::string_view::npos)
        return {};
    const bool centimetres = m_shape.speed == SpeedUnit::CentimetresPerSecond;
    const WithUnit parts = splitUnit(text);
    const auto number =
        readMarked(parts.number, use.decimal.value_or(Decimal::Point), centimetres ? -2 : 0);
    const bool otherUnit = !parts.unit.empty() && speedUnitOf(parts.unit) != m_shape.speed;
    if (!number || otherUnit || !(*number > 0 && *number < storableVelocityLimit))
        refuse(row, headingOf(use.at), text, speedExpected(centimetres, use.decimal));
    return writeNumber(*number);
}

std::string ShapeRows::yesOrNo(const CsvRow& row, std::string_view text) const {
    const std::string folded = foldCase(text);
    if (std::ranges::find(yes, folded) != yes.end())
        return "1";
    if (std::ranges::find(no, folded) == no.end())
        refuse(row, columnName(TidyMaximum), text, say("yes or no, 1 or 0, or nothing"));
    return "0";
}

std::string ShapeRows::kindText(const CsvRow& row, std::string_view text) const {
    if (velocityKindFromWord(text))
        return std::string(text);
    const auto kind = kindOfHeading(text);
    if (!kind)
        refuse(row, columnName(TidyKind), text, say("mean, propulsive or peak"));
    return std::string(word(*kind));
}

auto ShapeRows::numbersOf() -> Numbers& {
    std::string spelled;
    for (const Tidy role : {TidyDate, TidyAthlete, TidyLift, TidySession}) {
        spelled += m_tidy.fields[role];
        spelled += '\n';
    }
    if (!m_last || spelled != m_spelled) { // rows come in runs
        std::string key;
        for (const Tidy role : {TidyDate, TidyAthlete, TidyLift, TidySession})
            key += nameKey(m_tidy.fields[role]) + '\n';
        m_spelled = std::move(spelled);
        m_last = &m_numbers[key];
    }
    return *m_last;
}

namespace {
/// A lift or a load of it that was not possible, or what a lift without a set was to be done under.
bool isNoSet(const CsvRow& tidy) {
    const auto said = [&tidy](Tidy role) { return !tidy.fields[role].empty(); };
    if (tidy.fields[TidyOutcome] == "not possible")
        return true;
    return !said(TidyLoad) && !said(TidySet) && !said(TidyOutcome) &&
           (said(TidyDevice) || said(TidySite) || said(TidySurface) || said(TidyFootwear) ||
            said(TidyTechnique) || said(TidyNotComparable));
}
} // namespace

void ShapeRows::take(const CsvRow& row, const std::function<void(const CsvRow&)>& visit) {
    if (std::ranges::all_of(row.fields, [](const auto& text) { return text.empty(); }))
        return;
    requireWidth(row);
    requireValues(row);
    m_tidy.line = row.line;
    for (std::size_t role = 0; role < TidyCount; ++role)
        if (role != TidyVelocity)
            m_tidy.fields[role] = headCell(row, static_cast<Tidy>(role));
    const bool noSet = isNoSet(m_tidy);
    for (const Tidy role : {TidyDate, TidyAthlete, TidyLift, TidyLoad})
        if (m_tidy.fields[role].empty() && !(role == TidyLoad && noSet))
            refuse(row, columnName(role), cell(row, role),
                   role == TidyDate   ? dateText(m_shape.dates)
                   : role == TidyLoad ? say("a load")
                                      : say("a name"));
    if (noSet) { // not counted as one
        for (const Tidy role : {TidySet, TidyRep, TidyVelocity})
            m_tidy.fields[role].clear();
        visit(m_tidy);
        return;
    }
    if (m_shape.rowIsSet)
        takeSet(row, visit);
    else
        takeRep(row, visit);
}

void ShapeRows::takeSet(const CsvRow& row, const std::function<void(const CsvRow&)>& visit) {
    if (m_tidy.fields[TidySet].empty())
        m_tidy.fields[TidySet] = std::to_string(++numbersOf().set);
    int rep = 0;
    std::vector<std::string> speeds;
    const auto take = [&](const ColumnUse& use, std::string_view text) {
        if (std::string speed = speedText(row, use, text); !speed.empty())
            speeds.push_back(std::move(speed));
    };
    for (const ColumnUse& use : m_shape.columns[TidyVelocity]) {
        const std::string_view text = speedCell(row, use);
        if (m_shape.lists)
            for (const std::string_view part : listParts(text))
                take(use, part);
        else
            take(use, text);
    }
    m_tidy.fields[TidyRep].clear();
    m_tidy.fields[TidyVelocity].clear();
    if (speeds.empty())
        visit(m_tidy); // a set that was written down without a speed
    for (std::string& speed : speeds) {
        m_tidy.fields[TidyRep] = std::to_string(++rep);
        m_tidy.fields[TidyVelocity] = std::move(speed);
        visit(m_tidy);
    }
}

void ShapeRows::takeRep(const CsvRow& row, const std::function<void(const CsvRow&)>& visit) {
    std::string& set = m_tidy.fields[TidySet];
    std::string& rep = m_tidy.fields[TidyRep];
    const ColumnUse& use = m_shape.columns[TidyVelocity].at(0);
    std::string speed = speedText(row, use, speedCell(row, use));
    const int said = rep.empty() ? 0 : readCount(rep).value_or(0);
    if (set.empty()) {
        Numbers& numbers = numbersOf();
        const bool begins = numbers.set == 0 || numbers.load != m_tidy.fields[TidyLoad] ||
                            (said > 0 && said <= numbers.rep);
        if (begins) {
            ++numbers.set;
            numbers.rep = 0;
        }
        numbers.load = m_tidy.fields[TidyLoad];
        numbers.rep = said > 0 ? said : numbers.rep + 1;
        set = std::to_string(numbers.set);
        rep = std::to_string(numbers.rep);
    } else if (said == 0) {
        rep = std::to_string(++numbersOf().repsOf[readCount(set).value_or(0)]);
    }
    if (speed.empty())
        rep.clear();
    m_tidy.fields[TidyVelocity] = std::move(speed);
    visit(m_tidy);
}

} // namespace slopebook::exchange
