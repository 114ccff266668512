// SPDX-License-Identifier: GPL-3.0-or-later
// Backups in the window: the one that is due at opening, and the way back.
#include "core/model/errors.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/window/backupsdialog.h"
#include "ui/window/dailybackup.h"
#include "ui/window/mainwindow.h"
#include "ui/window/messagebar.h"
#include "ui/window/openingcheck.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

namespace slopebook::ui {

namespace {
constexpr std::chrono::milliseconds lookAgain{200};
}

void MainWindow::beginBackup() {
    // What cannot be written is not ours to keep copies of, and a damaged log makes none.
    if (!m_surroundings.dailyBackups ||
        m_workspace->logbook().log().access() != log::Access::ReadWrite)
        return;
    auto* daily = new DailyBackup(m_workspace);
    connect(daily, &DailyBackup::made, m_workspace,
            [this] { say(tr("A backup was made, and the copy checked.")); });
    connect(daily, &DailyBackup::failed, m_workspace, [this](const QString& why, bool damaged) {
        if (damaged) // later: what tells it goes with the log that is opened anew
            QTimer::singleShot(0, this, [this, why, file = m_workspace->logbook().log().file()] {
                damageFound(file, why + QLatin1Char(' ') +
                                      tr("It is open for reading only, and what is damaged is left "
                                         "out."));
            });
        else
            trouble(tr("Today's backup could not be made. %1").arg(why));
    });
    daily->begin(m_workspace->logbook().log().file(), m_surroundings.clock.seconds());
}

// The backup waits for it: one of a damaged log is not made.
void MainWindow::beginCheck() {
    const std::filesystem::path file = m_workspace->logbook().log().file();
    m_check = std::make_unique<OpeningCheck>(m_workspace->logbook());
    // Queued: what is damaged is opened anew, and the check goes with what it was of.
    connect(
        m_check.get(), &OpeningCheck::sound, this,
        [this, file] {
            if (m_workspace && m_workspace->logbook().log().file() == file)
                beginBackup();
        },
        Qt::QueuedConnection);
    connect(
        m_check.get(), &OpeningCheck::damaged, this,
        [this, file](const QString& why) { damageFound(file, why); }, Qt::QueuedConnection);
}

void MainWindow::damageFound(const std::filesystem::path& log, const QString& why) {
    if (!m_workspace || m_workspace->logbook().log().file() != log ||
        m_workspace->logbook().log().access() != log::Access::ReadWrite)
        return;
    // A dialog knows the log that it was opened over; until it is closed nothing is written.
    if (QApplication::activeModalWidget() || QApplication::activePopupWidget()) {
        QTimer::singleShot(lookAgain, this, [this, log, why] { damageFound(log, why); });
        return;
    }
    const QString before = m_workspace->bar().text();
    reopen(
        [&] { return salvageLog(log, before.isEmpty() ? why : before + QLatin1Char(' ') + why); });
}

void MainWindow::reopen(const std::function<OpenedLog()>& opener) {
    const auto athlete = m_workspace->athlete();
    const auto lift = m_workspace->lift();
    const auto session = m_workspace->entry().session();
    m_surroundings.settings = settings();
    open(opener);
    m_workspace->choose(athlete, lift);
    m_workspace->entry().showSession(session); // a new one as well: nobody chose today's
}

void MainWindow::askWriteOn() {
    if (!m_workspace || m_workspace->logbook().log().access() != log::Access::Salvage)
        return;
    QMessageBox box(QMessageBox::Warning, tr("Write into the damaged log?"),
                    tr("What is written from now on goes into a damaged file, and no daily backups "
                       "are made of it. What is damaged itself stays as it is. Going back to a "
                       "backup, or importing an export of this log into a new one, is safer."),
                    QMessageBox::NoButton, this);
    auto* const write = box.addButton(tr("Write all the same"), QMessageBox::AcceptRole);
    auto* const leave = box.addButton(tr("Leave it as it is"), QMessageBox::RejectRole);
    box.setDefaultButton(leave);
    box.setEscapeButton(leave);
    box.exec();
    if (box.clickedButton() != write)
        return;
    const std::filesystem::path file = m_workspace->logbook().log().file();
    reopen([&] {
        return writeOnLog(file, tr("This log is damaged, and is written to because you said so. "
                                   "What is damaged is left out."));
    });
}

void MainWindow::askGoBack() {
    if (!m_inTrouble.empty())
        showBackups(m_inTrouble);
    else if (m_workspace)
        showBackups(m_workspace->logbook().log().file());
}

void MainWindow::showBackups(const std::filesystem::path& log) {
    BackupsDialog dialog(log, this);
    dialog.exec();
    if (const auto backup = dialog.chosen(); !backup.empty())
        goBack(log, backup);
}

void MainWindow::goBack(const std::filesystem::path& log, const std::filesystem::path& backup) {
    const std::filesystem::path file = log; // the workspace that it may be a part of goes
    const bool open = m_workspace && m_workspace->logbook().log().file() == file;
    if (open)
        closeLogFile();
    QString problem;
    std::filesystem::path kept;
    try {
        kept = log::goBackTo(backup, file);
    } catch (const std::exception& error) {
        problem = said(error);
    }
    if (problem.isEmpty() || open)
        openLogFile(nameOf(file));
    if (!problem.isEmpty())
        trouble(problem);
    else if (kept.empty())
        say(tr("The backup stands in the place of the log."));
    else
        say(tr("The backup stands in the place of the log, which is kept as %1.")
                .arg(QFileInfo(nameOf(kept)).fileName()));
}

} // namespace slopebook::ui
