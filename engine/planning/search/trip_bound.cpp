// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/trip_bound.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

// The least of objective - multiplier x excess is the objective of `best` less that
// much: a line over the multiplier that is nowhere below the bound.
struct Line {
    double objective = 0.0; // of the purchases
    double excess = 0.0;    // of their weighted levels over the limit

    double at(double multiplier) const { return objective - multiplier * excess; }
};

class Bounding {
public:
    Bounding(Problem problem, const RiskLimit& limit, Hours hours)
        : m_problem(std::move(problem)), m_limit(limit), m_hours(hours)
    {
        m_problem.worth.assign(m_problem.offers.size(), 0.0);
    }

    // The bound is concave over the multiplier: between two lines, one rising and one
    // falling, it is nowhere above where they cross.
    TripBound run()
    {
        std::optional<Line> rising = touch(0.0);
        if (!rising || rising->excess >= 0)
            return std::move(m_bound);
        double multiplier = std::max(std::fabs(rising->objective), 1e-6);
        std::optional<Line> falling = touch(multiplier);
        for (int i = 0; falling && falling->excess < 0; ++i) {
            if (i == 60)
                return noPlan();
            rising = falling;
            falling = touch(multiplier *= 4);
        }
        for (int i = 0; falling && i < 60; ++i) {
            multiplier =
                (rising->objective - falling->objective) / (rising->excess - falling->excess);
            const double most = rising->at(multiplier);
            if (m_bound.objective >= most - 1e-9 * std::fabs(most))
                break;
            std::optional<Line> between = touch(multiplier);
            if (!between)
                break;
            (between->excess < 0 ? rising : falling) = between;
        }
        return std::move(m_bound);
    }

private:
    TripBound noPlan()
    {
        m_bound.objective = kNoLimit;
        return std::move(m_bound);
    }

    // Nothing where there is no plan at all, or too much to look at.
    std::optional<Line> touch(double multiplier)
    {
        for (std::size_t i = 0; i < m_limit.points.size(); ++i)
            m_problem.worth[static_cast<std::size_t>(m_limit.points[i])] =
                multiplier * m_limit.weight[i];
        SearchResult best = search(m_problem, m_hours);
        m_bound.work += best.work;
        if (best.gaveUp || best.stuckBefore) {
            if (!best.gaveUp)
                m_bound.objective = kNoLimit;
            return std::nullopt;
        }
        Line line;
        line.excess = weightedLevels(best.purchases) - m_limit.least;
        const double bound = best.objective + multiplier * m_limit.least;
        line.objective = bound + multiplier * line.excess;
        if (bound > m_bound.objective) {
            m_bound.objective = bound;
            m_bound.purchases = std::move(best.purchases);
        }
        return line;
    }

    double weightedLevels(const std::vector<Purchase>& purchases) const
    {
        double sum = 0.0;
        double supply = m_problem.start;
        auto next = purchases.begin();
        for (std::size_t i = 0; i < m_limit.points.size(); ++i) {
            const int point = m_limit.points[i];
            for (; next != purchases.end() && next->point < point; ++next)
                supply += next->litres -
                          m_problem.offers[static_cast<std::size_t>(next->point)].detourLitres;
            sum += m_limit.weight[i] * (supply - m_problem.fuelTo[static_cast<std::size_t>(point)]);
        }
        return sum;
    }

    Problem m_problem;
    const RiskLimit& m_limit;
    Hours m_hours;
    TripBound m_bound{-kNoLimit, {}, 0};
};

} // namespace

TripBound leastObjective(Problem problem, const RiskLimit& limit, Hours hours)
{
    return Bounding(std::move(problem), limit, hours).run();
}

} // namespace undermark::planning
