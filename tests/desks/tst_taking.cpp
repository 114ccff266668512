// SPDX-License-Identifier: GPL-3.0-or-later
// The rules by which desks meet: on random desks, with each rule taken away, and one by one.
#include "core/desks/taking.h"
#include "core/model/errors.h"
#include "tests/desks/modeldesks.h"
#include "tests/desks/pairofdesks.h"
#include "tests/support/longrun.h"

#include <QTest>

namespace {
using namespace slopebook;
using namespace slopebook::desks;
using slopebook::tests::day;
using slopebook::tests::ModelDesks;
using slopebook::tests::Pair;

constexpr int steps = 70;

/// What goes wrong first; empty: nothing does.
std::string wrongOf(unsigned seeds, const Rules& rules) {
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        std::string wrong;
        try {
            wrong = ModelDesks(seed, rules).run(steps);
        } catch (const BadInput& refused) {
            wrong = refused.what();
        }
        if (!wrong.empty())
            return "seed " + std::to_string(seed) + ": " + wrong;
    }
    return {};
}

std::set<std::string> namesOf(const Pair& pair, const Desk& desk) {
    std::set<std::string> names;
    for (const Athlete& athlete : pair.live<Athlete>(desk))
        names.insert(athlete.name);
    return names;
}
} // namespace

class TestTaking : public QObject {
    Q_OBJECT

private slots:
    void everybodyComesToTheSame() {
        const unsigned seeds =
            static_cast<unsigned>(test::rounds("SLOPEBOOK_DESK_RUNS", 150, 5000));
        QCOMPARE(QString::fromStdString(wrongOf(seeds, {})), QString());
    }

    // A test of the test: each thing happens in those runs.
    void everythingHappens() {
        ModelDesks::Did all;
        for (unsigned seed = 1; seed <= 60; ++seed) {
            ModelDesks world(seed, {});
            world.run(steps);
            all.joined += world.did.joined;
            all.revived += world.did.revived;
            all.renamed += world.did.renamed;
            all.renumbered += world.did.renumbered;
            all.listed += world.did.listed;
            all.swaps += world.did.swaps;
            all.namedJoined += world.did.namedJoined;
            all.otherSides += world.did.otherSides;
            all.corrections += world.did.corrections;
        }
        for (const int times : {all.joined, all.revived, all.renamed, all.renumbered, all.listed,
                                all.swaps, all.namedJoined, all.otherSides, all.corrections})
            QVERIFY(times > 0);
    }

    void eachRuleIsNeeded_data() {
        QTest::addColumn<int>("rule");
        QTest::newRow("trails") << 0;
        QTest::newRow("yielding keys") << 1;
        QTest::newRow("reviving parents") << 2;
        QTest::newRow("listing losers") << 3;
        QTest::newRow("joining what has one name") << 4;
    }
    void eachRuleIsNeeded() {
        QFETCH(int, rule);
        Rules rules;
        bool* const all[]{&rules.trails, &rules.yields, &rules.revives, &rules.lists,
                          &rules.joinsNamed};
        *all[rule] = false;
        const std::string wrong = wrongOf(100, rules);
        QVERIFY2(!wrong.empty(), "nothing breaks without it");
        qInfo("%s", wrong.c_str());
    }

    // What one coach said alone waits for no choice because a log or a meeting numbered or moved
    // it.
    void withoutThatNumbersAreChosenFrom() {
        for (const bool noWords : {true, false}) {
            int idle = 0;
            for (unsigned seed = 1; seed <= 150; ++seed) {
                ModelDesks world(seed, {.noWords = noWords});
                world.run(steps);
                idle += world.did.idleChoices;
            }
            QCOMPARE(idle == 0, noWords);
        }
    }

