// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/station/stationwords.h"

#include "core/answers/turnwords.h"
#include "ui/floor/entry/setwords.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace slopebook::ui {

namespace {

struct StationWords {
    Q_DECLARE_TR_FUNCTIONS(StationWords)
};

QString sideWord(BodySide side) {
    switch (side) {
    case BodySide::Left:
        return StationWords::tr("left");
    case BodySide::Right:
        return StationWords::tr("right");
    case BodySide::Both:
        break;
    }
    return StationWords::tr("both");
}

QString nameOfAthlete(const questions::AtStation& at) {
    return text(at.athlete.value.name);
}

/// "Hop, left".
QString attemptName(const questions::StationWork& work, const answers::DueAttempt& due) {
    const TestKind& kind = work.tests[due.test].value;
    return kind.twoSided ? StationWords::tr("%1, %2").arg(testText(kind.name), sideWord(due.side))
                         : testText(kind.name);
}

std::optional<Mass> heaviestNotLifted(const questions::AtStation& at) {
    std::optional<Mass> load;
    for (const log::PlacedSet& placed : at.sets)
        if (placed.set.outcome == Outcome::NotLifted)
            load = placed.set.load;
    return load;
}

QString plainValue(double value) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'g', 10);
}

QString lastOf(const questions::AtStation& at, LoadUnit unit) {
    if (!at.atLift)
        return at.attempts.empty() ? QString() : plainValue(at.attempts.back().value);
    if (at.sets.empty())
        return {};
    const Set& set = at.sets.back().set;
    if (set.outcome == Outcome::NotLifted)
        return StationWords::tr("%1 \u00d7").arg(massText(set.load, unit));
    const auto point = pointVelocity(set, PointRule::Fastest);
    return point ? QStringLiteral("%1  %2").arg(massText(set.load, unit), speedText(*point))
                 : massText(set.load, unit);
}

} // namespace

QString stationText(const questions::StationWork& work) {
    QStringList about;
    if (work.lift)
        about << text(work.lift->value.name);
    for (const auto& test : work.tests)
        about << testText(test.value.name);
    return StationWords::tr("%1: %2").arg(text(work.station.value.name), namesText(about));
}

QString stationText(const Stored<StationId, Station>& station, const log::Log& log) {
    return stationText(questions::stationWork(log, station.id));
}

QString conditionsText(const Conditions& conditions, const log::Log& log) {
    QStringList parts;
    if (conditions.device)
        for (const auto& device : log.devices())
            if (conditions.device == device.id)
                parts << text(device.value.name);
    for (const std::string& part :
         {conditions.surface, conditions.footwear, conditions.place, conditions.technique})
        if (!part.empty())
            parts << text(part);
    return namesText(parts);
}

QString turnText(const questions::StationWork& work, const questions::AtStation& at,
                 LoadUnit unit) {
    const QString name = nameOfAthlete(at);
    if (!at.atLift) {
        if (at.tests.next)
            return StationWords::tr("%1: %2.").arg(name, attemptName(work, *at.tests.next));
        return at.tests.out ? StationWords::tr("%1: not possible today.").arg(name)
                            : StationWords::tr("%1: done.").arg(name);
    }
    if (at.lift.next)
        return StationWords::tr("%1: %2 next.").arg(name, massWithUnit(*at.lift.next, unit));
    if (at.lift.why == answers::NoLoad::Out)
        return StationWords::tr("%1: not possible today.").arg(name);
    if (!at.lift.isDue())
        return StationWords::tr("%1: done.").arg(name);
    return StationWords::tr("%1: set %2.").arg(name).arg(at.lift.done + 1);
}

QString turnReason(const questions::StationWork& work, const questions::AtStation& at,
                   LoadUnit unit) {
    if (!at.notPossible.empty())
        return text(at.notPossible);
    if (!at.atLift) {
        const int all = at.tests.done + at.tests.due;
        return at.tests.next
                   ? StationWords::tr("%1 of %2 attempts done.").arg(at.tests.done).arg(all)
                   : QString();
    }
    return said(
        answers::turnWords(at.lift, heaviestNotLifted(at), work.station.value.ladder.empty()),
        unit);
}

