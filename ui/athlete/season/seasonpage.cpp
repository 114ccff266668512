// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonpage.h"

#include "core/answers/followsummary.h"
#include "core/questions/felt.h"
#include "ui/athlete/season/seasonchoices.h"
#include "ui/athlete/season/seasonprint.h"
#include "ui/athlete/season/seasonrows.h"
#include "ui/parts/fold.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/sidekey.h"
#include "ui/parts/wayon.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QAction>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include <algorithm>

namespace slopebook::ui {

SeasonPage::SeasonPage(Logbook& logbook, QWidget* parent) : PaperTask(parent), m_logbook(logbook) {
    build();
    connectParts();
    showNothing(tr("Choose an athlete and a lift."));
}

void SeasonPage::resizeEvent(QResizeEvent* event) {
    PaperTask::resizeEvent(event);
    constexpr int lines = 21; // key, speeds and 1RM
    m_chart->setMinimumHeight(pictureHeight(*this, lines));
}

/// Two sessions as lines; where a block is among the two, all that was measured in both.
void SeasonPage::compare() {
    const auto item = currentItem();
    const auto with = item ? baselineOf(*item) : std::nullopt;
    if (!with || !m_season)
        return;
    const LiftSession& base = m_season->follow.sessions[m_season->follow.baseline].session;
    if (item->kind == SeasonItem::Kind::Session && !m_season->block) {
        Q_EMIT comparisonWanted(*m_athlete, base.session, *with);
        return;
    }
    using Side = questions::BatterySide;
    Q_EMIT batteryWanted(m_season->block ? Side(m_season->block->id) : Side(base.date),
                         item->kind == SeasonItem::Kind::Session
                             ? Side(m_season->follow.sessions[item->index].session.date)
                             : Side(m_season->blocks[item->index].id));
}

page::Print SeasonPage::pages() const {
    return seasonPrint({.athlete = text(m_about->athlete.value.name),
                        .lift = tr("%1 (%2)").arg(text(m_about->lift.value.name),
                                                  kindText(m_about->lift.value.kind)),
                        .season = *m_season,
                        .chart = m_chart->data(),
                        .blocks = m_blocks,
                        .level = questions::AskSettings{}.level,
                        .trends = m_withinBlocks->isChecked()});
}

PaperTask::PdfWords SeasonPage::pdfWords() const {
    return {tr("Save the season as PDF"),
            tr("%1 %2 season at %3")
                .arg(text(m_about->athlete.value.name), text(m_about->lift.value.name),
                     loadWithUnit(kilograms(m_season->follow.load), m_logbook.loadUnit()))};
}

void SeasonPage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    if (athlete != m_athlete || lift != m_lift) {
        m_load.reset();
        m_baseline.reset();
        if (m_start)
            m_baseline = *m_start;
    }
    m_athlete = athlete;
    m_lift = lift;
    reload();
}

void SeasonPage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    reload();
}

void SeasonPage::setBaseline(const questions::Baseline& baseline) {
    m_baseline = baseline;
    ask();
    if (const auto* block = std::get_if<BlockId>(&baseline); block && m_athlete) {
        m_start = *block;
        countFrom(*m_athlete, *block);
    }
}

// A session that was chosen here gives way to a block that was chosen on another page since.
void SeasonPage::setStart(std::optional<BlockId> start) {
    if (start == m_start)
        return;
    m_start = start;
    m_baseline.reset();
    if (start)
        m_baseline = *start;
}

std::optional<questions::Baseline> SeasonPage::baselineOf(const SeasonItem& item) const {
    if (!m_season || item.kind == SeasonItem::Kind::NotLifted)
        return std::nullopt;
    if (item.kind == SeasonItem::Kind::Session)
        return m_season->follow.sessions[item.index].session.session;
    return m_season->blocks[item.index].id;
}

std::optional<SessionId> SeasonPage::sessionOfRow() const {
    const auto item = currentItem();
    if (!item || !m_season || item->kind == SeasonItem::Kind::Block)
        return std::nullopt;
    return item->kind == SeasonItem::Kind::Session
               ? m_season->follow.sessions[item->index].session.session
               : m_season->notLifted[item->index].session;
}

void SeasonPage::followLoad(Mass load) {
    m_load = load;
    reload();
}

