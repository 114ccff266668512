// SPDX-License-Identifier: GPL-3.0-or-later
// The built sample log against figures that R makes of the committed CSV (tests/reference/sample.R
// says how a change is approved), and the story that the demo tells.
#include "tests/system/program.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <cmath>

using namespace slopebook::tests;

namespace {

const QString sample = QStringLiteral(SLOPEBOOK_SAMPLE_LOG);

QMap<QString, double> committed() {
    QFile file(QStringLiteral(SLOPEBOOK_TEST_DATA "/sample_figures.txt"));
    QMap<QString, double> figures;
    if (!file.open(QIODevice::ReadOnly))
        return figures;
    for (const QByteArray& line : file.readAll().split('\n'))
        if (const qsizetype space = line.lastIndexOf(' '); space > 0)
            figures.insert(QString::fromUtf8(line.left(space)), line.mid(space + 1).toDouble());
    return figures;
}

QJsonObject compare(const char* athlete, const char* lift, const char* from, const char* to) {
    const Ran ran =
        runProgram({QStringLiteral("compare"), sample, QStringLiteral("--athlete"),
                    QString::fromUtf8(athlete), QStringLiteral("--lift"), QString::fromUtf8(lift),
                    QStringLiteral("--from"), QString::fromUtf8(from), QStringLiteral("--to"),
                    QString::fromUtf8(to), QStringLiteral("--json")});
    return ran.exit == 0 ? ran.json() : QJsonObject{};
}

} // namespace

