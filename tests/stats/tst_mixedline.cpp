// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/mixedline.h"
#include "tests/stats/checking.h"

#include <Eigen/Dense>

#include <cmath>
#include <limits>
#include <map>
#include <random>

using namespace slopebook::stats;
using namespace slopebook::tests;

namespace {

using Log = std::vector<GroupPoints>;

struct Recipe {
    int sessions = 8;
    double sdLevel = 0.05, sdSlope = 0.0006, sd = 0.02;
    bool shortSessions = true;
    double shift = 0;
};

/// Sessions of one athlete: full ladders and short light ones about a common line.
Log made(const Recipe& recipe, std::mt19937_64& random) {
    std::normal_distribution<double> z;
    Log log;
    for (int s = 0; s < recipe.sessions; ++s) {
        const int points = recipe.shortSessions && s % 3 == 2 ? 2 + s % 2 : 4 + s % 4;
        const double level = recipe.sdLevel * z(random), slope = recipe.sdSlope * z(random);
        GroupPoints group;
        for (int i = 0; i < points; ++i) {
            group.x.push_back(recipe.shift + 30 + 15 * i + s % 2 * 5);
            group.y.push_back(1.5 + level + (-0.011 + slope) * (group.x.back() - recipe.shift) +
                              recipe.sd * z(random));
        }
        log.push_back(group);
    }
    return log;
}

std::vector<Log> madeLogs() {
    std::mt19937_64 random(314159);
    std::vector<Log> logs;
    for (int i = 0; i < 44; ++i) {
        Recipe recipe;
        recipe.sessions = 5 + i % 8;
        recipe.sdLevel = i % 4 == 3 ? 0.005 : 0.05;
        recipe.sdSlope = i % 5 == 4 ? 0.00005 : 0.0008;
        recipe.sd = i % 2 == 0 ? 0.01 : 0.03;
        recipe.shortSessions = i % 3 != 0;
        logs.push_back(made(recipe, random));
    }
    return logs;
}

/// The restricted log-likelihood by plain dense algebra (Patterson and Thompson 1971), as a check
/// that shares nothing with the fit.
double denseLogLik(const Log& log, const LineCovariance& between, double s2) {
    Eigen::Matrix2d g;
    g << between.intercept, between.both, between.both, between.slope;
    Eigen::Matrix2d information = Eigen::Matrix2d::Zero();
    Eigen::Vector2d right = Eigen::Vector2d::Zero();
    double logDet = 0, squares = 0;
    int n = 0;
    for (const GroupPoints& group : log) {
        const auto m = Eigen::Index(group.x.size());
        Eigen::MatrixXd x(m, 2);
        Eigen::VectorXd y(m);
        for (Eigen::Index i = 0; i < m; ++i) {
            x.row(i) << 1, group.x[std::size_t(i)];
            y(i) = group.y[std::size_t(i)];
        }
        const Eigen::MatrixXd v = x * g * x.transpose() + s2 * Eigen::MatrixXd::Identity(m, m);
        const Eigen::MatrixXd w = v.inverse();
        information += x.transpose() * w * x;
        right += x.transpose() * w * y;
        squares += y.dot(w * y);
        logDet += std::log(v.determinant());
        n += int(m);
    }
    squares -= right.dot(information.ldlt().solve(right));
    return -((n - 2) * std::log(2 * std::acos(-1.0)) + logDet +
             std::log(information.determinant()) + squares) /
           2;
}

void append(QByteArray& input, const QByteArray& id, const Log& log) {
    for (std::size_t g = 0; g < log.size(); ++g)
        appendPoints(input, id + ' ' + QByteArray::number(qulonglong(g + 1)), log[g].x, log[g].y);
}

} // namespace

class TstMixedLine : public QObject {
    Q_OBJECT

private slots:
    void agreesWithNlme();
    void likelihoodIsTheDenseOne();
    void nothingBesideIsBetter();
    void noDifferenceBetweenGroups();
    void shortSessionsBorrow();
    void farFromZero();
    void balancedIsTheMeanOfLines();
    void singleLoadSessions();
    void inverseOfShrunkenLine();
    void noFit_data();
    void noFit();
};

