// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/lift.h"

namespace slopebook {

std::string_view word(VelocityKind kind) {
    switch (kind) {
    case VelocityKind::Mean:
        return "mean";
    case VelocityKind::Propulsive:
        return "propulsive";
    case VelocityKind::Peak:
        return "peak";
    }
    return "";
}

std::optional<VelocityKind> velocityKindFromWord(std::string_view text) {
    for (const auto kind : {VelocityKind::Mean, VelocityKind::Propulsive, VelocityKind::Peak})
        if (word(kind) == text)
            return kind;
    return std::nullopt;
}

std::string_view word(PointRule rule) {
    return rule == PointRule::Fastest ? "fastest" : "mean";
}

std::optional<PointRule> pointRuleFromWord(std::string_view text) {
    for (const auto rule : {PointRule::Fastest, PointRule::Mean})
        if (word(rule) == text)
            return rule;
    return std::nullopt;
}

} // namespace slopebook
