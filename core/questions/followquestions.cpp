// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/followquestions.h"

#include "core/answers/followsummary.h"
#include "core/answers/referencesession.h"
#include "core/answers/seasonsource.h"
#include "core/model/errors.h"
#include "core/model/periodwords.h"
#include "core/model/phrases/questions.h"
#include "core/questions/blockquestions.h"
#include "core/questions/followmaxima.h"
#include "core/questions/seasonlift.h"
#include "core/questions/seasonquestions.h"
#include "core/questions/stationday.h"

#include <algorithm>
#include <memory>

namespace slopebook::questions {

namespace {

/// A block, or of a stretch of days the block that has just these, else one that is in no log.
Stored<BlockId, Block> blockMeant(const log::Log& log, const Baseline& baseline) {
    if (const auto* id = std::get_if<BlockId>(&baseline))
        return blockOf(log, *id);
    const auto& days = std::get<DayStretch>(baseline);
    for (const auto& block : log.blocks())
        if (block.value.first == days.first && block.value.last == days.last)
            return block;
    return columnFor(log, days, 1);
}

class Follower {
public:
    Follower(const log::Log& log, const LiftContext& context, const Background& about, Mass load,
             const AskSettings& settings)
        : m_log(log), m_context(context), m_about(about), m_load(load), m_settings(settings),
          m_sets(log) {}

    Answer<answers::FollowedSeason> fromSession(const std::optional<SessionId>& baseline) const {
        auto follow = followOf(m_log, m_context, m_about, m_load, baseline, m_settings);
        if (!follow)
            return follow.why();
        return answers::FollowedSeason{.follow = std::move(*follow)};
    }

    Answer<answers::FollowedSeason> fromBlock(const Stored<BlockId, Block>& held) const {
        const BlockId id = held.id;
        const auto block = sessionsOf(held, m_about.sessions);
        if (block.sessions.empty())
            return NoAnswer{NoAnswer::Why::NoSuchSession,
                            say("%1 has no session in %2.", m_about.athlete.value.name,
                                periodWords(block.name))};
        if (block.sessions.size() == 1) { // exactly what that session says
            auto follow = fromSession(block.sessions[0].session);
            if (follow) {
                follow->block = answers::BaselineBlock{.id = id,
                                                       .name = block.name,
                                                       .sessions = {block.sessions[0].session},
                                                       .value = follow->baselineValue()};
            }
            return follow;
        }
        auto season = answers::followFrom(
            m_about.lift.value, m_about.mvt, m_about.sessions, m_load, id, block,
            [this](const LiftSession& from, const LiftSession& to) {
                return blockSettings(m_log, m_context, m_about, from, to, m_settings);
            },
            m_settings.plateStep,
            biasesAgainst(m_context, answers::referenceOf(block.sessions), m_about.sessions,
                          m_settings.level));
        if (season)
            takeMaxima(season->follow, m_context, m_about, m_settings);
        return season;
    }

    /// Every block in which the athlete did the lift, read against the baseline: a column each, as
    /// in the whole season's matrix, and one for a baseline that is a session.
    void addBlocks(answers::FollowedSeason& season, const std::vector<BatterySession>& batteries,
                   const std::optional<Stored<BlockId, Block>>& baseline) const {
        answers::SeasonSource source{.athlete = m_about.athlete.id, .level = m_settings.level};
        auto blocks = m_log.blocks();
        std::ranges::stable_sort(blocks, {}, [](const auto& b) {
            return std::pair{b.value.first, b.value.last};
        });
        for (const auto& each : blocks)
            if (std::ranges::any_of(m_about.sessions, [&](const LiftSession& session) {
                    return each.value.holds(session.date);
                }))
                source.blocks.push_back({.id = each.id, .block = each.value});
        const std::size_t count = source.blocks.size();
        if (count == 0)
            return;
        const LiftSession& session = season.follow.sessions[season.follow.baseline].session;
        const std::string day = dateKey(session.date, session.ordinal);
        source.chosen = count;
        if (season.block) {
            for (std::size_t j = 0; j < count; ++j)
                if (source.blocks[j].id == season.block->id)
                    source.chosen = j;
            if (source.chosen == count) // a stretch of days, which is no block of the log
                source.blocks.push_back({.id = baseline->id, .block = baseline->value});
        } else {
            source.blocks.push_back({.block = {.name = day}});
        }
        source.batteries.resize(source.blocks.size());
        const std::span columns(source.blocks.data(), count);
        for (const BatterySession& each : batteries)
            if (const auto column = columnOf(columns, each.date, each.ordinal))
                source.batteries[*column].push_back(each);
        source.lifts.push_back(lift(columns, source, season));
        tell(season, source, count);
    }

