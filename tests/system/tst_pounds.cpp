// SPDX-License-Identifier: GPL-3.0-or-later
// --lb, run as a program: every command that shows loads shows the same ones in pounds, takes the
// loads that it is given as pounds, and says the same in JSON as without.
#include "tests/system/python.h"

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using slopebook::tests::haveTool;
using slopebook::tests::Ran;
using slopebook::tests::runProgram;
using slopebook::tests::runTool;
using namespace Qt::Literals::StringLiterals;

namespace {

const QString sample = QStringLiteral(SLOPEBOOK_SAMPLE_LOG);
constexpr double poundsAKilogram = 1 / 0.45359237; // NIST Special Publication 811, appendix B.8

/// The numbers that stand before the unit, in order.
QList<double> before(const QByteArray& text, const QString& unit) {
    const QRegularExpression figure(u"([-+]?\\d+(?:\\.\\d+)?)\\s"_s + unit + u"\\b(?!/)"_s);
    QList<double> found;
    for (auto all = figure.globalMatch(QString::fromUtf8(text)); all.hasNext();)
        found << all.next().captured(1).toDouble();
    return found;
}

} // namespace

class TestPounds : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

private Q_SLOTS:
    void everyCommandShowsPounds_data() {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("inPounds"); // where a load is given
        const QString cora = u" LOG --athlete Cora --lift \"Bench pull\""_s;
        const auto row = [](const char* name, const QString& line, const QString& inPounds = {}) {
            QTest::newRow(name) << line << (inPounds.isEmpty() ? line + u" --lb"_s : inPounds);
        };
        row("list", u"list"_s + cora);
        row("table", u"table"_s + cora);
        row("profile", u"profile"_s + cora);
        row("compare", u"compare"_s + cora + u" --from 2025-12-01 --to 2026-05-04"_s);
        row("compare blocks", u"compare"_s + cora + u" --from Autumn --to Spring"_s);
        row("follow", u"follow"_s + cora + u" --trends --load 60"_s,
            u"follow"_s + cora + u" --trends --lb --load 132.2774"_s); // 60 kg to the gram
        row("noise", u"noise LOG"_s);
        row("squad",
            u"squad LOG --lift \"Bench pull\" --from Autumn --to Spring --due 2026-05-11"_s);
        row("season", u"season LOG --athlete Cora"_s);
        row("battery", u"battery LOG --athlete Cora --from Autumn --to Spring"_s);
    }
    void everyCommandShowsPounds() {
        QFETCH(QString, line);
        QFETCH(QString, inPounds);
        const auto run = [](QString asked) {
            return runProgram(QProcess::splitCommand(asked.replace(u"LOG"_s, sample)));
        };
        Ran plain = run(line), pounds = run(inPounds);
        for (Ran* each : {&plain, &pounds}) // as the coach wrote it, in a note
            each->out.replace("nothing above 70 kg", "");
        QVERIFY2(plain.exit == 0, plain.err);
        QVERIFY2(pounds.exit == 0, pounds.err);
        QVERIFY2(plain.out.contains("kg"), plain.out);
        QVERIFY2(!plain.out.contains("lb"), plain.out);
        QVERIFY2(pounds.out.contains("lb"), pounds.out);
        // What a test of the battery is measured in is its own.
        static const QRegularExpression bare(u"(?<![/\\w])kg\\b"_s);
        if (!line.startsWith(u"season"_s) && !line.startsWith(u"battery"_s))
            QVERIFY2(!QString::fromUtf8(pounds.out).contains(bare), pounds.out);
        const auto kilograms = before(plain.out, u"kg"_s), shown = before(pounds.out, u"lb"_s);
        QVERIFY2(kilograms.size() == shown.size(), plain.out + pounds.out);
        for (qsizetype i = 0; i < shown.size(); ++i) // each is rounded on its own
            QVERIFY2(std::abs(shown[i] - kilograms[i] * poundsAKilogram) <
                         0.5 * poundsAKilogram + 0.5,
                     pounds.out);
        QCOMPARE(run(inPounds + u" --json"_s).out, run(line + u" --json"_s).out);
    }

    void aLoadThatCannotBeIsRefusedInItsUnit() {
        const Ran heavy = runProgram({u"follow"_s, sample, u"--athlete"_s, u"Cora"_s, u"--lift"_s,
                                      u"Bench pull"_s, u"--lb"_s, u"--load"_s, u"4500"_s});
        QCOMPARE(heavy.exit, 2);
        QVERIFY2(heavy.err.contains("pounds from 0 to 4409"), heavy.err);
    }

    void pagesShowPounds_data() {
        QTest::addColumn<QStringList>("words");
        QTest::newRow("compare") << QStringList{u"compare"_s, u"--athlete"_s, u"Cora"_s,
                                                u"--lift"_s, u"Bench pull"_s};
        QTest::newRow("squad") << QStringList{u"squad"_s, u"--lift"_s, u"Bench pull"_s};
    }
    void pagesShowPounds() {
        if (!haveTool(u"pdftotext"_s))
            QSKIP("PDFTOTEXT IS NOT INSTALLED");
        QFETCH(QStringList, words);
        words.insert(1, sample);
        const QString pdf = m_folder.filePath(words[0] + u".pdf"_s);
        const Ran ran = runProgram(words + QStringList{u"--from"_s, u"Autumn"_s, u"--to"_s,
                                                       u"Spring"_s, u"--lb"_s, u"--pdf"_s, pdf});
        QVERIFY2(ran.exit == 0, ran.err);
        const QByteArray text = runTool(u"pdftotext"_s, {u"-layout"_s, pdf, u"-"_s}).out;
        QVERIFY2(text.contains("lb"), text);
        QVERIFY2(!text.contains(" kg"), text);
    }
};

QTEST_APPLESS_MAIN(TestPounds)
#include "tst_pounds.moc"
