// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/remldeviance.h"

#include <Eigen/Eigenvalues>
#include <Eigen/LU>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace slopebook::stats {

namespace {

Eigen::Matrix2d factor(const Eigen::Vector3d& theta) {
    Eigen::Matrix2d lambda;
    lambda << theta(0), 0, theta(1), theta(2);
    return lambda;
}

/// A descent direction even where the curvature is not that of a valley: |eigenvalues| for
/// eigenvalues.
Eigen::Vector3d newtonStep(const Eigen::Matrix3d& curvature, const Eigen::Vector3d& gradient) {
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(curvature);
    const double floor = 1e-8 * (1e-12 + solver.eigenvalues().cwiseAbs().maxCoeff());
    const Eigen::Vector3d size = solver.eigenvalues().cwiseAbs().cwiseMax(floor);
    const Eigen::Matrix3d& v = solver.eigenvectors();
    return -(v * size.cwiseInverse().asDiagonal() * v.transpose() * gradient);
}

/// The way down from a saddle or a ridge; zero in a valley.
Eigen::Vector3d escape(const Eigen::Matrix3d& curvature) {
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(curvature);
    const double most = solver.eigenvalues().cwiseAbs().maxCoeff();
    if (solver.eigenvalues()(0) > -1e-6 * std::max(most, 1.0))
        return Eigen::Vector3d::Zero();
    return solver.eigenvectors().col(0);
}

} // namespace

RemlDeviance::At RemlDeviance::at(const Eigen::Vector3d& theta) const {
    const Eigen::Matrix2d lambda = factor(theta);
    const Eigen::Matrix2d g = lambda * lambda.transpose();
    const double free = m_points - 2;
    At at;
    at.information.setZero();
    Eigen::Vector2d right = Eigen::Vector2d::Zero();
    std::vector<Eigen::Matrix2d> inner;
    double logDeterminants = 0;
    for (const GroupSums& group : m_groups) {
        const Eigen::Matrix2d spread =
            Eigen::Matrix2d::Identity() + group.r * g * group.r.transpose();
        logDeterminants += std::log(spread.determinant());
        inner.push_back(spread.inverse());
        at.weight.push_back(group.r.transpose() * inner.back() * group.r);
        at.information += at.weight.back();
        right += group.r.transpose() * inner.back() * group.z;
    }
    const Eigen::Matrix2d covariance = at.information.inverse();
    at.beta = covariance * right;
    double squares = 0;
    for (std::size_t i = 0; i < m_groups.size(); ++i) {
        const Eigen::Vector2d left = m_groups[i].z - m_groups[i].r * at.beta;
        const Eigen::Vector2d weighed = inner[i] * left;
        squares += m_groups[i].rss + left.dot(weighed);
        at.leaning.push_back(m_groups[i].r.transpose() * weighed);
    }
    at.s2 = squares / free;
    at.value = logDeterminants + std::log(at.information.determinant()) +
               free * (1 + std::log(2 * std::numbers::pi * at.s2));
    Eigen::Matrix2d slope = Eigen::Matrix2d::Zero();
    for (std::size_t i = 0; i < m_groups.size(); ++i) {
        const Eigen::Matrix2d& k = at.weight[i];
        slope += k - k * covariance * k - at.leaning[i] * at.leaning[i].transpose() / at.s2;
    }
    const Eigen::Matrix2d byFactor = 2 * slope * lambda;
    at.gradient << byFactor(0, 0), byFactor(1, 0), byFactor(1, 1);
    return at;
}

// squares is that of the left-overs about beta: sum z'Wz - beta' (sum R'Wz).
double RemlDeviance::value(const Eigen::Matrix2d& g) const {
    Eigen::Matrix2d information = Eigen::Matrix2d::Zero();
    Eigen::Vector2d right = Eigen::Vector2d::Zero();
    double determinants = 1, logDeterminants = 0, squares = 0;
    for (const GroupSums& group : m_groups) {
        const Eigen::Matrix2d spread =
            Eigen::Matrix2d::Identity() + group.r * g * group.r.transpose();
        determinants *= spread.determinant();
        if (determinants > 1e100) {
            logDeterminants += std::log(determinants);
            determinants = 1;
        }
        const Eigen::Matrix2d lent = group.r.transpose() * spread.inverse();
        information += lent * group.r;
        right += lent * group.z;
        squares += group.rss + group.z.dot(spread.inverse() * group.z);
    }
    squares -= right.dot(information.inverse() * right);
    const double free = m_points - 2;
    return logDeterminants + std::log(determinants) + std::log(information.determinant()) +
           free * (1 + std::log(2 * std::numbers::pi * squares / free));
}

Eigen::Matrix3d RemlDeviance::curvature(const Eigen::Vector3d& theta) const {
    Eigen::Matrix3d curvature;
    for (int j = 0; j < 3; ++j) {
        const double step = 1e-5 * std::max(0.1, std::abs(theta(j)));
        Eigen::Vector3d up = theta, down = theta;
        up(j) += step;
        down(j) -= step;
        curvature.col(j) = (at(up).gradient - at(down).gradient) / (2 * step);
    }
    return (curvature + curvature.transpose()) / 2;
}

Eigen::Vector3d RemlDeviance::descend(Eigen::Vector3d theta) const {
    constexpr int most = 200;
    double value = at(theta).value;
    for (int i = 0; i < most; ++i) {
        const Eigen::Vector3d gradient = at(theta).gradient;
        const Eigen::Matrix3d bend = curvature(theta);
        Eigen::Vector3d step = newtonStep(bend, gradient);
        const double expected = -gradient.dot(step);
        if (expected < 1e-13 * (1 + std::abs(value))) {
            step = 0.1 * escape(bend);
            if (step.isZero())
                break;
        }
        // A step beyond the scale of theta itself is not to be trusted.
        const double room = 2 * std::max(0.5, theta.norm());
        if (step.norm() > room)
            step *= room / step.norm();
        double tried = 1;
        while (tried > 1e-12 && !(at(theta + tried * step).value < value))
            tried /= 2;
        if (tried <= 1e-12)
            break;
        theta += tried * step;
        value = at(theta).value;
    }
    return theta;
}

} // namespace slopebook::stats
