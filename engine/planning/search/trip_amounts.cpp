// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/trip_amounts.h"

#include "engine/planning/risk/trip_risk.h"
#include "engine/planning/search/trip_walk.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <memory>
#include <nlopt.h>

namespace undermark::planning {

namespace {

constexpr double kLitreSlack = 1e-7;     // what the solver may miss a limit by
constexpr double kRiskSlack = 1e-5;      // and the normal quantile of the risk, at first
constexpr double kRiskKept = 1.0 - 1e-7; // of the risk allowed, so that none is missed

constexpr std::size_t kManyNodes = 20; // of a law that is not asked for everywhere
constexpr double kNear = 2.0;          // of the normal quantile: where its slope can be trusted

class Amounts {
public:
    Amounts(const Problem& problem, std::vector<Purchase> stops, double allowed,
            RunRisk::Rounding rounding)
        : m_problem(problem), m_walk(problem, std::move(stops)), m_given(m_walk.given()),
          m_allowedZ(quantileForRisk(allowed * kRiskKept)),
          m_law(lawOf(problem, arrivalsOf(problem, m_walk.stops()), rounding)),
          m_roughLaw(m_law.nodes() > kManyNodes ? m_law.rough() : m_law)
    {
    }

    TripAmounts cheapest()
    {
        Litres litres = m_walk.mostPossible();
        if (!isKept(m_walk.walk(litres)))
            return {{}, kNoLimit, {}, m_work};
        RiskLimit limit;
        if (m_walk.parts() > 0)
            limit = minimise(litres);
        else
            limit = limitAt(m_walk.walk(litres).level);
        const double objective = m_walk.walk(litres).objective; // sets the litres
        return {m_walk.stops(), objective, std::move(limit), m_work};
    }

private:
    // How much the normal quantile of the whole way's confidence falls short of what is
    // asked for: nearly linear in the levels. `slope`: by each level.
    double lacking(TripLaw& law, const Litres& level, std::vector<double>* slope = nullptr)
    {
        for (std::size_t i = 0; i < level.size(); ++i)
            law.setLevel(i, level[i]);
        m_work += law.work();
        const double z = quantileForRisk(law.below(m_problem.floor, slope));
        if (slope) {
            const double density = std::max(normalDensity(z), 1e-280);
            for (double& each : *slope)
                each /= density;
        }
        return m_allowedZ - z;
    }

    bool isKept(const Walked& walked)
    {
        return std::ranges::all_of(walked.slack, [](double s) { return s >= -2 * kLitreSlack; }) &&
               lacking(m_law, walked.level) <= 0;
    }

    // The tangent of the risk; nothing where it is far from what is allowed.
    RiskLimit limitAt(const Litres& level)
    {
        RiskLimit limit;
        std::vector<double> slope;
        limit.least = lacking(m_law, level, &slope);
        if (std::fabs(limit.least) > kNear)
            return {};
        const std::vector<Arrival> arrivals = arrivalsOf(m_problem, m_walk.stops());
        for (std::size_t i = 0; i < level.size(); ++i) {
            limit.points.push_back(arrivals[i].point);
            limit.weight.push_back(std::max(-slope[i], 0.0));
            limit.least += limit.weight[i] * level[i];
        }
        return limit;
    }

    Eigen::VectorXd sumsOf(Litres litres) const
    {
        const Litres sums = m_walk.toSums(std::move(litres));
        return Eigen::Map<const Eigen::VectorXd>(sums.data(), Eigen::Index(sums.size()));
    }
    Litres litresOf(const Eigen::VectorXd& sums) const
    {
        return m_walk.fromSums({sums.begin(), sums.end()});
    }

    // Everything but the risk, linear in the sums.
    void linearise();
    double lackingBySums(TripLaw& law, const Eigen::VectorXd& sums, Eigen::VectorXd* slope);
    Litres between(const Litres& given, const Litres& safest);
    RiskLimit minimise(Litres& litres);
    void solve(Eigen::VectorXd& sums, double riskSlack);
    void raise(const Eigen::VectorXd& sums, Litres& litres);
    Eigen::MatrixXd curvatureAt(const Eigen::VectorXd& sums);
    bool polish(Eigen::VectorXd& sums);

    const Problem& m_problem;
    TripWalk m_walk;
    Litres m_given; // to begin with
    double m_allowedZ;
    TripLaw m_law;
    TripLaw m_roughLaw; // where the law has many nodes: to begin with, and for the curvature
    std::size_t m_work = 0;

