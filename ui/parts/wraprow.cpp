// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/wraprow.h"

#include <QHBoxLayout>
#include <QWidget>

#include <algorithm>

namespace slopebook::ui {

WrapRow::WrapRow(QWidget* parent) : QLayout(parent) {
    setContentsMargins(0, 0, 0, 0);
    setSpacing(6);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    parent->setSizePolicy(policy);
}

WrapRow::~WrapRow() {
    qDeleteAll(m_items);
}

void WrapRow::addField(QWidget* label, QWidget* field) {
    auto* pair = new QHBoxLayout;
    pair->setContentsMargins(0, 0, 0, 0);
    pair->addWidget(label);
    pair->addWidget(field);
    auto* box = new QWidget;
    box->setLayout(pair);
    addWidget(box);
}

void WrapRow::addItem(QLayoutItem* item) {
    m_items.append(item);
}

QLayoutItem* WrapRow::itemAt(int index) const {
    return m_items.value(index);
}

QLayoutItem* WrapRow::takeAt(int index) {
    return index >= 0 && index < count() ? m_items.takeAt(index) : nullptr;
}

int WrapRow::heightForWidth(int width) const {
    return lay(QRect(0, 0, width, 0), false);
}

QSize WrapRow::sizeHint() const {
    QSize whole;
    for (const QLayoutItem* item : m_items) {
        const QSize one = item->sizeHint();
        whole.rwidth() += one.width() + spacing();
        whole.setHeight(std::max(whole.height(), one.height()));
    }
    return whole;
}

QSize WrapRow::minimumSize() const {
    QSize least;
    for (const QLayoutItem* item : m_items)
        least = least.expandedTo(item->minimumSize());
    return least;
}

void WrapRow::setGeometry(const QRect& area) {
    QLayout::setGeometry(area);
    lay(area, true);
}

int WrapRow::lay(const QRect& area, bool move) const {
    int x = area.left(), y = area.top(), high = 0;
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty())
            continue;
        const QSize one = item->sizeHint().expandedTo(item->minimumSize());
        if (x > area.left() && x + one.width() > area.left() + area.width()) {
            x = area.left();
            y += high + spacing();
            high = 0;
        }
        if (move)
            item->setGeometry(QRect(QPoint(x, y), one.boundedTo({area.width(), one.height()})));
        x += one.width() + spacing();
        high = std::max(high, one.height());
    }
    return y + high - area.top();
}

} // namespace slopebook::ui
