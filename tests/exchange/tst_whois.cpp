// SPDX-License-Identifier: GPL-3.0-or-later
// One athlete stays one, and two stay two, however files spell them.
#include "core/exchange/faults.h"
#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "tests/exchange/csvfiles.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::exchange;
using tests::CsvFiles;
using tests::import;
using tests::tidyHeader;

namespace {

const std::string jose = "Jos\xC3\xA9"; // composed; the other two not, and with a zero-width space
const std::vector<std::string> spellings{jose, "Jose\xCC\x81", " JOS\xC3\x89 ",
                                         "Jos\xE2\x80\x8B\xC3\xA9", "\"Jos\xC3\xA9\""};

std::string row(const std::string& athlete, int day, const std::string& lift = "Squat") {
    return "2026-03-" + std::to_string(day) + "," + athlete + "," + lift + ",1,40,1,1.1\n";
}

std::vector<std::string> athletes(const log::Log& log) {
    std::vector<std::string> names;
    for (const auto& stored : log.athletes())
        names.push_back(stored.value.name);
    return names;
}

ShapedReport importTable(log::Log& log, const std::string& text,
                         const ImportSettings& settings = {}) {
    const Source source{.file = {}, .text = text};
    const auto facts = lookAt(source);
    const auto shape = propose(facts);
    return importShaped(log, source, shape, facts.headings(), settings);
}

} // namespace

