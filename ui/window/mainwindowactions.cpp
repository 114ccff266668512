// SPDX-License-Identifier: GPL-3.0-or-later
// What the menus of the window do.
#include "core/exchange/tidyexport.h"
#include "ui/charts/chartmenu.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/parts/filedialog.h"
#include "ui/parts/fingers.h"
#include "ui/parts/longwork.h"
#include "ui/window/aboutdialog.h"
#include "ui/window/helpdialog.h"
#include "ui/window/mainwindow.h"
#include "ui/window/messagebar.h"
#include "ui/window/welcomepage.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QClipboard>
#include <QFileInfo>
#include <QMenu>
#include <QStandardPaths>
#include <QUndoStack>

namespace slopebook::ui {

namespace {
QString suffix() {
    return QStringLiteral(".slopebook");
}

QString logFilter() {
    return MainWindow::tr("Logs (*.slopebook);;All files (*)");
}

QString startFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}
} // namespace

void MainWindow::connectLogActions() {
    connect(m_actions.newLog, &QAction::triggered, this, &MainWindow::askNew);
    connect(m_actions.openLog, &QAction::triggered, this, &MainWindow::askOpen);
    connect(m_actions.openSample, &QAction::triggered, this, &MainWindow::openSample);
    connect(m_actions.importCsv, &QAction::triggered, this, &MainWindow::askImport);
    connect(m_actions.importPasted, &QAction::triggered, this, &MainWindow::importClipboard);
    connect(m_actions.exportAll, &QAction::triggered, this, &MainWindow::askExport);
    connect(m_actions.backUp, &QAction::triggered, this, &MainWindow::askBackUp);
    connect(m_actions.backups, &QAction::triggered, this, [this] {
        if (m_workspace)
            showBackups(m_workspace->logbook().log().file());
    });
    connect(m_actions.writeOn, &QAction::triggered, this, &MainWindow::askWriteOn);
    connect(m_welcome, &WelcomePage::backupsWanted, this, &MainWindow::askGoBack);
    connect(m_actions.closeLog, &QAction::triggered, this, &MainWindow::closeLogFile);
    connect(m_actions.quit, &QAction::triggered, this, &QWidget::close);
    const auto prints = [this](auto what) {
        return [this, what] {
            auto* page = m_workspace ? dynamic_cast<Prints*>(m_workspace->currentPage()) : nullptr;
            if (page && page->canPrint())
                (page->*what)();
            else if (page)
                say(tr("There is nothing to print yet."));
        };
    };
    connect(m_actions.print, &QAction::triggered, this, prints(&Prints::print));
    connect(m_actions.preview, &QAction::triggered, this, prints(&Prints::printPreview));
    connect(m_actions.pdf, &QAction::triggered, this, prints(&Prints::writePdf));
    connect(m_welcome, &WelcomePage::sampleWanted, this, &MainWindow::openSample);
    connect(m_welcome, &WelcomePage::newWanted, this, &MainWindow::askNew);
    connect(m_welcome, &WelcomePage::openWanted, this, &MainWindow::askOpen);
    connect(m_welcome, &WelcomePage::importWanted, this, &MainWindow::askImport);
    connect(m_welcome, &WelcomePage::recentWanted, this, &MainWindow::openLogFile);
}

void MainWindow::connectRecordActions() {
    const auto inWorkspace = [this](QAction* action, auto what) {
        connect(action, &QAction::triggered, this, [this, what] {
            if (m_workspace)
                (m_workspace->*what)();
        });
    };
    inWorkspace(m_actions.addAthlete, &Workspace::addAthlete);
    inWorkspace(m_actions.changeAthlete, &Workspace::changeAthlete);
    inWorkspace(m_actions.addLift, &Workspace::addLift);
    inWorkspace(m_actions.changeLift, &Workspace::changeLift);
    inWorkspace(m_actions.checkLoads, &Workspace::setCheckLoads);
    inWorkspace(m_actions.devices, &Workspace::keepDevices);
    inWorkspace(m_actions.blocks, &Workspace::keepBlocks);
    inWorkspace(m_actions.findAthlete, &Workspace::focusAthlete);
    inWorkspace(m_actions.findLift, &Workspace::focusLift);
    const auto inEntry = [this](QAction* action, auto what) {
        connect(action, &QAction::triggered, this, [this, what] {
            if (!m_workspace)
                return;
            m_workspace->showTask(0);
            (m_workspace->entry().*what)();
        });
    };
    inEntry(m_actions.editSet, &EntryPage::openSet);
    inEntry(m_actions.removeSet, &EntryPage::removeSet);
    inEntry(m_actions.newSession, &EntryPage::beginSession);
    inEntry(m_actions.details, &EntryPage::openDetails);
    inEntry(m_actions.removeSession, &EntryPage::removeSession);
    inEntry(m_actions.typeSet, &EntryPage::focusLine);
}

