// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/sessionbar.h"

#include "core/model/errors.h"
#include "ui/parts/dayedit.h"
#include "ui/parts/fingers.h"
#include "ui/parts/roomfor.h"
#include "ui/records/devicesdialog.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>
#include <array>

namespace slopebook::ui {

namespace {
// The longest break within one session: what was lifted before midnight and after it with no more
// between is one session, of the day that it began on.
constexpr std::chrono::hours longestBreak{2};

QLabel* addLabelled(QHBoxLayout* row, const QString& label, QWidget* field, int stretch) {
    auto* caption = new QLabel(label);
    caption->setBuddy(field);
    QString name = label;
    field->setAccessibleName(name.remove(QLatin1Char('&')));
    field->setMinimumHeight(fingerSize);
    row->addWidget(caption);
    row->addWidget(field, stretch);
    return caption;
}
} // namespace

SessionBar::SessionBar(Logbook& logbook, Clock clock, QWidget* parent)
    : QWidget(parent), m_logbook(logbook), m_clock(std::move(clock)) {
    build();
    connectFields();
    setAthlete(std::nullopt);
}

void SessionBar::build() {
    m_sessions = new QComboBox;
    m_sessions->setObjectName(QStringLiteral("sessions"));
    m_sessions->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_sessions->setMinimumContentsLength(10); // a day, whole
    m_date = new DayEdit(m_clock.today());
    m_device = new QComboBox;
    m_device->setObjectName(QStringLiteral("device"));
    m_device->setMinimumContentsLength(9);
    m_place = new QLineEdit;
    m_place->setMinimumWidth(leastPlace);
    m_place->setObjectName(QStringLiteral("sessionPlace"));
    m_bodyMass = new QLineEdit;
    m_bodyMass->setObjectName(QStringLiteral("bodyMass"));
    m_bodyMass->setFixedWidth(
        m_bodyMass->fontMetrics().horizontalAdvance(QStringLiteral("100.00")) + 18);
    m_start = new QPushButton(tr("Sta&rt"));
    m_start->setObjectName(QStringLiteral("startSession"));
    m_start->setToolTip(tr("Start this session (Enter in the last field does the same)"));
    m_details = new QPushButton(tr("Detail&s…"));
    m_details->setToolTip(tr("Repeat test, note and the rest of this session"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4); // a place is read whole
    m_sessionCaption = addLabelled(row, tr("Sessi&on"), m_sessions, 1);
    m_dateCaption = addLabelled(row, tr("Da&te"), m_date, 0);
    m_deviceCaption = addLabelled(row, tr("&Device"), m_device, 2);
    addLabelled(row, tr("&Place"), m_place, 3);
    const QString unit = unitName(m_logbook.loadUnit());
    addLabelled(row, tr("&Body, %1").arg(unit), m_bodyMass, 0);
    m_bodyMass->setAccessibleName(tr("Body mass, %1").arg(unit));
    m_bodyMass->setToolTip(m_bodyMass->accessibleName());
    for (QPushButton* button : {m_start, m_details}) {
        button->setMinimumHeight(fingerSize);
        row->addWidget(button);
    }
}

void SessionBar::connectFields() {
    connect(m_sessions, &QComboBox::activated, this, &SessionBar::chosen);
    connect(m_device, &QComboBox::activated, this, [this] {
        if (m_device->currentData() == addDeviceItem && !addDevice())
            return;
        m_lastDevice = m_device->currentData();
        saveDevice();
    });
    connect(m_date, &QDateEdit::editingFinished, this, &SessionBar::saveDate);
    connect(m_date, &DayEdit::refused, this, [this](const QString& why) {
        if (m_session) // its day is the one that stands in the log
            m_date->takeBack();
        Q_EMIT problem(why);
    });
    connect(m_place, &QLineEdit::editingFinished, this, &SessionBar::savePlace);
    connect(m_bodyMass, &QLineEdit::editingFinished, this, &SessionBar::saveBodyMass);
    connect(m_start, &QPushButton::clicked, this, &SessionBar::start);
    connect(m_details, &QPushButton::clicked, this, &SessionBar::detailsWanted);
    for (QWidget* field : std::array<QWidget*, 4>{m_date, m_device, m_place, m_bodyMass})
        field->installEventFilter(this);
}

bool SessionBar::eventFilter(QObject* field, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(field, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Return && key != Qt::Key_Enter)
        return QWidget::eventFilter(field, event);
    goOn(field);
    return true;
}

void SessionBar::goOn(QObject* from) {
    if (from == m_date && !m_date->take()) {
        Q_EMIT problem(m_date->problem());
        m_date->selectAll();
        return;
    }
    const std::array<QWidget*, 4> order{m_date, m_device, m_place, m_bodyMass};
    const auto at = std::find(order.begin(), order.end(), from);
    if (at + 1 != order.end()) {
        (*(at + 1))->setFocus(Qt::TabFocusReason);
        return;
    }
    if (!m_session) {
        start();
        return;
    }
    saveBodyMass();
    Q_EMIT started();
}

void SessionBar::setAthlete(std::optional<AthleteId> athlete) {
    m_athlete = athlete;
    setEnabled(athlete.has_value());
    fillDevices();
    setSession(sessionToGoOn());
    m_asTodays = m_session.has_value();
}

/// The latest of today, else the one that was begun before midnight and is being lifted.
std::optional<SessionId> SessionBar::sessionToGoOn() const {
    std::optional<SessionId> latest, lifted;
    if (m_athlete)
        for (const auto& session : m_logbook.log().sessions(*m_athlete)) {
            if (session.value.date == m_clock.today())
                latest = session.id;
            if (isBeingLifted(session.id))
                lifted = session.id;
        }
    return latest ? latest : lifted;
}

bool SessionBar::isBeingLifted(SessionId session) const {
    const auto last = m_lifted.find(session);
    return last != m_lifted.end() && m_clock.seconds() - last->second < longestBreak;
}

void SessionBar::setTaken() {
    if (m_session && m_asTodays)
        m_lifted[*m_session] = m_clock.seconds();
}

void SessionBar::lookAtTheDay() {
    const Date today = m_clock.today();
    if (!m_athlete || today == m_shownDay)
        return;
    const Date before = m_shownDay;
    if (!m_session) {
        if (m_date->isTyping() || modelDate(m_date->date()) != before)
            return; // the coach's own day
        m_filling = true;
        m_date->setDate(qtDate(today));
        m_filling = false;
        m_shownDay = today;
        Q_EMIT dayTurned(tr("A new day: the session is dated %1.").arg(dateText(today)));
        return;
    }
    if (!m_asTodays || isBeingLifted(*m_session))
        return;
    saveFields();
    setSession(sessionToGoOn());
    m_asTodays = m_session.has_value();
    Q_EMIT dayTurned(m_session
                         ? tr("A new day: the session of %1 is shown.").arg(dateText(today))
                         : tr("A new day: the next set begins a session of %1. The session of %2 "
                              "stands in the list.")
                               .arg(dateText(today), dateText(before)));
}

void SessionBar::reload(std::optional<SessionId> wanted) {
    const auto before = m_session;
    const Date dayBefore = m_shownDay;
    if (!m_session)
        m_session = wanted;
    fillDevices();
    fillSessions();
    if (m_session)
        showHead(m_logbook.log().session(*m_session).head.value, m_session == before);
    else if (before)
        showNew();
    if (m_session != before || m_shownDay != dayBefore)
        m_asTodays = m_session && m_shownDay == m_clock.today();
    fitButtons();
    if (before != m_session)
        Q_EMIT sessionChanged();
}

void SessionBar::setSession(std::optional<SessionId> session) {
    const auto before = m_session;
    m_session = session;
    fillSessions();
    if (m_session)
        showHead(m_logbook.log().session(*m_session).head.value);
    else
        showNew();
    m_asTodays = m_session && m_shownDay == m_clock.today();
    fitButtons();
    if (before != m_session)
        Q_EMIT sessionChanged();
}

void SessionBar::fitButtons() {
    m_start->setVisible(!m_session);
    m_details->setVisible(m_session.has_value());
    fitPlace();
}

void SessionBar::fillSessions() {
    const QSignalBlocker quiet(m_sessions);
    m_sessions->clear();
    m_sessions->addItem(tr("New session"));
    auto sessions = m_athlete ? m_logbook.log().sessions(*m_athlete)
                              : std::vector<Stored<SessionId, SessionHead>>{};
    std::reverse(sessions.begin(), sessions.end());
    bool found = false;
    for (const auto& session : sessions) {
        QString label = dateText(session.value.date);
        if (session.value.ordinal > 1)
            label += QStringLiteral(" #%1").arg(session.value.ordinal);
        m_sessions->addItem(label, qint64(raw(session.id)));
        if (m_session != session.id)
            continue;
        found = true;
        m_sessions->setCurrentIndex(m_sessions->count() - 1);
    }
    if (!found)
        m_session.reset();
}

void SessionBar::fillDevices() {
    const QSignalBlocker quiet(m_device);
    const QVariant kept = m_device->currentData();
    m_device->clear();
    m_device->addItem(tr("not noted"));
    for (const auto& device : m_logbook.log().devices())
        m_device->addItem(text(device.value.name), qint64(raw(device.id)));
    m_device->addItem(tr("Add device…"), addDeviceItem);
    m_device->setCurrentIndex(std::max(0, kept.isValid() ? m_device->findData(kept) : 0));
}

void SessionBar::setLift(std::optional<LiftId> lift) {
    if (m_lift == lift)
        return;
    m_lift = lift;
    if (m_session)
        showHead(m_logbook.log().session(*m_session).head.value);
    else if (m_athlete && m_device->currentData() == m_offeredDevice && !m_place->isModified())
        offer(lastConditions(m_logbook.log().sessions(*m_athlete))); // not the coach's own choice
}

/// What the log has of the lift that is shown; for one that the session does not hold yet, as an
/// offer, the place of another and the device that the lift was last measured with.
void SessionBar::showHead(const SessionHead& head, bool sameSession) {
    Conditions shown;
    if (m_session && m_lift) {
        const auto record = m_logbook.log().session(*m_session);
        const auto held = std::ranges::find(record.conditions, *m_lift, &LiftConditions::lift);
        const bool lifted =
            std::ranges::find(record.sets, *m_lift, &log::PlacedSet::lift) != record.sets.end();
        if (held != record.conditions.end())
            shown = held->conditions;
        else if (!lifted) {
            const auto before = lastOfLift();
            if (!record.conditions.empty())
                shown = record.conditions.back().conditions;
            else if (before)
                shown = *before;
            if (before)
                shown.device = before->device;
        }
    }
    showHead(head, shown, sameSession);
}

// sameSession: the field that the coach is just typing in keeps what stands there.
void SessionBar::showHead(const SessionHead& head, const Conditions& conditions, bool sameSession) {
    m_filling = true;
    m_shownDay = head.date;
    if (!sameSession || !m_date->isTyping()) {
        m_date->setDate(qtDate(head.date));
        m_date->takeBack();
    }
    const auto isTyped = [sameSession](const QLineEdit& field) {
        return sameSession && field.hasFocus() && field.isModified();
    };
    offer(conditions, isTyped(*m_place));
    if (!isTyped(*m_bodyMass))
        m_bodyMass->setText(head.bodyMass ? massText(*head.bodyMass, m_logbook.loadUnit())
                                          : QString());
    setHint(*m_bodyMass, QString());
    m_filling = false;
}

void SessionBar::showNew() {
    SessionHead head;
    head.date = m_clock.today();
    std::optional<Mass> lastMass;
    const auto sessions = m_athlete ? m_logbook.log().sessions(*m_athlete)
                                    : std::vector<Stored<SessionId, SessionHead>>{};
    for (const auto& session : sessions)
        if (session.value.bodyMass)
            lastMass = session.value.bodyMass;
    showHead(head, lastConditions(sessions), false);
    setHint(*m_bodyMass, lastMass ? massText(*lastMass, m_logbook.loadUnit()) : QString());
}

std::optional<SessionId> SessionBar::start() {
    if (!m_athlete)
        return std::nullopt;
    lookAtTheDay();
    if (!m_date->take()) {
        Q_EMIT problem(m_date->problem());
        return std::nullopt;
    }
    try {
        std::vector<LiftConditions> conditions;
        if (m_lift && typedConditions() != Conditions{})
            conditions.push_back({.lift = *m_lift, .conditions = typedConditions()});
        const SessionId made = m_logbook.addSession(newHead(), conditions);
        if (m_session != made) // the edit has shown it already
            setSession(made);
        m_asTodays = m_shownDay == m_clock.today();
        setTaken();
        Q_EMIT started();
        return made;
    } catch (const std::exception& error) {
        Q_EMIT problem(said(error));
        return std::nullopt;
    }
}

/// False where none was added: the device is as it was.
bool SessionBar::addDevice() {
    DeviceDialog dialog(m_logbook, std::nullopt, this);
    const bool added = dialog.exec() == QDialog::Accepted;
    fillDevices();
    const QVariant device = added ? qint64(raw(dialog.id())) : m_lastDevice;
    m_device->setCurrentIndex(std::max(0, device.isValid() ? m_device->findData(device) : 0));
    return added;
}

void SessionBar::chosen(int index) {
    const QVariant session = m_sessions->itemData(index);
    if (session.isValid())
        setSession(SessionId{session.toLongLong()});
    else
        beginNew();
}

void SessionBar::beginNew() {
    setSession(std::nullopt);
    m_date->setFocus(Qt::TabFocusReason);
}

} // namespace slopebook::ui
