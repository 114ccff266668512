// SPDX-License-Identifier: GPL-3.0-or-later
// What single points do to a line, and whether the points bend: the second half of line.h.
#include "core/stats/line.h"

#include <Eigen/QR>

#include <cmath>
#include <limits>

namespace slopebook::stats {

namespace {
constexpr double epsilon = std::numeric_limits<double>::epsilon();
}

std::vector<PointDiagnostics> diagnose(const Line& line, std::span<const double> x,
                                       std::span<const double> y) {
    std::vector<PointDiagnostics> points;
    points.reserve(x.size());
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double dx = x[i] - line.xMean;
        PointDiagnostics point;
        point.residual = (y[i] - line.yMean) - line.slope * dx;
        point.leverage = 1.0 / line.n + dx * dx / line.sxx;
        const double free = 1 - point.leverage;
        // A point that alone carries the slope has no residual to judge it by.
        const bool judged = free > 8 * epsilon && line.s2() > 0;
        if (judged) {
            const double own = point.residual * point.residual / free;
            point.cook = own * point.leverage / (2 * line.s2() * free);
            const double rest = line.rss - own;
            if (line.n > 3 && rest > 32 * line.n * epsilon * line.rss)
                point.studentised = point.residual / std::sqrt(free * rest / (line.n - 3));
        }
        points.push_back(point);
    }
    return points;
}

std::optional<Curvature> curvature(std::span<const double> x, std::span<const double> y) {
    const std::optional<Line> line = fitLine(x, y);
    if (!line || line->distinct < 4)
        return std::nullopt;
    // Centred on the mean and scaled to one: powers of raw loads would cost half the digits.
    const auto n = static_cast<Eigen::Index>(x.size());
    const double scale = std::max(line->xMax - line->xMean, line->xMean - line->xMin);
    Eigen::MatrixX3d design(n, 3);
    Eigen::VectorXd left(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const auto k = static_cast<std::size_t>(i);
        const double u = (x[k] - line->xMean) / scale;
        design.row(i) << 1, u, u * u;
        left(i) = (y[k] - line->yMean) - line->slope * (x[k] - line->xMean);
    }
    const Eigen::HouseholderQR<Eigen::MatrixX3d> qr(design);
    const Eigen::VectorXd rotated = qr.householderQ().adjoint() * left;
    const double pivot = qr.matrixQR()(2, 2);
    Curvature bend;
    bend.df = static_cast<double>(n - 3);
    double rss = rotated.tail(n - 3).squaredNorm();
    double own = rotated(2);
    // What rounding leaves of points on a line or a parabola is no scatter and no bend.
    const double ySize = std::abs(line->yMean) + std::sqrt(line->syy);
    const double xSize = std::max(std::abs(line->xMin), std::abs(line->xMax));
    const double rounding = 8 * epsilon * (ySize + std::abs(line->slope) * xSize);
    if (std::abs(own) <= rounding * std::sqrt(static_cast<double>(n)))
        own = 0;
    if (rss <= static_cast<double>(n) * rounding * rounding)
        rss = 0;
    bend.coefficient = own / pivot / (scale * scale);
    const double s = std::sqrt(rss / bend.df);
    if (own == 0)
        bend.p = 1;
    else if (s > 0)
        bend.t = std::copysign(std::abs(own) / s, bend.coefficient);
    else
        bend.t = std::copysign(std::numeric_limits<double>::infinity(), bend.coefficient);
    if (own != 0)
        bend.p = tTwoSidedP(bend.t, bend.df);
    return bend;
}

} // namespace slopebook::stats
