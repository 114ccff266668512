// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/sessionedits.h"

#include "core/log/splitdays.h"
#include "ui/words/format.h"

#include <QCoreApplication>

namespace slopebook::ui {

WholeSessionEdit::WholeSessionEdit(EditHost& host, const QString& text, log::SessionRecord record)
    : Edit(host, text), m_record(std::move(record)) {}

QString WholeSessionEdit::object(LoadUnit /*unit*/) const {
    return dateText(m_record.head.value.date);
}

void WholeSessionEdit::putBack() {
    log().together([this] {
        log().add(m_record.head.value, m_record.head.id);
        for (const LiftConditions& one : m_record.conditions)
            log().setConditions(m_record.head.id, one.lift, one.conditions);
        for (const log::PlacedSet& set : m_record.sets)
            log().add(set.session, set.lift, set.set, set.ordinal, set.id);
        if (!m_record.battery.empty())
            log().setBattery(m_record.head.id, m_record.battery);
    });
}

void WholeSessionEdit::takeOut() {
    log::SessionRecord record = log().session(m_record.head.id);
    log().remove(m_record.head.id);
    m_record = std::move(record);
}

AddSessionEdit::AddSessionEdit(EditHost& host, log::SessionRecord added)
    : WholeSessionEdit(host, QCoreApplication::translate("Edit", "add session"), std::move(added)) {
}

RemoveSessionEdit::RemoveSessionEdit(EditHost& host, log::SessionRecord removed)
    : WholeSessionEdit(host, QCoreApplication::translate("Edit", "remove session"),
                       std::move(removed)) {}

JoinSessionsEdit::JoinSessionsEdit(EditHost& host, Records records)
    : Edit(host, QCoreApplication::translate("Edit", "join sessions")), m_was(std::move(records)) {}

// Compared and written in one transaction: what another window puts in between would be taken away.
void JoinSessionsEdit::apply() {
    const SessionId into = m_was.into.head.id;
    const SessionId from = m_was.from.head.id;
    log().together([&] {
        if (log().session(into) != m_was.into || log().session(from) != m_was.from)
            refuseChangedElsewhere();
        log::joinSessions(log(), {.into = into, .from = from});
    });
}

void JoinSessionsEdit::takeBack() {
    log().together([&] {
        if (log().session(m_was.into.head.id) != m_was.joined)
            refuseChangedElsewhere();
        log::partSessions(log(), m_was.into, m_was.from);
    });
}

void HeadChange::make(log::Log& log, SessionId session) const {
    log.together([&] {
        if (before != after)
            log.change(session, after);
        if (lift && conditionsBefore != conditionsAfter)
            log.setConditions(session, *lift, conditionsAfter);
    });
}

HeadChange HeadChange::reversed() const {
    return {.before = after,
            .after = before,
            .lift = lift,
            .conditionsBefore = conditionsAfter,
            .conditionsAfter = conditionsBefore};
}

ChangeSessionEdit::ChangeSessionEdit(EditHost& host, SessionId id, HeadChange change)
    : Edit(host, QCoreApplication::translate("Edit", "change session")), m_id(id),
      m_change(std::move(change)) {}

void ChangeSessionEdit::turn(const HeadChange& change) {
    if (log().session(m_id).head.value != change.before ||
        (change.lift && log().conditions(m_id, *change.lift) != change.conditionsBefore))
        refuseChangedElsewhere();
    change.make(log(), m_id);
}

} // namespace slopebook::ui
