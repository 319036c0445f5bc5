// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/trip_search.h"

#include "engine/planning/risk/trip_risk.h"
#include "engine/planning/search/trip_amounts.h"

#include <algorithm>
#include <cmath>
#include <queue>

namespace undermark::planning {

namespace {

constexpr double kTripTolerance = 1e-6; // of the objective, relative
constexpr double kNothing = 1e-4;   // L; whoever buys less does not stop
constexpr double kDrops = 0.05;     // L; nor whoever buys less for nothing
constexpr double kMostSlip = 1e-5;  // where a passed pump can be counted as an arrival

// All plans with these choices.
struct Part {
    SearchResult best; // a bound: with the whole way's confidence at each stop
    std::vector<std::uint32_t> choices;
    int decided; // before this point there is one choice each

    bool operator<(const Part& other) const { return best.objective > other.best.objective; }
};

class TripSearch {
public:
    TripSearch(Problem problem, double allowed, std::size_t mostWork)
        : m_problem(std::move(problem)), m_allowed(allowed), m_mostWork(mostWork),
          m_hours(m_problem.timetable ? Hours::kept : Hours::ignored)
    {
        m_bounding = m_problem;
        m_bounding.stopZ = quantileForRisk(allowed);
        findFreeStops();
    }

    TripSearchResult run()
    {
        SearchResult root = search(m_bounding, m_hours);
        if (root.stuckBefore || root.gaveUp) {
            m_result.complete = !root.gaveUp;
            m_result.bound = root.gaveUp ? -kNoLimit : kNoLimit;
            return std::move(m_result);
        }
        std::vector<std::uint32_t> all;
        for (const Offer& offer : m_bounding.offers)
            all.push_back(offer.choices);
        m_parts.push({std::move(root), std::move(all), 0});
        while (!m_parts.empty() && m_parts.top().best.objective < m_result.objective - slack() &&
               m_work < m_mostWork) {
            const Part part = m_parts.top();
            m_parts.pop();
            if (settle(part))
                break;
            split(part);
        }
        m_result.bound = std::min(m_result.objective, m_unknown);
        if (!m_settled && !m_parts.empty())
            m_result.bound = std::min(m_result.bound, m_parts.top().best.objective);
        m_result.complete = m_result.bound >= m_result.objective - slack();
        return std::move(m_result);
    }

private:
    static double tolerance(double objective) { return kTripTolerance * std::fabs(objective) + 1e-9; }
    double slack() const { return m_result.purchases ? tolerance(m_result.objective) : 0.0; }

    // Where to stop or not is no choice.
    void findFreeStops()
    {
        m_free.assign(m_problem.offers.size(), false);
        if (!m_problem.carryingCosts || m_hours == Hours::kept || !m_problem.spreadGrows)
            return;
        for (int point = 0; point + 1 < m_problem.points; ++point) {
            const auto at = static_cast<std::size_t>(point);
            const Offer& offer = m_problem.offers[at];
            if (!offer.open || offer.fromCans || offer.least > 0 || offer.detourLitres > 0)
                continue;
            const double slip = point > 0 ? riskOfSlip(point) : 0.0; // the start is no arrival
            m_free[at] = slip < kMostSlip;
            if (m_free[at])
                m_slips += m_allowed * slip / (1 - slip);
        }
    }

    // That less than nothing is used up from `from` to the next arrival, whichever it is.
    // To be below the limit here and above it there is at most as likely as this times the
    // former: who used more before uses more after (two normals, positively correlated).
    double riskOfSlip(int from) const
    {
        double slip = 0.0;
        for (int to = from + 1; to < m_problem.points; ++to) {
            const auto at = static_cast<std::size_t>(to);
            if (!m_problem.offers[at].open && to + 1 < m_problem.points)
                continue;
            const double used =
                m_problem.fuelTo[at] - m_problem.fuelTo[static_cast<std::size_t>(from)];
            const double variance = m_problem.variance(from, to) - m_problem.fullVariance;
            slip = std::max(slip, arrivalRisk(used, std::sqrt(variance), 0.0));
        }
        return slip;
    }

    // The litres for the stops of the part's best. True where nothing can be better.
    bool settle(const Part& part)
    {
        const double risk =
            riskOfTrip(m_problem, arrivalsOf(m_problem, part.best.purchases)).belowFloor;
        if (risk <= m_allowed) {
            m_result.purchases = part.best.purchases;
            m_result.objective = part.best.objective;
            return m_settled = true;
        }
        m_unknown = std::min(m_unknown, improve(part.best.purchases));
        return false;
    }

    // A bound of what can be done with these stops, and any of the free ones.
    double improve(const std::vector<Purchase>& stops)
    {
        const std::vector<Purchase> all = withFreeStops(stops);
        if (all.size() == stops.size() && m_slips == 0)
            return narrow(stops, m_allowed, RunRisk::Rounding::up).bound;
        const Narrowed least = narrow(all, m_allowed + m_slips, RunRisk::Rounding::down);
        // Where two pumps are as good as each other some drops may be left at one.
        for (const double nothing : {kDrops, kNothing}) {
            if (least.bound >= m_result.objective - slack())
                break;
            std::vector<Purchase> kept;
            for (const Purchase& stop : least.amounts.purchases) {
                if (!isFree(stop) || stop.litres > nothing)
                    kept.push_back(stop);
            }
            narrow(kept, m_allowed, RunRisk::Rounding::up);
        }
        return least.bound;
    }

    bool isFree(const Purchase& stop) const
    {
        return stop.isPart() && m_free[static_cast<std::size_t>(stop.point)];
    }

