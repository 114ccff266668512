// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/sources.h"

#include "core/model/phrases/answers.h"

#include <cmath>

namespace slopebook::answers {

Words sourceOf(const Smallest& smallest) {
    switch (smallest.origin) {
    case Smallest::Origin::Squad:
        return say("squad: %1", smallest.source);
    case Smallest::Origin::Coach:
        return say("the coach's own");
    case Smallest::Origin::Published:
        break;
    }
    return say("published, not yours: %1", smallest.source);
}

Words sourceOf(const DayNoise& noise) {
    switch (noise.origin) {
    case DayNoise::Origin::Athlete:
        return noise.pairs == 1 ? say("the athlete's own: 1 repeat test")
                                : say("the athlete's own: %1 repeat tests", noise.pairs);
    case DayNoise::Origin::LogLift:
        return noise.pairs == 1 ? say("this log's: 1 repeat test")
                                : say("this log's: %1 repeat tests", noise.pairs);
    case DayNoise::Origin::Published:
        return say("published, not yours: %1", noise.source);
    case DayNoise::Origin::None:
        break;
    }
    return {};
}

Words sourceOf(const Mvt& mvt) {
    switch (mvt.origin) {
    case Mvt::Origin::Athlete:
        return mvt.count == 1 ? say("the athlete's own: one true maximum")
                              : say("the athlete's own: mean of %1 true maxima", mvt.count);
    case Mvt::Origin::Coach:
        return mvt.source.empty() ? say("the coach's own") : say("the coach's own: %1", mvt.source);
    case Mvt::Origin::Published:
        break;
    }
    return say("published, not yours: %1", mvt.source);
}

bool noneFound(const DayNoise& noise) {
    return noise.pairs > 0 && std::sqrt(noise.variance.value) < 0.0005;
}

} // namespace slopebook::answers
