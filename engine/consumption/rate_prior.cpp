// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/rate_prior.h"

#include "engine/consumption/climbing_car.h"

#include <Eigen/Core>

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <string_view>

namespace undermark {

namespace {

struct KindOfMode {
    std::string_view name;
    double rate_lPerKm;
    double usualKm;      // pseudo-kilometres of the usual mix
};

// Common practice, no source: a petrol car of middle size; other vehicles are a level
// above or below it.
constexpr std::array<KindOfMode, 4> kKinds{{{kTown, 0.10, 200},
                                            {kOpenRoad, 0.07, 200},
                                            {kMotorway, 0.08, 150},
                                            {kSpecialStage, 0.35, 1}}};
constexpr KindOfMode kOtherKind{"", 0.085, 20};
constexpr double kUsual_lPerKm = 0.083;   // of the four in their usual mix
constexpr double kModeSpread = 0.15;      // of the logarithm, so are the spreads below
constexpr double kIdle_lPerHour = 0.8;
constexpr double kIdleSpread = 0.5;
constexpr double kColdStart_l = 0.10;
constexpr double kColdStartSpread = 0.7;

// How far a full tank of so many litres usually goes. Whatever the vehicle, that is
// between about 150 and 1,500 km (common practice, no source); below ten litres there
// are mopeds and karts, which differ more. Judgement, no source.
struct RangeOfTank {
    double capacity_l;
    double range_km;
    double spread;       // sd of the logarithm
};
constexpr std::array<RangeOfTank, 8> kRanges{{{4, 65, 0.85},
                                              {6, 100, 0.85},
                                              {9, 150, 0.75},
                                              {12, 240, 0.42},
                                              {20, 350, 0.40},
                                              {55, 650, 0.40},
                                              {120, 750, 0.42},
                                              {300, 1000, 0.42}}};
constexpr double kUsualShare = 0.75;      // of the tank, from fill to fill; common practice, no source
constexpr Volume kMiddlingTank = Volume::fromLitres(55);
constexpr double kLeastTank_l = 1e-3;     // below, nothing is a tank: keeps the logarithm finite
constexpr double kLevelSpread = 0.45;     // where the capacity is not known

// Litres for the same work against petrol: by energy content and efficiency of the
// engine (common practice, no source).
double fuelFactor(FuelKind fuel)
{
    switch (fuel) {
    case FuelKind::petrol: return 1;
    case FuelKind::diesel: return 0.85;
    case FuelKind::lpg: return 1.25;
    case FuelKind::ethanol: return 1.3;
    }
    return 1;
}

// By straight lines between the logarithms; beyond the table the range stays.
RangeOfTank rangeOf(double capacity_l)
{
    if (capacity_l <= kRanges.front().capacity_l)
        return kRanges.front();
    for (std::size_t i = 1; i < kRanges.size(); ++i) {
        const RangeOfTank& a = kRanges[i - 1];
        const RangeOfTank& b = kRanges[i];
        if (capacity_l > b.capacity_l)
            continue;
        const double t = std::log(capacity_l / a.capacity_l) / std::log(b.capacity_l / a.capacity_l);
        return {capacity_l, a.range_km * std::pow(b.range_km / a.range_km, t),
                a.spread + t * (b.spread - a.spread)};
    }
    return kRanges.back();
}

const KindOfMode& kindOf(std::string_view name)
{
    for (const KindOfMode& kind : kKinds)
        if (kind.name == name)
            return kind;
    return kOtherKind;
}

// Mean and spread of the level: the logarithm of what this vehicle burns against the
// petrol car of middle size.
std::pair<double, double> levelOf(const PriorFacts& facts)
{
    if (!facts.capacity)
        return {std::log(fuelFactor(facts.fuel)), kLevelSpread};
    const double capacity_l = std::max(facts.capacity->litres(), kLeastTank_l);
    const RangeOfTank tank = rangeOf(capacity_l);
    return {std::log(fuelFactor(facts.fuel) * capacity_l / tank.range_km / kUsual_lPerKm), tank.spread};
}

} // namespace

RatePrior ratePrior(std::span<const Mode> modes, const PriorFacts& facts)
{
    assert(!modes.empty());
    RatePrior prior;
    for (const Mode& mode : modes) {
        const KindOfMode& kind = kindOf(mode.name);
        prior.base.push_back(kind.rate_lPerKm);
        prior.usualMixKm.push_back(kind.usualKm);
    }
    prior.base.push_back(kIdle_lPerHour);
    prior.base.push_back(kColdStart_l);
    const auto climb = litresPerHeight(usualClimbingCar(facts.capacity, facts.fuel, facts.massKg));
    assert(climb);   // usual numbers
    prior.base.push_back(climb->mean.litresPerKm());
    prior.usual_l = kUsualShare * facts.capacity.value_or(kMiddlingTank).litres();

    const auto count = Eigen::Index(modes.size());
    const auto [level, spread] = levelOf(facts);
    Eigen::VectorXd mean = Eigen::VectorXd::Zero(count + 4);
    mean[0] = level;
    Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(count + 4, count + 4);
    covariance(0, 0) = spread * spread;
    covariance.diagonal().segment(1, count).setConstant(kModeSpread * kModeSpread);
    covariance(count + 1, count + 1) = kIdleSpread * kIdleSpread;
    covariance(count + 2, count + 2) = kColdStartSpread * kColdStartSpread;
    covariance(count + 3, count + 3) = std::log1p(std::pow(climb->sd / climb->mean, 2));   // of a log-normal law
    mean[count + 3] = -covariance(count + 3, count + 3) / 2;
    for (Eigen::Index i = 0; i < count; ++i) {
        const auto& stated = modes[std::size_t(i)].stated;
        if (!stated)
            continue;
        // log(rate) = log(base) + level + own, seen with the stated relative spread.
        const double sd = stated->sd / stated->mean;
        const Eigen::VectorXd column = covariance.col(0) + covariance.col(i + 1);
        const Eigen::VectorXd gain = column / (column[0] + column[i + 1] + sd * sd);
        const double rate = stated->mean.litresPerKm() / prior.base[std::size_t(i)];
        mean += gain * (std::log(rate) - mean[0] - mean[i + 1]);
        covariance -= (gain * column.transpose()).eval();
    }
    // Rounding must not leave a stated sd of 0 with a negative variance.
    covariance.diagonal().array() += 1e-12;
    prior.mean.assign(mean.begin(), mean.end());
    prior.covariance.assign(covariance.data(), covariance.data() + covariance.size());
    return prior;
}

} // namespace undermark
