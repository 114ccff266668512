// SPDX-License-Identifier: GPL-3.0-or-later
// How many things a meeting writes in one transaction, on made-up disks and in made-up time: who
// enters a set waits little longer than for the disk's own commit, and a disk that is slow to
// commit does not have everything written in crumbs.
#include "core/meetings/piece.h"

#include <QTest>

#include <algorithm>
#include <random>

using slopebook::meetings::Piece;

namespace {
/// In ms. Of the commit and of what grows with the things some are longer and some shorter.
struct Disk {
    double commit = 0;     ///< of its own
    double work = 0;       ///< of each thing, to be written
    double written = 0;    ///< of each thing, in the commit
    double unevenness = 0; ///< of the commit: standard deviation, as a part of it
};

struct Ran {
    double took = 0;    ///< in all, with the rests between two transactions; ms
    double longest = 0; ///< of what grows with the things, of one transaction; ms
    int transactions = 0;
};

/// Writes so many things, on one disk first and then, after half of them, on the other.
Ran write(int count, const Disk& first, const Disk& second, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> normal;
    const auto about = [&](double value, double part) {
        return value * std::max(0.25, 1 + part * normal(random));
    };
    Piece piece(100);
    Ran ran;
    for (int left = count; left > 0;) {
        const Disk& disk = 2 * left > count ? first : second;
        const int things = std::min(left, static_cast<int>(piece.things()));
        const double work = about(things * disk.work, 0.15);
        const double written = about(things * disk.written, 0.15);
        const double commit = about(disk.commit, disk.unevenness) + written;
        piece.note(static_cast<std::size_t>(things), Piece::Duration(work / 1000),
                   Piece::Duration(commit / 1000));
        // the very first pieces on a disk are as great as nobody could know
        if (ran.transactions++ > 0 && things > 20)
            ran.longest = std::max(ran.longest, work + written);
        ran.took += work + commit + std::min(work + commit, 12.0);
        left -= things;
    }
    return ran;
}
} // namespace

class TestPiece : public QObject {
    Q_OBJECT

    static void addDisks() {
        QTest::addColumn<double>("commit");
        QTest::addColumn<double>("work");
        QTest::addColumn<double>("written");
        QTest::addColumn<double>("unevenness");
        for (const double commit : {0.5, 5.0, 60.0, 200.0, 1100.0})
            for (const double work : {0.015, 0.05, 0.15})
                for (const double written : {0.2, 1.0, 1.5})
                    for (const double unevenness : {0.05, 0.3})
                        QTest::addRow("commit %g ms, each %g and %g, uneven by %g", commit, work,
                                      work * written, unevenness)
                            << commit << work << work * written << unevenness;
    }

private Q_SLOTS:
    void nobodyWaitsLongAndNothingIsCrumbled_data() { addDisks(); }
    void nobodyWaitsLongAndNothingIsCrumbled() {
        QFETCH(double, commit);
        QFETCH(double, work);
        QFETCH(double, written);
        QFETCH(double, unevenness);
        const Disk disk{commit, work, written, unevenness};
        constexpr int things = 50'000;
        // of pieces that take 20 ms each, all alike
        const double pieces = things * (work + written) / 20;
        const double best = pieces * (20 + commit + 12);
        for (unsigned seed = 1; seed <= 20; ++seed) {
            const Ran ran = write(things, disk, disk, seed);
            QVERIFY2(ran.longest <= 50, qPrintable(QString::number(ran.longest)));
            QVERIFY2(ran.took <= 5 * best + 50 * commit,
                     qPrintable(QString::number(ran.took) + QStringLiteral(" of ") +
                                QString::number(best)));
        }
    }

    // 50,000 things where each commit takes 60 ms: in crumbs of 20 that were 280 s.
    void aSlowDisk() {
        const Disk disk{.commit = 60, .work = 0.015, .written = 0.015, .unevenness = 0.1};
        for (unsigned seed = 1; seed <= 20; ++seed) {
            const Ran ran = write(50'000, disk, disk, seed);
            QVERIFY2(ran.took < 30'000, qPrintable(QString::number(ran.took)));
        }
    }

    // Another program keeps the disk busy, or lets it go.
    void aDiskThatChanges() {
        const Disk fast{.commit = 2, .work = 0.02, .written = 0.02, .unevenness = 0.2};
        const Disk slow{.commit = 60, .work = 0.02, .written = 0.02, .unevenness = 0.2};
        for (unsigned seed = 1; seed <= 20; ++seed)
            for (const auto& [first, second] : {std::pair(fast, slow), std::pair(slow, fast)}) {
                const Ran ran = write(50'000, first, second, seed);
                QVERIFY2(ran.longest <= 50, qPrintable(QString::number(ran.longest)));
                QVERIFY2(ran.took < 30'000, qPrintable(QString::number(ran.took)));
            }
    }

    // Each thing takes ten times as long from now on: one transaction is too long, then no more.
    void thingsThatTakeLonger() {
        Piece piece(100);
        const auto written = [&](double each) { // ms
            const auto things = static_cast<double>(piece.things());
            piece.note(piece.things(), Piece::Duration(things * each / 1000),
                       Piece::Duration((2 + things * each / 2) / 1000));
            return things * each * 1.5;
        };
        for (int i = 0; i < 50; ++i)
            written(0.02);
        int tooLong = 0;
        for (int i = 0; i < 50; ++i)
            tooLong += written(0.2) > 50 ? 1 : 0;
        QVERIFY2(tooLong <= 1 && tooLong > 0, qPrintable(QString::number(tooLong)));
    }

    void nothingIsNotTimed() {
        Piece piece(100);
        piece.note(0, Piece::Duration(1), Piece::Duration(1));
        QCOMPARE(piece.things(), std::size_t(100));
    }
};

QTEST_GUILESS_MAIN(TestPiece)
#include "tst_piece.moc"
