// SPDX-License-Identifier: GPL-3.0-or-later
// What is gathered from a log before a question is asked: sessions by key, thresholds, noise,
// smallest changes, check loads.
#include "core/model/errors.h"
#include "core/questions/liftcontext.h"
#include "core/questions/questions.h"

#include <QTemporaryDir>
#include <QTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::questions;
using namespace slopebook::literals;

namespace {

Date day(unsigned month, unsigned d) {
    return Date{std::chrono::year{2026}, std::chrono::month{month}, std::chrono::day{d}};
}

// A log under construction: one lift, ladders of five loads about a line.
struct Squad {
    QTemporaryDir folder;
    log::Log log = log::Log::create(folder.filePath(QStringLiteral("t.slopebook")).toStdString());
    LiftId lift = addLift();

    LiftId addLift() {
        Lift made;
        made.name = "Bench pull";
        made.mvt =
            Mvt{.value = 0.5, .sd = 0.04, .origin = Mvt::Origin::Published, .source = "a paper"};
        return log.add(made);
    }
    AthleteId athlete(const std::string& name) {
        return log.add(Athlete{.name = name, .note = {}});
    }
    SessionId ladder(AthleteId athlete, Date date, double v0,
                     std::optional<SessionId> repeatOf = {}, std::optional<DeviceId> device = {}) {
        SessionHead head;
        head.athlete = athlete;
        head.date = date;
        for (const auto& other : log.sessions(athlete))
            head.ordinal += other.value.date == date;
        head.repeatOf = repeatOf;
        const SessionId id = log.add(head);
        log.setConditions(id, lift, {.device = device});
        for (int i = 0; i < 5; ++i) {
            const double load = 40 + 10 * i;
            const double off = i % 2 == 0 ? 0.01 : -0.01;
            log.add(id, lift,
                    Set{.load = massFromKilograms(load),
                        .excluded = {},
                        .note = {},
                        .reps = {{v0 - 0.01 * load + off, ""}}});
        }
        return id;
    }
};

} // namespace

