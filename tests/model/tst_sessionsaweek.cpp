// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions a week as a coach types them: one number or two, halves, either decimal mark.
#include "core/model/sessionsaweek.h"
#include "core/model/words.h"

#include <QTest>

#include <limits>

using namespace slopebook;

class TstSessionsAWeek : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void readsWhatIsTyped_data() {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<double>("fewest");
        QTest::addColumn<double>("most");
        const auto row = [](const char* typed, double fewest, double most) {
            QTest::newRow(typed) << QString::fromUtf8(typed) << fewest << most;
        };
        row("3", 3, 3);
        row("2-3", 2, 3);
        row("2.5", 2.5, 2.5);
        row("2,5", 2.5, 2.5);
        row("0.5", 0.5, 0.5);
        row("21", 21, 21);
        row("2 - 3", 2, 3);
        row(" 2,5 – 3,5 ", 2.5, 3.5);
        row("1—2", 1, 2);
        row("3.0", 3, 3);
        row("4-4", 4, 4);
    }
    void readsWhatIsTyped() {
        QFETCH(QString, typed);
        QFETCH(double, fewest);
        QFETCH(double, most);
        const auto read = sessionsAWeek(typed.toStdString());
        QVERIFY(read.has_value());
        QVERIFY(*read == (SessionsAWeek{.fewest = fewest, .most = most}));
    }

    void refusesOtherText_data() {
        QTest::addColumn<QString>("typed");
        for (const char* typed : {"",          " ",          "-",
                                  "3-",        "-3",         "3-2",
                                  "0",         "0-2",        "21.5",
                                  "22",        "2.3",        "2.25",
                                  "2-2.7",     "three",      "2 to 3",
                                  "2x",        "2-3-4",      "2;3",
                                  "1e1",       "+2",         "2..5",
                                  "2,5,5",     "nan",        "inf",
                                  "0x2",       "2026-03-14", "99999999999999999999",
                                  "1.000.000", "３"})
            QTest::newRow(*typed == '\0' ? "nothing" : typed) << QString::fromUtf8(typed);
    }
    void refusesOtherText() {
        QFETCH(QString, typed);
        QVERIFY(!sessionsAWeek(typed.toStdString()));
    }

    void whatIsWrittenReadsBack() {
        int pairs = 0;
        for (int fewest = 1; fewest <= 42; ++fewest)
            for (int most = fewest; most <= 42; ++most, ++pairs) {
                const auto planned = sessionsAWeek(fewest / 2.0, most / 2.0);
                QVERIFY(planned.has_value());
                QVERIFY(sessionsAWeek(typedText(*planned)) == planned);
            }
        QCOMPARE(pairs, 42 * 43 / 2);
    }

    void refusesOtherNumbers() {
        const double none = std::numeric_limits<double>::quiet_NaN();
        QVERIFY(!sessionsAWeek(none, 3) && !sessionsAWeek(2, none));
        QVERIFY(!sessionsAWeek(0, 1) && !sessionsAWeek(3, 2.5) && !sessionsAWeek(2, 21.5));
        QVERIFY(!sessionsAWeek(2.1, 3) && !sessionsAWeek(-2, 3));
    }

    void isSaidInWords() {
        QCOMPARE(english(sayAWeek({1, 1})), "1 session a week");
        QCOMPARE(english(sayAWeek({3, 3})), "3 sessions a week");
        QCOMPARE(english(sayAWeek({2.5, 2.5})), "2.5 sessions a week");
        QCOMPARE(english(sayAWeek({0.5, 1})), "0.5 to 1 sessions a week");
    }
};

QTEST_APPLESS_MAIN(TstSessionsAWeek)
#include "tst_sessionsaweek.moc"
