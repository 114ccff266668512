// SPDX-License-Identifier: GPL-3.0-or-later
// What is behind the line at the foot: how it stands with the store, what the last meetings
// brought, and what may be done about it.
#pragma once

#include "ui/window/storekeeper.h"

#include <QDialog>

class QLabel;
class QPushButton;
class QTreeWidget;

namespace slopebook::ui {

class StoreDialog final : public QDialog {
    Q_OBJECT
public:
    /// Shows what becomes of meetings while it is open.
    StoreDialog(StoreKeeper& keeper, const Logbook& logbook, QWidget* parent = nullptr);

Q_SIGNALS:
    void leaveWanted();
    void addressWanted();
    void choicesWanted();

private:
    void build();
    void fill();

    StoreKeeper& m_keeper;
    const Logbook& m_logbook;
    QLabel* m_sentences;
    QTreeWidget* m_list;
    QPushButton* m_meet = nullptr;
    QPushButton* m_choose = nullptr;
    QDateTime m_shown; ///< the news that the list holds
};

} // namespace slopebook::ui
