// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/entrypage.h"

#include "ui/floor/entry/besidelast.h"
#include "ui/floor/entry/countedin.h"
#include "ui/floor/entry/entryline.h"
#include "ui/floor/entry/nextload.h"
#include "ui/floor/entry/resttimer.h"
#include "ui/floor/entry/sessionbar.h"
#include "ui/floor/entry/setdelegate.h"
#include "ui/floor/entry/setdialog.h"
#include "ui/floor/entry/setwords.h"
#include "ui/floor/entry/splitoffer.h"
#include "ui/importing/pastedialog.h"
#include "ui/parts/figurespanel.h"
#include "ui/parts/fingers.h"
#include "ui/parts/givesway.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/settledlabel.h"
#include "ui/records/sessiondialog.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QShortcut>
#include <QSpinBox>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui {

namespace {
constexpr int rowHeight = fingerSize;
constexpr int mostEarlier = 50;
constexpr int lowPage = 480; // under this height the chart comes before the smaller figures

QWidget* column(QLabel* title, QWidget* table, QLayout* below) {
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(title);
    layout->addWidget(table, 1);
    if (below)
        layout->addLayout(below);
    return box;
}
} // namespace

EntryPage::EntryPage(Logbook& logbook, Clock clock, QWidget* parent)
    : TaskPage(parent), m_logbook(logbook), m_clock(clock) {
    build(clock);
    connectParts();
    setAthleteAndLift(std::nullopt, std::nullopt);
}

void EntryPage::build(const Clock& clock) {
    m_bar = new SessionBar(m_logbook, clock);
    m_split = new SplitOffer(m_logbook);
    m_line = new EntryLine([this](const std::vector<Set>& sets) { return take(sets); },
                           m_logbook.loadUnit());
    m_line->setNote([this](const TypedGap& gap) { return note(gap); });
    m_line->setDoubts([this](const Set& typed) { return doubtOf(typed, {}); });
    m_next = new QLabel;
    m_next->setObjectName(QStringLiteral("nextLoad"));
    m_next->setAccessibleDescription(tr("Next load"));
    m_next->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_next->setMinimumWidth(200);
    m_next->setMargin(6);
    m_next->setFont(sentenceFont(m_next->font(), 1.5));

    m_nextWhy = new QLabel;
    m_nextWhy->setObjectName(QStringLiteral("nextWhy"));
    m_nextWhy->setAccessibleDescription(tr("Where the next load comes from"));
    m_nextWhy->setContentsMargins(6, 0, 6, 2);

    m_against =
        new BesideLast([this] { return m_view ? againstLastText(*m_view, m_logbook) : QString(); });
    m_against->setAccessibleDescription(tr("Today beside last time"));

    auto* typing = new QHBoxLayout;
    typing->addWidget(m_line, 1);
    m_rest = new RestTimer(clock);
    auto* beside = new QVBoxLayout;
    beside->setSpacing(0);
    beside->addWidget(m_next);
    beside->addWidget(m_nextWhy);
    beside->addWidget(m_rest);
    beside->addStretch();
    typing->addLayout(beside);
    auto* split = new QSplitter(Qt::Horizontal);
    split->setChildrenCollapsible(false);
    split->addWidget(buildTables());
    split->addWidget(buildPicture());
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 1);
    split->setSizes({530, 530});
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(6);
    layout->setContentsMargins(8, 8, 8, 8);
    m_strip = new QHBoxLayout;
    m_strip->addWidget(m_bar, 1);
    layout->addLayout(m_strip);
    layout->addWidget(m_split);
    layout->addLayout(typing);
    layout->addWidget(m_against);
    layout->addWidget(split, 1);
}

