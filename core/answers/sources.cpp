// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/sources.h"

#include "core/model/phrases/answers.h"
#include "core/model/phrases/sources.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace slopebook::answers {

Words sourceWords(const std::string& source) {
    return std::ranges::find(phrases::sources, source) == std::end(phrases::sources)
               ? asIs(source)
               : filled(source);
}

Words wholeSourceOf(const Smallest& smallest) {
    switch (smallest.origin) {
    case Smallest::Origin::Squad:
        return say("0.2 x robust SD of %1 athletes", smallest.athletes);
    case Smallest::Origin::Coach:
        return say("the coach's own");
    case Smallest::Origin::Published:
        break;
    }
    return sourceWords(smallest.source);
}

Words sourceOf(const Smallest& smallest) {
    switch (smallest.origin) {
    case Smallest::Origin::Squad:
        return say("squad: %1", wholeSourceOf(smallest));
    case Smallest::Origin::Coach:
        return wholeSourceOf(smallest);
    case Smallest::Origin::Published:
        break;
    }
    return say("published, not yours");
}

Words citationOf(const Smallest& smallest) {
    return smallest.origin == Smallest::Origin::Published && !smallest.source.empty()
               ? say("published smallest change that matters: %1", sourceWords(smallest.source))
               : Words();
}

std::vector<Words> smallestTold(const Smallest& smallest) {
    std::vector<Words> told{say("Smallest change that matters: %1", sourceOf(smallest))};
    if (Words behind = citationOf(asCited(smallest)); !behind.empty())
        told.push_back(asSentence(std::move(behind)));
    return told;
}

namespace {

/// withBlocks: how the days of one block differ counts as well, which no page lists as a repeat.
Words repeatsOfAthlete(int pairs, bool withBlocks) {
    if (withBlocks)
        return say("the athlete's own: %1 repeats, days of one block among them", pairs);
    return pairs == 1 ? say("the athlete's own: 1 repeat test")
                      : say("the athlete's own: %1 repeat tests", pairs);
}

Words repeatsOfLog(int pairs) {
    return pairs == 1 ? say("this log's: 1 repeat test")
                      : say("this log's: %1 repeat tests", pairs);
}

constexpr double leastShare = 0.005; // less is 0 %

double publishedShare(const DayNoise& noise) {
    if (noise.published > 0)
        return 1 - noise.ownShare - noise.othersShare;
    return noise.origin == DayNoise::Origin::Published ? 1 : 0;
}

} // namespace

Words sourceOf(const DayNoise& noise) {
    const Words published = say("published, not yours");
    std::vector<Words> shares;
    for (const auto& [share, source] :
         {std::pair{noise.ownShare, repeatsOfAthlete(noise.ownPairs, noise.withBlocks)},
          std::pair{noise.othersShare, repeatsOfLog(noise.othersPairs)},
          std::pair{1 - noise.ownShare - noise.othersShare, published}})
        if (share >= leastShare)
            shares.push_back(say("%1 % %2", figure(100 * share, 0), source));
    if (shares.size() > 1)
        return listed(std::move(shares));
    switch (noise.origin) {
    case DayNoise::Origin::Athlete:
        return repeatsOfAthlete(noise.pairs, noise.withBlocks);
    case DayNoise::Origin::LogLift:
        return repeatsOfLog(noise.pairs);
    case DayNoise::Origin::Published:
        return published;
    case DayNoise::Origin::None:
        break;
    }
    return {};
}

Words citationOf(const DayNoise& noise) {
    return publishedShare(noise) >= leastShare && !noise.source.empty()
               ? say("published day-to-day noise: %1", sourceWords(noise.source))
               : Words();
}

Words sourceOf(const Mvt& mvt) {
    switch (mvt.origin) {
    case Mvt::Origin::Athlete:
        if (mvt.source.empty())
            return mvt.count == 1 ? say("the athlete's own: one true maximum")
                                  : say("the athlete's own: mean of %1 true maxima", mvt.count);
        return mvt.count == 1
                   ? say("the athlete's own: one true maximum, drawn towards the lift's figure")
                   : say("the athlete's own: mean of %1 true maxima, drawn towards the lift's "
                         "figure",
                         mvt.count);
    case Mvt::Origin::Coach:
        return mvt.source.empty() ? say("the coach's own") : say("the coach's own: %1", mvt.source);
    case Mvt::Origin::Published:
        break;
    }
    return say("published, not yours");
}

Words citationOf(const Mvt& mvt) {
    return mvt.origin == Mvt::Origin::Published && !mvt.source.empty()
               ? say("published MVT: %1", sourceWords(mvt.source))
               : Words();
}

Words wholeSourceOf(const Mvt& mvt) {
    return citationOf(mvt).empty() ? sourceOf(mvt)
                                   : say("published, not yours: %1", sourceWords(mvt.source));
}

bool noneFound(const DayNoise& noise) {
    return noise.pairs > 0 && std::sqrt(noise.variance.value) < 0.0005;
}

} // namespace slopebook::answers
