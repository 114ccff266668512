// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/offscreen.h"

#include "ui/window/application.h"

#include <QApplication>
#include <QLocale>
#include <QtGlobal>

namespace slopebook::app {

namespace {
QtMessageHandler before = nullptr;

/// Under cron or su there is no runtime folder of the user's own, which a page does not need: where
/// nothing is wrong, nothing is said.
void withoutFolders(QtMsgType type, const QMessageLogContext& context, const QString& said) {
    if (!said.startsWith(QLatin1String("QStandardPaths:")))
        before(type, context, said);
}
} // namespace

void paintOffscreen(const std::function<void()>& work) {
    if (QApplication::instance()) {
        work();
        return;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    char name[] = "slopebook";
    char* arguments[] = {name, nullptr};
    int count = 1;
    before = qInstallMessageHandler(withoutFolders);
    const auto application = ui::makeApplication(count, arguments);
    QLocale::setDefault(QLocale::c()); // a page written by a command is English, as all it says
    work();
}

} // namespace slopebook::app
