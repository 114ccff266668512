// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/parabola.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <set>

namespace slopebook::stats {

double Parabola::s() const {
    return std::sqrt(rss / df);
}

double Parabola::leverage(double x) const {
    const double z = (x - centre) / scale;
    const std::array<double, 3> basis{1, z, degree > 1 ? z * z : 0};
    double sum = 0;
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j)
            sum += basis[i] * inverse[i][j] * basis[j];
    return sum;
}

std::optional<Parabola> fitParabola(std::span<const double> x, std::span<const double> y,
                                    int degree) {
    Parabola fit;
    fit.degree = degree;
    fit.n = static_cast<int>(x.size());
    fit.df = fit.n - degree - 1;
    const auto distinct = std::set<double>(x.begin(), x.end()).size();
    if (distinct < static_cast<std::size_t>(degree) + 1 || fit.df <= 0)
        return std::nullopt;
    const auto [low, high] = std::minmax_element(x.begin(), x.end());
    fit.xMin = *low;
    fit.xMax = *high;
    fit.centre = fit.xMin + (fit.xMax - fit.xMin) / 2;
    fit.scale = (fit.xMax - fit.xMin) / 2;
    double yMean = 0;
    for (const double value : y)
        yMean += value / fit.n;
    Eigen::MatrixXd design(fit.n, degree + 1);
    Eigen::VectorXd response(fit.n);
    for (int i = 0; i < fit.n; ++i) {
        const double z = (x[static_cast<std::size_t>(i)] - fit.centre) / fit.scale;
        for (int power = 0; power <= degree; ++power)
            design(i, power) = std::pow(z, power);
        response(i) = y[static_cast<std::size_t>(i)] - yMean;
    }
    const Eigen::HouseholderQR<Eigen::MatrixXd> qr(design);
    const Eigen::VectorXd g = qr.solve(response);
    fit.rss = (response - design * g).squaredNorm();
    const double total = response.squaredNorm();
    fit.r2 = total > 0 ? 1 - fit.rss / total : 1;
    const Eigen::MatrixXd r = qr.matrixQR().topRows(degree + 1).triangularView<Eigen::Upper>();
    const Eigen::MatrixXd rInverse = r.inverse();
    const Eigen::MatrixXd inverse = rInverse * rInverse.transpose();
    for (int i = 0; i <= degree; ++i)
        for (int j = 0; j <= degree; ++j)
            fit.inverse[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)] = inverse(i, j);
    // back from z = (x - centre) / scale
    const double g2 = degree > 1 ? g(2) / (fit.scale * fit.scale) : 0;
    const double g1 = g(1) / fit.scale;
    fit.c = {yMean + g(0) - g1 * fit.centre + g2 * fit.centre * fit.centre,
             g1 - 2 * g2 * fit.centre, g2};
    return fit;
}

Interval predictionInterval(const Parabola& fit, double x, double level) {
    const double half = tCritical(level, fit.df) * fit.s() * std::sqrt(1 + fit.leverage(x));
    return {fit.at(x) - half, fit.at(x) + half};
}

} // namespace slopebook::stats