class TestWhoIs : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everySpellingIsOneAthlete() {
        const CsvFiles files;
        auto log = files.newLog();
        int day = 10;
        for (const std::string& spelling : spellings)
            import(files, log, tidyHeader + row(spelling, day++));
        QCOMPARE(athletes(log), std::vector<std::string>{jose});
        QCOMPARE(log.sessions(log.athletes()[0].id).size(), spellings.size());
    }

    void inOneFileToo() {
        const CsvFiles files;
        auto log = files.newLog();
        std::string text = tidyHeader;
        int day = 10;
        for (const std::string& spelling : spellings) {
            text += row(spelling, day, day % 2 ? "Split squat" : " SPLIT  squat ");
            ++day;
        }
        import(files, log, text);
        QCOMPARE(athletes(log), std::vector<std::string>{jose});
        QCOMPARE(log.lifts().size(), std::size_t(1));
        QCOMPARE(log.lifts()[0].value.name, std::string("SPLIT squat"));
    }

    void inEveryTable() {
        const CsvFiles files;
        auto log = files.newLog();
        importTidy(
            log,
            {files.write("reps.csv", tidyHeader + row(jose, 10)),
             files.write("athletes.csv", "athlete,athlete_note\nJOSE\xCC\x81,tall\n"),
             files.write("loads.csv", "athlete,lift,check_load_kg\njose\xCC\x81 ,SQUAT,60\n"),
             files.write("attempts.csv", "date,athlete,test,value\n2026-03-10, JOSE\xCC\x81,"
                                         "Jump,40\n"),
             files.write("tests.csv", "test,unit,better\n JUMP,cm,higher\n")},
            {});
        QCOMPARE(log.athletes().size(), std::size_t(1));
        QCOMPARE(log.athletes()[0].value.note, std::string("tall"));
        QCOMPARE(log.lifts().size(), std::size_t(1));
        QCOMPARE(log.testKinds().size(), std::size_t(1));
        QCOMPARE(log.checkLoads(log.athletes()[0].id, log.lifts()[0].id).size(), std::size_t(1));
    }

    // The log itself: a name has one spelling, and stands for one.
    void theLogTakesNoSecondSpelling() {
        const CsvFiles files;
        auto log = files.newLog();
        const AthleteId id = log.add(Athlete{.name = jose});
        const AthleteId ann = log.add(Athlete{.name = "Ann"});
        for (const std::string name : {jose.c_str(), "JOS\xC3\x89", "Jose\xCC\x81", " Jose",
                                       "An\tn", "\xE2\x80\x8B", "\x1B[2J"}) {
            QVERIFY_THROWS_EXCEPTION(BadInput, log.add(Athlete{.name = name}));
            QVERIFY_THROWS_EXCEPTION(BadInput, log.change(ann, Athlete{.name = name}));
        }
        log.change(id, Athlete{.name = "JOS\xC3\x89"}); // its own name may be spelled anew
        log.add(Lift{.name = jose});                    // and a lift is no athlete
        QVERIFY_THROWS_EXCEPTION(BadInput, log.add(Lift{.name = "jos\xC3\xA9"}));
        log.change(id, Athlete{.name = "Somebody"});
        log.add(Athlete{.name = jose});
    }

    // A name that a transaction took back, or that another program took, is known for what it is.
    void takenNamesAreThoseOfTheFile() {
        const CsvFiles files;
        auto log = files.newLog();
        auto other = log::Log::open(log.file());
        struct Back {};
        try {
            log.together([&] {
                log.add(Athlete{.name = "Ann"});
                throw Back{};
            });
        } catch (const Back&) {
        }
        const AthleteId ann = log.add(Athlete{.name = "ann"});
        QVERIFY_THROWS_EXCEPTION(BadInput, other.add(Athlete{.name = "ANN"}));
        log.remove(ann);
        other.add(Athlete{.name = "ANN"});
        QVERIFY_THROWS_EXCEPTION(BadInput, log.add(Athlete{.name = "ann"}));
    }

    // A new athlete who is nearly another is asked about; nothing is written before.
    void aNearNameIsAskedAbout() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, tidyHeader + row(jose, 10));
        const std::string text = tidyHeader + row("Jose", 11);
        try {
            import(files, log, text);
            QFAIL("taken");
        } catch (const Undecided& open) {
            QCOMPARE(open.names(), (std::vector<NearName>{{"Jose", jose, true}}));
        }
        QCOMPARE(log.athletes().size(), std::size_t(1));
        ImportSettings settings;
        settings.dryRun = true;
        QCOMPARE(import(files, log, text, settings).nearly.size(), std::size_t(1));
        settings.dryRun = false;
        settings.who.same["JOSE"] = jose;
        QVERIFY(import(files, log, text, settings).athletesMade.empty());
        QCOMPARE(log.sessions(log.athletes()[0].id).size(), std::size_t(2));
        settings.who = {.same = {}, .somebodyNew = {"Jose"}};
        import(files, log, text, settings);
        QCOMPARE(log.athletes().size(), std::size_t(2));
        import(files, log, text); // known by now
    }

    void twoNewNamesAreHeldAgainstEachOther() {
        const CsvFiles files;
        auto log = files.newLog();
        const std::string text = tidyHeader + row("Mia Muster", 10) + row("Mia Mustre", 11);
        try {
            import(files, log, text);
            QFAIL("taken");
        } catch (const Undecided& open) {
            QCOMPARE(open.names(), (std::vector<NearName>{{"Mia Mustre", "Mia Muster", false}}));
        }
        ImportSettings settings;
        settings.who.same["Mia Mustre"] = "Mia Muster";
        import(files, log, text, settings);
        QCOMPARE(athletes(log), std::vector<std::string>{"Mia Muster"});
        // A table of athletes lists them as two: that says it.
        auto second = files.newLog("second.slopebook");
        importTidy(
            second,
            {files.write("reps.csv", text),
             files.write("athletes.csv", "athlete,athlete_note\nMia Muster,\nMia Mustre,twin\n")},
            {});
        QCOMPARE(second.athletes().size(), std::size_t(2));
    }

    void aTableIsAskedAlike() {
        const CsvFiles files;
        auto log = files.newLog();
        import(files, log, tidyHeader + row("Muster, Mia", 10).replace(11, 11, "\"Muster, Mia\""));
        const std::string table = "Date;Athlete;Lift;Load;Velocity\n2026-03-11;Mia Muster;Squat;"
                                  "40;1.1\n";
        QVERIFY_THROWS_EXCEPTION(Undecided, importTable(log, table));
        ImportSettings settings;
        settings.who.allNew = true;
        importTable(log, table, settings);
        QCOMPARE(log.athletes().size(), std::size_t(2));
    }

    // Siblings share a family name: its column alone is never taken for who they are.
    void halvesOfANameAreJoined_data() {
        QTest::addColumn<QByteArray>("headings");
        QTest::addColumn<QByteArray>("mia");
        QTest::addColumn<QByteArray>("ben");
        const auto add = [](const char* headings, const char* mia, const char* ben) {
            QTest::newRow(headings) << QByteArray(headings) << QByteArray(mia) << QByteArray(ben);
        };
        add("Last name;First name", "Muster;Mia", "Muster;Ben");
        add("First name;Last name", "Mia;Muster", "Ben;Muster");
        add("Nachname;Vorname", "Muster;Mia", "Muster;Ben");
        add("Name;Vorname", "Muster;Mia", "Muster;Ben");
        add("surname;forename", "Muster;Mia", "Muster;Ben");
        add("Nom;Pr\xC3\xA9nom", "Muster;Mia", "Muster;Ben");
        add("Apellidos;Nombre", "Muster;Mia", "Muster;Ben");
    }
    void halvesOfANameAreJoined() {
        QFETCH(QByteArray, headings);
        QFETCH(QByteArray, mia);
        QFETCH(QByteArray, ben);
        const CsvFiles files;
        auto log = files.newLog();
        const std::string text = "Date;" + headings.toStdString() +
                                 ";Lift;Load;Velocity\n2026-03-11;" + mia.toStdString() +
                                 ";Squat;40;1.1\n2026-03-11;" + ben.toStdString() +
                                 ";Squat;40;1.0\n";
        QVERIFY(importTable(log, text).refused.empty());
        QCOMPARE(athletes(log), (std::vector<std::string>{"Ben Muster", "Mia Muster"}));
        // The shape as text, and back.
        const Source source{.file = {}, .text = text};
        const auto facts = lookAt(source);
        const auto shape = propose(facts);
        QCOMPARE(parseShape(shapeText(shape, facts.headings()), facts.headings(), "map"), shape);
    }

    void aFamilyNameAloneIsAsked() {
        for (const std::string heading : {"Last name", "Nachname", "Surname"}) {
            const Source source{.file = {},
                                .text = "Date;" + heading +
                                        ";Lift;Load;Velocity\n2026-03-11;Muster;Squat;40;1.1\n"};
            const auto facts = lookAt(source);
            const auto open = openQuestions(propose(facts), facts);
            QCOMPARE(open.size(), std::size_t(1));
            QVERIFY(open[0].about == Question::About::Role && open[0].role == TidyAthlete);
        }
    }

    // A whole name stays whole beside a first name.
    void aWholeNameIsEnough() {
        const CsvFiles files;
        auto log = files.newLog();
        importTable(log, "Date;Name;First name;Lift;Load;Velocity\n2026-03-11;Mia Muster;Mia;Squat;"
                         "40;1.1\n");
        QCOMPARE(athletes(log), std::vector<std::string>{"Mia Muster"});
    }

    void aFileWithoutRowsIsNamed() {
        const CsvFiles files;
        auto log = files.newLog();
        const auto report = import(files, log, tidyHeader);
        QCOMPARE(report.withoutRows, std::vector<std::string>{"reps.csv"});
        QVERIFY(import(files, log, tidyHeader + row("Ann", 10)).withoutRows.empty());
        QCOMPARE(importTidy(log, {files.write("athletes.csv", "athlete,athlete_note\n\n")}, {})
                     .withoutRows,
                 std::vector<std::string>{"athletes.csv"});
    }

    // In time that grows with their number: with its square this would take minutes.
    void manyColumnsAreNoHang() {
        const CsvFiles files;
        auto log = files.newLog();
        std::string header = tidyHeader, cells = row("Ann", 10);
        header.pop_back();
        cells.pop_back();
        for (int i = 0; i < 100'000; ++i) {
            header += ",x" + std::to_string(i);
            cells += ",";
        }
        const auto report = import(files, log, header + "\n" + cells + "\n");
        QCOMPARE(report.setsAdded, 1);
        QCOMPARE(report.columnsNotUsed.size(), std::size_t(100'000));
    }
};

QTEST_APPLESS_MAIN(TestWhoIs)
#include "tst_whois.moc"
