// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/odometer_gaps.h"

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
        return OdometerGap{
            i, GapKind::distanceUnknown, std::nullopt,
            fill.odometerReset
                ? Sentence::of("the dash was swapped and no trip meter tells the way to "
                               "this fill")
                : Sentence::of("no odometer and no trip meter tell the way to this fill")};
    if (!odometers || !fill.sinceLast || *fill.odometer <= *before)
        return std::nullopt;
    const Distance way = *fill.odometer - *before;
    const Distance trip = *fill.sinceLast;
    if (!apart(way.km(), trip.km()))
        return std::nullopt;
    const Distance open = way - trip;
    return OdometerGap{
        i, GapKind::metersDisagree, open,
        open > Distance()
            ? Sentence::of("%1 by odometer, %2 by trip meter: %3 are not accounted for; "
                           "was a fill forgotten?",
                           amount(way), amount(trip), amount(open))
            : Sentence::of("%1 by odometer, %2 by trip meter: %3 too many; was the trip "
                           "meter not reset?",
                           amount(way), amount(trip), amount(abs(open)))};
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
        const Distance claimed = stretch.claimedByTrips, way = stretch.distance;
        if (claimed > way && apart(claimed.km(), way.km()))
            gaps.push_back(
                {stretch.lastFill, GapKind::tripsExceed, claimed - way,
                 Sentence::of("trips of %1 are logged on a way of %2: they were scaled down "
                              "by %3",
                              amount(claimed), amount(way), amount(claimed - way))});
    }
    std::ranges::stable_sort(gaps, {}, &OdometerGap::fill);
    return gaps;
}

} // namespace undermark
