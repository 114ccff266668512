// SPDX-License-Identifier: GPL-3.0-or-later
// Athletes, devices, blocks, check loads, attempts, files.
#include "tests/ui/monkey/monkey.h"
#include "ui/importing/importcsv.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>

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

// A file of a day that the athlete has no session of: in whole, or cancelled.
void Monkey::importFile() {
    const QDate at(2025, 1 + m_dice.upTo(12), 1 + m_dice.upTo(28));
    const QString day = at.toString(Qt::ISODate);
    SessionEntry session;
    session.athlete = m_dice.of(m_book.athletes());
    session.day = day.toStdString();
    if (m_book.latest(session.athlete, session.day) != keyToCome)
        return;
    const auto file = m_file.parent_path() / "reps.csv";
    std::ofstream out(file, std::ios::trunc);
    out << "date,athlete,lift,set,load_kg,rep,velocity\n";
    auto& sets = session.sets[m_chosen.lift];
    for (int i = 2 + m_dice.upTo(3); i > 0; --i) {
        SetEntry set{
            .grams = 30'000 + 5'000L * i, .maximum = false, .out = {}, .note = {}, .reps = {}};
        for (int rep = 1; rep <= 2; ++rep) {
            set.reps.push_back({1'200'000 - 60'000L * i - 10'000L * rep, {}});
            out << session.day << ',' << session.athlete << ',' << m_chosen.lift << ','
                << sets.size() + 1 << ',' << set.grams / 1000 << ',' << rep << ','
                << set.reps.back().micro / 1'000'000 << '.'
                << std::to_string(1'000'000 + set.reps.back().micro % 1'000'000).substr(1) << '\n';
        }
        sets.push_back(set);
    }
    out.close();
    const bool cancelled = m_dice.oneIn(4);
    Book after = m_book;
    after.sessions[keyToCome] = session;
    if (!cancelled)
        allow(after);
    say(day + QStringLiteral(" for ") + QString::fromStdString(session.athlete));
    m_hands->expect([&](QWidget& shownThere) {
        auto& dialog = dynamic_cast<ui::ImportDialog&>(shownThere);
        const QPointer<QWidget> still(&dialog);
        const bool read = QTest::qWaitFor([&] { return dialog.canImport(); });
        m_hands->key(cancelled || !read ? Qt::Key_Escape : Qt::Key_Return);
        [[maybe_unused]] const bool done =
            QTest::qWaitFor([&] { return !still || !still->isVisible(); });
    });
    m_window->importFiles({QString::fromStdString(file.string())});
    if (!cancelled && !changed())
        fail(QStringLiteral("The file was not taken in"));
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
    // By its name in the log: what is shown is in the window's language.
    const auto chosen = [&] { return tests.currentData().toString().toStdString() == test; };
    m_hands->focus(tests);
    m_hands->key(Qt::Key_Home);
    for (int i = 0; i < tests.count() && !chosen(); ++i)
        m_hands->key(Qt::Key_Down);
    if (!chosen())
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
    // A test that a click took off the list comes back with its first attempt.
    const auto ofTest = [begin = "test|" + test + "|"](const std::string& row) {
        return row.starts_with(begin);
    };
    if (std::ranges::none_of(after.rest, ofTest))
        std::ranges::copy_if(m_first.rest, std::inserter(after.rest, after.rest.end()), ofTest);
    allow(after);
    for (int i = 0; i < 2 && !changed(); ++i)
        m_hands->key(Qt::Key_Return);
    if (!changed())
        fail(QStringLiteral("The attempts were not taken: ") + typed);
}

} // namespace slopebook::monkey
