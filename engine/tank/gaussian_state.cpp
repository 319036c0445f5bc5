// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tank/gaussian_state.h"

#include "engine/base/normal_law.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

using Vector = Eigen::Map<Eigen::VectorXd>;
using ConstVector = Eigen::Map<const Eigen::VectorXd>;
using Matrix = Eigen::Map<Eigen::Matrix<double, -1, -1, Eigen::RowMajor>>;
using ConstMatrix = Eigen::Map<const Eigen::Matrix<double, -1, -1, Eigen::RowMajor>>;

// A projected variance below this share of its terms' is taken as 0.
constexpr double kRounding = 1e-13;

} // namespace

Projection project(std::span<const double> mean, std::span<const double> covariance,
                   std::span<const double> h)
{
    const auto n = static_cast<Eigen::Index>(mean.size());
    const ConstVector x(mean.data(), n);
    const ConstVector row(h.data(), n);
    const ConstMatrix p(covariance.data(), n, n);
    // A difference of equal errors is rounding noise, and no ground for learning.
    const double terms = row.cwiseAbs().dot(p.diagonal().cwiseMax(0.0).cwiseSqrt());
    const double variance = row.dot(p * row);
    return {row.dot(x), variance > kRounding * terms * terms ? variance : 0.0};
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
    const double hazard = normalHazard(-z);
    // Share of the projected variance that is taken away, within 0 to 1.
    const double shrink = std::clamp(hazard * (z + hazard), 0.0, 1.0);
    const Eigen::VectorXd gain = p * row;
    x += gain * (hazard / std::sqrt(total));
    p -= (gain * gain.transpose() * (shrink / total)).eval();
    return std::min(0.0, z);
}

} // namespace undermark
