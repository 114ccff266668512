// SPDX-License-Identifier: GPL-3.0-or-later
// Sets that stand: a cell changed, a set removed, a set left out.
#include "tests/ui/monkey/monkey.h"
#include "ui/floor/entry/setmodel.h"

#include <QApplication>
#include <QLineEdit>
#include <QTableView>

#include <algorithm>

namespace slopebook::monkey {

namespace {
const char* const whyNot[] = {"slipped", "belt", "helped up", "stopped short"};

void erase(SessionEntry& session, const std::string& lift, int row) {
    auto& sets = session.sets[lift];
    sets.erase(sets.begin() + row);
    if (sets.empty())
        session.sets.erase(lift);
}
} // namespace

/// Chooses a set in the table by the mouse.
std::optional<int> Monkey::chooseRow() {
    m_hands->key(Qt::Key_1, Qt::ControlModifier);
    QTableView& table = setTable();
    const int rows = table.model()->rowCount();
    if (rows == 0)
        return std::nullopt;
    const int row = m_dice.upTo(rows);
    const QModelIndex cell = table.model()->index(row, ui::SetModel::Load);
    table.scrollTo(cell);
    QCoreApplication::processEvents();
    m_hands->click(*table.viewport(), table.visualRect(cell).center());
    if (table.currentIndex().row() != row)
        fail(QStringLiteral("A click does not choose set %1").arg(row + 1));
    return row;
}

void Monkey::changeCell() {
    const auto row = chooseRow();
    if (!row)
        return;
    Book after = m_book;
    SetEntry& set = after.sessions.at(m_chosen.session)
                        .sets.at(m_chosen.lift)
                        .at(static_cast<std::size_t>(*row));
    const SetEntry other = plausibleSet();
    QString typed;
    int column = ui::SetModel::Load;
    switch (m_dice.upTo(3)) {
    case 0:
        set.grams = other.grams;
        typed = decimal(other.grams);
        break;
    case 1:
        column = ui::SetModel::Reps;
        for (RepEntry& rep : set.reps) {
            rep = {std::max(200'000L, rep.micro - 10'000L * m_dice.upTo(4)), {}};
            typed += decimal(rep.micro / 1000) + QLatin1Char(' ');
        }
        break;
    default:
        column = ui::SetModel::Remarks;
        typed = QLatin1String(m_dice.of(whyNot));
        set.note = typed.toStdString();
    }
    say(QStringLiteral("set %1, column %2: %3").arg(*row + 1).arg(column).arg(typed));
    QTableView& table = setTable();
    table.setCurrentIndex(table.model()->index(*row, column));
    m_hands->key(Qt::Key_F2);
    if (!qobject_cast<QLineEdit*>(QApplication::focusWidget()))
        fail(QStringLiteral("F2 does not open the cell"));
    m_hands->typeOver(typed);
    if (m_dice.oneIn(4)) {
        m_hands->key(Qt::Key_Escape);
        say(QStringLiteral("; Esc"));
        return;
    }
    allow(after);
    for (int i = 0; i < 3 && !changed() && qobject_cast<QLineEdit*>(QApplication::focusWidget());
         ++i)
        m_hands->key(Qt::Key_Return);
}

void Monkey::removeSet() {
    const auto row = chooseRow();
    if (!row)
        return;
    Book after = m_book;
    erase(after.sessions.at(m_chosen.session), m_chosen.lift, *row);
    allow(after);
    say(QStringLiteral("set %1").arg(*row + 1));
    m_hands->key(Qt::Key_Delete);
    if (!changed())
        fail(QStringLiteral("Delete does not remove the set"));
}

void Monkey::leaveSetOut() {
    const auto row = chooseRow();
    if (!row)
        return;
    Book after = m_book;
    const QString reason = QLatin1String(m_dice.of(whyNot));
    after.sessions.at(m_chosen.session)
        .sets.at(m_chosen.lift)
        .at(static_cast<std::size_t>(*row))
        .out = reason.toStdString();
    const bool cancelled = m_dice.oneIn(3);
    if (!cancelled)
        allow(after);
    say(QStringLiteral("set %1: %2%3")
            .arg(*row + 1)
            .arg(reason, cancelled ? QStringLiteral(", cancelled") : QString()));
    m_hands->expect([&](QWidget&) {
        m_hands->typeOver(reason);
        m_hands->key(cancelled ? Qt::Key_Escape : Qt::Key_Return);
    });
    m_hands->key(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
}

} // namespace slopebook::monkey
