// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_kept_calibration.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr Volume kSameLevel = Volume::fromLitres(0.05); // a jug's own error is four times that

// What the earlier curve makes of the later readings, against what was poured.
std::optional<Sentence> agreement(const Gauge& earlier, const std::vector<CalibrationPoint>& later)
{
    double sum = 0.0, worst = 0.0;
    std::size_t read = 0;
    for (const CalibrationPoint& point : later) {
        const auto level = earlier.read({point.signal, point.signal2});
        if (!level || level->bound != LevelBound::exact)
            continue;
        const double apart = (level->added.mean - point.added).litres();
        sum += apart;
        worst = std::max(worst, std::abs(apart));
        ++read;
    }
    if (read == 0)
        return std::nullopt;
    return Sentence::of("by the earlier session the %1 levels of this one are %2 higher on average, and up to %3 apart",
                        counted(read), amount(Volume::fromLitres(sum / double(read)), 2),
                        amount(Volume::fromLitres(worst), 2));
}

} // namespace

Result<Calibration> withStep(Calibration kept, const StepCorrection& correction)
{
    const auto at = std::size_t(correction.step) - 1;
    if (at >= kept.points.size())
        return wrongUse("the calibration has no such level", "1 to " + std::to_string(kept.points.size()),
                        std::to_string(correction.step));
    if (correction.leaveOut) {
        kept.points.erase(kept.points.begin() + std::ptrdiff_t(at));
        return kept;
    }
    CalibrationPoint& point = kept.points[at];
    if (correction.litres)
        point.added = Volume::fromLitres(*correction.litres);
    if (correction.signal2 && !point.signal2)
        return wrongUse("this calibration has one signal", "no --signal2");
    if (correction.signal)
        point.signal = Signal::of(*correction.signal);
    if (correction.signal2)
        point.signal2 = Signal::of(*correction.signal2);
    return kept;
}

Result<LaidOver> laidOver(const Calibration& kept, const std::vector<CalibrationPoint>& later, const Sender& sender)
{
    if (kept.points.empty())
        return wrongUse("the logbook's calibration is a shape without levels", "POINTS.csv alone");
    if (!later.empty() && later.front().signal2.has_value() != kept.points.front().signal2.has_value())
        return wrongUse("the two sessions have not the same signals", "one signal in both, or two");
    LaidOver laid;
    laid.points = later;
    const auto isNew = [&](const CalibrationPoint& earlier) {
        return std::ranges::none_of(later, [&](const CalibrationPoint& point) {
            return abs(point.added - earlier.added) < kSameLevel;
        });
    };
    std::ranges::copy_if(kept.points, std::back_inserter(laid.points), isNew);
    std::ranges::stable_sort(laid.points, {}, &CalibrationPoint::added);
    const auto earlier = Gauge::of(kept, sender);
    if (!earlier)
        return fail(earlier.error());
    if (auto words = agreement(*earlier, later))
        laid.said.push_back(std::move(*words));
    return laid;
}

} // namespace undermark
