// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/battery/attemptsview.h"

#include "core/answers/attemptdoubt.h"
#include "core/model/errors.h"
#include "ui/athlete/battery/attemptwords.h"
#include "ui/athlete/battery/testdialog.h"
#include "ui/parts/fold.h"
#include "ui/records/sessiondialog.h"
#include "ui/typed/attemptline.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui {

AttemptsView::AttemptsView(Logbook& logbook, Clock clock, QWidget* parent)
    : QWidget(parent), m_logbook(logbook), m_clock(std::move(clock)) {
    auto* layout = new QVBoxLayout(this);
    QWidget* conditions = buildContext();
    m_conditions = new FoldButton(tr("Conditions"), {conditions});
    layout->setContentsMargins(0, 0, 0, 0);
    m_choices = buildSession();
    m_choices->setParent(this); // until the page takes it into its line
    m_choices->hide();
    layout->addWidget(conditions);
    layout->addWidget(buildLine());
    layout->addWidget(buildTables(), 1);
    layout->addWidget(buildButtons());
    connectParts();
    setAthlete(std::nullopt);
}

void AttemptsView::guarded(const std::function<void()>& work) {
    try {
        work();
    } catch (const BadInput& error) {
        say(AttemptsView::tr("Found %1, expected %2.")
                .arg(said(error.found()), said(error.expected())),
            true);
    } catch (const std::exception& error) {
        say(said(error), true);
    }
}

void AttemptsView::connectParts() {
    connect(m_session, &QComboBox::currentIndexChanged, this, [this] { showBattery(); });
    connect(m_newSession, &QPushButton::clicked, this, &AttemptsView::newSession);
    for (QLineEdit* field :
         {m_surface, m_device, m_footwear, m_technique, m_place, m_notComparable})
        connect(field, &QLineEdit::editingFinished, this, [this, field] { keepCondition(field); });
    connect(m_test, &QComboBox::currentIndexChanged, this, [this] {
        showConditions();
        say(help(), false);
    });
    connect(m_tests, &QPushButton::clicked, this, [this] {
        TestsDialog(m_logbook, this).exec();
        reload();
    });
    connect(m_line, &QLineEdit::returnPressed, this, &AttemptsView::submit);
    connect(m_line, &QLineEdit::textEdited, this, [this] {
        m_askedAbout.clear();
        say(help(), false);
    });
    connect(m_change, &QPushButton::clicked, this, &AttemptsView::askChange);
    connect(m_attemptTable, &QTableView::doubleClicked, this, &AttemptsView::askChange);
    connect(m_leaveOut, &QPushButton::clicked, this, &AttemptsView::askReason);
    connect(m_remove, &QPushButton::clicked, this, &AttemptsView::removeSelected);
    connect(m_trace, &QPushButton::clicked, this, &AttemptsView::traceWanted);
}

void AttemptsView::setAthlete(std::optional<AthleteId> athlete) {
    m_athlete = athlete;
    m_session->blockSignals(true);
    m_session->clear();
    m_session->blockSignals(false);
    reload();
}

void AttemptsView::reload() {
    guarded([this] {
        fillTests();
        fillSessions();
    });
    showBattery();
}

std::optional<SessionId> AttemptsView::session() const {
    const QVariant key = m_session->currentData();
    return key.isValid() ? std::optional(SessionId{key.toLongLong()}) : std::nullopt;
}

void AttemptsView::showSession(SessionId session) {
    const int at = m_session->findData(qint64(raw(session)));
    if (at >= 0)
        m_session->setCurrentIndex(at);
}

void AttemptsView::fillSessions() {
    const auto held = session();
    m_sessions.clear();
    if (m_athlete)
        m_sessions = m_logbook.log().batteries(*m_athlete);
    std::reverse(m_sessions.begin(), m_sessions.end());
    m_session->blockSignals(true);
    m_session->clear();
    for (const BatterySession& one : m_sessions) {
        QString label = dateText(one.date);
        if (one.ordinal > 1)
            label += QStringLiteral(" #%1").arg(one.ordinal);
        std::size_t count = 0;
        for (const TestAttempts& test : one.battery.tests)
            count += test.attempts.size();
        if (count > 0)
            label += count == 1 ? tr(", 1 attempt") : tr(", %1 attempts").arg(count);
        m_session->addItem(label, qint64(raw(one.session)));
    }
    const int at = held ? m_session->findData(qint64(raw(*held))) : -1;
    m_session->setCurrentIndex(at >= 0 ? at : (m_session->count() > 0 ? 0 : -1));
    m_session->blockSignals(false);
}

