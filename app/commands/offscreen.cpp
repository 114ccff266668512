// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/offscreen.h"

#include "ui/shell/application.h"

#include <QApplication>
#include <QLocale>

namespace slopebook::app {

void paintOffscreen(const std::function<void()>& work) {
    if (QApplication::instance()) {
        work();
        return;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    char name[] = "slopebook";
    char* arguments[] = {name, nullptr};
    int count = 1;
    const auto application = ui::makeApplication(count, arguments);
    QLocale::setDefault(QLocale::c()); // a page written by a command is English, as all it says
    work();
}

} // namespace slopebook::app
