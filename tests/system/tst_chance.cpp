// SPDX-License-Identifier: GPL-3.0-or-later
// How many readings of a season chance alone would give: the number that season's JSON tells is the
// sum of what its cells tell, the sentence on the page says it, and for tests of known typical
// error it is what the normal distribution says.
#include "tests/system/program.h"

#include <QFile>
#include <QJsonArray>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>

using slopebook::tests::Ran;
using slopebook::tests::runProgram;
using namespace Qt::Literals::StringLiterals;

namespace {

/// How likely a standard normal number lies beyond z on either side.
double beyond(double z) {
    return std::erfc(z / std::sqrt(2.0));
}

struct Told {
    double sum = 0;   ///< of the cells' own chances
    int readings = 0; ///< cells that have one
};

Told toldByCells(const QJsonObject& season) {
    Told told;
    for (const QJsonValue& row : season[u"measures"_s].toArray())
        for (const QJsonValue& cell : row[u"cells"_s].toArray()) {
            const double chance = cell[u"by_chance"_s].toDouble(0);
            told.sum += chance;
            told.readings += chance > 0 ? 1 : 0;
        }
    return told;
}

} // namespace

class TestChance : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    /// A test whose typical error is published, 0.5 of its unit, once in each of three blocks.
    QString logOfTests() {
        const auto write = [&](const QString& name, const QByteArray& text) {
            QFile file(m_folder.filePath(name));
            if (!file.open(QIODevice::WriteOnly))
                qFatal("cannot write");
            file.write(text);
            return file.fileName();
        };
        const QString log = m_folder.filePath(u"tests.slopebook"_s);
        const Ran ran = runProgram(
            {u"import"_s, log,
             write(u"tests.csv"_s, "test,unit,better,sides,rule,attempts,formula,decimals,"
                                   "typical_error,typical_error_in,typical_error_source,smallest,"
                                   "smallest_source\n"
                                   "Sit and reach,cm,higher,one,best,1,value,1,0.5,unit,a paper,1,"
                                   "\nThrow,m,higher,one,best,1,value,2,0.5,unit,a paper,1,\n"),
             write(u"attempts.csv"_s, "date,athlete,test,value\n2026-01-10,Ada,Sit and reach,20\n"
                                      "2026-02-10,Ada,Sit and reach,21\n"
                                      "2026-03-10,Ada,Sit and reach,22.5\n"
                                      "2026-01-10,Ada,Throw,7\n2026-02-10,Ada,Throw,7.5\n"
                                      "2026-03-10,Ada,Throw,7.2\n"),
             write(u"blocks.csv"_s, "block,first_day,last_day\nOne,2026-01-01,2026-01-31\n"
                                    "Two,2026-02-01,2026-02-28\nThree,2026-03-01,2026-03-31\n")});
        if (ran.exit != 0)
            qFatal("%s", ran.err.constData());
        return log;
    }

private Q_SLOTS:
    void theNumberIsTheSumOfThePage_data() {
        QTest::addColumn<QString>("athlete");
        for (const char* name : {"Ada", "Cora", "Edda"})
            QTest::newRow(name) << QString::fromUtf8(name);
    }
    void theNumberIsTheSumOfThePage() {
        QFETCH(QString, athlete);
        const Ran ran = runProgram({u"season"_s, QStringLiteral(SLOPEBOOK_SAMPLE_LOG),
                                    u"--athlete"_s, athlete, u"--json"_s});
        QVERIFY2(ran.exit == 0, ran.err);
        const QJsonObject season = ran.json();
        const Told told = toldByCells(season);
        const double expected = season[u"expected_by_chance"_s].toDouble();
        QVERIFY(expected > 0);
        QVERIFY2(std::abs(told.sum - expected) < 1e-12, ran.out);
        QCOMPARE(told.readings, season[u"readings"_s].toInt());
        QVERIFY(expected <= 0.05 * told.readings + 1e-12);
        // The page's sentence, to its decimal.
        const QString sentence = season[u"chance"_s].toString();
        QVERIFY2(sentence.contains(QString::number(expected, 'f', 1)), qPrintable(sentence));
        QVERIFY2(sentence.contains(QString::number(told.readings)), qPrintable(sentence));
    }

    // Two columns are one look: of each reading 5 in a hundred, at that level, and a fifth at 0.8.
    void oneLookIsTheLevelItself() {
        const QString log = logOfTests();
        for (const double level : {0.95, 0.8}) {
            const Ran ran = runProgram({u"season"_s, log, u"--athlete"_s, u"Ada"_s, u"--block"_s,
                                        u"One"_s, u"--block"_s, u"Three"_s, u"--level"_s,
                                        QString::number(level), u"--json"_s});
            QVERIFY2(ran.exit == 0, ran.err);
            QCOMPARE(ran.json()[u"readings"_s].toInt(), 2);
            QVERIFY2(std::abs(ran.json()[u"expected_by_chance"_s].toDouble() - 2 * (1 - level)) <
                         1e-4,
                     ran.out);
        }
    }

    // Of three columns the intervals are wider, so that chance gives less: by the width that is
    // told, and the normal distribution (the difference of two values has sqrt(2) x 0.5).
    void severalLooksAreByTheirWiderIntervals() {
        const Ran ran =
            runProgram({u"season"_s, logOfTests(), u"--athlete"_s, u"Ada"_s, u"--json"_s});
        QVERIFY2(ran.exit == 0, ran.err);
        double sum = 0;
        int readings = 0;
        for (const QJsonValue& row : ran.json()[u"measures"_s].toArray())
            for (const QJsonValue& cell : row[u"cells"_s].toArray()) {
                if (!cell[u"low"_s].isDouble())
                    continue;
                ++readings;
                const double half = (cell[u"high"_s].toDouble() - cell[u"low"_s].toDouble()) / 2;
                const double chance = beyond(half / (0.5 * std::sqrt(2.0)));
                QVERIFY2(std::abs(cell[u"by_chance"_s].toDouble() - chance) < 1e-4, ran.out);
                sum += chance;
            }
        QCOMPARE(readings, 4);
        QVERIFY(sum < 4 * 0.05);
        QVERIFY(std::abs(ran.json()[u"expected_by_chance"_s].toDouble() - sum) < 4e-4);
    }
};

QTEST_APPLESS_MAIN(TestChance)
#include "tst_chance.moc"
