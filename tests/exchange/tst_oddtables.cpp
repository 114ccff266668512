// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as desks have them that are no plain rows under their names: by dice, the same sets
// written in each odd shape, as CSV and as a workbook, come in as the same log as from tidy CSV.
#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "tests/exchange/csvfiles.h"
#include "tests/exchange/toldlog.h"
#include "tests/exchange/workbooks.h"

#include <QTest>

#include <algorithm>
#include <array>
#include <random>

using namespace slopebook;
using namespace slopebook::exchange;
using tests::CsvFiles;

namespace {

using Line = std::vector<std::string>;
using Rows = std::vector<Line>;

struct Lifted {
    std::string given, family, day;
    int minute = 0;                  ///< of the day, when the set began
    int load = 0;                    ///< kg
    std::vector<std::string> speeds; ///< "1.12"
    std::string name() const { return given + " " + family; }
};

// A squad's test days: each athlete's ladder, by day, then athlete, then load.
std::vector<Lifted> squad(std::mt19937& dice) {
    const auto below = [&](int most) { return static_cast<int>(dice() % unsigned(most)); };
    const std::array<std::pair<const char*, const char*>, 3> people{
        {{"Mia", "Muster"}, {"Ben", "Muster"}, {"Max", "Beispiel"}}};
    std::vector<Lifted> all;
    const int days = 2 + below(2);
    for (int day = 0; day < days; ++day)
        for (const auto& [given, family] : people) {
            int minute = 8 * 60 + below(60);
            const int sets = 3 + below(3);
            for (int set = 0; set < sets; ++set) {
                Lifted one{.given = given,
                           .family = family,
                           .day = "2026-03-" + std::to_string(14 + 3 * day),
                           .minute = minute += 3 + below(4),
                           .load = 40 + 10 * set,
                           .speeds = {}};
                const int reps = 1 + below(4);
                for (int rep = 0; rep < reps; ++rep) {
                    const int v = 130 - 14 * set - below(6);
                    one.speeds.push_back(std::to_string(v / 100) + "." +
                                         std::to_string(v / 10 % 10) + std::to_string(v % 10));
                }
                all.push_back(std::move(one));
            }
        }
    return all;
}

std::string comma(std::string text) {
    std::ranges::replace(text, '.', ',');
    return text;
}

std::string joined(const std::vector<std::string>& parts, const std::string& by) {
    std::string all;
    for (const std::string& part : parts)
        all += (all.empty() ? "" : by) + part;
    return all;
}

// Days from 1899-12-30, by which a spreadsheet counts from March 1900 on.
std::string serial(const std::string& day, bool from1904 = false) {
    const std::chrono::sys_days zero =
        from1904 ? std::chrono::sys_days(std::chrono::year(1904) / 1 / 1)
                 : std::chrono::sys_days(std::chrono::year(1899) / 12 / 30);
    return std::to_string((std::chrono::sys_days(*parseIsoDate(day)) - zero).count());
}

std::string clockOf(int minute, int second) {
    const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
    return two(minute / 60) + ":" + two(minute % 60) + ":" + two(second);
}

std::string csv(const Rows& rows, char delimiter) {
    std::string text;
    for (const Line& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            const bool quoted = row[i].find(delimiter) != std::string::npos;
            text += (i > 0 ? std::string(1, delimiter) : "") + (quoted ? "\"" : "") + row[i] +
                    (quoted ? "\"" : "");
        }
        text += "\n";
    }
    return text;
}

std::string sheetData(const Rows& rows) {
    std::string data;
    for (const Line& row : rows) {
        data += "<row>";
        for (const std::string& cell : row)
            data += cell.empty() ? "<c/>" : "<c t=\"inlineStr\"><is><t>" + cell + "</t></is></c>";
        data += "</row>";
    }
    return data;
}

/// A way of writing sets, and what the coach answers where it is asked.
struct Way {
    std::function<Rows(const std::vector<Lifted>&)> write;
    std::function<void(Shape&)> answer{};
    std::vector<Question::About> asked{};
    std::string kind = "mean";
    long leftOut = 0, withoutLoad = 0;
};

Rows aRep(const Line& header, const std::vector<Lifted>& sets,
          const std::function<Line(const Lifted&, std::size_t rep)>& row) {
    Rows rows{header};
    for (const Lifted& set : sets)
        for (std::size_t rep = 0; rep < set.speeds.size(); ++rep)
            rows.push_back(row(set, rep));
    return rows;
}

int setNumber(const Lifted& set) {
    return (set.load - 40) / 10 + 1;
}

