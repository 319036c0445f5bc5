// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/rate_prior.h"

#include <Eigen/Core>

#include <array>
#include <cassert>
#include <string_view>

namespace undermark {

namespace {

struct KindOfMode {
    std::string_view name;
    double rate_lPerKm;
    double usualKm;      // pseudo-kilometres of the usual mix
};

// Common practice, no source: a petrol car of middle size. The spreads below
// are wide enough to be overruled within a few tanks.
constexpr std::array<KindOfMode, 4> kKinds{{{kTown, 0.10, 200},
                                            {kOpenRoad, 0.07, 200},
                                            {kMotorway, 0.08, 150},
                                            {kSpecialStage, 0.35, 1}}};
constexpr KindOfMode kOtherKind{"", 0.085, 20};
constexpr double kCarSpread = 0.35;
constexpr double kModeSpread = 0.20;
constexpr double kIdle_lPerHour = 0.8;
constexpr double kIdleSd_lPerHour = 0.4;
constexpr double kColdStart_l = 0.10;
constexpr double kColdStartSd_l = 0.08;

const KindOfMode& kindOf(std::string_view name)
{
    for (const KindOfMode& kind : kKinds)
        if (kind.name == name)
            return kind;
    return kOtherKind;
}

} // namespace

RatePrior ratePrior(std::span<const Mode> modes)
{
    assert(!modes.empty());
    const auto count = Eigen::Index(modes.size());
    Eigen::VectorXd mean(count + 2);
    std::vector<double> usual;
    for (Eigen::Index i = 0; i < count; ++i) {
        const KindOfMode& kind = kindOf(modes[std::size_t(i)].name);
        mean[i] = kind.rate_lPerKm;
        usual.push_back(kind.usualKm);
    }
    const Eigen::VectorXd common = kCarSpread * mean.head(count);
    const Eigen::VectorXd own = kModeSpread * mean.head(count);
    Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(count + 2, count + 2);
    covariance.topLeftCorner(count, count) = common * common.transpose();
    covariance.diagonal().head(count) += own.cwiseAbs2();
    mean.tail(2) << kIdle_lPerHour, kColdStart_l;
    covariance.diagonal().tail(2) << kIdleSd_lPerHour * kIdleSd_lPerHour,
        kColdStartSd_l * kColdStartSd_l;
    for (Eigen::Index i = 0; i < count; ++i) {
        const auto& stated = modes[std::size_t(i)].stated;
        if (!stated)
            continue;
        const double sd = stated->sd.litresPerKm();
        const Eigen::VectorXd gain = covariance.col(i) / (covariance(i, i) + sd * sd);
        mean += gain * (stated->mean.litresPerKm() - mean[i]);
        covariance -= (gain * covariance.row(i)).eval();
    }
    // Rounding must not leave a stated sd of 0 with a negative variance.
    covariance.diagonal().array() += 1e-12;
    return {{mean.begin(), mean.end()},
            {covariance.data(), covariance.data() + covariance.size()},
            std::move(usual)};
}

} // namespace undermark
