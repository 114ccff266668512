// SPDX-License-Identifier: GPL-3.0-or-later
// Undo and redo in the window: nothing is taken back that the coach does not see, and what was, is
// named.
#include "ui/athlete/battery/batterypage.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/station/stationpage.h"
#include "ui/window/foot.h"
#include "ui/window/workspace.h"

#include <QUndoStack>

namespace slopebook::ui {

bool Workspace::isShown(const Logbook::Step& step) const {
    using What = Logbook::What;
    const TaskPage* page = currentPage();
    // At a station what is written is seen of the athlete whose turn it is.
    if (page == m_station && step.athlete && m_station->shows(*step.athlete, step.lift) &&
        (step.what == What::Sets || step.what == What::Battery || step.what == What::Sessions))
        return true;
    if (step.what == What::Stations)
        return page == m_station;
    const bool theirs = !step.athlete || step.athlete == athlete();
    const bool ofLift = !step.lift || step.lift == lift();
    switch (step.what) {
    case What::Sets:
        return page == m_entry && theirs && ofLift && m_entry->session() == step.session;
    case What::Battery:
        return page == m_battery && theirs && step.session && m_battery->shows(*step.session);
    case What::Sessions:
        if (!theirs)
            return false;
        if (!step.session) // it comes back, and is shown then
            return page == m_entry;
        return (page == m_entry && m_entry->session() == step.session) ||
               (page == m_battery && m_battery->shows(*step.session));
    default:
        return theirs && ofLift;
    }
}

void Workspace::goTo(const Logbook::Step& step) {
    using What = Logbook::What;
    if (step.what == What::Stations) {
        showPage(Page::Stations);
        return;
    }
    if (page() == Page::Stations && step.athlete &&
        m_station->goTo(*step.athlete, step.lift, step.session))
        return;
    choose(step.athlete, step.lift);
    if (step.what == What::Battery && step.session) {
        showPage(Page::Battery);
        m_battery->showSession(*step.session);
    } else if (step.what == What::Sets || step.what == What::Sessions) {
        showPage(Page::Session);
        if (step.session)
            m_entry->showSession(*step.session);
    }
}

void Workspace::step(bool undo) {
    QUndoStack* stack = m_logbook->undoStack();
    guarded([&] {
        const auto next = undo ? m_logbook->nextUndo() : m_logbook->nextRedo();
        if (!next)
            return;
        const int before = stack->index(), count = stack->count();
        const void* edit = stack->command(undo ? before - 1 : before);
        if (m_announced != edit && !isShown(*next)) {
            goTo(*next);
            m_announced = edit;
            m_foot->sayUntilDeed(undo ? tr("Undo once more to take this back: %1").arg(next->words)
                                      : tr("Redo once more to do this again: %1").arg(next->words));
            return;
        }
        m_announced = nullptr;
        if (undo)
            stack->undo();
        else
            stack->redo();
        // One that failed is told of by the logbook, and stays or goes.
        if (stack->index() == (undo ? before - 1 : before + 1) && stack->count() == count)
            m_foot->sayUntilDeed(undo ? tr("Taken back: %1").arg(next->words)
                                      : tr("Done again: %1").arg(next->words));
    });
}

} // namespace slopebook::ui
