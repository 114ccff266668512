// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/rowtable.h"

#include "ui/parts/deskpaint.h"
#include "ui/parts/deskstyle.h"
#include "ui/parts/restofrow.h"

#include <QHeaderView>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QStyle>
#include <QTimer>
#include <QToolTip>

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace slopebook::ui {

namespace {
constexpr char growing[] = "rowsGrow";
constexpr char longList[] = "longList";
constexpr int unbounded = 4000;   // px: no cell's words are wider
constexpr int rowsThatCount = 60; // for a column's width: more than a screen shows
constexpr int rowsThatGrow = 400; // of more all have room for two lines, unmeasured

/// Where the last row ends that is seen whole; where one is higher than the table, the table's end.
int endOfRows(const QTableView& table) {
    const QHeaderView& rows = *table.verticalHeader();
    const int room = table.viewport()->height();
    const int all = rows.length() - rows.offset();
    if (all <= room)
        return all;
    const int cut = rows.logicalIndexAt(room);
    const int top = cut < 0 ? room : rows.sectionViewportPosition(cut);
    return top > 0 ? top : room;
}

/// Each row as high as what wraps in it; measuring thousands would take longer than reading them.
void growRows(QTableView& table) {
    if (table.property(longList).toBool() && table.model()->rowCount() > rowsThatGrow)
        table.verticalHeader()->setDefaultSectionSize(2 * table.fontMetrics().lineSpacing() + 4);
    else
        table.resizeRowsToContents();
}

/// The chosen row stays in sight when the table gets its room, or less of it.
class RowTable final : public QTableView {
public:
    /// The last column takes what is left, and never less than it needs: then the table scrolls.
    void giveLastTheRest() {
        m_lastTakesRest = true;
        QObject::connect(horizontalHeader(), &QHeaderView::sectionResized, this,
                         [this](int column) {
                             if (column != lastThere())
                                 fitLast();
                         });
        QObject::connect(model(), &QAbstractItemModel::modelReset, this, [this] { fitLast(); });
    }

    RowTable() { setProperty(ownEndRule, true); }

    /// Each column as wide as what it holds; giving wrap, one after the other, where there is no
    /// room for all, and where that is not enough leaving go.
    void letGive(const QList<int>& giving, const QList<int>& leaving) {
        m_giving = giving;
        m_leaving = leaving;
        horizontalHeader()->setResizeContentsPrecision(rowsThatCount);
        QObject::connect(model(), &QAbstractItemModel::modelReset, this, [this] { giveWay(); });
    }

    /// The columns share the width anew.
    void giveWay() {
        if (m_giving.isEmpty() && m_leaving.isEmpty())
            return;
        if (m_lastTakesRest) // else it seems to have room for what it holds
            horizontalHeader()->setStretchLastSection(false);
        m_sharing = true;
        shareAnew();
        m_sharing = false;
        fitLast();
        describe();
    }

    void tellAlways(const QList<int>& columns) {
        m_told = columns;
        describe();
    }

    void haveColumn(int column, bool there) {
        m_away.removeAll(column);
        setColumnHidden(column, !there);
    }

protected:
    // A row's tip also tells what stands in columns that have no room.
    bool viewportEvent(QEvent* event) override {
        if (event->type() != QEvent::ToolTip || untold().isEmpty())
            return QTableView::viewportEvent(event);
        const auto* help = static_cast<QHelpEvent*>(event);
        QStringList tip;
        if (const QModelIndex at = indexAt(help->pos()); at.isValid())
            tip << at.data(Qt::ToolTipRole).toString() << cellsOf(at, untold());
        tip.removeAll(QString());
        QToolTip::showText(help->globalPos(), tip.join(u'\n'), this);
        return true;
    }
    // By a key as well, under the row, and of each row that the keys go on to.
    void keyPressEvent(QKeyEvent* event) override {
        const bool shown = m_restShown && QToolTip::isVisible();
        const bool plain = !(event->modifiers() & ~Qt::KeypadModifier);
        if (plain && event->key() == Qt::Key_F4 && currentIndex().isValid()) {
            m_restShown = true;
            showRest(*this, restOfRow(*this, currentIndex(), untold()));
        } else if (plain && event->key() == Qt::Key_Escape && shown) {
            m_restShown = false;
            QToolTip::hideText();
        } else {
            QTableView::keyPressEvent(event);
        }
    }
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override {
        QTableView::currentChanged(current, previous);
        describe();
        if (m_restShown && QToolTip::isVisible())
            showRest(*this, restOfRow(*this, current, untold()));
    }
    // The rule stands under the last row, or where the rows go on below the window.
    void paintEvent(QPaintEvent* event) override {
        const bool numbered = !verticalHeader()->isHidden(); // its numbers stand where they are
        QPaintEvent whole(numbered ? event->region() : wholeRowsOf(*this, event->region()));
        if (!whole.region().isEmpty())
            QTableView::paintEvent(&whole);
        const int rows =
            numbered ? verticalHeader()->length() - verticalOffset() : endOfRows(*this);
        const int end = std::min(rows, viewport()->height() - desk::tableRule);
        QPainter painter(viewport());
        painter.fillRect(0, std::max(0, end), viewport()->width(), desk::tableRule,
                         deskTones(palette()).ink);
    }
    void resizeEvent(QResizeEvent* event) override {
        QTableView::resizeEvent(event);
        if (event->size().width() != event->oldSize().width())
            giveWay();
        fitLast();
        if (currentIndex().isValid())
            scrollTo(currentIndex());
    }

private:
    void shareAnew() {
        for (const int column : std::as_const(m_away))
            setColumnHidden(column, false);
        m_away.clear();
        const QHeaderView& columns = *horizontalHeader();
        if (columns.count() == 0)
            return;
        const WidthsFirst widths(*this);
        QList<int> giving = m_giving;
        if (const int last = lastThere(); m_lastTakesRest && wordWrap() && !giving.contains(last))
            giving << last;
        for (const int column : giving) // what wraps asks for no more than it has
            if (isThere(column))
                setColumnWidth(column, unbounded);
        resizeColumnsToContents();
        // Room for a scroll bar is kept: it comes once what wraps makes the rows higher.
        const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, this);
        const int room = std::min(viewport()->width(), width() - bar - 2 * frameWidth());
        int saved = 0; // by wrapping all that may
        for (const int column : giving)
            saved += isThere(column) ? columns.sectionSize(column) - least(column) : 0;
        for (const int column : m_leaving)
            if (columns.length() - saved > room && isThere(column)) {
                saved -= giving.contains(column) ? columns.sectionSize(column) - least(column) : 0;
                setColumnHidden(column, true);
                m_away << column;
            }
        int over = columns.length() - room;
        for (const int column : giving) {
            if (over <= 0)
                return;
            if (!isThere(column))
                continue;
            const int now = columns.sectionSize(column);
            setColumnWidth(column, std::max(least(column), now - over));
            over -= now - columns.sectionSize(column);
        }
    }
    QList<int> untold() const { return m_told + m_away; }
    void describe() {
        const QList<int> columns = untold();
        setAccessibleDescription(
            describedRest(restOfRow(*this, currentIndex(), columns), *this, columns));
    }
    bool isThere(int column) const {
        return column < horizontalHeader()->count() && !isColumnHidden(column);
    }
    int lastThere() const {
        int last = horizontalHeader()->count() - 1;
        while (last >= 0 && isColumnHidden(last))
            --last;
        return last;
    }
    /// px, of a column that wraps: no more than it has.
    int least(int column) const {
        return std::min(columnWidth(column),
                        std::max(horizontalHeader()->sectionSizeHint(column), wrapped(column)));
    }
    /// px, of words that wrap and are still read: no word of the column is cut.
    int wrapped(int column) const {
        constexpr int leastLetters = 14; // "unclear; clear" in one line
        QFont bold = font();
        bold.setBold(true);
        const QFontMetrics usual(font()), strong(bold);
        int longest = 0, whole = 0;
        for (int row = 0; row < std::min(rowsThatCount, model()->rowCount()); ++row) {
            const QModelIndex cell = model()->index(row, column);
            const QString words = cell.data().toString();
            const QFontMetrics& metrics =
                cell.data(Qt::FontRole).value<QFont>().bold() ? strong : usual;
            whole = std::max(whole, metrics.horizontalAdvance(words));
            for (const QString& word : words.split(u' '))
                longest = std::max(longest, metrics.horizontalAdvance(word));
        }
        const int asked = leastLetters * fontMetrics().averageCharWidth();
        return std::min(whole, std::max(longest, asked)) +
               2 * (style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, this) + 1);
    }
    void fitLast() {
        QHeaderView& columns = *horizontalHeader();
        const int last = lastThere();
        if (!m_lastTakesRest || m_sharing || last < 0)
            return;
        const int words = wordWrap() ? wrapped(last) : sizeHintForColumn(last);
        const int least = std::max(columns.sectionSizeHint(last), words);
        const bool room = viewport()->width() - columns.sectionPosition(last) >= least;
        if (columns.stretchLastSection() != room)
            columns.setStretchLastSection(room);
        if (!room)
            columns.resizeSection(last, least);
    }

    bool m_lastTakesRest = false;
    bool m_restShown = false; ///< by a key, since Escape
    bool m_sharing = false;   ///< who changes a column now gives the last one its room afterwards
    QList<int> m_giving, m_leaving, m_told;
    QList<int> m_away; ///< of those that leave, what has no room now
};
} // namespace

