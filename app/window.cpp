// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window.h"

#include "app/commands/commands.h"
#include "ui/window/application.h"
#include "ui/window/run.h"

#include <QApplication>
#include <QDateTime>
#include <QSettings>
#include <QStandardPaths>

#include <algorithm>
#include <cstdio>

namespace slopebook::app {

namespace {

ui::Settings readSettings() {
    const QSettings store;
    return {.geometry = store.value(QLatin1String("window/geometry")).toByteArray(),
            .windowState = store.value(QLatin1String("window/state")).toByteArray(),
            .recentLogs = store.value(QLatin1String("logs/recent")).toStringList(),
            .page = store.value(QLatin1String("window/page")).toString(),
            .openLog = store.value(QLatin1String("left/log")).toString(),
            .athlete = store.value(QLatin1String("left/athlete"), 0).toLongLong(),
            .lift = store.value(QLatin1String("left/lift"), 0).toLongLong(),
            .scheme = ui::schemeCalled(store.value(QLatin1String("window/colours")).toString()),
            .indexFolded =
                store.contains(QLatin1String("window/indexFolded"))
                    ? std::optional(store.value(QLatin1String("window/indexFolded")).toBool())
                    : std::nullopt,
            .indexWidth =
                store.value(QLatin1String("window/indexWidth"), ui::Settings{}.indexWidth).toInt(),
            .language = store.value(QLatin1String("window/language")).toString(),
            .importMaps = store.value(QLatin1String("import/maps")).toStringList(),
            .unit = store.value(QLatin1String("window/unit")).toString() == QLatin1String("lb")
                        ? ui::LoadUnit::Pounds
                        : ui::LoadUnit::Kilograms,
            .repeatDays = std::clamp(
                store.value(QLatin1String("tests/repeatDays"), ui::Settings{}.repeatDays).toInt(),
                1, 60),
            .restTimer = store.value(QLatin1String("window/restTimer"), false).toBool(),
            .unwritten = store.value(QLatin1String("stations/unwritten")).toStringList(),
            .unwrittenSets = store.value(QLatin1String("session/unwritten")).toStringList(),
            .fingers = store.contains(QLatin1String("window/fingers"))
                           ? std::optional(store.value(QLatin1String("window/fingers")).toBool())
                           : std::nullopt};
}

void keepSettings(const ui::Settings& settings) {
    QSettings store;
    store.setValue(QLatin1String("window/geometry"), settings.geometry);
    store.setValue(QLatin1String("window/state"), settings.windowState);
    store.setValue(QLatin1String("logs/recent"), settings.recentLogs);
    store.setValue(QLatin1String("window/page"), settings.page);
    store.setValue(QLatin1String("left/log"), settings.openLog);
    store.setValue(QLatin1String("left/athlete"), settings.athlete);
    store.setValue(QLatin1String("left/lift"), settings.lift);
    store.setValue(QLatin1String("window/colours"), ui::wordOf(settings.scheme));
    store.setValue(QLatin1String("window/language"), settings.language);
    store.setValue(QLatin1String("import/maps"), settings.importMaps);
    store.setValue(QLatin1String("window/unit"), ui::unitName(settings.unit));
    store.setValue(QLatin1String("window/restTimer"), settings.restTimer);
    store.setValue(QLatin1String("tests/repeatDays"), settings.repeatDays);
    if (settings.indexFolded)
        store.setValue(QLatin1String("window/indexFolded"), *settings.indexFolded);
    store.setValue(QLatin1String("window/indexWidth"), settings.indexWidth);
    store.setValue(QLatin1String("stations/unwritten"), settings.unwritten);
    store.setValue(QLatin1String("session/unwritten"), settings.unwrittenSets);
    if (settings.fingers)
        store.setValue(QLatin1String("window/fingers"), *settings.fingers);
}

// Beside the program in a build, else where it was installed; empty: nowhere.
std::filesystem::path broughtAlong(const char* inBuild, const char* installed) {
    const std::filesystem::path here = QCoreApplication::applicationDirPath().toStdString();
    for (const auto& file : {here / ".." / inBuild, here / "../share/slopebook" / installed})
        if (std::filesystem::exists(file))
            return file;
    return {};
}

bool haveDisplay() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

} // namespace

int openWindow(int& argc, char** argv, const std::optional<std::filesystem::path>& log) {
    if (!haveDisplay()) {
        std::fputs("slopebook: there is no display to open the window on (neither DISPLAY nor "
                   "WAYLAND_DISPLAY is set).\n\"slopebook --help\" lists the commands that need "
                   "none.\n",
                   stderr);
        return exitBad;
    }
    const auto application = ui::makeApplication(argc, argv);
    QApplication::setApplicationName(QStringLiteral("slopebook"));
    QApplication::setOrganizationName(QStringLiteral("slopebook"));
    QApplication::setApplicationVersion(QStringLiteral(SLOPEBOOK_VERSION));
    QApplication::setApplicationDisplayName(QStringLiteral("Slopebook"));
    const QString data = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
                         QStringLiteral("/slopebook");
    return ui::runWindow(
        *application, log,
        {.settings = readSettings(),
         .keepSettings = keepSettings,
         .clock = ui::Clock([] { return QDateTime::currentDateTime(); }),
         .dailyBackups = true,
         .sampleLog = broughtAlong("sample_db/sample.slopebook", "sample.slopebook"),
         .dataFolder = data.toStdString(),
         .tutorial = broughtAlong("tutorial", "tutorial")});
}

} // namespace slopebook::app
