// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed in the session row: read, asked about where much would change, and saved.
#include "core/model/errors.h"
#include "ui/floor/entry/sessionbar.h"
#include "ui/floor/entry/setwords.h"
#include "ui/parts/dayedit.h"
#include "ui/records/sessionchange.h"
#include "ui/records/sessiondialog.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QLineEdit>

#include <algorithm>

namespace slopebook::ui {

std::optional<DeviceId> SessionBar::chosenDevice() const {
    const QVariant device = m_device->currentData();
    return device.isValid() && device != addDeviceItem
               ? std::optional(DeviceId{device.toLongLong()})
               : std::nullopt;
}

std::optional<Mass> SessionBar::typedBodyMass() const {
    const QString typed = m_bodyMass->text().trimmed();
    if (typed.isEmpty())
        return std::nullopt;
    const auto mass = readLoad(view(typed), massUnit(m_logbook.loadUnit()));
    if (!std::holds_alternative<Mass>(mass) || std::get<Mass>(mass).grams == 0) {
        throw BadInput(
            asIs(utf8(tr("a body mass of %1").arg(typed))),
            asIs(utf8(tr("%1, such as 74.5, or nothing").arg(unitName(m_logbook.loadUnit())))));
    }
    return std::get<Mass>(mass);
}

SessionHead SessionBar::newHead() const {
    SessionHead head;
    head.athlete = *m_athlete;
    head.date = modelDate(m_date->date());
    head.ordinal = nextOrdinal(m_logbook.log(), *m_athlete, head.date);
    head.bodyMass = typedBodyMass();
    return head;
}

Conditions SessionBar::typedConditions() const {
    return {.device = chosenDevice(), .place = utf8(m_place->text().trimmed())};
}

std::optional<Conditions> SessionBar::conditionsToNote() const {
    if (!m_session || !m_lift)
        return std::nullopt;
    const auto record = m_logbook.log().session(*m_session);
    const Conditions typed = typedConditions();
    if (typed == Conditions{} ||
        std::ranges::find(record.conditions, *m_lift, &LiftConditions::lift) !=
            record.conditions.end() ||
        std::ranges::find(record.sets, *m_lift, &log::PlacedSet::lift) != record.sets.end())
        return std::nullopt;
    return typed;
}

bool SessionBar::saves() const {
    return !m_filling && !m_asking && m_session && m_athlete;
}

// Each field is saved alone, and only where the coach changed it: what it shows may have been
// changed elsewhere meanwhile.
void SessionBar::save(const std::function<void(SessionHead&)>& change, QLineEdit* typedIn) {
    if (!saves())
        return;
    try {
        SessionHead now = m_logbook.log().session(*m_session).head.value;
        change(now);
        const QString question = changeQuestion(m_logbook.log(), *m_session, now);
        if (question.isEmpty()) {
            write(*m_session, change, typedIn);
            return;
        }
        // Not before the key or click that left the field has done what it does.
        m_asking = true;
        QMetaObject::invokeMethod(
            this,
            [this, session = *m_session, change, question, typedIn] {
                ask(session, change, question, typedIn);
            },
            Qt::QueuedConnection);
    } catch (const std::exception& error) {
        Q_EMIT problem(said(error));
    }
}

void SessionBar::ask(SessionId session, const std::function<void(SessionHead&)>& change,
                     const QString& question, QLineEdit* typedIn) {
    const bool sure = isSure(question, this);
    m_asking = false;
    try {
        if (sure)
            write(session, change, typedIn);
        else if (m_session == session)
            showHead(m_logbook.log().session(session).head.value);
    } catch (const std::exception& error) {
        Q_EMIT problem(said(error));
    }
}

void SessionBar::write(SessionId session, const std::function<void(SessionHead&)>& change,
                       QLineEdit* typedIn) {
    const SessionHead before = m_logbook.log().session(session).head.value;
    SessionHead now = before;
    change(now);
    // What was typed is the log's from now on: left as the coach's own, it would outlive an undo
    // and be written again.
    if (typedIn)
        typedIn->setModified(false);
    try {
        m_logbook.changeSession(session, now);
    } catch (...) {
        if (typedIn)
            typedIn->setModified(true);
        throw;
    }
    if (const QString told = changeNews(m_logbook.log(), session, before, now); !told.isEmpty())
        Q_EMIT news(told);
}

void SessionBar::saveDate() {
    const Date typed = modelDate(m_date->date());
    if (typed == m_shownDay)
        return;
    save([this, typed](SessionHead& head) {
        if (typed != head.date)
            head.ordinal = nextOrdinal(m_logbook.log(), head.athlete, typed);
        head.date = typed;
    });
}

// As save(), of the lift that is shown.
void SessionBar::saveConditions(const std::function<void(Conditions&)>& change,
                                QLineEdit* typedIn) {
    if (!saves())
        return;
    if (!m_lift) {
        Q_EMIT problem(tr("Choose a lift first: device and place are written down with it."));
        return;
    }
    // Where the session has neither sets nor conditions of it, all that is shown is the coach's.
    const Conditions before = m_logbook.log().conditions(*m_session, *m_lift);
    Conditions now = conditionsToNote().value_or(before);
    change(now);
    try {
        if (typedIn)
            typedIn->setModified(false);
        m_logbook.setConditions(*m_session, *m_lift, now);
        if (const QString told = deviceNews(m_logbook.log(), *m_session, *m_lift, before, now);
            !told.isEmpty())
            Q_EMIT news(told);
    } catch (const std::exception& error) {
        if (typedIn)
            typedIn->setModified(true);
        Q_EMIT problem(said(error));
    }
}

void SessionBar::saveDevice() {
    saveConditions([device = chosenDevice()](Conditions& now) { now.device = device; });
}

void SessionBar::savePlace() {
    if (!m_place->isModified())
        return;
    const QString place = m_place->text().trimmed();
    if (m_session && place != m_place->text()) { // what is saved is what stands there
        m_place->setText(place);
        m_place->setModified(true);
    }
    saveConditions([place](Conditions& now) { now.place = utf8(place); }, m_place);
}

void SessionBar::saveBodyMass() {
    if (!m_bodyMass->isModified() || !saves())
        return;
    // Read once and now: whenever the change is made, the field may show another session's.
    try {
        save([mass = typedBodyMass()](SessionHead& head) { head.bodyMass = mass; }, m_bodyMass);
    } catch (const BadInput& error) {
        Q_EMIT problem(said(error));
    }
}

/// What is being typed in a field while something else than the coach goes on.
void SessionBar::saveFields() {
    if (m_date->take())
        saveDate();
    savePlace();
    saveBodyMass();
}

void SessionBar::offer(const Conditions& conditions, bool keepPlace) {
    const auto& device = conditions.device;
    m_lastDevice = device ? QVariant(qint64(raw(*device))) : QVariant();
    m_offeredDevice = m_lastDevice;
    m_device->setCurrentIndex(device ? std::max(0, m_device->findData(m_lastDevice)) : 0);
    if (keepPlace)
        return;
    m_place->setText(text(conditions.place));
    if (!m_place->hasFocus())
        m_place->setCursorPosition(0); // its beginning is read
    fitPlace();
}

/// Of the athlete's sessions of the lift the newest that says anything.
std::optional<Conditions> SessionBar::lastOfLift() const {
    std::optional<Conditions> last;
    if (m_athlete && m_lift)
        m_logbook.log().scan({.athlete = m_athlete, .lift = m_lift}, [&](const LiftSession& one) {
            if (one.conditions != Conditions{})
                last = one.conditions;
        });
    return last;
}

/// Of the lift's; of a lift that was never done, of the newest session that says anything.
Conditions
SessionBar::lastConditions(std::span<const Stored<SessionId, SessionHead>> sessions) const {
    if (auto ofLift = lastOfLift())
        return *std::move(ofLift);
    constexpr std::size_t most = 5;
    sessions = sessions.last(std::min(most, sessions.size()));
    for (std::size_t i = sessions.size(); i > 0; --i) {
        const auto held = m_logbook.log().session(sessions[i - 1].id).conditions;
        const auto of = std::ranges::find_if(
            held, [this](const LiftConditions& one) { return one.lift == m_lift; });
        if (of != held.end())
            return of->conditions;
        if (!held.empty())
            return held.back().conditions;
    }
    return {};
}

} // namespace slopebook::ui
