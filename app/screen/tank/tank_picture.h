// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/screen/base/fact.h"
#include "app/screen/base/plot_picture.h"
#include "engine/calibration/gauge.h"

#include <optional>

namespace undermark {

// The level curve with its band over its points: signal to the right, litres since drained
// upwards; in the band the level is with 90 %. A point's whisker is how far the curve drawn without it misses it;
// one that misses by over twice the usual is drawn hollow. Points alone where
// the readings allow no curve. With two signals the lobe with the pump, its litres
// upwards. O(points) fits.
PlotPicture tankPicture(const Gauge& gauge, const Sender& sender, std::optional<Volume> zeroMark,
                        const UnitFormat& format);

// With two signals the other lobe, else empty; and what each of the two holds.
PlotPicture otherLobePicture(const Gauge& gauge, const Sender& sender, const UnitFormat& format);
QList<Fact> lobeFacts(const Gauge& gauge, const UnitFormat& format);

} // namespace undermark
