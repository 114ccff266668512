// SPDX-License-Identifier: GPL-3.0-or-later
// A page of tabs or of a splitter, which ask nobody how high wrapped words are: it asks for that
// itself, so that nothing on it is pushed over what stands below.
#pragma once

#include <QLayout>
#include <QResizeEvent>
#include <QWidget>

#include <algorithm>

namespace slopebook::ui {

class WrappedPage final : public QWidget {
public:
    QSize minimumSizeHint() const override {
        QSize least = QWidget::minimumSizeHint();
        if (layout() && layout()->hasHeightForWidth() && width() > 0)
            least.setHeight(std::max(least.height(), layout()->minimumHeightForWidth(width())));
        return least;
    }

protected:
    void resizeEvent(QResizeEvent* event) override {
        QWidget::resizeEvent(event);
        if (event->size().width() != event->oldSize().width())
            updateGeometry();
    }
};

} // namespace slopebook::ui
