// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/setwords.h"

#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QStringList>

namespace slopebook::ui {

namespace {
struct SetWords {
    Q_DECLARE_TR_FUNCTIONS(SetWords)
};

QString expected(LineProblem::Kind kind, LoadUnit unit) {
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
        return SetWords::tr("Expected the reps' speeds in m/s after the load: 60 0.92 0.90 0.88.");
    case Kind::SpeedZero:
        return SetWords::tr(
            "Found %1, expected a speed above 0. A rep that did not go up has none: leave it "
            "out and say so in a note (# missed).");
    case Kind::SpeedTooFast:
        return SetWords::tr("Found %1, expected a speed under 10 m/s, such as 0.92.");
    case Kind::SpeedsFirst:
        return SetWords::tr(
            "Found %1 in the load's place, expected the load first, then the speeds: "
            "60 0.92 0.90.");
    case Kind::MaximumHasReps:
        return SetWords::tr(
            "Found %1 after the first rep of a true maximum, expected one rep: 92.5! 0.18.");
    }
    return {};
}
} // namespace

std::u16string_view view(const QString& text) {
    return {reinterpret_cast<const char16_t*>(text.utf16()), static_cast<std::size_t>(text.size())};
}

QString problemText(const LineProblem& problem, const QString& line, LoadUnit unit) {
    const QString words = expected(problem.kind, unit);
    if (!words.contains(QLatin1String("%1")))
        return words;
    const QString found = line.mid(static_cast<qsizetype>(problem.where.start),
                                   static_cast<qsizetype>(problem.where.length));
    return words.arg(QStringLiteral("\u201c%1\u201d").arg(found.left(24)));
}

QString questionText(const LineQuestion& question) {
    QStringList typed, proposed;
    for (const std::u16string& piece : question.typed)
        typed << QString::fromStdU16String(piece);
    for (const std::u16string& piece : question.proposed)
        proposed << QString::fromStdU16String(piece);
    return SetWords::tr(
               "%1 m/s? Found %2, expected a speed under 10 m/s. Enter takes it as %1; Esc leaves "
               "it "
               "for you to correct.")
        .arg(proposed.join(QLatin1Char(' ')), typed.join(QLatin1Char(' ')));
}

QString forgottenLoadText(const LineQuestion& question, std::optional<Mass> next, LoadUnit unit) {
    const QString found = QString::fromStdU16String(question.typed.front());
    if (!next)
        return SetWords::tr(
                   "A load of %1 %2? It looks like a speed. Enter takes it as the load; Esc "
                   "leaves it for you to correct.")
            .arg(found, unitName(unit));
    return SetWords::tr("Was the load forgotten? Found %1 in its place. Enter takes the speeds at "
                        "the next load, %2; Esc leaves it for you to correct. A load of %1 is "
                        "written %1%3.")
        .arg(found, massWithUnit(*next, unit), unitName(unit));
}

QString doubtText(const answers::Doubt& doubt, LoadUnit unit) {
    return said(answers::doubtWords(doubt), unit) + QLatin1Char(' ') +
           SetWords::tr("Enter takes it as typed; Esc leaves it for you to correct.");
}

Set setFromTyped(const TypedSet& typed) {
    Set set;
    set.load = typed.load;
    set.trueMaximum = typed.trueMaximum;
    set.note = utf8(QString::fromStdU16String(typed.note));
    set.reps = repsFromTyped(typed.reps, {});
    for (Rep& rep : set.reps)
        if (!rep.excluded.empty() && !set.note.empty())
            rep.excluded = set.note;
    return set;
}

std::vector<Rep> repsFromTyped(const std::vector<TypedRep>& typed, const std::vector<Rep>& before) {
    std::vector<Rep> reps;
    for (std::size_t i = 0; i < typed.size(); ++i) {
        Rep rep{typed[i].velocity, {}};
        if (typed[i].leftOut) {
            const bool hasReason = i < before.size() && !before[i].excluded.empty();
            rep.excluded = hasReason ? before[i].excluded : utf8(SetWords::tr("no reason given"));
        }
        // A speed that was only shown rounded stays as it was.
        if (i < before.size() && std::abs(before[i].velocity - rep.velocity) < 0.0005)
            rep.velocity = before[i].velocity;
        reps.push_back(std::move(rep));
    }
    return reps;
}

QString flagText(const Set& set, LoadUnit unit) {
    QStringList flags;
    if (set.load >= plausibleLoadLimit)
        flags << SetWords::tr("%1?").arg(massWithUnit(set.load, unit));
    for (const Rep& rep : set.reps)
        if (rep.velocity >= plausibleVelocityLimit)
            flags << SetWords::tr("%1 m/s?").arg(speedText(rep.velocity));
    return flags.join(QLatin1Char(' '));
}

} // namespace slopebook::ui
