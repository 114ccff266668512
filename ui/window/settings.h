// SPDX-License-Identifier: GPL-3.0-or-later
// What the window remembers from one run to the next: a plain value; only app touches QSettings.
#pragma once

#include "ui/edits/logbook.h"
#include "ui/window/scheme.h"

#include <QByteArray>
#include <QStringList>

#include <optional>

namespace slopebook::ui {

struct Settings {
    QByteArray geometry;             ///< QWidget::saveGeometry
    QByteArray windowState;          ///< QMainWindow::saveState
    QStringList recentLogs;          ///< newest first, at most ten
    QString page;                    ///< shown last, by its word (ui/window/pagetable.h)
    QString openLog;                 ///< the log that was open at the end; empty: none was
    qint64 athlete = 0, lift = 0;    ///< chosen in it; 0: nobody, nothing
    Scheme scheme = Scheme::Desktop; ///< light or dark
    std::optional<bool> indexFolded; ///< nothing: where the window is narrow
    int indexWidth = 208;            ///< px
    QString language;                ///< a code of ui/window/language.h; empty: as the desktop
    QStringList importMaps;          ///< how tables were read before (ui/importing/importmaps.h)
    LoadUnit unit = LoadUnit::Kilograms; ///< in which loads are shown and typed
    int repeatDays = usualRepeatDays;    ///< between a test and its repeat test, at most
    bool restTimer = false;              ///< shown beside the line that sets are typed in
    QStringList unwritten;       ///< typed at stations and not written, as StationPage gives them
    QStringList unwrittenSets;   ///< on the session page, as EntryPage gives them
    std::optional<bool> fingers; ///< controls fit a finger; nothing: where there is a touch screen
    friend bool operator==(const Settings&, const Settings&) = default;
};

} // namespace slopebook::ui
