// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/squadpage.h"

#include "core/answers/squadmean.h"
#include "core/answers/squadsummary.h"
#include "core/log/snapshot.h"
#include "core/model/phrases/questions.h"
#include "ui/parts/fold.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wayon.h"
#include "ui/parts/wraprow.h"
#include "ui/squad/changes/periodchooser.h"
#include "ui/squad/changes/squaddefaults.h"
#include "ui/squad/changes/squadprint.h"
#include "ui/squad/changes/squadrows.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

constexpr int mostlyDoneIn = 200; // ms: shorter work shows no progress

/// What of the period stood for an athlete: all of its days, or the session nearest to one.
questions::LiftSide sideOf(const answers::Period& period, SessionId session) {
    if (period.nearest)
        return session;
    return DayStretch{period.first, period.last};
}

} // namespace

SquadPage::SquadPage(Logbook& logbook, QWidget* parent)
    : PaperTask(parent), m_logbook(logbook), m_from(new PeriodChooser(tr("F&rom"), tr("Earlier"))),
      m_to(new PeriodChooser(tr("&To"), tr("Later"))) {
    build();
    connectParts();
    showNothing(tr("Choose a lift."));
}

QWidget* SquadPage::buildChoices() {
    m_part = new QComboBox;
    m_part->setAccessibleName(tr("What is compared"));
    m_part->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = new QLabel(tr("Sho&wn"));
    label->setBuddy(m_part);
    auto* box = new QWidget;
    auto* line = new QHBoxLayout(box);
    m_strip = line;
    line->setContentsMargins(0, 0, 0, 0);
    auto* rest = new QWidget; // goes on in the next line where dates are typed
    auto* wrap = new WrapRow(rest);
    wrap->addWidget(m_from);
    wrap->addWidget(m_to);
    auto* shown = new QWidget;
    auto* pair = new QHBoxLayout(shown);
    pair->setContentsMargins(0, 0, 0, 0);
    pair->addWidget(label);
    pair->addWidget(m_part);
    wrap->addWidget(shown);
    line->addWidget(rest, 1, Qt::AlignVCenter);
    return box;
}

void SquadPage::build() {
    m_chart = new SquadForestChart;
    auto* scroll = new QScrollArea;
    scroll->setWidget(m_chart);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    m_table = new TextTable(this);
    m_view = rowTable(m_table, tr("Athletes and their changes"),
                      {.lastTakesRest = true,
                       .giving = {squadReading}, // an unclear one is long
                       .leaving = {squadDrawn, squadLater, squadEarlier},
                       .told = {squadSmallest}});
    m_view->setObjectName(u"squad"_s);
    m_sentence = new Sentence;
    m_sentence->setObjectName(u"sentence"_s);
    m_sentence->setAccessibleDescription(tr("What the squad did"));
    m_counts = new QLabel;
    m_counts->setObjectName(QStringLiteral("counts"));
    m_counts->setAccessibleDescription(tr("Readings counted"));
    m_notes = new QLabel;
    m_notes->setAccessibleDescription(tr("Notes"));
    m_drawn = new QLabel;
    m_drawn->setObjectName(u"drawn"_s);
    m_drawn->hide();
    for (QLabel* each : {m_counts, m_notes, m_drawn}) {
        each->setWordWrap(true);
        each->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    }
    auto* split = new QSplitter(Qt::Horizontal);
    split->setChildrenCollapsible(false);
    split->addWidget(scroll);
    split->addWidget(m_view);
    split->setSizes({430, 630});
    m_compare = new QPushButton(tr("Compare &both sessions"));
    m_compare->setToolTip(tr("A double click on the athlete does the same"));
    m_open = new QPushButton(tr("&Open the later session"));
    m_preview = new QPushButton(tr("Pri&nt preview…"));
    m_print = new QPushButton(tr("&Print…"));
    m_pdf = new QPushButton(tr("Save P&DF…"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_compare);
    buttons->addWidget(m_open);
    buttons->addStretch(1);
    for (QPushButton* button : {m_preview, m_print, m_pdf})
        buttons->addWidget(button);
    m_progress = new QProgressBar;
    m_progress->setRange(0, 1000);
    m_progress->setAccessibleName(tr("Progress"));
    m_stop = new QPushButton(tr("&Stop"));
    m_stop->setObjectName(u"stop"_s);
    m_work = new QWidget;
    auto* work = new QHBoxLayout(m_work);
    work->setContentsMargins(0, 0, 0, 0);
    work->addWidget(m_progress, 1);
    work->addWidget(m_stop);
    m_work->hide();
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(buildChoices());
    layout->addWidget(m_work);
    layout->addWidget(m_sentence);
    layout->addWidget(m_way = new WayOn(*this, Place::Session));
    layout->addWidget(m_counts);
    layout->addWidget(split, 1);
    layout->addWidget(m_drawn);
    layout->addWidget(m_notesFold =
                          new SourcesFold(m_notes, tr("To beware of, and where this comes from")));
    layout->addLayout(buttons);
}

void SquadPage::resizeEvent(QResizeEvent* event) {
    PaperTask::resizeEvent(event);
    constexpr int lines = 40; // of text, from which on the picture keeps its room beside them
    if (!m_foldedByHand)
        m_notesFold->button()->setOpen(height() >= lines * fontMetrics().height());
}

void SquadPage::connectParts() {
    for (PeriodChooser* chooser : {m_from, m_to})
        connect(chooser, &PeriodChooser::refused, this, &TaskPage::message);
    for (PeriodChooser* chooser : {m_from, m_to})
        connect(chooser, &PeriodChooser::changed, this, [this] {
            if (!m_filling)
                ask();
        });
    connect(&m_job, &Job::progressed, m_progress, &QProgressBar::setValue);
    connect(&m_job, &Job::finished, this, &SquadPage::answered);
    connect(&m_job, &Job::stopped, this, [this] {
        showWork(false);
        showNothing(tr("Stopped. Choose a block or a date to compare again."));
    });
    connect(&m_job, &Job::failed, this, [this](const QString& why) {
        showWork(false);
        showNothing(why);
    });
    connect(m_stop, &QPushButton::clicked, &m_job, &Job::stop);
    connect(m_notesFold->button(), &QToolButton::clicked, this, [this] { m_foldedByHand = true; });
    connect(m_part, &QComboBox::activated, this, &SquadPage::showPart);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& index) {
                m_chart->setRinged(index.isValid() ? std::optional(index.row()) : std::nullopt);
                const answers::SquadRow* row = currentRow();
                m_open->setEnabled(row && (row->to || row->from));
                m_compare->setEnabled(row && row->to && row->from);
            });
    connect(m_view, &QTableView::doubleClicked, this, &SquadPage::compareCurrent);
    connect(m_compare, &QPushButton::clicked, this, &SquadPage::compareCurrent);
    connect(m_open, &QPushButton::clicked, this, &SquadPage::openCurrent);
    connect(m_preview, &QPushButton::clicked, this, &SquadPage::printPreview);
    connect(m_print, &QPushButton::clicked, this, &SquadPage::print);
    connect(m_pdf, &QPushButton::clicked, this, &SquadPage::writePdf);
}

