// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/devices/noiseview.h"

#include "core/answers/squadsummary.h"
#include "ui/parts/fold.h"
#include "ui/parts/givesway.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wayon.h"
#include "ui/squad/devices/noisechart.h"
#include "ui/squad/devices/noiserows.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {
constexpr int liftColumn = 0, deviceColumn = 1, atColumn = 3, testsColumn = 4, rangeColumn = 6,
              cvColumn = 7, cvLogColumn = 8, smallestChange = 9, sourceColumn = 10;
constexpr std::size_t readOneByOne = 50; // more athletes than that are read as a list

std::map<AthleteId, QString> namesIn(const log::Log& log,
                                     const std::vector<questions::NoiseGroup>& groups) {
    std::map<AthleteId, QString> names;
    for (const questions::NoiseGroup& group : groups)
        if (group.noise)
            for (const answers::RepeatPair& pair : group.noise->used)
                names.try_emplace(pair.first.athlete);
    if (names.size() <= readOneByOne) {
        for (auto& [athlete, name] : names)
            name = text(log.athlete(athlete).value.name);
        return names;
    }
    for (const auto& athlete : log.athletes())
        if (const auto found = names.find(athlete.id); found != names.end())
            found->second = text(athlete.value.name);
    return names;
}
} // namespace

NoiseView::NoiseView(Logbook& logbook, QWidget* parent) : QWidget(parent), m_logbook(logbook) {
    build();
    connect(m_every, &QCheckBox::toggled, this, &NoiseView::reload);
}

void NoiseView::build() {
    m_every = new QCheckBox(tr("Ever&y lift"));
    m_inUse = new Sentence;
    m_inUse->setObjectName(QStringLiteral("inUse"));
    m_inUse->setAccessibleDescription(tr("The noise in use"));
    m_told = new QLabel;
    m_told->setWordWrap(true);
    m_told->setAccessibleDescription(tr("Notes"));
    m_noise = new TextTable(this);
    m_repeats = new TextTable(this);
    m_noiseView = rowTable(m_noise, tr("Noise by lift, device and load"),
                           {.lastTakesRest = true,
                            .giving = {atColumn, deviceColumn, liftColumn},
                            .leaving = {rangeColumn, testsColumn, sourceColumn},
                            .told = {cvColumn, cvLogColumn}});
    m_noiseView->setObjectName(QStringLiteral("noise"));
    m_repeatView = textRowTable(m_repeats, tr("Repeat tests used"));
    auto* split = new QSplitter(Qt::Vertical);
    split->setChildrenCollapsible(false);
    split->addWidget(m_chart = new NoiseChart);
    split->addWidget(m_noiseView);
    split->addWidget(m_repeatView);
    split->setSizes({260, 150, 90});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_inUse);
    layout->addWidget(split, 1);
    layout->addStretch();
    auto* more = new QHBoxLayout;
    more->addWidget(m_every);
    more->addWidget(new FoldButton(tr("Repeat &tests used"), {m_repeatView}));
    more->addStretch(1);
    layout->addLayout(more);
    layout->addWidget(new GivesWay(m_told, 2));
}

void NoiseView::setWay(WayOn* way) {
    m_way = way;
    qobject_cast<QVBoxLayout*>(layout())->insertWidget(1, way);
}

void NoiseView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_chart->setMinimumHeight(pictureHeight(*this));
}

void NoiseView::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    m_athlete = athlete;
    m_lift = lift;
    reload();
}

void NoiseView::reload() {
    try {
        std::vector<questions::NoiseGroup> groups;
        for (const auto& lift : m_logbook.log().lifts())
            if (m_every->isChecked() || lift.id == m_lift)
                for (questions::NoiseGroup& group :
                     questions::noiseGroups(m_logbook.log(), m_logbook.context(lift.id), m_athlete))
                    groups.push_back(std::move(group));
        const auto names = namesIn(m_logbook.log(), groups);
        const bool none = groups.empty();
        const QString choose = tr("Choose a lift, or every lift.");
        if (m_way)
            m_inUse->setText(
                m_way->sayMissing(m_logbook.log(), none ? choose : inUseText(groups), false));
        else
            m_inUse->setText(none ? choose : inUseText(groups));
        m_inUse->setVisible(none || !m_every->isChecked()); // else the table alone
        m_noiseView->setVisible(!none);
        m_chart->setVisible(!groups.empty() && !m_every->isChecked());
        m_chart->setData(noiseData(groups, m_logbook.loadUnit()));
        m_chart->setSpokenText(m_inUse->text());
        QStringList headings = inTwoLines(noiseHeadings(m_logbook.loadUnit()));
        headings[smallestChange].replace(u' ', u'\n'); // no wider than its figures
        if (m_noise->columnCount() == 0)
            m_noise->setTable(headings, {}, 4, 10);
        // Of one lift its name is the same in each row, and the sources stand whole below. Hidden
        // first: the others share the room once there are rows.
        for (const int column : {liftColumn, sourceColumn})
            m_noiseView->setColumnHidden(column, !m_every->isChecked());
        for (const int column : {cvColumn, cvLogColumn}) // in the row's tip
            m_noiseView->setColumnHidden(column, true);
        m_noise->setTable(headings, noiseRows(groups, m_logbook.loadUnit()), 4, 10);
        const int more = 2 * m_noiseView->verticalHeader()->defaultSectionSize(); // rows to compare
        m_noiseView->setMinimumHeight(leastHeight(*m_noiseView) + more);
        m_repeats->setTable(repeatHeadings(), repeatRows(groups, names), 5, 6);
        const WidthsFirst widths(*m_repeatView); // a log may hold thousands of repeat tests
        m_repeatView->resizeColumnsToContents();
        QStringList told;
        if (!none)
            told << said(answers::repeatTestMethod());
        if (!none && !m_every->isChecked())
            told << rulesOfThumb(groups) << said(answers::ruleOfThumbLimits())
                 << noiseSources(groups);
        told.removeAll(QString());
        m_told->setText(told.join(QLatin1Char('\n')));
    } catch (const std::exception& error) {
        m_noise->setTable(noiseHeadings(m_logbook.loadUnit()), {}, 4, 10);
        m_repeats->setTable(repeatHeadings(), {}, 5, 6);
        m_told->setText(said(error));
    }
}

} // namespace slopebook::ui
