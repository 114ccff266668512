// SPDX-License-Identifier: GPL-3.0-or-later
// Workbooks: what their cells mean, by the standards (ECMA-376, 5th edition, part 1; OASIS ODF 1.3
// part 3), and those that lie or are broken.
#include "core/exchange/cells.h"
#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "core/exchange/sheet.h"
#include "core/exchange/sheetcells.h"
#include "core/exchange/tidyexport.h"
#include "tests/exchange/csvfiles.h"
#include "tests/exchange/workbooks.h"

#include <QTest>

#include <random>

using namespace slopebook;
using namespace slopebook::exchange;
using namespace slopebook::tests;

namespace {

using Rows = std::vector<std::string>; // "3: a|b|c"

Rows rowsOf(const std::filesystem::path& file, const std::string& sheet = {}) {
    Rows rows;
    readSheet(file, sheet, [&](const CsvRow& row) {
        std::string line = std::to_string(row.line) + ":";
        for (const std::string& field : row.fields)
            line += " " + field + "|";
        for (const CellFault& fault : row.faults)
            line += " !" + std::to_string(fault.at);
        rows.push_back(line);
    });
    return rows;
}

std::string shown(const Rows& rows) {
    std::string all;
    for (const std::string& row : rows)
        all += row + "\n";
    return all;
}

#define COMPARE_ROWS(found, ...)                                                                   \
    QCOMPARE(QString::fromStdString(shown(found)), QString::fromStdString(shown(Rows{__VA_ARGS__})))

std::string odsCell(const std::string& attributes, const std::string& inside = {}) {
    return "<table:table-cell " + attributes + ">" + inside + "</table:table-cell>";
}
std::string odsText(const std::string& text) {
    return odsCell("office:value-type=\"string\"", "<text:p>" + text + "</text:p>");
}
std::string odsNumber(const std::string& value) {
    return odsCell("office:value-type=\"float\" office:value=\"" + value + "\"",
                   "<text:p>shown otherwise</text:p>");
}
std::string odsTable(const std::string& name, const std::string& rows,
                     const std::string& more = {}) {
    return "<table:table table:name=\"" + name + "\" " + more + ">" + rows + "</table:table>";
}
std::string odsRow(const std::string& cells, const std::string& more = {}) {
    return "<table:table-row " + more + ">" + cells + "</table:table-row>";
}
std::string texts(const std::vector<std::string>& cells) {
    std::string all;
    for (const auto& cell : cells)
        all += odsText(cell);
    return all;
}
std::string inlineCells(const std::vector<std::string>& cells) {
    std::string all;
    for (const auto& cell : cells)
        all += "<c t=\"inlineStr\"><is><t>" + cell + "</t></is></c>";
    return all;
}

const std::string sets =
    "<row>" + inlineCells({"date", "athlete", "lift", "set", "load_kg", "rep", "velocity"}) +
    "</row><row><c s=\"1\"><v>46095</v></c>" + inlineCells({"Ada", "Bench pull"}) +
    "<c><v>1</v></c><c><v>40</v></c><c><v>1</v></c><c><v>1.234</v></c></row>";
const std::string dayStyle = R"(<xf numFmtId="0"/><xf numFmtId="14"/>)";

} // namespace

class TestSheets : public QObject {
    Q_OBJECT
    CsvFiles m_files;

