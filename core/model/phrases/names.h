// SPDX-License-Identifier: GPL-3.0-or-later
// What the tests of resources/testkinds.csv and stretches of days are called: a window shows them
// in its language, while logs and tables keep these.
#pragma once

#include "core/model/phrases/translate.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view testNames[]{
    translate("Phrases", "Countermovement jump"),
    translate("Phrases", "Drop jump, reactive strength"),
    translate("Phrases", "Repeated hops, reactive strength"),
    translate("Phrases", "Drop jump, height"),
    translate("Phrases", "Single hop for distance"),
    translate("Phrases", "Triple hop for distance"),
    translate("Phrases", "Crossover hop for distance"),
    translate("Phrases", "6 m timed hop"),
    translate("Phrases", "Seated medicine-ball throw"),
    translate("Phrases", "Isometric pull, peak force"),
    translate("Phrases", "Isometric pull, peak force per body mass"),
    translate("Phrases", "Isometric pull, force at 100 ms"),
    translate("Phrases", "Isometric pull, rate 0 to 100 ms"),
};

inline constexpr std::string_view stretch = translate("Phrases", "%1..%2");
inline constexpr std::string_view numberedDay = translate("Phrases", "%1#%2");
inline constexpr std::string_view periodNames[]{stretch, numberedDay};

} // namespace slopebook::phrases
