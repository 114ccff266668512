// SPDX-License-Identifier: GPL-3.0-or-later
// Training blocks: the list, and the form for one.
#pragma once

#include "ui/parts/clock.h"
#include "ui/parts/formdialog.h"

class QDateEdit;
class QTableWidget;

namespace slopebook::ui {

/// As it is typed: "2-3", "2.5" with the language's decimal mark; empty of nothing.
QString aWeekText(const std::optional<SessionsAWeek>& planned);

class BlockDialog final : public FormDialog {
    Q_OBJECT
public:
    /// Nothing in id: a new block that begins on start.
    BlockDialog(Logbook& logbook, std::optional<BlockId> id, Date start, QWidget* parent);

protected:
    void save() override;

private:
    std::optional<SessionsAWeek> aWeek() const;

    std::optional<BlockId> m_id;
    QLineEdit* m_name;
    QDateEdit* m_first;
    QDateEdit* m_last;
    QLineEdit* m_ceiling;
    QLineEdit* m_trained;
    QLineEdit* m_aWeek;
    QLineEdit* m_note;
};

class BlocksDialog final : public QDialog {
    Q_OBJECT
public:
    BlocksDialog(Logbook& logbook, Clock clock, QWidget* parent);

private:
    void fill();
    void openBlock(std::optional<BlockId> id);
    void remove();
    std::optional<BlockId> current() const;

    Logbook& m_logbook;
    Clock m_clock;
    QTableWidget* m_table;
};

} // namespace slopebook::ui
