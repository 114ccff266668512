// SPDX-License-Identifier: GPL-3.0-or-later
// The window, from the program's side: app/main.cpp makes the application and the settings, this
// runs it.
#pragma once

#include "ui/parts/clock.h"
#include "ui/window/settings.h"

#include <QApplication>

#include <filesystem>
#include <functional>
#include <optional>

namespace slopebook::ui {

/// What the window is given by the program: its last settings, how to keep new ones, the clock,
/// the sample log and the tutorial's pictures.
struct Surroundings {
    Settings settings;
    std::function<void(const Settings&)> keepSettings; ///< called when the window closes
    Clock clock;                      ///< the one that the whole window goes by; must be there
    bool dailyBackups = false;        ///< one that is due is made at opening
    std::filesystem::path sampleLog;  ///< never written to: a copy is opened; empty: none offered
    std::filesystem::path dataFolder; ///< where that copy goes; made when it is needed
    std::filesystem::path tutorial;   ///< its pictures, a folder a language; empty: none
};

/// Opens the window, on the log when one is given (an error is shown in the window), and returns
/// the exit status when it is closed.
int runWindow(QApplication& application, const std::optional<std::filesystem::path>& log,
              const Surroundings& surroundings);

} // namespace slopebook::ui
