// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/answers/seasonworlds.h"

#include "core/answers/published.h"
#include "core/answers/seasonsource.h"
#include "tests/answers/builders.h"

#include <cmath>
#include <random>

namespace slopebook::tests {

namespace {

using namespace slopebook::answers;

constexpr int blocks = 3;
constexpr double scatter = 0.012, v0 = 1.6, slope = -0.0115, atMax = 0.45;
const std::vector<double> ladder{40, 52, 64, 76, 88}, light{40, 52};

class SeasonPlayer {
public:
    SeasonPlayer(const SeasonWorld& world, std::uint64_t seed) : m_world(world), m_random(seed) {}

    SeasonMatrix season() {
        SeasonSource source{.athlete = AthleteId{1}};
        for (int b = 0; b < blocks; ++b)
            source.blocks.push_back({.id = BlockId{b + 1},
                                     .block = {.name = "Block " + std::to_string(b + 1)},
                                     .sessions = m_world.sessions});
        source.batteries.resize(blocks);
        int id = 0;
        for (const char* name : {"Bench pull", "Bench press", "Full squat"})
            source.lifts.push_back(lift(name, ++id));
        return seasonMatrix(source);
    }

private:
    double normal() { return m_normal(m_random); }

    SeasonLift lift(const char* name, int id) {
        SeasonLift made{.lift = {LiftId{id}, {.name = name, .kind = VelocityKind::Propulsive}},
                        .mvt = coachMvt(atMax),
                        .checkLoads = {Mass{40'000}, Mass{64'000}, Mass{88'000}}};
        const double shipped = 0.025; // m/s, whatever the lift: the rule is of its multiples
        const double sd =
            shipped * std::exp(m_world.tau * normal() - m_world.tau * m_world.tau / 2);
        double level = 0;
        const double rest = std::sqrt(1 - m_world.phi * m_world.phi);
        int day = 0;
        for (int b = 0; b < blocks; ++b) {
            BlockSessions block{.name = "Block " + std::to_string(b + 1)};
            for (int k = 0; k < m_world.sessions; ++k) {
                // Blocks lie weeks apart: days are alike within one.
                level = k == 0 ? normal() : m_world.phi * level + rest * normal();
                const double along = m_world.sessions > 1 ? k / (m_world.sessions - 1.0) - 0.5 : 0;
                const double shift =
                    sd * level + m_world.trend * along + (b == blocks - 1 ? m_world.gain : 0);
                const bool easy = k >= m_world.sessions - m_world.lightDays;
                block.sessions.push_back(drawn(++day, id, easy ? light : ladder, shift));
            }
            made.blocks.push_back(std::move(block));
        }
        const auto published = std::pair{shipped, std::string("a paper")};
        made.settings = [published](const LiftSession&, const LiftSession&) {
            BlockSettings settings;
            settings.with.dayNoise = chooseDayNoise({}, {}, published);
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

    LiftSession drawn(int day, int lift, const std::vector<double>& loads, double shift) {
        const double tilt = m_world.tilt * normal() * slope;
        std::vector<std::pair<double, double>> points;
        for (const double load : loads)
            points.emplace_back(load, v0 + slope * load + shift + tilt * (load - 60) +
                                          scatter * normal());
        LiftSession made = session(day, points);
        made.lift = LiftId{lift};
        return made;
    }

    const SeasonWorld& m_world;
    std::mt19937_64 m_random;
    std::normal_distribution<double> m_normal;
};

bool told(const std::optional<CellChange>& change) {
    return change &&
           (change->read.reading == Reading::Better || change->read.reading == Reading::Worse);
}

} // namespace

std::vector<SeasonWorld> seasonWorlds() {
    std::vector<SeasonWorld> worlds;
    for (const int k : {1, 2, 3, 4, 6, 8})
        worlds.push_back({.name = std::to_string(k) + " a block", .sessions = k});
    worlds.push_back({.name = "4 a block, 2 of them light days", .sessions = 4, .lightDays = 2});
    worlds.push_back({.name = "4 a block, days alike 0", .sessions = 4, .phi = 0});
    worlds.push_back(
        {.name = "4 a block, days alike 0.7", .sessions = 4, .phi = 0.7, .assumed = false});
    worlds.push_back(
        {.name = "8 a block, days alike 0.7", .sessions = 8, .phi = 0.7, .assumed = false});
    worlds.push_back(
        {.name = "4 a block, tilt 5 %", .sessions = 4, .tilt = 0.05, .assumed = false});
    worlds.push_back(
        {.name = "4 a block, trend 0.05", .sessions = 4, .trend = 0.05, .assumed = false});
    return worlds;
}

SeasonTally playSeasons(const SeasonWorld& world, long seasons, std::uint64_t seed) {
    SeasonPlayer player(world, seed);
    SeasonTally tally{.seasons = seasons};
    double measures = 0, loads = 0, maxima = 0;
    for (long i = 0; i < seasons; ++i) {
        const SeasonMatrix matrix = player.season();
        tally.byChance += matrix.byChance();
        for (const MatrixRow& row : matrix.rows) {
            if (row.measure.kind != Measure::Kind::Speed &&
                row.measure.kind != Measure::Kind::OneRm)
                continue;
            bool any = false, anyBefore = false;
            for (const MatrixCell& cell : row.cells) {
                any = any || told(cell.against);
                anyBefore = anyBefore || told(cell.before);
                tally.found += told(cell.against) ? 1 : 0;
            }
            ++measures;
            tally.falseMeasure += any ? 1 : 0;
            tally.falseBefore += anyBefore ? 1 : 0;
            const ReadChange& last = row.cells.back().against->read;
            const bool better = last.reading == Reading::Better;
            if (row.measure.kind == Measure::Kind::Speed) {
                ++loads;
                tally.power += better ? 1 : 0;
                tally.halfLoad += last.shows();
            } else {
                ++maxima;
                tally.powerMax += better ? 1 : 0;
            }
        }
    }
    tally.falseMeasure *= 100 / measures;
    tally.falseBefore *= 100 / measures;
    tally.power *= 100 / loads;
    tally.powerMax *= 100 / maxima;
    tally.halfLoad /= loads;
    tally.found /= static_cast<double>(seasons);
    tally.byChance /= static_cast<double>(seasons);
    return tally;
}

} // namespace slopebook::tests
