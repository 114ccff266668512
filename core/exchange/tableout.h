// SPDX-License-Identifier: GPL-3.0-or-later
// One table written twice at once: as a CSV file and as a sheet of a workbook.
#pragma once

#include "core/exchange/columnspec.h"
#include "core/model/date.h"
#include "core/model/mass.h"

#include <filesystem>
#include <fstream>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <variant>

struct lxw_workbook;
struct lxw_worksheet;
struct lxw_format;

namespace slopebook::exchange {

/// Blank, text, a number, a weight in kg, a whole number, a day.
using Cell = std::variant<std::monostate, std::string, double, Mass, int, Date>;

/// A workbook under way; whole on disk once close() has returned.
class Workbook {
public:
    explicit Workbook(std::filesystem::path file);
    ~Workbook(); ///< drops what was not closed
    Workbook(const Workbook&) = delete;
    Workbook& operator=(const Workbook&) = delete;
    void close(); ///< LogError where it cannot be written

private:
    friend class SheetOut;
    std::filesystem::path m_file;
    lxw_workbook* m_book = nullptr;
    lxw_format* m_bold = nullptr;
    lxw_format* m_day = nullptr;
};

/// A sheet; goes on in a further one ("reps 2") where a sheet of a workbook is full.
class SheetOut {
public:
    SheetOut(Workbook& book, const TableSpec& table);
    void row(std::span<const Cell> cells);

private:
    void begin();
    void write(unsigned column, const Cell& cell);
    Workbook& m_book;
    TableSpec m_table;
    lxw_worksheet* m_sheet = nullptr;
    unsigned m_row = 0;
    int m_sheets = 0;
};

/// A CSV file: comma, decimal point, UTF-8, LF.
class CsvOut {
public:
    CsvOut(std::filesystem::path file, const TableSpec& table);
    void row(std::span<const Cell> cells);
    void close(); ///< LogError where it cannot be written

private:
    std::filesystem::path m_file;
    std::ofstream m_out;
};

/// A row, and the header, of a table as CSV, without its line's end.
std::string csvLine(std::span<const Cell> cells);
std::string csvHeader(const TableSpec& table);

/// Both of them, folder/name.csv and a sheet called name. What a row holds is what the table's
/// columns are, in their order.
class TableOut {
public:
    TableOut(const std::filesystem::path& folder, Workbook& book, const TableSpec& table);
    void row(std::span<const Cell> cells);
    void close();

private:
    CsvOut m_csv;
    SheetOut m_sheet;
};

} // namespace slopebook::exchange
