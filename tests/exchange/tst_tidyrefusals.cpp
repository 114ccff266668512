// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that tidy import refuses: the line, the column, what was found, what was expected, and
// that nothing was written.
#include "core/exchange/faults.h"
#include "tests/exchange/csvfiles.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::exchange;
using tests::CsvFiles;
using tests::import;
using tests::tidyHeader;

class TestTidyRefusals : public QObject {
    Q_OBJECT

    static void addCell(const char* name, const char* row, const char* column, const char* found,
                        const char* expected) {
        add(name, tidyHeader + "2026-03-14,Lane 3,Squat,1,40,1,1.1\n" + row + "\n", 3, column,
            found, expected);
    }
    static void add(const char* name, const std::string& text, int line, const char* column,
                    const char* found, const char* expected) {
        QTest::newRow(name) << QByteArray::fromStdString(text) << line << QByteArray(column)
                            << QByteArray(found) << QByteArray(expected);
    }
    static void columns() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("line");
        QTest::addColumn<QByteArray>("column");
        QTest::addColumn<QByteArray>("foundPart");
        QTest::addColumn<QByteArray>("expectedPart");
    }
    static void refuses(log::Log& log, const CsvFiles& files) {
        QFETCH(QByteArray, text);
        QFETCH(int, line);
        QFETCH(QByteArray, column);
        QFETCH(QByteArray, foundPart);
        QFETCH(QByteArray, expectedPart);
        const auto athletes = log.athletes();
        const auto lifts = log.lifts();
        try {
            import(files, log, text.toStdString());
            QFAIL("taken");
        } catch (const BadInput& error) {
            QVERIFY2(QByteArray(error.what()).contains("reps.csv"), error.what());
            QCOMPARE(error.where().line, long(line));
            QCOMPARE(QByteArray::fromStdString(english(error.where().column)), column);
            QVERIFY2(QByteArray::fromStdString(english(error.found())).contains(foundPart),
                     error.what());
            QVERIFY2(QByteArray::fromStdString(english(error.expected())).contains(expectedPart),
                     error.what());
        }
        QVERIFY(log.athletes() == athletes);
        QVERIFY(log.lifts() == lifts);
    }

