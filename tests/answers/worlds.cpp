// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/answers/worlds.h"

#include "core/answers/comparison.h"
#include "core/answers/noise.h"
#include "core/answers/published.h"
#include "tests/answers/builders.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <random>

namespace slopebook::tests {

namespace {

using namespace slopebook::answers;

constexpr double smallestSpeed = 0.06, smallestShare = 0.039; // m/s; of the earlier estimate

const std::vector<double> full{30, 40, 50, 60, 70, 80, 90}, light{20, 26, 32, 38, 44, 50};
const std::vector<double> five{40, 52, 64, 76, 88}, three{40, 60, 80}, threeLight{20, 35, 50};

/// The truth that a pair is drawn with: what the later session truly gained.
struct Gain {
    double speed = 0; ///< m/s at every load
    double max = 1;   ///< times the 1RM
};

struct ReadAs {
    bool up = false, down = false, held = false;
};

/// One pair as the program reads it.
struct PairRead {
    std::array<ReadAs, 3> loads;
    ReadAs max;
    bool straightLoad[3] = {}, straightMax = false;
    double halfLoad = 0, halfMax = 0; ///< of the 1RM in %; infinite where unbounded
    bool plan = false;                ///< holds the truth
    double widthPlan = 0, widthOld = 0;
};

ReadAs said(const ReadChange& r) {
    return {r.reading == Reading::Better, r.reading == Reading::Worse, r.reading == Reading::Held};
}

bool straightFalse(const ReadChange& r) {
    return r.straight && (r.straight->low > 0 || r.straight->high < 0);
}

double half(const std::optional<stats::Interval>& interval) {
    return interval ? (interval->high - interval->low) / 2
                    : std::numeric_limits<double>::infinity();
}

class Player {
public:
    Player(const World& world, std::uint64_t seed) : m_world(world), m_random(seed) {
        m_lift.name = world.relation;
        m_lift.kind = world.mean ? VelocityKind::Mean : VelocityKind::Propulsive;
        if (!world.shape)
            m_curve = *publishedRelation(world.relation, m_lift.kind);
        m_atMax = world.shape ? world.shape->atMax : velocityAt(m_curve, 100);
        m_light = world.shape ? 0 : velocityAt(m_curve, 30);
        const auto row = published(m_lift.name, m_lift.kind);
        m_shipped = std::pair{*row->dayNoise, row->dayNoiseSource};
        m_mvt = coachMvt(m_atMax);
    }

    PairRead pair(const Gain& gain) {
        m_max = 80 + 60 * uniform();
        m_kappa = m_world.kappaLow + (m_world.kappaHigh - m_world.kappaLow) * uniform();
        m_daySd = m_world.day * m_shipped.first *
                  std::exp(m_world.tau * normal() - m_world.tau * m_world.tau / 2);
        std::vector<LiftSession> before;
        if (m_world.narrow)
            for (int i = 0; i < 3; ++i)
                before.push_back(draw(10 + i, full, 1, {}));
        auto earlier = draw(1, m_world.earlier, m_world.repsEarlier, {});
        auto later = draw(2, m_world.later, m_world.repsLater, gain);
        if (m_world.repsEarlier != m_world.repsLater)
            fairPoints(earlier, later);
        ComparisonSettings settings{.dayNoise = chooseDayNoise({}, {}, m_shipped),
                                    .bend = bendOf(m_lift, m_mvt, before),
                                    .smallestVelocity = Smallest{smallestSpeed}};
        const double low = std::max(earlier.points.front().load, later.points.front().load);
        const double high = std::min(earlier.points.back().load, later.points.back().load);
        const auto estimate =
            profile(m_lift, m_mvt, earlier, 0.95, {settings.dayNoise, settings.bend});
        if (estimate && estimate->oneRm)
            settings.smallestOneRm = Smallest{smallestShare * estimate->oneRm->estimate};
        return readPair(earlier, later, settings, {low, (low + high) / 2, high});
    }

private:
    double uniform() { return std::uniform_real_distribution<double>(0, 1)(m_random); }
    double normal() { return m_normal(m_random); }

    double speedAt(double percent) const {
        if (const auto& shape = m_world.shape)
            return shape->atMax +
                   (100 - percent) * (shape->slope + shape->square * (100 - percent));
        const double chord = m_light + (m_atMax - m_light) * (percent - 30) / 70;
        return chord + m_kappa * (velocityAt(m_curve, percent) - chord);
    }

    struct Drawn : LiftSession {
        std::vector<double> first; ///< of each set, its first rep
    };

