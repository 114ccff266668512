// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/battery/beforeafterview.h"

#include "core/answers/batterysummary.h"
#include "core/answers/method.h"
#include "core/questions/batterytable.h"
#include "ui/paper/batteryprint.h"
#include "ui/paper/paperwork.h"
#include "ui/parts/filedialog.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wayon.h"
#include "ui/words/batterywords.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace slopebook::ui {

BeforeAfterView::BeforeAfterView(Logbook& logbook, QWidget* parent)
    : QWidget(parent), m_logbook(logbook) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    m_choices = buildChoices();
    m_choices->setParent(this); // until the page takes it into its line
    m_choices->hide();
    layout->addWidget(buildBody(), 1);
    layout->addWidget(buildButtons());
    connectParts();
    showReason(tr("Choose an athlete."));
}

template <class Work>
void BeforeAfterView::guarded(const Work& work) {
    try {
        work();
    } catch (const std::exception& error) {
        Q_EMIT message(said(error));
    }
}

void BeforeAfterView::setWay(WayOn* way) {
    m_way = way;
    qobject_cast<QVBoxLayout*>(m_body->layout())->insertWidget(1, way);
    if (!m_answer)
        ask();
}

void BeforeAfterView::connectParts() {
    connect(m_from, &QComboBox::currentIndexChanged, this, &BeforeAfterView::ask);
    connect(m_to, &QComboBox::currentIndexChanged, this, &BeforeAfterView::ask);
    connect(m_from, &QComboBox::activated, this, [this] {
        if (const auto side = sideOf(m_from))
            if (const auto* block = std::get_if<BlockId>(&*side)) {
                m_start = *block;
                Q_EMIT startChosen(*block);
            }
    });
    connect(m_preview, &QPushButton::clicked, this, &BeforeAfterView::printPreview);
    connect(m_print, &QPushButton::clicked, this, &BeforeAfterView::print);
    connect(m_pdf, &QPushButton::clicked, this, &BeforeAfterView::writePdf);
    connect(m_type, &QPushButton::clicked, this, &BeforeAfterView::attemptsWanted);
    connect(m_csv, &QPushButton::clicked, this, &BeforeAfterView::writeCsv);
}

void BeforeAfterView::setAthlete(std::optional<AthleteId> athlete) {
    const bool same = athlete == m_athlete;
    m_athlete = athlete;
    if (!same)
        m_sides.clear();
    reload();
}

void BeforeAfterView::setStart(std::optional<BlockId> start) {
    m_newStart = m_newStart || (start && start != m_start);
    m_start = start;
}

void BeforeAfterView::reload() {
    guarded([this] {
        fillSides();
        ask();
    });
}

void BeforeAfterView::compare(const questions::BatterySide& from,
                              const questions::BatterySide& to) {
    const auto first = std::find(m_sides.begin(), m_sides.end(), from);
    const auto second = std::find(m_sides.begin(), m_sides.end(), to);
    if (first == m_sides.end() || second == m_sides.end())
        return;
    m_from->setCurrentIndex(static_cast<int>(first - m_sides.begin()));
    m_to->setCurrentIndex(static_cast<int>(second - m_sides.begin()));
    guarded([this] { ask(); });
}

void BeforeAfterView::fillSides() {
    const auto from = sideOf(m_from);
    const auto to = sideOf(m_to);
    const bool fresh = m_sides.empty();
    m_sides.clear();
    const QSignalBlocker quietFrom(m_from), quietTo(m_to);
    m_from->clear();
    m_to->clear();
    if (!m_athlete)
        return;
    const auto add = [&](const questions::BatterySide& side, const QString& label) {
        m_sides.push_back(side);
        m_from->addItem(label);
        m_to->addItem(label);
    };
    const auto sessions = m_logbook.log().batteries(*m_athlete);
    for (const auto& block : m_logbook.log().blocks())
        if (std::any_of(sessions.begin(), sessions.end(),
                        [&](const BatterySession& s) { return block.value.holds(s.date); }))
            add(block.id, tr("block %1").arg(text(block.value.name)));
    for (auto s = sessions.rbegin(); s != sessions.rend(); ++s)
        if (m_sides.empty() || m_sides.back() != questions::BatterySide(s->date))
            add(s->date, dateText(s->date));
    const auto choose = [&](QComboBox* box, const std::optional<questions::BatterySide>& side) {
        const auto at = side ? std::find(m_sides.begin(), m_sides.end(), *side) : m_sides.end();
        box->setCurrentIndex(at == m_sides.end() ? -1 : static_cast<int>(at - m_sides.begin()));
    };
    choose(m_from, from);
    choose(m_to, to);
    const bool newStart = std::exchange(m_newStart, false);
    if ((newStart || fresh) && chooseFromStart())
        return;
    if (fresh || m_from->currentIndex() < 0 || m_to->currentIndex() < 0)
        chooseDefaults();
}

