// SPDX-License-Identifier: GPL-3.0-or-later
// The ways from an overview to what it is made of: a load's season, tests side by side, a place.
#include "ui/athlete/battery/batterypage.h"
#include "ui/athlete/season/seasonpage.h"
#include "ui/window/workspace.h"

namespace slopebook::ui {

void Workspace::connectWays(TaskPage* page) {
    connect(page, &TaskPage::liftWanted, this, [this](LiftId lift) { choose({}, lift); });
    connect(page, &TaskPage::athleteWanted, this,
            [this](AthleteId athlete) { choose(athlete, {}); });
    connect(page, &TaskPage::seasonWanted, this, [this](LiftId lift, Mass load) {
        choose({}, lift);
        showPage(Page::Season);
        guarded([&] { qobject_cast<SeasonPage*>(currentPage())->followLoad(load); });
    });
    connect(page, &TaskPage::batteryWanted, this,
            [this](const questions::BatterySide& from, const questions::BatterySide& to) {
                showPage(Page::Battery);
                m_battery->compare(from, to);
            });
    connect(page, &TaskPage::testsWanted, this, [this](SessionId session) {
        guarded([&] {
            choose(m_logbook->log().session(session).head.value.athlete, {});
            showPage(Page::Battery);
            m_battery->showSession(session);
        });
    });
    connect(page, &TaskPage::startChosen, this, [this, page](AthleteId whose, BlockId start) {
        m_starts.insert_or_assign(whose, start);
        for (TaskPage* other : madePages())
            if (other != page)
                m_behind.insert(other);
    });
    connect(page, &TaskPage::placeWanted, this, &Workspace::openPlace);
    connect(page, &TaskPage::ofLiftChanged, this, &Workspace::fitStrip);
}

std::optional<BlockId> Workspace::start() const {
    const auto whose = athlete();
    const auto found = whose ? m_starts.find(*whose) : m_starts.end();
    return found == m_starts.end() ? std::nullopt : std::optional(found->second);
}

void Workspace::openPlace(TaskPage::Place place) {
    switch (place) {
    case TaskPage::Place::Overview:
        showPage(Page::Overview);
        break;
    case TaskPage::Place::WholeSeason:
        showPage(Page::WholeSeason);
        break;
    case TaskPage::Place::Session:
        showPage(Page::Session);
        focusEntry();
        break;
    case TaskPage::Place::Stations:
        showPage(Page::Stations);
        focusEntry();
        break;
    case TaskPage::Place::Athletes:
        Q_EMIT athleteWanted();
        break;
    case TaskPage::Place::Lifts:
        Q_EMIT liftWanted();
        break;
    }
}

} // namespace slopebook::ui