    /// Sets and gaps of the followed load, and of lighter ones.
    void addNotLifted(answers::FollowedSeason& season,
                      const std::vector<BatterySession>& batteries) const {
        const Lift& lift = m_about.lift.value;
        const auto counts = [&](const std::optional<Mass>& load) {
            return !load || 2 * (load->grams - m_load.grams) <= m_settings.plateStep.grams;
        };
        for (const LiftSession& session : m_about.sessions)
            for (const Set& set : m_sets.of(session)) {
                const Mass load{set.load.grams + bodyMoved(lift, &session).grams};
                if (set.outcome == Outcome::NotLifted && set.excluded.empty() && counts(load))
                    season.notLifted.push_back({.session = session.session,
                                                .date = session.date,
                                                .load = load,
                                                .reason = set.reason});
            }
        for (const BatterySession& day : batteries)
            for (const Gap& gap : day.battery.gaps) {
                auto load = gap.load;
                if (load && lift.movesBody)
                    load->grams += day.bodyMass.value_or(Mass{}).grams;
                if (gap.lift == m_about.lift.id && counts(load))
                    season.notLifted.push_back({.session = day.session,
                                                .date = day.date,
                                                .tried = false,
                                                .load = load,
                                                .reason = gap.reason});
            }
        std::ranges::stable_sort(season.notLifted, {}, &answers::NotLifted::date);
    }

    /// What the athlete's days hold beside sets; what cannot be read is told.
    std::vector<BatterySession> batteries(answers::FollowedSeason& season) const {
        try {
            return m_log.batteries(m_about.athlete.id);
        } catch (const LogError& error) {
            if (error.kind() != LogError::Kind::Damaged)
                throw;
            season.follow.notes.push_back({answers::Note::Kind::OfSeveral, error.words()});
            return {};
        }
    }

private:
    answers::SeasonLift lift(std::span<const answers::MatrixBlock> columns,
                             const answers::SeasonSource& source,
                             const answers::FollowedSeason& season) const {
        const bool ofADay = !season.block;
        const SessionId baseline = season.follow.sessions[season.follow.baseline].session.session;
        const auto column = [&](const LiftSession& session) {
            if (!ofADay && source.blocks[source.chosen].block.holds(session.date))
                return std::optional(source.chosen); // the baseline is whole
            const auto in = columnOf(columns, session.date, session.ordinal);
            return !in && ofADay && session.session == baseline ? std::optional(columns.size())
                                                                : in;
        };
        // Both outlive what is asked of them here.
        const std::shared_ptr<const LiftContext> context(std::shared_ptr<void>(), &m_context);
        const std::shared_ptr<const Background> about(std::shared_ptr<void>(), &m_about);
        auto lift =
            seasonLift(m_log, context, about, source.blocks.size(), column, m_settings, m_sets);
        for (std::size_t j = 0; j < lift.blocks.size(); ++j)
            lift.blocks[j].name = source.blocks[j].block.name;
        if (!ofADay || !lift.blocks.back().sessions.empty())
            return lift;
        for (const answers::BlockSessions& block : lift.blocks)
            for (const LiftSession& session : block.sessions)
                if (session.session == baseline) {
                    const LiftSession same = session;
                    lift.blocks.back().sessions = {same};
                    lift.twice = lift.blocks.size() - 1;
                    return lift;
                }
        return lift;
    }

    void tell(answers::FollowedSeason& season, const answers::SeasonSource& source,
              std::size_t count) const {
        const answers::SeasonLift& lift = source.lifts.front();
        const auto found =
            answers::speedRow(source, lift, m_load, std::make_shared<answers::FamilyTables>());
        const SessionId baseline = season.follow.sessions[season.follow.baseline].session.session;
        for (std::size_t j = 0; j < count; ++j) {
            answers::FollowedBlock block{.id = source.blocks[j].id,
                                         .block = source.blocks[j].block,
                                         .cell = found.row.cells[j],
                                         .trend = found.trends[j]};
            block.holdsBaseline =
                season.block
                    ? j == source.chosen
                    : std::ranges::find(lift.blocks[j].sessions, baseline, &LiftSession::session) !=
                          lift.blocks[j].sessions.end();
            block.cell.before.reset();
            if (block.holdsBaseline)
                block.cell.against.reset();
            season.blocks.push_back(std::move(block));
        }
        if (season.block && found.row.cells[source.chosen].value)
            season.block->value = *found.row.cells[source.chosen].value; // as all of them are read
        for (answers::Note& note : answers::blockNotes(season, m_settings.level))
            season.follow.notes.push_back(std::move(note));
    }

    const log::Log& m_log;
    const LiftContext& m_context;
    const Background& m_about;
    Mass m_load;
    const AskSettings& m_settings;
    mutable SetsOnce m_sets; ///< the page's columns and what was not lifted ask for the same
};

} // namespace

Answer<answers::FollowedSeason> seasonOf(const log::Log& log, const LiftContext& context,
                                         const Background& about, Mass load,
                                         const std::optional<Baseline>& baseline,
                                         const AskSettings& settings) {
    const Follower follower(log, context, about, load, settings);
    std::optional<SessionId> session;
    if (const auto* id = baseline ? std::get_if<SessionId>(&*baseline) : nullptr)
        session = *id;
    std::optional<Stored<BlockId, Block>> block;
    if (baseline && !std::holds_alternative<SessionId>(*baseline))
        block = blockMeant(log, *baseline);
    auto season = block ? follower.fromBlock(*block) : follower.fromSession(session);
    if (!season)
        return season;
    const auto batteries = follower.batteries(*season);
    follower.addBlocks(*season, batteries, block);
    follower.addNotLifted(*season, batteries);
    return season;
}

Answer<answers::FollowedSeason> seasonOf(const log::Log& log, const Background& about, Mass load,
                                         const std::optional<Baseline>& baseline,
                                         const AskSettings& settings) {
    return seasonOf(log, liftContext(log, about.lift.id), about, load, baseline, settings);
}

} // namespace slopebook::questions
