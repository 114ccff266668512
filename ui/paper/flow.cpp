// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/flow.h"

#include "ui/words/readable.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::page {

namespace {

const QColor quietInk(0x55, 0x55, 0x55);
const QColor ruleInk(0x77, 0x77, 0x77);
constexpr double cellGap = 9;
constexpr int leastHeadline = 12;
constexpr int keptLines = 8; // a row of more lines may be broken over two pages

// Heights of a font are the same whatever device it is painted on.
double lineHeight(const QFont& font) {
    return std::ceil(10 * QFontMetricsF(font).height()) / 10;
}

void paintLine(QPainter& painter, const QFont& font, const QColor& ink, const QRectF& box,
               Qt::Alignment alignment, const QString& text) {
    painter.setFont(font);
    painter.setPen(ink);
    const QFontMetricsF metrics(font);
    double x = box.left();
    if (alignment & Qt::AlignRight)
        x = box.right() - metrics.horizontalAdvance(text);
    painter.drawText(QPointF(x, box.top() + metrics.ascent()), text);
}

Block rule(double width, double thickness) {
    return {.height = 1.5,
            .keepWithNext = true,
            .paint = [width, thickness](QPainter& p, const QPointF& at) {
                p.setPen(QPen(ruleInk, thickness));
                p.drawLine(at, at + QPointF(width, 0));
            }};
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

namespace {

/// Text broken into lines of at most width; a word that is wider is broken too.
QStringList wrapped(const QString& text, const QFont& font, double width) {
    QStringList lines;
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    const bool leads = font.pixelSize() >= leastHeadline;
    const QString whole = leads ? withWholeFigures(text) : withWholeUnits(text);
    for (const QString& paragraph : whole.split(u'\n')) {
        QTextLayout layout(paragraph, font);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(std::max(width, 1.0));
            lines << asWritten(paragraph.mid(line.textStart(), line.textLength()).trimmed());
        }
        layout.endLayout();
    }
    return lines;
}

/// px: of its longest line, and of the longest word.
struct Widths {
    double line = 0, word = 0;
};

Widths widthsOf(const Cell& cell, QFont font) {
    font.setBold(cell.bold);
    const QFontMetricsF metrics(font);
    Widths longest;
    for (const QString& line : cell.text.split(u'\n')) {
        longest.line = std::max(longest.line, metrics.horizontalAdvance(line));
        for (const QString& word : line.split(u' '))
            longest.word = std::max(longest.word, metrics.horizontalAdvance(word));
    }
    return longest;
}

/// As wide together, and none so narrow that a word of it is broken while another has room to give.
std::vector<Column> fitted(std::vector<Column> columns, const std::vector<Cell>& head,
                           const std::vector<std::vector<Cell>>& rows, const QFont& font) {
    constexpr double air = cellGap + 1;
    std::vector<double> lines(columns.size(), air), words(columns.size(), air);
    for (const std::vector<Cell>& cells : rows)
        for (std::size_t i = 0; i < std::min(cells.size(), columns.size()); ++i) {
            const Widths one = widthsOf(cells[i], font);
            lines[i] = std::max(lines[i], one.line + air);
            words[i] = std::max(words[i], one.word + air);
        }
    std::vector<double> wanted = words;
    for (std::size_t i = 0; i < std::min(head.size(), columns.size()); ++i)
        wanted[i] = std::max(wanted[i], widthsOf(head[i], font).word + air);
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
    return columns;
}

} // namespace

Flow::Flow(const QSizeF& paper, double margin, double foot)
    : m_paper(paper), m_margin(margin), m_foot(foot) {}

double Flow::height() const {
    double sum = 0;
    for (const Block& b : m_blocks)
        sum += b.before + b.height;
    return sum;
}

void Flow::add(Block block) {
    m_blocks.push_back(std::move(block));
}

void Flow::space(double height) {
    m_blocks.push_back({.height = 0, .before = height, .paint = [](QPainter&, const QPointF&) {}});
}

void Flow::text(const QString& text, const QFont& font, double before, bool keep) {
    const double height = lineHeight(font);
    const double w = width();
    const QStringList lines = wrapped(text, font, w);
    for (qsizetype i = 0; i < lines.size(); ++i)
        m_blocks.push_back(
            {.height = height,
             .before = i == 0 ? before : 0,
             .keepWithNext = keep && (i + 1 == lines.size() || lines.size() <= keptLines),
             .paint = [font, w, line = lines[i], height](QPainter& p, const QPointF& at) {
                 paintLine(p, font, Qt::black, QRectF(at, QSizeF(w, height)), Qt::AlignLeft, line);
             }});
}

void Flow::heading(const QString& text) {
    this->text(text, pageFont(9, true), 7, true);
    space(1);
    m_blocks.back().keepWithNext = true;
}

std::vector<Block> Flow::row(const std::vector<Column>& columns, const std::vector<Cell>& cells,
                             const QFont& font) const {
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
        const double w = columns[i].width - cellGap;
        parts.push_back({left, w, columns[i].alignment, f, cell.quiet, wrapped(cell.text, f, w)});
        most = std::max(most, parts.back().lines.size());
        left += columns[i].width;
    }
    const double height = lineHeight(font);
    std::vector<Block> blocks;
    for (qsizetype n = 0; n < most; ++n)
        blocks.push_back(
            {.height = height + (n + 1 == most ? 1 : 0),
             .keepWithNext = n + 1 < most && most <= keptLines,
             .paint = [parts, n, height](QPainter& p, const QPointF& at) {
                 for (const Part& part : parts)
                     if (n < part.lines.size())
                         paintLine(p, part.font, part.quiet ? quietInk : QColor(Qt::black),
                                   QRectF(at + QPointF(part.left, 0), QSizeF(part.width, height)),
                                   part.alignment, part.lines[n]);
             }});
    return blocks;
}

