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

// What both ways of conditioning start from.
struct Conditioned {
    Vector x;
    Matrix p;
    ConstVector row;
    double mean;      // of h.x
    double variance;  // of h.x + noise
};

Conditioned seenAs(std::span<double> mean, std::span<double> covariance, std::span<const double> h,
         double noiseVariance)
{
    const auto n = static_cast<Eigen::Index>(mean.size());
    const Projection projected = project(mean, covariance, h);
    return {Vector(mean.data(), n), Matrix(covariance.data(), n, n), ConstVector(h.data(), n),
            projected.mean, projected.variance + noiseVariance};
}

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
    auto [x, p, row, expected, variance] = seenAs(mean, covariance, h, noiseVariance);
    if (!(variance > 0.0))
        return 0.0;
    const Eigen::VectorXd gain = p * row / variance;
    const Eigen::MatrixXd keep =
        Eigen::MatrixXd::Identity(row.size(), row.size()) - gain * row.transpose();
    x += gain * (value - expected);
    p = (keep * p * keep.transpose() + noiseVariance * gain * gain.transpose()).eval();
    return (value - expected) / std::sqrt(variance);
}

double conditionOnAbove(std::span<double> mean, std::span<double> covariance,
                        std::span<const double> h, double limit, double noiseVariance)
{
    auto [x, p, row, expected, variance] = seenAs(mean, covariance, h, noiseVariance);
    if (!(variance > 0.0))
        return 0.0;
    const double z = (expected - limit) / std::sqrt(variance);
    const double hazard = normalHazard(-z);
    // Share of the projected variance that is taken away, within 0 to 1.
    const double shrink = std::clamp(hazard * (z + hazard), 0.0, 1.0);
    const Eigen::VectorXd gain = p * row;
    x += gain * (hazard / std::sqrt(variance));
    p -= (gain * gain.transpose() * (shrink / variance)).eval();
    return std::min(0.0, z);
}

} // namespace undermark
