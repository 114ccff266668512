// SPDX-License-Identifier: GPL-3.0-or-later
// A plain table for the terminal: columns as wide as what stands in them.
#pragma once

#include <string>
#include <vector>

namespace slopebook::app {

class TextTable {
public:
    enum class Align { Left, Right };
    struct Column {
        std::string title;
        Align align = Align::Right;
    };

    explicit TextTable(std::vector<Column> columns) : m_columns(std::move(columns)) {}
    void row(std::vector<std::string> cells) { m_rows.push_back(std::move(cells)); }
    bool empty() const { return m_rows.empty(); }
    /// Every line ends with a line break; columns that are blank throughout are left out.
    std::string text() const;

private:
    std::vector<Column> m_columns;
    std::vector<std::vector<std::string>> m_rows;
};

} // namespace slopebook::app
