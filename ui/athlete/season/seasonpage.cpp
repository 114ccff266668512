// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonpage.h"

#include "core/answers/followsummary.h"
#include "core/questions/felt.h"
#include "core/questions/liftcontext.h"
#include "ui/athlete/season/seasonprint.h"
#include "ui/athlete/season/seasonrows.h"
#include "ui/paper/paperwork.h"
#include "ui/parts/givesway.h"
#include "ui/parts/rowtable.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
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
    m_baselines->setAccessibleName(tr("Baseline session"));
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
    row->addStretch(1);
    return box;
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
    m_chart->setToolTip(tr("Click a session to make it the baseline."));
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
    m_settling->setAccessibleDescription(tr("What would settle the selected session's change"));
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

void SeasonPage::connectParts() {
    connect(m_loads, &QComboBox::activated, this, [this] {
        m_load = Mass{m_loads->currentData().toLongLong()};
        ask();
    });
    connect(m_baselines, &QComboBox::activated, this,
            [this] { setBaseline(SessionId{m_baselines->currentData().toLongLong()}); });
    connect(m_chart, &SeasonChart::sessionClicked, this, [this](int session) {
        if (session < int(m_chart->data().points.size()))
            setBaseline(m_chart->data().points[std::size_t(session)].session);
    });
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &SeasonPage::sessionPicked);
    connect(m_view, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        Q_EMIT sessionWanted(m_chart->data().points[std::size_t(index.row())].session);
    });
    connect(m_useAsBaseline, &QPushButton::clicked, this, [this] {
        if (const auto row = currentRow())
            setBaseline(m_chart->data().points[*row].session);
    });
    connect(m_preview, &QPushButton::clicked, this, &SeasonPage::printPreview);
    connect(m_print, &QPushButton::clicked, this, &SeasonPage::print);
    connect(m_pdf, &QPushButton::clicked, this, &SeasonPage::writePdf);
    connect(m_compare, &QPushButton::clicked, this, [this] {
        const auto row = currentRow();
        const auto& shown = m_chart->data();
        if (row && shown.baseline >= 0 && int(*row) != shown.baseline)
            Q_EMIT comparisonWanted(shown.points[std::size_t(shown.baseline)].session,
                                    shown.points[*row].session);
    });
}

void SeasonPage::writePdfTo(const log::Destination& to, page::Paper paper) const {
    page::writePagesPdf(pages(), paper, to);
}

page::Print SeasonPage::pages() const {
    return seasonPrint({.athlete = text(m_about->athlete.value.name),
                        .lift = tr("%1 (%2)").arg(text(m_about->lift.value.name),
                                                  kindText(m_about->lift.value.kind)),
                        .follow = *m_follow,
                        .chart = m_chart->data(),
                        .blocks = m_blocks,
                        .level = questions::AskSettings{}.level});
}

void SeasonPage::writePdf() {
    if (!canPrint())
        return;
    const QString said = paperwork::savePdf(
        this, tr("Save the season as PDF"),
        tr("%1 %2 season at %3")
            .arg(text(m_about->athlete.value.name), text(m_about->lift.value.name),
                 loadWithUnit(kilograms(m_follow->load), m_logbook.loadUnit())),
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

void SeasonPage::setBaseline(SessionId session) {
    m_baseline = session;
    ask();
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
    for (const LiftSession& session : m_about->sessions)
        m_baselines->addItem(text(dateKey(session.date, session.ordinal)),
                             qlonglong{raw(session.session)});
    m_baselines->setEnabled(m_baselines->count() > 0);
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
        if (m_baseline && !questions::sessionOf(m_about->sessions, *m_baseline))
            m_baseline.reset();
        const auto follow = questions::followOf(m_logbook.log(), m_logbook.context(*m_lift),
                                                *m_about, *m_load, m_baseline);
        if (follow)
            showFollow(*follow);
        else
            showNothing(noAnswerText(follow.why(), m_logbook.loadUnit()));
    } catch (const std::exception& error) {
        showNothing(said(error));
    }
}

void SeasonPage::showFollow(const answers::Follow& follow) {
    const double level = questions::AskSettings{}.level;
    const LoadUnit unit = m_logbook.loadUnit();
    m_follow = follow;
    SeasonData season = seasonData(follow, m_blocks, m_about->lift.value.kind, level, unit);
    const auto efforts = questions::feltAt(m_logbook.log(), m_about->lift, follow,
                                           questions::AskSettings{}.plateStep);
    QStringList felt;
    for (std::size_t i = 0; i < efforts.size(); ++i)
        felt << (season.points[i].felt = feltText(efforts[i]));
    m_chart->setData(std::move(season));
    const auto row = currentRow();
    m_settlingTexts.clear();
    for (const answers::Followed& each : follow.sessions)
        m_settlingTexts << settlingOf(each, unit);
    m_table->setTable(seasonHeadings(unit), seasonRows(follow, m_blocks, m_devices, unit, felt), 3,
                      8);
    m_view->resizeColumnsToContents();
    m_view->setMinimumHeight(leastHeight(*m_view));
    m_baselines->setCurrentIndex(static_cast<int>(follow.baseline));
    m_view->selectRow(row && *row < follow.sessions.size()
                          ? static_cast<int>(*row)
                          : static_cast<int>(follow.sessions.size()) - 1);
    QStringList notes;
    for (const answers::Note& note : follow.notes)
        notes << said(asSentence(note.words), unit);
    m_notes->setText(notes.join(QLatin1Char(' ')));
    m_notes->setVisible(!notes.isEmpty());
    m_told->setText(said(answers::trendWords(follow, level)));
    m_chart->setSpokenText(tr("Season of %1 at %2: %3")
                               .arg(text(m_about->athlete.value.name),
                                    loadWithUnit(kilograms(follow.load), unit), m_told->text()));
    sessionPicked();
}

void SeasonPage::showNothing(const QString& why) {
    m_follow.reset();
    m_chart->setData({});
    m_table->setTable(seasonHeadings(m_logbook.loadUnit()), {}, 3, 8);
    m_notes->hide();
    m_settlingTexts.clear();
    m_told->setText(why);
    m_chart->setSpokenText(why);
    sessionPicked();
}

std::optional<std::size_t> SeasonPage::currentRow() const {
    const QModelIndex index = m_view->currentIndex();
    if (!index.isValid() || index.row() >= m_table->rowCount())
        return std::nullopt;
    return static_cast<std::size_t>(index.row());
}

void SeasonPage::sessionPicked() {
    const auto row = currentRow();
    m_chart->setRinged(row ? std::optional(static_cast<int>(*row)) : std::nullopt);
    const bool other = row && int(*row) != m_chart->data().baseline;
    m_useAsBaseline->setEnabled(other);
    m_compare->setEnabled(other);
    for (QPushButton* button : {m_preview, m_print, m_pdf})
        button->setEnabled(canPrint());
    const QString settling = row ? m_settlingTexts.value(static_cast<qsizetype>(*row)) : QString();
    m_settling->setText(settling);
    m_settling->setVisible(!settling.isEmpty());
}

} // namespace slopebook::ui