private Q_SLOTS:
    void refusesACell_data() {
        columns();
        const char* speed = "above 0 and under 10, with a decimal point";
        addCell("a decimal comma", "2026-03-14,Lane 3,Squat,2,60,1,\"0,92\"", "velocity",
                "\"0,92\"", speed);
        addCell("centimetres a second", "2026-03-14,Lane 3,Squat,2,60,1,92", "velocity", "\"92\"",
                speed);
        addCell("ten", "2026-03-14,Lane 3,Squat,2,60,1,10", "velocity", "\"10\"", speed);
        addCell("nought", "2026-03-14,Lane 3,Squat,2,60,1,0", "velocity", "\"0\"", speed);
        addCell("below nought", "2026-03-14,Lane 3,Squat,2,60,1,-0.5", "velocity", "\"-0.5\"",
                speed);
        addCell("nan", "2026-03-14,Lane 3,Squat,2,60,1,nan", "velocity", "\"nan\"", speed);
        addCell("inf", "2026-03-14,Lane 3,Squat,2,60,1,inf", "velocity", "\"inf\"", speed);
        addCell("hex", "2026-03-14,Lane 3,Squat,2,60,1,0x1", "velocity", "\"0x1\"", speed);
        addCell("a unit", "2026-03-14,Lane 3,Squat,2,60,1,0.9 m/s", "velocity", "\"0.9 m/s\"",
                speed);
        addCell("no speed", "2026-03-14,Lane 3,Squat,2,60,1,", "velocity", "nothing", speed);
        addCell("no rep", "2026-03-14,Lane 3,Squat,2,60,,1.0", "rep", "nothing", "rep's number");
        addCell("rep nought", "2026-03-14,Lane 3,Squat,2,60,0,1.0", "rep", "\"0\"", "from 1 on");
        addCell("half a rep", "2026-03-14,Lane 3,Squat,2,60,1.5,1.0", "rep", "\"1.5\"", "from 1");
        addCell("no set", "2026-03-14,Lane 3,Squat,,60,1,1.0", "set", "nothing", "set's number");
        addCell("no load", "2026-03-14,Lane 3,Squat,2,,1,1.0", "load_kg", "nothing", "kg from 0");
        addCell("a load below nought", "2026-03-14,Lane 3,Squat,2,-5,1,1.0", "load_kg", "\"-5\"",
                "kg from 0");
        addCell("a load past belief", "2026-03-14,Lane 3,Squat,2,2001,1,1.0", "load_kg", "\"2001\"",
                "to 2000");
        addCell("no date", ",Lane 3,Squat,2,60,1,1.0", "date", "nothing", "2026-03-14");
        addCell("a date the other way", "14.03.2026,Lane 3,Squat,2,60,1,1.0", "date",
                "\"14.03.2026\"", "year-month-day");
        addCell("a day that is none", "2026-02-30,Lane 3,Squat,2,60,1,1.0", "date",
                "\"2026-02-30\"", "year-month-day");
        addCell("no athlete", "2026-03-14,,Squat,2,60,1,1.0", "athlete", "nothing", "a name");
        addCell("a blank lift", "2026-03-14,Lane 3,\"  \",2,60,1,1.0", "lift", "\"  \"", "a name");
        addCell("a decimal comma without quotes", "2026-03-14,Lane 3,Squat,2,60,1,0,92", "",
                "8 cells", "7 as in the header");
        addCell("a cell too few", "2026-03-14,Lane 3,Squat,2,60,1", "", "6 cells", "7");
    }
    void refusesACell() {
        const CsvFiles files;
        auto log = files.newLog();
        refuses(log, files);
    }

    void refusesAnOptionalCell_data() {
        columns();
        const auto cell = [](const char* name, const char* column, const char* value,
                             const char* expected) {
            add(name,
                "date,athlete,lift,set,load_kg,rep,velocity," + std::string(column) +
                    "\n2026-03-14,Lane 3,Squat,1,40,1,1.1," + value + "\n",
                2, column, value, expected);
        };
        cell("a kind that is none", "velocity_kind", "average", "mean, propulsive or peak");
        cell("a body mass of nought", "body_mass_kg", "0", "body mass in kg");
        cell("a body mass in words", "body_mass_kg", "heavy", "body mass in kg");
        cell("maximum yes", "maximum", "yes", "1, 0 or nothing");
        cell("session nought", "session", "0", "from 1 on");
        cell("a repeat of no session", "repeat_of", "2026-03-01", "another session");
        cell("a repeat of itself", "repeat_of", "2026-03-14", "another session");
        cell("a repeat of no date", "repeat_of", "last week", "2026-03-14");
        add("an excluded rep without a number",
            "date,athlete,lift,set,load_kg,rep,velocity,excluded\n"
            "2026-03-14,Lane 3,Squat,1,40,,,slipped\n",
            2, "rep", "nothing", "number of the rep");
    }
    void refusesAnOptionalCell() {
        const CsvFiles files;
        auto log = files.newLog();
        refuses(log, files);
    }

    void refusesAHeader_data() {
        columns();
        add("a column missing", "date,athlete,lift,set,load_kg,rep\n", 1, "velocity",
            "date, athlete", "a column named velocity");
        add("semicolons", "date;athlete;lift;set;load_kg;rep;velocity\n", 1, "date", "semicolons",
            "commas");
        add("a column twice", "date,athlete,lift,set,load_kg,rep,velocity,velocity\n", 1,
            "velocity", "two columns", "one");
        add("nothing at all", "", 1, "", "an empty file", "header row");
        add("something else", "a,b,c\n1,2,3\n", 1, "date", "a, b, c", "a column named date");
    }
    void refusesAHeader() {
        const CsvFiles files;
        auto log = files.newLog();
        refuses(log, files);
    }

    // Both lines are named: the second as the place, the first in what was expected.
    void refusesAContradiction_data() {
        columns();
        addCell("a rep twice", "2026-03-14,Lane 3,Squat,1,40,1,1.1", "rep", "rep 1", "line 2");
        addCell("a rep with two speeds", "2026-03-14,Lane 3,Squat,1,40,1,1.2", "velocity",
                "1.2 m/s", "line 2 has it with 1.1");
        addCell("two loads for one set", "2026-03-14,Lane 3,Squat,1,42.5,2,1.1", "load_kg", "42.5",
                "40 kg, as line 2");
        const auto two = [](const char* name, const char* column, const char* first,
                            const char* second, const char* expected) {
            add(name,
                "date,athlete,lift,set,load_kg,rep,velocity," + std::string(column) +
                    "\n2026-03-14,Lane 3,Squat,1,40,1,1.1," + first +
                    "\n2026-03-14,Lane 3,Squat,1,40,2,1.1," + second + "\n",
                3, column, second, expected);
        };
        two("two devices in one session", "device", "Encoder 1", "Encoder 2",
            "\"Encoder 1\", as line 2");
        two("two kinds of velocity", "velocity_kind", "mean", "peak", "\"mean\", as line 2");
        two("two places", "place", "Hall", "Shed", "\"Hall\", as line 2");
        two("two body masses", "body_mass_kg", "80", "81", "80, as line 2");
        two("a maximum and none", "maximum", "1", "0", "1, as line 2");
        two("two reasons for one set", "set_excluded", "knee", "hip", "\"knee\", as line 2");
        two("two session notes", "session_note", "dry", "wet", "\"dry\", as line 2");
    }
    void refusesAContradiction() {
        const CsvFiles files;
        auto log = files.newLog();
        refuses(log, files);
    }

    void refusesWhatTheLogContradicts_data() {
        columns();
        const std::string header = "date,athlete,lift,set,load_kg,rep,velocity,";
        const auto row = [&](const char* name, const char* column, const char* cells,
                             const char* found, const char* expected, const char* extra = "note") {
            add(name, header + extra + "\n2026-03-14,Lane 3,Squat," + cells + "\n", 2, column,
                found, expected);
        };
        row("another speed", "velocity", "1,40,1,1.2,", "1.2 m/s", "1.1 m/s, as the log has");
        row("another load", "load_kg", "1,50,1,1.1,", "50 kg", "40 kg, as the log has for set 1");
        row("another device", "device", "1,40,1,1.1,Encoder 2", "Encoder 2", "\"Encoder 1\"",
            "device");
        row("another body mass", "body_mass_kg", "1,40,1,1.1,82", "82 kg", "81 kg", "body_mass_kg");
        row("another place", "place", "1,40,1,1.1,Shed", "Shed", "\"Hall\"", "place");
        row("a maximum", "maximum", "1,40,1,1.1,1", "1", "0, as the log has", "maximum");
        row("an excluded rep", "excluded", "1,40,1,1.1,slipped", "slipped", "nothing", "excluded");
        row("an excluded set", "set_excluded", "1,40,1,1.1,knee", "knee", "nothing",
            "set_excluded");
        row("another kind", "velocity_kind", "9,40,1,1.1,peak", "peak",
            "\"mean\", in which the log has Squat", "velocity_kind");
    }
    void refusesWhatTheLogContradicts() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log,
               "date,athlete,lift,set,load_kg,rep,velocity,device,body_mass_kg,place\n"
               "2026-03-14,Lane 3,Squat,1,40,1,1.1,Encoder 1,81,Hall\n");
        refuses(log, files);
    }

    void refusesATableThatTheLogContradicts_data() {
        columns();
        add("another point rule", "lift,point_rule\nSquat,mean\n", 2, "point_rule", "mean",
            "fastest");
        add("another kind", "lift,point_rule,velocity_kind\nSquat,fastest,peak\n", 2,
            "velocity_kind", "peak", "mean");
        add("another smallest change", "lift,point_rule,smallest_velocity\nSquat,fastest,0.04\n", 2,
            "smallest_velocity", "0.04", "0.05");
        add("another threshold", "lift,point_rule,mvt,mvt_origin\nSquat,fastest,0.3,coach\n", 2,
            "mvt", "0.3", "0.25");
        add("another ceiling",
            "block,first_day,last_day,ceiling_kg\nWinter,2026-01-01,2026-02-01,"
            "80\n",
            2, "ceiling_kg", "80 kg", "70 kg");
        add("another training",
            "block,first_day,last_day,trained\nWinter,2026-01-01,2026-02-01,slow\n", 2, "trained",
            "slow", "fast");
        add("other sessions a week",
            "block,first_day,last_day,sessions_a_week_fewest,sessions_a_week_most\n"
            "Winter,2026-01-01,2026-02-01,2,2.5\n",
            2, "sessions_a_week_fewest", "2 to 2.5", "2 to 3 sessions a week");
        add("fewer a week at the most",
            "block,first_day,last_day,sessions_a_week_fewest,sessions_a_week_most\n"
            "Spring,2026-03-01,2026-03-02,3,2.5\n",
            2, "sessions_a_week_most", "2.5", "no fewer than the fewest");
        add("a third of a session a week",
            "block,first_day,last_day,sessions_a_week_fewest\nSpring,2026-03-01,2026-03-02,2.3\n",
            2, "sessions_a_week_fewest", "2.3", "in halves");
        add("no session a week",
            "block,first_day,last_day,sessions_a_week_fewest\nSpring,2026-03-01,2026-03-02,0\n", 2,
            "sessions_a_week_fewest", "0", "from 0.5 to 21");
        add("a range in one cell",
            "block,first_day,last_day,sessions_a_week_fewest\nSpring,2026-03-01,2026-03-02,2-3\n",
            2, "sessions_a_week_fewest", "2-3", "such as 2 or 2.5");
        add("the most alone",
            "block,first_day,last_day,sessions_a_week_most\nSpring,2026-03-01,2026-03-02,3\n", 2,
            "sessions_a_week_fewest", "nothing", "beside the most");
        add("a block that ends before it begins",
            "block,first_day,last_day\nSpring,2026-03-02,2026-03-01\n", 2, "last_day", "2026-03-01",
            "not before the first");
        add("a check load of nobody's", "athlete,lift,check_load_kg\nNobody,Squat,40\n", 2,
            "athlete", "Nobody", "a name that the log");
        add("an MVT source without a value",
            "lift,point_rule,mvt,mvt_source\nSnatch,fastest,,a paper\n", 2, "mvt", "nothing",
            "a speed");
    }
    void refusesATableThatTheLogContradicts() {
        const CsvFiles files;
        auto log = files.newLog();
        Lift lift;
        lift.name = "Squat";
        lift.smallestVelocity = 0.05;
        lift.mvt =
            Mvt{.value = 0.25, .sd = {}, .origin = Mvt::Origin::Coach, .source = "own squad"};
        log.add(lift);
        const auto day = [](unsigned month) {
            return Date{std::chrono::year{2026}, std::chrono::month{month}, std::chrono::day{1}};
        };
        log.add(Block{.name = "Winter",
                      .first = day(1),
                      .last = day(2),
                      .ceiling = Mass{70'000},
                      .trained = "fast",
                      .aWeek = SessionsAWeek{2, 3},
                      .note = {}});
        refuses(log, files);
    }

    // A file shows all that is wrong with it, each with its line and column; so do several files.
    void aFaultyFileShowsAllItsFaults() {
        const CsvFiles files;
        auto log = files.newLog();
        const auto reps =
            files.write("reps.csv", tidyHeader + "2026-03-14,Ann,Squat,1,40,1,1.1\n" // sound
                                                 "14.3.2026,Ann,Squat,1,40,2,\"1,1\"\n"
                                                 "2026-03-14,,Squat,0,-5,x,99\n"
                                                 "2026-03-14,Ann,Squat,1,40,1,1.2\n"
                                                 "2026-03-14,Ann,Squat,1,40\n"
                                                 "2026-03-14,Ann,Squat,1,60,3,1.1\n");
        const auto lifts = files.write("lifts.csv", "lift,point_rule\nSquat,best\n,fastest\n");
        const std::vector<std::pair<long, std::string>> ofLifts{{2, "point_rule"}, {3, "lift"}};
        const std::vector<std::pair<long, std::string>> ofReps{
            {3, "date"}, {3, "velocity"}, {4, "athlete"},  {4, "set"}, {4, "load_kg"},
            {4, "rep"},  {4, "velocity"}, {5, "velocity"}, {6, ""},    {7, "load_kg"}};
        try {
            importTidy(log, {lifts, reps}, {});
            QFAIL("taken");
        } catch (const Faults& faults) {
            std::vector<std::pair<long, std::string>> found;
            for (const BadInput& each : faults.kept()) {
                QCOMPARE(each.where().file,
                         (found.size() < ofLifts.size() ? lifts : reps).string());
                found.emplace_back(each.where().line, english(each.where().column));
            }
            auto all = ofLifts;
            all.insert(all.end(), ofReps.begin(), ofReps.end());
            QCOMPARE(found, all);
            QCOMPARE(faults.total(), all.size());
            QCOMPARE(faults.where().line, 2L);
        }
        QVERIFY(log.athletes().empty() && log.lifts().empty());
    }

    void soDoesOneThatContradictsTheLog() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log,
               tidyHeader + "2026-03-14,Ann,Squat,1,40,1,1.1\n"
                            "2026-03-14,Ann,Squat,2,60,1,0.9\n");
        try {
            importTidy(log,
                       {files.write("reps.csv", tidyHeader + "2026-03-14,Ann,Squat,1,45,1,1.1\n"
                                                             "2026-03-14,Bob,Squat,1,45,1,1.1\n"
                                                             "2026-03-14,Ann,Squat,2,60,1,0.8\n"),
                        files.write("loads.csv", "athlete,lift,check_load_kg\nNobody,Squat,60\n")},
                       {});
            QFAIL("taken");
        } catch (const Faults& faults) {
            QCOMPARE(faults.total(), std::size_t(3));
            QCOMPARE(faults.kept()[0].where().line, 2L);
            QCOMPARE(faults.kept()[1].where().line, 4L);
            QVERIFY(faults.kept()[2].where().file.ends_with("loads.csv"));
        }
        QCOMPARE(log.athletes().size(), std::size_t(1));
    }

    void manyFaultsAreCounted() {
        const CsvFiles files;
        auto log = files.newLog();
        std::string text = tidyHeader;
        for (int i = 0; i < 1000; ++i)
            text += "2026-03-14,Ann,Squat,1,40,1,99\n";
        try {
            import(files, log, text);
            QFAIL("taken");
        } catch (const Faults& faults) {
            QCOMPARE(faults.kept().size(), faultsKept);
            QCOMPARE(faults.total(), std::size_t(1000));
        }
    }

    void allMissingColumnsAreNamed() {
        const CsvFiles files;
        auto log = files.newLog();
        try {
            import(files, log, "date,athlete,set,rep,velocity\n");
            QFAIL("taken");
        } catch (const Faults& faults) {
            QCOMPARE(faults.total(), std::size_t(2));
            QCOMPARE(english(faults.kept()[0].where().column), std::string("lift"));
            QCOMPARE(english(faults.kept()[1].where().column), std::string("load_kg"));
        }
    }
};

QTEST_APPLESS_MAIN(TestTidyRefusals)
#include "tst_tidyrefusals.moc"
