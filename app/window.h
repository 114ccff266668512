// SPDX-License-Identifier: GPL-3.0-or-later
// The window as the program starts it: application, settings, sample log.
#pragma once

#include <filesystem>
#include <optional>

namespace slopebook::app {

/// Runs the window until it is closed; the exit status. Without a display it says so and returns
/// exitBad.
int openWindow(int& argc, char** argv, const std::optional<std::filesystem::path>& log);

} // namespace slopebook::app
