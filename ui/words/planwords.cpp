// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/planwords.h"

#include "core/answers/restrictedflow.h"
#include "ui/words/cautionwords.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::planwords {

namespace {

struct Plan {
    Q_DECLARE_TR_FUNCTIONS(Plan)
};

constexpr int weeksFresh = 4; // common practice

QString pieceText(ExactMass mass, MassUnit unit) {
    // Already in its own unit.
    return loadNumber(in(unit, mass), LoadUnit::Kilograms) + u' ' +
           QString::fromLatin1(word(unit).data(), 2);
}

/// "2 x 20 + 2,5 kg": the unit once at the end of a run of plates in the same unit.
QString platesText(const answers::BuiltLoad& load) {
    QString text;
    for (std::size_t i = 0; i < load.perSide.size(); ++i) {
        const auto& [plate, count] = load.perSide[i];
        if (!text.isEmpty())
            text += u" + "_s;
        if (count > 1)
            text += QString::number(count) + u" x "_s;
        text += said(figure(massText(plate.mass, plate.unit)));
        if (i + 1 == load.perSide.size() || load.perSide[i + 1].plate.unit != plate.unit)
            text += u' ' + QString::fromLatin1(word(plate.unit).data(), 2);
    }
    return text;
}

QString listed(const std::vector<std::string_view>& items) {
    QStringList all;
    for (const std::string_view item : items)
        all << restrictedFlowWords(item);
    return all.join(u"; "_s) + u'.';
}

} // namespace

QString loadText(ExactMass mass, LoadUnit unit) {
    return loadWithUnit(std::round(kilograms(mass) * 1000) / 1000, unit);
}

QString perSideText(const answers::BuiltLoad& load) {
    QStringList parts;
    if (load.bar)
        parts << (load.perSide.empty() ? Plan::tr("no plates") : platesText(load));
    for (const FixedMass& fixed : load.fixed)
        parts << (fixed.name.empty() ? Plan::tr("mass") : text(fixed.name)) + u' ' +
                     pieceText(fixed.mass, fixed.unit);
    return parts.join(u" + "_s);
}

QString barText(const answers::BuiltLoad& load) {
    if (!load.bar)
        return {};
    return barText(*load.bar);
}

QString barText(const Bar& bar) {
    return (bar.name.empty() ? Plan::tr("bar") : text(bar.name)) + u' ' +
           pieceText(bar.mass, bar.unit);
}

QString putOnText(const answers::BuiltLoad& load, const Equipment& equipment) {
    const QString side = perSideText(load);
    return equipment.bars.size() > 1 && load.bar ? Plan::tr("%1: %2").arg(barText(load), side)
                                                 : side;
}

QString percentText(const answers::PlannedLoad& load) {
    if (!load.percent)
        return {};
    const QString percent = number(*load.percent, 0) + u" %"_s;
    return load.percentInterval
               ? Plan::tr("%1 (%2)").arg(percent, rangeText(*load.percentInterval, 0))
               : percent;
}

QString speedText(const answers::PlannedLoad& load) {
    const QString speed = Plan::tr("%1 m/s").arg(number(load.velocity, 2));
    if (load.prediction && !(load.prediction->low > 0))
        return Plan::tr("%1 (up to %2)").arg(speed, number(load.prediction->high, 2));
    return load.prediction ? Plan::tr("%1 (%2)").arg(speed, rangeText(*load.prediction, 2)) : speed;
}

QString stopText(const answers::PlannedLoad& load) {
    return load.stop ? Plan::tr("%1 m/s").arg(number(*load.stop, 2)) : QString();
}

QString relatedText(const answers::RelatedLoad& load) {
    const QString percent = number(load.percent, 0) + u" %"_s;
    return load.interval ? Plan::tr("%1 (%2)").arg(percent, rangeText(*load.interval, 0)) : percent;
}

QString borrowedText(const Answer<answers::History>& history, const answers::Profile& profile,
                     LoadUnit unit) {
    if (!history)
        return asSentence(noAnswerText(history.why(), unit));
    const answers::BorrowedLine* line = history->of(profile.session.session);
    if (!line)
        return {};
    const QString from =
        Plan::tr("Borrowing from the athlete's %1 sessions").arg(history->model.groups);
    if (!line->oneRm)
        return Plan::tr("%1: %2").arg(from, asSentence(noAnswerText(line->oneRm.why(), unit)));
    const auto kg = [&](double value) { return number(inUnit(value, unit), 1); };
    QString said =
        Plan::tr("%1: estimated 1RM %2 %3").arg(from, kg(line->oneRm->estimate), unitName(unit));
    if (const auto& held = line->oneRm->interval)
        said += Plan::tr(" (%1 to %2)").arg(kg(held->low), kg(held->high));
    if (profile.oneRm) {
        said += Plan::tr("; from this session alone %1").arg(kg(profile.oneRm->estimate));
        if (const auto& own = profile.oneRm->interval)
            said += Plan::tr(" (%1 to %2)").arg(kg(own->low), kg(own->high));
    }
    return said + u'.';
}

