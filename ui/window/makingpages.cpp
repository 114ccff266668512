// SPDX-License-Identifier: GPL-3.0-or-later
// Pages are made when they are first shown or spoken to; what is meant for them waits until then.
#include "ui/athlete/battery/batterypage.h"
#include "ui/athlete/compare/comparepage.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/station/stationpage.h"
#include "ui/window/pageholder.h"
#include "ui/window/windowtypist.h"
#include "ui/window/workspace.h"

#include <QScrollArea>
#include <QStackedWidget>

#include <utility>

namespace slopebook::ui {

// Each with a place of its own, empty until the page is made: a coach sees a few of them in a
// session, and making all took most of the time that opening did.
void Workspace::make(Page page) {
    const auto at = static_cast<std::size_t>(page);
    if (m_holders[at])
        return;
    const MadePage made = entryOf(page).make(*m_logbook, m_clock);
    m_pages[at] = made;
    m_holders[at] = new PageHolder(made);
    // A window too small for the page (a small screen at a scale of 2) scrolls it: nothing is cut.
    auto* area = static_cast<QScrollArea*>(m_stack->widget(static_cast<int>(page)));
    area->setWidget(m_holders[at]);
    m_holders[at]->setAutoFillBackground(false);
    made.page->setAutoFillBackground(false);
    connectPage(made);
    m_behind.insert(made.page);
}

void Workspace::connectPage(const MadePage& made) {
    connect(made.page, &TaskPage::message, this, &Workspace::say);
    connect(made.page, &TaskPage::sessionWanted, this, &Workspace::openSession);
    connect(made.page, &TaskPage::comparisonWanted, this, &Workspace::openComparison);
    connectWays(made.page);
    m_typist->watch(*made.page);
    if (auto* entry = qobject_cast<EntryPage*>(made.page)) {
        m_entry = entry;
        connect(entry, &EntryPage::tablePasted, this, &Workspace::tablePasted);
        entry->showRest(m_rest);
        entry->takeUnwritten(std::exchange(m_unwritten.sets, {}));
    } else if (auto* station = qobject_cast<StationPage*>(made.page)) {
        m_station = station;
        connect(station, &StationPage::stationShown, this, &Workspace::placeNamed);
        station->takeUnwritten(std::exchange(m_unwritten.atStations, {}));
    } else if (auto* battery = qobject_cast<BatteryPage*>(made.page)) {
        m_battery = battery;
        connect(battery, &BatteryPage::speedsFound, this,
                [this](AthleteId whose, const QString& speeds, VelocityKind kind) {
                    choose(whose, {}); // the trace is theirs, whoever is shown by now
                    showPage(Page::Session);
                    m_entry->offerSpeeds(speeds, kind);
                });
    } else if (auto* comparison = qobject_cast<ComparePage*>(made.page)) {
        m_comparison = comparison;
    }
}

QString Workspace::placeName() const {
    return page() == Page::Stations && m_station ? m_station->stationTitle() : QString();
}

EntryPage& Workspace::entry() {
    make(Page::Session);
    catchUp(m_entry);
    return *m_entry;
}

StationPage& Workspace::stations() {
    make(Page::Stations);
    catchUp(m_station);
    return *m_station;
}

Unwritten Workspace::unwritten() const {
    Unwritten all = m_unwritten;
    if (m_station)
        all.atStations = m_station->unwritten();
    if (m_entry)
        all.sets = m_entry->unwritten();
    return all;
}

void Workspace::takeUnwritten(Unwritten kept) {
    m_unwritten = std::move(kept);
    if (m_entry)
        m_entry->takeUnwritten(std::exchange(m_unwritten.sets, {}));
    if (m_station)
        m_station->takeUnwritten(std::exchange(m_unwritten.atStations, {}));
}

void Workspace::showRest(bool wanted) {
    m_rest = wanted;
    if (m_entry)
        m_entry->showRest(wanted);
}

std::vector<TaskPage*> Workspace::madePages() const {
    std::vector<TaskPage*> all;
    for (const MadePage& made : m_pages)
        if (made.page)
            all.push_back(made.page);
    return all;
}

} // namespace slopebook::ui
