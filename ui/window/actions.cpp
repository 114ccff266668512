// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/actions.h"

#include "ui/window/language.h"
#include "ui/window/pagetable.h"
#include "ui/window/scheme.h"
#include "ui/words/units.h"

#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

#include <utility>

namespace slopebook::ui {

namespace {
// Plain Ctrl with E, K, D or Delete moves and deletes in a line that is being typed: Shift as well.
struct Menu {
    Q_DECLARE_TR_FUNCTIONS(Menus)
};

QAction* add(QMenu& menu, const QString& words, const QKeySequence& keys = {}) {
    QAction* action = menu.addAction(words);
    action->setShortcut(keys);
    return action;
}

void addLogMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(Menu::tr("&Log"));
    a.newLog = add(menu, Menu::tr("New &log…"), QKeySequence::New);
    a.openLog = add(menu, Menu::tr("&Open…"), QKeySequence::Open);
    a.recent = menu.addMenu(Menu::tr("Open &recent"));
    a.openSample = add(menu, Menu::tr("Open the &sample"));
    menu.addSeparator();
    a.importCsv = add(menu, Menu::tr("&Import a table…"), QKeySequence(Qt::CTRL | Qt::Key_I));
    a.importPasted = add(menu, Menu::tr("Import a copied &table…"),
                         QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I));
    a.mergeLog = add(menu, Menu::tr("&Merge another log…"));
    a.choices = add(menu, Menu::tr("C&hoose between two sides…"));
    QMenu& store = *menu.addMenu(Menu::tr("Sh&ared store"));
    a.joinStore = add(store, Menu::tr("&Join a store…"));
    a.meetStore = add(store, Menu::tr("&Meet now"));
    a.showStore = add(store, Menu::tr("&What came, what waits…"),
                      QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_M));
    a.leaveStore = add(store, Menu::tr("&Leave the store…"));
    a.exportAll = add(menu, Menu::tr("&Export everything…"));
    a.backUp = add(menu, Menu::tr("&Back up…"));
    a.backups = add(menu, Menu::tr("&Go back to a backup…"));
    a.writeOn = add(menu, Menu::tr("&Write into the damaged log…"));
    menu.addSeparator();
    a.print = add(menu, Menu::tr("&Print…"), QKeySequence::Print);
    a.preview = add(menu, Menu::tr("Pri&nt preview…"));
    a.pdf = add(menu, Menu::tr("Write P&DF…"));
    menu.addSeparator();
    a.closeLog = add(menu, Menu::tr("&Close log"), QKeySequence(Qt::CTRL | Qt::Key_W));
    a.quit = add(menu, Menu::tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q));
}

void addEditMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(Menu::tr("&Edit"));
    a.undo = add(menu, Menu::tr("&Undo"), QKeySequence::Undo);
    a.redo = add(menu, Menu::tr("&Redo"));
    a.redo->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    menu.addSeparator();
    a.editSet =
        add(menu, Menu::tr("&Leave out, note…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E));
    a.removeSet = add(menu, Menu::tr("Re&move set"));
}

void addRecordsMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(Menu::tr("Re&cords"));
    a.addAthlete =
        add(menu, Menu::tr("Add &athlete…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_A));
    a.changeAthlete = add(menu, Menu::tr("&Change athlete…"));
    menu.addSeparator();
    a.addLift = add(menu, Menu::tr("Add &lift…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L));
    a.changeLift = add(menu, Menu::tr("Change li&ft…"));
    a.checkLoads =
        add(menu, Menu::tr("Chec&k loads…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K));
    menu.addSeparator();
    a.newSession =
        add(menu, Menu::tr("New &session"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N));
    a.details =
        add(menu, Menu::tr("Session d&etails…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D));
    a.removeSession = add(menu, Menu::tr("&Remove session"));
    menu.addSeparator();
    a.devices = add(menu, Menu::tr("&Devices…"));
    a.blocks = add(menu, Menu::tr("&Training blocks…"), QKeySequence(Qt::CTRL | Qt::Key_B));
}

void addGoMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(Menu::tr("&Go"));
    Part part = pages().front().part;
    for (const PageEntry& entry : pages()) {
        if (std::exchange(part, entry.part) != entry.part)
            menu.addSeparator();
        a.pages << add(menu, QStringLiteral("&%1 %2").arg(QChar(entry.key), entry.title()),
                       QKeySequence(Qt::CTRL | entry.key));
    }
    menu.addSeparator();
    a.typeSet = add(menu, Menu::tr("T&ype a set"), QKeySequence(Qt::CTRL | Qt::Key_L));
    a.findAthlete = add(menu, Menu::tr("Find &athlete"), QKeySequence::Find);
    a.findLift = add(menu, Menu::tr("Find li&ft"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_F));
}

QAction* addChoice(QActionGroup& group, QMenu& menu, const QString& words, const QVariant& data) {
    QAction* action = group.addAction(words);
    action->setCheckable(true);
    action->setData(data);
    menu.addAction(action);
    return action;
}

void addViewMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(Menu::tr("&View"));
    QMenu& chart = *menu.addMenu(Menu::tr("&Chart"));
    a.copyChart =
        add(chart, Menu::tr("&Copy the picture"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C));
    a.chartPng =
        add(chart, Menu::tr("Save as &PNG…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
    a.chartSvg =
        add(chart, Menu::tr("Save as &SVG…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S));
    chart.addSeparator();
    a.copyFigures =
        add(chart, Menu::tr("Copy the &figures"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G));
    a.showFigures = add(chart, Menu::tr("Show the f&igures…"), QKeySequence(Qt::CTRL | Qt::Key_G));
    menu.addSeparator();
    a.foldIndex = add(menu, Menu::tr("Fold the inde&x away"), QKeySequence(Qt::Key_F9));
    a.foldIndex->setCheckable(true);
    a.restTimer = add(menu, Menu::tr("&Rest timer"));
    a.restTimer->setCheckable(true);
    a.fingers = add(menu, Menu::tr("Controls that fit a &finger"));
    a.fingers->setCheckable(true);
    menu.addSeparator();
    a.units = new QActionGroup(&bar);
    QMenu& unitMenu = *menu.addMenu(Menu::tr("Loads &in"));
    addChoice(*a.units, unitMenu, Menu::tr("&Kilograms (kg)"), int(LoadUnit::Kilograms));
    addChoice(*a.units, unitMenu, Menu::tr("&Pounds (lb)"), int(LoadUnit::Pounds));
    QMenu& schemeMenu = *menu.addMenu(Menu::tr("C&olours"));
    a.schemes = new QActionGroup(&bar);
    addChoice(*a.schemes, schemeMenu, Menu::tr("As the &desktop"), int(Scheme::Desktop));
    addChoice(*a.schemes, schemeMenu, Menu::tr("&Light"), int(Scheme::Light));
    addChoice(*a.schemes, schemeMenu, Menu::tr("D&ark"), int(Scheme::Dark));
    QMenu& languageMenu = *menu.addMenu(Menu::tr("&Language"));
    a.languages = new QActionGroup(&bar);
    addChoice(*a.languages, languageMenu, Menu::tr("As the &desktop"), QString());
    for (const Language& one : languages())
        addChoice(*a.languages, languageMenu, one.name, one.code);
}

void addHelpMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(Menu::tr("&Help"));
    a.method = add(menu, Menu::tr("The &method"), QKeySequence::HelpContents);
    a.tutorial = add(menu, Menu::tr("T&utorial"));
    a.help = add(menu, Menu::tr("&Typing a set"));
    a.keys = add(menu, Menu::tr("&Keys"), QKeySequence(Qt::SHIFT | Qt::Key_F1));
    a.file = add(menu, Menu::tr("The log's &file"));
    a.changes = add(menu, Menu::tr("What is &new"));
    a.cautions = add(menu, Menu::tr("&Cautions"));
    a.about = add(menu, Menu::tr("&About Slopebook"));
}

QString plainWords(QString words) {
    return words.remove(QLatin1Char('&')).remove(QStringLiteral("…"));
}

void addKeys(const QMenu& menu, const QString& before, QStringList& lines) {
    for (const QAction* action : menu.actions()) {
        if (const QMenu* inner = action->menu())
            addKeys(*inner, plainWords(action->text()) + QStringLiteral(": "), lines);
        else if (!action->shortcut().isEmpty())
            lines << action->shortcut().toString(QKeySequence::NativeText) + QLatin1Char('\t') +
                         before + plainWords(action->text());
    }
}
} // namespace

QList<QAction*> Actions::needLog() const {
    QList<QAction*> all{
        importPasted,  mergeLog,      choices,     joinStore,   meetStore, showStore, leaveStore,
        exportAll,     backUp,        backups,     closeLog,    editSet,   removeSet, addAthlete,
        changeAthlete, addLift,       changeLift,  checkLoads,  devices,   blocks,    newSession,
        details,       removeSession, typeSet,     findAthlete, findLift,  copyChart, chartPng,
        chartSvg,      copyFigures,   showFigures, foldIndex};
    return all + pages;
}

Actions makeActions(QMainWindow& window) {
    Actions actions{};
    QMenuBar& bar = *window.menuBar();
    addLogMenu(bar, actions);
    addEditMenu(bar, actions);
    addRecordsMenu(bar, actions);
    addGoMenu(bar, actions);
    addViewMenu(bar, actions);
    addHelpMenu(bar, actions);
    return actions;
}

QStringList keysOf(const QMainWindow& window) {
    QStringList lines;
    for (const QAction* title : window.menuBar()->actions()) {
        const QMenu* menu = title->menu();
        if (!menu)
            continue;
        addKeys(*menu, QString(), lines);
    }
    return lines;
}

} // namespace slopebook::ui