    Eigen::VectorXd m_price;   // of the sums, the largest being 1
    Eigen::VectorXd m_slack;   // of each limit that the sums touch, where they are 0
    Eigen::MatrixXd m_bySlack; // by sum
    Eigen::MatrixXd m_byLevel; // of each arrival, by sum
    friend struct Solver;
};

void Amounts::linearise()
{
    const std::size_t n = m_walk.parts();
    const auto vector = [](const std::vector<double>& v) {
        return Eigen::VectorXd(Eigen::Map<const Eigen::VectorXd>(v.data(), Eigen::Index(v.size())));
    };
    const Walked none = m_walk.walk(Litres(n, 0.0));
    const Eigen::VectorXd slack = vector(none.slack);
    Eigen::MatrixXd bySlack(slack.size(), n);
    m_byLevel.resize(Eigen::Index(none.level.size()), Eigen::Index(n));
    m_price.resize(Eigen::Index(n));
    for (std::size_t i = 0; i < n; ++i) {
        Litres one(n, 0.0);
        one[i] = 1.0;
        const Walked walked = m_walk.walk(m_walk.fromSums(one));
        const auto column = Eigen::Index(i);
        bySlack.col(column) = vector(walked.slack) - slack;
        m_byLevel.col(column) = vector(walked.level) - vector(none.level);
        m_price[column] = walked.objective - none.objective;
    }
    m_price /= std::max(m_price.cwiseAbs().maxCoeff(), 1e-9);
    std::vector<Eigen::Index> touched;
    for (Eigen::Index k = 0; k < slack.size(); ++k) {
        if (!bySlack.row(k).isZero(0))
            touched.push_back(k);
    }
    m_slack = slack(touched);
    m_bySlack = bySlack(touched, Eigen::all);
}

double Amounts::lackingBySums(TripLaw& law, const Eigen::VectorXd& sums, Eigen::VectorXd* slope)
{
    std::vector<double> byLevel;
    const double value =
        lacking(law, m_walk.walk(litresOf(sums)).level, slope ? &byLevel : nullptr);
    if (slope)
        *slope = m_byLevel.transpose() *
                 Eigen::Map<const Eigen::VectorXd>(byLevel.data(), m_byLevel.rows());
    return value;
}

// What NLopt calls.
struct Solver {
    static double objective(unsigned n, const double* x, double* slope, void* data)
    {
        const Amounts& a = *static_cast<Amounts*>(data);
        if (slope)
            std::ranges::copy(a.m_price, slope);
        return a.m_price.dot(Eigen::Map<const Eigen::VectorXd>(x, n));
    }

    static void limits(unsigned m, double* result, unsigned n, const double* x, double* slope,
                       void* data)
    {
        using RowWise = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
        const Amounts& a = *static_cast<Amounts*>(data);
        Eigen::Map<Eigen::VectorXd>(result, m) =
            -a.m_slack - a.m_bySlack * Eigen::Map<const Eigen::VectorXd>(x, n);
        if (slope)
            Eigen::Map<RowWise>(slope, m, n) = -a.m_bySlack;
    }

