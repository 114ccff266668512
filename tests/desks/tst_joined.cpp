// SPDX-License-Identifier: GPL-3.0-or-later
// Lifts, tests and devices that two desks made apart and that become one, and what changes without
// a word of the coach.
#include "core/desks/conflictsides.h"
#include "tests/desks/pairofdesks.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::desks;
using slopebook::tests::day;
using slopebook::tests::Pair;

class TestJoined : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Two coaches begin apart: the lift, the test and the device of one name are one, with all that
    // both hold of it.
    void liftsTestsAndDevicesMadeApart() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const SessionId session{
            pair.add(pair.one, log::SessionThing{.head = {.athlete = ada, .date = day}})};
        pair.share();
        TestKind jump;
        jump.name = "Jump";
        jump.unit = "m";
        for (Desk* desk : {&pair.one, &pair.other}) {
            const bool first = desk == &pair.one;
            const LiftId row{pair.add(
                *desk, Lift{.name = first ? "Row" : "ROW", .note = first ? "one" : "other"})};
            const TestKindId test{pair.add(*desk, jump)};
            const DeviceId device{pair.add(*desk, Device{.name = "Encoder"})};
            pair.add(*desk, log::SetThing{.session = session, .lift = row});
            log::AttemptThing attempt{.session = session, .test = test};
            attempt.attempt.value = first ? 0.3 : 0.4;
            pair.add(*desk, attempt);
            log::GapThing gap{.session = session};
            gap.gap.lift = row;
            gap.gap.reason = first ? "knee" : "back";
            pair.add(*desk, gap);
            pair.add(*desk, log::LiftConditionsThing{
                                .session = session, .lift = row, .conditions = {.device = device}});
            pair.add(*desk, log::CheckLoadThing{.athlete = ada, .lift = row, .load = Mass{40'000}});
            pair.add(*desk, Station{.name = first ? "Left" : "Right", .tests = {test}});
        }
        const Taken taken = pair.meet();
        QCOMPARE(pair.one, pair.other);
        QCOMPARE(pair.live<Lift>(pair.one).size(), std::size_t{1});
        QCOMPARE(pair.live<TestKind>(pair.one).size(), std::size_t{1});
        QCOMPARE(pair.live<Device>(pair.one).size(), std::size_t{1});
        std::set<int> ordinals;
        for (const auto& set : pair.live<log::SetThing>(pair.one)) {
            QVERIFY(pair.one.at(raw(set.lift)).alive);
            ordinals.insert(set.ordinal);
        }
        QVERIFY((ordinals == std::set{1, 2}));
        QCOMPARE(pair.live<log::AttemptThing>(pair.one).size(), std::size_t{2});
        for (const auto& attempt : pair.live<log::AttemptThing>(pair.one))
            QVERIFY(pair.one.at(raw(attempt.test)).alive);
        QCOMPARE(pair.live<log::GapThing>(pair.one).size(), std::size_t{2});
        for (const auto& gap : pair.live<log::GapThing>(pair.one))
            QVERIFY(pair.one.at(raw(*gap.gap.lift)).alive);
        QCOMPARE(pair.live<log::LiftConditionsThing>(pair.one).size(), std::size_t{1});
        QVERIFY(
            pair.one
                .at(raw(*pair.live<log::LiftConditionsThing>(pair.one).front().conditions.device))
                .alive);
        QCOMPARE(pair.live<log::CheckLoadThing>(pair.one).size(), std::size_t{1});
        for (const auto& station : pair.live<Station>(pair.one))
            QVERIFY(pair.one.at(raw(station.tests.front())).alive);
        QCOMPARE(std::ranges::count(taken.told, Told::What::Joined, &Told::what), 3);
        const auto conflicts = pair.live<log::ConflictThing>(pair.one); // the two notes
        QCOMPARE(conflicts.size(), std::size_t{1});
        QCOMPARE(conflicts.front().why, std::string("joined"));
        QVERIFY(pair.meet().touched.empty());
    }

    // Of two that measure otherwise one yields its name, as two athletes do.
    void whatCannotBeOne_data() {
        QTest::addColumn<int>("what");
        QTest::newRow("lifts of another velocity") << 0;
        QTest::newRow("a lift that is thrown") << 1;
        QTest::newRow("a lift that moves the body") << 2;
        QTest::newRow("tests of another unit") << 3;
        QTest::newRow("tests of another direction") << 4;
        QTest::newRow("tests of another formula") << 5;
        QTest::newRow("a test of two sides") << 6;
        QTest::newRow("a block") << 7;
        QTest::newRow("a set of equipment") << 8;
    }
    void whatCannotBeOne() {
        QFETCH(int, what);
        TestKind test;
        test.name = "Row";
        test.unit = "m";
        TestKind otherTest = test;
        otherTest.unit = what == 3 ? "s" : "m";
        otherTest.higherIsBetter = what != 4;
        otherTest.formula = what == 5 ? TestFormula::PerBodyMass : TestFormula::Value;
        otherTest.twoSided = what == 6;
        const Lift other{.name = "Row",
                         .kind = what == 0 ? VelocityKind::Peak : VelocityKind::Mean,
                         .ballistic = what == 1,
                         .movesBody = what == 2};
        Pair pair;
        const bool block = what == 7;
        const bool lift = what < 3;
        const Thing things[]{lift        ? Thing(Lift{.name = "Row"})
                             : block     ? Thing(Block{.name = "Row", .first = day, .last = day})
                             : what == 8 ? Thing(Equipment{.name = "Row"})
                                         : Thing(test),
                             lift        ? Thing(other)
                             : block     ? Thing(Block{.name = "Row", .first = day, .last = day})
                             : what == 8 ? Thing(Equipment{.name = "Row"})
                                         : Thing(otherTest)};
        pair.add(pair.one, things[0]);
        pair.add(pair.other, things[1]);
        const Taken taken = pair.meet();
        QCOMPARE(pair.one, pair.other);
        std::set<std::string> names;
        for (const auto& [slot, atom] : pair.one)
            if (const std::string* name = atom.alive ? nameOf(*atom.thing) : nullptr)
                names.insert(*name);
        QVERIFY((names == std::set<std::string>{"Row", "Row (2)"}));
        QCOMPARE(std::ranges::count(taken.told, Told::What::Joined, &Told::what), 0);
    }

    // A third desk goes on with the one that became another, which has been renamed since: what it
    // adds goes where the rest went, and what it changed is listed.
    void goneOnWithAfterItBecameOne() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const SessionId session{
            pair.add(pair.one, log::SessionThing{.head = {.athlete = ada, .date = day}})};
        pair.share();
        std::vector<Slot> lifts;
        for (Desk* desk : {&pair.one, &pair.other}) {
            lifts.push_back(pair.add(*desk, Lift{.name = "Row"}));
            pair.add(*desk, log::SetThing{.session = session,
                                          .lift = LiftId{lifts.back()},
                                          .set = {.load = Mass{1000 * lifts.back()}}});
        }
        Desk apart[]{pair.one, pair.other};
        pair.meet();
        const std::size_t lost = pair.one.at(lifts[0]).alive ? 1 : 0;
        const Slot stays = lifts[1 - lost];
        pair.edit(pair.one, stays, Lift{.name = "Seal row"});
        pair.add(apart[lost], log::SetThing{.session = session,
                                            .lift = LiftId{lifts[lost]},
                                            .ordinal = 2,
                                            .set = {.load = Mass{20'000}}});
        pair.edit(apart[lost], lifts[lost], Lift{.name = "Row", .note = "with straps"});
        const Taken taken = take(pair.known, pair.one, apart[lost]);
        QVERIFY(!pair.one.at(lifts[lost]).alive);
        const auto sets = pair.live<log::SetThing>(pair.one);
        QCOMPARE(sets.size(), std::size_t{3});
        for (const auto& set : sets)
            QCOMPARE(raw(set.lift), stays);
        QCOMPARE(std::ranges::count(taken.told, Told::What::Joined, &Told::what), 1);
        QCOMPARE(std::ranges::count(taken.told, Told::What::Listed, &Told::what), 1);
        pair.other = apart[lost];
        pair.meet();
        pair.meet();
        QCOMPARE(pair.one, pair.other);
    }

    // Removed by one coach who made it anew, in use on the other desk: one lift, not a second.
    void revivedUnderANameThatIsTaken() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const SessionId session{
            pair.add(pair.one, log::SessionThing{.head = {.athlete = ada, .date = day}})};
        const Slot old = pair.add(pair.one, Lift{.name = "Row"});
        pair.share();
        pair.edit(pair.one, old, Lift{.name = "Row"}, false);
        const Slot made = pair.add(pair.one, Lift{.name = "Row", .note = "new"});
        pair.add(pair.other, log::SetThing{.session = session, .lift = LiftId{old}});
        pair.meet();
        QCOMPARE(pair.one, pair.other);
        QCOMPARE(pair.live<Lift>(pair.one).size(), std::size_t{1});
        QCOMPARE(raw(pair.live<log::SetThing>(pair.one).front().lift), made);
        QVERIFY(pair.meet().touched.empty());
    }

    // Two sets alike under a lift of another desk are two, also where only one of them has a twin.
    void twinsUnderLiftsThatBecomeOne() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        pair.share();
        for (Desk* desk : {&pair.one, &pair.other}) {
            const LiftId row{pair.add(*desk, Lift{.name = "Row"})};
            const SessionId session{
                pair.add(*desk, log::SessionThing{.head = {.athlete = ada, .date = day}})};
            for (int ordinal = 1; ordinal <= (desk == &pair.one ? 1 : 2); ++ordinal)
                pair.add(*desk, log::SetThing{.session = session,
                                              .lift = row,
                                              .ordinal = ordinal,
                                              .set = {.load = Mass{40'000}}});
        }
        pair.meet();
        QCOMPARE(pair.one, pair.other);
        QCOMPARE(pair.live<log::SetThing>(pair.one).size(), std::size_t{2});
    }

    // What one desk numbered anew, or led to what it belongs to now, gives way to what the other
    // said of it; both ways, and whichever says more.
    void aNumberIsNoWord_data() {
        QTest::addColumn<int>("kind");
        QTest::addColumn<bool>("removed");
        for (const bool removed : {false, true})
            for (const auto& [name, kind] :
                 {std::pair{"attempt", 0}, std::pair{"gap", 1}, std::pair{"turn", 2}})
                QTest::addRow("%s %s", name, removed ? "removed" : "corrected") << kind << removed;
    }
    void aNumberIsNoWord() {
        QFETCH(int, kind);
        QFETCH(bool, removed);
        for (const bool here : {true, false})
            for (const int inserted : {1, 3}) {
                Pair pair;
                const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
                const AthleteId bela{pair.add(pair.one, Athlete{.name = "Bela"})};
                TestKind jump;
                jump.name = "Jump";
                jump.unit = "m";
                const TestKindId test{pair.add(pair.one, jump)};
                const StationId station{
                    pair.add(pair.one, Station{.name = "Left", .tests = {test}})};
                const SessionId session{
                    pair.add(pair.one, log::SessionThing{.head = {.athlete = ada, .date = day}})};
                const auto one = [&](int ordinal, const std::string& said) -> Thing {
                    if (kind == 2)
                        return log::RosterThing{.station = station,
                                                .day = day,
                                                .ordinal = ordinal,
                                                .athlete = said == "new" ? bela : ada};
                    if (kind == 1) {
                        log::GapThing gap{.session = session, .ordinal = ordinal};
                        gap.gap.kind = test;
                        gap.gap.reason = said;
                        return gap;
                    }
                    log::AttemptThing attempt{.session = session, .test = test, .ordinal = ordinal};
                    attempt.attempt.value = 0.3;
                    attempt.attempt.note = said;
                    return attempt;
                };
                const Slot slot = pair.add(pair.one, one(1, "first"));
                pair.share();
                Desk& corrected = here ? pair.one : pair.other;
                Desk& numbered = here ? pair.other : pair.one;
                const std::string said = removed || kind == 2 ? "first" : "mended";
                pair.edit(corrected, slot, one(1, said), !removed);
                for (int number = 1; number <= inserted; ++number)
                    if (kind != 2 || number == 1)
                        pair.add(numbered, one(number, "new"));
                pair.edit(numbered, slot, one(kind == 2 ? 2 : inserted + 1, "first"));
                const Taken taken = pair.meet();
                QCOMPARE(pair.one, pair.other);
                QCOMPARE(pair.one.at(slot).alive, !removed);
                QVERIFY(pair.live<log::ConflictThing>(pair.one).empty());
                if (!removed) {
                    Thing stands = *pair.one.at(slot).thing;
                    QCOMPARE(*numberOf(stands), kind == 2 ? 2 : inserted + 1); // at its new place
                    *numberOf(stands) = 1;
                    QVERIFY(stands == one(1, said));
                }
                QVERIFY(pair.meet().touched.empty());
            }
    }

    // The same of a set that went along with its lift on the one desk and was corrected on the
    // other.
    void aMoveIsNoWord() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const SessionId session{
            pair.add(pair.one, log::SessionThing{.head = {.athlete = ada, .date = day}})};
        pair.share();
        std::vector<Slot> lifts, sets;
        const auto set = [&](Slot lift, const char* note) {
            return log::SetThing{.session = session,
                                 .lift = LiftId{lift},
                                 .set = {.load = Mass{1000 * lift}, .note = note}};
        };
        for (Desk* desk : {&pair.one, &pair.other}) {
            lifts.push_back(pair.add(*desk, Lift{.name = "Row"}));
            sets.push_back(pair.add(*desk, set(lifts.back(), "")));
        }
        Desk apart[]{pair.one, pair.other};
        pair.meet();
        for (const std::size_t i : {0U, 1U}) {
            pair.edit(apart[i], sets[i], set(lifts[i], "mended"));
            const Taken taken = take(pair.known, pair.one, apart[i]);
            QCOMPARE(std::get<log::SetThing>(*pair.one.at(sets[i]).thing).set.note,
                     std::string("mended"));
            QVERIFY(pair.live<log::ConflictThing>(pair.one).empty());
        }
        QCOMPARE(pair.live<log::SetThing>(pair.one).size(), std::size_t{2});
    }

    // Chosen by a coach, what was said before is said anew: it is no going back to what both knew.
    void whatWasChosenIsAWord() {
        Pair pair;
        const Slot ada = pair.add(pair.one, Athlete{.name = "Ada"});
        pair.share();
        pair.edit(pair.one, ada, Athlete{.name = "Ada", .note = "one"});
        pair.edit(pair.other, ada, Athlete{.name = "Ada", .note = "other"});
        pair.meet();
        const std::string stands = std::get<Athlete>(*pair.one.at(ada).thing).note;
        const auto conflict = std::ranges::find_if(pair.one, [](const auto& one) {
            return std::holds_alternative<log::ConflictThing>(*one.second.thing);
        });
        pair.edit(pair.other, ada, Athlete{.name = "Ada", .note = "third"});
        settleOn(pair.known, pair.one, conflict->first, Choice::WhatLost);
        const std::string chosen = std::get<Athlete>(*pair.one.at(ada).thing).note;
        QVERIFY(chosen != stands && !chosen.empty());
        pair.meet();
        QCOMPARE(pair.one, pair.other);
        std::set<std::string> notes{std::get<Athlete>(*pair.one.at(ada).thing).note};
        for (const auto& listed : pair.live<log::ConflictThing>(pair.one))
            notes.insert(std::get<Athlete>(thingOf(pair.known, listed.content)).note);
        QVERIFY((notes == std::set<std::string>{chosen, "third"}));
    }
};

QTEST_APPLESS_MAIN(TestJoined)
#include "tst_joined.moc"
