// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/equipment.h"

#include "core/model/errors.h"

#include <algorithm>
#include <charconv>

namespace slopebook {

namespace {

constexpr ExactMass tonne{1000 * unitsPerKilogram};

Words shownMass(ExactMass mass, MassUnit unit) {
    return say("%1 %2", figure(massText(mass, unit)), word(unit));
}

void requireMass(ExactMass mass, MassUnit unit, const Words& expected) {
    if (mass.units <= 0 || mass >= tonne)
        throw BadInput(shownMass(mass, unit), expected);
}

Words named(const std::string& name, Phrase nameless, Phrase named) {
    return name.empty() ? say(nameless) : say(named, name);
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

[[noreturn]] void badPlate(std::string_view part) {
    throw BadInput(
        say("\"%1\"", part),
        say("plates as MASSxPAIRS, like 20x2,10x2,2.5x1 (mass of one plate, pairs from 1 "
            "to %1)",
            mostPairs));
}

Plate parsePlate(std::string_view part, MassUnit unit) {
    const std::string_view whole = trimmed(part);
    const auto cross = whole.find_first_of("xX*");
    std::string_view mass = trimmed(whole.substr(0, cross));
    Plate plate{.unit = unit};
    for (const MassUnit other : {MassUnit::Kilogram, MassUnit::Pound})
        if (mass.size() > 2 && mass.ends_with(word(other))) {
            plate.unit = other;
            mass = trimmed(mass.substr(0, mass.size() - 2));
            break;
        }
    const auto read = parseExactMass(mass, plate.unit);
    if (!read || read->units <= 0)
        badPlate(whole);
    plate.mass = *read;
    if (cross != std::string_view::npos) {
        const std::string_view pairs = trimmed(whole.substr(cross + 1));
        const auto [end, error] =
            std::from_chars(pairs.data(), pairs.data() + pairs.size(), plate.pairs);
        if (error != std::errc{} || end != pairs.data() + pairs.size() || plate.pairs < 1 ||
            plate.pairs > mostPairs)
            badPlate(whole);
    }
    return plate;
}

} // namespace

std::string_view word(FixedMass::Use use) {
    return use == FixedMass::Use::Added ? "added" : "alone";
}

std::optional<FixedMass::Use> fixedMassUseFromWord(std::string_view word) {
    if (word == "alone")
        return FixedMass::Use::Alone;
    if (word == "added")
        return FixedMass::Use::Added;
    return std::nullopt;
}

void validate(const Equipment& equipment) {
    if (equipment.name.find_first_not_of(" \t") == std::string::npos)
        throw BadInput(say("no name"), say("a name for the set of equipment"));
    if (equipment.bars.empty() && equipment.fixed.empty())
        throw BadInput(say("nothing to lift"), say("a bar or another mass"));
    for (const Bar& bar : equipment.bars)
        requireMass(bar.mass, bar.unit,
                    named(bar.name, "a mass above 0 and under 1000 kg for bar",
                          "a mass above 0 and under 1000 kg for bar \"%1\""));
    for (const FixedMass& fixed : equipment.fixed)
        requireMass(fixed.mass, fixed.unit,
                    named(fixed.name, "a mass above 0 and under 1000 kg for mass",
                          "a mass above 0 and under 1000 kg for mass \"%1\""));
    for (auto plate = equipment.plates.begin(); plate != equipment.plates.end(); ++plate) {
        requireMass(plate->mass, plate->unit, say("a mass above 0 and under 1000 kg for a plate"));
        if (plate->pairs < 1 || plate->pairs > mostPairs)
            throw BadInput(say("%1 pairs", plate->pairs),
                           say("1 to %1 pairs of a plate", mostPairs));
        if (std::any_of(equipment.plates.begin(), plate,
                        [&](const Plate& other) { return other.mass == plate->mass; }))
            throw BadInput(say("two rows for the %1 plate", shownMass(plate->mass, plate->unit)),
                           say("one row a plate"));
    }
    if (equipment.ceiling)
        requireMass(*equipment.ceiling, MassUnit::Kilogram,
                    say("a mass above 0 and under 1000 kg for the ceiling"));
}

std::vector<Plate> parsePlates(std::string_view text, MassUnit unit) {
    std::vector<Plate> plates;
    if (trimmed(text).empty())
        return plates;
    while (true) {
        const auto comma = text.find(',');
        const Plate plate = parsePlate(text.substr(0, comma), unit);
        const auto same = std::find_if(plates.begin(), plates.end(), [&](const Plate& other) {
            return other.mass == plate.mass;
        });
        if (same != plates.end())
            badPlate(trimmed(text.substr(0, comma)));
        plates.push_back(plate);
        if (comma == std::string_view::npos)
            return plates;
        text.remove_prefix(comma + 1);
    }
}

std::optional<ExactMass> plateStep(const Equipment& equipment) {
    std::optional<ExactMass> step;
    for (const Plate& plate : equipment.plates)
        if (!step || 2 * plate.mass < *step)
            step = 2 * plate.mass;
    return step;
}

} // namespace slopebook
