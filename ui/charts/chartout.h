// SPDX-License-Identifier: GPL-3.0-or-later
// What goes out of every chart, the one place for it: its picture, its drawing, and its figures.
#pragma once

#include "core/log/target.h"

#include <QImage>
#include <QPainter>
#include <QStringList>

#include <vector>

class QWidget;

namespace slopebook::ui::charts {

/// The figures of a chart as they are written in a table.
struct FigureTable {
    QStringList headings{};
    std::vector<QStringList> rows{};
    friend bool operator==(const FigureTable&, const FigureTable&) = default;
};

/// Headings and rows, tabs between and a line each: as a spreadsheet takes them.
QString figuresText(const FigureTable& table);
/// The same to be read aloud: "Load, kg 40, Velocity, m/s 1.12; ...".
QString figuresSpoken(const FigureTable& table);

/// Implemented by every chart.
class ChartOut {
public:
    virtual ~ChartOut() = default;
    /// The text alternative of what is drawn.
    virtual FigureTable figures() const = 0;
    /// The same chart for paper, black on white, laid out afresh at size points.
    virtual void paintPaper(QPainter& painter, const QRectF& target,
                            const QSizeF& points) const = 0;
    /// The size of a picture of it, in points.
    virtual QSizeF paperSize() const { return {480, 300}; }
};

/// Height of ordinary text on paper, in points.
constexpr double paperTextSize = 8;

/// For a chart that is a widget painted for the screen alone: another of its kind, not shown, is
/// painted in the colours of paper.
void paintWidget(QWidget& chart, QPainter& painter, const QRectF& target, const QSizeF& points);

/// On white, scale pixels a point.
QImage picture(const ChartOut& chart, const QSizeF& points, double scale);
/// Whole or not at all. Throws LogError (core/log/target.h).
void writePng(const ChartOut& chart, const log::Destination& to, double scale = 3);
/// As vectors; text stays text. title: for programs that read it aloud. Throws likewise.
void writeSvg(const ChartOut& chart, const log::Destination& to, const QString& title);

} // namespace slopebook::ui::charts