void AttemptsView::fillTests() {
    const QString held = m_test->currentData().toString();
    m_offered = questions::offeredTests(m_logbook.log());
    m_kinds.clear();
    m_test->blockSignals(true);
    m_test->clear();
    for (const questions::OfferedTest& test : m_offered) {
        if (test.id)
            m_kinds.push_back({*test.id, test.kind});
        m_test->addItem(testText(test.kind.name), text(test.kind.name));
    }
    m_test->setCurrentIndex(std::max(0, m_test->findData(held)));
    m_test->blockSignals(false);
}

const questions::OfferedTest* AttemptsView::offered() const {
    const auto at = static_cast<std::size_t>(m_test->currentIndex());
    return m_test->currentIndex() >= 0 && at < m_offered.size() ? &m_offered[at] : nullptr;
}

const Stored<TestKindId, TestKind>* AttemptsView::kindOf(TestKindId id) const {
    const auto found = std::ranges::find(m_kinds, id, &Stored<TestKindId, TestKind>::id);
    return found == m_kinds.end() ? nullptr : &*found;
}

TestKindId AttemptsView::keyOf(const TestKind& kind) {
    for (const auto& held : m_kinds)
        if (held.value.name == kind.name)
            return held.id;
    return m_logbook.addTestKind(kind);
}

void AttemptsView::newSession() {
    guarded([this] {
        if (!m_athlete)
            return;
        // The day's lifts and jumps are one session: one that has no attempts yet is taken.
        for (const BatterySession& one : m_sessions)
            if (one.date == m_clock.today() && one.battery.empty()) {
                showSession(one.session);
                takeConditionsOver(one.session);
                return;
            }
        const SessionId made = addSessionToday(*m_athlete);
        reload();
        showSession(made);
        takeConditionsOver(made);
    });
}

SessionId AttemptsView::addSessionToday(AthleteId athlete) {
    SessionHead head;
    head.athlete = athlete;
    head.date = m_clock.today();
    head.ordinal = nextOrdinal(m_logbook.log(), athlete, head.date);
    return m_logbook.addSession(head);
}

void AttemptsView::keep(const Battery& battery, const QString& text) {
    m_logbook.setBattery(session().value(), battery, text);
    reload();
}

void AttemptsView::put(Battery& battery, const Stored<TestKindId, TestKind>& kind,
                       const std::vector<Attempt>& attempts) const {
    auto held = std::ranges::find(battery.tests, kind.id, &TestAttempts::kind);
    if (held == battery.tests.end())
        held = battery.tests.insert(held, {.kind = kind.id, .attempts = {}});
    held->attempts.insert(held->attempts.end(), attempts.begin(), attempts.end());
}

SessionId AttemptsView::addAttempts(AthleteId athlete, std::optional<SessionId> into,
                                    const TestKind& kind, const std::vector<Attempt>& attempts) {
    Conditions conditions;
    const TestKindId id = keyOf(kind);
    if (!into)
        for (const BatterySession& one : m_logbook.log().batteries(athlete)) {
            if (one.date == m_clock.today())
                into = one.session;
            if (const TestAttempts* done = one.battery.test(id))
                conditions = done->conditions; // the newest are the likely ones
        }
    const bool isNew = !into;
    const SessionId session = isNew ? addSessionToday(athlete) : *into;
    Battery battery = m_logbook.log().battery(session);
    put(battery, {id, kind}, attempts);
    if (isNew)
        conditionsOf(battery, id) = conditions;
    m_logbook.setBattery(session, battery, tr("add attempts"));
    reload();
    if (m_athlete == athlete)
        showSession(session);
    return session;
}

std::optional<TestKind> AttemptsView::test() const {
    const questions::OfferedTest* chosen = offered();
    return chosen ? std::optional(chosen->kind) : std::nullopt;
}

void AttemptsView::submit() {
    guarded([this] {
        const questions::OfferedTest* test = offered();
        if (!test)
            return;
        if (!session()) {
            say(tr("Make a session first: New session today."), true);
            return;
        }
        const TestKind kind = test->kind;
        const auto read = readAttemptLine(m_line->text().toStdU16String(), kind);
        if (const auto* problem = std::get_if<LineProblem>(&read)) {
            say(problemText(*problem, m_line->text(), kind, m_logbook.loadUnit()), true);
            m_line->markRefused(static_cast<int>(problem->where.start),
                                static_cast<int>(problem->where.length),
                                QString::fromStdU16String(problem->instead));
            return;
        }
        const auto& typed = std::get<TypedAttempts>(read);
        if (!certain(*test, typed.attempts))
            return;
        const TestKindId id = keyOf(kind);
        Battery battery = m_logbook.log().battery(*session());
        if (!typed.attempts.empty())
            put(battery, {id, kind}, typed.attempts);
        for (const BodySide side : typed.notPossible)
            battery.gaps.push_back({.kind = id, .side = side, .reason = typed.reason});
        m_line->clear();
        m_line->forgetRefused();
        keep(battery, typed.attempts.empty() ? tr("note a gap") : tr("add attempts"));
    });
}

