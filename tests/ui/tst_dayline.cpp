// SPDX-License-Identifier: GPL-3.0-or-later
// Whose line it is, in front of it.
#include "ui/typed/dayline.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::ui;
using Kind = LineProblem::Kind;

namespace {

TestKind hop() {
    TestKind kind;
    kind.name = "Hop";
    kind.unit = "m";
    kind.twoSided = true;
    return kind;
}

DayLine atLift(const QString& line, const std::vector<std::string>& names) {
    return readDayLine(line.toStdU16String(), {}, names);
}
DayLine atHop(const QString& line, const std::vector<std::string>& names) {
    static const TestKind kind = hop();
    return readDayLine(line.toStdU16String(), {.test = &kind}, names);
}
DayLine atLift(const char* line, const std::vector<std::string>& names) {
    return atLift(QString::fromUtf8(line), names);
}
DayLine atHop(const char* line, const std::vector<std::string>& names) {
    return atHop(QString::fromUtf8(line), names);
}
int whose(const DayLine& line) {
    return line.who ? int(*line.who) : -1;
}
/// What stands behind the name, read alone.
DayLine bare(const QString& line, bool test) {
    return test ? atHop(line, {}) : atLift(line, {});
}

} // namespace

class TestDayLine : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theNameInFront_data() {
        QTest::addColumn<QStringList>("names");
        QTest::addColumn<QString>("line");
        QTest::addColumn<bool>("test");
        QTest::addColumn<int>("who");
        QTest::addColumn<QString>("rest");
        const QStringList squad = QString::fromUtf8("Ada,Bela,Cora,Ann Marie,Lane 3,Lane 4,Ben L,"
                                                    "\u00c4nne Stra\u00dfer")
                                      .split(u',');
        const auto row = [&](const char* name, const char* line, bool test, int who,
                             const char* rest) {
            QTest::newRow(name) << squad << QString::fromUtf8(line) << test << who
                                << QString::fromUtf8(rest);
        };
        row("nobody named", "60 0.92", false, -1, "60 0.92");
        row("two letters", "ad 60 0.92 @8", false, 0, "60 0.92 @8");
        row("capitals", "BEL 60 0,92", false, 1, "60 0,92");
        row("a test", "bela l 1.84", true, 1, "l 1.84");
        row("not lifted", "co 100 - # grip", false, 2, "100 - # grip");
        row("a lift not possible", "co - # back", false, 2, "- # back");
        row("the side glued", "co l1.84", true, 2, "l1.84");
        row("a whole name with a blank", "ann marie 60 0.92", false, 3, "60 0.92");
        row("its beginning over the blank", "ann ma 60 0.92", false, 3, "60 0.92");
        row("its first word", "ann 60 0.92", false, 3, "60 0.92");
        row("more blanks", "  ann   marie   60 0.92", false, 3, "60 0.92");
        row("blanks of a language", "ann\u00a0marie\u202f60 0.92", false, 3, "60 0.92");
        row("semicolons", "ann;marie;60;0,92", false, 3, "60;0,92");
        row("a figure in the name", "lane 3 60 0.92", false, 4, "60 0.92");
        row("the other figure", "Lane 4 60 0.92", false, 5, "60 0.92");
        row("a side at its end, at a lift", "ben l 60 0.92", false, 6, "60 0.92");
        row("a side at its end, and a side", "ben l l 1.84", true, 6, "l 1.84");
        row("l is a side at a test", "ben l 1.84", true, 6, "l 1.84");
        row("letters of a language", "\u00c4N 60 0.92", false, 7, "60 0.92");
        row("sharp s as ss", "\u00e4nne strasser 60 0.92", false, 7, "60 0.92");
        row("a side is nobody", "b 60 0.92", false, -1, "b 60 0.92");
        row("l is a side, not Lane", "l 1.84", true, -1, "l 1.84");
        row("a dash is nobody", "- # knee", true, -1, "- # knee");
    }
    void theNameInFront() {
        QFETCH(QStringList, names);
        QFETCH(QString, line);
        QFETCH(bool, test);
        QFETCH(int, who);
        QFETCH(QString, rest);
        std::vector<std::string> squad;
        for (const QString& name : names)
            squad.push_back(name.toStdString());
        const DayLine read = test ? atHop(line, squad) : atLift(line, squad);
        QCOMPARE(whose(read), who);
        if (std::holds_alternative<LineProblem>(read.what))
            QCOMPARE(std::get<LineProblem>(read.what),
                     std::get<LineProblem>(bare(rest, test).what));
        else
            QVERIFY(read.what == bare(rest, test).what);
    }

    void aNameAloneGoesThere() {
        for (const QString& line :
             {QStringLiteral("be"), QStringLiteral("Bela "), QStringLiteral("be # ")}) {
            const DayLine read = atLift(line, {"Ada", "Bela"});
            QCOMPARE(whose(read), 1);
            if (!line.contains(u'#'))
                QVERIFY(std::holds_alternative<OnlyName>(read.what));
        }
    }

    void twoThatBeginSoAreAsked() {
        const std::vector<std::string> squad{"Bela", "Berta", "Ben", "Benno", "Ann L", "Ann R"};
        DayLine read = atLift("be 60 0.92 # ok", squad);
        QCOMPARE(whose(read), -1);
        QVERIFY(std::holds_alternative<WhoQuestion>(read.what));
        const auto& question = std::get<WhoQuestion>(read.what);
        QCOMPARE(question.who, (std::vector<std::size_t>{0, 1, 2, 3}));
        QCOMPARE(question.where, (Span{0, 2}));
        QCOMPARE(question.lines.size(), std::size_t(4));
        QCOMPARE(question.lines[0], std::u16string(u"Bel 60 0.92 # ok"));
        QCOMPARE(question.lines[2], std::u16string(u"Ben 60 0.92 # ok"));
        QCOMPARE(question.lines[3], std::u16string(u"Benn 60 0.92 # ok"));
        for (std::size_t i = 0; i < question.who.size(); ++i) {
            const DayLine taken = readDayLine(question.lines[i], {}, squad);
            QCOMPARE(taken.who, std::optional(question.who[i]));
            QVERIFY(std::holds_alternative<TypedSet>(taken.what));
        }
        // A whole name is whose it is, though another begins so.
        QCOMPARE(whose(atLift("ben 60 0.92", squad)), 2);
        QVERIFY(std::holds_alternative<WhoQuestion>(atHop("ann l 1.84", squad).what));
        QCOMPARE(whose(atHop("ann l l 1.84", squad)), 4);
        QCOMPARE(whose(atLift("ann r 60 0.92", squad)), 5);
    }

    void whatIsWrongOfANameAndBehindIt() {
        const std::vector<std::string> squad{"Ada", "Bela", "Cora", "Anton"};
        const auto problem = [](const DayLine& read) { return std::get<LineProblem>(read.what); };
        QCOMPARE(problem(atLift("zoe 60 0.92", squad)),
                 (LineProblem{Kind::NobodyCalled, {0, 3}, {}}));
        QCOMPARE(problem(atLift("c 60 0.92", squad)),
                 (LineProblem{Kind::NameTooShort, {0, 1}, u"Co 60 0.92"}));
        QCOMPARE(problem(atLift("a 60 0.92", squad)),
                 (LineProblem{Kind::NameTooShort, {0, 1}, {}}));
        QCOMPARE(problem(atLift("bela 95 0", squad)),
                 (LineProblem{Kind::SpeedZero, {8, 1}, u"bela 95 -"}));
        QCOMPARE(problem(atLift("be 95 # missed", squad)),
                 (LineProblem{Kind::NoSpeeds, {14, 0}, u"be 95 - # missed"}));
        const DayLine asked = atLift("be 60 92", squad);
        QCOMPARE(whose(asked), 1);
        QCOMPARE(std::get<LineQuestion>(asked.what).meant, std::u16string(u"be 60 0.92"));
        QCOMPARE(std::get<LineQuestion>(asked.what).where, (Span{6, 2}));
        // Without a roster letters in front are no name.
        QCOMPARE(problem(atLift("be 60 0.92", {})), (LineProblem{Kind::NotANumber, {0, 2}, {}}));
        QCOMPARE(problem(atLift("", squad)), (LineProblem{Kind::Empty, {0, 0}, {}}));
        QCOMPARE(problem(atLift("b 60 0.92", squad)),
                 (LineProblem{Kind::SideAtLift, {0, 1}, u"60 0.92"}));
    }
    void theDueSideIsOffered() {
        const TestKind kind = hop();
        const auto read = readDayLine(u"be 1.84", {.test = &kind, .due = BodySide::Right},
                                      std::vector<std::string>{"Ada", "Bela"});
        QCOMPARE(read.who, std::optional<std::size_t>(1));
        QCOMPARE(std::get<LineProblem>(read.what),
                 (LineProblem{Kind::SideMissing, {3, 4}, u"be r 1.84"}));
    }
};
QTEST_APPLESS_MAIN(TestDayLine)
#include "tst_dayline.moc"