    // Each taking the other's at the same time, desks that did not choose alike would swap for
    // ever.
    void bothAtOnceForEver() {
        for (const bool alike : {true, false}) {
            Pair pair;
            const Slot ada = pair.add(pair.one, Athlete{.name = "Ada"});
            pair.share();
            pair.edit(pair.one, ada, Athlete{.name = "Ada", .note = "one"});
            pair.edit(pair.other, ada, Athlete{.name = "Ada", .note = "other"});
            for (int meeting = 0; meeting < 20; ++meeting)
                pair.meet({.alike = alike});
            QCOMPARE(pair.one.at(ada).thing == pair.other.at(ada).thing, alike);
            QCOMPARE(pair.meet({.alike = alike}).touched.empty(), alike);
        }
    }

    void withoutFollowingADayStandsTwice() {
        for (const bool follows : {true, false}) {
            Pair pair;
            const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
            const LiftId row{pair.add(pair.one, Lift{.name = "Row"})};
            pair.share();
            for (Desk* desk : {&pair.one, &pair.other}) {
                const SessionId session{
                    pair.add(*desk, log::SessionThing{.head = {.athlete = ada, .date = day}})};
                pair.add(*desk, log::SetThing{.session = session, .lift = row});
            }
            pair.meet({.follows = follows});
            QCOMPARE(pair.live<log::SessionThing>(pair.one).size(), follows ? 1U : 2U);
        }
    }

    void twoOfOneName() {
        Pair pair;
        const Slot a = pair.add(pair.one, Athlete{.name = "Ada", .note = "one"});
        const Slot b = pair.add(pair.other, Athlete{.name = "ADA", .note = "other"});
        pair.add(pair.other, Athlete{.name = "Ada (2)"});
        pair.meet();
        QCOMPARE(pair.one, pair.other);
        const bool lesser = pair.known.uuid(a) < pair.known.uuid(b);
        const std::set<std::string> expected =
            lesser ? std::set<std::string>{"Ada", "Ada (2)", "ADA (3)"}
                   : std::set<std::string>{"ADA", "Ada (2)", "Ada (3)"};
        QVERIFY(namesOf(pair, pair.one) == expected);
        QCOMPARE(pair.live<log::ConflictThing>(pair.one).size(), std::size_t{1});
        QCOMPARE(pair.live<log::ConflictThing>(pair.one).front().why, std::string("same name"));
        QVERIFY(pair.meet().touched.empty());
    }

    // A year in a name is no number of ours.
    void aNameWithANumber() {
        Pair pair;
        pair.add(pair.one, Athlete{.name = "Rower (2019)", .note = "one"});
        pair.add(pair.other, Athlete{.name = "Rower (2019)", .note = "other"});
        pair.meet();
        QCOMPARE(pair.one, pair.other);
        const std::set<std::string> names = namesOf(pair, pair.one);
        QVERIFY((names == std::set<std::string>{"Rower (2019)", "Rower (2019) (2)"}));
    }

    // What was removed before logs kept contents: the other desk says what it said, if it is that.
    void removedWithoutContent_data() {
        QTest::addColumn<bool>("same");
        QTest::addColumn<bool>("ahead");
        QTest::newRow("the same state") << true << false;
        QTest::newRow("the other went on to it") << true << true;
        QTest::newRow("another state, behind") << false << false;
    }
    void removedWithoutContent() {
        QFETCH(bool, same);
        QFETCH(bool, ahead);
        Pair pair;
        const Slot ada = pair.add(pair.one, Athlete{.name = "Ada"});
        if (ahead)
            pair.edit(pair.one, ada, Athlete{.name = "Ada"}, false);
        pair.share();
        if (!ahead)
            pair.edit(pair.one, ada, Athlete{.name = "Ada", .note = same ? "" : "new"}, false);
        if (same && !ahead)
            pair.other.at(ada) = pair.one.at(ada);
        pair.one.at(ada).hash = hashOf(pair.known, *pair.one.at(ada).thing);
        pair.one.at(ada).thing.reset();
        const Desk before = pair.one;
        pair.meet();
        QCOMPARE(pair.one.at(ada).thing.has_value(), same);
        for (const Desk* desk : {&pair.one, &pair.other}) {
            QVERIFY(!desk->at(ada).alive);
            if (desk->at(ada).thing) // a log that holds it can be read
                QCOMPARE(log::stepHash(hashOf(pair.known, *desk->at(ada).thing), false),
                         desk->at(ada).trail.back().hash);
        }
        QVERIFY(pair.meet().touched.empty());
    }

