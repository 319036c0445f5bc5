// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kFarthest = 8.5; // the normal tail beyond is 1e-17
constexpr double kNoRisk = 1e-14;
constexpr double kSmall = 1e-8;
constexpr double kSmooth = 0.7; // an arrival whose rest is this part of the first error, or more

double tail(double below)
{
    return 0.5 * std::erfc(below / std::sqrt(2.0));
}

struct Rule {
    std::vector<double> at;
    std::vector<double> weight;
};

// Gauss-Hermite for the standard normal, by the eigenvalues of the matrix of the
// recurrence (G. H. Golub and J. H. Welsch, Mathematics of Computation 23 (1969), 221;
// from memory).
Rule gaussHermite(int n)
{
    Eigen::MatrixXd recurrence = Eigen::MatrixXd::Zero(n, n);
    for (int i = 1; i < n; ++i)
        recurrence(i, i - 1) = recurrence(i - 1, i) = std::sqrt(static_cast<double>(i));
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(recurrence);
    Rule rule;
    for (int i = 0; i < n; ++i) {
        rule.at.push_back(solver.eigenvalues()(i));
        rule.weight.push_back(std::pow(solver.eigenvectors()(0, i), 2));
    }
    return rule;
}

// For integrands with corners.
Rule panels(int count)
{
    using Gauss = boost::math::quadrature::gauss<double, 10>;
    const double half = kFarthest / count;
    Rule rule;
    for (int i = 0; i < count; ++i) {
        for (std::size_t k = 0; k < Gauss::abscissa().size(); ++k) {
            for (const double sign : {-1.0, 1.0}) {
                rule.at.push_back((2 * i + 1 - count) * half + sign * half * Gauss::abscissa()[k]);
                rule.weight.push_back(half * Gauss::weights()[k] * normalDensity(rule.at.back()));
            }
        }
    }
    return rule;
}

// Enough places for an error that is this part of all others.
int placesFor(double part)
{
    if (part == 0)
        return 1;
    return part < 0.05 ? 3 : part < 0.2 ? 5 : part < 0.6 ? 9 : 15;
}

} // namespace

double ArrivalLevel::sd() const
{
    double all = variance;
    for (const double litres : common)
        all += litres * litres;
    return std::sqrt(all);
}

TripLaw::TripLaw(std::vector<ArrivalLevel> levels, RunRisk::Rounding rounding)
    : m_levels(std::move(levels))
{
    for (std::size_t i = 0; i < m_levels.size();) {
        std::vector<double> variances;
        const std::size_t first = i;
        for (; i < m_levels.size() && m_levels[i].run == m_levels[first].run; ++i)
            variances.push_back(m_levels[i].variance);
        m_runs.push_back(
            {first, RunRisk(variances, rounding), std::vector<double>(variances.size()), {}, 0.0});
    }
    for (const ArrivalLevel& level : m_levels)
        m_sd.push_back(std::sqrt(level.variance));
    m_room.resize(m_levels.size());
    findNodes();
}

void TripLaw::findNodes()
{
    m_nodes = {{{}, 1.0}};
    const std::size_t errors = m_levels.front().common.size();
    for (std::size_t e = 1; e < errors; ++e) {
        double most = 0.0;
        bool corners = false; // next to nothing else is left: the tightest arrival changes
        for (const ArrivalLevel& level : m_levels) {
            const double own = std::pow(level.common[e], 2);
            double others = level.variance;
            for (std::size_t o = 0; o < e; ++o)
                others += std::pow(level.common[o], 2);
            corners = corners || level.variance < 0.01 * own;
            if (own > 0)
                most = std::max(most, std::sqrt(own / std::max(others, 1e-300)));
        }
        const Rule rule = corners ? panels(errors == 2 ? 32 : 4) : gaussHermite(placesFor(most));
        std::vector<Node> finer;
        for (const Node& node : m_nodes) {
            for (std::size_t k = 0; k < rule.at.size(); ++k) {
                Node next = node;
                next.c.push_back(rule.at[k]);
                next.weight *= rule.weight[k];
                if (next.weight > 1e-9)
                    finer.push_back(std::move(next));
            }
        }
        m_nodes = std::move(finer);
    }
}

