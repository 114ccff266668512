// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace slopebook::stats {

/// What a positive figure is likely to be: its logarithm is normal.
struct LogNormal {
    double median = 0;
    double logSd = 0;
};

} // namespace slopebook::stats
