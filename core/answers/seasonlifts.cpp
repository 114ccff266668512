// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a lift: its speed at each check load and its estimated 1RM.
#include "core/answers/datedspeeds.h"
#include "core/answers/seasonsource.h"
#include "core/answers/sharedloads.h"
#include "core/model/periodwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace slopebook::answers {

namespace {

using Columns = std::pair<std::size_t, std::size_t>;

/// What a question of a lift is: a load, or the max at an MVT.
struct Asked {
    std::optional<Mass> load = {}; ///< absent: the max
    double at = 0;                 ///< kg, or m/s
    std::optional<SideFigure> figure(const SideSessions& side, const stats::Moving& day) const {
        return load ? figureAt(side, at, day) : figureOfMax(side, at, day);
    }
};

/// The load that most of the days held, the heaviest of those alike.
std::optional<Mass> commonestLoad(const SeasonLift& lift) {
    std::map<Mass, int> days;
    for (const BlockSessions& block : lift.blocks)
        for (const LiftSession& session : block.sessions) {
            std::set<Mass> held;
            for (const Point& p : session.points)
                held.insert(massFromKilograms(p.load));
            for (const Mass load : held)
                ++days[load];
        }
    std::optional<Mass> best;
    for (const auto& [load, count] : days)
        if (count > 1 && (!best || count >= days[*best]))
            best = load;
    return best;
}

/// Why a block says nothing of a lift, or of one of its loads.
NoAnswer whyNothing(const SeasonSource& source, const SeasonLift& lift, std::size_t column,
                    std::optional<Mass> load) {
    for (const BatterySession& session : source.batteries[column])
        for (const Gap& gap : session.battery.gaps)
            if (gap.lift == lift.lift.id && (!gap.load || gap.load == load))
                return {NoAnswer::Why::NotPossible, say("not possible: %1", gap.reason)};
    if (lift.blocks[column].sessions.empty())
        return {NoAnswer::Why::NoSuchSession, say("not lifted")};
    return {NoAnswer::Why::BeyondLoads,
            load ? say("no day held %1, and none has a line to read it off", *load)
                 : say("no day has a line that reaches a max")};
}

/// All pairs of one lift's blocks, each made when it is first asked for.
class Pairs {
public:
    Pairs(const SeasonSource& source, const SeasonLift& lift)
        : m_lift(lift), m_level(source.level) {
        // The noise of the season: of two blocks it is what a pair finds by itself, but not of a
        // session of one of them and the other.
        std::vector<BlockSessions> columns = lift.blocks;
        if (lift.twice)
            columns.erase(columns.begin() + static_cast<std::ptrdiff_t>(*lift.twice));
        const auto withPoints = std::ranges::count_if(columns, [](const BlockSessions& block) {
            return std::ranges::any_of(block.sessions,
                                       [](const auto& s) { return !s.points.empty(); });
        });
        const auto some = firstSession();
        if (withPoints > (lift.twice ? 1 : 2) && some)
            m_season = seasonNoise(columns, lift.settings(*some, *some));
    }

    Answer<BlockPair>& of(std::size_t from, std::size_t to) {
        const auto [place, isNew] = m_pairs.try_emplace(Columns{from, to}, NoAnswer{});
        if (isNew)
            place->second = made(from, to);
        return place->second;
    }

    /// Where no line can judge a pair: the changes at loads that both days held.
    std::vector<SharedLoadChange> shared(std::size_t from, std::size_t to) {
        const auto& a = m_lift.blocks[from].sessions;
        const auto& b = m_lift.blocks[to].sessions;
        if (a.size() != 1 || b.size() != 1)
            return {};
        const BlockSettings settings = m_lift.settings(a[0], b[0]);
        ComparisonSettings with = settings.with;
        if (settings.biasOf)
            with.deviceBias = settings.biasOf(a[0], b[0]);
        const auto found =
            sharedLoadChanges(a[0], b[0], with, pointNoise(with.dayNoise, settings.scatter));
        return found ? *found : std::vector<SharedLoadChange>{};
    }

private:
    std::optional<LiftSession> firstSession() const {
        for (const BlockSessions& block : m_lift.blocks)
            for (const LiftSession& session : block.sessions)
                if (!session.points.empty())
                    return session;
        return std::nullopt;
    }

    Answer<BlockPair> made(std::size_t from, std::size_t to) const {
        const BlockSessions& first = m_lift.blocks[from];
        const BlockSessions& second = m_lift.blocks[to];
        if (first.sessions.empty() || second.sessions.empty())
            return NoAnswer{NoAnswer::Why::NoSuchSession, say("not lifted")};
        BlockSettings settings = m_lift.settings(first.sessions.back(), second.sessions.back());
        settings.with.level = m_level;
        if (m_season) {
            settings.ofSeason = m_season->scatter;
            settings.with.dayNoise = m_season->day;
            settings.dayNoise = {};
        }
        if (from == to)
            return oneBlock(m_lift.lift.value, m_lift.mvt, first, settings);
        return blockPair(m_lift.lift.value, m_lift.mvt, first, second, settings);
    }