double TripLaw::firstOf(std::size_t arrival) const
{
    const std::vector<double>& common = m_levels[arrival].common;
    return common.empty() ? 0.0 : common.front();
}

double TripLaw::below(double limit, std::vector<double>* slope)
{
    const double most = sumOfRisks(limit, slope);
    if (most < kSmall)
        return most;
    if (slope)
        slope->assign(m_levels.size(), 0.0);
    double risk = 0.0;
    for (const Node& node : m_nodes) {
        for (std::size_t i = 0; i < m_levels.size(); ++i) {
            m_room[i] = m_levels[i].mean - limit;
            for (std::size_t e = 0; e < node.c.size(); ++e)
                m_room[i] -= m_levels[i].common[e + 1] * node.c[e];
        }
        risk += overFirst(node.weight, slope);
    }
    return std::clamp(risk, 0.0, 1.0);
}

TripLaw TripLaw::withOneError() const
{
    std::vector<ArrivalLevel> levels = m_levels;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        ArrivalLevel& level = levels[i];
        const double first = level.common.empty() ? 0.0 : level.common.front();
        level.variance = std::pow(level.sd(), 2) - first * first;
        if (i > 0 && levels[i - 1].run == level.run) // not falling
            level.variance = std::max(level.variance, levels[i - 1].variance);
        level.common = {first};
    }
    return TripLaw(std::move(levels));
}

std::size_t TripLaw::work() const
{
    double work = 0.0;
    for (const Run& run : m_runs) {
        const auto arrivals = static_cast<double>(run.room.size());
        work += arrivals * (arrivals > 1 ? 100 + 500 * std::sqrt(arrivals) : 100);
    }
    return static_cast<std::size_t>(work) * m_nodes.size();
}

// As if all were independent: of small risks the sum.
double TripLaw::sumOfRisks(double limit, std::vector<double>* slope) const
{
    double sum = 0.0;
    if (slope)
        slope->clear();
    for (const ArrivalLevel& level : m_levels) {
        const double sd = level.sd();
        sum += arrivalRisk(level.mean, sd, limit);
        if (slope)
            slope->push_back(arrivalRiskSlope(level.mean, sd, limit));
    }
    return std::min(sum, 1.0);
}

// Times `weight`, and so is what is added to `slope`.
double TripLaw::overFirst(double weight, std::vector<double>* slope)
{
    using Rule = boost::math::quadrature::gauss<double, 10>;
    const std::vector<double> places = turns();
    if (places.empty())
        return weight * given(0.0, weight, slope);
    double risk = 0.0;
    for (std::size_t i = 0; i + 1 < places.size(); ++i) {
        const double half = (places[i + 1] - places[i]) / 2;
        for (std::size_t k = 0; k < Rule::abscissa().size(); ++k) {
            for (const double sign : {-1.0, 1.0}) {
                const double c = places[i] + half + sign * half * Rule::abscissa()[k];
                const double here = weight * half * Rule::weights()[k] * normalDensity(c);
                risk += here * given(c, here, slope);
            }
        }
    }
    return risk;
}