QTableView* rowTable(QAbstractItemModel* model, const QString& name, const RowStyle& style) {
    auto* table = new RowTable;
    table->setModel(model);
    table->setAccessibleName(name);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setWordWrap(style.wraps);
    QHeaderView* rows = table->verticalHeader();
    rows->setVisible(style.numbered);
    if (style.height > 0)
        rows->setDefaultSectionSize(style.height);
    if (style.compact)
        rows->setDefaultSectionSize(table->fontMetrics().height() + 8);
    if (style.numbered)
        rows->setSectionResizeMode(QHeaderView::Fixed);
    QHeaderView* columns = table->horizontalHeader();
    columns->setHighlightSections(false);
    columns->setStretchLastSection(style.lastTakesRest);
    if (style.lastTakesRest)
        table->giveLastTheRest();
    if (!style.giving.isEmpty() || !style.leaving.isEmpty())
        table->letGive(style.giving, style.leaving);
    table->tellAlways(style.told);
    if (style.growing || !style.giving.isEmpty()) {
        rows->setMinimumSectionSize(style.compact ? rows->defaultSectionSize() : 30);
        table->setProperty(growing, true);
        table->setProperty(longList, style.compact && !style.giving.isEmpty());
        QObject::connect(columns, &QHeaderView::sectionResized, table, [table] {
            if (table->property(growing).toBool())
                growRows(*table);
        });
    }
    return table;
}