    static double risk(unsigned n, const double* x, double* slope, void* data)
    {
        Eigen::VectorXd byLitre;
        Amounts& a = *static_cast<Amounts*>(data);
        const double value = a.lackingBySums(a.m_roughLaw, Eigen::Map<const Eigen::VectorXd>(x, n),
                                             slope ? &byLitre : nullptr);
        if (slope)
            std::ranges::copy(byLitre, slope);
        return value;
    }
};

// From the litres given towards the safest as far as the risk demands.
Litres Amounts::between(const Litres& given, const Litres& safest)
{
    double tooLittle = 0.0, enough = 1.0;
    Litres found = safest;
    for (int i = 0; i < 8; ++i) {
        const double part = (tooLittle + enough) / 2;
        Litres tried = safest;
        for (std::size_t k = 0; k < tried.size(); ++k)
            tried[k] = given[k] + part * (safest[k] - given[k]);
        const bool kept = lacking(m_roughLaw, m_walk.walk(tried).level) <= 0;
        (kept ? enough : tooLittle) = part;
        if (kept)
            found = std::move(tried);
    }
    return found;
}

Eigen::MatrixXd Amounts::curvatureAt(const Eigen::VectorXd& sums)
{
    constexpr double kStep = 1e-3; // L
    const Eigen::Index n = sums.size();
    Eigen::VectorXd here, there;
    lackingBySums(m_roughLaw, sums, &here);
    Eigen::MatrixXd curvature(n, n);
    for (Eigen::Index i = 0; i < n; ++i) {
        lackingBySums(m_roughLaw, sums + kStep * Eigen::VectorXd::Unit(n, i), &there);
        curvature.col(i) = (there - here) / kStep;
    }
    return (curvature + curvature.transpose()) / 2;
}

// Newton's method for the conditions of the optimum; a limit counts as long as it is met
// and pushes back. Where the litres are already good to a thousandth this makes the
// slopes of the risk, and with them leastObjective(), good to a millionth. The curvature
// is taken once, by the rough law. Whether it came to rest.
bool Amounts::polish(Eigen::VectorXd& sums)
{
    constexpr double kMet = 1e-5, kFarthestStep = 0.5, kAtRest = 1e-5; // L
    const Eigen::Index n = sums.size();
    const Eigen::MatrixXd curvature = curvatureAt(sums);
    std::vector<Eigen::Index> met;
    const auto meet = [&](double below) {
        const Eigen::VectorXd slack = m_slack + m_bySlack * sums;
        bool more = false;
        for (Eigen::Index k = 0; k < slack.size(); ++k) {
            if (slack[k] < below && std::ranges::find(met, k) == met.end()) {
                met.push_back(k);
                more = true;
            }
        }
        return more;
    };
    meet(kMet);
    for (int i = 0; i < 20; ++i) {
        Eigen::VectorXd slope;
        const double missing = lackingBySums(m_law, sums, &slope);
        const auto limits = Eigen::Index(met.size());
        Eigen::MatrixXd touched(n, 1 + limits);
        touched << slope, -m_bySlack(met, Eigen::all).transpose();
        const double multiplier = touched.completeOrthogonalDecomposition().solve(-m_price)[0];
        const Eigen::Index all = n + 1 + limits;
        Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(all, all);
        matrix.topLeftCorner(n, n) = multiplier * curvature;
        matrix.topRightCorner(n, 1 + limits) = touched;
        matrix.bottomLeftCorner(1 + limits, n) = touched.transpose();
        Eigen::VectorXd wanted(all);
        wanted << -m_price, -missing, m_slack(met) + m_bySlack(met, Eigen::all) * sums;
        const Eigen::VectorXd found = matrix.completeOrthogonalDecomposition().solve(wanted);
        const double farthest = found.head(n).cwiseAbs().maxCoeff();
        if (!(farthest < kFarthestStep))
            return false;
        sums += found.head(n);
        const Eigen::VectorXd push = found.tail(limits);
        std::size_t k = 0;
        const bool fewer =
            std::erase_if(met, [&](Eigen::Index) { return push[Eigen::Index(k++)] < 0; }) > 0;
        if (!meet(-kLitreSlack) && !fewer && farthest < kAtRest)
            return true;
    }
    return false;
}

// Begins again from what was found until nothing is gained any more: the solver forgets
// its idea of the curvature, and may go on where it stopped too early.
void settle(nlopt_opt solver, Eigen::VectorXd& at)
{
    double value = kNoLimit;
    for (int i = 0; i < 10; ++i) {
        double now = 0.0;
        nlopt_optimize(solver, at.data(), &now);
        if (std::fabs(value - now) <= 1e-7 * std::fabs(now))
            return;
        value = now;
    }
}

// `litres` keep everything, and are left where nothing better is found.
RiskLimit Amounts::minimise(Litres& litres)
{
    linearise();
    Eigen::VectorXd sums = sumsOf(m_given);
    const bool near = std::fabs(lackingBySums(m_law, sums, nullptr)) < 0.01;
    if (!near || !polish(sums)) {
        sums = sumsOf(between(m_given, litres));
        // Where the solver's last step misses the risk by more than the slack it falls
        // back on an early one.
        Eigen::VectorXd better;
        for (const double slack : {kRiskSlack, 100 * kRiskSlack}) {
            solve(sums, slack);
            better = sums;
            if (polish(better))
                break;
        }
        sums = better;
    }
    raise(sums, litres);
    return limitAt(m_walk.walk(litresOf(sums)).level);
}

void Amounts::solve(Eigen::VectorXd& sums, double riskSlack)
{
    const auto n = static_cast<unsigned>(m_walk.parts());
    const std::unique_ptr<nlopt_opt_s, void (*)(nlopt_opt)> solver(nlopt_create(NLOPT_LD_SLSQP, n),
                                                                   nlopt_destroy);
    nlopt_set_min_objective(solver.get(), Solver::objective, this);
    const Litres tolerance(static_cast<std::size_t>(m_slack.size()), kLitreSlack);
    nlopt_add_inequality_mconstraint(solver.get(), static_cast<unsigned>(m_slack.size()),
                                     Solver::limits, this, tolerance.data());
    nlopt_add_inequality_constraint(solver.get(), Solver::risk, this, riskSlack);
    nlopt_set_ftol_rel(solver.get(), 1e-7);
    nlopt_set_maxeval(solver.get(), 200);
    settle(solver.get(), sums);
}

// The sums keep nearly all: from there towards the safest litres as far as it takes.
void Amounts::raise(const Eigen::VectorXd& sums, Litres& litres)
{
    const double most = m_walk.walk(litres).objective;
    const Litres found = litresOf(sums);
    Litres tried = found;
    double part = 1e-8;
    for (int i = 0; i < 14; ++i, part *= 4) {
        const Walked there = m_walk.walk(tried);
        if (there.objective >= most)
            return;
        if (isKept(there)) {
            litres = std::move(tried);
            return;
        }
        for (std::size_t k = 0; k < tried.size(); ++k)
            tried[k] = found[k] + part * (litres[k] - found[k]);
    }
}

} // namespace

TripAmounts cheapestAmounts(const Problem& problem, std::vector<Purchase> stops, double allowed,
                            RunRisk::Rounding rounding)
{
    return Amounts(problem, std::move(stops), allowed, rounding).cheapest();
}

} // namespace undermark::planning
