// SPDX-License-Identifier: GPL-3.0-or-later
// All details of a session that stands in the log.
#pragma once

#include "ui/parts/formdialog.h"

class QComboBox;
class QDateEdit;
class QSpinBox;

namespace slopebook::ui {

class SessionDialog final : public FormDialog {
    Q_OBJECT
public:
    /// lift: the one whose conditions are shown too.
    SessionDialog(Logbook& logbook, SessionId id, QWidget* parent, std::optional<LiftId> lift = {});

protected:
    void save() override;

private:
    void buildConditions();
    void buildRepeatOf();
    void fillRepeatOf();
    std::optional<SessionId> repeatOf(Date day) const;
    QString liftName() const;
    std::optional<LiftConditions> conditions() const;

    SessionId m_id;
    SessionHead m_head;
    std::optional<LiftId> m_lift;
    Conditions m_conditions; ///< of the lift
    QDateEdit* m_date;
    QComboBox* m_device = nullptr;
    std::vector<std::pair<QLineEdit*, std::string Conditions::*>> m_conditionFields;
    QLineEdit* m_bodyMass;
    QComboBox* m_repeatOf;
    QSpinBox* m_repeatDays;
    std::vector<Stored<SessionId, SessionHead>> m_others; ///< the athlete's other sessions
    QLineEdit* m_note;
};

/// The number of a new session of that athlete on that day: one more than the day's last.
int nextOrdinal(const log::Log& log, AthleteId athlete, Date date);

} // namespace slopebook::ui