void TstMixedLine::agreesWithNlme() {
    if (!haveR())
        QSKIP("R IS NOT INSTALLED: no mixed line was compared with nlme::lme");
    std::vector<std::pair<QByteArray, Log>> logs;
    QByteArray input;
    for (const Log& log : madeLogs()) {
        logs.emplace_back("s" + QByteArray::number(qulonglong(logs.size())), log);
        append(input, logs.back().first, log);
    }
    const QMap<QString, double> r = runR("mixedline.R", {}, input);
    std::map<QByteArray, std::vector<QString>> names;
    for (const QByteArray own : {"Orange", "ChickWeight"}) {
        // R's own data come back with the figures, grouped as R names the groups.
        std::map<int, GroupPoints> groups;
        const QString id = QString::fromLatin1(own) + ".";
        for (int i = 1; i <= int(r.value(id + "points")); ++i) {
            GroupPoints& group = groups[int(r.value(id + "g" + QString::number(i)))];
            group.x.push_back(r.value(id + "x" + QString::number(i)));
            group.y.push_back(r.value(id + "y" + QString::number(i)));
        }
        Log log;
        for (const auto& [name, group] : groups) {
            log.push_back(group);
            names[own].push_back(QString::number(name));
        }
        logs.emplace_back(own, log);
    }
    int same = 0, inside = 0;
    for (const auto& [key, log] : logs) {
        const QString id = QString::fromLatin1(key) + ".";
        const auto fit = fitMixedLine(log);
        QVERIFY2(fit, key.constData());
        if (r.value(id + "fits") == 0)
            continue; // lme gave up
        const double theirs = r.value(id + "logLik");
        QVERIFY2(fit->logLik >= theirs - 1e-6, (key + ": " + unlike(fit->logLik, theirs)));
        // Where lme stopped short of the optimum there is nothing more to compare.
        if (fit->logLik > theirs + 1e-10 * std::max(1.0, std::abs(theirs)))
            continue;
        ++same;
        const auto alikeTo = [&](const QString& figure, double found, double digits,
                                 double scale = 0) {
            const double expected = r.value(id + figure);
            QVERIFY2(std::abs(found - expected) <= scale * std::pow(10, -digits) ||
                         alike(found, expected, digits),
                     (id + figure).toUtf8() + ": " + unlike(found, expected));
        };
        alikeTo("a", fit->fixed.intercept, 5);
        alikeTo("b", fit->fixed.slope, 5);
        alikeTo("s2", fit->s2, 4);
        if (fit->singular)
            continue; // lme's log-Cholesky can only come near the boundary
        ++inside;
        alikeTo("aVar", fit->fixed.covariance.intercept, 4);
        alikeTo("abVar", fit->fixed.covariance.both, 4,
                std::sqrt(fit->fixed.covariance.intercept * fit->fixed.covariance.slope));
        alikeTo("bVar", fit->fixed.covariance.slope, 4);
        alikeTo("G11", fit->between.intercept, 4);
        alikeTo("G22", fit->between.slope, 4);
        alikeTo("G12", fit->between.both, 4,
                std::sqrt(fit->between.intercept * fit->between.slope));
        for (std::size_t g = 0; g < log.size(); ++g) {
            const QString line =
                "line." + (names.contains(key) ? names[key][g] : QString::number(g + 1)) + ".";
            const double sdA = std::sqrt(fit->between.intercept);
            const double sdB = std::sqrt(fit->between.slope);
            alikeTo(line + "a", fit->lines[g].intercept, 4.5, sdA);
            alikeTo(line + "b", fit->lines[g].slope, 4.5, sdB);
            alikeTo(line + "condA", fit->conditional[g].intercept, 3.5);
            alikeTo(line + "condB", fit->conditional[g].slope, 3.5);
            alikeTo(line + "errA", fit->lines[g].covariance.intercept, 3.5);
            alikeTo(line + "errB", fit->lines[g].covariance.slope, 3.5);
            alikeTo(line + "errAB", fit->lines[g].covariance.both, 3.5, sdA * sdB);
        }
    }
    QVERIFY2(same >= 20 && inside >= 20,
             (QByteArray::number(same) + " same, inside " + QByteArray::number(inside)));
}

