// SPDX-License-Identifier: GPL-3.0-or-later
// What is said when a log meets its store.
#pragma once

#include "core/model/phrases/translate.h"
#include "core/model/words.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view meetings[]{
    translate("Phrases", "'%1' meets no store. Join it to one first."),
    translate("Phrases", "'%1' is not the log any more that this meeting began with: it went back "
                         "to an earlier state. Nothing more was written into it; the next meeting "
                         "goes on from what is there."),
    translate("Phrases", "the squad to which what is new here goes"),
    translate("Phrases", "the squad '%1'"),
    translate("Phrases",
              "one in which this login may write; there is none: who manages the store grants it"),
    translate("Phrases", "one of: %1"),
    translate("Phrases", "the store at %1"),
    translate("Phrases", "the one that this log meets already, or a log that has left it"),
    translate("Phrases", "a %1 of the store that speaks of what is not there"),
    translate("Phrases", "what it speaks of in the same store"),
    translate("Phrases", "Other desks write to the store at %1 without pause. What is not sent yet "
                         "waits for the next meeting."),
    translate("Phrases", "The store at %1 is another one than this log has met. Nothing was "
                         "changed. Leave the old one first, then join this one."),
    translate("Phrases", "%1: the store does not let this login write it"),
    translate("Phrases", "%1: its name or number is taken in the store, by what is not seen here"),
    translate(
        "Phrases",
        "%1: something in the store that is not seen here needs it, or it needs what is not there"),
    translate("Phrases", "%1: it waits for the next meeting"),
    translate("Phrases",
              "What is one thing here and in the store is put together in one go, which gives way "
              "to what is entered: it waits until nothing is entered for %1 s. Nothing is lost; "
              "the next meeting tries it again."),
};

} // namespace slopebook::phrases

namespace slopebook::meetings {

using Phrase = Listed<phrases::meetings>;

/// A phrase of the list above, filled.
template <class... Parts>
Words say(Phrase phrase, Parts&&... parts) {
    return filled(phrase.english(), std::forward<Parts>(parts)...);
}

} // namespace slopebook::meetings
