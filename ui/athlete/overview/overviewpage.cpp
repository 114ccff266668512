// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/overviewpage.h"

#include "ui/athlete/overview/emptyplace.h"
#include "ui/athlete/overview/overviewparts.h"
#include "ui/athlete/overview/overviewprint.h"
#include "ui/athlete/overview/seasonbuttons.h"
#include "ui/athlete/overview/wholeseasonprint.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/sentence.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedLayout>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

constexpr int narrowUnder = 140; ///< characters

} // namespace

OverviewPage::OverviewPage(Logbook& logbook, QWidget* parent)
    : PaperTask(parent), m_logbook(logbook), m_empty(new EmptyPlace), m_blocks(new QComboBox),
      m_sentence(sentenceLabel()), m_charts(new StepChartsView), m_rows(new OverviewRows(this)),
      m_view(overviewView(m_rows)), m_dueTitle(titleLabel(tr("Due"))), m_due(wordsLabel()),
      m_stations(new QPushButton(tr("&Test it at a station"))),
      m_missingTitle(titleLabel(tr("Was not possible"))), m_missing(wordsLabel()),
      m_chance(wordsLabel()) {
    build();
    connectParts();
    reload();
}

QWidget* OverviewPage::buildSide() {
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(8, 0, 0, 0);
    m_due->setObjectName(u"due"_s);
    m_missing->setObjectName(u"missing"_s);
    m_due->setAccessibleDescription(tr("Due"));
    m_missing->setAccessibleDescription(tr("Was not possible"));
    m_stations->setToolTip(tr("The stations, where it can be tested"));
    auto* button = new QHBoxLayout;
    button->addWidget(m_stations);
    button->addStretch(1);
    column->addWidget(m_dueTitle);
    column->addWidget(m_due);
    column->addLayout(button);
    column->addWidget(m_missingTitle);
    column->addWidget(m_missing);
    column->addStretch(1);
    QScrollArea* scroll = scrolled(inside);
    scroll->setAccessibleName(tr("What is due, and what was not possible"));
    scroll->setMinimumWidth(fontMetrics().averageCharWidth() * 22);
    return scroll;
}

void OverviewPage::build() {
    m_blocks->setObjectName(u"countedFrom"_s);
    m_blocks->setAccessibleName(tr("Block that changes are counted from"));
    m_blocks->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = new QLabel(tr("Fr&om"));
    label->setBuddy(m_blocks);
    m_choices = new QWidget;
    auto* strip = new QHBoxLayout(m_choices);
    strip->setContentsMargins(0, 0, 0, 0);
    strip->addWidget(label);
    strip->addWidget(m_blocks);
    strip->addStretch(1);
    m_strip = strip;
    m_chance->setAccessibleDescription(tr("What chance alone would give"));
    m_view->installEventFilter(this);

    auto* lower = new QWidget;
    m_row = new QBoxLayout(QBoxLayout::LeftToRight, lower);
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->addWidget(m_view, 4);
    m_row->addWidget(buildSide(), 1);
    m_view->setMinimumHeight(fontMetrics().height() * 8);
    auto* split = new QSplitter(Qt::Vertical);
    split->setChildrenCollapsible(false);
    split->addWidget(m_charts);
    split->addWidget(lower);
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 1);
    split->setSizes({240, 250});
    auto* body = new QWidget;
    auto* inner = new QVBoxLayout(body);
    inner->setContentsMargins(0, 0, 0, 0);
    m_sentence->setAccessibleDescription(tr("What the last block changed"));
    inner->addWidget(m_sentence);
    inner->addWidget(split, 1);
    inner->addWidget(m_chance);
    m_whole = new QPushButton(tr("&Whole season"));
    m_buttons = new SeasonButtons(SeasonButtons::Of::Line, m_whole);
    inner->addWidget(m_buttons);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_choices);
    m_stack = new QStackedLayout;
    layout->addLayout(m_stack, 1); // first: what a layout of nobody's shows is a window of its own
    m_stack->addWidget(m_empty);
    m_stack->addWidget(body);
}

