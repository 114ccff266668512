// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/wholeseasonpage.h"

#include "ui/athlete/overview/emptyplace.h"
#include "ui/athlete/overview/overviewparts.h"
#include "ui/athlete/overview/seasonbuttons.h"
#include "ui/athlete/overview/wholeseasonprint.h"
#include "ui/parts/fold.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/sentence.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedLayout>
#include <QToolButton>
#include <QVBoxLayout>

#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {
constexpr int lowUnder = 34; // heights of a line
} // namespace

WholeSeasonPage::WholeSeasonPage(Logbook& logbook, QWidget* parent)
    : PaperTask(parent), m_logbook(logbook), m_empty(new EmptyPlace), m_blocks(new QComboBox),
      m_sentence(sentenceLabel()), m_view(new MatrixView), m_cell(wordsLabel()),
      m_key(wordsLabel()), m_chance(wordsLabel()), m_notesTitle(titleLabel(tr("To beware of"))),
      m_notes(wordsLabel()), m_storyTitle(titleLabel(tr("What was done in the blocks"))),
      m_story(wordsLabel()),
      m_designTitle(titleLabel(tr("What such a season can show, and what it cannot"))),
      m_design(wordsLabel()) {
    build();
    connectParts();
    reload();
}

QWidget* WholeSeasonPage::buildNotes() {
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 8, 0);
    for (QLabel* each : {m_storyTitle, m_story, m_notesTitle, m_notes, m_designTitle, m_design})
        column->addWidget(each);
    column->addStretch(1);
    m_chance->setAccessibleDescription(tr("What chance alone would give"));
    m_notes->setAccessibleDescription(tr("To beware of"));
    m_key->setAccessibleDescription(tr("What the marks mean"));
    m_story->setAccessibleDescription(tr("What was done in the blocks"));
    m_design->setAccessibleDescription(tr("What such a season can show"));
    QScrollArea* scroll = scrolled(inside);
    scroll->setAccessibleName(tr("To beware of, and what such a season can show"));
    scroll->setMinimumHeight(fontMetrics().height() * 5);
    auto* fold = new SourcesFold(scroll, tr("What was done in the blocks, and what to beware of"));
    // They take the table's place: a page moves in one way at a time.
    connect(fold->button(), &QToolButton::toggled, this, [this](bool open) {
        m_folded = open;
        for (QWidget* each : std::initializer_list<QWidget*>{m_view, m_cell})
            each->setVisible(!open);
        fitWords();
    });
    return fold;
}

void WholeSeasonPage::build() {
    m_blocks->setObjectName(u"countedFrom"_s);
    m_blocks->setAccessibleName(tr("Block that changes are counted from"));
    m_blocks->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = new QLabel(tr("Fr&om"));
    label->setBuddy(m_blocks);
    auto* choices = new QWidget;
    auto* strip = new QHBoxLayout(choices);
    strip->setContentsMargins(0, 0, 0, 0);
    strip->addWidget(label);
    strip->addWidget(m_blocks);
    strip->addStretch(1);
    m_strip = strip;
    m_cell->setObjectName(u"cellWords"_s);
    m_cell->setAccessibleDescription(tr("The chosen cell"));
    m_cell->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_cell->setMinimumHeight(2 * fontMetrics().lineSpacing()); // the table does not jump

    m_against = new QPushButton(tr("Coun&t from this block"));
    m_against->setToolTip(
        tr("Changes are counted from the block of the chosen cell; B in the table"));
    m_buttons = new SeasonButtons(SeasonButtons::Of::Cell, m_against);

    auto* body = new QWidget;
    auto* inner = new QVBoxLayout(body);
    inner->setContentsMargins(0, 0, 0, 0);
    m_sentence->setAccessibleDescription(tr("What the season changed"));
    inner->addWidget(m_sentence);
    inner->addWidget(m_view, 1);
    inner->addWidget(m_cell);
    inner->addWidget(m_chance);
    inner->addWidget(m_key);
    inner->addWidget(buildNotes());
    inner->addWidget(m_buttons);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(choices);
    m_stack = new QStackedLayout;
    layout->addLayout(m_stack, 1); // first: what a layout of nobody's shows is a window of its own
    m_stack->addWidget(m_empty);
    m_stack->addWidget(body);
    m_choices = choices;
}

void WholeSeasonPage::connectParts() {
    connect(m_empty, &EmptyPlace::placeWanted, this, &TaskPage::placeWanted);
    connect(m_blocks, &QComboBox::activated, this,
            [this](int at) { choose(static_cast<std::size_t>(at)); });
    connect(m_view, &MatrixView::cellChanged, this, [this](const QString& spoken) {
        m_cell->setText(spoken);
        fitButtons();
    });
    connect(m_view, &MatrixView::wayWanted, this, &WholeSeasonPage::goTo);
    connect(
        m_view, &MatrixView::barsChanged, this,
        [this] {
            if (m_low && m_shown)
                showNotes(); // where the key is then
            else
                showKey();
        },
        Qt::QueuedConnection);
    const auto readAgainst = [this] {
        if (const auto at = m_view->current())
            choose(at->block);
    };
    connect(m_view, &MatrixView::chosenWanted, this, readAgainst);
    connect(m_against, &QPushButton::clicked, this, readAgainst);
    connect(m_buttons, &SeasonButtons::wayWanted, this, &WholeSeasonPage::goTo);
    connect(m_buttons, &SeasonButtons::previewWanted, this, &WholeSeasonPage::printPreview);
    connect(m_buttons, &SeasonButtons::printWanted, this, &WholeSeasonPage::print);
    connect(m_buttons, &SeasonButtons::pdfWanted, this, &WholeSeasonPage::writePdf);
}

