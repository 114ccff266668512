// SPDX-License-Identifier: GPL-3.0-or-later
// Words that wrap and can be copied, in a page that is laid out anew at every key.
#pragma once

#include <QHash>
#include <QLabel>

namespace slopebook::ui {

/// A label whose text can be selected is a small document, which is laid out for every width that
/// a layout tries: most of what a page took to settle after a key. This one is measured as plain
/// text, once a width, and is a document only while the mouse or the keyboard is in it.
class SettledLabel : public QLabel {
    Q_OBJECT
public:
    explicit SettledLabel(QWidget* parent = nullptr);

    /// Instead of QLabel's.
    void setText(const QString& text);
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    void fitSelection();
    mutable QHash<int, int> m_heights; ///< by width, px
    bool m_over = false;               ///< the mouse is
};

} // namespace slopebook::ui
