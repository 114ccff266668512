// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/validity.h"

#include "core/model/errors.h"
#include "core/model/names.h"
#include "core/model/phrases/log.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace slopebook::log {

namespace {
constexpr std::size_t longestText = 100'000;
constexpr double heaviestKilograms = 2000;

Words number(double value) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
    return figure({text.data(), end});
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

constexpr Phrase noName = "a name that is no text";
constexpr Phrase noNote = "a note that is no text";
constexpr Phrase noSource = "a source that is no text";
constexpr Phrase noReason = "a reason that is no text";

void requireText(const std::string& text, Phrase found) {
    if (!storableText(text))
        throw BadInput(say(found), say("UTF-8 text of at most 100,000 bytes"));
}

void requireName(const std::string& name, Phrase expected) {
    requireText(name, noName);
    if (!tidyName(name))
        throw BadInput(say("a blank name"), say(expected));
}

void requireDate(Date date, Phrase expected) {
    if (!date.ok() || date.year() < std::chrono::year{0} || date.year() > std::chrono::year{9999})
        throw BadInput(say("a date that does not exist"), say(expected));
}

void requireSpeed(double value, Phrase expected) {
    if (!(value > 0) || !(value < storableVelocityLimit))
        throw BadInput(number(value), say(expected));
}

void requireMvt(const Mvt& mvt) {
    requireSpeed(mvt.value, "an MVT above 0 and below 10 m/s");
    if (mvt.sd && (!(*mvt.sd >= 0) || !(*mvt.sd < storableVelocityLimit)))
        throw BadInput(number(*mvt.sd), say("an SD of the MVT from 0 to below 10 m/s"));
    requireText(mvt.source, noSource);
    // An athlete's own MVT is found from the maxima in the log, never kept beside them.
    if (mvt.origin == Mvt::Origin::Athlete || mvt.count != 0)
        throw BadInput(say("an athlete's own MVT"),
                       say("a lift's MVT: the coach's or a published one"));
}
} // namespace

void requireTidy(const std::string& name) {
    if (tidyName(name) != name)
        throw BadInput(say("'%1', with blanks or signs in it that are not seen", name),
                       say("the name without them"));
}

bool storableText(const std::string& text) {
    return text.size() <= longestText && text.find('\0') == std::string::npos && utf8(text);
}

void requireStorableLoad(Mass load) {
    if (load.grams < 0 || load > storableLoadLimit)
        throw BadInput(inWords(load), say("a load from 0 to %1", storableLoadLimit));
}

void requireValid(const Athlete& athlete) {
    requireName(athlete.name, "the name of the athlete");
    requireText(athlete.note, noNote);
}

void requireValid(const Device& device) {
    requireName(device.name, "the name of the device");
    requireText(device.note, noNote);
}

void requireValid(const Block& block) {
    requireName(block.name, "the name of the block");
    requireDate(block.first, "the block's first day");
    requireDate(block.last, "the block's last day");
    if (block.last < block.first)
        throw BadInput(say("a block that ends on %1", block.last),
                       say("a last day not before its first, %1", block.first));
    if (block.ceiling && (block.ceiling->grams <= 0 || *block.ceiling > storableLoadLimit))
        throw BadInput(inWords(*block.ceiling),
                       say("a ceiling above 0 and up to %1, or none", storableLoadLimit));
    requireText(block.trained, "a text of what was trained that is no text");
    if (block.aWeek && !sessionsAWeek(block.aWeek->fewest, block.aWeek->most))
        throw BadInput(sayAWeek(*block.aWeek),
                       say("sessions a week from 0.5 to 21 in halves, the fewest first, or none"));
    requireText(block.note, noNote);
}

void requireValid(const Lift& lift) {
    requireName(lift.name, "the name of the lift");
    if (lift.mvt)
        requireMvt(*lift.mvt);
    if (lift.smallestVelocity)
        requireSpeed(*lift.smallestVelocity,
                     "a smallest change that matters above 0 and below 10 m/s");
    if (lift.smallestOneRm &&
        (!(*lift.smallestOneRm > 0) || !(*lift.smallestOneRm <= heaviestKilograms)))
        throw BadInput(
            number(*lift.smallestOneRm),
            say("a smallest change that matters above 0 and up to %1", storableLoadLimit));
    requireText(lift.note, noNote);
}

void requireValid(const Equipment& equipment) {
    requireName(equipment.name, "the name of the set of equipment");
    requireText(equipment.note, noNote);
    for (const Bar& bar : equipment.bars)
        requireText(bar.name, noName);
    for (const FixedMass& fixed : equipment.fixed)
        requireText(fixed.name, noName);
    validate(equipment);
}

void requireValid(const TestKind& kind) {
    requireName(kind.name, "the name of the test");
    validate(kind);
    requireText(kind.unit, "a unit that is no text");
    if (kind.noise)
        requireText(kind.noise->source, noSource);
    requireText(kind.smallestSource, noSource);
    requireText(kind.note, noNote);
}

void requireValid(const SessionHead& session) {
    requireDate(session.date, "the day of the session");
    if (session.ordinal < 1)
        throw BadInput(say("session number %1", session.ordinal),
                       say("1 for the first session of a day"));
    if (session.bodyMass && (session.bodyMass->grams <= 0 || *session.bodyMass > storableLoadLimit))
        throw BadInput(inWords(*session.bodyMass),
                       say("a body mass above 0 and up to %1, or none", storableLoadLimit));
    requireText(session.note, noNote);
}

void requireValid(const Conditions& conditions) {
    requireText(conditions.place, "a place that is no text");
    requireText(conditions.surface, "a surface that is no text");
    requireText(conditions.footwear, "footwear that is no text");
    requireText(conditions.technique, "a technique that is no text");
    requireText(conditions.notComparable, noReason);
}

void requireValid(const Station& station) {
    requireName(station.name, "the name of the station");
    requireValid(station.conditions);
    validate(station);
    std::ranges::for_each(station.ladder, requireStorableLoad);
    requireText(station.note, noNote);
}

void requireValid(const Roster& roster) {
    requireDate(roster.day, "the day of the roster");
    validate(roster);
}

void requireValid(const Set& set) {
    requireStorableLoad(set.load);
    if (set.outcome == Outcome::NotLifted && !set.reps.empty())
        throw BadInput(say("%1 velocities of a load that was not lifted", set.reps.size()),
                       say("no velocity: what was not lifted has none"));
    if (set.outcome == Outcome::Lifted && !set.reason.empty())
        throw BadInput(say("a reason why a load was not lifted that was"),
                       say("such a reason only of a load that was not lifted"));
    if (set.effort && (set.effort->halves < 2 || set.effort->halves > 20))
        throw BadInput(number(set.effort->value()), say("an RPE from 1 to 10 in halves"));
    requireText(set.reason, noReason);
    requireText(set.excluded, noReason);
    requireText(set.note, noNote);
    for (const Rep& rep : set.reps) {
        requireSpeed(rep.velocity, "a velocity above 0 and below 10 m/s");
        requireText(rep.excluded, noReason);
    }
}

} // namespace slopebook::log
