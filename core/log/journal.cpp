// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/journal.h"

#include "core/log/failure.h"
#include "core/log/layout.h"
#include "core/model/phrases/log.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fstream>
#include <set>
#include <string>
#include <sys/stat.h>
#include <vector>

namespace slopebook::log {

namespace {
constexpr std::array<unsigned char, 8> journalMagic{0xd9, 0xd5, 0x05, 0xf9, 0x20, 0xa1, 0x63, 0xd7};
constexpr std::int64_t tailSize = 16;
constexpr std::uint32_t tillTheEnd = 0xffffffffU;

bool isJournalMagic(const unsigned char* bytes) {
    return std::equal(journalMagic.begin(), journalMagic.end(), bytes);
}

class JournalBytes {
public:
    explicit JournalBytes(const std::filesystem::path& file)
        : m_file(file), m_in(file, std::ios::binary) {
        if (!m_in)
            throw systemFailure(errno, Doing::Open, file);
        m_in.seekg(0, std::ios::end);
        m_size = m_in.tellg();
    }
    std::int64_t size() const { return m_size; }
    /// Whether there are as many.
    bool read(std::int64_t at, unsigned char* into, std::int64_t count) {
        if (at < 0 || at + count > m_size)
            return false;
        m_in.seekg(at);
        m_in.read(reinterpret_cast<char*>(into), count);
        if (!m_in)
            throw systemFailure(errno != 0 ? errno : EIO, Doing::Open, m_file);
        return true;
    }

private:
    std::filesystem::path m_file;
    std::ifstream m_in;
    std::int64_t m_size = 0;
};

/// The head of a part of the journal.
struct JournalPart {
    std::uint32_t records = 0, nonce = 0, pages = 0, sector = 0, page = 0;
};

std::optional<JournalPart> partAt(JournalBytes& bytes, std::int64_t at) {
    std::array<unsigned char, 28> head{};
    if (!bytes.read(at, head.data(), head.size()) || !isJournalMagic(head.data()))
        return std::nullopt;
    return JournalPart{.records = bigEndian(&head[8]),
                       .nonce = bigEndian(&head[12]),
                       .pages = bigEndian(&head[16]),
                       .sector = bigEndian(&head[20]),
                       .page = bigEndian(&head[24])};
}

/// Bytes a page; 0 where the header has none that may be.
std::int64_t pageSizeOf(const HeaderBytes& header) {
    const std::int64_t size = (header[16] << 8) | header[17];
    const std::int64_t bytes = size == 1 ? 65536 : size;
    return bytes >= 512 && (bytes & (bytes - 1)) == 0 ? bytes : 0;
}

// SQLite deletes the file that such a name gives, or this journal where there is none. No log is
// written together with other databases, so none is ever right.
bool namesAnotherFile(JournalBytes& bytes) {
    std::array<unsigned char, tailSize> tail{};
    if (!bytes.read(bytes.size() - tailSize, tail.data(), tailSize) || !isJournalMagic(&tail[8]))
        return false;
    const std::int64_t length = bigEndian(tail.data());
    return length > 0 && length <= bytes.size() - tailSize;
}

/// What SQLite would play back, followed as it does.
class Playback {
public:
    Playback(JournalBytes& bytes, const LogFacts& log)
        : m_bytes(bytes), m_log(log), m_pageSize(pageSizeOf(log.header)) {}

