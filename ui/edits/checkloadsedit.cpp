// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/checkloadsedit.h"

#include <QCoreApplication>

namespace slopebook::ui {

CheckLoadsEdit::CheckLoadsEdit(EditHost& host, AthleteId athlete, LiftId lift,
                               std::vector<Mass> before, std::vector<Mass> after)
    : Edit(host, QCoreApplication::translate("Edit", "set check loads")), m_athlete(athlete),
      m_lift(lift), m_before(std::move(before)), m_after(std::move(after)) {}

void CheckLoadsEdit::turn(const std::vector<Mass>& from, const std::vector<Mass>& to) {
    if (log().checkLoads(m_athlete, m_lift) != from)
        refuseChangedElsewhere();
    log().setCheckLoads(m_athlete, m_lift, to);
}

} // namespace slopebook::ui
