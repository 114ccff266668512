// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/shortcombo.h"

#include <QHelpEvent>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QToolTip>

#include <algorithm>

namespace slopebook::ui {

QString firstPartsOf(const QString& words, const QFontMetricsF& metrics, double room) {
    const QString more = QStringLiteral(" \u2026");
    QString shown = words;
    while (metrics.horizontalAdvance(shown.size() < words.size() ? shown + more : shown) > room) {
        const qsizetype at = std::max({shown.lastIndexOf(QStringLiteral(" \u00b7 ")),
                                       shown.lastIndexOf(QStringLiteral(", ")),
                                       shown.lastIndexOf(QStringLiteral(": "))});
        if (at <= 0)
            break;
        shown.truncate(at);
    }
    return shown.size() < words.size() ? shown + more : shown;
}

bool ShortCombo::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && toolTip().isEmpty()) {
        QToolTip::showText(static_cast<const QHelpEvent*>(event)->globalPos(), currentText(), this);
        return true;
    }
    return QComboBox::event(event);
}

void ShortCombo::paintEvent(QPaintEvent* /*event*/) {
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const int room =
        style()
            ->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this)
            .width();
    option.currentText = firstPartsOf(option.currentText, QFontMetricsF(font()), room - 2);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

} // namespace slopebook::ui
