// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a way climbs, as fuel sees it: all that rises, less what its falls give back, which is
// never more than rolling costs on that way, m g crr d: what is steeper is braked away. So a loop
// costs no less than the flat. What a km of height takes: engine/consumption/climbing_car.h.
#pragma once

#include "engine/base/quantity.h"
#include "engine/consumption/climbing_car.h"
#include "engine/planning/route.h"
#include "engine/roads/height_profile.h"

namespace undermark {

// A way's ups, and what its downs can give back, in metres of height.
struct Climb {
    double up = 0;
    double back = 0; // at most `rolling` times the way down
    Climb& operator+=(const Climb& other)
    {
        up += other.up;
        back += other.back;
        return *this;
    }
};

// From `from` to `to` along the profile (smoothed before, see withoutRipples); heights in between
// are interpolated. What lies outside the profile, or in a gap, adds nothing. Adds up: two ways
// one after the other cost what they cost as one, but for a point put into a fall. Where `to` lies
// before `from` the way is driven backwards.
Climb climbBetween(const HeightProfile& profile, Distance from, Distance to, double rolling);

// All of the profile, as one way.
Distance netClimb(const HeightProfile& profile);

// What the sections of a route climb whose km are the profile's.
void addClimbs(Route& route, const HeightProfile& profile, double rolling = kRollingResistance);

} // namespace undermark
