// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/run.h"

#include "ui/shell/mainwindow.h"

namespace slopebook::ui {

int runWindow(QApplication& application, const std::optional<std::filesystem::path>& log,
              const Surroundings& surroundings) {
    MainWindow window(surroundings);
    window.show();
    if (log)
        window.openLogFile(nameOf(*log));
    return application.exec();
}

} // namespace slopebook::ui
