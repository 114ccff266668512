// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/devices/noiserows.h"

#include "core/answers/figures.h"
#include "core/answers/noise.h"
#include "core/answers/sources.h"
#include "core/answers/squadsummary.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

struct NoiseWords {
    Q_DECLARE_TR_FUNCTIONS(NoiseWords)
};

QString deviceText(const questions::NoiseGroup& group) {
    return group.device ? text(group.deviceName) : NoiseWords::tr("none named");
}

QString whoseText(const questions::NoiseGroup& group) {
    return group.athlete.empty() ? NoiseWords::tr("all athletes") : text(group.athlete);
}

/// The cells that begin every row of a group.
QStringList head(const questions::NoiseGroup& group) {
    return {text(group.lift.name), deviceText(group), whoseText(group)};
}

TextTable::Row errorRow(const questions::NoiseGroup& group, const QString& what,
                        const stats::TypicalError& error, int decimals, double scale) {
    QStringList cells = head(group);
    const int unscaled = decimals + 1;
    if (!answers::spreads(error, unscaled)) {
        cells << what << number(error.df + 1, 0) << NoiseWords::tr("no spread") << u"–"_s << u"–"_s
              << u"–"_s << u"–"_s;
        return {.cells = cells, .quiet = {5}, .explanation = said(answers::noSpreadWords())};
    }
    cells << what << number(error.df + 1, 0) << number(scale * error.value, decimals + 1)
          << rangeText({scale * error.interval.low, scale * error.interval.high}, decimals + 1)
          << number(error.cvPercent, 1)
          << (error.cvLogPercent ? number(*error.cvLogPercent, 1) : u"–"_s)
          << number(scale * error.smallestDetectable(), decimals);
    return {.cells = cells};
}

/// The noise with its shares, then what of it is published.
QString noiseText(const answers::DayNoise& noise) {
    const Words cited = answers::citationOf(noise);
    const QString shares = said(answers::inUseWords(noise, 3));
    return cited.empty() ? shares : shares + u". "_s + said(asSentence(cited));
}

TextTable::Row inUseRow(const questions::NoiseGroup& group) {
    QStringList cells = head(group);
    const bool any = group.inUse.origin != answers::DayNoise::Origin::None;
    const double found = std::sqrt(group.inUse.variance.value);
    cells << NoiseWords::tr("whole line, from day to day")
          << (group.inUse.pairs > 0 ? QString::number(group.inUse.pairs) : u"–"_s)
          << (any && found >= 0.00005 ? number(found, 4)
              : any                   ? NoiseWords::tr("none found")
                                      : u"–"_s);
    return {.cells = cells,
            .strong = true,
            .explanation = asSentence(noiseText(answers::asCited(group.inUse)))};
}

/// Of each lift the chosen athlete's own before everybody's: what is in use for them.
std::vector<const questions::NoiseGroup*> ownFirst(std::span<const questions::NoiseGroup> groups) {
    std::vector<const questions::NoiseGroup*> ordered;
    for (auto first = groups.begin(); first != groups.end();) {
        const auto next = std::find_if(first, groups.end(), [&](const questions::NoiseGroup& g) {
            return !(g.lift == first->lift);
        });
        for (const bool own : {true, false})
            for (auto group = first; group != next; ++group)
                if (own != group->athlete.empty())
                    ordered.push_back(&*group);
        first = next;
    }
    return ordered;
}

} // namespace

QStringList noiseHeadings(LoadUnit unit) {
    return {NoiseWords::tr("Lift"),
            NoiseWords::tr("Device"),
            NoiseWords::tr("Whose"),
            NoiseWords::tr("At"),
            NoiseWords::tr("Repeat tests"),
            NoiseWords::tr("Typical error (m/s; 1RM: %1)").arg(unitName(unit)),
            NoiseWords::tr("95 % interval"),
            NoiseWords::tr("CV %"),
            NoiseWords::tr("CV % by logs"),
            NoiseWords::tr("Smallest detectable change"),
            NoiseWords::tr("Source")};
}

