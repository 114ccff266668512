// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/quantiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <array>
#include <bit>
#include <cmath>
#include <cstdint>

namespace slopebook::stats {

namespace {

namespace bm = boost::math;
// A tail too far out for a double is answered by infinity or zero; a wrong argument still throws.
using Policy = bm::policies::policy<bm::policies::overflow_error<bm::policies::ignore_error>,
                                    bm::policies::underflow_error<bm::policies::ignore_error>,
                                    bm::policies::denorm_error<bm::policies::ignore_error>>;
using StudentsT = bm::students_t_distribution<double, Policy>;
using FisherF = bm::fisher_f_distribution<double, Policy>;
using ChiSquared = bm::chi_squared_distribution<double, Policy>;
using Normal = bm::normal_distribution<double, Policy>;

double tUpperQuantile(double tail, double df) {
    if (std::isinf(df))
        return bm::quantile(bm::complement(Normal(), tail));
    return bm::quantile(bm::complement(StudentsT(df), tail));
}

} // namespace

double tQuantile(double p, double df) {
    return p < 0.5 ? -tUpperQuantile(p, df) : tUpperQuantile(1 - p, df);
}

double tCritical(double level, double df) {
    // Every session's interval asks for the same few: what was worked out last is kept.
    struct Kept {
        double level = 0, df = 0, t = 0;
    };
    thread_local std::array<Kept, 64> kept;
    const std::size_t place = (std::bit_cast<std::uint64_t>(df) * 0x9E3779B97F4A7C15u ^
                               std::bit_cast<std::uint64_t>(level) * 0xC2B2AE3D27D4EB4Fu) >>
                              58;
    Kept& found = kept[place];
    if (found.level != level || found.df != df)
        found = {level, df, tUpperQuantile((1 - level) / 2, df)};
    return found.t;
}

double tTwoSidedP(double t, double df) {
    const double size = std::abs(t);
    if (std::isinf(size))
        return 0;
    if (std::isinf(df))
        return 2 * bm::cdf(bm::complement(Normal(), size));
    return 2 * bm::cdf(bm::complement(StudentsT(df), size));
}

double fQuantile(double p, double df1, double df2) {
    if (std::isinf(df2))
        return bm::quantile(ChiSquared(df1), p) / df1;
    return bm::quantile(FisherF(df1, df2), p);
}

double fTail(double f, double df1, double df2) {
    if (std::isinf(f))
        return 0;
    if (std::isinf(df2))
        return bm::cdf(bm::complement(ChiSquared(df1), f * df1));
    return bm::cdf(bm::complement(FisherF(df1, df2), f));
}

double chiSquareQuantile(double p, double df) {
    return bm::quantile(ChiSquared(df), p);
}

} // namespace slopebook::stats