void OverviewPage::connectParts() {
    connect(m_empty, &EmptyPlace::placeWanted, this, &TaskPage::placeWanted);
    connect(m_blocks, &QComboBox::activated, this, [this](int at) {
        if (m_athlete && m_shown && at >= 0) {
            m_start = m_shown->matrix.blocks[static_cast<std::size_t>(at)].id;
            reload();
            countFrom(*m_athlete, *m_start);
        }
    });
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &OverviewPage::fitButtons);
    connect(m_view, &QTableView::doubleClicked, this, [this] { goTo(Way::Comparison); });
    connect(m_buttons, &SeasonButtons::wayWanted, this, &OverviewPage::goTo);
    connect(m_whole, &QPushButton::clicked, this,
            [this] { Q_EMIT placeWanted(Place::WholeSeason); });
    connect(m_stations, &QPushButton::clicked, this,
            [this] { Q_EMIT placeWanted(Place::Stations); });
    connect(m_buttons, &SeasonButtons::printWanted, this, &OverviewPage::print);
    connect(m_buttons, &SeasonButtons::pdfWanted, this, &OverviewPage::writePdf);
}

void OverviewPage::setAthleteAndLift(std::optional<AthleteId> athlete,
                                     std::optional<LiftId> /*lift*/) {
    m_athlete = athlete;
    reload();
}

void OverviewPage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    reload();
}

void OverviewPage::reload() {
    try {
        showSeason(askSeason(m_logbook, m_athlete, m_start, true));
    } catch (const std::exception& error) {
        showSeason({.nothing = {.title = said(error)}});
    }
}

void OverviewPage::showSeason(SeasonAsking asked) {
    const int row = m_view->currentIndex().row();
    const QString kept = row >= 0 ? m_rows->index(row, 0).data().toString() : QString();
    m_shown = std::move(asked.answer);
    m_overview = m_shown ? answers::overviewOf(m_shown->matrix) : answers::Overview{};
    m_choices->setEnabled(m_shown.has_value());
    fillBlocks();
    if (!m_shown) {
        m_empty->say(asked.nothing);
        m_rows->setLines({});
        m_charts->setData({});
        m_charts->setSpokenText(asked.nothing.title);
        m_stack->setCurrentIndex(0);
        fitButtons();
        return;
    }
    const LoadUnit unit = m_logbook.loadUnit();
    m_sentence->setText(said(m_shown->matrix.sentence, unit));
    m_charts->setData(stepCharts(m_shown->matrix, m_overview, unit));
    m_charts->setSpokenText(m_sentence->text());
    m_rows->setLines(overviewTable(m_shown->matrix, m_overview, unit));
    fillSide();
    m_stack->setCurrentIndex(1);
    fitOverview(*m_view);
    int again = 0;
    for (int i = 0; i < m_rows->rowCount(); ++i)
        if (m_rows->index(i, 0).data().toString() == kept)
            again = i;
    m_view->selectRow(again);
    fitButtons();
}

void OverviewPage::fillBlocks() {
    m_blocks->clear();
    if (!m_shown)
        return;
    const auto& blocks = m_shown->matrix.blocks;
    for (std::size_t i = 0; i + 1 < blocks.size(); ++i) // the last is what is looked at
        m_blocks->addItem(periodText(blocks[i].block.name));
    m_blocks->setCurrentIndex(static_cast<int>(m_shown->matrix.chosen));
}

