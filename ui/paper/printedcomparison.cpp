// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/printedcomparison.h"

#include "core/questions/comparisontable.h"
#include "ui/paper/comparisonrows.h"
#include "ui/paper/printedparts.h"
#include "ui/words/format.h"

#include <QCoreApplication>

namespace slopebook::ui {

using namespace Qt::StringLiterals;

namespace {

struct Page {
    Q_DECLARE_TR_FUNCTIONS(Page)
};

QString deviceName(const std::vector<Stored<DeviceId, Device>>& devices,
                   std::optional<DeviceId> id) {
    for (const auto& device : devices)
        if (id && device.id == *id)
            return QString::fromStdString(device.value.name);
    return {};
}

} // namespace

PageHeader pageHeader(const log::Log& log, const questions::Background& about,
                      const answers::Comparison& comparison) {
    const auto devices = log.devices();
    const auto blocks = log.blocks();
    const auto day = [&](const LiftSession& session) {
        PageDay d;
        const SessionHead head = log.session(session.session).head.value;
        if (const auto block = questions::blockOn(blocks, session.date))
            d.block = QString::fromStdString(block->name);
        d.device = deviceName(devices, session.conditions.device);
        d.place = QString::fromStdString(session.conditions.place);
        d.note = QString::fromStdString(head.note);
        return d;
    };
    return {.athlete = QString::fromStdString(about.athlete.value.name),
            .lift = QString::fromStdString(about.lift.value.name),
            .kind = about.lift.value.kind,
            .rule = about.lift.value.rule,
            .from = day(comparison.from.session),
            .to = day(comparison.to.session)};
}

page::Print comparisonPrint(const answers::Comparison& comparison, const PageHeader& header) {
    return {.title = page::titleText(header),
            .foot = Page::tr("%1: %2 to %3")
                        .arg(page::titleText(header), page::sideText(comparison, false),
                             page::sideText(comparison, true)),
            .fill = [comparison, header](page::Flow& flow) {
                page::addComparison(flow, comparison, header);
            }};
}

void writeComparisonPdf(const answers::Comparison& comparison, const PageHeader& header,
                        const log::Destination& to) {
    page::Print print = comparisonPrint(comparison, header);
    const auto attach = [&](const QString& name, const std::string& csv) {
        print.attached.push_back(
            {.name = name, .type = u"text/csv"_s, .bytes = QByteArray::fromStdString(csv)});
    };
    attach(u"figures.csv"_s, questions::comparisonFiguresCsv(comparison));
    attach(u"points.csv"_s, questions::comparisonPointsCsv(comparison));
    page::writePagesPdf(print, header.paper, to);
}

} // namespace slopebook::ui
