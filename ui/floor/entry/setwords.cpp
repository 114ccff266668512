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

} // namespace

std::u16string_view view(const QString& text) {
    return {reinterpret_cast<const char16_t*>(text.utf16()), static_cast<std::size_t>(text.size())};
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
    set.outcome = typed.outcome;
    set.effort = typed.effort;
    const std::string note = utf8(QString::fromStdU16String(typed.note));
    (set.outcome == Outcome::Lifted ? set.note : set.reason) = note;
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

QString effortText(Effort effort) {
    return number(effort.value(), effort.halves % 2);
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
