// SPDX-License-Identifier: GPL-3.0-or-later
// A page of tabs or of a splitter, which ask nobody how high wrapped words are: it asks for that
// itself, so that nothing on it is pushed over what stands below.
#pragma once

#include <QLayout>
#include <QResizeEvent>
#include <QWidget>

#include <algorithm>

namespace slopebook::ui {

/// The least height of what is laid out in that width, its words wrapped; `otherwise` where nothing
/// in it wraps.
inline int wrappedHeight(const QLayout* layout, int width, int otherwise) {
    return layout && layout->hasHeightForWidth() ? layout->minimumHeightForWidth(width) : otherwise;
}

class WrappedPage final : public QWidget {
public:
    QSize minimumSizeHint() const override {
        QSize least = QWidget::minimumSizeHint();
        if (width() > 0)
            least.setHeight(
                std::max(least.height(), wrappedHeight(layout(), width(), least.height())));
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