    const SeasonLift& m_lift;
    double m_level;
    std::optional<SeasonNoise> m_season;
    std::map<Columns, Answer<BlockPair>> m_pairs;
};

class LiftRow {
public:
    LiftRow(const SeasonSource& source, const SeasonLift& lift, Pairs& pairs, const Asked& asked,
            const Family& family)
        : m_source(source), m_lift(lift), m_pairs(pairs), m_asked(asked), m_family(family) {}

    /// A straight trend through the sessions of a column that cover the load.
    Answer<BlockTrend> trend(std::size_t column) {
        const auto held = holding(column);
        const NoAnswer tooFew{NoAnswer::Why::TooFewSessions,
                              say("a trend within a block needs four days that cover the load")};
        if (!held)
            return tooFew;
        const ChangeUncertainty& u = held->first->uncertainty;
        const SideSessions& side = held->second ? u.sides->later : u.sides->earlier;
        const BlockSide& block = held->second ? held->first->to : held->first->from;
        const Mixed mixed = mixedAt(side, m_asked.at, u.day);
        if (mixed.extrapolated)
            return tooFew;
        DatedSpeeds days;
        for (std::size_t i = 0; i < mixed.shares.size(); ++i)
            if (mixed.shares[i] > 0)
                days.add(block.sessions[i].date, side.lines[i].at(m_asked.at),
                         side.scatterOf(side.lines[i]).s2 * leverageAt(side.lines[i], m_asked.at) +
                             u.day.at(m_asked.at));
        if (days.distinct() < daysOfABlocksTrend)
            return tooFew;
        const auto found = days.trend(m_source.level);
        if (!found)
            return found.why();
        return BlockTrend{*found, days.first(), days.last()};
    }

    MatrixRow made() {
        MatrixRow row{.measure = measure()};
        for (std::size_t j = 0; j < m_source.blocks.size(); ++j)
            row.cells.push_back(cell(j));
        const std::size_t chosen = m_source.chosen;
        std::vector<Columns> against, before;
        for (std::size_t j = 0; j < row.cells.size(); ++j) {
            if (!row.cells[j].value)
                continue;
            if (j != chosen && row.cells[chosen].value)
                against.emplace_back(chosen, j);
            if (const auto earlier = blockBefore(row, j))
                before.emplace_back(*earlier, j);
        }
        const CriticalOf one = againstOne(m_family, shares(against));
        const CriticalOf chain = ofAChain(m_family, static_cast<int>(before.size()));
        for (const auto& [from, to] : against)
            row.cells[to].against = change(from, to, one, row);
        for (const auto& [from, to] : before)
            row.cells[to].before = change(from, to, chain, row);
        if (!row.cells[chosen].value)
            for (std::size_t j = 0; j < row.cells.size(); ++j)
                if (row.cells[j].value)
                    row.cells[j].against = {
                        {.from = chosen,
                         .why = say("no figure in %1 to count from",
                                    periodWords(m_source.blocks[chosen].block.name))}};
        return row;
    }

private:
    Measure measure() const {
        const bool speed = m_asked.load.has_value();
        return {.kind = speed ? Measure::Kind::Speed : Measure::Kind::OneRm,
                .name = m_lift.lift.value.name,
                .lift = m_lift.lift.id,
                .load = m_asked.load,
                .unit = speed ? "m/s" : "kg",
                .decimals = speed ? 3 : 1};
    }

    /// A side that holds the column, of a change to it from the chosen block where there is one.
    std::optional<std::pair<const BlockPair*, bool>> holding(std::size_t column) {
        const std::size_t chosen = m_source.chosen;
        if (column != chosen)
            if (const auto& pair = m_pairs.of(chosen, column))
                return std::pair{&*pair, true};
        if (column == chosen)
            for (std::size_t j = m_source.blocks.size(); j-- > 0;)
                if (j != chosen)
                    if (const auto& pair = m_pairs.of(chosen, j))
                        return std::pair{&*pair, false};
        if (const auto& alone = m_pairs.of(column, column))
            return std::pair{&*alone, true};
        return std::nullopt;
    }

    MatrixCell cell(std::size_t column) {
        MatrixCell cell{.value = whyNothing(m_source, m_lift, column, m_asked.load)};
        const auto held = holding(column);
        if (!held)
            return cell;
        const ChangeUncertainty& u = held->first->uncertainty;
        const SideSessions& side = held->second ? u.sides->later : u.sides->earlier;
        const auto figure = m_asked.figure(side, u.day);
        if (!figure)
            return cell;
        cell.value = figure->value;
        cell.sessions = figure->sessions;
        cell.se = std::sqrt(figure->variance());
        const double half = std::sqrt(stats::squaredHalfWidth(
            std::array{figure->scatter, figure->day}, stats::tOf(m_source.level)));
        cell.interval = stats::Interval{figure->value - half, figure->value + half};
        cell.extrapolated = m_asked.load
                                ? figure->extrapolated
                                : side.lines[side.lead].xMax < OneRm::farMark * figure->value;
        return cell;
    }

