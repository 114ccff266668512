// SPDX-License-Identifier: GPL-3.0-or-later
// How the monkey goes from step to step, and what it looks at after each.
#include "tests/ui/monkey/monkey.h"

#include "core/log/log.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QComboBox>
#include <QCoreApplication>
#include <QTest>
#include <QUndoStack>

#include <algorithm>

namespace slopebook::monkey {

namespace {
const std::string imported = "file imported"; // by an act of its own, whoever is shown
constexpr int linesKept = 25, checkedEvery = 50;

/// splitmix64: each step throws dice of its own, so that leaving one out leaves the others alike.
std::uint64_t mixed(std::uint64_t seed, int step) {
    std::uint64_t z = seed * 1'000'003 + static_cast<std::uint64_t>(step) + 0x9e3779b97f4a7c15;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
    z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
    return z ^ (z >> 31);
}

QStringList warnings;
QtMessageHandler next = nullptr;

void hear(QtMsgType type, const QMessageLogContext& where, const QString& words) {
    if (words.startsWith(QLatin1String("This plugin does not support")))
        return; // offscreen there is no desktop
    if (type == QtWarningMsg)
        warnings << words;
    else if (next)
        next(type, where, words);
}

/// Whether the book allowed is what is there; a session to come takes the one new key there is.
bool matches(Book allowed, const Book& before, const Book& there, Key& come) {
    if (auto node = allowed.sessions.extract(keyToCome)) {
        for (const auto& [key, session] : there.sessions)
            if (!before.sessions.contains(key))
                come = key;
        node.key() = come;
        allowed.sessions.insert(std::move(node));
    }
    return allowed == there;
}
} // namespace

QStringList takeWarnings() {
    return std::exchange(warnings, {});
}

void listen() {
    if (const QtMessageHandler before = qInstallMessageHandler(hear); before != hear)
        next = before;
}

Monkey::Monkey(const std::filesystem::path& log, Plan plan)
    : m_plan(std::move(plan)), m_dice(m_plan.seed), m_file(log),
      m_clock({QDate(2026, 3, 14), QTime(12, 0)}), m_disk(log) {
    QApplication::setKeyboardInputInterval(0); // each key in a list looks for a name anew
    listen();
    takeWarnings();
    ui::Surroundings around;
    around.settings.language = QLatin1String(m_plan.seed % 2 == 0 ? "de" : "en");
    around.clock = m_clock.clock();
    m_window = std::make_unique<ui::MainWindow>(around);
    m_window->resize(1280, 720);
    m_window->show();
    m_window->activateWindow();
    m_window->openLogFile(QString::fromStdString(log.string()));
    if (!QTest::qWaitForWindowActive(m_window.get()) || !m_window->workspace())
        fail(QStringLiteral("the window does not open the log"));
    m_hands = std::make_unique<Hands>(*m_window, m_dice);
    m_book = m_first = m_disk.now();
    m_chosen = shown();
    m_steps[0] = m_book;
}

Monkey::~Monkey() = default;

void Monkey::fail(const QString& what) {
    throw Finding(what.toStdString());
}

void Monkey::run() {
    for (m_step = 0; m_step < m_plan.steps; ++m_step) {
        m_dice = Dice(mixed(m_plan.seed, m_step));
        const Deed& deed = next();
        if (!m_plan.without.contains(m_step))
            one(deed);
    }
    checkAll();
}

const Monkey::Deed& Monkey::next() {
    const auto taken = [this](const Deed& deed) {
        return (m_plan.only.empty() || m_plan.only.contains(deed.kind)) &&
               (deed.known || !m_plan.known);
    };
    int all = 0;
    for (const Deed& deed : deeds())
        all += taken(deed) ? deed.weight : 0;
    int at = all > 0 ? m_dice.upTo(all) : 0;
    for (const Deed& deed : deeds())
        if (taken(deed) && (at -= deed.weight) < 0)
            return deed;
    return deeds().front();
}

void Monkey::one(const Deed& deed) {
    m_kind = deed.kind;
    m_said.clear();
    m_allowed.clear();
    m_free = m_loose = false;
    m_trace.push_back(QString()); // stands also where the step does not come to its end
    const auto write = [&] {
        m_trace.back() =
            QStringLiteral("%1 %2 %3").arg(m_step).arg(QLatin1String(deed.kind), m_said);
        if (m_trace.size() > linesKept)
            m_trace.pop_front();
    };
    try {
        m_hands->during([&] { (this->*deed.work)(); });
        if (m_plan.sabotage)
            m_plan.sabotage(*m_window, m_kind);
        m_hands->settle();
        write();
        compare();
    } catch (const Finding&) {
        write();
        throw;
    }
}

void Monkey::allow(const Book& after) {
    m_allowed.push_back(after);
    if (!m_plan.tell)
        return;
    // The first set of a session begins it: two acts, and two steps of undo.
    Book between = after;
    if (const auto begun = between.sessions.find(keyToCome);
        begun != between.sessions.end() && m_kind != imported) {
        begun->second.sets.clear();
        m_plan.tell(digestOf(between), false);
    }
    m_plan.tell(digestOf(after), false);
}

void Monkey::compare() {
    if (const QStringList words = takeWarnings(); !words.isEmpty())
        fail(QStringLiteral("Qt warns: ") + words.join(QLatin1String("; ")));
    const Book before = m_book;
    const Book& there = disk();
    Tally& tally = m_tally[m_kind];
    ++tally.steps;
    if (there != before) {
        ++tally.edits;
        if (m_loose) {
            compareLoose();
        } else {
            Key come = keyToCome;
            const bool any = std::ranges::any_of(
                m_allowed, [&](const Book& one) { return matches(one, before, there, come); });
            if (!any)
                fail(QStringLiteral("What is on disk is not what was entered. On disk now:\n") +
                     QString::fromStdString(difference(before, there)) +
                     (m_allowed.empty()
                          ? QStringLiteral("Entered: nothing\n")
                          : QStringLiteral("Entered:\n") +
                                QString::fromStdString(difference(before, m_allowed.back()))));
            if (come != keyToCome && m_chosen.session == keyToCome && m_kind != imported)
                m_chosen.session = come;
        }
        for (const auto& [key, session] : there.sessions)
            if (const auto was = before.sessions.find(key);
                was == before.sessions.end() || was->second.sets != session.sets)
                m_lifted.insert(key);
    }
    m_book = there;
    keepUndo(before);
    compareShown();
    if (m_plan.tell)
        m_plan.tell(digestOf(m_book), true);
    if (m_step % checkedEvery == checkedEvery - 1)
        checkAll();
}

// What a click or a key anywhere may change: only what belongs to the athlete who is shown, and
// only by steps of undo that bring all of it back.
void Monkey::compareLoose() {
    const Book before = m_book, there = disk();
    // The name of a lift or a device stands in everybody's sessions.
    const bool named = before.rest != there.rest;
    for (const std::string& owner : owners(before, there))
        if (!named && owner != m_chosen.athlete && owner != shown().athlete)
            fail(QStringLiteral("Something of %1 changed, who is not shown:\n%2")
                     .arg(QString::fromStdString(owner),
                          QString::fromStdString(difference(before, there))));
    if (m_kind == "undo" || m_kind == "redo")
        return;
    QUndoStack& stack = *m_window->workspace()->logbook().undoStack();
    const int was = m_steps.empty() ? 0 : m_place, now = stack.index();
    if (now <= was)
        fail(QStringLiteral("A change without a step of undo:\n") +
             QString::fromStdString(difference(before, there)));
    stack.setIndex(was);
    if (disk() != before)
        fail(QStringLiteral("Undo does not bring all back:\n") +
             QString::fromStdString(difference(before, disk())));
    stack.setIndex(now);
    if (disk() != there)
        fail(QStringLiteral("Redo does not bring all back:\n") +
             QString::fromStdString(difference(there, disk())));
    QCoreApplication::processEvents();
}

void Monkey::keepUndo(const Book& before) {
    const int was = m_place, now = undoIndex();
    m_place = now;
    if (m_kind == "undo" || m_kind == "redo") {
        m_steps[now] = m_book;
        return;
    }
    if (m_book == before) {
        if (now != was && !m_loose)
            fail(QStringLiteral("A step of undo for nothing"));
        return;
    }
    m_steps.erase(m_steps.upper_bound(was), m_steps.end());
    if (now == 0)
        m_steps.clear(); // an import
    m_steps[now] = m_book;
    if (now != was + 2 || m_loose)
        return;
    // A set that begins a session: the session stands alone between the two.
    for (const auto& [key, session] : m_book.sessions)
        if (!before.sessions.contains(key)) {
            Book between = before;
            between.sessions[key] = session;
            between.sessions[key].sets.clear();
            m_steps[was + 1] = between;
        }
}

void Monkey::checkAll() {
    if (m_disk.anew() != m_book)
        fail(QStringLiteral("The log changed unseen"));
    if (const std::string said = m_disk.integrity(); said != "ok")
        fail(QString::fromStdString("SQLite's integrity check: " + said));
    for (const Words& one : log::Log::open(m_file, log::Access::ReadOnly).check())
        fail(QString::fromStdString("The check finds: " + english(one)));
}

} // namespace slopebook::monkey
