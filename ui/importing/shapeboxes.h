// SPDX-License-Identifier: GPL-3.0-or-later
// Boxes of the editor of a table's shape: each has a name, and is chosen by what it stands for.
#pragma once

#include <QComboBox>

#include <algorithm>

namespace slopebook::ui {

/// The entry of that data; the first where there is none.
inline void chooseIn(QComboBox* box, int value) {
    box->setCurrentIndex(std::max(0, box->findData(value)));
}

inline QComboBox* boxNamed(const QString& name, const QString& accessible) {
    auto* box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(accessible);
    return box;
}

} // namespace slopebook::ui
