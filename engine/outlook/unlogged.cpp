// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/unlogged.h"

#include "engine/base/normal_law.h"

#include <algorithm>
#include <boost/math/special_functions/gamma.hpp>
#include <cassert>
#include <cmath>

namespace undermark {

namespace {

constexpr std::size_t kStretchesOfHabit = 20;
constexpr double kUsualScatter = 0.5;     // of the road of one stretch
constexpr double kUsualScatterWorth = 2;  // stretches
constexpr double kWeekDays = 7;

// When somebody last wrote how far the car had gone, and the usual gap between records.
struct RecordHabit {
    std::optional<Instant> last;
    double gapDays = kWeekDays;
};

RecordHabit recordHabit(const VehicleLog& log)
{
    std::vector<Instant> times;
    for (const Entry<Fill>& fill : log.fills)
        if (fill.value.extent != FillExtent::partial || fill.value.odometer)
            times.push_back(fill.value.time);
    for (const Entry<Trip>& trip : log.trips)
        times.push_back(trip.value.time);
    for (const Entry<LevelRecord>& level : log.levels)
        if (level.value.odometer)
            times.push_back(level.value.time);
    std::ranges::sort(times);
    RecordHabit habit;
    if (times.empty())
        return habit;
    habit.last = times.back();
    std::vector<double> gaps;
    for (std::size_t i = 1; i < times.size(); ++i)
        gaps.push_back(daysBetween(times[i - 1], times[i]));
    if (gaps.empty())
        return habit;
    const auto nineOfTen = gaps.begin() + std::lround(0.9 * double(gaps.size() - 1));
    std::ranges::nth_element(gaps, nineOfTen);
    habit.gapDays = std::max(1.0, *nineOfTen);
    return habit;
}

// Those whose kilometres nobody doubts.
std::vector<Interval> soundStretches(const Screened& consumption)
{
    std::vector<Interval> sound;
    std::ranges::copy_if(consumption.intervals, std::back_inserter(sound), [&](const Interval& stretch) {
        return std::ranges::none_of(consumption.flags, [&](const FillFlag& flag) {
            return flag.fill == stretch.lastFill;
        });
    });
    return sound;
}

// Of so many whole days of silence, those in which the car is taken to have driven on.
double daysDriven(double silence, const RecordHabit& habit, double told)
{
    const double longer = std::max(0.0, silence - habit.gapDays);
    return (1 - told) * (silence - longer) + longer;
}

double wholeDays(Instant from, Instant to)
{
    return std::max(0.0, double(std::chrono::floor<std::chrono::days>(to - from).count()));
}

// Kilometres of trips, each as far as it was told before the end of its stretch, a trip in the
// middle of it wholly. Both in their order.
double toldKm(std::span<const Interval> stretches, std::span<const Entry<Trip>> trips)
{
    double km = 0;
    auto trip = trips.begin();
    for (const Interval& stretch : stretches) {
        const double length = std::chrono::duration<double>(stretch.end - stretch.begin).count();
        while (trip != trips.end() && trip->value.time <= stretch.begin)
            ++trip;
        for (; trip != trips.end() && trip->value.time <= stretch.end; ++trip)
            km += 2 * trip->value.distance.km()
                * std::chrono::duration<double>(stretch.end - trip->value.time).count() / length;
    }
    return km;
}

} // namespace

std::optional<DailyRoad> dailyRoad(std::span<const Interval> stretches, std::span<const Entry<Trip>> trips)
{
    stretches = stretches.last(std::min(stretches.size(), kStretchesOfHabit));
    double km = 0, days = 0;
    for (const Interval& stretch : stretches) {
        km += stretch.distance.km();
        days += daysBetween(stretch.begin, stretch.end);
    }
    if (!(days >= 1 && km > 0))
        return std::nullopt;
    DailyRoad road{km / days, 0.0, std::max(1.0, days / double(stretches.size())), days,
                   std::min(1.0, toldKm(stretches, trips) / km)};
    double scatter = 0; // in stretches' worth of c^2
    for (const Interval& stretch : stretches) {
        const double length = daysBetween(stretch.begin, stretch.end);
        const double usual = road.kmPerDay * road.usualDays;
        scatter += std::pow((stretch.distance.km() - road.kmPerDay * length) / usual, 2)
            / std::max(1.0, length / road.usualDays);
    }
    road.relativeVariance = (scatter + kUsualScatterWorth * kUsualScatter * kUsualScatter)
        / (double(stretches.size()) - 1 + kUsualScatterWorth);
    return road;
}

Estimate<Distance> roadOf(double days, const DailyRoad& road, Distance most)
{
    assert(days > 0 && most >= Distance());
    const double usual = road.usualDays;
    const double relative = road.relativeVariance * (usual / days)
        * (std::max(1.0, days / usual) + days / road.observedDays);
    const double shape = 1 / relative;
    const double scale = road.kmPerDay * days / shape;
    const double limit = most.km() / scale;
    const double mean = shape * boost::math::gamma_p(shape + 1, limit)
        + limit * boost::math::gamma_q(shape, limit);
    const double sure = std::min(boost::math::gamma_p_inv(shape, 0.99), limit);
    return {Distance::fromKm(scale * mean),
            Distance::fromKm(scale * std::max(0.0, sure - mean) / kSureQuantile)};
}

std::optional<Unlogged> unloggedRoad(const CarKnowledge& car, std::optional<Instant> today,
                                     Distance toDry, std::optional<Instant> from)
{
    const RecordHabit habit = recordHabit(car.log);
    if (!today || !(habit.last || from))
        return std::nullopt;
    const Instant last = habit.last.value_or(*from);
    const Instant start = std::max(last, from.value_or(last));
    Unlogged unlogged;
    unlogged.silence = std::chrono::floor<std::chrono::days>(*today - start);
    if (unlogged.silence < std::chrono::days(1))
        return std::nullopt;
    const double before = wholeDays(last, start), silence = before + double(unlogged.silence.count());
    unlogged.longerThanUsual = silence > habit.gapDays;
    const std::optional<DailyRoad> daily = dailyRoad(soundStretches(car.consumption), car.log.trips);
    if (!daily)
        return unlogged;
    const double days = daysDriven(silence, habit, daily->told) - daysDriven(before, habit, daily->told);
    if (!(days > 0 && toDry > Distance()))
        return std::nullopt;
    unlogged.road = roadOf(days, *daily, toDry);
    unlogged.mayBeAll = unlogged.road->mean + kSureQuantile * unlogged.road->sd >= 0.999 * toDry;
    return unlogged;
}

Sentence sentenceOf(const Unlogged& unlogged)
{
    const Part days = counted(std::size_t(unlogged.silence.count()));
    if (!unlogged.road)
        return Sentence::of("%1 days without a record, and nothing says how far this car goes in a day. "
                            "What was driven since is not in these distances: tell the odometer, a "
                            "reading or the litres", days);
    if (unlogged.mayBeAll && unlogged.silence == std::chrono::days(1))
        return Sentence::of("A day without a record. By what this car usually goes in a day the tank may be "
                            "empty: tell the odometer, a reading or the litres");
    if (unlogged.mayBeAll)
        return Sentence::of("%1 days without a record. By what this car usually goes in a day the tank "
                            "may be empty: tell the odometer, a reading or the litres", days);
    return Sentence::of("%1 days without a record. By what this car usually goes in a day %2 more are "
                        "counted as driven: tell the odometer, a reading or the litres",
                        days, amount(unlogged.road->mean));
}

} // namespace undermark
