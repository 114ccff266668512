// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/fingers.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QCalendarWidget>
#include <QInputDevice>
#include <QStyleOption>

#include <algorithm>

namespace slopebook::ui {

namespace {

constexpr int scrollBarWidth = 24, splitterWidth = 12, boxSize = 22;

} // namespace

bool touchScreenPresent() {
    const auto devices = QInputDevice::devices();
    return std::ranges::any_of(devices, [](const QInputDevice* device) {
        return device->type() == QInputDevice::DeviceType::TouchScreen;
    });
}

bool fingersFit() {
    return qobject_cast<const FingerStyle*>(QApplication::style()) != nullptr;
}

void fitFingers(bool wanted) {
    if (wanted == fingersFit())
        return wearDeskStyle();
    if (wanted)
        QApplication::setStyle(new FingerStyle);
    else
        QApplication::setStyle(new DeskStyle);
}

QSize FingerStyle::sizeFromContents(ContentsType type, const QStyleOption* option,
                                    const QSize& contents, const QWidget* widget) const {
    QSize size = DeskStyle::sizeFromContents(type, option, contents, widget);
    if (type == CT_SpinBox) // its two arrows stand side by side
        size.rwidth() += scaledPx(fingerSize, widget);
    return size;
}

int FingerStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                             const QWidget* widget) const {
    const int plain = DeskStyle::pixelMetric(metric, option, widget);
    switch (metric) {
    case PM_ScrollBarExtent:
        return std::max(plain, scaledPx(scrollBarWidth, widget));
    case PM_SplitterWidth:
        return std::max(plain, scaledPx(splitterWidth, widget));
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
        return std::max(plain, scaledPx(boxSize, widget));
    default:
        return plain;
    }
}

QRect FingerStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option,
                                  SubControl part, const QWidget* widget) const {
    const QRect plain = DeskStyle::subControlRect(control, option, part, widget);
    const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option);
    if (control != CC_SpinBox || !spin || spin->buttonSymbols == QAbstractSpinBox::NoButtons)
        return plain;
    const int wide = scaledPx(fingerSize, widget);
    const int edge = spin->frame ? pixelMetric(PM_SpinBoxFrameWidth, option, widget) : 0;
    const QRect inside = spin->rect.adjusted(edge, edge, -edge, -edge);
    const QRect up(inside.right() - wide + 1, inside.top(), wide, inside.height());
    QRect field = inside;
    field.setRight(inside.right() - 2 * wide);
    switch (part) {
    case SC_SpinBoxUp:
        return visualRect(spin->direction, spin->rect, up);
    case SC_SpinBoxDown:
        return visualRect(spin->direction, spin->rect, up.translated(-wide, 0));
    case SC_SpinBoxEditField:
        return visualRect(spin->direction, spin->rect, field);
    default:
        return plain;
    }
}

void FingerStyle::polish(QWidget* widget) {
    DeskStyle::polish(widget);
    // Weeks and days, with the names of the days and the bar of the month above them.
    if (auto* calendar = qobject_cast<QCalendarWidget*>(widget)) {
        const int least = scaledPx(fingerSize, widget);
        calendar->setMinimumSize(8 * least, 8 * least);
    }
}

} // namespace slopebook::ui
