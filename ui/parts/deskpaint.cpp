// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/deskpaint.h"

#include "ui/parts/deskstyle.h"

#include <QAbstractSpinBox>
#include <QPainter>
#include <QStyleOption>

#include <algorithm>

namespace slopebook::ui::desk {

namespace {

constexpr int thick = 2, caret = 4; // px
constexpr qreal radius = 2, stroke = 1.4;

bool has(const QStyleOption& option, QStyle::StateFlag flag) {
    return (option.state & flag) != 0;
}

/// A frame that lies within its area, whatever its width.
void frame(QPainter& painter, const QRect& area, const QColor& colour, int width,
           const QBrush& fill = Qt::NoBrush) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, width));
    painter.setBrush(fill);
    const qreal half = width / 2.0;
    painter.drawRoundedRect(QRectF(area).adjusted(half, half, -half, -half), radius, radius);
    painter.restore();
}

void caretIn(QPainter& painter, const QRect& area, const QColor& colour, bool up = false) {
    const int way = up ? -1 : 1;
    const QPoint tip = area.center() + QPoint(0, way * (caret / 2) + (up ? 0 : 1));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, stroke));
    painter.drawPolyline(
        QPolygon({tip + QPoint(-caret, -way * caret), tip, tip + QPoint(caret, -way * caret)}));
    painter.restore();
}

QColor inkOf(const QStyleOption& option, const DeskTones& tones) {
    return has(option, QStyle::State_Enabled) ? tones.ink : tones.frame;
}

} // namespace

void paintButton(QPainter& painter, const QStyleOption& option) {
    const DeskTones tones = deskTones(option.palette);
    const auto* button = qstyleoption_cast<const QStyleOptionButton*>(&option);
    const bool enabled = has(option, QStyle::State_Enabled);
    const bool first = button && (button->features & QStyleOptionButton::DefaultButton) != 0;
    const bool down = has(option, QStyle::State_Sunken) || has(option, QStyle::State_On);
    const bool over = enabled && has(option, QStyle::State_MouseOver);
    const QColor line = !enabled ? tones.hair : first || over ? tones.ink : tones.frame;
    frame(painter, option.rect, line, first ? thick : 1, down ? tones.hair : tones.page);
    if (has(option, QStyle::State_HasFocus) && has(option, QStyle::State_KeyboardFocusChange))
        frame(painter, option.rect, tones.chosen, thick);
}

void paintFlatButton(QPainter& painter, const QStyleOption& option) {
    const DeskTones tones = deskTones(option.palette);
    const bool down = has(option, QStyle::State_Sunken) || has(option, QStyle::State_On);
    if (down)
        frame(painter, option.rect, tones.hair, 1, tones.hair);
    else if (has(option, QStyle::State_Enabled) && has(option, QStyle::State_MouseOver))
        frame(painter, option.rect, tones.frame, 1);
    else if (!has(option, QStyle::State_AutoRaise))
        frame(painter, option.rect, tones.hair, 1);
}

void paintFocus(QPainter& painter, const QStyleOption& option) {
    frame(painter, option.rect, deskTones(option.palette).chosen, thick);
}

void paintField(QPainter& painter, const QStyleOption& option) {
    const DeskTones tones = deskTones(option.palette);
    const bool keys = has(option, QStyle::State_HasFocus);
    frame(painter, option.rect,
          keys                                 ? tones.chosen
          : has(option, QStyle::State_Enabled) ? tones.frame
                                               : tones.hair,
          keys ? thick : 1);
}

void paintFrame(QPainter& painter, const QStyleOption& option, bool table, bool end) {
    const DeskTones tones = deskTones(option.palette);
    const QRect& all = option.rect;
    if (!table)
        return frame(painter, all, tones.hair, 1);
    painter.fillRect(QRect(all.left(), all.top(), all.width(), tableRule), tones.ink);
    if (end)
        painter.fillRect(QRect(all.left(), all.bottom() - tableRule + 1, all.width(), tableRule),
                         tones.ink);
}

void paintUnder(QPainter& painter, const QStyleOption& option) {
    painter.fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1),
                     deskTones(option.palette).hair);
}

void paintRow(QPainter& painter, const QStyleOption& option, bool table) {
    const DeskTones tones = deskTones(option.palette);
    const auto* item = qstyleoption_cast<const QStyleOptionViewItem*>(&option);
    const QRect& all = option.rect;
    if (item && item->backgroundBrush.style() != Qt::NoBrush)
        painter.fillRect(all, item->backgroundBrush);
    if (!has(option, QStyle::State_Selected))
        return;
    // In a table the rules go on from cell to cell.
    painter.fillRect(QRect(all.left(), all.top(), all.width(), thick), tones.chosen);
    painter.fillRect(QRect(all.left(), all.bottom() - thick + 1, all.width(), thick), tones.chosen);
    if (!table)
        painter.fillRect(QRect(all.left(), all.top(), thick, all.height()), tones.chosen);
}