QString comesThen(const questions::AtStation& at, LoadUnit unit) {
    if (at.atLift && at.lift.next)
        return StationWords::tr("%1, %2").arg(nameOfAthlete(at), massWithUnit(*at.lift.next, unit));
    return nameOfAthlete(at);
}

RosterRow rosterRow(const questions::StationWork& work, const questions::AtStation& at,
                    LoadUnit unit) {
    RosterRow row{at.athlete.id, nameOfAthlete(at), {}, {}, lastOf(at, unit), {}, !at.isDue()};
    const bool out = at.atLift ? at.lift.why == answers::NoLoad::Out : at.tests.out;
    const std::optional<int> due = at.atLift ? at.lift.due : std::optional(at.tests.due);
    if (out)
        row.done = StationWords::tr("not possible");
    else if (!due)
        row.done = QString::number(at.done());
    else
        row.done = StationWords::tr("%1 of %2").arg(at.done()).arg(at.done() + *due);
    if (at.atLift && at.lift.next)
        row.next = massText(*at.lift.next, unit);
    else if (!at.atLift && at.tests.next)
        row.next = work.tests.size() > 1 || work.tests.front().value.twoSided
                       ? attemptName(work, *at.tests.next)
                       : QString();
    return row;
}

QString readsAs(const DayLine& line, const QString& name, const TestKind* test, LoadUnit unit) {
    QStringList parts;
    if (!name.isEmpty())
        parts << name;
    if (const auto* set = std::get_if<TypedSet>(&line.what)) {
        parts << massWithUnit(set->load, unit);
        if (set->trueMaximum)
            parts << StationWords::tr("a true maximum");
        double fastest = 0;
        for (const TypedRep& rep : set->reps)
            if (!rep.leftOut)
                fastest = std::max(fastest, rep.velocity);
        if (set->outcome == Outcome::NotLifted)
            parts << StationWords::tr("not lifted");
        else
            parts << (set->reps.size() == 1 ? StationWords::tr("1 rep")
                                            : StationWords::tr("%1 reps").arg(set->reps.size()));
        if (fastest > 0)
            parts << StationWords::tr("fastest %1 m/s").arg(speedText(fastest));
        if (set->effort)
            parts << StationWords::tr("felt %1").arg(effortText(*set->effort));
    } else if (const auto* gap = std::get_if<TypedGap>(&line.what)) {
        if (gap->load)
            parts << massWithUnit(*gap->load, unit);
        parts << StationWords::tr("not possible: %1").arg(QString::fromStdU16String(gap->reason));
    } else if (const auto* typed = std::get_if<TypedAttempts>(&line.what); typed && test) {
        for (const Attempt& attempt : typed->attempts) {
            const QString value = plainValue(attempt.value) + QLatin1Char(' ') + text(test->unit);
            parts << (test->twoSided ? QStringLiteral("%1 %2").arg(sideWord(attempt.side), value)
                                     : value);
        }
        for (const BodySide side : typed->notPossible)
            parts << (test->twoSided && side != BodySide::Both
                          ? StationWords::tr("%1 not possible").arg(sideWord(side))
                          : StationWords::tr("not possible: %1").arg(text(typed->reason)));
    } else {
        return {};
    }
    return StationWords::tr("reads as: %1").arg(parts.join(QStringLiteral(", ")));
}

QString whoText(const WhoQuestion& question, const std::vector<std::string>& names) {
    QStringList who;
    for (const std::size_t one : question.who)
        who << text(names[one]);
    return StationWords::tr("Whose is it: %1? Type more of the name.").arg(namesText(who));
}

QString attemptSide(BodySide side) {
    return side == BodySide::Both ? QString() : sideWord(side);
}

QString attemptReading(const Attempt& attempt) {
    return attempt.contact
               ? plainValue(attempt.value) + QLatin1Char('/') + plainValue(*attempt.contact)
               : plainValue(attempt.value);
}

QString restClock(std::chrono::seconds rested) {
    constexpr std::chrono::hours longest{1};
    if (rested > longest)
        return {};
    const auto all = std::max<long long>(0, rested.count());
    return QStringLiteral("%1:%2").arg(all / 60).arg(all % 60, 2, 10, QLatin1Char('0'));
}

} // namespace slopebook::ui
