// SPDX-License-Identifier: GPL-3.0-or-later
// The sentence of a comparison in the desktop's language; its English is that of core/answers.
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using answers::Clause;
using answers::Reading;
using answers::SentenceParts;

struct Sentence {
    Q_DECLARE_TR_FUNCTIONS(Sentence)
};

QString join(const QString& a, const QString& b) {
    return a == b ? a : Sentence::tr("%1 to %2").arg(a, b);
}

QString loads(const Clause& c, LoadUnit unit) {
    const QString name = unitName(unit);
    if (c.fromLoad == c.toLoad)
        return Sentence::tr("at %1 %2").arg(loadNumber(c.fromLoad, unit), name);
    return Sentence::tr("from %1 to %2 %3")
        .arg(loadNumber(c.fromLoad, unit), loadNumber(c.toLoad, unit), name);
}

QString where(const std::vector<Clause>& clauses, std::size_t i, LoadUnit unit) {
    const Clause& c = clauses[i];
    const bool plain = c.reading == Reading::Unclear || c.reading == Reading::NoFigure;
    if (plain && clauses.size() > 1 && i + 1 == clauses.size())
        return Sentence::tr("above");
    if (plain && clauses.size() > 1 && i == 0 && c.fromLoad != c.toLoad)
        return Sentence::tr("up to %1 %2").arg(loadNumber(c.toLoad, unit), unitName(unit));
    return loads(c, unit);
}

QString matters(bool beyond, bool within) {
    if (beyond)
        return Sentence::tr(", more than the smallest change that matters");
    if (within)
        return Sentence::tr(", less than the smallest change that matters");
    return {};
}

QString byHowMuch(const Clause& c) {
    const double a = std::abs(c.smallestChange), b = std::abs(c.largestChange);
    return Sentence::tr(" (by %1 m/s%2)")
        .arg(join(number(std::min(a, b), 2), number(std::max(a, b), 2)),
             matters(c.beyondSmallest, c.withinSmallest));
}

QString tellingFigures(const answers::Telling& t) {
    return Sentence::tr("%1 m/s (%2 to %3; two such tests show changes from %4 up)")
        .arg(signedNumber(t.change, 2), signedNumber(t.interval.low, 2),
             signedNumber(t.interval.high, 2), number(t.shows, 2));
}

QString tellingText(const Clause& c, LoadUnit unit) {
    if (!c.telling)
        return {};
    const answers::Telling& t = *c.telling;
    const QString figures = tellingFigures(t);
    if (c.fromLoad == c.toLoad)
        return t.leans > 0   ? Sentence::tr(", leaning faster: %1").arg(figures)
               : t.leans < 0 ? Sentence::tr(", leaning slower: %1").arg(figures)
                             : Sentence::tr(": %1").arg(figures);
    const QString load = loadWithUnit(t.load, unit);
    return t.leans > 0   ? Sentence::tr(", leaning faster at %1: %2").arg(load, figures)
           : t.leans < 0 ? Sentence::tr(", leaning slower at %1: %2").arg(load, figures)
                         : Sentence::tr(", most at %1: %2").arg(load, figures);
}

QString clauseText(const std::vector<Clause>& clauses, std::size_t i, LoadUnit unit) {
    const Clause& c = clauses[i];
    const QString place = where(clauses, i, unit);
    switch (c.reading) {
    case Reading::Better:
        return Sentence::tr("faster %1").arg(place) + byHowMuch(c);
    case Reading::Worse:
        return Sentence::tr("slower %1").arg(place) + byHowMuch(c);
    case Reading::Held:
        return Sentence::tr("speed held %1 (%2 m/s)")
            .arg(place, join(signedNumber(c.smallestChange, 2), signedNumber(c.largestChange, 2)));
    case Reading::Unclear:
        return Sentence::tr("no clear change %1").arg(place) + tellingText(c, unit);
    case Reading::NoFigure:
        break;
    }
    return Sentence::tr("no figure %1").arg(place);
}

