// SPDX-License-Identifier: GPL-3.0-or-later
// What the window costs on a large log beside a small one, in one run:
//   slopebook_bench_window LOG SAMPLE LONE ATHLETE [opening | pages | writes | keys]
//   slopebook_bench_window LOG SAMPLE SQUAD ATHLETE everybody
// SAMPLE: what opening is measured against; LONE: a log of that athlete alone, what the pages are
// measured against; SQUAD: one of all who do the athlete's lift, what the pages of everybody are
// measured against. What a page works out behind its bar is waited out to its end. Writes sets into
// copies of its own only. Figures are medians of the processor's time: what other programs do on
// the machine is not in it, waits for the disk neither; keys and opening are told in wall time as
// well. Needs no display: QT_QPA_PLATFORM=offscreen.
#include "core/log/history.h"
#include "core/questions/liftcontext.h"
#include "tests/bench/timing.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <cstdio>
#include <functional>
#include <memory>
#include <sys/resource.h>
#include <tuple>

using namespace slopebook;
using namespace slopebook::ui;
using bench::milliseconds;
using bench::quantile;

namespace {

constexpr int openings = 15;
constexpr int visits = 5;
constexpr int keyPresses = 300;
constexpr int setsASession = 12;
constexpr int earlierSessions = 50;

Date today() {
    return Date{std::chrono::year{2026}, std::chrono::month{5}, std::chrono::day{11}};
}

/// ms since it was made, by the clock on the wall and by the processor: of this thread, which what
/// a window does beside itself is not in, and of all of them.
class Timer {
public:
    double wall() const { return milliseconds(CLOCK_MONOTONIC) - m_wall; }
    double own() const { return milliseconds(CLOCK_THREAD_CPUTIME_ID) - m_own; }
    double worked() const { return milliseconds(CLOCK_PROCESS_CPUTIME_ID) - m_worked; }

private:
    double m_wall = milliseconds(CLOCK_MONOTONIC);
    double m_own = milliseconds(CLOCK_THREAD_CPUTIME_ID);
    double m_worked = milliseconds(CLOCK_PROCESS_CPUTIME_ID);
};

/// Sees when the widget was painted last.
class PaintWatch final : public QObject {
public:
    explicit PaintWatch(QWidget* widget) { widget->installEventFilter(this); }
    bool painted = false;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint)
            painted = true;
        return QObject::eventFilter(watched, event);
    }
};

Surroundings surroundings() {
    Surroundings made;
    made.clock = today;
    return made;
}

std::unique_ptr<MainWindow> opened(const QString& file) {
    auto window = std::make_unique<MainWindow>(surroundings());
    window->resize(1280, 720);
    window->show();
    window->openLogFile(file);
    if (window->workspace() == nullptr)
        qFatal("The log did not open.");
    QCoreApplication::processEvents();
    window->repaint();
    return window;
}

struct Opening {
    std::vector<double> wall, own;
    void measure(const QString& file) {
        const Timer timer;
        const auto window = opened(file);
        wall.push_back(timer.wall());
        own.push_back(timer.own());
    }
};

/// Of all pages but the first, which are made when they are first shown.
double timeToMakePages(const QString& file) {
    const auto window = opened(file);
    std::vector<std::unique_ptr<TaskPage>> made;
    const Timer timer;
    for (const PageEntry& entry : pages())
        if (entry.page != window->workspace()->page())
            made.emplace_back(entry.make(window->workspace()->logbook(), today).page);
    return timer.own();
}

void compareOpening(const QString& file, const QString& sample) {
    Opening().measure(sample);
    Opening here, there;
    std::vector<double> others;
    for (int i = 0; i < openings; ++i) {
        here.measure(file);
        there.measure(sample);
        others.push_back(timeToMakePages(sample));
    }
    const double ofSample = quantile(there.own, 0.5);
    std::printf(
        "opening the window, ms: %.1f (wall %.1f); the sample: %.1f (wall %.1f); ratio %.2f\n",
        quantile(here.own, 0.5), quantile(here.wall, 0.5), ofSample, quantile(there.wall, 0.5),
        quantile(here.own, 0.5) / ofSample);
    std::printf("making the other pages, ms: %.1f; opening with them against without: %.2f\n",
                quantile(others, 0.5), (ofSample + quantile(others, 0.5)) / ofSample);
}

