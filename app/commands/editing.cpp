// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/editing.h"

#include "app/commands/commands.h"
#include "core/exchange/cells.h"
#include "core/log/rehearsal.h"
#include "core/log/sound.h"
#include "core/model/errors.h"
#include "core/model/exactmass.h"
#include "core/model/names.h"

namespace slopebook::app {

namespace {

std::string pastOf(const std::string& did) {
    if (did == "add")
        return "Added";
    if (did == "remove")
        return "Removed";
    if (did == "exclude")
        return "Excluded";
    return did == "include" ? "Included" : "Changed";
}

void tellEdited(const Editing& editing, const Edited& edited) {
    if (!editing.json) {
        print(edited.same ? "Nothing to do: it is so already: " + edited.name + "\n"
                          : pastOf(edited.did) + ": " + edited.name + "\n");
        return;
    }
    Json json;
    json.object()
        .field("log", editing.log.string())
        .field("did", edited.same ? std::string("nothing") : edited.did)
        .field("what", edited.what);
    for (const auto& [key, thing] :
         {std::pair{"before", &edited.before}, std::pair{"after", &edited.after}}) {
        json.key(key);
        if (*thing)
            (*thing)(json);
        else
            json.null();
    }
    json.endObject();
    print(json.text());
}

} // namespace

void addEditing(CLI::App& command, Editing& editing, bool masses) {
    command.add_option("LOG", editing.log, "The log")->required();
    command.add_flag("--json", editing.json, "JSON: what was done, with before and after");
    command.add_flag("--even-if-not-sound", editing.unsoundToo,
                     "Writes into a log that check finds not sound, which is refused otherwise");
    if (masses)
        command.add_flag("--lb", editing.pounds, "Masses of this command are pounds");
}

int runEdit(const Editing& editing, const std::function<Edited(log::Log& log)>& work) {
    if (const log::Rehearsal tried(editing.log); tried.log()) {
        if (!editing.unsoundToo)
            log::requireSoundToWrite(tried.log()->check(), editing.log);
        work(*tried.log());
    }
    log::Log log = log::Log::open(editing.log);
    if (!editing.unsoundToo)
        log::writeOnlyWhenSound(log);
    // Read and written as one: what another program wrote meanwhile is seen, and never written
    // over.
    Edited edited;
    log.together([&] { edited = work(log); });
    tellEdited(editing, edited);
    return exitDone;
}

Mass massTyped(const std::string& text, MassUnit unit, const char* what, bool zeroToo) {
    const auto exact = parseExactMass(text, unit);
    const auto number = exchange::readNumber(text);
    if (zeroToo && number && *number == 0)
        return Mass{0};
    if (!exact || exact->units <= 0 || roundedToGrams(*exact) > storableLoadLimit)
        throw BadInput(asIs(std::string(what) + " " + english(exchange::found(text))),
                       asIs(unit == MassUnit::Pound
                                ? "pounds up to 4409 with a decimal point, such as 135"
                                : "kilograms up to 2000 with a decimal point, such as 62.5"));
    return roundedToGrams(*exact);
}

std::string nameTyped(const std::string& text) {
    const auto name = tidyName(text);
    if (!name)
        throw BadInput(exchange::found(text), asIs("a name"));
    return *name;
}

Date dayTyped(const std::string& text) {
    const auto day = parseIsoDate(text);
    if (!day)
        throw BadInput(exchange::found(text), asIs("a day such as 2026-03-14"));
    return *day;
}

double numberTyped(const std::string& text, double above, double below, const char* expected) {
    const auto number = exchange::readNumber(text);
    if (!number || *number <= above || *number >= below)
        throw BadInput(exchange::found(text), asIs(expected));
    return *number;
}

void athleteJson(Json& json, const Athlete& athlete) {
    json.object().field("name", athlete.name).field("note", athlete.note).endObject();
}

void deviceJson(Json& json, const Device& device) {
    json.object().field("name", device.name).field("note", device.note).endObject();
}

void liftJson(Json& json, const Lift& lift) {
    json.object()
        .field("name", lift.name)
        .field("velocity_kind", word(lift.kind))
        .field("point_rule", word(lift.rule))
        .field("ballistic", lift.ballistic)
        .field("moves_body", lift.movesBody);
    json.key("mvt");
    if (lift.mvt)
        json.object()
            .field("value", lift.mvt->value)
            .field("sd", lift.mvt->sd)
            .field("origin", lift.mvt->origin == Mvt::Origin::Published ? "published" : "coach")
            .field("source", lift.mvt->source)
            .endObject();
    else
        json.null();
    json.field("smallest_velocity", lift.smallestVelocity)
        .field("smallest_one_rm", lift.smallestOneRm)
        .field("note", lift.note)
        .endObject();
}

} // namespace slopebook::app