    std::filesystem::path xlsx(const XlsxText& text, const std::string& name = "a.xlsx") {
        const auto file = m_files.path(name);
        writeZip(file, xlsxParts(text));
        return file;
    }
    std::filesystem::path ods(const std::string& tables) {
        const auto file = m_files.path("a.ods");
        writeZip(file, odsParts(tables));
        return file;
    }
    // What is refused, in words; empty where it is not.
    static std::string refusal(const std::filesystem::path& file) {
        try {
            if (isWorkbook(file))
                rowsOf(file);
        } catch (const BadInput& bad) {
            return bad.what();
        }
        return {};
    }

private Q_SLOTS:
    void momentsByTheStandard_data() {
        QTest::addColumn<double>("days");
        QTest::addColumn<bool>("from1904");
        QTest::addColumn<QString>("expected");
        // ECMA-376 part 1, 18.17.4.1: the first and last days of both systems.
        QTest::newRow("first") << 1.0 << false << "1900-01-01";
        QTest::newRow("last") << 2958465.0 << false << "9999-12-31";
        QTest::newRow("first of 1904") << 0.0 << true << "1904-01-01";
        QTest::newRow("last of 1904") << 2957003.0 << true << "9999-12-31";
        // Day 60 is the 29 February 1900 that never was.
        QTest::newRow("before") << 59.0 << false << "1900-02-28";
        QTest::newRow("never") << 60.0 << false << "60";
        QTest::newRow("after") << 61.0 << false << "1900-03-01";
        // By the calendar: 36526 is 2000-01-01; 1904 is 1462 days less.
        QTest::newRow("2000") << 36526.0 << false << "2000-01-01";
        QTest::newRow("2000 of 1904") << 35064.0 << true << "2000-01-01";
        QTest::newRow("with a time") << 46095.4375 << false << "2026-03-14 10:30:00";
        QTest::newRow("a second to midnight")
            << 46095.0 - 1.0 / 86400 << false << "2026-03-13 23:59:59";
        QTest::newRow("rounded to midnight") << 46095.0 - 1e-9 << false << "2026-03-14";
        QTest::newRow("time alone") << 0.75 << false << "18:00:00";
        QTest::newRow("before all") << -1.0 << false << "-1";
        QTest::newRow("after all") << 2958466.0 << false << "2958466";
    }
    void momentsByTheStandard() {
        QFETCH(double, days);
        QFETCH(bool, from1904);
        QFETCH(QString, expected);
        QCOMPARE(QString::fromStdString(momentText(days, from1904)), expected);
    }

    void formatsByTheStandard_data() {
        QTest::addColumn<QString>("code");
        QTest::addColumn<int>("format");
        const auto number = static_cast<int>(SheetFormat::Number);
        const auto moment = static_cast<int>(SheetFormat::Moment);
        const auto elapsed = static_cast<int>(SheetFormat::Elapsed);
        for (const char* code :
             {"General", "0.00", "#,##0.00;[Red]-#,##0.00", "0.00E+00", "@", "0.0\" m/s\"", "0\\d",
              "_-* #,##0.00\\ [$kr-41D]_-", "0.00\\ \"days\"", "[Yellow]0.0", "[Magenta]0",
              "0;\"minus \"0;\"y\""})
            QTest::newRow(code) << code << number;
        for (const char* code :
             {"yyyy-mm-dd", "d/m/yy", "[$-407]d. mmmm yyyy", "mm:ss.0", "h:mm AM/PM", "YYYY\\-MM",
              "[$-F800]dddd, mmmm dd, yyyy", "\"on \"d.m."})
            QTest::newRow(code) << code << moment;
        for (const char* code : {"[h]:mm:ss", "[hh]:mm", "[mm]:ss", "[s]"})
            QTest::newRow(code) << code << elapsed;
    }
    void formatsByTheStandard() {
        QFETCH(QString, code);
        QFETCH(int, format);
        QCOMPARE(static_cast<int>(formatOfCode(code.toStdString())), format);
    }
    void builtInFormatsByTheStandard() { // 18.8.30
        for (const int number : {0, 1, 2, 9, 10, 11, 12, 37, 40, 48, 49, 164})
            QCOMPARE(builtInFormat(number), SheetFormat::Number);
        for (const int number : {14, 17, 18, 21, 22, 45, 47})
            QCOMPARE(builtInFormat(number), SheetFormat::Moment);
        QCOMPARE(builtInFormat(46), SheetFormat::Elapsed);
    }

    void columnsByTheirLetters() {
        for (const auto& [letters, column] : {std::pair{"A1", 0U},
                                              {"Z9", 25U},
                                              {"AA10", 26U},
                                              {"AZ1", 51U},
                                              {"XFD1048576", 16383U}})
            QCOMPARE(columnOfCell(letters), std::optional<std::size_t>(column));
        for (const char* none : {"", "1", "$A$1", "ABCDE1"})
            QCOMPARE(columnOfCell(none), std::nullopt);
        for (std::size_t column = 0; column < 20000; ++column)
            if (column < 18278) // ZZZ
                QCOMPARE(columnOfCell(columnLetters(column) + "7"), std::optional(column));
    }

    void aNumberIsReadInOneWayOnly() {
        for (const double value : {1.234, 0.512, 12.345, 1234.0, 0.1, 1.06, 1e-7, 123456.789}) {
            const std::string text = sheetNumber(value);
            QCOMPARE(readMarked(text, Decimal::Point), std::optional(value));
            const auto comma = readMarked(text, Decimal::Comma);
            QVERIFY2(!comma || *comma == value, text.c_str());
        }
    }

