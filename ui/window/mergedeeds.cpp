// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/mergedeeds.h"

#include "core/desks/merge.h"
#include "core/log/backups.h"
#include "core/log/hold.h"
#include "ui/parts/filedialog.h"
#include "ui/window/choicesdialog.h"
#include "ui/window/mainwindow.h"
#include "ui/window/mergedialog.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QFileInfo>
#include <QStandardPaths>

namespace slopebook::ui {

namespace {
/// While a log is read and compared.
class Waiting {
public:
    Waiting() { QApplication::setOverrideCursor(Qt::WaitCursor); }
    ~Waiting() { QApplication::restoreOverrideCursor(); }
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;
};
} // namespace

void MergeDeeds::askMerge() {
    if (!m_window.workspace())
        return;
    const QString file = filedialog::open(
        &m_window, {.title = MainWindow::tr("Merge another log"),
                    .start = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                    .filter = MainWindow::tr("Logs (*.slopebook);;All files (*)")});
    if (!file.isEmpty())
        merge(file);
}

void MergeDeeds::merge(const QString& file) {
    if (!m_window.workspace())
        return;
    Logbook& logbook = m_window.workspace()->logbook();
    const auto other = pathOf(QFileInfo(file).absoluteFilePath());
    try {
        const desks::MergeReport preview = [&] {
            const Waiting waiting;
            return desks::previewMerge(logbook.log(), other);
        }();
        if (preview.nothingNew) {
            m_window.say(
                MainWindow::tr("Nothing new: everything of %1 is in the log already.").arg(file));
            return;
        }
        MergeDialog dialog(preview, file, logbook, &m_window);
        if (dialog.exec() != QDialog::Accepted)
            return;
        {
            const Waiting waiting;
            log::passHold(logbook.log());
            log::backUpBeforeMerge(logbook.log());
            logbook.applyOutsideUndo([&](log::Log& log) { desks::takeInto(log, other); });
        }
        m_window.say(MainWindow::tr("Merged. A copy of the log as it was before is in its folder "
                                    "of backups."));
        if (desks::openConflictCount(logbook.log()) > 0)
            choose();
    } catch (const std::exception& error) {
        m_window.trouble(said(error));
    }
}

void MergeDeeds::choose() {
    if (!m_window.workspace())
        return;
    Logbook& logbook = m_window.workspace()->logbook();
    try {
        if (desks::openConflictCount(logbook.log()) == 0) {
            m_window.say(MainWindow::tr("Nothing is to be chosen."));
            return;
        }
        ChoicesDialog dialog(logbook, &m_window);
        dialog.exec();
        tellWaiting();
    } catch (const std::exception& error) {
        m_window.trouble(said(error));
    }
}

void MergeDeeds::tellWaiting() {
    if (!m_window.workspace())
        return;
    try {
        const auto open = desks::openConflictCount(m_window.workspace()->logbook().log());
        if (open > 0)
            m_window.say(MainWindow::tr("%n choices between two logs wait: Log, Choose between two "
                                        "sides.",
                                        nullptr, static_cast<int>(open)));
    } catch (const std::exception&) { // NOLINT(bugprone-empty-catch): told where they are read
    }
}

} // namespace slopebook::ui
