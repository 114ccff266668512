// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/cautions.h"

#include "core/answers/method.h"
#include "ui/words/said.h"

#include <QFont>
#include <QFontInfo>

namespace slopebook::ui {

namespace {

QString cautions(bool restrictedFlow) {
    return said(answers::cautionWords(restrictedFlow), LoadUnit::Kilograms).join(QLatin1Char(' '));
}

} // namespace

QString fullCautions() {
    return cautions(true);
}

CautionLabel::CautionLabel(QWidget* parent) : QLabel(cautions(false), parent) {
    setWordWrap(true);
    setToolTip(fullCautions());
    setAccessibleDescription(fullCautions());
    QFont small = font();
    constexpr int leastPixels = 12; // no text is smaller
    if (const int pixels = QFontInfo(small).pixelSize(); pixels * 0.9 >= leastPixels)
        small.setPointSizeF(small.pointSizeF() * 0.9);
    else if (pixels > leastPixels)
        small.setPixelSize(leastPixels);
    setFont(small);
}

} // namespace slopebook::ui
