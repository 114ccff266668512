// SPDX-License-Identifier: GPL-3.0-or-later
// What two logs could not agree on: each with both sides beside each other, to be chosen from.
#pragma once

#include "core/desks/conflictsides.h"

#include <QDialog>

#include <vector>

class QLabel;
class QPushButton;
class QTableView;
class QTreeWidget;

namespace slopebook::ui {

class Logbook;
class TextTable;

class ChoicesDialog final : public QDialog {
    Q_OBJECT
public:
    /// Throws LogError.
    explicit ChoicesDialog(Logbook& logbook, QWidget* parent = nullptr);

private:
    void build();
    void fill();
    void showOne(int row);
    void settle(desks::Choice choice);

    Logbook& m_logbook;
    std::vector<desks::ShownConflict> m_open;
    QLabel* m_sentence;
    QTreeWidget* m_list;
    QLabel* m_why;
    TextTable* m_sides;
    QTableView* m_table;
    QPushButton* m_keep = nullptr;
    QPushButton* m_take = nullptr;
    QLabel* m_problem;
};

} // namespace slopebook::ui