std::vector<TextTable::Row> noiseRows(std::span<const questions::NoiseGroup> groups,
                                      LoadUnit unit) {
    std::vector<TextTable::Row> rows;
    for (const questions::NoiseGroup* one : ownFirst(groups)) {
        const questions::NoiseGroup& group = *one;
        TextTable::Row inUse = inUseRow(group);
        while (inUse.cells.size() < 10)
            inUse.cells << QString();
        inUse.cells << asSentence(noiseText(group.inUse));
        rows.push_back(std::move(inUse));
        if (group.noise) {
            for (const answers::NoiseAtLoad& at : group.noise->atLoads)
                rows.push_back(
                    errorRow(group, loadWithUnit(kilograms(at.load), unit), at.error, 3, 1));
            if (group.noise->oneRm)
                rows.push_back(errorRow(group, NoiseWords::tr("estimated 1RM"), *group.noise->oneRm,
                                        1, inUnit(1, unit)));
        } else {
            QStringList cells = head(group);
            cells << NoiseWords::tr("no noise of its own: %1")
                         .arg(said(group.noise.why().reason, unit));
            rows.push_back({.cells = cells, .quiet = {3}});
        }
    }
    return rows;
}

QString noiseSources(std::span<const questions::NoiseGroup> groups) {
    QStringList lines;
    for (const questions::NoiseGroup* group : ownFirst(groups))
        lines << NoiseWords::tr("%1, %2: %3", "a device, whose, where its noise comes from")
                     .arg(deviceText(*group), whoseText(*group), noiseText(group->inUse));
    return lines.join(u'\n');
}

namespace {
/// The chosen athlete's where there is one, else everybody's.
std::vector<const questions::NoiseGroup*> groupsInUse(std::span<const questions::NoiseGroup> all) {
    const auto hasOwn = [all](const questions::NoiseGroup& everybodys) {
        return std::ranges::any_of(all, [&everybodys](const questions::NoiseGroup& one) {
            return !one.athlete.empty() && one.device == everybodys.device &&
                   one.lift == everybodys.lift;
        });
    };
    std::vector<const questions::NoiseGroup*> groups;
    for (const questions::NoiseGroup& group : all)
        if (!group.athlete.empty() || !hasOwn(group))
            groups.push_back(&group);
    return groups;
}
} // namespace

QString inUseText(std::span<const questions::NoiseGroup> groups) {
    QStringList lines;
    for (const questions::NoiseGroup* group : groupsInUse(groups)) {
        const QString figure = said(answers::inUseFigure(group->inUse, 3));
        const QString clear = said(answers::clearBetweenTests(group->inUse));
        const QString inUse =
            NoiseWords::tr("In use for %1, %2, %3: %4")
                .arg(text(group->lift.name), deviceText(*group), whoseText(*group), figure);
        lines << (clear.isEmpty() ? inUse : NoiseWords::tr("%1; %2.").arg(inUse, clear));
    }
    return lines.join(u'\n');
}

QString rulesOfThumb(std::span<const questions::NoiseGroup> groups) {
    QStringList lines;
    for (const questions::NoiseGroup* group : groupsInUse(groups))
        if (const QString rule = said(answers::ruleOfThumb(group->inUse));
            !rule.isEmpty() && !lines.contains(rule))
            lines << rule;
    return lines.join(u'\n');
}

QStringList repeatHeadings() {
    return {NoiseWords::tr("Lift"), NoiseWords::tr("Device"),      NoiseWords::tr("Athlete"),
            NoiseWords::tr("Test"), NoiseWords::tr("Repeat test"), NoiseWords::tr("Days between")};
}

std::vector<TextTable::Row> repeatRows(std::span<const questions::NoiseGroup> groups,
                                       const std::map<AthleteId, QString>& athletes) {
    std::vector<TextTable::Row> rows;
    for (const questions::NoiseGroup& group : groups)
        if (group.noise && group.athlete.empty())
            for (const answers::RepeatPair& pair : group.noise->used) {
                const auto name = athletes.find(pair.first.athlete);
                rows.push_back(
                    {.cells = {text(group.lift.name), deviceText(group),
                               name != athletes.end() ? name->second : QString(),
                               sessionText(pair.first), sessionText(pair.second),
                               QString::number(daysBetween(pair.first.date, pair.second.date))}});
            }
    return rows;
}

