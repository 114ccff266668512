// SPDX-License-Identifier: GPL-3.0-or-later
// A box whose entries say much: closed, it says as many of their parts as it has room for, and
// none is cut within; that there are more is marked, and its tip says them.
#pragma once

#include <QComboBox>

namespace slopebook::ui {

class ShortCombo final : public QComboBox {
    Q_OBJECT
public:
    using QComboBox::QComboBox;

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
};

/// The first parts of words (parted by " · ", ", " or ": ") that are no wider than room, in a font;
/// the first part where none fits. " …" stands for what is left out.
QString firstPartsOf(const QString& words, const QFontMetricsF& metrics, double room);

} // namespace slopebook::ui
