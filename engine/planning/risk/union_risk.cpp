// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk/union_risk.h"

#include "engine/base/normal_law.h"

#include <Eigen/Core>
#include <algorithm>
#include <boost/random/sobol.hpp>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <random>

namespace undermark::planning {

namespace {

constexpr std::size_t kDeviates = 262'144;
constexpr std::size_t kFewestCases = 256;
constexpr std::size_t kMostCases = 2'048;
constexpr std::size_t kMostEven = 8;
constexpr double kNoMatter = 1e-4; // of the risk
constexpr double kNoMatterOfCase = 1e-6;

// Of all cases, kMostEven each: normal quantiles of a Sobol sequence, made once. A case more
// for each arrival, since their shares of the cases are rounded up.
const std::vector<double>& evenDeviates()
{
    static const std::vector<double> made = [] {
        boost::random::sobol_engine<std::uint_least32_t, 32> even(kMostEven);
        std::vector<double> deviates((kMostCases + kDeviates / kMostCases) * kMostEven);
        for (double& deviate : deviates)
            deviate = normalQuantile((double(even()) + 0.5) / 0x1p32);
        return deviates;
    }();
    return made;
}

// Without spread 1 below the limit (by more than 1e-9 L), else 0.
double riskOf(const ArrivalLevel& level)
{
    const double sd = level.sd();
    return sd > 0 ? normalTail(level.room / sd) : level.room < -1e-9 ? 1.0 : 0.0;
}

std::vector<double> risksOf(const std::vector<ArrivalLevel>& levels)
{
    std::vector<double> risks;
    for (const ArrivalLevel& level : levels)
        risks.push_back(riskOf(level));
    return risks;
}

// Draws one case after another: errors of all levels, each in turn with the error of one of
// them still free, s of its deviations.
class Cases {
public:
    explicit Cases(const std::vector<ArrivalLevel>& levels);
    // As many as pay.
    std::size_t count() const;
    // From now on that level's error is free.
    void free(std::size_t one);
    // The integral of the normal density over the s at which it fails, each s divided by how
    // many fail with it; of the next case.
    double share();

private:
    struct Turn {
        double at; // s
        int by;    // so many more fail above
    };

    double deviate();
    void draw();

    const std::vector<ArrivalLevel>& m_levels;
    Eigen::MatrixXd m_common; // levels x errors
    const std::vector<double>& m_even = evenDeviates(); // for the first deviates,
    std::mt19937_64 m_random; // and for the others: in many dimensions the even ones are not
    std::normal_distribution<double> m_normal;
    std::size_t m_case = 0, m_next = 0; // deviate of the case
    Eigen::VectorXd m_c, m_errors, m_perS;
    std::vector<Turn> m_turns;
    std::size_t m_free = 0;
    double m_freeSd = 0.0; // of its level, L
    double m_least = 0.0;  // s at which it fails by its own room, and
    double m_tail = 0.0;   // the probability of more
};

Cases::Cases(const std::vector<ArrivalLevel>& levels)
    : m_levels(levels), m_common(levels.size(), levels.front().common.size()),
      m_c(m_common.cols()), m_errors(m_common.rows()), m_perS(m_common.rows())
{
    for (std::size_t i = 0; i < levels.size(); ++i)
        m_common.row(Eigen::Index(i)) =
            Eigen::Map<const Eigen::RowVectorXd>(levels[i].common.data(), m_common.cols());
}

std::size_t Cases::count() const
{
    const std::size_t deviates = m_levels.size() + std::size_t(m_common.cols());
    return std::clamp(kDeviates / deviates, kFewestCases, kMostCases);
}

void Cases::free(std::size_t one)
{
    const ArrivalLevel& freed = m_levels[one];
    m_free = one;
    m_freeSd = freed.sd();
    m_perS.noalias() = m_common * m_common.row(Eigen::Index(one)).transpose();
    for (std::size_t i = 0; i < m_levels.size(); ++i) {
        if (m_levels[i].run == freed.run)
            m_perS[Eigen::Index(i)] += std::min(m_levels[i].variance, freed.variance);
    }
    m_perS /= m_freeSd;
    m_least = freed.room / m_freeSd;
    m_tail = normalTail(m_least);
}

double Cases::deviate()
{
    const std::size_t next = m_next++;
    if (next >= kMostEven)
        return m_normal(m_random);
    assert(m_case * kMostEven < m_even.size());
    return m_even[m_case * kMostEven + next];
}

void Cases::draw()
{
    m_next = 0;
    for (double& c : m_c)
        c = deviate();
    m_errors.noalias() = m_common * m_c;
    double rest = 0.0, before = 0.0;
    for (std::size_t i = 0; i < m_levels.size(); ++i) {
        if (i > 0 && m_levels[i].run != m_levels[i - 1].run)
            rest = before = 0.0;
        rest += std::sqrt(std::max(m_levels[i].variance - before, 0.0)) * deviate();
        before = m_levels[i].variance;
        m_errors[Eigen::Index(i)] += rest;
    }
    ++m_case;
    m_errors -= m_errors[Eigen::Index(m_free)] / m_freeSd * m_perS;
}

double Cases::share()
{
    draw();
    int failing = 1;
    m_turns.clear();
    for (std::size_t i = 0; i < m_levels.size(); ++i) {
        if (i == m_free)
            continue;
        const double room = m_levels[i].room - m_errors[Eigen::Index(i)];
        const double perS = m_perS[Eigen::Index(i)];
        if (perS == 0) {
            failing += room < 0;
            continue;
        }
        const double turn = room / perS;
        failing += perS > 0 ? turn <= m_least : turn > m_least;
        if (turn > m_least)
            m_turns.push_back({turn, perS > 0 ? 1 : -1});
    }
    std::ranges::sort(m_turns, {}, &Turn::at);
    double share = 0.0, above = m_tail;
    for (const Turn& turn : m_turns) {
        if (above < kNoMatterOfCase * m_tail)
            break;
        const double next = normalTail(turn.at);
        share += (above - next) / failing;
        failing += turn.by;
        above = next;
    }
    return share + above / failing;
}

} // namespace

double ArrivalLevel::sd() const
{
    return std::sqrt(std::inner_product(common.begin(), common.end(), common.begin(), variance));
}

double sumOfRisks(const std::vector<ArrivalLevel>& levels)
{
    const std::vector<double> risks = risksOf(levels);
    return std::accumulate(risks.begin(), risks.end(), 0.0);
}

double unionRisk(const std::vector<ArrivalLevel>& levels)
{
    const std::vector<double> risks = risksOf(levels);
    const double sum = std::accumulate(risks.begin(), risks.end(), 0.0);
    const double greatest = *std::ranges::max_element(risks);
    if (greatest >= 1)
        return 1.0;
    if (greatest >= (1 - kNoMatter) * sum)
        return sum;
    Cases cases(levels);
    double risk = 0.0;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        if (risks[i] == 0)
            continue;
        const auto times = std::size_t(std::ceil(double(cases.count()) * risks[i] / sum));
        cases.free(i);
        double shares = 0.0;
        for (std::size_t k = 0; k < times; ++k)
            shares += cases.share();
        risk += shares / double(times);
    }
    return std::clamp(risk, greatest, sum);
}

} // namespace undermark::planning
