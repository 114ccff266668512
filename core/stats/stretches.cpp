// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/stretches.h"

#include "core/stats/infinity.h"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace slopebook::stats {

namespace {

int signOf(double v) {
    return v > 0 ? 1 : -1;
}

/// No scatter at all: any difference counts.
std::vector<Stretch> withoutScatter(const JohnsonNeyman& p) {
    if (p.d == 0)
        return p.d0 == 0 ? std::vector<Stretch>{}
                         : std::vector<Stretch>{{-infinity, infinity, signOf(p.d0)}};
    const double crossing = p.x0 - p.d0 / p.d;
    return {{-infinity, crossing, -signOf(p.d)}, {crossing, infinity, signOf(p.d)}};
}

/// The statistic |T(x)| - critical(x) over the whole axis, x = centre + scale u / (1 - u^2).
class Statistic {
public:
    Statistic(const TwoLines& lines, const std::function<double(double)>& critical2)
        : m_lines(lines), m_critical2(critical2), m_first2(critical2(lines.first().df())),
          m_second2(critical2(lines.second().df())) {
        const double w1 = lines.first().s2() / lines.first().sxx;
        const double w2 = lines.second().s2() / lines.second().sxx;
        m_centre = (w1 * lines.first().xMean + w2 * lines.second().xMean) / (w1 + w2);
        m_scale = std::max({lines.first().xMax, lines.second().xMax}) -
                  std::min({lines.first().xMin, lines.second().xMin});
    }

    double x(double u) const {
        return std::abs(u) >= 1 ? std::copysign(infinity, u) : m_centre + m_scale * u / (1 - u * u);
    }
    /// u of a finite x.
    double u(double x) const {
        const double k = (x - m_centre) / m_scale;
        return 2 * k / (1 + std::sqrt(1 + 4 * k * k));
    }
    double centre() const { return m_centre; }
    double scale() const { return m_scale; }

    double operator()(double u) const {
        const Line& a = m_lines.first();
        const Line& b = m_lines.second();
        if (std::abs(u) < 1 - 1e-9) {
            const double at = x(u);
            const auto variance = [at](const Line& line) {
                return Variance{std::pow(line.seAt(at), 2), line.df()};
            };
            if (m_lines.variance(at).value > 0)
                return judged(m_lines.difference(at), variance(a), variance(b));
        }
        // Far out only the slopes count.
        return judged(m_lines.d(), {a.s2() / a.sxx, a.df()}, {b.s2() / b.sxx, b.df()});
    }

private:
    double judged(double difference, const Variance& a, const Variance& b) const {
        const double squared = squaredTogether({a, m_first2}, {b, m_second2}, m_critical2);
        return (std::abs(difference) - std::sqrt(squared)) / std::sqrt(a.value + b.value);
    }

    const TwoLines& m_lines;
    const std::function<double(double)>& m_critical2;
    double m_first2, m_second2; ///< critical values of each line alone, squared
    double m_centre = 0, m_scale = 1;
};

struct Sample {
    double u = 0;
    double f = 0;
};

/// Grid with the crossing (where the statistic has its notch) and every turning point between
/// neighbours that might hide two roots.
std::vector<Sample> sampled(const Statistic& statistic, const TwoLines& lines) {
    constexpr int cells = 400;
    std::vector<double> grid;
    for (int i = 0; i <= cells; ++i)
        grid.push_back(-1 + 2.0 * i / cells);
    if (lines.d() != 0) {
        const double at = statistic.centre() - lines.difference(statistic.centre()) / lines.d();
        const double notch = statistic.u(at);
        if (std::abs(notch) < 1)
            grid.push_back(notch);
    }
    std::ranges::sort(grid);
    std::vector<Sample> samples;
    for (const double u : grid)
        samples.push_back({u, statistic(u)});
    std::vector<Sample> turning;
    for (std::size_t i = 1; i + 1 < samples.size(); ++i) {
        const Sample &before = samples[i - 1], &here = samples[i], &after = samples[i + 1];
        const bool peakBelow = here.f < 0 && here.f >= before.f && here.f >= after.f;
        const bool dipAbove = here.f > 0 && here.f <= before.f && here.f <= after.f;
        if (!peakBelow && !dipAbove)
            continue;
        const double side = peakBelow ? -1 : 1;
        const auto [u, f] = boost::math::tools::brent_find_minima(
            [&](double at) { return side * statistic(at); }, before.u, after.u, 26);
        turning.push_back({u, side * f});
    }
    samples.insert(samples.end(), turning.begin(), turning.end());
    std::ranges::sort(samples, {}, &Sample::u);
    return samples;
}

double solve(const Statistic& statistic, const Sample& from, const Sample& to) {
    std::uintmax_t steps = 200;
    const auto bracket =
        boost::math::tools::toms748_solve(statistic, from.u, to.u, from.f, to.f,
                                          boost::math::tools::eps_tolerance<double>(50), steps);
    return statistic.x((bracket.first + bracket.second) / 2);
}

} // namespace

