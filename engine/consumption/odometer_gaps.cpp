// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/odometer_gaps.h"

#include "engine/format.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kLeastKm = 5;
constexpr double kLeastShare = 0.03;

bool apart(double first_km, double second_km)
{
    return std::abs(first_km - second_km) > std::max(kLeastKm, kLeastShare * std::max(first_km, second_km));
}

std::optional<OdometerGap> gapBefore(std::span<const Fill> fills, std::size_t i)
{
    const Fill& fill = fills[i];
    const auto& before = fills[i - 1].odometer;
    const bool odometers = fill.odometer && before && !fill.odometerReset;
    if (!odometers && !fill.sinceLast)
        return OdometerGap{i, GapKind::distanceUnknown, std::nullopt,
                           fill.odometerReset
                               ? "the dash was swapped and no trip meter tells the way to this fill"
                               : "no odometer and no trip meter tell the way to this fill"};
    if (!odometers || !fill.sinceLast || *fill.odometer <= *before)
        return std::nullopt;
    const double odometer_km = (*fill.odometer - *before).km();
    const double trip_km = fill.sinceLast->km();
    if (!apart(odometer_km, trip_km))
        return std::nullopt;
    const double open_km = odometer_km - trip_km;
    const char* pattern = open_km > 0
        ? "%.0f km by odometer, %.0f km by trip meter: %.0f km are not accounted for; was a fill "
          "forgotten?"
        : "%.0f km by odometer, %.0f km by trip meter: %.0f km too many; was the trip meter not "
          "reset?";
    return OdometerGap{i, GapKind::metersDisagree, Distance::fromKm(open_km),
                       format(pattern, odometer_km, trip_km, std::abs(open_km))};
}

} // namespace

const char* gapName(GapKind kind)
{
    switch (kind) {
    case GapKind::distanceUnknown: return "distance unknown";
    case GapKind::metersDisagree: return "meters disagree";
    case GapKind::tripsExceed: return "trips exceed";
    }
    return "distance unknown";
}

std::vector<OdometerGap> odometerGaps(std::span<const Fill> fills,
                                      std::span<const Interval> intervals)
{
    std::vector<OdometerGap> gaps;
    for (std::size_t i = 1; i < fills.size(); ++i)
        if (auto gap = gapBefore(fills, i))
            gaps.push_back(std::move(*gap));
    for (const Interval& stretch : intervals) {
        const double claimed_km = stretch.claimedByTrips.km();
        const double km = stretch.distance.km();
        if (claimed_km > km && apart(claimed_km, km))
            gaps.push_back({stretch.lastFill, GapKind::tripsExceed, Distance::fromKm(claimed_km - km),
                            format("trips of %.0f km are logged on a way of %.0f km: they were scaled "
                                  "down by %.0f km", claimed_km, km, claimed_km - km)});
    }
    std::ranges::stable_sort(gaps, {}, &OdometerGap::fill);
    return gaps;
}

} // namespace undermark
