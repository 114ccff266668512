// SPDX-License-Identifier: GPL-3.0-or-later
// The line a set is typed in, and the ladder's next load.
#include "core/answers/ladder.h"
#include "ui/typed/setline.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::ui;
using namespace slopebook::literals;
using Kind = LineProblem::Kind;

namespace {
std::u16string_view view(const QString& text) {
    return {reinterpret_cast<const char16_t*>(text.utf16()), static_cast<std::size_t>(text.size())};
}
QString text(const std::u16string& s) {
    return QString::fromStdU16String(s);
}
} // namespace

class TestSetLine : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aWholeSetInOneLine_data() {
        QTest::addColumn<QString>("line");
        QTest::addColumn<qint64>("grams");
        QTest::addColumn<QList<double>>("speeds");
        const QList<double> three{0.92, 0.90, 0.88};
        QTest::newRow("points and blanks") << "60 0.92 0.90 0.88" << qint64(60000) << three;
        QTest::newRow("commas") << "60 0,92 0,90 0,88" << qint64(60000) << three;
        QTest::newRow("both marks in one line") << "60 0,92 0.90 0,88" << qint64(60000) << three;
        QTest::newRow("tabs, as pasted") << "60\t0.92\t0.90\t0.88" << qint64(60000) << three;
        QTest::newRow("semicolons and commas") << "60;0,92;0,90;0,88" << qint64(60000) << three;
        QTest::newRow("blanks around") << "   60  0.92 0.90   0.88  " << qint64(60000) << three;
        QTest::newRow("no-break blanks")
            << QString::fromUtf8("60\u00a00.92\u202f0.90 0.88") << qint64(60000) << three;
        QTest::newRow("half a kilo") << "62,5 0.92 0.90 0.88" << qint64(62500) << three;
        QTest::newRow("a comma is never a group mark")
            << "61,250 0.92" << qint64(61250) << QList<double>{0.92};
        QTest::newRow("leading mark") << "60 .92 ,90 .88" << qint64(60000) << three;
        QTest::newRow("kg said") << "60kg 0.92 0.90 0.88" << qint64(60000) << three;
        // 45 x 453.59237 g (the pound by agreement of 1959) = 20411.65665 g
        QTest::newRow("pounds") << "45lb 1.2" << qint64(20412) << QList<double>{1.2};
        QTest::newRow("no added load") << "0 1.4" << qint64(0) << QList<double>{1.4};
        QTest::newRow("implausible, but storable")
            << "60 9.2" << qint64(60000) << QList<double>{9.2};
        QTest::newRow("implausible load") << "700 0.2" << qint64(700000) << QList<double>{0.2};
    }
    void aWholeSetInOneLine() {
        QFETCH(QString, line);
        QFETCH(qint64, grams);
        QFETCH(QList<double>, speeds);
        const ReadLine read = readSetLine(view(line));
        QVERIFY(std::holds_alternative<TypedSet>(read));
        const auto& set = std::get<TypedSet>(read);
        QCOMPARE(set.load.grams, grams);
        QCOMPARE(set.trueMaximum, false);
        QCOMPARE(set.reps.size(), std::size_t(speeds.size()));
        for (std::size_t i = 0; i < set.reps.size(); ++i) {
            QCOMPARE(set.reps[i].velocity, speeds[qsizetype(i)]);
            QCOMPARE(set.reps[i].leftOut, false);
        }
    }

    void marksAndNotes() {
        const auto maximum = std::get<TypedSet>(readSetLine(u"92,5! 0,18"));
        QVERIFY(maximum.trueMaximum);
        QCOMPARE(maximum.load.grams, qint64(92500));
        const auto set = std::get<TypedSet>(readSetLine(u"60 0.92 0.71x 0.9X #  slipped; 2nd #1 "));
        QCOMPARE(set.reps.size(), std::size_t(3));
        QVERIFY(!set.reps[0].leftOut && set.reps[1].leftOut && set.reps[2].leftOut);
        QCOMPARE(text(set.note), QStringLiteral("slipped; 2nd #1"));
    }

    void badLinesSayWhatAndWhere_data() {
        QTest::addColumn<QString>("line");
        QTest::addColumn<int>("kind");
        QTest::addColumn<QString>("offending");
        const auto row = [](const char* name, const char* line, Kind kind, const char* offending) {
            QTest::newRow(name) << QString::fromUtf8(line) << int(kind)
                                << QString::fromUtf8(offending);
        };
        row("nothing", "", Kind::Empty, "");
        row("blanks", "   ", Kind::Empty, "   ");
        row("a note alone", "# hello", Kind::Empty, "# hello");
        row("a load alone", "60", Kind::NoSpeeds, "");
        row("a word for the load", "sixty 0.92", Kind::NotANumber, "sixty");
        row("a word for a speed", "60 0.92 fast", Kind::NotANumber, "fast");
        row("a sign", "60 -0.92", Kind::NotANumber, "-0.92");
        row("a negative load", "-60 0.92", Kind::NotANumber, "-60");
        row("an exponent", "60 9e-1", Kind::NotANumber, "9e-1");
        row("not a number", "60 nan", Kind::WordAfterLoad, "nan");
        row("infinity", "60 0.92 inf", Kind::NotANumber, "inf");
        row("a sign alone", "60 ?", Kind::NotANumber, "?");
        row("an apostrophe as group mark", "1'000 0.92", Kind::NotANumber, "1'000");
        row("group and decimal mark", "1.000,5 0.92", Kind::TwoMarks, "1.000,5");
        row("two speeds run together", "60 0,92,0,90", Kind::TwoMarks, "0,92,0,90");
        row("a comma and a blank", "60, 0.92", Kind::BareMark, "60,");
        row("a mark alone", "60 .", Kind::BareMark, ".");
        row("two tons", "2001 0.92", Kind::LoadTooHeavy, "2001");
        row("a load of many digits", "99999999999999999999 0.92", Kind::LoadTooHeavy,
            "99999999999999999999");
        row("x behind the load", "60x 0.92", Kind::LoadMark, "60x");
        row("! behind a speed", "60 0.92!", Kind::SpeedMark, "0.92!");
        row("kg behind a speed", "0.92 60kg", Kind::SpeedMark, "60kg");
        row("no speed", "60 0.92 0", Kind::SpeedZero, "0");
        row("no speed, with a mark", "60 0,00", Kind::SpeedZero, "0,00");
        row("faster than can be, with a mark", "60 12.5", Kind::SpeedTooFast, "12.5");
        row("faster than can be, many digits", "60 92000", Kind::SpeedTooFast, "92000");
        row("the load last", "0.92 0.90 60", Kind::SpeedsFirst, "0.92");
        row("a maximum of three reps", "92.5! 0.18 0.17 0.16", Kind::MaximumHasReps, "0.17 0.16");
    }
    void badLinesSayWhatAndWhere() {
        QFETCH(QString, line);
        QFETCH(int, kind);
        QFETCH(QString, offending);
        const ReadLine read = readSetLine(view(line));
        QVERIFY(std::holds_alternative<LineProblem>(read));
        const auto& problem = std::get<LineProblem>(read);
        QCOMPARE(int(problem.kind), kind);
        QCOMPARE(line.mid(qsizetype(problem.where.start), qsizetype(problem.where.length)),
                 offending);
    }

    void effortNotLiftedAndNotPossible() {
        // testday.md's lines, and the same as other hands type them.
        const auto rated = std::get<TypedSet>(readSetLine(u"60 0.92 0.90 0.88 @8"));
        QCOMPARE(rated.effort, std::optional(Effort{16}));
        QCOMPARE(rated.reps.size(), std::size_t(3));
        for (const char16_t* line : {u"60 0.92 @8,5", u"60 0,92@8.5", u"60 @8.5 0.92",
                                     u"60\u00a00.92\u202f@8,5", u"60;0,92;@8.50"})
            QCOMPARE(std::get<TypedSet>(readSetLine(line)).effort, std::optional(Effort{17}));
        const auto tried = std::get<TypedSet>(readSetLine(u"100 - # out of the groove"));
        QCOMPARE(int(tried.outcome), int(Outcome::NotLifted));
        QCOMPARE(tried.load, Mass{100'000});
        QVERIFY(tried.reps.empty() && !tried.trueMaximum);
        QCOMPARE(text(tried.note), QStringLiteral("out of the groove"));
        for (const char16_t* line : {u"100 -", u"100-", u"100 \u2013", u"100 \u2212", u"100kg -"})
            QCOMPARE(std::get<TypedSet>(readSetLine(line)),
                     (TypedSet{.load = 100_kg, .outcome = Outcome::NotLifted}));
        QCOMPARE(std::get<TypedSet>(readSetLine(u"225lb -")).load, Mass{102'058});
        QCOMPARE(std::get<TypedSet>(readSetLine(u"225 -", MassUnit::Pound)).load, Mass{102'058});
        for (const char16_t* line : {u"100! -", u"100!-", u"100! - @10"}) {
            const auto maximum = std::get<TypedSet>(readSetLine(line));
            QVERIFY(maximum.trueMaximum);
            QCOMPARE(int(maximum.outcome), int(Outcome::NotLifted));
        }
        QCOMPARE(std::get<TypedSet>(readSetLine(u"100 - @9,5")).effort, std::optional(Effort{19}));
        QCOMPARE(std::get<TypedGap>(readSetLine(u"100 / # plates gone")),
                 (TypedGap{Mass{100'000}, u"plates gone"}));
        QCOMPARE(std::get<TypedGap>(readSetLine(u"100/ # plates gone")),
                 (TypedGap{Mass{100'000}, u"plates gone"}));
        QCOMPARE(std::get<TypedGap>(readSetLine(u"- # sore back")), (TypedGap{{}, u"sore back"}));
        QCOMPARE(readEffort(u"8,5"), std::optional(Effort{17}));
        QCOMPARE(readEffort(u"@8"), std::optional(Effort{16}));
        for (const char16_t* wrong : {u"", u"0", u"0.5", u"10.5", u"8.3", u"eight", u"8 9"})
            QCOMPARE(readEffort(wrong), std::optional<Effort>());
    }

    void aRefusalSaysWhatWouldBeTaken_data() {
        QTest::addColumn<QString>("line");
        QTest::addColumn<int>("kind");
        QTest::addColumn<QString>("offending");
        QTest::addColumn<QString>("instead");
        const auto row = [](const char* line, Kind kind, const char* offending,
                            const char* instead) {
            QTest::newRow(line) << QString::fromUtf8(line) << int(kind)
                                << QString::fromUtf8(offending) << QString::fromUtf8(instead);
        };
        // What coaches tried before.
        row("95 0", Kind::SpeedZero, "0", "95 -");
        row("95 f", Kind::WordAfterLoad, "f", "95 -");
        row("95 # missed", Kind::NoSpeeds, "", "95 - # missed");
        row("95 x", Kind::WordAfterLoad, "x", "95 -");
        row("95x", Kind::LoadMark, "95x", "95 -");
        row("-95", Kind::NotANumber, "-95", "95 -");
        row("95 missed", Kind::WordAfterLoad, "missed", "95 - # missed");
        row("95 F # grip", Kind::WordAfterLoad, "F", "95 - # grip");
        row("95 nicht", Kind::WordAfterLoad, "nicht", "95 - # nicht");
        row("92,5! 0,00 @10", Kind::SpeedZero, "0,00", "92,5! - @10");
        row("135lb 0", Kind::SpeedZero, "0", "135lb -");
        row("be 95", Kind::NotANumber, "be", "");
        row("95", Kind::NoSpeeds, "", "");
        row("- 95", Kind::DashFirst, "-", "95 -");
        row("- 95 # grip", Kind::DashFirst, "-", "95 - # grip");
        row("- 95 0.3", Kind::DashFirst, "-", "");
        row("-", Kind::NoReason, "", "");
        row("100 /", Kind::NoReason, "", "");
        row("/ # no plates", Kind::StrokeFirst, "/", "- # no plates");
        row("/", Kind::StrokeFirst, "/", "");
        row("100 0.3 -", Kind::DashAmong, "-", "");
        row("100 - -", Kind::DashAmong, "-", "");
        row("100 0.3 / # gone", Kind::StrokeAmong, "/", "");
        row("100! / # gone", Kind::StrokeAmong, "100!", "100 / # gone");
        row("100 / @8 # gone", Kind::StrokeAmong, "/", "100 / # gone");
        row("0.92 -", Kind::SpeedsFirst, "0.92", "0.92kg -");
        row("60 0.92 @8.3", Kind::BadEffort, "@8.3", "60 0.92 @8.5");
        row("60 0.92 @8,2", Kind::BadEffort, "@8,2", "60 0.92 @8");
        row("60 0.92 @11", Kind::BadEffort, "@11", "60 0.92");
        row("60 0.92 @0", Kind::BadEffort, "@0", "60 0.92");
        row("60 0.92 @ 8", Kind::BadEffort, "@", "60 0.92 @8");
        row("60 0.92 @", Kind::BadEffort, "@", "60 0.92");
        row("60 0.92 @hard", Kind::BadEffort, "@hard", "60 0.92");
        row("60 0.92 @8 @9", Kind::TwoEfforts, "@9", "60 0.92 @8");
        row("@8 60 0.92", Kind::EffortFirst, "@8", "60 0.92 @8");
        row("60 @8", Kind::NoSpeeds, "", "");
        row("l 60 0.92", Kind::SideAtLift, "l", "60 0.92");
        row("l - # knee", Kind::SideAtLift, "l", "- # knee");
        row("0.92 0.90 60", Kind::SpeedsFirst, "0.92", "60 0.92 0.90");
        row("92.5! 0.18 0.17", Kind::MaximumHasReps, "0.17", "92.5 0.18 0.17");
    }
    void aRefusalSaysWhatWouldBeTaken() {
        QFETCH(QString, line);
        QFETCH(int, kind);
        QFETCH(QString, offending);
        QFETCH(QString, instead);
        const ReadLine read = readSetLine(view(line));
        QVERIFY(std::holds_alternative<LineProblem>(read));
        const auto& problem = std::get<LineProblem>(read);
        QCOMPARE(int(problem.kind), kind);
        QCOMPARE(line.mid(qsizetype(problem.where.start), qsizetype(problem.where.length)),
                 offending);
        QCOMPARE(text(problem.instead), instead);
        if (!instead.isEmpty()) {
            const ReadLine taken = readSetLine(problem.instead);
            QVERIFY(std::holds_alternative<TypedSet>(taken) ||
                    std::holds_alternative<TypedGap>(taken));
        }
    }

    /// Lines of pieces thrown together: each is read or refused inside itself, and what is offered
    /// in a refused one's place is taken.
    void whatIsOfferedIsTaken() {
        const std::vector<std::u16string> parts{u"60", u"0.92", u"0,9x", u"-", u"/",
                                                u"@8", u"@8.3", u"100!", u"0", u"l",
                                                u"92", u"f",    u"# why"};
        int offered = 0;
        const std::size_t n = parts.size();
        for (std::size_t code = 0; code < n * n * n * n; ++code) {
            std::u16string line;
            for (std::size_t rest = code; rest > 0; rest /= n)
                line += parts[rest % n] + u" ";
            const ReadLine read = readSetLine(line);
            const auto* problem = std::get_if<LineProblem>(&read);
            if (!problem)
                continue;
            QVERIFY2(problem->where.start + problem->where.length <= line.size(),
                     qPrintable(text(line)));
            if (problem->instead.empty())
                continue;
            ++offered;
            const ReadLine taken = readSetLine(problem->instead);
            QVERIFY2(std::holds_alternative<TypedSet>(taken) ||
                         std::holds_alternative<TypedGap>(taken),
                     qPrintable(text(line)));
        }
        QVERIFY(offered > 1000);
    }

    void speedsWithoutTheirMarkAreAskedFor_data() {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("meant");
        QTest::newRow("hundredths") << "60 92"
                                    << "60 0.92";
        QTest::newRow("three of them") << "60 92 90 88"
                                       << "60 0.92 0.90 0.88";
        QTest::newRow("one among good ones") << "60 0,92 90 0,88"
                                             << "60 0,92 0.90 0,88";
        QTest::newRow("over one metre a second") << "40 112"
                                                 << "40 1.12";
        QTest::newRow("thousandths") << "60 920"
                                     << "60 0.920";
        QTest::newRow("thousandths over one") << "40 1123"
                                              << "40 1.123";
        QTest::newRow("left out") << "60 92 71x # slipped"
                                  << "60 0.92 0.71x # slipped";
        QTest::newRow("ten") << "60 10"
                             << "60 0.10";
        QTest::newRow("rated") << "60 92 90@8"
                               << "60 0.92 0.90@8";
    }
    void speedsWithoutTheirMarkAreAskedFor() {
        QFETCH(QString, line);
        QFETCH(QString, meant);
        const ReadLine read = readSetLine(view(line));
        QVERIFY(std::holds_alternative<LineQuestion>(read));
        const auto& question = std::get<LineQuestion>(read);
        QCOMPARE(text(question.meant), meant);
        QCOMPARE(question.typed.size(), question.proposed.size());
        QVERIFY(std::holds_alternative<TypedSet>(readSetLine(question.meant)));
    }

    void aLoadLikeASpeedIsAskedFor() {
        for (const QString& line : {QStringLiteral("1.12 1.08"), QStringLiteral("0,92 0,90 0,88"),
                                    QStringLiteral("2 1.9"), QStringLiteral("1,250 0.92"),
                                    QStringLiteral("0.92 0.90x # slow")}) {
            const ReadLine read = readSetLine(view(line));
            QVERIFY2(std::holds_alternative<LineQuestion>(read), qPrintable(line));
            const auto& question = std::get<LineQuestion>(read);
            QCOMPARE(int(question.kind), int(LineQuestion::Kind::Load));
            QCOMPARE(question.where.start, 0U);
            // Named as a load it is one.
            QVERIFY(std::holds_alternative<TypedSet>(readSetLine(question.meant)));
        }
        for (const QString& line : {QStringLiteral("1.12kg 1.08"), QStringLiteral("2lb 1.9"),
                                    QStringLiteral("4 1.9"), QStringLiteral("0 1.9")})
            QVERIFY2(std::holds_alternative<TypedSet>(readSetLine(view(line))), qPrintable(line));
    }

    void bareLoadsAreInTheUnitAsked() {
        const auto load = [](std::u16string_view line, MassUnit bare) {
            return std::get<TypedSet>(readSetLine(line, bare)).load;
        };
        QCOMPARE(load(u"135 0.92", MassUnit::Pound), Mass{61'235});
        QCOMPARE(load(u"60kg 0.92", MassUnit::Pound), Mass{60'000});
        QCOMPARE(load(u"135lb 0.92", MassUnit::Kilogram), Mass{61'235});
        QCOMPARE(load(u"60 0.92", MassUnit::Kilogram), Mass{60'000});
        QCOMPARE(std::get<Mass>(readLoad(u"45", MassUnit::Pound)), Mass{20'412});
        QCOMPARE(text(std::get<LineQuestion>(readSetLine(u"1.12 1.08", MassUnit::Pound)).meant),
                 QStringLiteral("1.12lb 1.08"));
    }

    void cellsReadAlike() {
        const auto reps = std::get<std::vector<TypedRep>>(readSpeeds(u"0,92; 0.71x"));
        QCOMPARE(reps, (std::vector<TypedRep>{{0.92, false}, {0.71, true}}));
        QVERIFY(std::holds_alternative<LineProblem>(readSpeeds(u"")));
        QCOMPARE(text(std::get<LineQuestion>(readSpeeds(u"92")).meant), QStringLiteral("0.92"));
        QCOMPARE(std::get<Mass>(readLoad(u" 62,5 ")), Mass{62500});
        QCOMPARE(std::get<Mass>(readLoad(u"62.5 kg")), Mass{62500});
        QVERIFY(std::holds_alternative<LineProblem>(readLoad(u"62 5")));
        QVERIFY(std::holds_alternative<LineProblem>(readLoad(u"62!")));
        QCOMPARE(readDecimal(u"0,17"), std::optional<double>(0.17));
        QCOMPARE(readDecimal(u"1.000,5"), std::optional<double>());
        QCOMPARE(readDecimal(u""), std::optional<double>());
    }

    void theLaddersNextLoad() {
        const std::vector<Mass> last{40_kg, 50_kg, 60_kg, 60_kg, 65_kg};
        QCOMPARE(answers::nextLoad({}, last), std::optional(Mass{40_kg}));
        QCOMPARE(answers::nextLoad({}, {}), std::optional<Mass>());
        const std::vector<Mass> today{40_kg, 50_kg};
        QCOMPARE(answers::nextLoad(today, last), std::optional(Mass{60_kg}));
        QCOMPARE(answers::nextLoad(today, {}), std::optional(Mass{60_kg}));
        const std::vector<Mass> between{40_kg, 52.5_kg};
        QCOMPARE(answers::nextLoad(between, last), std::optional(Mass{60_kg}));
        const std::vector<Mass> top{60_kg, 65_kg};
        QCOMPARE(answers::nextLoad(top, last), std::optional(Mass{70_kg}));
        const std::vector<Mass> one{65_kg};
        QCOMPARE(answers::nextLoad(one, last), std::optional(Mass{70_kg})); // last time's rise
        QCOMPARE(answers::nextLoad(one, {}), std::optional<Mass>());
        QCOMPARE(answers::loadAfter(70_kg, top, last), std::optional(Mass{75_kg}));
        QCOMPARE(answers::loadBefore(60_kg, last), std::optional(Mass{50_kg}));
        QCOMPARE(answers::loadBefore(40_kg, last), std::optional<Mass>());
    }
};

QTEST_APPLESS_MAIN(TestSetLine)
#include "tst_setline.moc"
