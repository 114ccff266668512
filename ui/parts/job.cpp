// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/job.h"

#include "ui/words/said.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEvent>
#include <QMetaObject>

#include <chrono>

namespace slopebook::ui {

namespace {
constexpr int tellEvery = 50; // ms
}

Job::~Job() {
    end();
}

void Job::end() {
    stop();
    if (m_thread.joinable())
        m_thread.join();
    m_running = false;
}

void Job::stop() {
    if (m_stop)
        *m_stop = true;
}

void Job::start(Work work) {
    end();
    const int run = ++m_run;
    m_running = true;
    m_stop = std::make_shared<std::atomic<bool>>(false);
    std::promise<void> ended;
    m_ended = ended.get_future();
    m_thread = std::thread(
        [this, run, work = std::move(work), asked = m_stop, ended = std::move(ended)]() mutable {
            QElapsedTimer told;
            told.start();
            const Progress progress = [&](std::int64_t done, std::int64_t total) {
                if (total > 0 && told.elapsed() >= tellEvery) {
                    told.restart();
                    const int thousandths = static_cast<int>(done * 1000 / total);
                    QMetaObject::invokeMethod(
                        this,
                        [this, run, thousandths] {
                            if (run == m_run && m_running)
                                Q_EMIT progressed(thousandths);
                        },
                        Qt::QueuedConnection);
                }
                return !*asked;
            };
            try {
                work(progress);
                tellEnd(run, [this] { Q_EMIT finished(); });
            } catch (const Cancelled&) {
                tellEnd(run, [this] { Q_EMIT stopped(); });
            } catch (const std::exception& error) {
                tellEnd(run, [this, why = said(error)] { Q_EMIT failed(why); });
            }
            ended.set_value();
        });
}

void Job::waitFor(int ms) {
    if (m_running && m_ended.wait_for(std::chrono::milliseconds(ms)) == std::future_status::ready)
        QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
}

void Job::tellEnd(int run, const std::function<void()>& told) {
    QMetaObject::invokeMethod(
        this,
        [this, run, told] {
            if (run != m_run || !m_running)
                return;
            m_running = false;
            told();
        },
        Qt::QueuedConnection);
}

} // namespace slopebook::ui
