// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/history.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <cmath>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

constexpr double mvt = 0.30;
const std::vector<double> fullLadder{40, 55, 70, 85, 100, 110};
const std::vector<double> lightLadder{40, 45, 50, 55};

/// An athlete whose line moves from session to session; the last session is light only.
struct Season {
    std::vector<LiftSession> sessions;
    double trueOneRm = 0; ///< of the last session
};
Season season(std::mt19937_64& random, int full) {
    std::normal_distribution<double> z;
    Season made;
    for (int i = 0; i <= full; ++i) {
        const double a = 1.60 + 0.04 * z(random);
        const double b = -0.0105 + 0.0003 * z(random);
        std::vector<std::pair<double, double>> points;
        for (const double load : i < full ? fullLadder : lightLadder)
            points.emplace_back(load, a + b * load + 0.02 * z(random));
        made.sessions.push_back(tests::session(i + 1, points));
        made.trueOneRm = (mvt - a) / b;
    }
    return made;
}

} // namespace

class TestHistory : public QObject {
    Q_OBJECT
private slots:
    void linesAgreeWithNlme();
    void aLightSessionBorrows();
    void intervalsHoldTheTruth();
    void everySessionWithPointsIsThere();
    void refusals();
};

void TestHistory::linesAgreeWithNlme() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: shrunken lines are not compared with nlme");
    std::mt19937_64 random(41);
    for (int round = 0; round < 3; ++round) {
        const Season made = season(random, 7);
        const auto history = borrow(tests::benchPull(), tests::coachMvt(mvt), made.sessions);
        QVERIFY(history);
        if (history->model.singular)
            continue; // the optimum on the boundary: nlme stops near it, not on it
        QByteArray input;
        for (const LiftSession& session : made.sessions)
            for (const Point& point : session.points)
                input += QByteArray::number(qlonglong{raw(session.session)}) + ' ' +
                         QByteArray::number(point.load, 'g', 17) + ' ' +
                         QByteArray::number(point.velocity, 'g', 17) + '\n';
        const auto r = tests::runR(QStringLiteral("history.R"), {QString::number(mvt)}, input);
        for (const BorrowedLine& line : history->lines) {
            const auto key = [&](const char* what) {
                return QStringLiteral("%1 %2")
                    .arg(raw(line.session.session))
                    .arg(QLatin1String(what));
            };
            QVERIFY(r.contains(key("slope")));
            QVERIFY(tests::digitsAgreed(line.line.intercept, r[key("intercept")]) > 4);
            QVERIFY(tests::digitsAgreed(line.line.slope, r[key("slope")]) > 4);
            QVERIFY(tests::digitsAgreed(line.oneRm->estimate, r[key("onerm")]) > 4);
        }
    }
}

void TestHistory::aLightSessionBorrows() {
    std::mt19937_64 random(43);
    double own = 0, borrowed = 0;
    int rounds = 0;
    for (int round = 0; round < 150; ++round) {
        const Season made = season(random, 6);
        const auto history = borrow(tests::benchPull(), tests::coachMvt(mvt), made.sessions,
                                    made.sessions.back().session);
        const auto alone = profile(tests::benchPull(), tests::coachMvt(mvt), made.sessions.back());
        if (!history || !alone || !alone->oneRm)
            continue;
        const BorrowedLine* line = history->of(made.sessions.back().session);
        QVERIFY(line && line->oneRm);
        own += std::pow(alone->oneRm->estimate - made.trueOneRm, 2);
        borrowed += std::pow(line->oneRm->estimate - made.trueOneRm, 2);
        ++rounds;
        if (line->ownShare)
            QVERIFY(*line->ownShare >= 0 && *line->ownShare <= 1);
    }
    QVERIFY(rounds > 140);
    QVERIFY2(std::sqrt(borrowed) < 0.6 * std::sqrt(own),
             qPrintable(QString::number(std::sqrt(borrowed / own))));
}

void TestHistory::intervalsHoldTheTruth() {
    std::mt19937_64 random(47);
    int held = 0, rounds = 0;
    for (int round = 0; round < 200; ++round) {
        const Season made = season(random, 8);
        const auto history = borrow(tests::benchPull(), tests::coachMvt(mvt), made.sessions,
                                    made.sessions.back().session);
        if (!history)
            continue;
        const auto& oneRm = history->of(made.sessions.back().session)->oneRm;
        if (!oneRm || !oneRm->interval)
            continue;
        ++rounds;
        held += made.trueOneRm >= oneRm->interval->low && made.trueOneRm <= oneRm->interval->high;
    }
    QVERIFY(rounds > 150);
    // 95 % of 200 with four standard errors of chance
    QVERIFY2(held > 0.89 * rounds, qPrintable(QStringLiteral("%1 of %2").arg(held).arg(rounds)));
}

void TestHistory::everySessionWithPointsIsThere() {
    std::mt19937_64 random(53);
    Season made = season(random, 4);
    made.sessions.push_back(tests::session(20, {}));           // all excluded: no part in it
    made.sessions.push_back(tests::session(21, {{50, 1.05}})); // one point borrows its slope
    const auto history = borrow(tests::benchPull(), tests::coachMvt(mvt, 0.04), made.sessions);
    QVERIFY(history);
    QCOMPARE(history->lines.size(), std::size_t{6});
    QVERIFY(!history->of(SessionId{20}));
    const BorrowedLine* single = history->of(SessionId{21});
    QVERIFY(single && single->oneRm && !single->ownShare);
    QVERIFY(single->oneRm->withMvt);
    QVERIFY(single->oneRm->withMvt->high > single->oneRm->interval->high);
}

void TestHistory::refusals() {
    std::mt19937_64 random(59);
    const Season made = season(random, 1);
    const auto few = borrow(tests::benchPull(), tests::coachMvt(mvt), made.sessions);
    QVERIFY(!few && few.why().why == NoAnswer::Why::TooFewSessions);
    const Season enough = season(random, 4);
    Lift thrown = tests::benchPull();
    thrown.ballistic = true;
    const auto ballistic = borrow(thrown, tests::coachMvt(mvt), enough.sessions);
    QVERIFY(ballistic); // lines, and no 1RM
    QVERIFY(ballistic->lines[0].oneRm.why().why == NoAnswer::Why::BallisticLift);
    const Answer<Mvt> none = NoAnswer{NoAnswer::Why::NoThreshold, asIs("no MVT is known")};
    QVERIFY(borrow(tests::benchPull(), none, enough.sessions)->lines[0].oneRm.why().why ==
            NoAnswer::Why::NoThreshold);
    QVERIFY(!borrow(tests::benchPull(), tests::coachMvt(mvt), {}));
}

QTEST_APPLESS_MAIN(TestHistory)
#include "tst_history.moc"
