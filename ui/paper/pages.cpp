// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/pages.h"

#include "core/log/durable.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "ui/paper/fitting.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPdfWriter>
#include <QPrinter>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::page {

namespace {

struct Pages {
    Q_DECLARE_TR_FUNCTIONS(Pages)
};

void paintFoot(QPainter& painter, const Print& print, const QString& number, const QSizeF& paper) {
    const PageStyle& style = print.style;
    const QFont font = pageFont(style.footSize);
    const QFontMetricsF metrics(font);
    const double y = paper.height() - style.margin - 2;
    const double width = paper.width() - 2 * style.margin;
    const auto write = [&](const QString& words, double room) {
        painter.drawText(QPointF(style.margin, y),
                         metrics.elidedText(words, Qt::ElideMiddle, room));
    };
    painter.setFont(font);
    painter.setPen(QColor(0x55, 0x55, 0x55));
    if (style.numberInFoot) {
        write(Pages::tr("%1: %2").arg(print.foot, number), width);
        return;
    }
    const double wide = metrics.horizontalAdvance(number);
    write(print.foot, width - wide - 12);
    painter.drawText(QPointF(paper.width() - style.margin - wide, y), number);
}

} // namespace

int pageCount(const Print& print, const QSizeF& paper) {
    return static_cast<int>(fitted(print, paper).pages().size());
}

bool paintPages(QPagedPaintDevice& device, const Print& print) {
    // Our own margins are wider than what printers cannot reach.
    if (auto* printer = dynamic_cast<QPrinter*>(&device))
        printer->setFullPage(true);
    else
        device.setPageMargins(QMarginsF());
    const QSizeF paper = device.pageLayout().fullRect(QPageLayout::Point).size();
    const Flow flow = fitted(print, paper);
    const auto pages = flow.pages();
    QPainter painter;
    if (!painter.begin(&device))
        return false;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    bool good = true;
    for (std::size_t i = 0; i < pages.size() && good; ++i) {
        if (i > 0)
            good = device.newPage();
        painter.save();
        painter.scale(device.logicalDpiX() / 72.0, device.logicalDpiY() / 72.0);
        for (const auto& [top, block] : pages[i]) {
            painter.save();
            block->paint(painter, QPointF(flow.margin(), top));
            painter.restore();
        }
        paintFoot(painter, print, Pages::tr("page %1 of %2").arg(i + 1).arg(pages.size()), paper);
        painter.restore();
    }
    return painter.end() && good;
}

void writePagesPdf(const Print& print, Paper paper, const log::Destination& to) {
    QBuffer out;
    out.open(QIODevice::WriteOnly);
    {
        QPdfWriter pdf(&out);
        pdf.setPageSize(QPageSize(paper));
        pdf.setResolution(1200);
        pdf.setTitle(print.title);
        pdf.setCreator(u"Slopebook"_s);
        for (const Attached& file : print.attached)
            pdf.addFileAttachment(file.name, file.bytes, file.type);
        if (!paintPages(pdf, print))
            throw LogError(LogError::Kind::Unavailable,
                           questions::say("The PDF %1 could not be painted. Nothing was changed.",
                                          to.file.string()));
    }
    log::writeWhole(to, {out.data().constData(), static_cast<std::size_t>(out.data().size())});
}

} // namespace slopebook::ui::page