// P(below the limit somewhere | c); its slope times `weight` is added to `slope`.
double TripLaw::given(double first, double weight, std::vector<double>* slope)
{
    double allWell = 1.0;
    for (Run& run : m_runs) {
        double most = 0.0; // what the risk may be
        for (std::size_t k = 0; k < run.room.size(); ++k) {
            run.room[k] = m_room[run.first + k] - firstOf(run.first + k) * first;
            const double own = arrivalRisk(run.room[k], m_sd[run.first + k], 0.0);
            if (own > 1 - kNoRisk)
                return 1.0;
            most += own;
        }
        run.risk = 0.0;
        if (most > kNoRisk)
            run.risk = run.law.at(run.room, slope ? &run.slope : nullptr);
        allWell *= 1.0 - run.risk;
        if (allWell <= 0)
            return 1.0;
    }
    for (const Run& run : m_runs) {
        if (!slope || run.risk == 0)
            continue;
        for (std::size_t k = 0; k < run.room.size(); ++k)
            (*slope)[run.first + k] += weight * allWell / (1.0 - run.risk) * run.slope[k];
    }
    return 1.0 - allWell;
}

// Where the integrand turns: around the c at which an arrival meets the limit. Nothing
// where nothing depends on c.
std::vector<double> TripLaw::turns() const
{
    std::vector<double> places{-kFarthest, -5, -3, -1, 1, 3, 5, kFarthest};
    double narrowest = kSmooth;
    bool shared = false;
    for (std::size_t i = 0; i < m_levels.size(); ++i) {
        const double common = firstOf(i);
        const double width = m_sd[i] / std::fabs(common);
        shared = shared || common != 0;
        const bool close = m_room[i] < kFarthest * (std::fabs(common) + m_sd[i]);
        if (common == 0 || width >= kSmooth || !close)
            continue;
        narrowest = std::min(narrowest, width);
        for (const double steps : {-4.0, -1.5, 0.0, 1.5, 4.0}) {
            const double place = m_room[i] / common + steps * width;
            if (std::fabs(place) < kFarthest)
                places.push_back(place);
        }
    }
    if (!shared)
        return {};
    std::ranges::sort(places);
    std::vector<double> apart = corners();
    std::ranges::sort(apart);
    std::vector<double> all;
    auto corner = apart.begin();
    for (const double place : places) {
        for (; corner != apart.end() && *corner <= place; ++corner) {
            if (all.empty() || *corner > all.back())
                all.push_back(*corner);
        }
        if (all.empty() || place - all.back() > std::max(narrowest, 1e-12))
            all.push_back(place);
    }
    all.back() = kFarthest;
    return all;
}

// Where another arrival of a run with one error becomes the tightest, as c grows.
std::vector<double> TripLaw::corners() const
{
    std::vector<double> corners;
    for (const Run& run : m_runs) {
        const std::size_t end = run.first + run.room.size();
        if (m_levels[run.first].variance != m_levels[end - 1].variance)
            continue;
        std::size_t tightest = run.first;
        for (std::size_t i = run.first; i < end; ++i) {
            if (std::pair(firstOf(i), m_room[i]) < std::pair(firstOf(tightest), m_room[tightest]))
                tightest = i;
        }
        for (double corner = -kFarthest; corner < kFarthest;) {
            corner = kFarthest;
            std::size_t next = tightest;
            for (std::size_t i = run.first; i < end; ++i) {
                const double more = firstOf(i) - firstOf(tightest);
                if (more <= 0 || (m_room[i] - m_room[tightest]) / more >= corner)
                    continue;
                corner = (m_room[i] - m_room[tightest]) / more;
                next = i;
            }
            if (std::fabs(corner) < kFarthest)
                corners.push_back(corner);
            tightest = next;
        }
    }
    return corners;
}

double normalDensity(double z)
{
    return std::exp(-z * z / 2) / std::sqrt(2 * M_PI);
}

double quantileForRisk(double risk)
{
    return -boost::math::quantile(boost::math::normal(), std::clamp(risk, 1e-280, 1.0 - 1e-15));
}

double arrivalRisk(double mean, double sd, double limit)
{
    if (sd > 0)
        return tail((mean - limit) / sd);
    return mean < limit - 1e-9 ? 1.0 : 0.0;
}

double arrivalRiskSlope(double mean, double sd, double limit)
{
    return sd > 0 ? -normalDensity((mean - limit) / sd) / sd : 0.0;
}

} // namespace undermark::planning
