// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cells.h"
#include "core/model/words.h"

#include <QTest>

#include <limits>
#include <rapidcheck.h>

using namespace slopebook;
using namespace slopebook::exchange;

class TestCells : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void guardsWhatASpreadsheetWouldRun_data() {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("cell");
        const auto row = [](const char* name, const char* text, const char* cell) {
            QTest::newRow(name) << QString::fromUtf8(text) << QString::fromUtf8(cell);
        };
        row("a formula", "=1+1", "'=1+1");
        row("a telephone number", "+49 170", "'+49 170");
        row("a minus", "-5", "'-5");
        row("an at sign", "@x", "'@x");
        row("a tab", "\t=1", "'\t=1");
        row("a carriage return", "\r=1", "'\r=1");
        row("a formula after blanks", "  =1", "'  =1");
        row("a guard that was typed", "'=1", "''=1");
        row("two guards that were typed", "''=1", "'''=1");
        row("plain text", "missed the groove", "missed the groove");
        row("an apostrophe", "'tis heavy", "'tis heavy");
        row("an apostrophe alone", "'", "'");
        row("nothing", "", "");
        row("an equals sign inside", "a=b", "a=b");
    }
    void guardsWhatASpreadsheetWouldRun() {
        QFETCH(QString, text);
        QFETCH(QString, cell);
        QCOMPARE(QString::fromStdString(guarded(text.toStdString())), cell);
        QCOMPARE(QString::fromStdString(unguarded(cell.toStdString())), text);
    }

    void anyTextComesBack() {
        const auto awkward =
            rc::gen::container<std::string>(rc::gen::elementOf(std::string("'=+-@\t\r\n \",;ab1")));
        QVERIFY(rc::check("unguarded(guarded(text)) == text", [&] {
            const std::string text = *awkward;
            RC_ASSERT(unguarded(guarded(text)) == text);
        }));
    }

    void readsNumbers_data() {
        QTest::addColumn<QString>("cell");
        QTest::addColumn<double>("value");
        QTest::newRow("a speed") << "0.92" << 0.92;
        QTest::newRow("no leading nought") << ".5" << 0.5;
        QTest::newRow("whole") << "60" << 60.0;
        QTest::newRow("an exponent") << "9.2e-1" << 0.92;
        QTest::newRow("below nought") << "-1.5" << -1.5;
    }
    void readsNumbers() {
        QFETCH(QString, cell);
        QFETCH(double, value);
        QCOMPARE(readNumber(cell.toStdString()).value(), value);
    }

    void refusesWhatIsNoNumber_data() {
        QTest::addColumn<QString>("cell");
        for (const char* cell :
             {"", " ", "0,92", "1.250,5", "nan", "inf", "-inf", "infinity", "0x1p3", "1e999", "+1",
              "1 ", " 1", "1.2.3", "12kg", "--1", "1'000"})
            QTest::newRow(*cell ? cell : "nothing") << cell;
    }
    void refusesWhatIsNoNumber() {
        QFETCH(QString, cell);
        QVERIFY(!readNumber(cell.toStdString()));
    }

    void writesTheShortestDigits() {
        QCOMPARE(writeNumber(0.1), std::string("0.1"));
        QCOMPARE(writeNumber(0.30000000000000004), std::string("0.30000000000000004"));
        QCOMPARE(writeNumber(60), std::string("60"));
        QCOMPARE(writeNumber(1e-7), std::string("0.0000001"));
        QCOMPARE(writeKilograms(Mass{72'500}), std::string("72.5"));
        QVERIFY(rc::check("a number reads back the same", [] {
            const double value = *rc::gen::arbitrary<double>();
            RC_PRE(std::isfinite(value));
            RC_ASSERT(readNumber(writeNumber(value)) == value);
        }));
        const double least = std::numeric_limits<double>::denorm_min();
        QCOMPARE(readNumber(writeNumber(least)), std::optional(least));
    }

    void countsFromOne() {
        QCOMPARE(readCount("1"), std::optional(1));
        QCOMPARE(readCount("1000000"), std::optional(1'000'000));
        for (const char* cell : {"0", "-1", "1.0", "", "x", "1000001", "99999999999"})
            QVERIFY2(!readCount(cell), cell);
    }

    void quotesWhereCsvNeedsIt() {
        QCOMPARE(csvText("plain"), std::string("plain"));
        QCOMPARE(csvText("a,b"), std::string("\"a,b\""));
        QCOMPARE(csvText("say \"go\""), std::string("\"say \"\"go\"\"\""));
        QCOMPARE(csvText(" blank before"), std::string("\" blank before\""));
        QCOMPARE(csvText("two\nlines"), std::string("\"two\nlines\""));
        QCOMPARE(csvText("=1,2"), std::string("\"'=1,2\""));
    }

    void saysWhatWasFound() {
        QCOMPARE(english(found("")), std::string("nothing"));
        QCOMPARE(english(found("0,92")), std::string("\"0,92\""));
        const std::string cut = english(found(std::string(59, 'x') + "\xC3\xA4\xC3\xA4"));
        QCOMPARE(cut, "\"" + std::string(59, 'x') + "...\""); // not half a character
    }
};

QTEST_APPLESS_MAIN(TestCells)
#include "tst_cells.moc"
