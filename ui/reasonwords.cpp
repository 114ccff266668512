// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wording.h"

#include <QCoreApplication>

#include <array>

namespace slopebook::ui {

namespace {

struct Reasons {
    Q_DECLARE_TR_FUNCTIONS(Reasons)
};

// core/answers holds these reasons, which carry no figures; here they are only shown to lupdate.
[[maybe_unused]] constexpr std::array fixedReasons{
    QT_TRANSLATE_NOOP("Reasons", "no set of this session counts"),
    QT_TRANSLATE_NOOP("Reasons", "a thrown or jumped lift is followed by velocity at load only"),
    QT_TRANSLATE_NOOP("Reasons", "a thrown or jumped lift has no 1RM to take shares of"),
    QT_TRANSLATE_NOOP("Reasons", "no minimal-velocity threshold (MVT) is known for this lift"),
    QT_TRANSLATE_NOOP("Reasons", "no published threshold (MVT) holds for peak velocity"),
    QT_TRANSLATE_NOOP("Reasons",
                      "speed does not fall as load rises, so no maximum can be read off"),
    QT_TRANSLATE_NOOP("Reasons",
                      "speed does not fall as load rises, so no load belongs to a speed"),
    QT_TRANSLATE_NOOP("Reasons",
                      "speed does not fall as load rises, so no test can be planned on the line"),
    QT_TRANSLATE_NOOP("Reasons", "the line starts under the MVT"),
    QT_TRANSLATE_NOOP("Reasons", "two points make a line without intervals, so no change can be "
                                 "judged: it needs a third load"),
    QT_TRANSLATE_NOOP("Reasons", "a trend needs three sessions that cover the load"),
    QT_TRANSLATE_NOOP("Reasons", "a trend needs sessions on more than one day"),
    QT_TRANSLATE_NOOP("Reasons", "no session of this lift"),
    QT_TRANSLATE_NOOP("Reasons", "no athlete has a session of this lift"),
    QT_TRANSLATE_NOOP("Reasons", "the baseline is none of the sessions"),
    QT_TRANSLATE_NOOP("Reasons", "one session is not compared with itself"),
    QT_TRANSLATE_NOOP("Reasons", "a slope is not certain enough to bound the change"),
    QT_TRANSLATE_NOOP("Reasons", "no repeat test of this lift is marked as one"),
    QT_TRANSLATE_NOOP("Reasons", "one repeat test is too few: noise needs two or more"),
    QT_TRANSLATE_NOOP("Reasons", "the session has no body mass"),
    QT_TRANSLATE_NOOP("Reasons", "unknown formula"),
    QT_TRANSLATE_NOOP("Reasons", "not tested"),
    QT_TRANSLATE_NOOP("Reasons", "no session shows the scatter of this athlete's points: it needs "
                                 "three loads"),
    QT_TRANSLATE_NOOP("Reasons", "there is no 1RM and no check load to judge a test by: set a "
                                 "check load"),
    QT_TRANSLATE_NOOP("Reasons", "no load can be built under that ceiling"),
    QT_TRANSLATE_NOOP("Reasons", "no day has a session of this lift on each of the two devices, "
                                 "with the same loads"),
    QT_TRANSLATE_NOOP("Reasons", "the sessions hold too few loads to borrow from: two of them need "
                                 "two loads, and points must scatter about the lines"),
};

QString said(const std::string& english) {
    return QCoreApplication::translate("Reasons", english.c_str());
}

QString counted(const char* one, const char* many, double count) {
    return count == 1 ? Reasons::tr(one) : Reasons::tr(many).arg(count);
}

/// Reasons of the same kind with one text each, by their figures; empty for any other.
QString withFigures(const NoAnswer& why) {
    using Why = NoAnswer::Why;
    const auto& f = why.figures;
    const auto speed = [&](std::size_t i) { return number(f[i], 2); };
    if (why.why == Why::ThresholdAboveV0 && f.size() == 2)
        return Reasons::tr("the line starts at V0 = %1 m/s, not above the MVT of %2 m/s")
            .arg(speed(0), speed(1));
    if (why.why == Why::SpeedNotReached && f.size() == 2)
        return Reasons::tr("the line starts at V0 = %1 m/s: %2 m/s is not reached at any load")
            .arg(speed(0), speed(1));
    if (why.why == Why::OneLoad && f.size() == 1)
        return Reasons::tr("every point is at %1 kg: a line needs two loads").arg(loadNumber(f[0]));
    if (why.why == Why::BeyondLoads && f.size() == 1)
        return Reasons::tr("%1 kg lies beyond the loads that both sessions cover")
            .arg(loadNumber(f[0]));
    if (why.why == Why::TooFewLoads && f.size() == 1)
        return Reasons::tr("fewer than two loads can be built up to %1 kg").arg(loadNumber(f[0]));
    if (why.why == Why::TooFewSets && f.size() == 1)
        return counted(QT_TRANSLATE_NOOP("Reasons", "1 set seen by both devices: agreement needs "
                                                    "three or more"),
                       QT_TRANSLATE_NOOP("Reasons", "%1 sets seen by both devices: agreement needs "
                                                    "three or more"),
                       f[0]);
    if (why.why == Why::TooFewSessions && f.size() == 1)
        return counted(QT_TRANSLATE_NOOP("Reasons", "a history to borrow from needs three sessions "
                                                    "of the lift; there is 1 session"),
                       QT_TRANSLATE_NOOP("Reasons", "a history to borrow from needs three sessions "
                                                    "of the lift; there are %1 sessions"),
                       f[0]);
    if (why.why == Why::TooFewSessions && f.size() == 2)
        return Reasons::tr("a squad's relation needs sessions with a measured 1RM of at least "
                           "three athletes and six points; there are %1 and %2")
            .arg(counted(QT_TRANSLATE_NOOP("Reasons", "1 athlete"),
                         QT_TRANSLATE_NOOP("Reasons", "%1 athletes"), f[0]),
                 counted(QT_TRANSLATE_NOOP("Reasons", "1 point"),
                         QT_TRANSLATE_NOOP("Reasons", "%1 points"), f[1]));
    return {};
}

} // namespace

QString noAnswerClause(const NoAnswer& why) {
    const QString about = QString::fromStdString(why.about);
    for (const auto& [side, word] :
         {std::pair{"left ", Reasons::tr("left")}, std::pair{"right ", Reasons::tr("right")}})
        if (why.reason.starts_with(side)) {
            NoAnswer one = why;
            one.reason.erase(0, std::string(side).size());
            return word + u' ' + noAnswerClause(one);
        }
    if (why.why == NoAnswer::Why::NotPossible && !about.isEmpty())
        return Reasons::tr("not possible: %1").arg(about);
    if (why.why == NoAnswer::Why::NoSuchSession && !about.isEmpty())
        return Reasons::tr("no session of this lift in %1").arg(about);
    if (const std::string before = why.about + ": ";
        !about.isEmpty() && why.reason.starts_with(before)) {
        NoAnswer inner = why;
        inner.about.clear();
        inner.reason.erase(0, before.size());
        return about + QStringLiteral(": ") + noAnswerClause(inner);
    }
    const QString words = withFigures(why);
    return words.isEmpty() ? said(why.reason) : words;
}

} // namespace slopebook::ui
