// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk/run_risk.h"

#include "engine/planning/risk/risk.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kReach = 6.5; // deviations; the normal tail beyond is 4e-11
// Places per deviation of a step: of the average one, of the shortest, of the start, and
// the average one's at most.
constexpr double kPlaces = 2.5;
constexpr double kFewestPlaces = 1.3;
constexpr double kStartPlaces = 2;
constexpr double kMostPlaces = 12;
constexpr double kFar = 1e300;
constexpr double kStencil = 3; // places to either side of a cut

// What a place weighs in the polynomial of fifth degree through the six places
// nearest to one that is x places away (J. L. Lagrange's interpolation): on [0, 1], [1, 2]
// and [2, 3], by power of x; even in x.
constexpr std::array<std::array<double, 6>, 3> kWeight{{
    {1, -1.0 / 3, -5.0 / 4, 5.0 / 12, 1.0 / 4, -1.0 / 12},
    {1, -13.0 / 12, -5.0 / 8, 25.0 / 24, -3.0 / 8, 1.0 / 24},
    {1, -137.0 / 60, 15.0 / 8, -17.0 / 24, 1.0 / 8, -1.0 / 120},
}};

template <std::size_t n> double polynomial(const std::array<double, n>& byPower, double x)
{
    double value = 0.0;
    for (std::size_t p = n; p-- > 0;)
        value = value * x + byPower[p];
    return value;
}

// Its integral from 0, by power of x.
constexpr std::array<std::array<double, 7>, 3> integrals()
{
    std::array<std::array<double, 7>, 3> all{};
    double before = 0.0; // up to the piece
    for (std::size_t piece = 0; piece < 3; ++piece) {
        double from = 0.0; // of this polynomial, at the beginning of the piece
        double power = 1.0;
        double to = 0.0, nextPower = 1.0;
        for (std::size_t p = 0; p < 6; ++p) {
            all[piece][p + 1] = kWeight[piece][p] / static_cast<double>(p + 1);
            power *= static_cast<double>(piece);
            nextPower *= static_cast<double>(piece + 1);
            from += all[piece][p + 1] * power;
            to += all[piece][p + 1] * nextPower;
        }
        all[piece][0] = before - from;
        before += to - from;
    }
    return all;
}

constexpr auto kIntegral = integrals();

// That integral up to x: how much of a place that lies x places below a cut
// is kept.
double keptOf(double x)
{
    if (std::fabs(x) >= kStencil)
        return x < 0 ? 0.0 : 1.0;
    const double half = polynomial(kIntegral[static_cast<std::size_t>(std::fabs(x))], std::fabs(x));
    return x < 0 ? 0.5 - half : 0.5 + half;
}

} // namespace

RunRisk::RunRisk(const std::vector<double>& variances)
{
    const double walk = variances.back() - variances.front();
    if (walk <= 1e-12 * variances.back()) {
        m_startSd = std::sqrt(variances.back());
        m_group.assign(variances.size(), 0);
        return;
    }
    double shortest = walk;
    for (std::size_t i = 1; i < variances.size(); ++i)
        shortest = std::min(shortest, variances[i] - variances[i - 1]);
    const double average = std::sqrt(walk / static_cast<double>(variances.size() - 1));
    const double fine = std::min(std::sqrt(variances.front()) / kStartPlaces,
                                 std::sqrt(std::max(shortest, 0.0)) / kFewestPlaces);
    m_mesh = std::clamp(fine, average / kMostPlaces, average / kPlaces);
    const std::vector<double> grouped = group(variances);
    m_startSd = std::sqrt(grouped.front());
    m_walkSd = std::sqrt(grouped.back() - grouped.front());
    for (std::size_t i = 1; i < grouped.size(); ++i) {
        const double own = grouped[i] - grouped[i - 1];
        Step step{std::sqrt(own), {}};
        const double density = m_mesh / (step.sd * std::sqrt(2 * M_PI));
        const auto reach = static_cast<double>(static_cast<int>(kReach * step.sd / m_mesh));
        const auto places = static_cast<Eigen::Index>(2 * reach + 1);
        const Eigen::ArrayXd far = Eigen::ArrayXd::LinSpaced(places, -reach, reach) * m_mesh;
        step.kernel = density * (-far.square() / (2 * own)).exp();
        m_steps.push_back(std::move(step));
    }
    const std::size_t groups = grouped.size();
    m_reach.resize(groups * groups);
    for (std::size_t k = 0; k < groups; ++k) {
        for (std::size_t later = k + 1; later < groups; ++later)
            m_reach[k * groups + later] = kReach * std::sqrt(grouped[later] - grouped[k]) / m_mesh;
    }
}

// Arrivals that the mesh cannot tell apart share the error of the last of them. Returns
// the variance of each group.
std::vector<double> RunRisk::group(const std::vector<double>& variances)
{
    const double least = std::pow(kFewestPlaces * m_mesh, 2) * (1 - 1e-9);
    std::vector<double> grouped;
    for (std::size_t i = variances.size(); i-- > 0;) {
        if (grouped.empty() || (grouped.back() - variances[i] >= least && variances[i] >= least))
            grouped.push_back(variances[i]);
        m_group.push_back(grouped.size() - 1);
    }
    std::ranges::reverse(grouped);
    std::ranges::reverse(m_group);
    for (std::size_t& group : m_group)
        group = grouped.size() - 1 - group;
    return grouped;
}

