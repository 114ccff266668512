// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/messagebar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace slopebook::ui {

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent), m_label(new QLabel), m_offer(new QPushButton) {
    setFrameShape(QFrame::StyledPanel);
    setBackgroundRole(QPalette::ToolTipBase);
    setForegroundRole(QPalette::ToolTipText);
    setAutoFillBackground(true);
    m_label->setWordWrap(true);
    m_label->setForegroundRole(QPalette::ToolTipText);
    m_label->setObjectName(QStringLiteral("barText"));
    m_label->setAccessibleDescription(tr("Message"));
    auto* close = new QPushButton(tr("Dismiss"));
    close->setFlat(true);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(10, 4, 4, 4);
    layout->addWidget(m_label, 1);
    layout->addWidget(m_offer);
    layout->addWidget(close);
    m_offer->setObjectName(QStringLiteral("offer"));
    m_offer->hide();
    connect(m_offer, &QPushButton::clicked, this, &MessageBar::offerTaken);
    connect(close, &QPushButton::clicked, this, &QWidget::hide);
    hide();
}

void MessageBar::showText(const QString& text, const QString& offer) {
    m_text = text;
    m_offer->setText(offer);
    m_offer->setVisible(!offer.isEmpty());
    m_label->setText(text.isEmpty() ? QString() : QStringLiteral("\u26a0 ") + text);
    setVisible(!text.isEmpty());
}

} // namespace slopebook::ui
