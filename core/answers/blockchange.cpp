// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/blockchange.h"

#include "core/answers/comparisonnotes.h"
#include "core/answers/devicecorrected.h"
#include "core/answers/referencesession.h"
#include "core/model/periodwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace slopebook::answers {

const LiftSession& referenceOf(const std::vector<LiftSession>& earlier) {
    std::map<std::optional<DeviceId>, int> counts;
    for (const LiftSession& session : earlier)
        if (session.conditions.notComparable.empty())
            ++counts[session.conditions.device];
    const LiftSession* best = nullptr;
    for (const LiftSession& session : earlier)
        if (session.conditions.notComparable.empty() &&
            (best == nullptr ||
             counts[session.conditions.device] >= counts[best->conditions.device]))
            best = &session;
    return best != nullptr ? *best : earlier.back();
}

namespace {

constexpr double usualScatter = 0.015, usualScatterDf = 8; // m/s, as sharedloads.h has it

/// A session as it may stand beside the reference: its conditions, and its device's bias.
struct Beside {
    LiftSession session;
    Under under;
    std::optional<DeviceBias> bias;
};

class Sorter {
public:
    Sorter(const BlockSessions& from, const BlockSessions& to, const BlockSettings& settings)
        : m_settings(settings) {
        take(from, m_pair.from);
        take(to, m_pair.to);
    }
    /// A block without a session with points: its reason.
    std::optional<NoAnswer> missing() const {
        for (const BlockSide* side : {&m_pair.from, &m_pair.to})
            if (side->sessions.empty())
                return NoAnswer{NoAnswer::Why::NoSuchSession,
                                say("no session of this lift in %1", side->name)};
        return std::nullopt;
    }
    /// Leaves out what may not stand beside the others, makes reps alike and takes biases off.
    BlockPair sorted() {
        makeRepsAlike();
        const LiftSession reference = referenceOf(m_pair.from.sessions);
        settle(m_pair.from, reference);
        settle(m_pair.to, reference);
        return std::move(m_pair);
    }
    const stats::Variance& device() const { return m_device; }

private:
    static void take(const BlockSessions& block, BlockSide& side) {
        side.name = block.name;
        side.block = block.block;
        for (const LiftSession& session : block.sessions)
            if (!session.points.empty())
                side.sessions.push_back(session);
    }

    void makeRepsAlike() {
        if (!m_settings.asManyReps)
            return;
        std::vector<LiftSession> all = m_pair.from.sessions;
        all.insert(all.end(), m_pair.to.sessions.begin(), m_pair.to.sessions.end());
        const auto before = all;
        all = m_settings.asManyReps(std::move(all));
        m_pair.fewerReps = all != before;
        const auto middle = all.begin() + static_cast<std::ptrdiff_t>(m_pair.from.sessions.size());
        m_pair.from.sessions.assign(all.begin(), middle);
        m_pair.to.sessions.assign(middle, all.end());
    }

    Beside beside(const LiftSession& session, const LiftSession& reference) const {
        if (session.session == reference.session)
            return {session, {{}, notComparableWords(session.conditions, {})}, {}};
        std::optional<DeviceBias> bias;
        if (m_settings.biasOf && session.conditions.device != reference.conditions.device)
            bias = m_settings.biasOf(reference, session);
        return {session,
                underOf(reference.conditions, session.conditions, m_settings.with.devices,
                        bias.has_value()),
                bias};
    }

    void settle(BlockSide& side, const LiftSession& reference) {
        std::vector<Beside> all;
        for (const LiftSession& session : side.sessions)
            all.push_back(beside(session, reference));
        const auto may = [](const Beside& each) { return each.under.notComparable.empty(); };
        const bool any = std::ranges::any_of(all, may);
        side.sessions.clear();
        for (const Beside& each : all) {
            if (any && !may(each)) {
                side.leftOut.push_back({each.session, each.under.notComparable});
                continue;
            }
            if (!any && m_pair.under.notComparable.empty())
                m_pair.under.notComparable = each.under.notComparable;
            addChanges(each.under.changes);
            if (each.bias && each.bias->second.value > m_device.value)
                m_device = each.bias->second;
            m_pair.corrected = m_pair.corrected || each.bias;
            side.sessions.push_back(each.bias ? withBiasOff(each.session, each.bias->first)
                                              : each.session);
        }
    }

    void addChanges(const std::vector<ConditionChange>& changes) {
        for (const ConditionChange& change : changes)
            if (std::ranges::find(m_pair.under.changes, change.what, &ConditionChange::what) ==
                m_pair.under.changes.end())
                m_pair.under.changes.push_back(change);
    }

