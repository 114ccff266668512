// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/workspace.h"

#include "core/log/history.h"
#include "core/log/snapshot.h"
#include "ui/athlete/battery/batterypage.h"
#include "ui/athlete/compare/comparepage.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/station/stationpage.h"
#include "ui/window/foot.h"
#include "ui/window/frame.h"
#include "ui/window/index.h"
#include "ui/window/messagebar.h"
#include "ui/window/namecombo.h"
#include "ui/window/pageholder.h"
#include "ui/window/quietlook.h"
#include "ui/window/storeline.h"
#include "ui/window/strip.h"
#include "ui/window/windowtypist.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <utility>

namespace slopebook::ui {

namespace {
constexpr int lookEvery = 2000; // ms: how soon another window's write is seen
constexpr int low = 560;        // px: under that height room is short
} // namespace

Workspace::Workspace(OpenedLog opened, Clock clock, Page first, QWidget* parent)
    : QWidget(parent), m_logbook(std::move(opened.logbook)), m_clock(std::move(clock)),
      m_index(new Index), m_bar(new MessageBar), m_stack(new QStackedWidget), m_strip(new Strip),
      m_foot(new Foot), m_pages(pageCount), m_holders(pageCount, nullptr) {
    m_typist = new WindowTypist(m_logbook->log().file(), this);
    build(first);
    connectParts();
    connectFrame();
    m_day = m_clock.today();
    if (opened.damaged)
        sayDamaged(opened.notice);
    else
        m_bar->showText(opened.notice);
    guarded([this] {
        fillAthletes();
        fillLifts();
    });
    pageTurned();
    tellPages();
}

Workspace::~Workspace() {
    closePages();
}

OpenedLog Workspace::giveUpLog() {
    auto store = m_store ? m_store->kept() : nullptr;
    closePages();
    for (QObject* told : {static_cast<QObject*>(m_index), static_cast<QObject*>(&m_strip->lift()),
                          static_cast<QObject*>(m_logbook.get())})
        told->disconnect(this);
    for (QTimer* timer : findChildren<QTimer*>())
        timer->stop();
    delete std::exchange(m_look, nullptr);
    return {.logbook = std::move(m_logbook),
            .notice = m_bar->text(),
            .damaged = m_damaged,
            .store = std::move(store)};
}

void Workspace::closePages() {
    showStore(nullptr); // it knows the logbook
    delete std::exchange(m_typist, nullptr);
    if (!m_stack)
        return;
    // A cell that is being edited is taken while all still stands. Then the pages, which know the
    // logbook, go first, and nobody is told of it.
    if (QWidget* focus = QApplication::focusWidget(); focus && isAncestorOf(focus))
        focus->clearFocus();
    m_index->disconnect(this);
    m_strip->setParent(this);
    m_strip->hide();
    m_stack->disconnect(this);
    delete std::exchange(m_stack, nullptr);
}

void Workspace::build(Page first) {
    auto* right = new QWidget;
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_bar);
    column->addWidget(m_stack, 1);
    m_footRow = new QHBoxLayout;
    m_footRow->addWidget(m_foot, 1);
    column->addLayout(m_footRow);
    m_frame = new Frame(m_index, right);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_frame);
    for (const PageEntry& entry : pages()) {
        m_last.try_emplace(entry.part, entry.page);
        auto* place = new QScrollArea;
        place->setWidgetResizable(true);
        place->setFrameShape(QFrame::NoFrame);
        place->setFocusPolicy(Qt::NoFocus);
        place->viewport()->setAutoFillBackground(false);
        m_stack->addWidget(place);
    }
    make(first);
    m_stack->setCurrentIndex(static_cast<int>(first));
}

// A page of many athletes may want a session of another than the chosen one: the next set must go
// to whom it shows.
void Workspace::openSession(SessionId session) {
    guarded([&] {
        choose(m_logbook->log().session(session).head.value.athlete, {});
        entry().showSession(session);
        showPage(Page::Session);
    });
}

void Workspace::openComparison(AthleteId athlete, const questions::LiftSide& from,
                               const questions::LiftSide& to) {
    guarded([&] {
        choose(athlete, {});
        showPage(Page::Comparison);
        m_comparison->compare(from, to);
    });
}

void Workspace::focusEntry() {
    if (page() == Page::Session && athlete() && lift())
        m_entry->focusLine();
    else if (page() == Page::Stations)
        m_station->focusLine();
}

void Workspace::connectParts() {
    connect(&m_strip->lift(), &NameCombo::chosenChanged, this, &Workspace::tellPages);
    connect(&m_strip->lift(), &NameCombo::entered, this, &Workspace::focusEntry);
    connect(m_stack, &QStackedWidget::currentChanged, this, [this] {
        m_announced = nullptr;
        catchUp(currentPage());
        pageTurned();
        Q_EMIT pageChanged(page());
    });
    connect(m_logbook.get(), &Logbook::changed, this, &Workspace::changed);
    connect(m_logbook.get(), &Logbook::failed, m_bar,
            [this](const QString& why) { m_bar->showText(why); });
    connect(m_bar, &MessageBar::offerTaken, this, &Workspace::backupsWanted);
    m_look = new QuietLook(
        [this] {
            if (!QApplication::activeModalWidget())
                guarded([this] { m_logbook->lookForOthersWrites(); });
        },
        this);
    auto* look = new QTimer(this);
    connect(look, &QTimer::timeout, this, &Workspace::lookAround);
    look->start(lookEvery);
}