    void everyKindOfCellOfXlsx() {
        const auto file = xlsx(
            {.sheetData =
                 R"(<row r="2"><c r="A2" t="s"><v>0</v></c><c r="C2" t="s"><v>1</v></c>)"
                 R"(<c r="D2" t="inlineStr"><is><r><t>in</t></r><r><t>line</t></r><rPh><t>no</t></rPh></is></c></row>)"
                 R"(<row r="4"><c r="A4"><v>0.70999999999999996</v></c><c><v>1.5E-2</v></c>)"
                 R"(<c r="D4" t="b"><v>1</v></c><c t="b"><v>0</v></c><c t="str"><f>A1</f><v>text_x000A_made</v></c></row>)"
                 R"(<row r="5"><c t="e"><v>#DIV/0!</v></c><c><f>A2*2</f></c><c><f>A2*2</f><v>1.42</v></c><c t="str"><f>A9</f><v></v></c></row>)"
                 R"(<row r="6" s="1"><c s="1"><v>46095</v></c><c s="2"><v>1.5104166666666667</v></c><c s="3"><v>46095.4375</v></c><c t="d"><v>2026-03-14T00:00:00</v></c><c s="9"><v>7</v></c></row>)"
                 R"(<row r="7"><c s="1"/></row><row><c t="s"><v></v></c><c><v>1</v></c></row>)",
             .sharedTexts =
                 R"(<si><t xml:space="preserve"> one </t></si><si><r><t>t</t></r><r><rPr/><t>wo</t></r><rPh sb="0" eb="1"><t>spoken</t></rPh><phoneticPr/></si>)",
             .formats =
                 R"(<numFmt numFmtId="164" formatCode="[h]:mm"/><numFmt numFmtId="165" formatCode="dd/mm/yyyy\ hh:mm"/>)",
             .styles =
                 R"(<xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="164"/><xf numFmtId="165"/>)"});
        COMPARE_ROWS(rowsOf(file), "2:  one | | two| inline|",
                     "4: 0.71| 0.0150| | 1| 0| text\nmade|", "5: #DIV/0!| =| 1.42| | | | !0 !1",
                     "6: 2026-03-14| 36:15:00| 2026-03-14 10:30:00| 2026-03-14| 7| |",
                     "8: | 1| | | | |");
    }

    void placesOfPartsByThePackage() {
        // Part 2, 9.3: a target may be absolute, or lead out of the folder of what names it.
        for (const auto& [target, part] :
             {std::pair<std::string, std::string>{"/xl/worksheets/sheet1.xml",
                                                  "xl/worksheets/sheet1.xml"},
              {"../sheets/one.xml", "sheets/one.xml"},
              {"./worksheets/s.xml", "xl/worksheets/s.xml"},
              {"Worksheets/Sheet1.xml", "xl/worksheets/sheet1.xml"}}) {
            const auto file =
                xlsx({.sheetData = "<row><c><v>1</v></c></row>", .target = target, .part = part});
            COMPARE_ROWS(rowsOf(file), "1: 1|");
        }
    }

    void of1904() {
        for (const char* said : {"date1904=\"1\"", "date1904=\"true\""}) {
            const auto file = xlsx({.sheetData = "<row><c s=\"1\"><v>35064</v></c></row>",
                                    .styles = dayStyle,
                                    .workbookPr = said});
            COMPARE_ROWS(rowsOf(file), "1: 2000-01-01|");
        }
    }

