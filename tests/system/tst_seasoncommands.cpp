// SPDX-License-Identifier: GPL-3.0-or-later
// season, squad and compare over blocks, run as programs: the keys that are a contract
// (commands.md), days and blocks alike, and what is refused.
#include "tests/system/program.h"

#include <QJsonArray>
#include <QTest>

#include <cmath>

using slopebook::tests::Ran;
using slopebook::tests::runProgram;

namespace {

QStringList sample(const char* command, std::initializer_list<const char*> rest) {
    QStringList all{QString::fromUtf8(command), QStringLiteral(SLOPEBOOK_SAMPLE_LOG)};
    for (const char* word : rest)
        all << QString::fromUtf8(word);
    return all;
}

void hasKeys(const QJsonObject& object, std::initializer_list<const char*> keys) {
    for (const char* key : keys)
        QVERIFY2(object.contains(QLatin1String(key)), key);
}

} // namespace

class TestSeasonCommands : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void seasonKeepsItsContract() {
        const Ran ran = runProgram(sample("season", {"--athlete", "Cora", "--json"}));
        QVERIFY2(ran.exit == 0 && ran.err.isEmpty(), ran.err);
        const QJsonObject json = ran.json();
        hasKeys(json, {"athlete", "blocks", "measures", "expected_by_chance", "sentence"});
        const QJsonArray blocks = json[QLatin1String("blocks")].toArray();
        QCOMPARE(blocks.size(), 3);
        hasKeys(blocks[1].toObject(), {"name", "first", "last", "ceiling"});
        QCOMPARE(blocks[1].toObject()[QLatin1String("ceiling")].toDouble(), 70.0);
        for (const auto& each : json[QLatin1String("measures")].toArray()) {
            const QJsonObject measure = each.toObject();
            hasKeys(measure, {"kind", "name", "load", "side", "unit", "cells"});
            const QJsonArray cells = measure[QLatin1String("cells")].toArray();
            QCOMPARE(cells.size(), 3);
            for (const auto& cell : cells)
                hasKeys(cell.toObject(), {"block", "n_sessions", "value", "se", "reading",
                                          "against", "comparable", "why"});
            // the chosen block is read against nothing
            QVERIFY(cells[0].toObject()[QLatin1String("against")].isNull());
        }
    }

    void seasonAgainstAnotherBlockAndOfTwo() {
        const Ran ran =
            runProgram(sample("season", {"--athlete", "Cora", "--against", "spring", "--block",
                                         "Autumn", "--block", "Spring", "--json"}));
        QVERIFY2(ran.exit == 0, ran.err);
        QCOMPARE(ran.json()[QLatin1String("chosen")].toString(), QStringLiteral("Spring"));
        QCOMPARE(ran.json()[QLatin1String("blocks")].toArray().size(), 2);
        const Ran none = runProgram(sample("season", {"--athlete", "Cora", "--against", "Summer"}));
        QCOMPARE(none.exit, 2);
        QVERIFY2(none.err.contains("Winter flood"), none.err); // the blocks there are
        const Ran csv = runProgram(sample("season", {"--athlete", "Cora", "--csv", "-"}));
        QVERIFY2(csv.out.startsWith("kind,name,load_kg,side,unit,block,"), csv.out);
    }

    void comparesBlocksAndDaysAlike() {
        const auto compare = [](const char* from, const char* to) {
            return runProgram(sample("compare", {"--athlete", "Cora", "--lift", "Bench pull",
                                                 "--from", from, "--to", to, "--json"}));
        };
        const Ran blocks = compare("Winter flood", "spring");
        QVERIFY2(blocks.exit == 0, blocks.err);
        const QJsonObject sides = blocks.json()[QLatin1String("blocks")].toObject();
        const QJsonObject from = sides[QLatin1String("from")].toObject();
        QCOMPARE(from[QLatin1String("name")].toString(), QStringLiteral("Winter flood"));
        QVERIFY(from[QLatin1String("sessions")].toArray().size() > 1);
        QVERIFY(blocks.json()[QLatin1String("parallel")].isNull());
        const Ran mixed = compare("2025-12-01", "Spring"); // a day against a block
        QVERIFY2(mixed.exit == 0, mixed.err);
        QVERIFY(!compare("2025-12-01", "2026-05-04").json().contains(QLatin1String("blocks")));
        QCOMPARE(compare("2025-12-01", "Summer").exit, 2);
    }

    void squadTellsTheMean() {
        const Ran ran = runProgram(sample("squad", {"--lift", "Bench pull", "--from",
                                                    "Winter flood", "--to", "Spring", "--json"}));
        QVERIFY2(ran.exit == 0, ran.err);
        for (const auto& each : ran.json()[QLatin1String("parts")].toArray()) {
            const QJsonObject part = each.toObject();
            const QJsonObject mean = part[QLatin1String("mean")].toObject();
            double sum = 0;
            int count = 0;
            for (const auto& row : part[QLatin1String("athletes")].toArray())
                if (const QJsonObject read = row.toObject()[QLatin1String("read")].toObject();
                    !read.isEmpty()) {
                    sum += read[QLatin1String("change")].toDouble();
                    ++count;
                }
            QCOMPARE(mean[QLatin1String("athletes")].toInt(), count);
            QVERIFY(std::abs(mean[QLatin1String("change")].toDouble() - sum / count) < 1e-9);
            QVERIFY(mean[QLatin1String("low")].toDouble() < mean[QLatin1String("high")].toDouble());
        }
        QVERIFY(ran.json()[QLatin1String("expected_by_chance")].toDouble() > 0);
    }

    QJsonObject followed(std::initializer_list<const char*> rest) {
        QStringList asked = sample("follow", {"--lift", "Bench pull", "--json"});
        for (const char* word : rest)
            asked << QString::fromUtf8(word);
        const Ran ran = runProgram(asked);
        if (ran.exit != 0)
            qWarning("%s", ran.err.constData());
        return ran.json();
    }

    /// Each block has its mean, what it is against the baseline, and a trend or why there is none.
    void followTellsItsBlocks() {
        const QJsonObject json = followed({"--athlete", "Cora", "--load", "40"});
        hasKeys(json, {"baseline", "baseline_is", "baseline_value", "sentence", "not_lifted",
                       "trend", "sessions", "blocks"});
        QCOMPARE(json[QLatin1String("baseline_is")].toString(), QStringLiteral("day"));
        const QJsonArray blocks = json[QLatin1String("blocks")].toArray();
        QCOMPARE(blocks.size(), 3);
        for (const auto& each : blocks) {
            const QJsonObject block = each.toObject();
            hasKeys(block, {"name", "first", "last", "ceiling", "sessions", "mean", "se", "low",
                            "high", "extrapolated", "baseline", "change", "trend"});
            QVERIFY(block[QLatin1String("low")].toDouble() <
                    block[QLatin1String("mean")].toDouble());
            const QJsonObject trend = block[QLatin1String("trend")].toObject();
            QVERIFY(trend.contains(QLatin1String("per_week")) !=
                    trend.contains(QLatin1String("reason")));
        }
        // The baseline lies in the first: it is read against nothing, the others are.
        QVERIFY(blocks[0].toObject()[QLatin1String("baseline")].toBool());
        QVERIFY(blocks[0].toObject()[QLatin1String("change")].isNull());
        hasKeys(blocks[2].toObject()[QLatin1String("change")].toObject(), {"change", "reading"});
    }

    /// A block as the baseline is the whole of it: what compare says of block and day, and of block
    /// and block in the whole season's matrix.
    void followTakesABlock() {
        const QJsonObject json =
            followed({"--athlete", "Cora", "--load", "40", "--baseline", "autumn"});
        QCOMPARE(json[QLatin1String("baseline")].toString(), QStringLiteral("Autumn"));
        QCOMPARE(json[QLatin1String("baseline_is")].toString(), QStringLiteral("block"));
        const QJsonObject last = json[QLatin1String("sessions")].toArray().last().toObject();
        const QByteArray day = last[QLatin1String("date")].toString().toUtf8();
        const Ran ran =
            runProgram(sample("compare", {"--athlete", "Cora", "--lift", "Bench pull", "--from",
                                          "Autumn", "--to", day.constData(), "--json"}));
        QVERIFY2(ran.exit == 0, ran.err);
        bool found = false;
        for (const auto& at : ran.json()[QLatin1String("at")].toArray())
            if (at.toObject()[QLatin1String("load")].toDouble() == 40) {
                found = true;
                const QJsonObject change = last[QLatin1String("change")].toObject();
                for (const char* key : {"change", "reading_low", "reading_high", "reading"})
                    QCOMPARE(change[QLatin1String(key)], at.toObject()[QLatin1String(key)]);
            }
        QVERIFY(found);
        const Ran season = runProgram(sample("season", {"--athlete", "Cora", "--json"}));
        int cellsSeen = 0;
        for (const auto& each : season.json()[QLatin1String("measures")].toArray()) {
            const QJsonObject measure = each.toObject();
            if (measure[QLatin1String("kind")].toString() != QLatin1String("lift") ||
                measure[QLatin1String("name")].toString() != QLatin1String("Bench pull") ||
                measure[QLatin1String("load")].toDouble() != 40)
                continue;
            const QJsonArray cells = measure[QLatin1String("cells")].toArray();
            const QJsonArray blocks = json[QLatin1String("blocks")].toArray();
            for (qsizetype j = 0; j < cells.size(); ++j, ++cellsSeen) {
                QCOMPARE(blocks[j].toObject()[QLatin1String("mean")],
                         cells[j].toObject()[QLatin1String("value")]);
                QCOMPARE(blocks[j].toObject()[QLatin1String("se")],
                         cells[j].toObject()[QLatin1String("se")]);
            }
        }
        QCOMPARE(cellsSeen, 3);
    }

    /// reps.csv has them: 100 kg on Dov's last day, and no 90 kg for Finn in the flood.
    void followTellsWhatWasNotLifted() {
        const auto marks = [](const QJsonObject& json) {
            return json[QLatin1String("not_lifted")].toArray();
        };
        const QJsonArray dov = marks(followed({"--athlete", "Dov", "--load", "100"}));
        QCOMPARE(dov.size(), 1);
        QCOMPARE(dov[0].toObject()[QLatin1String("date")].toString(), QStringLiteral("2026-05-05"));
        QCOMPARE(dov[0].toObject()[QLatin1String("what")].toString(), QStringLiteral("not lifted"));
        QCOMPARE(dov[0].toObject()[QLatin1String("load")].toDouble(), 100.0);
        QCOMPARE(dov[0].toObject()[QLatin1String("reason")].toString(),
                 QStringLiteral("did not reach the bench"));
        // A heavier load than the followed one says nothing of it.
        QCOMPARE(marks(followed({"--athlete", "Dov", "--load", "60"})).size(), 0);
        const Ran finn = runProgram(sample(
            "follow", {"--athlete", "Finn", "--lift", "Back squat", "--load", "90", "--trends"}));
        QVERIFY2(finn.exit == 0, finn.err);
        QVERIFY2(finn.out.contains("90 kg was not possible on 2026-02-17: only the small plates "
                                   "are left"),
                 finn.out);
        QVERIFY2(finn.out.contains("rend within Autumn"), finn.out);
    }
};

QTEST_GUILESS_MAIN(TestSeasonCommands)
#include "tst_seasoncommands.moc"
