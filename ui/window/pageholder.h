// SPDX-License-Identifier: GPL-3.0-or-later
// Holds a page in a scroll area: the page is as large as what is seen, and only where that is less
// than it can do with is there something to scroll. A scroll area alone would give a page with
// wrapped text the height that it likes best.
#pragma once

#include "ui/parts/taskpage.h"

#include <QEvent>
#include <QLayout>

#include <algorithm>

namespace slopebook::ui {

class PageHolder final : public QWidget {
    Q_OBJECT
public:
    /// Takes the page over.
    explicit PageHolder(TaskPage* page) : m_page(page) { page->setParent(this); }

    TaskPage* page() const { return m_page; }

    QSize sizeHint() const override { return m_page->sizeHint(); }
    QSize minimumSizeHint() const override {
        QSize least = m_page->minimumSizeHint();
        if (const QLayout* layout = m_page->layout(); layout && layout->hasHeightForWidth())
            least.setHeight(layout->minimumHeightForWidth(std::max(width(), least.width())));
        return least;
    }

protected:
    void resizeEvent(QResizeEvent* /*event*/) override { m_page->resize(size()); }
    bool event(QEvent* event) override {
        if (event->type() == QEvent::LayoutRequest)
            updateGeometry();
        return QWidget::event(event);
    }

private:
    TaskPage* m_page;
};

} // namespace slopebook::ui
