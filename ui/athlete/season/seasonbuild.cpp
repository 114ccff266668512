// SPDX-License-Identifier: GPL-3.0-or-later
// What the season's page is put together from.
#include "ui/athlete/season/seasonpage.h"
#include "ui/athlete/season/seasonrows.h"
#include "ui/parts/fold.h"
#include "ui/parts/givesway.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/sidekey.h"
#include "ui/parts/wayon.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

namespace slopebook::ui {

QWidget* SeasonPage::buildChoices() {
    m_loads = new QComboBox;
    m_loads->setAccessibleName(tr("Load to follow"));
    m_baselines = new QComboBox;
    m_baselines->setObjectName(QStringLiteral("countedFrom"));
    m_baselines->setAccessibleName(tr("Session or block that changes are counted from"));
    auto* box = new QWidget;
    auto* row = new QHBoxLayout(box);
    m_strip = row;
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [row](const QString& name, QComboBox* combo) {
        combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        auto* label = new QLabel(name);
        label->setBuddy(combo);
        row->addWidget(label);
        row->addWidget(combo);
    };
    add(tr("L&oad"), m_loads);
    add(tr("Fro&m"), m_baselines);
    buildTrends();
    row->addWidget(m_trends);
    row->addStretch(1);
    return box;
}

/// What is rarely set: which trends are drawn, the state in the button's words.
void SeasonPage::buildTrends() {
    m_trends = new QToolButton;
    m_trends->setObjectName(QStringLiteral("trends"));
    m_trends->setAutoRaise(true);
    m_trends->setFocusPolicy(Qt::StrongFocus);
    m_trends->setToolTip(tr("Which trends are drawn and told"));
    auto* menu = new QMenu(m_trends);
    m_ofTheSeason = menu->addAction(tr("&Trend of the season"));
    m_withinBlocks = menu->addAction(tr("Trend &within each block"));
    for (QAction* action : {m_ofTheSeason, m_withinBlocks})
        action->setCheckable(true);
    m_ofTheSeason->setChecked(true);
    connect(m_trends, &QToolButton::clicked, menu,
            [this, menu] { menu->popup(m_trends->mapToGlobal(QPoint(0, m_trends->height()))); });
    connect(menu, &QMenu::triggered, this, [this] {
        nameTrends();
        ask();
    });
    nameTrends();
}

void SeasonPage::nameTrends() {
    const bool season = m_ofTheSeason->isChecked(), blocks = m_withinBlocks->isChecked();
    const QString state = season && blocks ? tr("both trends")
                          : season         ? tr("trend")
                          : blocks         ? tr("trends of blocks")
                                           : tr("no trend");
    m_trends->setText(state + QStringLiteral(" \u25be"));
    m_trends->setAccessibleName(state);
}

QLayout* SeasonPage::buildButtons() {
    m_useAsBaseline = new QPushButton(tr("Coun&t from the selected"));
    m_compare = new QPushButton(tr("Compare &it with where changes start"));
    m_preview = new QPushButton(tr("Pri&nt preview…"));
    m_print = new QPushButton(tr("&Print…"));
    m_pdf = new QPushButton(tr("Save P&DF…"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_useAsBaseline);
    row->addWidget(m_compare);
    row->addStretch(1);
    for (QPushButton* button : {m_preview, m_print, m_pdf})
        row->addWidget(button);
    return row;
}

void SeasonPage::build() {
    m_chart = new SeasonChart;
    m_chart->setToolTip(tr("Click a session or a block's mean to make it the baseline."));
    m_table = new TextTable(this);
    m_view = rowTable(m_table, tr("Sessions, the load and the estimated 1RM"),
                      {.compact = true,
                       .giving = {seasonReading, seasonBlock},
                       .leaving = {seasonEffort, seasonMeasured, seasonToPlan, seasonOneRm}});
    m_view->setObjectName(QStringLiteral("season"));
    m_told = new Sentence;
    m_told->setObjectName(QStringLiteral("sentence"));
    m_notes = new QLabel;
    m_told->setAccessibleDescription(tr("What the season says"));
    m_notes->setAccessibleDescription(tr("Where the figures come from"));
    m_settling = new QLabel;
    m_settling->setObjectName(QStringLiteral("settling"));
    m_settling->setAccessibleDescription(tr("What the selected row says"));
    m_under = new QLabel;
    m_under->setObjectName(QStringLiteral("toldUnder"));
    m_under->setAccessibleDescription(tr("The chosen day, and the trend"));
    for (QLabel* label : {m_settling, m_notes, m_under}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    }
    auto* split = new QSplitter(Qt::Vertical);
    split->setChildrenCollapsible(false);
    split->addWidget(m_chart);
    split->addWidget(m_view);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 1);
    split->setSizes({440, 180});
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(buildChoices());
    layout->addWidget(m_told);
    layout->addWidget(m_under);
    layout->addWidget(m_way = new WayOn(*this, Place::Session));
    layout->addWidget(split, 1);
    layout->addStretch();
    layout->addWidget(m_settling);
    layout->addWidget(m_sources = new SourcesFold(new GivesWay(m_notes, 2),
                                                  tr("To beware of, and where this comes from")));
    layout->addLayout(buildButtons());
}

void SeasonPage::connectParts() {
    connect(m_loads, &QComboBox::activated, this, [this] {
        m_load = Mass{m_loads->currentData().toLongLong()};
        ask();
    });
    connect(m_baselines, &QComboBox::activated, this,
            [this] { setBaseline(sideFrom(m_baselines->currentData().toString())); });
    connect(m_chart, &SeasonChart::itemClicked, this, [this](const SeasonItem& item) {
        if (const auto baseline = baselineOf(item))
            setBaseline(*baseline);
        else
            selectItem(item);
    });
    connect(m_chart, &SeasonChart::itemWalkedTo, m_view, &QTableView::selectRow);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &SeasonPage::itemPicked);
    connect(m_view, &QTableView::doubleClicked, this, [this](const QModelIndex& /*index*/) {
        if (const auto session = sessionOfRow())
            Q_EMIT sessionWanted(*session);
    });
    connect(m_useAsBaseline, &QPushButton::clicked, this, [this] {
        const auto item = currentItem();
        if (const auto baseline = item ? baselineOf(*item) : std::nullopt)
            setBaseline(*baseline);
    });
    connect(m_preview, &QPushButton::clicked, this, &SeasonPage::printPreview);
    connect(m_print, &QPushButton::clicked, this, &SeasonPage::print);
    connect(m_pdf, &QPushButton::clicked, this, &SeasonPage::writePdf);
    connect(m_compare, &QPushButton::clicked, this, &SeasonPage::compare);
}

} // namespace slopebook::ui
