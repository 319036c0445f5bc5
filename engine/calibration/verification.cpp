// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/verification.h"

#include "engine/base/normal_law.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

std::optional<Signal> noiseOf(const CalibrationPoint& point)
{
    if (!point.signalSd)
        return std::nullopt;
    return *point.signalSd / std::sqrt(double(std::max(1, point.readings)));
}

VerifiedLevel tried(const CalibrationPoint& point, const LevelReading& predicted, Volume measuredSd,
                    double allowed)
{
    const Volume both =
        Volume::fromLitres(std::hypot(predicted.added.sd.litres(), measuredSd.litres()));
    VerifiedLevel level{point, predicted};
    level.deviations = (point.added - predicted.added.mean) / both;
    level.agrees = (predicted.bound == LevelBound::atLeast || level.deviations <= allowed)
                   && (predicted.bound == LevelBound::atMost || level.deviations >= -allowed);
    return level;
}

} // namespace

bool Verification::passed() const
{
    return std::ranges::all_of(levels, &VerifiedLevel::agrees);
}

Result<Verification> verify(const Gauge& gauge, std::span<const CalibrationPoint> points,
                            Volume measuredSd, Probability confidence)
{
    if (!gauge.isKnown())
        return failInput(Sentence::of("there is no calibration to verify"));
    if (points.empty())
        return failInput(Sentence::of("there is no level to verify at"));
    Verification made;
    made.measuredSd = measuredSd;
    made.confidence = confidence;
    made.allowed = normalQuantile(1.0 - (1.0 - confidence.value()) / (2.0 * double(points.size())));
    for (const CalibrationPoint& point : points) {
        const auto predicted = gauge.readDriving({point.signal, point.signal2}, noiseOf(point));
        if (!predicted || point.signal2.has_value() != gauge.hasTwoSignals())
            return failInput(gauge.hasTwoSignals()
                                 ? Sentence::of("this tank is read by two signals")
                                 : Sentence::of("this tank has one signal"));
        made.levels.push_back(tried(point, *predicted, measuredSd, made.allowed));
    }
    return made;
}

VerificationRecord recordOf(const Verification& verification, Instant time)
{
    VerificationRecord record;
    record.time = time;
    record.measuredSd = verification.measuredSd;
    record.confidence = verification.confidence;
    record.passed = verification.passed();
    for (const VerifiedLevel& level : verification.levels)
        record.levels.push_back({level.point, level.predicted.added, level.agrees});
    return record;
}

} // namespace undermark
