// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/traces/savitzkygolay.h"

#include <Eigen/Dense>

#include <cmath>

namespace slopebook::traces {
namespace {

double weigh(std::span<const double> values, std::size_t first, const std::vector<double>& weights,
             bool smooths) {
    // Around the window's first value, so that a large offset costs no digits of a derivative.
    const double* value = values.data() + first;
    const double* weight = weights.data();
    const double* const end = weight + weights.size();
    const double origin = *value;
    double sum = 0;
    for (; weight != end; ++weight, ++value)
        sum += *weight * (*value - origin);
    return smooths ? sum + origin : sum;
}

} // namespace

std::vector<double> savitzkyGolayWeights(int points, int order, int derivative, int position) {
    const int half = points / 2;
    const double scale = half > 0 ? half : 1; // keeps the powers within -1..1
    Eigen::MatrixXd powers(points, order + 1);
    for (int i = 0; i < points; ++i)
        for (int j = 0; j <= order; ++j)
            powers(i, j) = std::pow((i - half) / scale, j);
    Eigen::VectorXd target(order + 1);
    for (int j = 0; j <= order; ++j) {
        double factor = 1;
        for (int k = 0; k < derivative; ++k)
            factor *= j - k;
        target(j) = j < derivative ? 0 : factor * std::pow(position / scale, j - derivative);
    }
    // weights = Q R^-T target, the least-norm solution of powers' w = target.
    const Eigen::VectorXd w = powers.transpose().completeOrthogonalDecomposition().solve(target);
    const double step = std::pow(scale, derivative);
    std::vector<double> weights(static_cast<std::size_t>(points));
    for (int i = 0; i < points; ++i)
        weights[static_cast<std::size_t>(i)] = w(i) / step;
    return weights;
}

std::vector<double> savitzkyGolay(std::span<const double> values, double rate, int points,
                                  int order, int derivative) {
    const std::size_t n = values.size();
    const std::size_t half = static_cast<std::size_t>(points / 2);
    const double scale = std::pow(rate, derivative);
    const bool smooths = derivative == 0;
    std::vector<double> result(n);
    const std::vector<double> middle = savitzkyGolayWeights(points, order, derivative);
    for (std::size_t i = half; i + half < n; ++i)
        result[i] = scale * weigh(values, i - half, middle, smooths);
    for (std::size_t i = 0; i < half; ++i) {
        const int off = static_cast<int>(half - i);
        result[i] = scale * weigh(values, 0, savitzkyGolayWeights(points, order, derivative, -off),
                                  smooths);
        result[n - 1 - i] =
            scale * weigh(values, n - static_cast<std::size_t>(points),
                          savitzkyGolayWeights(points, order, derivative, off), smooths);
    }
    return result;
}

} // namespace slopebook::traces
