// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of a way, against closed forms and against driving by chance.
#include "engine/base/normal_law.h"
#include "engine/planning/risk/union_risk.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/special_functions/owens_t.hpp>
#include <numeric>
#include <random>

using namespace undermark;
using namespace undermark::planning;

namespace {

double tail(double z)
{
    return boost::math::cdf(boost::math::complement(boost::math::normal(), z));
}

// P(X > h or Y > k) of standard normals with this correlation, h and k above 0
// (D. B. Owen, Annals of Mathematical Statistics 27 (1956), 1075; from memory).
double eitherAbove(double h, double k, double correlation)
{
    const double root = std::sqrt(1 - correlation * correlation);
    const double both = (tail(h) + tail(k)) / 2 -
                        boost::math::owens_t(h, (k / h - correlation) / root) -
                        boost::math::owens_t(k, (h / k - correlation) / root);
    return tail(h) + tail(k) - both;
}

bool isNear(double found, double expected, double relative)
{
    if (std::fabs(found - expected) <= relative * expected)
        return true;
    qWarning("found %.12g, expected %.12g", found, expected);
    return false;
}

// Arrivals of one run that share nothing but a walk.
std::vector<ArrivalLevel> walk(const std::vector<double>& variances, const std::vector<double>& room)
{
    std::vector<ArrivalLevel> levels;
    for (std::size_t i = 0; i < room.size(); ++i)
        levels.push_back({room[i], {}, variances[i], 0});
    return levels;
}

// Up to four runs of up to four arrivals; each section burns at one of the rates, the
// first of which is mean to all.
std::vector<ArrivalLevel> drawnWay(std::size_t errors, std::mt19937& random)
{
    std::uniform_real_distribution<double> uniform;
    std::vector<ArrivalLevel> levels;
    const double noise = 0.3 * std::pow(uniform(random), 6);
    const double margin = 1.3 + 1.5 * uniform(random);
    const int runs = 1 + static_cast<int>(4 * uniform(random));
    for (int run = 0; run < runs; ++run) {
        const int arrivals = 1 + static_cast<int>(4 * uniform(random));
        ArrivalLevel level{0.0, std::vector<double>(errors, 0.0), 0.01 + uniform(random), run};
        for (int k = 0; k < arrivals; ++k) {
            level.variance += noise * uniform(random);
            level.common[0] += uniform(random);
            if (errors > 1)
                level.common[1] +=
                    uniform(random) < 0.5 ? 0.7 * uniform(random) : -0.7 * uniform(random);
            level.room = level.sd() * (margin + uniform(random));
            levels.push_back(level);
        }
    }
    return levels;
}

// The share of ways driven by chance on which some arrival fails.
double drivenRisk(const std::vector<ArrivalLevel>& levels, int times, unsigned seed)
{
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal;
    std::vector<double> c(levels.front().common.size());
    int failed = 0;
    for (int i = 0; i < times; ++i) {
        for (double& error : c)
            error = normal(random);
        double rest = 0.0, before = 0.0;
        bool fails = false;
        for (std::size_t k = 0; k < levels.size(); ++k) {
            const ArrivalLevel& level = levels[k];
            if (k > 0 && level.run != levels[k - 1].run)
                rest = before = 0.0;
            rest += std::sqrt(std::max(level.variance - before, 0.0)) * normal(random);
            before = level.variance;
            const double burnt =
                std::inner_product(c.begin(), c.end(), level.common.begin(), rest);
            fails = fails || burnt > level.room;
        }
        failed += fails;
    }
    return double(failed) / times;
}

} // namespace

class UnionRiskTest : public QObject {
    Q_OBJECT

private slots:
    void oneArrivalIsTheNormalTail()
    {
        // Phi(-2) = 0.0227501319 (tables of the normal distribution)
        QVERIFY(std::fabs(unionRisk({{4, {2}, 0, 0}}) - 0.022750131948) < 1e-9);
        QVERIFY(std::fabs(unionRisk({{4, {1.2}, 2.56, 0}}) - 0.022750131948) < 1e-9);
        QVERIFY(std::fabs(unionRisk({{4, {}, 4, 0}}) - 0.022750131948) < 1e-9);
        QCOMPARE(unionRisk({{1.0, {}, 0.0, 0}, {-0.1, {}, 0.0, 0}}), 1.0);
        QCOMPARE(unionRisk({{1.0, {}, 0.0, 0}, {0.1, {}, 0.0, 0}}), 0.0);
    }

    // With one error shared by all, the way is as risky as its riskiest arrival.
    void oneErrorForAllIsTheTightestArrival()
    {
        QVERIFY(isNear(unionRisk({{4, {2}, 0, 0}, {5, {2}, 0, 1}}), tail(2.0), 1e-12));
        QVERIFY(isNear(unionRisk(walk({1.44, 1.44, 1.44}, {3.0, 2.4, 2.9})), tail(2.0), 1e-12));
    }

