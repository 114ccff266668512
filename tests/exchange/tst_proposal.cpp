// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/proposal.h"
#include "tests/exchange/csvfiles.h"

#include <QTest>

#include <algorithm>
#include <set>

using namespace slopebook;
using namespace slopebook::exchange;
using tests::CsvFiles;
using About = Question::About;

namespace {

FileFacts factsOf(const std::string& text) {
    const CsvFiles files;
    return lookAt({.file = files.write("any.csv", text), .text = {}});
}

std::size_t columnOfRole(const Shape& shape, Tidy role) {
    return shape.columns[role].empty() ? 999 : shape.columns[role][0].at;
}

bool asks(const std::vector<Question>& open, About about, Tidy role) {
    return std::ranges::any_of(
        open, [&](const Question& q) { return q.about == about && q.role == role; });
}

std::string utf16(const std::u16string& text, bool bigEndian, bool mark) {
    std::string bytes = mark ? (bigEndian ? "\xFE\xFF" : "\xFF\xFE") : "";
    for (const char16_t u : text) {
        const char high = static_cast<char>(u >> 8), low = static_cast<char>(u & 0xFF);
        bytes += bigEndian ? high : low;
        bytes += bigEndian ? low : high;
    }
    return bytes;
}

const std::string german = "Datum;Sportlerin;Übung;Satz;Wdh;Gewicht (kg);Geschwindigkeit (m/s)\n"
                           "14.03.2026;Ada;Bankziehen;1;1;40,0;1,12\n"
                           "14.03.2026;Ada;Bankziehen;2;1;62,5;0,87\n";

} // namespace

