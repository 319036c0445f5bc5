// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk/risk.h"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kFarthestSd = 8.5; // the normal tail beyond is 1e-17
constexpr double kNoRisk = 1e-14;
constexpr double kSmall = 1e-8;
constexpr double kLeastSd = 1e-9; // L
constexpr double kSmooth = 0.7;   // c; a turn as wide as this needs no panels of its own

} // namespace

TripLaw::TripLaw(std::vector<ArrivalLevel> levels)
    : m_levels(std::move(levels))
{
    for (std::size_t i = 0; i < m_levels.size();) {
        std::vector<double> variances;
        const std::size_t first = i;
        for (; i < m_levels.size() && m_levels[i].run == m_levels[first].run; ++i)
            variances.push_back(m_levels[i].variance);
        m_runs.push_back(
            {first, RunRisk(variances), std::vector<double>(variances.size())});
    }
    for (const ArrivalLevel& level : m_levels)
        m_sd.push_back(std::sqrt(level.variance));
    m_room.resize(m_levels.size());
    m_nodes = errorNodes(m_levels);
}

double TripLaw::risk()
{
    const double most = sumOfRisks();
    if (most < kSmall)
        return most;
    double risk = 0.0;
    for (const ErrorNode& node : m_nodes) {
        for (std::size_t i = 0; i < m_levels.size(); ++i) {
            m_room[i] = m_levels[i].room;
            for (std::size_t e = 0; e < node.c.size(); ++e)
                m_room[i] -= m_levels[i].common[e + 1] * node.c[e];
        }
        risk += node.weight * overFirst();
    }
    return std::clamp(risk, 0.0, 1.0);
}

// As if all were independent: of small risks the sum.
double TripLaw::sumOfRisks() const
{
    double sum = 0.0;
    for (const ArrivalLevel& level : m_levels)
        sum += arrivalRisk(level.room, level.sd());
    return std::min(sum, 1.0);
}

double TripLaw::overFirst()
{
    using Rule = boost::math::quadrature::gauss<double, 10>;
    const std::vector<double> places = this->places();
    if (places.empty())
        return given(0.0);
    double risk = 0.0;
    for (std::size_t i = 0; i + 1 < places.size(); ++i) {
        const double half = (places[i + 1] - places[i]) / 2;
        for (std::size_t k = 0; k < Rule::abscissa().size(); ++k) {
            for (const double sign : {-1.0, 1.0}) {
                const double c = places[i] + half + sign * half * Rule::abscissa()[k];
                risk += half * Rule::weights()[k] * normalDensity(c) * given(c);
            }
        }
    }
    return risk;
}

// P(below the limit somewhere | c).
double TripLaw::given(double first)
{
    double allWell = 1.0;
    for (Run& run : m_runs) {
        double most = 0.0; // what the risk may be
        for (std::size_t k = 0; k < run.room.size(); ++k) {
            run.room[k] = m_room[run.first + k] - m_levels[run.first + k].first() * first;
            const double own = arrivalRisk(run.room[k], m_sd[run.first + k]);
            if (own > 1 - kNoRisk)
                return 1.0;
            most += own;
        }
        if (most > kNoRisk)
            allWell *= 1.0 - run.law.at(run.room);
        if (allWell <= 0)
            return 1.0;
    }
    return 1.0 - allWell;
}

// The ends of the panels. None where nothing depends on c.
std::vector<double> TripLaw::places() const
{
    if (std::ranges::all_of(m_levels, [](const ArrivalLevel& l) { return l.first() == 0; }))
        return {};
    std::vector<Turn> near;
    for (const double place : {-kFarthestSd, -5.0, -3.0, -1.0, 1.0, 3.0, 5.0, kFarthestSd})
        near.push_back({place, kSmooth});
    for (const Turn& turn : turns()) {
        for (const double steps : {-4.0, -1.5, 0.0, 1.5, 4.0}) {
            const double place = turn.at + steps * turn.width;
            if (turn.width < kSmooth && std::fabs(place) < kFarthestSd)
                near.push_back({place, turn.width});
        }
    }
    std::ranges::sort(near, {}, &Turn::at);
    std::vector<double> places;
    for (const Turn& turn : near) {
        if (places.empty() || turn.at - places.back() > std::max(turn.width, 1e-12))
            places.push_back(turn.at);
    }
    places.back() = kFarthestSd;
    return places;
}

// Where the integrand turns: where an arrival meets the limit, and where another arrival
// of a run becomes the tightest.
std::vector<TripLaw::Turn> TripLaw::turns() const
{
    std::vector<Turn> turns;
    for (std::size_t i = 0; i < m_levels.size(); ++i) {
        const double common = m_levels[i].first();
        if (common != 0 && m_room[i] < kFarthestSd * (std::fabs(common) + m_sd[i]))
            turns.push_back({m_room[i] / common, m_sd[i] / std::fabs(common)});
    }
    for (const Run& run : m_runs)
        addCorners(run, turns);
    return turns;
}

// The tightest has the least room in deviations. Two whose rests have a correlation r
// differ by sqrt(2 - 2r), over which their corner is rounded off.
void TripLaw::addCorners(const Run& run, std::vector<Turn>& turns) const
{
    const std::size_t end = run.first + run.room.size();
    const auto sd = [&](std::size_t i) { return std::max(m_sd[i], kLeastSd); };
    const auto by = [&](std::size_t i) { return m_levels[i].first() / sd(i); };
    const auto room = [&](std::size_t i) { return m_room[i] / sd(i); };
    std::size_t tightest = run.first;
    for (std::size_t i = run.first; i < end; ++i) {
        if (std::pair(by(i), room(i)) < std::pair(by(tightest), room(tightest)))
            tightest = i;
    }
    for (double corner = -kFarthestSd; corner < kFarthestSd;) { // as c grows
        corner = kFarthestSd;
        std::size_t next = tightest;
        for (std::size_t i = run.first; i < end; ++i) {
            const double more = by(i) - by(tightest);
            if (more <= 0 || (room(i) - room(tightest)) / more >= corner)
                continue;
            corner = (room(i) - room(tightest)) / more;
            next = i;
        }
        if (std::fabs(corner) < kFarthestSd) {
            const auto [less, more] = std::minmax({sd(tightest), sd(next)});
            turns.push_back({corner, std::sqrt(2 * (1 - less / more)) / (by(next) - by(tightest))});
        }
        tightest = next;
    }
}

double arrivalRisk(double room, double sd)
{
    if (sd > 0)
        return normalTail(room / sd);
    return room < -1e-9 ? 1.0 : 0.0;
}

} // namespace undermark::planning
