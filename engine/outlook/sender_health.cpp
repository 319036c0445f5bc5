// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/sender_health.h"

#include "engine/outlook/sender_bias.h"

#include <boost/math/distributions/students_t.hpp>

#include <cmath>

namespace undermark {

namespace {

constexpr std::size_t kFewestChecks = 5;
constexpr double kMaterialL = 0.5;
constexpr double kSlopeP = 0.01;
constexpr double kShiftSds = 3.0;

// Least squares of litres over years. Nothing where all fills are of one instant.
void fitSlope(const std::vector<SenderCheck>& checks, double meanYears, double meanL, SenderDrift& drift)
{
    double xx = 0.0, xy = 0.0;
    for (const SenderCheck& check : checks) {
        xx += (check.years - meanYears) * (check.years - meanYears);
        xy += (check.years - meanYears) * (check.litres - meanL);
    }
    if (!(xx > 0))
        return;
    const double slope = xy / xx;
    double residual = 0.0;
    for (const SenderCheck& check : checks)
        residual += std::pow(check.litres - meanL - slope * (check.years - meanYears), 2);
    const double freedom = double(checks.size()) - 2.0;
    const double slopeSd = std::sqrt(residual / freedom / xx);
    drift.perYear = Volume::fromLitres(slope);
    if (slopeSd > 0) {
        const boost::math::students_t t(freedom);
        drift.pValue = 2.0 * boost::math::cdf(complement(t, std::abs(slope) / slopeSd));
    }
}

std::optional<SenderDrift> driftOf(const CarKnowledge& car, const std::vector<SenderCheck>& checks)
{
    if (checks.size() < kFewestChecks)
        return std::nullopt;
    const double n = double(checks.size());
    double years = 0.0, litres = 0.0, curveSd = 0.0, squares = 0.0;
    for (const SenderCheck& check : checks) {
        years += check.years / n;
        litres += check.litres / n;
        curveSd += check.curveSdL / n;
    }
    for (const SenderCheck& check : checks)
        squares += (check.litres - litres) * (check.litres - litres);
    SenderDrift drift;
    drift.fills = checks.size();
    drift.scatter = Volume::fromLitres(std::sqrt(squares / (n - 1.0)));
    const double shared = std::hypot(curveSd, car.gauge.uncertainty().pour.litres());
    drift.shift = {Volume::fromLitres(litres),
                   Volume::fromLitres(std::hypot(drift.scatter.litres() / std::sqrt(n), shared))};
    fitSlope(checks, years, litres, drift);
    return drift;
}

Sentence mendSender()
{
    return Sentence::of(
        "compare one reading with a measured pour, look at the sender's wiring, ground "
        "and float, and calibrate again if it stays; until then trust the log more "
        "than the reading");
}

void judgeDrift(const SenderDrift& drift, const std::vector<SenderCheck>& checks,
                std::vector<Finding>& findings)
{
    const double spanYears = checks.back().years - checks.front().years;
    if (drift.perYear && std::abs(drift.perYear->litres()) * spanYears > kMaterialL
        && drift.pValue.value_or(0.0) < kSlopeP)
        findings.push_back(
            {"sender-drift", Severity::warning,
             *drift.perYear > Volume()
                 ? Sentence::of("over %1 full fills the sender reads %2 higher with each year: %3",
                                counted(drift.fills), amount(*drift.perYear), mendSender())
                 : Sentence::of("over %1 full fills the sender reads %2 lower with each year: %3",
                                counted(drift.fills), amount(abs(*drift.perYear)), mendSender())});
    const Volume shift = drift.shift.mean;
    if (std::abs(shift.litres()) > std::max(kMaterialL, kShiftSds * drift.shift.sd.litres()))
        findings.push_back(
            {"sender-shifted", Severity::warning,
             shift > Volume()
                 ? Sentence::of(
                       "over %1 full fills reading and fuel pumped come to %2 more than the full "
                       "tank of the calibration: %3",
                       counted(drift.fills), amount(shift), mendSender())
                 : Sentence::of(
                       "over %1 full fills reading and fuel pumped come to %2 less than the full "
                       "tank of the calibration: %3",
                       counted(drift.fills), amount(abs(shift)), mendSender())});
}

} // namespace

SenderHealth senderHealth(const CarKnowledge& car, Instant now)
{
    SenderHealth health;
    if (!car.log.calibration) {
        health.findings.push_back(
            {"no-calibration", Severity::info,
             Sentence::of("no calibration is stored: readings cannot be used")});
        return health;
    }
    for (const Finding& finding : car.gauge.findings())
        if (finding.severity != Severity::info)
            health.findings.push_back(finding);
    const auto age = std::chrono::floor<std::chrono::days>(now - car.log.calibration->value.time);
    health.calibrationAge = age;
    const std::vector<SenderCheck> checks = senderChecks(car);
    health.drift = driftOf(car, checks);
    if (health.drift)
        judgeDrift(*health.drift, checks, health.findings);
    else if (car.gauge.curve())
        health.findings.push_back(
            {"sender-unwatched", Severity::info,
             Sentence::of(
                 "%1 of %2 full fills since the calibration note the reading before pumping: note "
                 "it and the sender is watched",
                 counted(checks.size()), counted(kFewestChecks))});
    if (age > kCalibrationOld)
        health.findings.push_back(
            {"calibration-old", Severity::info,
             Sentence::of("the calibration is %1 years old: compare one reading "
                          "with a measured pour",
                          amount(double(age.count()) / 365.25, 1))});
    return health;
}

} // namespace undermark
