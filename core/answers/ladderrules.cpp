// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/ladderrules.h"

#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace slopebook::answers {

namespace {

constexpr int loadsToBend = 4; // stats::curvature needs as many distinct ones
constexpr std::size_t startsImproved = 4;
constexpr double hair = 1e-9; // of a percent, or of a share: sums of plates are exact, these not

using Places = std::vector<std::size_t>; ///< of the candidates, ascending

LadderFlaws flawsAt(std::span<const double> kg, double reference) {
    LadderFlaws flaws;
    int distinct = kg.empty() ? 0 : 1;
    for (std::size_t i = 1; i < kg.size(); ++i) {
        flaws.largestStep = std::max(flaws.largestStep, kg[i] - kg[i - 1]);
        distinct += kg[i] > kg[i - 1] ? 1 : 0;
    }
    flaws.stepPercent = reference > 0 ? 100 * flaws.largestStep / reference : 0;
    flaws.greatStep = flaws.stepPercent > mostStepPercent + hair;
    flaws.cannotBend =
        distinct < loadsToBend || flaws.largestStep > (kg.back() - kg.front()) * (0.5 + hair);
    return flaws;
}

std::vector<double> kilogramsOf(std::span<const BuiltLoad> loads) {
    std::vector<double> kg;
    kg.reserve(loads.size());
    for (const BuiltLoad& load : loads)
        kg.push_back(kilograms(load.exact));
    return kg;
}

/// Whether, and how well, a set of places does.
struct Trial {
    std::span<const double> kg; ///< of the candidates
    double reference;
    const std::function<double(std::span<const double>)>& figure;

    double of(const Places& places) const {
        std::vector<double> loads;
        loads.reserve(places.size());
        for (const std::size_t place : places)
            loads.push_back(kg[place]);
        return flawsAt(loads, reference).any() ? std::numeric_limits<double>::infinity()
                                               : figure(loads);
    }
};

std::size_t nearest(std::span<const double> kg, double wanted) {
    const auto above = std::lower_bound(kg.begin(), kg.end(), wanted);
    if (above == kg.begin())
        return 0;
    const auto index = static_cast<std::size_t>(above - kg.begin());
    if (above == kg.end() || wanted - kg[index - 1] <= *above - wanted)
        return index - 1;
    return index;
}

Places evenFrom(std::span<const double> kg, double low, double high, std::size_t n) {
    Places places;
    for (std::size_t i = 0; i < n; ++i)
        places.push_back(
            nearest(kg, low + (high - low) * static_cast<double>(i) / static_cast<double>(n - 1)));
    return places;
}

/// Down from a load by the greatest steps that are allowed, where plates are too uneven for the
/// others.
Places downFrom(std::span<const double> kg, std::size_t top, std::size_t n, double step) {
    Places places{top};
    while (places.size() < n) {
        const std::size_t at = places.back();
        std::size_t next = at;
        while (next > 0 && kg[at] - kg[next - 1] <= step)
            --next;
        places.push_back(next);
    }
    std::ranges::reverse(places);
    return places;
}

std::vector<Places> starts(std::span<const double> kg, std::size_t n, double reference) {
    std::vector<Places> all;
    const double step = mostStepPercent / 100 * reference;
    const std::size_t tops = std::min<std::size_t>(kg.size(), 12);
    for (std::size_t i = 0; i < tops; ++i) {
        const std::size_t top =
            kg.size() - 1 - i * (kg.size() - 1) / std::max<std::size_t>(tops, 1);
        const double reach = kg[top] - step * static_cast<double>(n - 1);
        for (const double low : {kg.front(), std::max(kg.front(), reach)})
            all.push_back(evenFrom(kg, low, kg[top], n));
        for (const double share : {1.0, 0.75, 0.5, 0.34})
            all.push_back(downFrom(kg, top, n, share * step));
    }
    return all;
}

/// One load exchanged for a better one until none is.
double improve(const Trial& trial, Places& places) {
    double best = trial.of(places);
    for (bool better = std::isfinite(best); better;) {
        better = false;
        for (std::size_t i = 0; i < places.size(); ++i)
            for (std::size_t to = 0; to < trial.kg.size(); ++to) {
                Places other = places;
                other[i] = to;
                std::ranges::sort(other);
                if (const double value = trial.of(other); value < best * (1 - 1e-12)) {
                    best = value;
                    places = std::move(other);
                    better = true;
                }
            }
    }
    return best;
}

} // namespace

LadderFlaws flawsOf(std::span<const BuiltLoad> loads, double reference) {
    return flawsAt(kilogramsOf(loads), reference);
}

Words flawsWords(const LadderFlaws& flaws, bool ofOneRm) {
    std::vector<Words> all;
    if (const Words percent = figure(flaws.stepPercent, 0); flaws.greatStep)
        all.push_back(ofOneRm ? say("a step of %1 % of the 1RM", percent)
                              : say("a step of %1 % of the heaviest load lifted", percent));
    if (flaws.cannotBend)
        all.push_back(say("too few spread loads to show a bend"));
    return clauses(std::move(all));
}

std::vector<BuiltLoad>
bestWithoutFlaws(std::span<const BuiltLoad> candidates, int n, double reference,
                 const std::function<double(std::span<const double> kg)>& figure) {
    if (n < loadsToBend || candidates.size() < static_cast<std::size_t>(loadsToBend))
        return {};
    const std::vector<double> kg = kilogramsOf(candidates);
    const Trial trial{.kg = kg, .reference = reference, .figure = figure};
    std::vector<std::pair<double, Places>> tried;
    for (Places& start : starts(kg, static_cast<std::size_t>(n), reference))
        if (const double value = trial.of(start); std::isfinite(value))
            tried.emplace_back(value, std::move(start));
    std::ranges::sort(tried);
    tried.erase(std::unique(tried.begin(), tried.end()), tried.end());
    if (tried.size() > startsImproved)
        tried.resize(startsImproved);
    for (auto& [value, places] : tried)
        value = improve(trial, places);
    const Places best = tried.empty() ? Places() : std::ranges::min(tried).second;
    std::vector<BuiltLoad> loads;
    for (const std::size_t place : best)
        loads.push_back(candidates[place]);
    return loads;
}

} // namespace slopebook::answers
