// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/publishedrelations.h"

#include "core/answers/samename.h"

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
     {"Full squat", VelocityKind::Propulsive, 117.0, -50.71, -5.961, std::nullopt,
      "Sanchez-Medina et al. 2017, coefficients from memory"},
     {"Full squat", VelocityKind::Mean, 116.3, -46.31, -12.87, std::nullopt,
      "Sanchez-Medina et al. 2017, coefficients from memory"}}};

} // namespace

std::span<const PublishedRelation> publishedRelations() {
    return published;
}

std::optional<PublishedRelation> publishedRelation(std::string_view lift, VelocityKind kind) {
    const auto found = std::ranges::find_if(published, [&](const auto& each) {
        return each.kind == kind && sameName(each.lift, lift);
    });
    return found == published.end() ? std::nullopt : std::optional(*found);
}

} // namespace slopebook::answers
