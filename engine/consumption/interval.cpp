// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/interval.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// A moment at which the level is known.
struct KnownLevel {
    std::size_t fill;
    double belowFull_l;     // litres missing to the first click, negative above it
    double variance_l2;
    double pumpedAfter_l;   // of this fill, after that moment
    bool click;
};

class Builder {
public:
    Builder(std::span<const Fill> fills, std::span<const Trip> trips, const IntervalOptions& options)
        : m_fills(fills), m_trips(trips), m_options(options)
    {
    }

    std::vector<Interval> build()
    {
        const auto [firstFull, lastFull] = fullRange();
        for (std::size_t i = 0; i < m_fills.size(); ++i) {
            addStep(i);
            const bool isFull = m_fills[i].extent != FillExtent::partial;
            if (std::ranges::binary_search(m_options.anew, i))
                m_begin.reset();
            if (isFull) {
                close(fullLevel(i));
                start(fullLevel(i));
            } else if (i < firstFull || i > lastFull) {
                boundByReading(i);
            }
        }
        return std::move(m_intervals);
    }

private:
    // Positions of the first and the last full fill; both past the end where
    // there is none.
    std::pair<std::size_t, std::size_t> fullRange() const
    {
        std::size_t first = m_fills.size();
        std::size_t last = m_fills.size();
        for (std::size_t i = 0; i < m_fills.size(); ++i) {
            if (m_fills[i].extent == FillExtent::partial)
                continue;
            first = std::min(first, i);
            last = i;
        }
        return {first, first == m_fills.size() ? 0 : last};
    }

    KnownLevel fullLevel(std::size_t i) const
    {
        if (m_fills[i].extent == FillExtent::full)
            return {i, 0, 0, 0, true};
        const double sd_l = m_options.neckExtra.sd.litres();
        return {i, -m_options.neckExtra.mean.litres(), sd_l * sd_l, 0, false};
    }

    // A partial fill with a usable reading: the level on arrival ends a
    // stretch and begins the next, in which all that was then pumped is burnt.
    void boundByReading(std::size_t i)
    {
        const auto& signal = m_fills[i].signalBefore;
        if (!signal || !m_options.levelOf)
            return;
        const auto level = m_options.levelOf(*signal);
        if (!level)
            return;
        const double sd_l = level->sd.litres();
        const KnownLevel known{i, (m_options.fullLevel - level->mean).litres(), sd_l * sd_l,
                               m_fills[i].volume.litres(), false};
        close(known);
        start(known);
    }

    // The way from fill i - 1 to fill i.
    std::optional<double> stepKm(std::size_t i) const
    {
        const Fill& fill = m_fills[i];
        if (fill.sinceLast)
            return fill.sinceLast->km();
        if (i > 0 && fill.odometer && m_fills[i - 1].odometer && !fill.odometerReset)
            return (*fill.odometer - *m_fills[i - 1].odometer).km();
        return std::nullopt;
    }

    void addStep(std::size_t i)
    {
        m_pumped_l += m_fills[i].volume.litres();
        m_reset = m_reset || m_fills[i].odometerReset;
        const auto km = stepKm(i);
        m_stepsKnown = m_stepsKnown && km;
        m_steps_km += km.value_or(0);
    }

    bool byOdometer(std::size_t i) const
    {
        return m_fills[m_begin->fill].odometer && m_fills[i].odometer && !m_reset;
    }

    std::optional<double> kmTo(std::size_t i) const
    {
        if (byOdometer(i))
            return (*m_fills[i].odometer - *m_fills[m_begin->fill].odometer).km();
        return m_stepsKnown ? std::optional(m_steps_km) : std::nullopt;
    }

    void start(const KnownLevel& level)
    {
        m_begin = level;
        m_pumped_l = level.pumpedAfter_l;
        m_steps_km = 0;
        m_stepsKnown = true;
        m_reset = false;
    }

    void close(const KnownLevel& level)
    {
        if (!m_begin)
            return;
        const auto km = kmTo(level.fill);
        if (!km || !(*km > 0))
            return;
        Interval interval;
        interval.firstFill = m_begin->fill;
        interval.lastFill = level.fill;
        interval.begin = m_fills[interval.firstFill].time;
        interval.end = m_fills[interval.lastFill].time;
        interval.distance = Distance::fromKm(*km);
        interval.byTripMeter = !byOdometer(level.fill);
        interval.burnt = {Volume::fromLitres(m_pumped_l - level.pumpedAfter_l + level.belowFull_l
                                             - m_begin->belowFull_l),
                          Volume::fromLitres(std::sqrt(level.variance_l2 + m_begin->variance_l2))};
        interval.clickEnds = int(level.click) + int(m_begin->click);
        addTrips(interval);
        if (interval.burnt.mean.litres() > 0)
            m_intervals.push_back(std::move(interval));
    }

    // Moves through the trips once: those up to the end of this stretch.
    void addTrips(Interval& interval)
    {
        for (; m_trip < m_trips.size() && m_trips[m_trip].time <= interval.end; ++m_trip) {
            const Trip& trip = m_trips[m_trip];
            if (trip.time <= interval.begin)
                continue;
            interval.byMode[trip.mode] += trip.distance;
            interval.claimedByTrips += trip.distance;
            interval.idleHours += trip.idle ? trip.idle->count() / 60 : 0;
            interval.coldStarts += trip.starts.value_or(0);
            if (trip.climb) {
                interval.climbed += *trip.climb;
                interval.climbedOver += trip.distance;
            }
        }
        if (interval.claimedByTrips <= interval.distance)
            return;
        for (auto& [mode, distance] : interval.byMode)
            distance = distance * (interval.distance / interval.claimedByTrips);
    }

    std::span<const Fill> m_fills;
    std::span<const Trip> m_trips;
    const IntervalOptions& m_options;
    std::vector<Interval> m_intervals;
    std::optional<KnownLevel> m_begin;
    double m_pumped_l = 0;
    double m_steps_km = 0;      // step by step, where the odometer cannot be used
    bool m_stepsKnown = true;
    bool m_reset = false;
    std::size_t m_trip = 0;     // the first one not looked at yet
};

} // namespace

std::vector<Interval> intervalsFrom(std::span<const Fill> fills, std::span<const Trip> trips,
                                    const IntervalOptions& options)
{
    return Builder(fills, trips, options).build();
}

} // namespace undermark
