// SPDX-License-Identifier: GPL-3.0-or-later
//
// How far consumption strays from what the source counts. The sizes were chosen on
// simulated cars (tests/accuracy/tracker_campaign.cpp), none is a measured one.
#pragma once

#include "engine/tracking/fuel_use.h"
#include "engine/tracking/moment.h"

namespace undermark {

struct BurnNoise {
    double levelL2PerL;    // variance of the litres, per litre burnt
    double scale2PerL;     // variance of the source's scale, per litre counted
};

// `blind`: the sender is not used, so nothing corrects the count.
BurnNoise burnNoise(const FuelUse& use, bool blind);

// By time alone without the sender: the scale of the road ahead, not that of the last
// quarter of an hour. `burntL` and `usedL`: since the start, scaled and counted.
Estimate<Fraction> scaleOfRoadAhead(double scaleNow, double burntL, double usedL);

// The filter after `usedL` more litres of the source's count and no reading.
FuelFilter countedOn(FuelFilter filter, double usedL);

} // namespace undermark