/// Types the athlete's name, as a coach does, and takes the first lift that they did.
void choose(const MainWindow& window, const QString& athlete) {
    Workspace& workspace = *window.workspace();
    window.actions().findAthlete->trigger();
    QTest::keyClicks(window.focusWidget(), athlete);
    QTest::keyClick(window.focusWidget(), Qt::Key_Return);
    QCoreApplication::processEvents();
    if (workspace.athleteName() != athlete)
        qFatal("No such athlete.");
    for (const auto& lift : workspace.logbook().log().lifts())
        if (!workspace.logbook().log().liftSessions({*workspace.athlete(), lift.id}).empty()) {
            workspace.choose({}, lift.id);
            return;
        }
    qFatal("That athlete has no sessions.");
}

/// Until a page's work behind its bar is done: it shows its button to stop while it lasts.
void waitOut(const TaskPage& page) {
    QCoreApplication::processEvents();
    const auto* stop = page.findChild<QPushButton*>(QStringLiteral("stop"));
    while (stop != nullptr && stop->isVisible())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
}

struct Shown {
    double first = 0; ///< made, and what it asks of everybody read
    double again = 0; ///< anew for the athlete
};

/// ms of the processor.
Shown timeToShow(MainWindow& window, Page which) {
    const auto athlete = window.workspace()->athlete();
    const auto lift = window.workspace()->lift();
    const Timer made;
    window.workspace()->showPage(which);
    TaskPage* page = window.workspace()->currentPage();
    waitOut(*page);
    page->repaint();
    const double first = made.worked();
    std::vector<double> times;
    for (int visit = 0; visit < visits; ++visit) {
        page->setAthleteAndLift(std::nullopt, lift);
        waitOut(*page);
        const Timer timer;
        page->setAthleteAndLift(athlete, lift);
        waitOut(*page);
        page->repaint();
        times.push_back(timer.worked());
    }
    return {first, quantile(times, 0.5)};
}

/// Of the pages that are wanted.
void printPages(MainWindow& here, MainWindow& alone, bool everybodys) {
    std::printf("\npage, ms      first    here   alone  ratio\n");
    for (const PageEntry& entry : pages()) {
        if (everybodys && entry.part != Part::Squad)
            continue;
        const Shown ofLog = timeToShow(here, entry.page);
        const Shown ofLone = timeToShow(alone, entry.page);
        std::printf("%-11s %7.1f %7.1f %7.1f %6.2f\n", entry.word, ofLog.first, ofLog.again,
                    ofLone.again, ofLog.again / ofLone.again);
    }
}

void comparePages(const QString& file, const QString& lone, const QString& athlete,
                  bool everybodys) {
    const auto here = opened(file);
    choose(*here, athlete);
    const auto alone = opened(lone);
    choose(*alone, athlete);
    printPages(*here, *alone, everybodys);
}

/// What else the athlete's lift is behind at: everybody's sessions of it.
void compareContexts(Logbook& book, LiftId lift, const std::function<void()>& write) {
    std::vector<double> anew, kept;
    std::ignore = book.context(lift);
    for (int visit = 0; visit < visits; ++visit) {
        write();
        const Timer first;
        std::ignore = book.context(lift);
        kept.push_back(first.worked());
        const Timer second;
        std::ignore = questions::liftContext(book.log(), lift);
        anew.push_back(second.worked());
    }
    std::printf("\neverybody's sessions of the lift after a write, ms: kept %.1f, read anew %.1f\n",
                quantile(kept, 0.5), quantile(anew, 0.5));
}

/// Every page visited as it is found behind, with a write of our own just before and without, in
/// turn.
void compareWrites(const QString& file, const QString& athlete) {
    const auto window = opened(file);
    choose(*window, athlete);
    Workspace& work = *window->workspace();
    Logbook& book = work.logbook();
    const LiftId lift = *work.lift();
    const auto lifts = book.log().lifts();
    const LiftId other = lifts[lifts[0].id == lift ? 1 : 0].id;
    const auto sessions = book.log().liftSessions({work.athlete(), lift});
    const auto placed = book.log().sets(sessions.back().session, lift).back();
    int count = 0;
    const auto write = [&] {
        Set changed = placed.set;
        changed.note = "write " + std::to_string(++count);
        book.changeSet(placed.id, changed);
    };
    const auto visit = [&](Page page, bool written) {
        work.showPage(page == Page::Stations ? Page::Session : Page::Stations);
        work.choose({}, other);
        work.choose({}, lift);
        if (written)
            write();
        QCoreApplication::processEvents();
        const Timer timer;
        work.showPage(page);
        QCoreApplication::processEvents();
        work.currentPage()->repaint();
        return timer.worked();
    };
    std::printf("\npage, ms    no write  after one  ratio\n");
    for (const PageEntry& entry : pages()) {
        std::vector<double> without, with;
        visit(entry.page, true);
        for (int i = 0; i < 2 * visits; ++i) {
            without.push_back(visit(entry.page, false));
            with.push_back(visit(entry.page, true));
        }
        std::printf("%-11s %8.1f %10.1f %6.2f\n", entry.word, quantile(without, 0.5),
                    quantile(with, 0.5), quantile(with, 0.5) / quantile(without, 0.5));
    }
    compareContexts(book, lift, write);
}

