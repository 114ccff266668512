// SPDX-License-Identifier: GPL-3.0-or-later
// What core/model says of values that may not stand, and the joints of sentences.
#pragma once

#include "core/model/phrases/translate.h"
#include "core/model/words.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view model[]{
    translate("Phrases", "left"),
    translate("Phrases", "the earlier day first: %1"),
    translate("Phrases", "right"),
    translate("Phrases", "both"),
    translate("Phrases", "no unit"),
    translate("Phrases", "the unit of %1, such as m, s, N or points"),
    translate("Phrases", "1 to 50 attempts"),
    translate("Phrases", "0 to 4 decimals"),
    translate("Phrases", "a typical error above 0"),
    translate("Phrases", "no source"),
    translate("Phrases", "where the typical error comes from"),
    translate("Phrases", "a value above 0; a test that was not possible is written down as such"),
    translate("Phrases", "a contact time"),
    translate("Phrases", "no contact time"),
    translate("Phrases", "%1 takes none"),
    translate("Phrases", "the contact time in s after the first number"),
    translate("Phrases", "a contact time above 0 and below 10 s"),
    translate("Phrases", "left or right: %1 is tested side by side"),
    translate("Phrases", "no side: %1 has none"),
    translate("Phrases", "a test twice"),
    translate("Phrases", "each test once in a session"),
    translate("Phrases", "a gap about nothing"),
    translate("Phrases", "the test or the lift that was not possible"),
    translate("Phrases", "no reason"),
    translate("Phrases", "why it was not possible"),
    translate("Phrases", "%1 %2"),
    translate("Phrases", "plates as MASSxPAIRS, like 20x2,10x2,2.5x1 (mass of one plate, pairs "
                         "from 1 to %1)"),
    translate("Phrases", "no name"),
    translate("Phrases", "a name for the set of equipment"),
    translate("Phrases", "nothing to lift"),
    translate("Phrases", "a bar or another mass"),
    translate("Phrases", "a mass above 0 and under 1000 kg for bar"),
    translate("Phrases", "a mass above 0 and under 1000 kg for bar \"%1\""),
    translate("Phrases", "a mass above 0 and under 1000 kg for mass"),
    translate("Phrases", "a mass above 0 and under 1000 kg for mass \"%1\""),
    translate("Phrases", "a mass above 0 and under 1000 kg for a plate"),
    translate("Phrases", "%1 pairs"),
    translate("Phrases", "1 to %1 pairs of a plate"),
    translate("Phrases", "two rows for the %1 plate"),
    translate("Phrases", "one row a plate"),
    translate("Phrases", "a mass above 0 and under 1000 kg for the ceiling"),
    translate("Phrases", "found %1, expected %2"),
    translate("Phrases", "%1, line %2, column %3: %4"),
    translate("Phrases", "%1, column %2: %3"),
    translate("Phrases", "line %1, column %2: %3"),
    translate("Phrases", "line %1: %2"),
    translate("Phrases", "column %1: %2"),
    translate("Phrases", "%1#%2"),
    translate("Phrases", "1 session a week"),
    translate("Phrases", "%1 sessions a week"),
    translate("Phrases", "%1 to %2 sessions a week"),
    translate("Phrases", "%1, and %2 more"),
    translate("Phrases", "%1, %2"),
    translate("Phrases", "%1 \u00b7 %2"),
    translate("Phrases", "%1; %2"),
    translate("Phrases", "\"%1\""),
    translate("Phrases", "a blank name"),
    translate("Phrases", "the name of the test"),
    translate("Phrases", "%1, line %2: %3"),
    translate("Phrases", "%1: %2"),
    translate("Phrases", "a smallest change that matters above 0"),
    translate("Phrases", "a load of a lift that was not possible"),
    translate("Phrases", "a load of a test"),
    translate("Phrases", "both at once of a test without sides"),
    translate("Phrases", "left and right, where both are tested as well"),
    translate("Phrases", "the best %1 of which the best counts"),
    translate("Phrases", "the best 1 to 50 attempts, or all"),
    translate("Phrases", "the mean of the best attempts, or the best one"),
    translate("Phrases", "1 to 50 sets, or none said"),
    translate("Phrases", "a ladder that does not rise"),
    translate("Phrases", "a ladder without a lift"),
    translate("Phrases", "a lift and tests at one station"),
    translate("Phrases", "a lift, or a test or a few"),
    translate("Phrases", "a station at which nothing is done"),
    translate("Phrases", "an athlete twice"),
    translate("Phrases", "each athlete once on a roster"),
    translate("Phrases", "each test once at a station"),
    translate("Phrases", "loads for a lift only"),
    translate("Phrases", "loads from light to heavy"),
};

} // namespace slopebook::phrases

namespace slopebook {

using Phrase = Listed<phrases::model>;

/// A phrase of the list above, filled.
template <class... Parts>
Words say(Phrase phrase, Parts&&... parts) {
    return filled(phrase.english(), std::forward<Parts>(parts)...);
}

} // namespace slopebook
