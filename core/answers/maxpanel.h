// SPDX-License-Identifier: GPL-3.0-or-later
// A session's estimated 1RM as a panel says it: in large type, and what stands under it.
#pragma once

#include "core/answers/profile.h"

#include <vector>

namespace slopebook::answers {

struct MaxPanel {
    /// "Estimated 1RM 83.5 kg (95 % to plan with: 75.1 to 93.6)", without the whole source "95 %,
    /// days and bend"; "Estimated 1RM: no figure".
    Words headline = {};
    std::vector<Words> detail = {}; ///< clauses
    std::vector<Words> brief = {};  ///< the same where there is little room
    bool muted = true;              ///< not to be believed as it stands there
};

/// wholeSource: the whole log was asked, maxima lifted too, and the interval of the line alone is
/// told. In large type a figure is believed: none where
/// the line cannot bound it, or where two loads lie far below it.
MaxPanel maxPanel(const Profile& profile, bool wholeSource);
/// Before there is a line.
Words noSetsYet();
/// Where there is none.
Words noMaxHeadline();

} // namespace slopebook::answers
