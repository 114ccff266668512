// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/deskstyle.h"

#include "ui/parts/deskpaint.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QPainter>
#include <QScreen>
#include <QStyleOption>
#include <QTableView>

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

namespace {

constexpr int darkPage = 128; ///< lightness of a page under which it is dark
constexpr int cellAir = 6;    ///< px beside what stands in a cell: 14 from one to the next
constexpr int headingAir = 5; ///< px over and under the number of a row
constexpr char painter[] = "fusion";

QColor mixed(const QColor& a, const QColor& b, float share) {
    const auto part = [share](float x, float y) { return x + (y - x) * share; };
    return QColor::fromRgbF(part(a.redF(), b.redF()), part(a.greenF(), b.greenF()),
                            part(a.blueF(), b.blueF()));
}

/// The same with the chosen's words in ink: rules tell the chosen, not a ground.
QStyleOptionViewItem inInk(const QStyleOptionViewItem& item) {
    QStyleOptionViewItem own(item);
    for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled})
        own.palette.setBrush(group, QPalette::HighlightedText,
                             item.palette.brush(group, QPalette::Text));
    return own;
}

bool isSeparator(const QStyleOption* option) {
    const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
    return item && item->menuItemType == QStyleOptionMenuItem::Separator;
}

// The rows may have been given a height by the page: never less.
void fitRows(QTableView& table, int least) {
    QHeaderView* rows = table.verticalHeader();
    rows->setMinimumSectionSize(std::max(least, rows->minimumSectionSize()));
    rows->setDefaultSectionSize(std::max(least, rows->defaultSectionSize()));
}

template <class Option>
Option inSecond(const Option& option, QPalette::ColorRole role) {
    Option own(option);
    own.palette.setColor(role, deskTones(option.palette).second);
    return own;
}

} // namespace

QColor accentOn(const QColor& ground) {
    return ground.lightness() < darkPage ? QColor(0xE5A5CD) : QColor(0x7A2A5C);
}

DeskTones deskTones(const QPalette& palette) {
    const QColor page = palette.color(QPalette::Active, QPalette::Base);
    const QColor ink = palette.color(QPalette::Active, QPalette::Text);
    return {.page = page,
            .ink = ink,
            .second = mixed(page, ink, 0.72F),
            .hair = mixed(page, ink, 0.2F),
            .frame = mixed(page, ink, 0.55F),
            .chosen = accentOn(page)};
}

int scaledPx(int px, const QWidget* widget) {
    const QScreen* screen = widget ? widget->screen() : QGuiApplication::primaryScreen();
    const double dpi = screen ? screen->logicalDotsPerInch() : 96;
    return static_cast<int>(std::lround(px * std::max(1.0, dpi / 96)));
}

DeskStyle::DeskStyle() : QProxyStyle(QLatin1String(painter)) {
    setObjectName(QLatin1String(painter)); // asked for its name it is the one that paints below
}

void DeskStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* with,
                              const QWidget* widget) const {
    switch (element) {
    case PE_PanelButtonCommand:
        return desk::paintButton(*with, *option);
    case PE_PanelButtonTool:
        return desk::paintFlatButton(*with, *option);
    case PE_FrameFocusRect:
        return desk::paintFocus(*with, *option);
    case PE_FrameLineEdit:
        return desk::paintField(*with, *option);
    case PE_Frame:
        return desk::paintFrame(*with, *option, qobject_cast<const QTableView*>(widget) != nullptr,
                                !widget || !widget->property(ownEndRule).toBool());
    case PE_FrameTabBarBase:
        return desk::paintUnder(*with, *option);
    case PE_PanelItemViewItem:
        return desk::paintRow(*with, *option, qobject_cast<const QTableView*>(widget) != nullptr);
    case PE_IndicatorHeaderArrow:
        return desk::paintOrder(*with, *option);
    case PE_IndicatorCheckBox:
        return desk::paintBox(*with, *option);
    case PE_PanelScrollAreaCorner:
        return with->fillRect(option->rect, deskTones(option->palette).page);
    case PE_FrameTabWidget:
    case PE_FrameDefaultButton:
    case PE_PanelItemViewRow:
        return;
    default:
        return QProxyStyle::drawPrimitive(element, option, with, widget);
    }
}

void DeskStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* with,
                            const QWidget* widget) const {
    switch (element) {
    case CE_HeaderSection:
    case CE_HeaderEmptyArea:
        return desk::paintHeading(*with, *option);
    case CE_TabBarTabShape:
        return desk::paintTab(*with, *option);
    case CE_Splitter:
        return desk::paintHandle(*with, *option);
    case CE_HeaderLabel:
        if (const auto* plain = qstyleoption_cast<const QStyleOptionHeader*>(option)) {
            if (const auto* header = qstyleoption_cast<const QStyleOptionHeaderV2*>(option)) {
                const auto own = inSecond(*header, QPalette::ButtonText);
                return QProxyStyle::drawControl(element, &own, with, widget);
            }
            const auto own = inSecond(*plain, QPalette::ButtonText);
            return QProxyStyle::drawControl(element, &own, with, widget);
        }
        break;
    case CE_TabBarTabLabel:
        if (const auto* tab = qstyleoption_cast<const QStyleOptionTab*>(option);
            tab && !(tab->state & State_Selected)) {
            const auto own = inSecond(*tab, QPalette::WindowText);
            return QProxyStyle::drawControl(element, &own, with, widget);
        }
        break;
    case CE_ItemViewItem:
        if (const auto* item = qstyleoption_cast<const QStyleOptionViewItem*>(option)) {
            const auto own = inInk(*item);
            return QProxyStyle::drawControl(element, &own, with, widget);
        }
        break;
    default:
        break;
    }
    QProxyStyle::drawControl(element, option, with, widget);
}

void DeskStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                   QPainter* with, const QWidget* widget) const {
    const auto part = [&](SubControl which) {
        return proxy()->subControlRect(control, option, which, widget);
    };
    if (const auto* box = qstyleoption_cast<const QStyleOptionComboBox*>(option);
        control == CC_ComboBox && box)
        return desk::paintChoice(*with, *box, part(SC_ComboBoxArrow));
    if (const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option);
        control == CC_SpinBox && spin)
        return desk::paintSpin(*with, *spin, part(SC_SpinBoxUp), part(SC_SpinBoxDown));
    if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
        control == CC_ScrollBar && bar)
        return desk::paintScrollBar(*with, *bar, part(SC_ScrollBarSlider));
    QProxyStyle::drawComplexControl(control, option, with, widget);
}

int DeskStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                           const QWidget* widget) const {
    if (metric == PM_DefaultFrameWidth && qobject_cast<const QTableView*>(widget))
        return desk::tableRule;
    // Without grid lines figures and words beside each other need air.
    if (metric == PM_FocusFrameHMargin && qobject_cast<const QTableView*>(widget))
        return cellAir;
    if (metric == PM_HeaderMargin) {
        const auto* header = qobject_cast<const QHeaderView*>(widget);
        return header && header->orientation() == Qt::Horizontal ? cellAir + 1 : headingAir;
    }
    const int plain = QProxyStyle::pixelMetric(metric, option, widget);
    const bool pressed =
        metric == PM_HeaderDefaultSectionSizeVertical || metric == PM_TabBarScrollButtonWidth;
    return pressed ? std::max(plain, scaledPx(least(), widget)) : plain;
}

QSize DeskStyle::sizeFromContents(ContentsType type, const QStyleOption* option,
                                  const QSize& contents, const QWidget* widget) const {
    QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    const int high = scaledPx(least(), widget);
    switch (type) {
    case CT_PushButton:
    case CT_ToolButton:
        return size.expandedTo({high, high});
    case CT_ItemViewItem:
        // The rules of the chosen row keep clear of words that fill it.
        if (qobject_cast<const QTableView*>(widget))
            size += QSize(0, 2 * desk::tableRule);
        [[fallthrough]];
    case CT_ComboBox:
    case CT_LineEdit:
    case CT_SpinBox:
    case CT_CheckBox:
    case CT_RadioButton:
    case CT_TabBarTab:
    case CT_HeaderSection:
    case CT_MenuBarItem:
        return size.expandedTo({0, high});
    case CT_MenuItem:
        return isSeparator(option) ? size : size.expandedTo({0, high});
    default:
        return size;
    }
}

void DeskStyle::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    const int high = scaledPx(least(), widget);
    if (auto* table = qobject_cast<QTableView*>(widget)) {
        table->setShowGrid(false);
        fitRows(*table, high);
    } else if (qobject_cast<QAbstractButton*>(widget) || qobject_cast<QLineEdit*>(widget) ||
               qobject_cast<QComboBox*>(widget) || qobject_cast<QAbstractSpinBox*>(widget)) {
        if (widget->minimumHeight() > 0 && widget->minimumHeight() < high)
            widget->setMinimumHeight(high);
    }
}

void wearDeskStyle() {
    if (qobject_cast<const DeskStyle*>(QApplication::style()) == nullptr)
        QApplication::setStyle(new DeskStyle);
}

} // namespace slopebook::ui
