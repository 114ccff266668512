// SPDX-License-Identifier: GPL-3.0-or-later
// How long work tells how far it is, and hears that it is to stop.
#pragma once

#include <cstdint>
#include <exception>
#include <functional>

namespace slopebook {

/// Told how much of how much is done, at least every few milliseconds; returns false to have the
/// work stop. May be empty. Is called on the thread that does the work.
using Progress = std::function<bool(std::int64_t done, std::int64_t total)>;

/// The work was told to stop, and what it had begun has been taken back.
class Cancelled : public std::exception {
public:
    const char* what() const noexcept override { return "Stopped. Nothing was changed."; }
};

/// Tells, and throws Cancelled where the answer is to stop.
inline void tell(const Progress& progress, std::int64_t done, std::int64_t total) {
    if (progress && !progress(done, total))
        throw Cancelled{};
}

/// The progress of a part of the work, which goes from `from` to `to` thousandths of the whole.
inline Progress partOf(const Progress& whole, int from, int to) {
    if (!whole)
        return {};
    return [&whole, from, to](std::int64_t done, std::int64_t total) {
        const double share = total > 0 ? static_cast<double>(done) / static_cast<double>(total) : 1;
        return whole(from + static_cast<std::int64_t>(share * (to - from)), 1000);
    };
}

} // namespace slopebook
