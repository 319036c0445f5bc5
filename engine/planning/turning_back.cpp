// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/turning_back.h"

#include <algorithm>

namespace undermark::planning {

namespace {

constexpr int kHalvings = 29; // to 2e-9 of a section

class TurningBack {
public:
    TurningBack(const Problem& problem, const Leaving& leaving)
        : m_problem(problem), m_leaving(leaving), m_home(problem.offers[std::size_t(leaving.from)])
    {
    }

    // The first section that is driven one way only, or the gap's end.
    int endOfTwoWays() const
    {
        int section = m_leaving.from;
        while (section < m_leaving.to && !m_problem.timed[std::size_t(section)])
            ++section;
        return section;
    }

    // Turned round after a part of a section, on every section back the level holds.
    bool isBack(int section, double part) const
    {
        double asked = -1.0;
        for (int k = m_leaving.from; k <= section; ++k) {
            if (const double limit = std::max(m_problem.floor, m_problem.dryAt(k + 1)); limit > asked) {
                if (!isBackAt(k, section, part, limit))
                    return false;
                asked = limit;
            }
            if (m_problem.surgeTo.empty())
                break;
        }
        return true;
    }

private:
    // On the way back at point k.
    bool isBackAt(int k, int section, double part, double limit) const
    {
        const bool home = k == m_leaving.from && m_leaving.atStop;
        double back = home ? m_home.detourLitres / 2 : 0.0;
        for (int m = 0; m < m_problem.modes; ++m)
            back += m_problem.rates[std::size_t(m)] * kmBack(k, section, part, m);
        const auto at = std::size_t(section);
        double driven = 0.0; // of the section, all of it, without idling where it starts
        for (int m = 0; m < m_problem.modes; ++m)
            driven += m_problem.rates[std::size_t(m)] * kmOf(section, m);
        const double out = m_problem.fuelTo[at + 1] - (1 - part) * driven -
                           m_problem.fuelBefore(m_leaving.from);
        const LevelSpread spread = m_problem.spreadOver(
            m_problem.knownVariance(m_leaving.run.since), [&](int m) {
                const double detour = home && m_home.detourMode == m ? m_home.detourKm / 2 : 0.0;
                return m_problem.km(m_leaving.run, section, m) + part * kmOf(section, m) +
                       kmBack(k, section, part, m) + detour;
            });
        return m_leaving.leave - out - back - limit >= m_problem.room(m_problem.allowed, spread);
    }

    double kmOf(int section, int mode) const
    {
        return m_problem.kmBetween(section, section + 1, mode);
    }
    double kmBack(int k, int section, double part, int mode) const
    {
        return m_problem.kmBackBetween(k, section, mode) +
               part * m_problem.kmBackBetween(section, section + 1, mode);
    }

    const Problem& m_problem;
    const Leaving& m_leaving;
    const Offer& m_home;
};

} // namespace

Gap turningBack(const PlanRequest& request, const Problem& problem, const Leaving& leaving)
{
    const TurningBack turning(problem, leaving);
    const auto& points = request.route.points;
    Gap gap{std::size_t(leaving.from), std::size_t(leaving.to), std::nullopt};
    const int end = turning.endOfTwoWays();
    int safe = leaving.from; // it is back from here
    for (int beyond = end + 1; safe + 1 < beyond;) {
        const int middle = safe + (beyond - safe) / 2;
        (turning.isBack(middle - 1, 1.0) ? safe : beyond) = middle;
    }
    gap.oneWay = safe == end && end < leaving.to;
    if (gap.oneWay || safe == leaving.to) {
        if (gap.oneWay)
            gap.noReturn = points[std::size_t(end)].at;
        return gap;
    }
    double part = 0.0;
    double step = 0.5;
    for (int halving = 0; halving < kHalvings; ++halving, step /= 2) {
        if (turning.isBack(safe, part + step))
            part += step;
    }
    const Distance start = points[std::size_t(safe)].at;
    gap.noReturn = start + part * (points[std::size_t(safe) + 1].at - start);
    return gap;
}

} // namespace undermark::planning