    void everyKindOfCellOfOds() {
        const auto file = ods(
            odsTable("Hidden", odsRow(texts({"not this"})), "table:style-name=\"ta2\"") +
            odsTable(
                "Day",
                odsRow(odsCell("table:number-columns-repeated=\"1024\""),
                       "table:number-rows-repeated=\"3\"") +
                    odsRow(
                        texts({"one"}) + odsCell("table:number-columns-repeated=\"2\"") +
                        odsCell("office:value-type=\"string\"",
                                "<office:annotation><text:p>a note</text:p></office:annotation>"
                                "<text:p>t<text:s text:c=\"2\"/>w<text:span>o</text:span></text:p>"
                                "<text:p>lines</text:p>") +
                        odsCell("table:number-columns-repeated=\"16380\"")) +
                    odsRow(
                        odsNumber("0.71") +
                        odsCell("office:value-type=\"percentage\" office:value=\"0.85\"") +
                        odsCell("office:value-type=\"currency\" office:value=\"12.5\"") +
                        odsCell("office:value-type=\"boolean\" office:boolean-value=\"true\"") +
                        odsCell("office:value-type=\"date\" office:date-value=\"2026-03-14\"") +
                        odsCell("office:value-type=\"date\" "
                                "office:date-value=\"2026-03-14T10:30:00\"") +
                        odsCell("office:value-type=\"time\" office:time-value=\"PT36H15M00S\"")) +
                    odsRow(odsCell("calcext:value-type=\"error\" office:value-type=\"string\" "
                                   "office:string-value=\"\" table:formula=\"of:=1/0\"",
                                   "<text:p>#DIV/0!</text:p>") +
                           odsCell("table:formula=\"of:=[.A1]\"") + "<table:covered-table-cell/>" +
                           odsNumber("3")) +
                    odsRow(odsCell("office:value-type=\"float\" office:value=\"1\" "
                                   "table:number-columns-repeated=\"2\""),
                           "table:number-rows-repeated=\"2\"") +
                    "<table:table-row-group>" + odsRow(texts({"in a group"})) +
                    "</table:table-row-group>" +
                    odsRow(odsCell(""), "table:number-rows-repeated=\"1048576\"")) +
            odsTable("Other", odsRow(texts({"another"}))));
        COMPARE_ROWS(rowsOf(file), "4: one| | | t  wo\nlines|",
                     "5: 0.71| 0.85| 12.5| 1| 2026-03-14| 2026-03-14 10:30:00| 36:15:00|",
                     "6: #DIV/0!| =| | 3| | | | !0 !1", "7: 1| 1| | | | | |", "8: 1| 1| | | | | |",
                     "9: in a group| | | | | | |");
        COMPARE_ROWS(rowsOf(file, "Other"), "1: another|");
        COMPARE_ROWS(rowsOf(file, "Hidden"), "1: not this|");
        const std::vector<SheetName> names{{"Hidden", true}, {"Day", false}, {"Other", false}};
        QCOMPARE(sheetsOf(file), names);
    }

    void refusedInWords_data() {
        QTest::addColumn<QString>("what");
        QTest::addColumn<QString>("found");
        QTest::newRow("old") << "old"
                             << "a workbook of an old kind (.xls), or one locked";
        QTest::newRow("locked") << "locked"
                                << "a workbook that is locked by a password";
        QTest::newRow("no workbook") << "other zip"
                                     << "a package without a workbook";
        QTest::newRow("document type") << "doctype"
                                       << "brings a document type of its own";
        QTest::newRow("bomb") << "bomb"
                              << "unpacks to far more than it holds";
        QTest::newRow("deep") << "deep"
                              << "nested beyond reason";
        QTest::newRow("wide") << "wide"
                              << "a cell beyond the 500th column";
        QTest::newRow("row twice") << "row"
                                   << "a row that is there already, or after a later one";
        QTest::newRow("row in a row") << "nested"
                                      << "a row that is there already, or after a later one";
        QTest::newRow("cell twice") << "cell"
                                    << "a second value of the same cell";
        QTest::newRow("no shared text") << "text"
                                        << "a text that the workbook does not hold";
        QTest::newRow("no sheet") << "none"
                                  << "a workbook without a sheet of cells";
        QTest::newRow("empty zip") << "empty"
                                   << "damaged or not whole";
    }
    void refusedInWords() {
        QFETCH(QString, what);
        QFETCH(QString, found);
        auto file = xlsx({.sheetData = sets, .styles = dayStyle});
        XlsxText bad{.sheetData = sets, .styles = dayStyle};
        if (what == u"old")
            file = m_files.write("b.xls", std::string("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1") +
                                              std::string(504, '\0'));
        else if (what == u"locked")
            writeZip(file, xlsxParts(bad), "secret");
        else if (what == u"other zip")
            writeZip(file, {{"_rels/.rels", "<Relationships/>"}, {"word/document.xml", "<a/>"}});
        else if (what == u"doctype") {
            Parts parts = xlsxParts(bad);
            parts[3].second.insert(parts[3].second.find("<worksheet"),
                                   "<!DOCTYPE a [<!ENTITY b \"ha\">]>");
            writeZip(file, parts);
        } else if (what == u"bomb")
            bad.sheetData += "<!--" + std::string(60 << 20, ' ') + "-->";
        else if (what == u"row")
            bad.sheetData += "<row r=\"2\"><c><v>1</v></c></row>";
        else if (what == u"nested")
            bad.sheetData += "<row><c><v>1</v></c><row><c><v>2</v></c></row></row>";
        else if (what == u"cell")
            bad.sheetData += "<row><c r=\"A9\"><v>1</v></c><c r=\"A9\"><v>2</v></c></row>";
        else if (what == u"deep")
            for (int i = 0; i < 300; ++i)
                bad.sheetData += "<a>";
        else if (what == u"wide")
            bad.sheetData = R"(<row><c r="XFD1"><v>1</v></c></row>)";
        else if (what == u"text")
            bad.sheetData = R"(<row><c t="s"><v>3</v></c></row>)";
        else if (what == u"none")
            bad.sheets.clear();
        else if (what == u"empty")
            m_files.write("a.xlsx", std::string("PK\x05\x06") + std::string(5, '\0'));
        if (what == u"bomb" || what == u"deep" || what == u"wide" || what == u"text" ||
            what == u"none" || what == u"row" || what == u"nested" || what == u"cell")
            xlsx(bad);
        QVERIFY2(QString::fromStdString(refusal(file)).contains(found), refusal(file).c_str());
    }

