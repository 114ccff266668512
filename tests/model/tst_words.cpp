// SPDX-License-Identifier: GPL-3.0-or-later
// Words in English: each kind of part, masses in both units, lists and sentences.
#include "core/model/exactmass.h"
#include "core/model/few.h"
#include "core/model/words.h"

#include <QTest>

#include <limits>

using namespace slopebook;

class TstWords : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aPlaceIsFilledOnce() {
        QCOMPARE(english(filled("%2 before %1", "%2", "b")), std::string("b before %2"));
        QCOMPARE(english(filled("100 % of %1, %3", 7)), std::string("100 % of 7, %3"));
    }
    void figures() {
        QCOMPARE(english(figure(1.005, 1)), std::string("1.0"));
        QCOMPARE(english(figure(-0.004, 2)), std::string("0.00"));
        QCOMPARE(english(signedFigure(2.25, 2)), std::string("+2.25"));
        QCOMPARE(english(signedFigure(-0.001, 2)), std::string("0.00"));
        QCOMPARE(english(figure(std::numeric_limits<double>::quiet_NaN(), 2)), std::string("-"));
    }
    /// 1 lb is 0.45359237 kg (agreement of 1959): 60 kg are 132.277 lb, 2.5 kg are 5.51 lb.
    void masses_data() {
        QTest::addColumn<double>("kg");
        QTest::addColumn<MassForm>("form");
        QTest::addColumn<QString>("inKg");
        QTest::addColumn<QString>("inLb");
        QTest::newRow("a load") << 60.0 << MassForm{} << "60 kg"
                                << "132.3 lb";
        QTest::newRow("a load of whole grams") << 72.125 << MassForm{} << "72.125 kg"
                                               << "159 lb";
        QTest::newRow("bare") << 60.0 << bareLoad << "60"
                              << "132.3";
        QTest::newRow("to tenths") << 72.04 << toTenths << "72 kg"
                                   << "158.8 lb";
        QTest::newRow("an estimate") << 72.04 << asEstimate << "72.0 kg"
                                     << "158.8 lb";
        QTest::newRow("a change") << 2.5 << asChange << "+2.5 kg"
                                  << "+5.5 lb";
        QTest::newRow("a change downwards") << -2.5 << asChange << "-2.5 kg"
                                            << "-5.5 lb";
        QTest::newRow("no change, bare") << -0.01 << bareChange << "0.0"
                                         << "0.0";
    }
    void masses() {
        QFETCH(double, kg);
        QFETCH(MassForm, form);
        QFETCH(QString, inKg);
        QFETCH(QString, inLb);
        const Words words = filled("%1", massWords(kg, form));
        QCOMPARE(QString::fromStdString(english(words)), inKg);
        QCOMPARE(QString::fromStdString(english(words, MassUnit::Pound)), inLb);
        QCOMPARE(kilograms(words.parts.front()), kg);
    }
    void lists() {
        QVERIFY(listed({}).empty());
        QCOMPARE(english(listed({asIs("a")})), std::string("a"));
        QCOMPARE(english(listed({asIs("a"), asIs("%2"), figure("3")})), std::string("a, %2, 3"));
        QCOMPARE(english(clauses({inWords(Mass{60'000}), asIs("b")}), MassUnit::Pound),
                 std::string("132.3 lb; b"));
        // A name with a comma within is not read as two of the list; a list in it is.
        const std::vector<Words> commas{asIs("Hop, left"), asIs("b"), figure("3")};
        QCOMPARE(english(listed(commas)), std::string("Hop, left \u00b7 b \u00b7 3"));
        QCOMPARE(english(listed({filled("%1, %2", "Hop", Mass{60'000}), asIs("b")})),
                 std::string("Hop, 60 kg \u00b7 b"));
        QCOMPARE(english(listed({listed({asIs("a"), asIs("b")}), asIs("c")})),
                 std::string("a, b, c"));
        const std::vector<std::string> names(12, "x");
        QCOMPARE(english(few(names)), std::string("x, x, x, x, x, x, x, x, x, x, and 2 more"));
    }
    void sentences() {
        QCOMPARE(english(asSentence(asIs("a clause"))), std::string("A clause."));
        QCOMPARE(english(asSentence(asIs("A sentence."))), std::string("A sentence."));
        QCOMPARE(english(asSentence(asIs("is it?"))), std::string("Is it?"));
        QCOMPARE(english(asSentence({})), std::string());
    }
};

QTEST_APPLESS_MAIN(TstWords)
#include "tst_words.moc"
