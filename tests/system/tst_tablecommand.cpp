// SPDX-License-Identifier: GPL-3.0-or-later
// table and export, run as a program: every session's line as a row, alike in JSON, CSV, the export
// and profile; the export told by its descriptor and dictionary, read by R and pandas; a comparison
// worked out anew by the R that compare --script writes, and carried by its PDF.
#include "tests/system/python.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QJsonArray>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>
#include <csignal>

using slopebook::tests::haveModule;
using slopebook::tests::haveTool;
using slopebook::tests::Ran;
using slopebook::tests::runProgram;
using slopebook::tests::runPython;
using slopebook::tests::runTool;
using slopebook::tests::startProgram;
using namespace Qt::Literals::StringLiterals;

namespace {

const QString sample = QStringLiteral(SLOPEBOOK_SAMPLE_LOG);

QByteArray contents(const QString& file) {
    QFile from(file);
    return from.open(QIODevice::ReadOnly) ? from.readAll() : QByteArray();
}

/// Relative, or absolute near zero.
bool close(double a, double b) {
    return std::abs(a - b) <= 1e-9 * std::max(1.0, std::abs(b));
}

} // namespace

class TestTableCommand : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_export;

    QString path(const QString& name) const { return m_folder.filePath(name); }

    void compareByScript(const QString& log, const QString& athlete, const QString& lift,
                         const QString& from, const QString& to) const {
        const QStringList asked{u"compare"_s, log,         u"--athlete"_s, athlete,   u"--lift"_s,
                                lift,         u"--from"_s, from,           u"--to"_s, to};
        const Ran answer = runProgram(asked + QStringList{u"--json"_s});
        QVERIFY2(answer.exit == 0, answer.err);
        const QString script = path(u"script.R"_s), folder = path(u"of the comparison"_s);
        QDir(folder).removeRecursively();
        QFile::remove(script);
        QCOMPARE(runProgram(asked + QStringList{u"--script"_s, script}).exit, 0);
        QCOMPARE(runProgram({u"export"_s, log, u"--into"_s, folder}).exit, 0);
        const Ran r = runTool(u"Rscript"_s, {u"--vanilla"_s, script, folder});
        QVERIFY2(r.exit == 0, r.err);
        const QJsonObject json = answer.json();
        const QList<QByteArray> lines = r.out.trimmed().split('\n');
        qsizetype line = 0;
        const QJsonArray at = json[u"at"_s].toArray();
        QVERIFY(!at.isEmpty());
        for (const QJsonValue& each : at) {
            const auto words = lines.value(line++).split(' ');
            QVERIFY2(words.size() == 10, r.out);
            for (const auto& [word, key] :
                 {std::pair{1, "load"}, {3, "change"}, {5, "se"}, {7, "low"}, {9, "high"}})
                QVERIFY2(close(words[word].toDouble(), each[QLatin1String(key)].toDouble()),
                         r.out + answer.out);
        }
        const auto scatter = lines.value(line++).split(' ');
        QVERIFY2(close(scatter.value(1).toDouble(), json[u"residual_sd"_s].toDouble()), r.out);
        QCOMPARE(scatter.value(3).toDouble(), json[u"df"_s].toDouble());
        const auto parallel = lines.value(line++).split(' ');
        QVERIFY2(close(parallel.value(2).toDouble(), json[u"parallel"_s][u"f"_s].toDouble()),
                 r.out);
        QVERIFY2(close(lines.value(line).split(' ').value(1).toDouble(),
                       json[u"one_rm_change"_s][u"estimate"_s].toDouble()),
                 r.out);
    }

