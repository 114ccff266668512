// SPDX-License-Identifier: GPL-3.0-or-later
// What the style of the program paints, piece by piece.
#pragma once

#include <QRect>

class QPainter;
class QStyleOption;
class QStyleOptionComboBox;
class QStyleOptionSlider;
class QStyleOptionSpinBox;

namespace slopebook::ui::desk {

constexpr int tableRule = 2; ///< px, above and below a table

/// A hair frame; the one that Enter presses in ink, and twice as thick.
void paintButton(QPainter& painter, const QStyleOption& option);
/// Words alone, until the mouse or a press is on it.
void paintFlatButton(QPainter& painter, const QStyleOption& option);
/// Where the keys go.
void paintFocus(QPainter& painter, const QStyleOption& option);
void paintField(QPainter& painter, const QStyleOption& option);
/// Of a table the rule above, and below where it ends there; else a hair frame.
void paintFrame(QPainter& painter, const QStyleOption& option, bool table, bool end);
void paintUnder(QPainter& painter, const QStyleOption& option);
/// The chosen row lies between two rules.
void paintRow(QPainter& painter, const QStyleOption& option, bool table);
void paintBox(QPainter& painter, const QStyleOption& option);
/// Which way a column is in order: up where it rises, down where it falls.
void paintOrder(QPainter& painter, const QStyleOption& option);
void paintHeading(QPainter& painter, const QStyleOption& option);
void paintTab(QPainter& painter, const QStyleOption& option);
void paintHandle(QPainter& painter, const QStyleOption& option);
/// A word with a caret over a hair rule.
void paintChoice(QPainter& painter, const QStyleOptionComboBox& option, const QRect& arrow);
void paintSpin(QPainter& painter, const QStyleOptionSpinBox& option, const QRect& up,
               const QRect& down);
void paintScrollBar(QPainter& painter, const QStyleOptionSlider& option, const QRect& slider);

} // namespace slopebook::ui::desk
