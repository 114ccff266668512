// SPDX-License-Identifier: GPL-3.0-or-later
// How the frame looks: an index and a page, as in a book. Its colours, for a light and a dark
// desktop, and the two things that the desktop's style does not paint: the words at the head of the
// index, and its rows.
#pragma once

#include <QColor>
#include <QPalette>
#include <QStyledItemDelegate>
#include <QTabBar>

namespace slopebook::ui {

struct FrameLook {
    QColor page, index;       ///< the ground of each
    QColor ink, second, hair; ///< text, text of the second rank, hair rules
    QColor chosen;            ///< the chosen and the focus, and nothing else
};

/// From the desktop's own page and ink. A dark page is the desktop's window: the style draws the
/// frames of fields darker than that, and they would be gone on the ground of the fields.
FrameLook frameLook(const QPalette& palette);

constexpr int frameMargin = 16; ///< px from an edge to words
constexpr int headHeight = 40;  ///< px, of the head of the index

/// The parts: words, the chosen one bold and underlined.
class PartBar final : public QTabBar {
    Q_OBJECT
public:
    explicit PartBar(QWidget* parent = nullptr);

protected:
    QSize tabSizeHint(int index) const override;
    QSize minimumTabSizeHint(int index) const override { return tabSizeHint(index); }
    void paintEvent(QPaintEvent* event) override;
};

/// Rows of an index: the chosen one bold between two rules, on the page's ground.
class IndexDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    /// Whether the row that keys would take is framed.
    void setKeysHere(bool here) { m_keysHere = here; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    bool m_keysHere = false;
};

} // namespace slopebook::ui
