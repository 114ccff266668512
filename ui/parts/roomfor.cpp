// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/roomfor.h"

#include <QLineEdit>

#include <algorithm>

namespace slopebook::ui {

int pictureHeight(const QWidget& page, int lines) {
    return std::max((page.window()->height() + 2) / 3, lines * page.fontMetrics().height());
}

// Qt draws both from one edge on, whichever way the field is aligned.
void setHint(QLineEdit& field, const QString& words) {
    const QChar thin(0x2009);
    const bool right = field.alignment() & Qt::AlignRight;
    field.setPlaceholderText(words.isEmpty() ? words : right ? words + thin : thin + words);
}

void fitPlaceholder(QLineEdit& field) {
    constexpr int frame = 20, clearButton = 24; // px
    const int words = field.fontMetrics().horizontalAdvance(field.placeholderText());
    field.setMinimumWidth(words + frame + (field.isClearButtonEnabled() ? clearButton : 0));
}

} // namespace slopebook::ui