void TstMixedLine::likelihoodIsTheDenseOne() {
    for (const Log& log : madeLogs()) {
        const auto fit = fitMixedLine(log);
        CHECK_DIGITS(fit->logLik, denseLogLik(log, fit->between, fit->s2), 9);
    }
}

// Every covariance near the one found is less likely: the optimum, on the boundary or inside.
void TstMixedLine::nothingBesideIsBetter() {
    for (const Log& log : madeLogs()) {
        const auto fit = fitMixedLine(log);
        const double best = denseLogLik(log, fit->between, fit->s2);
        std::mt19937_64 random(3);
        std::normal_distribution<double> z;
        for (int i = 0; i < 60; ++i) {
            const double size = i % 2 == 0 ? 0.02 : 0.3;
            // A factor beside the fit's own, in units of what moves level and slope alike.
            const double l11 = std::sqrt(fit->between.intercept) + size * 0.02 * z(random);
            const double l21 =
                (fit->between.intercept > 0 ? fit->between.both / std::sqrt(fit->between.intercept)
                                            : 0) +
                size * 0.0005 * z(random);
            const double rest = std::max(0.0, fit->between.slope - l21 * l21);
            const double l22 = std::sqrt(rest) + size * 0.0005 * z(random);
            const LineCovariance beside{l11 * l11, l11 * l21, l21 * l21 + l22 * l22};
            const double s2 = fit->s2 * std::exp(size * 0.5 * z(random));
            QVERIFY(denseLogLik(log, beside, s2) <= best + 1e-7);
        }
    }
}

void TstMixedLine::noDifferenceBetweenGroups() {
    std::mt19937_64 random(12);
    int boundary = 0;
    for (int i = 0; i < 10; ++i) {
        Recipe recipe;
        recipe.sdLevel = recipe.sdSlope = 0;
        const auto fit = fitMixedLine(made(recipe, random));
        QVERIFY(fit && std::isfinite(fit->logLik));
        boundary += fit->singular;
        for (const UncertainLine& line : fit->lines)
            QVERIFY(std::isfinite(line.intercept) && line.covariance.at(60) >= 0);
    }
    QVERIFY(boundary >= 5);
}

void TstMixedLine::shortSessionsBorrow() {
    std::mt19937_64 random(77);
    Recipe recipe;
    recipe.sessions = 12;
    const Log log = made(recipe, random);
    const auto fit = fitMixedLine(log);
    double shortest = 0, longest = 0;
    for (std::size_t g = 0; g < log.size(); ++g) {
        const Line own = fitLine(log[g].x, log[g].y).value();
        // Between the session's own slope and the common one, but for what the level lends.
        const double room = 2 * std::sqrt(fit->between.slope);
        QVERIFY(fit->lines[g].slope > std::min(own.slope, fit->fixed.slope) - room);
        QVERIFY(fit->lines[g].slope < std::max(own.slope, fit->fixed.slope) + room);
        // What is known of the history can only help.
        QVERIFY(fit->conditional[g].slope <= fit->between.slope * (1 + 1e-9));
        QVERIFY(fit->lines[g].covariance.slope < fit->s2 / own.sxx + fit->between.slope);
        if (log[g].x.size() <= 3)
            shortest = std::max(shortest, fit->lines[g].covariance.slope);
        else if (log[g].x.size() >= 6)
            longest = std::max(longest, fit->lines[g].covariance.slope);
    }
    QVERIFY(shortest > longest && longest > 0);
}

void TstMixedLine::farFromZero() {
    std::mt19937_64 a(5), b(5);
    Recipe near, far;
    far.shift = 1 << 20;
    const auto here = fitMixedLine(made(near, a)), there = fitMixedLine(made(far, b));
    CHECK_DIGITS(there->logLik, here->logLik, 7);
    CHECK_DIGITS(there->s2, here->s2, 6);
    CHECK_DIGITS(there->fixed.slope, here->fixed.slope, 8);
    CHECK_DIGITS(there->fixed.at(far.shift + 60), here->fixed.at(60), 8);
}

