// SPDX-License-Identifier: GPL-3.0-or-later
// A short word before its box, which a crowded line of controls would cut.
#pragma once

#include <QLabel>

namespace slopebook::ui {

inline void keepWhole(QLabel& caption) {
    caption.setMargin(1);
    caption.setMinimumWidth(caption.sizeHint().width() + 4);
}

} // namespace slopebook::ui
