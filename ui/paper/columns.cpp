// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/columns.h"

#include "ui/paper/lines.h"

#include <QFontMetricsF>

#include <algorithm>
#include <numeric>
#include <span>

namespace slopebook::ui::page {

namespace {

constexpr double air = cellGap + 1;
constexpr int seenAtOnce = 3; // lines of a row: beside others of one it is read as a paragraph

/// The words of a cell, px wide each, line by line as they are written.
struct Measured {
    std::vector<std::vector<double>> lines{};
    double blank = 0;

    double longestWord() const {
        double longest = 0;
        for (const auto& line : lines)
            for (const double word : line)
                longest = std::max(longest, word);
        return longest;
    }
    double longestLine() const {
        double longest = 0;
        for (const auto& line : lines) {
            double sum = -blank;
            for (const double word : line)
                sum += word + blank;
            longest = std::max(longest, sum);
        }
        return longest;
    }
    int linesAt(double width) const {
        int count = 0;
        for (const auto& line : lines) {
            double used = width + 1; // the first word begins a line
            for (const double word : line) {
                const bool on = used + blank + word <= width;
                count += on ? 0 : 1;
                used = on ? used + blank + word : word;
            }
        }
        return std::max(count, 1);
    }
};

Measured measured(const Cell& cell, QFont font) {
    font.setBold(cell.bold);
    const QFontMetricsF metrics(font);
    Measured all{.blank = metrics.horizontalAdvance(u' ')};
    for (const QString& line : unbroken(cell.text).split(u'\n')) {
        auto& words = all.lines.emplace_back();
        for (const QString& word : line.split(u' '))
            words.push_back(metrics.horizontalAdvance(word));
    }
    return all;
}

using Table = std::vector<std::vector<Measured>>; // by column, the head first

Table measuredAll(std::size_t columns, const std::vector<Cell>& head,
                  const std::vector<std::vector<Cell>>& rows, const QFont& font) {
    Table all(columns);
    const auto take = [&](const std::vector<Cell>& cells) {
        for (std::size_t i = 0; i < columns; ++i)
            all[i].push_back(measured(i < cells.size() ? cells[i] : Cell{}, font));
    };
    take(head);
    for (const auto& cells : rows)
        take(cells);
    return all;
}

/// None so narrow that a word of it is broken while another has room to give.
void keepWords(std::vector<Column>& columns, const Table& table) {
    std::vector<double> lines(columns.size(), air), words(columns.size(), air), wanted;
    for (std::size_t i = 0; i < columns.size(); ++i)
        for (const Measured& cell : std::span(table[i]).subspan(1)) {
            lines[i] = std::max(lines[i], cell.longestLine() + air);
            words[i] = std::max(words[i], cell.longestWord() + air);
        }
    wanted = words;
    for (std::size_t i = 0; i < columns.size(); ++i)
        wanted[i] = std::max(wanted[i], table[i].front().longestWord() + air);
    // What lies beyond the lines of the rows, for the words of headings too; what is still missing
    // for the rows' own words, then for those of headings, is taken where lines will break.
    const auto share = [&](const std::vector<double>& least, const std::vector<double>& kept) {
        double missing = 0, spare = 0;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            missing += std::max(0.0, least[i] - columns[i].width);
            spare += std::max(0.0, columns[i].width - std::max(least[i], kept[i]));
        }
        if (missing <= 0 || spare <= 0)
            return;
        const double given = std::min(1.0, missing / spare);
        const double filled = std::min(1.0, spare / missing);
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const double under = least[i] - columns[i].width;
            const double over = columns[i].width - std::max(least[i], kept[i]);
            columns[i].width += under > 0 ? filled * under : -given * std::max(0.0, over);
        }
    };
    share(wanted, lines);
    share(words, words);
    share(wanted, wanted);
}

std::vector<int> linesOf(const std::vector<Measured>& column, double width) {
    std::vector<int> lines;
    for (const Measured& cell : column)
        lines.push_back(cell.linesAt(width - cellGap - 0.5)); // half a point: what rounding takes
    return lines;
}

/// A table whose columns give each other room for as long as it grows shorter by that.
class Sharing {
public:
    Sharing(std::vector<Column>& columns, const Table& table) : m_columns(columns), m_table(table) {
        for (std::size_t i = 0; i < columns.size(); ++i) {
            double& least = m_least.emplace_back(0);
            for (const Measured& cell : table[i])
                least = std::max(least, cell.longestWord() + air);
            m_lines.push_back(linesOf(table[i], columns[i].width));
        }
        m_height = heightWith({});
    }

