// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/batteryprint.h"

#include "core/answers/batterysummary.h"
#include "core/answers/method.h"
#include "ui/charts/forestchart.h"
#include "ui/parts/cautions.h"
#include "ui/words/batterywords.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QCoreApplication>

namespace slopebook::ui {

namespace {

constexpr double batterySmallSize = 7, batteryTextSize = 8, batteryLabelWidth = 74;

struct PrintWords {
    Q_DECLARE_TR_FUNCTIONS(BatteryPrint)
};

QString batteryTitle(const questions::BatteryAnswer& answer) {
    return PrintWords::tr("%1: all tests, %2 to %3")
        .arg(text(answer.athlete.value.name), periodText(answer.battery.fromLabel),
             periodText(answer.battery.toLabel));
}

page::Cell strong(const QString& text) {
    return {.text = text, .bold = true};
}

/// "not possible" without its reason, which stands whole under "What was missing".
QString shortly(const QString& value) {
    return value.section(QLatin1Char(':'), 0, 0);
}

void addTests(page::Flow& flow, const questions::BatteryAnswer& answer) {
    flow.heading(PrintWords::tr("Tests"));
    std::vector<std::vector<page::Cell>> rows;
    for (const page::BatteryRow& r : page::batteryRows(answer.battery))
        rows.push_back({{r.test},
                        {shortly(r.before)},
                        {shortly(r.after)},
                        {r.change},
                        {r.percent},
                        {r.interval},
                        {r.error},
                        {.text = r.reading, .bold = r.changed}}); // bold: this is so
    const double w = flow.width() / 512;
    flow.table({{126 * w},
                {52 * w, Qt::AlignRight},
                {52 * w, Qt::AlignRight},
                {42 * w, Qt::AlignRight},
                {34 * w, Qt::AlignRight},
                {82 * w, Qt::AlignRight},
                {30 * w, Qt::AlignRight},
                {94 * w}},
               {strong(PrintWords::tr("Test (unit)")), strong(PrintWords::tr("Before")),
                strong(PrintWords::tr("After")), strong(PrintWords::tr("Change")),
                strong(PrintWords::tr("%")),
                strong(PrintWords::tr("%1 interval").arg(levelText(answer.battery.level))),
                strong(PrintWords::tr("TE")), strong(PrintWords::tr("Reading"))},
               rows, page::pageFont(batteryTextSize));
}

void addForest(page::Flow& flow, const questions::BatteryAnswer& answer, LoadUnit unit) {
    const auto& rows = answer.battery.forest;
    if (rows.empty())
        return;
    const double size = 7;
    // A very long list goes down to tighter rows before it takes a page of its own.
    const double height = std::min(
        forestHeight(rows, size) * std::min(1.0, flow.closeness().picture), flow.room() * 0.8);
    const double width = flow.width();
    flow.add({.height = height,
              .before = 8,
              .paint = [rows, unit, width, height, size](QPainter& painter, const QPointF& at) {
                  painter.setFont(page::pageFont(size));
                  paintForest(painter, QRectF(at, QSizeF(width, height)), rows, unit,
                              look::paperGround(), size);
              }});
}

void addLists(page::Flow& flow, const questions::BatteryAnswer& answer, LoadUnit unit) {
    const auto table = [&](const QString& heading, const QStringList& head,
                           const std::vector<double>& widths,
                           const std::vector<QStringList>& lines) {
        if (lines.empty())
            return;
        flow.heading(heading);
        std::vector<page::Column> columns;
        for (const double width : widths)
            columns.push_back({flow.width() * width});
        std::vector<page::Cell> headCells;
        for (const QString& cell : head)
            headCells.push_back(strong(cell));
        std::vector<std::vector<page::Cell>> rows;
        for (const QStringList& line : lines) {
            rows.emplace_back();
            for (const QString& cell : line)
                rows.back().push_back({cell});
        }
        flow.table(columns, headCells, rows, page::pageFont(batteryTextSize));
    };
    table(PrintWords::tr("Left and right: the better side, and by how much of it"),
          {PrintWords::tr("Test"), periodText(answer.battery.fromLabel),
           periodText(answer.battery.toLabel),
           PrintWords::tr("Change of the difference (%1 interval)")
               .arg(levelText(answer.battery.level))},
          {0.25, 0.17, 0.17, 0.41}, page::leftRightRows(answer.battery));
    table(PrintWords::tr("What was missing"),
          {PrintWords::tr("Day"), PrintWords::tr("Side"), PrintWords::tr("Test or lift"),
           PrintWords::tr("Why")},
          {0.15, 0.2, 0.35, 0.3}, page::missingRows(answer.battery, unit));
    const QStringList lifts = page::liftSentences(answer, unit);
    if (lifts.isEmpty())
        return;
    flow.heading(PrintWords::tr("Lifts"));
    for (const QString& line : lifts)
        flow.text(line, page::pageFont(9), 2);
}

void addBatteryRest(page::Flow& flow, const questions::BatteryAnswer& answer, LoadUnit unit) {
    std::vector<std::vector<page::Cell>> rows;
    const auto add = [&](const QString& title, const QStringList& lines) {
        for (qsizetype i = 0; i < lines.size(); ++i)
            rows.push_back({strong(i == 0 ? title : QString()), {lines[i]}});
    };
    add(PrintWords::tr("To beware of"), said(answers::batteryRemarks(answer.battery), unit));
    add(PrintWords::tr("Computed"),
        {said(answers::batteryMethod()), said(answers::intervalsOf(answer.battery.allAtOnce))});
    add(PrintWords::tr("Sources"), said(answers::batterySources(answer.battery), unit));
    add(PrintWords::tr("Caution"), {fullCautions()});
    flow.table({{batteryLabelWidth}, {flow.width() - batteryLabelWidth}}, {}, rows,
               page::pageFont(batterySmallSize), 7);
}

void fillBattery(page::Flow& flow, const questions::BatteryAnswer& answer, LoadUnit unit) {
    flow.text(text(answer.athlete.value.name), page::pageFont(10, true));
    flow.text(PrintWords::tr("All tests from %1 to %2")
                  .arg(periodText(answer.battery.fromLabel), periodText(answer.battery.toLabel)),
              page::pageFont(9), 1);
    flow.leading(said(answers::batterySummary(answer.battery), unit), page::headlineFont(11.5), 6);
    addForest(flow, answer, unit);
    if (!answer.battery.tests.empty())
        addTests(flow, answer);
    addLists(flow, answer, unit);
    addBatteryRest(flow, answer, unit);
}

} // namespace

page::Print batteryPrint(const questions::BatteryAnswer& answer, LoadUnit unit) {
    return {.title = batteryTitle(answer),
            .foot = batteryTitle(answer),
            .fill = [answer, unit](page::Flow& flow) { fillBattery(flow, answer, unit); }};
}

void writeBatteryPdf(const questions::BatteryAnswer& answer, LoadUnit unit, page::Paper paper,
                     const log::Destination& to) {
    page::writePagesPdf(batteryPrint(answer, unit), paper, to);
}

} // namespace slopebook::ui
