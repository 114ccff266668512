// SPDX-License-Identifier: GPL-3.0-or-later
// The key of a figure: what each way of drawing means, in rows that wrap to the figure's width.
#pragma once

#include "ui/charts/look.h"

#include <QFont>
#include <QPainter>
#include <QString>

#include <functional>
#include <vector>

namespace slopebook::ui::charts {

struct KeyEntry {
    QString text;
    std::function<void(QPainter&, const QRectF&)>
        sample; ///< painted into a box of the text's height
};

/// What hatching over a comparison means.
KeyEntry notComparableKey(const look::Ground& ground);

/// What a grey ground means, wherever there is one: "too small to matter, ±0.050 m/s". amount: with
/// its unit; empty where each row has its own.
KeyEntry tooSmallKey(const look::Ground& ground, const QString& amount = {});
QString tooSmallText();

/// Height that the key takes at that width.
double keyHeight(const std::vector<KeyEntry>& entries, const QFont& font, double width);
void paintKey(QPainter& painter, const std::vector<KeyEntry>& entries, const QFont& font,
              const QRectF& box, const QColor& ink);

} // namespace slopebook::ui::charts