void SeasonPage::reload() {
    try {
        m_about.reset();
        if (!m_athlete || !m_lift) {
            showNothing(tr("Choose an athlete and a lift."));
            return;
        }
        m_about = questions::background(m_logbook.log(), *m_athlete, *m_lift);
        m_blocks = m_logbook.log().blocks();
        m_devices = m_logbook.log().devices();
        fillLoads();
    } catch (const std::exception& error) {
        showNothing(said(error));
        return;
    }
    ask();
}

void SeasonPage::fillLoads() {
    m_loads->clear();
    for (const auto& [load, check] : loadsToFollow(*m_about)) {
        const QString shown = loadWithUnit(kilograms(load), m_logbook.loadUnit());
        m_loads->addItem(check ? tr("%1 (check load)").arg(shown) : shown, qlonglong{load.grams});
    }
    const int kept = m_load ? m_loads->findData(qlonglong{m_load->grams}) : -1;
    m_loads->setCurrentIndex(kept >= 0 ? kept : 0);
    m_load.reset();
    if (m_loads->count() > 0)
        m_load = Mass{m_loads->currentData().toLongLong()};
    m_loads->setEnabled(m_loads->count() > 0);
}

void SeasonPage::fillBaselines() {
    m_baselines->clear();
    for (const auto& block : m_blocks)
        if (std::ranges::any_of(m_about->sessions, [&](const LiftSession& session) {
                return block.value.holds(session.date);
            }))
            m_baselines->addItem(text(block.value.name), keyOf(block.id));
    if (m_baselines->count() > 0)
        m_baselines->insertSeparator(m_baselines->count());
    for (const LiftSession& session : m_about->sessions)
        m_baselines->addItem(sessionText(session), keyOf(session.session));
    m_baselines->setEnabled(!m_about->sessions.empty());
}

void SeasonPage::ask() {
    if (!m_about)
        return;
    try {
        fillBaselines();
        if (!m_load) {
            showNothing(tr("No sets of this lift yet: type the first under Floor."));
            return;
        }
        if (m_baseline && m_baselines->findData(keyOf(*m_baseline)) < 0)
            m_baseline.reset();
        std::optional<questions::Baseline> baseline = m_baseline;
        if (!baseline)
            if (const auto block = firstBlock(m_blocks, m_about->sessions))
                baseline = *block;
        const auto season = questions::seasonOf(m_logbook.log(), m_logbook.context(*m_lift),
                                                *m_about, *m_load, baseline);
        if (season)
            showSeason(*season);
        else
            showNothing(noAnswerText(season.why(), m_logbook.loadUnit()));
    } catch (const std::exception& error) {
        showNothing(said(error));
    }
}

void SeasonPage::showSeason(const answers::FollowedSeason& season) {
    const double level = questions::AskSettings{}.level;
    const LoadUnit unit = m_logbook.loadUnit();
    const answers::Follow& follow = season.follow;
    const bool within = m_withinBlocks->isChecked();
    const auto kept = currentItem();
    m_season = season;
    SeasonData drawn =
        seasonData(season, m_blocks, m_about->lift.value.kind, level, unit,
                   {.ofTheSeason = m_ofTheSeason->isChecked(), .withinBlocks = within});
    const auto efforts = questions::feltAt(m_logbook.log(), m_about->lift, follow,
                                           questions::AskSettings{}.plateStep);
    QStringList felt;
    for (std::size_t i = 0; i < efforts.size(); ++i)
        felt << (drawn.points[i].felt = feltText(efforts[i]));
    m_settlingTexts.clear();
    for (qsizetype i = 0; i < qsizetype(drawn.items.size()); ++i) {
        const SeasonItem& item = drawn.items[std::size_t(i)];
        m_settlingTexts << (item.kind == SeasonItem::Kind::Session
                                ? settlingOf(follow.sessions[item.index], unit)
                                : drawn.told.value(i));
    }
    m_chart->setData(std::move(drawn));
    // What is drawn, and told in the row's tip; a column that says nothing gives its room as well.
    for (const int told : {seasonInterval, seasonLineAlone})
        haveColumn(*m_view, told, false);
    haveColumn(*m_view, seasonMeasured, std::ranges::any_of(follow.sessions, [](const auto& each) {
        return each.session.measuredOneRm.has_value();
    }));
    m_table->setTable(inTwoLines(seasonHeadings(unit)),
                      seasonRows(season, m_blocks, m_devices, unit, felt, within), 3, 8);
    m_view->setMinimumHeight(leastHeight(*m_view));
    m_baselines->setCurrentIndex(m_baselines->findData(keyOf(
        season.block ? questions::Baseline(season.block->id)
                     : questions::Baseline(follow.sessions[follow.baseline].session.session))));
    selectItem(kept ? *kept : SeasonItem{SeasonItem::Kind::Session, follow.sessions.size() - 1});
    m_notes->setText(notesText(season));
    m_sources->setVisible(!m_notes->text().isEmpty());
    m_way->hide();
    m_chart->parentWidget()->show();
    itemPicked();
}