// One ladder for all sessions: the common line is the mean of the sessions' own lines, exactly
// (textbook; Laird and Ware 1982), whatever the variances.
void TstMixedLine::balancedIsTheMeanOfLines() {
    std::mt19937_64 random(9);
    std::normal_distribution<double> z;
    Log log;
    double slope = 0, intercept = 0;
    for (int s = 0; s < 7; ++s) {
        GroupPoints group{{30, 50, 70, 90}, {}};
        const double level = 0.05 * z(random);
        for (const double x : group.x)
            group.y.push_back(1.5 + level - 0.011 * x + 0.02 * z(random));
        const Line own = fitLine(group.x, group.y).value();
        slope += own.slope / 7;
        intercept += own.intercept / 7;
        log.push_back(group);
    }
    const auto fit = fitMixedLine(log);
    CHECK_DIGITS(fit->fixed.slope, slope, 11);
    CHECK_DIGITS(fit->fixed.intercept, intercept, 11);
}

void TstMixedLine::singleLoadSessions() {
    std::mt19937_64 random(21);
    Log log = made(Recipe{}, random);
    log.push_back({{50}, {1.02}});
    log.push_back({{40, 40, 40}, {1.1, 1.08, 1.11}});
    const auto fit = fitMixedLine(log);
    QVERIFY(fit);
    QCOMPARE(fit->lines.size(), log.size());
    CHECK_DIGITS(fit->logLik, denseLogLik(log, fit->between, fit->s2), 9);
    QVERIFY(std::abs(fit->lines.back().at(40) - 1.097) < 0.05);
}

// Fieller written out for (y - a) / b with the covariance of a and b.
void TstMixedLine::inverseOfShrunkenLine() {
    const UncertainLine line{1.5, -0.011, {0.0004, -4e-6, 9e-8}};
    const double y = 0.17, z = 1.959963984540054;
    const Inverse inverse =
        inversePrediction(line, y, 0.0009, std::numeric_limits<double>::infinity(), 0.95);
    CHECK_DIGITS(inverse.estimate, (y - 1.5) / -0.011, 13);
    const double a = 1.5 - y, va = 0.0004 + 0.0009;
    const double qa = 0.011 * 0.011 - z * z * 9e-8;
    const double qb = a * -0.011 - z * z * -4e-6;
    const double qc = a * a - z * z * va;
    const double root = std::sqrt(qb * qb - qa * qc);
    CHECK_DIGITS(inverse.interval.low, (-qb - root) / qa, 10);
    CHECK_DIGITS(inverse.interval.high, (-qb + root) / qa, 10);
    const UncertainLine flat{1.5, -0.0001, {0.0004, -4e-6, 9e-8}};
    QVERIFY(inversePrediction(flat, y, 0, 10, 0.95).shape != Inverse::Shape::Bounded);
}

void TstMixedLine::noFit_data() {
    QTest::addColumn<Log>("log");
    const GroupPoints ladder{{30, 50, 70}, {1.2, 0.98, 0.77}};
    QTest::newRow("nothing") << Log{};
    QTest::newRow("two sessions") << Log{ladder, ladder};
    QTest::newRow("an empty session") << Log{ladder, ladder, ladder, {}};
    QTest::newRow("two points each: no scatter to see")
        << Log{{{30, 50}, {1.2, 1}}, {{30, 50}, {1.1, 0.9}}, {{30, 60}, {1.2, 0.9}}};
    QTest::newRow("perfect lines")
        << Log{{{20, 40, 60}, {1.5, 1, .5}}, {{20, 40, 60}, {1.5, 1, .5}}, {{20, 40}, {1.5, 1}}};
    QTest::newRow("one load throughout")
        << Log{{{30, 30}, {1, 1.1}}, {{30, 30}, {1, 1.2}}, {{30, 30}, {1, 0.9}}};
    QTest::newRow("a speed missing") << Log{ladder, ladder, {{30, 50}, {1.2}}};
}

void TstMixedLine::noFit() {
    QFETCH(Log, log);
    QVERIFY(!fitMixedLine(log));
}

QTEST_APPLESS_MAIN(TstMixedLine)
#include "tst_mixedline.moc"
