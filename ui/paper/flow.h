// SPDX-License-Identifier: GPL-3.0-or-later
// Text, tables and drawings flowing down pages: nothing is cut, what does not fit goes on. All
// measures are points, at 72 to the inch.
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

class Flow {
public:
    Flow(const QSizeF& paper, double margin, double foot);

    double width() const { return m_paper.width() - 2 * m_margin; }
    /// Height that one page holds.
    double room() const { return m_paper.height() - 2 * m_margin - m_foot; }
    /// Height of everything added so far, as if on one endless page.
    double height() const;

    void add(Block block);
    void space(double height);
    /// keep: the last line stays with what follows, and of a short text all of it.
    void text(const QString& text, const QFont& font, double before = 0, bool keep = false);
    void heading(const QString& text);
    /// Rules above and below; the head comes again on the next page.
    void table(const std::vector<Column>& columns, const std::vector<Cell>& head,
               const std::vector<std::vector<Cell>>& rows, const QFont& font, double before = 0);

    /// The blocks of each page with their tops, in points from the paper's top.
    struct Placed {
        double top = 0;
        const Block* block = nullptr;
    };
    std::vector<std::vector<Placed>> pages() const;
    double margin() const { return m_margin; }

private:
    std::vector<Block> row(const std::vector<Column>& columns, const std::vector<Cell>& cells,
                           const QFont& font) const;
    double groupHeight(std::size_t first) const;

    QSizeF m_paper;
    double m_margin, m_foot;
    std::vector<Block> m_blocks;
};

} // namespace slopebook::ui::page
