// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tank/gaussian_state.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

using Vector = Eigen::Map<Eigen::VectorXd>;
using ConstVector = Eigen::Map<const Eigen::VectorXd>;
using Matrix = Eigen::Map<Eigen::Matrix<double, -1, -1, Eigen::RowMajor>>;
using ConstMatrix = Eigen::Map<const Eigen::Matrix<double, -1, -1, Eigen::RowMajor>>;

// phi(z)/Phi(z). Far below 0 both vanish; there the asymptotic series of Mills'
// ratio, -z/(1 - 1/z^2 + 3/z^4 - 15/z^6), is good to 1e-9.
double hazardBelow(double z)
{
    if (z < -25.0) {
        const double w = 1.0 / (z * z);
        return -z / (1.0 - w * (1.0 - w * (3.0 - 15.0 * w)));
    }
    const double density = std::exp(-0.5 * z * z) / std::sqrt(2.0 * std::numbers::pi);
    return density / (0.5 * std::erfc(-z / std::numbers::sqrt2));
}

} // namespace

Projection project(std::span<const double> mean, std::span<const double> covariance,
                   std::span<const double> h)
{
    const auto n = static_cast<Eigen::Index>(mean.size());
    const ConstVector x(mean.data(), n);
    const ConstVector row(h.data(), n);
    const ConstMatrix p(covariance.data(), n, n);
    return {row.dot(x), std::max(0.0, row.dot(p * row))};
}

double conditionOn(std::span<double> mean, std::span<double> covariance,
                   std::span<const double> h, double value, double noiseVariance)
{
    const auto n = static_cast<Eigen::Index>(mean.size());
    const Projection seen = project(mean, covariance, h);
    const double total = seen.variance + noiseVariance;
    if (!(total > 0.0))
        return 0.0;
    Vector x(mean.data(), n);
    Matrix p(covariance.data(), n, n);
    const ConstVector row(h.data(), n);
    const Eigen::VectorXd gain = p * row / total;
    const Eigen::MatrixXd keep = Eigen::MatrixXd::Identity(n, n) - gain * row.transpose();
    x += gain * (value - seen.mean);
    p = (keep * p * keep.transpose() + noiseVariance * gain * gain.transpose()).eval();
    return (value - seen.mean) / std::sqrt(total);
}

double conditionOnAbove(std::span<double> mean, std::span<double> covariance,
                        std::span<const double> h, double limit, double noiseVariance)
{
    const auto n = static_cast<Eigen::Index>(mean.size());
    const Projection seen = project(mean, covariance, h);
    const double total = seen.variance + noiseVariance;
    if (!(total > 0.0))
        return 0.0;
    Vector x(mean.data(), n);
    Matrix p(covariance.data(), n, n);
    const ConstVector row(h.data(), n);
    const double z = (seen.mean - limit) / std::sqrt(total);
    const double hazard = hazardBelow(z);
    // Share of the projected variance that is taken away, within 0 to 1.
    const double shrink = std::clamp(hazard * (z + hazard), 0.0, 1.0);
    const Eigen::VectorXd gain = p * row;
    x += gain * (hazard / std::sqrt(total));
    p -= (gain * gain.transpose() * (shrink / total)).eval();
    return std::min(0.0, z);
}

} // namespace undermark