    std::vector<BaselineShare> shares(const std::vector<Columns>& against) {
        std::vector<BaselineShare> shares;
        for (const auto& [from, to] : against)
            if (const auto& pair = m_pairs.of(from, to);
                pair && pair->under.notComparable.empty()) {
                const ChangeUncertainty& u = pair->uncertainty;
                const auto a = m_asked.figure(u.sides->earlier, u.day),
                           b = m_asked.figure(u.sides->later, u.day);
                if (a && b)
                    shares.push_back({a->variance(), b->variance()});
            }
        return shares;
    }

    CellChange change(std::size_t from, std::size_t to, const CriticalOf& critical,
                      MatrixRow& row) {
        CellChange change{.from = from};
        auto& pair = m_pairs.of(from, to);
        if (!pair) {
            change.why = pair.why().reason;
            if (m_asked.load)
                for (SharedLoadChange& seen : m_pairs.shared(from, to))
                    if (seen.load == *m_asked.load) {
                        change.read = std::move(seen.read);
                        change.why = {};
                    }
            return change;
        }
        ChangeUncertainty& u = pair->uncertainty;
        const BlockSettings settings =
            m_lift.settings(m_lift.blocks[from].sessions.back(), m_lift.blocks[to].sessions.back());
        u.critical = stats::tOf;
        const auto alone = readOf(u, settings.with);
        u.critical = critical;
        if (const auto together = readOf(u, settings.with)) {
            change.read = *together;
            change.read.byItself = alone->reading;
            row.smallest = together->smallest;
            tellChance(change, u);
        } else {
            change.why = say("no day has a line that reaches a max");
        }
        setUnder(change.read, pair->under);
        if (!pair->under.notComparable.empty()) {
            change.why = say("not comparable: %1", pair->under.notComparable);
            change.byChance = 0;
        }
        return change;
    }

    /// By the critical value that u holds; nothing where no day has a line that reaches a max.
    std::optional<ReadChange> readOf(const ChangeUncertainty& u,
                                     const ComparisonSettings& with) const {
        const double at = m_asked.at;
        if (m_asked.load) {
            const auto own = with.smallestAt.find(*m_asked.load);
            return readWithBend(
                u.change(at), [&](double level) { return std::optional(u.straight(at, level)); },
                u.at(at).bend, m_source.level,
                own != with.smallestAt.end() ? std::optional(own->second) : with.smallestVelocity);
        }
        const auto before = u.maxOfEarlier(at), after = u.maxOfLater(at);
        if (!before || !after)
            return std::nullopt;
        return readWithBend(
            *after - *before, [&](double level) { return u.maxStraight(at, level); },
            u.ofMax(at).bend, m_source.level, with.smallestOneRm);
    }

    void tellChance(CellChange& change, const ChangeUncertainty& u) const {
        if (change.read.reading == Reading::NoFigure) {
            if (!m_asked.load)
                change.why = say("a slope is not certain enough to bound the change");
            return;
        }
        const ChangeParts parts = m_asked.load ? u.at(m_asked.at) : u.ofMax(m_asked.at);
        change.byChance = chanceOfNothing(m_family, parts, change.read.interval);
        change.p = pOfNothing(m_family, parts, change.read.change);
    }

    const SeasonSource& m_source;
    const SeasonLift& m_lift;
    Pairs& m_pairs;
    Asked m_asked;
    Family m_family;
};

} // namespace

SpeedRow speedRow(const SeasonSource& source, const SeasonLift& lift, Mass load,
                  const Family& family) {
    Pairs pairs(source, lift);
    LiftRow row(source, lift, pairs, {load, kilograms(load)}, family);
    SpeedRow found{.row = row.made()};
    for (std::size_t j = 0; j < source.blocks.size(); ++j)
        found.trends.push_back(row.trend(j));
    return found;
}

void addLiftRows(SeasonMatrix& matrix, const SeasonSource& source, const SeasonLift& lift,
                 const Family& family) {
    std::vector<Mass> loads = lift.checkLoads;
    if (loads.empty())
        if (const auto load = commonestLoad(lift))
            loads.push_back(*load);
    Pairs pairs(source, lift);
    for (const Mass load : loads)
        matrix.rows.push_back(LiftRow(source, lift, pairs, {load, kilograms(load)}, family).made());
    if (!lift.lift.value.ballistic && lift.mvt)
        matrix.rows.push_back(
            LiftRow(source, lift, pairs, {std::nullopt, lift.mvt->value}, family).made());
}

} // namespace slopebook::answers
