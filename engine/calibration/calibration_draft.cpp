// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibration_draft.h"

#include <cmath>

namespace undermark {

namespace {

// All readings of a level as one.
CalibrationPoint pointOf(const DraftLevel& level, Volume added)
{
    const DraftReading& start = level.readings.front(); // taken off, so that no digits are lost
    double n = 0.0, sum = 0.0, sumSecond = 0.0;
    for (const DraftReading& each : level.readings) {
        n += each.readings;
        sum += each.readings * (each.signal - start.signal).value();
        if (each.second && start.second)
            sumSecond += each.readings * (*each.second - *start.second).value();
    }
    const double mean = sum / n;
    double squares = 0.0; // within each, and of each about the mean
    for (const DraftReading& each : level.readings)
        squares += (each.readings - 1) * std::pow(each.sd.value_or(Signal()).value(), 2) +
                   each.readings * std::pow((each.signal - start.signal).value() - mean, 2);
    CalibrationPoint point{added, start.signal + Signal::of(mean), std::nullopt, std::nullopt, int(n)};
    if (start.second)
        point.signal2 = *start.second + Signal::of(sumSecond / n);
    if (n > 1.0)
        point.signalSd = Signal::of(std::sqrt(squares / (n - 1.0)));
    return point;
}

} // namespace

std::vector<CalibrationPoint> pointsOf(const std::vector<DraftLevel>& levels)
{
    std::vector<CalibrationPoint> points;
    Volume added;
    for (const DraftLevel& level : levels) {
        added += level.poured;
        if (!level.readings.empty())
            points.push_back(pointOf(level, added));
    }
    return points;
}

} // namespace undermark
