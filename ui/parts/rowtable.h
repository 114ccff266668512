// SPDX-License-Identifier: GPL-3.0-or-later
// Tables that are read row by row, set up alike.
#pragma once

#include <QTableView>

namespace slopebook::ui {

/// How a table differs from the others.
struct RowStyle {
    int height = 0;             ///< of a row, in pixels; 0: as the desktop has it
    bool compact = false;       ///< a row is a line of text and a little
    bool wraps = true;          ///< long texts
    bool lastTakesRest = false; ///< the last column takes the width that is left
    bool numbered = false;      ///< rows have their numbers, and all the same height
    bool growing = false;       ///< rows grow with what wraps in them
    QList<int> giving{};        ///< columns that wrap where there is no room: implies growing
    QList<int> leaving{};       ///< that go, the first named first, where that is not enough
    QList<int> told{};          ///< columns that the page hides: the row's tip has them too
};

/// One row is chosen at a time and stays in sight when the table is resized; Tab leaves the table,
/// rows have no headings. name: for those who hear the table.
QTableView* rowTable(QAbstractItemModel* model, const QString& name, const RowStyle& style = {});

/// While it lives, columns are given their widths by the first rows alone (a table of thousands
/// takes no longer than one of a screenful); rows that grow do so once, when it goes.
class WidthsFirst {
public:
    explicit WidthsFirst(QTableView& table);
    ~WidthsFirst();
    WidthsFirst(const WidthsFirst&) = delete;
    WidthsFirst& operator=(const WidthsFirst&) = delete;

private:
    QTableView& m_table;
};

/// Whether a table has a column at all, however much room there is.
void haveColumn(QTableView& table, int column, bool there);
/// After columns were hidden or shown: those that are left share the width anew.
void shareWidth(QTableView& table);

/// Headings of two words or more on two lines, so that a column is as wide as its figures.
QStringList inTwoLines(const QStringList& headings);
/// Of that part of a table what belongs to rows that are seen whole: no row is cut through.
QRegion wholeRowsOf(const QTableView& table, const QRegion& part);

/// As high as its rows, its columns as wide as what they hold: the page scrolls, not the table.
void showWhole(QTableView* table);

/// Of the headings and two rows, and of any one that is higher: no table gives way further.
int leastHeight(const QTableView& table);
/// Holds it however rows grow from now on.
void keepLeastHeight(QTableView& table);

/// The same for ready texts: none wraps, the last column takes what is left.
QTableView* textRowTable(QAbstractItemModel* model, const QString& name);

} // namespace slopebook::ui