QStringList agreementHeadings() {
    return {NoiseWords::tr("Figure"), NoiseWords::tr("Value"), NoiseWords::tr("Interval")};
}

std::vector<TextTable::Row> agreementRows(const answers::AgreementStudy& study) {
    const stats::Agreement& a = study.figures;
    const double se = std::sqrt(study.biasVariance.value);
    const double half = stats::tCritical(study.level, study.biasVariance.df) * se;
    const auto row = [](const QString& name, const QString& value, const QString& interval = {}) {
        return TextTable::Row{.cells = {name, value, interval}};
    };
    std::vector<TextTable::Row> rows{
        row(NoiseWords::tr("Sets seen by both"), QString::number(a.n)),
        row(NoiseWords::tr("Athletes, sessions"),
            u"%1, %2"_s.arg(study.athletes).arg(study.sessions.size())),
        row(NoiseWords::tr("Bias (m/s)"), signedNumber(a.bias, 4),
            signedRangeText(a.biasInterval, 4)),
        row(NoiseWords::tr("Lower limit of agreement (m/s)"), signedNumber(a.limits.low, 4),
            signedRangeText(a.lowerLimitInterval, 4)),
        row(NoiseWords::tr("Upper limit of agreement (m/s)"), signedNumber(a.limits.high, 4),
            signedRangeText(a.upperLimitInterval, 4)),
        row(NoiseWords::tr("SD of the differences (m/s)"), number(a.sd, 4))};
    if (study.groups) {
        const bool athletes = study.grouped == answers::AgreementStudy::Grouped::ByAthlete;
        rows.push_back(row(athletes ? NoiseWords::tr("SD between athletes (m/s)")
                                    : NoiseWords::tr("SD between sessions (m/s)"),
                           number(std::sqrt(study.groups->between), 4)));
        rows.push_back(row(athletes ? NoiseWords::tr("SD within an athlete (m/s)")
                                    : NoiseWords::tr("SD within a session (m/s)"),
                           number(std::sqrt(study.groups->within), 4)));
    }
    rows.insert(rows.end(),
                {row(NoiseWords::tr("Proportion, least products (slope)"), number(a.slope, 4),
                     rangeText(a.slopeInterval, 4)),
                 row(NoiseWords::tr("Intercept, least products (m/s)"),
                     signedNumber(a.intercept, 4), signedRangeText(a.interceptInterval, 4)),
                 row(NoiseWords::tr("Correlation"), number(a.correlation, 4)),
                 row(NoiseWords::tr("Bias that comparisons take off (m/s)"),
                     signedNumber(a.bias, 4), signedRangeText({a.bias - half, a.bias + half}, 4))});
    return rows;
}

QStringList pairedHeadings(const QString& first, const QString& second, LoadUnit unit) {
    return {NoiseWords::tr("Athlete"),
            NoiseWords::tr("Day"),
            NoiseWords::tr("Load (%1)").arg(unitName(unit)),
            first,
            second,
            NoiseWords::tr("Mean (m/s)"),
            NoiseWords::tr("Difference (m/s)")};
}

std::vector<TextTable::Row> pairedRows(const answers::AgreementStudy& study,
                                       const std::map<AthleteId, QString>& athletes,
                                       LoadUnit unit) {
    std::vector<TextTable::Row> rows;
    for (const answers::PairedSet& set : study.sets) {
        const auto name = athletes.find(set.athlete);
        rows.push_back(
            {.cells = {name != athletes.end() ? name->second : QString(), dateText(set.date),
                       loadNumber(set.load, unit), number(set.first, 3), number(set.second, 3),
                       number(set.mean(), 3), signedNumber(set.difference(), 3)}});
    }
    return rows;
}

QString agreementSentence(const answers::AgreementStudy& study, const QString& first,
                          const QString& second, LoadUnit unit) {
    QString sentence = said(answers::agreementWords(study, utf8(first), utf8(second)));
    for (const answers::Note& note : study.notes)
        sentence += u' ' + said(asSentence(note.words), unit);
    return sentence;
}

} // namespace slopebook::ui
