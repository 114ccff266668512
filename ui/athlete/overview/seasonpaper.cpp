// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/seasonpaper.h"

#include <algorithm>

namespace slopebook::ui {

namespace {

constexpr double leastText = 6, listText = 7.5, listTitle = 9, nameText = 10, seasonHeadline = 14;

} // namespace

page::Fitting seasonFitting(std::size_t measures) {
    return {.most = measures > measuresAPage ? 2U : 1U, .ways = 2};
}

QFont sized(const page::Flow& flow, double size, bool bold) {
    return page::pageFont(std::max(leastText, size * flow.closeness().type), bold);
}

QFont sizedHeadline(const page::Flow& flow) {
    return page::headlineFont(seasonHeadline * flow.closeness().type);
}

void addList(page::Flow& flow, const QString& title, const QStringList& lines) {
    if (lines.isEmpty())
        return;
    flow.title(title, sized(flow, listTitle, true), 5);
    for (const QString& line : lines)
        flow.text(line, sized(flow, listText), 1);
}

void beginNotes(page::Flow& flow, int way, const QString& name) {
    if (flow.closeness().apart != way)
        return;
    flow.beginPage();
    flow.title(name, sized(flow, nameText, true), 0);
}

} // namespace slopebook::ui
