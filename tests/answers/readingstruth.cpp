// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/answers/readingstruth.h"

#include "core/answers/comparison.h"
#include "tests/answers/madelog.h"

#include <algorithm>
#include <cmath>

namespace slopebook::tests {

namespace {

using namespace slopebook::answers;

constexpr double threshold = 0.30;

class Player {
public:
    Player(const ReadingsCase& played, std::uint64_t seed)
        : m_case(played), m_made(played.daySd, seed) {
        for (int i = 0; i < played.points; ++i)
            m_truth.loads.push_back(30 + 60.0 * i / (played.points - 1));
        m_middle = massFromKilograms(60);
        m_end = massFromKilograms(90);
        // So large that held can be said of nothing now and then, at the ladder's end.
        const double h = 2 * (1.0 / played.points + 0.25 / spread());
        m_smallest = 3 * std::sqrt(m_truth.sd * m_truth.sd * h + 2 * played.daySd * played.daySd);
        m_tallies = {{.question = "check load, middle"},
                     {.question = "check load, end"},
                     {.question = "estimated 1RM"}};
    }

    void run() {
        ComparisonSettings settings{.checkLoads = {m_middle, m_end},
                                    .dayNoise = m_made.dayNoise(m_case.repeatTests, m_truth),
                                    .smallestVelocity = Smallest{m_smallest},
                                    .smallestOneRm = Smallest{m_smallest / -m_truth.slope}};
        const LiftSession first = ladder(1, 0);
        tell(*compare(benchPull(), m_mvt, first, ladder(2, 0), settings), &ReadingsTally::asked,
             &ReadingsTally::falseChange, changed);
        tell(*compare(benchPull(), m_mvt, first, ladder(3, m_smallest), settings), nullptr,
             &ReadingsTally::falseHeld, held);
    }

    std::vector<ReadingsTally> tallies() const { return m_tallies; }

private:
    static bool changed(Reading r) { return r == Reading::Better || r == Reading::Worse; }
    static bool held(Reading r) { return r == Reading::Held; }

    void tell(const Comparison& c, long ReadingsTally::*asked, long ReadingsTally::*hits,
              bool (*is)(Reading)) {
        const auto at = [&](Mass load) {
            return std::ranges::find(c.at, load, &ChangeAt::load)->read.reading;
        };
        const Reading readings[]{at(m_middle), at(m_end),
                                 c.oneRm ? c.oneRm->read.reading : Reading::NoFigure};
        for (std::size_t i = 0; i < m_tallies.size(); ++i) {
            if (asked)
                ++(m_tallies[i].*asked);
            m_tallies[i].*hits += is(readings[i]) ? 1 : 0;
        }
    }

    /// Sum of squares of a ladder that is one long.
    double spread() const {
        double sum = 0;
        for (const double load : m_truth.loads)
            sum += (load - 60) * (load - 60) / 3600;
        return sum;
    }

    /// The later ladders lie one kilogram higher: figures at shared loads would only take time.
    LiftSession ladder(int id, double by) {
        TrueSession truth = m_truth;
        truth.intercept += by;
        if (id > 1)
            for (double& load : truth.loads)
                load += 1;
        return m_made.draw(id, truth);
    }

    const ReadingsCase m_case;
    MadeLog m_made;
    TrueSession m_truth;
    Mass m_middle, m_end;
    double m_smallest = 0;
    const Answer<Mvt> m_mvt = coachMvt(threshold);
    std::vector<ReadingsTally> m_tallies;
};

} // namespace

std::string ReadingsCase::name() const {
    const std::string day = std::to_string(std::lround(1000 * daySd));
    return std::to_string(points) + " points, day SD 0." +
           std::string(3 - std::min<std::size_t>(3, day.size()), '0') + day + " m/s, " +
           (repeatTests == 0 ? "known" : "from " + std::to_string(repeatTests) + " repeat tests");
}

std::vector<ReadingsCase> readingsCases() {
    std::vector<ReadingsCase> cases;
    for (const int points : {3, 5})
        for (const double daySd : {0.0, 0.010, 0.025})
            for (const int repeatTests : {0, 3, 4, 8, 20})
                cases.push_back({.points = points, .daySd = daySd, .repeatTests = repeatTests});
    return cases;
}

std::vector<ReadingsTally> playReadings(const ReadingsCase& played, long runs, std::uint64_t seed) {
    Player player(played, seed);
    for (long i = 0; i < runs; ++i)
        player.run();
    return player.tallies();
}

} // namespace slopebook::tests
