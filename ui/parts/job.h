// SPDX-License-Identifier: GPL-3.0-or-later
// Long work on a thread of its own: the window stays alive, sees how far it is, and can stop it.
#pragma once

#include "core/model/progress.h"

#include <QObject>

#include <atomic>
#include <functional>
#include <future>
#include <memory>
#include <thread>

namespace slopebook::ui {

/// What the work touches must be its own (a log opened by it) or read by nobody else meanwhile.
class Job final : public QObject {
    Q_OBJECT
public:
    using Work = std::function<void(const Progress&)>;

    explicit Job(QObject* parent = nullptr) : QObject(parent) {}
    ~Job() override; ///< stops the work and waits for it

    /// Begins; what ran before is stopped, and of it nothing more is heard.
    void start(Work work);
    /// Asks the work to stop; finished() or stopped() follows.
    void stop();
    bool running() const { return m_running; }
    /// Waits at most that long for the end; where it comes, its signal has been sent. For work that
    /// is mostly short: nothing flickers.
    void waitFor(int ms);

Q_SIGNALS:
    void progressed(int thousandths);
    void finished();
    void stopped();                      ///< by stop(): what it had begun has been taken back
    void failed(const QString& problem); ///< a sentence for the coach

private:
    void end();
    void tellEnd(int run, const std::function<void()>& told);

    std::thread m_thread;
    std::future<void> m_ended; ///< ready once the end has been told
    std::shared_ptr<std::atomic<bool>> m_stop;
    int m_run = 0; ///< which start() it was
    bool m_running = false;
};

} // namespace slopebook::ui
