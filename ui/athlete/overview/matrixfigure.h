// SPDX-License-Identifier: GPL-3.0-or-later
// A season's matrix as it is shown: every cell's figure, mark and words, in the coach's unit and
// the window's language. One value for screen, paper and those who hear it.
#pragma once

#include "core/answers/seasonmatrix.h"
#include "ui/charts/chartout.h"
#include "ui/charts/whisker.h"
#include "ui/words/units.h"

#include <QString>

#include <optional>
#include <vector>

namespace slopebook::ui {

/// How a change is drawn: in units of the smallest change that matters, right is better.
struct Step {
    charts::Whisker whisker{};
    double change = 0;
    friend bool operator==(const Step&, const Step&) = default;
};

/// Either way of a scale that shows whole what is better or worse, and of all else the change
/// itself, with its interval as far as unsettled; what runs on beyond it has an arrow.
class StepSpan {
public:
    /// unsettled: units of an interval that is neither better nor worse that are shown. In narrow
    /// columns none more: their grey would be a line.
    explicit StepSpan(double unsettled = 0) : m_unsettled(unsettled) {}
    void take(const Step& step, bool settled);
    double units() const { return m_units; }

private:
    double m_unsettled;
    double m_units = 2.6;
};

/// What a cell says at a glance; each has its own sign or its word, none a colour alone.
enum class CellMark {
    Figure, ///< nothing is read of it: the chosen block, a body mass
    Better,
    Worse,
    Held,
    Unclear,
    NotComparable, ///< hatched
    NoReading,     ///< a figure, and why it is not read
    NoFigure       ///< empty, with its reason
};

struct MatrixCellFigure {
    QString figure{}; ///< "1.051"; empty without
    CellMark mark = CellMark::Figure;
    QString reading{}; ///< "better", "not comparable"; or the reason
    QString brief{};   ///< where there is no room for all: "no reading", "unclear, better?"
    QString words{};   ///< the reading in full: "unclear, leaning to better; clear from 0.055"
    QString before{};  ///< "against Autumn: held"; empty where that is the same question
    CellMark beforeMark = CellMark::Figure;
    std::optional<Step> step{}; ///< against the chosen block
    bool extrapolated = false;
    QString text() const; ///< in one line, for a table of texts
    QString spoken{};     ///< all of it in sentences: a line under the table, and what is read out
};

struct MatrixMeasureFigure {
    QString name{};           ///< "Bench pull at 40 kg"
    QString unit{};           ///< "m/s"
    QString matters{};        ///< "±0.050"; empty where nothing is known
    bool firstOfKind = false; ///< a rule stands above: another lift or test
};

struct MatrixBlockFigure {
    QString name{};
    QString under{}; ///< "3 tests, up to 70 kg"
    bool chosen = false;
    QString story{}; ///< what was done in it, planned and counted
};

struct MatrixFigure {
    std::vector<MatrixBlockFigure> blocks{};
    std::vector<MatrixMeasureFigure> measures{};
    std::vector<std::vector<MatrixCellFigure>> cells{}; ///< by measure, then block
    QString sentence{};
    std::size_t chosen = 0;
    double level = 0.95;
    double span = StepSpan().units(); ///< of its bars, either way

    bool empty() const { return blocks.empty() || measures.empty(); }
};

MatrixFigure matrixFigure(const answers::SeasonMatrix& matrix, LoadUnit unit);

/// A figure of the measure in the coach's unit, without the unit.
QString measureNumber(const answers::Measure& measure, double value, LoadUnit unit);
/// That of a cell which has one; of an asymmetry with the side that is ahead.
QString cellNumber(const answers::Measure& measure, const answers::MatrixCell& cell, LoadUnit unit);
/// A change of it with its sign; an interval of one: "-3.9 to +2.3".
QString measureChange(const answers::Measure& measure, double change, LoadUnit unit);
QString measureRange(const answers::Measure& measure, const stats::Interval& range, LoadUnit unit);
/// "m/s", "kg" or "lb", "cm"; empty for ratings.
QString measureUnit(const answers::Measure& measure, LoadUnit unit);
/// The change as it is drawn; nothing where no smallest change is known to measure it by.
std::optional<Step> stepOf(const answers::Measure& measure, const answers::CellChange& change);
/// What a change says at a glance.
CellMark markOf(const answers::Measure& measure, const answers::CellChange& change);
/// "better", "unclear, leaning to better; clear from 0.055", "not comparable", or why there is no
/// reading.
QString changeWords(const answers::Measure& measure, const answers::CellChange& change,
                    LoadUnit unit);

/// The matrix as a table of texts: a measure a row.
charts::FigureTable matrixTexts(const MatrixFigure& figure);

/// What hatching, band and bars mean, for under a matrix.
QString matrixKey(double level, bool bars);

} // namespace slopebook::ui
