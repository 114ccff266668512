// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/matrixfigure.h"

#include "core/answers/method.h"
#include "core/answers/readingwords.h"
#include "ui/words/counts.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using answers::CellChange;
using answers::MatrixCell;
using answers::Measure;
using answers::Reading;
using answers::SeasonMatrix;

struct MatrixText {
    Q_DECLARE_TR_FUNCTIONS(MatrixText)
};

/// Figures are drawn so that right is better.
stats::Interval inUnits(const Measure& measure, const stats::Interval& range, double smallest) {
    const double low = range.low / smallest;
    const double high = range.high / smallest;
    return measure.higherIsBetter ? stats::Interval{low, high} : stats::Interval{-high, -low};
}

/// The short word of a cell; a reason where there is no reading.
QString bareWord(const CellChange& change, LoadUnit unit) {
    if (!change.comparable())
        return said(answers::shortReading(change.read), unit);
    if (!change.why.empty())
        return said(change.why, unit);
    return said(answers::readingWords(change.read.reading), unit);
}

/// With where an unclear change leans.
QString shortWord(const CellChange& change, LoadUnit unit) {
    return change.comparable() && change.why.empty()
               ? said(answers::leaningReading(change.read), unit)
               : bareWord(change, unit);
}

/// "Against Autumn: better, +0.049 m/s (+0.016 to +0.082)." `together` is read with it.
QString changeSentence(const SeasonMatrix& matrix, const Measure& measure, const CellChange& change,
                       const Words& together, LoadUnit unit) {
    const QString from = MatrixText::tr("%1 (%2)", "a block, how many are read together")
                             .arg(periodText(matrix.blocks[change.from].block.name),
                                  said(matrix.allAtOnce() ? together : answers::eachChangeAlone()));
    const QString words = changeWords(measure, change, unit);
    if (!change.why.empty())
        return MatrixText::tr("Against %1: no reading, %2.").arg(from, words);
    const QString figures = measureChange(measure, change.read.besideInterval(), unit) + u' ' +
                            measureUnit(measure, unit);
    const QString range = measureRange(measure, change.read.interval, unit);
    if (!change.comparable())
        return MatrixText::tr("Against %1: %2, %3 (%4); %5.")
            .arg(from, words, figures.trimmed(), range, said(change.read.notComparable, unit));
    return MatrixText::tr("Against %1: %2, %3 (%4).").arg(from, words, figures.trimmed(), range);
}

QString spokenCell(const SeasonMatrix& matrix, const answers::MatrixRow& row, std::size_t block,
                   LoadUnit unit) {
    const MatrixCell& cell = row.cells[block];
    const QString where =
        MatrixText::tr("%1, %2").arg(said(answers::measureWords(row.measure), unit),
                                     periodText(matrix.blocks[block].block.name));
    if (!cell.value)
        return MatrixText::tr("%1: no figure, %2.").arg(where, said(cell.value.why().reason, unit));
    QString figure =
        (cellNumber(row.measure, cell, unit) + u' ' + measureUnit(row.measure, unit)).trimmed();
    if (cell.interval)
        figure = MatrixText::tr("%1 (%2 to %3)")
                     .arg(figure, measureNumber(row.measure, cell.interval->low, unit),
                          measureNumber(row.measure, cell.interval->high, unit));
    QStringList all{
        MatrixText::tr("%1: %2 of %3.").arg(where, figure, sessionsText(cell.sessions))};
    if (cell.extrapolated)
        all << MatrixText::tr("Beyond the loads of its sessions.");
    if (block == matrix.chosen)
        all << MatrixText::tr("The others are read against this block.");
    if (cell.against)
        all << changeSentence(matrix, row.measure, *cell.against, answers::allBlocksAtOnce(), unit);
    if (cell.before && (!cell.against || cell.before->from != cell.against->from))
        all << changeSentence(matrix, row.measure, *cell.before, answers::allStepsAtOnce(), unit);
    return all.join(u' ');
}

