// SPDX-License-Identifier: GPL-3.0-or-later
// What the window says of the store that its log meets.
#pragma once

#include "core/meetings/joining.h"
#include "core/meetings/meet.h"
#include "ui/words/units.h"

#include <QDateTime>
#include <QString>

#include <cstdint>
#include <exception>
#include <optional>

class QTreeWidget;

namespace slopebook::ui {

/// Why a meeting did not come about.
struct StoreTrouble {
    QString brief{};     ///< "nobody answers there"
    QString whole{};     ///< the sentence
    bool ofStore = true; ///< it was not reached; else something here is the matter
    QDateTime since{};   ///< of the first of several
    friend bool operator==(const StoreTrouble&, const StoreTrouble&) = default;
};
/// Why a log that is open like that meets nobody.
StoreTrouble unableToMeet(log::Access access, const QDateTime& at);
StoreTrouble troubleOf(const std::exception_ptr& error, const QDateTime& at);

/// How it stands with the store.
struct StoreState {
    meetings::Joined joined{};
    bool meets = false;                    ///< just now
    QDateTime met{};                       ///< the last time; invalid: never
    std::optional<StoreTrouble> trouble{}; ///< since then
    std::int64_t held = 0;                 ///< of what waits, not this login's to write
    std::size_t choices = 0;               ///< between two sides, that are open
    meetings::MeetingReport news{};        ///< of the last meeting in which something was new
    QDateTime newsAt{};                    ///< invalid: there was none since the log was opened
};

/// The line at the foot of the window. now: to leave out the day where it is today.
QString storeLine(const StoreState& state, const QDateTime& now);
/// Where there is no room for it.
QString briefStoreLine(const StoreState& state);
/// The same and more, for the dialog behind it: a sentence a line.
QStringList storeSentences(const StoreState& state, const QDateTime& now);

/// Whether there is something to tell of a meeting.
bool isNews(const meetings::MeetingReport& report);
/// What is not simply added: one row each.
void fillNews(QTreeWidget& list, const meetings::MeetingReport& report, LoadUnit unit);

} // namespace slopebook::ui
