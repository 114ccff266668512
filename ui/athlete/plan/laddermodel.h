// SPDX-License-Identifier: GPL-3.0-or-later
// The ranked ladders for the next test.
#pragma once

#include "core/answers/nexttest.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

namespace slopebook::ui {

class PlanLadderModel : public TextTable {
    Q_OBJECT
public:
    /// After these, one column a check load.
    enum Column { Rank, Name, Loads, Heaviest, OneRm, OneRmChange, FirstCheckLoad };
    using TextTable::TextTable;

    /// The last one: what is wrong with a ladder. The figures stand before the words.
    int bewareColumn() const;
    void setNextTest(std::optional<answers::NextTest> next, LoadUnit unit);
    const std::optional<answers::NextTest>& nextTest() const { return m_next; }

private:
    QStringList cells(std::size_t row, LoadUnit unit) const;
    QString explanation(std::size_t row) const;

    std::optional<answers::NextTest> m_next;
};

} // namespace slopebook::ui
