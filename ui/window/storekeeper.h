// SPDX-License-Identifier: GPL-3.0-or-later
// Meets the store by itself while a log is open: at opening, when something was entered, when the
// store tells of news, and every minute; after failures less often, and not before the coach says
// so where the store refuses the login. Nothing in the window waits for it.
#pragma once

#include "ui/edits/logbook.h"
#include "ui/parts/clock.h"
#include "ui/parts/loosework.h"
#include "ui/window/storedesk.h"
#include "ui/window/storewords.h"
#include "ui/window/typing.h"

#include <QObject>
#include <QTimer>

#include <chrono>
#include <memory>

namespace slopebook::ui {

/// The log must meet a store, and be known to be sound.
class StoreKeeper final : public QObject {
    Q_OBJECT
public:
    /// Begins with a meeting. A log that cannot be written, or is damaged, meets nobody, and says
    /// so.
    StoreKeeper(Logbook& logbook, Clock clock, QObject* parent = nullptr);

    const StoreState& state() const { return m_state; }
    QDateTime now() const { return m_clock.now(); }
    /// At once, whatever failed before.
    void meetNow();
    /// Whether the next meeting comes without the coach's asking for it.
    bool meetsByItself() const { return m_meeting || m_due.isActive(); }
    /// How long it waits after so many failures, one after the other.
    static std::chrono::seconds pauseAfter(int failures);

Q_SIGNALS:
    void changed();
    /// A sentence for the coach; once, until it works again.
    void troubleBegan(const QString& why);
    /// Something came, and stands in the log.
    void tookIn();
    /// Something is to be chosen that was not before.
    void choicesCame();
    /// Somebody else took the log out of the store.
    void left();

private:
    void lookWhatWaits();
    void readState();
    void meet();
    void beginMeeting();
    void meetIn(std::chrono::milliseconds time);
    void meetingEnded(const MeetingEnd& end);
    void failed(StoreTrouble why);
    void listen();

    Logbook& m_logbook;
    Clock m_clock;
    std::shared_ptr<StoreDesk> m_desk; ///< of the thread that works
    StoreState m_state;
    Typing m_typing;
    QTimer m_due, m_entered, m_lasts;
    int m_failures = 0;
    bool m_able = true;
    bool m_meeting = false;
    bool m_wanted = false; ///< once what is under way has ended
    LooseWork m_work;      ///< last: it is left before all it tells of goes
};

} // namespace slopebook::ui
