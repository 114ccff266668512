// SPDX-License-Identifier: GPL-3.0-or-later
// What the page of lines is put together from.
#include "ui/athlete/profile/profilepage.h"
#include "ui/parts/figurespanel.h"
#include "ui/parts/fold.h"
#include "ui/parts/givesway.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wayon.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QShortcut>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {
constexpr int profileRow = 30;
} // namespace

void ProfilePage::build() {
    m_chart = new charts::LineChart;
    m_chart->setAccessibleName(tr("Chart of the chosen sessions' lines"));
    m_figures = new FiguresPanel(m_logbook.loadUnit());
    m_figures->setSources(true);
    m_empty = new Sentence;
    m_empty->setAccessibleDescription(tr("What is missing"));
    auto* split = new QSplitter(Qt::Vertical);
    split->setChildrenCollapsible(false);
    split->addWidget(m_chart);
    split->addWidget(buildTables());
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes({330, 210});
    m_drawBorrowed = new QCheckBox(tr("Draw &borrowed line"));
    m_borrowedText = new QLabel;
    m_borrowedText->setWordWrap(true);
    m_borrowedText->setAccessibleDescription(tr("Borrowed from earlier sessions"));
    m_borrowedText->setTextInteractionFlags(Qt::TextSelectableByMouse |
                                            Qt::TextSelectableByKeyboard);
    auto* borrowed = new QHBoxLayout;
    borrowed->addWidget(m_wellFits);
    borrowed->addWidget(m_drawBorrowed);
    borrowed->addWidget(m_borrowedText, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 8, 8, 8);
    layout->addWidget(m_empty);
    layout->addWidget(m_figures->headline()); // the sentence of the page
    layout->addWidget(m_way = new WayOn(*this, Place::Session));
    layout->addWidget(split, 1);
    layout->addStretch(); // where there is nothing to show
    layout->addLayout(borrowed);
    layout->addWidget(new GivesWay(m_figures, GivesWay::allLines));
}

QWidget* ProfilePage::buildTables() {
    m_lines = new LinesModel(this);
    m_lines->setGround(look::screenGround(palette()));
    m_lines->setUnit(m_logbook.loadUnit());
    m_points = new PointsModel(this);
    m_points->setUnit(m_logbook.loadUnit());
    const RowStyle style{.height = profileRow, .wraps = false};
    RowStyle lines = style; // what is least asked for goes, and is in the row's tip
    lines.leaving = {LinesModel::L0, LinesModel::Loads,   LinesModel::Count, LinesModel::R2,
                     LinesModel::V0, LinesModel::Scatter, LinesModel::Slope, LinesModel::Measured};
    m_lineTable = rowTable(m_lines, tr("Sessions and their lines"), lines);
    m_lineTable->setObjectName(QStringLiteral("lines"));
    m_pointTable = rowTable(m_points, tr("Points of the selected session"), style);
    m_pointTable->setObjectName(QStringLiteral("points"));
    m_pointTable->horizontalHeader()->setStretchLastSection(true);
    for (QTableView* table : {m_lineTable, m_pointTable})
        table->setMinimumHeight(leastHeight(*table));
    m_pointTitle = new QLabel;
    auto* title = new QLabel(tr("Session&s (checked: on the chart)"));
    title->setBuddy(m_lineTable);
    const auto column = [](QLabel* heading, QTableView* table) {
        auto* box = new QWidget;
        auto* layout = new QVBoxLayout(box);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(4);
        layout->addWidget(heading);
        layout->addWidget(table, 1);
        return box;
    };
    auto* split = new QSplitter(Qt::Horizontal);
    split->setChildrenCollapsible(false);
    split->addWidget(column(title, m_lineTable));
    auto* points = column(m_pointTitle, m_pointTable);
    split->addWidget(points);
    split->setSizes({640, 580});
    m_wellFits = new FoldButton(tr("How well each point fits"), {points});
    m_wellFits->setToolTip(tr("Residual, leverage and influence of every point (Ctrl+D)"));
    m_wellFits->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_D));
    return split;
}

void ProfilePage::connectParts() {
    connect(m_drawBorrowed, &QCheckBox::toggled, this, &ProfilePage::drawBorrowed);
    connect(m_lines, &LinesModel::shownChanged, this, &ProfilePage::showChart);
    connect(m_lineTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &ProfilePage::showPoints);
    // Not activated(): some desktops send that at one click, which here only selects.
    connect(m_lineTable, &QTableView::doubleClicked, this, &ProfilePage::openCurrent);
    auto* enter = new QShortcut(QKeySequence(Qt::Key_Return), m_lineTable);
    enter->setContext(Qt::WidgetShortcut);
    connect(enter, &QShortcut::activated, this, &ProfilePage::openCurrent);
    connect(m_pointTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &ProfilePage::highlight);
    connect(m_chart, &charts::LineChart::pointClicked, this, [this](charts::PointRef point) {
        if (point.session < 0 || point.session >= int(m_drawn.size()))
            return;
        const SessionId session = m_drawn[static_cast<std::size_t>(point.session)];
        const auto& rows = m_lines->rows();
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (rows[i].session.session == session)
                m_lineTable->selectRow(static_cast<int>(i));
        m_pointTable->selectRow(point.point);
    });
}

} // namespace slopebook::ui
