// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/workspace.h"

#include "core/log/history.h"
#include "core/log/hold.h"
#include "core/log/snapshot.h"
#include "ui/athlete/battery/batterypage.h"
#include "ui/athlete/compare/comparepage.h"
#include "ui/athlete/history/historypage.h"
#include "ui/athlete/plan/planpage.h"
#include "ui/athlete/profile/profilepage.h"
#include "ui/athlete/season/seasonpage.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/importing/importtables.h"
#include "ui/importing/tabledialog.h"
#include "ui/records/athletedialog.h"
#include "ui/records/blocksdialog.h"
#include "ui/records/checkloadsdialog.h"
#include "ui/records/devicesdialog.h"
#include "ui/records/liftdialog.h"
#include "ui/squad/blocks/blockspage.h"
#include "ui/squad/changes/squadpage.h"
#include "ui/squad/devices/noisepage.h"
#include "ui/window/messagebar.h"
#include "ui/window/namecombo.h"
#include "ui/window/pageholder.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <utility>

namespace slopebook::ui {

namespace {
constexpr int lookEvery = 2000;     // ms: how soon another window's write is seen
constexpr int messageShown = 10000; // ms
} // namespace

QStringList Workspace::taskNames() {
    return {tr("Session"), tr("Profile"), tr("History"), tr("Comparison"), tr("Season"),
            tr("Battery"), tr("Plan"),    tr("Blocks"),  tr("Squad"),      tr("Noise")};
}

Workspace::Workspace(OpenedLog opened, Clock clock, QWidget* parent)
    : QWidget(parent), m_logbook(std::move(opened.logbook)), m_clock(std::move(clock)),
      m_athlete(new NameCombo), m_lift(new NameCombo), m_message(new QLabel),
      m_messageEnd(new QTimer(this)), m_bar(new MessageBar), m_tabs(new QTabWidget) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 6, 8, 8);
    layout->addWidget(buildChooser());
    layout->addWidget(m_bar);
    layout->addWidget(m_tabs, 1);
    buildTasks();
    connectParts();
    m_day = m_clock.today();
    if (opened.damaged)
        sayDamaged(opened.notice);
    else
        m_bar->showText(opened.notice);
    guarded([this] {
        fillAthletes();
        fillLifts();
    });
    tellPages();
}

Workspace::~Workspace() {
    closeTasks();
}

OpenedLog Workspace::giveUpLog() {
    closeTasks();
    for (QObject* told : {static_cast<QObject*>(m_athlete), static_cast<QObject*>(m_lift),
                          static_cast<QObject*>(m_logbook.get())})
        told->disconnect(this);
    for (QTimer* timer : findChildren<QTimer*>())
        timer->stop();
    return {std::move(m_logbook), m_bar->text(), m_damaged};
}

void Workspace::closeTasks() {
    if (!m_tabs)
        return;
    // A cell that is being edited is taken while all still stands. Then the pages, which know the
    // logbook, go first, and nobody is told of it.
    if (QWidget* focus = QApplication::focusWidget(); focus && isAncestorOf(focus))
        focus->clearFocus();
    m_tabs->disconnect(this);
    delete std::exchange(m_tabs, nullptr);
}

QWidget* Workspace::buildChooser() {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& label, const QString& name, NameCombo* combo,
                         const QString& addName, void (Workspace::*addOne)()) {
        auto* caption = new QLabel(label);
        caption->setBuddy(combo);
        combo->setAccessibleName(name);
        combo->lineEdit()->setAccessibleName(name);
        layout->addWidget(caption);
        layout->addWidget(combo, 3);
        auto* button = new QPushButton(tr("Add…"));
        button->setAccessibleName(addName);
        button->setToolTip(addName);
        button->setMinimumHeight(34);
        connect(button, &QPushButton::clicked, this, addOne);
        layout->addWidget(button);
        layout->addSpacing(8);
    };
    add(tr("&Athlete"), tr("Athlete"), m_athlete, tr("Add athlete"), &Workspace::addAthlete);
    add(tr("Li&ft"), tr("Lift"), m_lift, tr("Add lift"), &Workspace::addLift);
    m_athlete->setObjectName(QStringLiteral("athlete"));
    m_lift->setObjectName(QStringLiteral("lift"));
    m_message->setWordWrap(true);
    m_message->setAccessibleDescription(tr("Messages"));
    m_message->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    layout->addWidget(m_message, 3);
    return row;
}

