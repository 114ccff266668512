// SPDX-License-Identifier: GPL-3.0-or-later
// Holds a page in a scroll area: the page is as large as what is seen, and only where that is less
// than it can do with is there something to scroll. A scroll area alone would give a page with
// wrapped text the height that it likes best. What the page is about stands first in its control
// line, or in one above it where it has none of its own, or no room.
#pragma once

#include "ui/parts/wrappedpage.h"
#include "ui/window/pagetable.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QScrollBar>

#include <algorithm>

namespace slopebook::ui {

class PageHolder final : public QWidget {
    Q_OBJECT
public:
    /// Takes the page over.
    explicit PageHolder(const MadePage& made)
        : m_page(made.page), m_line(new QWidget(this)), m_own(made.strip),
          m_above(new QHBoxLayout(m_line)) {
        m_page->setParent(this);
        m_above->setContentsMargins(margin, margin / 2, margin, 0);
        m_above->addStretch(1);
        m_line->hide();
    }

    TaskPage* page() const { return m_page; }
    /// Puts it first into the control line, where it is to be shown.
    void take(QWidget* first, bool shown) {
        m_first = first;
        m_shown = shown;
        place();
    }

    QSize sizeHint() const override { return m_page->sizeHint() + QSize(0, lineHeight()); }
    QSize minimumSizeHint() const override {
        QSize least = m_page->minimumSizeHint();
        if (!m_line->isHidden())
            least.setWidth(std::max(least.width(), m_line->minimumSizeHint().width()));
        least.setHeight(leastHeight(least));
        return least + QSize(0, lineHeight());
    }

    /// The same with the scroll bar beside it and without: a sentence may be lower where it is
    /// narrower, in smaller type, and a height that goes by the width that the page has just now
    /// would have the bar come and go for ever.
    int leastHeight(const QSize& least) const {
        const auto at = [&](int width) {
            return wrappedHeight(m_page->layout(), std::max(width, least.width()), least.height());
        };
        const QWidget* viewport = parentWidget();
        const auto* area =
            viewport ? qobject_cast<const QScrollArea*>(viewport->parentWidget()) : nullptr;
        if (!area)
            return at(width());
        const int whole = area->maximumViewportSize().width();
        return std::max(at(whole), at(whole - area->verticalScrollBar()->sizeHint().width()));
    }

protected:
    void resizeEvent(QResizeEvent* /*event*/) override {
        // Only while it is here: it goes from page to page.
        if (m_first && m_own && isAncestorOf(m_first) && (m_above->indexOf(m_first) < 0) != fits())
            place();
        layOut();
    }
    bool event(QEvent* event) override {
        if (event->type() == QEvent::LayoutRequest) {
            updateGeometry();
            layOut();
        }
        return QWidget::event(event);
    }

private:
    static constexpr int margin = 9; // px

    /// Whether the page's own line has room for it: else it stands above.
    bool fits() const {
        const bool inside = m_own->indexOf(m_first) >= 0;
        const int least = m_first->minimumSizeHint().width() + m_own->spacing();
        const int line = m_own->minimumSize().width() + (inside ? 0 : least);
        return line + 2 * margin <= width();
    }
    void place() {
        QBoxLayout* line = m_own && fits() ? m_own : m_above;
        if (line->indexOf(m_first) < 0)
            line->insertWidget(0, m_first);
        m_first->setVisible(m_shown);
        m_line->setVisible(m_shown && line == m_above);
        layOut();
        updateGeometry();
    }
    int lineHeight() const { return m_line->isHidden() ? 0 : m_line->sizeHint().height(); }
    void layOut() {
        const int high = lineHeight();
        m_line->setGeometry(0, 0, width(), high);
        m_page->setGeometry(0, high, width(), height() - high);
    }

    TaskPage* m_page;
    QWidget* m_line;     ///< above the page
    QBoxLayout* m_own;   ///< the page's own; nothing where it has none
    QBoxLayout* m_above; ///< in the line
    QWidget* m_first = nullptr;
    bool m_shown = false;
};

} // namespace slopebook::ui
