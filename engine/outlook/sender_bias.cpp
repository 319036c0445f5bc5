// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/sender_bias.h"

#include "engine/consumption/click.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kCreepShare = 0.004;   // of full, from check to check
constexpr double kStartShare = 0.002;   // of full, right after the calibration
constexpr double kSlipSds = 4.0;
constexpr double kYear = 365.25 * 86400.0;

// Creep in litres, and the curve's error in its own sd; their covariance.
struct Creep {
    double litres = 0.0, error = 0.0;
    double pLL, pLE = 0.0, pEE = 1.0;

    void see(const SenderCheck& check, double walk, double noise)
    {
        pLL += walk * walk;
        const double s = check.curveSdL;
        const double toL = pLL + s * pLE, toE = pLE + s * pEE;
        const double variance = toL + s * toE + noise * noise;
        const double miss = check.litres - litres - s * error;
        if (miss * miss > kSlipSds * kSlipSds * variance)
            return;
        litres += toL / variance * miss;
        error += toE / variance * miss;
        pLL -= toL * toL / variance;
        pLE -= toL * toE / variance;
        pEE -= toE * toE / variance;
    }
};

} // namespace

Volume checkedWithin(const CarKnowledge& car) { return std::min(car.clickSd, kUsualClickSd); }

std::vector<SenderCheck> senderChecks(const CarKnowledge& car)
{
    std::vector<SenderCheck> checks;
    if (!car.gauge.curve())
        return checks;
    const Instant since = car.log.calibration->value.time;
    for (const Entry<Fill>& entry : car.log.fills) {
        const Fill& fill = entry.value;
        if (fill.tank || fill.extent != FillExtent::full || !fill.signalBefore || fill.time <= since
            || fill.counted == false)
            continue;
        const auto level = car.gauge.readDriving({*fill.signalBefore, std::nullopt});
        if (!level || level->bound != LevelBound::exact)
            continue;
        checks.push_back({double((fill.time - since).count()) / kYear,
                          (level->added.mean + fill.volume - car.gauge.full()).litres(),
                          level->added.sd.litres()});
    }
    return checks;
}

std::optional<Estimate<Volume>> senderBias(const CarKnowledge& car)
{
    const std::vector<SenderCheck> checks = senderChecks(car);
    if (checks.empty())
        return std::nullopt;
    const double full = car.gauge.full().litres();
    const double noise = std::sqrt(2.0) * checkedWithin(car).litres();   // this click, and full's own
    Creep creep{.pLL = std::pow(kStartShare * full, 2)};
    for (const SenderCheck& check : checks)
        creep.see(check, kCreepShare * full, noise);
    return Estimate<Volume>{Volume::fromLitres(creep.litres), Volume::fromLitres(std::sqrt(creep.pLL))};
}

} // namespace undermark
