// SPDX-License-Identifier: GPL-3.0-or-later
// Scrolls up and down only: as wide at the least as what is in it, however that grows.
#pragma once

#include <QScrollArea>

namespace slopebook::ui {

/// It scrolls that, as wide as itself where it can be, and is seen through.
void holdInside(QScrollArea& area, QWidget* inside);
/// The same, up and down only.
void holdDownwards(QScrollArea& area, QWidget* inside);

class DownScroll : public QScrollArea {
    Q_OBJECT
public:
    explicit DownScroll(QWidget* inside);
    QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
};

} // namespace slopebook::ui