void Workspace::connectFrame() {
    connect(m_index, &Index::chosenChanged, this, &Workspace::tellPages);
    connect(m_index, &Index::pageWanted, this, &Workspace::showPage);
    connect(m_index, &Index::partWanted, this, [this](Part part) { showPage(m_last.at(part)); });
    connect(m_index, &Index::addWanted, this, &Workspace::athleteWanted);
    connect(m_index, &Index::taken, this, [this] {
        m_frame->peek(false);
        focusEntry();
    });
    connect(m_index, &Index::left, this, [this] { m_frame->peek(false); });
    connect(m_frame, &Frame::foldedChanged, this, &Workspace::fitStrip);
    connect(m_strip, &Strip::placeWanted, this, &Workspace::openIndex);
    connect(m_strip, &Strip::addLiftWanted, this, &Workspace::liftWanted);
}

void Workspace::pageTurned() {
    m_last[entryOf(page()).part] = page();
    m_index->showPage(page());
    fitStrip();
}

// Where the index is folded away its choice stands first in the control line.
void Workspace::fitStrip() {
    if (!m_stack)
        return;
    const PageEntry& entry = entryOf(page());
    QString place;
    if (m_frame->folded())
        place = entry.ofAthlete && athlete() ? tr("%1: %2").arg(athleteName(), entry.title())
                                             : entry.title();
    const TaskPage* shown = currentPage();
    const bool ofLift = entry.ofLift && (!shown || shown->isOfLift());
    holderOf(page())->take(m_strip, m_strip->fit(place, ofLift));
}

void Workspace::lookAround() {
    if (QApplication::activeModalWidget()) // an import would keep it waiting
        return;
    m_look->want();
    if (m_entry)
        m_entry->lookAtTheDay();
    if (m_clock.today() == std::exchange(m_day, m_clock.today()))
        return;
    // How old things are is told anew; the session form has its own way.
    for (TaskPage* page : madePages())
        if (page != m_entry)
            m_behind.insert(page);
    catchUp(currentPage());
}

void Workspace::wantLook() {
    m_look->want();
}

void Workspace::showStore(StoreLine* line) {
    delete std::exchange(m_store, line);
    if (line)
        m_footRow->addWidget(line, 0, Qt::AlignRight);
}

void Workspace::say(const QString& message) {
    m_foot->say(message);
}

void Workspace::dress() {
    m_frame->dress();
    m_index->dress();
}

void Workspace::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_foot->setRoomy(height() >= low);
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

Page Workspace::page() const {
    return pages().at(static_cast<std::size_t>(m_stack->currentIndex())).page;
}

void Workspace::showPage(Page page) {
    make(page);
    m_stack->setCurrentIndex(static_cast<int>(page));
}

PageHolder* Workspace::holderOf(Page page) const {
    return m_holders.at(static_cast<std::size_t>(page));
}

TaskPage* Workspace::currentPage() const {
    return holderOf(page())->page();
}

Prints* Workspace::prints() const {
    return m_pages.at(static_cast<std::size_t>(page())).prints;
}

std::optional<AthleteId> Workspace::athlete() const {
    const auto key = m_index->chosen();
    return key ? std::optional(AthleteId{*key}) : std::nullopt;
}

std::optional<LiftId> Workspace::lift() const {
    const auto key = m_strip->lift().chosen();
    return key ? std::optional(LiftId{*key}) : std::nullopt;
}

QString Workspace::athleteName() const {
    return m_index->chosenName();
}

QString Workspace::liftName() const {
    return m_strip->lift().itemText(m_strip->lift().currentIndex());
}

void Workspace::choose(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    if (athlete)
        m_index->choose(raw(*athlete));
    if (lift)
        m_strip->lift().choose(raw(*lift));
}

void Workspace::fillAthletes() {
    m_index->setNames([this](const QString& find, const std::optional<QString>& after, int most) {
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
    m_strip->lift().setNames(std::move(names));
}

void Workspace::tellPages() {
    m_announced = nullptr;
    if (m_frame->folded())
        fitStrip();
    for (TaskPage* page : madePages())
        m_behind.insert(page);
    catchUp(currentPage());
    // The session form always follows: a session asked for from another page is shown in it.
    catchUp(m_entry);
}

void Workspace::catchUp(TaskPage* page) {
    if (!page || m_behind.erase(page) == 0)
        return;
    guarded([&] {
        const log::Moment moment(m_logbook->log());
        page->setStart(start());
        page->setAthleteAndLift(athlete(), lift());
    });
}

void Workspace::changed(Logbook::What what, qint64 session) {
    using What = Logbook::What;
    m_foot->deedDone();
    guarded([&] {
        if (what == What::Athletes || what == What::Everything) {
            fillAthletes();
            if (m_frame->folded())
                fitStrip(); // who is chosen may be called otherwise now
        }
        if (what == What::Lifts || what == What::Everything)
            fillLifts();
    });
    for (TaskPage* page : madePages()) {
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
    if (!entryOf(page()).ofAthlete) // nobody's
        showPage(m_last.at(Part::Athlete));
    openIndex();
}

// The place in the control line opens what was folded away, on the page that is shown.
void Workspace::openIndex() {
    m_frame->peek(true);
    m_index->takeKeys();
}

void Workspace::focusLift() {
    if (!entryOf(page()).ofLift || !currentPage()->isOfLift())
        showPage(Page::Session);
    m_strip->focusLift();
}

} // namespace slopebook::ui
