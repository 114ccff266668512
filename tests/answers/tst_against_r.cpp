// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure of profile and compare against R (tests/reference/profile_compare.R), on generated
// logs, to 1e-8 relative.
#include "core/answers/comparison.h"
#include "tests/answers/builders.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <cmath>
#include <limits>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double missing = std::numeric_limits<double>::quiet_NaN();
constexpr int logs = 60;

struct Made {
    LiftSession from, to;
    Mvt mvt;
    ComparisonSettings settings;
};

class Maker {
public:
    Made make(int i) {
        const double v0 = uniform(1.3, 1.9);
        const double slope = -uniform(0.008, 0.016);
        const double gain = uniform(-0.05, 0.12);
        const double tilt = uniform(-0.0015, 0.0015);
        const double scatter = i % 9 == 8 ? 0.08 : uniform(0.008, 0.03);
        Made made{.from = session(i, 1, v0, slope, scatter),
                  .to = session(i, 2, v0 + gain, slope + tilt, i % 10 == 9 ? 4 * scatter : scatter),
                  .mvt = tests::coachMvt(std::round(uniform(15, 55)) / 100, 0.04),
                  .settings = {}};
        made.settings.level = i % 8 == 7 ? 0.90 : 0.95;
        made.settings.variances =
            i % 6 == 5 ? stats::Variances::Separate : stats::Variances::Pooled;
        made.settings.checkLoads = {massFromKilograms(42.5), massFromKilograms(160)};
        if (i % 5 != 0)
            made.settings.dayNoise = {.variance = {0.025 * 0.025, i % 5 < 3 ? infinity : 1.5 * i},
                                      .origin = DayNoise::Origin::LogLift};
        if (i % 7 == 3)
            made.settings.deviceBias = {{0.015, {0.004 * 0.004, 16}}};
        made.settings.smallestVelocity = Smallest{0.06};
        made.settings.smallestOneRm = Smallest{4};
        return made;
    }

private:
    double uniform(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_engine);
    }
    // 3 to 8 points; some ladders light only, some with a load lifted twice; both sessions of a log
    // of unequal n.
    LiftSession session(int i, int which, double v0, double slope, double scatter) {
        const int n = 3 + (i * which + i / 6 + which) % 6;
        const double top = (i % 4 == 0 ? 0.5 : 0.9) * (v0 - 0.2) / -slope;
        std::vector<std::pair<double, double>> points;
        std::normal_distribution<double> noise(0, scatter);
        for (int k = 0; k < n; ++k) {
            const bool again = i % 3 == 0 && k == n - 1;
            const int step = again ? k - 1 : k;
            const double load =
                std::max(2.5, std::round((20 + (top - 20) * step / (n - 1)) / 2.5) * 2.5);
            const double v = std::max(0.05, v0 + slope * load + noise(m_engine));
            points.emplace_back(load, std::round(v * 1000) / 1000);
        }
        return tests::session(which, points);
    }
    std::mt19937_64 m_engine{20260314};
};

QByteArray number(double value) {
    return std::isinf(value) ? QByteArray("Inf") : QByteArray::number(value, 'g', 17);
}

QByteArray records(int i, const Made& made) {
    const auto& s = made.settings;
    const auto bias = s.deviceBias.value_or(std::pair{0.0, stats::Variance{0, infinity}});
    const bool noisy = s.dayNoise.origin != DayNoise::Origin::None;
    const QByteArray id = QByteArray::number(i);
    QByteArray text = "log " + id;
    for (const double value :
         {s.level, made.mvt.value, *made.mvt.sd, std::sqrt(s.dayNoise.variance.value),
          noisy ? s.dayNoise.variance.df : infinity})
        text += " " + number(value);
    text += s.variances == stats::Variances::Pooled ? " pooled" : " separate";
    for (const double value : {bias.first, bias.second.value, bias.second.df})
        text += " " + number(value);
    text += "\n";
    for (const auto& [session, which] : {std::pair{&made.from, " 1 "}, {&made.to, " 2 "}})
        for (const Point& p : session->points)
            text += "point " + id + which + number(p.load) + " " + number(p.velocity) + "\n";
    for (const Mass load : s.checkLoads)
        text += "at " + id + " " + number(kilograms(load)) + "\n";
    return text;
}

/// Our figures under the names that the R script uses.
using Figures = QMap<QString, double>;

void put(Figures& figures, const QString& low, const QString& high,
         const std::optional<stats::Interval>& interval) {
    figures[low] = interval ? interval->low : missing;
    figures[high] = interval ? interval->high : missing;
}

