// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/trip_amounts.h"

#include "engine/planning/trip_risk.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <nlopt.h>
#include <numeric>

namespace undermark::planning {

namespace {

constexpr double kLitreSlack = 1e-7; // what the solver may miss a limit by
constexpr double kAnyLitres = 1e9;
constexpr double kRiskKept = 1.0 - 1e-7; // of the risk allowed, so that none is missed

using Litres = std::vector<double>;

// Everything that follows from the litres of the partial purchases; linear in them.
struct Walked {
    double objective = 0.0;
    Litres slack; // of each limit, >= 0 where it is kept
    Litres level; // on each arrival
};

class Amounts {
public:
    Amounts(const Problem& problem, std::vector<Purchase> stops, double allowed)
        : m_problem(problem), m_stops(std::move(stops)),
          m_allowedZ(quantileForRisk(allowed * kRiskKept)), m_law(problem, arrivalsOf(problem, m_stops))
    {
        for (std::size_t i = 0; i < m_stops.size(); ++i) {
            if (m_stops[i].isPart())
                m_parts.push_back(i);
        }
        findWindows();
    }

    TripAmounts cheapest()
    {
        Litres litres = mostPossible();
        const Walked safest = walk(litres);
        if (std::ranges::any_of(safest.slack, [](double s) { return s < -kLitreSlack; }) ||
            lacking(safest.level) > 0)
            return {{}, kNoLimit, m_certain, m_work};
        if (!m_parts.empty())
            minimise(litres);
        const double objective = walk(litres).objective; // sets the litres
        return {m_stops, objective, m_certain, m_work};
    }

private:
    const Offer& offer(const Purchase& stop) const
    {
        return m_problem.offers[static_cast<std::size_t>(stop.point)];
    }

    double highest(const Purchase& stop) const { return m_problem.highestSupply(stop.point); }

    // The supplies with which each stop is found open.
    void findWindows()
    {
        m_windows.assign(m_stops.size(), {-kAnyLitres, kAnyLitres});
        if (!m_problem.timetable)
            return;
        const Timetable& table = *m_problem.timetable;
        double stopped = 0.0;
        for (std::size_t i = 0; i < m_stops.size(); ++i) {
            const auto at = static_cast<std::size_t>(m_stops[i].point);
            const double lowest = at == 0 ? m_problem.start : m_problem.fuelTo[at];
            const double highest = at == 0 ? m_problem.start : lowest + m_problem.capacity;
            const Pieces open = table.openParts(m_stops[i].point, m_problem.at[at], stopped,
                                                {{lowest, highest, 0.0, 0.0, kStart}});
            m_certain = m_certain && open.size() < 2;
            if (open.empty())
                m_windows[i] = {kAnyLitres, -kAnyLitres};
            else
                m_windows[i] = {open.front().from, open.front().to};
            stopped += table.stopMinutes[at];
        }
    }

    double most(const Purchase& stop) const { return std::min(offer(stop).most, m_problem.capacity); }

    // Every purchase as large as those after it let it be: all levels are then as high
    // as they can be at once, and no litres are safer.
    Litres mostPossible()
    {
        Litres roof(m_stops.size()); // of the supply on leaving
        double next = kNoLimit;      // of the supply on the next arrival
        for (std::size_t i = m_stops.size(); i-- > 0;) {
            const Purchase& stop = m_stops[i];
            roof[i] = std::min(highest(stop), next);
            if (stop.full)
                next = highest(stop) + offer(stop).detourLitres - offer(stop).least;
            else
                next = roof[i] + offer(stop).detourLitres -
                       (stop.cans > 0 ? stop.litres : offer(stop).least);
            next = std::min(next, m_windows[i].to);
        }
        Litres litres;
        double supply = m_problem.start;
        for (std::size_t i = 0; i < m_stops.size(); ++i) {
            const Purchase& stop = m_stops[i];
            double bought = stop.litres;
            if (stop.cans == 0)
                bought = (stop.full ? highest(stop) : roof[i]) + offer(stop).detourLitres - supply;
            if (stop.isPart()) {
                bought = std::clamp(bought, offer(stop).least, std::max(most(stop), offer(stop).least));
                litres.push_back(bought);
            }
            supply += bought - offer(stop).detourLitres;
        }
        return litres;
    }

