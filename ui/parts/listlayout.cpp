// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/listlayout.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace slopebook::ui {

void layOutList(QDialog& dialog, QWidget* list, std::initializer_list<QPushButton*> buttons) {
    auto* beside = new QVBoxLayout;
    for (QPushButton* button : buttons) {
        button->setAutoDefault(false);
        beside->addWidget(button);
    }
    beside->addStretch();
    auto* row = new QHBoxLayout;
    row->addWidget(list, 1);
    row->addLayout(beside);
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(close, &QDialogButtonBox::rejected, &dialog, &QDialog::accept);
    auto* layout = new QVBoxLayout(&dialog);
    layout->addLayout(row, 1);
    layout->addWidget(close);
}

} // namespace slopebook::ui
