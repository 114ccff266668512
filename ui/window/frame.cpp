// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/frame.h"

#include "ui/window/framelook.h"
#include "ui/window/index.h"

#include <QApplication>
#include <QEvent>

#include <utility>

namespace slopebook::ui {

namespace {
constexpr int usualIndex = 208, widestIndex = 400; // px
constexpr int narrow = 1000;                       // px: no room for an index in a window under it
/// A gap to take hold of; the index has its own rule.
class Gap final : public QSplitterHandle {
public:
    using QSplitterHandle::QSplitterHandle;

protected:
    void paintEvent(QPaintEvent* /*event*/) override {}
};
} // namespace

QSplitterHandle* Frame::createHandle() {
    return new Gap(Qt::Horizontal, this);
}

Frame::Frame(Index* index, QWidget* page) : m_index(index), m_page(page), m_width(usualIndex) {
    addWidget(index);
    addWidget(page);
    setStretchFactor(0, 0);
    setStretchFactor(1, 1);
    setChildrenCollapsible(false);
    setAutoFillBackground(true);
    index->setMaximumWidth(widestIndex);
    page->setAutoFillBackground(true);
    setIndexWidth(usualIndex);
    dress();
    fit();
    connect(this, &QSplitter::splitterMoved, this, [this](int at) { m_width = at; });
}

void Frame::setIndexWidth(int width) {
    m_width = std::clamp(width, m_index->minimumWidth(), widestIndex);
    setSizes({m_width, std::max(1, this->width() - m_width)});
}

bool Frame::folded() const {
    return m_wanted.value_or(width() < narrow);
}

void Frame::wantFold(std::optional<bool> folded) {
    m_wanted = folded;
    m_peeking = false;
    fit();
}

void Frame::peek(bool wanted) {
    m_peeking = wanted && folded();
    const QWidget* focus = QApplication::focusWidget();
    const bool inside = focus && m_index->isAncestorOf(focus);
    fit();
    if (inside && m_index->isHidden())
        m_page->setFocus();
}

void Frame::fit() {
    const bool now = folded();
    m_index->setVisible(!now || m_peeking);
    if (std::exchange(m_wasFolded, now) != now)
        Q_EMIT foldedChanged(now);
}

void Frame::resizeEvent(QResizeEvent* event) {
    QSplitter::resizeEvent(event);
    if (folded() != m_wasFolded)
        fit();
}

// As white as paper, or as dark as the desktop's pages.
void Frame::dress() {
    QPalette own;
    own.setColor(QPalette::Window, frameLook(QApplication::palette()).page);
    setPalette(own);
    m_page->setPalette(own);
}

} // namespace slopebook::ui
