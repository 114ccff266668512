// SPDX-License-Identifier: GPL-3.0-or-later
// The line that attempts are typed in.
#include "core/answers/attemptdoubt.h"
#include "ui/typed/attemptline.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::ui;

namespace {

TestKind kind(bool twoSided, TestFormula formula = TestFormula::Value) {
    TestKind k;
    k.name = "Hop";
    k.unit = "m";
    k.twoSided = twoSided;
    k.formula = formula;
    return k;
}

TypedAttempts typed(const char16_t* line, const TestKind& k) {
    const auto read = readAttemptLine(line, k);
    if (const auto* problem = std::get_if<LineProblem>(&read)) {
        qWarning("problem %d at %d", int(problem->kind), int(problem->where.start));
        return {};
    }
    return std::get<TypedAttempts>(read);
}

} // namespace

class TestAttemptLine : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void plainValues() {
        const auto t = typed(u"1.82 1,90;1.88", kind(false));
        QCOMPARE(t.attempts.size(), std::size_t(3));
        QCOMPARE(t.attempts[1].value, 1.9);
        QCOMPARE(t.attempts[1].side, BodySide::Both);
    }
    void sides() {
        const auto t = typed(u"L 1.82 1.9 r1.75", kind(true));
        QCOMPARE(t.attempts.size(), std::size_t(3));
        QCOMPARE(t.attempts[1].side, BodySide::Left);
        QCOMPARE(t.attempts[2].side, BodySide::Right);
        QCOMPARE(t.attempts[2].value, 1.75);
    }
    void contactTime() {
        const auto t = typed(u"0,512/0,204 0.5/0.2", kind(false, TestFormula::FlightRsi));
        QCOMPARE(t.attempts.size(), std::size_t(2));
        QCOMPARE(t.attempts[0].value, 0.512);
        QCOMPARE(t.attempts[0].contact, 0.204);
    }
    void leftOutWithItsReason() {
        const auto t = typed(u"1.82 1.95x # on the line", kind(false));
        QCOMPARE(t.attempts[0].excluded, std::string());
        QCOMPARE(t.attempts[0].note, std::string());
        QCOMPARE(t.attempts[1].excluded, std::string("on the line"));
    }
    void noteOfAll() {
        const auto t = typed(u"1.82 1.95 # wet floor", kind(false));
        QCOMPARE(t.attempts[0].note, std::string("wet floor"));
        QCOMPARE(t.attempts[1].note, std::string("wet floor"));
    }
    void notPossible() {
        const auto t = typed(u"L 1.82 R - # sore knee", kind(true));
        QCOMPARE(t.attempts.size(), std::size_t(1));
        QCOMPARE(t.notPossible, std::vector{BodySide::Right});
        QCOMPARE(t.reason, std::string("sore knee"));
        QCOMPARE(typed(u"- # no box", kind(false)).notPossible, std::vector{BodySide::Both});
    }
    void refused_data() {
        using Kind = LineProblem::Kind;
        QTest::addColumn<QString>("line");
        QTest::addColumn<bool>("twoSided");
        QTest::addColumn<int>("formula");
        QTest::addColumn<int>("problem");
        const int value = int(TestFormula::Value);
        const int rsi = int(TestFormula::FlightRsi);
        QTest::newRow("nothing") << "  " << false << value << int(Kind::Empty);
        QTest::newRow("a word") << "1.8 far" << false << value << int(Kind::NotANumber);
        QTest::newRow("group marks") << "1.250,5" << false << value << int(Kind::TwoMarks);
        QTest::newRow("zero") << "0" << false << value << int(Kind::NotPositive);
        QTest::newRow("side missing") << "1.8" << true << value << int(Kind::SideMissing);
        QTest::newRow("side too many") << "L 1.8" << false << value << int(Kind::NoSides);
        QTest::newRow("contact missing") << "0.5" << false << rsi << int(Kind::NoContact);
        QTest::newRow("contact too many") << "0.5/0.2" << false << value << int(Kind::ExtraContact);
        QTest::newRow("no reason") << "1.8x" << false << value << int(Kind::NoReason);
        QTest::newRow("gap without reason") << "-" << false << value << int(Kind::NoReason);
        QTest::newRow("side alone") << "L 1.8 R" << true << value << int(Kind::SideAlone);
    }
    void refused() {
        QFETCH(QString, line);
        QFETCH(bool, twoSided);
        QFETCH(int, formula);
        QFETCH(int, problem);
        const auto read = readAttemptLine(line.toStdU16String(),
                                          kind(twoSided, static_cast<TestFormula>(formula)));
        QVERIFY(std::holds_alternative<LineProblem>(read));
        QCOMPARE(int(std::get<LineProblem>(read).kind), problem);
    }

    void bothAtOnceWhereTheTestTakesIt() {
        TestKind hop = kind(true);
        hop.bothToo = true;
        // testday.md's lines
        QCOMPARE(typed(u"1.84 1.91", kind(false)).attempts.size(), std::size_t(2));
        QCOMPARE(typed(u"l 1.84", hop).attempts.front().side, BodySide::Left);
        QCOMPARE(typed(u"- # knee", hop).notPossible, std::vector{BodySide::Both});
        QCOMPARE(typed(u"l - # knee", hop).notPossible, std::vector{BodySide::Left});
        QCOMPARE(typed(u"l- # knee", hop).notPossible, std::vector{BodySide::Left});
        const auto both = typed(u"b 1.9 l 1,8 r1.7", hop);
        QCOMPARE(both.attempts.size(), std::size_t(3));
        QCOMPARE(both.attempts[0].side, BodySide::Both);
        QCOMPARE(both.attempts[1].side, BodySide::Left);
        QCOMPARE(both.attempts[2].side, BodySide::Right);
    }
    void aRefusalSaysWhatWouldBeTaken_data() {
        using Kind = LineProblem::Kind;
        QTest::addColumn<QString>("line");
        QTest::addColumn<bool>("twoSided");
        QTest::addColumn<bool>("contact");
        QTest::addColumn<int>("problem");
        QTest::addColumn<QString>("offending");
        QTest::addColumn<QString>("instead");
        const auto row = [](const char* line, bool twoSided, bool contact, Kind problem,
                            const char* offending, const char* instead) {
            QTest::newRow(line) << QString::fromUtf8(line) << twoSided << contact << int(problem)
                                << QString::fromUtf8(offending) << QString::fromUtf8(instead);
        };
        row("0", false, false, Kind::NotPositive, "0", "");
        row("0 # knee", false, false, Kind::NotPositive, "0", "- # knee");
        row("l 0 # knee", true, false, Kind::NotPositive, "0", "l - # knee");
        row("missed", false, false, Kind::NotANumber, "missed", "- # missed");
        row("r f # knee", true, false, Kind::NotANumber, "f", "r - # knee");
        row("1.8 far", false, false, Kind::NotANumber, "far", "");
        row("1.84 @8", false, false, Kind::EffortAtTest, "@8", "1.84");
        row("1.84!", false, false, Kind::NotANumber, "1.84!", "1.84");
        row("1.84", true, false, Kind::SideMissing, "1.84", "r 1.84");
        row("1,84 1,9 # wet", true, false, Kind::SideMissing, "1,84", "r 1,84 1,9 # wet");
        row("b 1.9", true, false, Kind::NoBoth, "b", "r 1.9");
        row("b1.9", true, false, Kind::NoBoth, "b1.9", "r 1.9");
        row("l 1.9", false, false, Kind::NoSides, "l", "1.9");
        row("r1.9", false, false, Kind::NoSides, "r1.9", "1.9");
        row("0.5/0.2", false, false, Kind::ExtraContact, "0.5/0.2", "0.5");
        row("0.5", false, true, Kind::NoContact, "0.5", "");
        row("0.5/", false, true, Kind::NotANumber, "0.5/", "");
        row("1.8.2", false, false, Kind::TwoMarks, "1.8.2", "");
        row("1,", false, false, Kind::BareMark, "1,", "");
        row("1.8x", false, false, Kind::NoReason, "", "");
        row("r -", true, false, Kind::NoReason, "", "");
        row("l 1.8 r", true, false, Kind::SideAlone, "r", "");
    }
    void aRefusalSaysWhatWouldBeTaken() {
        QFETCH(QString, line);
        QFETCH(bool, twoSided);
        QFETCH(bool, contact);
        QFETCH(int, problem);
        QFETCH(QString, offending);
        QFETCH(QString, instead);
        const TestKind k = kind(twoSided, contact ? TestFormula::FlightRsi : TestFormula::Value);
        const auto read = readAttemptLine(line.toStdU16String(), k, BodySide::Right);
        QVERIFY(std::holds_alternative<LineProblem>(read));
        const auto& found = std::get<LineProblem>(read);
        QCOMPARE(int(found.kind), problem);
        QCOMPARE(line.mid(qsizetype(found.where.start), qsizetype(found.where.length)), offending);
        QCOMPARE(QString::fromStdU16String(found.instead), instead);
        if (!instead.isEmpty())
            QVERIFY(std::holds_alternative<TypedAttempts>(readAttemptLine(found.instead, k)));
    }

    void unusualFiguresAreAskedAbout_data() {
        QTest::addColumn<int>("formula");
        QTest::addColumn<QString>("line");
        QTest::addColumn<bool>("doubtful");
        QTest::addColumn<double>("perhaps"); // 0: nothing is proposed
        const int flight = int(TestFormula::FlightHeight);
        const int rsi = int(TestFormula::FlightRsi);
        const int metres = int(TestFormula::Value);
        QTest::newRow("a usual flight time") << flight << QStringLiteral("0.52") << false << 0.0;
        QTest::newRow("a mark one place off")
            << flight << QStringLiteral("0.52 5.38") << true << 0.538;
        QTest::newRow("milliseconds") << flight << QStringLiteral("538") << true << 0.538;
        QTest::newRow("nothing likely") << flight << QStringLiteral("1.2") << true << 0.0;
        QTest::newRow("left out already")
            << flight << QStringLiteral("5.38x # clap") << false << 0.0;
        QTest::newRow("contact in ms") << rsi << QStringLiteral("0.5/204") << true << 0.204;
        QTest::newRow("a hop in cm") << metres << QStringLiteral("195") << true << 1.95;
        QTest::newRow("a hop in m") << metres << QStringLiteral("1.95") << false << 0.0;
    }
    void unusualFiguresAreAskedAbout() {
        QFETCH(int, formula);
        QFETCH(QString, line);
        QFETCH(bool, doubtful);
        QFETCH(double, perhaps);
        const TestKind k = kind(false, TestFormula(formula));
        const auto doubt =
            answers::doubtOf(k, typed(line.toStdU16String().c_str(), k).attempts, {});
        QCOMPARE(doubt.has_value(), doubtful);
        if (doubt)
            QCOMPARE(doubt->perhaps.value_or(0), perhaps);
    }
    void theAthletesOwnAttemptsSayWhatIsUsual() {
        const TestKind k = kind(true);
        auto earlier = typed(u"L 1.8 R 1.9", k).attempts;
        earlier.push_back(typed(u"L 9x # a slip", k).attempts.front());
        const auto doubt = answers::doubtOf(k, typed(u"L 1.95 R 195", k).attempts, earlier);
        QVERIFY(doubt);
        QCOMPARE(doubt->attempt, std::size_t(1));
        QCOMPARE(doubt->perhaps.value_or(0), 1.95);
        QVERIFY(!answers::doubtOf(k, typed(u"L 2.4 R 1.3", k).attempts, earlier));
    }
    /// What usual is: from 1/1.6 of the least to 1.6 of the greatest; of jumps a body's 0.15 to 1
    /// s.
    void whatIsDoubtedIsSaidInWholeSentences() {
        const TestKind k = kind(true);
        const auto earlier = typed(u"L 1.6 R 2.0", k).attempts;
        const auto doubt = answers::doubtOf(k, typed(u"L 1.7 R 195", k).attempts, earlier);
        QVERIFY(doubt);
        const auto words = answers::attemptDoubtWords(*doubt, true);
        QCOMPARE(words.size(), std::size_t(2));
        QCOMPARE(english(words[0]),
                 std::string("195 is far from this athlete's others (1.00 to 3.20)."));
        QCOMPARE(english(words[1]), std::string("Is 1.95 meant?"));
        const TestKind jump = kind(false, TestFormula::FlightRsi);
        const auto contact = answers::doubtOf(jump, typed(u"0.5/204", jump).attempts, {});
        QVERIFY(contact && contact->contact);
        const auto told = answers::attemptDoubtWords(*contact, false);
        QCOMPARE(told.size(), std::size_t(3));
        QCOMPARE(english(told[0]), std::string("204 is outside what is usual (0.08 to 1.50)."));
        QCOMPARE(english(told[1]), std::string("It stands for the contact time in s."));
        QCOMPARE(english(told[2]), std::string("Is 0.204 meant?"));
    }
};
QTEST_APPLESS_MAIN(TestAttemptLine)
#include "tst_attemptline.moc"
