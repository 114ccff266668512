// SPDX-License-Identifier: GPL-3.0-or-later
// What borrowing from the athlete's own history is worth: the error of the 1RM of a light-only
// session, from its own line and from the borrowed one, over made-up athletes (how many: the
// argument). Prints a table.
#include "core/answers/history.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <vector>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

constexpr double mvt = 0.30;

struct World {
    double betweenIntercept, betweenSlope; ///< SD of a session's line about the athlete's
    double scatter;                        ///< SD of a point
};

LiftSession sessionOf(int id, const std::vector<double>& loads, double a, double b, double scatter,
                      std::mt19937_64& random) {
    std::normal_distribution<double> z;
    LiftSession session;
    session.session = SessionId{id};
    int set = 0;
    for (const double load : loads)
        session.points.push_back({load, a + b * load + scatter * z(random), ++set});
    return session;
}

struct Errors {
    double squares = 0, sum = 0, held = 0;
    int n = 0, bounded = 0;
    void take(double estimate, const std::optional<stats::Interval>& interval, double truth) {
        squares += (estimate - truth) * (estimate - truth);
        sum += estimate - truth;
        ++n;
        if (interval) {
            ++bounded;
            held += truth >= interval->low && truth <= interval->high ? 1 : 0;
        }
    }
    void print() const {
        std::printf("  %7.2f  %+6.2f  %5.1f", std::sqrt(squares / n), sum / n,
                    bounded > 0 ? 100 * held / bounded : 0.0);
    }
};

void row(int history, double reach, const World& world, int rounds, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::normal_distribution<double> z;
    const Lift lift{
        .name = "lift", .mvt = {}, .smallestVelocity = {}, .smallestOneRm = {}, .note = {}};
    const Mvt threshold{.value = mvt, .sd = {}, .origin = Mvt::Origin::Coach, .source = "made up"};
    Errors own, borrowed;
    for (int round = 0; round < rounds; ++round) {
        std::vector<LiftSession> sessions;
        double truth = 0;
        for (int i = 0; i <= history; ++i) {
            const double a = 1.60 + world.betweenIntercept * z(random);
            const double b = -0.0105 + world.betweenSlope * z(random);
            truth = (mvt - a) / b;
            std::vector<double> loads;
            const double top = (i < history ? 0.9 : reach) * 124;
            for (int step = 0; step < 5; ++step)
                loads.push_back(25 + (top - 25) * step / 4);
            sessions.push_back(sessionOf(i + 1, loads, a, b, world.scatter, random));
        }
        const auto alone = profile(lift, threshold, sessions.back());
        const auto all = borrow(lift, threshold, sessions, sessions.back().session);
        if (!alone || !alone->oneRm || !all || !all->lines.back().oneRm)
            continue;
        own.take(alone->oneRm->estimate, alone->oneRm->interval, truth);
        borrowed.take(all->lines.back().oneRm->estimate, all->lines.back().oneRm->interval, truth);
    }
    std::printf("%8d  %5.2f  %7.3f  %8.4f  %7.3f", history, reach, world.betweenIntercept,
                world.betweenSlope, world.scatter);
    own.print();
    borrowed.print();
    std::printf("  %5.2f\n", std::sqrt(borrowed.squares / own.squares));
}

} // namespace

int main(int argc, char** argv) {
    const int rounds = argc > 1 ? std::atoi(argv[1]) : 500;
    std::printf("1RM (kg) of a held-out session of light loads; %d made-up athletes a row\n",
                rounds);
    std::printf("%58s %25s\n", "own line alone", "borrowing");
    std::printf(
        "sessions  reach    SD(a)     SD(b)   SD(pt)     RMSE    bias   held     RMSE    bias   "
        "held  ratio\n");
    const World worlds[] = {{0.02, 0.0002, 0.02}, {0.04, 0.0004, 0.02}, {0.04, 0.0004, 0.04}};
    std::uint64_t seed = 1;
    for (const World& world : worlds)
        for (const int history : {3, 5, 10})
            for (const double reach : {0.35, 0.5, 0.9})
                row(history, reach, world, rounds, seed++);
    return 0;
}
