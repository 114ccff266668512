// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/page/comparisonpage.h"

#include "core/model/errors.h"
#include "ui/page/comparisoncontent.h"
#include "ui/page/comparisonwords.h"

#include <QCoreApplication>
#include <QFile>
#include <QFontMetricsF>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

struct Page {
    Q_DECLARE_TR_FUNCTIONS(Page)
};

constexpr double margin = 36, foot = 14, footSize = 7; // points

QString deviceName(const std::vector<Stored<DeviceId, Device>>& devices,
                   std::optional<DeviceId> id) {
    for (const auto& device : devices)
        if (id && device.id == *id)
            return QString::fromStdString(device.value.name);
    return {};
}

[[noreturn]] void fail(const std::filesystem::path& file, const QString& why) {
    throw LogError(LogError::Kind::Unavailable,
                   "The PDF " + file.string() + " could not be written: " + why.toStdString() +
                       ". Nothing is there that was not there before.");
}

} // namespace

PageHeader pageHeader(const log::Log& log, const Background& about,
                      const answers::Comparison& comparison) {
    const auto devices = log.devices();
    const auto blocks = log.blocks();
    const auto day = [&](const LiftSession& session) {
        PageDay d;
        const SessionHead head = log.session(session.session).head.value;
        if (const auto block = blockOn(blocks, session.date))
            d.block = QString::fromStdString(block->name);
        d.device = deviceName(devices, session.device);
        d.place = QString::fromStdString(head.place);
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

ComparisonPages::ComparisonPages(const answers::Comparison& comparison, const PageHeader& header,
                                 const QSizeF& paper)
    : m_flow(paper, margin, foot),
      m_foot(Page::tr("%1: %2 to %3")
                 .arg(page::titleText(header), page::sessionName(comparison.from),
                      page::sessionName(comparison.to))),
      m_paper(paper) {
    page::addComparison(m_flow, comparison, header);
    m_pages = m_flow.pages();
}

void ComparisonPages::paint(QPainter& painter, int page) const {
    for (const auto& [top, block] : m_pages.at(static_cast<std::size_t>(page))) {
        painter.save();
        block->paint(painter, QPointF(m_flow.margin(), top));
        painter.restore();
    }
    const QFont font = page::pageFont(footSize);
    const QFontMetricsF metrics(font);
    const QString number = Page::tr("page %1 of %2").arg(page + 1).arg(count());
    const double room = m_flow.width() - metrics.horizontalAdvance(number) - 12;
    const double y = m_paper.height() - margin - 2;
    painter.setFont(font);
    painter.setPen(QColor(0x55, 0x55, 0x55));
    painter.drawText(QPointF(margin, y), metrics.elidedText(m_foot, Qt::ElideMiddle, room));
    painter.drawText(QPointF(m_paper.width() - margin - metrics.horizontalAdvance(number), y),
                     number);
}

bool paintComparison(QPagedPaintDevice& device, const answers::Comparison& comparison,
                     const PageHeader& header) {
    // Our own margins are wider than what printers cannot reach.
    if (auto* printer = dynamic_cast<QPrinter*>(&device))
        printer->setFullPage(true);
    else
        device.setPageMargins(QMarginsF());
    const QSizeF paper = device.pageLayout().fullRect(QPageLayout::Point).size();
    const ComparisonPages pages(comparison, header, paper);
    QPainter painter;
    if (!painter.begin(&device))
        return false;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    bool good = true;
    for (int i = 0; i < pages.count() && good; ++i) {
        if (i > 0)
            good = device.newPage();
        painter.save();
        painter.scale(device.logicalDpiX() / 72.0, device.logicalDpiY() / 72.0);
        pages.paint(painter, i);
        painter.restore();
    }
    return painter.end() && good;
}

void writeComparisonPdf(const answers::Comparison& comparison, const PageHeader& header,
                        const std::filesystem::path& file) {
    QSaveFile out(QFile::decodeName(file.c_str()));
    if (!out.open(QIODevice::WriteOnly))
        fail(file, out.errorString());
    {
        QPdfWriter pdf(&out);
        pdf.setPageSize(QPageSize(header.paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
        pdf.setResolution(1200);
        pdf.setTitle(page::titleText(header));
        pdf.setCreator(u"Slopebook"_s);
        if (!paintComparison(pdf, comparison, header)) {
            out.cancelWriting();
            fail(file, Page::tr("it could not be painted"));
        }
    }
    if (!out.commit())
        fail(file, out.errorString());
}

} // namespace slopebook::ui
