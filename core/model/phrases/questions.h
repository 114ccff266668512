// SPDX-License-Identifier: GPL-3.0-or-later
// What the questions say that commands and windows ask alike (core/questions), and a page on its
// way to a file.
#pragma once

#include "core/model/phrases/translate.h"

#include <array>

namespace slopebook::phrases {

inline constexpr std::array questions{
    translate("Phrases", "The PDF %1 could not be painted. Nothing was changed."),
    translate("Phrases", "The picture %1 could not be painted. Nothing was changed."),
    translate("Phrases", "Both sides are the same: choose two dates or blocks."),
    translate("Phrases", "%1 has no session in %2."),
    translate("Phrases",
              "a lift that sets of %1 belong to: the log is damaged, and the lift is not "
              "in it any more"),
    translate("Phrases",
              "a test that attempts of %1 belong to: the log is damaged, and the test is "
              "not in it any more"),
    translate("Phrases", "the lift was not possible that day (%1)"),
    translate("Phrases", "the lift was not possible that day (%1): %2"),
    translate("Phrases", "a date such as 2026-03-14"),
    translate("Phrases", "a date such as 2026-03-14, or a block: %1"),
    translate("Phrases", "The baseline session does not hold this lift."),
    translate("Phrases", "No session of this lift has a line to start from."),
    translate("Phrases", "a date such as 2026-03-14, or 2026-03-14#2 for the second of that day"),
    translate("Phrases", "No session of this lift is in the log."),
    translate("Phrases", "There is no session on %1. Sessions of this lift: %2."),
    translate("Phrases", "That session does not hold this lift."),
};

} // namespace slopebook::phrases