void Flow::table(const std::vector<Column>& asked, const std::vector<Cell>& head,
                 const std::vector<std::vector<Cell>>& rows, const QFont& font, double before) {
    if (rows.empty())
        return;
    const std::vector<Column> columns = fitted(asked, head, rows, font);
    const double w = width();
    auto top = std::make_shared<Block>();
    {
        std::vector<Block> blocks{rule(w, 0.8)};
        for (Block& b : row(columns, head, font))
            blocks.push_back(std::move(b));
        blocks.push_back(rule(w, 0.5));
        for (const Block& b : blocks)
            top->height += b.height;
        top->keepWithNext = true;
        top->paint = [blocks](QPainter& p, QPointF at) {
            for (const Block& b : blocks) {
                b.paint(p, at);
                at.ry() += b.height;
            }
        };
    }
    if (!head.empty()) {
        m_blocks.push_back(*top);
        m_blocks.back().before = before;
    } else {
        space(before);
        m_blocks.back().keepWithNext = true;
    }
    for (const auto& cells : rows)
        for (Block& b : row(columns, cells, font)) {
            if (!head.empty())
                b.onNextPage = top;
            m_blocks.push_back(std::move(b));
        }
    Block last = rule(w, 0.5);
    last.keepWithNext = false;
    if (!m_blocks.empty())
        m_blocks.back().keepWithNext = true;
    m_blocks.push_back(last);
}

double Flow::groupHeight(std::size_t first) const {
    double sum = m_blocks[first].height;
    for (std::size_t i = first; m_blocks[i].keepWithNext && i + 1 < m_blocks.size(); ++i)
        sum += m_blocks[i + 1].before + m_blocks[i + 1].height;
    return sum;
}

std::vector<std::vector<Flow::Placed>> Flow::pages() const {
    std::vector<std::vector<Placed>> pages(1);
    const double bottom = m_margin + room() + 0.01;
    double y = m_margin;
    bool whole = false; // the block belongs to a group that is known to fit
    for (std::size_t i = 0; i < m_blocks.size(); ++i) {
        const Block& b = m_blocks[i];
        const bool first = pages.back().empty();
        const double before = first ? 0 : b.before;
        const double need = whole ? b.height : groupHeight(i);
        // A group taller than a page is broken wherever it must.
        const double must = need > room() ? b.height : need;
        if (!first && y + before + must > bottom) {
            pages.emplace_back();
            y = m_margin;
            if (b.onNextPage) {
                pages.back().push_back({y, b.onNextPage.get()});
                y += b.onNextPage->height;
            }
        } else {
            y += before;
        }
        pages.back().push_back({y, &b});
        y += b.height;
        whole = b.keepWithNext && need <= room();
    }
    return pages;
}

} // namespace slopebook::ui::page
