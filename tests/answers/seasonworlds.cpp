// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/answers/seasonworlds.h"

#include "core/answers/published.h"
#include "core/answers/publishedrelations.h"
#include "tests/answers/builders.h"

#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace slopebook::tests {

namespace {

using namespace slopebook::answers;

constexpr double scatter = 0.012, v0 = 1.6, slope = -0.0115, straightAtMax = 0.45;
constexpr double shipped = 0.025;         // m/s, whatever the lift: the rule is of its multiples
constexpr double middle = 60, most = 100; // kg: days tilt about 60 % of the 1RM
constexpr double lightest = 30;           // %: from there on a bent athlete's chord is drawn
const std::vector<double> ladder{40, 52, 64, 76, 88}, light{40, 52};

class SeasonPlayer {
public:
    SeasonPlayer(const SeasonWorld& world, std::uint64_t seed) : m_world(world), m_random(seed) {}

    SeasonSource season() {
        SeasonSource source{.athlete = AthleteId{1}};
        for (int b = 0; b < m_world.blocks; ++b)
            source.blocks.push_back({.id = BlockId{b + 1},
                                     .block = {.name = "Block " + std::to_string(b + 1)},
                                     .sessions = sessionsOf(b)});
        source.batteries.resize(static_cast<std::size_t>(m_world.blocks));
        int id = 0;
        for (const char* name : {"Bench pull", "Bench press", "Full squat"})
            source.lifts.push_back(lift(name, ++id));
        return source;
    }

private:
    double normal() { return m_normal(m_random); }

    /// A day's part, of SD 1.
    double dayPart() {
        if (!m_world.heavy)
            return normal();
        double squares = 0;
        for (int i = 0; i < 3; ++i) {
            const double z = normal();
            squares += z * z;
        }
        return normal() / std::sqrt(squares); // t on 3 df has the variance 3
    }

    int sessionsOf(int block) const {
        return m_world.perBlock.empty() ? m_world.sessions
                                        : m_world.perBlock[static_cast<std::size_t>(block)];
    }

