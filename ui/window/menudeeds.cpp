// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/menudeeds.h"

#include "ui/charts/chartmenu.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/station/stationpage.h"
#include "ui/parts/fingers.h"
#include "ui/window/aboutdialog.h"
#include "ui/window/changes.h"
#include "ui/window/filedeeds.h"
#include "ui/window/frame.h"
#include "ui/window/language.h"
#include "ui/window/logkeeper.h"
#include "ui/window/mainwindow.h"
#include "ui/window/mergedeeds.h"
#include "ui/window/recorddialogs.h"
#include "ui/window/storedeeds.h"
#include "ui/window/tutorial.h"
#include "ui/window/welcomepage.h"
#include "ui/window/workspace.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QMenu>
#include <QUndoStack>

#include <functional>

namespace slopebook::ui {

namespace {

/// Connects an action to something that is done with the open log, where there is one.
template <class Deed>
void inWorkspace(MainWindow& window, QAction* action, Deed deed) {
    QObject::connect(action, &QAction::triggered, &window, [&window, deed] {
        if (window.workspace())
            std::invoke(deed, *window.workspace());
    });
}

template <class Deed>
void always(MainWindow& window, QAction* action, Deed deed) {
    QObject::connect(action, &QAction::triggered, &window, deed);
}

void connectLog(MainWindow& window) {
    const Actions& a = window.actions();
    FileDeeds& files = window.files();
    LogKeeper& logs = window.logs();
    always(window, a.newLog, [&files] { files.askNew(); });
    always(window, a.openLog, [&files] { files.askOpen(); });
    always(window, a.openSample, [&window] { window.openSample(); });
    always(window, a.importCsv, [&files] { files.askImport(); });
    always(window, a.importPasted, [&files] { files.importClipboard(); });
    always(window, a.mergeLog, [&window] { MergeDeeds(window).askMerge(); });
    always(window, a.choices, [&window] { MergeDeeds(window).choose(); });
    always(window, a.joinStore, [&window] { StoreDeeds(window).join(); });
    always(window, a.meetStore, [&window] { StoreDeeds(window).meetNow(); });
    always(window, a.showStore, [&window] { StoreDeeds(window).show(); });
    always(window, a.leaveStore, [&window] { StoreDeeds(window).leave(); });
    always(window, a.exportAll, [&files] { files.askExport(); });
    always(window, a.backUp, [&files] { files.askBackUp(); });
    always(window, a.backups, [&logs] { logs.showBackupsOfOpen(); });
    always(window, a.writeOn, [&logs] { logs.askWriteOn(); });
    always(window, a.closeLog, [&window] { window.closeLogFile(); });
    always(window, a.quit, [&window] { window.close(); });
    const auto prints = [&window](QAction* action, void (Prints::*deed)()) {
        inWorkspace(window, action, [&window, deed](const Workspace& work) {
            Prints* page = work.prints();
            if (page && page->canPrint())
                (page->*deed)();
            else if (page)
                window.say(MainWindow::tr("There is nothing to print yet."));
        });
    };
    prints(a.print, &Prints::print);
    prints(a.preview, &Prints::printPreview);
    prints(a.pdf, &Prints::writePdf);
}

void connectWelcome(MainWindow& window) {
    WelcomePage& page = window.welcome();
    const auto wants = [&](auto signal, auto deed) {
        QObject::connect(&page, signal, &window, deed);
    };
    FileDeeds& files = window.files();
    wants(&WelcomePage::backupsWanted, [&window] { window.logs().askGoBack(); });
    wants(&WelcomePage::sampleWanted, [&window] { window.openSample(); });
    wants(&WelcomePage::newWanted, [&files] { files.askNew(); });
    wants(&WelcomePage::openWanted, [&files] { files.askOpen(); });
    wants(&WelcomePage::importWanted, [&files] { files.askImport(); });
    wants(&WelcomePage::recentWanted, [&window](const QString& file) { window.openLogFile(file); });
    wants(&WelcomePage::forgetWanted, [&window](const QString& file) { window.forget(file); });
}

void connectRecords(MainWindow& window) {
    const Actions& a = window.actions();
    inWorkspace(window, a.addAthlete, addAthlete);
    inWorkspace(window, a.changeAthlete, changeAthlete);
    inWorkspace(window, a.addLift, addLift);
    inWorkspace(window, a.changeLift, changeLift);
    inWorkspace(window, a.checkLoads, setCheckLoads);
    inWorkspace(window, a.devices, keepDevices);
    inWorkspace(window, a.blocks, keepBlocks);
    const auto inEntry = [&window](QAction* action, auto deed) {
        inWorkspace(window, action, [deed](Workspace& work) {
            work.showPage(Page::Session);
            (work.entry().*deed)();
        });
    };
    inEntry(a.editSet, &EntryPage::openSet);
    inEntry(a.removeSet, &EntryPage::removeSet);
    inEntry(a.newSession, &EntryPage::beginSession);
    inEntry(a.details, &EntryPage::openDetails);
    inEntry(a.removeSession, &EntryPage::removeSession);
    inWorkspace(window, a.typeSet, [](Workspace& work) {
        if (work.page() != Page::Stations)
            work.showPage(Page::Session);
        if (work.page() == Page::Stations)
            work.stations().focusLine();
        else
            work.entry().focusLine();
    });
}

void connectGo(MainWindow& window) {
    const Actions& a = window.actions();
    for (const PageEntry& entry : pages())
        inWorkspace(window, a.pages.at(static_cast<qsizetype>(entry.page)),
                    [page = entry.page](Workspace& work) {
                        work.showPage(page);
                        if (page == Page::Stations) // one comes to type
                            work.focusEntry();
                    });
    inWorkspace(window, a.findAthlete, &Workspace::focusAthlete);
    inWorkspace(window, a.findLift, &Workspace::focusLift);
    inWorkspace(window, a.undo, [](Workspace& work) { work.step(true); });
    inWorkspace(window, a.redo, [](Workspace& work) { work.step(false); });
}

/// Those taken of the window in the language that is spoken, else the English ones.
std::filesystem::path picturesOf(const std::filesystem::path& tutorial) {
    if (tutorial.empty())
        return {};
    const auto own = tutorial / spokenCode().toStdString();
    return std::filesystem::exists(own) ? own : tutorial / "en";
}

void showHelp(MainWindow& window, HelpDialog::Page page) {
    // Stays open beside the work: one at a time.
    auto* help = window.findChild<HelpDialog*>();
    if (!help) {
        help = new HelpDialog(helpOf(window), &window);
        help->setAttribute(Qt::WA_DeleteOnClose);
    }
    help->show();
    help->raise();
    help->activateWindow();
    help->showPage(page);
}

void connectHelp(MainWindow& window) {
    const Actions& a = window.actions();
    const auto shows = [&window](QAction* action, HelpDialog::Page page) {
        always(window, action, [&window, page] { showHelp(window, page); });
    };
    shows(a.help, HelpDialog::Typing);
    shows(a.keys, HelpDialog::Keys);
    shows(a.method, HelpDialog::Method);
    shows(a.tutorial, HelpDialog::Tutorial);
    shows(a.file, HelpDialog::File);
    shows(a.changes, HelpDialog::Changes);
    shows(a.cautions, HelpDialog::Cautions);
    always(window, a.about, [&window] { AboutDialog(&window).exec(); });
}

void connectCharts(MainWindow& window) {
    using charts::ChartMenu;
    const Actions& a = window.actions();
    const auto onChart = [&window](QAction* action, auto deed, const QString& done) {
        always(window, action, [&window, deed, done] {
            TaskPage* page = window.workspace() ? window.workspace()->currentPage() : nullptr;
            ChartMenu* chart = page ? ChartMenu::of(*page) : nullptr;
            if (!chart) {
                window.say(MainWindow::tr("There is no chart on this page."));
                return;
            }
            (chart->*deed)();
            if (!done.isEmpty())
                window.say(done);
        });
    };
    onChart(a.copyChart, &ChartMenu::copyPicture, MainWindow::tr("The chart is on the clipboard."));
    onChart(a.copyFigures, &ChartMenu::copyFigures,
            MainWindow::tr("The chart's figures are on the clipboard."));
    onChart(a.chartPng, &ChartMenu::savePng, {});
    onChart(a.chartSvg, &ChartMenu::saveSvg, {});
    onChart(a.showFigures, &ChartMenu::showFigures, {});
}

void connectView(MainWindow& window) {
    const Actions& a = window.actions();
    const Settings& settings = window.surroundings().settings;
    inWorkspace(window, a.foldIndex,
                [&a](Workspace& work) { work.frame().wantFold(a.foldIndex->isChecked()); });
    a.restTimer->setChecked(settings.restTimer);
    QObject::connect(a.restTimer, &QAction::toggled, &window, [&window](bool wanted) {
        window.surroundings().settings.restTimer = wanted;
        if (window.workspace())
            window.workspace()->showRest(wanted);
        window.keep();
    });
    a.fingers->setChecked(fingersFit());
    QObject::connect(a.fingers, &QAction::triggered, &window, &MainWindow::fitForFingers);
    for (QAction* action : a.units->actions()) {
        const auto unit = static_cast<LoadUnit>(action->data().toInt());
        action->setChecked(unit == settings.unit);
        always(window, action, [&window, unit] { window.countIn(unit); });
    }
    for (QAction* action : a.schemes->actions()) {
        const auto scheme = static_cast<Scheme>(action->data().toInt());
        action->setChecked(scheme == settings.scheme);
        always(window, action, [&window, scheme] { window.wear(scheme); });
    }
    for (QAction* action : a.languages->actions()) {
        const QString code = action->data().toString();
        action->setChecked(code == settings.language);
        always(window, action, [&window, code] { window.speak(code); });
    }
}

// What and whose, told where the menu is opened: at every key it would be read for nobody.
void nameSteps(MainWindow& window) {
    const auto name = [&window](QAction* action, const QString& words, bool undo) {
        try {
            const Logbook& book = window.workspace()->logbook();
            if (const auto step = undo ? book.nextUndo() : book.nextRedo())
                action->setText(words.arg(asLabel(step->words)));
        } catch (const std::exception& error) {
            window.trouble(said(error));
        }
    };
    if (!window.workspace())
        return;
    name(window.actions().undo, MainWindow::tr("&Undo %1"), true);
    name(window.actions().redo, MainWindow::tr("&Redo %1"), false);
}

} // namespace

void connectMenus(MainWindow& window) {
    connectLog(window);
    connectWelcome(window);
    connectRecords(window);
    connectGo(window);
    connectHelp(window);
    connectCharts(window);
    connectView(window);
    for (QObject* holder : window.actions().undo->associatedObjects())
        if (auto* menu = qobject_cast<QMenu*>(holder))
            QObject::connect(menu, &QMenu::aboutToShow, &window, [&window] { nameSteps(window); });
}

HelpDialog::Told helpOf(MainWindow& window) {
    return {.keys = keysOf(window),
            .tutorial = tutorialHelp(window.actions(), picturesOf(window.surroundings().tutorial)),
            .changes = changesHelp(spokenCode())};
}

void connectUndo(MainWindow& window) {
    QUndoStack* stack = window.workspace()->logbook().undoStack();
    const auto fit = [&window, stack] {
        const Actions& a = window.actions();
        a.undo->setEnabled(stack->canUndo());
        a.redo->setEnabled(stack->canRedo());
        a.undo->setText(MainWindow::tr("&Undo %1").arg(stack->undoText()).trimmed());
        a.redo->setText(MainWindow::tr("&Redo %1").arg(stack->redoText()).trimmed());
    };
    QObject::connect(stack, &QUndoStack::indexChanged, &window, fit);
    fit();
}

} // namespace slopebook::ui
