// SPDX-License-Identifier: GPL-3.0-or-later
// The one table of pages: their order, keys and titles, how each is made, and what it can do.
#pragma once

#include "ui/parts/clock.h"
#include "ui/parts/taskpage.h"

#include <array>

class QBoxLayout;

namespace slopebook::ui {

/// In the order of the table.
enum class Page {
    Session,
    Stations,
    Overview,
    Lines,
    History,
    Comparison,
    Season,
    WholeSeason,
    Battery,
    Plan,
    Changes,
    Blocks,
    Due,
    Noise
};

/// Whose a page is: everybody's here today, one person's, all's.
enum class Part { Floor, Athlete, Squad };

/// A page as it was made, and what it can do.
struct MadePage {
    TaskPage* page = nullptr;
    QBoxLayout* strip = nullptr; ///< its control line; nothing where it has none of its own
    Prints* prints = nullptr;    ///< nothing where it has nothing to print
};

struct PageEntry {
    Page page;
    Part part;
    Qt::Key key;      ///< with Ctrl
    const char* word; ///< what the settings remember it by
    bool ofAthlete;   ///< shows the chosen athlete's
    bool ofLift;      ///< shows the chosen lift's
    QString (*title)();
    MadePage (*make)(Logbook& logbook, const Clock& clock);
};

inline constexpr std::size_t pageCount = 14;
const std::array<PageEntry, pageCount>& pages();
const PageEntry& entryOf(Page page);
/// "Ctrl+1", as the desktop writes it.
QString shortcutOf(const PageEntry& entry);
/// The page that the settings call so, else the first.
Page pageCalled(const QString& word);

inline constexpr std::array parts{Part::Floor, Part::Athlete, Part::Squad};
QString titleOf(Part part);

} // namespace slopebook::ui