    const BlockSettings& m_settings;
    BlockPair m_pair;
    stats::Variance m_device;
};

/// The session that went heaviest of those that say most of the lift: with a max by their line
/// before those without, with inference before those without; the latest of those alike.
std::size_t leadOf(const std::vector<stats::Line>& lines, const std::optional<double>& mvt) {
    const auto rank = [&](const stats::Line& line) {
        const bool falls = !isOneLoad(line) && line.slope < 0 && (!mvt || line.intercept > *mvt);
        return std::tuple{line.hasInference() && !isOneLoad(line), falls, line.xMax};
    };
    std::size_t lead = 0;
    for (std::size_t j = 1; j < lines.size(); ++j)
        if (rank(lines[j]) >= rank(lines[lead]))
            lead = j;
    return lead;
}

SideSessions sideOf(const std::vector<LiftSession>& sessions, const std::optional<double>& mvt,
                    ReadAs readAs) {
    SideSessions side{.readAs = readAs};
    for (const LiftSession& session : sessions) {
        side.lines.push_back(*sideLine(session));
        side.days.push_back(static_cast<double>(daysBetween(sessions.front().date, session.date)));
    }
    side.lead = leadOf(side.lines, mvt);
    return side;
}

void addScatter(const SideSessions& side, double& rss, double& df) {
    for (const stats::Line& line : side.lines)
        if (!isOneLoad(line) && line.hasInference()) {
            rss += line.rss;
            df += line.n - 2;
        }
}

/// Of residuals where there are any, else what is known.
stats::Scatter scatterOf(double rss, double df, const BlockSettings& settings) {
    if (df > 0)
        return {rss / df, df};
    return settings.scatter.value_or(stats::Scatter{usualScatter * usualScatter, usualScatterDf});
}

/// Pooled over both sides, or each its own where that is asked and both have some.
void poolScatter(SideSessions& from, SideSessions& to, const BlockSettings& settings) {
    double rss = 0, df = 0, ofFrom = 0;
    addScatter(from, rss, df);
    ofFrom = df;
    const double rssFrom = rss;
    addScatter(to, rss, df);
    const bool apart =
        settings.with.variances == stats::Variances::Separate && ofFrom > 0 && df > ofFrom;
    if (apart) {
        from.scatter = {rssFrom / ofFrom, ofFrom};
        to.scatter = {(rss - rssFrom) / (df - ofFrom), df - ofFrom};
        return;
    }
    from.scatter = to.scatter = settings.ofSeason.value_or(scatterOf(rss, df, settings));
}

std::vector<Ladder> laddersOf(const std::vector<LiftSession>& sessions, const SideSessions& side,
                              double max) {
    std::vector<Ladder> ladders;
    for (std::size_t j = 0; j < sessions.size(); ++j)
        ladders.push_back(ladderOf(sessions[j], side.lines[j], max));
    return ladders;
}

void makeUncertainty(BlockPair& pair, const std::optional<double>& mvt, SideSessions from,
                     SideSessions to, const stats::Variance& device,
                     const BlockSettings& settings) {
    const stats::Line& first = from.lines[from.lead];
    const stats::Line& second = to.lines[to.lead];
    const auto earlier = referenceMax(first, mvt), later = referenceMax(second, mvt);
    pair.uncertainty.lines = stats::TwoLines(first, second, settings.with.variances);
    pair.uncertainty.variances = settings.with.variances;
    pair.uncertainty.day = dayOf(pair.dayNoise, first, second, earlier);
    pair.uncertainty.device = device;
    if (earlier && later)
        pair.uncertainty.bend =
            BendErrors(settings.with.bend, laddersOf(pair.from.sessions, from, *earlier), from.lead,
                       laddersOf(pair.to.sessions, to, *later), to.lead);
    pair.uncertainty.critical = settings.with.critical;
    pair.uncertainty.sides = {std::move(from), std::move(to)};
}

bool oneASide(const BlockPair& pair) {
    return pair.from.sessions.size() == 1 && pair.to.sessions.size() == 1;
}

bool shareASession(const BlockSessions& from, const BlockSessions& to) {
    return std::ranges::any_of(from.sessions, [&](const LiftSession& session) {
        return std::ranges::find(to.sessions, session.session, &LiftSession::session) !=
               to.sessions.end();
    });
}

/// Words of a side's sessions: how many stand for it and what was left out.
void noteSide(const BlockSide& side, std::vector<Note>& notes) {
    if (side.sessions.size() > 1)
        notes.push_back({Note::Kind::OfSeveral,
                         say("%1: %2 sessions made one, by what each says of a load and of days "
                             "that are alike",
                             periodWords(side.name), side.sessions.size())});
    for (const BlockSide::LeftOut& left : side.leftOut)
        notes.push_back({Note::Kind::OfSeveral,
                         say("%1: %2 is left out (%3)", periodWords(side.name),
                             sayDay(left.session.date, left.session.ordinal), left.why)});
}

} // namespace

