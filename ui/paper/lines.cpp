// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/lines.h"

#include "ui/words/readable.h"

#include <QFontMetricsF>
#include <QRegularExpression>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace slopebook::ui::page {

namespace {

QString withBlanks(QString line) {
    static const QRegularExpression mass(QStringLiteral("(?<=\\d)\u00a0(?=(kg|lb)\\b)"));
    return line.replace(mass, QStringLiteral(" "));
}

} // namespace

// Heights of a font are the same whatever device it is painted on.
double lineHeight(const QFont& font) {
    return std::ceil(10 * QFontMetricsF(font).height()) / 10;
}

QString unbroken(const QString& text, Whole whole) {
    static const QRegularExpression mass(QStringLiteral("(?<=\\d) (?=(kg|lb)\\b)"));
    QString kept = whole == Whole::Figures ? withWholeFigures(text) : withWholeUnits(text);
    return kept.replace(mass, QStringLiteral("\u00a0"));
}

QStringList wrapped(const QString& text, const QFont& font, double width, Whole whole) {
    QStringList lines;
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    for (const QString& paragraph : unbroken(text, whole).split(u'\n')) {
        QTextLayout layout(paragraph, font);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(std::max(width, 1.0));
            lines << withBlanks(
                asWritten(paragraph.mid(line.textStart(), line.textLength()).trimmed()));
        }
        layout.endLayout();
    }
    return lines;
}

void paintLine(QPainter& painter, const QFont& font, const QColor& ink, const QRectF& box,
               Qt::Alignment alignment, const QString& text) {
    painter.setFont(font);
    painter.setPen(ink);
    const QFontMetricsF metrics(font);
    double x = box.left();
    if (alignment & Qt::AlignRight)
        x = box.right() - metrics.horizontalAdvance(text);
    painter.drawText(QPointF(x, box.top() + metrics.ascent()), text);
}

} // namespace slopebook::ui::page
