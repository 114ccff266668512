// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/compare/comparepage.h"

#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "core/questions/blockquestions.h"
#include "core/questions/liftcontext.h"
#include "core/questions/seasonstep.h"
#include "ui/paper/paperwork.h"
#include "ui/parts/keepwhole.h"
#include "ui/parts/shortcombo.h"
#include "ui/parts/sidekey.h"
#include "ui/parts/wayon.h"
#include "ui/words/counts.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <tuple>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

constexpr std::array levels{0.80, 0.90, 0.95, 0.99};

void select(QComboBox* box, const std::optional<questions::LiftSide>& side) {
    const QSignalBlocker quiet(box);
    box->setCurrentIndex(side ? box->findData(keyOf(*side)) : -1);
}

/// Days that are those of a block: it.
questions::LiftSide asBlock(const questions::LiftSide& side,
                            const std::vector<Stored<BlockId, Block>>& blocks) {
    if (const auto* days = std::get_if<DayStretch>(&side))
        for (const auto& block : blocks)
            if (DayStretch{block.value.first, block.value.last} == *days)
                return block.id;
    return side;
}

std::optional<BlockId> blockOf(const questions::LiftSide& side) {
    const auto* block = std::get_if<BlockId>(&side);
    return block ? std::optional(*block) : std::nullopt;
}

int chosenOf(const QActionGroup& group) {
    return static_cast<int>(group.actions().indexOf(group.checkedAction()));
}

std::optional<questions::LiftSide> selected(const QComboBox* box) {
    if (box->currentIndex() < 0)
        return std::nullopt;
    return sideFrom(box->currentData().toString());
}

} // namespace

// No exception crosses the event loop: it is told where the answer would stand.
template <class Work>
void ComparePage::atTheEdge(const Work& work) {
    try {
        work();
    } catch (const std::exception& error) {
        m_comparison.reset();
        m_view->showReason(said(error), {}, m_unit);
    }
}

ComparePage::ComparePage(Logbook& logbook, QWidget* parent)
    : TaskPage(parent), m_logbook(logbook), m_fromBox(new ShortCombo), m_toBox(new ShortCombo),
      m_intervals(new QToolButton), m_paperBox(new QComboBox),
      m_previewButton(new QPushButton(tr("Pri&nt preview…"))),
      m_printButton(new QPushButton(tr("&Print…"))), m_pdfButton(new QPushButton(tr("Save P&DF…"))),
      m_partsButton(new QPushButton(tr("What to pr&int"))), m_view(new ComparisonView) {
    m_unit = m_logbook.loadUnit();
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(buildChoices());
    layout->addWidget(m_view, 1);
    m_view->setWay(m_way = new WayOn(*this, Place::Session));
    layout->addWidget(buildPrintButtons());
    connectChoices();
    ask();
}

QWidget* ComparePage::buildChoices() {
    m_fromBox->setObjectName(u"countedFrom"_s);
    m_fromBox->setAccessibleName(tr("Earlier session or block"));
    m_toBox->setAccessibleName(tr("Later session or block"));
    for (QComboBox* box : {m_fromBox, m_toBox}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(14);
        box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }
    auto* choices = new QWidget;
    auto* row = new QHBoxLayout(choices);
    m_strip = row;
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [row](const QString& text, QComboBox* box, int stretch) {
        auto* label = new QLabel(text);
        label->setBuddy(box);
        keepWhole(*label);
        row->addWidget(label);
        row->addWidget(box, stretch);
    };
    add(tr("F&rom"), m_fromBox, 3);
    add(tr("&To"), m_toBox, 3);
    return choices;
}

