// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of a chart that is painted by hand: where it stands, its scales, ticks and labels.
#pragma once

#include "ui/charts/look.h"
#include "ui/charts/scale.h"

#include <QPainter>
#include <QString>

namespace slopebook::ui::charts {

/// A font in pixels, so that no printer scales it twice.
/// A share of that size; on a screen never under what is read (12 px), where the text itself is
/// not: paper has its own sizes, all of them less.
double smallSize(double textSize, double scale);
QFont chartFont(double textSize, double scale = 1, bool bold = false);

struct PlotFrame {
    QRectF area{};           ///< within the axes
    double from = 0, to = 1; ///< along x
    Scale y{};
    look::Ground ground{};
    double textSize = 12;

    double x(double value) const;
    double yOf(double value) const;
    QPointF at(double xValue, double yValue) const { return {x(xValue), yOf(yValue)}; }

    /// Grid, labels and title of the y axis; the title is written along it, left of the labels;
    /// the shorter one where the axis is too low for it.
    void paintYAxis(QPainter& painter, const QString& title, const QString& shorter = {}) const;
    /// The same for an x axis with that step.
    void paintXAxis(QPainter& painter, const QString& title, double step) const;
    /// Grid lines and labels at the beginnings of months or years; x counts days from 1970-01-01.
    /// label: under the frame.
    void paintMonths(QPainter& painter, bool label) const;
    /// A whisker between two values of y, with stops where it ends inside the frame and arrows
    /// where that cuts it.
    void paintWhisker(QPainter& painter, double xValue, double low, double high) const;
    void paintOutline(QPainter& painter) const;
};

/// Room that the labels of a y axis and its title take.
double yAxisRoom(double textSize);
/// Room under a frame for labels, and for a title where there is one.
double xAxisRoom(double textSize, bool title);

} // namespace slopebook::ui::charts
