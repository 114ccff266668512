// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/wording.h"

#include "core/answers/figures.h"
#include "core/model/session.h"
#include "ui/words/said.h"

#include <QCoreApplication>

#include <array>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

// lupdate reads the names of such functions through this context.
struct Wording {
    Q_DECLARE_TR_FUNCTIONS(Wording)
};

QString plain(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString sideWord(BodySide side) {
    return side == BodySide::Left ? Wording::tr("left") : Wording::tr("right");
}

QString repeatTests(int pairs) {
    return Wording::tr("%n repeat tests", nullptr, pairs);
}

/// As answers::sourcesOf() has it.
QString noiseSources(const answers::DayNoise& noise) {
    const QString published =
        Wording::tr("published, not yours: %1").arg(plain(answers::cited(noise.source)));
    const QString own = Wording::tr("the athlete's own: %1");
    const QString others = Wording::tr("this log's: %1");
    const double rest = 1 - noise.ownShare - noise.othersShare;
    QStringList parts;
    const auto part = [&](double share, const QString& source) {
        if (share >= 0.005)
            parts << Wording::tr("%1 % %2", "a share and its source")
                         .arg(number(100 * share, 0), source);
    };
    part(noise.ownShare, own.arg(repeatTests(noise.ownPairs)));
    part(noise.othersShare, others.arg(repeatTests(noise.othersPairs)));
    part(rest, published);
    if (parts.size() > 1)
        return parts.join(u", "_s);
    if (noise.origin == answers::DayNoise::Origin::Athlete)
        return own.arg(repeatTests(noise.pairs));
    if (noise.origin == answers::DayNoise::Origin::LogLift)
        return others.arg(repeatTests(noise.pairs));
    return published;
}

} // namespace