QWidget* EntryPage::buildTables() {
    m_sets = new SetModel(
        [this](SetId id, const Set& set) -> QString {
            try {
                m_logbook.changeSet(id, set);
                return {};
            } catch (const std::exception& error) {
                return said(error);
            }
        },
        this);
    m_sets->setDoubts([this](SetId id, const Set& set) { return doubtOf(set, id); });
    m_ladder = new LadderModel(this);
    m_sets->setUnit(m_logbook.loadUnit());
    m_ladder->setUnit(m_logbook.loadUnit());
    const RowStyle numbered{.height = rowHeight, .wraps = false, .numbered = true};
    m_setTable = rowTable(m_sets, tr("Sets of this session"), numbered);
    m_setTable->setObjectName(QStringLiteral("sets"));
    m_setTable->setItemDelegate(new SetDelegate(*m_sets, m_setTable));
    m_setTable->horizontalHeader()->setStretchLastSection(true);
    for (const auto& [part, width] : {std::pair{SetModel::Load, 66},
                                      {SetModel::Reps, 104},
                                      {SetModel::PointOf, 50},
                                      {SetModel::Felt, 38},
                                      {SetModel::Remarks, 0}})
        m_setTable->setColumnWidth(
            part, std::max(width, m_setTable->horizontalHeader()->sectionSizeHint(part)));
    m_ladderTable = rowTable(m_ladder, tr("The ladder of last time"), numbered);
    m_ladderTable->verticalHeader()->hide();
    m_ladderTable->setColumnHidden(LadderModel::Reps, true);
    m_ladderTable->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    int headings = style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    for (int part = 0; part < m_ladder->columnCount(); ++part)
        if (!m_ladderTable->isColumnHidden(part))
            headings += m_ladderTable->horizontalHeader()->sectionSizeHint(part);
    m_ladderTable->setMinimumWidth(headings);
    m_setTitle = new QLabel(tr("This sessio&n"));
    m_setTitle->setBuddy(m_setTable);
    m_ladderTitle = new QLabel;
    m_setButton = new QPushButton(tr("Leave o&ut, note…"));
    m_setButton->setToolTip(tr("What counts of the selected set, and why not (Ctrl+Shift+E)"));
    m_removeButton = new QPushButton(tr("Re&move set"));
    m_removeButton->setToolTip(tr("Delete does the same in the table; Undo brings the set back"));
    for (QPushButton* button : {m_setButton, m_removeButton})
        button->setMinimumHeight(rowHeight);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_setButton);
    buttons->addWidget(m_removeButton);
    buttons->addStretch();
    m_earlier = new QSpinBox;
    m_earlier->setObjectName(QStringLiteral("earlier"));
    m_earlier->setRange(1, mostEarlier);
    m_earlier->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed); // the number is seen
    m_earlier->setMinimumHeight(rowHeight);
    m_earlier->setAccessibleName(tr("Earlier sessions on the chart"));
    m_earlier->setToolTip(tr("How many earlier sessions the chart shows beside this one"));
    auto* earlierLabel = new QLabel(tr("Earl&ier lines"));
    earlierLabel->setBuddy(m_earlier);
    buttons->addWidget(earlierLabel);
    buttons->addWidget(m_earlier);

    auto* tables = new QSplitter(Qt::Horizontal);
    tables->setChildrenCollapsible(false);
    tables->addWidget(column(m_setTitle, m_setTable, buttons));
    tables->addWidget(column(m_ladderTitle, m_ladderTable, nullptr));
    tables->setSizes({395, 135});
    tables->setStretchFactor(0, 3);
    tables->setStretchFactor(1, 1);
    return tables;
}

QWidget* EntryPage::buildPicture() {
    m_chart = new charts::LineChart;
    m_chart->setAccessibleName(tr("Chart of load and velocity"));
    m_figures = new FiguresPanel(m_logbook.loadUnit());
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_chart, 1);
    layout->addWidget(new GivesWay(m_figures));
    return box;
}

