// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/page/comparisoncontent.h"

#include "ui/charts/changefigure.h"
#include "ui/charts/linefigure.h"
#include "ui/page/comparisonwords.h"
#include "ui/shell/cautions.h"
#include "ui/wording.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::page {

namespace {

using answers::Comparison;

struct Page {
    Q_DECLARE_TR_FUNCTIONS(Page)
};

constexpr double smallSize = 7, textSize = 8, chartTextSize = 7;

void addHead(Flow& flow, const Comparison& c, const PageHeader& h) {
    flow.text(titleText(h), pageFont(13, true));
    flow.text(Page::tr("Change from %1 to %2").arg(sessionName(c.from), sessionName(c.to)),
              pageFont(9), 1);
    flow.text(sentenceText(c, h.unit), pageFont(11, true), 6);
}

void addDays(Flow& flow, const Comparison& c, const PageHeader& h) {
    const double label = 64, each = (flow.width() - label) / 2;
    std::vector<std::vector<Cell>> rows;
    for (const DayRow& row : dayRows(c, h))
        rows.push_back({{.text = row.label, .quiet = true}, {row.from}, {row.to}});
    flow.table(
        {{label}, {each}, {each}},
        {{},
         {.text = Page::tr("Earlier (■, dashed): %1").arg(sessionName(c.from)), .bold = true},
         {.text = Page::tr("Later (●, solid): %1").arg(sessionName(c.to)), .bold = true}},
        rows, pageFont(textSize), 6);
}

template <class Figure, class Data>
Block figureBlock(const Data& data, double width, double height) {
    return {.height = height,
            .before = 6,
            .paint = [data, width, height](QPainter& p, const QPointF& at) {
                Figure figure;
                figure.setGround(look::paperGround());
                figure.setTextSize(chartTextSize);
                figure.setFont(pageFont(chartTextSize));
                figure.setData(data);
                figure.paintInto(p, QRectF(at, QSizeF(width, height)), {width, height});
            }};
}

charts::LineData lineData(const Comparison& c, const PageHeader& h) {
    using look::Role;
    charts::LineData data;
    data.unit = h.unit;
    data.sessions = {
        charts::entryOf(c.from, dateText(c.from.session.date), Role{.kind = Role::Kind::Earlier}),
        charts::entryOf(c.to, dateText(c.to.session.date), Role{.kind = Role::Kind::Later})};
    if (c.from.mvt)
        data.mvt = c.from.mvt->value;
    for (const Mass load : c.settings.checkLoads)
        data.checkLoads.push_back(kilograms(load));
    return data;
}

void addByLoad(Flow& flow, const Comparison& c, const PageHeader& h) {
    flow.heading(Page::tr("By load: what the lines say"));
    std::vector<std::vector<Cell>> rows;
    for (const LoadRow& r : loadRows(c, h.unit))
        rows.push_back({{.text = r.load, .bold = true},
                        {r.from},
                        {r.to},
                        {r.change},
                        {r.readingInterval},
                        {r.twoDays},
                        {r.smallest},
                        {.text = r.reading, .bold = true}});
    const QString level = levelText(c.settings.level);
    const double w = flow.width() / 512;
    flow.table({{58 * w},
                {46 * w, Qt::AlignRight},
                {46 * w, Qt::AlignRight},
                {52 * w, Qt::AlignRight},
                {92 * w, Qt::AlignRight},
                {92 * w, Qt::AlignRight},
                {50 * w, Qt::AlignRight},
                {76 * w}},
               {{.text = Page::tr("Load, %1").arg(unitName(h.unit)), .bold = true},
                {.text = Page::tr("Before, m/s"), .bold = true},
                {.text = Page::tr("After, m/s"), .bold = true},
                {.text = Page::tr("Change, m/s"), .bold = true},
                {.text = Page::tr("%1 with day-to-day noise").arg(level), .bold = true},
                {.text = Page::tr("%1, these two days only").arg(level), .bold = true},
                {.text = Page::tr("Smallest that matters"), .bold = true},
                {.text = Page::tr("Reading"), .bold = true}},
               rows, pageFont(textSize));
    const QStringList marks = loadMarks(c);
    if (!marks.isEmpty())
        flow.text(marks.join("  "_L1), pageFont(smallSize), 1);
}

void addOneRm(Flow& flow, const Comparison& c, const PageHeader& h) {
    flow.heading(Page::tr("1RM"));
    if (!c.from.oneRm && !c.to.oneRm && !c.from.session.measuredOneRm &&
        !c.to.session.measuredOneRm) {
        flow.text(noAnswerText(c.from.oneRm.why()), pageFont(textSize));
        return;
    }
    std::vector<std::vector<Cell>> rows;
    for (const OneRmRow& r : oneRmRows(c, h.unit))
        rows.push_back({{r.label},
                        {.text = r.from, .bold = r.strong, .quiet = r.fromQuiet},
                        {.text = r.to, .bold = r.strong, .quiet = r.toQuiet},
                        {.text = r.change, .bold = r.strong}});
    const double w = flow.width() / 512;
    flow.table({{150 * w},
                {100 * w, Qt::AlignRight},
                {100 * w, Qt::AlignRight},
                {162 * w, Qt::AlignRight}},
               {{.text = unitName(h.unit), .bold = true},
                {.text = dateText(c.from.session.date), .bold = true},
                {.text = dateText(c.to.session.date), .bold = true},
                {.text = Page::tr("Change"), .bold = true}},
               rows, pageFont(textSize));
    for (const QString& line : oneRmRemarks(c, h.unit))
        flow.text(line, pageFont(textSize), 1);
}

void addTexts(Flow& flow, const QString& title, const QStringList& lines) {
    if (lines.isEmpty())
        return;
    flow.heading(title);
    for (const QString& line : lines)
        flow.text(line, pageFont(smallSize), 1);
}

void addRest(Flow& flow, const Comparison& c, const PageHeader& h) {
    if (h.parts.byLoad && !c.at.empty())
        addByLoad(flow, c, h);
    if (h.parts.oneRm)
        addOneRm(flow, c, h);
    addTexts(flow, Page::tr("To beware of"), remarks(c, h));
    if (h.parts.method)
        addTexts(flow, Page::tr("How it was computed"), methodLines(c, h));
    addTexts(flow, Page::tr("Where the figures behind the readings come from"),
             sourceLines(c, h.unit));
    addTexts(flow, Page::tr("Caution"), {fullCautions()});
}

} // namespace

void addComparison(Flow& flow, const Comparison& c, const PageHeader& h) {
    addHead(flow, c, h);
    addDays(flow, c, h);
    // What the charts may take so that all stands on one page; beyond that they keep a good size.
    Flow rest = flow;
    addRest(rest, c, h);
    constexpr double least = 285, most = 430, lines = 0.53;
    const int charts = (h.parts.lineChart ? 1 : 0) + (h.parts.changeChart ? 1 : 0);
    const double left = flow.room() - rest.height() - 6 * charts - 1;
    const double whole = charts == 2 ? 1 : lines;
    double height = std::clamp(left, least * whole, most * whole) / whole;
    if (left < least * whole)
        height = 0.85 * most;
    if (h.parts.lineChart)
        flow.add(figureBlock<charts::LineFigure>(lineData(c, h), flow.width(), height * lines));
    if (h.parts.changeChart)
        flow.add(figureBlock<charts::ChangeFigure>(charts::changeOf(c, h.unit), flow.width(),
                                                   height * (1 - lines)));
    addRest(flow, c, h);
}

} // namespace slopebook::ui::page
