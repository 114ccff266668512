// SPDX-License-Identifier: GPL-3.0-or-later
// A log that went out as CSV and came back is the same to other logs: every thing has its name and
// its trail; and what lives in a log under a name never becomes two.
#include "core/exchange/identitycsv.h"
#include "core/exchange/tidyexport.h"
#include "core/log/carried.h"
#include "core/log/identities.h"
#include "tests/exchange/csvfiles.h"
#include "tests/exchange/dicelog.h"
#include "tests/exchange/toldlog.h"

#include <QTest>

#include <algorithm>
#include <map>

using namespace slopebook;
using namespace slopebook::exchange;
using log::Log;
using log::Sixteen;
using tests::CsvFiles;
using tests::Maker;

namespace {
using Living = std::map<Sixteen, std::pair<std::string, log::Trail>>;

Living livingIn(const Log& log) {
    Living all;
    log::visitIdentities(log, [&](const log::Identity& one) {
        all.emplace(one.uuid, std::pair(one.place.kind, one.trail));
    });
    return all;
}

std::vector<std::filesystem::path> exported(const Log& log, const CsvFiles& files,
                                            const std::string& folder = "out") {
    auto all = exportTables(log, files.path(folder));
    std::erase_if(all, [](const auto& file) { return file.extension() != ".csv"; });
    return all;
}

/// A log by dice in which something was edited, removed and put back.
Log diceLog(const CsvFiles& files, unsigned seed, const std::string& name = "test.slopebook") {
    Log log = files.newLog(name);
    log.together([&] { Maker(seed).fill(log); });
    log.together([&] {
        for (const auto& athlete : log.athletes()) {
            Athlete other = athlete.value;
            other.note += " once";
            log.change(athlete.id, other);
            log.change(athlete.id, athlete.value);
            for (const auto& session : log.sessions(athlete.id))
                for (const auto& placed : log.session(session.id).sets) {
                    log.remove(placed.id);
                    log.add(session.id, placed.lift, placed.set, placed.ordinal, placed.id);
                }
        }
    });
    return log;
}

/// Replaces the first place of a text in a file.
void replaceIn(const CsvFiles& files, const std::string& file, const std::string& what,
               const std::string& with) {
    std::string text = files.read(file);
    const auto at = text.find(what);
    QVERIFY2(at != std::string::npos, what.c_str());
    files.write(file, text.replace(at, what.size(), with));
}

struct Small {
    AthleteId ada{};
    LiftId pull{};
    DeviceId encoder{};
    BlockId winter{};
    TestKindId jump{};
    StationId rack{};
    SessionId first{}, second{};
};

constexpr Date march(unsigned day) {
    return {std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day{day}};
}

Small fillSmall(Log& log) {
    Small s;
    log.together([&] {
        s.ada = log.add(Athlete{.name = "Ada"});
        s.pull = log.add(Lift{.name = "Pull"});
        s.encoder = log.add(Device{.name = "Encoder"});
        s.winter = log.add(Block{.name = "Winter", .first = march(1), .last = march(30)});
        TestKind jump;
        jump.name = "Jump";
        jump.unit = "m";
        s.jump = log.add(jump);
        s.rack = log.add(Station{.name = "Rack", .lift = s.pull});
        log.add(
            Equipment{.name = "hall", .bars = {{.name = "bar", .mass = ExactMass{2'000'000'000}}}});
        s.first = log.add(SessionHead{.athlete = s.ada, .date = march(4)});
        s.second = log.add(SessionHead{.athlete = s.ada, .date = march(6)});
        for (const SessionId session : {s.first, s.second}) {
            log.add(session, s.pull, Set{.load = Mass{40'000}, .reps = {{.velocity = 1.0}}});
            log.add(session, s.pull, Set{.load = Mass{60'000}, .reps = {{.velocity = 0.8}}});
            log.setConditions(session, s.pull, {.device = s.encoder});
        }
        Battery battery;
        battery.tests.push_back({.kind = s.jump, .attempts = {}, .conditions = {.place = "hall"}});
        battery.tests[0].attempts.push_back({BodySide::Both, 2.1, {}, {}, {}});
        battery.gaps.push_back({.lift = s.pull, .load = Mass{80'000}, .reason = "no plates"});
        log.setBattery(s.first, battery);
        log.setCheckLoads(s.ada, s.pull, {Mass{40'000}});
        log.setRoster({.station = s.rack, .day = march(4), .athletes = {s.ada}});
    });
    return s;
}
} // namespace

class TestIdentities : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aLogComesBackTheSame_data() {
        QTest::addColumn<unsigned>("seed");
        QTest::addColumn<int>("setsHeld");
        for (unsigned seed = 1; seed <= 5; ++seed)
            for (const int held : {0, 4, 16384})
                QTest::addRow("log %u, %d sets held", seed, held) << seed << held;
    }
    void aLogComesBackTheSame() {
        QFETCH(unsigned, seed);
        QFETCH(int, setsHeld);
        const CsvFiles files;
        const Log log = diceLog(files, seed);
        const auto tables = exported(log, files);
        Log back = files.newLog("back.slopebook");
        ImportSettings settings;
        settings.setsHeld = static_cast<std::size_t>(setsHeld);
        const auto report = importTidy(back, tables, settings);
        QVERIFY(report.columnsNotUsed.empty());
        const Living before = livingIn(log), now = livingIn(back);
        QVERIFY(before.size() > 30);
        QCOMPARE(now.size(), before.size());
        for (const auto& [uuid, one] : before) {
            QVERIFY2(now.contains(uuid), one.first.c_str());
            QVERIFY2(now.at(uuid) == one, one.first.c_str());
        }
        QVERIFY(back.check().empty());
        // And once more: nothing is written.
        QVERIFY(importTidy(back, tables, settings).addedNothing());
        QVERIFY(livingIn(back) == now);
        // Out again: the same table.
        exported(back, files, "again");
        const auto sorted = [&](const std::string& file) {
            std::vector<std::string> lines;
            std::istringstream text(files.read(file));
            for (std::string line; std::getline(text, line);)
                lines.push_back(line);
            std::ranges::sort(lines);
            return lines;
        };
        QCOMPARE(sorted("again/identities.csv"), sorted("out/identities.csv"));
    }

    // A thing that was edited for years: its trail is longer than a cell of a table or of a sheet
    // may be, and than SQLite's rows were; the log is sound, one more edit is taken, and it goes
    // out and comes back whole.
    void aThingOfManyEditsComesBack() {
        const CsvFiles files;
        Log log = files.newLog();
        tests::import(files, log, tests::tidyHeader + "2026-03-14,Ada,Pull,1,40,1,1.0\n");
        const auto ada = log.athletes().front();
        Sixteen uuid{};
        log::Trail trail;
        log::visitIdentities(log, [&](const log::Identity& one) {
            if (one.place.kind == "athlete") {
                uuid = one.uuid;
                trail = one.trail;
            }
        });
        const Sixteen said = trail.back().hash;
        for (int i = 0; i < 40'000; ++i)
            log::extend(trail, i % 2 == 0 ? log::hashOf("otherwise") : said);
        log.together([&] {
            log::adopt(log::connectionOf(log), {.kind = "athlete", .one = raw(ada.id)}, uuid,
                       trail);
        });
        Athlete other = ada.value;
        other.note = "after all that";
        log.change(ada.id, other);
        QVERIFY(log.check().empty());
        const Living before = livingIn(log);
        QCOMPARE(before.at(uuid).second.size(), std::size_t(40'002));
        Log back = files.newLog("back.slopebook");
        importTidy(back, exported(log, files), {});
        QVERIFY(livingIn(back) == before);
        QVERIFY(back.check().empty());
        // no cell is longer than a sheet's may be
        std::istringstream text(files.read("out/identities.csv"));
        std::size_t longest = 0, rows = 0;
        for (std::string line; std::getline(text, line); ++rows)
            longest = std::max(longest, line.size());
        QVERIFY2(longest < 32'000 && rows > 100, std::to_string(longest).c_str());
    }

    // A long trail that is cut off, or whose rows are in another order, is no trail.
    void rowsOfALongTrailBelongTogether() {
        const CsvFiles files;
        log::Trail trail;
        for (int i = 0; i < 4; ++i)
            log::extend(trail, log::hashOf(std::to_string(i)));
        const std::string hex = log::hexOf(log::bytesOf(trail));
        const std::string uuid = "6ba7b810-9dad-41d1-80b4-00c04fd430c8";
        const std::string first = hex.substr(0, 128), second = hex.substr(128);
        const auto read = [&](const std::string& begin, const std::string& rest) {
            const auto file = files.write("identities.csv",
                                          "thing,uuid,name,trail\nathlete," + uuid + ",Ada," +
                                              begin + "\nathlete," + uuid + ",Ada," + rest + "\n");
            std::vector<log::Identity> all;
            readIdentities(file, [&](const log::Identity& one) { all.push_back(one); });
            return all;
        };
        const auto whole = read(first, second);
        QCOMPARE(whole.size(), std::size_t(1));
        QVERIFY(whole[0].trail == trail);
        for (const auto& [one, two] : {std::pair{second, first}, std::pair{first, second + "0"},
                                       std::pair{first, std::string("xy")}})
            QVERIFY_THROWS_EXCEPTION(BadInput, read(one, two));
    }

    // A row that stands there twice is no longer trail, and no second thing.
    void aRowTwiceIsRefused_data() {
        QTest::addColumn<QString>("rows");
        QTest::addColumn<int>("line");
        log::Trail trail;
        for (int i = 0; i < 4; ++i)
            log::extend(trail, log::hashOf(std::to_string(i)));
        const QString hex = QString::fromStdString(log::hexOf(log::bytesOf(trail)));
        const QString begin = QStringLiteral("athlete,6ba7b810-9dad-41d1-80b4-00c04fd430c8,Ada,");
        const QString whole = begin + hex, first = begin + hex.left(128),
                      second = begin + hex.mid(128);
        QTest::newRow("whole") << whole + u'\n' + whole << 3;
        QTest::newRow("without trails") << begin + u'\n' + begin << 3;
        QTest::newRow("the last of two") << first + u'\n' + second + u'\n' + second << 4;
    }
    void aRowTwiceIsRefused() {
        QFETCH(QString, rows);
        QFETCH(int, line);
        const CsvFiles files;
        const auto file =
            files.write("identities.csv", "thing,uuid,name,trail\n" + rows.toStdString() + "\n");
        try {
            readIdentities(file, [](const log::Identity&) {});
            QFAIL("taken");
        } catch (const BadInput& bad) {
            QCOMPARE(bad.where().line, line);
            QCOMPARE(english(bad.where().column), std::string("uuid"));
        }
    }

    void aStrangersTableGetsNewNames() {
        const CsvFiles files;
        Log log = files.newLog();
        tests::import(files, log, tests::tidyHeader + "2026-03-14,Ada,Pull,1,40,1,1.0\n");
        const Living all = livingIn(log);
        QCOMPARE(all.size(), 4U);
        for (const auto& [uuid, one] : all) {
            QCOMPARE(uuid[6] >> 4, 4); // RFC 9562, 4.2: random
            QCOMPARE(one.second.size(), 1U);
        }
    }

    void whatTheLogHasStaysOne() {
        const CsvFiles files;
        Log log = files.newLog();
        const Small s = fillSmall(log);
        const auto tables = exported(log, files);
        log.together([&] {
            log.change(s.ada, {.name = "Ada Long"});
            log.change(s.pull, {.name = "Bench pull"});
            log.change(s.encoder, {.name = "Old encoder"});
            log.change(s.winter, {.name = "Cold weeks", .first = march(1), .last = march(30)});
            TestKind jump = log.testKinds().at(0).value;
            jump.name = "Standing jump";
            log.change(s.jump, jump);
            Station rack = log.stations().at(0).value;
            rack.name = "Rack by the door";
            log.change(s.rack, rack);
            auto hall = log.equipment().at(0);
            hall.value.name = "old hall";
            log.change(hall.id, hall.value);
            SessionHead head = log.session(s.second).head.value;
            head.date = march(9);
            log.change(s.second, head);
            // The days change places, too.
            head = log.session(s.first).head.value;
            head.date = march(6);
            log.change(s.first, head);
        });
        const Living before = livingIn(log);
        const std::string told = tests::tell(log);
        for (const std::size_t held : {std::size_t{0}, std::size_t{16384}}) {
            ImportSettings settings;
            settings.setsHeld = held;
            QVERIFY(importTidy(log, tables, settings).addedNothing());
            QCOMPARE(tests::tell(log), told);
            QVERIFY(livingIn(log) == before);
        }
        QVERIFY(log.check().empty());
    }

    void whatWasChangedInTheTableIsAStepMore() {
        const CsvFiles files;
        const Log log = [&] {
            Log made = files.newLog();
            fillSmall(made);
            return made;
        }();
        const auto tables = exported(log, files);
        replaceIn(files, "out/athletes.csv", "Ada,", "Ada,tall");
        replaceIn(files, "out/reps.csv", ",60,", ",62.5,");
        Log back = files.newLog("back.slopebook");
        importTidy(back, tables, {});
        const Living before = livingIn(log), now = livingIn(back);
        int steps = 0;
        for (const auto& [uuid, one] : before) {
            const auto& came = now.at(uuid);
            if (came == one)
                continue;
            ++steps;
            QCOMPARE(came.second.size(), one.second.size() + 1);
            QVERIFY(came.second.front() == one.second.front());
        }
        QCOMPARE(steps, 2);
        QVERIFY(back.check().empty());
    }

    void whatWasRemovedComesBackAsItself() {
        const CsvFiles files;
        Log log = files.newLog();
        const Small s = fillSmall(log);
        const Living before = livingIn(log);
        const auto tables = exported(log, files);
        log.remove(s.second);
        log.setCheckLoads(s.ada, s.pull, {});
        std::map<Sixteen, log::Trail> removed;
        log::visitCarried(log, [&](const log::Carried& one) {
            if (!one.alive)
                removed.emplace(one.uuid, one.trail);
        });
        QCOMPARE(removed.size(), 5U); // head, conditions, two sets, check load
        importTidy(log, tables, {});
        const Living now = livingIn(log);
        QCOMPARE(now.size(), before.size());
        for (const auto& [uuid, one] : before) {
            const auto& came = now.at(uuid);
            const auto gone = removed.find(uuid);
            QVERIFY(gone == removed.end() ? came == one
                                          : log::holds(came.second, log::revisionOf(gone->second)));
            QCOMPARE(came.second.size(), gone == removed.end() ? 1U : 3U);
        }
        QVERIFY(log.check().empty());
    }

    void anothersNamesAreTakenForNothingOfOnesOwn() {
        const CsvFiles files;
        Log log = files.newLog();
        fillSmall(log);
        const auto tables = exported(log, files);
        Log other = files.newLog("other.slopebook");
        const AthleteId ada = other.add(Athlete{.name = "Ada"});
        const Living own = livingIn(other);
        importTidy(other, tables, {});
        QCOMPARE(other.athletes().size(), 1U);
        QCOMPARE(other.athletes()[0].id, ada);
        const Living now = livingIn(other), theirs = livingIn(log);
        QVERIFY(now.at(own.begin()->first) == own.begin()->second);
        // What belongs to another Ada is not the same session; a lift is the same lift.
        for (const auto& [uuid, one] : now) {
            const bool ofAthlete = one.first != "lift" && one.first != "device" &&
                                   one.first != "test" && one.first != "block" &&
                                   one.first != "equipment" && one.first != "station" &&
                                   one.first != "roster";
            if (one.first != "roster")
                QCOMPARE(theirs.contains(uuid), !ofAthlete);
        }
        QVERIFY(other.check().empty());
    }

    void whatIsNoNameIsRefused_data() {
        QTest::addColumn<QString>("row");
        QTest::addColumn<QString>("column");
        QTest::newRow("no UUID") << "athlete,,,,Ada,,,,"
                                 << "uuid";
        QTest::newRow("cut") << "athlete,6ba7b810-9dad-11d1-80b4-00c04fd430,,,Ada,,,,"
                             << "uuid";
        QTest::newRow("digits") << "athlete,6ba7b810-9dad-11d1-80b4-00c04fd430cx,,,Ada,,,,"
                                << "uuid";
        QTest::newRow("dashes") << "athlete,6ba7b8109-dad-11d1-80b4-00c04fd430c8,,,Ada,,,,"
                                << "uuid";
        QTest::newRow("thing") << "club,6ba7b810-9dad-11d1-80b4-00c04fd430c8,,,Ada,,,,"
                               << "thing";
        QTest::newRow("trail") << "athlete,6ba7b810-9dad-11d1-80b4-00c04fd430c8,,,Ada,,,,abc"
                               << "trail";
        QTest::newRow("half a step")
            << "athlete,6ba7b810-9dad-11d1-80b4-00c04fd430c8,,,Ada,,,,00112233"
            << "trail";
        QTest::newRow("no first step")
            << "athlete,6ba7b810-9dad-11d1-80b4-00c04fd430c8,,,Ada,,,," + QString(64, u'0')
            << "trail";
        QTest::newRow("of what") << "session,6ba7b810-9dad-11d1-80b4-00c04fd430c8,x,,,,,,"
                                 << "of_uuid";
    }
    void whatIsNoNameIsRefused() {
        QFETCH(QString, row);
        QFETCH(QString, column);
        const CsvFiles files;
        Log log = files.newLog();
        const auto file =
            files.write("identities.csv",
                        "thing,uuid,of_uuid,with_uuid,name,date,number,check_load_kg,trail\n" +
                            row.toStdString() + "\n");
        const auto athletes = files.write("athletes.csv", "athlete,athlete_note\nAda,\n");
        try {
            importTidy(log, {athletes, file}, {});
            QFAIL("taken");
        } catch (const BadInput& bad) {
            QCOMPARE(bad.where().line, 2);
            QCOMPARE(QString::fromStdString(english(bad.where().column)), column);
        }
        QVERIFY(log.athletes().empty());
    }

    void aNameThatTwoClaimIsGivenOnce() {
        const CsvFiles files;
        Log log = files.newLog();
        const std::string uuid = "6ba7b810-9dad-41d1-80b4-00c04fd430c8";
        const auto file = files.write("identities.csv", "thing,uuid,name\nathlete," + uuid +
                                                            ",Ada\nathlete," + uuid + ",Bo\n");
        const auto athletes = files.write("athletes.csv", "athlete,athlete_note\nAda,\nBo,\n");
        importTidy(log, {file, athletes}, {});
        QCOMPARE(livingIn(log).size(), 2U);
        QVERIFY(livingIn(log).contains(*log::parseUuid(uuid)));
        QVERIFY(log.check().empty());
    }
};

QTEST_APPLESS_MAIN(TestIdentities)
#include "tst_identities.moc"
