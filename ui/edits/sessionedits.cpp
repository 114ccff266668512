// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/sessionedits.h"

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
