// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook store init, grant, status.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/interrupt.h"
#include "core/model/errors.h"
#include "core/store/setup.h"

#include <memory>

namespace slopebook::app {

namespace {

struct StoreOptions {
    std::string address;
    std::vector<std::string> squads;
    std::string login, squad, may;
    bool json = false;
};

const char* word(store::May may) {
    switch (may) {
    case store::May::Nothing:
        return "nothing";
    case store::May::Read:
        return "read";
    case store::May::Write:
        return "write";
    }
    return "";
}

store::May mayMeant(const std::string& text) {
    for (const store::May may : {store::May::Nothing, store::May::Read, store::May::Write})
        if (text == word(may))
            return may;
    throw BadInput(asIs("--may " + text), asIs("read, write or nothing"));
}

Json begunFor(const store::Address& address, const char* did) {
    Json json;
    json.object()
        .field("did", did)
        .field("place", address.asked().place)
        .field("database", address.asked().database);
    return json;
}

std::string placeText(const store::Asked& asked) {
    return asked.place + ", database " + asked.database;
}

int runInit(const StoreOptions& options) {
    Interruptible interruptible;
    const store::Address address = store::Address::read(options.address);
    const store::Initialised done =
        store::initialise(address, options.squads, interruptible.progress());
    if (options.json) {
        Json json = begunFor(address, "init");
        json.field("layout", store::storeLayout);
        if (done.layoutBefore > 0)
            json.field("layout_before", done.layoutBefore);
        else
            json.key("layout_before").null();
        namesJson(json, "squads_made", done.squads);
        json.endObject();
        print(json.text());
        return exitDone;
    }
    std::string text = done.layoutBefore == 0                    ? "Made a store: "
                       : done.layoutBefore == store::storeLayout ? "A store, as it was: "
                                                                 : "Brought the store up to date: ";
    text += placeText(address.asked()) + "\n";
    for (const std::string& squad : done.squads)
        text += "New squad: " + squad + "\n";
    print(text);
    return exitDone;
}

int runGrant(const StoreOptions& options) {
    Interruptible interruptible;
    const store::May may = mayMeant(options.may);
    const store::Address address = store::Address::read(options.address);
    const store::Granted done =
        store::grant(address, options.login, options.squad, may, interruptible.progress());
    if (options.json) {
        Json json = begunFor(address, "grant");
        json.field("login", done.role)
            .field("squad", done.squad)
            .field("before", word(done.before))
            .field("now", word(done.now))
            .endObject();
        print(json.text());
        return exitDone;
    }
    print(
        "'" + done.role + "' may " + word(done.now) + " in '" + done.squad + "'" +
        (done.before == done.now ? ", as before" : std::string(", before: ") + word(done.before)) +
        ".\n");
    return exitDone;
}

void printJson(const store::Address& address, const store::Status& status) {
    Json json = begunFor(address, "status");
    json.field("login", status.asked.login)
        .field("manages", status.manages)
        .field("server", status.serverVersion / 10000)
        .field("encrypted", status.encrypted)
        .field("id", store::uuidText(status.id))
        .field("layout", static_cast<int>(status.layout))
        .field("writings", static_cast<double>(status.writings))
        .field("bytes", static_cast<double>(status.bytes));
    json.key("squads").array();
    for (const store::SquadStatus& one : status.squads)
        json.object()
            .field("name", one.squad.name)
            .field("id", store::uuidText(one.squad.uuid))
            .field("may_write", one.squad.mayWrite)
            .field("athletes", static_cast<double>(one.athletes))
            .field("sessions", static_cast<double>(one.sessions))
            .field("sets", static_cast<double>(one.sets))
            .endObject();
    json.endArray().endObject();
    print(json.text());
}

int runStatus(const StoreOptions& options) {
    Interruptible interruptible;
    const store::Address address = store::Address::read(options.address);
    const store::Status status = store::status(address, interruptible.progress());
    if (options.json) {
        printJson(address, status);
        return exitDone;
    }
    std::string text = placeText(status.asked) + " (PostgreSQL " +
                       std::to_string(status.serverVersion / 10000) + ", " +
                       (status.encrypted ? "encrypted" : "not encrypted") + "), layout " +
                       std::to_string(status.layout) + "\n" + "Login " + status.asked.login +
                       (status.manages ? ", manages the store\n" : "\n") + "Written to " +
                       std::to_string(status.writings) + " times, " +
                       std::to_string((status.bytes + 500'000) / 1'000'000) + " MB\n";
    if (status.squads.empty())
        text += "No squad is open to this login.\n";
    for (const store::SquadStatus& one : status.squads)
        text += "  " + one.squad.name + " (" +
                (one.squad.mayWrite ? "write"
                 : status.manages   ? "manage"
                                    : "read") +
                "): " + std::to_string(one.athletes) + " athletes, " +
                std::to_string(one.sessions) + " sessions, " + std::to_string(one.sets) + " sets\n";
    print(text);
    return exitDone;
}

CLI::App& addVerbOf(CLI::App& store, const char* name, const char* help,
                    const std::shared_ptr<StoreOptions>& options) {
    CLI::App& verb = *store.add_subcommand(name, help);
    verb.add_option("STORE", options->address,
                    "Where it is: postgresql://LOGIN@HOST/DATABASE, \"host=... dbname=... "
                    "user=...\" or service=NAME, without the password, which PostgreSQL's library "
                    "takes from ~/.pgpass or PGPASSWORD")
        ->required();
    verb.add_flag("--json", options->json, "JSON: what was done or found");
    return verb;
}

} // namespace

void addStore(CLI::App& app, int& exit) {
    auto* store = app.add_subcommand(
        "store", "A shared store for many desks (PostgreSQL): make it, let people in, look at it");
    store->require_subcommand(1);
    const auto options = std::make_shared<StoreOptions>();
    CLI::App& init = addVerbOf(*store, "init",
                               "Makes a store in that database, or brings it up to date", options);
    init.add_option("--squad", options->squads, "A squad to be made; may be given several times")
        ->allow_extra_args(false);
    init.callback([options, &exit] { exit = runInit(*options); });
    CLI::App& grant = addVerbOf(*store, "grant", "What a login may in a squad", options);
    grant.add_option("--login", options->login, "A login that the server knows")->required();
    grant.add_option("--squad", options->squad, "The squad's name")->required();
    grant.add_option("--may", options->may, "read, write or nothing")->required();
    grant.callback([options, &exit] { exit = runGrant(*options); });
    CLI::App& status =
        addVerbOf(*store, "status", "What stands there, as this login sees it", options);
    status.callback([options, &exit] { exit = runStatus(*options); });
}

} // namespace slopebook::app
