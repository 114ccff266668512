// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/fold.h"

#include <QVBoxLayout>

namespace slopebook::ui {

FoldButton::FoldButton(const QString& words, std::initializer_list<QWidget*> folded,
                       QWidget* parent)
    : QToolButton(parent), m_folded(folded) {
    setText(words);
    setAutoRaise(true);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    connect(this, &QToolButton::toggled, this, &FoldButton::fold);
    fold();
}

void FoldButton::fold() {
    setArrowType(isChecked() ? Qt::DownArrow : Qt::RightArrow);
    for (QWidget* each : m_folded)
        each->setVisible(isChecked());
}

SourcesFold::SourcesFold(QWidget* inside, const QString& title, QWidget* parent)
    : QWidget(parent),
      m_button(new FoldButton(title.isEmpty() ? tr("Where this comes from") : title, {inside})) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(m_button);
    layout->addWidget(inside);
}

} // namespace slopebook::ui
