// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/valuewords.h"

#include "core/model/phrases/desks.h"
#include "core/model/phrases/names.h"
#include "core/model/phrases/sources.h"

#include <algorithm>

namespace slopebook::desks {

Words valueWords(VelocityKind kind) {
    switch (kind) {
    case VelocityKind::Mean:
        return say("mean velocity");
    case VelocityKind::Propulsive:
        return say("mean propulsive velocity");
    case VelocityKind::Peak:
        return say("peak velocity");
    }
    return {};
}

Words valueWords(PointRule rule) {
    return rule == PointRule::Fastest ? say("the fastest rep") : say("the mean of the reps");
}

Words valueWords(Mvt::Origin origin) {
    switch (origin) {
    case Mvt::Origin::Athlete:
        return say("the athlete's own");
    case Mvt::Origin::Coach:
        return say("the coach's own");
    case Mvt::Origin::Published:
        return say("published");
    }
    return {};
}

Words valueWords(AttemptRule rule) {
    return rule == AttemptRule::Best ? say("the best attempt") : say("the mean of the attempts");
}

Words valueWords(TestFormula formula) {
    switch (formula) {
    case TestFormula::Value:
        return say("the number as read");
    case TestFormula::FlightHeight:
        return say("the height, from the flight time");
    case TestFormula::HeightRsi:
        return say("the height over the contact time");
    case TestFormula::FlightRsi:
        return say("the height, from the flight time, over the contact time");
    case TestFormula::PerBodyMass:
        return say("the force over the body mass");
    }
    return {};
}

Words valueWords(BodySide side) {
    switch (side) {
    case BodySide::Both:
        return say("both at once, or no side");
    case BodySide::Left:
        return say("the left");
    case BodySide::Right:
        return say("the right");
    }
    return {};
}

Words valueWords(Outcome outcome) {
    return outcome == Outcome::Lifted ? say("lifted") : say("not lifted");
}

Words valueWords(FixedMass::Use use) {
    return use == FixedMass::Use::Alone ? say("a load by itself") : say("on top of a load");
}

Words valueWords(MassUnit unit) {
    return asIs(std::string(word(unit)));
}

Words perhapsOurs(const std::string& text) {
    const auto listed = [&](const auto& list) {
        return std::ranges::find(list, text) != std::ranges::end(list);
    };
    return listed(phrases::testNames) || listed(phrases::sources) ? filled(text) : asIs(text);
}

} // namespace slopebook::desks
