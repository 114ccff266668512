// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/linewords.h"

#include "core/model/session.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QStringList>

namespace slopebook::ui {

namespace {

struct SetWords {
    Q_DECLARE_TR_FUNCTIONS(SetWords)
};
struct Attempts {
    Q_DECLARE_TR_FUNCTIONS(Attempts)
};

/// A number as it was typed, with the desktop's decimal mark.
QString expectedAtLift(LineProblem::Kind kind, LoadUnit unit) {
    using Kind = LineProblem::Kind;
    switch (kind) {
    case Kind::Empty:
        return SetWords::tr(
                   "Expected a load in %2, then the reps' speeds in m/s: 60 0.92 0.90 0.88.")
            .replace(QLatin1String("%2"), unitName(unit));
    case Kind::NotANumber:
        return SetWords::tr(
            "Found %1, expected a number such as 62.5 or 0,92: digits and one decimal mark.");
    case Kind::TwoMarks:
        return SetWords::tr(
            "Found %1, expected one decimal mark: the comma is a decimal mark too, and there "
            "are no marks for thousands. Blanks go between numbers.");
    case Kind::BareMark:
        return SetWords::tr(
            "Found %1, expected digits after the decimal mark. Blanks go between numbers.");
    case Kind::LoadTooHeavy:
        return SetWords::tr("Found a load of %1, expected at most %2.")
            .replace(QLatin1String("%2"), massWithUnit(storableLoadLimit, unit));
    case Kind::LoadMark:
        return SetWords::tr(
            "Found %1, expected the load alone: an x leaves out a rep and follows its speed.");
    case Kind::SpeedMark:
        return SetWords::tr(
            "Found %1 among the speeds, expected a speed in m/s. The load stands first, and a "
            "! for a true maximum follows it: 92.5! 0.18.");
    case Kind::NoSpeeds:
        return SetWords::tr("Expected the reps' speeds in m/s after the load (60 0.92 0.90 0.88), "
                            "or - where it was not lifted (95 -).");
    case Kind::SpeedZero:
        return SetWords::tr(
            "Found %1, expected a speed above 0. A load that was not lifted is typed 95 -; a rep "
            "that did not go up has no speed: leave it away and say so in a note (# last one "
            "missed).");
    case Kind::SpeedTooFast:
        return SetWords::tr("Found %1, expected a speed under 10 m/s, such as 0.92.");
    case Kind::SpeedsFirst:
        return SetWords::tr(
            "Found %1 in the load's place, expected the load first, then the speeds: "
            "60 0.92 0.90.");
    case Kind::MaximumHasReps:
        return SetWords::tr(
            "Found %1 after the first rep of a true maximum, expected one rep: 92.5! 0.18.");
    case Kind::WordAfterLoad:
        return SetWords::tr("Found %1 after the load, expected speeds, or - where it was not "
                            "lifted: 95 -, 95 - # why.");
    case Kind::DashAmong:
        return SetWords::tr("Found %1 beside other figures: a load that was not lifted stands "
                            "alone (95 - # why), and a set with speeds was lifted (95 0.31 # last "
                            "one missed).");
    case Kind::DashFirst:
        return SetWords::tr("Found %1 in front: the load stands before it (95 -). Alone it says "
                            "that the lift was not possible: - # why.");
    case Kind::StrokeAmong:
        return SetWords::tr("Found %1, expected the load alone before /: a load that was not "
                            "possible is typed 100 / # why.");
    case Kind::StrokeFirst:
        return SetWords::tr("Found %1 without a load: a load that was not possible is typed "
                            "100 / # why, the lift - # why.");
    case Kind::NoReason:
        return SetWords::tr("Expected # and why it was not possible, at the end.");
    case Kind::BadEffort:
        return SetWords::tr("Found %1, expected an effort from 1 to 10 in halves: @8 or @8.5.");
    case Kind::TwoEfforts:
        return SetWords::tr("Found a second effort, %1; expected one for the set.");
    case Kind::EffortFirst:
        return SetWords::tr("Found %1 in front, expected the load first: 60 0.92 @8.");
    case Kind::SideAtLift:
        return SetWords::tr("Found %1: l, r and b are sides, and a lift has none. A name takes two "
                            "letters.");
    case Kind::NobodyCalled:
        return SetWords::tr("Nobody here is called %1.");
    case Kind::NameTooShort:
        return SetWords::tr("Found %1: a name takes two letters.");
    case Kind::NotPositive: // of attempts
    case Kind::SideMissing:
    case Kind::NoSides:
    case Kind::NoBoth:
    case Kind::SideAlone:
    case Kind::NoContact:
    case Kind::ExtraContact:
    case Kind::EffortAtTest:
        break;
    }
    return {};
}

QString expectedAtTest(LineProblem::Kind kind, const TestKind& test, LoadUnit unit) {
    using Kind = LineProblem::Kind;
    switch (kind) {
    case Kind::Empty:
        return Attempts::tr("Nothing typed.") + QLatin1Char(' ') + lineHelp(test);
    case Kind::NotANumber:
    case Kind::TwoMarks:
    case Kind::BareMark:
        return Attempts::tr("A number was expected there, such as 1.82.");
    case Kind::NotPositive:
        return Attempts::tr(
            "A value above 0 was expected. What was not possible is no 0: type - # and why.");
    case Kind::SideMissing:
        return test.bothToo
                   ? Attempts::tr("This test has sides: type L, R or B (both at once) before the "
                                  "attempts.")
                   : Attempts::tr("This test has sides: type L or R before the attempts.");
    case Kind::NoSides:
        return Attempts::tr("This test has no sides.");
    case Kind::NoBoth:
        return Attempts::tr("This test takes each side alone: type L or R.");
    case Kind::NoContact:
        return Attempts::tr("Two numbers with a stroke between them were expected: ") +
               lineHelp(test);
    case Kind::ExtraContact:
        return Attempts::tr("One number an attempt was expected: this test takes no contact time.");
    case Kind::NoReason:
        return Attempts::tr("Type # and why at the end: it is kept with the attempt.");
    case Kind::SideAlone:
        return Attempts::tr("Attempts were expected after the side.");
    case Kind::EffortAtTest:
        return Attempts::tr("Found %1: an effort belongs to a set of a lift, and this is a test.");
    default:
        return expectedAtLift(kind, unit);
    }
}

QString foundIn(const QString& words, const LineProblem& problem, const QString& line) {
    QString all = words;
    if (words.contains(QLatin1String("%1"))) {
        const QString found = line.mid(static_cast<qsizetype>(problem.where.start),
                                       static_cast<qsizetype>(problem.where.length));
        all = words.arg(QStringLiteral("\u201c%1\u201d").arg(found.left(24)));
    }
    const QString instead = insteadText(problem);
    return instead.isEmpty() ? all : all + QLatin1Char(' ') + instead;
}

} // namespace

QString lineHelp(const TestKind& kind) {
    QString typed;
    QString what;
    switch (kind.formula) {
    case TestFormula::Value:
        what = Attempts::tr("values in %1").arg(text(kind.unit));
        typed = kind.bothToo    ? QStringLiteral("L 1.82 R 1.75 B 1.9")
                : kind.twoSided ? QStringLiteral("L 1.82 1.90 R 1.75")
                                : QStringLiteral("3.42 3.51");
        break;
    case TestFormula::FlightHeight:
        what = Attempts::tr("flight times in s");
        typed = kind.twoSided ? QStringLiteral("L 0.38 R 0.36") : QStringLiteral("0.512 0.520");
        break;
    case TestFormula::HeightRsi:
        what = Attempts::tr("height in m / contact time in s");
        typed = QStringLiteral("0.31/0.204");
        break;
    case TestFormula::FlightRsi:
        what = Attempts::tr("flight time / contact time in s");
        typed = QStringLiteral("0.512/0.204");
        break;
    case TestFormula::PerBodyMass:
        what = Attempts::tr("force in N (the session needs a body mass)");
        typed = QStringLiteral("2140 2190");
        break;
    }
    return Attempts::tr("%1, Enter: %2   x after one leaves it out, # why   - # why: not possible")
        .arg(what, example(typed));
}

QString problemText(const LineProblem& problem, const QString& line, LoadUnit unit) {
    return foundIn(expectedAtLift(problem.kind, unit), problem, line);
}

QString problemText(const LineProblem& problem, const QString& line, const TestKind& kind,
                    LoadUnit unit) {
    return foundIn(expectedAtTest(problem.kind, kind, unit), problem, line);
}

QString insteadText(const LineProblem& problem) {
    if (problem.instead.empty())
        return {};
    return SetWords::tr("Down puts %1 in its place.")
        .arg(QStringLiteral("\u201c%1\u201d").arg(QString::fromStdU16String(problem.instead)));
}

QString doubtText(const answers::AttemptDoubt& doubt, bool knownAthlete) {
    QStringList sentences;
    for (const Words& each : answers::attemptDoubtWords(doubt, knownAthlete))
        sentences << said(each);
    sentences << Attempts::tr("Change it, or Enter again takes it as it stands.");
    return sentences.join(QLatin1Char(' '));
}

} // namespace slopebook::ui