void SquadPage::setAthleteAndLift(std::optional<AthleteId> /*athlete*/,
                                  std::optional<LiftId> lift) {
    if (lift != m_lift)
        m_chosen = false;
    m_lift = lift;
    reload();
}

void SquadPage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    reload();
}

void SquadPage::reload() {
    try {
        if (!m_lift) {
            showNothing(m_way->sayMissing(m_logbook.log(), tr("Choose a lift."), false));
            return;
        }
        m_value = m_logbook.log().lift(*m_lift).value;
        m_filling = true;
        const auto blocks = m_logbook.log().blocks();
        m_from->setBlocks(blocks);
        m_to->setBlocks(blocks);
        if (!m_chosen)
            chooseDefaults();
        m_filling = false;
    } catch (const std::exception& error) {
        m_filling = false;
        showNothing(said(error));
        return;
    }
    ask();
}

void SquadPage::chooseDefaults() {
    const auto blocks = m_logbook.log().blocks();
    const auto& days = m_logbook.context(*m_lift).days;
    m_way->sayMissing(m_logbook.log(), {}, days.empty());
    if (days.empty())
        return;
    if (const auto two = lastTwoBlocks(blocks, days)) {
        m_from->chooseBlock(two->first);
        m_to->chooseBlock(two->second);
    } else if (const auto dates = lastTwoTestDays(days)) {
        m_from->chooseDate(dates->earlier, dates->within);
        m_to->chooseDate(dates->later, dates->within);
    } else { // nobody was tested twice
        const auto [first, last] = std::ranges::minmax(days, {}, &questions::TestDay::date);
        m_from->chooseDate(first.date, 0);
        m_to->chooseDate(last.date, 0);
    }
    m_chosen = true;
}

void SquadPage::ask() {
    if (!m_lift)
        return;
    auto answer = std::make_shared<Answer<answers::Squad>>(NoAnswer{});
    m_answer = answer;
    m_progress->setValue(0);
    m_job.start([answer, file = m_logbook.log().file(), access = m_logbook.log().access(),
                 context = m_logbook.sharedContext(*m_lift), from = m_from->period(),
                 to = m_to->period(), pace = m_pace](const Progress& progress) {
        const bool salvage = access == log::Access::Salvage;
        const Progress paced = [&](std::int64_t done, std::int64_t total) {
            pace();
            return progress(done, total);
        };
        log::askOfOneMoment(
            file, salvage ? log::Access::Salvage : log::Access::ReadOnly, [&](const log::Log& log) {
                *answer =
                    questions::squadOf(log, *context, from, to, {}, {}, pace ? paced : progress);
            });
    });
    m_job.waitFor(mostlyDoneIn);
    if (m_job.running()) {
        // Nobody is said to be missing before it is known.
        showNothing(tr("Comparing the squad\u2026"), tr("Still at work"));
        showWork(true);
    }
}