class TestQuestions : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void findsASessionByItsKey() {
        Squad squad;
        const AthleteId ada = squad.athlete("Ada");
        const SessionId first = squad.ladder(ada, day(3, 14), 1.5);
        const SessionId second = squad.ladder(ada, day(3, 14), 1.5);
        const auto about = background(squad.log, ada, squad.lift);
        QVERIFY(sessionAt(about.sessions, "2026-03-14")->session == first);
        QVERIFY(sessionAt(about.sessions, "2026-03-14#2")->session == second);
        QCOMPARE(sessionAt(about.sessions, "2026-03-14#3").why().why, NoAnswer::Why::NoSuchSession);
        QVERIFY(english(sessionAt(about.sessions, "2026-03-15").why().reason)
                    .find("2026-03-14, 2026-03-14#2") != std::string::npos);
        for (const char* wrong : {"", "14.3.2026", "2026-03-14#", "2026-03-14#0", "2026-03-14#2x"})
            QVERIFY_THROWS_EXCEPTION(BadInput, sessionAt(about.sessions, wrong));
        QVERIFY(!sessionOf(about.sessions, SessionId{999}));
    }

    void refusesWhatIsNotInTheLog() {
        Squad squad;
        QVERIFY_THROWS_EXCEPTION(LogError, background(squad.log, AthleteId{7}, squad.lift));
        const AthleteId ada = squad.athlete("Ada");
        QVERIFY_THROWS_EXCEPTION(LogError, background(squad.log, ada, LiftId{7}));
    }

    void takesTheNoiseFromTheNearestSource() {
        Squad squad;
        const AthleteId ada = squad.athlete("Ada");
        const AthleteId bela = squad.athlete("Bela");
        const auto noise = [&] {
            return dayNoiseOf(squad.log, background(squad.log, ada, squad.lift), {});
        };
        const auto origin = [&] { return noise().origin; };
        squad.ladder(ada, day(1, 5), 1.5);
        QCOMPARE(origin(), answers::DayNoise::Origin::Published);
        for (unsigned i = 0; i < 3; ++i) {
            const SessionId test = squad.ladder(bela, day(2, 1 + 7 * i), 1.5);
            squad.ladder(bela, day(2, 3 + 7 * i), 1.53 + 0.01 * i, test);
        }
        // The published figure weighs as 4 repeat tests of others.
        QCOMPARE(noise().othersPairs, 3);
        QVERIFY(std::abs(noise().othersShare - 3.0 / 7) < 1e-12);
        QCOMPARE(origin(), answers::DayNoise::Origin::Published);
        // The windows' profiles are asked with it as well.
        QVERIFY(background(squad.log, ada, squad.lift).dayNoise.variance.value ==
                noise().variance.value);
        for (unsigned i = 3; i < 6; ++i) {
            const SessionId test = squad.ladder(bela, day(2, 1 + 4 * i), 1.5);
            squad.ladder(bela, day(2, 3 + 4 * i), 1.53 + 0.01 * i, test);
        }
        QCOMPARE(origin(), answers::DayNoise::Origin::LogLift);
        for (unsigned i = 0; i < 3; ++i) {
            const SessionId test = squad.ladder(ada, day(2, 1 + 7 * i), 1.5);
            squad.ladder(ada, day(2, 3 + 7 * i), 1.53 + 0.01 * i, test);
        }
        QCOMPARE(noise().ownPairs, 3);
        QCOMPARE(noise().othersPairs, 6);
        QVERIFY(noise().ownShare > 0.35);
    }

    void devicesKeepTheirNoiseApart() {
        Squad squad;
        const AthleteId ada = squad.athlete("Ada");
        const DeviceId one = squad.log.add(Device{.name = "Encoder 1", .note = {}});
        const DeviceId two = squad.log.add(Device{.name = "Encoder 2", .note = {}});
        for (unsigned i = 0; i < 3; ++i) {
            const SessionId test = squad.ladder(ada, day(2, 1 + 7 * i), 1.5, {}, one);
            squad.ladder(ada, day(2, 3 + 7 * i), 1.53, test, one);
        }
        const LiftContext context = liftContext(squad.log, squad.lift);
        QVERIFY(bool(noiseOf(context, one)));
        QVERIFY(!noiseOf(context, two));
        QVERIFY(bool(noiseOf(context, std::nullopt)));
        const Background about = background(squad.log, ada, squad.lift);
        QCOMPARE(dayNoiseOf(context, about, one).ownPairs, 3);
        QVERIFY(dayNoiseOf(context, about, one).ownShare > 0.3);
        QCOMPARE(dayNoiseOf(context, about, two).ownPairs, 0);
        QCOMPARE(dayNoiseOf(context, about, two).origin, answers::DayNoise::Origin::Published);
        // within() asks for that device, background() for any.
        QVERIFY(within(context, about, two).dayNoise.ownPairs == 0 && about.dayNoise.ownPairs == 3);
    }

    // 0.2 x the SD between athletes where eight have the test, else the coach's, else published.
    void takesTheSmallestChangeFromTheSquad() {
        Squad squad;
        std::vector<AthleteId> athletes;
        for (int i = 0; i < 7; ++i) {
            athletes.push_back(squad.athlete("Athlete " + std::to_string(i)));
            squad.ladder(athletes.back(), day(1, 5), 1.2 + 0.02 * i);
        }
        squad.ladder(athletes[0], day(2, 5), 1.25);
        const auto smallest = [&] {
            const auto about = background(squad.log, athletes[0], squad.lift);
            return comparisonSettings(squad.log, about, about.sessions.at(0), about.sessions.at(1));
        };
        QCOMPARE(smallest().smallestOneRm->origin, answers::Smallest::Origin::Published);
        Lift lift = squad.log.lifts().at(0).value;
        lift.smallestVelocity = 0.04;
        squad.log.change(squad.lift, lift);
        QCOMPARE(smallest().smallestVelocity->origin, answers::Smallest::Origin::Coach);
        QCOMPARE(smallest().smallestVelocity->value, 0.04);
        QVERIFY(smallest().smallestAt.empty());
        squad.ladder(squad.athlete("Athlete 7"), day(1, 5), 1.36);
        QCOMPARE(smallest().smallestAt.at(40_kg).origin, answers::Smallest::Origin::Squad);
        QCOMPARE(smallest().smallestOneRm->origin, answers::Smallest::Origin::Squad);
    }

    void followsFromTheFirstLineOrFromAChosenOne() {
        Squad squad;
        const AthleteId ada = squad.athlete("Ada");
        squad.ladder(ada, day(1, 5), 1.5);
        squad.ladder(ada, day(2, 5), 1.6);
        const SessionId last = squad.ladder(ada, day(3, 5), 1.7);
        const auto fromFirst = followOf(squad.log, ada, squad.lift, 60_kg);
        QVERIFY(bool(fromFirst));
        QCOMPARE(fromFirst->baseline, std::size_t(0));
        // 0.1 m/s a month: 0.2 m/s in the 59 days from 5 January to 5 March.
        QVERIFY(std::abs(fromFirst->sessions.at(2).change->read.change - 0.2) < 1e-12);
        QCOMPARE(followOf(squad.log, ada, squad.lift, 60_kg, last)->baseline, std::size_t(2));
        QCOMPARE(followOf(squad.log, ada, squad.lift, 60_kg, SessionId{99}).why().why,
                 NoAnswer::Why::NoBaseline);
        const AthleteId bela = squad.athlete("Bela");
        QCOMPARE(followOf(squad.log, bela, squad.lift, 60_kg).why().why, NoAnswer::Why::NoBaseline);
    }

    void goesThroughTheLogByName() {
        Squad squad;
        const AthleteId zoe = squad.athlete("Zoe");
        const AthleteId ada = squad.athlete("Ada");
        squad.athlete("Nobody");
        squad.ladder(zoe, day(1, 5), 1.5);
        squad.ladder(ada, day(1, 5), 1.5);
        squad.log.setCheckLoads(ada, squad.lift, {40_kg});
        std::string names;
        eachBackground(squad.log, {}, [&](const Background& about) {
            names += about.athlete.value.name + " ";
            QCOMPARE(about.checkLoads.size(), std::size_t(about.athlete.id == ada ? 1 : 0));
            QCOMPARE(about.mvt->value, 0.5);
        });
        QCOMPARE(names, std::string("Ada Zoe "));
    }

    void theLatestBegunBlockHoldsADay() {
        const std::vector<Stored<BlockId, Block>> blocks{
            {BlockId{1}, {.name = "Season", .first = day(1, 1), .last = day(6, 30)}},
            {BlockId{2}, {.name = "Camp", .first = day(3, 1), .last = day(3, 10)}}};
        QCOMPARE(blockOn(blocks, day(3, 5))->name, std::string("Camp"));
        QCOMPARE(blockOn(blocks, day(3, 11))->name, std::string("Season"));
        QVERIFY(!blockOn(blocks, day(7, 1)));
    }
};

QTEST_APPLESS_MAIN(TestQuestions)
#include "tst_questions.moc"