void Workspace::buildTasks() {
    m_entry = new EntryPage(*m_logbook, m_clock);
    addTask(m_entry);
    addTask(new ProfilePage(*m_logbook, nullptr));
    addTask(new HistoryPage(*m_logbook, nullptr));
    addTask(new ComparePage(*m_logbook, nullptr));
    addTask(new SeasonPage(*m_logbook, nullptr));
    m_battery = new BatteryPage(*m_logbook, m_clock);
    addTask(m_battery);
    connect(m_battery, &BatteryPage::speedsFound, this,
            [this](AthleteId whose, const QString& speeds, VelocityKind kind) {
                m_athlete->choose(raw(whose)); // the trace is theirs, whoever is shown by now
                showTask(0);                   // the session form
                m_entry->offerSpeeds(speeds, kind);
            });
    addTask(new PlanPage(*m_logbook, nullptr, m_clock));
    addTask(new BlocksPage(*m_logbook, m_clock));
    addTask(new SquadPage(*m_logbook, nullptr));
    addTask(new NoisePage(*m_logbook, nullptr));
    m_tabs->tabBar()->setAccessibleName(tr("Tasks"));
}

void Workspace::addTask(TaskPage* page) {
    // A window too small for the page (a small screen at a scale of 2) scrolls it: nothing is cut.
    auto* area = new QScrollArea;
    area->setWidget(new PageHolder(page));
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->viewport()->setAutoFillBackground(false);
    page->setAutoFillBackground(false);
    const int at = m_tabs->addTab(area, taskNames().at(m_tabs->count()));
    m_tabs->setTabToolTip(at, tr("Ctrl+%1").arg((at + 1) % 10));
    connect(page, &TaskPage::message, this, &Workspace::say);
    connect(page, &TaskPage::sessionWanted, this, &Workspace::openSession);
    connect(page, &TaskPage::comparisonWanted, this, &Workspace::openComparison);
}

// A page of many athletes may want a session of another than the chosen one: the next set must go
// to whom it shows.
void Workspace::openSession(SessionId session) {
    guarded([&] {
        m_athlete->choose(raw(m_logbook->log().session(session).head.value.athlete));
        m_entry->showSession(session);
        showTask(0);
    });
}

void Workspace::openComparison(SessionId from, SessionId to) {
    guarded([&] {
        m_athlete->choose(raw(m_logbook->log().session(to).head.value.athlete));
        for (int i = 0; i < m_tabs->count(); ++i)
            if (auto* comparing = dynamic_cast<ComparesSessions*>(pageAt(i))) {
                showTask(i);
                comparing->compareSessions(from, to);
            }
    });
}

// After a choice what is typed next is a set, wherever the keys went before.
void Workspace::focusEntry() {
    if (currentPage() == m_entry && m_athlete->chosen() && m_lift->chosen())
        m_entry->focusLine();
}

void Workspace::connectParts() {
    connect(m_entry, &EntryPage::tablePasted, this, &Workspace::tablePasted);
    connect(m_athlete, &NameCombo::chosenChanged, this, &Workspace::tellPages);
    connect(m_lift, &NameCombo::chosenChanged, this, &Workspace::tellPages);
    for (const NameCombo* combo : {m_athlete, m_lift})
        connect(combo, &NameCombo::entered, this, &Workspace::focusEntry);
    connect(m_tabs, &QTabWidget::currentChanged, this, [this](int task) {
        m_announced = nullptr;
        catchUp(currentPage());
        Q_EMIT taskChanged(task);
    });
    connect(m_logbook.get(), &Logbook::changed, this, &Workspace::changed);
    connect(m_logbook.get(), &Logbook::failed, m_bar,
            [this](const QString& why) { m_bar->showText(why); });
    connect(m_bar, &MessageBar::offerTaken, this, &Workspace::backupsWanted);
    m_messageEnd->setSingleShot(true);
    m_messageEnd->setInterval(messageShown);
    connect(m_messageEnd, &QTimer::timeout, m_message, &QLabel::clear);
    auto* look = new QTimer(this);
    connect(look, &QTimer::timeout, this, &Workspace::lookAround);
    look->start(lookEvery);
}

void Workspace::lookAround() {
    if (QApplication::activeModalWidget()) // an import would keep it waiting
        return;
    guarded([this] { m_logbook->lookForOthersWrites(); });
    m_entry->lookAtTheDay();
    if (m_clock.today() == std::exchange(m_day, m_clock.today()))
        return;
    // How old things are is told anew; the session form has its own way.
    for (int i = 0; i < m_tabs->count(); ++i)
        if (pageAt(i) != m_entry)
            m_behind.insert(pageAt(i));
    catchUp(currentPage());
}

void Workspace::say(const QString& message) {
    m_message->setText(message);
    m_messageEnd->start();
}

void Workspace::sayDamaged(const QString& why) {
    m_damaged = true;
    m_bar->showText(why, tr("Go back to a backup…"));
}

void Workspace::guarded(const std::function<void()>& work) {
    try {
        work();
    } catch (const std::exception& error) {
        m_bar->showText(said(error));
    }
}

int Workspace::task() const {
    return m_tabs->currentIndex();
}

void Workspace::showTask(int task) {
    m_tabs->setCurrentIndex(task);
}

TaskPage* Workspace::pageAt(int task) const {
    const auto* area = qobject_cast<QScrollArea*>(m_tabs->widget(task));
    const auto* holder = area ? qobject_cast<PageHolder*>(area->widget()) : nullptr;
    return holder ? holder->page() : nullptr;
}

