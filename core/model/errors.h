// SPDX-License-Identifier: GPL-3.0-or-later
// The two errors of core. A question without an answer is neither: see answer.h.
#pragma once

#include "core/model/words.h"

#include <stdexcept>
#include <string>
#include <utility>

namespace slopebook {

/// What both say; what() says it in English.
class Error : public std::runtime_error {
public:
    explicit Error(Words words) : std::runtime_error(english(words)), m_words(std::move(words)) {}
    const Words& words() const noexcept { return m_words; }

private:
    Words m_words;
};

/// Where a bad value stood. line and column count from 1; 0 is "does not apply".
struct Where {
    std::string file;
    long line = 0;
    Words column{}; ///< the column's name, or its number where it has none
};

/// Input that cannot be taken: what stood where, and what was expected there. Nothing has been
/// written.
class BadInput : public Error {
public:
    BadInput(Where where, Words found, Words expected);
    /// For input that has no place in a file (a field of a form, an option).
    BadInput(Words found, Words expected);

    const Where& where() const noexcept { return m_where; }
    const Words& found() const noexcept { return m_found; }
    const Words& expected() const noexcept { return m_expected; }

private:
    Where m_where;
    Words m_found;
    Words m_expected;
};

/// The log file could not be opened, read or written. The message is a sentence for the coach.
class LogError : public Error {
public:
    enum class Kind {
        NotALog,    ///< a file, but not one of ours
        Newer,      ///< written by a newer version
        Damaged,    ///< a checksum or SQLite's own check failed
        ReadOnly,   ///< writing was asked of what cannot be written
        Busy,       ///< another program holds it
        Full,       ///< no room left
        Conflict,   ///< what was to be changed is not there any more, or is still in use
        Unavailable ///< anything else: missing, vanished, no permission
    };
    LogError(Kind kind, Words words) : Error(std::move(words)), m_kind(kind) {}
    Kind kind() const noexcept { return m_kind; }

private:
    Kind m_kind;
};

} // namespace slopebook