    Drawn draw(int id, const std::vector<double>& percents, int reps, const Gain& gain) {
        const double shift = gain.speed + m_daySd * normal();
        const double tilt = m_world.tilt * normal() * (speedAt(90) - speedAt(30)) / 60;
        std::vector<std::pair<double, double>> points;
        std::vector<double> first;
        for (const double percent : percents) {
            const double load = std::round(2 * m_max * percent / 100) / 2;
            const double base = speedAt(100 * load / (m_max * gain.max)) + shift +
                                tilt * (100 * load / m_max - m_world.pivot);
            const double sd =
                m_world.noise * (1 + m_world.wide * std::max(0.0, (60 - 100 * load / m_max) / 40));
            double best = base + sd * normal();
            first.push_back(best);
            for (int rep = 1; rep < reps; ++rep)
                best = std::max(best, base + sd * normal());
            points.emplace_back(load, best);
        }
        return {session(id, points), first};
    }

    /// The fastest of the same number of reps on both days; here one of them has one.
    static void fairPoints(Drawn& a, Drawn& b) {
        for (Drawn* each : {&a, &b})
            for (std::size_t i = 0; i < each->points.size(); ++i)
                each->points[i].velocity = each->first[i];
    }

    PairRead readPair(const LiftSession& earlier, const LiftSession& later,
                      const ComparisonSettings& settings, const std::array<double, 3>& loads) {
        const auto c = compare(m_lift, m_mvt, earlier, later, settings);
        PairRead read;
        for (std::size_t i = 0; i < loads.size(); ++i) {
            const ReadChange at = changeAt(*c, massFromKilograms(loads[i])).read;
            read.loads[i] = said(at);
            read.straightLoad[i] = straightFalse(at);
            read.halfLoad += half(at.interval) / 3;
        }
        read.halfMax = std::numeric_limits<double>::infinity();
        if (c->oneRm && c->oneRm->read.reading != Reading::NoFigure) {
            read.max = said(c->oneRm->read);
            read.straightMax = straightFalse(c->oneRm->read);
            read.halfMax = 100 * half(c->oneRm->read.interval) / m_max;
        }
        const auto own = profile(m_lift, m_mvt, earlier, 0.95, {settings.dayNoise, settings.bend});
        read.plan = true;
        read.widthPlan = read.widthOld = std::numeric_limits<double>::infinity();
        if (own && own->oneRm && own->oneRm->toPlan) {
            read.plan = own->oneRm->toPlan->low <= m_max && m_max <= own->oneRm->toPlan->high;
            read.widthPlan = 100 * half(own->oneRm->toPlan) / m_max;
            read.widthOld = 100 * half(own->oneRm->interval) / m_max;
        }
        return read;
    }