void SquadPage::answered() {
    showWork(false);
    if (!*m_answer) {
        showNothing(noAnswerText(m_answer->why(), m_logbook.loadUnit()));
        return;
    }
    m_squad = std::move(**m_answer);
    fillParts();
}

void SquadPage::showWork(bool working) {
    m_work->setVisible(working);
}

void SquadPage::fillParts() {
    const QString kept = m_part->currentText();
    m_part->clear();
    for (const answers::SquadPart& part : m_squad->parts)
        m_part->addItem(partName(part, m_logbook.loadUnit()));
    const int at = m_part->findText(kept);
    if (m_squad->parts.empty()) {
        showNothing(said(questions::say(
            "No check load is set for this lift: nothing is followed in the squad.")));
        return;
    }
    m_part->setCurrentIndex(std::max(0, at));
    m_part->setEnabled(true);
    for (QPushButton* button : {m_preview, m_print, m_pdf})
        button->setEnabled(true);
    m_notes->setText(squadNotes(*m_squad, m_logbook.loadUnit()).join(u' '));
    m_notesFold->show();
    showPart(m_part->currentIndex());
}

void SquadPage::showPart(int part) {
    if (!m_squad || part < 0 || part >= static_cast<int>(m_squad->parts.size()))
        return;
    m_part->setCurrentIndex(part);
    const answers::SquadPart& shown = m_squad->parts[static_cast<std::size_t>(part)];
    m_table->setTable(inTwoLines(squadHeadings(shown, m_squad->level, m_logbook.loadUnit())),
                      squadRows(shown, m_squad->level, m_logbook.loadUnit()), 3, 7);
    m_view->setColumnHidden(squadSmallest, true); // it is drawn
    haveColumn(*m_view, squadDrawn, drawnApart(shown, m_squad->level, m_logbook.loadUnit()));
    shareWidth(*m_view);
    m_drawn->setText(drawnAlike(shown, m_squad->level, m_logbook.loadUnit()));
    m_drawn->setVisible(!m_drawn->text().isEmpty());
    m_chart->setData(squadForest(shown, m_squad->level, m_logbook.loadUnit()));
    m_counts->setText(tr("%1, %2 to %3. %4")
                          .arg(partName(shown, m_logbook.loadUnit()), text(m_squad->from.name),
                               text(m_squad->to.name), squadCounts(shown, m_logbook.loadUnit())));
    const QString sentence = squadSentence(shown, m_squad->level, m_logbook.loadUnit());
    m_sentence->setText(sentence);
    m_sentence->setVisible(answers::squadMean(shown, m_squad->level).has_value());
    m_chart->setSpokenText(sentence + u' ' + m_counts->text());
    m_open->setEnabled(false);
    m_compare->setEnabled(false);
}

void SquadPage::showNothing(const QString& why, const QString& inPlace) {
    m_squad.reset();
    m_part->clear();
    m_part->setEnabled(false);
    m_table->setTable({}, {}, 0, 0);
    m_chart->setData({.empty = inPlace.isEmpty() ? tr("Nothing compared") : inPlace});
    m_sentence->setText(why);
    m_sentence->show();
    m_counts->clear();
    m_drawn->hide();
    m_chart->setSpokenText(why);
    m_notesFold->hide();
    for (QPushButton* button : {m_preview, m_print, m_pdf, m_open, m_compare})
        button->setEnabled(false);
}

const answers::SquadRow* SquadPage::currentRow() const {
    const int row = m_view->currentIndex().row();
    if (!m_squad || row < 0 || m_part->currentIndex() < 0)
        return nullptr;
    const auto& rows = m_squad->parts[static_cast<std::size_t>(m_part->currentIndex())].rows;
    const auto at = static_cast<std::size_t>(row);
    return at < rows.size() ? &rows[at] : nullptr; // under them stands the mean of all
}

void SquadPage::openCurrent() {
    const answers::SquadRow* row = currentRow();
    if (!row)
        return;
    if (const auto& session = row->to ? row->to : row->from)
        Q_EMIT sessionWanted(session->session);
    else
        Q_EMIT message(
            said(questions::say("%1 has no session of this lift in either.", row->name)));
}

void SquadPage::compareCurrent() {
    const answers::SquadRow* row = currentRow();
    if (row && row->from && row->to)
        Q_EMIT comparisonWanted(row->athlete, sideOf(m_from->period(), row->from->session),
                                sideOf(m_to->period(), row->to->session));
    else
        openCurrent();
}

page::Print SquadPage::pages() const {
    return squadPrint(*m_squad, m_value ? liftTitle(*m_value) : QString(), m_logbook.loadUnit());
}

PaperTask::PdfWords SquadPage::pdfWords() const {
    return {tr("Save the squad as PDF"),
            tr("Squad %1 %2 to %3")
                .arg(text(m_value->name), text(m_squad->from.name), text(m_squad->to.name))};
}

} // namespace slopebook::ui
