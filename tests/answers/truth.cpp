// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/answers/truth.h"

#include "core/answers/comparison.h"
#include "core/stats/inverse.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace slopebook::tests {

namespace {

using namespace slopebook::answers;
using namespace slopebook::stats;

constexpr double level = 0.95;
constexpr double threshold = 0.30, thresholdSd = 0.03; // m/s
constexpr Bound covers{94, 96}, coversAtLeast{94, 100}, states{4, 6}, statesAtMost{0, 6}, told{};

bool holds(const Interval& interval, double truth) {
    return interval.low <= truth && truth <= interval.high;
}

/// Whether Fieller's set, of whatever shape, holds the truth.
bool holds(const Inverse& inverse, double truth) {
    switch (inverse.shape) {
    case Inverse::Shape::Bounded:
        return holds(inverse.interval, truth);
    case Inverse::Shape::Complement:
        return truth <= inverse.interval.low || truth >= inverse.interval.high;
    case Inverse::Shape::Everything:
        return true;
    }
    return false;
}

bool statedAt(const std::vector<Stretch>& stretches, double x) {
    return std::ranges::any_of(stretches, [&](const Stretch& s) { return s.from < x && x < s.to; });
}

double oneRmOf(const TrueSession& truth, double mvt = threshold) {
    return (mvt - truth.intercept) / truth.slope;
}

double trueChange(const TrueSession& first, const TrueSession& second, double x) {
    return second.at(x) - first.at(x);
}

/// Where |error|/SE of a line is largest: error0 + error1 z against h0 + h1 z^2 at z from centre.
double worstLoad(double centre, double error0, double error1, double h0, double h1) {
    return centre + error1 * h0 / (error0 * h1);
}

bool bandHolds(const Line& line, const TrueSession& truth) {
    const double x = worstLoad(line.xMean, line.yMean - truth.at(line.xMean),
                               line.slope - truth.slope, 1.0 / line.n, 1 / line.sxx);
    return holds(workingHotelling(line, x, level), truth.at(x));
}

class Player {
public:
    Player(const TruthCase& played, std::uint64_t seed)
        : m_case(played), m_made(played.daySd, seed),
          m_light(std::max(played.first.loads.front(), played.second.loads.front())),
          m_heavy(std::min(played.first.loads.back(), played.second.loads.back())) {
        const double middle = (m_light + m_heavy) / 2, span = m_heavy - m_light;
        // Fine about the loads, then ever wider, and as good as infinity at the ends.
        for (const double z : {-1e4, -20., -5., -2., -1., -.7, 0., .7, 1., 2., 5., 20., 1e4})
            m_coarse.push_back(massFromKilograms(middle + z * span / 2));
        for (int i = -12; i <= 12; ++i)
            m_fine.push_back(middle + span * std::sinh(i * 0.8) / 10);
        m_settings.level = level;
        m_settings.variances = played.variances;
    }

    void run() {
        if (m_case.daySd > 0)
            m_settings.dayNoise = m_made.dayNoise(m_case.repeatTests, m_case.first);
        const LiftSession first = m_made.draw(1, m_case.first);
        const Comparison c = between(first, m_made.draw(2, m_case.second));
        if (m_case.daySd > 0) {
            acrossDays(c);
            return;
        }
        if (m_case.variances == Variances::Pooled && m_case.modelHolds)
            oneLine(c.from.line);
        change(c);
        TrueSession unchanged = m_case.first;
        unchanged.loads = m_case.second.loads;
        unchanged.sd = m_case.second.sd;
        unchangedLines(between(first, m_made.draw(3, unchanged)).lines);
    }

    std::vector<TruthTally> tallies() const { return m_tallies; }

private:
    Comparison between(const LiftSession& first, const LiftSession& second) const {
        return *compare(benchPull(), m_mvt, first, second, m_settings);
    }

    void tell(std::string_view question, Bound bound, bool hit) {
        auto found = std::ranges::find(m_tallies, question, &TruthTally::question);
        if (found == m_tallies.end())
            found = m_tallies.insert(found, {.question = std::string(question), .bound = bound});
        ++found->asked;
        found->hits += hit ? 1 : 0;
    }

