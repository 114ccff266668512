// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/sessiondialog.h"

#include "core/log/history.h"
#include "ui/edits/valueedits.h"
#include "ui/parts/dayedit.h"
#include "ui/records/sessionchange.h"
#include "ui/words/format.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>

#include <algorithm>
#include <cstdlib>

namespace slopebook::ui {

SessionDialog::SessionDialog(Logbook& logbook, SessionId id, QWidget* parent,
                             std::optional<LiftId> lift)
    : FormDialog(logbook, tr("Session details"), parent), m_id(id),
      m_head(logbook.log().session(id).head.value), m_lift(lift) {
    m_date = new DayEdit(m_head.date);
    addField(tr("Da&te"), m_date);
    if (m_lift)
        buildConditions();
    m_bodyMass = addLine(tr("&Body mass, %1").arg(unit()), shown(m_head.bodyMass));
    buildRepeatOf();
    m_note = addLine(tr("N&ote"), text(m_head.note),
                     tr("What may matter later: surface, footwear, sleep, soreness."));
    finish();
}

void SessionDialog::buildConditions() {
    m_conditions = logbook().log().conditions(m_id, *m_lift);
    m_device = new QComboBox;
    m_device->addItem(tr("not noted"));
    for (const auto& device : logbook().log().devices()) {
        m_device->addItem(text(device.value.name), qint64(raw(device.id)));
        if (m_conditions.device == device.id)
            m_device->setCurrentIndex(m_device->count() - 1);
    }
    addField(tr("&Device"), m_device);
    const auto add = [this](std::string Conditions::*part, const QString& label,
                            const QString& hint = {}) {
        m_conditionFields.emplace_back(addLine(label, text(m_conditions.*part), hint), part);
    };
    add(&Conditions::place, tr("&Place"));
    add(&Conditions::surface, tr("&Surface"));
    add(&Conditions::footwear, tr("&Footwear"));
    add(&Conditions::technique, tr("Techni&que"));
    add(&Conditions::notComparable, tr("Not compara&ble, because"),
        tr("With a reason here, no day of %1 is read against this one.").arg(liftName()));
}

void SessionDialog::buildRepeatOf() {
    m_others = logbook().log().sessions(m_head.athlete);
    std::erase_if(m_others, [this](const auto& session) { return session.id == m_id; });
    m_repeatOf = new QComboBox;
    m_repeatOf->setObjectName(QStringLiteral("repeatOf"));
    m_repeatDays = new QSpinBox;
    m_repeatDays->setObjectName(QStringLiteral("repeatDays"));
    m_repeatDays->setRange(1, 60);
    m_repeatDays->setSuffix(tr(" days"));
    m_repeatDays->setValue(logbook().repeatDays());
    addField(
        tr("&Repeat test of"), m_repeatOf,
        tr("Same conditions within a few days and no training effect expected: such pairs tell "
           "the noise of the test."));
    addField(tr("Repeat tests &within"), m_repeatDays);
    connect(m_repeatDays, &QSpinBox::valueChanged, this, &SessionDialog::fillRepeatOf);
    connect(m_date, &QDateEdit::dateChanged, this, &SessionDialog::fillRepeatOf);
    fillRepeatOf();
    if (m_head.repeatOf)
        m_repeatOf->setCurrentIndex(
            std::max(0, m_repeatOf->findData(qint64(raw(*m_head.repeatOf)))));
}

// Only what lies within the days is offered, the nearest first, and what is marked already.
void SessionDialog::fillRepeatOf() {
    const QVariant kept = m_repeatOf->currentData();
    const Date day = modelDate(m_date->date());
    std::ranges::stable_sort(m_others, {}, [day](const auto& session) {
        return std::abs(daysBetween(session.value.date, day));
    });
    m_repeatOf->clear();
    m_repeatOf->addItem(tr("no"));
    for (const auto& session : m_others) {
        const long days = std::abs(daysBetween(session.value.date, day));
        if (days > m_repeatDays->value() && m_head.repeatOf != session.id)
            continue;
        QString label = dateText(session.value.date);
        if (session.value.ordinal > 1)
            label += QStringLiteral(" #%1").arg(session.value.ordinal);
        m_repeatOf->addItem(tr("%1 (%n day(s) apart)", nullptr, static_cast<int>(days)).arg(label),
                            qint64(raw(session.id)));
    }
    m_repeatOf->setCurrentIndex(kept.isValid() ? std::max(0, m_repeatOf->findData(kept)) : 0);
}

/// The chosen first test, or none. Throws FieldProblem where too many days lie between.
std::optional<SessionId> SessionDialog::repeatOf(Date day) const {
    const QVariant chosen = m_repeatOf->currentData();
    if (!chosen.isValid())
        return std::nullopt;
    const SessionId first{chosen.toLongLong()};
    const auto found = std::ranges::find(m_others, first, &Stored<SessionId, SessionHead>::id);
    const long days = std::abs(daysBetween(found->value.date, day));
    if (days > m_repeatDays->value())
        throw FieldProblem{m_repeatOf,
                           tr("Expected a test within %n day(s): this one is %1 days away.",
                              nullptr, m_repeatDays->value())
                               .arg(days)};
    return first;
}

void SessionDialog::save() {
    SessionHead head = m_head;
    head.date = modelDate(m_date->date());
    if (head.date != m_head.date)
        head.ordinal = nextOrdinal(logbook().log(), head.athlete, head.date);
    head.bodyMass =
        mass(m_bodyMass, tr("Expected a body mass in %1, such as 74.5, or nothing.").arg(unit()));
    head.repeatOf = repeatOf(head.date);
    head.note = utf8(m_note->text().trimmed());
    if (const QString question = changeQuestion(logbook().log(), m_id, head);
        !question.isEmpty() && !isSure(question, this))
        throw FieldProblem{m_date, tr("Nothing was changed.")};
    logbook().setRepeatDays(m_repeatDays->value());
    // What was not changed here may have been elsewhere since.
    SessionHead now = logbook().log().session(m_id).head.value;
    const auto take = [&](auto SessionHead::*field) {
        if (head.*field != m_head.*field)
            now.*field = head.*field;
    };
    take(&SessionHead::date);
    take(&SessionHead::ordinal);
    take(&SessionHead::bodyMass);
    take(&SessionHead::repeatOf);
    take(&SessionHead::note);
    logbook().changeSession(m_id, now, conditions());
}

QString SessionDialog::liftName() const {
    return text(stored(logbook().log(), *m_lift).name);
}

/// The lift's conditions with what was changed here; nothing without a lift.
std::optional<LiftConditions> SessionDialog::conditions() const {
    if (!m_lift)
        return std::nullopt;
    LiftConditions now{.lift = *m_lift, .conditions = logbook().log().conditions(m_id, *m_lift)};
    const QVariant chosen = m_device->currentData();
    const auto device =
        chosen.isValid() ? std::optional(DeviceId{chosen.toLongLong()}) : std::nullopt;
    if (device != m_conditions.device)
        now.conditions.device = device;
    for (const auto& [field, part] : m_conditionFields)
        if (const std::string typed = utf8(field->text().trimmed()); typed != m_conditions.*part)
            now.conditions.*part = typed;
    return now;
}

int nextOrdinal(const log::Log& log, AthleteId athlete, Date date) {
    return log::freeOrdinal(log, athlete, date);
}

} // namespace slopebook::ui