Line plainRow(const Lifted& set, std::size_t rep) {
    return {set.day,
            set.name(),
            "Row",
            std::to_string(setNumber(set)),
            std::to_string(set.load),
            std::to_string(rep + 1),
            set.speeds[rep]};
}

Rows aSet(const Line& header, const std::vector<Lifted>& sets,
          const std::function<Line(const Lifted&)>& row) {
    Rows rows{header};
    for (const Lifted& set : sets)
        rows.push_back(row(set));
    return rows;
}

Rows loadsAcross(const std::vector<Lifted>& sets, const std::string& unit, const std::string& by) {
    Rows rows{{"Date", "Name", "Exercise"}};
    int most = 0;
    for (const Lifted& set : sets)
        most = std::max(most, set.load);
    for (int load = 40; load <= most; load += 10)
        rows[0].push_back(std::to_string(load) + unit);
    std::string last;
    for (const Lifted& set : sets) {
        if (set.day + set.name() != last) {
            rows.push_back({set.day, set.name(), "Row"});
            rows.back().resize(rows[0].size());
        }
        last = set.day + set.name();
        rows.back()[std::size_t(3 + setNumber(set) - 1)] = joined(set.speeds, by);
    }
    return rows;
}

const std::map<std::string, Way>& ways() {
    static const Line plain{"date", "name", "exercise", "set", "load", "rep", "velocity"};
    static const auto timed = [](const std::vector<Lifted>& sets, bool newestFirst, bool zone) {
        Rows rows =
            aRep({"Timestamp", "User", "Exercise", "Load (kg)", "Mean velocity (m/s)"}, sets,
                 [&](const Lifted& set, std::size_t rep) {
                     return Line{set.day + (zone ? "T" : " ") + clockOf(set.minute, int(5 * rep)) +
                                     (zone ? "Z" : ""),
                                 set.name(), "Row", std::to_string(set.load), set.speeds[rep]};
                 });
        if (newestFirst)
            std::reverse(rows.begin() + 1, rows.end());
        return rows;
    };
    // seed 0: from the last to the first, on a clock of twelve hours; else in any order.
    static const auto timedBeside = [](const std::vector<Lifted>& sets, const char* heading,
                                       unsigned seed) {
        Rows rows =
            aRep({"Datum", heading, "Name", "Übung", "Last (kg)", "Geschwindigkeit (m/s)"}, sets,
                 [&](const Lifted& set, std::size_t rep) {
                     const int hour = set.minute / 60, noon = seed == 0 ? 12 : 24;
                     return Line{set.day,
                                 clockOf(set.minute - (hour > noon ? noon * 60 : 0), int(5 * rep)) +
                                     (seed > 0    ? ""
                                      : hour < 12 ? " am"
                                                  : " pm"),
                                 set.name(),
                                 "Row",
                                 std::to_string(set.load),
                                 set.speeds[rep]};
                 });
        if (seed == 0) {
            std::reverse(rows.begin() + 1, rows.end());
        } else {
            std::mt19937 dice(seed);
            std::shuffle(rows.begin() + 1, rows.end(), dice);
        }
        return rows;
    };
    static const std::map<std::string, Way> all{
        {"a row of units under the names",
         {.write =
              [](const auto& sets) {
                  Rows rows = aRep(plain, sets, plainRow);
                  rows.insert(rows.begin() + 1, {"yyyy-mm-dd", "", "", "#", "kg", "#", "m/s"});
                  return rows;
              }}},
        {"units in brackets, speeds in cm/s",
         {.write =
              [](const auto& sets) {
                  Rows rows = aRep(plain, sets, [](const Lifted& set, std::size_t rep) {
                      Line row = plainRow(set, rep);
                      std::erase(row.back(), '.');
                      if (row.back().starts_with('0'))
                          row.back().erase(0, 1);
                      return row;
                  });
                  rows.insert(rows.begin() + 1, {"", "", "", "", "[kg]", "", "[cm/s]"});
                  return rows;
              }}},
        {"rows of totals",
         {.write =
              [](const auto& sets) {
                  Rows rows = aRep(plain, sets, plainRow);
                  rows.insert(rows.begin() + 5, {"Mean", "", "", "", "52.5", "", "0.93"});
                  rows.push_back({"Total", "", "", "", "1480", "44", ""});
                  return rows;
              },
          .leftOut = 2}},
        {"Summe unter den Namen",
         {.write =
              [](const auto& sets) {
                  Rows rows =
                      aRep({"Name", "Datum", "Übung", "Satz", "Gewicht", "Wdh", "Geschwindigkeit"},
                           sets, [](const Lifted& set, std::size_t rep) {
                               const Line row = plainRow(set, rep);
                               return Line{row[1], row[0], row[2],       row[3],
                                           row[4], row[5], comma(row[6])};
                           });
                  rows.push_back({"Summe", "", "", "", "1480", "44", ""});
                  return rows;
              },
          .leftOut = 1}},
        {"loads as columns, lists in them",
         {.write = [](const auto& sets) { return loadsAcross(sets, " kg", " / "); }}},
        {"loads as columns without a unit",
         {.write = [](const auto& sets) { return loadsAcross(sets, "", " "); }}},
        {"reps in a cell",
         {.write =
              [](const auto& sets) {
                  return aSet({"Date", "Name", "Exercise", "Load", "Reps"}, sets,
                              [](const Lifted& set) {
                                  return Line{set.day, set.name(), "Row", std::to_string(set.load),
                                              joined(set.speeds, " ")};
                              });
              }}},
        {"reps in a cell with decimal commas",
         {.write =
              [](const auto& sets) {
                  return aSet({"Datum", "Name", "Übung", "Last", "Geschwindigkeit"}, sets,
                              [](const Lifted& set) {
                                  std::vector<std::string> speeds;
                                  for (const auto& speed : set.speeds)
                                      speeds.push_back(comma(speed));
                                  return Line{set.day, set.name(), "Row", std::to_string(set.load),
                                              joined(speeds, ", ")};
                              });
              }}},
        {"days counted from 1900",
         {.write =
              [](const auto& sets) {
                  return aRep(plain, sets, [](const Lifted& set, std::size_t rep) {
                      Line row = plainRow(set, rep);
                      row[0] = serial(set.day);
                      return row;
                  });
              },
          .answer = [](Shape& shape) { shape.dates = DateOrder::DaysFrom1900; },
          .asked = {Question::About::DateOrder}}},
        {"moments counted from 1904",
         {.write =
              [](const auto& sets) {
                  return aRep(plain, sets, [](const Lifted& set, std::size_t rep) {
                      Line row = plainRow(set, rep);
                      row[0] = serial(set.day, true) + ".4375";
                      return row;
                  });
              },
          .answer = [](Shape& shape) { shape.dates = DateOrder::DaysFrom1904; },
          .asked = {Question::About::DateOrder}}},
        {"moments in one column",
         {.write = [](const auto& sets) { return timed(sets, false, true); }}},
        {"moments, the newest first",
         {.write = [](const auto& sets) { return timed(sets, true, false); }}},
        {"times of day in a column of their own",
         {.write = [](const auto& sets) { return timedBeside(sets, "Uhrzeit", 17); }}},
        {"times of day of twelve hours, the newest first",
         {.write = [](const auto& sets) { return timedBeside(sets, "Start time", 0); }}},
        {"loads as columns, an athlete who lifted none",
         {.write =
              [](const auto& sets) {
                  Rows rows = loadsAcross(sets, " kg", " / ");
                  Line none{"2026-03-14", "Zoe Muster", "Row"};
                  none.resize(rows[0].size());
                  rows.insert(rows.begin() + 2, none);
                  rows.push_back(none);
                  return rows;
              },
          .withoutLoad = 2}},
        {"French",
         {.write =
              [](const auto& sets) {
                  return aRep({"Date", "Nom", "Prénom", "Exercice", "Série", "Charge (kg)",
                               "Répétition", "Vitesse moyenne (m/s)"},
                              sets, [](const Lifted& set, std::size_t rep) {
                                  const Line row = plainRow(set, rep);
                                  return Line{row[0], set.family, set.given, row[2],
                                              row[3], row[4],     row[5],    comma(row[6])};
                              });
              }}},
        {"Spanish",
         {.write =
              [](const auto& sets) {
                  return aRep({"Fecha", "Nombre", "Apellidos", "Ejercicio", "Serie", "Carga (kg)",
                               "Repetición", "VMP (m/s)"},
                              sets, [](const Lifted& set, std::size_t rep) {
                                  const Line row = plainRow(set, rep);
                                  return Line{row[0], set.given, set.family, row[2],
                                              row[3], row[4],    row[5],     comma(row[6])};
                              });
              },
          .kind = "propulsive"}},
        {"last and first name",
         {.write =
              [](const auto& sets) {
                  return aRep({"date", "Last name", "First name", "exercise", "set", "load", "rep",
                               "velocity"},
                              sets, [](const Lifted& set, std::size_t rep) {
                                  const Line row = plainRow(set, rep);
                                  return Line{row[0], set.family, set.given, row[2],
                                              row[3], row[4],     row[5],    row[6]};
                              });
              }}},
    };
    return all;
}

} // namespace

