// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/sessionedits.h"

#include "ui/words/format.h"

#include <QCoreApplication>

namespace slopebook::ui {

namespace {
void putSessionBack(log::Log& log, const log::SessionRecord& record) {
    log.together([&] {
        log.add(record.head.value, record.head.id);
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

ChangeSessionEdit::ChangeSessionEdit(EditHost& host, SessionId id, SessionHead before,
                                     SessionHead after)
    : Edit(host, QCoreApplication::translate("Edit", "change session")), m_id(id),
      m_before(std::move(before)), m_after(std::move(after)) {}

void ChangeSessionEdit::turn(const SessionHead& from, const SessionHead& to) {
    if (log().session(m_id).head.value != from)
        refuseChangedElsewhere();
    log().change(m_id, to);
}

} // namespace slopebook::ui
