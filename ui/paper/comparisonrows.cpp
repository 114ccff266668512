// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/comparisonrows.h"

#include "core/answers/bendwords.h"
#include "core/answers/readingwords.h"
#include "core/answers/sidefigures.h"
#include "core/model/session.h"
#include "ui/paper/pagewords.h"
#include "ui/words/counts.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::page {

namespace {

using answers::ChangeAt;
using answers::Comparison;
using answers::OneRm;
using answers::Profile;

constexpr int speedDecimals = 3, loadDecimals = 1;
const QString none = u"–"_s;

QString shownOrNone(const QString& text) {
    return text.isEmpty() ? none : text;
}

QString loadsOf(const Profile& p, LoadUnit unit) {
    const QString lifted = Page::tr("%1 counting sets, %2 to %3 %4")
                               .arg(QString::number(p.line.n), loadNumber(p.lightest, unit),
                                    loadNumber(p.heaviest, unit), unitName(unit));
    if (!p.session.lightestNotLifted)
        return lifted;
    return Page::tr("%1, %2 not lifted")
        .arg(lifted, loadWithUnit(kilograms(*p.session.lightestNotLifted), unit));
}

QString bodyMass(const Profile& p, LoadUnit unit) {
    if (!p.session.bodyMass)
        return {};
    return Page::tr("body mass %1 %2")
        .arg(number(ui::inUnit(kilograms(*p.session.bodyMass), unit), 1), unitName(unit));
}

QString estimate(const Profile& p, LoadUnit unit) {
    if (!p.oneRm)
        return none;
    const QString figure = number(ui::inUnit(p.oneRm->estimate, unit), loadDecimals);
    // Far from any load lifted, its interval comes first.
    if (p.oneRm->extrapolatedVeryFar() && p.oneRm->toPlan)
        return Page::tr("%1; estimate %2")
            .arg(rangeText(inUnit(*p.oneRm->toPlan, unit), loadDecimals), figure);
    return figure;
}

QString interval(const std::optional<stats::Interval>& kg, LoadUnit unit) {
    return kg ? rangeText(inUnit(*kg, unit), loadDecimals) : none;
}

bool isClear(const answers::ReadChange& read) {
    return read.reading != answers::Reading::Unclear && read.reading != answers::Reading::NoFigure;
}

QString reach(const Profile& p) {
    if (!p.oneRm)
        return none;
    const QString figure = number(p.oneRm->reach, 2);
    if (p.oneRm->extrapolatedVeryFar())
        return Page::tr("%1, very far").arg(figure);
    if (p.oneRm->extrapolatedFar())
        return Page::tr("%1, far").arg(figure);
    return figure;
}

QString measured(const Profile& p, LoadUnit unit) {
    return p.session.measuredOneRm ? loadNumber(kilograms(*p.session.measuredOneRm), unit) : none;
}

std::optional<stats::Interval> toPlan(const Profile& p) {
    return p.oneRm ? p.oneRm->toPlan : std::nullopt;
}
std::optional<stats::Interval> straight(const Profile& p) {
    return p.oneRm ? p.oneRm->straight : std::nullopt;
}
std::optional<stats::Interval> ofLine(const Profile& p) {
    return p.oneRm ? p.oneRm->interval : std::nullopt;
}

} // namespace

QString titleText(const PageHeader& header) {
    return Page::tr("%1 · %2 (%3)").arg(header.athlete, header.lift, kindText(header.kind));
}

QString sideText(const Comparison& c, bool later) {
    if (!c.ofSeveral())
        return sessionText((later ? c.to : c.from).session);
    const answers::BlockSide& side = later ? c.blocks->second : c.blocks->first;
    return Page::tr("%1, %2").arg(QString::fromStdString(side.name),
                                  sessionsText(static_cast<int>(side.sessions.size())));
}

std::vector<DayRow> dayRows(const Comparison& c, const PageHeader& h) {
    const auto joined = [](const QString& a, const QString& b) {
        return a.isEmpty() || b.isEmpty() ? shownOrNone(a + b) : a + ", "_L1 + b;
    };
    const auto correctedDevice = [&] {
        const auto& bias = c.settings.deviceBias;
        return bias ? Page::tr("%1 (%2 m/s taken off)")
                          .arg(h.to.device, signedNumber(bias->first, speedDecimals))
                    : h.to.device;
    };
    std::vector<DayRow> rows{
        {Page::tr("Block"), shownOrNone(h.from.block), shownOrNone(h.to.block)},
        {Page::tr("Measured with"), joined(h.from.device, h.from.place),
         joined(correctedDevice(), h.to.place)},
        {Page::tr("Ladder"), joined(loadsOf(c.from, h.unit), bodyMass(c.from, h.unit)),
         joined(loadsOf(c.to, h.unit), bodyMass(c.to, h.unit))}};
    if (!h.from.note.isEmpty() || !h.to.note.isEmpty())
        rows.push_back({Page::tr("Note"), shownOrNone(h.from.note), shownOrNone(h.to.note)});
    return rows;
}

