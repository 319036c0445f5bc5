// SPDX-License-Identifier: GPL-3.0-or-later
//
// Drives a plan on the road, many times: litres and kilometres one after the other, with none of
// the planner's formulas. In one drive the rates are what they are, out and back; each kilometre
// has its noise; a tank clicks where it clicks; a detour is driven; a limit ends a purchase.
#pragma once

#include "engine/planning/plan.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace undermark::test {

struct Share {
    double of = 0.0;
    double error = 0.0; // standard, of a count
};

class RoadDriver {
public:
    RoadDriver(const PlanRequest& request, const Plan& plan, std::uint64_t seed = 5)
        : m_request(request), m_plan(plan), m_random(seed)
    {
    }

    // How often the engine starves (0), or the level falls below so many litres, on the way.
    Share below(double litres, int times)
    {
        return share(times, [&] { return !arrives(litres); });
    }

    // How often one is not back at the start of a gap with so many litres, turning round at `at`.
    Share notBack(const Gap& gap, Distance at, double litres, int times)
    {
        return share(times, [&] {
            begin();
            driveTo(gap.from, -kAnything);
            const bool stopped = m_stop != m_plan.stops.end() && m_stop->point == gap.from;
            stopAt(gap.from, -kAnything);
            const auto& points = m_request.route.points;
            std::vector<std::pair<std::size_t, double>> out; // section and km
            for (std::size_t i = gap.from; i < gap.to && points[i].at < at; ++i)
                out.emplace_back(i, (std::min(points[i + 1].at, at) - points[i].at).km());
            for (const auto& [section, km] : out) {
                idle(section);
                drive(section, km);
                climb(section, km, points[section].climb.there);
            }
            std::reverse(out.begin(), out.end());
            for (const auto& [section, km] : out) {
                drive(section, km);
                climb(section, km, points[section].climb.back);
            }
            if (const auto& detour = points[gap.from].detour; detour && stopped)
                drive(gap.from, detour->km() / 2);
            return m_level < litres;
        });
    }

private:
    static constexpr double kAnything = 1e9;

    template <class Failed> Share share(int times, Failed failed)
    {
        int count = 0;
        for (int i = 0; i < times; ++i)
            count += failed();
        const double of = double(count) / times;
        return {of, std::sqrt(std::max(of * (1 - of), 1.0 / times) / times)};
    }

    double normal() { return m_normal(m_random); }

    // The rates of this drive, and what is in the tank.
    void begin()
    {
        const RateModel& rates = m_request.rates;
        const std::size_t n = rates.mean.size();
        std::vector<double> errors(n);
        for (double& error : errors)
            error = normal();
        m_rates.assign(n, 0.0);
        std::vector<double> root(n * n, 0.0); // Cholesky
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t j = 0; j <= i; ++j) {
                double sum = rates.covariance[i * n + j];
                for (std::size_t k = 0; k < j; ++k)
                    sum -= root[i * n + k] * root[j * n + k];
                root[i * n + j] = i == j ? std::sqrt(std::max(sum, 0.0))
                                  : root[j * n + j] > 0 ? sum / root[j * n + j] : 0.0;
                m_rates[i] += root[i * n + j] * errors[j];
            }
            m_rates[i] += rates.mean[i].litresPerKm();
        }
        m_climb = rates.climb.mean.litresPerKm() + rates.climb.sd.litresPerKm() * normal();
        m_level = m_request.tank.start.mean.litres() + m_request.tank.start.sd.litres() * normal();
        m_stop = m_plan.stops.begin();
    }

    void drive(std::size_t section, double km)
    {
        const std::size_t mode = *m_request.rates.indexOf(m_request.route.points[section].mode);
        m_level -= m_rates[mode] * km + m_request.rates.legNoiseSd * std::sqrt(km) * normal();
    }

    // Of a section of which so many km are driven.
    void climb(std::size_t section, double km, Distance height)
    {
        const auto& points = m_request.route.points;
        const double whole = (points[section + 1].at - points[section].at).km();
        if (whole > 0)
            m_level -= m_climb * height.km() * km / whole;
    }

    void idle(std::size_t point)
    {
        const auto& minutes = m_request.route.points[point].idle;
        if (minutes)
            m_level -= m_request.rates.idling.litresPerHour() * minutes->count() / 60;
    }

    // Stops at a point if that is planned; false where the level fell below on the way there.
    bool stopAt(std::size_t point, double litres)
    {
        if (m_stop == m_plan.stops.end() || m_stop->point != point)
            return true;
        const PlannedStop& stop = *m_stop++;
        const RoutePoint& place = m_request.route.points[point];
        const double half = place.detour.value_or(Distance()).km() / 2;
        if (half > 0)
            drive(point, half);
        if (half > 0 && m_level < litres)
            return false;
        const double full = m_request.tank.capacity.litres() + m_request.tank.fullSd.litres() * normal();
        const double wanted = stop.toFull ? full - m_level : stop.buy.litres();
        const double sold = std::min(wanted, place.mostPurchase.value_or(Volume::fromLitres(kAnything)).litres());
        const bool clicks = place.fuel != FuelSource::can;
        m_level = clicks ? std::max(m_level, std::min(m_level + sold, full)) : m_level + sold;
        if (half > 0)
            drive(point, half);
        return true;
    }

    // From point to point, up to before the stop at the last one.
    bool driveTo(std::size_t last, double litres)
    {
        const auto& points = m_request.route.points;
        for (std::size_t i = 0; i < last; ++i) {
            if (!stopAt(i, litres))
                return false;
            idle(i);
            drive(i, (points[i + 1].at - points[i].at).km());
            climb(i, (points[i + 1].at - points[i].at).km(), points[i].climb.there);
            if (m_level < litres)
                return false;
        }
        return true;
    }

    bool arrives(double litres)
    {
        begin();
        return driveTo(m_request.route.points.size() - 1, litres);
    }

    const PlanRequest& m_request;
    const Plan& m_plan;
    std::mt19937_64 m_random;
    std::normal_distribution<double> m_normal;
    std::vector<double> m_rates; // L/km by mode, of this drive
    double m_climb = 0.0; // L/km of height, of this drive
    double m_level = 0.0;
    std::vector<PlannedStop>::const_iterator m_stop;
};

} // namespace undermark::test
