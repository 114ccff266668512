// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/printedparts.h"

#include "core/answers/method.h"
#include "ui/charts/changefigure.h"
#include "ui/charts/linefigure.h"
#include "ui/charts/maxchart.h"
#include "ui/paper/comparisonrows.h"
#include "ui/paper/pagewords.h"
#include "ui/parts/cautions.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::page {

namespace {

using answers::Comparison;

constexpr double smallSize = 7, textSize = 8, chartTextSize = 7, labelWidth = 74, figureGap = 6,
                 maxShare = 0.62; // of the page: two whiskers need no more

void addHead(Flow& flow, const Comparison& c, const PageHeader& h) {
    flow.text(titleText(h), pageFont(10, true));
    flow.text(Page::tr("Change from %1 to %2").arg(sideText(c, false), sideText(c, true)),
              pageFont(9), 1);
    flow.leading(said(c.headline.leads, h.unit), headlineFont(12.5), 6);
    if (!c.headline.under.empty())
        flow.text(said(c.headline.under, h.unit), pageFont(9), 3);
}

void addDays(Flow& flow, const Comparison& c, const PageHeader& h) {
    const double label = labelWidth, each = (flow.width() - label) / 2;
    std::vector<std::vector<Cell>> rows;
    for (const DayRow& row : dayRows(c, h))
        rows.push_back({{.text = row.label, .quiet = true}, {row.from}, {row.to}});
    // Of a block the day that went heaviest, to show.
    const bool several = c.ofSeveral();
    flow.table({{label}, {each}, {each}},
               {{},
                {.text = (several ? Page::tr("Heaviest day of the earlier (■, dashed): %1")
                                  : Page::tr("Earlier (■, dashed): %1"))
                             .arg(sessionText(c.from.session)),
                 .bold = true},
                {.text = (several ? Page::tr("Heaviest day of the later (●, solid): %1")
                                  : Page::tr("Later (●, solid): %1"))
                             .arg(sessionText(c.to.session)),
                 .bold = true}},
               rows, pageFont(textSize), 6);
}

template <class Figure, class Data>
Block figureBlock(const Data& data, double width, double height) {
    return {.height = height,
            .before = figureGap,
            .paint = [data, width, height](QPainter& p, const QPointF& at) {
                Figure figure;
                figure.setGround(look::paperGround());
                figure.setTextSize(chartTextSize);
                figure.setFont(pageFont(chartTextSize));
                figure.setData(data);
                figure.paintInto(p, QRectF(at, QSizeF(width, height)), {width, height});
            }};
}

void addByLoad(Flow& flow, const Comparison& c, const PageHeader& h) {
    flow.heading(Page::tr("By load: what the lines say, m/s"));
    const std::vector<LoadRow> loads = loadRows(c, h.unit);
    // The same at every load it is said once, and leaves readings their line.
    const bool once = std::ranges::all_of(
        loads, [&](const LoadRow& r) { return r.smallest == loads.front().smallest; });
    const QString level = levelText(c.settings.level);
    const auto head = [](const QString& text) { return Cell{.text = text, .bold = true}; };
    const double w = flow.width() / 512;
    std::vector<Column> columns{{44 * w},
                                {40 * w, Qt::AlignRight},
                                {40 * w, Qt::AlignRight},
                                {46 * w, Qt::AlignRight},
                                {84 * w, Qt::AlignRight},
                                {84 * w, Qt::AlignRight}};
    std::vector<Cell> heads{head(Page::tr("Load, %1").arg(unitName(h.unit))),
                            head(Page::tr("Before")), head(Page::tr("After")),
                            head(Page::tr("Change")),
                            head(Page::tr("%1, with noise and bend").arg(level)),
                            // It may exclude zero beside "unclear": nothing is read of it.
                            head((c.ofSeveral() ? Page::tr("%1, these days only (no reading)")
                                                : Page::tr("%1, these two days only (no reading)"))
                                     .arg(level))};
    if (!once) {
        columns.push_back({58 * w, Qt::AlignRight});
        heads.push_back(head(Page::tr("Smallest that matters")));
    }
    columns.push_back({(once ? 174 : 116) * w});
    heads.push_back(head(Page::tr("Reading")));
    std::vector<std::vector<Cell>> rows;
    for (const LoadRow& r : loads) {
        rows.push_back({{.text = r.load, .bold = true},
                        {r.from},
                        {r.to},
                        {r.change},
                        {r.readingInterval},
                        {r.twoDays}});
        if (!once)
            rows.back().push_back({r.smallest});
        rows.back().push_back({.text = r.reading, .bold = r.clear});
    }
    flow.table(columns, heads, rows, pageFont(textSize));
    if (once)
        flow.text(Page::tr("Smallest that matters: %1 m/s").arg(loads.front().smallest),
                  pageFont(smallSize), 1);
    const QStringList marks = said(answers::markWords(c), h.unit);
    if (!marks.isEmpty())
        flow.text(marks.join("  "_L1), pageFont(smallSize), 1);
}

/// As if straight and with the allowance, on one scale.
void addMaxChange(Flow& flow, const Comparison& c, const PageHeader& h) {
    const charts::MaxChangeData data = charts::maxChangeOf(c, h.unit);
    const double width = maxShare * flow.width();
    const double height = charts::maxChangeHeight(data, width, chartTextSize);
    if (data.rows.empty())
        return;
    flow.add({.height = height,
              .before = 3,
              .paint = [data, width, height](QPainter& p, const QPointF& at) {
                  charts::paintMaxChange(p, QRectF(at, QSizeF(width, height)), data,
                                         look::paperGround(), chartTextSize);
              }});
}

void addOneRm(Flow& flow, const Comparison& c, const PageHeader& h, bool drawn) {
    flow.heading(Page::tr("1RM, %1").arg(unitName(h.unit)));
    std::vector<std::vector<Cell>> rows;
    for (const OneRmRow& r : oneRmRows(c, h.unit))
        rows.push_back({{.text = r.label, .bold = r.strong},
                        {.text = r.from, .bold = r.strong, .quiet = r.fromQuiet},
                        {.text = r.to, .bold = r.strong, .quiet = r.toQuiet},
                        {.text = r.change, .bold = r.strong},
                        {.text = r.reading, .bold = r.clear}});
    if (!rows.empty()) {
        const auto head = [](const QString& text) { return Cell{.text = text, .bold = true}; };
        const double w = flow.width() / 512;
        flow.table({{170 * w},
                    {74 * w, Qt::AlignRight},
                    {74 * w, Qt::AlignRight},
                    {74 * w, Qt::AlignRight},
                    {120 * w}},
                   {{},
                    head(sideText(c, false)),
                    head(sideText(c, true)),
                    head(Page::tr("Change")),
                    head(Page::tr("Reading"))},
                   rows, pageFont(textSize));
    }
    if (drawn)
        addMaxChange(flow, c, h);
    for (const QString& line : said(answers::maxRemarks(c), h.unit))
        flow.text(line, pageFont(smallSize), 1);
}

/// As one paragraph, which takes less room than a row each.
void addTexts(std::vector<std::vector<Cell>>& rows, const QString& title,
              const QStringList& lines) {
    if (!lines.isEmpty())
        rows.push_back({{.text = title, .bold = true}, {lines.join(u' ')}});
}

void addFigureTables(Flow& flow, const Comparison& c, const PageHeader& h, bool drawn) {
    if (h.parts.byLoad && !c.at.empty())
        addByLoad(flow, c, h);
    if (h.parts.oneRm)
        addOneRm(flow, c, h, drawn);
}

void addComparisonNotes(Flow& flow, const Comparison& c, const PageHeader& h) {
    std::vector<std::vector<Cell>> rows;
    addTexts(rows, Page::tr("Unclear"), settlingLines(c, h.unit));
    addTexts(rows, Page::tr("To beware of"), remarks(c, h));
    if (h.parts.method)
        addTexts(rows, Page::tr("Computed"),
                 said(answers::methodWords(c, h.rule, massUnit(h.unit)), h.unit));
    addTexts(rows, Page::tr("Sources"), said(answers::sourceWords(c), h.unit));
    addTexts(rows, Page::tr("Caution"), {fullCautions()});
    flow.table({{labelWidth}, {flow.width() - labelWidth}}, {}, rows, pageFont(smallSize), 7);
}

void addRest(Flow& flow, const Comparison& c, const PageHeader& h, bool drawn) {
    addFigureTables(flow, c, h, drawn);
    addComparisonNotes(flow, c, h);
}

void addFigures(Flow& flow, const Comparison& c, const PageHeader& h, double height, bool beside) {
    const auto lines = [&](double w, double high) {
        return figureBlock<charts::LineFigure>(charts::linesOf(c, h.unit), w, high);
    };
    const auto change = [&](double w, double high) {
        return figureBlock<charts::ChangeFigure>(charts::changeOf(c, h.unit), w, high);
    };
    const double w = flow.width();
    if (!beside) {
        const double share = h.parts.lineChart && h.parts.changeChart ? 0.53 : 0.5;
        if (h.parts.lineChart)
            flow.add(lines(w, height * share));
        if (h.parts.changeChart)
            flow.add(change(w, height * (1 - share)));
        return;
    }
    const double left = w * 0.5, gap = 4;
    Block both = lines(left - gap, height);
    both.paint = [first = both.paint, second = change(w - left - gap, height).paint, left,
                  gap](QPainter& p, const QPointF& at) {
        first(p, at);
        second(p, at + QPointF(left + gap, 0));
    };
    flow.add(std::move(both));
}

} // namespace

