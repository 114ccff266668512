// SPDX-License-Identifier: GPL-3.0-or-later
// How a coach says that a table is to be read: which column is what, what is not in the table, and
// how its numbers and days are written.
#pragma once

#include "core/exchange/marks.h"
#include "core/exchange/source.h"
#include "core/exchange/tidycolumns.h"
#include "core/model/exactmass.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::exchange {

enum class SpeedUnit { MetresPerSecond, CentimetresPerSecond };

/// A column of the table in use.
struct ColumnUse {
    std::size_t at = 0;               ///< from 0
    std::optional<Decimal> decimal{}; ///< of a column of numbers; nothing: not said yet
    friend bool operator==(const ColumnUse&, const ColumnUse&) = default;
};

/// Where the rows are.
struct TextLayout {
    std::string sheet{}; ///< of a workbook, whose rows have no encoding and no delimiter
    Encoding encoding = Encoding::Utf8;
    char delimiter = ',';
    long skip = 0;         ///< rows passed over at the beginning
    bool header = true;    ///< the first row after them names the columns
    bool unitsRow = false; ///< the next one says their units
    /// Words of totals: rows that begin with one, hold no day and leave cells blank are no sets.
    std::vector<std::string> leftOut{};
    /// A row holds a set under each column that is named by its load ("40 kg"): read as one row a
    /// load, with the columns "load" and "velocity" behind the others.
    bool loadsAsColumns = false;
    /// Rows follow one another by the time of day behind their date, or in a column of its own
    /// (Shape::timeOfDay), not as they stand.
    bool byTime = false;
    friend bool operator==(const TextLayout&, const TextLayout&) = default;
};

struct Shape {
    TextLayout layout{};
    /// One row holds a set, its velocities side by side; else one row holds one rep.
    bool rowIsSet = false;
    /// A cell of velocities may hold several, one a rep: "1.12 1.10 1.08". Then a row is a set.
    bool lists = false;
    /// A blank date, athlete, lift or load is the one of the row above.
    bool blankAsAbove = false;
    std::optional<DateOrder> dates{};
    std::optional<SpeedUnit> speed{};
    MassUnit load = MassUnit::Kilogram, bodyMass = MassUnit::Kilogram;
    /// A column of times of day, of use where rows are in order of time.
    std::optional<std::size_t> timeOfDay{};
    /// By Tidy; only velocity may have several, and the athlete two: the halves of a name, joined
    /// in this order.
    std::array<std::vector<ColumnUse>, TidyCount> columns{};
    /// What every row has that has no column, as tidy CSV writes it (days ISO, kg, decimal point).
    std::array<std::string, TidyCount> fixed{};

    bool has(Tidy role) const {
        return !columns[role].empty() || (role != TidyVelocity && !fixed[role].empty());
    }
    friend bool operator==(const Shape&, const Shape&) = default;
};

/// Load, velocity, body mass: their columns have a decimal mark.
bool isMeasure(Tidy role);
/// What a coach chooses of: all roles but the repeat, in the order that they are offered.
const std::vector<Tidy>& offeredRoles();
/// Without these nothing can be taken in: date, athlete, lift, load, velocity.
const std::vector<Tidy>& neededRoles();

/// As text, one fact a line, to be kept and to be edited by hand (`slopebook import --map`).
/// Columns by their heading; by number (#3) where there is none, or two alike.
std::string shapeText(const Shape& shape, const std::vector<std::string>& headings);
/// Its inverse for a table with these headings. BadInput (file is `name`, line) for other text, or
/// a column that the table does not have.
Shape parseShape(const std::string& text, const std::vector<std::string>& headings,
                 const std::string& name);
/// The layout alone, before the headings are known.
TextLayout parseLayout(const std::string& text, const std::string& name);

/// The same for every table with the same headings in the same order, delimiter aside: what a shape
/// is remembered under.
std::string headingSignature(const std::vector<std::string>& headings);

} // namespace slopebook::exchange
