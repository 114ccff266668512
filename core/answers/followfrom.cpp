// SPDX-License-Identifier: GPL-3.0-or-later
// A load followed from a whole block.
#include "core/answers/followparts.h"
#include "core/answers/referencesession.h"
#include "core/model/periodwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

/// How the sessions are read against a block: by all that it and they hold at the load.
class AgainstBlock {
public:
    AgainstBlock(const Lift& lift, const Answer<Mvt>& mvt, Mass load, const BlockSessions& block)
        : m_lift(lift), m_mvt(mvt), m_load(load), m_block(block) {}

    void read(Followed& followed, const LiftSession& session, BlockSettings settings,
              std::vector<Note>& notes) const {
        settings.with.checkLoads = {m_load};
        const BlockSessions one{dateKey(session.date, session.ordinal), {session}};
        const auto compared = compareBlocks(m_lift, m_mvt, m_block, one, settings);
        if (!compared) {
            followed.seenChange = withoutALine(one, settings);
            return;
        }
        followed.change = *std::ranges::find(compared->at, m_load, &ChangeAt::load);
        const auto fair = std::ranges::find(compared->notes, Note::Kind::AsManyReps, &Note::kind);
        if (fair != compared->notes.end() && !holds(notes, Note::Kind::AsManyReps))
            notes.push_back(*fair);
    }

private:
    /// A day of that load alone has no line to compare, and says something of it all the same.
    std::optional<ReadChange> withoutALine(const BlockSessions& one,
                                           const BlockSettings& settings) const {
        const auto pair = blockPair(m_lift, m_mvt, m_block, one, settings);
        const double x = kilograms(m_load);
        if (!pair || !figureAt(pair->uncertainty.sides->earlier, x, pair->uncertainty.day) ||
            !figureAt(pair->uncertainty.sides->later, x, pair->uncertainty.day))
            return std::nullopt;
        const auto own = settings.with.smallestAt.find(m_load);
        const ChangeUncertainty& u = pair->uncertainty;
        ReadChange read = readWithBend(
            u.change(x), [&](double level) { return std::optional(u.straight(x, level)); },
            u.bendAt(x), settings.with.level,
            own != settings.with.smallestAt.end() ? own->second : settings.with.smallestVelocity);
        setUnder(read, pair->under);
        return read;
    }

    const Lift& m_lift;
    const Answer<Mvt>& m_mvt;
    Mass m_load;
    const BlockSessions& m_block;
};

} // namespace

Answer<FollowedSeason> followFrom(
    const Lift& lift, const Answer<Mvt>& mvt, std::span<const LiftSession> sessions, Mass load,
    BlockId id, const BlockSessions& block,
    const std::function<BlockSettings(const LiftSession& from, const LiftSession& to)>& settings,
    Mass plateStep, const std::map<SessionId, DeviceBias>& biases) {
    const auto within = [&](const LiftSession& session) {
        return std::ranges::find(block.sessions, session.session, &LiftSession::session) !=
               block.sessions.end();
    };
    if (block.sessions.empty())
        return NoAnswer{NoAnswer::Why::NoSuchSession,
                        say("no session of this lift in %1", periodWords(block.name))};
    const LiftSession& reference = referenceOf(block.sessions);
    const auto place = std::ranges::find(sessions, reference.session, &LiftSession::session);
    if (place == sessions.end())
        return NoAnswer{NoAnswer::Why::NoBaseline, say("the baseline is none of the sessions")};
    const BlockSettings own = settings(reference, reference);
    const auto alone = oneBlock(lift, mvt, block, own);
    if (!alone)
        return alone.why();
    const auto figure =
        figureAt(alone->uncertainty.sides->later, kilograms(load), alone->uncertainty.day);
    if (!figure)
        return NoAnswer{NoAnswer::Why::BeyondLoads,
                        say("no day held %1, and none has a line to read it off", load)};
    Follow f{.load = load,
             .baseline = static_cast<std::size_t>(place - sessions.begin()),
             .trend = NoAnswer{}};
    BaselineBlock base{.id = id, .name = block.name, .value = figure->value};
    for (const LiftSession& session : block.sessions)
        base.sessions.push_back(session.session);
    ComparisonSettings with = own.with;
    with.dayNoise = alone->dayNoise;
    const CriticalOf familyWise = manyLooks(
        figure->variance(), variancesOf(sessions, VarianceAt(lift, mvt, load, with),
                                        [&](const LiftSession& each) { return !within(each); }));
    const AgainstBlock against(lift, mvt, load, block);
    std::vector<Note> ofChanges;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        const LiftSession& session = sessions[i];
        Followed& followed =
            f.sessions.emplace_back(seenAndLine(lift, mvt, session, load, with, plateStep));
        if (const auto bias = biasAgainst(reference, session, with, biases))
            followed.bias = bias->first;
        if (within(session))
            continue;
        BlockSettings pair = settings(block.sessions.back(), session);
        if (i + 1 != sessions.size()) // the newest is one look
            pair.with.critical = familyWise;
        against.read(followed, session, std::move(pair), ofChanges);
    }
    f.trend = trendOf(f.sessions, with.level);
    if (with.dayNoise.origin != DayNoise::Origin::None) {
        Followed again{.line = NoAnswer{}, .oneRm = NoAnswer{}};
        LiftSession next = reference;
        next.session = SessionId{-1}; // no log has its sets: it is as the reference is
        BlockSettings asItIs = settings(block.sessions.back(), reference);
        asItIs.asManyReps = {};
        std::vector<Note> unsaid;
        against.read(again, next, asItIs, unsaid);
        if (again.change)
            f.smallestDetectable = again.change->read.shows();
    }
    f.notes = followNotes(f, with, true);
    f.notes.insert(f.notes.end(), ofChanges.begin(), ofChanges.end());
    return FollowedSeason{.follow = std::move(f), .block = std::move(base)};
}

bool FollowedSeason::isBaseline(const Followed& session) const {
    if (block)
        return std::ranges::find(block->sessions, session.session.session) != block->sessions.end();
    return session.session.session == follow.sessions[follow.baseline].session.session;
}

std::optional<double> FollowedSeason::baselineValue() const {
    if (block)
        return block->value;
    const Followed& base = follow.sessions[follow.baseline];
    return base.line ? std::optional(*base.line) : std::nullopt;
}

} // namespace slopebook::answers
