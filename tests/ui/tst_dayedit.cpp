// SPDX-License-Identifier: GPL-3.0-or-later
// A date typed by keys, with and without its marks.
#include "ui/records/dayedit.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::ui;

class TestDayEdit : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void typedDates_data() {
        QTest::addColumn<QString>("keys");
        QTest::addColumn<QDate>("date");
        QTest::newRow("without marks") << QStringLiteral("20261124") << QDate(2026, 11, 24);
        QTest::newRow("with hyphens") << QStringLiteral("2026-11-24") << QDate(2026, 11, 24);
        QTest::newRow("a month below ten") << QStringLiteral("2026-05-30") << QDate(2026, 5, 30);
        QTest::newRow("month and day below ten")
            << QStringLiteral("2026-04-01") << QDate(2026, 4, 1);
        QTest::newRow("one digit and a hyphen")
            << QStringLiteral("2026-1-24") << QDate(2026, 1, 24);
        QTest::newRow("with points") << QStringLiteral("2026.11.24") << QDate(2026, 11, 24);
    }
    void typedDates() {
        QFETCH(QString, keys);
        QFETCH(QDate, date);
        DayEdit edit;
        edit.setDate(QDate(2025, 1, 31));
        edit.show();
        QVERIFY(QTest::qWaitForWindowExposed(&edit));
        edit.setFocus();
        edit.setSelectedSection(QDateTimeEdit::YearSection);
        QTest::keyClicks(&edit, keys);
        QTest::keyClick(&edit, Qt::Key_Tab);
        QCOMPARE(edit.date(), date);
    }
};

QTEST_MAIN(TestDayEdit)
#include "tst_dayedit.moc"
