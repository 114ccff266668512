// SPDX-License-Identifier: GPL-3.0-or-later
// Athletes, devices, blocks, check loads, attempts; undo and redo.
#include "tests/ui/monkey/monkey.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPushButton>
#include <QUndoStack>

#include <algorithm>
#include <array>

namespace slopebook::monkey {

namespace {
constexpr int mostAthletes = 8;

/// How many rows of a table there are.
long count(const Book& book, const std::string& table) {
    return std::ranges::count_if(
        book.rest, [&](const std::string& row) { return row.starts_with(table + "|"); });
}

std::string fresh(const Book& book, const std::string& table, const std::string& name) {
    for (int i = 4;; ++i) {
        const std::string one = name + " " + std::to_string(i);
        const auto same = [&](const std::string& row) {
            return row.starts_with(table + "|" + one + "|");
        };
        if (std::ranges::none_of(book.rest, same))
            return one;
    }
}
} // namespace

void Monkey::addAthlete() {
    if (count(m_book, "athletes") >= mostAthletes)
        return;
    const std::string name = fresh(m_book, "athletes", "Lane");
    const bool cancelled = m_dice.oneIn(4);
    Book after = m_book;
    after.rest.insert("athletes|" + name + "|");
    if (!cancelled)
        allow(after);
    say(QString::fromStdString(name));
    m_hands->expect([&](QWidget&) {
        m_hands->type(QString::fromStdString(name));
        m_hands->key(cancelled ? Qt::Key_Escape : Qt::Key_Return);
    });
    m_hands->key(Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
    if (!changed())
        return;
    m_chosen.athlete = name;
    m_chosen.session = keyToCome;
    m_newDay.reset();
}

void Monkey::addDevice() {
    const std::array<std::string, 4> more{"Elm sensor", "Fir sensor", "Hazel sensor", "Ivy sensor"};
    const std::string name = m_dice.of(more);
    if (m_book.rest.contains("devices|" + name + "|"))
        return;
    Book after = m_book;
    after.rest.insert("devices|" + name + "|");
    allow(after);
    say(QString::fromStdString(name));
    m_hands->expect([&](QWidget& list) {
        m_hands->click(*list.findChildren<QPushButton*>().first()); // Add
    });
    m_hands->expect([&](QWidget&) {
        m_hands->type(QString::fromStdString(name));
        m_hands->key(Qt::Key_Return);
    });
    m_window->actions().devices->trigger();
    if (!changed())
        fail(QStringLiteral("The device was not added"));
}

void Monkey::addBlock() {
    const std::string name = fresh(m_book, "blocks", "Block");
    const QString end = m_clock.now().date().addDays(41).toString(Qt::ISODate);
    const bool cancelled = m_dice.oneIn(4);
    Book after = m_book; // six weeks from today, as the dialog shows them
    after.rest.insert("blocks|" + name + "|" + today() + "|" + end.toStdString() + "||");
    if (!cancelled)
        allow(after);
    say(QString::fromStdString(name));
    m_hands->expect([&](QWidget& list) {
        m_hands->click(*list.findChildren<QPushButton*>().first()); // Add
    });
    m_hands->expect([&](QWidget&) {
        m_hands->type(QString::fromStdString(name));
        m_hands->key(cancelled ? Qt::Key_Escape : Qt::Key_Return);
    });
    m_hands->key(Qt::Key_B, Qt::ControlModifier);
}

void Monkey::setCheckLoads() {
    const std::string of = "check load|" + m_chosen.athlete + "|" + m_chosen.lift + "|";
    const long light = 30'000 + 5'000L * m_dice.upTo(4), heavy = light + 20'000;
    const QString typed = decimal(light) + QLatin1Char(' ') + decimal(heavy);
    Book after = m_book;
    std::erase_if(after.rest, [&](const std::string& row) { return row.starts_with(of); });
    after.rest.insert(of + std::to_string(light));
    after.rest.insert(of + std::to_string(heavy));
    allow(after);
    say(typed);
    m_hands->expect([&](QWidget&) {
        m_hands->typeOver(typed);
        m_hands->key(Qt::Key_Return);
    });
    m_hands->key(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    if (!changed() && after != m_book)
        fail(QStringLiteral("The check loads were not kept"));
}

void Monkey::typeAttempts() {
    m_hands->key(Qt::Key_6, Qt::ControlModifier);
    auto& sessions = part<QComboBox>("session");
    if (sessions.count() == 0)
        return;
    const Key key = sessions.currentData().toLongLong();
    const auto held = m_book.sessions.find(key);
    if (held == m_book.sessions.end() || held->second.athlete != m_chosen.athlete)
        fail(QStringLiteral("The battery shows a session that is not the chosen athlete's"));
    const bool hop = m_dice.oneIn(2);
    auto& tests = part<QComboBox>("test");
    const std::string test = hop ? "Single hop for distance" : "Seated medicine-ball throw";
    m_hands->focus(tests);
    m_hands->key(Qt::Key_Home);
    for (int i = 0; i < tests.count() && tests.currentText().toStdString() != test; ++i)
        m_hands->key(Qt::Key_Down);
    if (tests.currentText().toStdString() != test)
        fail(QStringLiteral("The test is not offered: ") + QString::fromStdString(test));
    std::vector<AttemptEntry> attempts;
    QString typed;
    for (const char* side : {"left", "right"}) {
        if (!hop && !attempts.empty())
            break;
        typed += QLatin1String(!hop ? "" : *side == 'l' ? "L " : " R ");
        for (int i = 1 + m_dice.upTo(3); i > 0; --i) {
            const long read = (hop ? 1'500 : 4'500) + 10L * m_dice.upTo(40);
            typed += decimal(read) + QLatin1Char(' ');
            attempts.push_back({hop ? side : "both", read * 1000, {}, {}});
        }
    }
    typed = typed.simplified();
    if (m_dice.oneIn(3)) { // the last is left out, with the reason
        typed += QStringLiteral("x # line");
        attempts.back().out = "line";
    }
    say(QString::fromStdString(test) + QStringLiteral(": ") + typed);
    auto& field = part<QLineEdit>("attempts");
    m_hands->focus(field);
    m_hands->typeOver(typed);
    if (m_dice.oneIn(5))
        return; // half typed
    Book after = m_book;
    auto& all = after.sessions.at(key).attempts[test];
    all.insert(all.end(), attempts.begin(), attempts.end());
    allow(after);
    for (int i = 0; i < 2 && !changed(); ++i)
        m_hands->key(Qt::Key_Return);
    if (!changed())
        fail(QStringLiteral("The attempts were not taken: ") + typed);
}

void Monkey::undo() {
    goUndo(true);
}

void Monkey::redo() {
    goUndo(false);
}

// What is undone is shown: nobody's work goes unseen.
void Monkey::goUndo(bool back) {
    QUndoStack& stack = *m_window->workspace()->logbook().undoStack();
    if (!(back ? stack.canUndo() : stack.canRedo()))
        return;
    const int to = stack.index() + (back ? -1 : 1);
    const auto known = m_steps.find(to);
    if (known != m_steps.end())
        allow(known->second);
    else if (m_plan.known)
        return;
    m_loose = known == m_steps.end();
    const Shown before = shown();
    say(back ? stack.undoText() : stack.redoText());
    if (m_dice.oneIn(3)) {
        (back ? m_window->actions().undo : m_window->actions().redo)->trigger();
    } else {
        goToLine();
        m_hands->key(Qt::Key_Z,
                     back ? Qt::ControlModifier : Qt::ControlModifier | Qt::ShiftModifier);
    }
    allowOtherChoice();
    m_newDay.reset();
    const Shown after = shown();
    if (!changed()) {
        if (after == before && m_hands->seen() == 0 && (!known->second.sessions.empty()) &&
            known->second != m_book)
            fail(QStringLiteral("Nothing was undone or redone, and nothing shown"));
        return;
    }
    for (const std::string& owner : owners(m_book, disk()))
        if (owner != after.athlete)
            fail(QStringLiteral("Undone or redone for %1, while %2 is shown:\n%3")
                     .arg(QString::fromStdString(owner), QString::fromStdString(after.athlete),
                          QString::fromStdString(difference(m_book, disk()))));
}

} // namespace slopebook::monkey
