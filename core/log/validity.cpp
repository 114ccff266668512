// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/validity.h"

#include "core/model/errors.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace slopebook::log {

namespace {
constexpr std::size_t longestText = 100'000;
constexpr double heaviestKilograms = 2000;

std::string number(double value) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
    return {text.data(), end};
}

bool utf8(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    for (std::size_t i = 0; i < text.size();) {
        const unsigned lead = byte(i);
        const std::size_t length = lead < 0x80                    ? 1
                                   : lead >= 0xC2 && lead <= 0xDF ? 2
                                   : lead >= 0xE0 && lead <= 0xEF ? 3
                                   : lead >= 0xF0 && lead <= 0xF4 ? 4
                                                                  : 0;
        if (length == 0 || i + length > text.size())
            return false;
        unsigned code = length == 1 ? lead : lead & (0xFFU >> (length + 1));
        for (std::size_t k = 1; k < length; ++k) {
            if ((byte(i + k) & 0xC0U) != 0x80)
                return false;
            code = (code << 6) | (byte(i + k) & 0x3FU);
        }
        const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
        const bool overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
        if (surrogate || overlong || code > 0x10FFFF)
            return false;
        i += length;
    }
    return true;
}

void requireText(const std::string& text, const char* what) {
    if (!storableText(text))
        throw BadInput(std::string("a ") + what + " that is no text",
                       "UTF-8 text of at most 100,000 bytes");
}

void requireName(const std::string& name, const char* of) {
    requireText(name, "name");
    if (name.find_first_not_of(" \t\r\n\f\v") == std::string::npos)
        throw BadInput("a blank name", std::string("the name of ") + of);
}

void requireDate(Date date, const char* what) {
    if (!date.ok() || date.year() < std::chrono::year{0} || date.year() > std::chrono::year{9999})
        throw BadInput("a date that does not exist", what);
}

void requireSpeed(double value, const char* what) {
    if (!(value > 0) || !(value < storableVelocityLimit))
        throw BadInput(number(value), std::string(what) + " above 0 and below 10 m/s");
}

void requireMvt(const Mvt& mvt) {
    requireSpeed(mvt.value, "an MVT");
    if (mvt.sd && (!(*mvt.sd >= 0) || !(*mvt.sd < storableVelocityLimit)))
        throw BadInput(number(*mvt.sd), "an SD of the MVT from 0 to below 10 m/s");
    requireText(mvt.source, "source");
    // An athlete's own MVT is found from the maxima in the log, never kept beside them.
    if (mvt.origin == Mvt::Origin::Athlete || mvt.count != 0)
        throw BadInput("an athlete's own MVT", "a lift's MVT: the coach's or a published one");
}
} // namespace

bool storableText(const std::string& text) {
    return text.size() <= longestText && text.find('\0') == std::string::npos && utf8(text);
}

void requireStorableLoad(Mass load) {
    if (load.grams < 0 || load > storableLoadLimit)
        throw BadInput(number(kilograms(load)) + " kg", "a load from 0 to 2000 kg");
}

void requireValid(const Athlete& athlete) {
    requireName(athlete.name, "the athlete");
    requireText(athlete.note, "note");
}

void requireValid(const Device& device) {
    requireName(device.name, "the device");
    requireText(device.note, "note");
}

void requireValid(const Block& block) {
    requireName(block.name, "the block");
    requireDate(block.first, "the block's first day");
    requireDate(block.last, "the block's last day");
    if (block.last < block.first)
        throw BadInput("a block that ends on " + isoDate(block.last),
                       "a last day not before its first, " + isoDate(block.first));
    if (block.ceiling && (block.ceiling->grams <= 0 || *block.ceiling > storableLoadLimit))
        throw BadInput(number(kilograms(*block.ceiling)) + " kg",
                       "a ceiling above 0 and up to 2000 kg, or none");
    requireText(block.note, "note");
}

void requireValid(const Lift& lift) {
    requireName(lift.name, "the lift");
    if (lift.mvt)
        requireMvt(*lift.mvt);
    if (lift.smallestVelocity)
        requireSpeed(*lift.smallestVelocity, "a smallest change that matters");
    if (lift.smallestOneRm &&
        (!(*lift.smallestOneRm > 0) || !(*lift.smallestOneRm <= heaviestKilograms)))
        throw BadInput(number(*lift.smallestOneRm),
                       "a smallest change that matters above 0 and up to 2000 kg");
    requireText(lift.note, "note");
}

void requireValid(const Equipment& equipment) {
    requireName(equipment.name, "the set of equipment");
    requireText(equipment.note, "note");
    for (const Bar& bar : equipment.bars)
        requireText(bar.name, "name");
    for (const FixedMass& fixed : equipment.fixed)
        requireText(fixed.name, "name");
    validate(equipment);
}

void requireValid(const TestKind& kind) {
    requireName(kind.name, "the test");
    validate(kind);
    requireText(kind.unit, "unit");
    if (kind.noise)
        requireText(kind.noise->source, "source");
    requireText(kind.smallestSource, "source");
    requireText(kind.note, "note");
}

void requireValid(const SessionHead& session) {
    requireDate(session.date, "the day of the session");
    if (session.ordinal < 1)
        throw BadInput("session number " + std::to_string(session.ordinal),
                       "1 for the first session of a day");
    if (session.bodyMass && (session.bodyMass->grams <= 0 || *session.bodyMass > storableLoadLimit))
        throw BadInput(number(kilograms(*session.bodyMass)) + " kg",
                       "a body mass above 0 and up to 2000 kg, or none");
    requireText(session.place, "place");
    requireText(session.note, "note");
}

void requireValid(const Set& set) {
    requireStorableLoad(set.load);
    requireText(set.excluded, "reason");
    requireText(set.note, "note");
    for (const Rep& rep : set.reps) {
        requireSpeed(rep.velocity, "a velocity");
        requireText(rep.excluded, "reason");
    }
}

} // namespace slopebook::log
