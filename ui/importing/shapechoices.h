// SPDX-License-Identifier: GPL-3.0-or-later
// A table's shape as a coach chooses it, column by column; what follows from a choice is done here.
#pragma once

#include "core/exchange/facts.h"
#include "core/exchange/shape.h"

#include <map>
#include <optional>

namespace slopebook::ui {

class ShapeChoices {
public:
    static constexpr int notSaid = -1; ///< a choice that is still open

    void set(const exchange::FileFacts& facts, const exchange::Shape& shape);
    const exchange::FileFacts& facts() const { return m_facts; }
    const exchange::Shape& shape() const { return m_shape; }

    /// What the column is; nothing: not used.
    std::optional<exchange::Tidy> roleOf(std::size_t column) const;
    void setRole(std::size_t column, std::optional<exchange::Tidy> role);
    /// How a date's or a figure's column is written: a DateOrder, a Decimal, or notSaid.
    void setWritten(std::size_t column, int choice);
    /// A speed's or a load's unit: a SpeedUnit (or notSaid), a MassUnit.
    void setUnit(std::size_t column, int choice);
    void setRowIsSet(bool set, bool lists);
    /// By the moments of the dates; where they have none, by a column of times of day.
    void setByTime(bool byTime);
    void setBlankAsAbove(bool above) { m_shape.blankAsAbove = above; }
    /// What is the same in all rows, where no column says it.
    void setFixed(exchange::Tidy role, const std::string& said);
    /// Fills in what the table leaves only one way to read.
    void fillIn();

private:
    void giveBack(std::size_t column);

    exchange::FileFacts m_facts;
    exchange::Shape m_shape;
    /// A role that a column took from another, which gets it back when the column is something else
    /// again: keys go through the list of roles one by one.
    struct Taken {
        exchange::Tidy role;
        exchange::ColumnUse from;
    };
    std::map<std::size_t, Taken> m_taken; ///< by the column that took it
};

} // namespace slopebook::ui
