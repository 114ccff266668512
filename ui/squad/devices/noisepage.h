// SPDX-License-Identifier: GPL-3.0-or-later
// How far the numbers can be trusted: noise from repeat tests, and agreement of devices.
#pragma once

#include "ui/parts/taskpage.h"

class QBoxLayout;

namespace slopebook::ui {

class AgreementView;
class NoiseView;

class NoisePage final : public TaskPage {
    Q_OBJECT
public:
    explicit NoisePage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }
    NoiseView& noise() { return *m_noise; }
    AgreementView& agreement() { return *m_agreement; }

private:
    QBoxLayout* m_strip;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    NoiseView* m_noise;
    AgreementView* m_agreement;
};

} // namespace slopebook::ui
