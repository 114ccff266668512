// SPDX-License-Identifier: GPL-3.0-or-later
// How the benches tell time: by the processor, which what other programs do is not in.
#pragma once

#include <algorithm>
#include <cstddef>
#include <ctime>
#include <vector>

namespace slopebook::bench {

inline double milliseconds(clockid_t clock) {
    timespec now{};
    clock_gettime(clock, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

inline double quantile(std::vector<double> values, double p) {
    std::ranges::sort(values);
    return values[static_cast<std::size_t>(p * static_cast<double>(values.size() - 1))];
}

/// ms of the processor that the work takes, of all threads.
template <class Work>
double worked(const Work& work) {
    const double from = milliseconds(CLOCK_PROCESS_CPUTIME_ID);
    work();
    return milliseconds(CLOCK_PROCESS_CPUTIME_ID) - from;
}

/// The median of so many runs.
template <class Work>
double median(const Work& work, int runs = 7) {
    std::vector<double> times;
    for (int i = 0; i < runs; ++i)
        times.push_back(worked(work));
    return quantile(times, 0.5);
}

} // namespace slopebook::bench
