// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/nextload.h"

#include "core/answers/againstlast.h"
#include "core/answers/turnwords.h"
#include "core/questions/liftcontext.h"
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

namespace {
constexpr double wholeMax = 99.5; // %: shown as 100
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
        why << (view.nextShareWithin->high >= wholeMax
                    ? EntryPage::tr("%1 % (%2) of the estimated 1RM: it may be a maximum")
                    : EntryPage::tr("%1 % (%2) of the estimated 1RM"))
                   .arg(number(*view.nextShare, 0), rangeText(*view.nextShareWithin, 0));
    else if (view.nextShare)
        why << EntryPage::tr("%1 % of the estimated 1RM").arg(number(*view.nextShare, 0));
    const QString from = why.join(QStringLiteral("; "));
    if (!view.expected)
        return from;
    const auto& [speed, within] = *view.expected;
    const QString expected =
        within.low > 0
            ? EntryPage::tr("expected: %1 m/s (%2)").arg(number(speed, 2), rangeText(within, 2))
            : EntryPage::tr("expected: %1 m/s (up to %2)")
                  .arg(number(speed, 2), number(within.high, 2));
    return from.isEmpty() ? expected : from + u'\n' + expected;
}

QString againstLastText(const SessionView& view, const Logbook& logbook) {
    if (!view.session || !view.last || !view.profile || !*view.profile ||
        !(*view.profile)->line.hasInference())
        return {};
    const auto made = questions::comparisonOf(logbook.log(), logbook.context(view.about.lift.id),
                                              view.about, *view.last, *view.session);
    return made ? said(answers::againstLastWords(*made), logbook.loadUnit()) : QString();
}

} // namespace slopebook::ui
