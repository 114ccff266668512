// SPDX-License-Identifier: GPL-3.0-or-later
// The common frame of dialogs that keep a list: the list, its buttons beside it, Close below.
#pragma once

#include <QDialog>

#include <initializer_list>

class QPushButton;

namespace slopebook::ui {

void layOutList(QDialog& dialog, QWidget* list, std::initializer_list<QPushButton*> buttons);

} // namespace slopebook::ui
