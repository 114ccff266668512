// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/loosework.h"

#include <QMetaObject>

#include <atomic>
#include <chrono>
#include <mutex>
#include <thread>
#include <utility>

namespace slopebook::ui {

namespace {
/// Longer than what asks for it every 50 ms takes to hear of it, shorter than one sees.
constexpr std::chrono::milliseconds aMoment{200};
constexpr std::chrono::milliseconds tellsEvery{50};
} // namespace

/// What both threads know.
struct LooseWork::Run {
    std::mutex mutex;
    LooseWork* owner = nullptr; ///< nobody: it was left
    std::atomic<bool> stops = false;

    /// To be done on the owner's thread, where there is one still.
    template <class Deed>
    void post(const Deed& deed) {
        const std::lock_guard lock(mutex);
        if (owner)
            QMetaObject::invokeMethod(owner, deed, Qt::QueuedConnection);
    }
};

LooseWork::~LooseWork() {
    leave();
}

void LooseWork::start(Work work) {
    leave();
    m_run = std::make_shared<Run>();
    m_run->owner = this;
    std::promise<void> ends;
    m_ended = ends.get_future();
    std::thread([this, run = m_run, work = std::move(work), ends = std::move(ends)]() mutable {
        using Time = std::chrono::steady_clock;
        Time::time_point toldAt = Time::now();
        const Progress progress = [&](std::int64_t done, std::int64_t total) {
            if (total > 0 && Time::now() - toldAt >= tellsEvery) {
                toldAt = Time::now();
                const int thousandths = static_cast<int>(done * 1000 / total);
                run->post([this, run, thousandths] {
                    if (m_run == run)
                        Q_EMIT progressed(thousandths);
                });
            }
            return !run->stops;
        };
        Told told;
        try {
            told = work(progress);
        } catch (const Cancelled&) {
            told = [this] { Q_EMIT stopped(); };
        }
        work = nullptr; // what it holds goes here, on its own thread
        run->post([this, run, told = std::move(told)] { ended(run.get(), told); });
        ends.set_value();
    }).detach();
}

void LooseWork::ended(const Run* run, const Told& told) {
    if (m_run.get() != run)
        return;
    m_run.reset();
    if (told)
        told();
}

void LooseWork::stop() {
    if (m_run)
        m_run->stops = true;
}

void LooseWork::leave() {
    if (!m_run)
        return;
    m_run->stops = true;
    {
        const std::lock_guard lock(m_run->mutex);
        m_run->owner = nullptr;
    }
    m_run.reset();
    m_ended.wait_for(aMoment);
}

} // namespace slopebook::ui