void addComparison(Flow& flow, const Comparison& c, const PageHeader& h) {
    addHead(flow, c, h);
    addDays(flow, c, h);
    // Charts take the room that the rest leaves on one page: one above the other where both get a
    // good height, else side by side; where even that is too little, what is noted has a page of
    // its own, and they take what the figures leave on the first.
    constexpr double leastStacked = 285, mostStacked = 440, leastBeside = 125, mostBeside = 230;
    const auto left = [&](const auto& addAll) {
        Flow rest = flow;
        addAll(rest);
        return flow.room() - rest.height() - figureGap - 1;
    };
    const auto leftBeside = [&](bool drawn) {
        return left([&](Flow& rest) { addRest(rest, c, h, drawn); });
    };
    // The max both ways stands in the table as well: its drawing sends nothing to a next page.
    const double charts = h.parts.lineChart || h.parts.changeChart ? leastBeside : 0;
    const bool drawn = leftBeside(true) >= charts || leftBeside(false) < charts;
    const double room = leftBeside(drawn);
    const bool two = h.parts.lineChart && h.parts.changeChart;
    if (room - figureGap >= leastStacked || !two)
        addFigures(flow, c, h, std::clamp(room - figureGap, leastStacked, mostStacked), false);
    else if (room >= leastBeside)
        addFigures(flow, c, h, std::min(room, mostBeside), true);
    else if (const double first = left([&](Flow& rest) { addFigureTables(rest, c, h, drawn); });
             first >= leastBeside) {
        const bool stacked = first - figureGap >= leastStacked;
        addFigures(flow, c, h,
                   stacked ? std::min(first - figureGap, mostStacked) : std::min(first, mostBeside),
                   !stacked);
        addFigureTables(flow, c, h, drawn);
        flow.beginPage();
        flow.title(Page::tr("%1: notes on the comparison").arg(titleText(h)), pageFont(10, true),
                   0);
        addComparisonNotes(flow, c, h);
        return;
    } else
        addFigures(flow, c, h, leastStacked, false);
    addRest(flow, c, h, drawn);
}

} // namespace slopebook::ui::page