// Rarely set: behind one button, with its state in words.
void ComparePage::buildIntervals() {
    auto* menu = new QMenu(this);
    const auto choice = [menu](QActionGroup*& group, const QStringList& names, int first) {
        group = new QActionGroup(menu);
        for (const QString& name : names) {
            QAction* action = menu->addAction(name);
            action->setCheckable(true);
            group->addAction(action);
        }
        group->actions().at(first)->setChecked(true);
    };
    QStringList names;
    for (const double level : levels)
        names << levelText(level);
    choice(m_levels, names, 2);
    menu->addSeparator();
    choice(m_scatters, {tr("one scatter for both days"), tr("each day its own scatter")}, 0);
    menu->addSeparator();
    QAction* bands = menu->addAction(tr("bands of these two days alone"));
    bands->setCheckable(true);
    connect(bands, &QAction::toggled, m_view, &ComparisonView::setBands);
    connect(m_intervals, &QToolButton::clicked, menu, [this, menu] {
        menu->popup(m_intervals->mapToGlobal(QPoint(0, m_intervals->height())));
    });
    m_intervals->setAutoRaise(true);
    m_intervals->setFocusPolicy(Qt::StrongFocus);
    m_intervals->setToolTip(tr("Level of the intervals, scatter about the lines, and bands"));
    const auto name = [this] {
        const QString state = (chosenOf(*m_scatters) == 0 ? tr("intervals %1, one scatter")
                                                          : tr("intervals %1, two scatters"))
                                  .arg(m_levels->checkedAction()->text());
        m_intervals->setText(state + u" \u25be"_s);
        m_intervals->setAccessibleName(state);
    };
    name();
    connect(menu, &QMenu::triggered, this, [this, name] {
        name();
        ask();
    });
}

QWidget* ComparePage::buildPrintButtons() {
    auto* menu = new QMenu(this);
    const QStringList names{tr("Chart of both &lines"), tr("Chart &of the change"),
                            tr("&Table by load"), tr("&1RM"), tr("How &it was computed")};
    for (int i = 0; i < 5; ++i) {
        m_parts[i] = menu->addAction(names[i]);
        m_parts[i]->setCheckable(true);
        m_parts[i]->setChecked(true);
    }
    m_partsButton->setMenu(menu);
    m_partsButton->setToolTip(
        tr("What is printed beside the sentence, the sources and the cautions"));
    m_paperBox->addItem(u"A4"_s);
    m_paperBox->addItem(tr("Letter"));
    m_paperBox->setCurrentIndex(paperwork::desktopPaper() == page::Paper::A4 ? 0 : 1);
    m_paperBox->setAccessibleName(tr("Paper of the PDF"));
    auto* buttons = new QWidget;
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins(0, 0, 0, 0);
    auto* paper = new QLabel(tr("Paper &of the PDF"));
    paper->setBuddy(m_paperBox);
    buildIntervals();
    row->addWidget(m_intervals);
    row->addStretch(1);
    row->addWidget(m_partsButton);
    row->addWidget(paper);
    row->addWidget(m_paperBox);
    for (QPushButton* button : {m_previewButton, m_printButton, m_pdfButton})
        row->addWidget(button);
    return buttons;
}

void ComparePage::connectChoices() {
    for (QComboBox* box : {m_fromBox, m_toBox})
        connect(box, &QComboBox::currentIndexChanged, this, [this] {
            m_from = selected(m_fromBox);
            m_to = selected(m_toBox);
            ask();
            keepPair();
        });
    connect(m_fromBox, &QComboBox::activated, this, [this] {
        if (const auto block = m_from ? blockOf(*m_from) : std::nullopt; block && m_athlete) {
            m_start = *block;
            m_heeded.insert_or_assign(*m_athlete, *block);
            countFrom(*m_athlete, *block);
        }
    });
    connect(m_previewButton, &QPushButton::clicked, this, &ComparePage::printPreview);
    connect(m_printButton, &QPushButton::clicked, this, &ComparePage::print);
    connect(m_pdfButton, &QPushButton::clicked, this, &ComparePage::writePdf);
}

void ComparePage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    const bool other = athlete != m_athlete || lift != m_lift;
    if (athlete && m_start) {
        // What was chosen on another page since goes before the pairs that were compared here.
        const auto [heeded, first] = m_heeded.try_emplace(*athlete, *m_start);
        if (first || std::exchange(heeded->second, *m_start) != *m_start) {
            std::erase_if(m_pairs, [&](const auto& pair) { return pair.first.first == *athlete; });
            m_from = m_to = std::nullopt;
        }
    }
    m_athlete = athlete;
    m_lift = lift;
    if (other) {
        m_from = m_to = std::nullopt;
        const auto kept = athlete && lift ? m_pairs.find({*athlete, *lift}) : m_pairs.end();
        if (kept != m_pairs.end())
            std::tie(m_from, m_to) = kept->second;
    }
    atTheEdge([this] {
        readSessions();
        fillChoices();
        ask();
    });
}

void ComparePage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    setAthleteAndLift(m_athlete, m_lift);
}

void ComparePage::compare(const questions::LiftSide& from, const questions::LiftSide& to) {
    m_from = asBlock(from, m_blocks);
    m_to = asBlock(to, m_blocks);
    atTheEdge([this] {
        fillChoices();
        ask();
    });
    keepPair();
}