    std::optional<Words> strange() {
        const auto first = partAt(m_bytes, 0);
        if (!first)
            return std::nullopt; // no journal at all: SQLite plays nothing back
        m_first = *first;
        const auto powerOfTwo = [](std::uint32_t n) { return n != 0 && (n & (n - 1)) == 0; };
        if (m_first.page != m_pageSize || !powerOfTwo(m_first.sector) || m_first.sector < 32 ||
            m_first.sector > 65536)
            return say("its pages are not of the log's size");
        m_original = m_log.header;
        std::optional<JournalPart> part = first;
        std::int64_t at = 0;
        while (part) {
            if (part->pages != m_first.pages || part->page != m_first.page)
                return say("its parts do not belong together");
            at += m_first.sector;
            if (!follow(*part, at))
                break;
            at = (at + m_first.sector - 1) / m_first.sector * m_first.sector;
            part = partAt(m_bytes, at);
        }
        return judged();
    }

private:
    /// The records of a part; whether SQLite goes on to the next.
    bool follow(const JournalPart& part, std::int64_t& at) {
        std::vector<unsigned char> record(static_cast<std::size_t>(m_pageSize) + 8);
        const auto length = static_cast<std::int64_t>(record.size());
        for (std::uint32_t i = 0; part.records == tillTheEnd || i < part.records;
             ++i, at += length) {
            if (!m_bytes.read(at, record.data(), length))
                return false;
            const std::uint32_t number = bigEndian(record.data());
            if (number == 0 || !sumHolds(record, part.nonce))
                return false;
            if (number == 1 && !m_hasFirst) { // what comes later of a page is not played back
                m_hasFirst = true;
                std::copy_n(record.data() + 4, m_original.size(), m_original.begin());
            }
            if (number > pagesThere() && number <= m_first.pages)
                m_beyond.insert(number);
        }
        return true;
    }

    bool sumHolds(const std::vector<unsigned char>& record, std::uint32_t nonce) const {
        std::uint32_t sum = nonce;
        for (std::int64_t i = m_pageSize - 200; i > 0; i -= 200)
            sum += record[static_cast<std::size_t>(i) + 4];
        return sum == bigEndian(&record[record.size() - 4]);
    }

    std::int64_t pagesThere() const { return m_log.bytes / m_pageSize; }

    std::optional<Words> judged() const {
        if (!beginsLog(m_original) || pageSizeOf(m_original) != m_pageSize)
            return say("it would put something else than a log there");
        // The log's own count of its pages, good while both of its marks agree. The file may be
        // longer by what the writer added, or shorter by what it had cut off and the journal holds.
        const bool counts = std::equal(&m_original[24], &m_original[28], &m_original[92]);
        const std::int64_t least = counts ? std::max(bigEndian(&m_original[28]), 1U) : 1;
        const std::int64_t most = pagesThere() + static_cast<std::int64_t>(m_beyond.size());
        if (m_first.pages < least || m_first.pages > most)
            return say("it would make the log %1 pages long, which it never was",
                       std::int64_t{m_first.pages});
        return std::nullopt;
    }

    JournalBytes& m_bytes;
    const LogFacts& m_log;
    std::int64_t m_pageSize;
    JournalPart m_first;
    HeaderBytes m_original{}; ///< of the log before the write that was cut short
    bool m_hasFirst = false;
    std::set<std::uint32_t> m_beyond; ///< pages behind the file's end that the journal holds
};
} // namespace

std::uint32_t bigEndian(const unsigned char* four) {
    return (std::uint32_t{four[0]} << 24) | (std::uint32_t{four[1]} << 16) |
           (std::uint32_t{four[2]} << 8) | std::uint32_t{four[3]};
}

bool beginsLog(const HeaderBytes& header) {
    return std::memcmp(header.data(), "SQLite format 3", 16) == 0 && header[18] == 1 &&
           header[19] == 1 && bigEndian(&header[68]) == static_cast<std::uint32_t>(applicationId) &&
           pageSizeOf(header) != 0;
}

std::optional<Words> strangeFile(const std::filesystem::path& journal) {
    struct stat status {};
    if (::lstat(journal.c_str(), &status) != 0)
        return std::nullopt; // not there: SQLite says the rest
    if (!S_ISREG(status.st_mode))
        return say("it is a link, or no file");
    if (status.st_nlink > 1)
        return say("it is another file too, under a second name");
    return std::nullopt;
}

std::optional<Words> strangeJournal(const std::filesystem::path& journal, const LogFacts& log) {
    if (auto strange = strangeFile(journal))
        return strange;
    JournalBytes bytes(journal);
    if (namesAnotherFile(bytes))
        return say("it names another file");
    if (pageSizeOf(log.header) == 0)
        return say("the log's own header is not whole");
    return Playback(bytes, log).strange();
}

} // namespace slopebook::log
