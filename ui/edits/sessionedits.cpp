// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/sessionedits.h"

#include "ui/words/format.h"

#include <QCoreApplication>

namespace slopebook::ui {

namespace {
void putSessionBack(log::Log& log, const log::SessionRecord& record) {
    log.together([&] {
        log.add(record.head.value, record.head.id);
        for (const LiftConditions& one : record.conditions)
            log.setConditions(record.head.id, one.lift, one.conditions);
        for (const log::PlacedSet& set : record.sets)
            log.add(set.session, set.lift, set.set, set.ordinal, set.id);
        if (!record.battery.empty())
            log.setBattery(record.head.id, record.battery);
    });
}

log::SessionRecord takeSessionOut(log::Log& log, SessionId id) {
    log::SessionRecord record = log.session(id);
    log.remove(id);
    return record;
}
} // namespace

QString AddSessionEdit::object(LoadUnit /*unit*/) const {
    return dateText(m_record.head.value.date);
}

QString RemoveSessionEdit::object(LoadUnit /*unit*/) const {
    return dateText(m_record.head.value.date);
}

AddSessionEdit::AddSessionEdit(EditHost& host, log::SessionRecord added)
    : Edit(host, QCoreApplication::translate("Edit", "add session")), m_record(std::move(added)) {}

void AddSessionEdit::apply() {
    putSessionBack(log(), m_record);
}

void AddSessionEdit::takeBack() {
    m_record = takeSessionOut(log(), m_record.head.id);
}

RemoveSessionEdit::RemoveSessionEdit(EditHost& host, log::SessionRecord removed)
    : Edit(host, QCoreApplication::translate("Edit", "remove session")),
      m_record(std::move(removed)) {}

void RemoveSessionEdit::apply() {
    m_record = takeSessionOut(log(), m_record.head.id);
}

void RemoveSessionEdit::takeBack() {
    putSessionBack(log(), m_record);
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
