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

/// Why a meeting did not come about. Told in the language that is spoken when it was asked.
struct StoreTrouble {
    std::exception_ptr error{}; ///< that it ended with; nothing: the log is not open for writing
    log::Access access{};       ///< then how it is
    bool reached = true;        ///< false: the store gave no answer
    bool waitsForCoach = false; ///< the same again changes nothing: it is not tried by itself
    QDateTime since{};          ///< of the first of several
    QString brief() const;      ///< "nobody answers there"
    QString whole() const;      ///< the sentence
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