void MainWindow::connectGoAndHelp() {
    for (qsizetype i = 0; i < m_actions.tasks.size(); ++i)
        connect(m_actions.tasks[i], &QAction::triggered, this, [this, i] {
            if (m_workspace)
                m_workspace->showTask(static_cast<int>(i));
        });
    connect(m_actions.help, &QAction::triggered, this, [this] { showHelp(HelpDialog::Typing); });
    connect(m_actions.keys, &QAction::triggered, this, [this] { showHelp(HelpDialog::Keys); });
    connect(m_actions.method, &QAction::triggered, this, [this] { showHelp(HelpDialog::Method); });
    connect(m_actions.cautions, &QAction::triggered, this,
            [this] { showHelp(HelpDialog::Cautions); });
    connect(m_actions.about, &QAction::triggered, this, &MainWindow::showAbout);
    for (QObject* holder : m_actions.undo->associatedObjects())
        if (auto* menu = qobject_cast<QMenu*>(holder))
            connect(menu, &QMenu::aboutToShow, this, &MainWindow::nameSteps);
    connect(m_actions.undo, &QAction::triggered, this, [this] {
        if (m_workspace)
            m_workspace->step(true);
    });
    connect(m_actions.redo, &QAction::triggered, this, [this] {
        if (m_workspace)
            m_workspace->step(false);
    });
}

void MainWindow::connectCharts() {
    using charts::ChartMenu;
    const auto onChart = [this](QAction* action, auto what, const QString& done) {
        connect(action, &QAction::triggered, this, [this, what, done] {
            TaskPage* page = m_workspace ? m_workspace->currentPage() : nullptr;
            ChartMenu* chart = page ? ChartMenu::of(*page) : nullptr;
            if (!chart) {
                say(tr("There is no chart on this page."));
                return;
            }
            (chart->*what)();
            if (!done.isEmpty())
                say(done);
        });
    };
    onChart(m_actions.copyChart, &ChartMenu::copyPicture, tr("The chart is on the clipboard."));
    onChart(m_actions.copyFigures, &ChartMenu::copyFigures,
            tr("The chart's figures are on the clipboard."));
    onChart(m_actions.chartPng, &ChartMenu::savePng, {});
    onChart(m_actions.chartSvg, &ChartMenu::saveSvg, {});
    onChart(m_actions.showFigures, &ChartMenu::showFigures, {});
}

void MainWindow::connectView() {
    m_actions.restTimer->setChecked(m_surroundings.settings.restTimer);
    connect(m_actions.restTimer, &QAction::toggled, this, [this](bool wanted) {
        m_surroundings.settings.restTimer = wanted;
        if (m_workspace)
            m_workspace->entry().showRest(wanted);
        keep();
    });
    m_actions.fingers->setChecked(fingersFit());
    connect(m_actions.fingers, &QAction::triggered, this, &MainWindow::fitForFingers);
    for (QAction* action : m_actions.units->actions()) {
        const auto unit = static_cast<LoadUnit>(action->data().toInt());
        action->setChecked(unit == m_surroundings.settings.unit);
        connect(action, &QAction::triggered, this, [this, unit] { countIn(unit); });
    }
    for (QAction* action : m_actions.languages->actions()) {
        const QString code = action->data().toString();
        action->setChecked(code == m_surroundings.settings.language);
        connect(action, &QAction::triggered, this, [this, code] { speak(code); });
    }
}

void MainWindow::connectUndo() {
    QUndoStack* stack = m_workspace->logbook().undoStack();
    const auto fit = [this, stack] {
        m_actions.undo->setEnabled(stack->canUndo());
        m_actions.redo->setEnabled(stack->canRedo());
        m_actions.undo->setText(tr("&Undo %1").arg(stack->undoText()).trimmed());
        m_actions.redo->setText(tr("&Redo %1").arg(stack->redoText()).trimmed());
    };
    connect(stack, &QUndoStack::indexChanged, this, fit);
    fit();
}

