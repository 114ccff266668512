// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/patience.h"

#include "core/model/phrases/meetings.h"

#include <thread>
#include <utility>

namespace slopebook::meetings {

namespace {
constexpr std::chrono::milliseconds looksEvery{20};
} // namespace

WaitsForPause::WaitsForPause(const Patience& patience)
    : LogError(
          Kind::Busy,
          say("What is one thing here and in the store is put together in one go, which gives way "
              "to what is entered: it waits until nothing is entered for %1 s. Nothing is lost; "
              "the next meeting tries it again.",
              static_cast<int>(
                  std::chrono::duration_cast<std::chrono::seconds>(patience.pause).count()))) {}

void Pauses::await(Quiet quiet) {
    using Clock = std::chrono::steady_clock;
    auto last = Clock::now();
    if (!m_since)
        m_since = last;
    long version = m_log.dataVersion();
    for (auto now = last; now - last < m_patience.pause; now = Clock::now()) {
        if (now - *m_since >= m_patience.longest)
            throw WaitsForPause(m_patience);
        tell(m_progress, 0, 0);
        std::this_thread::sleep_for(looksEvery);
        const long is = m_log.dataVersion();
        if (std::exchange(version, is) != is || (quiet == Quiet::NobodyTypes && m_typists.now()))
            last = Clock::now();
    }
}

} // namespace slopebook::meetings
