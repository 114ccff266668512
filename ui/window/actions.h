// SPDX-License-Identifier: GPL-3.0-or-later
// Everything the menus offer, with its words and keys; what is done is connected by the window.
#pragma once

#include <QAction>
#include <QActionGroup>
#include <QList>

class QMainWindow;
class QMenu;
class QUndoStack;

namespace slopebook::ui {

struct Actions {
    QAction *newLog, *openLog, *openSample, *importCsv, *importPasted, *mergeLog, *choices,
        *exportAll, *joinStore, *meetStore, *showStore, *leaveStore, *backUp, *backups, *writeOn,
        *print, *preview, *pdf, *closeLog, *quit;
    QAction *undo, *redo, *editSet, *removeSet;
    QAction *addAthlete, *changeAthlete, *addLift, *changeLift, *checkLoads, *devices, *blocks,
        *newSession, *details, *removeSession;
    QList<QAction*> pages; ///< one a page, in the order of the table
    QAction *typeSet, *findAthlete, *findLift;
    QAction *copyChart, *chartPng, *chartSvg, *copyFigures, *showFigures;
    QAction *foldIndex, *restTimer, *fingers;
    QActionGroup* units;     ///< data(): a LoadUnit as int
    QActionGroup* schemes;   ///< data(): a Scheme as int
    QActionGroup* languages; ///< data(): the code to keep in the settings
    QAction *method, *tutorial, *help, *keys, *file, *changes, *cautions, *about;
    QMenu* recent;

    /// Those that need an open log.
    QList<QAction*> needLog() const;
};

/// Makes the actions and the menu bar.
Actions makeActions(QMainWindow& window);

/// The keys of all actions that have one, as lines "keys<TAB>words", for the help page.
QStringList keysOf(const QMainWindow& window);

} // namespace slopebook::ui
