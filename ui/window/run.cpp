// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/run.h"

#include "ui/window/mainwindow.h"
#include "ui/words/format.h"

namespace slopebook::ui {

int runWindow(QApplication& application, const std::optional<std::filesystem::path>& log,
              const Surroundings& surroundings) {
    MainWindow window(surroundings);
    window.show();
    window.begin(log ? nameOf(*log) : QString());
    return application.exec();
}

} // namespace slopebook::ui
