// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/storekeeper.h"

#include "core/desks/conflictsides.h"

#include <algorithm>
#include <utility>

namespace slopebook::ui {

namespace {
using namespace std::chrono_literals;

constexpr std::chrono::milliseconds afterEntry = 3s; ///< several sets go together
constexpr std::chrono::milliseconds afterNews = 300ms, afterLoss = 1s, everyMinute = 60s;
constexpr std::chrono::milliseconds seenAfter = 600ms; ///< a short meeting does not flicker
constexpr std::chrono::seconds firstPause = 15s, longestPause = 60s;

bool tookAny(const meetings::MeetingReport& report) {
    return report.came > 0 || !report.taken.nothingNew || !report.departed.empty();
}

void single(QTimer& timer, std::chrono::milliseconds time) {
    timer.setSingleShot(true);
    timer.setInterval(time);
}
} // namespace

StoreKeeper::StoreKeeper(Logbook& logbook, Clock clock, QObject* parent)
    : QObject(parent), m_logbook(logbook), m_clock(std::move(clock)),
      m_desk(std::make_shared<StoreDesk>(logbook.log().file())) {
    single(m_due, 0ms);
    single(m_entered, afterEntry);
    single(m_lasts, seenAfter);
    connect(&m_due, &QTimer::timeout, this, &StoreKeeper::meet);
    connect(&m_entered, &QTimer::timeout, this, &StoreKeeper::lookWhatWaits);
    connect(&m_lasts, &QTimer::timeout, this, [this] {
        m_state.meets = m_meeting;
        Q_EMIT changed();
    });
    connect(&m_logbook, &Logbook::changed, &m_entered, qOverload<>(&QTimer::start));
    connect(&m_work, &LooseWork::stopped, this, [this] {
        m_meeting = false;
        if (std::exchange(m_wanted, false))
            beginMeeting();
    });
    readState();
    m_state.met = QDateTime::fromString(QString::fromStdString(m_state.joined.met), Qt::ISODate);
    const log::Access access = m_logbook.log().access();
    m_able = access == log::Access::ReadWrite;
    if (m_able)
        m_due.start();
    else
        failed(unableToMeet(access, m_clock.now()));
}

std::chrono::seconds StoreKeeper::pauseAfter(int failures) {
    std::chrono::seconds pause = firstPause;
    for (int i = 1; i < failures && pause < longestPause; ++i)
        pause *= 2;
    return std::min(pause, longestPause);
}

// What cannot be read just now is as it was: whoever reads it says why it cannot.
void StoreKeeper::readState() {
    try {
        const auto joined = meetings::joined(m_logbook.log());
        if (!joined) {
            QTimer::singleShot(0, this, &StoreKeeper::left);
            return;
        }
        m_state.joined = *joined;
        m_state.choices = desks::openConflictCount(m_logbook.log());
    } catch (const std::exception&) { // NOLINT(bugprone-empty-catch)
    }
}

void StoreKeeper::lookWhatWaits() {
    const StoreState before = m_state;
    readState();
    if (m_able && !m_meeting && !m_state.trouble && m_state.joined.waiting > m_state.held)
        meet();
    if (before.joined != m_state.joined || before.choices != m_state.choices)
        Q_EMIT changed();
}

void StoreKeeper::meetNow() {
    if (!m_able)
        return;
    m_lasts.stop();
    m_state.meets = true;
    Q_EMIT changed();
    meet();
}

void StoreKeeper::meet() {
    m_due.stop();
    if (m_meeting || m_work.running()) {
        m_wanted = true;
        if (!m_meeting)
            m_work.stop(); // it only waits for news
        return;
    }
    beginMeeting();
}

void StoreKeeper::beginMeeting() {
    m_meeting = true;
    m_wanted = false;
    m_due.stop();
    if (!m_state.meets)
        m_lasts.start();
    const std::string now = m_clock.now().toUTC().toString(Qt::ISODate).toStdString();
    m_work.start([this, desk = m_desk, now,
                  typing = m_typing.last()](const Progress& stop) -> LooseWork::Told {
        MeetingEnd end;
        try {
            end.report = desk->meet(now, Typing::givingWay(typing, stop));
        } catch (const Cancelled&) {
            throw;
        } catch (...) {
            end.error = std::current_exception();
        }
        return [this, end] { meetingEnded(end); };
    });
}

void StoreKeeper::meetIn(std::chrono::milliseconds time) {
    if (!m_due.isActive() || m_due.remainingTimeAsDuration() > time)
        m_due.start(time);
}

void StoreKeeper::meetingEnded(const MeetingEnd& end) {
    m_meeting = false;
    m_lasts.stop();
    m_state.meets = false;
    if (!end.report) {
        failed(troubleOf(end.error, m_clock.now()));
        Q_EMIT tookIn(); // what was taken before it failed stays
        return;
    }
    m_failures = 0;
    m_state.trouble.reset();
    m_state.met = m_clock.now();
    m_state.held = end.report->held;
    if (isNews(*end.report)) {
        m_state.news = *end.report;
        m_state.newsAt = m_state.met;
    }
    readState();
    Q_EMIT changed();
    if (tookAny(*end.report))
        Q_EMIT tookIn();
    if (!end.report->taken.listed.empty())
        Q_EMIT choicesCame();
    if (std::exchange(m_wanted, false)) {
        beginMeeting();
        return;
    }
    meetIn(everyMinute);
    listen();
}

void StoreKeeper::failed(StoreTrouble now) {
    const bool first = !m_state.trouble;
    const bool tell = first || (now.waitsForCoach && !m_state.trouble->waitsForCoach);
    if (!first)
        now.since = m_state.trouble->since;
    const bool again = m_able && !now.waitsForCoach;
    m_state.trouble = std::move(now);
    readState();
    Q_EMIT changed();
    if (tell)
        Q_EMIT troubleBegan(m_state.trouble->whole());
    m_wanted = false;
    if (again)
        meetIn(pauseAfter(++m_failures));
}

void StoreKeeper::listen() {
    m_work.start([this, desk = m_desk](const Progress& stop) -> LooseWork::Told {
        try {
            desk->waitForNews(stop);
        } catch (const Cancelled&) {
            throw;
        } catch (const std::exception&) {
            return [this] { meetIn(afterLoss); };
        }
        return [this] { meetIn(afterNews); };
    });
}

} // namespace slopebook::ui