void EntryPage::connectParts() {
    connect(m_bar, &SessionBar::sessionChanged, this, &EntryPage::reload);
    connect(m_bar, &SessionBar::sessionChanged, m_line, &EntryLine::dropOffer);
    connect(m_bar, &SessionBar::started, this, &EntryPage::focusLine);
    connect(m_bar, &SessionBar::detailsWanted, this, &EntryPage::openDetails);
    connect(m_bar, &SessionBar::problem, m_line, &EntryLine::showProblem);
    // Beside the line it may be gone with the next key, and in the window after a while.
    connect(m_bar, &SessionBar::dayTurned, m_line, &EntryLine::showProblem);
    connect(m_bar, &SessionBar::dayTurned, this, &TaskPage::message);
    connect(m_bar, &SessionBar::news, this, &TaskPage::message);
    connect(m_split, &SplitOffer::problem, m_line, &EntryLine::showProblem);
    connect(m_split, &SplitOffer::left, this, &EntryPage::focusLine);
    connect(m_split, &SplitOffer::joined, this, [this](SessionId session, const QString& words) {
        showSession(session);
        Q_EMIT message(words);
        focusLine();
    });
    connect(m_sets, &SetModel::refused, m_line, &EntryLine::showProblem);
    connect(static_cast<SetDelegate*>(m_setTable->itemDelegate()), &SetDelegate::problem, m_line,
            &EntryLine::showProblem);
    connect(m_setTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &EntryPage::highlight);
    connect(m_chart, &charts::LineChart::pointClicked, this, [this](charts::PointRef point) {
        for (int row = 0; m_view && row < m_sets->rowCount(); ++row)
            if (m_view->pointOfRow(row) == point.point &&
                point.session + 1 == int(m_view->chart.sessions.size()))
                m_setTable->selectRow(row);
    });
    connect(m_earlier, &QSpinBox::valueChanged, this, &EntryPage::reload);
    connect(m_setButton, &QPushButton::clicked, this, &EntryPage::openSet);
    connect(m_removeButton, &QPushButton::clicked, this, &EntryPage::removeSet);
    auto* remove = new QShortcut(QKeySequence::Delete, m_setTable);
    remove->setContext(Qt::WidgetShortcut);
    connect(remove, &QShortcut::activated, this, &EntryPage::removeSet);
    auto* paste = new QShortcut(QKeySequence::Paste, m_setTable);
    paste->setContext(Qt::WidgetShortcut);
    connect(paste, &QShortcut::activated, this,
            [this] { m_line->paste(QApplication::clipboard()->text()); });
    connect(m_line, &EntryLine::blockPasted, this, &EntryPage::pasteBlock);
}

void EntryPage::resizeEvent(QResizeEvent* event) {
    TaskPage::resizeEvent(event);
    m_figures->setCompact(height() < lowPage);
    m_chart->setMinimumHeight(pictureHeight(*this));
    fitSets();
}

/// Where there is little room nothing stands in a column of its own that nobody has told.
void EntryPage::fitSets() {
    m_setTable->setColumnHidden(SetModel::Felt, height() < lowPage && !m_sets->anyFelt());
    const QHeaderView& columns = *m_setTable->horizontalHeader();
    const int scrollBar = style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, m_setTable);
    m_setTable->setMinimumWidth(m_setTable->verticalHeader()->sizeHint().width() +
                                columns.sectionPosition(SetModel::Remarks) +
                                columns.sectionSizeHint(SetModel::Remarks) +
                                2 * m_setTable->frameWidth() + scrollBar);
}

std::optional<SessionId> EntryPage::session() const {
    return m_bar->session();
}

void EntryPage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    const bool otherAthlete = athlete != m_athlete;
    if (otherAthlete)
        changeDraft(athlete);
    m_athlete = athlete;
    m_lift = lift;
    if (otherAthlete) {
        m_bar->setAthlete(athlete);
        m_rest->setAthlete(athlete);
    }
    m_bar->setLift(lift);
    m_line->setEnabled(athlete && lift);
    m_line->showHelp();
    reload();
}

void EntryPage::refresh(Logbook::What what, SessionId session) {
    using What = Logbook::What;
    {
        const CountedIn held(m_held);
        // A session that comes (back) while none is shown is the one to show: undo of a removal.
        if (what == What::Sessions)
            m_bar->reload(session);
        else if (what == What::Devices || what == What::Everything)
            m_bar->reload();
    }
    reload();
}

void EntryPage::showSession(std::optional<SessionId> session) {
    m_bar->setSession(session);
}

void EntryPage::lookAtTheDay() {
    try {
        m_bar->lookAtTheDay();
    } catch (const std::exception& error) {
        m_line->showProblem(said(error));
    }
}

