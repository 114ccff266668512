// SPDX-License-Identifier: GPL-3.0-or-later
// What a table probably is, to be looked at by the coach; and what only the coach can say.
#pragma once

#include "core/exchange/facts.h"
#include "core/exchange/shape.h"
#include "core/model/errors.h"
#include "core/model/words.h"

#include <optional>
#include <string>
#include <vector>

namespace slopebook::exchange {

/// A shape by headings and values. Only what can be read in one way is filled in: a decimal mark,
/// an order of day and month or a unit that the table leaves open stays open.
Shape propose(const FileFacts& facts);
/// What is wrong with a pasted block, whose columns are told apart by their values alone, where
/// some cells have a decimal point and some a comma: read by each one's own mark, a speed is taken
/// for a load and a load for a thousandfold one. Nothing where one mark serves all.
std::optional<BadInput> mixedMarks(const FileFacts& facts);

/// A column of times of day that has no role; named: whose heading says so too ("Time" over "2:30"
/// may be a rest).
std::optional<std::size_t> timesBeside(const Shape& shape, const FileFacts& facts, bool named);

/// Fills in what the facts leave only one way to read, for the roles as they are in the shape.
void settle(Shape& shape, const FileFacts& facts);

/// A shape that was kept (shapeText) for another table with these headings, for this one: its roles
/// stand; its answers fill in only what this table leaves open; its layout is the one found.
/// BadInput where it does not fit.
Shape fitted(const std::string& kept, const FileFacts& facts);
/// What is worth keeping of a shape: not whose session it was, nor when, what and how heavy.
Shape worthKeeping(Shape shape);

/// What has to be said before anything can be read.
struct Question {
    enum class About {
        Role, ///< neither a column nor a value for all rows: date, athlete, lift, load, velocity
        DateOrder, ///< day or month first
        Decimal,   ///< comma or point
        SpeedUnit, ///< m/s or cm/s
        Sheet      ///< several of the workbook would do
    };
    About about = About::Role;
    Tidy role = TidyDate;
    std::optional<std::size_t> column{}; ///< Decimal: which one
    std::string sample{};                ///< a cell that can be read in two ways
    friend bool operator==(const Question&, const Question&) = default;
};
std::vector<Question> openQuestions(const Shape& shape, const FileFacts& facts);
/// Asked of the coach, with the cell that can be read in two ways.
Words questionWords(const Question& question, const FileFacts& facts);
/// Which sheets of a workbook are hidden; empty where none is.
Words sheetWords(const FileFacts& facts);
/// How the table is laid out where that is more than rows of cells under their names: a row of
/// units, loads as columns, totals left out; empty where it is not.
std::vector<Words> layoutWords(const FileFacts& facts);
/// By which column the rows are put in order; empty where they stay as they stand.
Words orderWords(const Shape& shape, const FileFacts& facts);
/// Where letters were not UTF-8: that they were read as something else, and what to look at; empty
/// where they were.
Words letterCaution(const FileFacts& facts);

} // namespace slopebook::exchange
