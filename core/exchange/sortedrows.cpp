// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sortedrows.h"

#include "core/log/failure.h"
#include "core/log/passingfolder.h"

#include <queue>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <type_traits>
#include <unistd.h>

namespace slopebook::exchange {

namespace {

constexpr std::size_t readAtOnce = std::size_t{1} << 16;

/// A file that goes with the program, however that ends: nothing of it is in the folder any more.
std::FILE* passingFile(std::filesystem::path& path) {
    const log::PassingFolder folder("sort");
    path = folder.path() / "rows";
    std::FILE* const file = std::fopen(path.c_str(), "w+bxe");
    if (!file)
        throw log::systemFailure(errno, log::Doing::Make, path);
    return file;
}

} // namespace

/// What stands before the bytes of a row in the file.
struct SortedRows::RowHead {
    StagedDay session;
    std::uint32_t size = 0;
};

/// One run of the file, row by row.
class SortedRows::RunReader {
    static_assert(std::is_trivially_copyable_v<RowHead>);

public:
    RunReader(const SortedRows& rows, const Run& run) : m_rows(rows), m_run(run) {}

    bool next() {
        if (!fill(sizeof(RowHead)))
            return false;
        std::memcpy(&m_head, m_bytes.data() + m_at, sizeof(RowHead));
        fill(sizeof(RowHead) + m_head.size);
        m_row = std::string_view(m_bytes).substr(m_at + sizeof(RowHead), m_head.size);
        m_at += sizeof(RowHead) + m_head.size;
        return true;
    }
    const StagedDay& session() const { return m_head.session; }
    std::string_view row() const { return m_row; }

private:
    /// Whether so many bytes are at hand. A run ends where a row does.
    bool fill(std::size_t wanted) {
        if (m_bytes.size() - m_at >= wanted)
            return true;
        m_bytes.erase(0, m_at);
        m_at = 0;
        while (m_bytes.size() < wanted && m_run.begin < m_run.end) {
            const std::size_t before = m_bytes.size();
            const std::size_t asked = std::min(std::max(wanted - before, readAtOnce),
                                               static_cast<std::size_t>(m_run.end - m_run.begin));
            m_bytes.resize(before + asked);
            const ssize_t came =
                pread(fileno(m_rows.m_file.get()), m_bytes.data() + before, asked, m_run.begin);
            if (came <= 0)
                m_rows.failed(came < 0 ? errno : EIO, log::Doing::Open);
            m_bytes.resize(before + static_cast<std::size_t>(came));
            m_run.begin += came;
        }
        return m_bytes.size() >= wanted;
    }

    const SortedRows& m_rows;
    Run m_run;
    RowHead m_head;
    std::string m_bytes;
    std::size_t m_at = 0;
    std::string_view m_row;
};

SortedRows::SortedRows(std::size_t bytesHeld) : m_most(bytesHeld), m_file(nullptr, std::fclose) {}

void SortedRows::failed(int error, log::Doing doing) const {
    throw log::systemFailure(error, doing, m_path);
}

void SortedRows::add(const StagedDay& session, std::string_view row) {
    if (!m_held.empty() &&
        m_bytes.size() + row.size() + (m_held.size() + 1) * sizeof(Held) > m_most)
        writeRun();
    m_held.push_back({.session = session, .at = m_bytes.size(), .size = row.size()});
    m_bytes.append(row);
    ++m_rows;
}

void SortedRows::sortHeld() {
    std::ranges::sort(m_held, [](const Held& a, const Held& b) {
        return a.session == b.session ? a.at < b.at : a.session < b.session;
    });
}

void SortedRows::writeRun() {
    if (!m_file)
        m_file.reset(passingFile(m_path));
    sortHeld();
    Run run{.begin = m_written, .end = m_written};
    for (const Held& held : m_held) {
        const RowHead head{.session = held.session, .size = static_cast<std::uint32_t>(held.size)};
        if (std::fwrite(&head, sizeof head, 1, m_file.get()) != 1 ||
            (held.size > 0 &&
             std::fwrite(m_bytes.data() + held.at, held.size, 1, m_file.get()) != 1))
            failed(errno, log::Doing::Write);
        run.end += static_cast<std::int64_t>(sizeof head + held.size);
    }
    if (std::fflush(m_file.get()) != 0)
        failed(errno, log::Doing::Write);
    m_written = run.end;
    m_runs.push_back(run);
    m_held.clear();
    m_bytes.clear();
}

void SortedRows::handBack(const std::function<void(std::string_view row)>& take) {
    if (m_runs.empty()) {
        sortHeld();
        for (const Held& held : m_held)
            take(std::string_view(m_bytes).substr(held.at, held.size));
        return;
    }
    writeRun();
    m_held = {};
    m_bytes = {};
    std::vector<RunReader> readers;
    for (const Run& run : m_runs)
        readers.emplace_back(*this, run);
    const auto later = [&](std::size_t a, std::size_t b) { // the rows of earlier runs came earlier
        const StagedDay &ofA = readers[a].session(), &ofB = readers[b].session();
        return ofA == ofB ? a > b : ofB < ofA;
    };
    std::priority_queue<std::size_t, std::vector<std::size_t>, decltype(later)> next(later);
    for (std::size_t i = 0; i < readers.size(); ++i)
        if (readers[i].next())
            next.push(i);
    while (!next.empty()) {
        const std::size_t first = next.top();
        next.pop();
        take(readers[first].row());
        if (readers[first].next())
            next.push(first);
    }
}

} // namespace slopebook::exchange