void OverviewPage::fillSide() {
    const LoadUnit unit = m_logbook.loadUnit();
    QStringList due = said(m_overview.due, unit);
    QStringList missing = said(m_overview.missing, unit);
    for (QStringList* lines : {&due, &missing})
        for (QString& line : *lines)
            line = asSentence(line);
    m_due->setText(due.isEmpty() ? tr("Nothing: all that was measured before was measured again.")
                                 : due.join(u'\n'));
    m_stations->setVisible(!due.isEmpty());
    m_missing->setText(missing.join(u'\n'));
    m_missing->setVisible(!missing.isEmpty());
    m_missingTitle->setVisible(!missing.isEmpty());
    QStringList under;
    const Words conditions = answers::conditionsOf(m_shown->matrix, m_overview.to);
    if (!conditions.empty())
        under << said(asSentence(conditions), unit);
    if (std::ranges::any_of(m_rows->lines().lines,
                            [](const auto& line) { return line.step.has_value(); }))
        under
            << tr("Beside the newest figure, and in the table: the change. Bars reach to %1 times "
                  "the smallest change that matters (grey), right is better.")
                   .arg(number(m_rows->lines().span, 1));
    if (const QString intervals = seasonIntervals(m_shown->matrix); !intervals.isEmpty())
        under << intervals;
    if (!m_shown->matrix.chance.empty())
        under << said(asSentence(m_shown->matrix.chance), unit);
    const auto beware = m_shown->matrix.notes.size() - (conditions.empty() ? 0 : 1);
    if (beware > 0)
        under
            << (beware == 1
                    ? tr("Also to beware of: 1 thing, told with the whole season.")
                    : tr("Also to beware of: %1 things, told with the whole season.").arg(beware));
    under << said(m_shown->unread, unit);
    m_chance->setText(under.join(u' '));
    m_chance->setVisible(!under.isEmpty());
}

void OverviewPage::resizeEvent(QResizeEvent* event) {
    PaperTask::resizeEvent(event);
    m_charts->setMinimumHeight(pictureHeight(*this));
    // In a narrow window the table needs the width for its readings.
    const bool narrow = width() < fontMetrics().averageCharWidth() * narrowUnder;
    m_row->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_row->activate();
    if (m_shown)
        fitOverview(*m_view);
}

// In the table Enter, the space bar and a full stop lead from a line to its answer.
bool OverviewPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_view && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & ~Qt::KeypadModifier);
        if (plain && (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter)) {
            goTo(Way::Comparison);
            return true;
        }
        if (plain && (key->key() == Qt::Key_Space || key->key() == Qt::Key_Period)) {
            goTo(key->key() == Qt::Key_Space ? Way::Session : Way::Season);
            return true;
        }
    }
    if (watched == m_view && event->type() == QEvent::Resize && m_shown)
        fitOverview(*m_view);
    return TaskPage::eventFilter(watched, event);
}

std::optional<MeasureAt> OverviewPage::current() const {
    const int row = m_view->currentIndex().row();
    if (!m_shown || row < 0 || row >= static_cast<int>(m_overview.rows.size()))
        return std::nullopt;
    const answers::OverviewRow& line = m_overview.rows[static_cast<std::size_t>(row)];
    // What the last block has no figure of is seen where it was measured last.
    const bool now = m_shown->matrix.rows[line.row].cells[m_overview.to].value.operator bool();
    return MeasureAt{m_shown->matrix, line.row, now || !line.from ? m_overview.to : *line.from,
                     now ? line.from : std::nullopt};
}

void OverviewPage::goTo(Way way) {
    const auto at = current();
    if (!at)
        return;
    if (!goOrToSession(*this, *at, way, m_shown->sessions))
        Q_EMIT message(tr("That measure is of no load: there is no season of it."));
}

void OverviewPage::fitButtons() {
    const auto at = current();
    m_buttons->fit([&](Way way) { return at && leads(*at, way, m_shown->sessions); }, canPrint());
}

page::Print OverviewPage::pages() const {
    return overviewPrint(*m_shown, m_overview, m_logbook.loadUnit());
}

PaperTask::PdfWords OverviewPage::pdfWords() const {
    return {tr("Save the overview as PDF"), tr("%1 overview").arg(m_shown->athlete)};
}

} // namespace slopebook::ui
