// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/attemptdoubt.h"

#include "core/model/phrases/answers.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <string>

namespace slopebook::answers {

namespace {

constexpr double beyondEarlier = 1.6;

struct Usual {
    double low = 0, high = 0;
    bool holds(double value) const { return low <= value && value <= high; }
};

constexpr Usual contactTimes{0.08, 1.5}; // s

/// What a body can do, wide: a jump of 3 cm to 1.2 m, a pull of 100 N to 15 kN, a hop or throw of
/// 10 cm to 60 m.
std::optional<Usual> whatABodyCan(const TestKind& kind) {
    switch (kind.formula) {
    case TestFormula::FlightHeight:
    case TestFormula::FlightRsi:
        return Usual{0.15, 1.0};
    case TestFormula::HeightRsi:
        return Usual{0.03, 1.2};
    case TestFormula::PerBodyMass:
        return Usual{100, 15000};
    case TestFormula::Value:
        break;
    }
    if (kind.unit == "m")
        return Usual{0.1, 60};
    if (kind.unit == "N")
        return Usual{100, 15000};
    return std::nullopt;
}

template <class Take>
std::optional<Usual> seenBefore(const std::vector<Attempt>& earlier, const Take& take) {
    std::optional<Usual> range;
    for (const Attempt& attempt : earlier) {
        const std::optional<double> value = attempt.excluded.empty() ? take(attempt) : std::nullopt;
        if (!value)
            continue;
        if (!range)
            range = Usual{*value, *value};
        range->low = std::min(range->low, *value);
        range->high = std::max(range->high, *value);
    }
    if (range)
        range = Usual{range->low / beyondEarlier, range->high * beyondEarlier};
    return range;
}

// Centimetres and milliseconds before a mark that slipped one place.
std::optional<double> meantInstead(double typed, const Usual& usual) {
    for (const double meant : std::array{typed / 100, typed / 1000, typed / 10, typed * 10})
        if (usual.holds(meant))
            return meant;
    return std::nullopt;
}

} // namespace

std::optional<AttemptDoubt> doubtOf(const TestKind& kind, const std::vector<Attempt>& typed,
                                    const std::vector<Attempt>& earlier) {
    auto values = seenBefore(earlier, [](const Attempt& a) { return std::optional(a.value); });
    if (!values)
        values = whatABodyCan(kind);
    auto contacts = seenBefore(earlier, [](const Attempt& a) { return a.contact; });
    if (!contacts)
        contacts = contactTimes;
    for (std::size_t i = 0; i < typed.size(); ++i) {
        if (!typed[i].excluded.empty())
            continue;
        const double value = typed[i].value;
        if (values && !values->holds(value))
            return AttemptDoubt{i,           false,        value,
                                values->low, values->high, meantInstead(value, *values)};
        if (const auto contact = typed[i].contact; contact && !contacts->holds(*contact))
            return AttemptDoubt{i,
                                true,
                                *contact,
                                contacts->low,
                                contacts->high,
                                meantInstead(*contact, *contacts)};
    }
    return std::nullopt;
}

namespace {

/// With the digits that were typed, and no more.
Words asTyped(double value) {
    char digits[32];
    const auto end =
        std::to_chars(digits, digits + sizeof digits, value, std::chars_format::general, 10);
    return figure(std::string(digits, end.ptr));
}

} // namespace

std::vector<Words> attemptDoubtWords(const AttemptDoubt& doubt, bool knownAthlete) {
    const Words typed = asTyped(doubt.typed);
    const Words low = figure(doubt.low, 2), high = figure(doubt.high, 2);
    std::vector<Words> all{
        knownAthlete ? say("%1 is far from this athlete's others (%2 to %3).", typed, low, high)
                     : say("%1 is outside what is usual (%2 to %3).", typed, low, high)};
    if (doubt.contact)
        all.push_back(say("It stands for the contact time in s."));
    if (doubt.perhaps)
        all.push_back(say("Is %1 meant?", asTyped(*doubt.perhaps)));
    return all;
}

} // namespace slopebook::answers