// The least room of each group.
void RunRisk::gather(const std::vector<double>& room)
{
    m_room.assign(m_steps.size() + 1, kFar);
    for (std::size_t i = 0; i < room.size(); ++i)
        m_room[m_group[i]] = std::min(m_room[m_group[i]], room[i]);
}

double RunRisk::at(const std::vector<double>& room)
{
    gather(room);
    if (m_steps.empty())
        return arrivalRisk(m_room[0], m_startSd);
    lay();
    return riskToCome();
}

// The places that count on each arrival: whoever is below them will not come up to a
// limit any more, and whoever is far above the least room is past it sooner or later.
// A place is always the same error, so that the risk is smooth in the rooms.
void RunRisk::lay()
{
    const std::size_t groups = m_room.size();
    const double least = *std::ranges::min_element(m_room);
    m_lowest = std::floor((least - kReach * m_walkSd) / m_mesh) * m_mesh - kStencil * m_mesh;
    m_highest = (least + kReach * m_walkSd - m_lowest) / m_mesh;
    m_cut.resize(groups);
    m_from.resize(groups);
    m_to.resize(groups);
    m_kept.resize(groups);
    for (std::size_t k = groups; k-- > 0;) {
        m_cut[k] = std::min((m_room[k] - m_lowest) / m_mesh, m_highest);
        double from = m_cut[k] - kStencil;
        for (std::size_t later = k + 1; later < groups; ++later)
            from = std::min(from, m_cut[later] - m_reach[k * groups + later]);
        m_from[k] = static_cast<Eigen::Index>(std::max(from, 0.0));
        m_to[k] = static_cast<Eigen::Index>(m_cut[k] + kStencil) + 1;
        m_kept[k].setOnes(m_to[k] - m_from[k]);
        for (Eigen::Index j = nearCut(k); j < m_to[k]; ++j)
            m_kept[k][j - m_from[k]] = keptOf(m_cut[k] - static_cast<double>(j));
    }
}

Eigen::Index RunRisk::nearCut(std::size_t group) const
{
    return std::max(static_cast<Eigen::Index>(m_cut[group] - kStencil), m_from[group]);
}

// Of the group before: whoever may be past the cut of `group` after the step.
Eigen::Index RunRisk::mayPass(std::size_t group) const
{
    const double reach = kReach * m_steps[group - 1].sd / m_mesh;
    return std::max(static_cast<Eigen::Index>(m_cut[group] - reach), m_from[group - 1]);
}

// How far below the cut of `group` a place is, in deviations of the step to it.
double RunRisk::belowCut(std::size_t group, Eigen::Index place) const
{
    return (m_cut[group] - static_cast<double>(place)) * m_mesh / m_steps[group - 1].sd;
}

// Convolution with the density of a step. `fromGroup` and `toGroup` say which places.
void RunRisk::spread(const Step& step, std::size_t fromGroup, const Eigen::VectorXd& from,
                     std::size_t toGroup, Eigen::VectorXd& to) const
{
    const Eigen::Index reach = step.kernel.size() / 2;
    to.resize(m_to[toGroup] - m_from[toGroup]);
    for (Eigen::Index i = m_from[toGroup]; i < m_to[toGroup]; ++i) {
        const Eigen::Index first = std::max(m_from[fromGroup], i - reach);
        const Eigen::Index count = std::min(m_to[fromGroup], i + reach + 1) - first;
        to[i - m_from[toGroup]] = count > 0
                                      ? from.segment(first - m_from[fromGroup], count)
                                            .dot(step.kernel.segment(first - i + reach, count))
                                      : 0.0;
    }
}

double RunRisk::riskToCome()
{
    const std::size_t last = m_steps.size();
    m_toCome.resize(last + 1);
    m_toCome[last].setZero(m_to[last] - m_from[last]);
    for (std::size_t k = last; k-- > 0;) {
        m_cutOff = m_kept[k + 1].cwiseProduct(m_toCome[k + 1]);
        if (k + 1 < last)
            spread(m_steps[k], k + 1, m_cutOff, k, m_toCome[k]);
        else
            m_toCome[k].setZero(m_to[k] - m_from[k]);
        for (Eigen::Index j = mayPass(k + 1); j < m_to[k]; ++j)
            m_toCome[k][j - m_from[k]] += arrivalRisk(belowCut(k + 1, j), 1.0);
    }
    m_density.resize(m_to[0] - m_from[0]);
    for (Eigen::Index j = m_from[0]; j < m_to[0]; ++j) {
        const double error = m_lowest + static_cast<double>(j) * m_mesh;
        m_density[j - m_from[0]] = normalDensity(error / m_startSd) / m_startSd;
    }
    const double risk = arrivalRisk(m_lowest + m_cut[0] * m_mesh, m_startSd) +
                        m_mesh * m_kept[0].cwiseProduct(m_toCome[0]).dot(m_density);
    return std::clamp(risk, 0.0, 1.0);
}

} // namespace undermark::planning
