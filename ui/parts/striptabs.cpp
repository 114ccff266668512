// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/striptabs.h"

#include "ui/parts/wrappedpage.h"

#include <QResizeEvent>
#include <QTabBar>

#include <algorithm>

namespace slopebook::ui {

StripTabs::StripTabs(QWidget* parent) : QTabWidget(parent) {
    connect(this, &QTabWidget::currentChanged, this, [this] { updateGeometry(); });
}

QSize StripTabs::minimumSizeHint() const {
    QSize least = QTabWidget::minimumSizeHint();
    const QWidget* shown = currentWidget();
    if (!shown)
        return least;
    const int high = shown->minimumSizeHint().height();
    least.setHeight(std::max(shown->minimumHeight(),
                             width() > 0 ? wrappedHeight(shown->layout(), width(), high) : high));
    return least;
}

void StripTabs::resizeEvent(QResizeEvent* event) {
    QTabWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        updateGeometry();
}

QTabBar* barInStrip(QTabWidget& tabs, const QString& name) {
    auto* bar = new QTabBar;
    bar->setAccessibleName(name);
    bar->setDocumentMode(true);
    bar->setDrawBase(false);
    bar->setExpanding(false);
    bar->setUsesScrollButtons(false);
    bar->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    for (int i = 0; i < tabs.count(); ++i) {
        bar->addTab(tabs.tabText(i));
        tabs.setTabText(i, tabs.tabText(i).remove(u'&')); // one key, one bar
    }
    bar->setCurrentIndex(tabs.currentIndex());
    tabs.setDocumentMode(true);
    tabs.tabBar()->hide();
    tabs.setFocusProxy(nullptr); // which was the hidden bar: Tab would end there
    tabs.setFocusPolicy(Qt::NoFocus);
    QObject::connect(bar, &QTabBar::currentChanged, &tabs, &QTabWidget::setCurrentIndex);
    QObject::connect(&tabs, &QTabWidget::currentChanged, bar, &QTabBar::setCurrentIndex);
    return bar;
}

} // namespace slopebook::ui
