// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/blocks/blockspage.h"

#include "core/answers/story.h"
#include "ui/parts/deskpaint.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/records/blocksdialog.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace slopebook::ui {

namespace {

QString joined(const QStringList& words) {
    return namesText(words);
}

constexpr int missingColumn = 6, trainedColumn = 7, noteColumn = 8;

constexpr std::array wordColumns{trainedColumn, noteColumn};

} // namespace

BlocksPage::BlocksPage(Logbook& logbook, Clock clock, QWidget* parent)
    : TaskPage(parent), m_logbook(logbook), m_clock(std::move(clock)) {
    build();
    connectParts();
    reload();
}

void BlocksPage::build() {
    m_timeline = new Timeline(m_logbook.loadUnit());
    m_blockRows = new TextTable(this);
    m_sessionRows = new TextTable(this);
    RowStyle style{.compact = true, .growing = true, .told = {trainedColumn, noteColumn}};
    m_blockTable = rowTable(m_blockRows, tr("Training blocks"), style);
    style.told.clear();
    m_blockTable->setObjectName(QStringLiteral("blocks"));
    m_sessionTable = rowTable(m_sessionRows, tr("Sessions of the selected block"), style);
    const auto share = [](QTableView* table, std::initializer_list<int> stretched) {
        table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
        for (const int column : stretched)
            table->horizontalHeader()->setSectionResizeMode(column, QHeaderView::Stretch);
    };
    m_blockRows->setTable(blockColumns(), {}, 3, 6);
    m_sessionRows->setTable(sessionColumns(), {}, 9, 9);
    keepLeastHeight(*m_sessionTable);
    connect(m_blockTable->verticalHeader(), &QHeaderView::sectionResized, this,
            &BlocksPage::showBlocksWhole, Qt::QueuedConnection);
    share(m_blockTable, {missingColumn});
    share(m_sessionTable, {1, 2});
    m_title = new QLabel;
    m_title->setBuddy(m_sessionTable);
    m_problem = new QLabel;
    m_problem->setWordWrap(true);
    m_problem->hide();
    m_keep = new QPushButton(tr("Training &blocks..."));
    auto* below = new QWidget;
    auto* column = new QVBoxLayout(below);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_title);
    column->addWidget(m_sessionTable, 1);
    auto* split = new QSplitter(Qt::Vertical);
    split->setChildrenCollapsible(false);
    split->addWidget(m_timeline);
    split->addWidget(m_blockTable);
    split->addWidget(below);
    split->setSizes({240, 140, 180});
    auto* head = new QHBoxLayout;
    m_strip = head;
    m_legend = new QLabel;
    m_legend->setWordWrap(true);
    m_legend->setForegroundRole(QPalette::PlaceholderText);
    head->addWidget(m_keep);
    head->addStretch(1);
    m_sentence = new Sentence;
    m_sentence->setObjectName(QStringLiteral("sentence"));
    m_sentence->setAccessibleDescription(tr("What the selected block was"));
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(head);
    layout->addWidget(m_problem);
    layout->addWidget(m_sentence);
    layout->addWidget(m_legend);
    layout->addWidget(split, 1);
}

/// What was planned for all and what the log holds of the athlete are no two figures of one thing.
QStringList BlocksPage::blockColumns() const {
    return inTwoLines({tr("Block"), tr("First day"), tr("Last day"), tr("Load ceiling"),
                       tr("Planned a week"),
                       m_name.isEmpty() ? tr("Sessions here") : tr("Sessions of %1").arg(m_name),
                       tr("Missing"), tr("Trained"), tr("Note")});
}

/// A few rows, of which none is hidden behind another: blocks are few.
void BlocksPage::showBlocksWhole() {
    constexpr int mostWhole = 6;
    int high = leastHeight(*m_blockTable), rows = 0;
    const int least = m_blockTable->verticalHeader()->defaultSectionSize();
    for (int row = 0; row < std::min(m_blockRows->rowCount(), mostWhole); ++row)
        rows += std::max(m_blockTable->rowHeight(row), least);
    high = std::max(high, m_blockTable->horizontalHeader()->sizeHint().height() + rows +
                              2 * std::max(m_blockTable->frameWidth(), desk::tableRule));
    m_blockTable->setMinimumHeight(high);
}

