// SPDX-License-Identifier: GPL-3.0-or-later
// What is said when two logs meet.
#pragma once

#include "core/model/phrases/translate.h"
#include "core/model/words.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view desks[]{
    translate("Phrases", "a %1 under the identity of a %2"),
    translate("Phrases", "one kind of thing under one identity"),
    translate("Phrases", "a %1 that speaks of what is not there"),
    translate("Phrases", "what it speaks of in the same log"),
    translate("Phrases", "number %1 of a %2"),
    translate("Phrases", "a number from 1 to %1"),
    translate("Phrases", "something in use that was removed before logs kept what was"),
    translate("Phrases", "a log in which it still is"),
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
