// SPDX-License-Identifier: GPL-3.0-or-later
// Where the coach says what a table is: how it is divided, what each column is and how it is
// written, and what is the same in all rows.
#pragma once

#include "ui/importing/shapechoices.h"

#include <QStringList>
#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QLineEdit;
class QSpinBox;
class QTableWidget;

namespace slopebook::ui {

class ShapeEditor final : public QWidget {
    Q_OBJECT
public:
    ShapeEditor(const QStringList& athletes, const QStringList& lifts, const QStringList& devices,
                QWidget* parent = nullptr);

    /// Shows a table and a shape for it.
    void setTable(const exchange::FileFacts& facts, const exchange::Shape& shape);
    /// As it is chosen now; what the table leaves only one way to read is filled in.
    const exchange::Shape& shape() const { return m_chosen.shape(); }
    exchange::LayoutTold layoutTold() const;
    void focusColumns();

protected:
    bool event(QEvent* event) override;

Q_SIGNALS:
    void changed();       ///< of the shape
    void layoutChanged(); ///< the table is to be read anew as layoutTold() says

private:
    QWidget* buildLayoutRow();
    QWidget* buildRowsRow();
    void buildColumns();
    QWidget* buildForAllRows(const QStringList& athletes, const QStringList& lifts,
                             const QStringList& devices);
    QWidget* buildOddRow();
    void showOdd(const exchange::FileFacts& facts, const exchange::Shape& shape);
    void fillSheets(const exchange::FileFacts& facts, const exchange::Shape& shape);
    void fillColumns();
    void fillRow(int row);
    void showChoices();
    void takeForAllRows();
    void showAnew();
    QComboBox* combo(int row, int column) const;

    ShapeChoices m_chosen;
    std::vector<std::size_t> m_shown; ///< columns of the table by row; empty ones are left out
    bool m_filling = false;
    QWidget* m_sheetPart; ///< of a workbook
    QWidget* m_textPart;  ///< of any other table
    QComboBox* m_sheet;
    bool m_otherSheet = false; ///< whose rows begin where they begin
    QComboBox* m_delimiter;
    QComboBox* m_encoding;
    QSpinBox* m_skip;
    QCheckBox* m_header;
    // What few tables have: shown once one has it.
    QCheckBox* m_units;
    QCheckBox* m_loads;
    QCheckBox* m_byTime;
    QWidget* m_totalsPart;
    QLineEdit* m_totals;
    QComboBox* m_rowIs;
    QCheckBox* m_above;
    QTableWidget* m_columns;
    QComboBox* m_athlete;
    QComboBox* m_lift;
    QLineEdit* m_day;
    QComboBox* m_device;
    QComboBox* m_kind;
};

} // namespace slopebook::ui
