// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/csvfiles.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::exchange;
using namespace slopebook::literals;
using tests::CsvFiles;
using tests::import;
using tests::tidyHeader;

namespace {

const std::string ladder = tidyHeader + "2026-03-14,Lane 3,Bench pull,1,40,1,1.12\n"
                                        "2026-03-14,Lane 3,Bench pull,1,40,2,1.09\n"
                                        "2026-03-14,Lane 3,Bench pull,2,60,1,0.87\n";

Date day(int year, unsigned month, unsigned d) {
    return Date{std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{d}};
}

log::SessionRecord onlySession(const log::Log& log) {
    const auto sessions = log.sessions(log.athletes().at(0).id);
    if (sessions.size() != 1)
        throw std::runtime_error("not one session");
    return log.session(sessions[0].id);
}

std::vector<Set> sets(const log::SessionRecord& record) {
    std::vector<Set> list;
    for (const auto& placed : record.sets)
        list.push_back(placed.set);
    return list;
}

} // namespace

class TestTidyImport : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void takesALadder() {
        const CsvFiles files;
        auto log = files.newLog();
        const auto report = import(files, log, ladder);
        QCOMPARE(report.rows, 3);
        QCOMPARE(report.setsAdded, 2);
        QCOMPARE(report.repsAdded, 3);
        QCOMPARE(report.sessionsAdded, 1);
        QCOMPARE(report.athletesMade, std::vector<std::string>{"Lane 3"});
        QCOMPARE(report.liftsMade, std::vector<std::string>{"Bench pull"});
        QVERIFY(report.flagged.empty() && report.columnsNotUsed.empty());
        const auto record = onlySession(log);
        QVERIFY(record.head.value.date == day(2026, 3, 14));
        const std::vector<Set> expected{
            {.load = 40_kg, .excluded = {}, .note = {}, .reps = {{1.12, ""}, {1.09, ""}}},
            {.load = 60_kg, .excluded = {}, .note = {}, .reps = {{0.87, ""}}}};
        QVERIFY(sets(record) == expected);
        QVERIFY(log.check().empty());
    }

    void takesColumnsAndRowsInAnyOrder() {
        const CsvFiles files;
        auto log = files.newLog();
        const auto report = import(files, log,
                                   "velocity,rep,colour,set,load_kg,lift,athlete,date,weather\n"
                                   "0.87,1,red,2,60,Bench pull,Lane 3,2026-03-14,dry\n"
                                   "1.09,2,red,1,40,Bench pull,Lane 3,2026-03-14,dry\n"
                                   ",,,,,,,,\n"
                                   "1.12,1,red,1,40,Bench pull,Lane 3,2026-03-14,dry\n");
        QCOMPARE(report.columnsNotUsed, (std::vector<std::string>{"colour", "weather"}));
        auto other = files.newLog("other.slopebook");
        import(files, other, ladder);
        QVERIFY(sets(onlySession(log)) == sets(onlySession(other)));
    }

    void takesTheOptionalColumns() {
        const CsvFiles files;
        auto log = files.newLog();
        const auto report = import(
            files, log,
            "date,athlete,lift,set,load_kg,rep,velocity,session,device,velocity_kind,place,block,"
            "body_mass_kg,maximum,excluded,set_excluded,note,session_note\n"
            "2026-03-14,Lane 3,Squat,1,60,1,1.1,2,Encoder 1,propulsive,Hall,Spring,81.45,,bad "
            "groove,,first,windy\n"
            "2026-03-14,Lane 3,Squat,1,60,2,1.2,2,,,,,,,,,second,\n"
            "2026-03-14,Lane 3,Squat,2,80,1,0.9,2,,,,,,,,knee,,\n"
            "2026-03-21,Lane 3,Squat,1,120,1,0.31,,,,,Spring,,1,,,,\n");
        QCOMPARE(report.blocksMade, std::vector<std::string>{"Spring"});
        QCOMPARE(report.devicesMade, std::vector<std::string>{"Encoder 1"});
        QCOMPARE(log.lifts().at(0).value.kind, VelocityKind::Propulsive);
        const Block block = log.blocks().at(0).value;
        QVERIFY(block.first == day(2026, 3, 14) && block.last == day(2026, 3, 21));
        const auto sessions = log.sessions(log.athletes().at(0).id);
        const SessionHead& head = sessions.at(0).value;
        QCOMPARE(head.ordinal, 2);
        const auto under = log.session(log.sessions(log.athletes().at(0).id).at(0).id).conditions;
        QCOMPARE(under.at(0).conditions.place, std::string("Hall"));
        QCOMPARE(head.note, std::string("windy"));
        QVERIFY(head.bodyMass == Mass{81'450} &&
                under.at(0).conditions.device == log.devices().at(0).id);
        const auto first = log.session(sessions.at(0).id).sets;
        const Set expected{.load = 60_kg,
                           .excluded = {},
                           .note = "first; second",
                           .reps = {{1.1, "bad groove"}, {1.2, ""}}};
        QVERIFY(first.at(0).set == expected);
        QCOMPARE(first.at(1).set.excluded, std::string("knee"));
        QVERIFY(log.session(sessions.at(1).id).sets.at(0).set.trueMaximum);
    }

    void takesColumnsByOtherNames() {
        const CsvFiles files;
        auto log = files.newLog();
        ImportSettings settings;
        settings.columns = parseColumnMap("load_kg=Gewicht,velocity=v");
        const auto report = import(files, log,
                                   "date,athlete,lift,set,Gewicht,rep,v,velocity\n"
                                   "2026-03-14,Lane 3,Bench pull,1,40,1,1.12,9\n",
                                   settings);
        QCOMPARE(report.columnsNotUsed, std::vector<std::string>{"velocity"});
        QCOMPARE(onlySession(log).sets.at(0).set.reps.at(0).velocity, 1.12);
    }

    void theSameFileTwiceAddsNothing() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, ladder);
        const auto before = onlySession(log);
        const long version = log.dataVersion();
        const auto report = import(files, log, ladder);
        QVERIFY(report.addedNothing());
        QCOMPARE(report.setsAlreadyThere, 2);
        QVERIFY(onlySession(log) == before);
        Q_UNUSED(version)
    }

    void aGrownFileAddsOnlyWhatIsNew() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, ladder);
        const auto report = import(files, log,
                                   ladder + "2026-03-14,Lane 3,Bench pull,2,60,2,0.85\n"
                                            "2026-03-14,Lane 3,Bench pull,3,80,1,0.6\n"
                                            "2026-03-21,Lane 3,Bench pull,1,40,1,1.15\n");
        QCOMPARE(report.setsAdded, 2);
        QCOMPARE(report.repsAdded, 3);
        QCOMPARE(report.sessionsAdded, 1);
        QCOMPARE(report.setsAlreadyThere, 2);
        QVERIFY(report.athletesMade.empty());
        const auto sessions = log.sessions(log.athletes().at(0).id);
        QCOMPARE(log.session(sessions.at(0).id).sets.size(), std::size_t(3));
        QCOMPARE(log.session(sessions.at(0).id).sets.at(1).set.reps.size(), std::size_t(2));
    }

    void aPartOfWhatIsThereAddsNothing() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, ladder);
        QVERIFY(import(files, log, tidyHeader + "2026-03-14,Lane 3,Bench pull,1,40,1,1.12\n")
                    .addedNothing());
    }

    // What a coach excluded in the program after the import is not undone by a blank cell.
    void keepsWhatWasExcludedSince() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, ladder);
        auto placed = onlySession(log).sets.at(0);
        placed.set.reps.at(1).excluded = "missed the groove";
        placed.set.note = "slippery";
        log.change(placed.id, placed.set);
        QVERIFY(import(files, log, ladder).addedNothing());
        QVERIFY(onlySession(log).sets.at(0).set == placed.set);
    }

    void fillsInWhatWasBlank() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, ladder);
        const auto report = import(files, log,
                                   "date,athlete,lift,set,load_kg,rep,velocity,place,note\n"
                                   "2026-03-14,Lane 3,Bench pull,1,40,1,1.12,Hall,fast\n");
        QCOMPARE(report.filledIn.size(), std::size_t(2));
        QCOMPARE(onlySession(log).conditions.at(0).conditions.place, std::string("Hall"));
        QCOMPARE(onlySession(log).sets.at(0).set.note, std::string("fast"));
    }

    void takesFilesTogetherOrNotAtAll() {
        const CsvFiles files;
        auto log = files.newLog();
        const auto good = files.write("good.csv", ladder);
        const auto bad =
            files.write("bad.csv", tidyHeader + "2026-03-15,Lane 4,Bench pull,1,40,1,92\n");
        QVERIFY_THROWS_EXCEPTION(BadInput, importTidy(log, {good, bad}, {}));
        QVERIFY(log.athletes().empty() && log.lifts().empty());
    }

    // A contradiction with the log is found while writing: what was written before it is taken
    // back.
    void takesBackWhatWasWritten() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, ladder);
        const auto before = onlySession(log);
        QVERIFY_THROWS_EXCEPTION(BadInput,
                                 import(files, log,
                                        tidyHeader + "2026-03-13,Ada,Squat,1,40,1,1.12\n"
                                                     "2026-03-14,Lane 3,Bench pull,2,60,1,0.88\n"));
        QCOMPARE(log.athletes().size(), std::size_t(1));
        QCOMPARE(log.lifts().size(), std::size_t(1));
        QVERIFY(onlySession(log) == before);
    }

    void twoFilesMayOverlap() {
        const CsvFiles files;
        auto log = files.newLog();
        const auto first = files.write("first.csv", ladder);
        const auto second =
            files.write("second.csv", ladder + "2026-03-14,Lane 3,Bench pull,3,80,1,0.6\n");
        const auto report = importTidy(log, {first, second}, {});
        QCOMPARE(report.setsAdded, 3);
        QCOMPARE(report.repsAdded, 4);
    }

    void dryRunWritesNothing() {
        const CsvFiles files;
        auto log = files.newLog();
        ImportSettings settings;
        settings.dryRun = true;
        const auto report = import(files, log, ladder, settings);
        QCOMPARE(report.setsAdded, 2);
        QVERIFY(log.athletes().empty() && log.lifts().empty());
    }

    void setsThresholds() {
        const CsvFiles files;
        auto log = files.newLog();
        ImportSettings settings;
        settings.publishedMvt = [](const std::string& lift, VelocityKind kind) {
            return lift == "Bench pull" && kind == VelocityKind::Mean
                       ? std::optional(Mvt{.value = 0.52,
                                           .sd = 0.04,
                                           .origin = Mvt::Origin::Published,
                                           .source = "a paper"})
                       : std::nullopt;
        };
        import(files, log, ladder, settings);
        QCOMPARE(log.lifts().at(0).value.mvt->origin, Mvt::Origin::Published);
        settings.mvt["bench PULL"] = 0.5;
        const auto report = import(files, log, ladder, settings);
        QCOMPARE(report.filledIn.size(), std::size_t(1));
        QCOMPARE(log.lifts().at(0).value.mvt->value, 0.5);
        QCOMPARE(log.lifts().at(0).value.mvt->origin, Mvt::Origin::Coach);
        QVERIFY(import(files, log, ladder, settings).addedNothing());
        settings.mvt = {{"Snatch", 1.0}};
        QVERIFY_THROWS_EXCEPTION(BadInput, import(files, log, ladder, settings));
        settings.mvt = {{"Bench pull", 0.0}};
        QVERIFY_THROWS_EXCEPTION(BadInput, import(files, log, ladder, settings));
    }

    void namesMeanTheSameInAnyCase() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, ladder);
        const auto report = import(files, log,
                                   tidyHeader + "2026-03-15,LANE 3,bench Pull,1,40,1,1.1\n"
                                                "2026-03-15,lane 3,Bench pull,2,60,1,0.9\n");
        QVERIFY(report.athletesMade.empty() && report.liftsMade.empty());
        QCOMPARE(report.sessionsAdded, 1);
    }

    void longensAKnownBlock() {
        const CsvFiles files;
        auto log = files.newLog();
        log.add(Block{.name = "Spring", .first = day(2026, 3, 1), .last = day(2026, 3, 10)});
        const auto report = import(files, log,
                                   "date,athlete,lift,set,load_kg,rep,velocity,block\n"
                                   "2026-03-05,Lane 3,Squat,1,40,1,1.1,Spring\n"
                                   "2026-03-14,Lane 3,Squat,1,40,1,1.1,spring\n");
        QVERIFY(report.blocksMade.empty());
        QCOMPARE(report.filledIn,
                 std::vector<std::string>{"block Spring now from 2026-03-01 to 2026-03-14"});
        QVERIFY(log.blocks().at(0).value.last == day(2026, 3, 14));
    }

    void flagsWhatIsHardToBelieve() {
        const CsvFiles files;
        auto log = files.newLog();
        const auto report = import(files, log,
                                   tidyHeader + "2026-03-14,Lane 3,Squat,1,40,1,4\n"
                                                "2026-03-14,Lane 3,Squat,2,600,1,0.3\n"
                                                "1914-03-14,Lane 3,Squat,1,40,1,3.99\n");
        std::vector<std::string> flagged;
        for (const Words& each : report.flagged)
            flagged.push_back(english(each));
        QCOMPARE(flagged, (std::vector<std::string>{"reps.csv, line 2: a speed of 4 m/s",
                                                    "reps.csv, line 3: a load of 600 kg",
                                                    "reps.csv, line 4: the date is 1914-03-14"}));
        QCOMPARE(report.setsAdded, 3);
    }

    void marksARepeatBeforeWhatItRepeats() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log,
               "date,athlete,lift,set,load_kg,rep,velocity,repeat_of,session\n"
               "2026-03-16,Lane 3,Squat,1,40,1,1.1,2026-03-14#2,\n"
               "2026-03-14,Lane 3,Squat,1,40,1,1.1,,1\n"
               "2026-03-14,Lane 3,Squat,1,40,1,1.1,,2\n");
        const auto sessions = log.sessions(log.athletes().at(0).id);
        QCOMPARE(sessions.size(), std::size_t(3));
        QCOMPARE(sessions.at(1).value.ordinal, 2);
        QVERIFY(sessions.at(2).value.repeatOf == sessions.at(1).id);
        QVERIFY(log.check().empty());
    }

    void takesTheFormulaGuardOff() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log,
               "date,athlete,lift,set,load_kg,rep,velocity,note\n"
               "2026-03-14,'=Lane 3,Squat,1,40,1,1.1,'-5 kg\n");
        QCOMPARE(log.athletes().at(0).value.name, std::string("=Lane 3"));
        QCOMPARE(onlySession(log).sets.at(0).set.note, std::string("-5 kg"));
    }

    void takesTheTablesBesideTheReps() {
        const CsvFiles files;
        auto log = files.newLog();
        ImportSettings settings;
        settings.publishedMvt = [](const std::string&, VelocityKind) {
            return std::optional(Mvt{
                .value = 0.24, .sd = {}, .origin = Mvt::Origin::Published, .source = "a paper"});
        };
        // The reps first: the order of the files does not matter.
        const auto report = importTidy(
            log,
            {files.write("reps.csv", ladder),
             files.write("lifts.csv", "lift,point_rule,velocity_kind,mvt,mvt_origin,"
                                      "smallest_velocity,smallest_1rm_kg\n"
                                      "Bench pull,mean,mean,0.5,coach,0.05,5\n"
                                      "Squat,fastest,mean,,published,,\n"),
             files.write("blocks.csv", "block,first_day,last_day,ceiling_kg,trained,"
                                       "sessions_a_week_fewest,sessions_a_week_most,block_note\n"
                                       "Winter,2026-01-01,2026-03-20,62.5,jumps,2,2.5,flood\n"
                                       "Spring,2026-03-21,2026-04-20,,,3,,\n"),
             files.write("check_loads.csv", "athlete,lift,check_load_kg\n"
                                            "Lane 3,Bench pull,60\nlane 3,Bench pull,40\n")},
            settings);
        QCOMPARE(report.checkLoadsAdded, 2);
        const auto lifts = log.lifts();
        QCOMPARE(lifts.at(0).value.rule, PointRule::Mean);
        QCOMPARE(lifts.at(0).value.smallestOneRm, std::optional(5.0));
        QCOMPARE(lifts.at(1).value.mvt->value, 0.24);
        QVERIFY(log.blocks().at(0).value.ceiling == Mass{62'500});
        QCOMPARE(log.blocks().at(0).value.trained, "jumps");
        QVERIFY(log.blocks().at(0).value.aWeek == (SessionsAWeek{.fewest = 2, .most = 2.5}));
        QVERIFY(log.blocks().at(1).value.aWeek == (SessionsAWeek{.fewest = 3, .most = 3}));
        const std::vector<Mass> loads{40_kg, 60_kg};
        QVERIFY(log.checkLoads(log.athletes().at(0).id, lifts.at(0).id) == loads);
    }

    void readsAColumnMap() {
        const std::map<std::string, std::string> expected{{"load_kg", "Gewicht"},
                                                          {"velocity", "v"}};
        QVERIFY(parseColumnMap("load_kg=Gewicht,velocity=v") == expected);
        for (const char* wrong :
             {"", "load_kg", "load_kg=", "=v", "speed=v", "rep=a,rep=b", "rep=a,"})
            QVERIFY_THROWS_EXCEPTION(BadInput, parseColumnMap(wrong));
    }
};

QTEST_APPLESS_MAIN(TestTidyImport)
#include "tst_tidyimport.moc"
