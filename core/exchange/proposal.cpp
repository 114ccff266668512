// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/proposal.h"

#include "core/exchange/cells.h"
#include "core/exchange/headings.h"
#include "core/exchange/proposedroles.h"
#include "core/model/phrases/exchange.h"
#include "core/model/session.h"

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace slopebook::exchange {

namespace {

const NumberFacts& under(const ColumnFacts& column, Decimal mark) {
    return column.numbers[static_cast<std::size_t>(mark)];
}

// The number from which on nothing of that role can be stored, in the column's unit.
double limitOf(Tidy role, const Shape& shape) {
    if (role == TidyVelocity)
        return shape.speed == SpeedUnit::MetresPerSecond ? storableVelocityLimit
                                                         : storableVelocityLimit * 100;
    const MassUnit unit = role == TidyLoad ? shape.load : shape.bodyMass;
    return unit == MassUnit::Pound ? pounds(storableLoadLimit) : kilograms(storableLoadLimit);
}

std::optional<Decimal> certainDecimal(const ColumnFacts& column, double limit) {
    const NumberFacts& point = under(column, Decimal::Point);
    const NumberFacts& comma = under(column, Decimal::Comma);
    if (point.read != comma.read)
        return point.read > comma.read ? Decimal::Point : Decimal::Comma;
    if (column.twofold == 0)
        return Decimal::Point; // the same under both
    if (comma.highOfTwofold >= limit && point.highOfTwofold < limit)
        return Decimal::Point;
    if (point.highOfTwofold >= limit && comma.highOfTwofold < limit)
        return Decimal::Comma;
    return {};
}

std::optional<DateOrder> certainOrder(const ColumnFacts& column) {
    const long most = std::ranges::max(column.dates);
    std::optional<DateOrder> found;
    for (const DateOrder order : writtenOrders)
        if (most > 0 && column.dates[static_cast<std::size_t>(order)] == most) {
            if (found && !column.dateSample.empty())
                return {};
            if (!found)
                found = order;
        }
    return found;
}

std::optional<SpeedUnit> certainSpeed(const Shape& shape, const FileFacts& facts) {
    std::optional<SpeedUnit> said;
    bool slow = true;
    for (const ColumnUse& use : shape.columns[TidyVelocity]) {
        const ColumnFacts& column =
            shape.lists ? facts.columns[use.at].asLists() : facts.columns[use.at];
        if (!said)
            said = speedUnitOf(column.unit);
        if (!said)
            said = speedUnitOf(column.heading);
        slow = slow && column.high() < storableVelocityLimit;
    }
    if (said)
        return said;
    // Speeds that m/s can hold would be no movement at all in cm/s; the other way round, 92 may be
    // 0.92 m/s with its mark left out.
    return slow && !shape.columns[TidyVelocity].empty() ? std::optional(SpeedUnit::MetresPerSecond)
                                                        : std::nullopt;
}

void proposeUnits(Shape& shape, const FileFacts& facts) {
    for (const auto& [role, unit] :
         {std::pair{TidyLoad, &shape.load}, {TidyBodyMass, &shape.bodyMass}})
        if (!shape.columns[role].empty()) {
            const ColumnFacts& column = facts.columns[shape.columns[role][0].at];
            const auto said = massUnitOf(column.unit);
            *unit = said ? *said : massUnitOf(column.heading).value_or(MassUnit::Kilogram);
        }
    if (shape.columns[TidyVelocity].empty() || !shape.columns[TidyKind].empty())
        return;
    const ColumnFacts& column = facts.columns[shape.columns[TidyVelocity][0].at];
    if (const auto kind = kindOfHeading(column.heading))
        shape.fixed[TidyKind] = std::string(word(*kind));
}

// What is said of all rows above the table: "Athlete: Ann" in a cell, or in two side by side.
void takeSaid(Shape& shape, std::string_view key, const std::string& value) {
    const bool colon = key.ends_with(':');
    if (colon)
        key.remove_suffix(1);
    const bool oneWord = key.find_first_of(" \t") == std::string_view::npos;
    const auto role = key.size() <= 40 && (colon || oneWord) ? roleOfHeading(key) : std::nullopt;
    if (!role || value.empty() || shape.has(*role) || namePartOf(key))
        return;
    if (role == TidyAthlete || role == TidyLift || role == TidyDevice || role == TidySite) {
        shape.fixed[*role] = value;
    } else if (role == TidyDate) {
        std::set<Date> days;
        for (const DateOrder order : writtenOrders)
            if (const auto day = readDate(value, order))
                days.insert(*day);
        if (days.size() == 1) // else it is asked
            shape.fixed[TidyDate] = isoDate(*days.begin());
    } else if (role == TidyBodyMass) {
        const WithUnit parts = splitUnit(value);
        const auto point = readMarked(parts.number, Decimal::Point);
        const auto comma = readMarked(parts.number, Decimal::Comma);
        const auto unit = massUnitOf(parts.unit);
        const auto number = point && comma && *point != *comma ? std::nullopt
                            : point                            ? point
                                                               : comma;
        if (number && unit)
            shape.fixed[TidyBodyMass] = writeKilograms(
                *unit == MassUnit::Pound ? massFromPounds(*number) : massFromKilograms(*number));
    }
}

void proposeAbove(Shape& shape, const FileFacts& facts) {
    for (const CsvRow& row : facts.above) {
        std::vector<std::string> said;
        for (const std::string& cell : row.fields)
            if (!cell.empty())
                said.push_back(cell);
        for (std::size_t i = 0; i < said.size(); ++i) {
            const auto colon = said[i].find(": ");
            if (colon != std::string::npos)
                takeSaid(shape, std::string_view(said[i]).substr(0, colon + 1),
                         said[i].substr(colon + 2));
            else if (i + 1 < said.size())
                takeSaid(shape, said[i], said[i + 1]);
        }
    }
}

// Sets without a number stand in the order of time, where a table tells it and is in another.
void proposeOrder(Shape& shape, const FileFacts& facts) {
    const auto kept = std::exchange(shape.timeOfDay, std::nullopt);
    if (!shape.columns[TidySet].empty() || shape.blankAsAbove)
        return;
    const auto& dates = shape.columns[TidyDate];
    if (const ColumnFacts* column = dates.empty() ? nullptr : &facts.columns[dates[0].at];
        column && 2 * column->moments >= column->said && column->moments > 0) {
        shape.layout.byTime = !column->rises;
        return;
    }
    const auto times = kept ? kept : timesBeside(shape, facts, true);
    shape.layout.byTime = times && !facts.columns[*times].timesRise;
    if (shape.layout.byTime)
        shape.timeOfDay = times;
}

} // namespace

std::optional<std::size_t> timesBeside(const Shape& shape, const FileFacts& facts, bool named) {
    const auto used = [&](std::size_t at) {
        return std::ranges::any_of(shape.columns, [&](const auto& uses) {
            return std::ranges::find(uses, at, &ColumnUse::at) != uses.end();
        });
    };
    for (std::size_t i = 0; i < facts.columns.size(); ++i)
        if (facts.columns[i].isTimes() && !used(i) &&
            (!named || saysTimeOfDay(facts.columns[i].heading)))
            return i;
    return {};
}

Shape propose(const FileFacts& facts) {
    Shape shape;
    shape.layout = facts.layout;
    if (facts.sheetIsGuess)
        shape.layout.sheet.clear(); // to be said
    proposeRoles(shape, facts);
    proposeAbove(shape, facts);
    proposeUnits(shape, facts);
    proposeOrder(shape, facts);
    settle(shape, facts);
    return shape;
}

std::optional<BadInput> mixedMarks(const FileFacts& facts) {
    std::array<const std::string*, 2> seen{};
    for (const ColumnFacts& column : facts.columns)
        for (std::size_t mark = 0; mark < seen.size() && column.isNumbers(); ++mark)
            if (!seen[mark] && !column.only[mark].empty())
                seen[mark] = &column.only[mark];
    const auto* const point = seen[static_cast<std::size_t>(Decimal::Point)];
    const auto* const comma = seen[static_cast<std::size_t>(Decimal::Comma)];
    if (!point || !comma)
        return {};
    return BadInput(
        say("\"%1\" with a decimal point and \"%2\" with a decimal comma", *point, *comma),
        say("one decimal mark in all that is pasted"));
}

void settle(Shape& shape, const FileFacts& facts) {
    if (!shape.dates && !shape.columns[TidyDate].empty())
        shape.dates = certainOrder(facts.columns[shape.columns[TidyDate][0].at]);
    if (!shape.speed)
        shape.speed = certainSpeed(shape, facts);
    for (const Tidy role : {TidyLoad, TidyVelocity, TidyBodyMass})
        for (ColumnUse& use : shape.columns[role])
            if (!use.decimal)
                use.decimal = certainDecimal(role == TidyVelocity && shape.lists
                                                 ? facts.columns[use.at].asLists()
                                                 : facts.columns[use.at],
                                             limitOf(role, shape));
}

Shape fitted(const std::string& kept, const FileFacts& facts) {
    const Shape before = parseShape(kept, facts.headings(), "what was remembered");
    Shape shape = before;
    shape.layout = facts.layout;
    proposeOrder(shape, facts);
    if (facts.sheetIsGuess)
        shape.layout.sheet.clear(); // to be said
    shape.dates.reset();
    shape.speed.reset();
    for (auto& uses : shape.columns)
        for (ColumnUse& use : uses)
            use.decimal.reset();
    settle(shape, facts);
    if (!shape.dates)
        shape.dates = before.dates;
    if (!shape.speed)
        shape.speed = before.speed;
    for (std::size_t role = 0; role < TidyCount; ++role)
        for (std::size_t i = 0; i < shape.columns[role].size(); ++i)
            if (!shape.columns[role][i].decimal)
                shape.columns[role][i].decimal = before.columns[role][i].decimal;
    return shape;
}

Shape worthKeeping(Shape shape) {
    for (std::size_t role = 0; role < TidyCount; ++role)
        if (role != TidyKind && role != TidyDevice && role != TidySite)
            shape.fixed[role].clear();
    return shape;
}

std::vector<Question> openQuestions(const Shape& shape, const FileFacts& facts) {
    using About = Question::About;
    std::vector<Question> open;
    if (!facts.sheets.empty() && shape.layout.sheet.empty())
        open.push_back({About::Sheet, TidyDate, {}, facts.layout.sheet});
    for (const Tidy role : neededRoles())
        if (!shape.has(role))
            open.push_back({About::Role, role, {}, {}});
    if (!shape.columns[TidyDate].empty() && !shape.dates) {
        const ColumnFacts& column = facts.columns[shape.columns[TidyDate][0].at];
        open.push_back({About::DateOrder, TidyDate, shape.columns[TidyDate][0].at,
                        !column.dateSample.empty() ? column.dateSample
                        : !column.samples.empty()  ? column.samples[0]
                                                   : std::string{}});
    }
    for (const Tidy role : {TidyLoad, TidyVelocity, TidyBodyMass})
        for (const ColumnUse& use : shape.columns[role])
            if (!use.decimal)
                open.push_back({About::Decimal, role, use.at,
                                role == TidyVelocity && shape.lists
                                    ? facts.columns[use.at].parts.twofoldSample
                                    : facts.columns[use.at].twofoldSample});
    if (!shape.columns[TidyVelocity].empty() && !shape.speed) {
        const ColumnFacts& column = facts.columns[shape.columns[TidyVelocity][0].at];
        open.push_back({About::SpeedUnit, TidyVelocity, shape.columns[TidyVelocity][0].at,
                        column.samples.empty() ? std::string{} : column.samples[0]});
    }
    return open;
}

} // namespace slopebook::exchange
