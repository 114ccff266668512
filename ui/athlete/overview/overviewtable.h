// SPDX-License-Identifier: GPL-3.0-or-later
// The last step of every measure as a table by reading, for the window and for paper.
#pragma once

#include "core/answers/overview.h"
#include "ui/athlete/overview/matrixfigure.h"
#include "ui/parts/texttable.h"

#include <QStringList>

#include <optional>
#include <vector>

class QTableView;

namespace slopebook::ui {

struct OverviewLine {
    QStringList cells{}; ///< measure, from, to, change, its interval, reading or why
    std::optional<Step> step{};
    CellMark mark = CellMark::Figure;
    QString tip{};                ///< what its interval is held against
    bool firstOfStanding = false; ///< a rule stands above
};

struct OverviewTable {
    QStringList headings{};
    std::vector<OverviewLine> lines{}; ///< in the order of Overview::rows
    double span = StepSpan().units();  ///< of their bars, either way
};

OverviewTable overviewTable(const answers::SeasonMatrix& matrix, const answers::Overview& overview,
                            LoadUnit unit);

/// Its place among the columns: painted as a bar, read out as its figures.
constexpr int stepColumn = 4;

/// A table in the window: the interval's column is painted, a reading has its sign.
class OverviewRows final : public TextTable {
    Q_OBJECT
public:
    using TextTable::TextTable;
    void setLines(OverviewTable table);
    const OverviewTable& lines() const { return m_table; }

private:
    OverviewTable m_table;
};
QTableView* overviewView(OverviewRows* rows);
/// Columns as wide as what they hold, the reading takes the rest and wraps.
void fitOverview(QTableView& view);

} // namespace slopebook::ui
