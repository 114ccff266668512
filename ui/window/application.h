// SPDX-License-Identifier: GPL-3.0-or-later
// The one place that makes the application: for the window, and for pages that a command paints.
#pragma once

#include <memory>

class QApplication;

namespace slopebook::ui {

/// The application, with the process's C locale left to write numbers with a point: Qt sets it to
/// the desktop's, under which the library that writes workbooks would write "1,06". Texts for
/// people go through QLocale, which this does not touch. argc must outlive it.
std::unique_ptr<QApplication> makeApplication(int& argc, char** argv);

} // namespace slopebook::ui