class TestOddTables : public QObject {
    Q_OBJECT

    CsvFiles m_files;
    int m_logs = 0;

    log::Log newLog() { return m_files.newLog(std::to_string(++m_logs) + ".slopebook"); }

    std::string tidyTold(const std::vector<Lifted>& sets, const std::string& kind) {
        Rows rows =
            aRep({"date", "athlete", "lift", "set", "load_kg", "rep", "velocity"}, sets, plainRow);
        rows[0].push_back("velocity_kind");
        for (std::size_t i = 1; i < rows.size(); ++i)
            rows[i].push_back(kind);
        log::Log log = newLog();
        tests::import(m_files, log, csv(rows, ','));
        return tests::Teller(log).tell();
    }

    // As it is proposed, with what is asked answered; through the text of its map as well.
    void take(const std::filesystem::path& file, const Way& way, const std::string& expected) {
        const Source source{.file = file, .text = {}};
        const FileFacts facts = lookAt(source);
        Shape shape = propose(facts);
        std::vector<Question::About> asked;
        for (const Question& question : openQuestions(shape, facts)) {
            asked.push_back(question.about);
            QVERIFY(!english(questionWords(question, facts)).empty());
        }
        QCOMPARE(asked, way.asked);
        if (way.answer)
            way.answer(shape);
        const std::string map = shapeText(shape, facts.headings());
        const FileFacts again = lookAt(source, toldOf(parseLayout(map, "map")));
        QCOMPARE(again.headings(), facts.headings());
        const Shape read = parseShape(map, again.headings(), "map");
        QVERIFY2(read == shape, map.c_str());
        log::Log log = newLog();
        const ShapedReport report = importShaped(log, source, read, again.headings(), {});
        QVERIFY2(report.refused.empty(), report.refused.empty() ? "" : report.refused[0].what());
        QCOMPARE(report.report.rowsLeftOut, way.leftOut);
        QCOMPARE(report.report.rowsWithoutLoad, way.withoutLoad);
        QCOMPARE(facts.rowsWithoutLoad, way.withoutLoad);
        QCOMPARE(orderWords(shape, facts).empty(), !shape.layout.byTime);
        QCOMPARE(tests::Teller(log).tell(), expected);
        QVERIFY(importShaped(log, source, read, again.headings(), {}).report.addedNothing());
    }

private Q_SLOTS:
    void everyWayIsTheSameLog_data() {
        QTest::addColumn<QString>("way");
        for (const auto& [name, way] : ways())
            QTest::newRow(name.c_str()) << QString::fromStdString(name);
    }

