// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/pagetable.h"

#include "ui/athlete/battery/batterypage.h"
#include "ui/athlete/compare/comparepage.h"
#include "ui/athlete/history/historypage.h"
#include "ui/athlete/overview/overviewpage.h"
#include "ui/athlete/overview/wholeseasonpage.h"
#include "ui/athlete/plan/planpage.h"
#include "ui/athlete/profile/profilepage.h"
#include "ui/athlete/season/seasonpage.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/station/stationpage.h"
#include "ui/squad/blocks/blockspage.h"
#include "ui/squad/changes/squadpage.h"
#include "ui/squad/devices/noisepage.h"
#include "ui/squad/due/duepage.h"
#include "ui/window/workspace.h"

#include <QKeySequence>

#include <algorithm>
#include <concepts>

namespace slopebook::ui {

namespace {

template <class Made>
MadePage make(Logbook& logbook, const Clock& clock) {
    MadePage made;
    Made* page = nullptr;
    if constexpr (std::constructible_from<Made, Logbook&, QWidget*, Clock>)
        page = new Made(logbook, nullptr, clock);
    else if constexpr (std::constructible_from<Made, Logbook&, Clock>)
        page = new Made(logbook, clock);
    else
        page = new Made(logbook);
    made.page = page;
    if constexpr (requires { page->strip(); })
        made.strip = page->strip();
    if constexpr (std::derived_from<Made, Prints>)
        made.prints = page;
    return made;
}

} // namespace

const std::array<PageEntry, pageCount>& pages() {
    using enum Page;
    static const std::array<PageEntry, pageCount> all{{
        {Session, Part::Floor, Qt::Key_1, "session", true, true,
         [] { return Workspace::tr("Session"); }, make<EntryPage>},
        {Stations, Part::Floor, Qt::Key_T, "stations", false, false,
         [] { return Workspace::tr("Stations"); }, make<StationPage>},
        {Overview, Part::Athlete, Qt::Key_R, "overview", true, false,
         [] { return Workspace::tr("Overview"); }, make<OverviewPage>},
        {Lines, Part::Athlete, Qt::Key_2, "lines", true, true,
         [] { return Workspace::tr("Lines"); }, make<ProfilePage>},
        {History, Part::Athlete, Qt::Key_3, "history", true, true,
         [] { return Workspace::tr("History"); }, make<HistoryPage>},
        {Comparison, Part::Athlete, Qt::Key_4, "comparison", true, true,
         [] { return Workspace::tr("Comparison"); }, make<ComparePage>},
        {Season, Part::Athlete, Qt::Key_5, "season", true, true,
         [] { return Workspace::tr("Season"); }, make<SeasonPage>},
        {WholeSeason, Part::Athlete, Qt::Key_M, "wholeseason", true, false,
         [] { return Workspace::tr("Whole season"); }, make<WholeSeasonPage>},
        {Battery, Part::Athlete, Qt::Key_6, "battery", true, false,
         [] { return Workspace::tr("Battery"); }, make<BatteryPage>},
        {Plan, Part::Athlete, Qt::Key_7, "plan", true, true, [] { return Workspace::tr("Plan"); },
         make<PlanPage>},
        {Changes, Part::Squad, Qt::Key_8, "changes", false, true,
         [] { return Workspace::tr("Changes"); }, make<SquadPage>},
        {Blocks, Part::Squad, Qt::Key_9, "blocks", true, false,
         [] { return Workspace::tr("Blocks"); }, make<BlocksPage>},
        {Due, Part::Squad, Qt::Key_U, "due", false, false,
         [] { return Workspace::tr("What is due"); }, make<DuePage>},
        {Noise, Part::Squad, Qt::Key_0, "noise", true, true,
         [] { return Workspace::tr("Noise and devices"); }, make<NoisePage>},
    }};
    return all;
}

const PageEntry& entryOf(Page page) {
    return pages().at(static_cast<std::size_t>(page));
}

QString shortcutOf(const PageEntry& entry) {
    return QKeySequence(Qt::CTRL | entry.key).toString(QKeySequence::NativeText);
}

Page pageCalled(const QString& word) {
    const auto found = std::ranges::find_if(
        pages(), [&](const PageEntry& entry) { return word == QLatin1String(entry.word); });
    return found == pages().end() ? Page{} : found->page;
}

QString titleOf(Part part) {
    switch (part) {
    case Part::Floor:
        return Workspace::tr("Floor");
    case Part::Athlete:
        return Workspace::tr("Athlete");
    case Part::Squad:
        break;
    }
    return Workspace::tr("Squad");
}

} // namespace slopebook::ui
