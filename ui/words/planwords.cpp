// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/planwords.h"

#include "core/answers/method.h"
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

} // namespace

QString loadText(ExactMass mass, LoadUnit unit) {
    return loadWithUnit(std::round(kilograms(mass) * 1000) / 1000, unit);
}

QString putOnText(const answers::BuiltLoad& load, const Equipment& equipment) {
    const QString side = said(answers::putOnWords(load));
    return equipment.bars.size() > 1 && load.bar
               ? Plan::tr("%1: %2").arg(said(answers::barWords(*load.bar)), side)
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
    return history ? said(asSentence(answers::borrowedWords(*history, profile)), unit)
                   : noAnswerText(history.why(), unit);
}

QStringList cautionTexts(const std::vector<answers::Caution>& cautions, LoadUnit unit) {
    QStringList texts;
    for (const answers::Caution& caution : cautions)
        texts << said(asSentence(caution.words), unit);
    return texts;
}

QStringList allCautionTexts(std::vector<answers::Caution> cautions, LoadUnit unit) {
    std::erase_if(cautions, [](const answers::Caution& one) { // said with the usual ones, once
        return one.kind == answers::Caution::Kind::Estimates ||
               one.kind == answers::Caution::Kind::Practitioner;
    });
    return cautionTexts(cautions, unit) << said(answers::cautionWords(false), unit).join(u' ');
}

namespace {
/// Each load once, in kg, with how many sets of it there are.
template <class Text>
QString eachLoad(const answers::LadderForecast& ladder, const Text& textOf) {
    QStringList loads;
    for (std::size_t i = 0; i < ladder.loads.size();) {
        std::size_t same = i;
        while (same < ladder.loads.size() && ladder.loads[same].exact == ladder.loads[i].exact)
            ++same;
        loads << textOf(std::round(kilograms(ladder.loads[i].exact) * 1000) / 1000, same - i);
        i = same;
    }
    return loads.join(u", "_s);
}
} // namespace

QString ladderLoads(const answers::LadderForecast& ladder, LoadUnit unit) {
    return eachLoad(ladder, [unit](double kg, std::size_t sets) {
        const QString load = loadNumber(kg, unit);
        return sets > 1 ? Plan::tr("%1 (%2 sets)").arg(load).arg(sets) : load;
    });
}

QString ladderInWords(const answers::LadderForecast& ladder, LoadUnit unit) {
    return eachLoad(ladder, [unit](double kg, std::size_t sets) {
        const QString load = loadWithUnit(kg, unit);
        return sets > 1 ? Plan::tr("%1 sets of %2").arg(sets).arg(load) : load;
    });
}

} // namespace slopebook::ui::planwords
