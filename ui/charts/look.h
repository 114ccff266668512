// SPDX-License-Identifier: GPL-3.0-or-later
// How charts look: every colour, pen, dash, marker and drawing order, for light, dark and paper.
#pragma once

#include <QColor>
#include <QPalette>
#include <QPen>
#include <QScatterSeries>

namespace slopebook::ui::look {

/// What a chart is drawn on.
struct Ground {
    QColor paper, ink, quiet, grid; ///< background; text; second-rank text and axes; grid lines
    bool dark = false;
    bool print = false;
    friend bool operator==(const Ground&, const Ground&) = default;
};

/// Where the keys go: a frame in the desktop's colour of choice.
void paintFocus(QPainter& painter, const QRect& area, const QPalette& palette);

/// The desktop's own colours.
Ground screenGround(const QPalette& palette);
/// Black on white, whatever the desktop looks like.
Ground paperGround();

/// Who a line belongs to. A session among others is told by its place in time; the two compared
/// ones are told apart by the strongest contrast there is.
struct Role {
    enum class Kind { Session, Earlier, Later };
    Kind kind = Kind::Session;
    int index = 0; ///< by date, from 0 (Session)
    int count = 1; ///< sessions on the chart (Session)
    friend bool operator==(const Role&, const Role&) = default;
};

QColor colour(const Role& role, const Ground& ground);
/// The line within the loads that were lifted: solid for the newest, each its own dash.
QPen linePen(const Role& role, const Ground& ground);
/// The line beyond them: thinner and dotted.
QPen beyondPen(const Role& role, const Ground& ground);
/// Translucent, so that what lies under it is seen.
QBrush bandBrush(const Role& role, const Ground& ground);
QScatterSeries::MarkerShape marker(const Role& role);
double markerSize(const Role& role);
/// The marker as an outline around (0, 0), for labels and keys.
QPainterPath markerPath(QScatterSeries::MarkerShape shape, double size);
/// The same as Qt Charts draws it in a scatter series.
QPainterPath seriesMarkerPath(QScatterSeries::MarkerShape shape, double size);

// The chart of a change has one colour of its own.
QColor changeColour(const Ground& ground);
QPen changePen(const Ground& ground);
QPen changeBeyondPen(const Ground& ground);
QBrush changeIntervalBrush(const Ground& ground);
QPen changeBandPen(const Ground& ground);
QPen readingPen(const Ground& ground);
QBrush smallestBrush(const Ground& ground);
QPen smallestPen(const Ground& ground);
/// Hatching, painted as lines so that it stays crisp on paper. It means one thing: beyond what was
/// measured, or not comparable.
void hatch(QPainter& painter, const QRectF& area, const Ground& ground);
QPen zeroPen(const Ground& ground);

QPen thresholdPen(const Ground& ground);
QPen checkLoadPen(const Ground& ground);
QPen highlightPen(const Ground& ground);

// Drawing order. Qt Charts draws grid, axes and series at 2, 3 and 4.
constexpr double underSeries = 3.5;
constexpr double stillSeries = 3.8;
constexpr double overSeries = 20;

} // namespace slopebook::ui::look
