// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "tests/exchange/csvfiles.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::exchange;
using namespace slopebook::literals;
using tests::CsvFiles;

namespace {

struct Case {
    CsvFiles files;
    log::Log log = files.newLog();
    ShapedReport last;

    // Reads a table as it is proposed, with what the coach says changed.
    ShapedReport take(const std::string& text, const std::function<void(Shape&)>& say = {},
                      ImportSettings settings = {}) {
        const Source source{.file = files.write("any.csv", text), .text = {}};
        const FileFacts facts = lookAt(source);
        Shape shape = propose(facts);
        if (say)
            say(shape);
        settle(shape, facts);
        return last = importShaped(log, source, shape, facts.headings(), settings);
    }
    std::vector<Set> sets(std::size_t session = 0) const {
        std::vector<Set> list;
        const auto sessions = log.sessions(log.athletes().at(0).id);
        for (const auto& placed : log.session(sessions.at(session).id).sets)
            list.push_back(placed.set);
        return list;
    }
    std::size_t sessions() const {
        std::size_t count = 0;
        for (const auto& athlete : log.athletes())
            count += log.sessions(athlete.id).size();
        return count;
    }
    QString refused(std::size_t i) const {
        return i < last.refused.size() ? QString::fromUtf8(last.refused[i].what()) : QString();
    }
};

Set setOf(Mass load, std::vector<Rep> reps) {
    return {.load = load, .excluded = {}, .note = {}, .reps = std::move(reps)};
}

const std::string wide = "Datum;Name;Übung;Last;v1;v2;v3\n"
                         "14.3.2026;Ada;Rudern;40;1,12;1,09;1,10\n"
                         "14.3.2026;Ada;Rudern;62,5;0,87;0,90\n"
                         "14.3.2026;Ada;Rudern;62,5;0,88;;\n";

} // namespace