/// As many earlier sessions as the form's chart can show, of the lift that the athlete does.
void addEarlierSessions(const QString& file, const QString& name) {
    log::Log log = log::Log::open(file.toStdString());
    const auto found = log::athletes(log, {.find = name.toStdString(), .after = {}});
    const AthleteId athlete = found.at(0).id;
    const LiftId lift = log.liftsOf(athlete).at(0);
    log.together([&] {
        for (int i = 0; i < earlierSessions; ++i) {
            const Date date{std::chrono::sys_days{std::chrono::year{2025} / 1 / 1} +
                            std::chrono::days{7 * i}};
            const SessionId session = log.add(SessionHead{.athlete = athlete, .date = date});
            for (int set = 0; set < 6; ++set)
                log.add(session, lift,
                        {.load = Mass{40'000 + 8'000 * set},
                         .reps = {{.velocity = 1.2 - 0.1 * set + 0.01 * (i % 7)}}});
        }
    });
}

/// From the key that ends a set's line to its point on the screen, the set on disk in between.
void measureKeys(const QString& file, const QString& athlete) {
    const auto window = opened(file);
    choose(*window, athlete);
    window->workspace()->showPage(Page::Session);
    EntryPage& page = window->workspace()->entry();
    page.findChild<QSpinBox*>(QStringLiteral("earlier"))->setValue(earlierSessions);
    auto* line = page.findChild<QLineEdit*>(QStringLiteral("setLine"));
    auto* chart = page.findChild<charts::LineChart*>();
    PaintWatch watch(chart->viewport());
    std::vector<double> times, worked, untilIdle;
    for (int i = 0; i < keyPresses; ++i) {
        if (i % setsASession == 0)
            page.beginSession();
        const int number = i % setsASession;
        QTest::keyClicks(line, QStringLiteral("%1 %2 %3")
                                   .arg(40 + 5 * number)
                                   .arg(1.2 - 0.06 * number, 0, 'f', 2)
                                   .arg(1.18 - 0.06 * number, 0, 'f', 2));
        QTest::qWait(20);
        watch.painted = false;
        const Timer timer;
        QTest::keyClick(line, Qt::Key_Return);
        while (!watch.painted && timer.wall() < 2000)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
        times.push_back(timer.wall());
        worked.push_back(timer.worked());
        for (int more = 0; more < 5; ++more)
            QCoreApplication::processEvents();
        untilIdle.push_back(timer.worked());
    }
    std::printf("\nkey press to drawn point (%zu lines on the chart), ms: wall median %.1f, p99 "
                "%.1f; processor median %.1f, p99 %.1f; processor until idle median %.1f, p99 "
                "%.1f\n",
                chart->data().sessions.size(), quantile(times, 0.5), quantile(times, 0.99),
                quantile(worked, 0.5), quantile(worked, 0.99), quantile(untilIdle, 0.5),
                quantile(untilIdle, 0.99));
}

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() < 5 || arguments.size() > 6) {
        std::fputs("usage: slopebook_bench_window LOG SAMPLE LONE ATHLETE "
                   "[opening | pages | writes | keys | everybody]\n",
                   stderr);
        return 2;
    }
    const QString part = arguments.value(5);
    const auto asked = [&](const char* name) {
        return part.isEmpty() || part == QLatin1String(name);
    };
    if (asked("opening"))
        compareOpening(arguments[1], arguments[2]);
    if (asked("pages"))
        comparePages(arguments[1], arguments[3], arguments[4], false);
    if (part == QLatin1String("everybody"))
        comparePages(arguments[1], arguments[3], arguments[4], true);
    if (asked("writes")) {
        const QTemporaryDir folder(QDir::current().filePath(QStringLiteral("bench-XXXXXX")));
        const QString own = folder.filePath(QStringLiteral("own.slopebook"));
        QFile::copy(arguments[1], own);
        compareWrites(own, arguments[4]);
    }
    if (asked("keys")) {
        const QTemporaryDir folder(QDir::current().filePath(QStringLiteral("bench-XXXXXX")));
        const QString own = folder.filePath(QStringLiteral("own.slopebook"));
        QFile::copy(arguments[1], own);
        addEarlierSessions(own, arguments[4]);
        measureKeys(own, arguments[4]);
    }
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("memory at its most: %ld MB\n", usage.ru_maxrss / 1024);
    return 0;
}
