// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/joint_law.h"

#include <algorithm>
#include <cmath>

namespace undermark {

Estimate<Volume> JointLaw::now(Estimate<Volume> known) const
{
    const LevelSpread spread = rates.spreadAfter(known.sd, driven);
    return {known.mean - rates.burntOver(driven),
            Volume::fromLitres(std::sqrt(varianceOf(spread, rates.worlds)))};
}

Result<RangeLaw> JointLaw::toZero(std::size_t mode) const
{
    return RangeLaw::make({aboveZero, rates, driven, {{Distance(), mode}}, {}});
}

Result<RangeLaw> JointLaw::toDry(std::size_t mode) const
{
    return RangeLaw::make({usable, rates, driven, {{Distance(), mode}}, surge});
}

RateModel rateModel(const ModeRates& learnt)
{
    const std::size_t n = learnt.modes.size();
    double factor = 0.0; // mean over the worlds
    for (const RateWorld& world : learnt.worlds)
        factor += world.weight * world.factorMean;
    const auto share = [&](std::size_t m) { return learnt.usualMix[m].ratio(); };
    RateModel model;
    model.modes = learnt.modes;
    model.modes.emplace_back();
    Consumption usual;
    std::vector<double> withUsual(n + 1, 0.0); // its covariances
    for (std::size_t a = 0; a < n; ++a) {
        model.mean.push_back(learnt.mean[a] * factor);
        usual += model.mean[a] * share(a);
        for (std::size_t b = 0; b < n; ++b)
            withUsual[a] += factor * factor * learnt.residual[a * n + b] * share(b);
        withUsual[n] += share(a) * withUsual[a];
    }
    model.mean.push_back(usual);
    withUsual[n] += learnt.usualMixVariance;
    for (std::size_t a = 0; a < n; ++a) {
        for (std::size_t b = 0; b < n; ++b)
            model.covariance.push_back(factor * factor * learnt.residual[a * n + b]);
        model.covariance.push_back(withUsual[a]);
    }
    model.covariance.insert(model.covariance.end(), withUsual.begin(), withUsual.end());
    model.worlds = learnt.worlds;
    for (RateWorld& world : model.worlds) {
        world.factorMean /= factor;
        world.factorSd /= factor;
    }
    model.legNoiseSd = std::sqrt(learnt.tauSquaredPerKm);
    model.idling = learnt.idle.mean;
    model.climb = learnt.climb;
    model.usualClimb = learnt.usualClimb;
    return model;
}

RateModel statedRates(const ModeRates& learnt, Estimate<Consumption> rate)
{
    RateModel model = rateModel(learnt);
    const double sd = rate.sd.litresPerKm();
    std::ranges::fill(model.mean, rate.mean);
    std::ranges::fill(model.covariance, sd * sd);
    model.worlds = {{1.0, 1.0, 0.0}};
    return model;
}

} // namespace undermark
