// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/chartout.h"

#include "core/log/durable.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"

#include <QBuffer>
#include <QSvgGenerator>
#include <QWidget>

#include <cmath>

namespace slopebook::ui::charts {

QString figuresText(const FigureTable& table) {
    QStringList lines{table.headings.join(QLatin1Char('\t'))};
    for (const QStringList& row : table.rows)
        lines << row.join(QLatin1Char('\t'));
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

QString figuresSpoken(const FigureTable& table) {
    QStringList rows;
    for (const QStringList& row : table.rows) {
        QStringList cells;
        for (qsizetype i = 0; i < row.size(); ++i)
            if (!row[i].isEmpty())
                cells << table.headings.value(i) + QLatin1Char(' ') + row[i];
        rows << cells.join(QStringLiteral(", "));
    }
    return rows.join(QStringLiteral("; "));
}

void paintWidget(QWidget& chart, QPainter& painter, const QRectF& target, const QSizeF& points) {
    constexpr double pixels = 96.0 / 72;
    QPalette paper(Qt::white);
    paper.setColor(QPalette::Base, Qt::white);
    for (const auto role : {QPalette::Text, QPalette::WindowText})
        paper.setColor(role, Qt::black);
    chart.setPalette(paper);
    QFont font = chart.font();
    font.setPixelSize(static_cast<int>(std::lround(paperTextSize * pixels)));
    chart.setFont(font);
    chart.resize((points * pixels).toSize());
    painter.save();
    painter.translate(target.topLeft());
    painter.scale(target.width() / chart.width(), target.height() / chart.height());
    chart.render(&painter, QPoint(), QRegion(), QWidget::DrawChildren);
    painter.restore();
}

QImage picture(const ChartOut& chart, const QSizeF& points, double scale) {
    QImage image((points * scale).toSize(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    image.setDotsPerMeterX(static_cast<int>(std::lround(72 * scale / 0.0254)));
    image.setDotsPerMeterY(image.dotsPerMeterX());
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    chart.paintPaper(painter, QRectF(image.rect()), points);
    return image;
}

namespace {

template <class Fill>
void writeBytes(const log::Destination& to, const Fill& fill) {
    QBuffer out;
    out.open(QIODevice::WriteOnly);
    if (!fill(out))
        throw LogError(LogError::Kind::Unavailable,
                       questions::say("The picture %1 could not be painted. Nothing was changed.",
                                      to.file.string()));
    log::writeWhole(to, {out.data().constData(), static_cast<std::size_t>(out.data().size())});
}

} // namespace

void writePng(const ChartOut& chart, const log::Destination& to, double scale) {
    writeBytes(to, [&](QIODevice& out) {
        return picture(chart, chart.paperSize(), scale).save(&out, "PNG");
    });
}

void writeSvg(const ChartOut& chart, const log::Destination& to, const QString& title) {
    const QSizeF points = chart.paperSize();
    writeBytes(to, [&](QIODevice& out) {
        QSvgGenerator svg;
        svg.setOutputDevice(&out);
        svg.setResolution(72);
        svg.setSize(points.toSize());
        svg.setViewBox(QRectF(QPointF(), points));
        svg.setTitle(title);
        QPainter painter;
        if (!painter.begin(&svg))
            return false;
        painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
        chart.paintPaper(painter, QRectF(QPointF(), points), points);
        return painter.end();
    });
}

} // namespace slopebook::ui::charts