    // The same of one that is in use on the other desk: it comes back as it was known there.
    void removedWithoutContentAndInUse() {
        Pair pair;
        const Slot ada = pair.add(pair.one, Athlete{.name = "Ada"});
        pair.share();
        pair.edit(pair.one, ada, Athlete{.name = "Ada", .note = "new"}, false);
        pair.one.at(ada).hash = hashOf(pair.known, *pair.one.at(ada).thing);
        pair.one.at(ada).thing.reset();
        pair.add(pair.other, log::SessionThing{.head = {.athlete = AthleteId{ada}, .date = day}});
        pair.meet();
        QCOMPARE(pair.live<log::SessionThing>(pair.one).size(), std::size_t{1});
        QVERIFY(pair.one.at(ada).alive && pair.other.at(ada).alive);
        QVERIFY(pair.one.at(ada).thing == pair.other.at(ada).thing);
        QVERIFY(pair.meet().touched.empty());
    }

    void namesChangedForOneAnother() {
        Pair pair;
        const Slot a = pair.add(pair.one, Athlete{.name = "Ada"});
        const Slot b = pair.add(pair.one, Athlete{.name = "Bela"});
        pair.share();
        pair.edit(pair.other, a, Athlete{.name = "Cyd"});
        pair.edit(pair.other, b, Athlete{.name = "Ada"});
        pair.edit(pair.other, a, Athlete{.name = "Bela"});
        const Taken taken = pair.meet();
        QCOMPARE(pair.one, pair.other);
        QVERIFY(taken.told.empty());
        QCOMPARE(std::get<Athlete>(*pair.one.at(a).thing).name, std::string("Bela"));
    }

