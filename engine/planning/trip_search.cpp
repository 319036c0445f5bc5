// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/trip_search.h"

#include "engine/planning/trip_amounts.h"
#include "engine/planning/trip_risk.h"

#include <algorithm>
#include <cmath>
#include <queue>

namespace undermark::planning {

namespace {

constexpr double kTolerance = 1e-7; // of the objective, relative
constexpr std::size_t kMostTripWork = 20'000'000; // pieces looked at, and the like: seconds

// All plans with these choices.
struct Part {
    SearchResult best; // a bound: with the whole way's confidence at each stop
    std::vector<std::uint32_t> choices;
    int decided; // before this point there is one choice each

    bool operator<(const Part& other) const { return best.objective > other.best.objective; }
};

class TripSearch {
public:
    TripSearch(Problem problem, double allowed)
        : m_problem(std::move(problem)), m_allowed(allowed),
          m_hours(m_problem.timetable ? Hours::kept : Hours::ignored)
    {
        m_bounding = m_problem;
        m_bounding.stopZ = quantileForRisk(allowed);
    }

    TripSearchResult run(const std::vector<Purchase>* known)
    {
        if (known)
            improve(*known);
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
               m_work < kMostTripWork) {
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
    double slack() const
    {
        return m_result.purchases ? kTolerance * std::fabs(m_result.objective) + 1e-9 : 0.0;
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
        if (!improve(part.best.purchases))
            m_unknown = std::min(m_unknown, part.best.objective);
        return false;
    }

    // Whether it is certain that nothing better can be done with these stops.
    bool improve(const std::vector<Purchase>& stops)
    {
        TripAmounts amounts = cheapestAmounts(m_problem, stops, m_allowed);
        m_work += amounts.work;
        if (amounts.objective < m_result.objective) {
            m_result.objective = amounts.objective;
            m_result.purchases = std::move(amounts.purchases);
        }
        return amounts.certain;
    }

    // All plans of the part but those with the stops of its best.
    void split(const Part& part)
    {
        std::vector<int> chosen(m_bounding.offers.size(), kPass);
        for (const Purchase& purchase : part.best.purchases)
            chosen[static_cast<std::size_t>(purchase.point)] = purchase.choice();
        std::vector<std::uint32_t> choices = part.choices;
        for (int point = part.decided; point + 1 < m_bounding.points; ++point) {
            const auto at = static_cast<std::size_t>(point);
            if (!m_bounding.offers[at].open)
                continue;
            if (m_work > kMostTripWork || chosen[at] >= kChoices) {
                m_unknown = std::min(m_unknown, part.best.objective);
                return;
            }
            const std::uint32_t same = std::uint32_t(1) << chosen[at];
            choices[at] = part.choices[at] & ~same;
            add(choices, point, part.best.objective);
            choices[at] = same;
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
    std::size_t m_work = 0;
    Hours m_hours;
    bool m_settled = false;       // by the lower bound itself
    double m_unknown = kNoLimit;  // bound of what could not be looked at
    TripSearchResult m_result;
};

} // namespace

TripSearchResult searchForTrip(Problem problem, double allowed, const std::vector<Purchase>* known)
{
    return TripSearch(std::move(problem), allowed).run(known);
}

} // namespace undermark::planning
