// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/actions.h"

#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

namespace slopebook::ui {

namespace {
// Plain Ctrl with E, K, D or Delete moves and deletes in a line that is being typed: Shift as well.
QString tr(const char* words) {
    return QCoreApplication::translate("actions", words);
}

QAction* add(QMenu& menu, const QString& words, const QKeySequence& keys = {}) {
    QAction* action = menu.addAction(words);
    action->setShortcut(keys);
    return action;
}

void addLogMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(tr("&Log"));
    a.newLog = add(menu, tr("&New log…"), QKeySequence::New);
    a.openLog = add(menu, tr("&Open…"), QKeySequence::Open);
    a.recent = menu.addMenu(tr("Open &recent"));
    a.openSample = add(menu, tr("Open the &sample"));
    menu.addSeparator();
    a.importCsv = add(menu, tr("&Import CSV…"), QKeySequence(Qt::CTRL | Qt::Key_I));
    a.backUp = add(menu, tr("&Back up…"));
    menu.addSeparator();
    a.print = add(menu, tr("&Print…"), QKeySequence::Print);
    a.preview = add(menu, tr("Print pre&view…"));
    a.pdf = add(menu, tr("Write P&DF…"));
    menu.addSeparator();
    a.closeLog = add(menu, tr("&Close log"), QKeySequence(Qt::CTRL | Qt::Key_W));
    a.quit = add(menu, tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q));
}

void addEditMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(tr("&Edit"));
    a.undo = add(menu, tr("&Undo"), QKeySequence::Undo);
    a.redo = add(menu, tr("&Redo"));
    a.redo->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    menu.addSeparator();
    a.editSet = add(menu, tr("&Leave out, note…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E));
    a.removeSet = add(menu, tr("Re&move set"));
}

void addRecordsMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(tr("Re&cords"));
    a.addAthlete = add(menu, tr("Add &athlete…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_A));
    a.changeAthlete = add(menu, tr("&Change athlete…"));
    menu.addSeparator();
    a.addLift = add(menu, tr("Add &lift…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L));
    a.changeLift = add(menu, tr("Change li&ft…"));
    a.checkLoads = add(menu, tr("Chec&k loads…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K));
    menu.addSeparator();
    a.newSession = add(menu, tr("New &session"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N));
    a.details = add(menu, tr("Session d&etails…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D));
    a.removeSession = add(menu, tr("&Remove session"));
    menu.addSeparator();
    a.devices = add(menu, tr("&Devices…"));
    a.blocks = add(menu, tr("&Training blocks…"), QKeySequence(Qt::CTRL | Qt::Key_B));
}

void addGoMenu(QMenuBar& bar, Actions& a, const QStringList& taskNames) {
    QMenu& menu = *bar.addMenu(tr("&Go"));
    for (int i = 0; i < taskNames.size(); ++i) {
        // The tenth has the 0.
        const int digit = (i + 1) % 10;
        const QString name = digit == 0 ? QStringLiteral("1&0 %1").arg(taskNames[i])
                                        : QStringLiteral("&%1 %2").arg(digit).arg(taskNames[i]);
        a.tasks << add(menu, name,
                       QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_0 + digit)));
    }
    menu.addSeparator();
    a.typeSet = add(menu, tr("T&ype a set"), QKeySequence(Qt::CTRL | Qt::Key_L));
    a.findAthlete = add(menu, tr("Find &athlete"), QKeySequence::Find);
    a.findLift = add(menu, tr("Find li&ft"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_F));
}

void addHelpMenu(QMenuBar& bar, Actions& a) {
    QMenu& menu = *bar.addMenu(tr("&Help"));
    a.help = add(menu, tr("&Keys and method"), QKeySequence::HelpContents);
    a.cautions = add(menu, tr("&Cautions"));
    a.about = add(menu, tr("&About Slopebook"));
}
} // namespace

QList<QAction*> Actions::needLog() const {
    QList<QAction*> all{backUp,  closeLog,      editSet,    removeSet,   addAthlete, changeAthlete,
                        addLift, changeLift,    checkLoads, devices,     blocks,     newSession,
                        details, removeSession, typeSet,    findAthlete, findLift};
    return all + tasks;
}

Actions makeActions(QMainWindow& window, const QStringList& taskNames) {
    Actions actions{};
    QMenuBar& bar = *window.menuBar();
    addLogMenu(bar, actions);
    addEditMenu(bar, actions);
    addRecordsMenu(bar, actions);
    addGoMenu(bar, actions, taskNames);
    addHelpMenu(bar, actions);
    return actions;
}

QStringList keysOf(const QMainWindow& window) {
    QStringList lines;
    for (const QAction* title : window.menuBar()->actions()) {
        const QMenu* menu = title->menu();
        if (!menu)
            continue;
        for (const QAction* action : menu->actions()) {
            if (action->shortcut().isEmpty())
                continue;
            QString words = action->text();
            words.remove(QLatin1Char('&'));
            lines << action->shortcut().toString(QKeySequence::NativeText) + QLatin1Char('\t') +
                         words;
        }
    }
    return lines;
}

} // namespace slopebook::ui
