// SPDX-License-Identifier: GPL-3.0-or-later
// Rollback journals as another program could put them beside a log, each doing harm where SQLite
// plays it back. Their format: sqlite.org/fileformat2.html#the_rollback_journal, and for the name
// of a super-journal sqlite.org/atomiccommit.html#_multi_file_commit and the comments of its pager.
#pragma once

#include "tests/log/rawfile.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace slopebook::test {

inline std::string fourBytes(std::uint32_t value) {
    std::string bytes;
    for (int shift = 24; shift >= 0; shift -= 8)
        bytes += static_cast<char>((value >> shift) & 0xffU);
    return bytes;
}

inline const std::string& journalMark() {
    static const std::string mark("\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8);
    return mark;
}

constexpr std::uint32_t pageBytes = 4096; ///< of every log that these tests make
constexpr std::uint32_t sectorBytes = 512;

inline std::uint32_t pagesOf(const std::filesystem::path& log) {
    return static_cast<std::uint32_t>(std::filesystem::file_size(log) / pageBytes);
}

/// A journal's head alone, for a log of so many pages.
inline std::string journalHead(std::uint32_t records, std::uint32_t pages,
                               std::uint32_t bytesAPage = pageBytes) {
    std::string head = journalMark() + fourBytes(records) + fourBytes(0) + fourBytes(pages) +
                       fourBytes(sectorBytes) + fourBytes(bytesAPage);
    head.resize(sectorBytes, '\0');
    return head;
}

/// A page as it is to be put back.
inline std::string journalRecord(std::uint32_t number, const std::string& page) {
    std::uint32_t sum = 0;
    for (int i = static_cast<int>(page.size()) - 200; i > 0; i -= 200)
        sum += static_cast<unsigned char>(page[static_cast<std::size_t>(i)]);
    return fourBytes(number) + page + fourBytes(sum);
}

/// What makes SQLite look for a super-journal of that name.
inline std::string superJournalName(const std::string& name) {
    std::uint32_t sum = 0;
    for (const char byte : name)
        sum += static_cast<std::uint32_t>(static_cast<signed char>(byte));
    return fourBytes(0x40000000 / pageBytes + 1) + name +
           fourBytes(static_cast<std::uint32_t>(name.size())) + fourBytes(sum) + journalMark();
}

struct Attack {
    const char* name;
    /// Puts the journal beside the log; victim: a file elsewhere, which it may aim at.
    std::function<void(const std::filesystem::path& log, const std::filesystem::path& victim)>
        plant;
    enum class Harm { ByReading, ByWriting, None };
    Harm harm = Harm::ByReading; ///< when SQLite alone does it
};

inline std::vector<Attack> attacks() {
    using Path = std::filesystem::path;
    const auto put = [](const Path& log, const std::string& bytes) {
        writeBytes(log.string() + "-journal", bytes);
    };
    const auto firstPage = [](const Path& log) { return readBytes(log).substr(0, pageBytes); };
    return {
        {"another file's name",
         [put](const Path& log, const Path& victim) {
             put(log, journalHead(0, pagesOf(log)) + superJournalName(victim.string()));
         }},
        {"the name of no file",
         [put](const Path& log, const Path& victim) {
             put(log, journalHead(0, pagesOf(log)) + superJournalName(victim.string() + "-none"));
         }},
        {"no pages", [put](const Path& log, const Path&) { put(log, journalHead(0, 0)); }},
        {"one page", [put](const Path& log, const Path&) { put(log, journalHead(0, 1)); }},
        {"a page less",
         [put](const Path& log, const Path&) { put(log, journalHead(0, pagesOf(log) - 1)); }},
        {"a page more",
         [put](const Path& log, const Path&) { put(log, journalHead(0, pagesOf(log) + 1)); }},
        {"2^26 pages", [put](const Path& log, const Path&) { put(log, journalHead(0, 1U << 26)); }},
        {"2^26 pages and the last of them",
         [put](const Path& log, const Path&) {
             put(log,
                 journalHead(1, 1U << 26) + journalRecord(1U << 26, std::string(pageBytes, 'x')));
         }},
        {"other pages",
         [put](const Path& log, const Path&) { put(log, journalHead(0, pagesOf(log), 1024)); }},
        {"a turn to a write-ahead log",
         [put, firstPage](const Path& log, const Path&) {
             std::string page = firstPage(log);
             page[18] = page[19] = 2;
             put(log, journalHead(1, pagesOf(log)) + journalRecord(1, page));
         }},
        {"the same in its second part",
         [put, firstPage](const Path& log, const Path&) {
             std::string page = firstPage(log);
             page[18] = page[19] = 2;
             put(log, journalHead(0, pagesOf(log)) + journalHead(1, pagesOf(log)) +
                          journalRecord(1, page));
         }},
        {"another program's first page",
         [put, firstPage](const Path& log, const Path&) {
             std::string page = firstPage(log);
             page[68] = 'X';
             put(log, journalHead(1, pagesOf(log)) + journalRecord(1, page));
         }},
        {"a second name of a file",
         [](const Path& log, const Path& victim) {
             std::filesystem::create_hard_link(victim, log.string() + "-journal");
         },
         Attack::Harm::ByWriting},
        {"a link to a file",
         [](const Path& log, const Path& victim) {
             std::filesystem::create_symlink(victim, log.string() + "-journal");
         },
         Attack::Harm::None},
    };
}

} // namespace slopebook::test
