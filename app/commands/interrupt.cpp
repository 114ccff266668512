// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/interrupt.h"

#include <chrono>
#include <cstdio>
#include <unistd.h>

namespace slopebook::app {

namespace {

volatile std::sig_atomic_t stopSignal = 0; // the signal

extern "C" void askToStop(int signal) {
    stopSignal = signal;
}

} // namespace

Interruptible::Interruptible() {
    struct sigaction action {};
    action.sa_handler = askToStop;
    sigemptyset(&action.sa_mask);
    action.sa_flags = SA_RESTART;
    for (const int signal : {SIGINT, SIGTERM, SIGHUP}) {
        Before before{.signal = signal};
        if (::sigaction(signal, nullptr, &before.action) != 0 ||
            before.action.sa_handler == SIG_IGN)
            continue;
        if (::sigaction(signal, &action, nullptr) == 0)
            m_before.push_back(before);
    }
}

Interruptible::~Interruptible() {
    for (const Before& before : m_before)
        ::sigaction(before.signal, &before.action, nullptr);
    if (m_shown)
        std::fputs("\r      \r", stderr);
}

Progress Interruptible::progress() {
    using Clock = std::chrono::steady_clock;
    const bool shows = ::isatty(STDERR_FILENO) == 1;
    return [this, shows, told = Clock::now()](std::int64_t done, std::int64_t total) mutable {
        constexpr std::chrono::milliseconds tellEvery{200};
        if (shows && total > 1 && Clock::now() - told > tellEvery) {
            told = Clock::now();
            m_shown = true;
            std::fprintf(stderr, "\r%3lld %%", static_cast<long long>(done * 100 / total));
            std::fflush(stderr);
        }
        return stopSignal == 0;
    };
}

void endByInterrupt() {
    if (stopSignal == 0)
        return;
    std::signal(stopSignal, SIG_DFL);
    std::raise(stopSignal);
}

} // namespace slopebook::app
