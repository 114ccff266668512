// SPDX-License-Identifier: GPL-3.0-or-later
// Rows put aside until all are there, and handed back session by session: a file in whatever order
// takes the memory of one in order, and room for its rows in the system's folder of passing files.
#pragma once

#include "core/exchange/stagedkeys.h"
#include "core/log/failure.h"

#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::exchange {

class SortedRows {
public:
    /// So many bytes of rows are held in memory, more go to a file without a name.
    explicit SortedRows(std::size_t bytesHeld = std::size_t{8} << 20);

    /// A row as bytes, whatever they say. LogError where it cannot be put aside: no such folder
    /// (TMPDIR), nothing may be made in it, its disk is full.
    void add(const StagedDay& session, std::string_view row);
    std::int64_t rows() const { return m_rows; }
    /// Hands all back, once: by athlete, day and ordinal, the rows of a session in the order in
    /// which they came. The bytes stand until the next. Throws likewise.
    void handBack(const std::function<void(std::string_view row)>& take);

private:
    struct Held {
        StagedDay session;
        std::size_t at = 0, size = 0; ///< in m_bytes
    };
    struct Run { ///< rows in order, in the file
        std::int64_t begin = 0, end = 0;
    };
    struct RowHead;
    class RunReader;
    [[noreturn]] void failed(int error, log::Doing doing) const;
    void sortHeld();
    void writeRun();

    std::size_t m_most;
    std::int64_t m_rows = 0, m_written = 0;
    std::string m_bytes;
    std::vector<Held> m_held;
    std::vector<Run> m_runs;
    std::filesystem::path m_path; ///< where the file was made, for what is said of it
    std::unique_ptr<std::FILE, int (*)(std::FILE*)> m_file;
};

} // namespace slopebook::exchange
