// SPDX-License-Identifier: GPL-3.0-or-later
// What the station's page reads and shows.
#include "ui/floor/entry/setwords.h"
#include "ui/floor/station/bodyfield.h"
#include "ui/floor/station/stationpage.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableView>

#include <algorithm>

namespace slopebook::ui {

void StationPage::reload() {
    guarded([this] {
        fillStations();
        readAll();
    });
}

QString StationPage::stationTitle() const {
    return m_stations->currentText();
}

void StationPage::fillStations() {
    const auto kept = station();
    const QSignalBlocker quiet(m_stations);
    m_stations->clear();
    for (const auto& one : m_logbook.log().stations())
        m_stations->addItem(stationText(one, m_logbook.log()), qint64(raw(one.id)));
    const int at = kept ? m_stations->findData(qint64(raw(*kept))) : -1;
    m_stations->setCurrentIndex(at >= 0 ? at : (m_stations->count() > 0 ? 0 : -1));
}

// Where another window, or an undo, wrote a set of whose turn it was, it is the next one's; what is
// being typed stays with whom it was begun for.
void StationPage::readAll() {
    const auto id = station();
    std::vector<AthleteId> before;
    std::vector<int> doneBefore;
    for (const questions::AtStation& at : m_here) {
        before.push_back(at.athlete.id);
        doneBefore.push_back(at.done());
    }
    keepDraft();
    const bool sameStation = m_work && id == m_work->station.id;
    const auto turnBefore = sameStation ? turn() : std::nullopt;
    m_here.clear();
    m_turn.reset();
    if (!sameStation || !isBeingLifted()) {
        if (m_day != m_clock.today())
            m_bodies.clear(); // they were of that day
        m_day = m_clock.today();
    }
    m_work = id ? std::optional(questions::stationWork(m_logbook.log(), *id)) : std::nullopt;
    Q_EMIT stationShown();
    if (!m_work) {
        showNothing();
        return;
    }
    for (const AthleteId athlete : m_logbook.log().roster(*id, m_day).athletes)
        m_here.push_back(questions::atStation(m_logbook.log(), *m_work, athlete, m_day,
                                              massUnit(m_logbook.loadUnit())));
    if (sameStation)
        noteRests(doneBefore, before);
    fillTests();
    std::optional<std::size_t> at = turnBefore ? rowOf(*turnBefore) : std::nullopt;
    if (at && m_work->station.value.rotates && m_line->text().isEmpty()) {
        const auto old = std::ranges::find(before, *turnBefore);
        if (old != before.end() &&
            m_here[*at].done() > doneBefore[static_cast<std::size_t>(old - before.begin())])
            at = answers::nextTurn(due(), at);
    }
    if (!at && !m_here.empty())
        at = answers::nextTurn(due(), questions::lastToStepUp(m_here)).value_or(0);
    m_roster->setTurn({});
    if (at && turnBefore && m_here[*at].athlete.id == *turnBefore)
        m_turn = at; // and what is being typed stays as it is
    else
        setTurn(at);
    showAll();
}

// What was lifted before midnight and after it with no more between is one day's.
bool StationPage::isBeingLifted() const {
    static constexpr std::chrono::hours longestBreak{2};
    return std::ranges::any_of(
        m_since, [this](const auto& one) { return m_clock.seconds() - one.second < longestBreak; });
}

void StationPage::readAnew(std::size_t at) {
    m_here[at] = questions::atStation(m_logbook.log(), *m_work, m_here[at].athlete.id, m_day,
                                      massUnit(m_logbook.loadUnit()));
}

/// Whoever has more done than before has just stepped up, at whichever window.
void StationPage::noteRests(const std::vector<int>& doneBefore,
                            const std::vector<AthleteId>& before) {
    for (const questions::AtStation& at : m_here) {
        const auto old = std::ranges::find(before, at.athlete.id);
        if (old != before.end() &&
            at.done() > doneBefore[static_cast<std::size_t>(old - before.begin())])
            m_since[at.athlete.id] = m_clock.seconds();
    }
}

void StationPage::fillTests() {
    const QSignalBlocker quiet(m_tests);
    m_tests->clear();
    if (!m_work->lift)
        for (const auto& kind : m_work->tests)
            m_tests->addItem(testText(kind.value.name), qint64(raw(kind.id)));
    m_tests->setVisible(m_tests->count() > 1);
}

void StationPage::setTurn(std::optional<std::size_t> at) {
    if (at == m_turn)
        return;
    keepDraft();
    m_turn = at;
    m_meant.clear();
    m_doubted.clear();
    m_line->forgetRefused();
    const auto draft =
        at ? m_drafts.find({m_work->station.id, m_here[*at].athlete.id}) : m_drafts.end();
    m_line->setText(draft != m_drafts.end() ? draft->second : QString());
    if (at && m_here[*at].tests.next)
        m_tests->setCurrentIndex(static_cast<int>(m_here[*at].tests.next->test));
    guarded([this] { showTurn(); });
    if (m_line->text().isEmpty())
        sayHelp();
    else
        echo();
}

/// What is typed for somebody waits for them.
void StationPage::keepDraft() {
    if (!m_turn || !m_work)
        return;
    const std::pair whose{m_work->station.id, m_here[*m_turn].athlete.id};
    if (m_line->text().isEmpty())
        m_drafts.erase(whose);
    else
        m_drafts[whose] = m_line->text();
}

void StationPage::moveOn(std::size_t from) {
    const auto next = m_work->station.value.rotates ? answers::nextTurn(due(), from) : from;
    setTurn(next.value_or(from));
}

// On: to the next who is due, or where nobody is, to the next at all; back: to the one before.
void StationPage::pass(int direction) {
    if (!m_turn || m_here.size() < 2)
        return;
    const std::size_t many = m_here.size();
    if (direction < 0)
        setTurn((*m_turn + many - 1) % many);
    else
        setTurn(answers::nextTurn(due(), m_turn).value_or((*m_turn + 1) % many));
}

void StationPage::showAll() {
    showRoster();
    showTurn();
}

void StationPage::showRoster() {
    std::vector<RosterRow> rows;
    for (const questions::AtStation& at : m_here)
        rows.push_back(rosterRow(*m_work, at, m_logbook.loadUnit()));
    for (RosterRow& row : rows)
        if (const auto since = m_since.find(row.athlete); since != m_since.end())
            row.rest = restClock(m_clock.seconds() - since->second);
    m_roster->setRows(std::move(rows));
    fitRoster();
}

void StationPage::showTurn() {
    m_roster->setTurn(m_turn);
    m_line->setEnabled(m_turn.has_value());
    m_change->setEnabled(m_work.has_value());
    m_who->setEnabled(m_work.has_value());
    m_rotates->setEnabled(m_work.has_value());
    m_rotates->setChecked(m_work && m_work->station.value.rotates);
    m_conditions->setText(m_work ? conditionsText(m_work->station.value.conditions, m_logbook.log())
                                 : QString());
    hideSilent();
    if (!m_turn) {
        showNothing();
        return;
    }
    const questions::AtStation& at = m_here[*m_turn];
    const bool anyDue = std::ranges::any_of(m_here, &questions::AtStation::isDue);
    const LoadUnit unit = m_logbook.loadUnit();
    m_sentence->setText(anyDue ? turnText(*m_work, at, unit)
                               : tr("All done: %1 here.").arg(m_here.size()));
    m_reason->setText(turnReason(*m_work, at, unit));
    showBody();
    hideSilent();
    m_line->setAccessibleName(
        tr("%1: load and speeds, or attempts").arg(text(at.athlete.value.name)));
    const QModelIndex row = m_roster->index(static_cast<int>(*m_turn), 0);
    if (m_rosterTable->currentIndex().row() != row.row())
        m_rosterTable->setCurrentIndex(row);
    m_rosterTable->scrollTo(row);
    showPicture();
    showDone();
    showRests();
    showFoot();
}

void StationPage::showPicture() {
    const questions::AtStation& at = m_here[*m_turn];
    showParts(true);
    m_chart->setVisible(at.atLift);
    m_view.reset();
    if (!at.atLift)
        return;
    // The day's own session, whichever station it is of.
    std::optional<SessionId> session = at.session;
    if (!at.sets.empty())
        session = at.sets.back().session;
    m_view = readSession(m_logbook.log(), at.athlete.id, m_work->lift->id, session,
                         m_logbook.loadUnit(), 1, m_day);
    m_chart->setData(m_view->chart);
}

void StationPage::showDone() {
    const questions::AtStation& at = m_here[*m_turn];
    const LoadUnit unit = m_logbook.loadUnit();
    std::vector<TextTable::Row> rows;
    if (!at.atLift) {
        showTests(at);
        return;
    }
    for (const log::PlacedSet& placed : at.sets) {
        const Set& set = placed.set;
        const bool lifted = set.outcome == Outcome::Lifted;
        rows.push_back(
            {.cells = {massText(set.load, unit), lifted ? repsText(set) : tr("not lifted"),
                       set.effort ? effortText(*set.effort) : QString(),
                       text(lifted ? set.note : set.reason)}});
    }
    m_done->setTable({tr("Load, %1").arg(unitName(unit)), tr("Reps, m/s"), tr("RPE"), tr("Note")},
                     std::move(rows), QList<int>{0, 2});
    m_doneTable->resizeColumnsToContents();
    m_doneTable->scrollToBottom();
}

// Today's attempts as they were read, and under them what earlier days came to.
void StationPage::showTests(const questions::AtStation& at) {
    constexpr std::size_t daysBefore = 3;
    const bool several = m_work->tests.size() > 1;
    std::vector<TextTable::Row> rows;
    const auto add = [&](const QString& when, std::size_t test, BodySide side, const QString& value,
                         const QString& remark, bool quiet) {
        TextTable::Row row{.cells = {when}};
        if (several)
            row.cells << testText(m_work->tests[test].value.name);
        row.cells << attemptSide(side) << value << remark;
        for (int i = 0; quiet && i < row.cells.size(); ++i)
            row.quiet << i;
        rows.push_back(std::move(row));
    };
    for (std::size_t i = 0; i < at.attempts.size(); ++i) {
        const Attempt& attempt = at.attempts[i];
        add(QString::number(i + 1), at.testOf[i], attempt.side, attemptReading(attempt),
            text(attempt.excluded.empty() ? attempt.note : attempt.excluded),
            !attempt.excluded.empty());
    }
    for (const questions::EarlierTest& before :
         questions::earlierTests(m_logbook.log(), *m_work, at.athlete.id, m_day, daysBefore))
        add(dateText(before.date), before.test, before.side,
            number(before.value, m_work->tests[before.test].value.decimals) + QLatin1Char(' ') +
                text(m_work->tests[before.test].value.unit),
            {}, true);
    QStringList headings{tr("No.")};
    if (several)
        headings << tr("Test");
    headings << tr("Side") << tr("As read") << tr("Remark");
    m_done->setTable(headings, std::move(rows), several ? QList<int>{0, 3} : QList<int>{0, 2});
    m_doneTable->resizeColumnsToContents();
}

/// What says nothing takes no room, and is not heard as nothing.
void StationPage::hideSilent() {
    for (QLabel* label : {m_conditions, m_reason, m_rest, m_next, m_undo})
        label->setVisible(!label->text().isEmpty());
}

void StationPage::showRests() {
    const auto now = m_clock.seconds();
    for (std::size_t i = 0; i < m_here.size(); ++i)
        if (const auto since = m_since.find(m_here[i].athlete.id); since != m_since.end())
            m_roster->setRest(i, restClock(now - since->second));
    const auto own = m_turn ? m_since.find(m_here[*m_turn].athlete.id) : m_since.end();
    m_rest->setText(own == m_since.end() ? QString() : restClock(now - own->second));
    hideSilent();
}

void StationPage::showFoot() {
    QString words;
    const auto then = m_turn && m_work && m_work->station.value.rotates
                          ? answers::nextTurn(due(), m_turn)
                          : std::nullopt;
    if (then && then != m_turn)
        words = tr("Then %1. Enter moves on; Alt+Down passes, Alt+Up goes back.")
                    .arg(comesThen(m_here[*then], m_logbook.loadUnit()));
    else if (m_here.size() > 1)
        words = tr("Alt+Down and Alt+Up go to the others; so does a name.");
    m_next->setText(words);
    hideSilent();
    QString back;
    try {
        if (const auto step = m_logbook.nextUndo())
            back = tr("Ctrl+Z takes back: %1").arg(step->words);
    } catch (const std::exception&) {
        // A log that cannot be read just now says so where it is read for its own sake.
    }
    m_undo->setText(back);
    hideSilent();
}

void StationPage::showNothing() {
    m_view.reset();
    m_roster->setTurn({});
    if (!m_work)
        m_roster->setRows({});
    m_line->setEnabled(false);
    for (QWidget* part : std::initializer_list<QWidget*>{m_change, m_who, m_rotates})
        part->setEnabled(m_work.has_value());
    m_sentence->setText(m_work ? tr("Who is here today?") : tr("No station yet."));
    m_reason->setText(m_work ? tr("Who is here… takes them in the order of their turns.")
                             : tr("New… sets one up: a lift or a few tests, the device, the "
                                  "surface, the ladder. Athletes take turns at it."));
    m_tests->hide();
    m_body->hide();
    m_rest->clear();
    m_next->clear();
    hideSilent();
    m_chart->setData({.unit = m_logbook.loadUnit()});
    m_done->setTable({}, {}, QList<int>{});
    showParts(false);
    say({}, false);
}

// Empty, they say nothing: what begins it stands there instead, with its key, and nowhere else.
void StationPage::showParts(bool anybody) {
    for (QWidget* part : std::initializer_list<QWidget*>{m_rosterTable->parentWidget(), m_line,
                                                         m_chart, m_doneTable})
        part->setVisible(anybody);
    const auto place = [](QPushButton& button, bool there, const QString& words) {
        button.setVisible(there);
        button.setText(there ? words : QString());
    };
    const QString setUp = tr("Ne&w…"), who = tr("Who &is here…");
    place(*m_new, anybody || m_work, setUp);
    place(*m_who, anybody || !m_work, who);
    place(*m_begin, !anybody, m_work ? who : setUp);
}

void StationPage::say(const QString& words, bool problem) {
    m_answer->setText(problem ? QStringLiteral("\u26a0 ") + words : words);
    m_answer->setForegroundRole(problem ? QPalette::WindowText : QPalette::PlaceholderText);
    QFont type = font();
    type.setBold(problem);
    m_answer->setFont(type);
    m_line->setAccessibleDescription(words);
    m_words = words;
}

void StationPage::sayHelp() {
    if (const auto* kind = testOf(m_turn))
        say(lineHelp(kind->value), false);
    else if (m_work && m_work->lift)
        say(tr("Load in %1, the reps' speeds, @ effort; or - not lifted. Up: the next load. A name "
               "in front: theirs.")
                .arg(unitName(m_logbook.loadUnit())),
            false);
    m_answer->setText(withWholeCodes(m_answer->text()));
}

void StationPage::echo() {
    if (!m_turn || m_line->text().isEmpty()) {
        sayHelp();
        return;
    }
    const DayLine line = read(m_line->text());
    const std::size_t who = line.who.value_or(*m_turn);
    const QString words =
        readsAs(line, text(m_here[who].athlete.value.name), lineAt(who).test, m_logbook.loadUnit());
    if (words.isEmpty())
        sayHelp();
    else
        say(words, false);
}

} // namespace slopebook::ui
