// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook add, change, remove: athlete, device.
#include "app/commands/commands.h"
#include "app/commands/editing.h"

namespace slopebook::app {

namespace peopleediting {
namespace {

struct PersonOptions : Editing {
    std::string name;
    std::optional<std::string> rename, note;
};

/// How an athlete and a device are found and shown: alike but for their type.
struct Athletes {
    using Value = Athlete;
    static constexpr const char* what = "athlete";
    static constexpr const char* option = "--athlete";
    static auto named(const log::Log& log, const std::string& name) {
        return athleteNamed(log, name);
    }
    static void json(Json& out, const Athlete& athlete) { athleteJson(out, athlete); }
};
struct Devices {
    using Value = Device;
    static constexpr const char* what = "device";
    static constexpr const char* option = "--device";
    static auto named(const log::Log& log, const std::string& name) {
        return deviceNamed(log, name);
    }
    static void json(Json& out, const Device& device) { deviceJson(out, device); }
};

template <class Kind>
ThingJson shown(const typename Kind::Value& value) {
    return [value](Json& json) { Kind::json(json, value); };
}

template <class Kind>
Edited add(log::Log& log, const PersonOptions& options) {
    const typename Kind::Value value{.name = nameTyped(options.name),
                                     .note = options.note.value_or("")};
    log.add(value);
    return {.did = "add", .what = Kind::what, .name = value.name, .after = shown<Kind>(value)};
}

template <class Kind>
Edited change(log::Log& log, const PersonOptions& options) {
    const auto before = Kind::named(log, options.name);
    auto after = before.value;
    if (options.rename)
        after.name = nameTyped(*options.rename);
    if (options.note)
        after.note = *options.note;
    const bool same = after == before.value;
    if (!same)
        log.change(before.id, after);
    return {.did = "change",
            .what = Kind::what,
            .name = after.name,
            .before = shown<Kind>(before.value),
            .after = shown<Kind>(after),
            .same = same};
}

template <class Kind>
Edited remove(log::Log& log, const PersonOptions& options) {
    const auto before = Kind::named(log, options.name);
    log.remove(before.id);
    return {.did = "remove",
            .what = Kind::what,
            .name = before.value.name,
            .before = shown<Kind>(before.value)};
}

using Work = Edited (*)(log::Log&, const PersonOptions&);

CLI::App* addOne(CLI::App& verb, const char* what, const char* option, const std::string& help,
                 const std::shared_ptr<PersonOptions>& options, Work work, int& exit) {
    auto* command = verb.add_subcommand(what, help);
    addEditing(*command, *options);
    command->add_option(option, options->name, std::string("The ") + what + "'s name")->required();
    command->callback([options, work, &exit] {
        exit = runEdit(*options, [&](log::Log& log) { return work(log, *options); });
    });
    return command;
}

template <class Kind>
void addKind(const Verbs& verbs, int& exit) {
    const std::string what = Kind::what;
    const auto adding = std::make_shared<PersonOptions>();
    addOne(verbs.add, Kind::what, Kind::option, "A new " + what, adding, &add<Kind>, exit)
        ->add_option("--note", adding->note, "A note");
    const auto changing = std::make_shared<PersonOptions>();
    auto* command = addOne(verbs.change, Kind::what, Kind::option, "Name or note of the " + what,
                           changing, &change<Kind>, exit);
    command->add_option("--rename", changing->rename, "The new name");
    command->add_option("--note", changing->note, "The new note");
    const auto removing = std::make_shared<PersonOptions>();
    addOne(verbs.remove, Kind::what, Kind::option, "Away with one that nothing hangs on", removing,
           &remove<Kind>, exit);
}

} // namespace
} // namespace peopleediting

void addPeopleEdits(const Verbs& verbs, int& exit) {
    using namespace peopleediting;
    addKind<Athletes>(verbs, exit);
    addKind<Devices>(verbs, exit);
}

} // namespace slopebook::app