MatrixCellFigure cellFigure(const SeasonMatrix& matrix, const answers::MatrixRow& row,
                            std::size_t block, LoadUnit unit) {
    const MatrixCell& cell = row.cells[block];
    MatrixCellFigure shown{.spoken = spokenCell(matrix, row, block, unit)};
    if (!cell.value) {
        shown.mark = CellMark::NoFigure;
        shown.reading = shown.words = said(cell.value.why().reason, unit);
        return shown;
    }
    shown.figure = cellNumber(row.measure, cell, unit);
    shown.extrapolated = cell.extrapolated;
    if (cell.against) {
        shown.mark = markOf(row.measure, *cell.against);
        shown.reading = shown.mark == CellMark::Figure ? QString() : shortWord(*cell.against, unit);
        shown.words = shown.mark == CellMark::Figure
                          ? QString()
                          : changeWords(row.measure, *cell.against, unit);
        shown.step = stepOf(row.measure, *cell.against);
        if (shown.mark == CellMark::NoReading)
            shown.brief = MatrixText::tr("no reading");
        else if (const int which = cell.against->read.leans();
                 which != 0 && cell.against->read.clearAlone() == 0)
            shown.brief =
                which > 0 ? MatrixText::tr("unclear, better?") : MatrixText::tr("unclear, worse?");
    }
    if (cell.before && (!cell.against || cell.before->from != cell.against->from)) {
        shown.beforeMark = markOf(row.measure, *cell.before);
        if (shown.beforeMark != CellMark::Figure)
            shown.before = MatrixText::tr("step from %1: %2")
                               .arg(periodText(matrix.blocks[cell.before->from].block.name),
                                    bareWord(*cell.before, unit));
    }
    return shown;
}

MatrixMeasureFigure measureFigure(const answers::MatrixRow& row, LoadUnit unit) {
    MatrixMeasureFigure shown{.name = asSentence(said(answers::measureWords(row.measure), unit)),
                              .unit = measureUnit(row.measure, unit)};
    if (row.smallest && row.smallest->value > 0 && row.measure.judged())
        shown.matters = QChar(0xB1) + measureNumber(row.measure, row.smallest->value, unit);
    return shown;
}

} // namespace

void StepSpan::take(const Step& step, bool settled) {
    constexpr double widest = 8, air = 0.2; // beyond it the grey of one unit is a line
    const double reach =
        std::max(std::abs(step.whisker.interval.low), std::abs(step.whisker.interval.high));
    const double needed =
        std::max(std::abs(step.change), settled ? reach : std::min(reach, m_unsettled));
    if (std::isfinite(needed))
        m_units = std::max(m_units, std::min(widest, needed + air));
}

QString MatrixCellFigure::text() const {
    QStringList parts{figure, words, before};
    parts.removeAll(QString());
    return parts.join(u"; "_s);
}

QString measureUnit(const Measure& measure, LoadUnit unit) {
    return measure.isMass() ? unitName(unit) : text(measure.unit);
}

QString measureNumber(const Measure& measure, double value, LoadUnit unit) {
    return number(measure.isMass() ? inUnit(value, unit) : value, measure.decimals);
}

QString cellNumber(const Measure& measure, const MatrixCell& cell, LoadUnit unit) {
    const QString figure = measureNumber(measure, *cell.value, unit);
    switch (cell.better) {
    case BodySide::Left:
        return MatrixText::tr("left %1", "by how much that side is ahead").arg(figure);
    case BodySide::Right:
        return MatrixText::tr("right %1", "by how much that side is ahead").arg(figure);
    case BodySide::Both:
        break;
    }
    return figure;
}

QString measureChange(const Measure& measure, double change, LoadUnit unit) {
    return signedNumber(measure.isMass() ? inUnit(change, unit) : change, measure.decimals);
}

QString measureRange(const Measure& measure, const stats::Interval& range, LoadUnit unit) {
    return signedRangeText(measure.isMass() ? inUnit(range, unit) : range, measure.decimals);
}

std::optional<Step> stepOf(const Measure& measure, const CellChange& change) {
    const auto& smallest = change.read.smallest;
    if (!measure.judged() || !smallest || !(smallest->value > 0) || !change.why.empty())
        return std::nullopt;
    const double unit = smallest->value;
    const answers::ReadChange& read = change.read;
    return Step{
        .whisker = {.interval = inUnits(measure, read.interval, unit),
                    .equivalence = inUnits(measure, read.equivalence, unit),
                    .straight = inUnits(measure, read.straight.value_or(read.interval), unit)},
        .change = read.besideInterval() / unit * (measure.higherIsBetter ? 1 : -1)};
}

