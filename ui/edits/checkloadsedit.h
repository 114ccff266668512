// SPDX-License-Identifier: GPL-3.0-or-later
// The edit of an athlete's check loads of a lift.
#pragma once

#include "ui/edits/edit.h"

namespace slopebook::ui {

class CheckLoadsEdit final : public Edit {
public:
    CheckLoadsEdit(EditHost& host, AthleteId athlete, LiftId lift, std::vector<Mass> before,
                   std::vector<Mass> after);
    Logbook::What what() const override { return Logbook::What::CheckLoads; }
    std::optional<AthleteId> athlete() const override { return m_athlete; }
    std::optional<LiftId> lift() const override { return m_lift; }

protected:
    void apply() override { turn(m_before, m_after); }
    void takeBack() override { turn(m_after, m_before); }

private:
    void turn(const std::vector<Mass>& from, const std::vector<Mass>& to);

    AthleteId m_athlete;
    LiftId m_lift;
    std::vector<Mass> m_before, m_after;
};

} // namespace slopebook::ui
