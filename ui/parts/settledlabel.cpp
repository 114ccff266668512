// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/settledlabel.h"

#include <QContextMenuEvent>
#include <QEvent>

#include <algorithm>

namespace slopebook::ui {

namespace {
constexpr int usualWidth = 320;
constexpr int endless = 1 << 20; // px
} // namespace

SettledLabel::SettledLabel(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setTextInteractionFlags(Qt::NoTextInteraction);
}

void SettledLabel::setText(const QString& text) {
    if (text == this->text())
        return; // no layout is asked for what stands there
    m_heights.clear();
    QLabel::setText(text);
}

int SettledLabel::heightForWidth(int width) const {
    const auto known = m_heights.constFind(width);
    if (known != m_heights.constEnd())
        return *known;
    const QMargins around = contentsMargins();
    const int inside = std::max(1, width - around.left() - around.right() - 2 * margin());
    const int text = fontMetrics()
                         .boundingRect(QRect(0, 0, inside, endless), Qt::TextWordWrap, this->text())
                         .height();
    const int height =
        std::max(text, fontMetrics().height()) + around.top() + around.bottom() + 2 * margin();
    m_heights.insert(width, height);
    return height;
}

QSize SettledLabel::sizeHint() const {
    const int whole = fontMetrics().horizontalAdvance(text()) + 2;
    const int width = std::min(whole, usualWidth);
    return {width, heightForWidth(width)};
}

// The longest word is never cut; lines may be.
QSize SettledLabel::minimumSizeHint() const {
    int widest = 0;
    for (const QStringView word : QStringView(text()).split(QLatin1Char(' ')))
        widest = std::max(widest, fontMetrics().horizontalAdvance(word.toString()));
    return {std::min(widest, usualWidth), fontMetrics().height()};
}

bool SettledLabel::event(QEvent* event) {
    switch (event->type()) {
    case QEvent::FontChange:
    case QEvent::StyleChange:
    case QEvent::ContentsRectChange:
        m_heights.clear();
        break;
    case QEvent::Enter:
    case QEvent::Leave:
        m_over = event->type() == QEvent::Enter;
        fitSelection();
        break;
    case QEvent::FocusOut:
        fitSelection();
        break;
    default:
        break;
    }
    return QLabel::event(event);
}

void SettledLabel::fitSelection() {
    const bool wanted = m_over || hasFocus();
    const auto flags = wanted ? Qt::TextSelectableByMouse : Qt::NoTextInteraction;
    if (textInteractionFlags() != flags)
        setTextInteractionFlags(flags);
}

// A menu takes the mouse away, and with it what is selected would go.
void SettledLabel::contextMenuEvent(QContextMenuEvent* event) {
    setFocus(Qt::MouseFocusReason);
    QLabel::contextMenuEvent(event);
}

} // namespace slopebook::ui
