// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/ask.h"
#include "app/commands/partsjson.h"

namespace slopebook::app {

using namespace answers;

namespace {

using Blocks = std::span<const Stored<BlockId, Block>>;

std::optional<std::string> blockName(Blocks blocks, Date date) {
    const auto block = questions::blockOn(blocks, date);
    return block ? std::optional(block->name) : std::nullopt;
}

void followedJson(Json& json, const Followed& each, const std::vector<Effort>& felt, Blocks blocks,
                  double level) {
    json.object().field("date", dateKey(each.session.date, each.session.ordinal));
    json.key("seen").array();
    for (const double velocity : each.seen)
        json.value(velocity);
    json.endArray();
    json.key("rpe").array(); // of the sets at the load, in their order
    for (const Effort effort : felt)
        json.value(effort.value());
    json.endArray();
    json.field("line", each.line ? std::optional(*each.line) : std::nullopt)
        .field("se", each.se)
        .ends("low", "high", each.interval)
        .field("extrapolated", each.extrapolated)
        .field("device_bias", each.bias)
        .field("block", blockName(blocks, each.session.date));
    json.key("change");
    if (each.change)
        changeJson(json, *each.change);
    else
        json.null();
    json.key("seen_change");
    if (each.seenChange) {
        json.object();
        readJson(json, *each.seenChange);
        json.endObject();
    } else {
        json.null();
    }
    json.key("one_rm");
    oneRmJson(json, each.oneRm, level, each.session.measuredOneRm);
    json.endObject();
}

void trendJson(Json& json, const Answer<Trend>& trend) {
    json.key("trend").object();
    if (trend)
        json.field("per_week", trend->perWeek)
            .ends("low", "high", trend->interval)
            .field("sessions", trend->sessions)
            .field("start", trend->start);
    else
        json.field("reason", english(trend.why().reason));
    json.endObject();
}

} // namespace

void followJson(Json& json, const questions::Background& about, const Follow& follow,
                const std::vector<std::vector<Effort>>& felt,
                std::span<const Stored<BlockId, Block>> blocks, double level) {
    const LiftSession& baseline = follow.sessions.at(follow.baseline).session;
    json.object()
        .field("athlete", about.athlete.value.name)
        .field("lift", about.lift.value.name)
        .field("load", kilograms(follow.load))
        .field("level", level)
        .field("baseline", dateKey(baseline.date, baseline.ordinal))
        .field("smallest_detectable", follow.smallestDetectable);
    trendJson(json, follow.trend);
    json.key("sessions").array();
    for (std::size_t i = 0; i < follow.sessions.size(); ++i)
        followedJson(json, follow.sessions[i], felt.at(i), blocks, level);
    json.endArray();
    json.key("blocks").array();
    for (const auto& [id, block] : blocks) {
        json.object()
            .field("name", block.name)
            .field("first", isoDate(block.first))
            .field("last", isoDate(block.last));
        storyFields(json, block);
        json.endObject();
    }
    json.endArray();
    notesJson(json, follow.notes);
    json.endObject();
}

} // namespace slopebook::app