void putProfile(Figures& f, const QString& at, const Profile& p) {
    const auto& l = p.line;
    f[at + "n"] = l.n;
    f[at + "distinct"] = l.distinct;
    f[at + "v0"] = l.intercept;
    f[at + "slope"] = l.slope;
    f[at + "v0_se"] = l.interceptSe();
    f[at + "slope_se"] = l.slopeSe();
    f[at + "residual_sd"] = l.s();
    f[at + "df"] = l.df();
    f[at + "r2"] = l.r2;
    f[at + "l0"] = p.l0();
    f[at + "area"] = p.area();
    for (std::size_t i = 0; i < p.points.size(); ++i) {
        const QString point = at + QStringLiteral("point%1.").arg(i + 1);
        f[point + "residual"] = p.points[i].residual;
        f[point + "leverage"] = p.points[i].leverage;
        f[point + "studentised"] = p.points[i].studentised.value_or(missing);
        f[point + "cook"] = p.points[i].cook.value_or(missing);
    }
    if (p.curvature) {
        f[at + "curvature.t"] = p.curvature->t;
        f[at + "curvature.p"] = p.curvature->p;
    }
    if (p.oneRm) {
        f[at + "one_rm"] = p.oneRm->estimate;
        f[at + "reach"] = p.oneRm->reach;
        f[at + "g"] = p.oneRm->g;
        put(f, at + "low", at + "high", p.oneRm->interval);
        put(f, at + "with_mvt_low", at + "with_mvt_high", p.oneRm->withMvt);
    }
}

void putChanges(Figures& f, const QString& id, const Comparison& c) {
    f[id + "at"] = static_cast<double>(c.at.size());
    for (std::size_t i = 0; i < c.at.size(); ++i) {
        const ChangeAt& a = c.at[i];
        const QString at = id + QStringLiteral("at%1.").arg(i + 1);
        f[at + "load"] = kilograms(a.load);
        f[at + "change"] = a.read.change;
        f[at + "se"] = a.se;
        put(f, at + "low", at + "high", a.interval);
        put(f, at + "band_low", at + "band_high", a.band);
        put(f, at + "reading_low", at + "reading_high", a.read.interval);
        put(f, at + "equivalence_low", at + "equivalence_high", a.read.equivalence);
        put(f, at + "reading_band_low", at + "reading_band_high", a.readingBand);
        f[at + "extrapolated"] = a.extrapolated;
    }
    f[id + "differs"] = static_cast<double>(c.differs.size());
    for (std::size_t i = 0; i < c.differs.size(); ++i) {
        const QString piece = id + QStringLiteral("differs%1.").arg(i + 1);
        f[piece + "from"] = c.differs[i].stretch.from;
        f[piece + "to"] = c.differs[i].stretch.to;
        f[piece + "sign"] = c.differs[i].stretch.sign;
        f[piece + "extrapolated"] = c.differs[i].extrapolated;
    }
}

void putComparison(Figures& f, const QString& id, const Comparison& c) {
    f[id + "residual_sd"] = std::sqrt(c.lines.s2());
    f[id + "df"] = c.lines.df();
    const auto test = [&](const QString& name, const stats::FTest& t) {
        f[id + name + ".f"] = t.f;
        f[id + name + ".df1"] = t.df1;
        f[id + name + ".df2"] = t.df2;
        f[id + name + ".p"] = t.p;
    };
    test("parallel", c.lines.parallel());
    test("coincident", c.lines.coincident());
    f[id + "ratio.f"] = c.lines.varianceRatio()->f;
    f[id + "ratio.p"] = c.lines.varianceRatio()->p;
    putChanges(f, id, c);
    f[id + "crossing"] = c.crossing->x;
    if (c.settings.variances == stats::Variances::Pooled)
        put(f, id + "crossing.low", id + "crossing.high", c.crossing->interval);
    if (!c.oneRm)
        return;
    const bool bounded = c.oneRm->read.reading != Reading::NoFigure;
    f[id + "one_rm_change"] = c.oneRm->estimate;
    f[id + "residue"] = c.oneRm->mvtResidue;
    put(f, id + "one_rm_change.low", id + "one_rm_change.high", c.oneRm->interval);
    if (bounded) {
        put(f, id + "one_rm_change.reading_low", id + "one_rm_change.reading_high",
            c.oneRm->read.interval);
        put(f, id + "one_rm_change.equivalence_low", id + "one_rm_change.equivalence_high",
            c.oneRm->read.equivalence);
    }
}

} // namespace

class TestAgainstR : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void everyFigure_data();
    void everyFigure();
    void theLogsCoverTheCases();