    SeasonLift lift(const char* name, int id) {
        SeasonLift made{.lift = {LiftId{id}, {.name = name, .kind = VelocityKind::Propulsive}},
                        .checkLoads = {Mass{40'000}, Mass{64'000}, Mass{88'000}}};
        m_curve = *publishedRelation(name, VelocityKind::Propulsive);
        m_kappa = m_world.bend ? std::uniform_real_distribution<double>(0, 1)(m_random) : 0;
        made.mvt = coachMvt(m_world.bend ? velocityAt(m_curve, most) : straightAtMax);
        const double sd = m_world.day * shipped *
                          std::exp(m_world.tau * normal() - m_world.tau * m_world.tau / 2);
        m_scatter = scatter * (m_scattered ? m_world.scatter : 1);
        m_scattered = !m_scattered;
        double level = 0;
        const double rest = std::sqrt(1 - m_world.phi * m_world.phi);
        int day = 0;
        for (int b = 0; b < m_world.blocks; ++b) {
            BlockSessions block{.name = "Block " + std::to_string(b + 1)};
            const bool last = b == m_world.blocks - 1;
            const int count = m_world.missing && id == 1 && b == 1 ? 0 : sessionsOf(b);
            for (int k = 0; k < count; ++k) {
                // Blocks lie weeks apart: days are alike within one.
                level = k == 0 ? dayPart() : m_world.phi * level + rest * dayPart();
                const double along = count > 1 ? k / (count - 1.0) - 0.5 : 0;
                const double shift = sd * level + m_world.trend * along + (last ? m_world.gain : 0);
                const bool easy = k >= count - m_world.lightDays || (last && m_world.lightBlock);
                block.sessions.push_back(drawn(++day, id, easy ? light : ladder, shift));
            }
            made.blocks.push_back(std::move(block));
        }
        const auto published = std::pair{shipped, std::string("a paper")};
        const Bend bend = m_world.bend ? bendOf(made.lift.value) : Bend{};
        made.settings = [published, bend](const LiftSession&, const LiftSession&) {
            BlockSettings settings;
            settings.with.dayNoise = chooseDayNoise({}, {}, published);
            settings.with.bend = bend;
            settings.with.smallestVelocity = Smallest{0.06};
            settings.with.smallestOneRm = Smallest{4};
            settings.dayNoise = [published](std::span<const stats::DaySpread> spreads,
                                            std::span<const LiftSession>) {
                return chooseDayNoise({}, {}, published, spreads);
            };
            return settings;
        };
        return made;
    }

    double speedAt(double load) const {
        if (!m_world.bend)
            return v0 + slope * load;
        const double top = velocityAt(m_curve, lightest), end = velocityAt(m_curve, most);
        const double chord = top + (end - top) * (load - lightest) / (most - lightest);
        return chord + m_kappa * (velocityAt(m_curve, load) - chord);
    }

    LiftSession drawn(int day, int lift, const std::vector<double>& loads, double shift) {
        const double steep = (speedAt(90) - speedAt(30)) / 60;
        const double tilt = m_world.tilt * normal() * steep;
        std::vector<std::pair<double, double>> points;
        for (const double load : loads)
            points.emplace_back(load, speedAt(load) + shift + tilt * (load - middle) +
                                          m_scatter * normal());
        LiftSession made = session(day, points);
        made.lift = LiftId{lift};
        return made;
    }

    const SeasonWorld& m_world;
    std::mt19937_64 m_random;
    std::normal_distribution<double> m_normal;
    PublishedRelation m_curve;
    double m_kappa = 0, m_scatter = scatter; ///< of the athlete at hand
    bool m_scattered = false;
};

bool told(const std::optional<CellChange>& change) {
    return change &&
           (change->read.reading == Reading::Better || change->read.reading == Reading::Worse);
}

/// Sums over seasons, each with its square.
class Sums {
public:
    void add(double value) {
        m_sum += value;
        m_square += value * value;
        ++m_count;
    }
    OverSeasons over() const {
        const double mean = m_sum / m_count;
        const double variance = std::max(0.0, m_square / m_count - mean * mean);
        return {mean, std::sqrt(variance / std::max(1.0, m_count - 1))};
    }

private:
    double m_sum = 0, m_square = 0, m_count = 0;
};

/// A share of one season, in %.
struct Share {
    double count = 0, of = 0;
    void add(bool is) {
        count += is ? 1 : 0;
        of += 1;
    }
    double percent() const { return of > 0 ? 100 * count / of : 0; }
};

} // namespace

std::vector<SeasonWorld> seasonWorlds() {
    std::vector<SeasonWorld> worlds;
    for (const int k : {1, 2, 3, 4, 6, 8})
        worlds.push_back({.name = std::to_string(k) + " a block", .sessions = k});
    worlds.push_back({.name = "1, 4 and 8 a block", .perBlock = {1, 4, 8}});
    worlds.push_back({.name = "8, 1 and 4 a block", .perBlock = {8, 1, 4}});
    worlds.push_back({.name = "4 a block, a lift missing in one", .sessions = 4, .missing = true});
    // Blocks that stand on some of their days: those days then are in the spread as well, which
    // grows with them, and less is found than were the two independent.
    for (const bool bent : {false, true})
        worlds.push_back(
            {.name = "4 a block, 2 of them light days" + std::string(bent ? ", bent" : ""),
             .sessions = 4,
             .lightDays = 2,
             .bend = bent,
             .counted = false});
    worlds.push_back({.name = "4 a block, the last all light, bent",
                      .sessions = 4,
                      .lightBlock = true,
                      .bend = true,
                      .counted = false});
    worlds.push_back(
        {.name = "4 a block, days not alike", .sessions = 4, .phi = 0, .counted = false});
    const auto breaks = [&](SeasonWorld world) {
        world.held = world.counted = false;
        worlds.push_back(std::move(world));
    };
    for (const int k : {4, 8})
        breaks({.name = std::to_string(k) + " a block, days alike 0.7", .sessions = k, .phi = 0.7});
    breaks({.name = "4 a block, tilt 5 %", .sessions = 4, .tilt = 0.05});
    breaks({.name = "4 a block, trend 0.05", .sessions = 4, .trend = 0.05});
    for (const int k : {1, 4}) {
        const std::string a = std::to_string(k) + " a block, ";
        breaks({.name = a + "days of heavy tails", .sessions = k, .heavy = true});
        breaks({.name = a + "days 1.6 x published", .sessions = k, .day = 1.6, .tau = 0});
        breaks({.name = a + "all athletes as published", .sessions = k, .tau = 0});
    }
    breaks({.name = "4 a block, every other scatters 1.6 x", .sessions = 4, .scatter = 1.6});
    return worlds;
}

SeasonSource madeSeason(const SeasonWorld& world, std::uint64_t seed) {
    return SeasonPlayer(world, seed).season();
}

SeasonTally playSeasons(const SeasonWorld& world, long seasons, std::uint64_t seed) {
    SeasonPlayer player(world, seed);
    Sums measures, loads, maxima, before, either, found, byChance;
    Sums halfLoad, halfMax, power, powerMax;
    double product = 0;
    for (long i = 0; i < seasons; ++i) {
        const SeasonMatrix matrix = seasonMatrix(player.season());
        Share all, ofLoads, ofMaxima, ofBefore, ofEither, better, betterMax;
        double count = 0;
        for (const MatrixRow& row : matrix.rows) {
            const bool speed = row.measure.kind == Measure::Kind::Speed;
            if (!speed && row.measure.kind != Measure::Kind::OneRm)
                continue;
            bool any = false, anyBefore = false;
            for (const MatrixCell& cell : row.cells) {
                any = any || told(cell.against);
                anyBefore = anyBefore || told(cell.before);
                count += told(cell.against) ? 1 : 0;
            }
            all.add(any);
            (speed ? ofLoads : ofMaxima).add(any);
            ofBefore.add(anyBefore);
            ofEither.add(any || anyBefore);
            const auto& last = row.cells.back().against;
            if (!last)
                continue;
            (speed ? better : betterMax).add(last->read.reading == Reading::Better);
            if (last->read.reading != Reading::NoFigure)
                (speed ? halfLoad : halfMax).add(last->read.shows());
        }
        measures.add(all.percent());
        loads.add(ofLoads.percent());
        maxima.add(ofMaxima.percent());
        before.add(ofBefore.percent());
        either.add(ofEither.percent());
        power.add(better.percent());
        powerMax.add(betterMax.percent());
        found.add(count);
        const double expected = matrix.byChance();
        byChance.add(expected);
        product += count * expected;
    }
    SeasonTally tally{.seasons = seasons,
                      .falseMeasure = measures.over(),
                      .falseLoads = loads.over(),
                      .falseMaxima = maxima.over(),
                      .falseBefore = before.over(),
                      .falseEither = either.over(),
                      .found = found.over(),
                      .byChance = byChance.over(),
                      .power = power.over().mean,
                      .powerMax = powerMax.over().mean,
                      .halfLoad = halfLoad.over().mean,
                      .halfMax = halfMax.over().mean};
    if (tally.found.mean > 0) {
        // The delta method, with what the two have in common.
        const double ratio = tally.byChance.mean / tally.found.mean;
        const double n = static_cast<double>(seasons);
        const double common =
            (product / n - tally.found.mean * tally.byChance.mean) / std::max(1.0, n - 1);
        const double square = tally.byChance.se * tally.byChance.se +
                              ratio * ratio * tally.found.se * tally.found.se - 2 * ratio * common;
        tally.ratio = {ratio, std::sqrt(std::max(0.0, square)) / tally.found.mean};
    }
    return tally;
}

} // namespace slopebook::tests
