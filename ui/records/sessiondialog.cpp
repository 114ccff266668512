// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/sessiondialog.h"

#include "ui/records/dateedit.h"
#include "ui/shell/format.h"

#include <QComboBox>
#include <QLineEdit>

#include <algorithm>

namespace slopebook::ui {

SessionDialog::SessionDialog(Logbook& logbook, SessionId id, QWidget* parent)
    : FormDialog(logbook, tr("Session details"), parent), m_id(id),
      m_head(logbook.log().session(id).head.value) {
    m_date = dateEdit(m_head.date);
    addField(tr("&Date"), m_date);
    buildDevice();
    m_place = addLine(tr("&Place"), text(m_head.place));
    m_bodyMass = addLine(tr("&Body mass, %1").arg(unit()), shown(m_head.bodyMass));
    buildRepeatOf();
    m_note = addLine(tr("N&ote"), text(m_head.note),
                     tr("What may matter later: surface, footwear, sleep, soreness."));
    finish();
}

void SessionDialog::buildDevice() {
    m_device = new QComboBox;
    m_device->addItem(tr("not noted"));
    for (const auto& device : logbook().log().devices()) {
        m_device->addItem(text(device.value.name), qint64(raw(device.id)));
        if (m_head.device == device.id)
            m_device->setCurrentIndex(m_device->count() - 1);
    }
    addField(tr("De&vice"), m_device);
}

void SessionDialog::buildRepeatOf() {
    m_repeatOf = new QComboBox;
    m_repeatOf->addItem(tr("no"));
    auto sessions = logbook().log().sessions(m_head.athlete);
    std::reverse(sessions.begin(), sessions.end());
    for (const auto& session : sessions) {
        if (session.id == m_id)
            continue;
        QString label = dateText(session.value.date);
        if (session.value.ordinal > 1)
            label += QStringLiteral(" #%1").arg(session.value.ordinal);
        m_repeatOf->addItem(label, qint64(raw(session.id)));
        if (m_head.repeatOf == session.id)
            m_repeatOf->setCurrentIndex(m_repeatOf->count() - 1);
    }
    addField(
        tr("&Repeat test of"), m_repeatOf,
        tr("Same conditions within a few days and no training effect expected: such pairs tell "
           "the noise of the test."));
}

void SessionDialog::save() {
    SessionHead head = m_head;
    head.date = modelDate(m_date->date());
    if (head.date != m_head.date)
        head.ordinal = nextOrdinal(logbook().log(), head.athlete, head.date);
    const QVariant device = m_device->currentData();
    head.device = device.isValid() ? std::optional(DeviceId{device.toLongLong()}) : std::nullopt;
    head.place = utf8(m_place->text().trimmed());
    head.bodyMass =
        mass(m_bodyMass, tr("Expected a body mass in %1, such as 74.5, or nothing.").arg(unit()));
    const QVariant repeat = m_repeatOf->currentData();
    head.repeatOf = repeat.isValid() ? std::optional(SessionId{repeat.toLongLong()}) : std::nullopt;
    head.note = utf8(m_note->text().trimmed());
    logbook().changeSession(m_id, head);
}

int nextOrdinal(const log::Log& log, AthleteId athlete, Date date) {
    int last = 0;
    for (const auto& session : log.sessions(athlete))
        if (session.value.date == date)
            last = std::max(last, session.value.ordinal);
    return last + 1;
}

} // namespace slopebook::ui