// To the last block after it; both boxes list blocks first, by date.
bool BeforeAfterView::chooseFromStart() {
    const auto isBlock = [](const questions::BatterySide& side) {
        return std::holds_alternative<BlockId>(side);
    };
    const auto from =
        m_start ? std::ranges::find(m_sides, questions::BatterySide(*m_start)) : m_sides.end();
    const auto blocks = std::ranges::count_if(m_sides, isBlock);
    const auto at = from - m_sides.begin();
    if (at + 1 >= blocks)
        return false;
    m_from->setCurrentIndex(static_cast<int>(at));
    m_to->setCurrentIndex(static_cast<int>(blocks) - 1);
    return true;
}

void BeforeAfterView::chooseDefaults() {
    // The last two blocks with sessions in them, else the last two days.
    const auto blocks =
        std::count_if(m_sides.begin(), m_sides.end(), [](const questions::BatterySide& side) {
            return std::holds_alternative<BlockId>(side);
        });
    if (blocks >= 2) {
        m_from->setCurrentIndex(static_cast<int>(blocks) - 2);
        m_to->setCurrentIndex(static_cast<int>(blocks) - 1);
    } else if (static_cast<long>(m_sides.size()) >= blocks + 2) {
        m_from->setCurrentIndex(static_cast<int>(blocks) + 1);
        m_to->setCurrentIndex(static_cast<int>(blocks));
    }
}

std::optional<questions::BatterySide> BeforeAfterView::sideOf(const QComboBox* box) const {
    const auto at = static_cast<std::size_t>(box->currentIndex());
    return box->currentIndex() >= 0 && at < m_sides.size() ? std::optional(m_sides[at])
                                                           : std::nullopt;
}

void BeforeAfterView::ask() {
    try {
        m_answer.reset();
        if (!m_athlete || !sideOf(m_from) || !sideOf(m_to)) {
            showReason(m_athlete ? tr("Two dates or two blocks with sessions are needed.")
                                 : tr("Choose an athlete."));
            return;
        }
        auto answer = answerOf(true);
        if (!answer) {
            showReason(said(answer.why().reason, m_logbook.loadUnit()));
            return;
        }
        m_answer = std::move(*answer);
        show(*m_answer);
    } catch (const std::exception& error) {
        showReason(said(error));
    }
}

Answer<questions::BatteryAnswer> BeforeAfterView::answerOf(bool allBlocks) const {
    return questions::batteryOf(
        m_logbook.log(),
        [this](LiftId lift) -> const questions::LiftContext& { return m_logbook.context(lift); },
        *m_athlete, *sideOf(m_from), *sideOf(m_to), {.allBlocks = allBlocks});
}

void BeforeAfterView::showReason(const QString& reason) {
    m_summary->setText(m_way ? m_way->sayMissing(m_logbook.log(), reason, false, false) : reason);
    m_type->setVisible(m_athlete.has_value());
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_alone, m_lifts, m_forest, m_testTable, m_leftRightTitle,
                                         m_leftRightTable, m_missingTitle, m_missingTable, m_notes})
        part->hide();
    for (QPushButton* button : {m_preview, m_print, m_pdf, m_csv})
        button->setEnabled(false);
    Q_EMIT answered(false);
}