void WholeSeasonPage::resizeEvent(QResizeEvent* event) {
    PaperTask::resizeEvent(event);
    m_view->setMinimumHeight(pictureHeight(*this));
    const bool low = height() < lowUnder * fontMetrics().height();
    if (low != std::exchange(m_low, low) && m_shown)
        showNotes();
}

void WholeSeasonPage::setAthleteAndLift(std::optional<AthleteId> athlete,
                                        std::optional<LiftId> /*lift*/) {
    m_athlete = athlete;
    reload();
}

void WholeSeasonPage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    reload();
}

void WholeSeasonPage::reload() {
    try {
        showSeason(askSeason(m_logbook, m_athlete, m_start, false));
    } catch (const std::exception& error) {
        showSeason({.nothing = {.title = said(error)}});
    }
}

void WholeSeasonPage::showSeason(SeasonAsking asked) {
    m_shown = std::move(asked.answer);
    m_choices->setEnabled(m_shown.has_value());
    fillBlocks();
    if (!m_shown) {
        m_empty->say(asked.nothing);
        m_view->setFigure({});
        m_stack->setCurrentIndex(0);
        fitButtons();
        return;
    }
    const LoadUnit unit = m_logbook.loadUnit();
    m_sentence->setText(said(m_shown->matrix.sentence, unit));
    m_view->setFigure(matrixFigure(m_shown->matrix, unit));
    showNotes();
    m_stack->setCurrentIndex(1);
    fitButtons();
}

void WholeSeasonPage::fillBlocks() {
    m_blocks->clear();
    if (!m_shown)
        return;
    for (const answers::MatrixBlock& block : m_shown->matrix.blocks)
        m_blocks->addItem(periodText(block.block.name));
    m_blocks->setCurrentIndex(static_cast<int>(m_shown->matrix.chosen));
}

void WholeSeasonPage::showNotes() {
    const SeasonNotes notes = seasonNotes(*m_shown, m_logbook.loadUnit());
    showKey();
    const auto fill = [](QLabel* label, QLabel* title, const QStringList& lines) {
        label->setText(lines.join(u'\n'));
        label->setVisible(!lines.isEmpty());
        title->setVisible(!lines.isEmpty());
    };
    fill(m_story, m_storyTitle, notes.story);
    m_chance->setText(notes.chance.join(u'\n'));
    QStringList beware = notes.beware;
    if (m_low)
        beware << notes.chance << m_key->text();
    fill(m_notes, m_notesTitle, beware);
    fill(m_design, m_designTitle, notes.design);
    fitWords();
}

void WholeSeasonPage::fitWords() {
    for (QLabel* each : {m_chance, m_key})
        each->setVisible(!m_folded && !m_low && !each->text().isEmpty());
}

void WholeSeasonPage::showKey() {
    if (m_shown)
        m_key->setText(QStringList{matrixKey(m_shown->matrix.level, m_view->hasBars()),
                                   seasonIntervals(m_shown->matrix)}
                           .join(u' ')
                           .trimmed());
}

void WholeSeasonPage::choose(std::size_t block) {
    if (!m_shown || !m_athlete || block >= m_shown->matrix.blocks.size())
        return;
    m_start = m_shown->matrix.blocks[block].id;
    reload();
    countFrom(*m_athlete, *m_start);
}

std::optional<MeasureAt> WholeSeasonPage::current() const {
    const auto at = m_view->current();
    if (!m_shown || !at || at->measure >= m_shown->matrix.rows.size())
        return std::nullopt;
    const answers::MatrixCell& cell = m_shown->matrix.rows[at->measure].cells[at->block];
    std::optional<std::size_t> from;
    if (cell.against)
        from = cell.against->from;
    else if (cell.before)
        from = cell.before->from;
    return MeasureAt{m_shown->matrix, at->measure, at->block, from};
}

void WholeSeasonPage::goTo(Way way) {
    const auto at = current();
    if (!at)
        return;
    if (!goOrToSession(*this, *at, way, m_shown->sessions))
        Q_EMIT message(tr("Nothing was measured there."));
}

void WholeSeasonPage::fitButtons() {
    const auto at = current();
    m_against->setEnabled(at && at->block != m_shown->matrix.chosen);
    m_buttons->fit([&](Way way) { return at && leads(*at, way, m_shown->sessions); }, canPrint());
}

page::Print WholeSeasonPage::pages() const {
    return wholeSeasonPrint(*m_shown, m_logbook.loadUnit());
}

PaperTask::PdfWords WholeSeasonPage::pdfWords() const {
    return {tr("Save the whole season as PDF"), tr("%1 whole season").arg(m_shown->athlete)};
}

} // namespace slopebook::ui
