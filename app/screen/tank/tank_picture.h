// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/screen/base/fact.h"
#include "app/screen/base/plot_picture.h"
#include "engine/calibration/calibrate.h"
#include "engine/calibration/saddle.h"

#include <optional>
#include <span>

namespace undermark {

// The level curve over its points: signal to the right, litres since drained
// upwards. A point's whisker is how far the curve drawn without it misses it;
// one that misses by over twice the usual is drawn hollow. Points alone where
// the fit has no curve. O(points) fits.
PlotPicture tankPicture(std::span<const CalibrationPoint> points, const CalibrationFit& fit,
                        const Sender& sender, std::optional<Volume> zeroMark,
                        const UnitFormat& format);

// A saddle tank read by two signals: one lobe's curve, its litres upwards.
enum class Lobe { withPump, other };
PlotPicture lobePicture(const LevelCurve& curve, const Sender& sender, Lobe lobe,
                        const UnitFormat& format);
// What each lobe holds.
QList<Fact> lobeFacts(const SaddleCurves& curves, const UnitFormat& format);

} // namespace undermark