void shareWidth(QTableView& table) {
    if (auto* own = dynamic_cast<RowTable*>(&table))
        own->giveWay();
}

void haveColumn(QTableView& table, int column, bool there) {
    if (auto* own = dynamic_cast<RowTable*>(&table))
        own->haveColumn(column, there);
}

QStringList inTwoLines(const QStringList& headings) {
    QStringList broken;
    for (QString heading : headings) {
        qsizetype best = -1; // the blank nearest to the middle
        for (qsizetype at = heading.indexOf(u' '); at >= 0; at = heading.indexOf(u' ', at + 1))
            if (best < 0 || std::abs(2 * at - heading.size()) < std::abs(2 * best - heading.size()))
                best = at;
        if (best >= 0)
            heading[best] = u'\n';
        broken << heading;
    }
    return broken;
}

QRegion wholeRowsOf(const QTableView& table, const QRegion& part) {
    const QHeaderView& rows = *table.verticalHeader();
    const int end = std::max(0, endOfRows(table));
    int top = 0; // at the end of a table Qt cuts through the first row instead
    if (const int first = rows.logicalIndexAt(0);
        first >= 0 && rows.sectionViewportPosition(first) < 0)
        top = rows.sectionViewportPosition(first) + rows.sectionSize(first);
    if (top >= end)
        top = 0;
    return part & QRect(0, top, table.viewport()->width(), end - top);
}

WidthsFirst::WidthsFirst(QTableView& table) : m_table(table) {
    table.horizontalHeader()->setResizeContentsPrecision(rowsThatCount);
    if (table.property(growing).isValid())
        table.setProperty(growing, false);
}

WidthsFirst::~WidthsFirst() {
    if (!m_table.property(growing).isValid())
        return;
    m_table.setProperty(growing, true);
    growRows(m_table);
}

namespace {
void fitHeight(QTableView& table) {
    int height = table.horizontalHeader()->sizeHint().height() + 2 * table.frameWidth() + 2;
    for (int row = 0; row < table.model()->rowCount(); ++row)
        height += table.rowHeight(row);
    table.setFixedHeight(height + 16); // room for a scroll bar below
}
} // namespace

void showWhole(QTableView* table) {
    constexpr char whole[] = "shownWhole";
    const bool fitsItself = table->property(growing).isValid(); // as its words wrap
    if (!fitsItself)
        table->resizeColumnsToContents();
    fitHeight(*table);
    if (!fitsItself || table->property(whole).toBool())
        return;
    table->setProperty(whole, true);
    const auto again = [table] { fitHeight(*table); };
    QObject::connect(table->verticalHeader(), &QHeaderView::sectionResized, table, again,
                     Qt::QueuedConnection);
}

int leastHeight(const QTableView& table) {
    const int usual = table.verticalHeader()->defaultSectionSize();
    const int rows = table.model()->rowCount();
    int high = 2 * std::max(rows > 0 ? table.rowHeight(0) : 0, usual);
    for (int row = 0; row < std::min(rows, rowsThatGrow); ++row)
        high = std::max(high, table.rowHeight(row)); // whichever is chosen is seen whole
    return table.horizontalHeader()->sizeHint().height() + high +
           2 * std::max(table.frameWidth(), desk::tableRule) + // before it is polished, too
           table.style()->pixelMetric(QStyle::PM_ScrollBarExtent);
}

void keepLeastHeight(QTableView& table) {
    const auto keep = [&table] { table.setMinimumHeight(leastHeight(table)); };
    keep();
    auto* once = new QTimer(&table); // for all rows that one pass resizes
    once->setSingleShot(true);
    QObject::connect(once, &QTimer::timeout, &table, keep);
    QObject::connect(table.verticalHeader(), &QHeaderView::sectionResized, once,
                     [once] { once->start(0); });
}

QTableView* textRowTable(QAbstractItemModel* model, const QString& name) {
    return rowTable(model, name, {.wraps = false, .lastTakesRest = true});
}

} // namespace slopebook::ui