    void oneLine(const Line& line) {
        const TrueSession& truth = m_case.first;
        tell("slope", covers, holds(slopeInterval(line, level), truth.slope));
        tell("speed at the lightest load", covers,
             holds(meanInterval(line, m_light, level), truth.at(m_light)));
        tell("band of the line, all loads", covers, bandHolds(line, truth));
        const Inverse max = inversePrediction(line, threshold, 0, level);
        tell("1RM (Fieller's set, whatever its shape)", covers, holds(max, oneRmOf(truth)));
        if (max.shape == Inverse::Shape::Bounded)
            tell("1RM, where the set is an interval and shown", told, holds(max, oneRmOf(truth)));
        const double seen = threshold + thresholdSd * m_made.normal();
        tell(
            "1RM, the threshold's SD in it", coversAtLeast,
            holds(inversePrediction(line, seen, thresholdSd * thresholdSd, level), oneRmOf(truth)));
    }

    double trueChange(double x) const { return tests::trueChange(m_case.first, m_case.second, x); }
    double trueOneRmChange() const { return oneRmOf(m_case.second) - oneRmOf(m_case.first); }

    /// Separate variances: never narrower than one line says alone (TwoLines::interval), which with
    /// few points is more than 95 %; of the 1RM each line goes by its own df.
    Bound required() const {
        if (!m_case.modelHolds)
            return told;
        return m_case.variances == Variances::Pooled ? covers : coversAtLeast;
    }
    Bound requiredOfStatements() const {
        if (!m_case.modelHolds)
            return told;
        return m_case.variances == Variances::Pooled ? states : statesAtMost;
    }

    void change(const Comparison& c) {
        const Bound required = this->required();
        const auto at = [&](double x) { return holds(c.lines.interval(x, level), trueChange(x)); };
        tell("change at the lightest common load", required, at(m_light));
        tell("change at the heaviest common load", required, at(m_heavy));
        const bool pooled = m_case.variances == Variances::Pooled;
        tell("band of the change, all loads", required,
             pooled ? bandHoldsEverywhere(c.lines, m_case.first, m_case.second, level)
                    : std::ranges::all_of(m_fine, [&](double x) {
                          return holds(c.lines.band(x, level), trueChange(x));
                      }));
        const double crossing = -(m_case.second.intercept - m_case.first.intercept) /
                                (m_case.second.slope - m_case.first.slope);
        tell("said to differ where they truly cross", requiredOfStatements(),
             statedAt(c.lines.differs(level), crossing));
        if (c.oneRm) {
            // Separate variances: a line of three points bounds its 1RM mostly where its scatter
            // happens to be small, so that of those shown more are wrong; of all asked they are
            // not.
            const bool shown = c.oneRm->interval.has_value();
            const bool right = shown && holds(*c.oneRm->interval, trueOneRmChange());
            if (shown)
                tell("1RM change, where it is shown", pooled ? required : told, right);
            tell("1RM change, or none shown", pooled ? told : required, right || !shown);
        }
        oneRmChangeByOwnDf(c.lines);
    }

    void oneRmChangeByOwnDf(const TwoLines& lines) {
        const Inverse from = inversePrediction(lines.first(), threshold, 0, level);
        const Inverse to = inversePrediction(lines.second(), threshold, 0, level);
        if (from.shape == Inverse::Shape::Bounded && to.shape == Inverse::Shape::Bounded)
            tell("(1RM change, if each line went by its own scatter and df)", told,
                 holds(differenceInterval(from.estimate, from.interval, to.estimate, to.interval),
                       trueOneRmChange()));
    }

    void unchangedLines(const TwoLines& lines) {
        const Bound required = requiredOfStatements();
        const auto stretches = lines.differs(level);
        const auto tellAt = [&](std::string_view question, double x) {
            tell(question, required, statedAt(stretches, x));
        };
        tellAt("no change: said to differ at the lightest common load", m_light);
        tellAt("no change: said to differ in the middle", (m_light + m_heavy) / 2);
        tellAt("no change: said to differ at the heaviest common load", m_heavy);
        tell("no change: said to differ anywhere, by the band", required,
             !lines.differs(level, true).empty());
        tell("(no change: said to differ anywhere on the common loads, load by load)", told,
             !clip(stretches, m_light, m_heavy).empty());
    }

