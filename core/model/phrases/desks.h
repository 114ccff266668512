// SPDX-License-Identifier: GPL-3.0-or-later
// What is said when two logs meet.
#pragma once

#include "core/model/phrases/translate.h"
#include "core/model/words.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view desks[]{
    translate("Phrases", "That choice is not open any more. Nothing was changed."),
    translate(
        "Phrases",
        "That name or number is taken by another: %1. Change that one first. Nothing was changed."),
    translate(
        "Phrases",
        "It cannot be removed while it is in use: %1. Remove that first. Nothing was changed."),
    translate("Phrases",
              "It cannot repeat that session: %1. Change that one first. Nothing was changed."),
    translate("Phrases", "Nobody knows any more what the other side said. Nothing was changed."),
    translate("Phrases", "name"),
    translate("Phrases", "note"),
    translate("Phrases", "velocity"),
    translate("Phrases", "what counts"),
    translate("Phrases", "thrown or jumped"),
    translate("Phrases", "moves the body"),
    translate("Phrases", "MVT, m/s"),
    translate("Phrases", "SD of the MVT, m/s"),
    translate("Phrases", "whose MVT"),
    translate("Phrases", "source of the MVT"),
    translate("Phrases", "smallest change, m/s"),
    translate("Phrases", "smallest change of the 1RM, kg"),
    translate("Phrases", "first day"),
    translate("Phrases", "last day"),
    translate("Phrases", "ceiling"),
    translate("Phrases", "trained"),
    translate("Phrases", "sessions a week, fewest"),
    translate("Phrases", "sessions a week, most"),
    translate("Phrases", "unit"),
    translate("Phrases", "higher is better"),
    translate("Phrases", "two sides"),
    translate("Phrases", "both sides too"),
    translate("Phrases", "best attempts"),
    translate("Phrases", "attempts"),
    translate("Phrases", "formula"),
    translate("Phrases", "decimals"),
    translate("Phrases", "typical error"),
    translate("Phrases", "typical error in percent"),
    translate("Phrases", "source of the typical error"),
    translate("Phrases", "smallest change"),
    translate("Phrases", "source of the smallest change"),
    translate("Phrases", "bar"),
    translate("Phrases", "plate"),
    translate("Phrases", "pairs"),
    translate("Phrases", "alone or added"),
    translate("Phrases", "use"),
    translate("Phrases", "lift"),
    translate("Phrases", "test"),
    translate("Phrases", "device"),
    translate("Phrases", "place"),
    translate("Phrases", "surface"),
    translate("Phrases", "footwear"),
    translate("Phrases", "technique"),
    translate("Phrases", "not comparable"),
    translate("Phrases", "planned sets"),
    translate("Phrases", "takes turns"),
    translate("Phrases", "load"),
    translate("Phrases", "day"),
    translate("Phrases", "number"),
    translate("Phrases", "body mass"),
    translate("Phrases", "repeats"),
    translate("Phrases", "true maximum"),
    translate("Phrases", "outcome"),
    translate("Phrases", "reason"),
    translate("Phrases", "RPE"),
    translate("Phrases", "left out because"),
    translate("Phrases", "speed, m/s"),
    translate("Phrases", "side"),
    translate("Phrases", "value"),
    translate("Phrases", "contact time, s"),
    translate("Phrases", "none"),
    translate("Phrases", "yes"),
    translate("Phrases", "no"),
    translate("Phrases", "athlete"),
    translate("Phrases", "training block"),
    translate("Phrases", "set of equipment"),
    translate("Phrases", "station"),
    translate("Phrases", "session"),
    translate("Phrases", "conditions of a lift"),
    translate("Phrases", "conditions of a test"),
    translate("Phrases", "set"),
    translate("Phrases", "attempt"),
    translate("Phrases", "what was not possible"),
    translate("Phrases", "check load"),
    translate("Phrases", "place in a roster"),
    translate("Phrases", "choice"),
    translate("Phrases", "one that nobody knows any more"),
    translate("Phrases", "set %1"),
    translate("Phrases", "attempt %1"),
    translate("Phrases", "changed in both logs"),
    translate("Phrases", "two of one name: this one has another name now"),
    translate("Phrases", "two sessions of one day and number: this one has another number now"),
    translate("Phrases", "two that can only be one, and did not say the same"),
    translate("Phrases", "removed in one log, in use in the other: it is back"),
    translate("Phrases",
              "no repeat test any more: what it repeated is another athlete's, or repeats it"),
    translate("Phrases", "'%1' is this log itself. Nothing was changed."),
    translate("Phrases", "a %1 whose trail does not lead to what it says"),
    translate("Phrases", "the trail of that very thing"),
    translate("Phrases", "two of a %1 under one identity"),
    translate("Phrases", "one kind of thing under one identity"),
    translate("Phrases", "a %1 under the identity of a %2"),
    translate("Phrases", "a %1 that speaks of what is not there"),
    translate("Phrases", "what it speaks of in the same log"),
    translate("Phrases", "a choice that no meeting of two logs made"),
    translate("Phrases", "one under the identity of what it is about"),
    translate("Phrases", "number %1 of a %2"),
    translate("Phrases", "a number from 1 to %1"),
    translate("Phrases", "something in use that was removed before logs kept what was"),
    translate("Phrases", "a log in which it still is"),
    translate("Phrases", "what was to be taken does not stand as it was written (%1, %2)"),
};

} // namespace slopebook::phrases

namespace slopebook::desks {

using Phrase = Listed<phrases::desks>;

/// A phrase of the list above, filled.
template <class... Parts>
Words say(Phrase phrase, Parts&&... parts) {
    return filled(phrase.english(), std::forward<Parts>(parts)...);
}

} // namespace slopebook::desks
