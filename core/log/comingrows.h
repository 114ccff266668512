// SPDX-License-Identifier: GPL-3.0-or-later
// Rows that are about to be written, as a table that SQLite reads from memory: "INSERT INTO reps
// (...) SELECT c0, c1 FROM coming" writes many rows in one statement, without a step, a bind and a
// look for what a row refers to begun anew for each.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

struct sqlite3;

namespace slopebook::log {

/// Cells by row, then column. Texts and blobs are not copied: they must outlive the statement.
class ComingRows {
public:
    struct Cell {
        enum class Kind { Null, Integer, Real, Text, Blob };
        Kind kind = Kind::Null;
        std::int64_t bits = 0;       ///< the integer, the double's, or how many bytes
        const char* bytes = nullptr; ///< of a text or a blob
    };
    explicit ComingRows(std::size_t columns) : m_columns(columns) {}

    void reserve(std::size_t rows) { m_cells.reserve(rows * m_columns); }
    void null() { m_cells.push_back({}); }
    void integer(std::int64_t value) {
        m_cells.push_back({.kind = Cell::Kind::Integer, .bits = value});
    }
    void real(double value) {
        m_cells.push_back({.kind = Cell::Kind::Real, .bits = std::bit_cast<std::int64_t>(value)});
    }
    void text(std::string_view value) { bytes(Cell::Kind::Text, value); }
    void blob(std::string_view value) { bytes(Cell::Kind::Blob, value); }

    std::size_t columns() const { return m_columns; }
    std::size_t rows() const { return m_cells.size() / m_columns; }
    const Cell& cell(std::size_t row, std::size_t column) const {
        return m_cells[row * m_columns + column];
    }

private:
    void bytes(Cell::Kind kind, std::string_view value) {
        m_cells.push_back(
            {.kind = kind, .bits = static_cast<std::int64_t>(value.size()), .bytes = value.data()});
    }

    std::size_t m_columns;
    std::vector<Cell> m_cells;
};

/// The most columns that they may have: c0, c1 ...
constexpr std::size_t mostComing = 16;

/// Teaches a connection the table "coming", which reads what *rows points to when a statement
/// begins; rows must outlive the connection. Whether SQLite took it.
bool teachComing(sqlite3* db, const ComingRows** rows);

} // namespace slopebook::log
