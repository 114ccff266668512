// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/station/stationpage.h"

#include "core/model/errors.h"
#include "ui/floor/entry/setwords.h"
#include "ui/floor/station/bodyfield.h"
#include "ui/floor/station/rosterdialog.h"
#include "ui/floor/station/stationdialog.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableView>

#include <algorithm>

namespace slopebook::ui {

void StationEdit::keyPressEvent(QKeyEvent* event) {
    const bool alt = event->modifiers() & Qt::AltModifier;
    switch (event->key()) {
    case Qt::Key_PageDown:
    case Qt::Key_PageUp:
        Q_EMIT passed(event->key() == Qt::Key_PageDown ? 1 : -1);
        return;
    case Qt::Key_Down:
    case Qt::Key_Up:
        if (alt)
            Q_EMIT passed(event->key() == Qt::Key_Down ? 1 : -1);
        else if (event->key() == Qt::Key_Down)
            takeInstead();
        else if (!bringBack())
            Q_EMIT nextWanted();
        return;
    case Qt::Key_Escape:
        Q_EMIT escaped();
        return;
    default:
        UndoableEdit::keyPressEvent(event);
    }
}

StationPage::StationPage(Logbook& logbook, Clock clock, QWidget* parent)
    : TaskPage(parent), m_logbook(logbook), m_clock(std::move(clock)) {
    build();
    connectParts();
    connectLine();
    m_tick.setInterval(1000);
    m_tick.start();
}

void StationPage::connectParts() {
    connect(m_stations, &QComboBox::activated, this, [this] {
        guarded([this] { readAll(); });
        focusLine();
    });
    connect(m_new, &QPushButton::clicked, this, &StationPage::addStation);
    connect(m_change, &QPushButton::clicked, this, &StationPage::changeStation);
    connect(m_who, &QPushButton::clicked, this, &StationPage::chooseWho);
    connect(m_begin, &QPushButton::clicked, this, [this] {
        if (m_work)
            chooseWho();
        else
            addStation();
    });
    connect(m_rotates, &QCheckBox::clicked, this, [this](bool on) {
        guarded([&] {
            if (!m_work)
                return;
            Station changed = m_work->station.value;
            changed.rotates = on;
            m_logbook.changeStation(m_work->station.id, changed);
            m_work->station.value = changed;
            showFoot();
        });
    });
    connect(m_rosterTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) {
                if (now.isValid() && m_rosterTable->hasFocus())
                    setTurn(static_cast<std::size_t>(now.row()));
            });
    connect(m_rosterTable, &QTableView::clicked, this, [this](const QModelIndex& row) {
        setTurn(static_cast<std::size_t>(row.row()));
        focusLine();
    });
    connect(m_rosterTable, &QTableView::activated, this, &StationPage::focusLine);
    connect(&m_tick, &QTimer::timeout, this, [this] {
        showRests();
        if (m_work && m_day != m_clock.today() && !isBeingLifted())
            guarded([this] { readAll(); });
    });
    connect(m_logbook.undoStack(), &QUndoStack::indexChanged, this, [this] { showFoot(); });
}

void StationPage::connectLine() {
    connect(m_line, &QLineEdit::returnPressed, this, &StationPage::submit);
    connect(m_line, &QLineEdit::textEdited, this, [this] {
        m_meant.clear();
        m_doubted.clear();
        echo();
    });
    connect(m_line, &StationEdit::passed, this, &StationPage::pass);
    connect(m_line, &StationEdit::nextWanted, this, [this] {
        if (m_turn && m_here[*m_turn].lift.next) {
            m_line->setText(massText(*m_here[*m_turn].lift.next, m_logbook.loadUnit()) +
                            QLatin1Char(' '));
            echo();
        }
    });
    connect(m_line, &StationEdit::escaped, this, [this] {
        if (m_meant.isEmpty() && m_doubted.isEmpty())
            m_line->clear();
        m_meant.clear();
        m_doubted.clear();
        m_line->forgetRefused();
        sayHelp();
    });
    connect(m_body, &BodyField::left, this, &StationPage::takeBody);
    connect(m_body, &BodyField::goesOn, this, [this] {
        if (!m_body->isTyped()) // it was taken
            focusLine();
    });
    connect(m_tests, &QComboBox::activated, this, [this] {
        sayHelp();
        focusLine();
    });
}

void StationPage::guarded(const std::function<void()>& work) {
    try {
        work();
    } catch (const BadInput& error) {
        say(tr("Found %1, expected %2.").arg(said(error.found()), said(error.expected())), true);
    } catch (const std::exception& error) {
        say(said(error), true);
    }
}

// The page is everybody's: whom the window has chosen elsewhere says nothing here.
void StationPage::setAthleteAndLift(std::optional<AthleteId>, std::optional<LiftId>) {
    reload();
}

void StationPage::refresh(Logbook::What what, SessionId session) {
    using What = Logbook::What;
    if (m_writing)
        return; // what is being written is shown once it stands
    guarded([&] {
        const bool ofOne = what == What::Sets || what == What::Battery;
        if (!ofOne || raw(session) == 0 || !m_work) {
            reload();
            return;
        }
        const auto at = rowOf(m_logbook.log().session(session).head.value.athlete);
        if (!at)
            return;
        const int done = m_here[*at].done();
        readAnew(*at);
        // As after Enter: done again, or entered at another window.
        if (at == m_turn && m_work->station.value.rotates && m_line->text().isEmpty() &&
            m_here[*at].done() > done)
            setTurn(answers::nextTurn(due(), at));
        showAll();
    });
}

void StationPage::focusLine() {
    (m_line->isEnabled() ? static_cast<QWidget*>(m_line) : static_cast<QWidget*>(m_begin))
        ->setFocus(Qt::ShortcutFocusReason);
}

