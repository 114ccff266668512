// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/threshold.h"

#include "core/answers/figures.h"

#include <cmath>

namespace slopebook::answers {

namespace {
Mvt ownMvt(std::span<const Point> maxima) {
    const auto n = static_cast<double>(maxima.size());
    double mean = 0;
    for (const Point& p : maxima)
        mean += p.velocity / n;
    double squares = 0;
    for (const Point& p : maxima)
        squares += (p.velocity - mean) * (p.velocity - mean);
    Mvt mvt{.value = mean,
            .sd = std::nullopt,
            .origin = Mvt::Origin::Athlete,
            .source = (maxima.size() > 1 ? "mean of " : "") +
                      counted(static_cast<int>(maxima.size()), "true maximum"),
            .count = static_cast<int>(maxima.size())};
    if (maxima.size() > 1)
        mvt.sd = std::sqrt(squares / (n - 1));
    return mvt;
}
} // namespace

Answer<Mvt> chooseMvt(const Lift& lift, std::span<const Point> maxima) {
    if (lift.ballistic)
        return NoAnswer{NoAnswer::Why::BallisticLift,
                        say("a thrown or jumped lift is followed by velocity at load only")};
    if (!maxima.empty())
        return ownMvt(maxima);
    if (!lift.mvt)
        return NoAnswer{NoAnswer::Why::NoThreshold,
                        say("no minimal-velocity threshold (MVT) is known for this lift")};
    if (lift.kind == VelocityKind::Peak && lift.mvt->origin == Mvt::Origin::Published)
        return NoAnswer{NoAnswer::Why::NoThreshold,
                        say("no published threshold (MVT) holds for peak velocity")};
    return *lift.mvt;
}

Answer<Mvt> mvtOf(const Lift& lift, std::span<const LiftSession> sessions) {
    std::vector<Point> maxima;
    for (const LiftSession& session : sessions)
        maxima.insert(maxima.end(), session.maxima.begin(), session.maxima.end());
    return chooseMvt(lift, maxima);
}

std::string describe(const Mvt& mvt) {
    const std::string source = mvt.source.empty() ? "" : ": " + mvt.source;
    switch (mvt.origin) {
    case Mvt::Origin::Athlete:
        return "athlete" + source;
    case Mvt::Origin::Coach:
        return "coach" + source;
    case Mvt::Origin::Published:
        return "published" + source;
    }
    return mvt.source;
}

} // namespace slopebook::answers
