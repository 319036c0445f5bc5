// SPDX-License-Identifier: GPL-3.0-or-later
//
// The road ahead, as a navigator writes it down: points in order, what fuel
// each offers, and how one drives on from it.
#pragma once

#include "engine/base/error.h"
#include "engine/base/quantity.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

using Minutes = std::chrono::duration<double, std::ratio<60>>;

enum class FuelSource {
    none,
    pump,
    zone, // refuel zone of an event
    can,  // a place where the car's own cans may be poured in
    crew, // where the crew waits with its cans, between opens and closes
};

// What a section's heights cost, as height climbed: all that rises, less what its falls give
// back; below 0 where it leads down.
struct SectionClimb {
    Distance there; // as the route goes
    Distance back;  // the other way round
    friend bool operator==(const SectionClimb&, const SectionClimb&) = default;
};

// Of a part of the section, as if it rose evenly.
inline SectionClimb operator*(const SectionClimb& climb, double part)
{
    return {climb.there * part, climb.back * part};
}

struct RoutePoint {
    Distance at; // from the start of the route's own count
    std::string name;
    std::string mode; // kind of driving from here to the next point
    FuelSource fuel = FuelSource::none;
    std::optional<double> pricePerLitre; // >= 0
    std::optional<Volume> leastPurchase; // >= 0; nothing less is sold
    std::optional<Volume> mostPurchase;  // > 0
    std::optional<Minutes> stopTime;     // lost by stopping, without the pouring
    std::optional<Distance> detour;      // there and back, only if one stops
    std::optional<Minutes> opens;        // since midnight
    std::optional<Minutes> closes;
    std::optional<std::chrono::sys_days> firstDay; // dates on which fuel is to be had, both included;
    std::optional<std::chrono::sys_days> lastDay;  // none: any day
    std::optional<Minutes> idle; // engine running at a control here
    std::optional<Minutes> rest; // engine off, before one drives on: a night, a service
    std::optional<Minutes> due;  // since midnight: to be here by then
    std::optional<Volume> floor; // never arrive here with less, >= 0; on top of the tank's own
    bool timed = false;          // the section from here on is timed
    SectionClimb climb;          // of the section from here on; 0 where no heights are known
    friend bool operator==(const RoutePoint&, const RoutePoint&) = default;
};

struct Route {
    std::vector<RoutePoint> points; // distances never fall; the last is the finish
    friend bool operator==(const Route&, const Route&) = default;
};

// A point of the section that begins at `behind`: driven on from as that, without fuel. What
// is left to climb from it on is not known to it.
RoutePoint pointOnSection(const RoutePoint& behind, Distance at, std::string name);

inline constexpr std::size_t kMostRoutePointsInFile = 200'000;

// Errors (badInput): fewer than two points (no finish), a distance that is not
// finite or runs backwards, a negative amount, a minimum above the maximum.
Result<void> checkRoute(const Route& route);

// The same of one point and the way to it.
Result<void> checkRoutePoint(const Route& route, std::size_t index);

// "none", "pump", "zone", "can" or "crew".
const char* fuelWord(FuelSource source);
Result<FuelSource> fuelSourceOf(std::string_view word); // badInput for any other word

// What is left of the route from `here` on: a first point called "here" with
// the mode of the section it lies in, unless a point lies exactly there.
// badInput if `here` is before the start or not before the finish.
Result<Route> routeFrom(const Route& route, Distance here);

// The route with the point called `name` offering no fuel; notFound if there is none,
// badInput if it offers none as it is.
Result<Route> withPointClosed(const Route& route, const std::string& name);

// The route with the section that starts at the point called `name` driven
// twice, one run after the other; the second run starts at a point of that name
// without fuel. A way back between the runs is not invented: it is a row of its
// own. notFound if there is no such point, or nothing follows it.
Result<Route> withSectionRepeated(const Route& route, const std::string& name);

// Distances as the car's own trip meter shows them, turned into road distances
// by an odometer check section: true = shown * official / shownOnCheck.
// badInput unless both are above 0.
Result<double> tripMeterFactor(Distance official, Distance shownOnCheck);

} // namespace undermark
