// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed in the session form, and where it goes.
#include "core/answers/doubt.h"
#include "ui/floor/entry/countedin.h"
#include "ui/floor/entry/entryline.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/entry/resttimer.h"
#include "ui/floor/entry/sessionbar.h"
#include "ui/floor/entry/setwords.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QTableView>

namespace slopebook::ui {

QString EntryPage::take(const std::vector<Set>& sets) {
    try {
        if (!m_athlete || !m_lift)
            return tr("Choose an athlete and a lift first.");
        lookAtTheDay();
        const auto session = sessionToWrite();
        if (!session)
            return m_line->answer();
        const auto ids = [&] {
            const CountedIn taking(m_taking);
            return m_logbook.addSets(*session, *m_lift, sets, m_bar->conditionsToNote());
        }();
        m_bar->setTaken();
        m_rest->restart();
        if (ids.size() > 1)
            Q_EMIT message(tr("Sets taken: %1, for %2.").arg(ids.size()).arg(whose()));
        if (const int row = m_sets->rowOf(ids.back()); row >= 0) {
            m_setTable->selectRow(row);
            m_setTable->scrollTo(m_sets->index(row, 0));
        }
        return {};
    } catch (const std::exception& error) {
        reload(); // a session may have begun that has not been shown yet
        return said(error);
    }
}

// Into the session's battery, where what was not possible stands.
QString EntryPage::note(const TypedGap& gap) {
    try {
        if (!m_athlete || !m_lift)
            return tr("Choose an athlete and a lift first.");
        lookAtTheDay();
        const auto session = sessionToWrite();
        if (!session)
            return m_line->answer();
        Battery battery = m_logbook.log().battery(*session);
        battery.gaps.push_back({.kind = {},
                                .lift = m_lift,
                                .load = gap.load,
                                .reason = utf8(QString::fromStdU16String(gap.reason))});
        m_logbook.setBattery(*session, battery, tr("note what was not possible"));
        reload();
        Q_EMIT message(gap.load ? tr("Noted: %1 was not possible.")
                                      .arg(massWithUnit(*gap.load, m_logbook.loadUnit()))
                                : tr("Noted: the lift was not possible."));
        return {};
    } catch (const std::exception& error) {
        reload();
        return said(error);
    }
}

// changed: the set of today that it takes the place of, which then is no witness.
QString EntryPage::doubtOf(const Set& typed, std::optional<SetId> changed) const {
    if (!m_view)
        return {};
    std::optional<LiftSession> today = m_view->session;
    if (const int row = today && changed ? m_sets->rowOf(*changed) : -1; row >= 0)
        std::erase_if(today->points, [&](const Point& point) {
            return point.set == m_sets->row(row).placed.ordinal;
        });
    const LiftSession* last = m_view->last ? &*m_view->last : nullptr;
    // Their points are of the body's mass and what is added.
    Set lifted = typed;
    lifted.load.grams +=
        questions::bodyMoved(m_view->about.lift.value, today ? &*today : last).grams;
    const auto doubt = answers::doubt(lifted, today ? &*today : nullptr, last);
    return doubt ? doubtText(*doubt, m_logbook.loadUnit()) : QString();
}

} // namespace slopebook::ui
