// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/doubt.h"

#include "core/model/phrases/answers.h"
#include "core/stats/line.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <span>
#include <vector>

namespace slopebook::answers {

namespace {

constexpr double farSpeed = 0.20;     // m/s
constexpr double farShare = 0.30;     // of what the line says
constexpr double slowestAsked = 0.15; // m/s: below, a line says little of a rep
constexpr double nearLoads = 0.30;    // of the lightest and heaviest load: the line holds so far
constexpr double rise = 0.06;         // m/s
constexpr double lighter = 0.975;
constexpr double heavyShare = 1.5, heavyAlone = 5, lightShare = 0.2;

std::span<const Point> pointsOf(const LiftSession* session) {
    return session ? std::span<const Point>(session->points) : std::span<const Point>();
}

/// A falling line that holds at the load.
std::optional<double> lineAt(const LiftSession* session, double load, std::size_t fewest) {
    std::vector<double> x, y;
    for (const Point& p : pointsOf(session)) {
        x.push_back(p.load);
        y.push_back(p.velocity);
    }
    if (std::set<double>(x.begin(), x.end()).size() < fewest)
        return std::nullopt;
    const auto line = stats::fitLine(x, y);
    if (!line || line->slope >= 0 || load < (1 - nearLoads) * line->xMin ||
        load > (1 + nearLoads) * line->xMax)
        return std::nullopt;
    return line->at(load);
}

std::vector<double> countingOf(const Set& set) {
    std::vector<double> speeds;
    for (const Rep& rep : set.reps)
        if (rep.excluded.empty())
            speeds.push_back(rep.velocity);
    return speeds;
}

std::optional<Doubt> load(const Set& typed, const LiftSession* today, const LiftSession* last) {
    std::vector<double> known;
    for (const LiftSession* session : {today, last})
        for (const Point& p : pointsOf(session))
            known.push_back(p.load);
    if (known.empty())
        return std::nullopt;
    const double kg = kilograms(typed.load);
    const auto [low, high] = std::ranges::minmax(known);
    const bool before = !pointsOf(last).empty();
    if (kg > (before ? heavyShare : heavyAlone) * high)
        return Doubt{.kind = Doubt::Kind::Heavy, .typed = kg, .expected = high, .today = !before};
    if (kg < lightShare * low)
        return Doubt{.kind = Doubt::Kind::Light, .typed = kg, .expected = low, .today = !before};
    return std::nullopt;
}

// A set slows down to its end; a slow rep before a fast one was missed, or mistyped.
std::optional<Doubt> withinSet(const std::vector<double>& speeds, double fastest) {
    for (std::size_t i = 0; i + 1 < speeds.size(); ++i)
        if (speeds[i] < fastest / 2 &&
            *std::max_element(speeds.begin() + static_cast<std::ptrdiff_t>(i) + 1, speeds.end()) >
                1.5 * speeds[i])
            return Doubt{.kind = Doubt::Kind::WithinSet, .typed = speeds[i], .expected = fastest};
    return std::nullopt;
}

std::optional<Doubt> beside(const Set& typed, double fastest, const LiftSession* today,
                            const LiftSession* last) {
    const double kg = kilograms(typed.load);
    auto expected = lineAt(today, kg, 3);
    const bool ofToday = expected.has_value();
    if (!expected)
        expected = lineAt(last, kg, 2);
    if (!expected || *expected < slowestAsked)
        return std::nullopt;
    if (std::abs(fastest - *expected) <= std::max(farSpeed, farShare * *expected))
        return std::nullopt;
    return Doubt{
        .kind = Doubt::Kind::Speed, .typed = fastest, .expected = *expected, .today = ofToday};
}

std::optional<Doubt> rising(const Set& typed, double fastest, const LiftSession* today) {
    const double kg = kilograms(typed.load);
    const Point* slowest = nullptr;
    for (const Point& p : pointsOf(today))
        if (p.load < lighter * kg && (!slowest || p.velocity < slowest->velocity))
            slowest = &p;
    if (!slowest || fastest <= slowest->velocity + rise)
        return std::nullopt;
    return Doubt{.kind = Doubt::Kind::RisesWithLoad,
                 .typed = fastest,
                 .expected = slowest->velocity,
                 .other = massFromKilograms(slowest->load)};
}

} // namespace

std::optional<Doubt> doubt(const Set& typed, const LiftSession* today, const LiftSession* last) {
    if (const auto far = load(typed, today, last))
        return far;
    const std::vector<double> speeds = countingOf(typed);
    if (speeds.empty())
        return std::nullopt;
    const double fastest = std::ranges::max(speeds);
    if (const auto slow = withinSet(speeds, fastest))
        return slow;
    if (const auto far = beside(typed, fastest, today, last))
        return far;
    return rising(typed, fastest, today);
}

namespace {

/// As speeds are typed: a third decimal where there is one.
Words speedWords(double velocity) {
    const double hundredths = velocity * 100;
    const bool third = std::abs(hundredths - std::round(hundredths)) > 0.05;
    return say("%1 m/s", figure(velocity, third ? 3 : 2));
}

} // namespace

Words doubtWords(const Doubt& doubt) {
    using Kind = Doubt::Kind;
    const bool speeds = doubt.kind != Kind::Heavy && doubt.kind != Kind::Light;
    const Words typed = speeds ? speedWords(doubt.typed) : massWords(doubt.typed);
    const Words expected = speeds ? speedWords(doubt.expected) : massWords(doubt.expected);
    switch (doubt.kind) {
    case Kind::Speed:
        return doubt.today
                   ? say("%1? Today's line says about %2 at that load.", typed, expected)
                   : say("%1? Last time's line says about %2 at that load.", typed, expected);
    case Kind::WithinSet:
        return say("%1? The set's fastest rep is %2, and a later rep is fast again.", typed,
                   expected);
    case Kind::RisesWithLoad:
        return say("%1? The lighter %3 went up at %2 today: speed falls as load rises.", typed,
                   expected, doubt.other);
    case Kind::Heavy:
        return doubt.today
                   ? say("%1? Today's heaviest load is %2.", typed, expected)
                   : say("%1? The heaviest load of today and last time is %2.", typed, expected);
    case Kind::Light:
        break;
    }
    return doubt.today
               ? say("%1? Today's lightest load is %2.", typed, expected)
               : say("%1? The lightest load of today and last time is %2.", typed, expected);
}

} // namespace slopebook::answers