namespace {

enum class Ask { Change, FiguresAlone };

Answer<BlockPair> makePair(const Lift& lift, const Answer<Mvt>& mvt, const BlockSessions& from,
                           const BlockSessions& to, const BlockSettings& settings, Ask ask) {
    Sorter sorter(from, to, settings);
    if (const auto missing = sorter.missing())
        return *missing;
    if (ask == Ask::Change && shareASession(from, to))
        return NoAnswer{NoAnswer::Why::Other, say("one session is not compared with itself")};
    requireComparable(from.sessions.front(), to.sessions.front());
    BlockPair pair = sorter.sorted();
    const auto speed = mvt && !lift.ballistic ? std::optional(mvt->value) : std::nullopt;
    SideSessions first = sideOf(pair.from.sessions, speed, settings.readAs);
    SideSessions second = sideOf(pair.to.sessions, speed, settings.readAs);
    if (ask == Ask::Change && oneASide(pair))
        for (const SideSessions* side : {&first, &second})
            if (isOneLoad(side->lines[0]) || !side->lines[0].hasInference())
                return NoAnswer{NoAnswer::Why::NeedsThirdLoad,
                                say("two points make a line without intervals, so no change can "
                                    "be judged: it needs a third load")};
    poolScatter(first, second, settings);
    pair.dayNoise = settings.with.dayNoise;
    if (settings.dayNoise) {
        std::vector<stats::DaySpread> spreads;
        for (const SideSessions* side : {&first, &second})
            if (const auto spread = spreadOf(*side))
                spreads.push_back(*spread);
        std::vector<LiftSession> all = pair.from.sessions;
        all.insert(all.end(), pair.to.sessions.begin(), pair.to.sessions.end());
        pair.dayNoise = settings.dayNoise(spreads, all);
    }
    makeUncertainty(pair, speed, std::move(first), std::move(second), sorter.device(), settings);
    return pair;
}

} // namespace

Answer<BlockPair> blockPair(const Lift& lift, const Answer<Mvt>& mvt, const BlockSessions& from,
                            const BlockSessions& to, const BlockSettings& settings) {
    return makePair(lift, mvt, from, to, settings, Ask::Change);
}

Answer<BlockPair> oneBlock(const Lift& lift, const Answer<Mvt>& mvt, const BlockSessions& block,
                           const BlockSettings& settings) {
    return makePair(lift, mvt, block, block, settings, Ask::FiguresAlone);
}

SeasonNoise seasonNoise(std::span<const BlockSessions> blocks, const BlockSettings& settings) {
    double rss = 0, df = 0;
    std::vector<SideSessions> sides;
    std::vector<LiftSession> all;
    for (const BlockSessions& block : blocks) {
        std::vector<LiftSession> standing;
        for (const LiftSession& session : block.sessions)
            if (!session.points.empty() && session.conditions.notComparable.empty())
                standing.push_back(session);
        if (standing.empty())
            continue;
        sides.push_back(sideOf(standing, {}, settings.readAs));
        addScatter(sides.back(), rss, df);
        all.insert(all.end(), standing.begin(), standing.end());
    }
    SeasonNoise noise{.scatter = scatterOf(rss, df, settings), .day = settings.with.dayNoise};
    if (!settings.dayNoise)
        return noise;
    std::vector<stats::DaySpread> spreads;
    for (SideSessions& side : sides) {
        side.scatter = noise.scatter;
        if (const auto spread = spreadOf(side))
            spreads.push_back(*spread);
    }
    noise.day = settings.dayNoise(spreads, all);
    return noise;
}

Answer<Comparison> compareBlocks(const Lift& lift, const Answer<Mvt>& mvt,
                                 const BlockSessions& from, const BlockSessions& to,
                                 const BlockSettings& settings) {
    auto pair = blockPair(lift, mvt, from, to, settings);
    if (!pair)
        return pair.why();
    ComparisonSettings with = settings.with;
    with.dayNoise = pair->dayNoise;
    const auto& sides = *pair->uncertainty.sides;
    auto first = inferredProfile(lift, mvt, pair->from.sessions[sides.earlier.lead], with);
    if (!first)
        return first.why();
    auto second = inferredProfile(lift, mvt, pair->to.sessions[sides.later.lead], with);
    if (!second)
        return second.why();
    std::vector<Note> notes;
    auto oneRm = oneRmChange(*first, *second, pair->uncertainty, with, notes);
    Comparison c{.settings = with,
                 .from = std::move(*first),
                 .to = std::move(*second),
                 .lines = pair->uncertainty.lines,
                 .uncertainty = std::move(pair->uncertainty),
                 .under = pair->under,
                 .oneRm = std::move(oneRm),
                 .blocks = {{pair->from, pair->to}}};
    complete(c, std::move(notes));
    if (pair->fewerReps)
        c.notes.push_back({Note::Kind::AsManyReps, say("the days differ in reps: at each load the "
                                                       "fastest of as many reps is compared")});
    noteSide(pair->from, c.notes);
    noteSide(pair->to, c.notes);
    return c;
}

} // namespace slopebook::answers
