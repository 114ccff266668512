// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/roomfor.h"

#include <QLineEdit>

#include <algorithm>

namespace slopebook::ui {

int pictureHeight(const QWidget& page, int lines) {
    return std::max((page.window()->height() + 2) / 3, lines * page.fontMetrics().height());
}

void fitPlaceholder(QLineEdit& field) {
    constexpr int frame = 20, clearButton = 24; // px
    const int words = field.fontMetrics().horizontalAdvance(field.placeholderText());
    field.setMinimumWidth(words + frame + (field.isClearButtonEnabled() ? clearButton : 0));
}

} // namespace slopebook::ui
