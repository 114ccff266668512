// SPDX-License-Identifier: GPL-3.0-or-later
// What travels between desks by way of a store.
#pragma once

#include "core/log/uuid.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::store {

using log::Sixteen;

/// One edit of an atom: what it is called, and the hash of what it then said.
struct Step {
    Sixteen revision{};
    Sixteen hash{};
    friend bool operator==(const Step&, const Step&) = default;
};

/// Lifts, tests and devices belong to everybody, in this squad; all else to a squad of its own.
constexpr Sixteen everybody{};

/// Whether all of that kind do.
bool isEverybodys(std::string_view kind);

/// Anything that a log holds, as the store sees it.
struct Atom {
    std::string
        kind{}; ///< "athlete", "lift conditions", ... as core/log/atoms.h has them; "conflict"
    Sixteen uuid{};
    Sixteen squad{};
    std::optional<Sixteen> parent{}; ///< of a session its athlete, of a set its session, ...
    /// A JSON object of the columns of the log's own tables, loads in grams ("load_g"), days as
    /// "2026-03-14", others by their UUID ("lift", "test", "device", "athlete", "repeat_of",
    /// "tests"), a set's reps under "velocities": each a number, or an object of its columns where
    /// more is said of it ({"velocity", "excluded"}). What is left out is as it is by default.
    /// Nothing of what was removed before a log kept what such things had said.
    std::optional<std::string> content{};
    bool alive = true;
    std::vector<Step> trail{}; ///< its own revision last; never empty
    std::int64_t version = 0;  ///< the store's, where it came from there
    friend bool operator==(const Atom&, const Atom&) = default;
};

/// Where a store is in its own story: the count of its writings, and the tag of that one. A store
/// that went back to a backup and grew again has other tags.
struct Mark {
    std::int64_t n = 0;
    Sixteen tag{};
    friend bool operator==(const Mark&, const Mark&) = default;
};

/// How far a squad was pulled; 0: not yet.
struct Cursor {
    Sixteen squad{};
    std::int64_t version = 0;
};

/// An athlete who went to another squad, with all that was his but his turns: those are gone.
struct Departed {
    Sixteen squad{}, athlete{};
    std::int64_t version = 0;
    bool isBack = false; ///< and is in this one again
    friend bool operator==(const Departed&, const Departed&) = default;
};

/// As PostgreSQL reads it: one JSON object. The content goes in as it is.
void writeJson(std::string& text, const Atom& atom);
/// As a line of COPY ... FROM STDIN reads it: id, squad, kind, parent, alive, trail, hashes,
/// content.
void writeCopyLine(std::string& text, const Atom& atom);

} // namespace slopebook::store
