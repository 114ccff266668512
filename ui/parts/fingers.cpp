// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/fingers.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QCalendarWidget>
#include <QComboBox>
#include <QHeaderView>
#include <QInputDevice>
#include <QLineEdit>
#include <QScreen>
#include <QStyleOption>
#include <QTableView>

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

namespace {

constexpr int scrollBarWidth = 24, splitterWidth = 12, boxSize = 22;

/// px of 96 to the inch, in this desktop's.
int scaled(int px, const QWidget* widget = nullptr) {
    const QScreen* screen = widget ? widget->screen() : QGuiApplication::primaryScreen();
    const double dpi = screen ? screen->logicalDotsPerInch() : 96;
    return static_cast<int>(std::lround(px * std::max(1.0, dpi / 96)));
}

bool isSeparator(const QStyleOption* option) {
    const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
    return item && item->menuItemType == QStyleOptionMenuItem::Separator;
}

// The rows may have been given a height by the page: never less than a finger's.
void fitRows(QTableView& table, int least) {
    QHeaderView* rows = table.verticalHeader();
    rows->setMinimumSectionSize(least);
    rows->setDefaultSectionSize(std::max(least, rows->defaultSectionSize()));
}

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
    const int least = scaled(fingerSize, widget);
    switch (type) {
    case CT_PushButton:
    case CT_ToolButton:
        return size.expandedTo({least, least});
    case CT_SpinBox:
        // Its two arrows stand side by side.
        size.rwidth() += least;
        [[fallthrough]];
    case CT_ComboBox:
    case CT_LineEdit:
    case CT_CheckBox:
    case CT_RadioButton:
    case CT_TabBarTab:
    case CT_HeaderSection:
    case CT_ItemViewItem:
    case CT_MenuBarItem:
        return size.expandedTo({0, least});
    case CT_MenuItem:
        return isSeparator(option) ? size : size.expandedTo({0, least});
    default:
        return size;
    }
}

int FingerStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                             const QWidget* widget) const {
    const int plain = DeskStyle::pixelMetric(metric, option, widget);
    switch (metric) {
    case PM_HeaderDefaultSectionSizeVertical:
    case PM_TabBarScrollButtonWidth:
        return std::max(plain, scaled(fingerSize, widget));
    case PM_ScrollBarExtent:
        return std::max(plain, scaled(scrollBarWidth, widget));
    case PM_SplitterWidth:
        return std::max(plain, scaled(splitterWidth, widget));
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
        return std::max(plain, scaled(boxSize, widget));
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
    const int wide = scaled(fingerSize, widget);
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
    const int least = scaled(fingerSize, widget);
    if (auto* table = qobject_cast<QTableView*>(widget)) {
        fitRows(*table, least);
    } else if (auto* calendar = qobject_cast<QCalendarWidget*>(widget)) {
        // Weeks and days, with the names of the days and the bar of the month above them.
        calendar->setMinimumSize(8 * least, 8 * least);
    } else if (qobject_cast<QAbstractButton*>(widget) || qobject_cast<QLineEdit*>(widget) ||
               qobject_cast<QComboBox*>(widget) || qobject_cast<QAbstractSpinBox*>(widget)) {
        if (widget->minimumHeight() > 0 && widget->minimumHeight() < least)
            widget->setMinimumHeight(least);
    }
}

} // namespace slopebook::ui
