// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook add, change, remove: block.
#include "app/commands/commands.h"
#include "app/commands/editing.h"
#include "app/commands/partsjson.h"
#include "core/exchange/cells.h"
#include "core/model/errors.h"

namespace slopebook::app {

void blockJson(Json& json, const Block& block) {
    json.object()
        .field("name", block.name)
        .field("first", isoDate(block.first))
        .field("last", isoDate(block.last));
    storyFields(json, block);
    json.endObject();
}

namespace blockediting {
namespace {

struct BlockOptions : Editing {
    std::string name;
    std::optional<std::string> rename, begins, first, last, ceiling, trained, aWeek, note;
};

/// What was typed, in place of what the block says so far; "none" takes a figure away.
Block typed(const BlockOptions& options, Block block) {
    if (options.first)
        block.first = dayTyped(*options.first);
    if (options.last)
        block.last = dayTyped(*options.last);
    if (block.last < block.first)
        throw BadInput(asIs("a block that ends before it begins"),
                       asIs("a last day that is not before the first"));
    if (options.ceiling)
        block.ceiling =
            *options.ceiling == "none"
                ? std::nullopt
                : std::optional(massTyped(*options.ceiling, options.unit(), "the ceiling"));
    if (options.trained)
        block.trained = *options.trained;
    if (options.aWeek) {
        block.aWeek = *options.aWeek == "none" ? std::nullopt : sessionsAWeek(*options.aWeek);
        if (!block.aWeek && *options.aWeek != "none")
            throw BadInput(exchange::found(*options.aWeek),
                           asIs("sessions a week such as 3, 2-3 or 2.5"));
    }
    if (options.note)
        block.note = *options.note;
    return block;
}

Stored<BlockId, Block> meant(const log::Log& log, const BlockOptions& options) {
    return blockNamed(log, options.name,
                      options.begins ? std::optional(dayTyped(*options.begins)) : std::nullopt);
}

ThingJson shown(const Block& block) {
    return [block](Json& json) { blockJson(json, block); };
}

Edited add(log::Log& log, const BlockOptions& options) {
    const Block block = typed(options, {.name = nameTyped(options.name)});
    log.add(block);
    return {.did = "add", .what = "block", .name = block.name, .after = shown(block)};
}

Edited change(log::Log& log, const BlockOptions& options) {
    const auto before = meant(log, options);
    Block after = typed(options, before.value);
    if (options.rename)
        after.name = nameTyped(*options.rename);
    const bool same = after == before.value;
    if (!same)
        log.change(before.id, after);
    return {.did = "change",
            .what = "block",
            .name = after.name,
            .before = shown(before.value),
            .after = shown(after),
            .same = same};
}

Edited remove(log::Log& log, const BlockOptions& options) {
    const auto before = meant(log, options);
    log.remove(before.id);
    return {
        .did = "remove", .what = "block", .name = before.value.name, .before = shown(before.value)};
}

using Work = Edited (*)(log::Log&, const BlockOptions&);

std::pair<CLI::App*, std::shared_ptr<BlockOptions>> addOne(CLI::App& verb, const char* help,
                                                           Work work, int& exit) {
    auto* command = verb.add_subcommand("block", help);
    const auto options = std::make_shared<BlockOptions>();
    addEditing(*command, *options, true);
    command->add_option("--block", options->name, "The block's name")->required();
    command->callback([options, work, &exit] {
        exit = runEdit(*options, [&](log::Log& log) { return work(log, *options); });
    });
    return {command, options};
}

void addFields(CLI::App& command, BlockOptions& options, bool needed) {
    command.add_option("--first", options.first, "Its first day")->required(needed);
    command.add_option("--last", options.last, "Its last day, which belongs to it")
        ->required(needed);
    command.add_option("--ceiling", options.ceiling,
                       "The heaviest load that was at hand; none: there was no such bound");
    command.add_option("--trained", options.trained, "What was done in it");
    command.add_option("--a-week", options.aWeek,
                       "Sessions a week as planned: 3, 2-3 or 2.5; none: not said");
    command.add_option("--note", options.note, "A note");
}

} // namespace
} // namespace blockediting

void addBlockEdits(const Verbs& verbs, int& exit) {
    using namespace blockediting;
    const auto [adding, added] = addOne(verbs.add, "A new training block", &add, exit);
    addFields(*adding, *added, true);
    const auto [changing, changed] =
        addOne(verbs.change, "Days, ceiling or words of a training block", &change, exit);
    addFields(*changing, *changed, false);
    changing->add_option("--rename", changed->rename, "The new name");
    const auto [removing, removed] =
        addOne(verbs.remove, "Away with a training block; its sessions stay", &remove, exit);
    for (auto* command : {changing, removing})
        command->add_option("--begins", (command == changing ? changed : removed)->begins,
                            "Its first day so far, where several blocks have one name");
}

} // namespace slopebook::app
