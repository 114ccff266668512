// SPDX-License-Identifier: GPL-3.0-or-later
// ISO 8601 calendar dates. Day counts: ISO 8601's Gregorian rules (leap years: 2024, 2000; not
// 1900).
#include "core/model/date.h"
#include "core/model/daystretch.h"
#include "core/model/errors.h"

#include <QTest>

using namespace slopebook;

class TstDate : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void readsWhatItWrites_data() {
        QTest::addColumn<QString>("text");
        for (const char* text :
             {"2026-03-14", "2024-02-29", "2000-02-29", "1999-12-31", "0001-01-01"})
            QTest::newRow(text) << QString::fromLatin1(text);
    }
    void readsWhatItWrites() {
        QFETCH(QString, text);
        const auto date = parseIsoDate(text.toStdString());
        QVERIFY(date.has_value());
        QCOMPARE(QString::fromStdString(isoDate(*date)), text);
    }
    void refuses_data() {
        QTest::addColumn<QString>("text");
        for (const char* text : {"", "2026-3-14", "14.03.2026", "03/14/2026", "2026-02-29",
                                 "1900-02-29", "2026-13-01", "2026-00-10", "2026-04-31",
                                 "2026-03-14 ", "2026-03-14T10", "2026-+3-14", "abcd-ef-gh"})
            QTest::newRow(*text ? text : "nothing") << QString::fromLatin1(text);
    }
    void refuses() {
        QFETCH(QString, text);
        QVERIFY(!parseIsoDate(text.toStdString()).has_value());
    }
    void stretchesOfDays() {
        const auto days = parseStretch("2026-02-27..2026-03-02");
        QVERIFY(days.has_value());
        QCOMPARE(isoStretch(*days), std::string("2026-02-27..2026-03-02"));
        QVERIFY(days->holds(*parseIsoDate("2026-02-27")) &&
                days->holds(*parseIsoDate("2026-03-02")));
        QVERIFY(!days->holds(*parseIsoDate("2026-02-26")) &&
                !days->holds(*parseIsoDate("2026-03-03")));
        QVERIFY(parseStretch("2026-03-14..2026-03-14").has_value());
        for (const char* none : {"", "..", "2026-03-14", "2026-03-14..", "..2026-03-14", "Spring",
                                 "2026-03-14...2026-03-20", "2026-03-14..2026-02-30",
                                 "2026-03-14..Spring", "2026-03-14#2..2026-03-20"})
            QVERIFY2(!parseStretch(none).has_value(), none);
        QVERIFY_THROWS_EXCEPTION(BadInput, parseStretch("2026-03-02..2026-02-27"));
    }
    void countsDays() {
        QCOMPARE(daysBetween(*parseIsoDate("2024-02-28"), *parseIsoDate("2024-03-01")), 2L);
        QCOMPARE(daysBetween(*parseIsoDate("2023-02-28"), *parseIsoDate("2023-03-01")), 1L);
        QCOMPARE(daysBetween(*parseIsoDate("2026-03-14"), *parseIsoDate("2026-03-07")), -7L);
    }
};

QTEST_APPLESS_MAIN(TstDate)
#include "tst_date.moc"
