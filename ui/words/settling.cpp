// SPDX-License-Identifier: GPL-3.0-or-later
// What would settle an unclear change, in the desktop's language; its English for commands is that
// of core/answers.
#include "ui/words/wording.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using answers::Settling;
using answers::Unsettled;

struct SettlingWords {
    Q_DECLARE_TR_FUNCTIONS(Settling)
};

QString subject(const Unsettled& u, LoadUnit unit) {
    if (u.loads.empty())
        return SettlingWords::tr("Estimated 1RM");
    QStringList loads;
    for (const Mass load : u.loads)
        loads << loadNumber(kilograms(load), unit);
    return SettlingWords::tr("%1 %2", "loads and their unit")
        .arg(loads.join(u", "_s), unitName(unit));
}

QString percent(const stats::Interval& chance) {
    const QString low = number(100 * chance.low, 0), high = number(100 * chance.high, 0);
    return low == high ? SettlingWords::tr("%1 %").arg(low)
                       : SettlingWords::tr("%1 to %2 %").arg(low, high);
}

QString remedy(const Unsettled& u) {
    const int times = u.settling.times;
    switch (u.settling.by) {
    case Settling::By::SameDay:
        return SettlingWords::tr("The later ladder lifted %1 times on one day would settle it.")
            .arg(times);
    case Settling::By::Later:
        return SettlingWords::tr("The mean of %1 later tests on separate days would settle it.")
            .arg(times);
    case Settling::By::BothSides:
        return SettlingWords::tr("The earlier test was done once: from now on %1 tests before and "
                                 "%1 after would settle such a change.")
            .arg(times);
    case Settling::By::OneMore:
        return SettlingWords::tr("The change may lie between none and that: do one more later "
                                 "test.");
    case Settling::By::Nothing:
        break;
    }
    return SettlingWords::tr("Not even %1 tests on each side would settle it.").arg(u.most);
}

} // namespace

QString settlingText(const Unsettled& u, LoadUnit unit) {
    const QString who = subject(u, unit);
    if (!(u.smallest > 0))
        return SettlingWords::tr("%1: no smallest change that matters is known, so nothing can be "
                                 "called held. Set one with the lift.")
            .arg(who);
    const QString change = u.loads.empty()
                               ? SettlingWords::tr("%1 %2", "a mass and its unit")
                                     .arg(number(inUnit(u.smallest, unit), 1), unitName(unit))
                               : SettlingWords::tr("%1 m/s").arg(number(u.smallest, 3));
    return SettlingWords::tr("%1: a true change of %2 is seen with a chance of %3, none is called "
                             "held with %4. %5")
        .arg(who, change, percent(u.chance), percent(u.chanceHeld), remedy(u));
}

} // namespace slopebook::ui