void paintBox(QPainter& painter, const QStyleOption& option) {
    const DeskTones tones = deskTones(option.palette);
    const QRect box = option.rect.adjusted(0, 0, -1, -1);
    frame(painter, option.rect, has(option, QStyle::State_MouseOver) ? tones.ink : tones.frame, 1,
          tones.page);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(inkOf(option, tones), thick));
    const QPointF at = box.topLeft();
    const qreal w = box.width(), h = box.height();
    if (has(option, QStyle::State_On))
        painter.drawPolyline(
            QPolygonF({at + QPointF(w * 0.2, h * 0.55), at + QPointF(w * 0.43, h * 0.78),
                       at + QPointF(w * 0.82, h * 0.25)}));
    else if (has(option, QStyle::State_NoChange))
        painter.drawLine(at + QPointF(w * 0.25, h * 0.5), at + QPointF(w * 0.75, h * 0.5));
    painter.restore();
}

void paintOrder(QPainter& painter, const QStyleOption& option) {
    const auto* header = qstyleoption_cast<const QStyleOptionHeader*>(&option);
    if (!header || header->sortIndicator == QStyleOptionHeader::None)
        return;
    // Qt's own names are the other way round: SortDown is ascending.
    caretIn(painter, option.rect, deskTones(option.palette).ink,
            header->sortIndicator == QStyleOptionHeader::SortDown);
}

void paintHeading(QPainter& painter, const QStyleOption& option) {
    const DeskTones tones = deskTones(option.palette);
    painter.fillRect(option.rect, tones.page);
    if (has(option, QStyle::State_Horizontal))
        paintUnder(painter, option);
}

void paintTab(QPainter& painter, const QStyleOption& option) {
    const DeskTones tones = deskTones(option.palette);
    const QRect& all = option.rect;
    const bool chosen = has(option, QStyle::State_Selected);
    const int rule = chosen ? 3 : 1;
    painter.fillRect(QRect(all.left(), all.bottom() - rule + 1, all.width(), rule),
                     chosen ? tones.chosen : tones.hair);
}

void paintHandle(QPainter& painter, const QStyleOption& option) {
    constexpr int length = 24;
    const QPoint middle = option.rect.center();
    const bool upright = has(option, QStyle::State_Horizontal); // of a row: dragged left and right
    const QRect mark = upright ? QRect(middle.x(), middle.y() - length / 2, 1, length)
                               : QRect(middle.x() - length / 2, middle.y(), length, 1);
    painter.fillRect(mark, deskTones(option.palette).frame);
}

namespace {
/// Boxes of several heights side by side have their rules in one line.
int underWords(const QStyleOption& option) {
    constexpr int below = 4; // px
    return std::min(option.rect.bottom(),
                    option.rect.center().y() + option.fontMetrics.height() / 2 + below);
}
} // namespace

void paintChoice(QPainter& painter, const QStyleOptionComboBox& option, const QRect& arrow) {
    const DeskTones tones = deskTones(option.palette);
    const bool keys = has(option, QStyle::State_HasFocus);
    const QRect& all = option.rect;
    if (has(option, QStyle::State_Enabled) && has(option, QStyle::State_MouseOver))
        frame(painter, all, tones.hair, 1);
    if (keys)
        frame(painter, all, tones.chosen, thick);
    else
        painter.fillRect(QRect(all.left(), underWords(option), all.width(), 1),
                         has(option, QStyle::State_Enabled) ? tones.frame : tones.hair);
    caretIn(painter, arrow, inkOf(option, tones));
}

void paintSpin(QPainter& painter, const QStyleOptionSpinBox& option, const QRect& up,
               const QRect& down) {
    const DeskTones tones = deskTones(option.palette);
    painter.fillRect(option.rect, tones.page);
    if (option.frame)
        paintField(painter, option);
    if (option.buttonSymbols == QAbstractSpinBox::NoButtons)
        return;
    const auto ink = [&](QAbstractSpinBox::StepEnabledFlag way) {
        return option.stepEnabled & way ? tones.ink : tones.hair;
    };
    caretIn(painter, up, ink(QAbstractSpinBox::StepUpEnabled), true);
    caretIn(painter, down, ink(QAbstractSpinBox::StepDownEnabled));
}

void paintScrollBar(QPainter& painter, const QStyleOptionSlider& option, const QRect& slider) {
    const DeskTones tones = deskTones(option.palette);
    painter.fillRect(option.rect, tones.page);
    if (option.minimum == option.maximum)
        return;
    constexpr int edge = 4; // px of air beside the bar
    const bool across = option.orientation == Qt::Horizontal;
    const QRect bar =
        across ? slider.adjusted(1, edge, -1, -edge) : slider.adjusted(edge, 1, -edge, -1);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    const bool held = has(option, QStyle::State_MouseOver) || has(option, QStyle::State_Sunken);
    painter.setBrush(held ? tones.ink : tones.frame);
    painter.drawRoundedRect(bar, radius, radius);
    painter.restore();
}

} // namespace slopebook::ui::desk
