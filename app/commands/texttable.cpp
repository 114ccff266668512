// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/texttable.h"

#include <algorithm>

namespace slopebook::app {

namespace {

// Characters, not bytes; a terminal gives names their own width otherwise.
std::size_t width(const std::string& text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::string onOneLine(std::string text) {
    std::ranges::replace_if(
        text, [](char c) { return static_cast<unsigned char>(c) < 0x20; }, ' ');
    return text;
}

} // namespace

std::string TextTable::text() const {
    std::vector<std::vector<std::string>> rows{{}};
    for (const Column& column : m_columns)
        rows[0].push_back(column.title);
    for (const auto& row : m_rows) {
        rows.emplace_back();
        for (const std::string& cell : row)
            rows.back().push_back(onOneLine(cell));
    }
    std::vector<std::size_t> widths(m_columns.size());
    for (std::size_t c = 0; c < m_columns.size(); ++c)
        for (std::size_t r = 1; r < rows.size(); ++r)
            if (!rows[r][c].empty())
                widths[c] = std::max({widths[c], width(rows[r][c]), width(rows[0][c])});
    std::string text;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t c = 0; c < row.size(); ++c) {
            if (widths[c] == 0)
                continue;
            const std::string gap(widths[c] - width(row[c]), ' ');
            line += (line.empty() ? "" : "  ") +
                    (m_columns[c].align == Align::Left ? row[c] + gap : gap + row[c]);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
    }
    return text;
}

} // namespace slopebook::app