    // Sets the litres of m_stops.
    Walked walk(const Litres& litres)
    {
        Walked walked;
        double supply = m_problem.start;
        int since = kStart;
        int from = 0;
        std::size_t part = 0;
        for (std::size_t i = 0; i < m_stops.size(); ++i) {
            Purchase& stop = m_stops[i];
            drive(walked, supply, since, from, stop.point);
            if (m_problem.timetable) {
                walked.slack.push_back(supply - m_windows[i].from);
                walked.slack.push_back(m_windows[i].to - supply);
            }
            from = stop.point;
            if (stop.full) {
                stop.litres = highest(stop) + offer(stop).detourLitres - supply;
                walked.slack.push_back(stop.litres - offer(stop).least);
                if (offer(stop).most < m_problem.capacity)
                    walked.slack.push_back(offer(stop).most - stop.litres);
            } else if (stop.isPart()) {
                stop.litres = litres[part++];
            }
            supply += stop.litres - offer(stop).detourLitres;
            walked.slack.push_back(highest(stop) - supply);
            walked.objective += offer(stop).perStop + offer(stop).perLitre * stop.litres;
            if (stop.full)
                since = stop.point;
        }
        drive(walked, supply, since, from, m_problem.points - 1);
        for (const Arrival& arrival : arrivalsOf(m_problem, m_stops))
            walked.level.push_back(arrival.level);
        return walked;
    }

    void drive(Walked& walked, double supply, int since, int from, int to) const
    {
        double least = -kNoLimit;
        for (int point = from; point < to; ++point) {
            walked.objective += m_problem.holdFrom(point) *
                                (supply - m_problem.fuelTo[static_cast<std::size_t>(point)]);
            least = std::max(least, m_problem.leastSupply(since, point + 1));
        }
        if (to > from)
            walked.slack.push_back(
                supply - std::max(least, m_problem.leastSupplyToStop(since, to)));
    }

    // How much the normal quantile of the whole way's confidence falls short of what is
    // asked for: nearly linear in the levels. `slope`: by each level.
    double lacking(const Litres& level, std::vector<double>* slope = nullptr)
    {
        for (std::size_t i = 0; i < level.size(); ++i)
            m_law.setLevel(i, level[i]);
        m_work += 100 + 20 * level.size() * level.size();
        const double z = quantileForRisk(m_law.below(m_problem.floor, slope));
        if (slope) {
            const double density = std::max(normalDensity(z), 1e-280);
            for (double& each : *slope)
                each /= density;
        }
        return m_allowedZ - z;
    }

    void minimise(Litres& litres);

    const Problem& m_problem;
    std::vector<Purchase> m_stops;
    struct Window {
        double from, to;
    };
    std::vector<Window> m_windows;    // of m_stops
    bool m_certain = true; // no stop has several
    std::vector<std::size_t> m_parts; // of m_stops: those whose litres are free
    std::size_t m_work = 0;
    double m_allowedZ;
    TripLaw m_law;

    // For the solver: all is linear but the risk.
    Walked m_base;               // without litres
    std::vector<Walked> m_slope; // by each
    std::vector<std::size_t> m_limits; // those that the litres touch
    double m_scale = 1.0;        // of the objective
    friend struct Solver;
};

// What NLopt calls.
struct Solver {
    static double objective(unsigned n, const double* x, double* slope, void* data)
    {
        const Amounts& a = *static_cast<Amounts*>(data);
        double value = 0.0;
        for (unsigned i = 0; i < n; ++i) {
            const double each = a.m_slope[i].objective / a.m_scale;
            value += each * x[i];
            if (slope)
                slope[i] = each;
        }
        return value;
    }

