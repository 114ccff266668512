// SPDX-License-Identifier: GPL-3.0-or-later
// What the questions say that commands and windows ask alike (core/questions), and a page on its
// way to a file.
#pragma once

#include "core/model/phrases/translate.h"
#include "core/model/words.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view questions[]{
    translate("Phrases", "No session of %1 lies in a training block. Blocks are made under Squad, "
                         "with their first and last day."),
    translate("Phrases", "The PDF %1 could not be painted. Nothing was changed."),
    translate("Phrases", "The picture %1 could not be painted. Nothing was changed."),
    translate("Phrases", "A comparison needs two sessions of this lift with sets that count. The "
                         "log holds %1."),
    translate("Phrases", "Too few sets of two reps to say what more reps would do."),
    translate("Phrases", "No check load is set for this lift: nothing is followed in the squad."),
    translate("Phrases", "%1 has no session of this lift in either."),
    translate("Phrases", "it has been changed by another window since"),
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
    translate("Phrases", "a date such as 2026-03-14, or days such as 2026-03-01..2026-03-14"),
    translate("Phrases",
              "a date such as 2026-03-14, days such as 2026-03-01..2026-03-14, or a block: %1"),
    translate("Phrases", "a day, where other days may stand in for it"),
    translate("Phrases", "A session lies on both sides: choose days or blocks apart."),
    translate("Phrases", "The baseline session does not hold this lift."),
    translate("Phrases", "No session of this lift has a line to start from."),
    translate("Phrases", "a date such as 2026-03-14, or 2026-03-14#2 for the second of that day"),
    translate("Phrases", "No session of this lift is in the log."),
    translate("Phrases", "There is no session on %1. Sessions of this lift: %2."),
    translate("Phrases", "That session does not hold this lift."),
    translate("Phrases", "\"%1\""),
    translate("Phrases", "and %1 more"),
    translate("Phrases", "This log is damaged (%1 found, the first: %2). It is open for reading "
                         "only, and what is damaged is left out. Go back to a backup to go on."),
    translate("Phrases", "That block is not in the log any more."),
    translate("Phrases",
              "both devices measured these same sets, so the change is between the devices, not in "
              "the athlete; too little is known of how the devices agree besides these sessions, "
              "and a bias found in them would hide what they say: nothing is taken off"),
    translate("Phrases", "too little is known of how the devices agree besides these sessions, and "
                         "a bias found in them would hide what they say: nothing is taken off, and "
                         "part of the change may be the devices'"),
    translate("Phrases", "the device's bias comes from %1 of %2 measured by both at once"),
    translate("Phrases", "1 set"),
    translate("Phrases", "%1 sets"),
    translate("Phrases", "1 athlete"),
    translate("Phrases", "%1 athletes"),
    translate("Phrases", "%1: %2"),
    translate("Phrases", "one test will do"),
    translate("Phrases", "%1 tests after the block, on separate days, make it 80 %"),
    translate("Phrases",
              "no number of later tests makes it 80 %, for the earlier test was done once and "
              "cannot be done again: for the next block test %1 times before it and after it"),
    translate("Phrases", "not even 20 tests on each side make it 80 %"),
    translate("Phrases", "%1: a true change of %2 m/s is read as one with a chance of %3 %"),
    translate("Phrases", "no change would be read as held by one test"),
    translate("Phrases", "no change would be read as held after %1 later tests"),
    translate("Phrases", "no change would be read as held by %1 tests on each side"),
    translate("Phrases", "estimated 1RM: a true change of %1 is read as one with a chance of %2 %, "
                         "none as held with %3 %"),
    translate("Phrases", "80 % with 1 test on each side"),
    translate("Phrases", "80 % with %1 tests on each side"),
    translate("Phrases", "That station is not in the log any more."),
};

} // namespace slopebook::phrases

namespace slopebook::questions {

using Phrase = Listed<phrases::questions>;

/// A phrase of the list above, filled.
template <class... Parts>
Words say(Phrase phrase, Parts&&... parts) {
    return filled(phrase.english(), std::forward<Parts>(parts)...);
}

} // namespace slopebook::questions
