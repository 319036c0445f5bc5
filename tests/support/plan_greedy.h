// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cheapest way by price alone, found another way than by the search: a queue of the fuel
// on board, sorted by price. Fill up at every pump, pay only for what is burnt, burn the
// cheapest first, hand back whatever is dearer than the pump one stands at. The monotone queue
// of S. Lin, N. Gertsch and J. Russell, "A linear-time algorithm for finding optimal vehicle
// refueling policies", Operations Research Letters 35 (2007), 290.
#pragma once

#include "engine/planning/search/pieces.h"
#include "engine/planning/search/problem.h"

#include <algorithm>
#include <deque>
#include <optional>

namespace undermark::test {

// Of a problem without stop cost, limits, cans, detours, carried weight and spread.
class PriceOnlyGreedy {
public:
    explicit PriceOnlyGreedy(const planning::Problem& problem) : m_problem(problem)
    {
        m_used.assign(static_cast<std::size_t>(problem.points), 0.0);
        // The floor is fuel that stays aboard: everything is counted above it.
        m_room = problem.capacity - problem.floor;
        const double start = problem.start - problem.floor;
        if (start > 0)
            add({planning::kStart, -planning::kNoLimit, start});
        m_owed = std::max(-start, 0.0);
    }

    // The purchases in driving order; nothing if the finish cannot be reached. O(points).
    std::optional<std::vector<planning::Purchase>> run()
    {
        const int last = m_problem.points - 1;
        for (int i = 0; i < last; ++i) {
            const auto at = static_cast<std::size_t>(i);
            if (m_problem.offers[at].open)
                fillUp(i, m_problem.offers[at].perLitre);
            double need = m_problem.fuelTo[at + 1] - m_problem.fuelTo[at];
            if (i == 0)
                need += m_owed;
            if (i + 1 == last)
                need += m_problem.leastAt(last) - m_problem.floor;
            if (!burn(need))
                return std::nullopt;
        }
        std::vector<planning::Purchase> purchases;
        for (int i = 0; i < last; ++i) {
            const double litres = m_used[static_cast<std::size_t>(i)];
            if (litres > planning::kLitreTolerance)
                purchases.push_back({i, litres, false, 0});
        }
        return purchases;
    }

private:
    struct Batch {
        int point; // kStart: aboard from the beginning, cannot be handed back
        double price;
        double litres;
    };

    void add(const Batch& batch)
    {
        m_aboard.push_back(batch);
        m_content += batch.litres;
    }

    void fillUp(int point, double price)
    {
        while (!m_aboard.empty() && m_aboard.back().price > price) {
            m_content -= m_aboard.back().litres;
            m_aboard.pop_back();
        }
        if (m_aboard.empty())
            m_content = 0.0; // rounding does not pile up
        const double debt = point == 0 ? m_owed : 0.0;
        if (m_content < m_room + debt)
            add({point, price, m_room + debt - m_content});
    }

    bool burn(double litres)
    {
        while (litres > 0 && !m_aboard.empty()) {
            Batch& cheapest = m_aboard.front();
            const double part = std::min(cheapest.litres, litres);
            if (cheapest.point != planning::kStart)
                m_used[static_cast<std::size_t>(cheapest.point)] += part;
            cheapest.litres -= part;
            m_content -= part;
            litres -= part;
            if (cheapest.litres <= 0)
                m_aboard.pop_front();
        }
        return litres <= planning::kLitreTolerance;
    }

    const planning::Problem& m_problem;
    std::deque<Batch> m_aboard; // cheapest first
    std::vector<double> m_used; // litres burnt of each point's fuel
    double m_room = 0.0;
    double m_content = 0.0;
    double m_owed = 0.0; // litres the start lies below the floor
};

} // namespace undermark::test
