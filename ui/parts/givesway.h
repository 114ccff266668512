// SPDX-License-Identifier: GPL-3.0-or-later
// What gives way to the picture: shown whole where there is room, and scrolled where there is not.
#pragma once

#include <QScrollArea>

namespace slopebook::ui {

class GivesWay final : public QScrollArea {
    Q_OBJECT
public:
    static constexpr int allLines = 1000; ///< lines: the page is scrolled instead
    /// lines: of text that are seen at the least.
    explicit GivesWay(QWidget* inside, int lines = 3);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    void fit();
    int m_lines;
};

} // namespace slopebook::ui
