// SPDX-License-Identifier: GPL-3.0-or-later
// Controls large enough for a finger: one style over the desktop's own, for every page and dialog.
#pragma once

#include "ui/parts/deskstyle.h"

namespace slopebook::ui {

/// About 9 mm, in pixels of 96 to the inch: what a fingertip hits without looking. Common practice.
constexpr int fingerSize = 36;

/// Whether the desktop knows of a touch screen.
bool touchScreenPresent();

/// Makes every control of the program large enough for a finger from now on, or as the desk's style
/// has it. Widgets that are there already keep what a layout gave them until they are made anew.
void fitFingers(bool wanted);
/// What was asked for last.
bool fingersFit();

/// The program's style, its buttons, fields, tabs, rows and headings no smaller than a finger.
class FingerStyle final : public DeskStyle {
    Q_OBJECT
public:
    FingerStyle() = default;

    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                           const QWidget* widget) const override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option = nullptr,
                    const QWidget* widget = nullptr) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                         const QWidget* widget = nullptr) const override;
    using DeskStyle::polish;
    void polish(QWidget* widget) override;

protected:
    int least() const override { return fingerSize; }
};

} // namespace slopebook::ui
