// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/typing.h"

#include <QCoreApplication>
#include <QEvent>

#include <thread>

namespace slopebook::ui {

namespace {
using namespace std::chrono_literals;
using Time = std::chrono::steady_clock;
constexpr auto typingPause = 400ms; ///< between two keys of a line it is less
constexpr auto longestTyping = 1s;  ///< who types on and on holds nobody up for good
constexpr auto looksEvery = 10ms;
} // namespace

Typing::Typing(QObject* parent)
    : QObject(parent),
      m_last(std::make_shared<std::atomic<Time::duration>>(Time::duration::min() / 2)) {
    qApp->installEventFilter(this);
}

bool Typing::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress)
        *m_last = Time::now().time_since_epoch();
    return QObject::eventFilter(watched, event);
}

Progress Typing::givingWay(const Last& last, const Progress& work) {
    return [work, last](std::int64_t done, std::int64_t total) {
        const auto begin = Time::now();
        bool goesOn = work(done, total);
        while (total > 0 && goesOn && Time::now() - begin < longestTyping &&
               Time::now().time_since_epoch() - last->load() < typingPause) {
            std::this_thread::sleep_for(looksEvery);
            goesOn = work(0, 0);
        }
        return goesOn;
    };
}

} // namespace slopebook::ui