    // Cut off anywhere, or a byte of it another: read as it was, or refused in words; never a part.
    void damagedAnywhere() {
        const auto whole = xlsx({.sheetData = sets, .styles = dayStyle});
        const std::string expected = shown(rowsOf(whole));
        const std::string bytes = m_files.read("a.xlsx");
        std::mt19937_64 random(20261127);
        for (std::size_t i = 0; i < 400; ++i) {
            std::string bad = bytes;
            if (i < 100)
                bad.resize(bytes.size() * i / 100);
            else
                bad[random() % bad.size()] = static_cast<char>(random() % 256);
            const auto file = m_files.write("bad.xlsx", bad);
            try {
                const std::string found = isWorkbook(file) ? shown(rowsOf(file)) : expected;
                QVERIFY2(found == expected || found.empty(), found.c_str());
            } catch (const BadInput& refused) {
                QVERIFY(!std::string(refused.what()).empty());
            }
        }
    }

    void intoALogAsItIs() {
        log::Log log = m_files.newLog();
        const auto file = xlsx({.sheetData = sets, .styles = dayStyle});
        QVERIFY(readsAsIs(file));
        const auto report = importTidy(log, {file}, {});
        const auto sessions = log.sessions(log.athletes().at(0).id);
        const auto session = log.session(sessions.at(0).id);
        QCOMPARE(isoDate(session.head.value.date), std::string("2026-03-14"));
        QCOMPARE(session.sets.at(0).set.reps.at(0).velocity, 1.234);
        QVERIFY(importTidy(log, {file}, {}).addedNothing());
        Q_UNUSED(report)
    }

    // Cells of typed numbers need no question of their marks; those of text still do.
    void numbersOfCellsAskNothing() {
        const std::string rows = "<row>" + inlineCells({"Datum", "Name", "Übung", "Last", "v"}) +
                                 "</row><row>" + "<c s=\"1\"><v>46095</v></c>" +
                                 inlineCells({"Ada", "Row"}) +
                                 "<c><v>40</v></c><c><v>1.234</v></c></row>";
        const Source source{.file = xlsx({.sheetData = rows, .styles = dayStyle}), .text = {}};
        const auto facts = lookAt(source);
        QVERIFY(openQuestions(propose(facts), facts).empty());
        const std::string typed =
            "<row>" + inlineCells({"Datum", "Name", "Übung", "Last", "v"}) + "</row><row>" +
            inlineCells({"2026-03-14", "Ada", "Row", "40", "1,234"}) + "</row>";
        const Source other{.file = xlsx({.sheetData = typed}), .text = {}};
        const auto facts2 = lookAt(other);
        const auto shape = propose(facts2);
        QCOMPARE(shape.columns[TidyVelocity].at(0).decimal, std::optional(Decimal::Comma));
    }