std::optional<StationId> StationPage::station() const {
    const QVariant key = m_stations->currentData();
    return key.isValid() ? std::optional(StationId{key.toLongLong()}) : std::nullopt;
}

void StationPage::chooseStation(StationId station) {
    const int at = m_stations->findData(qint64(raw(station)));
    if (at < 0 || at == m_stations->currentIndex())
        return;
    m_stations->setCurrentIndex(at);
    guarded([this] { readAll(); });
}

std::optional<AthleteId> StationPage::turn() const {
    return m_turn ? std::optional(m_here[*m_turn].athlete.id) : std::nullopt;
}

bool StationPage::goTo(AthleteId athlete) {
    const auto at = rowOf(athlete);
    if (at)
        setTurn(at);
    return at.has_value();
}

bool StationPage::goTo(AthleteId athlete, std::optional<LiftId> lift,
                       std::optional<SessionId> session) {
    const log::Log& log = m_logbook.log();
    if (session && log.session(*session).head.value.date != m_clock.today())
        return false;
    const auto fits = [&](const Station& one) {
        return lift ? one.lift == lift : !one.tests.empty();
    };
    if (m_work && fits(m_work->station.value) && goTo(athlete))
        return true;
    for (const auto& one : log.stations()) {
        const Roster roster = log.roster(one.id, m_clock.today());
        if (!fits(one.value) ||
            std::ranges::find(roster.athletes, athlete) == roster.athletes.end())
            continue;
        chooseStation(one.id);
        return goTo(athlete);
    }
    return false;
}

bool StationPage::shows(AthleteId athlete, std::optional<LiftId> lift) const {
    const bool here = m_work && turn() == athlete;
    return here && (lift ? m_work->station.value.lift == lift : !m_work->tests.empty());
}

void StationPage::addStation() {
    StationDialog dialog(m_logbook, {}, this);
    if (dialog.exec() != QDialog::Accepted || !dialog.station())
        return;
    reload();
    chooseStation(*dialog.station());
    if (m_here.empty())
        chooseWho();
}

void StationPage::changeStation() {
    if (const auto id = station()) {
        StationDialog(m_logbook, id, this).exec();
        reload();
        focusLine();
    }
}

void StationPage::chooseWho() {
    if (const auto id = station()) {
        RosterDialog(m_logbook, *id, m_work ? m_day : m_clock.today(), this).exec();
        reload();
        focusLine();
    }
}

QStringList StationPage::unwritten() const {
    auto all = m_drafts;
    if (m_turn && m_work && !m_line->text().isEmpty())
        all[{m_work->station.id, m_here[*m_turn].athlete.id}] = m_line->text();
    QStringList kept;
    for (const auto& [whose, line] : all)
        kept << QStringList{nameOf(m_logbook.log().file()), text(isoDate(m_day)),
                            QString::number(raw(whose.first)), QString::number(raw(whose.second)),
                            line}
                    .join(QLatin1Char('\n'));
    return kept;
}

void StationPage::takeUnwritten(const QStringList& kept) {
    for (const QString& one : kept) {
        const QStringList parts = one.split(QLatin1Char('\n'));
        if (parts.size() == 5 && parts[0] == nameOf(m_logbook.log().file()) &&
            parts[1] == text(isoDate(m_clock.today())))
            m_drafts[{StationId{parts[2].toLongLong()}, AthleteId{parts[3].toLongLong()}}] =
                parts[4];
    }
    if (!m_turn || !m_line->text().isEmpty())
        return;
    const auto own = m_drafts.find({m_work->station.id, m_here[*m_turn].athlete.id});
    if (own != m_drafts.end())
        m_line->setText(own->second);
}

QString StationPage::answer() const {
    return m_words;
}

std::vector<std::string> StationPage::names() const {
    std::vector<std::string> all;
    for (const questions::AtStation& at : m_here)
        all.push_back(at.athlete.value.name);
    return all;
}

std::vector<bool> StationPage::due() const {
    std::vector<bool> all;
    for (const questions::AtStation& at : m_here)
        all.push_back(at.isDue());
    return all;
}

std::optional<std::size_t> StationPage::rowOf(AthleteId athlete) const {
    for (std::size_t i = 0; i < m_here.size(); ++i)
        if (m_here[i].athlete.id == athlete)
            return i;
    return std::nullopt;
}

/// The test that an attempt of theirs is of: the one that is chosen for whose turn it is, and for
/// somebody named the one that is due for them.
const Stored<TestKindId, TestKind>* StationPage::testOf(std::optional<std::size_t> who) const {
    if (!m_work || m_work->lift || m_work->tests.empty())
        return nullptr;
    std::size_t at = static_cast<std::size_t>(std::max(0, m_tests->currentIndex()));
    if (who && who != m_turn && m_here[*who].tests.next)
        at = m_here[*who].tests.next->test;
    return &m_work->tests[std::min(at, m_work->tests.size() - 1)];
}

LineAt StationPage::lineAt(std::optional<std::size_t> who) const {
    LineAt at{.bare = massUnit(m_logbook.loadUnit())};
    if (const auto* kind = testOf(who)) {
        at.test = &kind->value;
        if (who && m_here[*who].tests.next)
            at.due = m_here[*who].tests.next->side;
    }
    return at;
}

DayLine StationPage::read(const QString& line) const {
    const DayLine first = readDayLine(view(line), lineAt(m_turn), names());
    if (!first.who || first.who == m_turn)
        return first;
    return readDayLine(view(line), lineAt(first.who), names()); // theirs may be another test
}

} // namespace slopebook::ui