QStringList BlocksPage::sessionColumns() {
    return {tr("Day"), tr("Not possible, and why"), tr("Lifts and tests")};
}

void BlocksPage::connectParts() {
    connect(m_timeline, &Timeline::widthChanged, this, &BlocksPage::fitTimeline,
            Qt::QueuedConnection); // not within its own layout
    connect(m_timeline, &Timeline::blockClicked, this, &BlocksPage::selectBlock);
    connect(m_blockTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &BlocksPage::showSessions);
    connect(m_sessionTable, &QTableView::activated, this, [this](const QModelIndex& at) {
        Q_EMIT sessionWanted(m_shown.at(static_cast<std::size_t>(at.row())));
    });
    connect(m_keep, &QPushButton::clicked, this,
            [this] { BlocksDialog(m_logbook, m_clock, this).exec(); });
}

void BlocksPage::resizeEvent(QResizeEvent* event) {
    TaskPage::resizeEvent(event);
    fitTimeline();
}

/// As high as its words ask for, and a picture's third; the tables take the rest. Words that have
/// no room in it stand in the table.
void BlocksPage::fitTimeline() {
    m_timeline->setFixedHeight(
        std::max(pictureHeight(*this), m_timeline->minimumSizeHint().height()));
    for (const int column : wordColumns)
        m_blockTable->setColumnHidden(column, m_timeline->showsAllWords());
}

void BlocksPage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId>) {
    m_athlete = athlete;
    reload();
}

void BlocksPage::refresh(Logbook::What, SessionId) {
    reload();
}

void BlocksPage::reload() {
    try {
        const log::Log& log = m_logbook.log();
        m_blocks = log.blocks();
        m_lifts = log.lifts();
        m_kinds = log.testKinds();
        m_season.clear();
        m_name.clear();
        if (m_athlete) {
            m_season = questions::seasonOf(log, *m_athlete);
            m_name = text(log.athlete(*m_athlete).value.name);
        }
        m_problem->hide();
    } catch (const std::exception& error) {
        m_problem->setText(QStringLiteral("\u26a0 ") + said(error));
        m_problem->show();
    }
    m_legend->setText(
        m_name.isEmpty()
            ? tr("Lid on a block: a load ceiling.")
            : tr("Dots: sessions of %1 in this log, with sets or tests. Hollow: something was not "
                 "possible. Lid on a block: a load ceiling.")
                  .arg(m_name));
    showBlocks();
}

QString BlocksPage::liftName(LiftId id) const {
    const auto found = std::ranges::find(m_lifts, id, &Stored<LiftId, Lift>::id);
    return found == m_lifts.end() ? QString() : text(found->value.name);
}

QString BlocksPage::testName(TestKindId id) const {
    const auto found = std::ranges::find(m_kinds, id, &Stored<TestKindId, TestKind>::id);
    return found == m_kinds.end() ? QString() : testText(found->value.name);
}

QString BlocksPage::whatWas(const questions::BlockSession& session) const {
    QStringList all;
    for (const LiftId lift : session.lifts)
        all << liftName(lift);
    for (const TestKindId test : session.tests)
        all << testName(test);
    return joined(all);
}

QString BlocksPage::whatWasMissing(const questions::BlockSession& session) const {
    QStringList all;
    for (const Gap& gap : session.gaps) {
        QString what = gap.lift ? liftName(*gap.lift) : testName(gap.kind.value_or(TestKindId{}));
        if (gap.side != BodySide::Both)
            what += gap.side == BodySide::Left ? tr(", left") : tr(", right");
        all << tr("%1: %2").arg(what, text(gap.reason));
    }
    return all.join(QStringLiteral("; "));
}

/// In how many sessions; what it was stands with each of them, and in the row's tip.
QString BlocksPage::missedOf(const QStringList& missing, int sessions) {
    return missing.isEmpty() ? QString() : tr("in %1 of %2").arg(missing.size()).arg(sessions);
}

bool BlocksPage::within(const questions::BlockSession& session, int row) const {
    const auto holds = [&](const Stored<BlockId, Block>& block) {
        return block.value.holds(session.date);
    };
    if (row < static_cast<int>(m_blocks.size()))
        return holds(m_blocks[static_cast<std::size_t>(row)]);
    return std::none_of(m_blocks.begin(), m_blocks.end(), holds);
}

