// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/framelook.h"

#include "ui/parts/deskstyle.h"
#include "ui/window/indexrows.h"
#include "ui/window/scheme.h"

#include <QGuiApplication>
#include <QPainter>
#include <QStyle>

namespace slopebook::ui {

namespace {
constexpr int rowHeight = 28, rule = 2, inner = 16; // px
constexpr int dark = 128;                           // lightness of a page under which it is dark

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

void paintKeys(QPainter& painter, const QRect& area, const FrameLook& look) {
    painter.setPen(QPen(look.chosen, rule));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area.adjusted(4, 4, -4, -4));
}
} // namespace

FrameLook frameLook(const QPalette& palette) {
    const QColor page = palette.color(QPalette::Active, QPalette::Base);
    const QColor window = QGuiApplication::palette().color(QPalette::Active, QPalette::Window);
    const QColor ink = palette.color(QPalette::Active, QPalette::Text);
    const auto second = [&](const QColor& wanted, const QColor& on, const QColor& index) {
        return readable(wanted, ink, {on, index}, quietContrast);
    };
    if (page.lightness() < dark) {
        const QColor index = window.darker(140);
        return {window,           index,         ink, second(QColor(0xA9B3AD), window, index),
                QColor(0x3B443F), accentOn(page)};
    }
    const QColor index(0xF3F5F3);
    return {page,          index, ink, second(QColor(0x56615B), page, index), QColor(0xCDD4CF),
            accentOn(page)};
}

PartBar::PartBar(QWidget* parent) : QTabBar(parent) {
    setDrawBase(false);
    setExpanding(false);
    setElideMode(Qt::ElideNone);
    setUsesScrollButtons(false);
    setFocusPolicy(Qt::StrongFocus);
}

QSize PartBar::tabSizeHint(int index) const {
    return {QFontMetrics(bold(font())).horizontalAdvance(tabText(index)) + frameMargin, headHeight};
}

void PartBar::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    const FrameLook look = frameLook(palette());
    for (int i = 0; i < count(); ++i) {
        const QRect area = tabRect(i);
        const bool chosen = i == currentIndex();
        painter.setFont(chosen ? bold(font()) : font());
        painter.setPen(chosen ? look.ink : look.second);
        painter.drawText(area, Qt::AlignCenter | Qt::TextShowMnemonic, tabText(i));
        if (chosen)
            painter.fillRect(QRect(area.left(), area.bottom() - 2, area.width(), 3), look.chosen);
        if (chosen && hasFocus())
            paintKeys(painter, area, look);
    }
}

void IndexDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    const FrameLook look = frameLook(option.palette);
    const QRect area = option.rect;
    const bool isPage = index.data(IndexRows::PageRole).isValid();
    const bool here = index.data(IndexRows::HereRole).toBool();
    const bool chosen = index.data(IndexRows::ChosenRole).toBool();
    painter->save();
    if (here) { // it opens onto the page: nothing between them
        painter->fillRect(area, look.page);
        painter->fillRect(QRect(area.left(), area.top(), area.width(), rule), look.chosen);
        painter->fillRect(QRect(area.left(), area.bottom() - rule + 1, area.width(), rule),
                          look.chosen);
    }
    if (m_keysHere && (option.state & QStyle::State_Selected))
        paintKeys(*painter, area, look);
    const bool indented = isPage && index.data(IndexRows::InnerRole).toBool();
    const QRect words = area.adjusted(frameMargin + (indented ? inner : 0), 0, -frameMargin / 2, 0);
    painter->setFont(chosen || here ? bold(option.font) : option.font);
    painter->setPen(look.ink);
    painter->drawText(
        words, Qt::AlignVCenter | Qt::AlignLeft,
        painter->fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, words.width()));
    painter->restore();
}

QSize IndexDelegate::sizeHint(const QStyleOptionViewItem& option,
                              const QModelIndex& /*index*/) const {
    const QStyle* style = option.widget->style();
    return style
        ->sizeFromContents(QStyle::CT_ItemViewItem, &option, QSize(0, rowHeight), option.widget)
        .expandedTo({0, std::max(rowHeight, option.fontMetrics.height() + 8)});
}

} // namespace slopebook::ui
