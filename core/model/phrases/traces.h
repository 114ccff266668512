// SPDX-License-Identifier: GPL-3.0-or-later
// What traces give, and why one gives nothing.
#pragma once

#include "core/model/phrases/translate.h"
#include "core/model/words.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view traces[]{
    translate("Phrases", "quiet baseline"),
    translate("Phrases", "its SD"),
    translate("Phrases", "peak force, gross"),
    translate("Phrases", "peak force, net of the baseline"),
    translate("Phrases", "onset to peak"),
    translate("Phrases", "impulse, net, onset to end"),
    translate("Phrases", "force at %1 ms, gross"),
    translate("Phrases", "force at %1 ms, net"),
    translate("Phrases", "rate of force development 0 to %1 ms"),
    translate("Phrases", "impulse, net, 0 to %1 ms"),
    translate("Phrases", "flight time"),
    translate("Phrases", "height by flight time"),
    translate("Phrases", "height by impulse and momentum"),
    translate("Phrases", "take-off speed by impulse"),
    translate("Phrases", "contact time"),
    translate("Phrases", "reactive strength index"),
    translate("Phrases", "flight time / contact time"),
    translate("Phrases", "movement to take-off"),
    translate("Phrases", "height / time to take-off"),
    translate("Phrases", "weight"),
    translate("Phrases", "body mass"),
    translate("Phrases", "mean velocity"),
    translate("Phrases", "mean propulsive velocity"),
    translate("Phrases", "peak velocity"),
    translate("Phrases", "displacement"),
    translate("Phrases", "start to top"),
    translate("Phrases", "quiet from"),
    translate("Phrases", "quiet to"),
    translate("Phrases", "onset"),
    translate("Phrases", "peak"),
    translate("Phrases", "end"),
    translate("Phrases", "start"),
    translate("Phrases", "propulsive end"),
    translate("Phrases", "top"),
    translate("Phrases", "still from"),
    translate("Phrases", "still to"),
    translate("Phrases", "movement"),
    translate("Phrases", "touch-down"),
    translate("Phrases", "take-off"),
    translate("Phrases", "landing"),
    translate("Phrases", "no quiet stretch of 0.2 s before the force rises"),
    translate("Phrases", "the force never rises out of its quiet stretch"),
    translate("Phrases", "the force has risen before the trace begins"),
    translate("Phrases", "a mark lies outside the trace"),
    translate("Phrases", "the marks are not in order: onset, peak, end"),
    translate("Phrases", "the quiet stretch holds fewer than three samples"),
    translate("Phrases", "nobody stands on the plate: the force stays under 150 N"),
    translate("Phrases", "no flight found: the force never falls to nothing for 0.1 to 1.2 s "
                         "between two contacts (on a plate that was not zeroed it does not)"),
    translate("Phrases",
              "the plate reads %1 N in flight, with nobody on it: zero it and jump again"),
    translate("Phrases", "force in flight, taken off the weight"),
    translate("Phrases",
              "The plate was not zeroed: it reads %1 N in flight, with nobody on it. That "
              "is taken off the weight and the body mass."),
    translate("Phrases", "the marks are not in order: contact or start, take-off, landing"),
    translate("Phrases", "nobody stands still on the plate between the marks for it"),
    translate("Phrases", "the trace is shorter than a tenth of a second"),
    translate("Phrases", "no rep found: nothing rises by 0.1 m; expected displacement in metres, "
                         "upwards positive"),
    translate("Phrases", "the marks are not in order: start, end of the propulsive part, top"),
    translate("Phrases", "the rep is shorter than a sample"),
    translate("Phrases", "a time is not a number"),
    translate("Phrases", "a value is not a number"),
    translate("Phrases", "the times do not rise: %1 s follows %2 s"),
    translate("Phrases", "uneven times: a step of %1 s among steps of %2 s"),
    translate("Phrases", "uneven times: the sampling rate changes"),
    translate("Phrases", "there are not as many values as times"),
    translate("Phrases", "fewer than %1 samples"),
    translate("Phrases", "sampled at %1 Hz; expected 100 to 10000 Hz, with times in seconds"),
};

} // namespace slopebook::phrases

namespace slopebook::traces {

using Phrase = Listed<phrases::traces>;

/// A phrase of the list above, filled.
template <class... Parts>
Words say(Phrase phrase, Parts&&... parts) {
    return filled(phrase.english(), std::forward<Parts>(parts)...);
}

} // namespace slopebook::traces
