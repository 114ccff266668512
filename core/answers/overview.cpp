// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/overview.h"

#include "core/model/periodwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace slopebook::answers {

namespace {

/// Against the chosen block where it has the measure, else from the last block that has it.
const std::optional<CellChange>& stepIn(const MatrixCell& cell) {
    return cell.against && cell.against->why.empty() ? cell.against : cell.before;
}

/// The last block before `to` that has a figure of the row.
std::optional<std::size_t> lastWithFigure(const MatrixRow& row, std::size_t to) {
    for (std::size_t at = to; at-- > 0;)
        if (row.cells[at].value)
            return at;
    return std::nullopt;
}

OverviewRow rowOf(const SeasonMatrix& matrix, std::size_t at, std::size_t to) {
    const MatrixRow& row = matrix.rows[at];
    const MatrixCell& cell = row.cells[to];
    OverviewRow shown{.row = at, .standing = standingOf(cell), .step = stepIn(cell)};
    shown.from = cell.value && shown.step ? shown.step->from : lastWithFigure(row, to);
    if (!cell.value)
        shown.why = cell.value.why().reason;
    else if (shown.step && !shown.step->comparable())
        shown.why = shown.step->read.notComparable;
    else if (shown.step)
        shown.why = shown.step->why;
    return shown;
}

/// One measure of a lift, of a test's side: so that one lift does not take all the pictures.
std::tuple<Measure::Kind, std::string, BodySide> kinOf(const Measure& measure) {
    const bool ofLift = measure.lift.has_value();
    return {ofLift ? Measure::Kind::Speed : measure.kind, measure.name, measure.side};
}

std::vector<std::size_t> chartsOf(const SeasonMatrix& matrix, const Overview& overview) {
    std::vector<std::size_t> charts;
    std::set<std::tuple<Measure::Kind, std::string, BodySide>> drawn;
    for (const OverviewRow& each : overview.rows) {
        const MatrixRow& row = matrix.rows[each.row];
        if (charts.size() == overviewCharts)
            break;
        if (row.measure.judged() && row.cells[overview.to].value && each.from &&
            drawn.insert(kinOf(row.measure)).second)
            charts.push_back(each.row);
    }
    return charts;
}

} // namespace

Words standingWords(Standing standing) {
    switch (standing) {
    case Standing::Better:
        return readingWords(Reading::Better);
    case Standing::Worse:
        return readingWords(Reading::Worse);
    case Standing::Held:
        return readingWords(Reading::Held);
    case Standing::Unclear:
        return readingWords(Reading::Unclear);
    case Standing::NotComparable:
        return say("not comparable");
    case Standing::NoFigure:
        break;
    }
    return readingWords(Reading::NoFigure);
}

Standing standingOf(const MatrixCell& cell) {
    const std::optional<CellChange>& step = stepIn(cell);
    if (!cell.value || !step)
        return Standing::NoFigure;
    if (!step->comparable())
        return Standing::NotComparable;
    if (!step->why.empty())
        return Standing::NoFigure;
    switch (step->read.reading) {
    case Reading::Better:
        return Standing::Better;
    case Reading::Worse:
        return Standing::Worse;
    case Reading::Held:
        return Standing::Held;
    case Reading::Unclear:
        return Standing::Unclear;
    case Reading::NoFigure:
        break;
    }
    return Standing::NoFigure;
}

Overview overviewOf(const SeasonMatrix& matrix) {
    Overview overview;
    if (matrix.blocks.empty())
        return overview;
    overview.to = matrix.blocks.size() - 1;
    for (std::size_t at = 0; at < matrix.rows.size(); ++at) {
        const MatrixRow& row = matrix.rows[at];
        const MatrixCell& cell = row.cells[overview.to];
        const OverviewRow shown = rowOf(matrix, at, overview.to);
        const bool possible = cell.value || cell.value.why().why != NoAnswer::Why::NotPossible;
        if (!possible)
            overview.missing.push_back(say("%1: %2", measureWords(row.measure), shown.why));
        else if (!cell.value && shown.from)
            overview.due.push_back(say("%1: last in %2", measureWords(row.measure),
                                       periodWords(matrix.blocks[*shown.from].block.name)));
        if (cell.value || shown.from)
            overview.rows.push_back(shown);
    }
    std::ranges::stable_sort(overview.rows, {}, [](const OverviewRow& row) {
        return std::pair(row.standing, row.step ? -row.step->read.tells() : 0);
    });
    overview.charts = chartsOf(matrix, overview);
    return overview;
}

} // namespace slopebook::answers
