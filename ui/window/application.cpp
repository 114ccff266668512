// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/application.h"

#include <QApplication>

#include <clocale>

namespace slopebook::ui {

std::unique_ptr<QApplication> makeApplication(int& argc, char** argv) {
    auto application = std::make_unique<QApplication>(argc, argv);
    std::setlocale(LC_NUMERIC, "C");
    return application;
}

} // namespace slopebook::ui
