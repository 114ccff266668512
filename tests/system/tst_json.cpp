// SPDX-License-Identifier: GPL-3.0-or-later
// The JSON of profile and compare is a contract (commands.md): every key, its order and its type,
// nulls where there is no figure, numbers in the shortest digits that read back the same.
#include "tests/system/program.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <charconv>

using slopebook::tests::Ran;
using slopebook::tests::runProgram;

namespace {

// What a key holds. n: number, s: text, b: yes or no, o: object, a: array; ? or null.
using Shape = QList<std::pair<const char*, const char*>>;

const Shape profileShape{{"athlete", "s"},
                         {"lift", "s"},
                         {"date", "s"},
                         {"velocity_kind", "s"},
                         {"device", "s?"},
                         {"n", "n"},
                         {"distinct_loads", "n"},
                         {"lightest", "n"},
                         {"heaviest", "n"},
                         {"v0", "n"},
                         {"v0_se", "n?"},
                         {"slope", "n"},
                         {"slope_se", "n?"},
                         {"residual_sd", "n?"},
                         {"df", "n"},
                         {"r2", "n"},
                         {"l0", "n?"},
                         {"area", "n?"},
                         {"mvt", "o?"},
                         {"one_rm", "o"},
                         {"plan", "o?"},
                         {"calibration", "o?"},
                         {"bracket", "o"},
                         {"bend", "o?"},
                         {"noise", "o?"},
                         {"points", "a"},
                         {"notes", "a"}};
const Shape mvtShape{{"value", "n"}, {"sd", "n?"}, {"source", "s"}};
const Shape planShape{{"estimate", "n"},       {"low", "n"},  {"high", "n"}, {"straight_low", "n?"},
                      {"straight_high", "n?"}, {"level", "n"}};
const Shape bracketShape{{"lifted", "n"}, {"not_lifted", "n?"}};
const Shape oneRmShape{{"estimate", "n"},      {"low", "n?"},           {"high", "n?"},
                       {"with_mvt_low", "n?"}, {"with_mvt_high", "n?"}, {"level", "n"},
                       {"reach", "n"},         {"measured", "n?"}};
const Shape pointShape{{"load", "n"},     {"velocity", "n"},     {"set", "n"},  {"residual", "n"},
                       {"leverage", "n"}, {"studentised", "n?"}, {"cook", "n?"}};
const Shape compareShape{{"athlete", "s"},
                         {"lift", "s"},
                         {"level", "n"},
                         {"from", "o"},
                         {"to", "o"},
                         {"conditions_changed", "a"},
                         {"comparable", "b"},
                         {"why", "s?"},
                         {"device_bias_taken_off", "n?"},
                         {"residual_sd", "n"},
                         {"df", "n"},
                         {"at", "a"},
                         {"differs", "a"},
                         {"crossing", "o?"},
                         {"parallel", "o"},
                         {"coincident", "o"},
                         {"one_rm_change", "o"},
                         {"bend", "o?"},
                         {"noise", "o?"},
                         {"sentence", "s"},
                         {"notes", "a"}};
const Shape atShape{
    {"load", "n"},          {"change", "n"},         {"se", "n"},           {"low", "n"},
    {"high", "n"},          {"band_low", "n"},       {"band_high", "n"},    {"reading_low", "n"},
    {"reading_high", "n"},  {"smallest", "n?"},      {"reading", "s"},      {"leans", "n"},
    {"straight_low", "n?"}, {"straight_high", "n?"}, {"extrapolated", "b"}, {"settle", "o?"}};
const Shape differsShape{
    {"from_load", "n"}, {"to_load", "n"}, {"direction", "s"}, {"extrapolated", "b"}};
const Shape crossingShape{{"load", "n"}, {"low", "n?"}, {"high", "n?"}};
const Shape testShape{{"f", "n"}, {"df1", "n"}, {"df2", "n"}, {"p", "n"}};
const Shape changeShape{{"estimate", "n"},       {"low", "n?"},          {"high", "n?"},
                        {"reading_low", "n?"},   {"reading_high", "n?"}, {"smallest", "n?"},
                        {"reading", "s"},        {"leans", "n"},         {"straight_low", "n?"},
                        {"straight_high", "n?"}, {"settle", "o?"}};
const Shape settleShape{{"smallest", "n"},
                        {"power", "n"},
                        {"chance_now", "n"},
                        {"chance_held_now", "n"},
                        {"by", "s"},
                        {"times", "n"},
                        {"later_tests", "n?"},
                        {"tests_on_each_side", "n?"},
                        {"same_day", "n?"},
                        {"held_later_tests", "n?"},
                        {"held_tests_on_each_side", "n?"},
                        {"held_same_day", "n?"}};
const Shape reasonShape{{"reason", "s"}};

bool fits(const QJsonValue& value, const char* type) {
    if (type[1] == '?' && value.isNull())
        return true;
    switch (type[0]) {
    case 'n':
        return value.isDouble();
    case 's':
        return value.isString();
    case 'b':
        return value.isBool();
    case 'o':
        return value.isObject();
    default:
        return value.isArray();
    }
}

// Qt sorts the keys of an object, so that their order is looked up in the text: a key of the object
// stands at the depth at which its first key stands.
QStringList keysInOrder(const QByteArray& text, int depth) {
    QStringList keys;
    const QRegularExpression key(QStringLiteral("^ {%1}\"([^\"]+)\": ").arg(2 * depth),
                                 QRegularExpression::MultilineOption);
    for (auto it = key.globalMatch(QString::fromUtf8(text)); it.hasNext();)
        keys << it.next().captured(1);
    return keys;
}

QStringList keysOf(const Shape& shape) {
    QStringList keys;
    for (const auto& [key, type] : shape)
        keys << QString::fromUtf8(key);
    return keys;
}

void verify(const QJsonValue& value, const Shape& shape) {
    const QJsonObject object = value.toObject();
    QStringList expected = keysOf(shape);
    expected.sort();
    QStringList keys = object.keys();
    keys.sort();
    QCOMPARE(keys, expected);
    for (const auto& [key, type] : shape)
        QVERIFY2(fits(object[QLatin1String(key)], type), key);
}

/// An answer without what every one begins with, which is looked at.
QJsonObject answerOf(const Ran& ran) {
    QJsonObject answer = ran.json();
    if (answer[QLatin1String("slopebook")].toInt() != 1 ||
        answer[QLatin1String("units")][QLatin1String("load")].toString() != QLatin1String("kg") ||
        answer[QLatin1String("units")][QLatin1String("velocity")].toString() !=
            QLatin1String("m/s"))
        return {};
    answer.remove(QLatin1String("slopebook"));
    answer.remove(QLatin1String("units"));
    return answer;
}

QStringList rootKeysOf(const Shape& shape) {
    return QStringList{QStringLiteral("slopebook"), QStringLiteral("units")} + keysOf(shape);
}

void verifyEach(const QJsonValue& array, const Shape& shape) {
    for (const QJsonValue& value : array.toArray())
        verify(value, shape);
}

void verifyProfile(const QJsonValue& value) {
    verify(value, profileShape);
    const QJsonObject profile = value.toObject();
    if (!profile[QLatin1String("mvt")].isNull())
        verify(profile[QLatin1String("mvt")], mvtShape);
    const QJsonObject oneRm = profile[QLatin1String("one_rm")].toObject();
    verify(oneRm, oneRm.contains(QLatin1String("reason")) ? reasonShape : oneRmShape);
    if (!profile[QLatin1String("plan")].isNull())
        verify(profile[QLatin1String("plan")], planShape);
    verify(profile[QLatin1String("bracket")], bracketShape);
    verifyEach(profile[QLatin1String("points")], pointShape);
    for (const QJsonValue& note : profile[QLatin1String("notes")].toArray())
        QVERIFY(note.isString());
}

void verifyDigits(const QByteArray& text) {
    const QRegularExpression number(QStringLiteral("(?<=[:\\[] |^)\\s*(-?[0-9][-+.0-9eE]*),?$"),
                                    QRegularExpression::MultilineOption);
    int numbers = 0;
    for (auto it = number.globalMatch(QString::fromUtf8(text)); it.hasNext();) {
        const QByteArray shown = it.next().captured(1).toUtf8();
        double value = 0;
        const auto read = std::from_chars(shown.begin(), shown.end(), value);
        QVERIFY2(read.ec == std::errc{} && read.ptr == shown.end(), shown);
        char shortest[64];
        const auto end = std::to_chars(shortest, shortest + sizeof shortest, value).ptr;
        QCOMPARE(shown, QByteArray(shortest, end - shortest));
        ++numbers;
    }
    QVERIFY(numbers > 20);
    QVERIFY(!text.contains("nan") && !text.contains("inf,"));
}

} // namespace

