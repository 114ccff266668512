// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/blockquestions.h"

#include "core/answers/fairreps.h"
#include "core/answers/nexttest.h"
#include "core/answers/samename.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"

#include <algorithm>

namespace slopebook::questions {

namespace {

std::optional<DeviceId> oneDevice(std::span<const LiftSession> sessions) {
    for (const LiftSession& session : sessions)
        if (session.conditions.device != sessions.front().conditions.device)
            return std::nullopt;
    return sessions.empty() ? std::nullopt : sessions.front().conditions.device;
}

/// The athlete's own repeat tests, without those that are two of these sessions: they count as
/// their spread already.
stats::RepeatSums ownBeside(const Background& about, std::optional<DeviceId> device,
                            std::span<const LiftSession> sessions, bool spreads) {
    auto pairs = answers::repeatPairs(about.sessions);
    const auto among = [&](const LiftSession& session) {
        return std::ranges::find(sessions, session.session, &LiftSession::session) !=
               sessions.end();
    };
    std::erase_if(pairs, [&](const answers::RepeatPair& pair) {
        return (device && pair.second.conditions.device != device) ||
               (spreads && among(pair.first) && among(pair.second));
    });
    return answers::repeatSums(pairs);
}

} // namespace

Answer<DayOrBlock> dayOrBlock(const log::Log& log, std::span<const LiftSession> sessions,
                              const std::string& text) {
    if (parseIsoDate(text.substr(0, text.find('#')))) {
        const auto found = sessionAt(sessions, text);
        if (!found)
            return found.why();
        return DayOrBlock(*found);
    }
    const auto side = batterySide(log, text); // BadInput lists the blocks
    if (const auto* days = std::get_if<DayStretch>(&side))
        return DayOrBlock(*days);
    return DayOrBlock(blockOf(log, std::get<BlockId>(side)));
}

answers::BlockSessions sessionsIn(const DayStretch& days, const std::string& name,
                                  std::span<const LiftSession> sessions) {
    answers::BlockSessions found{.name = name};
    for (const LiftSession& session : sessions)
        if (days.holds(session.date))
            found.sessions.push_back(session);
    return found;
}

answers::BlockSessions sessionsOf(const DayOrBlock& side, std::span<const LiftSession> sessions) {
    if (const auto* session = std::get_if<LiftSession>(&side))
        return {dateKey(session->date, session->ordinal), {*session}};
    if (const auto* days = std::get_if<DayStretch>(&side))
        return sessionsIn(*days, isoStretch(*days), sessions);
    const Block& block = std::get<Stored<BlockId, Block>>(side).value;
    auto found = sessionsIn({block.first, block.last}, block.name, sessions);
    found.block = block;
    return found;
}

answers::BlockSessions sessionsOf(const LiftSide& side,
                                  std::span<const Stored<BlockId, Block>> blocks,
                                  std::span<const LiftSession> sessions) {
    if (const auto* id = std::get_if<SessionId>(&side)) {
        const auto found = std::ranges::find(sessions, *id, &LiftSession::session);
        return found == sessions.end() ? answers::BlockSessions{}
                                       : sessionsOf(DayOrBlock(*found), sessions);
    }
    const auto* days = std::get_if<DayStretch>(&side);
    for (const auto& block : blocks)
        if (days ? DayStretch{block.value.first, block.value.last} == *days
                 : block.id == std::get<BlockId>(side))
            return sessionsOf(DayOrBlock(block), sessions);
    return days ? sessionsOf(DayOrBlock(*days), sessions) : answers::BlockSessions{};
}

answers::MeanOfTests meanOfTests(std::span<const Stored<BlockId, Block>> blocks,
                                 std::span<const LiftSession> sessions, const LiftSession& from,
                                 const LiftSession& to) {
    constexpr long near = 14; // days: longer apart they are no longer one state
    answers::MeanOfTests mean{.from = dateKey(from.date, from.ordinal)};
    DayStretch days{to.date, to.date};
    const auto block = blockOn(blocks, to.date);
    mean.block = block && !block->holds(from.date);
    if (mean.block)
        days = {block->first, block->last};
    else
        for (const LiftSession& session : sessions)
            if (!session.points.empty() && session.date > days.last && from.date < to.date &&
                daysBetween(to.date, session.date) <= near)
                days.last = session.date;
    mean.tests = static_cast<int>(std::ranges::count_if(sessions, [&](const LiftSession& session) {
        return !session.points.empty() && days.holds(session.date);
    }));
    mean.to = mean.block ? block->name : mean.tests > 1 ? isoStretch(days) : isoDate(to.date);
    return mean;
}

answers::BlockSettings blockSettings(const log::Log& log, const LiftContext& context,
                                     const Background& about, const LiftSession& from,
                                     const LiftSession& to, const AskSettings& settings) {
    answers::BlockSettings made{.with = comparisonSettings(context, about, from, to, settings)};
    made.with.deviceBias.reset();
    made.biasOf = [&context, level = settings.level](const LiftSession& reference,
                                                     const LiftSession& session) {
        return deviceBiasOf(context, reference, session, level);
    };
    made.asManyReps = [&log, &about](std::vector<LiftSession> sessions) {
        std::vector<std::vector<Set>> sets;
        for (const LiftSession& session : sessions)
            sets.push_back(setsOf(log, session));
        return answers::fairRepsOfAll(about.lift.value, std::move(sessions), sets);
    };
    made.dayNoise = [&context, &about](std::span<const stats::DaySpread> spreads,
                                       std::span<const LiftSession> sessions) {
        const auto device = oneDevice(sessions);
        const auto all = context.sums.find(device);
        const auto own = ownBeside(about, device, {}, false);
        return answers::chooseDayNoise(
            spreads.empty() ? own : ownBeside(about, device, sessions, true),
            all == context.sums.end() ? stats::RepeatSums{} : all->second.without(own),
            publishedDayNoise(context.lift.value), spreads);
    };
    if (const auto scatter = answers::pooledScatter(about.sessions))
        made.scatter = stats::Scatter{scatter->s * scatter->s, scatter->df};
    return made;
}

Answer<answers::Comparison> comparisonOfSides(const log::Log& log, const LiftContext& context,
                                              const Background& about, const DayOrBlock& from,
                                              const DayOrBlock& to, const AskSettings& settings) {
    return comparisonOfSides(log, context, about, sessionsOf(from, about.sessions),
                             sessionsOf(to, about.sessions), settings);
}

Answer<answers::Comparison> comparisonOfSides(const log::Log& log, const LiftContext& context,
                                              const Background& about,
                                              const answers::BlockSessions& before,
                                              const answers::BlockSessions& after,
                                              const AskSettings& settings) {
    for (const auto* side : {&before, &after})
        if (side->sessions.empty())
            return NoAnswer{NoAnswer::Why::NoSuchSession,
                            say("%1 has no session in %2.", about.athlete.value.name, side->name)};
    if (before.sessions.size() == 1 && after.sessions.size() == 1)
        return comparisonOf(log, context, about, before.sessions[0], after.sessions[0], settings);
    return answers::compareBlocks(about.lift.value, about.mvt, before, after,
                                  blockSettings(log, context, about, before.sessions.back(),
                                                after.sessions.back(), settings));
}

} // namespace slopebook::questions