private:
    std::vector<Made> m_logs;
    QMap<QString, double> m_r;
};

void TestAgainstR::initTestCase() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: profile and compare are not checked against it");
    Maker maker;
    QByteArray input;
    for (int i = 0; i < logs; ++i) {
        m_logs.push_back(maker.make(i));
        input += records(i, m_logs.back());
    }
    m_r = tests::runR(QStringLiteral("profile_compare.R"), {}, input);
}

void TestAgainstR::everyFigure_data() {
    QTest::addColumn<int>("log");
    for (int i = 0; i < logs; ++i)
        QTest::addRow("log %d", i) << i;
}

void TestAgainstR::everyFigure() {
    QFETCH(int, log);
    const Made& made = m_logs[static_cast<std::size_t>(log)];
    const auto c = compare(tests::benchPull(), made.mvt, made.from, made.to, made.settings);
    QVERIFY2(c, c ? "" : english(c.why().reason).c_str());
    Figures ours;
    const QString id = QStringLiteral("%1.").arg(log);
    putProfile(ours, id + "from.", c->from);
    putProfile(ours, id + "to.", c->to);
    putComparison(ours, id, *c);
    const bool noFigure = c->oneRm && c->oneRm->read.reading == Reading::NoFigure;
    for (auto it = m_r.lowerBound(id); it != m_r.end() && it.key().startsWith(id); ++it) {
        // Where the change of the 1RM has no figure its reading is not shown, bounded or not.
        if (noFigure && (it.key().contains("reading_") || it.key().contains("equivalence_")) &&
            it.key().contains("one_rm_change"))
            continue;
        QVERIFY2(ours.contains(it.key()), qPrintable("R alone has " + it.key()));
    }
    for (auto it = ours.cbegin(); it != ours.cend(); ++it) {
        QVERIFY2(m_r.contains(it.key()), qPrintable("R has no " + it.key()));
        const double expected = m_r.value(it.key());
        const QString said = QStringLiteral("%1: %2, R %3")
                                 .arg(it.key())
                                 .arg(it.value(), 0, 'g', 17)
                                 .arg(expected, 0, 'g', 17);
        if (std::isnan(expected))
            QVERIFY2(std::isnan(it.value()), qPrintable(said));
        else // 1e-8 relative; near zero, what 1e-8 of a unit's last shown digit would be
            QVERIFY2(std::abs(it.value() - expected) <= 1e-8 * std::abs(expected) + 1e-13,
                     qPrintable(said));
    }
}

void TestAgainstR::theLogsCoverTheCases() {
    QMap<QString, int> seen;
    for (const Made& made : m_logs) {
        const auto c = compare(tests::benchPull(), made.mvt, made.from, made.to, made.settings);
        QVERIFY(c);
        const auto count = [&](const QString& name, bool is) { seen[name] += is ? 1 : 0; };
        for (const Profile* p : {&c->from, &c->to}) {
            count("no 1RM", !p->oneRm);
            count("an unbounded 1RM", p->oneRm && !p->oneRm->interval);
            count("a bounded 1RM", p->oneRm && p->oneRm->interval);
            count("a far extrapolation", p->oneRm && p->oneRm->extrapolatedFar());
            count("three points", p->line.n == 3);
            count("eight points", p->line.n == 8);
            count("a load lifted twice", p->line.distinct < p->line.n);
        }
        count("unequal n", c->from.line.n != c->to.line.n);
        count("a bounded 1RM change", c->oneRm && c->oneRm->interval);
        count("a crossing with an interval", c->crossing && c->crossing->interval);
        count("a crossing without", c->crossing && !c->crossing->interval);
        count("lines that differ nowhere", c->differs.empty());
        for (const Differs& d : c->differs) {
            count("differ inside", !d.extrapolated);
            count("differ beyond", d.extrapolated);
            count("differ upwards", d.stretch.sign > 0);
            count("differ downwards", d.stretch.sign < 0);
        }
        for (const ChangeAt& a : c->at) {
            count("better", a.read.reading == Reading::Better);
            count("worse", a.read.reading == Reading::Worse);
            count("held", a.read.reading == Reading::Held);
            count("unclear", a.read.reading == Reading::Unclear);
        }
    }
    for (auto it = seen.cbegin(); it != seen.cend(); ++it)
        if (it.key() != "no 1RM")
            QVERIFY2(it.value() > 0, qPrintable("no log with " + it.key()));
}

QTEST_APPLESS_MAIN(TestAgainstR)
#include "tst_against_r.moc"
