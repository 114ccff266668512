// SPDX-License-Identifier: GPL-3.0-or-later
// Where one more test is asked for: which two sides are then compared, and that the words name
// them.
#include "core/answers/testsneeded.h"
#include "core/questions/blockquestions.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

LiftSession tested(unsigned month, unsigned day, int ordinal = 1) {
    LiftSession made;
    made.session = SessionId{month * 100 + day * 3 + static_cast<unsigned>(ordinal)};
    made.date = std::chrono::year{2026} / std::chrono::month{month} / std::chrono::day{day};
    made.ordinal = ordinal;
    made.points.push_back({.load = 40, .velocity = 1});
    return made;
}

Stored<BlockId, Block> spring() {
    return {BlockId{1},
            {.name = "Spring",
             .first = std::chrono::year{2026} / 3 / 1,
             .last = std::chrono::year{2026} / 4 / 30}};
}

} // namespace

class TestMeanOfTests : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theBlockOfTheLaterTest() {
        const std::vector blocks{spring()};
        const std::vector sessions{tested(1, 12), tested(3, 10), tested(4, 2), tested(5, 9)};
        const auto mean = questions::meanOfTests(blocks, sessions, sessions[0], sessions[1]);
        QVERIFY(mean == (MeanOfTests{"2026-01-12", "Spring", true, 2}));
        QCOMPARE(QByteArray(english(meanWords(mean)).c_str()),
                 QByteArray("2 tests lie in Spring: compare 2026-01-12 with it"));
        // The only one so far: what is still to be done lies in the block then.
        const std::vector one{tested(1, 12), tested(3, 10)};
        QCOMPARE(
            QByteArray(
                english(meanWords(questions::meanOfTests(blocks, one, one[0], one[1]))).c_str()),
            QByteArray("then compare 2026-01-12 with Spring, of which all tests are made one"));
    }

    void daysWhereNoBlockTellsThemApart() {
        // Both in one block: the days from the later on that lie within two weeks.
        const std::vector blocks{spring()};
        const std::vector sessions{tested(3, 2), tested(3, 20), tested(3, 27), tested(4, 3),
                                   tested(4, 4)};
        const auto mean = questions::meanOfTests(blocks, sessions, sessions[0], sessions[1]);
        QVERIFY(mean == (MeanOfTests{"2026-03-02", "2026-03-20..2026-04-03", false, 3}));
        QVERIFY(parseStretch(mean.to)); // as it may be typed
        // Nothing later yet.
        const auto none = questions::meanOfTests({}, sessions, sessions[0], sessions[4]);
        QVERIFY(none == (MeanOfTests{"2026-03-02", "2026-04-04", false, 1}));
        QVERIFY(english(meanWords(none)).find("the days from 2026-04-04") != std::string::npos);
        // Two of one day.
        const std::vector twice{tested(3, 2), tested(3, 20), tested(3, 20, 2)};
        QVERIFY(questions::meanOfTests({}, twice, twice[0], twice[2]) ==
                (MeanOfTests{"2026-03-02", "2026-03-20..2026-03-20", false, 2}));
    }

    void theSentenceNamesThem() {
        Unsettled unclear{.loads = {Mass{60'000}},
                          .smallest = 0.05,
                          .settling = {Settling::By::OneMore, 2},
                          .mean = MeanOfTests{"2026-01-12", "Spring", true, 2}};
        QVERIFY(english(settlingWords(unclear))
                    .ends_with("do one more later test; 2 tests lie in Spring: compare 2026-01-12 "
                               "with it"));
        unclear.settling = {Settling::By::Later, 3};
        QVERIFY(english(settlingWords(unclear)).ends_with("compare 2026-01-12 with it"));
        for (const auto by : {Settling::By::SameDay, Settling::By::Nothing}) {
            unclear.settling = {by, 2};
            QVERIFY(english(settlingWords(unclear)).find("compare") == std::string::npos);
        }
    }
};

QTEST_APPLESS_MAIN(TestMeanOfTests)
#include "tst_meanoftests.moc"
