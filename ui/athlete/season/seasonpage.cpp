// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonpage.h"

#include "core/answers/followsummary.h"
#include "core/questions/felt.h"
#include "ui/athlete/season/seasonprint.h"
#include "ui/athlete/season/seasonrows.h"
#include "ui/paper/paperwork.h"
#include "ui/parts/givesway.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

namespace slopebook::ui {

namespace {

/// Check loads, then the loads lifted in most sessions.
std::vector<std::pair<Mass, bool>> loadsToFollow(const questions::Background& about) {
    std::vector<std::pair<Mass, bool>> loads;
    for (const Mass load : about.checkLoads)
        loads.emplace_back(load, true);
    std::map<Mass, int> lifted;
    for (const LiftSession& session : about.sessions) {
        std::map<Mass, bool> here;
        for (const Point& p : session.points)
            here[massFromKilograms(p.load)] = true;
        for (const auto& [load, is] : here)
            ++lifted[load];
    }
    std::vector<std::pair<Mass, int>> others;
    for (const auto& each : lifted)
        if (std::ranges::count(about.checkLoads, each.first) == 0)
            others.push_back(each);
    std::ranges::stable_sort(others,
                             [](const auto& a, const auto& b) { return a.second > b.second; });
    for (const auto& [load, count] : others)
        loads.emplace_back(load, false);
    return loads;
}

/// A baseline in the list of them: "s12" a session, "b3" a block.
QString keyOf(const questions::Baseline& baseline) {
    const auto* session = std::get_if<SessionId>(&baseline);
    return session ? QLatin1Char('s') + QString::number(raw(*session))
                   : QLatin1Char('b') + QString::number(raw(std::get<BlockId>(baseline)));
}

questions::Baseline baselineFrom(const QString& key) {
    const qlonglong id = key.mid(1).toLongLong();
    return key.startsWith(QLatin1Char('b')) ? questions::Baseline(BlockId{id})
                                            : questions::Baseline(SessionId{id});
}

} // namespace

SeasonPage::SeasonPage(Logbook& logbook, QWidget* parent) : TaskPage(parent), m_logbook(logbook) {
    build();
    connectParts();
    showNothing(tr("Choose an athlete and a lift."));
}

QWidget* SeasonPage::buildChoices() {
    m_loads = new QComboBox;
    m_loads->setAccessibleName(tr("Load to follow"));
    m_baselines = new QComboBox;
    m_baselines->setAccessibleName(tr("Baseline: a session or a block"));
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
    add(tr("Ba&seline"), m_baselines);
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
    const QString state = season && blocks ? tr("trends of season and blocks")
                          : season         ? tr("trend of the season")
                          : blocks         ? tr("trends within blocks")
                                           : tr("no trend");
    m_trends->setText(state + QStringLiteral(" \u25be"));
    m_trends->setAccessibleName(state);
}

QLayout* SeasonPage::buildButtons() {
    m_useAsBaseline = new QPushButton(tr("Use the selected as &baseline"));
    m_compare = new QPushButton(tr("Compare &it with the baseline"));
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
    m_view = rowTable(m_table, tr("Sessions, the load and the estimated 1RM"));
    m_view->setObjectName(QStringLiteral("season"));
    m_view->setWordWrap(false);
    m_told = new QLabel;
    m_notes = new QLabel;
    m_told->setAccessibleDescription(tr("What the season says"));
    m_notes->setAccessibleDescription(tr("Where the figures come from"));
    m_settling = new QLabel;
    m_settling->setObjectName(QStringLiteral("settling"));
    m_settling->setAccessibleDescription(tr("What the selected row says"));
    for (QLabel* label : {m_told, m_settling, m_notes}) {
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
    layout->addWidget(split, 1);
    layout->addWidget(m_settling);
    layout->addWidget(new GivesWay(m_notes, 2));
    layout->addLayout(buildButtons());
}

void SeasonPage::resizeEvent(QResizeEvent* event) {
    TaskPage::resizeEvent(event);
    m_chart->setMinimumHeight(pictureHeight(*this));
}

void SeasonPage::connectParts() {
    connect(m_loads, &QComboBox::activated, this, [this] {
        m_load = Mass{m_loads->currentData().toLongLong()};
        ask();
    });
    connect(m_baselines, &QComboBox::activated, this,
            [this] { setBaseline(baselineFrom(m_baselines->currentData().toString())); });
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

/// Two sessions as lines; where a block is among the two, all that was measured in both.
void SeasonPage::compare() {
    const auto item = currentItem();
    const auto with = item ? baselineOf(*item) : std::nullopt;
    if (!with || !m_season)
        return;
    const LiftSession& base = m_season->follow.sessions[m_season->follow.baseline].session;
    if (item->kind == SeasonItem::Kind::Session && !m_season->block) {
        Q_EMIT comparisonWanted(base.session, std::get<SessionId>(*with));
        return;
    }
    using Side = questions::BatterySide;
    Q_EMIT batteryWanted(m_season->block ? Side(m_season->block->id) : Side(base.date),
                         item->kind == SeasonItem::Kind::Session
                             ? Side(m_season->follow.sessions[item->index].session.date)
                             : Side(m_season->blocks[item->index].id));
}

void SeasonPage::writePdfTo(const log::Destination& to, page::Paper paper) const {
    page::writePagesPdf(pages(), paper, to);
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

void SeasonPage::writePdf() {
    if (!canPrint())
        return;
    const QString said = paperwork::savePdf(
        this, tr("Save the season as PDF"),
        tr("%1 %2 season at %3")
            .arg(text(m_about->athlete.value.name), text(m_about->lift.value.name),
                 loadWithUnit(kilograms(m_season->follow.load), m_logbook.loadUnit())),
        [this](const auto& to) { writePdfTo(to, paperwork::desktopPaper()); });
    if (!said.isEmpty())
        Q_EMIT message(said);
}

void SeasonPage::print() {
    if (canPrint())
        paperwork::print(this, pages());
}

void SeasonPage::printPreview() {
    if (canPrint())
        paperwork::preview(this, tr("The page as it is printed"), pages());
}

void SeasonPage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    if (athlete != m_athlete || lift != m_lift) {
        m_load.reset();
        m_baseline.reset();
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
        m_baselines->addItem(text(dateKey(session.date, session.ordinal)), keyOf(session.session));
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
        const auto season = questions::seasonOf(m_logbook.log(), m_logbook.context(*m_lift),
                                                *m_about, *m_load, m_baseline);
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
    m_table->setTable(seasonHeadings(unit),
                      seasonRows(season, m_blocks, m_devices, unit, felt, within), 3, 8);
    m_view->resizeColumnsToContents();
    m_view->setMinimumHeight(leastHeight(*m_view));
    m_baselines->setCurrentIndex(m_baselines->findData(keyOf(
        season.block ? questions::Baseline(season.block->id)
                     : questions::Baseline(follow.sessions[follow.baseline].session.session))));
    selectItem(kept ? *kept : SeasonItem{SeasonItem::Kind::Session, follow.sessions.size() - 1});
    m_notes->setText(notesText(season));
    m_notes->setVisible(!m_notes->text().isEmpty());
    QStringList told{said(answers::followSentence(season), unit)};
    if (m_ofTheSeason->isChecked())
        told << said(answers::trendWords(follow, level));
    m_told->setText(told.join(QLatin1Char(' ')));
    m_chart->setSpokenText(tr("Season of %1 at %2: %3")
                               .arg(text(m_about->athlete.value.name),
                                    loadWithUnit(kilograms(follow.load), unit), m_told->text()));
    itemPicked();
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
    m_table->setTable(seasonHeadings(m_logbook.loadUnit()), {}, 3, 8);
    m_notes->hide();
    m_settlingTexts.clear();
    m_told->setText(why);
    m_chart->setSpokenText(why);
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
