// SPDX-License-Identifier: GPL-3.0-or-later
// How every control of the program looks, light and dark: a page of paper with hair rules, no boxes
// in boxes, one accent for the chosen and the focus. Painted over one style alone, so that the
// program looks the same on every desktop; the colours come from the palette.
#pragma once

#include <QColor>
#include <QPalette>
#include <QProxyStyle>

namespace slopebook::ui {

/// The colours of a page, from a palette's ground and ink.
struct DeskTones {
    QColor page, ink;
    QColor second; ///< headings of tables, tabs that are not chosen
    QColor hair;   ///< rules within a table, bars
    QColor frame;  ///< of fields and buttons: seen against the page
    QColor chosen; ///< the chosen and the focus, and nothing else
};
DeskTones deskTones(const QPalette& palette);

/// The accent of the chosen and the focus on that ground.
QColor accentOn(const QColor& ground);

/// Of each control and each row that is chosen, in pixels of 96 to the inch: as much as a pointer
/// needs (WCAG 2.2, criterion 2.5.8).
constexpr int leastSize = 24;

/// px of 96 to the inch, in those of the widget's screen.
int scaledPx(int px, const QWidget* widget = nullptr);

/// A property of tables that draw the rule below their last row themselves.
constexpr char ownEndRule[] = "ownEndRule";

class DeskStyle : public QProxyStyle {
    Q_OBJECT
public:
    DeskStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget = nullptr) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget = nullptr) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                            QPainter* painter, const QWidget* widget = nullptr) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                           const QWidget* widget) const override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option = nullptr,
                    const QWidget* widget = nullptr) const override;
    using QProxyStyle::polish;
    void polish(QWidget* widget) override;

protected:
    /// No button, field, tab, row or heading is smaller: px of 96 to the inch.
    virtual int least() const { return leastSize; }
};

/// The program wears it from now on, unless it does already.
void wearDeskStyle();

} // namespace slopebook::ui