void BlocksPage::showBlocks() {
    const int held = m_blockTable->currentIndex().row();
    std::vector<Block> blocks;
    std::vector<TimelineSession> marks;
    std::vector<TextTable::Row> rows;
    const int count = static_cast<int>(m_blocks.size());
    for (int i = 0; i <= count; ++i) {
        int sessions = 0;
        QStringList missing;
        for (const questions::BlockSession& session : m_season)
            if (within(session, i)) {
                ++sessions;
                const QString gap = whatWasMissing(session);
                if (!gap.isEmpty())
                    missing << dateText(session.date) + QStringLiteral(" ") + gap;
            }
        if (i == count) {
            if (sessions > 0)
                rows.push_back({.cells = {tr("outside any block"),
                                          {},
                                          {},
                                          {},
                                          {},
                                          QString::number(sessions),
                                          missedOf(missing, sessions),
                                          {},
                                          {}},
                                .explanation = missing.join(u'\n')});
            break;
        }
        const Block& block = m_blocks[static_cast<std::size_t>(i)].value;
        blocks.push_back(block);
        rows.push_back(
            {.cells = {text(block.name), dateText(block.first), dateText(block.last),
                       block.ceiling ? massWithUnit(*block.ceiling, m_logbook.loadUnit())
                                     : tr("none"),
                       aWeekText(block.aWeek), QString::number(sessions),
                       missedOf(missing, sessions), text(block.trained), text(block.note)},
             .explanation =
                 (QStringList{said(answers::storyWords(block), m_logbook.loadUnit())} + missing)
                     .join(u'\n')
                     .trimmed()});
    }
    for (const questions::BlockSession& session : m_season) {
        const QString gap = whatWasMissing(session);
        QString tip = dateText(session.date) + QStringLiteral(": ") + whatWas(session);
        if (!gap.isEmpty())
            tip += QStringLiteral("\n") + tr("not possible: ") + gap;
        marks.push_back({session.date, !session.gaps.empty(), tip});
    }
    m_timeline->show(std::move(blocks), std::move(marks));
    fitTimeline();
    const int made = static_cast<int>(rows.size());
    m_blockRows->setTable(blockColumns(), std::move(rows), 3, 6);
    m_blockTable->resizeRowsToContents();
    showBlocksWhole();
    if (made > 0)
        m_blockTable->selectRow(held >= 0 && held < made ? held : made - 1);
    showSessions();
}

/// Its name and days, then what was done in it.
QString BlocksPage::blockText(const Block& block) const {
    const QString named =
        tr("%1, %2 to %3").arg(text(block.name), dateText(block.first), dateText(block.last));
    const QString story = said(answers::storyWords(block), m_logbook.loadUnit());
    return story.isEmpty() ? named + u'.' : tr("%1: %2.").arg(named, story);
}

void BlocksPage::selectBlock(int row) {
    m_blockTable->selectRow(row);
}

void BlocksPage::showSessions() {
    const int row = m_blockTable->currentIndex().row();
    const bool ofBlock = row >= 0 && row < static_cast<int>(m_blocks.size());
    m_timeline->setCurrent(ofBlock ? row : -1);
    m_sentence->setText(ofBlock ? blockText(m_blocks[static_cast<std::size_t>(row)].value)
                        : m_blocks.empty()
                            ? tr("No training blocks yet. A block is a stretch of days with one "
                                 "plan: readings are made from one to the next.")
                            : tr("Sessions outside any block."));
    std::vector<TextTable::Row> rows;
    m_shown.clear();
    for (const questions::BlockSession& session : m_season) {
        if (row < 0 || !within(session, row))
            continue;
        QString day = dateText(session.date);
        if (session.ordinal > 1)
            day += QStringLiteral(" #%1").arg(session.ordinal);
        m_shown.push_back(session.session);
        rows.push_back({.cells = {day, whatWasMissing(session), whatWas(session)},
                        .explanation = whatWasMissing(session)});
    }
    m_title->setText(!m_athlete     ? tr("Choose an athlete.")
                     : rows.empty() ? tr("No sessions in this block.")
                                    : tr("&Sessions of %1 in it").arg(asLabel(m_name)));
    m_sessionRows->setTable(sessionColumns(), std::move(rows), 9, 9);
    m_sessionTable->resizeRowsToContents();
}

} // namespace slopebook::ui