CellMark markOf(const Measure& measure, const CellChange& change) {
    if (!change.comparable())
        return CellMark::NotComparable;
    if (!measure.judged())
        return CellMark::Figure;
    if (!change.why.empty())
        return CellMark::NoReading;
    switch (change.read.reading) {
    case Reading::Better:
        return CellMark::Better;
    case Reading::Worse:
        return CellMark::Worse;
    case Reading::Held:
        return CellMark::Held;
    case Reading::Unclear:
        return CellMark::Unclear;
    case Reading::NoFigure:
        break;
    }
    return CellMark::NoReading;
}

QString changeWords(const Measure& measure, const CellChange& change, LoadUnit unit) {
    if (!change.why.empty())
        return said(change.why, unit);
    if (!change.comparable())
        return said(answers::shortReading(change.read), unit);
    if (!measure.judged())
        return MatrixText::tr("changed");
    const QString words =
        said(measure.isMass() ? answers::maxCell(change.read)
                              : answers::sizedCell(change.read, measure.saidDecimals()),
             unit);
    return change.stands ? MatrixText::tr("%1, standing among all").arg(words) : words;
}

MatrixFigure matrixFigure(const SeasonMatrix& matrix, LoadUnit unit) {
    MatrixFigure figure{
        .sentence = said(matrix.sentence, unit), .chosen = matrix.chosen, .level = matrix.level};
    for (std::size_t i = 0; i < matrix.blocks.size(); ++i) {
        const answers::MatrixBlock& block = matrix.blocks[i];
        QString under = sessionsText(block.sessions);
        if (block.block.ceiling)
            under = MatrixText::tr("%1, up to %2")
                        .arg(under, loadWithUnit(kilograms(*block.block.ceiling), unit));
        figure.blocks.push_back(
            {.name = periodText(block.block.name),
             .under = under,
             .chosen = i == matrix.chosen,
             .story = i < matrix.story.size() ? said(matrix.story[i], unit) : QString()});
    }
    const Measure* above = nullptr;
    for (const answers::MatrixRow& row : matrix.rows) {
        figure.measures.push_back(measureFigure(row, unit));
        figure.measures.back().firstOfKind =
            above && (above->name != row.measure.name || above->test != row.measure.test);
        above = &row.measure;
        std::vector<MatrixCellFigure>& cells = figure.cells.emplace_back();
        for (std::size_t block = 0; block < row.cells.size(); ++block)
            cells.push_back(cellFigure(matrix, row, block, unit));
    }
    StepSpan span;
    for (const auto& row : figure.cells)
        for (const MatrixCellFigure& cell : row)
            if (cell.step)
                span.take(*cell.step,
                          cell.mark == CellMark::Better || cell.mark == CellMark::Worse);
    figure.span = span.units();
    return figure;
}

charts::FigureTable matrixTexts(const MatrixFigure& figure) {
    charts::FigureTable table{
        .headings = {MatrixText::tr("Measure"), MatrixText::tr("Unit"), MatrixText::tr("Matters")}};
    for (const MatrixBlockFigure& block : figure.blocks)
        table.headings << block.name;
    for (std::size_t i = 0; i < figure.measures.size(); ++i) {
        const MatrixMeasureFigure& measure = figure.measures[i];
        QStringList row{measure.name, measure.unit, measure.matters};
        for (const MatrixCellFigure& cell : figure.cells[i])
            row << cell.text();
        table.rows.push_back(row);
    }
    return table;
}

QString matrixKey(double level, bool bars) {
    if (!bars)
        return MatrixText::tr("Hatched: not comparable.");
    return MatrixText::tr(
               "Bar: change against the chosen block with its %1 interval, thick %2, which "
               "decides \u201cheld\u201d, in units of what matters; right is better. Grey: too "
               "small to matter. Dotted: what a bend may add. Hatched: not comparable. Arrow: runs "
               "on beyond the scale.")
        .arg(levelText(level), levelText(answers::equivalenceLevel(level)));
}

} // namespace slopebook::ui
