// SPDX-License-Identifier: GPL-3.0-or-later
// Who is here today, in the order of their turns: found by typing, taken by Enter.
#pragma once

#include "ui/edits/logbook.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace slopebook::ui {

class RosterDialog final : public QDialog {
    Q_OBJECT
public:
    RosterDialog(Logbook& logbook, StationId station, Date day, QWidget* parent);
    void accept() override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void fill();
    void takeFound();
    void takeAll();
    void takeLast();
    void leave();
    void shift(int by);
    void fit();

    Logbook& m_logbook;
    Roster m_roster;
    std::vector<Stored<AthleteId, Athlete>> m_all;
    std::vector<AthleteId> m_last; ///< of the last day that this station had somebody
    QLineEdit* m_find;
    QListWidget* m_found; ///< who is not here, by what is typed
    QListWidget* m_here;
    QLabel* m_problem;
    QPushButton* m_add;
    QPushButton* m_addAll;
    QPushButton* m_asLast;
    QPushButton* m_remove;
    QPushButton* m_up;
    QPushButton* m_down;
};

} // namespace slopebook::ui