QString asSentence(QString text) {
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString readingWord(answers::Reading reading) {
    switch (reading) {
    case answers::Reading::Better:
        return Wording::tr("better");
    case answers::Reading::Worse:
        return Wording::tr("worse");
    case answers::Reading::Held:
        return Wording::tr("held");
    case answers::Reading::Unclear:
        return Wording::tr("unclear");
    case answers::Reading::NoFigure:
        break;
    }
    return Wording::tr("no figure");
}

QString readingText(const answers::ReadChange& read, int decimals) {
    const QString word = readingWord(read.reading);
    const bool changed =
        read.reading == answers::Reading::Better || read.reading == answers::Reading::Worse;
    if (!changed || !read.smallest)
        return word;
    const QString m = number(read.smallest->value, decimals);
    if (read.beyondSmallest)
        return Wording::tr("%1, by over %2").arg(word, m);
    if (read.withinSmallest)
        return Wording::tr("%1, but by less than matters (%2)").arg(word, m);
    return word;
}

QString contextName(const std::string& english) {
    return QCoreApplication::translate("BatteryWords", english.c_str());
}

QString testLabel(const TestKind& kind, BodySide side) {
    if (side == BodySide::Both)
        return plain(kind.name);
    return Wording::tr("%1, %2", "a test and its side").arg(plain(kind.name), sideWord(side));
}

QString asymmetryText(const answers::Asymmetry& asymmetry) {
    if (asymmetry.better == BodySide::Both)
        return Wording::tr("even", "left and right alike");
    return Wording::tr("%1 by %2 %", "the better side, by so much")
        .arg(sideWord(asymmetry.better), number(asymmetry.percent, 1));
}

QString pText(double p) {
    return said(figure(answers::pText(p)));
}

QString mvtText(const Mvt& mvt) {
    QString source = plain(mvt.source);
    switch (mvt.origin) {
    case Mvt::Origin::Athlete:
        source = mvt.count == 1
                     ? Wording::tr("the athlete's own: one true maximum")
                     : Wording::tr("the athlete's own: mean of %n true maxima", nullptr, mvt.count);
        break;
    case Mvt::Origin::Coach:
        source = source.isEmpty() ? Wording::tr("the coach's own")
                                  : Wording::tr("the coach's own: %1").arg(source);
        break;
    case Mvt::Origin::Published:
        source = Wording::tr("published, not yours: %1").arg(source);
        break;
    }
    if (mvt.sd)
        return Wording::tr("%1 m/s (SD %2; %3)")
            .arg(number(mvt.value, 2), number(*mvt.sd, 2), source);
    return Wording::tr("%1 m/s (%2)").arg(number(mvt.value, 2), source);
}

QString smallestOrigin(const answers::Smallest& smallest) {
    switch (smallest.origin) {
    case answers::Smallest::Origin::Squad:
        return Wording::tr("squad: %1").arg(plain(smallest.source));
    case answers::Smallest::Origin::Coach:
        return Wording::tr("the coach's own");
    case answers::Smallest::Origin::Published:
        break;
    }
    return Wording::tr("published, not yours: %1").arg(plain(smallest.source));
}

QString dayNoiseText(const answers::DayNoise& noise) {
    const double found = std::sqrt(noise.variance.value);
    if (noise.pairs > 0 && found < 0.0005) // no SD of 0.000: it is the scatter that explains all
        return Wording::tr("none found beyond the scatter within a day (%1)")
            .arg(repeatTests(noise.pairs));
    if (noise.origin != answers::DayNoise::Origin::None)
        return Wording::tr("SD %1 m/s (%2)").arg(number(found, 3), noiseSources(noise));
    return Wording::tr("not known: the readings are made from these two days alone, which calls "
                       "too much a change");
}

QString noAnswerClause(const NoAnswer& why, LoadUnit unit) {
    return said(why.reason, unit);
}

QString noAnswerText(const NoAnswer& why, LoadUnit unit) {
    switch (why.why) {
    case NoAnswer::Why::NoPoints:
        return Wording::tr("No set of this session counts.");
    case NoAnswer::Why::NoThreshold:
        return Wording::tr("No minimal-velocity threshold (MVT) is known for this lift. Set one "
                           "with the lift.");
    case NoAnswer::Why::BallisticLift:
        return Wording::tr("A thrown or jumped lift is followed by velocity at load only.");
    default:
        break; // these carry a day or figures
    }
    QString text = asSentence(noAnswerClause(why, unit));
    if (!text.isEmpty() && !text.endsWith(u'.'))
        text += u'.';
    return text;
}

namespace {

// core/answers holds these notes, which carry no figures; here they are only shown to lupdate.
[[maybe_unused]] constexpr std::array fixedNotes{
    QT_TRANSLATE_NOOP("Notes", "sets of one session resemble each other: the interval of the bias "
                               "that comparisons use counts sessions, not sets"),
    QT_TRANSLATE_NOOP("Notes", "one true maximum has no SD: no interval with the MVT's own"),
    QT_TRANSLATE_NOOP("Notes", "the SD of the MVT is not known: no interval with it"),
    QT_TRANSLATE_NOOP("Notes", "peak velocity at a maximum is no small steady figure: an MVT made "
                               "for mean velocity does not hold for it"),
    QT_TRANSLATE_NOOP("Notes", "measured with different devices: part of the change may be theirs"),
    QT_TRANSLATE_NOOP("Notes", "the device of one session is not known: part of the change may be "
                               "the device's"),
    QT_TRANSLATE_NOOP("Notes", "changes across devices and the trend have the device's bias taken "
                               "off"),
    QT_TRANSLATE_NOOP("Notes", "some sessions were measured with another device than the baseline: "
                               "part of their change, and of the trend, may be the device's"),
    QT_TRANSLATE_NOOP("Notes", "no day-to-day noise is known: no smallest detectable change is "
                               "drawn"),
    QT_TRANSLATE_NOOP("Notes", "some were measured with two devices: part of their change may be "
                               "the devices'"),
    QT_TRANSLATE_NOOP("Notes", "changes across devices have the device's bias taken off and its "
                               "uncertainty added"),
    QT_TRANSLATE_NOOP("Notes", "the days differ in reps: at each load the fastest of as many reps "
                               "is compared"),
    QT_TRANSLATE_NOOP("Notes", "leaning is no reading: of nothing, up to one in four such tests "
                               "leans one way or the other"),
    QT_TRANSLATE_NOOP("Notes", "where a session has no line to judge by, the change at a load is "
                               "told of what was seen there on both days, from the typical error "
                               "of a point"),
};

QString dayNoiseSentence(const answers::DayNoise& noise) {
    using Origin = answers::DayNoise::Origin;
    if (noise.origin == Origin::None)
        return Wording::tr("No day-to-day noise is known: the readings are made from these two "
                           "days alone, which calls too much a change.");
    const QString source = noiseSources(noise);
    if (noise.pairs > 0 && std::sqrt(noise.variance.value) < 0.0005)
        return Wording::tr("No day-to-day noise was found beyond the scatter within a day (%1).")
            .arg(source);
    return Wording::tr("Day-to-day SD of a whole line, %1 m/s, is part of every reading (%2).")
        .arg(number(std::sqrt(noise.variance.value), 3), source);
}

} // namespace

QString noteText(const answers::Note& note, LoadUnit unit) {
    using Kind = answers::Note::Kind;
    const auto& f = note.figures;
    const auto figure = [&f](std::size_t i, int decimals) { return number(f[i], decimals); };
    const auto has = [&f](std::size_t count) { return f.size() >= count; };
    const auto point = [&] {
        return Wording::tr("%1 m/s at %2").arg(figure(1, 2), loadWithUnit(f[0], unit));
    };
    if (note.kind == Kind::PointsBend && has(1))
        return Wording::tr("The points bend (%1): a straight line misses their ends.")
            .arg(pText(f[0]));
    if (note.kind == Kind::FarFromLine && has(3))
        return Wording::tr("%1 lies far from the line of the other points (studentised %2): worth "
                           "a look.")
            .arg(point(), figure(2, 1));
    if (note.kind == Kind::ImplausiblePoint && has(2))
        return Wording::tr("%1 is hard to believe: worth a look.").arg(point());
    if (note.kind == Kind::ExtrapolatedFar && has(2))
        return Wording::tr("Extrapolated far: the estimated 1RM lies %1 beyond the heaviest load "
                           "(reach %2).")
            .arg(loadWithUnit(std::round(f[1] * 10) / 10, unit), figure(0, 2));
    if (note.kind == Kind::ExtrapolatedVeryFar && has(2))
        return Wording::tr("The heaviest load is under half of the estimated 1RM, which lies %1 "
                           "beyond it (reach %2): read its interval first.")
            .arg(loadWithUnit(std::round(f[1] * 10) / 10, unit), figure(0, 2));
    if (note.kind == Kind::UnderLifted && has(2))
        return Wording::tr("The estimated 1RM lies under the %1 that were lifted that day: the "
                           "line reads low.")
            .arg(loadWithUnit(f[1], unit));
    if (note.kind == Kind::Calibrated && has(4))
        return Wording::tr("By %1 pairs of an estimate and a maximum lifted (%2 of them the "
                           "athlete's own): plans take %3 in place of %4.")
            .arg(figure(2, 0), figure(3, 0), loadWithUnit(std::round(f[0] * 10) / 10, unit),
                 loadWithUnit(std::round(f[1] * 10) / 10, unit));
    if (note.kind == Kind::SlopeUncertain)
        return Wording::tr("The slope is not certain enough to bound the estimate.");
    if (note.kind == Kind::NoOverlap)
        return Wording::tr("The sessions share no stretch of loads: every change by load is "
                           "extrapolated.");
    if (note.kind == Kind::TwoPointLine)
        return Wording::tr("Two points make a line without intervals: it needs a third load.");
    if (note.kind == Kind::LevelNot95 && has(1))
        return Wording::tr("Intervals are at %1, not 95 %.").arg(levelText(f[0]));
    if (note.kind == Kind::DeviceStudy && has(2))
        return Wording::tr("The device's bias comes from %1 of %2 measured by both at once.")
            .arg(f[0] == 1 ? Wording::tr("1 set") : Wording::tr("%1 sets").arg(figure(0, 0)),
                 f[1] == 1 ? Wording::tr("1 athlete")
                           : Wording::tr("%1 athletes").arg(figure(1, 0)));
    if (note.kind == Kind::ContextChanged && note.names.size() == 3)
        return Wording::tr("The %1 changed (%2, then %3): part of the change may be its doing.")
            .arg(contextName(note.names[0]), plain(note.names[1]), plain(note.names[2]));
    if (note.kind == Kind::BaselineHasNoLine)
        return Wording::tr("The baseline session has no line, so no change is judged: %1.")
            .arg(said(note.why, unit));
    if (note.kind == Kind::ByChance && has(2))
        return Wording::tr("Of %1 athletes about %2 can be expected to read better or worse by "
                           "chance alone.")
            .arg(figure(0, 0), figure(1, f[1] < 2 ? 1 : 0));
    if (note.kind == Kind::LoadNotReached && has(1))
        return Wording::tr("Sessions whose loads do not reach %1 are shown as extrapolated and "
                           "take no part in the trend.")
            .arg(loadWithUnit(f[0], unit));
    if (note.kind == Kind::Proportional && has(1))
        return Wording::tr("The devices differ in proportion (least-products slope %1, its "
                           "interval leaves out 1): one bias for all speeds is too simple.")
            .arg(figure(0, 3));
    if (note.kind == Kind::Unpaired && has(1))
        return f[0] == 1 ? Wording::tr("1 set of one device has no partner and is left out.")
                         : Wording::tr("%1 sets of one device have no partner and are left out.")
                               .arg(figure(0, 0));
    if (note.noise)
        return dayNoiseSentence(*note.noise);
    if (note.smallest) {
        answers::Smallest smallest = *note.smallest;
        smallest.source = answers::cited(smallest.source);
        return Wording::tr("Smallest change of speed that matters: %1 m/s (%2).")
            .arg(number(smallest.value, 3), smallestOrigin(smallest));
    }
    if (note.kind == Kind::DeviceCorrected && has(2))
        return Wording::tr(
                   "The later session's device reads %1 m/s against the earlier one's: "
                   "taken off its speeds, line and estimate here, and its uncertainty (SE %2) "
                   "added to the readings.")
            .arg(signedNumber(f[0], 3), figure(1, 3));
    if (note.kind == Kind::NoStudyBeside && has(1))
        return f[0] > 0
                   ? Wording::tr("Both devices measured these same sets, so the change is between "
                                 "the devices, not in the athlete; too little is known of how the "
                                 "devices agree besides these sessions, and a bias found in them "
                                 "would hide what they say: nothing is taken off.")
                   : Wording::tr("Too little is known of how the devices agree besides these "
                                 "sessions, and a bias found in them would hide what they say: "
                                 "nothing is taken off, and part of the change may be the "
                                 "devices'.");
    if (note.kind == Kind::UnequalVariances && has(3))
        return Wording::tr("The points of one day scatter more than the other's (F = %1, %2): "
                           "%3.")
            .arg(figure(0, 2), pText(f[1]),
                 f[2] > 0 ? Wording::tr("separate variances may be asked for")
                          : Wording::tr("each line has its own variance here"));
    QString text = asSentence(QCoreApplication::translate("Notes", note.text.c_str()));
    if (!text.isEmpty() && !text.endsWith(u'.'))
        text += u'.';
    return text;
}

} // namespace slopebook::ui
