// SPDX-License-Identifier: GPL-3.0-or-later
// What two trails say of one thing, case by case, from both sides.
#include "core/desks/verdicts.h"

#include <QTest>

namespace {
using namespace slopebook::desks;
using slopebook::log::hashOf;

/// A trail of what was written one after the other.
Trail trailOf(const std::vector<std::string>& words) {
    Trail trail;
    for (const std::string& word : words)
        slopebook::log::extend(trail, hashOf(word));
    return trail;
}

Verdict turned(Verdict verdict) {
    switch (verdict) {
    case Verdict::Theirs:
        return Verdict::Mine;
    case Verdict::Mine:
        return Verdict::Theirs;
    case Verdict::JoinTheirs:
        return Verdict::JoinMine;
    case Verdict::JoinMine:
        return Verdict::JoinTheirs;
    case Verdict::ChooseTheirs:
        return Verdict::ChooseMine;
    case Verdict::ChooseMine:
        return Verdict::ChooseTheirs;
    case Verdict::Same:
        break;
    }
    return verdict;
}
using Words = std::vector<std::string>;
} // namespace

Q_DECLARE_METATYPE(Verdict)
Q_DECLARE_METATYPE(Words)

class TestVerdicts : public QObject {
    Q_OBJECT

private slots:
    void bothSides_data() {
        QTest::addColumn<Words>("mine");
        QTest::addColumn<bool>("mineAlive");
        QTest::addColumn<Words>("theirs");
        QTest::addColumn<bool>("theirsAlive");
        QTest::addColumn<Verdict>("verdict");
        const auto row = [](const char* name, const Words& mine, bool mineAlive,
                            const Words& theirs, bool theirsAlive, Verdict verdict) {
            QTest::newRow(name) << mine << mineAlive << theirs << theirsAlive << verdict;
        };
        row("the same", {"a", "b"}, true, {"a", "b"}, true, Verdict::Same);
        row("they went on", {"a"}, true, {"a", "b", "c"}, true, Verdict::Theirs);
        row("they removed it", {"a"}, true, {"a", "gone"}, false, Verdict::Theirs);
        row("they went on and back", {"a"}, true, {"a", "b", "a"}, true, Verdict::Theirs);
        row("mine went on and back", {"a", "b", "a"}, true, {"a", "c"}, true, Verdict::JoinTheirs);
        row("mine went on and back, theirs is shorter", {"a", "b", "x", "b", "a"}, true, {"a", "c"},
            true, Verdict::JoinTheirs);
        row("mine went on and back, they removed it", {"a", "b", "a"}, true, {"a", "gone"}, false,
            Verdict::JoinTheirs);
        row("an edit beats a removal of more steps", {"a", "b"}, true, {"a", "c", "gone"}, false,
            Verdict::ChooseMine);
    }
    void bothSides() {
        QFETCH(Words, mine);
        QFETCH(bool, mineAlive);
        QFETCH(Words, theirs);
        QFETCH(bool, theirsAlive);
        QFETCH(Verdict, verdict);
        const Trail m = trailOf(mine);
        const Trail t = trailOf(theirs);
        QCOMPARE(verdictOn({m, mineAlive}, {t, theirsAlive}), verdict);
        QCOMPARE(verdictOn({t, theirsAlive}, {m, mineAlive}), turned(verdict));
    }

    // Whichever took more steps: of two new states the one of the greater hash.
    void twoNewStatesGoByWhatTheySay() {
        for (const Words& longer : {Words{"a", "b"}, Words{"a", "x", "b"}, Words{"b"}}) {
            const Trail one = trailOf(longer);
            const Trail other = trailOf({"a", "c"});
            const Verdict verdict = verdictOn({one}, {other});
            QCOMPARE(verdict,
                     hashOf("b") > hashOf("c") ? Verdict::ChooseMine : Verdict::ChooseTheirs);
            QCOMPARE(verdictOn({other}, {one}), turned(verdict));
        }
    }

    // Both say the same: no new state, each learns the other's past, once.
    void twoThatSayTheSame() {
        const Trail one = trailOf({"a", "b", "c"});
        const Trail other = trailOf({"a", "c"});
        QCOMPARE(verdictOn({one}, {other}), Verdict::Same);
        QCOMPARE(verdictOn({other}, {one}), Verdict::Same);
        Trail here = one;
        QVERIFY(learn(here, other));
        QCOMPARE(here.size(), std::size_t{4});
        QCOMPARE(here.back(), one.back());
        QVERIFY(!learn(here, other));
        Trail there = other;
        QVERIFY(learn(there, one));
        QCOMPARE(verdictOn({here}, {there}), Verdict::Same); // each lies on the other's way
        Trail further = there;                               // an edit after that is after both
        slopebook::log::extend(further, hashOf("d"));
        QCOMPARE(verdictOn({here}, {further}), Verdict::Theirs);
    }

    // Why trails are kept whole, however long: where the step is missing at which two copies
    // parted, one that went back on purpose to what stood before it is taken for one that was never
    // touched, and its edit goes without being listed. Any step may be that one: files are copied.
    void aStepLeftOutLosesAnEdit() {
        const Trail back = trailOf({"a", "b", "a"}), on = trailOf({"a", "b", "c"});
        const Verdict whole = verdictOn({back}, {on});
        QVERIFY(whole == Verdict::ChooseMine || whole == Verdict::ChooseTheirs); // listed
        for (const bool ofMine : {true, false}) {
            Trail mine = back, theirs = on;
            Trail& thinned = ofMine ? mine : theirs;
            thinned.erase(thinned.begin() + 1);
            QCOMPARE(verdictOn({mine}, {theirs}), Verdict::JoinTheirs); // not listed
        }
    }

    // Long trails meet in the time that it takes to sort them.
    void longTrailsMeet() {
        Words words;
        for (int i = 0; i < 100'000; ++i)
            words.push_back(std::to_string(i % 7));
        const Trail shared = trailOf(words);
        Trail one = shared, other = shared;
        slopebook::log::extend(one, hashOf("b"));
        slopebook::log::extend(other, hashOf("c"));
        const Verdict verdict = verdictOn({one}, {other});
        QCOMPARE(turned(verdict), verdictOn({other}, {one}));
        const Trail both = joined(one, other);
        QCOMPARE(both.size(), shared.size() + 3);
        Trail learned = one;
        QVERIFY(learn(learned, both));
        QCOMPARE(learned.size(), both.size());
    }

    // Joined on both desks at once, each is the other's state: nothing swaps.
    void joinedAlikeOnBothDesks() {
        const Trail one = trailOf({"a", "b", "e"});
        const Trail other = trailOf({"a", "c"});
        const Trail here = joined(one, other);
        QCOMPARE(here.size(), std::size_t{5});
        QCOMPARE(here.back().hash, one.back().hash);
        QCOMPARE(verdictOn({here}, {joined(one, other)}), Verdict::Same);
        for (const Trail& before : {one, other}) {
            QCOMPARE(verdictOn({before}, {here}), Verdict::Theirs);
            QCOMPARE(verdictOn({here}, {before}), Verdict::Mine);
        }
    }
};

QTEST_APPLESS_MAIN(TestVerdicts)
#include "tst_verdicts.moc"
