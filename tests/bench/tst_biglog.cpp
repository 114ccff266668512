// SPDX-License-Identifier: GPL-3.0-or-later
// The logs that the benches measure are logs: whole, sound, and of the size asked for.
#include "core/log/log.h"
#include "core/questions/liftcontext.h"
#include "tests/bench/biglog.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace slopebook;
using bench::Institute;

class TestBigLog : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    log::Log written(const char* name, const Institute& institute) const {
        const auto file = m_folder.filePath(QLatin1String(name)).toStdString();
        bench::writeInstitute(file, institute);
        return log::Log::open(file);
    }

private Q_SLOTS:
    void isWholeAndSound() {
        const log::Log log = written("all.slopebook", {.sessions = 330});
        QVERIFY(log.check().empty());
        std::size_t sessions = 0, sets = 0, reps = 0;
        for (const auto& athlete : log.athletes())
            for (const auto& session : log.sessions(athlete.id)) {
                ++sessions;
                for (const log::PlacedSet& set : log.session(session.id).sets) {
                    ++sets;
                    reps += set.set.reps.size();
                }
            }
        QCOMPARE(sessions, 330U);
        QCOMPARE(sets, 330U * 6);
        QCOMPARE(reps, 330U * 6 * 3);
    }

    void goesOnAsAnyLogDoes() {
        log::Log log = written("more.slopebook", {.sessions = 60});
        const auto athlete = log.athletes().front().id;
        const auto session =
            log.add(SessionHead{.athlete = athlete, .date = Date{std::chrono::year{2030} / 1 / 1}});
        log.add(session, log.lifts().front().id,
                {.load = Mass{60'000}, .reps = {{.velocity = 0.8}}});
        QVERIFY(log.check().empty());
    }

    void oneAthletesPartIsTheSameAsInTheWhole() {
        const log::Log all = written("whole.slopebook", {.sessions = 200});
        const log::Log part = written("part.slopebook", {.sessions = 200, .only = 7});
        QVERIFY(part.check().empty());
        QCOMPARE(part.athletes().size(), 1U);
        QCOMPARE(part.athletes().front().value.name, Institute::nameOf(7));
        const auto there = all.liftSessions({.athlete = all.athletes().at(7).id, .lift = {}});
        const auto here = part.liftSessions({});
        QCOMPARE(here.size(), there.size());
        for (std::size_t i = 0; i < here.size(); ++i) {
            QVERIFY(here[i].date == there[i].date);
            QVERIFY(here[i].points == there[i].points);
            QCOMPARE(here[i].repeatOf.has_value(), there[i].repeatOf.has_value());
        }
    }

    // What the log holds besides changes nothing of a squad: every row, from the two last blocks
    // that hold a day, as in a log of those alone who do the lift.
    void aLiftsSquadIsTheSameAsInTheWhole() {
        const log::Log all = written("everybody.slopebook", {.sessions = 400});
        const log::Log part = written("squad.slopebook", {.sessions = 400, .onlyLift = 0});
        QVERIFY(part.check().empty());
        QVERIFY(part.athletes().size() > 1 && part.athletes().size() < all.athletes().size());
        const answers::Squad whole = squadOf(all), alone = squadOf(part);
        QVERIFY(whole.parts.size() > 1);
        QCOMPARE(whole.parts.size(), alone.parts.size());
        int read = 0, oneSided = 0;
        for (std::size_t p = 0; p < whole.parts.size(); ++p) {
            const auto &rows = whole.parts[p].rows, &others = alone.parts[p].rows;
            QCOMPARE(rows.size(), others.size());
            for (std::size_t i = 0; i < rows.size(); ++i) {
                QCOMPARE(rows[i].name, others[i].name);
                QCOMPARE(bool(rows[i].read), bool(others[i].read));
                oneSided += rows[i].from.has_value() != rows[i].to.has_value() ? 1 : 0;
                if (!rows[i].read)
                    continue;
                ++read;
                QCOMPARE(rows[i].read->change, others[i].read->change);
                QCOMPARE(rows[i].read->interval.low, others[i].read->interval.low);
            }
        }
        QVERIFY(read > 0 && oneSided > 0);
    }

private:
    static answers::Squad squadOf(const log::Log& log) {
        LiftId lift{};
        for (const auto& each : log.lifts())
            if (each.value.name == "Bench pull")
                lift = each.id;
        const auto context = questions::liftContext(log, lift);
        auto blocks = log.blocks();
        std::erase_if(blocks, [&](const auto& block) {
            return std::ranges::none_of(
                context.days, [&](const auto& day) { return block.value.holds(day.date); });
        });
        return *questions::squadOf(log, context,
                                   answers::inBlock(blocks.at(blocks.size() - 2).value),
                                   answers::inBlock(blocks.back().value));
    }
};

QTEST_APPLESS_MAIN(TestBigLog)
#include "tst_biglog.moc"
