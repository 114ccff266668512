// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/mergedeeds.h"

#include "core/desks/merge.h"
#include "core/log/hold.h"
#include "ui/parts/filedialog.h"
#include "ui/parts/jobdialog.h"
#include "ui/window/choicesdialog.h"
#include "ui/window/mainwindow.h"
#include "ui/window/mergedialog.h"
#include "ui/window/mergerows.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QFileInfo>
#include <QStandardPaths>

#include <memory>
#include <optional>

namespace slopebook::ui {

namespace {
/// The other log, read once, and what would come of it.
struct Coming {
    std::optional<desks::ComingLog> log{};
    desks::MergeReport report{};
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
    const auto mine = logbook.log().file();
    const auto sayNothingNew = [&] {
        m_window.say(
            MainWindow::tr("Nothing new: everything of %1 is in the log already.").arg(file));
    };
    try {
        const auto coming = std::make_shared<Coming>();
        const bool read = JobDialog::run(
            &m_window, MainWindow::tr("%1 is being read and compared.").arg(file),
            [coming, other, mine](const Progress& progress) { // a connection of its own
                const log::Log own = log::Log::open(mine, log::Access::ReadOnly);
                coming->log.emplace(other, own, progress);
                coming->report = coming->log->preview(own, progress);
            });
        if (!read)
            return;
        if (coming->report.nothingNew) {
            sayNothingNew();
            return;
        }
        MergeDialog dialog(coming->report, file, logbook, &m_window);
        if (dialog.exec() != QDialog::Accepted)
            return;
        log::passHold(logbook.log());
        const auto came = std::make_shared<desks::MergeReport>();
        const bool taken =
            JobDialog::run(&m_window, MainWindow::tr("%1 is being merged.").arg(file),
                           [coming, came, mine](const Progress& progress) {
                               log::Log own = log::Log::open(mine);
                               *came = coming->log->mergeInto(own, progress);
                           });
        if (!taken)
            return;
        logbook.applyOutsideUndo([](log::Log&) {}); // another connection wrote: all is told of it
        if (came->backup.empty()) {                 // the same was merged from elsewhere meanwhile
            sayNothingNew();
            return;
        }
        m_window.say(MainWindow::tr("Merged. A copy of the log as it was before is in its folder "
                                    "of backups."));
        if (!readsAlike(*came, coming->report, logbook.loadUnit()))
            MergeDialog(*came, file, logbook, &m_window, MergeDialog::When::Done).exec();
        if (desks::openConflictCount(logbook.log()) > 0)
            choose();
    } catch (const JobDialog::Failed& failed) {
        m_window.trouble(failed.why);
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
