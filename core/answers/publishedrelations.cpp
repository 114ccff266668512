// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/publishedrelations.h"

#include "core/answers/figures.h"
#include "core/answers/samename.h"
#include "core/answers/sources.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <array>

namespace slopebook::answers {

namespace {

constexpr std::array<PublishedRelation, 5> published{
    {{"Bench press", VelocityKind::Propulsive, 112.33, -73.501, 8.4326, 3.56,
      "Gonzalez-Badillo and Sanchez-Medina 2010, coefficients from memory"},
     {"Bench press", VelocityKind::Mean, 113.02, -75.865, 7.5786, 3.77,
      "Gonzalez-Badillo and Sanchez-Medina 2010, coefficients from memory"},
     {"Bench pull", VelocityKind::Propulsive, 147.94, -104.182, 18.5797, std::nullopt,
      "Sanchez-Medina et al. 2014, coefficients from memory"},
     {"Full squat (guided bar)", VelocityKind::Propulsive, 117.0, -50.71, -5.961, std::nullopt,
      "Sanchez-Medina et al. 2017, coefficients from memory"},
     {"Full squat (guided bar)", VelocityKind::Mean, 116.3, -46.31, -12.87, std::nullopt,
      "Sanchez-Medina et al. 2017, coefficients from memory"}}};

/// Without what stands in brackets at its end: how the lift is loaded.
std::string_view withoutManner(std::string_view name) {
    const auto open = name.rfind(" (");
    return open == std::string_view::npos || !name.ends_with(')') ? name : name.substr(0, open);
}

} // namespace

std::span<const PublishedRelation> publishedRelations() {
    return published;
}

std::optional<PublishedRelation> publishedRelation(std::string_view lift, VelocityKind kind) {
    const auto found = std::ranges::find_if(published, [&](const auto& each) {
        return each.kind == kind &&
               (sameName(each.lift, lift) || sameName(withoutManner(each.lift), lift));
    });
    return found == published.end() ? std::nullopt : std::optional(*found);
}

double velocityAt(const PublishedRelation& r, double percent) {
    // of the two roots the one on the falling branch: -c1 - sqrt for either sign of c2; where the
    // parabola does not come down so far, its turning point
    const double root = std::sqrt(std::max(0.0, r.c1 * r.c1 - 4 * r.c2 * (r.c0 - percent)));
    return 2 * (r.c0 - percent) / (-r.c1 + root);
}

Words nameOf(const PublishedRelation& relation) {
    return say("the published equation (%1)", sourceWords(cited(std::string(relation.source))));
}

} // namespace slopebook::answers
