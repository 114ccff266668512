// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csvreader.h"
#include "tests/exchange/csvfiles.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::exchange;

namespace {

std::string shown(const tests::CsvFiles& files, const std::string& text, char delimiter = ',') {
    std::string all;
    readCsv(files.write("t.csv", text), delimiter, [&](const CsvRow& row) {
        all += std::to_string(row.line) + ":";
        for (const std::string& field : row.fields)
            all += "[" + field + "]";
        all += " ";
    });
    return all;
}

} // namespace

// Expected values: RFC 4180 (quotes, CRLF), and what each text plainly holds.
class TestCsvReader : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void readsRowsWithTheirLines_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("rows");
        const auto row = [](const char* name, const QByteArray& text, const char* rows) {
            QTest::newRow(name) << text << QByteArray(rows);
        };
        row("plain", "a,b\n1,2\n", "1:[a][b] 2:[1][2] ");
        row("no line end at the end", "a,b\n1,2", "1:[a][b] 2:[1][2] ");
        row("CRLF", "a,b\r\n1,2\r\n", "1:[a][b] 2:[1][2] ");
        row("lone CR", "a,b\r1,2\r3,4", "1:[a][b] 2:[1][2] 3:[3][4] ");
        row("a byte order mark",
            "\xEF\xBB\xBF"
            "a,b\n",
            "1:[a][b] ");
        row("empty lines left out and counted", "a\n\n\n  \nb\n\r\nc", "1:[a] 5:[b] 7:[c] ");
        row("a comma in quotes", "\"a,b\",c\n", "1:[a,b][c] ");
        row("a quote in quotes", "\"say \"\"go\"\"\",c\n", "1:[say \"go\"][c] ");
        row("a line break in quotes", "\"a\nb\",c\nd,e\n", "1:[a\nb][c] 3:[d][e] ");
        row("a CRLF in quotes", "\"a\r\nb\"\r\nd\r\n", "1:[a\r\nb] 3:[d] ");
        row("blanks around a cell", " a , b \n", "1:[a][b] ");
        row("blanks in quotes stay", "\" a \",b\n", "1:[ a ][b] ");
        row("empty cells", ",,\n", "1:[][][] ");
        row("UTF-8", "\xC3\x84rmel,\xF0\x9F\x9A\xA3\n", "1:[\xC3\x84rmel][\xF0\x9F\x9A\xA3] ");
        row("an empty file", "", "");
        row("only a byte order mark", "\xEF\xBB\xBF", "");
    }
    void readsRowsWithTheirLines() {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, rows);
        const tests::CsvFiles files;
        QCOMPARE(QByteArray::fromStdString(shown(files, text.toStdString())), rows);
    }

    void takesAnotherDelimiter() {
        const tests::CsvFiles files;
        QCOMPARE(shown(files, "a;b,c\n", ';'), std::string("1:[a][b,c] "));
    }

    void refusesWithTheLine_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("line");
        QTest::addColumn<QString>("foundPart");
        const auto row = [](const char* name, const QByteArray& text, int line, const char* part) {
            QTest::newRow(name) << text << line << QString::fromUtf8(part);
        };
        row("a NUL", QByteArray("a,b\n1,\0\n", 8), 2, "NUL");
        row("UTF-16 with its mark",
            QByteArray("\xFF\xFE"
                       "a\0,\0b\0",
                       8),
            1, "UTF-16");
        row("UTF-16 without", QByteArray("a\0,\0b\0", 6), 1, "NUL");
        row("Latin-1", "a,b\n1,\xE4x\n", 2, "not UTF-8");
        row("an overlong form", "\xC0\xAF\n", 1, "not UTF-8");
        row("a surrogate", "\xED\xA0\x80\n", 1, "not UTF-8");
        row("past the last character", "\xF4\x90\x80\x80\n", 1, "not UTF-8");
        row("cut in half at the end", "a\n\xC3", 2, "cut in half");
        row("a quote that never closes", "a,b\n1,2\n3,\"x\n4,5\n", 3, "never closes");
        row("a quote inside a cell", "a,b\n1,x\"y\n", 2, "middle of a cell");
        row("text after a closing quote", "a,b\n1,\"x\"y\n", 2, "middle of a cell");
        row("a cell too long", QByteArray("a\n") + QByteArray(1'000'001, 'x') + "\n", 2,
            "1,000,000 bytes");
        row("a quote that swallows the file", QByteArray("a\n\"") + QByteArray(2'000'000, '\n'), 2,
            "1,000,000 bytes");
    }
    void refusesWithTheLine() {
        QFETCH(QByteArray, text);
        QFETCH(int, line);
        QFETCH(QString, foundPart);
        const tests::CsvFiles files;
        try {
            shown(files, text.toStdString());
            QFAIL("taken");
        } catch (const BadInput& error) {
            QCOMPARE(error.where().line, long(line));
            QCOMPARE(error.where().file, files.path("t.csv").string());
            QVERIFY2(QString::fromStdString(english(error.found())).contains(foundPart),
                     error.what());
            QVERIFY(!error.expected().empty());
        }
    }

    void takesACellOfTheLongestSize() {
        const tests::CsvFiles files;
        std::size_t size = 0;
        readCsv(files.write("t.csv", std::string(1'000'000, 'x')), ',',
                [&](const CsvRow& row) { size = row.fields.at(0).size(); });
        QCOMPARE(size, std::size_t(1'000'000));
    }

    void saysWhereAFileCannotBeRead() {
        const tests::CsvFiles files;
        QVERIFY_THROWS_EXCEPTION(LogError,
                                 readCsv(files.path("absent.csv"), ',', [](const CsvRow&) {}));
        QVERIFY_THROWS_EXCEPTION(LogError, readCsv(files.path("."), ',', [](const CsvRow&) {}));
    }

    void stopsWhenTheVisitorThrows() {
        const tests::CsvFiles files;
        int rows = 0;
        const auto visit = [&](const CsvRow&) {
            if (++rows == 2)
                throw std::runtime_error("enough");
        };
        QVERIFY_THROWS_EXCEPTION(std::runtime_error,
                                 readCsv(files.write("t.csv", "a\nb\nc\nd\n"), ',', visit));
        QCOMPARE(rows, 2);
    }

    // The reader works in pieces of 64 KiB: a line end, a quote or a character may lie across two.
    void readsAcrossItsPieces() {
        const tests::CsvFiles files;
        for (const int before : {65533, 65534, 65535, 65536, 65537}) {
            const std::string lead(static_cast<std::size_t>(before), 'x');
            QCOMPARE(shown(files, lead + "\r\n\"\xC3\xA4\"\"b\"\r\nc"),
                     "1:[" + lead + "] 2:[\xC3\xA4\"b] 3:[c] ");
        }
    }
};

QTEST_APPLESS_MAIN(TestCsvReader)
#include "tst_csvreader.moc"
