// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/proposal.h"

#include "core/exchange/cells.h"
#include "core/exchange/headings.h"
#include "core/model/phrases/exchange.h"
#include "core/model/session.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <set>

namespace slopebook::exchange {

namespace {

constexpr std::array<DateOrder, 3> dayOrders{DateOrder::YearMonthDay, DateOrder::DayMonthYear,
                                             DateOrder::MonthDayYear};

const NumberFacts& under(const ColumnFacts& column, Decimal mark) {
    return column.numbers[static_cast<std::size_t>(mark)];
}

// The largest number, under the mark that fits more cells; where both fit, the smaller reading.
double highOf(const ColumnFacts& column) {
    const NumberFacts& point = under(column, Decimal::Point);
    const NumberFacts& comma = under(column, Decimal::Comma);
    if (point.read != comma.read)
        return point.read > comma.read ? point.high : comma.high;
    return std::min(point.high, comma.high);
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
    for (const DateOrder order : dayOrders)
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
        slow = slow && highOf(column) < storableVelocityLimit;
    }
    if (said)
        return said;
    // Speeds that m/s can hold would be no movement at all in cm/s; the other way round, 92 may be
    // 0.92 m/s with its mark left out.
    return slow && !shape.columns[TidyVelocity].empty() ? std::optional(SpeedUnit::MetresPerSecond)
                                                        : std::nullopt;
}

struct Candidate {
    std::size_t at = 0;
    Tidy role = TidyDate;
    std::optional<int> number{};
};

std::vector<Candidate> candidatesOf(const FileFacts& facts) {
    std::vector<Candidate> found;
    for (std::size_t i = 0; i < facts.columns.size(); ++i) {
        const ColumnFacts& column = facts.columns[i];
        const auto role = roleOfHeading(column.heading);
        const auto number = numberOfHeading(column.heading);
        if (!role && number && column.isNumbers() && column.heading == std::to_string(*number))
            found.push_back({i, TidyVelocity, number}); // "1", "2", "3": speeds side by side
        const bool lists = role == TidyVelocity && column.isLists();
        const bool listOfReps = role == TidyRep && column.isLists() && !column.isNumbers();
        if (listOfReps) { // "reps: 1.12 1.10 1.08"
            found.push_back({i, TidyVelocity, {}});
            continue;
        }
        if (!role || column.said == 0 || (isMeasure(*role) && !column.isNumbers() && !lists) ||
            (*role == TidyDate && !column.isDates() && !column.isSerialDays()))
            continue;
        found.push_back({i, *role, number});
    }
    return found;
}

// Columns of speeds side by side: headings that differ by a number, over numbers with decimals.
std::vector<ColumnUse> sideBySide(const std::vector<Candidate>& candidates,
                                  const FileFacts& facts) {
    for (const Tidy named : {TidyVelocity, TidyRep}) {
        std::set<int> numbers;
        std::vector<ColumnUse> uses;
        std::optional<VelocityKind> kind;
        for (const Candidate& c : candidates) {
            const ColumnFacts& column = facts.columns[c.at];
            if (c.role != named || !c.number || !column.isNumbers())
                continue;
            const auto ofColumn = kindOfHeading(column.heading);
            if (!uses.empty() && ofColumn != kind)
                continue; // another kind of velocity beside it
            if (numbers.insert(*c.number).second)
                uses.push_back({.at = c.at, .decimal = {}});
            kind = ofColumn;
        }
        if (uses.size() >= 2)
            return uses;
    }
    return {};
}

// A whole name, or its halves joined; a family name alone is nobody's: siblings share it, so that
// the column is the coach's to choose. "Name" beside a given name is its other half, unless it
// holds several words.
void takeAthlete(Shape& shape, const std::vector<Candidate>& candidates, const FileFacts& facts) {
    const Candidate *whole = nullptr, *given = nullptr, *family = nullptr;
    for (const Candidate& c : candidates) {
        if (c.role != TidyAthlete)
            continue;
        const auto part = namePartOf(facts.columns[c.at].heading);
        const Candidate*& held = !part ? whole : *part == NamePart::Given ? given : family;
        if (!held)
            held = &c;
    }
    const bool halved =
        whole && given && !family &&
        std::ranges::none_of(facts.columns[whole->at].samples,
                             [](const auto& cell) { return cell.find(' ') != std::string::npos; });
    auto& uses = shape.columns[TidyAthlete];
    if (given && (family || halved))
        uses = {{.at = given->at, .decimal = {}},
                {.at = (family ? family : whole)->at, .decimal = {}}};
    else if (whole)
        uses = {{.at = whole->at, .decimal = {}}};
    else if (given)
        uses = {{.at = given->at, .decimal = {}}};
}

// Of several columns of speeds, mean velocity before the others.
void takeOneSpeed(Shape& shape, const std::vector<Candidate>& candidates, const FileFacts& facts) {
    const Candidate* chosen = nullptr;
    const auto rank = [&](const Candidate& c) {
        const auto kind = kindOfHeading(facts.columns[c.at].heading);
        return !kind                               ? 1
               : *kind == VelocityKind::Mean       ? 0
               : *kind == VelocityKind::Propulsive ? 2
                                                   : 3;
    };
    for (const Candidate& c : candidates)
        if (c.role == TidyVelocity && (!chosen || rank(c) < rank(*chosen)))
            chosen = &c;
    if (chosen)
        shape.columns[TidyVelocity] = {{.at = chosen->at, .decimal = {}}};
}

// Without headings: days are days; speeds are below 4, loads are the numbers before them.
void proposeByValues(Shape& shape, const FileFacts& facts) {
    std::vector<std::size_t> numbers;
    for (std::size_t i = 0; i < facts.columns.size(); ++i) {
        if (facts.columns[i].isNumbers())
            numbers.push_back(i);
        else if (facts.columns[i].isDates() && shape.columns[TidyDate].empty())
            shape.columns[TidyDate] = {{.at = i, .decimal = {}}};
    }
    const auto mayBeSpeed = [&](std::size_t i) {
        return highOf(facts.columns[i]) < plausibleVelocityLimit;
    };
    const auto isSpeed = [&](std::size_t i) {
        const bool whole =
            std::ranges::all_of(facts.columns[i].samples, [](const std::string& cell) {
                return cell.find_first_not_of("0123456789") == std::string::npos;
            });
        return mayBeSpeed(i) && !whole;
    };
    const auto first = std::ranges::find_if(numbers, isSpeed);
    if (first == numbers.end() || first == numbers.begin()) {
        // All above: still a load with what may be speeds in cm/s behind it.
        if (first == numbers.end() && numbers.size() >= 2 && shape.columns[TidyDate].empty()) {
            shape.columns[TidyLoad] = {{.at = numbers[0], .decimal = {}}};
            for (std::size_t k = 1; k < numbers.size(); ++k)
                shape.columns[TidyVelocity].push_back({.at = numbers[k], .decimal = {}});
        }
    } else {
        // "42.5 1 0.98": the 1 may be a speed or a number of the set, and is no load.
        auto load = first - 1;
        while (load != numbers.begin() && mayBeSpeed(*load))
            --load;
        shape.columns[TidyLoad] = {{.at = mayBeSpeed(*load) ? *(first - 1) : *load, .decimal = {}}};
        // A rep at 1 m/s is written without decimals: between others it is a speed.
        const auto end = std::find_if_not(first, numbers.end(), mayBeSpeed);
        const auto last =
            std::find_if(std::reverse_iterator(end), std::reverse_iterator(first), isSpeed).base();
        for (auto it = first; it != last; ++it)
            shape.columns[TidyVelocity].push_back({.at = *it, .decimal = {}});
    }
    shape.rowIsSet = shape.columns[TidyVelocity].size() > 1;
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
        for (const DateOrder order : dayOrders)
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
    if (shape.columns[TidyDate].empty() || !shape.columns[TidySet].empty())
        return;
    const ColumnFacts& column = facts.columns[shape.columns[TidyDate][0].at];
    shape.layout.byTime = 2 * column.moments >= column.said && column.moments > 0 &&
                          !column.rises && !shape.blankAsAbove;
}

} // namespace

