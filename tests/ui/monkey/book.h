// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach wrote down, as plain values that know nothing of the program: the window's fuzzer
// keeps one beside the window, and reads another from the file by SQL alone. Loads are grams,
// speeds and readings millionths of their unit, days ISO text.
#pragma once

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

struct sqlite3;

namespace slopebook::monkey {

struct RepEntry {
    long micro = 0;
    std::string out; ///< the reason why it does not count
    friend bool operator==(const RepEntry&, const RepEntry&) = default;
};

struct SetEntry {
    long grams = 0;
    bool maximum = false;
    std::string out, note;
    std::vector<RepEntry> reps;
    friend bool operator==(const SetEntry&, const SetEntry&) = default;
};

struct AttemptEntry {
    std::string side;
    long micro = 0;
    std::string out, note;
    friend bool operator==(const AttemptEntry&, const AttemptEntry&) = default;
};

/// Under what a lift was measured.
struct UnderEntry {
    std::string device, place;
    friend bool operator==(const UnderEntry&, const UnderEntry&) = default;
};

struct SessionEntry {
    std::string athlete, day;
    int ordinal = 1;    ///< of the athlete's sessions of that day
    long bodyGrams = 0; ///< 0: not noted
    std::string note;
    std::map<std::string, UnderEntry> under;                   ///< by lift, where it says anything
    std::map<std::string, std::vector<SetEntry>> sets;         ///< by lift
    std::map<std::string, std::vector<AttemptEntry>> attempts; ///< by test
    friend bool operator==(const SessionEntry&, const SessionEntry&) = default;
};

using Key = long long;
/// Of a session that is about to be made: its key comes with it.
constexpr Key keyToCome = 0;

struct Book {
    std::map<Key, SessionEntry> sessions; ///< by the log's own keys, which are never given twice
    std::set<std::string> rest;           ///< every other row: "athletes|Lane 1|", ...
    friend bool operator==(const Book&, const Book&) = default;

    /// The ordinal that the athlete's next session of a day gets.
    int nextOrdinal(const std::string& athlete, const std::string& day) const;
    /// The athlete's last session of that day; keyToCome where there is none.
    Key latest(const std::string& athlete, const std::string& day) const;
    std::vector<std::string> athletes() const;
};

/// One line a thing, without keys, sorted.
std::vector<std::string> rowsOf(const Book& book);
/// Of the rows: two books of the same rows have the same.
unsigned long long digestOf(const Book& book);
/// "- row" for each that is only in the first, "+ row" for each that is only in the second.
std::string difference(const Book& from, const Book& to);
/// The athletes whose sessions differ.
std::set<std::string> owners(const Book& from, const Book& to);

/// A log's file through a connection of its own, by SQLite alone. Aborts where SQLite refuses.
class Disk {
public:
    explicit Disk(const std::filesystem::path& file);
    ~Disk();
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;

    /// What is there, read anew where anybody wrote since.
    const Book& now();
    /// Read anew in any case.
    const Book& anew();
    /// SQLite's own integrity check: "ok".
    std::string integrity() const;

private:
    sqlite3* m_db = nullptr;
    Book m_book;
    long m_version = -1;
};

} // namespace slopebook::monkey