class TestJson : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    static QStringList about(const char* command, const QString& log, const char* athlete,
                             const char* lift) {
        return {QString::fromUtf8(command),  log,
                QStringLiteral("--athlete"), QString::fromUtf8(athlete),
                QStringLiteral("--lift"),    QString::fromUtf8(lift),
                QStringLiteral("--json")};
    }
    QString logOf(const char* name, const QByteArray& rows, const QByteArray& also = {}) {
        const QString csv = m_folder.filePath(QString::fromUtf8(name) + QStringLiteral(".csv"));
        QFile file(csv);
        if (!file.open(QIODevice::WriteOnly))
            qFatal("cannot write");
        file.write("date,athlete,lift,set,load_kg,rep,velocity" + also + "\n" + rows);
        file.close();
        const QString log = m_folder.filePath(QString::fromUtf8(name));
        const Ran ran = runProgram({QStringLiteral("import"), log, csv});
        if (ran.exit != 0)
            qFatal("%s", ran.err.constData());
        return log;
    }

private Q_SLOTS:
    void profileKeepsItsContract() {
        const Ran ran = runProgram(
            about("profile", QStringLiteral(SLOPEBOOK_SAMPLE_LOG), "Cora", "Bench pull"));
        QVERIFY2(ran.exit == 0, ran.err);
        verifyProfile(answerOf(ran));
        QCOMPARE(keysInOrder(ran.out, 1), rootKeysOf(profileShape));
        verifyDigits(ran.out);
        QVERIFY(ran.json()[QLatin1String("points")].toArray().size() > 4);
    }

    void compareKeepsItsContract() {
        const Ran ran = runProgram(
            about("compare", QStringLiteral(SLOPEBOOK_SAMPLE_LOG), "Cora", "Bench pull") +
            QStringList{QStringLiteral("--from"), QStringLiteral("2025-12-01"),
                        QStringLiteral("--to"), QStringLiteral("2026-05-04")});
        QVERIFY2(ran.exit == 0, ran.err);
        const QJsonObject json = answerOf(ran);
        verify(json, compareShape);
        QCOMPARE(keysInOrder(ran.out, 1), rootKeysOf(compareShape));
        verifyProfile(json[QLatin1String("from")]);
        verifyProfile(json[QLatin1String("to")]);
        verifyEach(json[QLatin1String("at")], atShape);
        verifyEach(json[QLatin1String("differs")], differsShape);
        if (!json[QLatin1String("crossing")].isNull())
            verify(json[QLatin1String("crossing")], crossingShape);
        verify(json[QLatin1String("parallel")], testShape);
        verify(json[QLatin1String("coincident")], testShape);
        verify(json[QLatin1String("one_rm_change")], changeShape);
        QVERIFY(!json[QLatin1String("at")].toArray().isEmpty());
        verifyDigits(ran.out);
    }

    // All that Ada's two tests come to is unclear (R's count: tst_sample, readsAsRDoes): known by
    // its interval, which holds zero.
    void whatIsUnclearSaysWhatWouldSettleIt() {
        const Ran ran =
            runProgram(about("compare", QStringLiteral(SLOPEBOOK_SAMPLE_LOG), "Ada", "Bench pull") +
                       QStringList{QStringLiteral("--from"), QStringLiteral("2025-12-01"),
                                   QStringLiteral("--to"), QStringLiteral("2026-05-04")});
        QVERIFY2(ran.exit == 0, ran.err);
        const QJsonObject json = ran.json();
        verifyEach(json[QLatin1String("at")], atShape);
        int unclear = 0;
        for (const QJsonValue& at : json[QLatin1String("at")].toArray()) {
            const QJsonObject change = at.toObject();
            const QJsonValue settle = change[QLatin1String("settle")];
            if (change[QLatin1String("reading")].toString() != QLatin1String("unclear")) {
                QVERIFY(settle.isNull());
                continue;
            }
            ++unclear;
            verify(settle, settleShape);
            QVERIFY(change[QLatin1String("reading_low")].toDouble() < 0);
            QVERIFY(change[QLatin1String("reading_high")].toDouble() > 0);
            QCOMPARE(settle[QLatin1String("smallest")].toDouble(), 0.05);
        }
        QCOMPARE(unclear, 6);
        const QJsonValue max = json[QLatin1String("one_rm_change")];
        QCOMPARE(max[QLatin1String("reading")].toString(), QStringLiteral("unclear"));
        verify(max[QLatin1String("settle")], settleShape);
        QCOMPARE(max[QLatin1String("settle")][QLatin1String("smallest")].toDouble(), 5.0);
    }

    // What is not unclear needs no settling: Edda's loads and max.
    void whatIsClearHasNothingToSettle() {
        const Ran ran = runProgram(
            about("compare", QStringLiteral(SLOPEBOOK_SAMPLE_LOG), "Edda", "Bench pull") +
            QStringList{QStringLiteral("--from"), QStringLiteral("2025-12-01"),
                        QStringLiteral("--to"), QStringLiteral("2026-05-04")});
        QVERIFY2(ran.exit == 0, ran.err);
        const QJsonObject json = ran.json();
        QJsonArray all = json[QLatin1String("at")].toArray();
        QCOMPARE(all.size(), qsizetype(5));
        all.append(json[QLatin1String("one_rm_change")]);
        for (const QJsonValue& read : all) {
            QCOMPARE(read[QLatin1String("reading")].toString(), QStringLiteral("better"));
            QVERIFY(read[QLatin1String("settle")].isNull());
        }
    }

    void twoPointsHaveNoIntervals() {
        const QString log = logOf("two", "2026-03-14,Ada,Bench pull,1,40,1,1.1\n"
                                         "2026-03-14,Ada,Bench pull,2,60,1,0.9\n");
        const Ran ran = runProgram(about("profile", log, "Ada", "Bench pull"));
        QVERIFY2(ran.exit == 0, ran.err);
        verifyProfile(answerOf(ran));
        for (const char* key : {"v0_se", "slope_se", "residual_sd", "device"})
            QVERIFY2(ran.json()[QLatin1String(key)].isNull(), key);
        const QJsonObject oneRm = ran.json()[QLatin1String("one_rm")].toObject();
        for (const char* key : {"low", "high", "with_mvt_low", "with_mvt_high", "measured"})
            QVERIFY2(oneRm[QLatin1String(key)].isNull(), key);
        QVERIFY(!ran.json()[QLatin1String("notes")].toArray().isEmpty());
    }

    void aRisingLineHasNoMaximum() {
        const QString log = logOf("rising", "2026-03-14,Ada,Odd lift,1,40,1,0.9\n"
                                            "2026-03-14,Ada,Odd lift,2,50,1,1.0\n"
                                            "2026-03-14,Ada,Odd lift,3,60,1,1.2\n");
        const Ran ran = runProgram(about("profile", log, "Ada", "Odd lift"));
        QVERIFY2(ran.exit == 0, ran.err);
        verifyProfile(answerOf(ran));
        for (const char* key : {"l0", "area", "mvt"})
            QVERIFY2(ran.json()[QLatin1String(key)].isNull(), key);
        verify(ran.json()[QLatin1String("one_rm")], reasonShape);
    }

    void anUncertainSlopeHasNoEnds() {
        const QString log = logOf("loose", "2026-03-14,Ada,Bench pull,1,40,1,1.1\n"
                                           "2026-03-14,Ada,Bench pull,2,50,1,0.7\n"
                                           "2026-03-14,Ada,Bench pull,3,60,1,1.0\n"
                                           "2026-04-14,Ada,Bench pull,1,40,1,1.1\n"
                                           "2026-04-14,Ada,Bench pull,2,50,1,1.0\n"
                                           "2026-04-14,Ada,Bench pull,3,60,1,0.91\n");
        const Ran profile =
            runProgram(about("profile", log, "Ada", "Bench pull") +
                       QStringList{QStringLiteral("--session"), QStringLiteral("2026-03-14")});
        QVERIFY2(profile.exit == 0, profile.err);
        const QJsonObject oneRm = profile.json()[QLatin1String("one_rm")].toObject();
        QVERIFY(oneRm[QLatin1String("estimate")].isDouble());
        QVERIFY(oneRm[QLatin1String("low")].isNull() && oneRm[QLatin1String("high")].isNull());
        const Ran compare =
            runProgram(about("compare", log, "Ada", "Bench pull") +
                       QStringList{QStringLiteral("--from"), QStringLiteral("2026-03-14"),
                                   QStringLiteral("--to"), QStringLiteral("2026-04-14")});
        QVERIFY2(compare.exit == 0, compare.err);
        const QJsonObject change = compare.json()[QLatin1String("one_rm_change")].toObject();
        verify(change, changeShape);
        QVERIFY(change[QLatin1String("low")].isNull());
        QCOMPARE(change[QLatin1String("reading")].toString(), QStringLiteral("no figure"));
    }

    // Three maxima lifted within days of an estimate: profile and plan take the one calibrated
    // pair, in figures and in words.
    void aCalibratedLogPlansWithOnePair() {
        QByteArray rows;
        const auto add = [&](int day, int set, const char* load, const char* speed, bool maximum) {
            rows += "2026-05-" + QByteArray::number(day).rightJustified(2, '0') +
                    ",Ada,Bench pull," + QByteArray::number(set) + "," + load + ",1," + speed +
                    (maximum ? ",1\n" : ",\n");
        };
        for (const int day : {1, 8, 15, 22}) {
            add(day, 1, "40", "1.14", false);
            add(day, 2, "50", "0.99", false);
            add(day, 3, "60", "0.86", false);
            add(day, 4, "70", "0.71", false);
            add(day, 5, "77.5", "0.60", false);
            if (day < 22)
                add(day + 2, 1, day == 8 ? "81" : "80", "0.45", true);
        }
        const QString log = logOf("calibrated", rows, ",maximum");
        QStringList asked = about("profile", log, "Ada", "Bench pull");
        const Ran profile = runProgram(asked);
        QVERIFY2(profile.exit == 0, profile.err);
        verifyProfile(answerOf(profile));
        const QJsonObject made = profile.json()[QLatin1String("calibration")].toObject();
        const QJsonObject with = profile.json()[QLatin1String("plan")].toObject();
        for (const char* key : {"estimate", "low", "high"}) {
            QVERIFY2(made[QLatin1String(key)].isDouble(), key);
            QCOMPARE(with[QLatin1String(key)], made[QLatin1String(key)]);
        }
        QVERIFY(with[QLatin1String("estimate")] !=
                profile.json()[QLatin1String("one_rm")][QLatin1String("estimate")]);
        asked.removeLast(); // --json
        const QByteArray pair =
            "to plan with " + QByteArray::number(with[QLatin1String("low")].toDouble(), 'f', 1) +
            " to " + QByteArray::number(with[QLatin1String("high")].toDouble(), 'f', 1) + " kg";
        const Ran words = runProgram(asked);
        QVERIFY2(words.out.contains(pair), words.out);
        QCOMPARE(words.out.toLower().count("to plan with"), 1);
        asked[0] = QStringLiteral("plan");
        const Ran plan = runProgram(
            asked + QStringList{QStringLiteral("--bar"), QStringLiteral("20"),
                                QStringLiteral("--plates"), QStringLiteral("20x2,10x2,5x1,2.5x1"),
                                QStringLiteral("--percent"), QStringLiteral("70")});
        QVERIFY2(plan.out.contains(pair), plan.out + plan.err);
    }

    void namesAreWrittenWhole() {
        const QString log = logOf(
            "names", "2026-03-14,\"A \"\"quoted\"\" \\ name\t\xC3\xA4\",Bench pull,1,40,1,1.1\n"
                     "2026-03-14,\"A \"\"quoted\"\" \\ name\t\xC3\xA4\",Bench pull,2,60,1,0.9\n");
        const Ran ran = runProgram({QStringLiteral("list"), log, QStringLiteral("--json")});
        QCOMPARE(ran.json()[QLatin1String("sessions")]
                     .toArray()
                     .at(0)
                     .toObject()[QLatin1String("athlete")]
                     .toString(),
                 QStringLiteral("A \"quoted\" \\ name \u00E4")); // in one spelling
    }
};

QTEST_APPLESS_MAIN(TestJson)
#include "tst_json.moc"