    const World m_world;
    std::mt19937_64 m_random;
    std::normal_distribution<double> m_normal;
    Lift m_lift;
    PublishedRelation m_curve;
    std::pair<double, std::string> m_shipped;
    Mvt m_mvt;
    double m_atMax = 0, m_light = 0;
    double m_max = 0, m_kappa = 0, m_daySd = 0; ///< of the athlete at hand
};

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// How often each was said over a run of pairs, in %.
struct Run {
    std::array<double, 3> up{}, down{}, held{}, straight{};
    double maxUp = 0, maxDown = 0, maxHeld = 0, straightMax = 0, any = 0, plan = 0, halfLoad = 0;
    std::vector<double> halfMax, widthPlan, widthOld;
    double meanUp() const { return (up[0] + up[1] + up[2]) / 3; }
    double meanDown() const { return (down[0] + down[1] + down[2]) / 3; }
    static double worst(const std::array<double, 3>& of) { return *std::ranges::max_element(of); }
};

Run runOf(const World& world, long pairs, std::uint64_t seed, const Gain& gain) {
    Player player(world, seed);
    Run run;
    const double each = 100.0 / static_cast<double>(pairs);
    for (long i = 0; i < pairs; ++i) {
        const PairRead read = player.pair(gain);
        bool any = read.max.up || read.max.down;
        for (std::size_t k = 0; k < 3; ++k) {
            run.up[k] += read.loads[k].up ? each : 0;
            run.down[k] += read.loads[k].down ? each : 0;
            run.held[k] += read.loads[k].held ? each : 0;
            run.straight[k] += read.straightLoad[k] ? each : 0;
            any = any || read.loads[k].up || read.loads[k].down;
        }
        run.maxUp += read.max.up ? each : 0;
        run.maxDown += read.max.down ? each : 0;
        run.maxHeld += read.max.held ? each : 0;
        run.straightMax += read.straightMax ? each : 0;
        run.any += any ? each : 0;
        run.plan += read.plan ? each : 0;
        run.halfLoad += read.halfLoad / static_cast<double>(pairs);
        run.halfMax.push_back(read.halfMax);
        run.widthPlan.push_back(read.widthPlan);
        run.widthOld.push_back(read.widthOld);
    }
    return run;
}

World world(std::string name, std::string relation, std::vector<double> earlier,
            std::vector<double> later) {
    return {.name = std::move(name),
            .relation = std::move(relation),
            .earlier = std::move(earlier),
            .later = std::move(later)};
}

constexpr const char* press = "Bench press";
constexpr const char* pull = "Bench pull";
constexpr const char* squat = "Full squat (guided bar)";

void bends(World& w, double low = 0, double high = 1) {
    w.kappaLow = low;
    w.kappaHigh = high;
}

/// Days as the tall worlds of the design have them: 0.022 of 0.025, by athlete, tilted.
World tall(World w) {
    w.day = 0.88;
    w.tau = 0.45;
    w.tilt = 0.035;
    return w;
}

std::vector<World> ofTheDesign() {
    std::vector<World> all;
    const auto add = [&](World w, auto&&... change) {
        (change(w), ...);
        all.push_back(std::move(w));
    };
    const auto byAthlete = [](World& w) { w.tau = 0.45; };
    const auto tilted = [](World& w) {
        w.day = 0.88;
        w.tilt = 0.035;
    };
    const auto bent = [](double low, double high) {
        return [=](World& w) {
            w.day = 0.8;
            bends(w, low, high);
        };
    };
    const auto wide = [](World& w) { w.wide = 2; };
    const auto day = [](double times) { return [=](World& w) { w.day = times; }; };
    const auto reps = [](int a, int b) {
        return [=](World& w) {
            w.repsEarlier = a;
            w.repsLater = b;
        };
    };
    const auto allBent = [](World& w) { bends(w); };
    const std::vector<double> seven = full;
    add(world("as published, 5 pt", press, five, five));
    add(world("as published, 3 pt", press, three, three));
    add(world("as published, 7 pt", press, seven, seven));
    add(world("SD by athlete, 5 pt", press, five, five), byAthlete);
    add(world("SD by athlete, 3 pt", press, three, three), byAthlete);
    add(world("SD by athlete, 7 pt", press, seven, seven), byAthlete);
    add(world("tilt 3.5 %, 5 pt", press, five, five), tilted);
    add(world("tilt 3.5 %, light 20-50 twice", press, light, light), tilted);
    add(world("tilt 3.5 %, 3 pt light twice", press, threeLight, threeLight), tilted);
    add(world("tilt, full then light (straight)", press, full, light), tilted);
    add(world("bend press full/light", press, full, light), bent(0, 1));
    add(world("bend pull full/light", pull, full, light), bent(0, 1));
    add(world("bend squat full/light", squat, full, light), bent(0, 1));
    add(world("bend pull full/3 pt light", pull, full, threeLight), bent(0, 1));
    add(world("bend pull light twice", pull, light, light), bent(0, 1));
    add(world("1 rep then 5 (noise .025)", press, five, five), day(0.8), reps(1, 5),
        [](World& w) { w.noise = 0.025; });
    add(world("light 3x noisier, 40-95/40-62", press, {40, 55, 70, 85, 95}, {40, 47, 55, 62}),
        day(0.8), wide);
    add(world("light 3x noisier, full/light", press, full, light), day(0.8), wide);
    add(world("light 3x noisier, noise .02, 3/3 pt light", press, {40, 65, 90}, threeLight),
        day(0.8), wide, [](World& w) { w.noise = 0.02; });
    add(world("different loads 40-88/34-76", press, five, {34, 46, 58, 67, 76}), byAthlete);
    for (const auto& [name, relation] : {std::pair{"all at once, press full/light", press},
                                         {"all at once, pull full/light", pull},
                                         {"all at once, squat full/light", squat}})
        add(tall(world(name, relation, full, light)), wide, reps(1, 3), allBent);
    add(tall(world("all but bend, 5 pt twice", press, five, five)), wide, reps(1, 3));
    add(tall(world("all at once, 3 pt twice, bend", squat, three, three)), wide, reps(1, 3),
        allBent);
    add(tall(world("tilt + SD by athlete, 5 pt", press, five, five)));
    add(tall(world("tilt + SD by athlete, light twice", press, light, light)));
    add(tall(world("tilt + SD by athlete, 3 pt light twice", press, threeLight, threeLight)));
    add(world("bend pull, kappa 1", pull, full, light), bent(1, 1));
    add(world("bend pull, kappa 0", pull, full, light), bent(0, 0));
    add(world("bend press, kappa 1", press, full, light), bent(1, 1));
    add(world("bend squat, kappa 1", squat, full, light), bent(1, 1));
    add(tall(world("all, straight, press full/light", press, full, light)), wide, reps(1, 3));
    add(tall(world("light then full, pull all at once", pull, light, full)), wide, reps(3, 1),
        allBent);
    return all;
}

/// Ours, that no constant was chosen by.
std::vector<World> ofOurOwn() {
    std::vector<World> all;
    const auto add = [&](World w) {
        w.tuned = false;
        all.push_back(std::move(w));
    };
    World w = world("squat by mean velocity, full/light", squat, full, light);
    w.mean = true;
    w.day = 0.8;
    bends(w);
    add(w);
    w = tall(world("squat by mean velocity, all at once", squat, full, light));
    w.mean = true;
    w.wide = 2;
    w.repsLater = 3;
    bends(w);
    add(w);
    w = tall(world("days pivot at 45 %, 5 pt", press, five, five));
    w.pivot = 45;
    add(w);
    w = tall(world("days pivot at 45 %, full/light, pull", pull, full, light));
    w.pivot = 45;
    bends(w);
    add(w);
    // Athletes as published figures have them, of lifts without a curve of their own.
    const auto shaped = [&](const char* name, const char* lift, const Shape& shape) {
        World made = tall(world(name, lift, full, light));
        made.shape = shape;
        made.mean = true;
        made.wide = 2;
        made.repsLater = 3;
        return made;
    };
    // %1RM = 120.15 - 83.54 v, 290 athletes: Naclerio and Larumbe-Zabala, parallel squat.
    add(shaped("parallel squat by 290 athletes, all at once", "Back squat",
               {(120.15 - 100) / 83.54, 1 / 83.54}));
    // 0.10 m/s a 10 % (Sports Biomech 2018) down to a powerlifter's 0.23 (Helms et al. 2017).
    add(shaped("powerlifter's squat, all at once", "Back squat", {0.23, 0.010}));
    // 0.15 m/s a 10 % (Sports Biomech 2018) down to 0.17, bench press with a free bar.
    add(shaped("bench press 0.15 m/s a 10 %, all at once", "Bench press", {0.17, 0.015}));
    // A free squat whose line over 20 to 80 % reads 16 % high (Macarilla et al. 2022: 29 to 38 kg).
    w = shaped("free squat read high from light loads, all at once", "Back squat",
               {0.24, 0.018, -0.00008});
    w.biased = true;
    add(w);
    w = world("three own full ladders, pull full/light", pull, full, light);
    w.day = 0.8;
    w.narrow = true;
    bends(w);
    add(w);
    w = tall(world("three own full ladders, all at once, press", press, full, light));
    w.narrow = true;
    w.wide = 2;
    w.repsLater = 3;
    bends(w);
    add(w);
    return all;
}

} // namespace

std::vector<World> worlds() {
    std::vector<World> all = ofTheDesign();
    for (World& own : ofOurOwn())
        all.push_back(std::move(own));
    return all;
}

WorldTally play(const World& world, long pairs, std::uint64_t seed, long changed) {
    const Run none = runOf(world, pairs, seed, {});
    std::array<double, 3> any{}, straight = none.straight;
    for (std::size_t k = 0; k < 3; ++k)
        any[k] = none.up[k] + none.down[k];
    WorldTally tally{.pairs = pairs,
                     .falseLoad = Run::worst(any),
                     .falseMax = none.maxUp + none.maxDown,
                     .falseAny = none.any,
                     .coverPlan = none.plan,
                     .widthPlan = median(none.widthPlan),
                     .widthOld = median(none.widthOld),
                     .halfLoad = none.halfLoad,
                     .halfMax = median(none.halfMax),
                     .straightFalseLoad = Run::worst(straight),
                     .straightFalseMax = none.straightMax};
    if (changed == 0)
        return tally;
    const auto run = [&](const Gain& gain) { return runOf(world, changed, seed, gain); };
    const Run up = run({.speed = smallestSpeed}), down = run({.speed = -smallestSpeed});
    const Run up2 = run({.speed = 2 * smallestSpeed}), down2 = run({.speed = -2 * smallestSpeed});
    const Run more = run({.max = 1 + smallestShare}), less = run({.max = 1 - smallestShare});
    const Run more2 = run({.max = 1 + 2 * smallestShare}),
              less2 = run({.max = 1 - 2 * smallestShare});
    tally.wrongLoad = std::max(
        {Run::worst(up.down), Run::worst(down.up), Run::worst(up2.down), Run::worst(down2.up)});
    tally.wrongMax = std::max({more.maxDown, less.maxUp, more2.maxDown, less2.maxUp});
    tally.falseHeldLoad = std::max(Run::worst(up.held), Run::worst(down.held));
    tally.falseHeldMax = std::max(more.maxHeld, less.maxHeld);
    tally.powerLoad = (up.meanUp() + down.meanDown()) / 2;
    tally.powerLoadTwice = (up2.meanUp() + down2.meanDown()) / 2;
    tally.powerMax = (more.maxUp + less.maxDown) / 2;
    tally.powerMaxTwice = (more2.maxUp + less2.maxDown) / 2;
    return tally;
}

} // namespace slopebook::tests
