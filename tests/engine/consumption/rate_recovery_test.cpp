// SPDX-License-Identifier: GPL-3.0-or-later
//
// Are true rates where the model says they are?
#include "engine/consumption/consumption_model.h"
#include "engine/consumption/rate_prior.h"
#include "tests/support/simulated_car.h"
#include "tests/support/test_main.h"

#include <Eigen/Cholesky>
#include <QTest>
#include <cmath>
#include <random>

using namespace undermark;

class RateRecoveryTest : public QObject {
    Q_OBJECT

    static ConsumptionSetup setupOf(std::vector<Mode> modes)
    {
        ConsumptionSetup setup;
        setup.modes = std::move(modes);
        return setup;
    }

    static Interval stretch(double litres, std::map<std::string, Distance> byMode, double km)
    {
        Interval s;
        s.burnt.mean = Volume::fromLitres(litres);
        s.distance = Distance::fromKm(km);
        s.byMode = std::move(byMode);
        s.end = Instant(std::chrono::hours(24 * 7));
        return s;
    }

private slots:
    // True rates drawn from the model's prior, thirty tanks of mixed driving, idling and cold
    // starts with the noise that the filter assumes: the share of truths within the stated
    // 50, 80 and 90 % intervals (after Talts et al. 2018, simulation-based calibration). Not
    // below by more than 2.6 binomial sd, and above by little: evidence fades and what one
    // tank teaches is bounded, which makes the intervals cautious.
    void trueRatesLieWithinWhatTheModelStates()
    {
        const std::vector<Mode> modes{{kTown, {}}, {kMotorway, {}}};
        const RatePrior prior = ratePrior(modes);
        const auto n = Eigen::Index(prior.mean.size());
        const Eigen::MatrixXd root =
            Eigen::MatrixXd(Eigen::Map<const Eigen::MatrixXd>(prior.covariance.data(), n, n)).llt().matrixL();
        ConsumptionSetup setup = setupOf(modes);
        setup.constants.season = setup.constants.days = setup.constants.size = false;
        const FilterConstants& c = setup.constants;
        const double click_l = std::sqrt(NoiseSplit().clickVariance()) * prior.usual_l;
        std::mt19937_64 random(20261125);
        std::array<std::array<int, 3>, 2> within{};
        constexpr int kRuns = 600;
        for (int run = 0; run < kRuns; ++run) {
            const Eigen::VectorXd z =
                Eigen::VectorXd::NullaryExpr(n, [&] { return test::normal(random); });
            const Eigen::VectorXd own = Eigen::Map<const Eigen::VectorXd>(prior.mean.data(), n) + root * z;
            const auto cost = [&](Eigen::Index i) { return prior.base[std::size_t(i)] * std::exp(own[0] + own[i + 1]); };
            ConsumptionModel model(setup);
            double fast = std::sqrt(c.fast) * c.scale * test::normal(random), click = 0;
            for (int i = 0; i < 30; ++i) {
                const double km = test::uniform(random, 400, 600), town = test::uniform(random);
                Interval tank = stretch(0, {{kTown, Distance::fromKm(km * town)},
                                            {kMotorway, Distance::fromKm(km * (1 - town))}}, km);
                tank.begin = Instant(std::chrono::days(18000 + 7 * i));
                tank.end = tank.begin + std::chrono::days(7);
                tank.firstFill = std::size_t(i);
                tank.lastFill = std::size_t(i + 1);
                tank.idleHours = town * test::uniform(random, 0, 2);
                tank.coldStarts = std::round(town * km / 10 * test::uniform(random));
                const double litres = km * (town * cost(0) + (1 - town) * cost(1))
                    + tank.idleHours * cost(2) + tank.coldStarts * cost(3);
                fast = c.fastKeep * fast
                    + std::sqrt(c.fast * (1 - c.fastKeep * c.fastKeep)) * c.scale * test::normal(random);
                const double next = click_l * test::normal(random);
                tank.burnt.mean = Volume::fromLitres(
                    std::max(litres * std::exp(fast + c.scale * test::normal(random)) + next - click, 1.0));
                click = next;
                model.observe(tank);
            }
            const LongRunRates rates = model.longRun();
            for (std::size_t i = 0; i < 2; ++i) {
                const double mean = rates.rate[i].litresPerKm();
                const double sd = std::sqrt(rates.covariance[3 * i]) / mean;
                const double away = std::log(cost(Eigen::Index(i)) / mean) / sd;
                for (std::size_t k = 0; k < 3; ++k)
                    within[i][k] += std::erf(std::abs(away) / std::sqrt(2.0)) < kBandLevels[k];
            }
        }
        for (std::size_t i = 0; i < 2; ++i)
            for (std::size_t k = 0; k < 3; ++k) {
                const double p = kBandLevels[k], share = double(within[i][k]) / kRuns;
                QVERIFY2(share > p - 2.6 * std::sqrt(p * (1 - p) / kRuns) && share < p + 0.1,
                         qPrintable(QString::number(share)));
            }
    }

    // Cars with trips logged: the true rates lie in their stated 90 % intervals
    // about nine times in ten (96 intervals; 2.6 binomial sd = 8 %).
    // Wider than that is no fault: evidence fades, so the intervals are cautious.
    void trueRatesLieWithinTheirStatedIntervals()
    {
        int inside = 0, total = 0;
        for (unsigned seed = 1; seed <= 48; ++seed) {
            std::mt19937_64 random(seed);
            test::CarTruth car = test::randomCar(random);
            car.forgotten = car.gallons = car.miles = car.drift = car.season = 0;
            car.tripsLogged = 1;
            // Hardly told apart from town driving, so it must come from the prior.
            car.coldStart_l = std::abs(std::normal_distribution<double>(0.10, 0.08)(random));
            const auto log = test::simulate(car, 60, random);
            ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
            for (const Interval& one : intervalsFrom(log.fills, log.trips))
                model.observe(one);
            const LongRunRates rates = model.longRun();
            const double truth[] = {car.town_lPerKm, car.motorway_lPerKm};
            for (std::size_t i = 0; i < 2; ++i) {
                const double mean = rates.rate[i].litresPerKm();
                const double half = 1.645 * std::sqrt(rates.covariance[3 * i]) / mean;
                inside += std::abs(std::log(mean / truth[i])) <= half;
                ++total;
            }
        }
        qInfo("%d of %d true rates within their 90 %% intervals", inside, total);
        QVERIFY(double(inside) / total > 0.82);
    }
};

UNDERMARK_TEST(RateRecoveryTest)
#include "rate_recovery_test.moc"
