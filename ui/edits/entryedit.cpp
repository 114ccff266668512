// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/entryedit.h"

#include "ui/words/format.h"

#include <algorithm>

namespace slopebook::ui {

namespace {

/// The session is there for this entry alone: nobody else wrote into it since.
bool isBare(const log::Log& log, SessionId id) {
    const log::SessionRecord record = log.session(id);
    return record.sets.empty() && record.battery.empty() && record.conditions.empty();
}

bool stands(const log::Log& log, const SessionHead& head, SessionId id) {
    return std::ranges::any_of(log.sessions(head.athlete),
                               [id](const auto& session) { return session.id == id; });
}

} // namespace

Logbook::What EntryEdit::what() const {
    if (m_entered.made) // which comes and goes with it
        return Logbook::What::Sessions;
    return m_entered.sets.empty() ? Logbook::What::Battery : Logbook::What::Sets;
}

std::optional<AthleteId> EntryEdit::athlete() const {
    return m_entered.made ? std::optional(m_entered.made->athlete) : std::nullopt;
}

QString EntryEdit::object(LoadUnit unit) const {
    QStringList loads;
    for (const log::PlacedSet& set : m_entered.sets)
        loads << massWithUnit(set.set.load, unit);
    return loads.join(QStringLiteral(", "));
}

void EntryEdit::apply() {
    log().together([this] {
        const Entered& in = m_entered;
        if (in.made && !stands(log(), *in.made, in.session))
            log().add(*in.made, in.session);
        if (in.lift && in.conditions != in.conditionsBefore)
            log().setConditions(in.session, *in.lift, in.conditions);
        for (const log::PlacedSet& set : in.sets)
            log().add(set.session, set.lift, set.set, set.ordinal, set.id);
        if (in.battery == in.batteryBefore)
            return;
        if (log().battery(in.session) != in.batteryBefore)
            refuseChangedElsewhere();
        log().setBattery(in.session, in.battery);
    });
}

// A session that came with it goes with it, unless somebody has written into it since: another
// station, another window.
void EntryEdit::takeBack() {
    log().together([this] {
        const Entered& in = m_entered;
        for (const log::PlacedSet& set : in.sets) {
            if (log().set(set.id) != set)
                refuseChangedElsewhere();
            log().remove(set.id);
        }
        if (in.battery != in.batteryBefore) {
            if (log().battery(in.session) != in.battery)
                refuseChangedElsewhere();
            log().setBattery(in.session, in.batteryBefore);
        }
        if (in.lift && in.conditions != in.conditionsBefore &&
            log().sets(in.session, *in.lift).empty())
            log().setConditions(in.session, *in.lift, in.conditionsBefore);
        if (in.made && isBare(log(), in.session))
            log().remove(in.session);
    });
}

Entered enter(log::Log& log, Entry entry) {
    Entered in;
    in.lift = entry.lift;
    log.together([&] {
        if (entry.session) {
            in.session = *entry.session;
        } else {
            in.session = log.add(entry.head);
            in.made = log.session(in.session).head.value;
        }
        if (entry.lift) {
            in.conditionsBefore = log.conditions(in.session, *entry.lift);
            in.conditions = in.conditionsBefore;
            if (entry.conditions && !entry.sets.empty() &&
                *entry.conditions != in.conditionsBefore) {
                log.setConditions(in.session, *entry.lift, *entry.conditions);
                in.conditions = *entry.conditions;
            }
            for (const Set& set : entry.sets)
                in.sets.push_back(log.set(log.add(in.session, *entry.lift, set)));
        }
        in.batteryBefore = log.battery(in.session);
        if (entry.battery) {
            Battery now = in.batteryBefore;
            entry.battery(now);
            log.setBattery(in.session, now);
        }
        in.battery = log.battery(in.session);
    });
    return in;
}

} // namespace slopebook::ui
