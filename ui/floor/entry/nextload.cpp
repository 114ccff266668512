// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/nextload.h"

#include "core/answers/turnwords.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <algorithm>

namespace slopebook::ui {

QString nextText(const SessionView& view, LoadUnit unit) {
    if (view.notLifted)
        return said(view.next ? answers::nextUnder(*view.next, *view.notLifted)
                              : answers::noNextNotLifted(*view.notLifted),
                    unit);
    if (view.overCeiling)
        return said(answers::noNextCeiling(view.ceiling->load), unit);
    if (view.nextHeldBack)
        return said(answers::noNextEstimate(), unit);
    if (!view.next)
        return {};
    const QString load = massWithUnit(*view.next, unit);
    return view.nextIsMaximum ? EntryPage::tr("Next load %1,\na maximum attempt").arg(load)
                              : EntryPage::tr("Next load %1").arg(load);
}

QString nextWhy(const SessionView& view) {
    if (!view.next)
        return {};
    QStringList why;
    if (const auto last = view.loadsLast(); !view.notLifted)
        why << (std::ranges::find(last, *view.next) != last.end()
                    ? EntryPage::tr("as last time")
                    : EntryPage::tr("the same rise again"));
    if (view.nextShare && view.nextShareWithin)
        why << EntryPage::tr("%1 % (%2) of the estimated 1RM")
                   .arg(number(*view.nextShare, 0), rangeText(*view.nextShareWithin, 0));
    else if (view.nextShare)
        why << EntryPage::tr("%1 % of the estimated 1RM").arg(number(*view.nextShare, 0));
    return why.join(QStringLiteral("; "));
}

} // namespace slopebook::ui
