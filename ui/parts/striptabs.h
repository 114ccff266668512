// SPDX-License-Identifier: GPL-3.0-or-later
// The tabs of a page in its control line, so that there is one strip above what it says.
#pragma once

#include <QTabWidget>

namespace slopebook::ui {

/// Asks for the height of the tab that is shown, and for no more than it can do with: QTabWidget
/// asks for the highest, and where words wrap for as much as that likes best.
class StripTabs final : public QTabWidget {
    Q_OBJECT
public:
    explicit StripTabs(QWidget* parent = nullptr);
    bool hasHeightForWidth() const override { return false; }
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
};

/// A bar for the control line that turns those tabs, which have all been added; their own is put
/// away. name: for those who hear it.
QTabBar* barInStrip(QTabWidget& tabs, const QString& name);

} // namespace slopebook::ui
