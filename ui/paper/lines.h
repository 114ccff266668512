// SPDX-License-Identifier: GPL-3.0-or-later
// Lines of text as paper sets them, in points.
#pragma once

#include <QFont>
#include <QPainter>
#include <QStringList>

namespace slopebook::ui::page {

/// What a line is not broken within: a unit ("m/s", "± 5", "60 kg"), or a speed and its unit too.
enum class Whole { Units, Figures };

/// Blanks stand where a line may be broken, and there alone.
QString unbroken(const QString& text, Whole whole = Whole::Units);

double lineHeight(const QFont& font);
/// Text broken into lines of at most width; a word that is wider is broken too.
QStringList wrapped(const QString& text, const QFont& font, double width,
                    Whole whole = Whole::Units);
void paintLine(QPainter& painter, const QFont& font, const QColor& ink, const QRectF& box,
               Qt::Alignment alignment, const QString& text);

} // namespace slopebook::ui::page