bool AttemptsView::certain(const questions::OfferedTest& test, const std::vector<Attempt>& typed) {
    if (m_askedAbout == m_line->text()) {
        m_askedAbout.clear();
        return true;
    }
    std::vector<Attempt> earlier;
    for (const BatterySession& one : m_sessions)
        for (const TestAttempts& done : one.battery.tests)
            if (test.id == done.kind)
                earlier.insert(earlier.end(), done.attempts.begin(), done.attempts.end());
    const auto doubt = answers::doubtOf(test.kind, typed, earlier);
    if (!doubt)
        return true;
    m_askedAbout = m_line->text();
    say(doubtText(*doubt, !earlier.empty()), true);
    m_line->markRefused();
    return false;
}

void AttemptsView::showBattery() {
    guarded([this] {
        const BatterySession* shown = nullptr;
        for (const BatterySession& one : m_sessions)
            if (session() == one.session)
                shown = &one;
        showConditions();
        for (QWidget* part :
             std::initializer_list<QWidget*>{m_surface, m_device, m_footwear, m_technique, m_place,
                                             m_notComparable, m_line, m_test})
            part->setEnabled(shown != nullptr);
        m_newSession->setEnabled(m_athlete.has_value());
        showAttempts();
        showValues();
        say(help(), false);
    });
}

void AttemptsView::showAttempts() {
    std::vector<TextTable::Row> rows;
    m_rows.clear();
    for (const BatterySession& one : m_sessions) {
        if (session() != one.session)
            continue;
        const Battery& battery = one.battery;
        for (std::size_t t = 0; t < battery.tests.size(); ++t)
            for (std::size_t a = 0; a < battery.tests[t].attempts.size(); ++a)
                if (const auto* kind = kindOf(battery.tests[t].kind)) {
                    m_rows.push_back({t, a});
                    rows.push_back(attemptRow(kind->value, battery.tests[t].attempts[a],
                                              one.bodyMass, static_cast<int>(a) + 1));
                }
        for (std::size_t g = 0; g < battery.gaps.size(); ++g) {
            const Gap& gap = battery.gaps[g];
            QString what = tr("a lift");
            if (gap.kind)
                if (const auto* kind = kindOf(*gap.kind))
                    what = testText(kind->value.name);
            for (const auto& lift : m_logbook.log().lifts())
                if (gap.lift == lift.id)
                    what = text(lift.value.name);
            if (gap.load)
                what += QStringLiteral(", ") + massWithUnit(*gap.load, m_logbook.loadUnit());
            m_rows.push_back({std::nullopt, g});
            rows.push_back(
                {.cells = {
                     what, sideText(gap.side), {}, {}, tr("not possible"), text(gap.reason)}});
        }
    }
    m_attempts->setTable(
        {tr("Test"), tr("Side"), tr("No."), tr("As read"), tr("Value"), tr("Remark")},
        std::move(rows), 2, 5);
}

void AttemptsView::showValues() {
    std::vector<TextTable::Row> rows;
    for (const BatterySession& one : m_sessions)
        if (session() == one.session)
            for (const auto& kind : m_kinds)
                if (auto row = valueRow(kind, one))
                    rows.push_back(std::move(*row));
    m_values->setTable(
        {tr("Test"), tr("Value"), tr("Left"), tr("Right"), tr("Better side"), tr("Attempts")},
        std::move(rows), 1, 4);
}

QString AttemptsView::answer() const {
    return m_answer->text();
}

void AttemptsView::say(const QString& words, bool problem) {
    m_answer->setText(problem ? QStringLiteral("\u26a0 ") + words : words);
}

QString AttemptsView::help() const {
    if (!m_athlete)
        return tr("Choose an athlete.");
    if (!session())
        return tr("No session yet: make one with New session today.");
    const questions::OfferedTest* test = offered();
    return test ? lineHelp(test->kind) : QString();
}

} // namespace slopebook::ui
