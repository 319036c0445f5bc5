// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/truncation.h"

#include "engine/base/normal_law.h"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>

namespace undermark {

using Square = Eigen::Map<Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>>;

void conditionAbove(std::vector<double>& mean, std::vector<double>& covariance, std::size_t i,
                    double least)
{
    const auto n = Eigen::Index(mean.size());
    Square square(covariance.data(), n, n);
    const Eigen::Index k = Eigen::Index(i);
    const double variance = square(k, k);
    const double cut = (least - mean[i]) / std::sqrt(variance);
    if (cut < -4)
        return;   // the condition changes nothing that matters
    const double hazard = normalHazard(cut);
    const double shrink = std::clamp(hazard * (hazard - cut), 0.0, 1.0);
    const Eigen::VectorXd gain = square.col(k) / variance;
    Eigen::Map<Eigen::VectorXd>(mean.data(), n) += gain * (hazard * std::sqrt(variance));
    square -= gain * gain.transpose() * (variance * shrink);
}

} // namespace undermark
