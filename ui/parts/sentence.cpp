// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/sentence.h"

#include "ui/words/readable.h"

#include <QApplication>
#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <QStyle>

#include <algorithm>
#include <array>

namespace slopebook::ui {

namespace {
constexpr std::array sizes{1.8, 1.55, 1.35}; // of the words around it
constexpr double steadySize = 1.5;
constexpr double steadyLow = 1.2; // in a low window: what stands under it is read as well
constexpr int lowWindow = 500;    // px: the largest is for a window above it
constexpr int tall = 1 << 20;     // px

QRect laidOut(const QFont& font, int width, const QString& text) {
    return QFontMetrics(font).boundingRect(QRect(0, 0, std::max(1, width), tall), Qt::TextWordWrap,
                                           withWholeFigures(text));
}
} // namespace

QFont sentenceFont(const QFont& words, double times) {
    QFont font = words;
    font.setFamilies({QStringLiteral("Noto Serif"), QStringLiteral("DejaVu Serif")});
    font.setPointSizeF(words.pointSizeF() * times);
    return font;
}

Sentence::Sentence(QWidget* parent) : SettledLabel(parent) {
    setFont(sentenceFont(QApplication::font(this), sizes.back()));
}

QFont Sentence::fitting(int width) const {
    const QFont words = QApplication::font(this);
    const bool low = window()->height() < lowWindow;
    if (m_steady)
        return sentenceFont(words, low ? steadyLow : steadySize);
    for (auto size = sizes.begin() + (low ? 1 : 0); size + 1 != sizes.end(); ++size) {
        const QFont font = sentenceFont(words, *size);
        const QRect text = laidOut(font, width, this->text());
        if (text.width() <= width && text.height() <= 2 * QFontMetrics(font).lineSpacing())
            return font;
    }
    return sentenceFont(words, sizes.back());
}

int Sentence::heightForWidth(int width) const {
    const auto known = m_fitted.constFind(width);
    if (known != m_fitted.constEnd())
        return *known;
    const QFont font = fitting(width);
    const int height = std::max(laidOut(font, width, text()).height(), QFontMetrics(font).height());
    m_fitted.insert(width, height);
    return height;
}

void Sentence::setText(const QString& text) {
    if (text == this->text())
        return;
    m_fitted.clear();
    SettledLabel::setText(text);
    fit();
}

void Sentence::fit() {
    if (const QFont wanted = fitting(width()); wanted != font())
        setFont(wanted);
}

void Sentence::setSteady(bool steady) {
    m_steady = steady;
    m_fitted.clear();
    fit();
}

// As QLabel does it, but for units; while something of it is being selected QLabel itself.
void Sentence::paintEvent(QPaintEvent* event) {
    if (textInteractionFlags() != Qt::NoTextInteraction)
        return SettledLabel::paintEvent(event);
    QPainter painter(this);
    style()->drawItemText(&painter, contentsRect(), int(alignment()) | Qt::TextWordWrap, palette(),
                          isEnabled(), withWholeUnits(text()), foregroundRole());
}

void Sentence::resizeEvent(QResizeEvent* event) {
    m_fitted.clear(); // the window may be lower now
    SettledLabel::resizeEvent(event);
    fit();
}

bool Sentence::event(QEvent* event) {
    if (event->type() == QEvent::ApplicationFontChange || event->type() == QEvent::StyleChange)
        m_fitted.clear();
    return SettledLabel::event(event);
}

} // namespace slopebook::ui