private Q_SLOTS:
    void initTestCase() {
        m_export = path(u"out"_s);
        const Ran ran = runProgram({u"export"_s, sample, u"--into"_s, m_export});
        QVERIFY2(ran.exit == 0, ran.err);
        QVERIFY2(ran.out.contains("athletes.csv, attempts.csv, ") && ran.out.contains("and 10 more"),
                 ran.out); // ten are named
    }

    // Ctrl+C, or a polite kill, at any moment: the table is there whole, or nothing of it is.
    void interruptedItLeavesNothing_data() {
        QTest::addColumn<int>("signal");
        QTest::addColumn<bool>("file");
        QTest::newRow("Ctrl+C, into a file") << SIGINT << true;
        QTest::newRow("a kill, into a file") << SIGTERM << true;
        QTest::newRow("Ctrl+C, to standard output") << SIGINT << false;
    }
    void interruptedItLeavesNothing() {
        QFETCH(int, signal);
        QFETCH(bool, file);
        QTemporaryDir folder;
        const QString csv = folder.filePath(u"table.csv"_s);
        const QStringList words{u"table"_s, sample, u"--csv"_s, file ? csv : u"-"_s};
        QElapsedTimer whole;
        whole.start();
        const Ran ran = runProgram(words);
        QVERIFY2(ran.exit == 0, ran.err);
        const auto lasts = static_cast<unsigned long>(whole.elapsed());
        const QByteArray all = file ? contents(csv) : ran.out;
        QVERIFY(all.startsWith("athlete,"));
        QFile::remove(csv);
        constexpr unsigned long moments = 4;
        int stopped = 0;
        for (unsigned long i = 1; i <= moments; ++i) {
            const auto program = startProgram(words);
            QTest::qSleep(static_cast<int>(lasts * i / (moments + 1)));
            ::kill(static_cast<pid_t>(program->processId()), signal);
            QVERIFY(program->waitForFinished(60'000));
            const QByteArray said = program->readAllStandardError();
            const QByteArray out = program->readAllStandardOutput();
            if (program->exitStatus() == QProcess::NormalExit) {
                QCOMPARE(program->exitCode(), 0);
                QCOMPARE(file ? contents(csv) : out, all);
                QFile::remove(csv);
            } else { // ended by the signal; one that comes when all is said and done takes nothing
                ++stopped;
                QVERIFY2(said.isEmpty() || said.contains("Stopped."), said);
                const QByteArray made = file ? contents(csv) : out;
                QVERIFY2(made.isEmpty() || made == all, made.left(200));
                QFile::remove(csv);
            }
            QVERIFY(QDir(folder.path())
                        .isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot));
        }
        QVERIFY(stopped > 0);
    }

    void aRowSaysWhatProfileSays() {
        const Ran ran = runProgram({u"table"_s, sample, u"--athlete"_s, u"Cora"_s, u"--lift"_s,
                                    u"Bench pull"_s, u"--json"_s});
        QVERIFY2(ran.exit == 0, ran.err);
        const QJsonArray rows = ran.json()[u"sessions"_s].toArray();
        QVERIFY(rows.size() > 5);
        int compared = 0;
        for (const QJsonValue& row : rows) {
            if (compared > 3)
                break;
            const QJsonObject profile = runProgram({u"profile"_s, sample, u"--athlete"_s, u"Cora"_s,
                                                    u"--lift"_s, u"Bench pull"_s, u"--session"_s,
                                                    row[u"date"_s].toString(), u"--json"_s})
                                            .json();
            if (!profile.contains(u"v0"_s))
                continue;
            ++compared;
            for (const auto& [column, key] : {std::pair{"v0_m_s", "v0"},
                                              {"v0_se_m_s", "v0_se"},
                                              {"slope_m_s_kg", "slope"},
                                              {"slope_se_m_s_kg", "slope_se"},
                                              {"residual_sd_m_s", "residual_sd"},
                                              {"df", "df"},
                                              {"r2", "r2"},
                                              {"n", "n"},
                                              {"l0_kg", "l0"},
                                              {"lightest_kg", "lightest"},
                                              {"heaviest_kg", "heaviest"},
                                              {"device", "device"}})
                QCOMPARE(row[QLatin1String(column)], profile[QLatin1String(key)]);
            for (const auto& [column, key] : {std::pair{"one_rm_kg", "estimate"},
                                              {"one_rm_low_kg", "low"},
                                              {"one_rm_high_kg", "high"},
                                              {"one_rm_with_mvt_low_kg", "with_mvt_low"},
                                              {"one_rm_with_mvt_high_kg", "with_mvt_high"},
                                              {"level", "level"},
                                              {"reach", "reach"},
                                              {"measured_one_rm_kg", "measured"}})
                QCOMPARE(row[QLatin1String(column)], profile[u"one_rm"_s][QLatin1String(key)]);
            for (const auto& [column, key] : {std::pair{"plan_one_rm_kg", "estimate"},
                                              {"plan_low_kg", "low"},
                                              {"plan_high_kg", "high"}})
                QCOMPARE(row[QLatin1String(column)], profile[u"plan"_s][QLatin1String(key)]);
            QCOMPARE(row[u"mvt_m_s"_s], profile[u"mvt"_s][u"value"_s]);
            QCOMPARE(row[u"mvt_source"_s], profile[u"mvt"_s][u"source"_s]);
            QCOMPARE(row[u"lifted_kg"_s], profile[u"bracket"_s][u"lifted"_s]);
            QCOMPARE(row[u"not_lifted_kg"_s], profile[u"bracket"_s][u"not_lifted"_s]);
        }
        QVERIFY(compared > 0);
    }

    void csvIsTheExportsOwn() {
        const Ran out = runProgram({u"table"_s, sample, u"--csv"_s, u"-"_s});
        QVERIFY2(out.exit == 0 && out.err.isEmpty(), out.err);
        QCOMPARE(out.out, contents(m_export + u"/estimates.csv"_s));
        const QString file = path(u"table.csv"_s);
        QCOMPARE(runProgram({u"table"_s, sample, u"--csv"_s, file}).exit, 0);
        QCOMPARE(contents(file), out.out);
        const Ran again = runProgram({u"table"_s, sample, u"--csv"_s, file});
        QCOMPARE(again.exit, 2);
        QVERIFY2(again.err.contains("--replace"), again.err);
        QCOMPARE(runProgram({u"table"_s, sample, u"--csv"_s, u"-"_s, u"--json"_s}).exit, 2);
        const Ran narrow =
            runProgram({u"table"_s, sample, u"--csv"_s, u"-"_s, u"--level"_s, u"0.8"_s});
        QCOMPARE(narrow.exit, 0);
        QVERIFY(narrow.out != out.out);
    }

    // The descriptor is an open standard: another reader holds the folder against it.
    void theFolderIsWhatItsDescriptorSays() {
        if (!haveTool(slopebook::tests::python))
            QSKIP("PYTHON3 IS NOT INSTALLED");
        const Ran ran = runPython(u"checkpackage.py"_s, {m_export});
        QVERIFY2(ran.exit == 0, ran.out + ran.err);
        // It fails where the folder is otherwise.
        const QString other = path(u"other"_s);
        QVERIFY(QDir().mkpath(other));
        for (const QFileInfo& file : QDir(m_export).entryInfoList(QDir::Files))
            QVERIFY(QFile::copy(file.filePath(), other + u'/' + file.fileName()));
        QFile reps(other + u"/reps.csv"_s);
        QVERIFY(reps.open(QIODevice::Append));
        reps.write("2026-13-01,Nobody,No lift,0,-1,1,fast,1,,odd,,,,,,,,,,,,,,,,\n");
        reps.close();
        const Ran broken = runPython(u"checkpackage.py"_s, {other});
        QCOMPARE(broken.exit, 1);
        for (const char* said :
             {"no date", "is none of", "out of bounds", "no number", "is not in athletes"})
            QVERIFY2(broken.out.contains(said), broken.out);
    }

    // Every column of a figure has a unit in its name or in the dictionary, or its meaning names
    // the column that has it.
    void everyFigureHasItsUnit() {
        const QJsonArray resources =
            QJsonDocument::fromJson(contents(m_export + u"/datapackage.json"_s))
                .object()[u"resources"_s]
                .toArray();
        QCOMPARE(resources.size(), 16);
        const QStringList pure{u"df"_s, u"r2"_s, u"reach"_s, u"level"_s};
        for (const QJsonValue& resource : resources)
            for (const QJsonValue& field : resource[u"schema"_s][u"fields"_s].toArray()) {
                if (field[u"type"_s].toString() != u"number"_s)
                    continue;
                const QString name = field[u"name"_s].toString();
                QVERIFY2(!field[u"unit"_s].toString().isEmpty() || pure.contains(name) ||
                             field[u"description"_s].toString().contains(u"unit"_s) ||
                             field[u"description"_s].toString().contains(u"typical_error_in"_s),
                         qPrintable(name));
            }
    }

    // Both fit every line anew and find the estimates that the export holds.
    void theScriptsBesideReproduceTheEstimates_data() {
        QTest::addColumn<QString>("tool");
        QTest::addColumn<QString>("script");
        QTest::newRow("R") << u"Rscript"_s << u"read.R"_s;
        QTest::newRow("pandas") << slopebook::tests::python << u"read.py"_s;
    }
    void theScriptsBesideReproduceTheEstimates() {
        QFETCH(QString, tool);
        QFETCH(QString, script);
        if (!haveTool(tool) || (tool == slopebook::tests::python && !haveModule(u"pandas"_s)))
            QSKIP("R OR PANDAS IS NOT INSTALLED");
        const Ran ran = runTool(tool, {m_export + u'/' + script, m_export});
        QVERIFY2(ran.exit == 0, ran.out + ran.err);
        const auto said = QRegularExpression(u"^lines: (\\d+) farthest 1RM: (\\S+) kg$"_s)
                              .match(QString::fromUtf8(ran.out.trimmed()));
        QVERIFY2(said.hasMatch(), ran.out);
        QVERIFY(said.captured(1).toInt() > 100);
        QVERIFY2(said.captured(2).toDouble() < 1e-6, ran.out);
        QVERIFY2(contents(m_export + u'/' + script).count('\n') <= 16, "ten lines or so");
    }

    void theWholeFolderGoesBackIn() {
        QStringList files;
        for (const QString& file : QDir(m_export).entryList({u"*.csv"_s}))
            files << m_export + u'/' + file;
        const QString back = path(u"back.slopebook"_s);
        const Ran ran = runProgram(QStringList{u"import"_s, back} + files);
        QVERIFY2(ran.exit == 0, ran.err);
        QVERIFY2(ran.out.contains("worked out from the others: dictionary.csv, estimates.csv, "
                                  "points.csv"),
                 ran.out);
        QVERIFY2(!ran.out.contains("not used"), ran.out);
        const QString again = path(u"again"_s);
        QCOMPARE(runProgram({u"export"_s, back, u"--into"_s, again}).exit, 0);
        for (const QString& file : QDir(m_export).entryList({u"*.csv"_s, u"*.json"_s}))
            QCOMPARE(contents(again + u'/' + file), contents(m_export + u'/' + file));
        const Ran alone =
            runProgram({u"import"_s, path(u"none.slopebook"_s), m_export + u"/estimates.csv"_s});
        QCOMPARE(alone.exit, 2);
        QVERIFY2(alone.err.contains("worked out from other tables"), alone.err);
        QVERIFY(!QFile::exists(path(u"none.slopebook"_s)));
    }

    // R reads the export alone and comes to the same: of days with as many reps, and of days whose
    // sets are compared by the fastest of fewer.
    void theScriptOfAComparisonReproducesIt_data() {
        QTest::addColumn<QString>("log");
        QTest::addColumn<QString>("athlete");
        QTest::addColumn<QString>("lift");
        QTest::addColumn<QString>("from");
        QTest::addColumn<QString>("to");
        QTest::newRow("the sample's")
            << sample << u"Cora"_s << u"Bench pull"_s << u"2025-12-01"_s << u"2026-05-04"_s;
        QTest::newRow("another lift")
            << sample << u"Ada"_s << u"Back squat"_s << u"2025-12-01"_s << u"2026-05-04"_s;
        const QString csv = path(u"few.csv"_s);
        QFile file(csv);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("date,athlete,lift,session,set,load_kg,rep,velocity,excluded\n");
        const auto rows = [&](int session, const char* sets) {
            for (const QByteArray& set : QByteArray(sets).split(';')) {
                const auto parts = set.split(' ');
                for (int i = 2; i < parts.size(); ++i)
                    file.write(
                        "2026-03-14,\"Ada \"\"A\"\"\",Odd pull," + QByteArray::number(session) +
                        ',' + parts[0] + ',' + parts[1] + ',' + QByteArray::number(i - 1) + ',' +
                        (parts[i].endsWith('x') ? parts[i].chopped(1) + ",early" : parts[i] + ',') +
                        '\n');
            }
        };
        rows(1, "1 40 1.10 1.15 1.16;2 50 0.97 1.01;3 60 0.85 0.80 0.88;4 70 0.70 0.73;5 80 0.55");
        rows(2, "1 40 1.12;2 50 1.00x 1.03 1.05;3 60 0.83 0.90;4 70 0.74;5 77.5 0.60 0.65");
        file.close();
        const QString log = path(u"few.slopebook"_s);
        QFile::remove(log);
        QCOMPARE(runProgram({u"import"_s, log, csv, u"--mvt"_s, u"Odd pull=0.3"_s}).exit, 0);
        QTest::newRow("other numbers of reps")
            << log << u"Ada \"A\""_s << u"Odd pull"_s << u"2026-03-14"_s << u"2026-03-14#2"_s;
    }
    // Names that a guess at the kind of a column would take for numbers, or for nothing.
    void namesThatLookLikeFigures_data() {
        QTest::addColumn<QString>("athlete");
        QTest::addColumn<QString>("lift");
        QTest::newRow("01") << u"01"_s << u"007"_s;
        QTest::newRow("NA") << u"NA"_s << u"TRUE"_s;
        QTest::newRow("1e3") << u"1e3"_s << u"NA"_s;
    }
    void namesThatLookLikeFigures() {
        if (!haveTool(u"Rscript"_s))
            QSKIP("R IS NOT INSTALLED");
        QFETCH(QString, athlete);
        QFETCH(QString, lift);
        const QString csv = path(u"named.csv"_s), log = path(u"named.slopebook"_s);
        QFile file(csv);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("date,athlete,lift,set,load_kg,rep,velocity\n");
        for (const QByteArray day :
             {"2026-03-14 1.10 0.92 0.76 0.57", "2026-04-14 1.12 0.95 0.75 0.60"}) {
            const auto words = day.split(' ');
            for (int set = 1; set <= 4; ++set)
                file.write(words[0] + ',' + athlete.toUtf8() + ',' + lift.toUtf8() + ',' +
                           QByteArray::number(set) + ',' + QByteArray::number(25 + 15 * set) +
                           ",1," + words[set] + '\n');
        }
        file.close();
        QFile::remove(log);
        QCOMPARE(runProgram({u"import"_s, log, csv, u"--mvt"_s, lift + u"=0.3"_s}).exit, 0);
        compareByScript(log, athlete, lift, u"2026-03-14"_s, u"2026-04-14"_s);
    }

    void theScriptOfAComparisonReproducesIt() {
        if (!haveTool(u"Rscript"_s))
            QSKIP("R IS NOT INSTALLED");
        QFETCH(QString, log);
        QFETCH(QString, athlete);
        QFETCH(QString, lift);
        QFETCH(QString, from);
        QFETCH(QString, to);
        compareByScript(log, athlete, lift, from, to);
    }

    void noScriptOfBlocks() {
        const QString script = path(u"blocks.R"_s);
        const Ran ran = runProgram({u"compare"_s, sample, u"--athlete"_s, u"Cora"_s, u"--lift"_s,
                                    u"Bench pull"_s, u"--from"_s, u"Autumn"_s, u"--to"_s,
                                    u"Spring"_s, u"--script"_s, script});
        QCOMPARE(ran.exit, 2);
        QVERIFY2(ran.err.contains("one session on each"), ran.err);
        QVERIFY(!QFile::exists(script));
    }

    // Another program takes the figures out of the PDF again.
    void aComparisonsPdfCarriesItsFigures() {
        if (!haveTool(u"pdfdetach"_s))
            QSKIP("PDFDETACH IS NOT INSTALLED");
        const QString pdf = path(u"page.pdf"_s), out = path(u"detached"_s);
        QVERIFY(QDir().mkpath(out));
        const QStringList asked{u"compare"_s, sample,          u"--athlete"_s, u"Cora"_s,
                                u"--lift"_s,  u"Bench pull"_s, u"--from"_s,    u"2025-12-01"_s,
                                u"--to"_s,    u"2026-05-04"_s};
        const Ran ran = runProgram(asked + QStringList{u"--json"_s, u"--pdf"_s, pdf});
        QVERIFY2(ran.exit == 0 && ran.err.isEmpty(), ran.err);
        const Ran detach = runTool(u"pdfdetach"_s, {u"-saveall"_s, u"-o"_s, out, pdf});
        QVERIFY2(detach.exit == 0, detach.err);
        const QList<QByteArray> rows = contents(out + u"/figures.csv"_s).trimmed().split('\n');
        const QJsonArray at = ran.json()[u"at"_s].toArray();
        QCOMPARE(rows.size(), at.size() + 2); // a header, the 1RM
        QVERIFY(rows[0].startsWith("measure,load_kg,unit,earlier,later,change,se,low,high,"));
        for (qsizetype i = 0; i < at.size(); ++i) {
            const auto cells = rows[i + 1].split(',');
            QCOMPARE(cells[1].toDouble(), at[i][u"load"_s].toDouble());
            QCOMPARE(cells[2], QByteArray("m/s"));
            QCOMPARE(cells[5].toDouble(), at[i][u"change"_s].toDouble());
            QCOMPARE(cells[6].toDouble(), at[i][u"se"_s].toDouble());
            QCOMPARE(cells[9].toDouble(), at[i][u"reading_low"_s].toDouble());
            QCOMPARE(QString::fromUtf8(cells[12]), at[i][u"reading"_s].toString());
        }
        const auto max = rows.last().split(',');
        QCOMPARE(max[0] + max[2], QByteArray("one_rmkg"));
        QCOMPARE(max[5].toDouble(), ran.json()[u"one_rm_change"_s][u"estimate"_s].toDouble());
        const qsizetype points = ran.json()[u"from"_s][u"points"_s].toArray().size() +
                                 ran.json()[u"to"_s][u"points"_s].toArray().size();
        QCOMPARE(contents(out + u"/points.csv"_s).trimmed().count('\n'), points);
    }
};

QTEST_APPLESS_MAIN(TestTableCommand)
#include "tst_tablecommand.moc"
