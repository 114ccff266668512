// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/logkeeper.h"

#include "core/log/backups.h"
#include "core/model/errors.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/window/backupsdialog.h"
#include "ui/window/dailybackup.h"
#include "ui/window/mainwindow.h"
#include "ui/window/mergedeeds.h"
#include "ui/window/messagebar.h"
#include "ui/window/openingcheck.h"
#include "ui/window/storedeeds.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

#include <tuple>

namespace slopebook::ui {

namespace {
constexpr std::chrono::milliseconds lookAgain{200};
}

LogKeeper::LogKeeper(MainWindow& window) : m_window(window) {}

LogKeeper::~LogKeeper() = default;

void LogKeeper::forget() {
    m_check.reset();
}

void LogKeeper::beginMeetings(std::shared_ptr<StoreKeeper> store) {
    if (m_sound)
        StoreDeeds(m_window).begin(std::move(store));
}

void LogKeeper::open(const std::function<OpenedLog()>& opener) {
    try {
        OpenedLog opened = opener();
        const bool unchecked = opened.unchecked;
        m_check.reset();
        m_window.adopt(std::move(opened));
        MergeDeeds(m_window).tellWaiting();
        m_sound = !unchecked;
        if (unchecked)
            beginCheck();
        else
            beginBackup();
        beginMeetings();
    } catch (const std::exception& error) {
        m_window.trouble(said(error));
    }
}

void LogKeeper::openFile(const QString& file) {
    const auto path = pathOf(QFileInfo(file).absoluteFilePath());
    m_inTrouble.clear();
    open([&] {
        try {
            return openLog(path);
        } catch (const LogError&) {
            if (!log::backups(path).empty())
                m_inTrouble = path;
            throw;
        }
    });
}

void LogKeeper::createFile(const QString& file) {
    open([&] { return createLog(pathOf(QFileInfo(file).absoluteFilePath())); });
}

void LogKeeper::openSample() {
    open([&] {
        const auto copy =
            m_window.surroundings().dataFolder / m_window.surroundings().sampleLog.filename();
        if (!std::filesystem::exists(copy)) {
            std::filesystem::create_directories(m_window.surroundings().dataFolder);
            // Opening it checks it.
            std::ignore = log::Log::open(m_window.surroundings().sampleLog, log::Access::ReadOnly)
                              .backup(copy);
        }
        return openLog(copy);
    });
}

void LogKeeper::beginBackup() {
    // What cannot be written is not ours to keep copies of, and a damaged log makes none.
    if (!m_window.surroundings().dailyBackups ||
        m_window.workspace()->logbook().log().access() != log::Access::ReadWrite)
        return;
    auto* daily = new DailyBackup(m_window.workspace());
    connect(daily, &DailyBackup::made, m_window.workspace(),
            [this] { m_window.say(MainWindow::tr("A backup was made, and the copy checked.")); });
    connect(daily, &DailyBackup::failed, m_window.workspace(),
            [this](const QString& why, bool damaged) {
                if (damaged) // later: what tells it goes with the log that is opened anew
                    QTimer::singleShot(
                        0, this, [this, why, file = m_window.workspace()->logbook().log().file()] {
                            damageFound(
                                file,
                                why + QLatin1Char(' ') +
                                    MainWindow::tr(
                                        "It is open for reading only, and what is damaged is left "
                                        "out."));
                        });
                else
                    m_window.trouble(
                        MainWindow::tr("Today's backup could not be made. %1").arg(why));
            });
    daily->begin(m_window.workspace()->logbook().log().file(),
                 m_window.surroundings().clock.seconds());
}

// The backup waits for it: one of a damaged log is not made.
void LogKeeper::beginCheck() {
    const std::filesystem::path file = m_window.workspace()->logbook().log().file();
    m_check = std::make_unique<OpeningCheck>(m_window.workspace()->logbook());
    // Queued: what is damaged is opened anew, and the check goes with what it was of.
    connect(
        m_check.get(), &OpeningCheck::sound, this,
        [this, file] {
            if (!m_window.workspace() || m_window.workspace()->logbook().log().file() != file)
                return;
            m_sound = true;
            beginBackup();
            beginMeetings();
        },
        Qt::QueuedConnection);
    connect(
        m_check.get(), &OpeningCheck::damaged, this,
        [this, file](const QString& why) { damageFound(file, why); }, Qt::QueuedConnection);
}

void LogKeeper::damageFound(const std::filesystem::path& log, const QString& why) {
    if (!m_window.workspace() || m_window.workspace()->logbook().log().file() != log ||
        m_window.workspace()->logbook().log().access() != log::Access::ReadWrite)
        return;
    // A dialog knows the log that it was opened over; until it is closed nothing is written.
    if (QApplication::activeModalWidget() || QApplication::activePopupWidget()) {
        QTimer::singleShot(lookAgain, this, [this, log, why] { damageFound(log, why); });
        return;
    }
    const QString before = m_window.workspace()->bar().text();
    reopen(
        [&] { return salvageLog(log, before.isEmpty() ? why : before + QLatin1Char(' ') + why); });
}

void LogKeeper::reopen(const std::function<OpenedLog()>& opener) {
    const auto athlete = m_window.workspace()->athlete();
    const auto lift = m_window.workspace()->lift();
    const EntryPage* entry = m_window.workspace()->madeEntry();
    const auto session = entry ? std::optional(entry->session()) : std::nullopt;
    m_window.surroundings().settings = m_window.settings();
    open(opener);
    m_window.workspace()->choose(athlete, lift);
    if (session) // a new one as well: nobody chose today's
        m_window.workspace()->entry().showSession(*session);
}

void LogKeeper::askWriteOn() {
    if (!m_window.workspace() ||
        m_window.workspace()->logbook().log().access() != log::Access::Salvage)
        return;
    QMessageBox box(
        QMessageBox::Warning, MainWindow::tr("Write into the damaged log?"),
        MainWindow::tr("What is written from now on goes into a damaged file, and no daily backups "
                       "are made of it. What is damaged itself stays as it is. Going back to a "
                       "backup, or importing an export of this log into a new one, is safer."),
        QMessageBox::NoButton, &m_window);
    auto* const write =
        box.addButton(MainWindow::tr("Write all the same"), QMessageBox::AcceptRole);
    auto* const leave = box.addButton(MainWindow::tr("Leave it as it is"), QMessageBox::RejectRole);
    box.setDefaultButton(leave);
    box.setEscapeButton(leave);
    box.exec();
    if (box.clickedButton() != write)
        return;
    const std::filesystem::path file = m_window.workspace()->logbook().log().file();
    reopen([&] {
        return writeOnLog(
            file, MainWindow::tr("This log is damaged, and is written to because you said so. "
                                 "What is damaged is left out."));
    });
}

void LogKeeper::showBackupsOfOpen() {
    if (m_window.workspace())
        showBackups(m_window.workspace()->logbook().log().file());
}

void LogKeeper::askGoBack() {
    if (!m_inTrouble.empty())
        showBackups(m_inTrouble);
    else if (m_window.workspace())
        showBackups(m_window.workspace()->logbook().log().file());
}

void LogKeeper::showBackups(const std::filesystem::path& log) {
    BackupsDialog dialog(log, &m_window);
    dialog.exec();
    if (const auto backup = dialog.chosen(); !backup.empty())
        goBack(log, backup);
}

void LogKeeper::goBack(const std::filesystem::path& log, const std::filesystem::path& backup) {
    const std::filesystem::path file = log; // the workspace that it may be a part of goes
    const bool open = m_window.workspace() && m_window.workspace()->logbook().log().file() == file;
    if (open)
        m_window.closeLogFile();
    QString problem;
    std::filesystem::path kept;
    try {
        kept = log::goBackTo(backup, file);
    } catch (const std::exception& error) {
        problem = said(error);
    }
    if (problem.isEmpty() || open)
        openFile(nameOf(file));
    if (!problem.isEmpty())
        m_window.trouble(problem);
    else if (kept.empty())
        m_window.say(MainWindow::tr("The backup stands in the place of the log."));
    else
        m_window.say(
            MainWindow::tr("The backup stands in the place of the log, which is kept as %1.")
                .arg(QFileInfo(nameOf(kept)).fileName()));
}

} // namespace slopebook::ui
