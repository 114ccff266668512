// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed at a station, and where it goes.
#include "core/answers/attemptdoubt.h"
#include "ui/floor/entry/setwords.h"
#include "ui/floor/station/stationpage.h"
#include "ui/records/sessiondialog.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QComboBox>

#include <algorithm>
#include <utility>

namespace slopebook::ui {

namespace {
/// What is done by what stands in a line.
template <class... Cases>
struct Overloaded : Cases... {
    using Cases::operator()...;
};
template <class... Cases>
Overloaded(Cases...) -> Overloaded<Cases...>; // clang 14 does not find it by itself
} // namespace

void StationPage::submit() {
    if (!m_turn || !m_work)
        return;
    guarded([this] {
        const QString line = m_meant.isEmpty() ? m_line->text() : m_meant;
        const DayLine typed = read(line);
        const std::size_t who = typed.who.value_or(*m_turn);
        std::visit(Overloaded{[&](const TypedSet& set) { take(set, who); },
                              [&](const TypedAttempts& attempts) { take(attempts, who); },
                              [&](const TypedGap& gap) { take(gap, who); },
                              [&](const OnlyName&) {
                                  m_line->clear();
                                  setTurn(who);
                              },
                              [&](const LineProblem& problem) { refuse(problem, line, who); },
                              [&](const LineQuestion& question) { ask(question, who); },
                              [&](const WhoQuestion& question) { askWho(question); }},
                   typed.what);
    });
}

// Nothing moves: the line stays, what is wrong is marked, and what would be taken is offered.
void StationPage::refuse(const LineProblem& problem, const QString& line, std::size_t who) {
    const auto* kind = testOf(who);
    const QString why = kind ? problemText(problem, line, kind->value, m_logbook.loadUnit())
                             : problemText(problem, line, m_logbook.loadUnit());
    say(tr("Not written. %1").arg(why), true);
    m_line->markRefused(static_cast<int>(problem.where.start),
                        static_cast<int>(problem.where.length),
                        QString::fromStdU16String(problem.instead));
}

void StationPage::ask(const LineQuestion& question, std::size_t who) {
    const LoadUnit unit = m_logbook.loadUnit();
    if (question.kind == LineQuestion::Kind::Speeds) {
        m_meant = QString::fromStdU16String(question.meant);
        say(questionText(question), true);
        return;
    }
    // The load was forgotten: the next one is offered, in front of the speeds.
    const auto next = m_here[who].lift.next;
    m_meant = QString::fromStdU16String(question.meant);
    if (next) {
        m_meant = m_line->text();
        m_meant.insert(static_cast<qsizetype>(question.where.start),
                       massText(*next, unit) + unitName(unit) + QLatin1Char(' '));
    }
    say(forgottenLoadText(question, next, unit), true);
}

void StationPage::askWho(const WhoQuestion& question) {
    say(whoText(question, names()), true);
    // The next letters take the place of the name.
    m_line->setSelection(static_cast<int>(question.where.start),
                         static_cast<int>(question.where.length));
}

/// Asked once: Enter again takes it as it stands.
bool StationPage::certain(const QString& doubt) {
    if (doubt.isEmpty() || m_doubted == m_line->text())
        return true;
    m_doubted = m_line->text();
    say(doubt, true);
    return false;
}

QString StationPage::doubtOf(const Set& set, std::size_t who) const {
    const questions::AtStation& at = m_here[who];
    const auto session = at.sets.empty() ? at.session : std::optional(at.sets.back().session);
    const SessionView other = who == m_turn && m_view
                                  ? SessionView{}
                                  : readSession(m_logbook.log(), at.athlete.id, m_work->lift->id,
                                                session, m_logbook.loadUnit(), 1, m_day);
    const SessionView& view = who == m_turn && m_view ? *m_view : other;
    const LiftSession* today = view.session ? &*view.session : nullptr;
    const LiftSession* last = view.last ? &*view.last : nullptr;
    // Their points are of the body's mass and what is added.
    Set lifted = set;
    lifted.load.grams += questions::bodyMoved(m_work->lift->value, today ? today : last).grams;
    const auto doubt = answers::doubt(lifted, today, last);
    return doubt ? doubtText(*doubt, m_logbook.loadUnit()) : QString();
}

QString StationPage::doubtOf(const TypedAttempts& typed, std::size_t who) const {
    std::vector<Attempt> earlier;
    for (const BatterySession& one : m_logbook.log().batteries(m_here[who].athlete.id))
        if (const TestAttempts* held = one.battery.test(testOf(who)->id))
            earlier.insert(earlier.end(), held->attempts.begin(), held->attempts.end());
    const auto doubt = answers::doubtOf(testOf(who)->value, typed.attempts, earlier);
    return doubt ? doubtText(*doubt, !earlier.empty()) : QString();
}

Entry StationPage::entryFor(std::size_t who) const {
    Entry entry;
    const questions::AtStation& at = m_here[who];
    entry.session = at.session;
    if (m_work->lift)
        entry.lift = m_work->lift->id;
    if (m_work->station.value.conditions != Conditions{})
        entry.conditions = m_work->station.value.conditions;
    if (!at.session) {
        entry.head.athlete = at.athlete.id;
        entry.head.date = m_day;
        if (needsBody())
            entry.head.bodyMass = bodyMass(who);
        entry.head.ordinal = nextOrdinal(m_logbook.log(), at.athlete.id, m_day);
    }
    return entry;
}

void StationPage::take(const TypedSet& typed, std::size_t who) {
    const Set set = setFromTyped(typed);
    if (!certain(doubtOf(set, who)))
        return;
    Entry entry = entryFor(who);
    entry.sets = {set};
    entry.text = tr("add set");
    write(std::move(entry), who);
}

void StationPage::take(const TypedGap& gap, std::size_t who) {
    Entry entry = entryFor(who);
    const Gap noted{.lift = m_work->lift->id,
                    .load = gap.load,
                    .reason = utf8(QString::fromStdU16String(gap.reason))};
    entry.battery = [noted](Battery& battery) { battery.gaps.push_back(noted); };
    entry.text = tr("note what was not possible");
    write(std::move(entry), who);
}

void StationPage::take(const TypedAttempts& typed, std::size_t who) {
    if (!certain(doubtOf(typed, who)))
        return;
    Entry entry = entryFor(who);
    entry.text = typed.attempts.empty() ? tr("note what was not possible") : tr("add attempts");
    entry.battery = [typed, id = testOf(who)->id,
                     conditions = m_work->station.value.conditions](Battery& battery) {
        if (!typed.attempts.empty()) {
            Conditions& held = conditionsOf(battery, id); // the test comes in with it
            if (conditions != Conditions{})
                held = conditions;
            auto& attempts = std::ranges::find(battery.tests, id, &TestAttempts::kind)->attempts;
            attempts.insert(attempts.end(), typed.attempts.begin(), typed.attempts.end());
        }
        for (const BodySide side : typed.notPossible)
            battery.gaps.push_back({.kind = id, .side = side, .reason = typed.reason});
    };
    write(std::move(entry), who);
}

void StationPage::write(Entry entry, std::size_t who) {
    const QString line = m_line->text();
    m_writing = true;
    try {
        m_logbook.enter(entry);
    } catch (...) {
        m_writing = false;
        guarded([this] { reload(); }); // what it shows may be behind, and was told in between
        m_line->markRefused();
        throw;
    }
    m_writing = false;
    const AthleteId athlete = m_here[who].athlete.id;
    m_since[athlete] = m_clock.seconds();
    m_line->setText(QString()); // what was taken is the log's to take back
    m_line->forgetRefused();
    m_meant.clear();
    m_doubted.clear();
    if (m_turn == who)
        m_drafts.erase({m_work->station.id, athlete});
    readAnew(who);
    showRoster();
    const auto before = m_turn;
    moveOn(who);
    if (m_turn == before) {
        if (m_turn && m_here[*m_turn].tests.next)
            m_tests->setCurrentIndex(static_cast<int>(m_here[*m_turn].tests.next->test));
        showTurn();
    }
    say(tr("Written for %1: %2").arg(text(m_here[who].athlete.value.name), line.simplified()),
        false);
}

} // namespace slopebook::ui