QString lineAgeText(Date test, std::optional<Date> today) {
    const QString day = dateText(test);
    if (!today || daysBetween(test, *today) < 0)
        return Plan::tr("The line is of %1.").arg(day);
    const int days = static_cast<int>(daysBetween(test, *today));
    if (days < 7)
        return Plan::tr("The line is of %1, %n days old.", nullptr, days).arg(day);
    const int weeks = days / 7;
    const QString age = Plan::tr("The line is of %1, %n weeks old.", nullptr, weeks).arg(day);
    if (weeks < weeksFresh)
        return age;
    return age + u' ' +
           Plan::tr("That is old: over %1 weeks a line moves with training, so test again, or "
                    "go by the speeds (common practice).")
               .arg(weeksFresh);
}

QStringList cautionTexts(const std::vector<answers::Caution>& cautions, LoadUnit unit) {
    QStringList texts;
    for (const answers::Caution& caution : cautions)
        texts << cautionText(caution, unit);
    return texts;
}

QStringList restrictedFlowTexts() {
    const auto& t = answers::restrictedFlowText();
    return {restrictedFlowWords(t.leading),
            Plan::tr("Do not start without medical clearance with: %1").arg(listed(t.screening)),
            Plan::tr("Stop and deflate at once for: %1").arg(listed(t.stopAtOnce)),
            Plan::tr("To medical care for: %1").arg(listed(t.afterwards)),
            Plan::tr("Usual practice: %1").arg(listed(t.usualPractice)),
            restrictedFlowWords(t.source)};
}

QString ladderName(answers::LadderForecast::Kind kind) {
    using Kind = answers::LadderForecast::Kind;
    switch (kind) {
    case Kind::BestForOneRm:
        return Plan::tr("best for the 1RM");
    case Kind::BestForChange:
        return Plan::tr("best for the check loads");
    case Kind::TwoExtremes:
        return Plan::tr("two extremes");
    case Kind::SameAsLast:
        return Plan::tr("as last time");
    case Kind::Even:
        return Plan::tr("even steps");
    case Kind::BestInSteps:
        return Plan::tr("best without a great step");
    }
    return {};
}

QString flawsText(const answers::LadderFlaws& flaws, bool ofOneRm) {
    QStringList parts;
    if (flaws.greatStep)
        parts << (ofOneRm ? Plan::tr("a step of %1 % of the 1RM")
                          : Plan::tr("a step of %1 % of the heaviest load lifted"))
                     .arg(number(flaws.stepPercent, 0));
    if (flaws.cannotBend)
        parts << Plan::tr("too few spread loads to show a bend");
    return parts.join(u"; "_s);
}

QString ladderLoads(const answers::LadderForecast& ladder, LoadUnit unit) {
    QStringList loads;
    for (std::size_t i = 0; i < ladder.loads.size();) {
        std::size_t same = i;
        while (same < ladder.loads.size() && ladder.loads[same].exact == ladder.loads[i].exact)
            ++same;
        const QString load =
            loadNumber(std::round(kilograms(ladder.loads[i].exact) * 1000) / 1000, unit);
        loads << (same - i > 1 ? Plan::tr("%1 (%2 sets)").arg(load).arg(same - i) : load);
        i = same;
    }
    return loads.join(u", "_s);
}

QString settledText(const SettledAt& settled, LoadUnit unit) {
    const auto& r = settled.repeats;
    const QString load = loadWithUnit(kilograms(settled.load), unit);
    const QString chance = number(100 * r.chanceNow, 0) + u" %"_s;
    QString said = Plan::tr("%1: a true change of %2 m/s is read as one with a chance of %3")
                       .arg(load, number(settled.smallest.value, 3), chance);
    if (r.changeLater && *r.changeLater == 1)
        said += Plan::tr("; one test will do.");
    else if (r.changeLater)
        said += Plan::tr("; %1 tests after the block, on separate days, make it 80 %.")
                    .arg(*r.changeLater);
    else if (r.changeBoth)
        said += Plan::tr("; no number of later tests makes it 80 %, for the earlier test was done "
                         "once: from now on test %1 times before and after.")
                    .arg(*r.changeBoth);
    else
        said += Plan::tr("; not even 20 tests on each side make it 80 %.");
    if (r.heldLater && *r.heldLater == 1)
        said += u' ' + Plan::tr("No change would be read as held by one test.");
    else if (r.heldLater)
        said += u' ' +
                Plan::tr("No change would be read as held after %1 later tests.").arg(*r.heldLater);
    else if (r.heldBoth)
        said +=
            u' ' +
            Plan::tr("No change would be read as held by %1 tests on each side.").arg(*r.heldBoth);
    return said;
}

} // namespace slopebook::ui::planwords