    void everyWayIsTheSameLog() {
        QFETCH(QString, way);
        const Way& chosen = ways().at(way.toStdString());
        const unsigned seeds = qEnvironmentVariableIsSet("SLOPEBOOK_LONG") ? 40 : 1;
        for (unsigned seed = 1; seed <= seeds; ++seed) {
            std::mt19937 dice(seed);
            const auto sets = squad(dice);
            const std::string expected = tidyTold(sets, chosen.kind);
            const Rows rows = chosen.write(sets);
            take(m_files.write("odd.csv", csv(rows, seed % 2 ? ';' : '\t')), chosen, expected);
            const auto book = m_files.path("odd.xlsx");
            tests::writeZip(book, tests::xlsxParts({.sheetData = sheetData(rows)}));
            take(book, chosen, expected);
        }
    }

    // A rest of 2:30 is no time of day, and sets with their numbers stand as they are.
    void timesThatOrderNothing() {
        const std::string rests =
            "date;name;exercise;load;velocity;Rest\n"
            "2026-03-14;Mia;Row;40;1.1;2:30\n2026-03-14;Mia;Row;50;1.0;2:10\n";
        const std::string numbered = "date;time;name;exercise;set;load;velocity\n"
                                     "2026-03-14;10:30;Mia;Row;1;40;1.1\n"
                                     "2026-03-14;10:10;Mia;Row;2;50;1.0\n";
        for (const std::string& table : {rests, numbered}) {
            const Shape shape =
                propose(lookAt({.file = m_files.write("times.csv", table), .text = {}}));
            QVERIFY(!shape.layout.byTime);
            QVERIFY(!shape.timeOfDay);
        }
    }