    void anErrorIsRefusedWhereItIsUsed() {
        const auto table = [&](const std::string& velocity, const std::string& beside) {
            return xlsx({.sheetData = "<row>" +
                                      inlineCells({"date", "athlete", "lift", "load", "velocity",
                                                   "made of it"}) +
                                      "</row><row>" + inlineCells({"2026-03-14", "Ada", "Row"}) +
                                      "<c><v>40</v></c>" + velocity + beside + "</row>"});
        };
        const std::string fine = "<c><v>1.1</v></c>", error = "<c t=\"e\"><v>#N/A</v></c>",
                          unmade = "<c><f>B2</f></c>";
        for (const auto& bad : {error, unmade}) {
            log::Log log = m_files.newLog(bad == error ? "error.slopebook" : "formula.slopebook");
            const auto take = [&](const std::filesystem::path& file) {
                const Source source{.file = file, .text = {}};
                const auto facts = lookAt(source);
                auto shape = propose(facts);
                shape.columns[TidyVelocity] = {{.at = 4, .decimal = Decimal::Point}};
                settle(shape, facts);
                return importShaped(log, source, shape, facts.headings(), {});
            };
            QVERIFY(take(table(fine, bad)).refused.empty());
            const auto refused = take(table(bad, fine));
            QCOMPARE(refused.refused.size(), std::size_t{1});
            QCOMPARE(refused.refused[0].where().line, 2L);
        }
    }

    void whichSheetIsGuessedOrAsked() {
        const std::string type =
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet";
        const auto book = [&](const std::string& first, const std::string& second,
                              const std::string& state) {
            return xlsx({.sheetData = first,
                         .styles = dayStyle,
                         .sheets = R"(<sheet name="Cover" sheetId="1" r:id="rId1"/>)"
                                   R"(<sheet name="Data" sheetId="2" r:id="rId2" )" +
                                   state + "/>",
                         .more = {{"xl/two.xml",
                                   "<worksheet><sheetData>" + second + "</sheetData></worksheet>"}},
                         .relations = "<Relationship Id=\"rId2\" Type=\"" + type +
                                      "\" Target=\"two.xml\"/>"});
        };
        const std::string cover = "<row>" + inlineCells({"Winter block"}) + "</row>";
        {
            const auto facts = lookAt({.file = book(cover, sets, ""), .text = {}});
            QCOMPARE(facts.layout.sheet, std::string("Data"));
            QVERIFY(!facts.sheetIsGuess);
            QVERIFY(openQuestions(propose(facts), facts).empty());
        }
        {
            const Source both{.file = book(sets, sets, ""), .text = {}};
            const auto facts = lookAt(both);
            QVERIFY(facts.sheetIsGuess);
            const auto open = openQuestions(propose(facts), facts);
            QCOMPARE(open.size(), std::size_t{1});
            QVERIFY(open[0].about == Question::About::Sheet);
            const auto told = lookAt(both, {.sheet = "Data"});
            const auto shape = propose(told);
            QVERIFY(openQuestions(shape, told).empty());
            const std::string text = shapeText(shape, told.headings());
            QVERIFY(parseShape(text, told.headings(), "map") == shape);
        }
        {
            const auto facts =
                lookAt({.file = book(sets, sets, "state=\"veryHidden\""), .text = {}});
            QCOMPARE(facts.layout.sheet, std::string("Cover"));
            QVERIFY(!facts.sheetIsGuess);
            QVERIFY(english(sheetWords(facts)).find("Data") != std::string::npos);
        }
    }

    // Written by libxlsxwriter, which is not ours: every sheet is its CSV.
    void ourOwnWorkbookIsItsCsv() {
        log::Log log = m_files.newLog("own.slopebook");
        importTidy(log, {xlsx({.sheetData = sets, .styles = dayStyle})}, {});
        const auto folder = m_files.path("out");
        exportTables(log, folder, {});
        const auto book = folder / "log.xlsx";
        int compared = 0;
        for (const SheetName& sheet : sheetsOf(book)) {
            const auto csv = folder / (sheet.name + ".csv");
            if (!std::filesystem::exists(csv))
                continue;
            std::vector<std::vector<std::string>> ofCsv, ofSheet;
            readCsv(csv, ',', [&](const CsvRow& row) { ofCsv.push_back(row.fields); });
            readSheet(book, sheet.name, [&](const CsvRow& row) {
                ofSheet.push_back(row.fields);
                ofSheet.back().resize(ofCsv.at(0).size());
                for (std::string& field : ofSheet.back())
                    if (const auto number = readMarked(field, Decimal::Point);
                        number && field.find('.') != std::string::npos)
                        field = writeNumber(*number);
            });
            QCOMPARE(ofSheet, ofCsv);
            ++compared;
        }
        QVERIFY(compared >= 5);
    }
};

QTEST_GUILESS_MAIN(TestSheets)
#include "tst_sheets.moc"
