// SPDX-License-Identifier: GPL-3.0-or-later
// Looks at what stands in a window or a dialog: whether a text is cut, elided or too small, whether
// two texts lie over each other, whether what is disabled is still read, and whether a page's
// picture has its room.
#pragma once

#include <QStringList>

class QDateEdit;
class QLineEdit;
class QTableView;
class QWidget;

namespace slopebook::test {

class FitWalk {
public:
    /// name: of the size and letters it is looked at with, for messages.
    explicit FitWalk(QString name);

    /// page: it is the main window, whose page has a picture or none.
    void look(const QString& place, QWidget& shown, bool page);
    /// Whether tables that are read across have to show all their columns.
    void countColumns(bool count) { m_columns = count; }
    /// Whether a page may have one line of controls above its sentence, and no more, and a sentence
    /// two lines.
    void countStrips(bool count) { m_strips = count; }

    /// A line each: where, what, and its size.
    const QStringList& wrong() const { return m_wrong; }
    /// How many things were looked at.
    int seen() const { return m_seen; }

private:
    void take(bool good, const QString& place, const QString& what);
    void lookAtLayout(const QString& place, const QWidget& widget);
    void lookAtPlace(const QString& place, const QWidget& shown);
    void lookAtStrips(const QString& place, const QWidget& shown);
    void lookAtText(const QString& place, const QWidget& widget);
    void lookAtLetters(const QString& place, const QWidget& widget);
    void lookAtField(const QString& place, const QWidget& widget);
    void lookAtHint(const QString& place, QLineEdit& line);
    void lookAtDay(const QString& place, const QWidget& shown, const QDateEdit& day);
    void overlaps(const QString& place, const QWidget& widget);
    void lookAtTable(const QString& place, const QTableView& table);
    void lookAtCell(const QString& place, const QTableView& table, int row, int column);
    void lookIntoChart(const QString& place, QWidget& chart);

    bool m_strips = false, m_columns = false;
    QString m_name;
    QStringList m_wrong;
    int m_seen = 0;
};

} // namespace slopebook::test