QString loadsText(const SentenceParts& parts, LoadUnit unit) {
    if (parts.noOverlap)
        return Sentence::tr("the two sessions share no loads, so nothing is said by load");
    if (parts.clauses.size() == 1 && parts.clauses.front().reading == Reading::Unclear &&
        parts.clauses.front().fromLoad != parts.clauses.front().toLoad)
        return Sentence::tr("no clear change at any load %1")
                   .arg(loads(parts.clauses.front(), unit)) +
               tellingText(parts.clauses.front(), unit);
    QStringList texts;
    for (std::size_t i = 0; i < parts.clauses.size(); ++i)
        texts << clauseText(parts.clauses, i, unit);
    return texts.join("; "_L1);
}

QString verdict(Reading reading) {
    switch (reading) {
    case Reading::Better:
        return Sentence::tr("estimated max up");
    case Reading::Worse:
        return Sentence::tr("estimated max down");
    case Reading::Held:
        return Sentence::tr("estimated max held");
    default:
        break;
    }
    return Sentence::tr("no clear change of the estimated max");
}

QString reachText(const SentenceParts& parts) {
    const bool from = parts.reachFrom < answers::OneRm::farMark;
    const bool to = parts.reachTo < answers::OneRm::farMark;
    const QString first = number(parts.reachFrom, 2), second = number(parts.reachTo, 2);
    if (from && to)
        return first == second
                   ? Sentence::tr(" (reach %1 both times: extrapolations)").arg(first)
                   : Sentence::tr(" (reach %1, then %2: extrapolations)").arg(first, second);
    if (from)
        return Sentence::tr(" (the earlier one's reach %1: an extrapolation)").arg(first);
    if (to)
        return Sentence::tr(" (the later one's reach %1: an extrapolation)").arg(second);
    return {};
}

QString maxTellingText(const answers::ReadChange& r, LoadUnit unit) {
    const QString shows = Sentence::tr("; two such tests show changes from %1 %2 up")
                              .arg(number(inUnit(r.shows(), unit), 1), unitName(unit));
    const int leans = r.leans();
    return (leans > 0   ? Sentence::tr(", leaning up")
            : leans < 0 ? Sentence::tr(", leaning down")
                        : QString()) +
           shows;
}

QString nothingOfMaxText(const SentenceParts& parts) {
    const QString low = signedNumber(parts.nothingOfMax->low, 0),
                  high = signedNumber(parts.nothingOfMax->high, 0),
                  reach = number(std::min(parts.reachFrom, parts.reachTo), 2);
    return parts.lightLater
               ? Sentence::tr("the later day's light loads say nothing of the max (%1 to %2 %; "
                              "reach %3)")
                     .arg(low, high, reach)
               : Sentence::tr("the earlier day's light loads say nothing of the max (%1 to %2 %; "
                              "reach %3)")
                     .arg(low, high, reach);
}

QString oneRmText(const SentenceParts& parts, LoadUnit unit) {
    if (parts.nothingOfMax)
        return nothingOfMaxText(parts);
    if (!parts.oneRm)
        return Sentence::tr("no estimated max: %1").arg(said(parts.oneRmReason, unit));
    const answers::ReadChange& r = parts.oneRm->read;
    const auto shown = [unit](double kg) { return signedNumber(inUnit(kg, unit), 1); };
    QString text = Sentence::tr("%1: %2 %3 (%4 to %5)")
                       .arg(verdict(r.reading), shown(r.change), unitName(unit),
                            shown(r.interval.low), shown(r.interval.high));
    if (r.reading == Reading::Better || r.reading == Reading::Worse)
        text += matters(r.beyondSmallest, r.withinSmallest);
    if (r.reading == Reading::Unclear)
        text += maxTellingText(r, unit);
    return text + reachText(parts);
}

} // namespace

QString sentenceText(const SentenceParts& parts, LoadUnit unit) {
    return asSentence(Sentence::tr("%1; %2.").arg(loadsText(parts, unit), oneRmText(parts, unit)));
}

QString sentenceText(const answers::Comparison& comparison, LoadUnit unit) {
    return sentenceText(answers::sentenceParts(comparison), unit);
}

} // namespace slopebook::ui