class TestShapedImport : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void takesSetsWithSpeedsSideBySide() {
        Case c;
        const auto done = c.take(wide);
        QVERIFY2(done.refused.empty(), qPrintable(c.refused(0)));
        QCOMPARE(done.rowsRead, 3L);
        QCOMPARE(done.report.setsAdded, 3);
        QCOMPARE(done.report.repsAdded, 6);
        const std::vector<Set> expected{setOf(40_kg, {{1.12}, {1.09}, {1.10}}),
                                        setOf(62.5_kg, {{0.87}, {0.90}}), setOf(62.5_kg, {{0.88}})};
        QVERIFY(c.sets() == expected);
        QVERIFY(c.log.check().empty());
    }

    void addsNothingTheSecondTime() {
        Case c;
        c.take(wide);
        const auto again = c.take(wide);
        QVERIFY(again.refused.empty() && again.report.addedNothing());
        QCOMPARE(again.report.setsAlreadyThere, 3);
        QCOMPARE(c.sets().size(), 3U);
    }

    void agreesWithTidyCsv() {
        // The same day told twice, once in each way: the keys are the same.
        Case c;
        c.take(wide);
        const auto report = tests::import(c.files, c.log,
                                          tests::tidyHeader + "2026-03-14,Ada,Rudern,1,40,1,1.12\n"
                                                              "2026-03-14,Ada,Rudern,1,40,2,1.09\n"
                                                              "2026-03-14,Ada,Rudern,1,40,3,1.1\n");
        QVERIFY(report.addedNothing());
        QCOMPARE(report.setsAlreadyThere, 1);
    }

    void numbersRepsAndSetsByTheLoad() {
        Case c;
        c.take("date,athlete,lift,load,speed\n"
               "2026-03-14,Ada,Pull,40,1.12\n2026-03-14,Ada,Pull,40,1.09\n"
               "2026-03-14,Ada,Pull,60,0.87\n2026-03-14,Ada,Pull,40,1.1\n");
        QVERIFY2(c.last.refused.empty(), qPrintable(c.refused(0)));
        const std::vector<Set> expected{setOf(40_kg, {{1.12}, {1.09}}), setOf(60_kg, {{0.87}}),
                                        setOf(40_kg, {{1.1}})};
        QVERIFY(c.sets() == expected);
    }

    void beginsASetWhereTheRepsBeginAgain() {
        Case c;
        c.take("date,athlete,lift,load,rep,speed\n"
               "2026-03-14,Ada,Pull,40,1,1.12\n2026-03-14,Ada,Pull,40,2,1.09\n"
               "2026-03-14,Ada,Pull,40,1,1.05\n");
        const std::vector<Set> expected{setOf(40_kg, {{1.12}, {1.09}}), setOf(40_kg, {{1.05}})};
        QVERIFY(c.sets() == expected);
    }

    void takesCentimetresAndPounds() {
        Case c;
        c.take("date,athlete,lift,load (lb),speed (cm/s)\n2026-03-14,Ada,Pull,135,92.3\n");
        QVERIFY2(c.last.refused.empty(), qPrintable(c.refused(0)));
        // 135 lb x 453.59237 g (exact by the agreement of 1959) = 61234.97 g.
        QCOMPARE(c.sets().at(0).load.grams, std::int64_t(61235));
        QCOMPARE(c.sets().at(0).reps.at(0).velocity, 0.923);
    }

    void takesWhatIsNotInTheTableForAllRows() {
        Case c;
        c.take("load,speed\n60,0.92\n70,0.8\n", [](Shape& shape) {
            shape.fixed[TidyAthlete] = "Ada";
            shape.fixed[TidyLift] = "Pull";
            shape.fixed[TidyDate] = "2026-03-14";
            shape.fixed[TidyDevice] = "Grey";
        });
        QVERIFY2(c.last.refused.empty(), qPrintable(c.refused(0)));
        QCOMPARE(c.sets().size(), 2U);
        QCOMPARE(c.log.devices().at(0).value.name, "Grey");
        QVERIFY_THROWS_EXCEPTION(BadInput, c.take("load,speed\n60,0.92\n", [](Shape& shape) {
            shape.fixed[TidyAthlete] = "Ada";
            shape.fixed[TidyLift] = "Pull";
            shape.fixed[TidyDate] = "14.3.2026";
        }));
    }

    void fillsBlanksFromAboveOnlyWhereTold() {
        const std::string text = "date,athlete,lift,load,speed\n2026-03-14,Ada,Pull,60,0.92\n"
                                 ",,,,0.9\n,Ben,,70,0.8\n";
        Case refusing;
        refusing.take(text);
        QCOMPARE(refusing.last.rowsRefused, 2L);
        QCOMPARE(refusing.sessions(), 0U);
        Case c;
        c.take(text, [](Shape& shape) { shape.blankAsAbove = true; });
        QVERIFY2(c.last.refused.empty(), qPrintable(c.refused(0)));
        QCOMPARE(c.sessions(), 2U);
        QVERIFY(c.sets().at(0) == setOf(60_kg, {{0.92}, {0.9}}));
    }

    void listsEveryRefusalAndWritesNothing() {
        Case c;
        c.take("date,athlete,lift,load,speed\n"
               "2026-03-14,Ada,Pull,40,1.12\n"   // line 2, fine
               "31.2.2026,Ada,Pull,40,1.12\n"    // 3
               "2026-03-14,,Pull,40,1.12\n"      // 4
               "2026-03-14,Ada,Pull,heavy,1.1\n" // 5
               "2026-03-14,Ada,Pull,60,12\n"     // 6
               "2026-03-14,Ada,Pull,60\n"        // 7, ragged: a set without a speed is none refused
               "2026-03-14,Ada,Pull,60,0.9,x\n"  // 8, a cell too many
               "2026-03-14,Ada,Pull,70,0.8\n");
        QCOMPARE(c.last.rowsRead, 8L);
        QCOMPARE(c.last.rowsRefused, 5L);
        std::vector<long> lines;
        for (const BadInput& bad : c.last.refused)
            lines.push_back(bad.where().line);
        QCOMPARE(lines, (std::vector<long>{3, 4, 5, 6, 8}));
        QCOMPARE(english(c.last.refused[2].where().column), "load");
        QCOMPARE(english(c.last.refused[2].found()), "\"heavy\"");
        QVERIFY(c.refused(2).contains("a load in kg"));
        QVERIFY(c.refused(3).contains("m/s"));
        QCOMPARE(c.sessions(), 0U);
        QVERIFY(c.log.athletes().empty() && c.log.lifts().empty());
    }

    void namesTheTablesOwnColumns() {
        Case c;
        c.take("Datum;Name;Übung;Satz;Gewicht;Tempo (m/s)\n14.3.2026;Ada;Pull;1;40;0,9\n"
               "14.3.2026;Ada;Pull;1;45;0,9\n");
        QCOMPARE(c.last.refused.size(), 1U);
        QCOMPARE(english(c.last.refused[0].where().column), "Gewicht");
        QCOMPARE(c.last.refused[0].where().line, 3L);
        QVERIFY(c.refused(0).contains("line 2")); // which says another load
    }

    void refusesWhatContradictsTheLog() {
        Case c;
        c.take(wide);
        std::string other = wide;
        other.replace(other.find("1,12"), 4, "1,13");
        other.replace(other.find("0,88"), 4, "0,89");
        c.take(other);
        QCOMPARE(c.last.refused.size(), 2U);
        QCOMPARE(c.last.refused[0].where().line, 2L);
        QCOMPARE(c.last.refused[1].where().line, 4L);
        QVERIFY(c.refused(0).contains("1.13") && c.refused(0).contains("1.12"));
        QVERIFY(c.sets().at(0).reps.at(0).velocity == 1.12);
    }

    void refusesAnotherKindOfVelocity() {
        Case c;
        c.take(wide);
        c.take(wide, [](Shape& shape) { shape.fixed[TidyKind] = "peak"; });
        QCOMPARE(c.last.refused.size(), 1U);
        QVERIFY(c.refused(0).contains("never put on one line"));
    }

    void tellsAQuoteThatNeverCloses() {
        Case c;
        const std::string text = "date,athlete,lift,load,speed\n2026-03-14,Ada,Pull,40,1.12\n"
                                 "2026-03-14,\"Ada,Pull,40,1.12\n";
        const Source source{.file = c.files.write("any.csv", text), .text = {}};
        Shape shape;
        for (const auto& [role, at] : {std::pair{TidyDate, 0},
                                       {TidyAthlete, 1},
                                       {TidyLift, 2},
                                       {TidyLoad, 3},
                                       {TidyVelocity, 4}})
            shape.columns[role] = {{.at = static_cast<std::size_t>(at), .decimal = Decimal::Point}};
        shape.dates = DateOrder::YearMonthDay;
        shape.speed = SpeedUnit::MetresPerSecond;
        c.last =
            importShaped(c.log, source, shape, {"date", "athlete", "lift", "load", "speed"}, {});
        QVERIFY(!c.last.wholeRead);
        QCOMPARE(c.last.refused.size(), 1U);
        QCOMPARE(c.sessions(), 0U);
    }

    void takesLineBreaksInQuotesAndCountsLines() {
        Case c;
        c.take("date,athlete,lift,load,speed,note\n"
               "2026-03-14,Ada,Pull,40,1.12,\"tired,\nslept badly\"\n"
               "2026-03-14,Ada,Pull,60,fast,\n");
        QCOMPARE(c.last.refused.size(), 1U);
        QCOMPARE(c.last.refused[0].where().line, 4L);
    }

    void takesOtherLetters_data() {
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("Latin-1") << QByteArray("date;athlete;lift;load;speed\n"
                                               "2026-03-14;J\xFCrg \x96 \x80;Pull;40;1,1\n");
        QTest::newRow("UTF-8") << QByteArray("\xEF\xBB\xBF"
                                             "date;athlete;lift;load;speed\n"
                                             "2026-03-14;Jürg – €;Pull;40;1,1\n");
    }
    void takesOtherLetters() {
        QFETCH(QByteArray, bytes);
        Case c;
        c.take(bytes.toStdString());
        QVERIFY2(c.last.refused.empty(), qPrintable(c.refused(0)));
        QCOMPARE(c.log.athletes().at(0).value.name, "Jürg – €");
    }

    void takesFormulaGuardsOffAgain() {
        Case c;
        c.take("date,athlete,lift,load,speed,note\n"
               "2026-03-14,Ada,Pull,40,1.12,'=1+1\n2026-03-14,Ada,Pull,60,0.9,=2+2\n");
        QCOMPARE(c.sets().at(0).note, "=1+1");
        QCOMPARE(c.sets().at(1).note, "=2+2"); // text is text; export guards it
    }

    void isOnlyTriedInADryRun() {
        Case c;
        const auto tried = c.take(wide, {}, {.dryRun = true});
        QCOMPARE(tried.report.setsAdded, 3);
        QVERIFY(tried.intoLog);
        QCOMPARE(c.sessions(), 0U);
    }

    void stopsWithNothingWritten_data() {
        QTest::addColumn<int>("at");
        QTest::newRow("while reading") << 0;
        QTest::newRow("while writing") << 500;
    }
    void stopsWithNothingWritten() {
        QFETCH(int, at);
        std::string text = "date,athlete,lift,set,load,speed\n";
        for (int set = 1; set <= 5000; ++set)
            text += "2026-03-14,Ada,Pull," + std::to_string(set) + ",40,1.12\n";
        Case c;
        ImportSettings settings;
        std::int64_t furthest = 0;
        settings.progress = [&](std::int64_t done, std::int64_t total) {
            furthest = done * 1000 / total;
            return furthest < at;
        };
        QVERIFY_THROWS_EXCEPTION(Cancelled, c.take(text, {}, settings));
        QVERIFY(furthest >= at);
        QCOMPARE(c.sessions(), 0U);
        QVERIFY(c.log.athletes().empty() && c.log.check().empty());
        c.take(text); // and can be begun again
        QCOMPARE(c.last.report.setsAdded, 5000);
    }

    void readsSetsOfAPastedBlock() {
        const Source source{.file = {}, .text = "60\t0,92\t0,90\n70\t0,81\n70\t\t\n"};
        const FileFacts facts = lookAt(source);
        const auto sets = readSets(source, propose(facts), facts.headings());
        const std::vector<Set> expected{setOf(60_kg, {{0.92}, {0.90}}), setOf(70_kg, {{0.81}}),
                                        setOf(70_kg, {})};
        QVERIFY(sets == expected);
        Shape shape = propose(facts);
        const Source bad{.file = {}, .text = "60\t0,92\t0,90\n70\tfast\n"};
        QVERIFY_THROWS_EXCEPTION(BadInput, readSets(bad, shape, facts.headings()));
    }
};

QTEST_APPLESS_MAIN(TestShapedImport)
#include "tst_shapedimport.moc"