class TestProposal : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void readsAGermanTable() {
        const FileFacts facts = factsOf(german);
        QCOMPARE(facts.layout.delimiter, ';');
        QVERIFY(facts.layout.header && facts.layout.encoding == Encoding::Utf8);
        QCOMPARE(facts.rows, 2L);
        const Shape shape = propose(facts);
        QCOMPARE(columnOfRole(shape, TidyDate), 0U);
        QCOMPARE(columnOfRole(shape, TidyAthlete), 1U);
        QCOMPARE(columnOfRole(shape, TidyLift), 2U);
        QCOMPARE(columnOfRole(shape, TidySet), 3U);
        QCOMPARE(columnOfRole(shape, TidyRep), 4U);
        QCOMPARE(columnOfRole(shape, TidyLoad), 5U);
        QCOMPARE(columnOfRole(shape, TidyVelocity), 6U);
        QVERIFY(shape.dates == DateOrder::DayMonthYear);
        QVERIFY(shape.columns[TidyLoad][0].decimal == Decimal::Comma);
        QVERIFY(shape.columns[TidyVelocity][0].decimal == Decimal::Comma);
        QVERIFY(shape.speed == SpeedUnit::MetresPerSecond && !shape.rowIsSet);
        QVERIFY(openQuestions(shape, facts).empty());
    }

    void findsLettersAndDelimiter_data() {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<int>("encoding");
        QTest::addColumn<QByteArray>("delimiter");
        const std::u16string wide = u"Übung;Gewicht\nRudern;40\n";
        const auto row = [](const char* name, const std::string& bytes, Encoding encoding,
                            const char* delimiter) {
            QTest::newRow(name) << QByteArray::fromStdString(bytes) << static_cast<int>(encoding)
                                << QByteArray(delimiter);
        };
        row("UTF-8 with a mark", "\xEF\xBB\xBFÜbung,Gewicht\nRudern,40\n", Encoding::Utf8, ",");
        row("UTF-8", "Übung\tGewicht\nRudern\t40\n", Encoding::Utf8, "\t");
        row("UTF-16, little end first", utf16(wide, false, true), Encoding::Utf16Little, ";");
        row("UTF-16, big end first", utf16(wide, true, true), Encoding::Utf16Big, ";");
        row("UTF-16 without its mark", utf16(wide, false, false), Encoding::Utf16Little, ";");
        row("Latin-1",
            "\xDC"
            "bung;Gewicht\nRudern;40\n",
            Encoding::Latin1, ";");
        row("commas in numbers under semicolons", "Übung;Gewicht\nRudern;40,5\nRudern;60,5\n",
            Encoding::Utf8, ";");
        row("semicolons in a few texts", "Übung,Gewicht\n\"a;b\",40\nRudern,60\nRudern,70\n",
            Encoding::Utf8, ",");
    }
    void findsLettersAndDelimiter() {
        QFETCH(QByteArray, bytes);
        const FileFacts facts = factsOf(bytes.toStdString());
        QTEST(static_cast<int>(facts.layout.encoding), "encoding");
        QTEST(QByteArray(1, facts.layout.delimiter), "delimiter");
        QCOMPARE(facts.columns.size(), 2U);
        QCOMPARE(facts.columns[0].heading, "Übung");
    }

    void asksWhatCanBeReadInTwoWays_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("about");
        QTest::addColumn<int>("role");
        QTest::addColumn<bool>("asked");
        const auto row = [](const char* name, const char* text, About about, Tidy role,
                            bool asked) {
            QTest::newRow(name) << QByteArray(text) << static_cast<int>(about)
                                << static_cast<int>(role) << asked;
        };
        row("day or month first", "date,load,speed\n03/04/2026,60,0.9\n05/06/2026,70,0.8\n",
            About::DateOrder, TidyDate, true);
        row("one day that decides", "date,load,speed\n03/04/2026,60,0.9\n15/06/2026,70,0.8\n",
            About::DateOrder, TidyDate, false);
        row("the same day either way", "date,load,speed\n03/03/2026,60,0.9\n", About::DateOrder,
            TidyDate, false);
        row("points are the German order", "date,load,speed\n03.04.2026,60,0.9\n", About::DateOrder,
            TidyDate, false);
        row("a load of 1.5 kg or 1500 kg", "date;load;speed\n2026-03-04;1.500;0.9\n",
            About::Decimal, TidyLoad, true);
        row("another row decides", "date;load;speed\n2026-03-04;1.500;0.9\n2026-03-04;60.5;0.9\n",
            About::Decimal, TidyLoad, false);
        row("1120 m/s is no speed", "date;load;speed\n2026-03-04;60;1.120\n", About::Decimal,
            TidyVelocity, false);
        row("92 may be cm/s, or 0.92", "date;load;speed\n2026-03-04;60;92\n", About::SpeedUnit,
            TidyVelocity, true);
        row("cm/s is said", "date;load;speed (cm/s)\n2026-03-04;60;92\n", About::SpeedUnit,
            TidyVelocity, false);
        row("cm/s stands in the cells", "date;load;speed\n2026-03-04;60;92 cm/s\n",
            About::SpeedUnit, TidyVelocity, false);
        row("0.92 is m/s", "date;load;speed\n2026-03-04;60;0.92\n", About::SpeedUnit, TidyVelocity,
            false);
        row("no athlete", "date;load;speed\n2026-03-04;60;0.92\n", About::Role, TidyAthlete, true);
        row("no lift", "date;load;speed\n2026-03-04;60;0.92\n", About::Role, TidyLift, true);
        row("a load", "date;load;speed\n2026-03-04;60;0.92\n", About::Role, TidyLoad, false);
    }
    void asksWhatCanBeReadInTwoWays() {
        QFETCH(QByteArray, text);
        QFETCH(int, about);
        QFETCH(int, role);
        const FileFacts facts = factsOf(text.toStdString());
        const auto open = openQuestions(propose(facts), facts);
        QTEST(asks(open, static_cast<About>(about), static_cast<Tidy>(role)), "asked");
    }

    /// Each with its column and the cell that can be read in two ways; a kind of question without
    /// words would leave the coach an empty line.
    void everyQuestionHasItsWords() {
        const FileFacts facts = factsOf("Day;kg;speed\n03/04/2026;1.500;92\n");
        const auto asked = [&facts](const Question& question) {
            return english(questionWords(question, facts));
        };
        QCOMPARE(asked({.about = About::DateOrder, .column = 0, .sample = "03/04/2026"}),
                 std::string("In \"Day\", does 03/04/2026 begin with the day, the month or the "
                             "year?"));
        QCOMPARE(
            asked({.about = About::Decimal, .column = 1, .sample = "1.500"}),
            std::string("In \"kg\", is the mark in 1.500 a decimal mark or one of thousands?"));
        QCOMPARE(asked({.about = About::SpeedUnit, .column = 2, .sample = "92"}),
                 std::string("In \"speed\", is 92 in cm/s (or in hundredths of m/s), or in m/s?"));
        std::set<std::string> roles;
        for (const Tidy role : {TidyDate, TidyAthlete, TidyLift, TidyLoad, TidyVelocity})
            roles.insert(asked({.about = About::Role, .role = role}));
        QCOMPARE(roles.size(), std::size_t(5));
        QVERIFY(std::ranges::all_of(roles, [](const auto& each) { return each.ends_with('?'); }));
    }
    void lettersThatAreNotUtf8AreCautionedOf() {
        QVERIFY(letterCaution(factsOf("Jörg;60\n")).empty());
        QVERIFY(!letterCaution(factsOf("J\xf6rg;60\n")).empty()); // ö in Latin-1
    }

    void takesSpeedsSideBySide_data() {
        QTest::addColumn<QByteArray>("header");
        QTest::newRow("v1, v2, v3") << QByteArray("name,lift,date,load,v1,v2,v3");
        QTest::newRow("rep 1 ...") << QByteArray("name,lift,date,load,rep 1,rep 2,rep 3");
        QTest::newRow("Wdh. 1 (m/s)")
            << QByteArray("Name,Übung,Datum,Last,Wdh. 1 (m/s),Wdh. 2 (m/s),Wdh. 3 (m/s)");
        QTest::newRow("bare numbers") << QByteArray("name,lift,date,load,1,2,3");
    }
    void takesSpeedsSideBySide() {
        QFETCH(QByteArray, header);
        const Shape shape =
            propose(factsOf(header.toStdString() + "\nAda,Pull,2026-03-14,40,1.12,1.09,1.1\n"
                                                   "Ada,Pull,2026-03-14,60,0.87,0.9,\n"));
        QVERIFY(shape.rowIsSet);
        QCOMPARE(shape.columns[TidyVelocity].size(), 3U);
        QCOMPARE(columnOfRole(shape, TidyLoad), 3U);
        QVERIFY(shape.columns[TidyRep].empty());
    }

    void leavesMadeFiguresAlone() {
        // Mean velocity is the speed; its loss, a share of the 1RM and the peak are not.
        const Shape shape = propose(
            factsOf("date,athlete,lift,load,% 1RM,peak velocity,mean velocity,velocity loss\n"
                    "2026-03-14,Ada,Pull,60,70,1.4,0.9,0.1\n"));
        QCOMPARE(columnOfRole(shape, TidyLoad), 3U);
        QCOMPARE(columnOfRole(shape, TidyVelocity), 6U);
        QCOMPARE(shape.columns[TidyVelocity].size(), 1U);
        QCOMPARE(shape.fixed[TidyKind], "mean");
    }

    void passesTitlesOver() {
        const FileFacts facts = factsOf("Test day\n\ndate,athlete,lift,load,speed\n"
                                        "2026-03-14,Ada,Pull,60,0.9\n2026-03-14,Ada,Pull,70,0.8\n");
        QCOMPARE(facts.layout.skip, 1L);
        QCOMPARE(facts.columns[0].heading, "date");
        QCOMPARE(facts.rows, 2L);
    }

    void readsATableWithoutHeadings() {
        const FileFacts facts = factsOf("60\t0,92\t0,90\n70\t0,81\t0,80\n");
        QVERIFY(!facts.layout.header);
        const Shape shape = propose(facts);
        QCOMPARE(columnOfRole(shape, TidyLoad), 0U);
        QCOMPARE(shape.columns[TidyVelocity].size(), 2U);
        QVERIFY(shape.rowIsSet && shape.columns[TidyVelocity][0].decimal == Decimal::Comma);
        QCOMPARE(english(facts.columnName(1)), "column 2");
    }

    void takesARepAtOneMetrePerSecondAmongSpeeds_data() {
        QTest::addColumn<QString>("table");
        QTest::addColumn<int>("load");
        QTest::addColumn<QList<int>>("speeds");
        QTest::newRow("between") << "52,5\t0,887\n42,5\t1\t1\t0,98\t0,98\n"
                                 << 0 << QList<int>{1, 2, 3, 4};
        QTest::newRow("first of one line") << "42.5\t1\t0.98\t0.97\n" << 0 << QList<int>{2, 3};
        QTest::newRow("a count behind") << "60\t0.92\t3\n70\t0.80\t3\n" << 0 << QList<int>{1};
        QTest::newRow("set numbers before the load") << "1\t60\t0.92\n2\t70\t0.80\n"
                                                     << 1 << QList<int>{2};
        QTest::newRow("a light ball") << "2\t1.9\n3\t1.7\n" << 0 << QList<int>{1};
    }
    void takesARepAtOneMetrePerSecondAmongSpeeds() {
        QFETCH(QString, table);
        QFETCH(int, load);
        QFETCH(QList<int>, speeds);
        const Shape shape =
            propose(lookAt({.file = {}, .text = table.toStdString()},
                           {.encoding = {}, .delimiter = '\t', .skip = {}, .header = {}}));
        QCOMPARE(columnOfRole(shape, TidyLoad), std::size_t(load));
        QList<int> found;
        for (const ColumnUse& use : shape.columns[TidyVelocity])
            found << int(use.at);
        QCOMPARE(found, speeds);
    }

    void takesPoundsFromHeadingOrCell() {
        const auto unit = [](const std::string& text) { return propose(factsOf(text)).load; };
        QVERIFY(unit("load (lb),speed\n135,0.9\n") == MassUnit::Pound);
        QVERIFY(unit("load,speed\n135 lbs,0.9\n") == MassUnit::Pound);
        QVERIFY(unit("load (kg),speed\n60,0.9\n") == MassUnit::Kilogram);
    }

    void refusesWhatIsNoTable() {
        QVERIFY_THROWS_EXCEPTION(BadInput, factsOf("a,b\n1,\"open\n"));
        QVERIFY_THROWS_EXCEPTION(LogError, lookAt({.file = "/none/here.csv", .text = {}}));
        QCOMPARE(factsOf("").columns.size(), 0U);
    }

    void isWrittenAndReadBack() {
        const FileFacts facts = factsOf(german);
        Shape shape = propose(facts);
        shape.fixed[TidyDevice] = "Encoder: the grey one";
        shape.blankAsAbove = true;
        const std::string text = shapeText(shape, facts.headings());
        QVERIFY(text.find("column load, decimal comma, kg: Gewicht (kg)") != std::string::npos);
        QVERIFY(parseShape(text, facts.headings(), "map") == shape);
        const auto twoAlike = factsOf("v,v\n1.1,1.2\n");
        Shape both;
        both.rowIsSet = true;
        both.columns[TidyVelocity] = {{.at = 0, .decimal = {}}, {.at = 1, .decimal = {}}};
        QVERIFY(parseShape(shapeText(both, twoAlike.headings()), twoAlike.headings(), "map") ==
                both);
    }

    void refusesAMapThatDoesNotFit_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("no such column") << QByteArray("column date: Tag");
        QTest::newRow("no such number") << QByteArray("column date: #9");
        QTest::newRow("no such role") << QByteArray("column colour: Datum");
        QTest::newRow("two dates") << QByteArray("column date: Datum\ncolumn date: Übung");
        QTest::newRow("no fact") << QByteArray("date Datum");
        QTest::newRow("an unknown fact") << QByteArray("moon: full");
        QTest::newRow("an unknown unit") << QByteArray("column load, stone: Gewicht (kg)");
        QTest::newRow("a rep of two speeds")
            << QByteArray("a row is: a rep\ncolumn velocity: Satz\ncolumn velocity: Wdh");
    }
    void refusesAMapThatDoesNotFit() {
        QFETCH(QByteArray, text);
        QVERIFY_THROWS_EXCEPTION(BadInput,
                                 parseShape(text.toStdString(), factsOf(german).headings(), "map"));
    }

    void remembersByHeadings() {
        QCOMPARE(headingSignature({"Datum", "v1"}), headingSignature({"datum", "V1"}));
        QVERIFY(headingSignature({"Datum", "v1"}) != headingSignature({"v1", "Datum"}));
        QVERIFY(headingSignature({"ab", "c"}) != headingSignature({"a", "bc"}));
    }
};

QTEST_APPLESS_MAIN(TestProposal)
#include "tst_proposal.moc"