TaskPage* Workspace::currentPage() const {
    return pageAt(m_tabs->currentIndex());
}

std::optional<AthleteId> Workspace::athlete() const {
    const auto key = m_athlete->chosen();
    return key ? std::optional(AthleteId{*key}) : std::nullopt;
}

std::optional<LiftId> Workspace::lift() const {
    const auto key = m_lift->chosen();
    return key ? std::optional(LiftId{*key}) : std::nullopt;
}

void Workspace::choose(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    if (athlete)
        m_athlete->choose(raw(*athlete));
    if (lift)
        m_lift->choose(raw(*lift));
}

void Workspace::fillAthletes() {
    m_athlete->setNames([this](const QString& find, const std::optional<QString>& after, int most) {
        log::AthletesQuestion question{.find = utf8(find), .after = {}, .most = most};
        if (after)
            question.after = utf8(*after);
        Names names;
        for (const auto& athlete : log::athletes(m_logbook->log(), question))
            names.emplace_back(raw(athlete.id), text(athlete.value.name));
        return names;
    });
}

void Workspace::fillLifts() {
    Names names;
    for (const auto& lift : m_logbook->log().lifts())
        names.emplace_back(raw(lift.id), text(lift.value.name));
    m_lift->setNames(std::move(names));
}

void Workspace::tellPages() {
    m_announced = nullptr;
    for (int i = 0; i < m_tabs->count(); ++i)
        m_behind.insert(pageAt(i));
    catchUp(currentPage());
    // The session form always follows: a session asked for from another page is shown in it.
    catchUp(m_entry);
}

void Workspace::catchUp(TaskPage* page) {
    if (!page || m_behind.erase(page) == 0)
        return;
    guarded([&] {
        const log::Moment moment(m_logbook->log());
        page->setAthleteAndLift(athlete(), lift());
    });
}

void Workspace::changed(Logbook::What what, qint64 session) {
    using What = Logbook::What;
    guarded([&] {
        if (what == What::Athletes || what == What::Everything)
            fillAthletes();
        if (what == What::Lifts || what == What::Everything)
            fillLifts();
    });
    for (int i = 0; i < m_tabs->count(); ++i) {
        auto* page = pageAt(i);
        if (page == currentPage() || page == m_entry)
            guarded([&] {
                const log::Moment moment(m_logbook->log());
                page->refresh(what, SessionId{session});
            });
        else
            m_behind.insert(page);
    }
}

void Workspace::focusAthlete() {
    m_athlete->setFocus(Qt::ShortcutFocusReason);
    m_athlete->lineEdit()->selectAll();
}

void Workspace::focusLift() {
    m_lift->setFocus(Qt::ShortcutFocusReason);
    m_lift->lineEdit()->selectAll();
}

void Workspace::addAthlete() {
    AthleteDialog dialog(*m_logbook, std::nullopt, this);
    if (dialog.exec() == QDialog::Accepted)
        m_athlete->choose(raw(dialog.id()));
    focusEntry();
}

void Workspace::changeAthlete() {
    guarded([this] {
        if (athlete())
            AthleteDialog(*m_logbook, athlete(), this).exec();
    });
}

void Workspace::addLift() {
    LiftDialog dialog(*m_logbook, std::nullopt, this);
    if (dialog.exec() == QDialog::Accepted)
        m_lift->choose(raw(dialog.id()));
    focusEntry();
}

void Workspace::changeLift() {
    guarded([this] {
        if (lift())
            LiftDialog(*m_logbook, lift(), this).exec();
    });
}

void Workspace::setCheckLoads() {
    guarded([this] {
        if (athlete() && lift())
            CheckLoadsDialog(*m_logbook, *athlete(), *lift(), this).exec();
    });
}

void Workspace::keepDevices() {
    guarded([this] { DevicesDialog(*m_logbook, this).exec(); });
}

void Workspace::keepBlocks() {
    guarded([this] { BlocksDialog(*m_logbook, m_clock, this).exec(); });
}

void Workspace::importCsv(const QStringList& files, ImportMaps& maps) {
    guarded([&] {
        if (importTables(*m_logbook, files, maps, this))
            say(tr("Imported."));
    });
}

void Workspace::importText(const QString& pasted, ImportMaps& maps) {
    guarded([&] {
        log::passHold(m_logbook->log());
        ShownInWindow shown;
        if (athlete())
            shown.athlete = m_logbook->log().athlete(*athlete()).value.name;
        if (lift())
            shown.lift = m_logbook->log().lift(*lift()).value.name;
        shown.day = isoDate(m_entry->session()
                                ? m_logbook->log().session(*m_entry->session()).head.value.date
                                : m_clock.today());
        if (TableDialog(*m_logbook, {.file = {}, .text = utf8(pasted)}, maps, this, shown).exec() ==
            QDialog::Accepted)
            say(tr("Imported."));
    });
}

} // namespace slopebook::ui