    void run() {
        constexpr int most = 60;
        for (int round = 0; round < most; ++round)
            if (!take(fromOne()) && !take(fromAll()))
                return;
    }

private:
    struct Move {
        long height = 0;
        std::vector<double> by{}; ///< of each column; nothing where none is better
    };
    /// Columns that have other lines than now.
    using Changed = std::vector<std::pair<std::size_t, std::vector<int>>>;

    /// Lines of the table, of each row those beyond a few counted thrice; among as many, lines of
    /// its cells: two columns that wrap in one row give way one after the other.
    long heightWith(const Changed& changed) const {
        std::vector<const std::vector<int>*> lines;
        for (const std::vector<int>& each : m_lines)
            lines.push_back(&each);
        for (const auto& [column, own] : changed)
            lines[column] = &own;
        long ofTable = 0, ofCells = 0;
        for (std::size_t row = 0; row < m_table.front().size(); ++row) {
            int most = 1;
            for (const std::vector<int>* each : lines) {
                most = std::max(most, (*each)[row]);
                ofCells += (*each)[row];
            }
            ofTable += most + 2 * std::max(0, most - seenAtOnce);
        }
        return 100'000 * ofTable + ofCells;
    }
    std::vector<int> linesWith(std::size_t column, double by) const {
        return linesOf(m_table[column], m_columns[column].width + by);
    }
    bool take(const Move& move) {
        if (move.by.empty())
            return false;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            m_columns[i].width += move.by[i];
            m_lines[i] = linesWith(i, 0);
        }
        m_height = move.height;
        return true;
    }

    Move fromOne() const {
        Move best{.height = m_height};
        for (std::size_t from = 0; from < m_columns.size(); ++from)
            for (const double by : {4.0, 8.0, 14.0, 22.0, 32.0, 48.0}) {
                if (m_columns[from].width - by < m_least[from])
                    break;
                const auto less = linesWith(from, -by);
                for (std::size_t to = 0; to < m_columns.size(); ++to) {
                    if (to == from)
                        continue;
                    const long then = heightWith({{from, less}, {to, linesWith(to, by)}});
                    if (then >= best.height)
                        continue;
                    best = {then, std::vector<double>(m_columns.size(), 0)};
                    best.by[from] = -by;
                    best.by[to] = by;
                }
            }
        return best;
    }
    /// Where no column alone has enough for another: each gives of what none of its cells grows
    /// higher by.
    Move fromAll() const {
        std::vector<double> spare;
        for (std::size_t i = 0; i < m_columns.size(); ++i)
            spare.push_back(spareOf(i));
        const double all = std::accumulate(spare.begin(), spare.end(), 0.0);
        Move best{.height = m_height};
        for (std::size_t to = 0; to < m_columns.size(); ++to) {
            const double others = all - spare[to];
            for (double by = 4; by <= others; by += 4) {
                const long then = heightWith({{to, linesWith(to, by)}});
                if (then >= best.height)
                    continue;
                best = {then, spare};
                for (double& each : best.by)
                    each *= -by / others;
                best.by[to] = by;
            }
        }
        return best;
    }
    double spareOf(std::size_t column) const {
        double enough = 0, tooMuch = std::max(0.0, m_columns[column].width - m_least[column]);
        while (tooMuch - enough > 0.25) {
            const double half = (enough + tooMuch) / 2;
            (linesWith(column, -half) == m_lines[column] ? enough : tooMuch) = half;
        }
        return enough;
    }

    std::vector<Column>& m_columns;
    const Table& m_table;
    std::vector<double> m_least;
    std::vector<std::vector<int>> m_lines;
    long m_height = 0;
};

} // namespace

std::vector<Column> fitted(std::vector<Column> columns, const std::vector<Cell>& head,
                           const std::vector<std::vector<Cell>>& rows, const QFont& font) {
    if (columns.empty())
        return columns;
    const Table table = measuredAll(columns.size(), head, rows, font);
    columns.back().width += cellGap; // as all others are reckoned
    keepWords(columns, table);
    if (!head.empty()) // what has no head stands by its labels, like others above and below it
        Sharing(columns, table).run();
    columns.back().width -= cellGap;
    return columns;
}

} // namespace slopebook::ui::page