void BeforeAfterView::show(const questions::BatteryAnswer& answer) {
    const auto& battery = answer.battery;
    const LoadUnit unit = m_logbook.loadUnit();
    m_type->hide();
    if (m_way)
        m_way->hide();
    m_summary->setText(said(answers::batterySummary(battery), unit));
    const QStringList lifts = page::liftSentences(answer, unit);
    m_lifts->setText(lifts.join(QLatin1Char('\n')));
    m_lifts->setVisible(!lifts.isEmpty());
    m_forest->setRows(battery.forest, unit, battery.allAtOnce);
    m_alone->setText(said(answers::intervalsOf(battery.allAtOnce)));
    m_forest->setVisible(!battery.forest.empty());
    m_alone->setVisible(!battery.forest.empty());
    std::vector<TextTable::Row> rows;
    for (const page::BatteryRow& r : page::batteryRows(battery)) {
        TextTable::Row row{
            .cells = {r.test, r.before, r.after, r.change, r.percent, r.interval, r.error,
                      r.reading, r.remark},
            .explanation =
                (readAgainst(tr("%1 interval").arg(levelText(battery.level)), battery.allAtOnce) +
                 u'\n' + r.remark)
                    .trimmed()};
        if (r.noFigure)
            row.quiet = {3, 4, 5, 6, 7};
        rows.push_back(std::move(row));
    }
    m_tests->setTable({tr("Test (unit)"), tr("Before"), tr("After"), tr("Change"), tr("%"),
                       tr("%1 interval").arg(levelText(battery.level)), tr("Typical error"),
                       tr("Reading"), tr("Remark")},
                      std::move(rows), 1, 7);
    m_testTable->setVisible(m_tests->rowCount() > 0);
    const auto fill = [](TextTable* table, const QStringList& head,
                         const std::vector<QStringList>& lines) {
        std::vector<TextTable::Row> made;
        for (const QStringList& line : lines)
            made.push_back({.cells = line});
        table->setTable(head, std::move(made), 9, 9);
        return !lines.empty();
    };
    const bool sides =
        fill(m_leftRight,
             {tr("Test"), periodText(battery.fromLabel), periodText(battery.toLabel),
              tr("Change of the difference (%1 interval)").arg(levelText(battery.level))},
             page::leftRightRows(battery));
    const bool gaps =
        fill(m_missing, {tr("Day"), tr("Side of the comparison"), tr("Test or lift"), tr("Why")},
             page::missingRows(battery, unit));
    m_leftRightTitle->setVisible(sides);
    m_leftRightTable->setVisible(sides);
    m_missingTitle->setVisible(gaps);
    m_missingTable->setVisible(gaps);
    for (QTableView* table : {m_testTable, m_leftRightTable, m_missingTable})
        showWhole(table);
    m_notes->setText((said(answers::batteryRemarks(battery), unit) +
                      said(answers::batterySources(battery), unit))
                         .join(QLatin1Char('\n')));
    m_notes->setVisible(!m_notes->text().isEmpty());
    for (QPushButton* button : {m_preview, m_print, m_pdf, m_csv})
        button->setEnabled(true);
    Q_EMIT answered(true);
}

QString BeforeAfterView::summary() const {
    return m_summary->text();
}

void BeforeAfterView::print() {
    guarded([this] {
        if (m_answer)
            paperwork::print(this, batteryPrint(*m_answer, m_logbook.loadUnit()));
    });
}

void BeforeAfterView::printPreview() {
    guarded([this] {
        if (m_answer)
            paperwork::preview(this, tr("Print preview"),
                               batteryPrint(*m_answer, m_logbook.loadUnit()));
    });
}

void BeforeAfterView::writePdf() {
    guarded([this] {
        if (!m_answer)
            return;
        const QString said = paperwork::savePdf(
            this, tr("Write PDF"), text(m_answer->athlete.value.name), [this](const auto& to) {
                writeBatteryPdf(*m_answer, m_logbook.loadUnit(), paperwork::desktopPaper(), to);
            });
        if (!said.isEmpty())
            Q_EMIT message(said);
    });
}

void BeforeAfterView::writeCsv() {
    guarded([this] {
        if (!m_answer)
            return;
        const auto to = filedialog::save(
            this, {.title = tr("Write CSV"),
                   .start = paperwork::fileName(text(m_answer->athlete.value.name)) +
                            QStringLiteral(".csv"),
                   .filter = tr("CSV (*.csv)"),
                   .ending = QStringLiteral(".csv")});
        if (!to)
            return;
        // Figures to reckon with, as the command writes them: of the change by itself.
        questions::writeBatteryCsv(*answerOf(false), *to);
        Q_EMIT message(tr("Written: %1").arg(nameOf(to->file)));
    });
}

} // namespace slopebook::ui
