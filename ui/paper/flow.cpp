// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/flow.h"

#include "ui/paper/columns.h"
#include "ui/paper/lines.h"

#include <algorithm>
#include <cmath>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::page {

namespace {

const QColor quietInk(0x55, 0x55, 0x55);
const QColor ruleInk(0x77, 0x77, 0x77);
constexpr qsizetype fewLines = 4;   // a text of no more is never broken
constexpr qsizetype titleLines = 8; // nor one of no more that stays with what follows
constexpr qsizetype rowLines = 8;   // nor a row
constexpr double smallTable = 0.25; // of a page: neither such a table

Block rule(double width, double thickness) {
    return {.height = 1.5,
            .keepWithNext = true,
            .paint = [width, thickness](QPainter& p, const QPointF& at) {
                p.setPen(QPen(ruleInk, thickness));
                p.drawLine(at, at + QPointF(width, 0));
            }};
}

/// Whole where there are few lines; of more, two at least stand on each page.
bool staysWithNext(qsizetype line, qsizetype lines, qsizetype few) {
    return line + 1 < lines && (lines <= few || line == 0 || line + 2 == lines);
}

} // namespace

QFont pageFont(double size, bool bold) {
    QFont font;
    font.setFamilies({u"DejaVu Sans"_s, u"Liberation Sans"_s, u"Sans Serif"_s});
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(size))));
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any spacing of letters (a 64th is the least that counts) keeps ligatures out: text copied or
    // searched for is then as written. In per cent, for Qt multiplies a length by the paper's dots.
    font.setLetterSpacing(QFont::PercentageSpacing, 100.02);
    return font;
}

QFont headlineFont(double size) {
    QFont font = pageFont(size);
    font.setFamilies({u"Noto Serif"_s, u"DejaVu Serif"_s, u"Liberation Serif"_s, u"Serif"_s});
    return font;
}

Flow::Flow(const QSizeF& paper, double margin, double foot, const Closeness& closeness)
    : m_paper(paper), m_margin(margin), m_foot(foot), m_closeness(closeness) {}

double Flow::height() const {
    double sum = 0;
    for (const Block& b : m_blocks)
        sum += b.before + b.height;
    return sum;
}

void Flow::add(Block block) {
    block.before *= m_closeness.air;
    block.newPage = std::exchange(m_beginsPage, false);
    m_blocks.push_back(std::move(block));
}

void Flow::space(double height) {
    add({.height = 0, .before = height, .paint = [](QPainter&, const QPointF&) {}});
}

void Flow::addLines(const QStringList& lines, const QFont& font, double before, bool keep) {
    const double height = lineHeight(font);
    const double w = width();
    const int part = ++m_parts;
    for (qsizetype i = 0; i < lines.size(); ++i)
        add({.height = height,
             .before = i == 0 ? before : 0,
             .keepWithNext = (keep && i + 1 == lines.size()) ||
                             staysWithNext(i, lines.size(), keep ? titleLines : fewLines),
             .paint =
                 [font, w, line = lines[i], height](QPainter& p, const QPointF& at) {
                     paintLine(p, font, Qt::black, QRectF(at, QSizeF(w, height)), Qt::AlignLeft,
                               line);
                 },
             .part = part});
}

void Flow::text(const QString& text, const QFont& font, double before, bool keep) {
    addLines(wrapped(text, font, width()), font, before, keep);
}

void Flow::leading(const QString& text, const QFont& font, double before, bool keep) {
    addLines(wrapped(text, font, width(), Whole::Figures), font, before, keep);
}

void Flow::title(const QString& text, const QFont& font, double before) {
    const std::size_t first = m_blocks.size();
    this->text(text, font, before, true);
    m_blocks[first].title = true;
}

void Flow::heading(const QString& text) {
    title(text, pageFont(9, true), 7);
    space(1);
    m_blocks.back().keepWithNext = true;
}

