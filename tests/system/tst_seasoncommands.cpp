// SPDX-License-Identifier: GPL-3.0-or-later
// season, squad and compare over blocks, run as programs: the keys that are a contract
// (commands.md), days and blocks alike, and what is refused.
#include "tests/system/program.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
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
        hasKeys(blocks[1].toObject(), {"name", "first", "last", "ceiling", "trained",
                                       "sessions_a_week", "note", "n_sessions", "counted_a_week"});
        // as sample_db/blocks.csv has it
        QCOMPARE(blocks[1].toObject()[QLatin1String("trained")].toString(),
                 QStringLiteral("Light bars lifted as fast as they go, jumps"));
        const QJsonObject planned =
            blocks[1].toObject()[QLatin1String("sessions_a_week")].toObject();
        QCOMPARE(planned[QLatin1String("fewest")].toDouble(), 2.0);
        QCOMPARE(planned[QLatin1String("most")].toDouble(), 3.0);
        // two sessions in the 77 days of it
        QVERIFY(std::abs(blocks[1].toObject()[QLatin1String("counted_a_week")].toDouble() -
                         2.0 * 7 / 77) < 1e-12);
        QCOMPARE(json[QLatin1String("story")].toArray().size(), 3);
        const QByteArray text = runProgram(sample("season", {"--athlete", "Cora"})).out;
        for (const char* part : {"planned: 2 to 3 sessions a week", "in this log ",
                                 "Spring went back to the work of Autumn", "second athlete"})
            QVERIFY2(text.contains(part), text);
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
        hasKeys(from, {"first", "last", "ceiling", "trained", "sessions_a_week", "note"});
        const QByteArray text =
            runProgram(sample("compare", {"--athlete", "Cora", "--lift", "Bench pull", "--from",
                                          "Winter flood", "--to", "spring"}))
                .out;
        QVERIFY2(text.contains("Block Spring: Heavy sets of five; planned: 1 to 2 sessions a week"),
                 text);
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

    /// The days of a block, given as days, are that block to every command: the same figures.
    void aStretchOfDaysIsABlock_data() {
        QTest::addColumn<QStringList>("block");
        QTest::addColumn<QStringList>("days");
        const QStringList cora{QStringLiteral("--athlete"), QStringLiteral("Cora")};
        const QStringList lift{QStringLiteral("--lift"), QStringLiteral("Bench pull")};
        const auto words = [](const char* text) {
            return QString::fromLatin1(text).split(QLatin1Char('|'));
        };
        const QStringList blocks = words("--from|Autumn|--to|Spring"),
                          days = words("--from|2025-09-15..2025-12-07|--to|2026-02-23..2026-05-17"),
                          mixed = words("--from|Autumn|--to|2026-02-23..2026-05-17");
        const QStringList due = words("--due|2026-05-11");
        const auto both = [](const char* name, const QStringList& one, const QStringList& other) {
            QTest::newRow(name) << one << other;
        };
        both("compare", words("compare") + cora + lift + blocks,
             words("compare") + cora + lift + days);
        both("compare, one of each", words("compare") + cora + lift + blocks,
             words("compare") + cora + lift + mixed);
        both("squad", words("squad") + lift + due + blocks, words("squad") + lift + due + days);
        both("battery", words("battery") + cora + blocks, words("battery") + cora + days);
        both("battery, one of each", words("battery") + cora + blocks,
             words("battery") + cora + mixed);
        both("follow", words("follow") + cora + lift + words("--load|60|--baseline|Autumn"),
             words("follow") + cora + lift + words("--load|60|--baseline|2025-09-15..2025-12-07"));
        both("season", words("season") + cora + words("--block|Autumn|--block|Spring"),
             words("season") + cora +
                 words("--block|2025-09-15..2025-12-07|--block|2026-02-23..2026-05-17"));
        both("season, against", words("season") + cora + words("--block|Spring|--against|Autumn"),
             words("season") + cora + words("--block|Spring|--against|2025-09-15..2025-12-07"));
    }
    void aStretchOfDaysIsABlock() {
        QFETCH(QStringList, block);
        QFETCH(QStringList, days);
        const auto run = [](QStringList arguments) {
            arguments.insert(1, QStringLiteral(SLOPEBOOK_SAMPLE_LOG));
            return runProgram(arguments << QStringLiteral("--json"));
        };
        const Ran one = run(block), other = run(days);
        QVERIFY2(one.exit == 0 && other.exit == 0, one.err + other.err);
        QByteArray named = other.out; // the names apart, and what is written of a block beside them
        named.replace("2025-09-15..2025-12-07", "Autumn")
            .replace("2026-02-23..2026-05-17", "Spring");
        // A column that is no block of the log has no note and no story of its own.
        const auto cut = [](const QByteArray& text) {
            QJsonObject said = QJsonDocument::fromJson(text).object();
            for (const char* part : {"blocks", "story", "notes", "design"})
                said.remove(QLatin1String(part));
            return QJsonDocument(said).toJson();
        };
        QVERIFY(QJsonDocument::fromJson(named).isObject());
        QCOMPARE(cut(named), cut(one.out));
    }

    void aStretchThatIsNoneIsRefused() {
        const auto squad = [](const char* from) {
            return runProgram(
                sample("squad", {"--lift", "Bench pull", "--from", from, "--to", "Spring"}));
        };
        const Ran turned = squad("2025-12-07..2025-09-15");
        QCOMPARE(turned.exit, 2);
        QVERIFY2(turned.err.contains("2025-09-15..2025-12-07"), turned.err); // how it is meant
        const Ran half = squad("2025-12-07..");
        QCOMPARE(half.exit, 2);
        QVERIFY2(half.err.contains("days such as") && half.err.contains("Winter flood"), half.err);
        // A session cannot stand on both sides.
        const Ran both = runProgram(
            sample("battery", {"--athlete", "Cora", "--from", "Spring", "--to", "2026-05-04"}));
        QCOMPARE(both.exit, 1);
        QVERIFY2(both.out.contains("both sides"), both.out);
    }

    /// Of a block the mean of its sessions, with its interval.
    void batteryTellsTheMean() {
        const Ran ran = runProgram(sample(
            "battery", {"--athlete", "Cora", "--from", "Autumn", "--to", "Spring", "--json"}));
        QVERIFY2(ran.exit == 0, ran.err);
        int means = 0;
        for (const auto& each : ran.json()[QLatin1String("tests")].toArray()) {
            const QJsonObject from = each.toObject()[QLatin1String("from")].toObject();
            hasKeys(from, {"date", "first_date", "sessions", "low", "high"});
            if (from[QLatin1String("sessions")].toInt() < 2)
                continue;
            ++means;
            QVERIFY(from[QLatin1String("first_date")].toString() <
                    from[QLatin1String("date")].toString());
            if (from[QLatin1String("low")].isDouble())
                QVERIFY(from[QLatin1String("low")].toDouble() <
                            from[QLatin1String("value")].toDouble() &&
                        from[QLatin1String("value")].toDouble() <
                            from[QLatin1String("high")].toDouble());
        }
        QVERIFY(means > 0);
    }

    /// The CSV says of blocks what compare says of them: change is after less before.
    void batteryCsvOfBlocks() {
        const Ran ran = runProgram(sample(
            "battery", {"--athlete", "Cora", "--from", "Autumn", "--to", "Spring", "--csv", "-"}));
        QVERIFY2(ran.exit == 0, ran.err);
        const Ran compare =
            runProgram(sample("compare", {"--athlete", "Cora", "--lift", "Bench pull", "--from",
                                          "Autumn", "--to", "Spring", "--json"}));
        const auto lines = ran.out.trimmed().split('\n');
        const auto columns = lines[0].split(',');
        QVERIFY(columns.endsWith("after_high"));
        int lifts = 0, means = 0;
        for (const QByteArray& line : lines.mid(1)) {
            // of a quoted cell the commas stand in its place
            QList<QByteArray> cells{QByteArray()};
            bool quoted = false;
            for (const char c : line)
                if (c == '"')
                    quoted = !quoted;
                else if (c == ',' && !quoted)
                    cells << QByteArray();
                else
                    cells.back() += c;
            QCOMPARE(cells.size(), columns.size());
            const auto cell = [&](const char* name) { return cells[columns.indexOf(name)]; };
            means += cell("before_sessions").toInt() > 1 ? 1 : 0;
            for (const auto& each : compare.json()[QLatin1String("at")].toArray()) {
                const QJsonObject at = each.toObject();
                if (cell("test") != "Bench pull, speed at " +
                                        QByteArray::number(at[QLatin1String("load")].toDouble()) +
                                        " kg")
                    continue;
                ++lifts;
                const double change = at[QLatin1String("change")].toDouble();
                QVERIFY(std::abs(cell("change").toDouble() - change) < 1e-9);
                QVERIFY(std::abs(cell("after").toDouble() - cell("before").toDouble() - change) <
                        1e-9);
            }
        }
        QVERIFY(lifts > 0 && means > 0);
    }

    void squadTellsWhoIsDue() {
        const auto due = [](const char* day, std::initializer_list<const char*> more = {}) {
            QStringList all = sample("squad", {"--lift", "Bench pull", "--from", "Winter flood",
                                               "--to", "Spring", "--json", "--due", day});
            for (const char* word : more)
                all << QString::fromLatin1(word);
            const Ran ran = runProgram(all);
            return ran.json()[QLatin1String("due")].toObject();
        };
        const QJsonObject now = due("2026-05-11");
        QCOMPARE(now[QLatin1String("block")].toString(), QStringLiteral("Spring"));
        hasKeys(now, {"on", "weeks", "block", "tests", "away"});
        // Two months on everybody who pulled is due for the pull.
        const QJsonArray later = due("2026-07-20")[QLatin1String("tests")].toArray();
        QVERIFY(!later.isEmpty());
        int days = 1 << 30;
        for (const auto& each : later) {
            const QJsonObject row = each.toObject();
            hasKeys(row, {"athlete", "kind", "name", "last", "days", "reason"});
            QCOMPARE(row[QLatin1String("name")].toString(), QStringLiteral("Bench pull"));
            QVERIFY(row[QLatin1String("days")].toInt() <= days); // the longest ago first
            days = row[QLatin1String("days")].toInt();
        }
        QVERIFY(due("2026-07-20", {"--weeks", "100"})[QLatin1String("tests")].toArray().size() <
                later.size());
        QVERIFY(!due("2027-07-20")[QLatin1String("away")].toArray().isEmpty());
        QCOMPARE(runProgram(sample("squad", {"--lift", "Bench pull", "--from", "Winter flood",
                                             "--to", "Spring", "--due", "yesterday"}))
                     .exit,
                 2);
    }

    void squadPrintsItsPage() {
        QTemporaryDir folder;
        const QString file = folder.filePath(QStringLiteral("squad.pdf"));
        const auto run = [&] {
            return runProgram(sample("squad", {"--lift", "Bench pull", "--from", "Winter flood",
                                               "--to", "Spring", "--pdf"})
                              << file);
        };
        QCOMPARE(run().exit, 0);
        QVERIFY(QFile(file).size() > 5000);
        QCOMPARE(run().exit, 2); // it is there
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

    /// Days that are no block's are a baseline too: what compare says of them and a day.
    void followTakesAStretchOfDays() {
        const char* days = "2025-09-20..2025-11-30";
        const QJsonObject json =
            followed({"--athlete", "Cora", "--load", "40", "--baseline", days});
        QCOMPARE(json[QLatin1String("baseline")].toString(), QString::fromLatin1(days));
        const QJsonObject last = json[QLatin1String("sessions")].toArray().last().toObject();
        const QByteArray day = last[QLatin1String("date")].toString().toUtf8();
        const Ran ran =
            runProgram(sample("compare", {"--athlete", "Cora", "--lift", "Bench pull", "--from",
                                          days, "--to", day.constData(), "--json"}));
        QVERIFY2(ran.exit == 0, ran.err);
        bool found = false;
        for (const auto& at : ran.json()[QLatin1String("at")].toArray())
            if (at.toObject()[QLatin1String("load")].toDouble() == 40) {
                found = true;
                for (const char* key : {"change", "reading_low", "reading_high", "reading"})
                    QCOMPARE(last[QLatin1String("change")].toObject()[QLatin1String(key)],
                             at.toObject()[QLatin1String(key)]);
            }
        QVERIFY(found);
        // The log's own blocks are still there, and none of them is the baseline.
        const QJsonArray blocks = json[QLatin1String("blocks")].toArray();
        QCOMPARE(blocks.size(), 3);
        for (const auto& each : blocks)
            QVERIFY(!each.toObject()[QLatin1String("baseline")].toBool());
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