Shape propose(const FileFacts& facts) {
    Shape shape;
    shape.layout = facts.layout;
    if (facts.sheetIsGuess)
        shape.layout.sheet.clear(); // to be said
    if (facts.layout.header) {
        const auto candidates = candidatesOf(facts);
        shape.columns[TidyVelocity] = sideBySide(candidates, facts);
        shape.rowIsSet = !shape.columns[TidyVelocity].empty();
        if (!shape.rowIsSet)
            takeOneSpeed(shape, candidates, facts);
        takeAthlete(shape, candidates, facts);
        for (const Candidate& c : candidates) {
            const bool sideways = shape.rowIsSet && c.role == TidyRep;
            if (c.role != TidyVelocity && c.role != TidyAthlete && !sideways &&
                shape.columns[c.role].empty())
                shape.columns[c.role] = {{.at = c.at, .decimal = {}}};
        }
    } else {
        proposeByValues(shape, facts);
    }
    shape.lists = std::ranges::any_of(shape.columns[TidyVelocity], [&](const ColumnUse& use) {
        return facts.columns[use.at].isLists();
    });
    shape.rowIsSet = shape.rowIsSet || shape.lists || facts.layout.loadsAsColumns;
    if (shape.rowIsSet)
        shape.columns[TidyRep].clear(); // how many there are, or what they are called
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
