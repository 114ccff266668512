// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/application.h"

#include "ui/parts/deskstyle.h"

#include <QApplication>
#include <QIcon>

#include <clocale>

namespace slopebook::ui {

std::unique_ptr<QApplication> makeApplication(int& argc, char** argv) {
    auto application = std::make_unique<QApplication>(argc, argv);
    wearDeskStyle();
    std::setlocale(LC_NUMERIC, "C");
    // By these a desktop knows whose windows they are: its file is that of the menu entry, and on
    // X11 the entry names the class that Qt makes of the program's name.
    QApplication::setDesktopFileName(QStringLiteral("org.slopebook.Slopebook"));
    QApplication::setWindowIcon(QIcon::fromTheme(QStringLiteral("slopebook"),
                                                 QIcon(QStringLiteral(":/icons/slopebook.svg"))));
    return application;
}

} // namespace slopebook::ui
