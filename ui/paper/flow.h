// SPDX-License-Identifier: GPL-3.0-or-later
// Text, tables and drawings flowing down pages: nothing is cut, what does not fit goes on. Short
// texts and the rows of tables are never broken; of a longer text two lines at least stand on each
// page, of a table two rows. All measures are points, at 72 to the inch.
#pragma once

#include <QFont>
#include <QPainter>
#include <QString>

#include <functional>
#include <memory>
#include <vector>

namespace slopebook::ui::page {

/// The page's own font, so that paper looks alike on every desktop. size in points.
QFont pageFont(double size, bool bold = false);
/// Of a page's sentence, its largest words: the face of the window's sentences.
QFont headlineFont(double size);

/// Something of a fixed height, painted with its top left corner at a point.
struct Block {
    double height = 0;
    double before = 0;         ///< space above, not at the top of a page
    bool keepWithNext = false; ///< no page may end with it
    std::function<void(QPainter&, const QPointF&)> paint{};
    std::shared_ptr<const Block> onNextPage{}; ///< painted above when a page begins with this one
    bool title = false;   ///< names what follows: with it a page may begin that holds little
    bool newPage = false; ///< no page holds what comes before it too
    int part = 0;         ///< lines of one text share it, and lines of one row; 0: none of them
    int table = 0;        ///< rows of one table share it
};

struct Column {
    double width = 0;
    Qt::Alignment alignment = Qt::AlignLeft;
};

struct Cell {
    QString text{};
    bool bold = false;
    bool quiet = false; ///< in grey
};

/// How closely pages are laid out: shares of the usual, for what is painted to ask.
struct Closeness {
    double type = 1, air = 1, picture = 1;
    int apart = 0; ///< 0: all in one flow; else which way what is noted has a page of its own
};

class Flow {
public:
    Flow(const QSizeF& paper, double margin, double foot, const Closeness& closeness = {});

    const Closeness& closeness() const { return m_closeness; }
    double width() const { return m_paper.width() - 2 * m_margin; }
    /// Height that one page holds.
    double room() const { return m_paper.height() - 2 * m_margin - m_foot; }
    /// Height of everything added so far, as if on one endless page.
    double height() const;

    void add(Block block);
    void space(double height);
    /// keep: the last line stays with what follows.
    void text(const QString& text, const QFont& font, double before = 0, bool keep = false);
    /// What leads a page, in whatever type: no speed in it is broken from its unit.
    void leading(const QString& text, const QFont& font, double before = 0, bool keep = false);
    /// It names what follows, and stays with it.
    void title(const QString& text, const QFont& font, double before);
    void heading(const QString& text);
    /// What is added next begins a page.
    void beginPage() { m_beginsPage = true; }
    /// Rules above and below; the head comes again on the next page.
    void table(const std::vector<Column>& columns, const std::vector<Cell>& head,
               const std::vector<std::vector<Cell>>& rows, const QFont& font, double before = 0);
    /// Of rows that paint themselves.
    void table(Block head, std::vector<Block> rows);

    /// The blocks of each page with their tops, in points from the paper's top.
    struct Placed {
        double top = 0;
        const Block* block = nullptr;
    };
    std::vector<std::vector<Placed>> pages() const;
    /// Share of a page that the last one holds.
    double lastFilled() const;
    double margin() const { return m_margin; }

private:
    void addLines(const QStringList& lines, const QFont& font, double before, bool keep);
    std::vector<Block> row(const std::vector<Column>& columns, const std::vector<Cell>& cells,
                           const QFont& font);
    Block tableHead(const std::vector<Column>& columns, const std::vector<Cell>& head,
                    const QFont& font);
    void addRows(Block head, std::vector<std::vector<Block>> rows);
    double groupHeight(std::size_t first) const;
    double filled(const std::vector<Placed>& page) const;
    std::vector<std::vector<Placed>> broken(const Block* early) const;

    QSizeF m_paper;
    double m_margin, m_foot;
    Closeness m_closeness;
    std::vector<Block> m_blocks;
    bool m_beginsPage = false;
    int m_parts = 0, m_tables = 0;
};

} // namespace slopebook::ui::page