void EntryPage::reload() {
    if (m_held > 0)
        return;
    try {
        m_split->offerFor(m_athlete, m_bar->session());
        if (!m_athlete || !m_lift) {
            showNothing(!m_athlete ? tr("No athlete yet: add one (Ctrl+Shift+A).")
                                   : tr("No lift yet: add one (Ctrl+Shift+L)."));
            return;
        }
        showView(readSession(m_logbook.log(), *m_athlete, *m_lift, m_bar->session(),
                             m_logbook.loadUnit(), m_earlier->value(), m_clock.today()));
    } catch (const std::exception& error) {
        showNothing(said(error));
    }
}

void EntryPage::showNothing(const QString& why) {
    m_view.reset();
    m_sets->setRows({});
    m_ladder->setSteps({}, {});
    m_ladderTitle->setText(tr("Last time"));
    m_next->clear();
    m_nextWhy->clear();
    m_against->say({});
    m_figures->clear();
    m_chart->setData({});
    m_line->showProblem(why);
}

// The point that was typed is drawn first: it is what the coach waits for.
void EntryPage::showView(const SessionView& view) {
    m_view = view;
    m_chart->setData(view.chart);
    if (m_taking > 0) {
        m_chart->setHighlight(chartPointOf(static_cast<int>(view.rows.size()) - 1));
        m_chart->drawNow();
    }
    {
        const CountedIn filling(m_filling);
        fillTables(view);
    }
    m_ladderTitle->setText(view.last ? tr("Last time, %1").arg(dateText(view.last->date))
                                     : tr("No earlier session"));
    m_next->setText(nextText(view, m_logbook.loadUnit()));
    m_nextWhy->setText(nextWhy(view));
    m_line->setLoads(view.loadsToday(), view.loadsLast());
    m_line->setNotLifted(view.notLifted, view.next);
    m_line->setLimit(view.limit, view.maximaLast());
    m_line->setCeiling(view.ceiling ? std::optional(view.ceiling->load) : std::nullopt);
    m_figures->showProfile(view.session, view.profile);
    m_chart->setSpokenText(m_figures->sentence());
    highlight();
    m_against->ask(view.last.has_value());
}

void EntryPage::fillTables(const SessionView& view) {
    const auto kept = currentSet();
    m_sets->setRows(view.rows);
    fitSets();
    m_ladder->setSteps(view.ladder, view.next);
    if (const int row = view.last ? m_ladder->nextRow() : -1; row >= 0)
        m_ladderTable->scrollTo(m_ladder->index(row, 0));
    // Not where it is chosen already: the cell that is being edited would be left for the first.
    const int row = m_taking > 0 ? m_sets->rowCount() - 1 : kept ? m_sets->rowOf(*kept) : -1;
    if (row >= 0 && row != m_setTable->currentIndex().row())
        m_setTable->selectRow(row);
}

std::optional<charts::PointRef> EntryPage::chartPointOf(int row) const {
    const auto at = m_view ? m_view->pointOfRow(row) : std::nullopt;
    return at ? std::optional(charts::PointRef{int(m_view->chart.sessions.size()) - 1, *at})
              : std::nullopt;
}

/// The one that is shown, or the one that stands in the fields, begun; its first set shows it.
std::optional<SessionId> EntryPage::sessionToWrite() {
    if (m_bar->session())
        return m_bar->session();
    const CountedIn held(m_held);
    return m_bar->start();
}

std::optional<SetId> EntryPage::currentSet() const {
    const QModelIndex current = m_setTable->currentIndex();
    if (!current.isValid())
        return std::nullopt;
    return m_sets->row(current.row()).placed.id;
}

void EntryPage::highlight() {
    if (m_filling > 0)
        return;
    const bool any = m_setTable->currentIndex().isValid();
    m_setButton->setEnabled(any);
    m_removeButton->setEnabled(any);
    m_chart->setHighlight(any ? chartPointOf(m_setTable->currentIndex().row()) : std::nullopt);
}

} // namespace slopebook::ui