    void independentArrivalsMultiply()
    {
        // 1 - (1 - p)^2
        QVERIFY(isNear(unionRisk({{4, {}, 4, 0}, {4, {}, 4, 1}}), 0.04498269539, 1e-3));
        const auto apart = [](int runs, double sd) {
            std::vector<ArrivalLevel> levels;
            for (int run = 0; run < runs; ++run)
                levels.push_back({sd, {}, 1, run});
            return unionRisk(levels);
        };
        QVERIFY(isNear(apart(20, 3), 1 - std::pow(1 - tail(3), 20), 5e-3));
        QVERIFY(isNear(apart(50, 3), 1 - std::pow(1 - tail(3), 50), 5e-3));
        QVERIFY(isNear(apart(50, 2), 1 - std::pow(1 - tail(2), 50), 3e-2));
    }

    // A walk of n even steps stays below 0 with probability C(2n, n) / 4^n, whatever the
    // (symmetric, continuous) step (E. Sparre Andersen 1954; from memory).
    void aWalkStaysBelowZeroAsSparreAndersenSays()
    {
        double stays = 1.0;
        std::vector<double> variances, room;
        for (int n = 1; n <= 40; ++n) {
            stays *= (2.0 * n - 1) / (2.0 * n);
            variances.push_back(0.3 * n);
            room.push_back(0.0);
            // Most of many arrivals fail at once: as far from a plan as can be.
            QVERIFY(isNear(unionRisk(walk(variances, room)), 1 - stays, n <= 10 ? 1e-2 : 5e-2));
        }
    }

    void twoArrivalsAreTheBivariateNormal()
    {
        for (const double first : {0.2, 1.0, 1.8}) {
            for (const double h : {1.0, 2.0, 3.5}) {
                for (const double k : {0.8, 2.2, 3.0}) {
                    const double expected = eitherAbove(h, k, std::sqrt(first / 2));
                    const double found = unionRisk(
                        walk({first, 2.0}, {h * std::sqrt(first), k * std::sqrt(2.0)}));
                    QVERIFY(isNear(found, expected, 2e-3));
                }
            }
        }
    }

    // Two runs that share nothing but the errors of two rates.
    void sharedErrorsOfSeveralRatesCount()
    {
        for (const double a : {-0.8, 0.0, 0.5, 1.0}) {
            const double sdA = std::sqrt(1.44 + 0.81 + 0.36), sdB = std::sqrt(0.49 + a * a + 0.64);
            const double correlation = (1.2 * 0.7 + 0.9 * a) / (sdA * sdB);
            const double found = unionRisk({{4.0, {1.2, 0.9}, 0.36, 0}, {3.0, {0.7, a}, 0.64, 1}});
            QVERIFY(isNear(found, eitherAbove(4 / sdA, 3 / sdB, correlation), 2e-3));
        }
    }

    // However small the risk is.
    void smallRisksAreAsExact()
    {
        for (const double z : {4.0, 6.0, 8.0})
            QVERIFY(isNear(unionRisk(walk({1.0, 2.0}, {z, z * M_SQRT2})),
                           eitherAbove(z, z, M_SQRT1_2), 2e-3));
    }

    // Uneven steps, by two million walks drawn by chance.
    void unevenStepsAreAsWhenWalked()
    {
        const auto levels = walk({0.5, 0.51, 0.9, 2.4, 2.401, 3.0}, {1.6, 1.7, 2.0, 3.1, 3.0, 3.4});
        const int times = 2'000'000;
        const double driven = drivenRisk(levels, times, 3);
        QVERIFY(isNear(unionRisk(levels), driven, 4 / std::sqrt(driven * times) + 5e-3));
    }

    // Ways by chance; the mean of what is missed, with its sign, is no bias.
    void waysByChanceAreAsWhenDriven()
    {
        std::mt19937 random(7);
        const int times = 400'000;
        double sum = 0.0, squares = 0.0;
        int counted = 0;
        for (int way = 0; way < 60; ++way) {
            const std::vector<ArrivalLevel> levels = drawnWay(1 + std::size_t(way % 4), random);
            const double found = unionRisk(levels);
            if (found < 1e-3)
                continue;
            const double noise = 1 / std::sqrt(found * times);
            const double missed = (drivenRisk(levels, times, unsigned(way)) - found) / found / noise;
            QVERIFY2(std::fabs(missed) < 4.5, qPrintable(QString("%1 sd").arg(missed)));
            ++counted;
            sum += missed;
            squares += missed * missed;
        }
        QVERIFY(counted > 25);
        QVERIFY(std::fabs(sum) < 4 * std::sqrt(counted));
        qInfo("%d ways, missed by %.2f sd of the drives on average, rms %.2f", counted,
              sum / counted, std::sqrt(squares / counted));
    }

    // The cases are the same every time, so that a plan is.
    void theSameQuestionHasTheSameAnswer()
    {
        std::mt19937 random(11);
        const std::vector<ArrivalLevel> levels = drawnWay(3, random);
        QCOMPARE(unionRisk(levels), unionRisk(levels));
    }
};

UNDERMARK_TEST(UnionRiskTest)
#include "union_risk_test.moc"
