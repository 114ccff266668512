// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/storeline.h"

#include "ui/words/readable.h"

#include <QStyleOptionButton>

#include <utility>

namespace slopebook::ui {

StoreLine::StoreLine(std::shared_ptr<StoreKeeper> keeper) : m_keeper(std::move(keeper)) {
    setFlat(true);
    setFocusPolicy(Qt::TabFocus); // a click takes the keys from nobody
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    setObjectName(QStringLiteral("storeLine"));
    setAccessibleDescription(tr("How it stands with the shared store; opens what came and waits"));
    connect(m_keeper.get(), &StoreKeeper::changed, this, &StoreLine::tell);
    tell();
}

void StoreLine::tell() {
    const StoreState& state = m_keeper->state();
    m_whole = storeLine(state, m_keeper->now());
    m_brief = briefStoreLine(state);
    setAccessibleName(m_whole);
    setToolTip(m_whole);
    updateGeometry();
    fit();
}

QSize StoreLine::sizeOf(const QString& words) const {
    QStyleOptionButton option;
    initStyleOption(&option);
    const QSize text = fontMetrics().size(Qt::TextShowMnemonic, words);
    return style()->sizeFromContents(QStyle::CT_PushButton, &option, text, this);
}

QSize StoreLine::sizeHint() const {
    return sizeOf(m_whole);
}

QSize StoreLine::minimumSizeHint() const {
    return sizeOf(m_brief);
}

void StoreLine::fit() {
    setText(asLabel(width() < sizeHint().width() ? m_brief : m_whole));
}

void StoreLine::resizeEvent(QResizeEvent* event) {
    QPushButton::resizeEvent(event);
    fit();
}

} // namespace slopebook::ui
