// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk/shared_errors.h"

#include "engine/base/normal_law.h"
#include "engine/planning/risk/risk.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kFarthest = 6.0;
constexpr double kLeastWeight = 1e-9;
constexpr double kSmoothStep = 1.2; // of a normal density: missed is 2e-6 of it
constexpr double kShortestStep = 0.03;
constexpr double kCornerMissed = 1e-5; // relative
constexpr std::size_t kMostNodes = 128;  // of meshes over two errors and more

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

Rule evenMesh(double step)
{
    const int half = static_cast<int>(kFarthest / step);
    Rule rule;
    for (int i = -half; i <= half; ++i) {
        rule.at.push_back(i * step);
        rule.weight.push_back(step * normalDensity(i * step));
    }
    return rule;
}

// What two arrivals have in common of the rest and of the errors before e, L^2.
double covariance(const ArrivalLevel& a, const ArrivalLevel& b, std::size_t e)
{
    double sum = a.run == b.run ? std::min(a.variance, b.variance) : 0.0;
    for (std::size_t o = 0; o < e; ++o)
        sum += a.common[o] * b.common[o];
    return sum;
}

// What the trapezium rule misses of a corner, relative to the risk: the slope jumps by
// about `jump`, rounded off over `width` (by Poisson's summation the first term; 20 is
// 2 pi^2).
double missed(double jump, double width, double step)
{
    return jump * step * step / 20 * std::exp(-20 * std::pow(width / step, 2));
}

// The error e, all before it being integrated out: each arrival then fails with the normal
// probability of (room - by c) deviations. Which of two arrivals is the likelier to fail
// changes with c at a corner, the sharper the more they have in common otherwise.
Rule ruleFor(std::size_t e, const std::vector<ArrivalLevel>& levels)
{
    std::vector<double> sd, by;
    double most = 0.0; // by
    double step = 3.0;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        sd.push_back(std::sqrt(std::max(covariance(levels[i], levels[i], e), 1e-20)));
        by.push_back(levels[i].common[e] / sd[i]);
        most = std::max(most, std::fabs(by[i]));
        for (std::size_t k = 0; k < i; ++k) {
            const double apart = std::fabs(by[i] - by[k]);
            const double steepest = std::max(std::fabs(by[i]), std::fabs(by[k]));
            const double jump = apart / std::sqrt(1 + steepest * steepest);
            if (missed(jump, 0.0, step) < kCornerMissed)
                continue;
            const double alike = covariance(levels[i], levels[k], e) / (sd[i] * sd[k]);
            const double width = std::sqrt(std::max(2 * (1 - alike), 0.0)) / apart;
            while (step > kShortestStep && missed(jump, width, step) > kCornerMissed)
                step *= 0.9;
        }
    }
    if (most == 0)
        return gaussHermite(1);
    // Few places for next to nothing, unless corners ask for more (limits by trial).
    if (most < 0.1 && step > 1.7)
        return gaussHermite(3);
    if (most < 0.3 && step > 1.3)
        return gaussHermite(5);
    if (most < 0.5 && step > 1.1)
        return gaussHermite(7);
    step = std::min(step, kSmoothStep / std::sqrt(1 + most * most));
    return evenMesh(std::max(step, kShortestStep));
}

} // namespace

double ArrivalLevel::first() const
{
    return common.empty() ? 0.0 : common.front();
}

double ArrivalLevel::sd() const
{
    double all = variance;
    for (const double litres : common)
        all += litres * litres;
    return std::sqrt(all);
}

namespace {

// The meshes of all errors but the first, combined.
std::vector<ErrorNode> onMeshes(const std::vector<Rule>& rules)
{
    std::vector<ErrorNode> nodes{{{}, 1.0}};
    for (const Rule& rule : rules) {
        std::vector<ErrorNode> finer;
        for (const ErrorNode& node : nodes) {
            for (std::size_t k = 0; k < rule.at.size(); ++k) {
                ErrorNode next = node;
                next.c.push_back(rule.at[k]);
                next.weight *= rule.weight[k];
                if (next.weight > kLeastWeight)
                    finer.push_back(std::move(next));
            }
        }
        nodes = std::move(finer);
    }
    return nodes;
}

// So many places of equal weight, even in each error and in all together: multiples of the
// powers of 1/g, g the root of g^(n+1) = g + 1 (a Kronecker sequence; M. Roberts 2018, from
// memory), each with its opposite.
std::vector<ErrorNode> onASequence(std::size_t errors)
{
    double g = 1.5;
    for (int i = 0; i < 50; ++i)
        g = std::pow(1 + g, 1.0 / (static_cast<double>(errors) + 1));
    std::vector<ErrorNode> nodes;
    for (std::size_t k = 0; k < kMostNodes / 2; ++k) {
        ErrorNode node{{}, 1.0 / kMostNodes};
        for (std::size_t e = 1; e <= errors; ++e) {
            const double place = 0.5 + static_cast<double>(k) * std::pow(g, -static_cast<double>(e));
            node.c.push_back(normalQuantile(std::clamp(place - std::floor(place), 1e-9, 1 - 1e-9)));
        }
        nodes.push_back(node);
        for (double& c : node.c)
            c = -c;
        nodes.push_back(std::move(node));
    }
    return nodes;
}

} // namespace

std::vector<ErrorNode> errorNodes(const std::vector<ArrivalLevel>& levels)
{
    std::vector<Rule> rules;
    double combined = 1.0;
    for (std::size_t e = 1; e < levels.front().common.size(); ++e) {
        rules.push_back(ruleFor(e, levels));
        combined *= static_cast<double>(rules.back().at.size());
    }
    if (rules.size() < 2 || combined <= kMostNodes)
        return onMeshes(rules);
    return onASequence(rules.size());
}

} // namespace undermark::planning
