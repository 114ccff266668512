// SPDX-License-Identifier: GPL-3.0-or-later
// Painting without a display, for commands that write a PDF.
#pragma once

#include <functional>

namespace slopebook::app {

/// Runs work with a QApplication that needs no display.
void paintOffscreen(const std::function<void()>& work);

} // namespace slopebook::app
