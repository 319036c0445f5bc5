// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of a run and of a way, against closed forms and against driving by chance.
#include "engine/base/normal_law.h"
#include "engine/planning/risk/risk.h"
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

// The last of the shared errors on an even mesh.
double onAMesh(const std::vector<ArrivalLevel>& levels, double step)
{
    std::vector<ArrivalLevel> given = levels;
    for (ArrivalLevel& level : given)
        level.common.pop_back();
    TripLaw law(given);
    const int half = static_cast<int>(7 / step);
    double risk = 0.0;
    for (int k = -half; k <= half; ++k) {
        for (std::size_t i = 0; i < levels.size(); ++i)
            law.setRoom(i, levels[i].room - levels[i].common.back() * k * step);
        risk += step * normalDensity(k * step) * law.risk();
    }
    return risk;
}

} // namespace

class RunRiskTest : public QObject {
    Q_OBJECT

private slots:
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
            QVERIFY(isNear(RunRisk(variances).at(room), 1 - stays, 1e-4));
        }
    }

    void twoArrivalsAreTheBivariateNormal()
    {
        for (const double first : {0.2, 1.0, 1.8}) {
            for (const double h : {1.0, 2.0, 3.5}) {
                for (const double k : {0.8, 2.2, 3.0}) {
                    const double expected = eitherAbove(h, k, std::sqrt(first / 2));
                    const double found =
                        RunRisk({first, 2.0}).at({h * std::sqrt(first), k * std::sqrt(2.0)});
                    QVERIFY(isNear(found, expected, 1e-4));
                }
            }
        }
    }

    void oneErrorForAllIsTheTightestArrival()
    {
        RunRisk run({1.44, 1.44, 1.44});
        QVERIFY(isNear(run.at({3.0, 2.4, 2.9}), tail(2.0), 1e-12));
        QCOMPARE(RunRisk({0.0, 0.0}).at({1.0, -0.1}), 1.0);
        QCOMPARE(RunRisk({0.0, 0.0}).at({1.0, 0.1}), 0.0);
    }

    // Uneven steps, by two million walks drawn by chance.
    void unevenStepsAreAsWhenWalked()
    {
        const std::vector<double> variances{0.5, 0.51, 0.9, 2.4, 2.401, 3.0};
        const std::vector<double> room{1.6, 1.7, 2.0, 3.1, 3.0, 3.4};
        std::mt19937_64 random(3);
        std::normal_distribution<double> normal;
        const int walks = 2'000'000;
        int failed = 0;
        for (int i = 0; i < walks; ++i) {
            double error = 0.0, before = 0.0;
            bool past = false;
            for (std::size_t k = 0; k < room.size(); ++k) {
                error += std::sqrt(variances[k] - before) * normal(random);
                before = variances[k];
                past = past || error > room[k];
            }
            failed += past;
        }
        const double driven = double(failed) / walks;
        const double noise = 4 * std::sqrt(driven / walks);
        const double found = RunRisk(variances).at(room);
        QVERIFY2(std::fabs(found - driven) < noise,
                 qPrintable(QString("%1 %2 +- %3").arg(found).arg(driven).arg(noise)));
    }

    // What cannot be told apart is counted up.
    void arrivalsNextToEachOtherShareTheLaterError()
    {
        const std::vector<double> variances{1.0, 1.0 + 1e-6, 2.0, 2.0 + 1e-5, 3.0};
        const std::vector<double> room{2.4, 2.3, 3.1, 3.0, 3.6};
        const double apart = RunRisk({1.0, 2.0, 3.0}).at({2.3, 3.0, 3.6});
        QVERIFY(isNear(RunRisk(variances).at(room), apart, 1e-4));
    }

    // Two runs that share nothing but the errors of two rates: bivariate normal again.
    void sharedErrorsOfSeveralRatesAreIntegratedOut()
    {
        for (const double a : {-0.8, 0.0, 0.5, 1.0}) {
            TripLaw law({{4.0, {1.2, 0.9}, 0.36, 0}, {3.0, {0.7, a}, 0.64, 1}});
            const double sdA = std::sqrt(1.44 + 0.81 + 0.36), sdB = std::sqrt(0.49 + a * a + 0.64);
            const double correlation = (1.2 * 0.7 + 0.9 * a) / (sdA * sdB);
            QVERIFY(isNear(law.risk(), eitherAbove(4 / sdA, 3 / sdB, correlation), 1e-5));
        }
    }

    // Two arrivals of one run without noise in between, so that the tightest one changes
    // with the errors of the rates, at a corner: bivariate normal as well.
    void theTightestArrivalOfARunMayChange()
    {
        for (const double variance : {1e-4, 0.01, 0.3}) {
            for (const auto& [a, b] : {std::pair{std::vector{0.2}, std::vector{1.5}},
                                       std::pair{std::vector{1.5}, std::vector{0.2}},
                                       std::pair{std::vector{0.4, 0.1}, std::vector{0.3, 1.5}},
                                       std::pair{std::vector{0.4, 1.1}, std::vector{0.3, -0.9}}}) {
                TripLaw law({{0.5, a, variance, 0}, {1.6, b, variance, 0}});
                const double sdA = ArrivalLevel{0, a, variance, 0}.sd();
                const double sdB = ArrivalLevel{0, b, variance, 0}.sd();
                const double shared = std::inner_product(a.begin(), a.end(), b.begin(), variance);
                const double expected = eitherAbove(0.5 / sdA, 1.6 / sdB, shared / (sdA * sdB));
                QVERIFY(isNear(law.risk(), expected, a.size() == 1 ? 1e-6 : 5e-5));
            }
        }
    }

    // Ways by chance, from next to no noise to much: against an even mesh over one more
    // of the errors, so fine that nothing is missed.
    void aFinerMeshSaysTheSame_data()
    {
        QTest::addColumn<int>("errors");
        QTest::addColumn<int>("ways");
        QTest::addColumn<double>("step");
        QTest::addColumn<double>("most");
        QTest::newRow("one shared error") << 1 << 200 << 0.002 << 1e-5;
        QTest::newRow("two shared errors") << 2 << 30 << 0.04 << 3e-4;
    }

    void aFinerMeshSaysTheSame()
    {
        QFETCH(int, errors);
        QFETCH(int, ways);
        QFETCH(double, step);
        QFETCH(double, most);
        std::mt19937 random(11);
        std::vector<double> missed;
        for (int i = 0; i < ways; ++i) {
            const std::vector<ArrivalLevel> levels =
                drawnWay(static_cast<std::size_t>(errors), random);
            const double found = TripLaw(levels).risk();
            const double expected = onAMesh(levels, step);
            QVERIFY(isNear(found, expected, most));
            missed.push_back(std::fabs(found / expected - 1));
        }
        std::ranges::sort(missed);
        qInfo("missed of the risk: median %.0e, at worst %.0e", missed[missed.size() / 2],
              missed.back());
    }

    void aSmallRiskIsNeverTooLow()
    {
        TripLaw law({{20.0, {1.2}, 0.5, 0}, {21.0, {1.4}, 0.7, 0}});
        const double most = tail(20 / std::sqrt(1.94)) + tail(21 / std::sqrt(2.66));
        QVERIFY(isNear(law.risk(), most, 1e-9));
    }
};

UNDERMARK_TEST(RunRiskTest)
#include "run_risk_test.moc"
