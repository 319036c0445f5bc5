// SPDX-License-Identifier: GPL-3.0-or-later
//
// The planner's optimum by trying everything, for small routes.
#pragma once

#include "engine/planning/search/problem.h"

#include <algorithm>
#include <glpk.h>
#include <optional>

namespace undermark::test {

// At every point no stop, a partial fill and a full one, with an LP (GLPK's
// simplex) for the litres of each combination: 3^points LPs. Keeps the hours of
// the problem's timetable, on the day of the departure.
class Exhaustive {
public:
    explicit Exhaustive(const planning::Problem& problem)
        : m_problem(problem), m_kinds(static_cast<std::size_t>(problem.points - 1), 0),
          m_allowed(static_cast<std::size_t>(problem.points), problem.allowed)
    {
    }
    virtual ~Exhaustive() = default;

    std::optional<double> optimum()
    {
        glp_term_out(GLP_OFF);
        tryFrom(0);
        return m_best;
    }

protected:
    struct Found {
        double objective;
        std::vector<planning::Purchase> purchases;
    };

    // One combination of stops; a subclass may try several confidences.
    virtual void tryKinds() { note(cheapest()); }

    void note(const std::optional<Found>& found)
    {
        if (found)
            m_best = std::min(m_best.value_or(found->objective), found->objective);
    }

    // The least objective for m_kinds, with the risk m_allowed[i] on arrival at i.
    std::optional<Found> cheapest()
    {
        const int n = static_cast<int>(m_kinds.size());
        glp_prob* lp = glp_create_prob();
        glp_add_cols(lp, n);
        glp_add_rows(lp, 3 * n);
        m_fixed = m_stopped = 0.0;
        m_since = planning::kStart;
        for (int i = 0; i < n; ++i)
            addPoint(lp, i);
        std::optional<Found> found;
        if (glp_simplex(lp, nullptr) == 0 && glp_get_status(lp) == GLP_OPT) {
            found = Found{m_fixed + glp_get_obj_val(lp), {}};
            for (int i = 0; i < n; ++i) {
                const int kind = m_kinds[static_cast<std::size_t>(i)];
                if (kind > 0)
                    found->purchases.push_back({i, glp_get_col_prim(lp, i + 1), kind == 2, 0});
            }
        }
        glp_delete_prob(lp);
        return found;
    }

    const planning::Problem& m_problem;
    std::vector<int> m_kinds;
    std::vector<AllowedRisk> m_allowed;

private:
    void tryFrom(std::size_t i)
    {
        if (i == m_kinds.size()) {
            tryKinds();
            return;
        }
        const planning::Offer& offer = m_problem.offers[i];
        const int kinds = !offer.open ? 1 : m_problem.uncertain && offer.clicks ? 3 : 2;
        for (m_kinds[i] = 0; m_kinds[i] < kinds; ++m_kinds[i])
            tryFrom(i + 1);
        m_kinds[i] = 0;
    }

    void addPoint(glp_prob* lp, int i)
    {
        const auto at = static_cast<std::size_t>(i);
        const planning::Offer& offer = m_problem.offers[at];
        const bool stop = m_kinds[at] > 0;
        double most = stop ? std::min(offer.most, m_problem.capacity) : 0.0;
        if (m_kinds[at] == 2 && offer.most < planning::kNoLimit) // the click comes before the limit
            most = std::min(most, offer.most - m_problem.fillRoom(m_since, i));
        const double least = stop ? offer.least : 0.0;
        glp_set_col_bnds(lp, i + 1, least < most ? GLP_DB : GLP_FX, least, most);
        double carried = 0.0;
        for (int k = i; k + 1 < m_problem.points; ++k)
            carried += m_problem.holdFrom(k);
        glp_set_obj_coef(lp, i + 1, offer.perLitre + carried);
        m_fixed += stop ? offer.perStop : 0.0;
        m_fixed += m_problem.holdFrom(i) * (m_problem.start - m_problem.fuelTo[at]);
        if (stop && m_problem.timetable)
            keepHours(lp, i);
        // Bought so far: not above the brim, counted litres not near the click; enough for the
        // next arrival.
        const double full = m_problem.capacity + m_problem.fuelTo[at] - m_problem.start -
                            (m_kinds[at] == 1 ? m_problem.clickRoom(i) : 0.0);
        setSum(lp, 3 * i + 1, i);
        glp_set_row_bnds(lp, 3 * i + 1, m_kinds[at] == 2 ? GLP_FX : GLP_UP, full, full);
        if (m_kinds[at] == 2)
            m_since = i;
        setSum(lp, 3 * i + 2, i);
        const double enough = m_problem.fuelTo[at + 1] + m_problem.leastAt(i + 1) +
                              m_problem.room(m_allowed[at + 1], m_problem.spread(m_since, i + 1));
        glp_set_row_bnds(lp, 3 * i + 2, GLP_LO, enough - m_problem.start, 0);
    }

    // What was bought up to `last`.
    static void setSum(glp_prob* lp, int row, int last)
    {
        std::vector<int> columns{0};
        std::vector<double> ones{0};
        for (int k = 0; k <= last; ++k) {
            columns.push_back(k + 1);
            ones.push_back(1);
        }
        glp_set_mat_row(lp, row, last + 1, columns.data(), ones.data());
    }

    void keepHours(glp_prob* lp, int i)
    {
        const auto at = static_cast<std::size_t>(i);
        const auto& table = *m_problem.timetable;
        const double dry = table.departure + m_stopped + table.onTheWay[at];
        m_stopped += table.stopMinutes[at];
        double from = table.hours[at].opens - dry;
        const double to = table.hours[at].closes - dry;
        if (i == 0 || table.minutesPerLitre == 0) {
            if (from > 0 && from <= table.mostWait) { // waited for
                m_stopped += from;
                m_fixed += from * table.perMinuteWaited;
                from = 0.0;
            }
            if (from > 0 || to < 0) // never: an impossible bound on this stop's litres
                glp_set_col_bnds(lp, i + 1, GLP_FX, -1e9, -1e9);
            return;
        }
        setSum(lp, 3 * i + 3, i - 1);
        glp_set_row_bnds(lp, 3 * i + 3, GLP_DB, from / table.minutesPerLitre,
                         to / table.minutesPerLitre);
    }

    int m_since = planning::kStart;
    double m_fixed = 0.0;
    double m_stopped = 0.0;
    std::optional<double> m_best;
};

} // namespace undermark::test