    // In another order the row above would be another: refused, whichever column has the times.
    void blanksAboveInOrderOfTimeAreRefused() {
        const std::string beside = "date;time;name;exercise;load;velocity\n"
                                   "2026-03-14;10:30;Mia;Row;40;1.1\n2026-03-14;10:10;;;50;1.0\n";
        const std::string behind = "date;name;exercise;load;velocity\n"
                                   "2026-03-14 10:30;Mia;Row;40;1.1\n2026-03-14 10:10;;;50;1.0\n";
        for (const std::string& table : {beside, behind}) {
            const Source source{.file = m_files.write("above.csv", table), .text = {}};
            const FileFacts facts = lookAt(source);
            Shape shape = propose(facts);
            QVERIFY(shape.layout.byTime);
            shape.blankAsAbove = true;
            for (const std::size_t held : {std::size_t{0}, std::size_t{1}}) {
                log::Log log = newLog();
                const std::string before = tests::Teller(log).tell();
                const auto report =
                    importShaped(log, source, shape, facts.headings(), {.setsHeld = held});
                QCOMPARE(report.refused.size(), std::size_t{1});
                QVERIFY(english(report.refused[0].expected()).find("one of the two") !=
                        std::string::npos);
                QCOMPARE(tests::Teller(log).tell(), before);
            }
        }
    }

    // What is said above the table is said of all its rows.
    void whatStandsAbove() {
        std::mt19937 dice(7);
        auto sets = squad(dice);
        std::erase_if(
            sets, [](const Lifted& set) { return set.given != "Mia" || set.day != "2026-03-14"; });
        const std::string expected = tidyTold(sets, "mean");
        for (const bool oneCell : {false, true}) {
            Rows rows{{"Session report", "", "", ""}};
            const auto said = [&](const std::string& key, const std::string& value) {
                if (oneCell)
                    rows.push_back({key + ": " + value, "", "", ""});
                else
                    rows.push_back({key + ":", value, "", ""});
            };
            said("Athlete", "Mia Muster");
            said("Date", "14.03.2026");
            said("Exercise", "Row");
            said("Operator", "Coach");
            rows.push_back({"", "", "", ""});
            const Rows table = aRep({"set", "load (kg)", "rep", "velocity (m/s)"}, sets,
                                    [](const Lifted& set, std::size_t rep) {
                                        const Line row = plainRow(set, rep);
                                        return Line{row[3], row[4], row[5], row[6]};
                                    });
            rows.insert(rows.end(), table.begin(), table.end());
            take(m_files.write("above.csv", csv(rows, ',')), Way{}, expected);
            const auto book = m_files.path("above.xlsx");
            tests::writeZip(book, tests::xlsxParts({.sheetData = sheetData(rows)}));
            take(book, Way{}, expected);
        }
    }

    // An athlete called Max is nobody's maximum, and a row of totals that the coach wants read is
    // refused, not passed over.
    void whoLooksLikeTotals() {
        const std::string header = "name,date,exercise,load,velocity,note\n";
        const std::string rows = "Max,2026-03-14,Row,40,1.1,\nMax,2026-03-14,Row,50,1.0,\n";
        const auto facts = lookAt({.file = m_files.write("max.csv", header + rows), .text = {}});
        QCOMPARE(facts.rows, 2L);
        QCOMPARE(facts.totalsRows, 0L);
        // Nor where the day stands above the table or is counted, or the lift comes first.
        for (const char* table :
             {"athlete,lift,load,1,2,3,4\nMax Muster,Squat,80,0.71,0.69,,\nMax,Squat,80,0.71,,,\n",
              "athlete,date,lift,load,v,a,b\nMax,46095,Squat,80,0.9,,\nMean,46095,Squat,80,0.9,,\n",
              "lift,date,load,v,a,b\nMax effort squat,,80,0.9,,\nMin height jump,,80,0.9,,\n"})
            QCOMPARE(lookAt({.file = m_files.write("named.csv", table), .text = {}}).totalsRows,
                     0L);
        const Source source{.file = m_files.write("total.csv", header + rows + "Total,,,90,,\n"),
                            .text = {}};
        LayoutTold all;
        all.leftOut = std::vector<std::string>{};
        const auto read = lookAt(source, all);
        QCOMPARE(read.totalsRows, 0L);
        log::Log log = newLog();
        QCOMPARE(importShaped(log, source, propose(read), read.headings(), {}).refused.size(),
                 std::size_t(1));
    }

    // Whole numbers under loads are how many reps there were, not speeds.
    void repsUnderLoadsAreNoSpeeds() {
        const auto facts =
            lookAt({.file = m_files.write("counts.csv", "date,name,exercise,40 kg,50 kg\n"
                                                        "2026-03-14,Mia,Row,5,3\n"
                                                        "2026-03-17,Mia,Row,4,2\n"),
                    .text = {}});
        QVERIFY(!facts.layout.loadsAsColumns);
        QVERIFY(!openQuestions(propose(facts), facts).empty());
    }
};

QTEST_APPLESS_MAIN(TestOddTables)
#include "tst_oddtables.moc"