/// The blocks against the baseline; under it the chosen day against it, which is a question of its
/// own, and the trend.
void SeasonPage::tell(const std::optional<SeasonItem>& item) {
    const LoadUnit unit = m_logbook.loadUnit();
    m_told->setText(said(answers::followSentence(*m_season), unit));
    QStringList under;
    if (item && item->kind == SeasonItem::Kind::Session)
        if (const Words day =
                answers::dayAloneWords(*m_season, m_season->follow.sessions[item->index]);
            !day.empty())
            under << said(day, unit);
    if (m_ofTheSeason->isChecked())
        under << said(answers::trendWords(m_season->follow, questions::AskSettings{}.level));
    m_under->setText(under.join(QLatin1Char(' ')));
    m_under->setVisible(!under.isEmpty());
    m_chart->setSpokenText(
        tr("Season of %1 at %2: %3")
            .arg(text(m_about->athlete.value.name),
                 loadWithUnit(kilograms(m_season->follow.load), unit),
                 (m_told->text() + QLatin1Char(' ') + m_under->text()).trimmed()));
}

QString SeasonPage::notesText(const answers::FollowedSeason& season) const {
    QStringList notes;
    if (m_withinBlocks->isChecked())
        for (const answers::FollowedBlock& block : season.blocks)
            notes << said(answers::blockTrendWords(block, questions::AskSettings{}.level),
                          m_logbook.loadUnit());
    for (const answers::Note& note : season.follow.notes)
        notes << said(asSentence(note.words), m_logbook.loadUnit());
    return notes.join(QLatin1Char(' '));
}

/// Its row; where there is none any more, that of the last session.
void SeasonPage::selectItem(const SeasonItem& item) {
    const auto& items = m_chart->data().items;
    auto at = std::ranges::find(items, item);
    if (at == items.end())
        at = std::ranges::find(
            items, SeasonItem{SeasonItem::Kind::Session, m_chart->data().points.size() - 1});
    if (at != items.end())
        m_view->selectRow(static_cast<int>(at - items.begin()));
}

void SeasonPage::showNothing(const QString& why) {
    m_season.reset();
    m_chart->setData({});
    m_table->setTable(inTwoLines(seasonHeadings(m_logbook.loadUnit())), {}, 3, 8);
    m_sources->hide();
    m_under->hide();
    m_chart->parentWidget()->hide();
    m_settlingTexts.clear();
    m_told->setText(m_way->sayMissing(m_logbook.log(), why));
    m_chart->setSpokenText(m_told->text());
    itemPicked();
}

std::optional<SeasonItem> SeasonPage::currentItem() const {
    const QModelIndex index = m_view->currentIndex();
    const auto& items = m_chart->data().items;
    if (!index.isValid() || index.row() >= static_cast<int>(items.size()))
        return std::nullopt;
    return items[static_cast<std::size_t>(index.row())];
}

void SeasonPage::itemPicked() {
    const auto item = currentItem();
    m_chart->setRinged(item);
    if (m_season)
        tell(item);
    const auto baseline = item ? baselineOf(*item) : std::nullopt;
    const bool within = m_season && item && item->kind == SeasonItem::Kind::Session
                            ? m_season->isBaseline(m_season->follow.sessions[item->index])
                            : m_season && item && item->kind == SeasonItem::Kind::Block &&
                                  m_season->blocks[item->index].holdsBaseline;
    const bool same = m_season && baseline &&
                      (m_season->block ? *baseline == questions::Baseline(m_season->block->id)
                                       : within && item->kind == SeasonItem::Kind::Session);
    m_useAsBaseline->setEnabled(baseline && !same);
    m_compare->setEnabled(baseline && !within);
    for (QPushButton* button : {m_preview, m_print, m_pdf})
        button->setEnabled(canPrint());
    const int row = m_view->currentIndex().row();
    const QString settling = item ? m_settlingTexts.value(row) : QString();
    m_settling->setText(settling);
    m_settling->setVisible(!settling.isEmpty());
}

} // namespace slopebook::ui