    void acrossDays(const Comparison& c) {
        const std::array ends{std::pair{"change at the lightest common load", m_light},
                              std::pair{"change at the heaviest common load", m_heavy}};
        for (const auto& [question, x] : ends) {
            const ChangeAt at = changeAt(c, massFromKilograms(x));
            tell(question, coversAtLeast, holds(at.read.interval, trueChange(x)));
            tell("(" + std::string(question) + ", these two days only)", told,
                 holds(at.interval, trueChange(x)));
        }
        bool band = true, bandAlone = true;
        for (const Mass load : m_coarse) {
            const double truth = trueChange(kilograms(load));
            const ChangeAt at = changeAt(c, load);
            band = band && holds(at.readingBand, truth);
            bandAlone = bandAlone && holds(at.band, truth);
        }
        tell("band of the change, all loads", coversAtLeast, band);
        tell("(band of the change, these two days only)", told, bandAlone);
        if (!c.oneRm || !c.oneRm->interval || c.oneRm->read.reading == Reading::NoFigure)
            return;
        tell("1RM change, where it is shown", coversAtLeast,
             holds(c.oneRm->read.interval, trueOneRmChange()));
        tell("(1RM change, these two days only)", told,
             holds(*c.oneRm->interval, trueOneRmChange()));
    }

    const TruthCase m_case;
    MadeLog m_made;
    double m_light, m_heavy; ///< of the loads that both sessions cover, kg
    std::vector<Mass> m_coarse;
    std::vector<double> m_fine;
    const Answer<Mvt> m_mvt = coachMvt(threshold);
    ComparisonSettings m_settings;
    std::vector<TruthTally> m_tallies;
};

/// Lighter loads faster, the lines crossing at 60 kg, the scatter times noise.
TrueSession later(TrueSession session, double noise = 1) {
    session.intercept += 0.06;
    session.slope -= 0.001;
    session.sd *= noise;
    return session;
}

} // namespace

bool bandHoldsEverywhere(const TwoLines& lines, const TrueSession& first, const TrueSession& second,
                         double atLevel) {
    const Line &a = lines.first(), &b = lines.second();
    const double gap = b.xMean - a.xMean;
    const double centre = a.xMean + gap * a.sxx / (a.sxx + b.sxx);
    const double h0 = 1.0 / a.n + 1.0 / b.n + gap * gap / (a.sxx + b.sxx);
    const double x = worstLoad(centre, lines.difference(centre) - trueChange(first, second, centre),
                               lines.d() - (second.slope - first.slope), h0, 1 / a.sxx + 1 / b.sxx);
    return holds(lines.band(x, atLevel), trueChange(first, second, x));
}

std::vector<TruthCase> truthCases() {
    const TrueSession five{.loads = {30, 45, 60, 75, 90}}, three{.loads = {30, 60, 90}};
    const TrueSession light{.loads = {20, 25, 30, 35, 40}}, block{.loads = {30, 40, 50}};
    constexpr auto separate = Variances::Separate;
    std::vector<TruthCase> cases{
        {"5 points", five, later(five)},
        {"3 points", three, later(three)},
        {"5 light points", light, later(light)},
        {"5 points, then 3 light ones", five, later(block)},
        {"5 points, equal scatter, separate variances", five, later(five), separate},
        {"3 points, equal scatter, separate variances", three, later(three), separate},
    };
    for (const auto& [name, a, b] :
         {std::tuple{"5 points, then 5 of 3 x the scatter", five, later(five, 3)},
          std::tuple{"3 points, then 3 of 3 x the scatter", three, later(three, 3)},
          std::tuple{"5 points, then 3 of 3 x the scatter", five, later(three, 3)},
          std::tuple{"3 points, then 5 of 3 x the scatter", three, later(five, 3)}}) {
        cases.push_back(
            {std::string(name) + ", pooled all the same", a, b, Variances::Pooled, false});
        cases.push_back({std::string(name) + ", separate variances", a, b, separate});
    }
    const auto days = [&](const std::string& name, const TrueSession& ladder, double daySd,
                          std::initializer_list<int> tests) {
        for (const int n : tests)
            cases.push_back({.name = name + ", days differ by 0.0" +
                                     std::to_string(std::lround(1000 * daySd)) + " m/s, " +
                                     (n == 0 ? "known" : std::to_string(n) + " repeat tests"),
                             .first = ladder,
                             .second = later(ladder),
                             .daySd = daySd,
                             .repeatTests = n});
    };
    days("5 points", five, 0.010, {0, 3});
    days("5 points", five, 0.025, {0, 3, 8, 20});
    days("3 points", three, 0.025, {0, 3, 8, 20});
    days("5 light points", light, 0.025, {0, 3});
    return cases;
}

std::vector<TruthTally> playTruth(const TruthCase& played, long runs, std::uint64_t seed) {
    Player player(played, seed);
    for (long i = 0; i < runs; ++i)
        player.run();
    return player.tallies();
}

} // namespace slopebook::tests
