// SPDX-License-Identifier: GPL-3.0-or-later
// One row: which session, and what it is. For a new one each Enter goes on, the last one starts it.
#pragma once

#include "ui/edits/logbook.h"
#include "ui/parts/clock.h"

#include <QVariant>
#include <QWidget>

#include <functional>
#include <map>
#include <optional>
#include <span>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace slopebook::ui {

class DayEdit;

class SessionBar final : public QWidget {
    Q_OBJECT
public:
    SessionBar(Logbook& logbook, Clock clock, QWidget* parent = nullptr);
    /// With the place whole, and all gone that may go.
    QSize minimumSizeHint() const override;

    void setAthlete(std::optional<AthleteId> athlete);
    /// The one whose sets are shown.
    void setLift(std::optional<LiftId> lift);
    /// What stands in the fields of device and place, for the lift's first set in the session that
    /// is shown to bring along; nothing where the log has its conditions, or its sets, already.
    std::optional<Conditions> conditionsToNote() const;
    /// Reads sessions and devices afresh; keeps the session that is shown where it still stands,
    /// and what is typed for a new one. wanted: to be shown where none is.
    void reload(std::optional<SessionId> wanted = {});
    std::optional<SessionId> session() const { return m_session; }
    void setSession(std::optional<SessionId> session);
    /// The fields of a new session, focus on the first.
    void beginNew();
    /// Makes the session that stands in the fields; nothing, and the reason below them, where that
    /// cannot be.
    std::optional<SessionId> start();
    /// A set has just been taken into the session that is shown: it is being lifted.
    void setTaken();
    /// To be asked often, and before anything is written: where the day has turned since, what was
    /// shown as today's gives way to the new day (dayTurned). A session begun before midnight stays
    /// while it is being lifted, and what the coach chose or typed stays anyhow.
    void lookAtTheDay();

Q_SIGNALS:
    void sessionChanged();
    void started();
    void detailsWanted();
    void problem(const QString& why);
    /// What a change did to sets, and how it comes back.
    void news(const QString& words);
    /// What is typed next belongs to another day than what was shown; a sentence for the coach.
    void dayTurned(const QString& words);

protected:
    bool eventFilter(QObject* field, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    static constexpr int addDeviceItem = -1; // no device of a log has this key
    static constexpr int leastPlace = 90;    // px, of its field

    void build();
    void connectFields();
    void fillSessions();
    void fillDevices();
    void showHead(const SessionHead& head, bool sameSession = false);
    void showHead(const SessionHead& head, const Conditions& conditions, bool sameSession);
    /// Puts device and place into the fields, as what a set would be noted with.
    void offer(const Conditions& conditions, bool keepPlace = false);
    std::optional<Conditions> lastOfLift() const;
    Conditions lastConditions(std::span<const Stored<SessionId, SessionHead>> sessions) const;
    void showNew();
    void fitButtons();
    /// The place is read whole: where there is no room, what is told twice gives way.
    void fitPlace();
    /// What goes then, if it has to: what it is beside says the same.
    QList<QWidget*> saidTwice() const;
    int breadth(const QWidget& part) const; ///< px, with the air beside it
    int wholePlace() const;                 ///< px, of its field
    SessionHead newHead() const;
    std::optional<DeviceId> chosenDevice() const;
    Conditions typedConditions() const;
    void saveConditions(const std::function<void(Conditions&)>& change,
                        QLineEdit* typedIn = nullptr);
    std::optional<Mass> typedBodyMass() const;
    void saveDate();
    void saveDevice();
    void savePlace();
    void saveBodyMass();
    bool saves() const;
    void save(const std::function<void(SessionHead&)>& change, QLineEdit* typedIn = nullptr);
    void saveFields();
    void ask(SessionId session, const std::function<void(SessionHead&)>& change,
             const QString& question, QLineEdit* typedIn);
    void write(SessionId session, const std::function<void(SessionHead&)>& change,
               QLineEdit* typedIn);
    bool addDevice();
    void chosen(int index);
    void goOn(QObject* from);
    std::optional<SessionId> sessionToGoOn() const;
    bool isBeingLifted(SessionId session) const;

    Logbook& m_logbook;
    Clock m_clock;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    std::optional<SessionId> m_session;
    std::map<SessionId, std::chrono::sys_seconds> m_lifted; ///< when a set of each was taken last
    Date m_shownDay{};        ///< of the session that is shown, or as a new one was offered it
    bool m_asTodays = false;  ///< the session is shown because it was that day's
    QVariant m_lastDevice;    ///< that was chosen or shown; invalid: not noted
    QVariant m_offeredDevice; ///< as the fields were filled, before the coach chose
    bool m_filling = false;
    bool m_asking = false; ///< a question is to be answered, or on its way
    QComboBox* m_sessions;
    DayEdit* m_date;
    bool m_isFitting = false;
    QLabel *m_sessionCaption, *m_dateCaption, *m_deviceCaption;
    QComboBox* m_device;
    QLineEdit* m_place;
    QLineEdit* m_bodyMass;
    QPushButton* m_start;
    QPushButton* m_details;
};

} // namespace slopebook::ui