    // Both began the day's session: it is one, with the sets of both in their order.
    void sessionsOfOneDayBecomeOne() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const LiftId row{pair.add(pair.one, Lift{.name = "Row"})};
        pair.share();
        std::vector<SessionId> sessions;
        for (Desk* desk : {&pair.one, &pair.other}) {
            const bool first = desk == &pair.one;
            const Slot session = pair.add(
                *desk, log::SessionThing{.head = {.athlete = ada,
                                                  .date = day,
                                                  .bodyMass = Mass{first ? 70'000 : 71'000}}});
            sessions.push_back(SessionId{session});
            for (int ordinal = 1; ordinal <= 2; ++ordinal)
                pair.add(*desk, log::SetThing{.session = SessionId{session},
                                              .lift = row,
                                              .ordinal = ordinal,
                                              .set = {.load = Mass{40'000 * ordinal},
                                                      .note = first ? "one" : "other"}});
        }
        const Taken taken = pair.meet();
        QCOMPARE(pair.one, pair.other);
        QCOMPARE(pair.live<log::SessionThing>(pair.one).size(), std::size_t{1});
        const auto sets = pair.live<log::SetThing>(pair.one);
        QCOMPARE(sets.size(), std::size_t{4});
        const bool lesser = pair.known.uuid(raw(sessions[0])) < pair.known.uuid(raw(sessions[1]));
        for (const auto& set : sets) {
            QCOMPARE(set.session, sessions[lesser ? 0 : 1]);
            const bool moved = set.set.note == (lesser ? "other" : "one");
            QCOMPARE(set.ordinal, static_cast<int>(set.set.load.grams / 40'000) + (moved ? 2 : 0));
        }
        const auto conflicts = pair.live<log::ConflictThing>(pair.one);
        QCOMPARE(conflicts.size(), std::size_t{1});
        QCOMPARE(conflicts.front().why, std::string("joined"));
        QCOMPARE(taken.told.front().what, Told::What::Joined);
        QVERIFY(pair.meet().touched.empty());
    }

    // The same file imported on both desks, and on a third one that met neither: it stands once.
    // Two sets alike in the file are two, and what else each wrote stands beside them.
    void theSameEntryOnTwoDesks() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const LiftId row{pair.add(pair.one, Lift{.name = "Row"})};
        TestKind kind;
        kind.name = "Jump";
        kind.unit = "m";
        const TestKindId jump{pair.add(pair.one, kind)};
        pair.share();
        Desk third = pair.one;
        for (Desk* desk : {&pair.one, &pair.other, &third}) {
            const SessionId session{
                pair.add(*desk, log::SessionThing{.head = {.athlete = ada, .date = day}})};
            int ordinal = 0;
            if (desk == &pair.other) // written by hand, before the file came
                pair.add(*desk, log::SetThing{.session = session,
                                              .lift = row,
                                              .ordinal = ++ordinal,
                                              .set = {.load = Mass{20'000}}});
            for (const int load : {40'000, 40'000, 60'000})
                pair.add(*desk, log::SetThing{.session = session,
                                              .lift = row,
                                              .ordinal = ++ordinal,
                                              .set = {.load = Mass{load}}});
            for (const int number : {1, 2}) {
                log::AttemptThing one{.session = session, .test = jump, .ordinal = number};
                one.attempt.value = 0.3;
                pair.add(*desk, one);
            }
            log::GapThing gap{.session = session};
            gap.gap.lift = row;
            gap.gap.reason = "knee";
            pair.add(*desk, gap);
            pair.add(*desk, log::LiftConditionsThing{
                                .session = session, .lift = row, .conditions = {.place = "hall"}});
        }
        const Taken taken = pair.meet();
        QCOMPARE(pair.one, pair.other);
        QCOMPARE(taken.added, std::size_t{1}); // the set written by hand
        QCOMPARE(std::ranges::count(taken.told, Told::What::Joined, &Told::what), 1);
        QCOMPARE(taken.told.size(), std::size_t{1});
        bool quiet = false;
        for (int round = 0; round < 6 && !quiet; ++round) {
            quiet = take(pair.known, pair.other, pair.one).touched.empty();
            quiet = take(pair.known, third, pair.other).touched.empty() && quiet;
            quiet = take(pair.known, pair.one, third).touched.empty() && quiet;
        }
        QVERIFY(quiet);
        QCOMPARE(pair.one, third);
        QCOMPARE(pair.one, pair.other);
        std::multiset<std::int64_t> loads;
        std::set<int> ordinals;
        for (const auto& set : pair.live<log::SetThing>(pair.one)) {
            loads.insert(set.set.load.grams);
            ordinals.insert(set.ordinal);
        }
        QVERIFY((loads == std::multiset<std::int64_t>{20'000, 40'000, 40'000, 60'000}));
        QCOMPARE(ordinals.size(), std::size_t{4});
        QCOMPARE(pair.live<log::AttemptThing>(pair.one).size(), std::size_t{2});
        QCOMPARE(pair.live<log::GapThing>(pair.one).size(), std::size_t{1});
        QCOMPARE(pair.live<log::LiftConditionsThing>(pair.one).size(), std::size_t{1});
        QVERIFY(pair.live<log::ConflictThing>(pair.one).empty());
    }

    // A set like one that is there already, logged into a session after that became one with
    // another: it is a new one.
    void oneMoreLikeIt() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const LiftId row{pair.add(pair.one, Lift{.name = "Row"})};
        pair.share();
        const auto set = [&](Slot session, int ordinal) {
            return log::SetThing{.session = SessionId{session},
                                 .lift = row,
                                 .ordinal = ordinal,
                                 .set = {.load = Mass{40'000}}};
        };
        std::vector<Slot> sessions;
        for (Desk* desk : {&pair.one, &pair.other}) {
            sessions.push_back(
                pair.add(*desk, log::SessionThing{.head = {.athlete = ada, .date = day}}));
            pair.add(*desk, set(sessions.back(), 1));
        }
        Desk apart[]{pair.one, pair.other};
        pair.meet();
        QCOMPARE(pair.live<log::SetThing>(pair.one).size(), std::size_t{1});
        for (const std::size_t i : {0U, 1U}) {
            pair.add(apart[i], set(sessions[i], 2));
            take(pair.known, pair.one, apart[i]);
            QCOMPARE(pair.live<log::SetThing>(pair.one).size(), std::size_t{2});
        }
        pair.meet();
        QCOMPARE(pair.live<log::SetThing>(pair.other).size(), std::size_t{2});
    }

    void withoutJoiningADayStandsTwice() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        pair.share();
        for (Desk* desk : {&pair.one, &pair.other})
            pair.add(*desk, log::SessionThing{.head = {.athlete = ada, .date = day}});
        take(pair.known, pair.one, pair.other, {.joins = false});
        QCOMPARE(pair.live<log::SessionThing>(pair.one).size(), std::size_t{2});
    }

    void aSetOfARemovedSession() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const LiftId row{pair.add(pair.one, Lift{.name = "Row"})};
        const log::SessionThing head{.head = {.athlete = ada, .date = day}};
        const Slot session = pair.add(pair.one, head);
        pair.share();
        pair.edit(pair.one, session, head, false);
        pair.edit(pair.one, raw(ada), Athlete{.name = "Ada"}, false);
        pair.add(pair.other, log::SetThing{.session = SessionId{session}, .lift = row});
        const Taken taken = pair.meet();
        QCOMPARE(pair.one, pair.other);
        QCOMPARE(pair.live<log::SetThing>(pair.one).size(), std::size_t{1});
        QVERIFY(pair.one.at(session).alive);
        QVERIFY(pair.one.at(raw(ada)).alive);
        QCOMPARE(std::ranges::count(taken.told, Told::What::Revived, &Told::what), 2);
        QVERIFY(pair.meet().touched.empty());
    }

    // Numbers of attempts are places: an attempt put before another one is no change of that.
    void attemptsAreNumberedThrough() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        TestKind kind;
        kind.name = "Jump";
        kind.unit = "m";
        const TestKindId jump{pair.add(pair.one, kind)};
        const SessionId session{
            pair.add(pair.one, log::SessionThing{.head = {.athlete = ada, .date = day}})};
        const auto attempt = [&](int ordinal, double value) {
            log::AttemptThing one{.session = session, .test = jump, .ordinal = ordinal};
            one.attempt.value = value;
            return one;
        };
        const Slot first = pair.add(pair.one, attempt(1, 0.31));
        const Slot second = pair.add(pair.one, attempt(2, 0.32));
        pair.share();
        pair.edit(pair.one, first, attempt(1, 0.31), false); // the second is the first now
        pair.edit(pair.one, second, attempt(1, 0.32));
        pair.add(pair.other, attempt(3, 0.33));
        pair.meet();
        QCOMPARE(pair.one, pair.other);
        std::map<int, double> values;
        for (const auto& one : pair.live<log::AttemptThing>(pair.one))
            values[one.ordinal] = one.attempt.value;
        const std::map<int, double> expected{{1, 0.32}, {2, 0.33}};
        QVERIFY(values == expected);
        QVERIFY(pair.live<log::ConflictThing>(pair.one).empty());
    }

    void repeatsOfOneAnother() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        log::SessionThing head{.head = {.athlete = ada, .date = day}};
        const Slot first = pair.add(pair.one, head);
        head.head.ordinal = 2;
        const Slot second = pair.add(pair.one, head);
        pair.share();
        head.head.repeatOf = SessionId{first};
        pair.edit(pair.one, second, head);
        head.head = {.athlete = ada, .date = day, .repeatOf = SessionId{second}};
        pair.edit(pair.other, first, head);
        pair.meet();
        QCOMPARE(pair.one, pair.other);
        int repeats = 0;
        for (const auto& session : pair.live<log::SessionThing>(pair.one))
            repeats += session.head.repeatOf ? 1 : 0;
        QCOMPARE(repeats, 1);
        QCOMPARE(pair.live<log::ConflictThing>(pair.one).front().why, std::string("repeat"));
    }

    void whatNoDeskHoldsIsRefused() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        pair.share();
        const Slot nowhere = pair.known.of(log::hashOf("nowhere"));
        const Desk before = pair.one;
        const auto refused = [&](Thing thing) {
            Desk theirs = pair.other;
            std::swap(theirs, pair.other);
            pair.add(pair.other, std::move(thing));
            std::swap(theirs, pair.other);
            QVERIFY_THROWS_EXCEPTION(BadInput, take(pair.known, pair.one, theirs));
            QCOMPARE(pair.one, before);
        };
        refused(log::SessionThing{.head = {.athlete = AthleteId{nowhere}, .date = day}});
        refused(log::SessionThing{.head = {.athlete = ada, .date = day, .ordinal = 0}});
        refused(log::SessionThing{
            .head = {.athlete = ada, .date = day, .ordinal = std::numeric_limits<int>::max()}});
        log::ConflictThing choice{.about = pair.known.uuid(raw(ada)),
                                  .revision = log::hashOf("lost"),
                                  .why = "both changed"};
        refused(choice); // under another identity
        const auto refusedUnderItsOwn = [&](const log::ConflictThing& one) {
            Desk theirs = pair.other;
            const Slot slot = pair.known.of("conflict", log::conflictUuid(one.about, one.revision));
            theirs[slot].thing = one;
            extend(pair.known, theirs.at(slot));
            QVERIFY_THROWS_EXCEPTION(BadInput, take(pair.known, pair.one, theirs));
        };
        choice.why = "because";
        refusedUnderItsOwn(choice);
        choice.why = "both changed";
        choice.content = "no content";
        refusedUnderItsOwn(choice);
        pair.known.of("athlete", choice.about);
        choice.content = bytesOf(pair.known, Lift{.name = "Row"}); // of an athlete
        refusedUnderItsOwn(choice);
    }

    // Sessions that say they became one another: what belongs to them revives them.
    void joinedInACircle() {
        Pair pair;
        const AthleteId ada{pair.add(pair.one, Athlete{.name = "Ada"})};
        const LiftId row{pair.add(pair.one, Lift{.name = "Row"})};
        log::SessionThing head{.head = {.athlete = ada, .date = day}};
        const Slot first = pair.add(pair.one, head);
        head.head.ordinal = 2;
        const Slot second = pair.add(pair.one, head);
        pair.share();
        pair.add(pair.one, log::SetThing{.session = SessionId{first}, .lift = row});
        head.into = pair.known.uuid(first);
        pair.edit(pair.other, second, head, false);
        head.into = pair.known.uuid(second);
        head.head.ordinal = 1;
        pair.edit(pair.other, first, head, false);
        pair.meet();
        QCOMPARE(pair.one, pair.other);
        QVERIFY(pair.one.at(first).alive);
        QCOMPARE(pair.live<log::SetThing>(pair.one).size(), std::size_t{1});
    }

    void kindsDoNotMix() {
        Slots known;
        known.of("lift", log::hashOf("x"));
        QVERIFY_THROWS_EXCEPTION(BadInput, known.of("athlete", log::hashOf("x")));
    }
};

QTEST_APPLESS_MAIN(TestTaking)
#include "tst_taking.moc"
