// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/ask.h"
#include "app/commands/partsjson.h"
#include "core/answers/followsummary.h"

#include <algorithm>

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

void trendFields(Json& json, const Trend& trend) {
    json.field("per_week", trend.perWeek)
        .ends("low", "high", trend.interval)
        .field("sessions", trend.sessions)
        .field("start", trend.start);
}

void trendJson(Json& json, const Answer<Trend>& trend) {
    json.key("trend").object();
    if (trend)
        trendFields(json, *trend);
    else
        json.field("reason", english(trend.why().reason));
    json.endObject();
}

/// What all sessions of a block say together, and against the baseline.
void blockJson(Json& json, const FollowedBlock& block) {
    const MatrixCell& cell = block.cell;
    json.field("sessions", cell.sessions)
        .field("mean", cell.value ? std::optional(*cell.value) : std::nullopt)
        .field("se", cell.value ? std::optional(cell.se) : std::nullopt)
        .ends("low", "high", cell.interval)
        .field("extrapolated", cell.extrapolated)
        .field("baseline", block.holdsBaseline);
    if (!cell.value)
        json.field("reason", english(cell.value.why().reason));
    json.key("change");
    if (cell.against) {
        json.object();
        if (cell.against->why.empty() || !cell.against->comparable())
            readJson(json, cell.against->read);
        else
            json.field("reason", english(cell.against->why));
        json.endObject();
    } else {
        json.null();
    }
    json.key("trend").object();
    if (block.trend) {
        trendFields(json, *block.trend);
        json.field("first", isoDate(block.trend->first)).field("last", isoDate(block.trend->last));
    } else {
        json.field("reason", english(block.trend.why().reason));
    }
    json.endObject();
}

void notLiftedJson(Json& json, const std::vector<NotLifted>& days) {
    json.key("not_lifted").array();
    for (const NotLifted& day : days)
        json.object()
            .field("date", isoDate(day.date))
            .field("what", day.tried ? "not lifted" : "not possible")
            .field("load", day.load ? std::optional(kilograms(*day.load)) : std::nullopt)
            .field("reason", day.reason)
            .endObject();
    json.endArray();
}

} // namespace

void followJson(Json& json, const questions::Background& about, const FollowedSeason& season,
                const std::vector<std::vector<Effort>>& felt,
                std::span<const Stored<BlockId, Block>> blocks, double level) {
    const Follow& follow = season.follow;
    const LiftSession& baseline = follow.sessions.at(follow.baseline).session;
    json.object()
        .field("athlete", about.athlete.value.name)
        .field("lift", about.lift.value.name)
        .field("load", kilograms(follow.load))
        .field("level", level)
        .field("baseline",
               season.block ? season.block->name : dateKey(baseline.date, baseline.ordinal))
        .field("baseline_is", season.block ? "block" : "day")
        .field("baseline_value", season.baselineValue())
        .field("sentence", english(followSentence(season)))
        .field("smallest_detectable", follow.smallestDetectable);
    trendJson(json, follow.trend);
    json.key("sessions").array();
    for (std::size_t i = 0; i < follow.sessions.size(); ++i)
        followedJson(json, follow.sessions[i], felt.at(i), blocks, level);
    json.endArray();
    notLiftedJson(json, season.notLifted);
    json.key("blocks").array();
    for (const auto& [id, block] : blocks) {
        json.object()
            .field("name", block.name)
            .field("first", isoDate(block.first))
            .field("last", isoDate(block.last))
            .field("ceiling",
                   block.ceiling ? std::optional(kilograms(*block.ceiling)) : std::nullopt);
        const auto found = std::ranges::find(season.blocks, id, &FollowedBlock::id);
        if (found != season.blocks.end())
            blockJson(json, *found);
        json.endObject();
    }
    json.endArray();
    notesJson(json, follow.notes);
    json.endObject();
}

} // namespace slopebook::app