    std::vector<Purchase> withFreeStops(const std::vector<Purchase>& stops) const
    {
        std::vector<Purchase> all;
        auto next = stops.begin();
        for (int point = 0; point < m_problem.points; ++point) {
            if (next != stops.end() && next->point == point)
                all.push_back(*next++);
            else if (m_free[static_cast<std::size_t>(point)])
                all.push_back({point, 0.0, false, 0});
        }
        return all;
    }

    struct Narrowed {
        TripAmounts amounts;
        double bound = kNoLimit; // nothing with these stops is below it
    };

    // The cheapest litres of these stops. They are a plan where this is the risk allowed.
    Narrowed narrow(std::vector<Purchase> stops, double allowed, RunRisk::Rounding rounding)
    {
        Narrowed found;
        const Problem same = withStops(stops);
        for (int i = 0; i < 3 && (i == 0 || m_work < m_mostWork); ++i) {
            TripAmounts amounts = cheapestAmounts(m_problem, stops, allowed, rounding);
            m_work += amounts.work;
            if (amounts.objective == kNoLimit) { // no litres do it, or none of the first hours
                if (m_hours == Hours::kept)
                    found.bound = leastObjective(same, {}, m_hours).objective;
                return found;
            }
            const TripBound bound = leastObjective(same, amounts.limit, m_hours);
            m_work += bound.work;
            const bool gained = i == 0 || bound.objective > found.bound ||
                                amounts.objective < found.amounts.objective;
            found.bound = i == 0 ? bound.objective : std::max(found.bound, bound.objective);
            if (amounts.objective < found.amounts.objective)
                found.amounts = std::move(amounts);
            if (!gained ||
                found.bound >= found.amounts.objective - tolerance(found.amounts.objective))
                break;
            // The solver stopped too early.
            if (found.bound < found.amounts.objective - 1e-3 * std::fabs(found.amounts.objective))
                beginFrom(bound.purchases, stops);
            else
                stops = found.amounts.purchases;
        }
        if (allowed == m_allowed && rounding == RunRisk::Rounding::up &&
            found.amounts.objective < m_result.objective) {
            m_result.objective = found.amounts.objective;
            m_result.purchases = found.amounts.purchases;
        }
        return found;
    }

    // The litres of `from` for those stops that are in it.
    static void beginFrom(const std::vector<Purchase>& from, std::vector<Purchase>& stops)
    {
        auto next = from.begin();
        for (Purchase& stop : stops) {
            next = std::find_if(next, from.end(),
                                [&](const Purchase& p) { return p.point >= stop.point; });
            if (stop.cans == 0)
                stop.litres = next != from.end() && next->point == stop.point ? next->litres : 0.0;
        }
    }

    // With no other choices than these stops.
    Problem withStops(const std::vector<Purchase>& stops) const
    {
        Problem problem = m_bounding;
        for (std::size_t i = 0; i < problem.offers.size(); ++i)
            problem.offers[i].choices = same(i, kPass);
        for (const Purchase& stop : stops) {
            const auto at = static_cast<std::size_t>(stop.point);
            problem.offers[at].choices = same(at, stop.choice());
        }
        return problem;
    }

    // The choices that are no other than `choice`.
    std::uint32_t same(std::size_t point, int choice) const
    {
        if (m_free[point] && choice != kFull)
            return std::uint32_t(1) << kPass | std::uint32_t(1) << kPart;
        return std::uint32_t(1) << choice;
    }

    // All plans of the part but those with the stops of its best.
    void split(const Part& part)
    {
        std::vector<int> chosen(m_bounding.offers.size(), kPass);
        for (const Purchase& purchase : part.best.purchases)
            chosen[static_cast<std::size_t>(purchase.point)] = purchase.choice();
        std::vector<std::uint32_t> choices = part.choices;
        // The bounds of the rest are cheap where the litres were dear, and often enough.
        const std::size_t most = std::max(m_mostWork, m_work + m_mostWork / 5);
        for (int point = part.decided; point + 1 < m_bounding.points; ++point) {
            const auto at = static_cast<std::size_t>(point);
            if (!m_bounding.offers[at].open)
                continue;
            if (m_work > most || chosen[at] >= kChoices) {
                m_unknown = std::min(m_unknown, part.best.objective);
                return;
            }
            choices[at] = part.choices[at] & ~same(at, chosen[at]);
            add(choices, point, part.best.objective);
            choices[at] = part.choices[at] & same(at, chosen[at]);
        }
    }

    void add(const std::vector<std::uint32_t>& choices, int decided, double bound)
    {
        for (std::size_t i = 0; i < choices.size(); ++i)
            m_bounding.offers[i].choices = choices[i];
        SearchResult best = search(m_bounding, m_hours);
        m_work += best.work + 10 * choices.size();
        if (best.gaveUp)
            m_unknown = std::min(m_unknown, bound);
        else if (!best.stuckBefore && best.objective < m_result.objective - slack())
            m_parts.push({std::move(best), choices, decided});
    }

    Problem m_problem;
    Problem m_bounding; // with the whole way's confidence at each stop
    double m_allowed;
    std::priority_queue<Part> m_parts;
    std::size_t m_mostWork;
    std::size_t m_work = 0;
    Hours m_hours;
    std::vector<char> m_free;    // of each point
    double m_slips = 0.0;        // risk that passed pumps count and stops there do not
    bool m_settled = false;      // by the lower bound itself
    double m_unknown = kNoLimit; // bound of what could not be looked at
    TripSearchResult m_result;
};

} // namespace

TripSearchResult searchForTrip(Problem problem, double allowed, std::size_t mostWork)
{
    return TripSearch(std::move(problem), allowed, mostWork).run();
}

} // namespace undermark::planning