void ComparePage::keepPair() {
    if (m_athlete && m_lift && m_from && m_to)
        m_pairs[{*m_athlete, *m_lift}] = {*m_from, *m_to};
}

void ComparePage::readSessions() {
    m_about.reset();
    if (!m_athlete || !m_lift)
        return;
    const log::Log& log = m_logbook.log();
    m_about = questions::background(log, *m_athlete, *m_lift);
    m_blocks = log.blocks();
    m_devices = log.devices();
}

void ComparePage::fillChoices() {
    const QSignalBlocker first(m_fromBox), second(m_toBox);
    for (QComboBox* box : {m_fromBox, m_toBox})
        box->clear();
    if (!m_about)
        return;
    if (!isOffered(m_from) || !isOffered(m_to))
        chooseDefaults();
    // Newest first: the last block is what is asked about.
    for (QComboBox* box : {m_fromBox, m_toBox}) {
        offerBlocks(box);
        if (box->count() > 0)
            box->insertSeparator(box->count());
        for (auto s = m_about->sessions.rbegin(); s != m_about->sessions.rend(); ++s) {
            box->addItem(choiceText(*s), keyOf(s->session));
            box->setItemData(box->count() - 1, choiceText(*s), Qt::ToolTipRole);
        }
    }
    select(m_fromBox, m_from);
    select(m_toBox, m_to);
}

questions::AskSettings ComparePage::asked() const {
    return {.level = levels[static_cast<std::size_t>(chosenOf(*m_levels))],
            .variances =
                chosenOf(*m_scatters) == 0 ? stats::Variances::Pooled : stats::Variances::Separate};
}

void ComparePage::ask() {
    m_comparison.reset();
    atTheEdge([this] {
        if (m_about)
            m_way->sayMissing(m_logbook.log(), {}, !m_from || !m_to);
        if (!m_about) {
            m_view->showReason(
                m_way->sayMissing(m_logbook.log(),
                                  tr("Choose an athlete and a lift to compare two of their "
                                     "sessions or blocks."),
                                  false),
                {}, m_unit);
            return;
        }
        if (!m_from || !m_to) {
            m_view->showReason(
                said(questions::say("A comparison needs two sessions of this lift with sets "
                                    "that count. The log holds %1.",
                                    m_about->sessions.size())),
                m_about->sessions, m_unit);
            return;
        }
        auto from = questions::sessionsOf(*m_from, m_blocks, m_about->sessions);
        auto to = questions::sessionsOf(*m_to, m_blocks, m_about->sessions);
        const auto start = [](const answers::BlockSessions& side) {
            return std::tuple(side.sessions.front().date, side.sessions.front().ordinal,
                              side.sessions.back().date);
        };
        if (!from.sessions.empty() && !to.sessions.empty() && start(to) < start(from)) {
            // Whatever the order of choosing, the change is told from the earlier to the later.
            std::swap(from, to);
            std::swap(m_from, m_to);
            select(m_fromBox, m_from);
            select(m_toBox, m_to);
        }
        const auto answer = questions::comparisonOfSides(
            m_logbook.log(), m_logbook.context(*m_lift), *m_about, from, to, asked());
        if (answer) {
            m_comparison = *answer;
            questions::tellSeasonStep(*m_comparison, m_logbook.log(), m_logbook.context(*m_lift),
                                      *m_athlete, blockOf(*m_from), blockOf(*m_to), asked());
            m_view->show(*m_comparison, header());
        } else {
            std::vector<LiftSession> chosen = from.sessions;
            chosen.insert(chosen.end(), to.sessions.begin(), to.sessions.end());
            m_view->showReason(noAnswerText(answer.why(), m_unit), chosen, m_unit);
        }
    });
    for (QPushButton* button : {m_previewButton, m_printButton, m_pdfButton})
        button->setEnabled(canPrint());
}

PageHeader ComparePage::header() const {
    PageHeader h = pageHeader(m_logbook.log(), *m_about, *m_comparison);
    h.unit = m_unit;
    h.paper = m_paperBox->currentIndex() == 0 ? page::Paper::A4 : page::Paper::Letter;
    h.parts = {.lineChart = m_parts[0]->isChecked(),
               .changeChart = m_parts[1]->isChecked(),
               .byLoad = m_parts[2]->isChecked(),
               .oneRm = m_parts[3]->isChecked(),
               .method = m_parts[4]->isChecked()};
    return h;
}

} // namespace slopebook::ui