std::vector<LoadRow> loadRows(const Comparison& c, LoadUnit unit) {
    std::vector<LoadRow> rows;
    for (const ChangeAt& at : c.at) {
        const double load = kilograms(at.load);
        const auto [before, after] = answers::speedsOf(c, load);
        QString name = loadNumber(load, unit);
        if (at.checkLoad)
            name += u" †"_s;
        if (at.extrapolated)
            name += u" *"_s;
        rows.push_back(
            {.load = name,
             .from = number(before, speedDecimals),
             .to = number(after, speedDecimals),
             .change = signedNumber(at.read.change, speedDecimals),
             .readingInterval = signedRangeText(at.read.interval, speedDecimals),
             .straight =
                 at.read.straight ? signedRangeText(*at.read.straight, speedDecimals) : none,
             .twoDays = signedRangeText(at.interval, speedDecimals),
             .smallest = at.read.smallest ? number(at.read.smallest->value, speedDecimals) : none,
             .reading = said(answers::speedCell(at.read)),
             .clear = isClear(at.read)});
    }
    return rows;
}

std::vector<OneRmRow> oneRmRows(const Comparison& c, LoadUnit unit) {
    const QString level = levelText(c.settings.level);
    const auto far = [](const Profile& p) { return p.oneRm && p.oneRm->extrapolatedVeryFar(); };
    const auto signedLoad = [unit](double kg) {
        return signedNumber(ui::inUnit(kg, unit), loadDecimals);
    };
    const auto signedRange = [unit](const stats::Interval& kg) {
        return signedRangeText(inUnit(kg, unit), loadDecimals);
    };
    const answers::OneRmChange* change = c.oneRm ? &*c.oneRm : nullptr;
    const bool bounded = change && change->interval, several = c.ofSeveral();
    const auto ofDays = [several](const QString& figure) { return several ? none : figure; };
    std::vector<OneRmRow> rows;
    if (c.from.oneRm || c.to.oneRm) {
        const auto maxima = several ? answers::maximaOf(c) : std::nullopt;
        const auto max = [unit](double kg) { return number(ui::inUnit(kg, unit), loadDecimals); };
        OneRmRow first{.label = c.settings.deviceBias
                                    ? Page::tr("Estimated 1RM (device's bias taken off)")
                                    : Page::tr("Estimated 1RM"),
                       .from = maxima ? max(maxima->before) : estimate(c.from, unit),
                       .to = maxima ? max(maxima->after) : estimate(c.to, unit),
                       .change = change ? signedLoad(change->read.change) : none,
                       .strong = true,
                       .fromQuiet = far(c.from),
                       .toQuiet = far(c.to)};
        if (change) {
            first.reading = said(answers::maxCell(change->read), unit);
            first.clear = isClear(change->read);
        }
        rows.push_back(first);
        OneRmRow noisy{.label = Page::tr("%1 with days and bend; change too").arg(level),
                       .from = ofDays(interval(toPlan(c.from), unit)),
                       .to = ofDays(interval(toPlan(c.to), unit)),
                       .change = bounded ? signedRange(change->read.interval) : none};
        rows.push_back(noisy);
        if (change && change->read.smallest)
            rows.push_back(
                {.label = Page::tr("Smallest change that matters"),
                 .from = none,
                 .to = none,
                 .change = number(ui::inUnit(change->read.smallest->value, unit), loadDecimals)});
        OneRmRow unbent{.label = Page::tr("%1 as if lines were straight").arg(level),
                        .from = ofDays(interval(straight(c.from), unit)),
                        .to = ofDays(interval(straight(c.to), unit)),
                        .change = none};
        if (const auto read = answers::maxIfStraight(c)) {
            unbent.change = signedRange(read->interval);
            unbent.reading = said(answers::maxCell(*read), unit);
        }
        if (!c.allAtOnce) // of the change by itself, and of two days
            rows.push_back(unbent);
        rows.push_back(
            {.label = several ? Page::tr("%1 lines alone; change of these days only").arg(level)
                              : Page::tr("%1 line alone; change of two days only").arg(level),
             .from = ofDays(interval(ofLine(c.from), unit)),
             .to = ofDays(interval(ofLine(c.to), unit)),
             .change = bounded ? signedRange(*change->interval) : none,
             // clear of zero or not: it says nothing of a change
             .reading = bounded ? Page::tr("no reading: lacks the days' noise") : QString()});
        if (!several)
            rows.push_back({.label = Page::tr("Reach (heaviest load / estimate)"),
                            .from = reach(c.from),
                            .to = reach(c.to)});
    }
    if (c.from.session.measuredOneRm || c.to.session.measuredOneRm)
        rows.push_back(
            {.label = Page::tr("Measured 1RM (a true maximum lifted)"),
             .from = measured(c.from, unit),
             .to = measured(c.to, unit),
             .change = change && change->measured ? signedLoad(*change->measured) : none});
    return rows;
}

QStringList settlingLines(const Comparison& c, LoadUnit unit) {
    QStringList lines;
    for (const answers::Unsettled& each : answers::unsettled(c))
        lines << said(asSentence(answers::settlingWords(each)), unit);
    return lines;
}

QStringList remarks(const Comparison& c, const PageHeader& h) {
    using Kind = answers::Note::Kind;
    QStringList lines;
    const auto add = [&](const std::vector<answers::Note>& notes, const QString& before) {
        for (const answers::Note& n : notes) {
            const bool source = n.kind == Kind::DayNoiseSource || n.kind == Kind::SmallestSource ||
                                n.kind == Kind::MvtCancels || n.kind == Kind::LevelNot95;
            const QString line = before + said(asSentence(n.words), h.unit);
            if (!source && !lines.contains(line))
                lines << line;
        }
    };
    add(c.notes, {});
    for (const Profile* p : {&c.from, &c.to})
        add(p->notes, sessionText(p->session) + ": "_L1);
    return lines;
}

} // namespace slopebook::ui::page
