// SPDX-License-Identifier: GPL-3.0-or-later
// The loads that are followed through the season, of one athlete and lift.
#pragma once

#include "ui/parts/formdialog.h"

namespace slopebook::ui {

class CheckLoadsDialog final : public FormDialog {
    Q_OBJECT
public:
    CheckLoadsDialog(Logbook& logbook, AthleteId athlete, LiftId lift, QWidget* parent);

protected:
    void save() override;

private:
    AthleteId m_athlete;
    LiftId m_lift;
    QLineEdit* m_loads;
};

} // namespace slopebook::ui