class TestSample : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void holdsWhatTheCsvHolds() {
        const auto figures = committed();
        const Ran ran = runProgram({QStringLiteral("list"), sample, QStringLiteral("--json")});
        QVERIFY2(ran.exit == 0, ran.err);
        const QJsonArray sessions = ran.json()[QLatin1String("sessions")].toArray();
        QCOMPARE(sessions.size(), qsizetype(6 * 4 * 8 - 1)); // one with a sore knee
        qsizetype compared = 0;
        for (const QJsonValue& value : sessions) {
            const QJsonObject session = value.toObject();
            const QJsonObject oneRm = session[QLatin1String("one_rm")].toObject();
            const auto text = [&](const char* key) {
                return session[QLatin1String(key)].toString();
            };
            const QString key = text("athlete") + QLatin1Char('|') + text("lift") +
                                QLatin1Char('|') + text("date") + QLatin1Char('|');
            const auto same = [&](const char* name, const QJsonValue& found, double tolerance) {
                const QString full = key + QString::fromUtf8(name);
                QVERIFY2(figures.contains(full), qPrintable(full));
                ++compared;
                const double expected = figures[full];
                QVERIFY2(std::abs(found.toDouble(std::nan("")) - expected) <=
                             tolerance * std::abs(expected),
                         qPrintable(QStringLiteral("%1: %2, expected %3")
                                        .arg(full)
                                        .arg(found.toDouble(), 0, 'g', 15)
                                        .arg(expected, 0, 'g', 15)));
            };
            for (const char* name : {"n", "v0", "slope", "r2"})
                same(name, session[QLatin1String(name)], 1e-9);
            if (text("lift") == QLatin1String("Jump squat")) {
                QVERIFY(oneRm[QLatin1String("reason")].toString().contains(
                    QLatin1String("velocity at load only")));
                continue;
            }
            same("one_rm", oneRm[QLatin1String("estimate")], 1e-9);
            same("low", oneRm[QLatin1String("low")], 1e-8); // R: by uniroot
            same("high", oneRm[QLatin1String("high")], 1e-8);
        }
        for (const QString& key : figures.keys())
            compared += key.startsWith(QLatin1String("compare|")) ? 1 : 0; // readsAsRDoes
        QCOMPARE(compared, figures.size());
    }

    // What two tests of the bench pull came to, by R: change, interval and reading of every load
    // and of the max.
    void readsAsRDoes_data() {
        QTest::addColumn<QString>("athlete");
        for (const char* athlete : {"Ada", "Cora", "Edda"})
            QTest::newRow(athlete) << QString::fromUtf8(athlete);
    }
    void readsAsRDoes() {
        QFETCH(QString, athlete);
        const auto figures = committed();
        const QJsonObject json =
            compare(athlete.toUtf8(), "Bench pull", "2025-12-01", "2026-05-04");
        QVERIFY(!json.isEmpty());
        qsizetype found = 0;
        const auto same = [&](const QString& of, const QJsonValue& read, const char* name,
                              const char* field) {
            const QString key =
                QStringLiteral("compare|%1|%2|%3").arg(athlete, of, QString::fromUtf8(name));
            QVERIFY2(figures.contains(key), qPrintable(key));
            ++found;
            const double told = read[QLatin1String(field)].toDouble(std::nan(""));
            QVERIFY2(std::abs(told - figures[key]) <= 1e-8 * std::max(1.0, std::abs(figures[key])),
                     qPrintable(QStringLiteral("%1: %2, expected %3")
                                    .arg(key)
                                    .arg(told, 0, 'g', 15)
                                    .arg(figures[key], 0, 'g', 15)));
        };
        const auto unclear = [](const QJsonValue& read) {
            return read[QLatin1String("reading")].toString() == QLatin1String("unclear");
        };
        int loadsUnclear = 0;
        for (const QJsonValue& at : json[QLatin1String("at")].toArray()) {
            const QString load = QString::number(at[QLatin1String("load")].toDouble());
            same(load, at, "change", "change");
            same(load, at, "reading_low", "reading_low");
            same(load, at, "reading_high", "reading_high");
            loadsUnclear += unclear(at) ? 1 : 0;
        }
        const QJsonValue max = json[QLatin1String("one_rm_change")];
        same(QStringLiteral("max"), max, "change", "estimate");
        same(QStringLiteral("max"), max, "reading_low", "reading_low");
        same(QStringLiteral("max"), max, "reading_high", "reading_high");
        const QString of = QStringLiteral("compare|%1|").arg(athlete);
        QCOMPARE(loadsUnclear, int(figures.value(of + QLatin1String("loads|unclear"), -1)));
        QCOMPARE(unclear(max) ? 1 : 0, int(figures.value(of + QLatin1String("max|unclear"), -1)));
        qsizetype known = 0;
        for (const QString& key : figures.keys())
            known += key.startsWith(of) ? 1 : 0;
        QCOMPARE(found + 2, known);
    }

    // The demo's story: back under heavy plates after the flood, Cora is faster at the light loads,
    // and two tests cannot tell of her max: said with its change and what they would have shown.
    void tellsItsStory() {
        const QJsonObject story = compare("Cora", "Bench pull", "2025-12-01", "2026-05-04");
        QVERIFY(!story.isEmpty());
        const QJsonArray at = story[QLatin1String("at")].toArray();
        QVERIFY(at.size() >= 4);
        const auto reading = [](const QJsonValue& value) {
            return value.toObject()[QLatin1String("reading")].toString();
        };
        QCOMPARE(reading(at[0]), QStringLiteral("better"));
        QCOMPARE(reading(at[1]), QStringLiteral("better"));
        QVERIFY(reading(at[at.size() - 1]) != QStringLiteral("better"));
        QCOMPARE(reading(story[QLatin1String("one_rm_change")]), QStringLiteral("unclear"));
        const QString sentence = story[QLatin1String("sentence")].toString();
        for (const char* part :
             {"each change alone: faster from 30 to ", "leaning to better at ",
              "a change is clear from", "no clear change of the estimated max: +"})
            QVERIFY2(sentence.contains(QLatin1String(part)), qPrintable(sentence));
    }

    // Edda, new to the weights room, became stronger, and two tests tell it.
    void tellsOfAMaxThatRose() {
        const QJsonObject story = compare("Edda", "Bench pull", "2025-12-01", "2026-05-04");
        QCOMPARE(story[QLatin1String("one_rm_change")][QLatin1String("reading")].toString(),
                 QStringLiteral("better"));
        const QString sentence = story[QLatin1String("sentence")].toString();
        QVERIFY2(sentence.contains(QLatin1String("estimated max up")), qPrintable(sentence));
    }

    // What readings take of days comes from the squad's own repeat tests for the most part.
    void learnsItsNoiseFromItsRepeats() {
        const QJsonObject story = compare("Cora", "Bench pull", "2025-12-01", "2026-05-04");
        double published = 1;
        for (const QJsonValue& source :
             story[QLatin1String("noise")][QLatin1String("sources")].toArray())
            if (source[QLatin1String("from")].toString() == QLatin1String("published"))
                published = source[QLatin1String("share")].toDouble();
        QVERIFY(published > 0 && published < 0.2);
    }

    void theLightBlockSaysHowFarItReaches() {
        const QJsonObject winter = compare("Bela", "Back squat", "2025-12-02", "2026-02-17");
        QVERIFY(!winter.isEmpty());
        const QJsonObject to = winter[QLatin1String("to")].toObject();
        QCOMPARE(to[QLatin1String("heaviest")].toDouble(), 70.0); // all there was
        QVERIFY(to[QLatin1String("one_rm")].toObject()[QLatin1String("reach")].toDouble() < 0.8);
        QVERIFY(winter[QLatin1String("sentence")].toString().contains(QLatin1String("reach")));
    }

    void unclearChangesSayWhatWouldSettleThem() {
        const auto asked = [](const char* command, std::initializer_list<const char*> more,
                              const char* athlete = "Ada") {
            QStringList all{QLatin1String(command),      sample,
                            QStringLiteral("--athlete"), QLatin1String(athlete),
                            QStringLiteral("--lift"),    QStringLiteral("Bench pull")};
            for (const char* each : more)
                all << QLatin1String(each);
            return runProgram(all).out;
        };
        const QByteArray compared =
            asked("compare", {"--from", "2025-12-01", "--to", "2026-05-04"});
        QVERIFY2(compared.contains("What would settle what is unclear:\n  30"), compared);
        QVERIFY2(compared.contains(" kg: a true change of 0.050 m/s is seen with a chance of "),
                 compared);
        const QByteArray followed = asked("follow", {"--load", "30", "--baseline", "2025-12-01"});
        QVERIFY2(followed.contains("What would settle the change of 2026-05-04:\n  30 kg: "),
                 followed);
        // Nothing is unclear: nothing is said.
        const QByteArray clear =
            asked("compare", {"--from", "2025-12-01", "--to", "2026-05-04"}, "Edda");
        QVERIFY2(!clear.isEmpty() && !clear.contains("What would settle"), clear);
    }

    void knowsItsOwnNoise() {
        const Ran ran = runProgram({QStringLiteral("noise"), sample, QStringLiteral("--json")});
        QCOMPARE(ran.exit, 0);
        const QJsonArray lifts = ran.json()[QLatin1String("lifts")].toArray();
        QCOMPARE(lifts.size(), qsizetype(4));
        for (const QJsonValue& lift : lifts) {
            // 6 athletes' 4 pairs, less Finn's on two devices, and of the jump Bela's and Dov's on
            // two and Edda's with a sore knee.
            const int pairs =
                lift.toObject()[QLatin1String("lift")] == QLatin1String("Jump squat") ? 20 : 23;
            QCOMPARE(lift.toObject()[QLatin1String("pairs")].toInt(), pairs);
            QCOMPARE(lift.toObject()[QLatin1String("device")].toString(),
                     QStringLiteral("Encoder 1"));
            QCOMPARE(lift.toObject()[QLatin1String("used")].toArray().size(), qsizetype(pairs));
            const QJsonObject inUse = lift.toObject()[QLatin1String("in_use")].toObject();
            QCOMPARE(inUse[QLatin1String("origin")].toString(), QStringLiteral("log"));
        }
        const QByteArray text = runProgram({QStringLiteral("noise"), sample}).out;
        for (const char* part : {"Encoder 1", "CV % by logs", "Repeat tests used", "In use: "})
            QVERIFY2(text.contains(part), text);
        QVERIFY2(!text.contains("0.0000"), text);
    }

    // Two repeat tests at 40 kg that differ alike: no spread, and no error of 0.
    void pairsThatDifferAlikeShowNoSpread() {
        const QTemporaryDir folder;
        const auto in = [&](const char* name) { return folder.filePath(QString::fromUtf8(name)); };
        QFile csv(in("alike.csv"));
        QVERIFY(csv.open(QIODevice::WriteOnly));
        csv.write(
            "date,athlete,lift,set,load_kg,rep,velocity,repeat_of\n"
            "2026-03-02,Ada,Bench pull,1,40,1,1.10,\n2026-03-02,Ada,Bench pull,2,60,1,0.85,\n"
            "2026-03-05,Ada,Bench pull,1,40,1,1.12,2026-03-02\n"
            "2026-03-05,Ada,Bench pull,2,60,1,0.84,2026-03-02\n"
            "2026-03-02,Bela,Bench pull,1,40,1,1.20,\n2026-03-02,Bela,Bench pull,2,60,1,0.99,\n"
            "2026-03-05,Bela,Bench pull,1,40,1,1.22,2026-03-02\n"
            "2026-03-05,Bela,Bench pull,2,60,1,1.03,2026-03-02\n");
        csv.close();
        const QString log = in("alike.slopebook");
        const Ran made = runProgram({QStringLiteral("import"), log, in("alike.csv")});
        QVERIFY2(made.exit == 0, made.err);
        const QByteArray text = runProgram({QStringLiteral("noise"), log}).out;
        QVERIFY2(text.contains("no spread") && text.contains("No spread at this resolution"), text);
        QVERIFY2(!text.contains("0.0000"), text);
        const QByteArray json =
            runProgram({QStringLiteral("noise"), log, QStringLiteral("--json")}).out;
        QVERIFY2(!json.contains("\"typical_error\": 0,") && json.contains("\"reason\""), json);
    }

    void followsALoadThroughItsBlocks() {
        const QStringList asked{QStringLiteral("follow"),    sample,
                                QStringLiteral("--athlete"), QStringLiteral("Bela"),
                                QStringLiteral("--lift"),    QStringLiteral("Back squat"),
                                QStringLiteral("--load"),    QStringLiteral("60")};
        const Ran ran = runProgram(asked + QStringList{QStringLiteral("--json")});
        QCOMPARE(ran.exit, 0);
        const QJsonObject follow = ran.json();
        QVERIFY(follow[QLatin1String("blocks")].toArray().size() >= 2);
        int inABlock = 0, withCeiling = 0;
        for (const QJsonValue& session : follow[QLatin1String("sessions")].toArray())
            inABlock += session.toObject()[QLatin1String("block")].isString() ? 1 : 0;
        for (const QJsonValue& block : follow[QLatin1String("blocks")].toArray())
            withCeiling += block.toObject()[QLatin1String("ceiling")].isDouble() ? 1 : 0;
        QVERIFY(inABlock > 0);
        QVERIFY(withCeiling > 0); // the winter without heavy plates
        const QByteArray text = runProgram(asked).out;
        for (const char* part : {"Its interval", "Measured", "Block ", "up to 70 kg"})
            QVERIFY2(text.contains(part), text);
    }

    // The last test day as such days are: loads that were not lifted, two devices and two surfaces
    // in one session, how sets felt, stations with who is there, what was not possible.
    void holdsATestDayAsItHappens() {
        const QJsonObject dov = compare("Dov", "Bench pull", "2025-12-02", "2026-05-05");
        const QJsonValue to = dov[QLatin1String("to")];
        QCOMPARE(to[QLatin1String("bracket")][QLatin1String("not_lifted")].toDouble(), 100.0);
        QCOMPARE(to[QLatin1String("bracket")][QLatin1String("lifted")].toDouble(), 95.0);
        QCOMPARE(to[QLatin1String("device")].toString(), QStringLiteral("Encoder 1"));
        QVERIFY(dov[QLatin1String("sentence")].toString().contains(
            QLatin1String("100 kg was not lifted on 2026-05-05")));
        const QJsonObject jump = compare("Dov", "Jump squat", "2025-12-02", "2026-05-05");
        QVERIFY2(jump[QLatin1String("sentence")].toString().startsWith(
                     QLatin1String("Not comparable: measured by another device")),
                 qPrintable(jump[QLatin1String("sentence")].toString()));

        const QTemporaryDir folder;
        const QString into = folder.filePath(QStringLiteral("all"));
        QCOMPARE(
            runProgram({QStringLiteral("export"), sample, QStringLiteral("--into"), into}).exit, 0);
        const auto rows = [&](const char* name) {
            QFile file(into + QLatin1Char('/') + QLatin1String(name));
            return file.open(QIODevice::ReadOnly) ? file.readAll().split('\n') : QByteArrayList{};
        };
        const auto some = [&](const char* name, std::initializer_list<const char*> parts) {
            return std::ranges::count_if(rows(name), [&](const QByteArray& row) {
                return std::ranges::all_of(parts,
                                           [&](const char* part) { return row.contains(part); });
            });
        };
        QCOMPARE(some("reps.csv", {",not lifted,"}), 2);
        QCOMPARE(some("stations.csv", {"Jump rack", "Jump squat", "Encoder 2"}), 1);
        QCOMPARE(some("rosters.csv", {"2026-05-05", "Dov"}), 3);
        QVERIFY(some("attempts.csv", {"2026-05-04", "Cora", "grass"}) > 0);
        QVERIFY(some("attempts.csv", {"2026-05-04", "Cora", "rubber floor"}) > 0);
        QCOMPARE(some("attempts.csv", {"Isometric", "contact mat"}), 0); // it measures no force
        QCOMPARE(some("blocks.csv", {"nothing above 70 kg"}), 1);
        QVERIFY(some("reps.csv", {"Cora", "Bench pull", ",6.5"}) > 0);
    }

    // Beside the speed seen at a load stands how it felt, where that was written down; nothing is
    // read from it. What is expected stands in reps.csv.
    void followsHowALoadFelt() {
        const QStringList asked{QStringLiteral("follow"),    sample,
                                QStringLiteral("--athlete"), QStringLiteral("Cora"),
                                QStringLiteral("--lift"),    QStringLiteral("Bench pull"),
                                QStringLiteral("--load"),    QStringLiteral("60")};
        QMap<QString, QByteArray> written; // by day
        QFile csv(QStringLiteral(SLOPEBOOK_SOURCE_DIR "/sample_db/reps.csv"));
        QVERIFY(csv.open(QIODevice::ReadOnly));
        for (const QByteArray& line : csv.readAll().split('\n'))
            if (line.contains(",Cora,Bench pull,") && line.contains(",60,1,"))
                written[QString::fromUtf8(line.left(10))] = line.split(',').at(line.count(',') - 2);
        QCOMPARE(written.size(), 8);
        const QJsonArray sessions = runProgram(asked + QStringList{QStringLiteral("--json")})
                                        .json()[QLatin1String("sessions")]
                                        .toArray();
        QCOMPARE(sessions.size(), qsizetype(8));
        int felt = 0;
        for (const QJsonValue& session : sessions) {
            const QJsonArray rpe = session[QLatin1String("rpe")].toArray();
            const QByteArray known = written[session[QLatin1String("date")].toString()];
            QCOMPARE(rpe.size(), known.isEmpty() ? 0 : 1);
            if (!known.isEmpty())
                QCOMPARE(rpe[0].toDouble(), known.toDouble());
            felt += known.isEmpty() ? 0 : 1;
        }
        QCOMPARE(felt, 5);
        const QByteArray text = runProgram(asked).out;
        QVERIFY2(text.contains("RPE") && text.contains("6.5"), text);
        QVERIFY2(!text.contains("felt"), text);
    }

    void isWholeAndSound() { QCOMPARE(runProgram({QStringLiteral("check"), sample}).exit, 0); }
};

QTEST_APPLESS_MAIN(TestSample)
#include "tst_sample.moc"
