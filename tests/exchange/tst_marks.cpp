// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/marks.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::exchange;

Q_DECLARE_METATYPE(slopebook::exchange::Decimal)
Q_DECLARE_METATYPE(slopebook::exchange::DateOrder)

namespace {
constexpr double none = -1e9;
} // namespace

class TestMarks : public QObject {
    Q_OBJECT
private Q_SLOTS:
    // Each value is what the digits say; source: common practice of writing numbers.
    void readsNumbers_data() {
        QTest::addColumn<QByteArray>("cell");
        QTest::addColumn<double>("point");
        QTest::addColumn<double>("comma");
        const auto row = [](const char* cell, double point, double comma) {
            QTest::newRow(cell) << QByteArray(cell) << point << comma;
        };
        row("72", 72, 72);
        row("72.5", 72.5, none);
        row("72,5", none, 72.5);
        row("1.200", 1.2, 1200);
        row("1,200", 1200, 1.2);
        row("0.920", 0.92, none); // no group of thousands begins with 0
        row("0,920", none, 0.92);
        row("1,234.5", 1234.5, none);
        row("1.234,5", none, 1234.5);
        row("1 234.5", 1234.5, none);
        row("1\u00a0234,5", none, 1234.5);
        row("1'234.5", 1234.5, none);
        row("1,234,567", 1234567, none);
        row("12,34", none, 12.34);
        row("1234,567", none, 1234.567);
        row("1,23,456", none, none);
        row(".92", 0.92, none);
        row(",92", none, 0.92);
        row(" 0.92 ", 0.92, none);
        row("-3.5", -3.5, none);
        row("+3.5", 3.5, none);
        row("9.2E-01", 0.92, none);
        row("9,2e-1", none, 0.92);
        row("92.", none, none);
        row("", none, none);
        row(".", none, none);
        row("0x10", none, none);
        row("inf", none, none);
        row("nan", none, none);
        row("1.2.3", none, none);
        row("fast", none, none);
        row("1e999", none, none);
        row("1,234.567,8", none, none);
    }
    void readsNumbers() {
        QFETCH(QByteArray, cell);
        const auto read = [&](Decimal mark) {
            return readMarked(cell.toStdString(), mark).value_or(none);
        };
        QTEST(read(Decimal::Point), "point");
        QTEST(read(Decimal::Comma), "comma");
    }

    void shiftsDecimalsWithoutRoundingTwice() {
        // The double nearest to 0.923 is what the literal is; 92.3 / 100 need not be.
        QCOMPARE(*readMarked("92.3", Decimal::Point, -2), 0.923);
        QCOMPARE(*readMarked("92,3", Decimal::Comma, -2), 0.923);
        QCOMPARE(*readMarked("9.23E1", Decimal::Point, -2), 0.923);
    }

    void takesUnitsOff_data() {
        QTest::addColumn<QByteArray>("cell");
        QTest::addColumn<QByteArray>("number");
        QTest::addColumn<QByteArray>("unit");
        QTest::newRow("a space") << QByteArray("72,5 kg") << QByteArray("72,5") << QByteArray("kg");
        QTest::newRow("none") << QByteArray("0.92m/s") << QByteArray("0.92") << QByteArray("m/s");
        QTest::newRow("no unit") << QByteArray(" 72 ") << QByteArray("72") << QByteArray("");
        QTest::newRow("no number") << QByteArray("fast") << QByteArray("fast") << QByteArray("");
        QTest::newRow("words before")
            << QByteArray("set 2 x") << QByteArray("set 2 x") << QByteArray("");
    }
    void takesUnitsOff() {
        QFETCH(QByteArray, cell);
        const std::string text = cell.toStdString();
        const WithUnit parts = splitUnit(text);
        QTEST(QByteArray::fromStdString(std::string(parts.number)), "number");
        QTEST(QByteArray::fromStdString(std::string(parts.unit)), "unit");
    }

    void readsDates_data() {
        QTest::addColumn<QByteArray>("cell");
        QTest::addColumn<QByteArray>("ymd");
        QTest::addColumn<QByteArray>("dmy");
        QTest::addColumn<QByteArray>("mdy");
        const auto row = [](const char* cell, const char* ymd, const char* dmy, const char* mdy) {
            QTest::newRow(cell) << QByteArray(cell) << QByteArray(ymd) << QByteArray(dmy)
                                << QByteArray(mdy);
        };
        row("2026-03-14", "2026-03-14", "", "");
        row("2026/3/4", "2026-03-04", "", "");
        row("20260314", "2026-03-14", "", "");
        row("2026-03-14T08:15:00Z", "2026-03-14", "", "");
        row("2026-03-14 08:15", "2026-03-14", "", "");
        row("14.3.2026", "", "2026-03-14", "");
        row("4.3.2026", "", "2026-03-04", ""); // points divide no month-day-year
        row("14/03/2026", "", "2026-03-14", "");
        row("03/14/2026", "", "", "2026-03-14");
        row("03/04/2026", "", "2026-04-03", "2026-03-04");
        row("3-4-26", "", "2026-04-03", "2026-03-04");
        row("14.03.26", "", "2026-03-14", "");
        row("3/14/2026 8:15 PM", "", "", "2026-03-14");
        row("14 Mar 2026", "", "2026-03-14", "");
        row("14. März 2026", "", "2026-03-14", "");
        row("14-Dez-26", "", "2026-12-14", "");
        row("March 14, 2026", "", "", "2026-03-14");
        row("31.2.2026", "", "", "");
        row("29.2.2024", "", "2024-02-29", "");
        row("29.2.2025", "", "", "");
        row("2026-13-01", "", "", "");
        row("14.3.", "", "", "");
        row("72.5", "", "", "");
        row("1.2.3", "", "", "");
        row("14.3.2026 morning", "", "", "");
        row("", "", "", "");
        row("today", "", "", "");
    }
    void readsDates() {
        QFETCH(QByteArray, cell);
        const auto read = [&](DateOrder order) {
            const auto date = readDate(cell.toStdString(), order);
            return date ? QByteArray::fromStdString(isoDate(*date)) : QByteArray("");
        };
        QTEST(read(DateOrder::YearMonthDay), "ymd");
        QTEST(read(DateOrder::DayMonthYear), "dmy");
        QTEST(read(DateOrder::MonthDayYear), "mdy");
    }
};

QTEST_APPLESS_MAIN(TestMarks)
#include "tst_marks.moc"