std::vector<Block> Flow::row(const std::vector<Column>& columns, const std::vector<Cell>& cells,
                             const QFont& font) {
    struct Part {
        double left, width;
        Qt::Alignment alignment;
        QFont font;
        bool quiet;
        QStringList lines;
    };
    std::vector<Part> parts;
    double left = 0;
    qsizetype most = 1;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const Cell cell = i < cells.size() ? cells[i] : Cell{};
        QFont f = font;
        f.setBold(cell.bold);
        const double w = columns[i].width - (i + 1 < columns.size() ? cellGap : 0);
        parts.push_back({left, w, columns[i].alignment, f, cell.quiet, wrapped(cell.text, f, w)});
        most = std::max(most, parts.back().lines.size());
        left += columns[i].width;
    }
    const double height = lineHeight(font);
    const int part = ++m_parts;
    std::vector<Block> blocks;
    for (qsizetype n = 0; n < most; ++n)
        blocks.push_back({.height = height + (n + 1 == most ? 1 : 0),
                          .keepWithNext = staysWithNext(n, most, rowLines),
                          .paint =
                              [parts, n, height](QPainter& p, const QPointF& at) {
                                  for (const Part& cell : parts)
                                      if (n < cell.lines.size())
                                          paintLine(p, cell.font,
                                                    cell.quiet ? quietInk : QColor(Qt::black),
                                                    QRectF(at + QPointF(cell.left, 0),
                                                           QSizeF(cell.width, height)),
                                                    cell.alignment, cell.lines[n]);
                              },
                          .part = part});
    return blocks;
}

/// The headings between their rules, as one.
Block Flow::tableHead(const std::vector<Column>& columns, const std::vector<Cell>& head,
                      const QFont& font) {
    std::vector<Block> blocks{rule(width(), 0.8)};
    for (Block& b : row(columns, head, font))
        blocks.push_back(std::move(b));
    blocks.push_back(rule(width(), 0.5));
    Block top;
    for (const Block& b : blocks)
        top.height += b.height;
    top.paint = [blocks](QPainter& p, QPointF at) {
        for (const Block& b : blocks) {
            b.paint(p, at);
            at.ry() += b.height;
        }
    };
    return top;
}

void Flow::table(const std::vector<Column>& asked, const std::vector<Cell>& head,
                 const std::vector<std::vector<Cell>>& rows, const QFont& font, double before) {
    if (rows.empty())
        return;
    const std::vector<Column> columns = fitted(asked, head, rows, font);
    std::vector<std::vector<Block>> all;
    for (const auto& cells : rows)
        all.push_back(row(columns, cells, font));
    Block last = rule(width(), 0.5);
    last.keepWithNext = false;
    all.back().back().keepWithNext = true;
    all.back().push_back(std::move(last));
    if (!head.empty()) {
        Block top = tableHead(columns, head, font);
        top.before = before;
        addRows(std::move(top), std::move(all));
        return;
    }
    // Without a head the rows are texts with their labels, each for itself.
    space(before);
    m_blocks.back().keepWithNext = true;
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i].front().title = !rows[i].empty() && !rows[i].front().text.isEmpty();
        for (Block& b : all[i])
            add(std::move(b));
    }
}

void Flow::table(Block head, std::vector<Block> rows) {
    std::vector<std::vector<Block>> all;
    for (Block& row : rows) {
        row.part = ++m_parts;
        all.push_back({std::move(row)});
    }
    addRows(std::move(head), std::move(all));
}

void Flow::addRows(Block head, std::vector<std::vector<Block>> rows) {
    head.keepWithNext = true;
    double height = head.height;
    for (const auto& row : rows)
        for (const Block& b : row)
            height += b.height;
    const bool whole = height <= smallTable * room();
    auto again = std::make_shared<Block>(head);
    add(std::move(head));
    const int table = ++m_tables;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        // Two at least stand on each page.
        if (i + 1 < rows.size() && (whole || i == 0 || i + 2 == rows.size()))
            rows[i].back().keepWithNext = true;
        for (Block& b : rows[i]) {
            b.table = table;
            b.onNextPage = again;
            add(std::move(b));
        }
    }
}

} // namespace slopebook::ui::page