    static void limits(unsigned m, double* result, unsigned n, const double* x, double* slope,
                       void* data)
    {
        const Amounts& a = *static_cast<Amounts*>(data);
        for (unsigned k = 0; k < m; ++k) {
            const std::size_t limit = a.m_limits[k];
            result[k] = -a.m_base.slack[limit];
            for (unsigned i = 0; i < n; ++i) {
                const double each = -a.m_slope[i].slack[limit];
                result[k] += each * x[i];
                if (slope)
                    slope[k * n + i] = each;
            }
        }
    }

    static double risk(unsigned n, const double* x, double* slope, void* data)
    {
        Amounts& a = *static_cast<Amounts*>(data);
        std::vector<double> byLevel;
        const double value = a.lacking(a.walk(Litres(x, x + n)).level, slope ? &byLevel : nullptr);
        for (unsigned i = 0; slope && i < n; ++i)
            slope[i] = std::inner_product(byLevel.begin(), byLevel.end(),
                                          a.m_slope[i].level.begin(), 0.0);
        return value;
    }
};

// Begins from litres that keep everything, and leaves them where nothing better was
// found.
void Amounts::minimise(Litres& litres)
{
    const std::size_t n = litres.size();
    const Litres none(n, 0.0);
    m_base = walk(none);
    m_scale = 1e-9;
    for (std::size_t i = 0; i < n; ++i) {
        Litres one = none;
        one[i] = 1.0;
        Walked slope = walk(one);
        slope.objective -= m_base.objective;
        for (std::size_t k = 0; k < slope.slack.size(); ++k)
            slope.slack[k] -= m_base.slack[k];
        for (std::size_t k = 0; k < slope.level.size(); ++k)
            slope.level[k] -= m_base.level[k];
        m_scale = std::max(m_scale, std::fabs(slope.objective));
        m_slope.push_back(std::move(slope));
    }
    for (std::size_t k = 0; k < m_base.slack.size(); ++k) {
        if (std::ranges::any_of(m_slope, [k](const Walked& s) { return s.slack[k] != 0; }))
            m_limits.push_back(k);
    }
    Litres low, high;
    for (const std::size_t i : m_parts) {
        low.push_back(offer(m_stops[i]).least);
        high.push_back(std::max(most(m_stops[i]), offer(m_stops[i]).least));
    }
    const std::unique_ptr<nlopt_opt_s, void (*)(nlopt_opt)> solver(
        nlopt_create(NLOPT_LD_SLSQP, static_cast<unsigned>(n)), nlopt_destroy);
    nlopt_set_min_objective(solver.get(), Solver::objective, this);
    nlopt_set_lower_bounds(solver.get(), low.data());
    nlopt_set_upper_bounds(solver.get(), high.data());
    const Litres tolerance(m_limits.size(), kLitreSlack);
    nlopt_add_inequality_mconstraint(solver.get(), static_cast<unsigned>(m_limits.size()),
                                     Solver::limits, this, tolerance.data());
    nlopt_add_inequality_constraint(solver.get(), Solver::risk, this, 1e-9);
    nlopt_set_xtol_rel(solver.get(), 1e-10);
    nlopt_set_maxeval(solver.get(), 200);
    Litres found = litres;
    double value = 0.0;
    nlopt_optimize(solver.get(), found.data(), &value);
    const Walked there = walk(found);
    const bool kept = std::ranges::all_of(there.slack, [](double s) { return s >= -2 * kLitreSlack; }) &&
                      lacking(there.level) <= 1e-8;
    if (kept && there.objective < walk(litres).objective)
        litres = found;
}

} // namespace

TripAmounts cheapestAmounts(const Problem& problem, std::vector<Purchase> stops, double allowed)
{
    return Amounts(problem, std::move(stops), allowed).cheapest();
}

} // namespace undermark::planning
