// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tableout.h"

#include "core/exchange/cells.h"
#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <xlsxwriter.h>

#include <utility>

namespace slopebook::exchange {

namespace {

constexpr unsigned sheetRows = 1'000'000; // a sheet of a workbook ends at 1,048,576
constexpr std::size_t sheetText = 32'000; // and a cell's text at 32,767 characters

[[noreturn]] void cannotWrite(const std::filesystem::path& file) {
    throw LogError(LogError::Kind::Unavailable,
                   say("\"%1\" cannot be written (is there room on the disk?).", file.string()));
}

std::string csvCell(const Cell& cell) {
    struct Write {
        std::string operator()(std::monostate) const { return {}; }
        std::string operator()(const std::string& text) const { return csvText(text); }
        std::string operator()(double value) const { return writeNumber(value); }
        std::string operator()(Mass mass) const { return writeKilograms(mass); }
        std::string operator()(int count) const { return std::to_string(count); }
        std::string operator()(Date date) const { return isoDate(date); }
    };
    return std::visit(Write{}, cell);
}

std::string cut(const std::string& text) {
    if (text.size() <= sheetText)
        return text;
    std::size_t end = sheetText;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end;
    return text.substr(0, end) + " (cut here: whole in the CSV)";
}

} // namespace

Workbook::Workbook(std::filesystem::path file) : m_file(std::move(file)) {
    lxw_workbook_options options{};
    options.constant_memory = LXW_TRUE;
    m_book = workbook_new_opt(m_file.c_str(), &options);
    if (!m_book)
        cannotWrite(m_file);
    m_bold = workbook_add_format(m_book);
    format_set_bold(m_bold);
    m_day = workbook_add_format(m_book);
    format_set_num_format(m_day, "yyyy-mm-dd");
}

Workbook::~Workbook() {
    if (m_book)
        lxw_workbook_free(m_book);
}

void Workbook::close() {
    if (workbook_close(std::exchange(m_book, nullptr)) != LXW_NO_ERROR)
        cannotWrite(m_file);
}

SheetOut::SheetOut(Workbook& book, const TableSpec& table) : m_book(book), m_table(table) {
    begin();
}

void SheetOut::begin() {
    ++m_sheets;
    const std::string first(m_table.name);
    const std::string name = m_sheets == 1 ? first : first + " " + std::to_string(m_sheets);
    m_sheet = workbook_add_worksheet(m_book.m_book, name.c_str());
    const auto& columns = m_table.columns;
    worksheet_set_column(m_sheet, 0, static_cast<lxw_col_t>(columns.size() - 1), 14, nullptr);
    worksheet_freeze_panes(m_sheet, 1, 0);
    for (std::size_t i = 0; i < columns.size(); ++i)
        worksheet_write_string(m_sheet, 0, static_cast<lxw_col_t>(i), columns[i].written().c_str(),
                               m_book.m_bold);
    m_row = 1;
}

void SheetOut::row(std::span<const Cell> cells) {
    if (m_row == sheetRows)
        begin();
    for (unsigned i = 0; i < cells.size(); ++i)
        write(i, cells[i]);
    ++m_row;
}

void SheetOut::write(unsigned column, const Cell& cell) {
    const auto at = static_cast<lxw_col_t>(column);
    const auto number = [&](double value) {
        worksheet_write_number(m_sheet, m_row, at, value, nullptr);
    };
    if (const auto* text = std::get_if<std::string>(&cell)) {
        if (!text->empty())
            worksheet_write_string(m_sheet, m_row, at, cut(*text).c_str(), nullptr);
    } else if (const auto* value = std::get_if<double>(&cell)) {
        number(*value);
    } else if (const auto* mass = std::get_if<Mass>(&cell)) {
        number(kilograms(*mass));
    } else if (const auto* count = std::get_if<int>(&cell)) {
        number(*count);
    } else if (const auto* date = std::get_if<Date>(&cell)) {
        const int year = static_cast<int>(date->year());
        lxw_datetime day{.year = year,
                         .month = static_cast<int>(static_cast<unsigned>(date->month())),
                         .day = static_cast<int>(static_cast<unsigned>(date->day())),
                         .hour = 0,
                         .min = 0,
                         .sec = 0};
        if (year >= 1900) // a workbook's calendar begins there
            worksheet_write_datetime(m_sheet, m_row, at, &day, m_book.m_day);
        else
            worksheet_write_string(m_sheet, m_row, at, isoDate(*date).c_str(), nullptr);
    }
}

std::string csvLine(std::span<const Cell> cells) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i)
        line += (i > 0 ? "," : "") + csvCell(cells[i]);
    return line;
}

std::string csvHeader(const TableSpec& table) {
    std::string line;
    for (const ColumnSpec& column : table.columns)
        line += (line.empty() ? "" : ",") + column.written();
    return line;
}

CsvOut::CsvOut(std::filesystem::path file, const TableSpec& table)
    : m_file(std::move(file)), m_out(m_file, std::ios::binary | std::ios::trunc) {
    if (!m_out)
        cannotWrite(m_file);
    m_out << csvHeader(table) << '\n';
}

void CsvOut::row(std::span<const Cell> cells) {
    m_out << csvLine(cells) << '\n';
}

void CsvOut::close() {
    m_out.close();
    if (!m_out)
        cannotWrite(m_file);
}

TableOut::TableOut(const std::filesystem::path& folder, Workbook& book, const TableSpec& table)
    : m_csv(folder / (std::string(table.name) + ".csv"), table), m_sheet(book, table) {}

void TableOut::row(std::span<const Cell> cells) {
    m_csv.row(cells);
    m_sheet.row(cells);
}

void TableOut::close() {
    m_csv.close();
}

} // namespace slopebook::exchange
