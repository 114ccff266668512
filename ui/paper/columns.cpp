// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/columns.h"

#include "ui/paper/lines.h"

#include <QFontMetricsF>

#include <algorithm>
#include <span>

namespace slopebook::ui::page {

namespace {

constexpr double air = cellGap + 1;

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

/// Gives room from column to column while the table grows shorter by it.
void saveLines(std::vector<Column>& columns, const Table& table) {
    const std::size_t count = columns.size(), rows = table.front().size();
    std::vector<double> least(count, 0);
    std::vector<std::vector<int>> lines;
    for (std::size_t i = 0; i < count; ++i) {
        for (const Measured& cell : table[i])
            least[i] = std::max(least[i], cell.longestWord() + air);
        lines.push_back(linesOf(table[i], columns[i].width));
    }
    // Lines of the table; among as many, lines of its cells: two columns that wrap in one row give
    // way one after the other.
    const auto height = [&](std::size_t from, const std::vector<int>& less, std::size_t to,
                            const std::vector<int>& more) {
        long ofTable = 0, ofCells = 0;
        for (std::size_t row = 0; row < rows; ++row) {
            int most = 1;
            for (std::size_t i = 0; i < count; ++i) {
                const int here = i == from ? less[row] : i == to ? more[row] : lines[i][row];
                most = std::max(most, here);
                ofCells += here;
            }
            ofTable += most;
        }
        return 100'000 * ofTable + ofCells;
    };
    long now = height(count, lines.front(), count, lines.front());
    for (int rounds = 0; rounds < 60; ++rounds) {
        struct Move {
            long height = 0;
            std::size_t from = 0, to = 0;
            double by = 0;
        } best{.height = now};
        for (std::size_t from = 0; from < count; ++from)
            for (const double by : {4.0, 8.0, 14.0, 22.0, 32.0, 48.0}) {
                if (columns[from].width - by < least[from])
                    break;
                const auto less = linesOf(table[from], columns[from].width - by);
                for (std::size_t to = 0; to < count; ++to) {
                    if (to == from)
                        continue;
                    const long then =
                        height(from, less, to, linesOf(table[to], columns[to].width + by));
                    if (then < best.height)
                        best = {then, from, to, by};
                }
            }
        if (best.height == now)
            return;
        columns[best.from].width -= best.by;
        columns[best.to].width += best.by;
        for (const std::size_t i : {best.from, best.to})
            lines[i] = linesOf(table[i], columns[i].width);
        now = best.height;
    }
}

} // namespace

std::vector<Column> fitted(std::vector<Column> columns, const std::vector<Cell>& head,
                           const std::vector<std::vector<Cell>>& rows, const QFont& font) {
    const Table table = measuredAll(columns.size(), head, rows, font);
    keepWords(columns, table);
    if (!head.empty()) // what has no head stands by its labels, like others above and below it
        saveLines(columns, table);
    return columns;
}

} // namespace slopebook::ui::page
