// SPDX-License-Identifier: GPL-3.0-or-later
// Chooses a training block, a date with the days around it that may stand in for it, or the days
// from one to another, of which all stand.
#pragma once

#include "core/answers/squad.h"
#include "core/model/daystretch.h"
#include "core/model/ids.h"

#include <QWidget>

class QComboBox;
class QSpinBox;

namespace slopebook::ui {

class DayEdit;

class PeriodChooser final : public QWidget {
    Q_OBJECT
public:
    /// label: with its mnemonic; name: for screen readers.
    PeriodChooser(const QString& label, const QString& name, QWidget* parent = nullptr);

    /// Keeps what is chosen where it is still there.
    void setBlocks(const std::vector<Stored<BlockId, Block>>& blocks);
    void chooseBlock(std::size_t block);
    void chooseDate(Date date, int withinDays);
    void chooseDays(const DayStretch& days);
    answers::Period period() const;

Q_SIGNALS:
    void changed();
    /// A day was typed that is none; the one before stays, and is shown again.
    void refused(const QString& why);

private:
    /// What is chosen, after the blocks.
    enum class Way { Block, Date, Days };
    Way way() const;
    void fit();

    std::vector<Stored<BlockId, Block>> m_blocks;
    QComboBox* m_what;
    DayEdit* m_date;
    QSpinBox* m_within;
    DayEdit* m_last;
};

} // namespace slopebook::ui