// What and whose, told where the menu is opened: at every key it would be read for nobody.
void MainWindow::nameSteps() {
    const auto name = [this](QAction* action, const QString& words, bool undo) {
        try {
            const Logbook& book = m_workspace->logbook();
            if (const auto step = undo ? book.nextUndo() : book.nextRedo())
                action->setText(
                    words.arg(QString(step->words).replace(QLatin1Char('&'), QLatin1String("&&"))));
        } catch (const std::exception& error) {
            trouble(said(error));
        }
    };
    if (!m_workspace)
        return;
    name(m_actions.undo, tr("&Undo %1"), true);
    name(m_actions.redo, tr("&Redo %1"), false);
}

QString MainWindow::askNewName() {
    const QString file =
        filedialog::saveNew(this, {.title = tr("New log"),
                                   .start = startFolder() + QStringLiteral("/squad") + suffix(),
                                   .filter = logFilter()});
    return file.isEmpty() || !QFileInfo(file).suffix().isEmpty() ? file : file + suffix();
}

void MainWindow::askNew() {
    if (const QString file = askNewName(); !file.isEmpty())
        createLogFile(file);
}

void MainWindow::askOpen() {
    const QString file = filedialog::open(
        this, {.title = tr("Open a log"), .start = startFolder(), .filter = logFilter()});
    if (!file.isEmpty())
        openLogFile(file);
}

void MainWindow::askImport() {
    QString fresh;
    if (!m_workspace) { // CSV goes into a log: where it is to be kept comes first
        fresh = askNewName();
        if (fresh.isEmpty())
            return;
        if (QFileInfo::exists(fresh)) { // then into that one
            openLogFile(std::exchange(fresh, QString()));
            if (!m_workspace)
                return;
        }
    }
    const QStringList files =
        filedialog::openMany(this, {.title = tr("Import CSV"),
                                    .start = startFolder(),
                                    .filter = tr("CSV (*.csv *.txt *.tsv);;All files (*)")});
    if (fresh.isEmpty())
        importFiles(files);
    else
        importIntoNew(fresh, files);
}

void MainWindow::askBackUp() {
    if (!m_workspace)
        return;
    const QString file =
        filedialog::saveNew(this, {.title = tr("Back up to"),
                                   .start = startFolder() + QStringLiteral("/backup") + suffix(),
                                   .filter = logFilter()});
    if (file.isEmpty())
        return;
    try {
        const auto findings = m_workspace->logbook().log().backup(pathOf(file));
        if (findings.empty())
            say(tr("Backed up, and the copy checked: %1").arg(file));
        else
            trouble(tr("Backed up, but the log is not sound, and the copy %1 is no better. The "
                       "first of what was found: %2")
                        .arg(file, said(findings.front())));
    } catch (const std::exception& error) {
        trouble(said(error));
    }
}

void MainWindow::importClipboard() {
    if (!m_workspace)
        return;
    const QString text = QApplication::clipboard()->text();
    if (text.trimmed().isEmpty())
        say(tr("There is no table to import: copy its cells first."));
    else
        m_workspace->importText(text, m_surroundings.settings.importMaps);
}

void MainWindow::askExport() {
    if (!m_workspace)
        return;
    const QString folder =
        filedialog::saveNew(this, {.title = tr("Export to a new folder"),
                                   .start = startFolder() + QStringLiteral("/export")});
    if (folder.isEmpty())
        return;
    try {
        const auto work = [file = m_workspace->logbook().log().file(),
                           target = pathOf(folder)](const Progress& progress) {
            exchange::exportTables(log::Log::open(file, log::Access::ReadOnly), target, progress);
        };
        if (doLongWork(this, tr("Exporting"), work))
            say(tr("Exported, as CSV and as a workbook: %1").arg(folder));
        else
            say(tr("Stopped. Nothing was written."));
    } catch (const std::exception& error) {
        trouble(said(error));
    }
}

void MainWindow::showHelp(HelpDialog::Page page) {
    // Stays open beside the work: one at a time.
    auto* help = findChild<HelpDialog*>();
    if (!help) {
        help = new HelpDialog(keysOf(*this), this);
        help->setAttribute(Qt::WA_DeleteOnClose);
    }
    help->show();
    help->raise();
    help->activateWindow();
    help->showPage(page);
}

void MainWindow::showAbout() {
    AboutDialog(this).exec();
}

} // namespace slopebook::ui