std::vector<Stretch> stretchesOf(const JohnsonNeyman& p) {
    if (p.qx == 0)
        return withoutScatter(p);
    // At x0 the difference is independent of the slopes' difference, so that the discriminant needs
    // no subtraction but one.
    const double edge = std::sqrt(p.qx);
    const double a = (p.d - edge) * (p.d + edge);
    const double half = p.d0 * p.d;
    const double c = (p.d0 - std::sqrt(p.q0)) * (p.d0 + std::sqrt(p.q0));
    const double discriminant = p.q0 * p.d * p.d + p.qx * c;
    if (a == 0) {
        if (half == 0)
            return {};
        const double end = p.x0 - c / (2 * half);
        if (half > 0)
            return {{end, infinity, signOf(p.d)}};
        return {{-infinity, end, -signOf(p.d)}};
    }
    if (a < 0 && discriminant <= 0)
        return {};
    const double larger = -(half + std::copysign(std::sqrt(std::max(discriminant, 0.0)), half));
    const double z1 = larger / a;
    const double z2 = larger == 0 ? z1 : c / larger;
    const double low = p.x0 + std::min(z1, z2), high = p.x0 + std::max(z1, z2);
    if (a < 0) {
        // Between the roots D keeps one sign, that of its mean over the stretch.
        const double middle = p.d0 + p.d * (0.5 * z1 + 0.5 * z2);
        return low < high ? std::vector<Stretch>{{low, high, signOf(middle)}}
                          : std::vector<Stretch>{};
    }
    std::vector<Stretch> outside;
    if (low > -infinity)
        outside.push_back({-infinity, low, -signOf(p.d)});
    if (high < infinity)
        outside.push_back({high, infinity, signOf(p.d)});
    return outside;
}

double squaredTogether(const JudgedVariance& a, const JudgedVariance& b,
                       const std::function<double(double)>& critical2) {
    const Variance whole = sum(a.variance, b.variance);
    if (!(whole.value > 0))
        return 0;
    return std::max({critical2(whole.df) * whole.value, a.critical2 * a.variance.value,
                     b.critical2 * b.variance.value});
}

std::vector<Stretch> stretchesBySearch(const TwoLines& lines,
                                       const std::function<double(double)>& critical2) {
    const Statistic statistic(lines, critical2);
    const std::vector<Sample> samples = sampled(statistic, lines);
    std::vector<Stretch> stretches;
    double from = -infinity;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const bool inside = samples[i].f > 0;
        const bool last = i + 1 == samples.size();
        if (!last && inside == (samples[i + 1].f > 0))
            continue;
        const double end = last                    ? infinity
                           : samples[i].f == 0     ? statistic.x(samples[i].u)
                           : samples[i + 1].f == 0 ? statistic.x(samples[i + 1].u)
                                                   : solve(statistic, samples[i], samples[i + 1]);
        if (inside) {
            const double middle = std::isinf(from) && std::isinf(end) ? statistic.centre()
                                  : std::isinf(from)                  ? end - statistic.scale()
                                  : std::isinf(end)                   ? from + statistic.scale()
                                                                      : (from + end) / 2;
            stretches.push_back({from, end, signOf(lines.difference(middle))});
        }
        from = end;
    }
    return stretches;
}

} // namespace slopebook::stats
