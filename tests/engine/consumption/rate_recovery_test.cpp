// SPDX-License-Identifier: GPL-3.0-or-later
//
// Are true rates where the model says they are? By simulation-based calibration.
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
    // Simulation-based calibration (Talts et al. 2018): truth drawn from the
    // prior, data from the truth; the rank of the truth in its posterior must be
    // uniform. Chi-square over 20 bins, 19 degrees of freedom, 99.9 % point
    // 43.82 (tables); the seed is fixed.
    void ranksOfTheTruthInItsPosteriorAreUniform()
    {
        const RatePrior prior = ratePrior(std::vector<Mode>{{kTown, {}}, {kMotorway, {}}});
        const auto n = Eigen::Index(prior.mean.size());
        const Eigen::MatrixXd covariance = Eigen::Map<const Eigen::MatrixXd>(prior.covariance.data(), n, n);
        const Eigen::MatrixXd root = covariance.llt().matrixL();
        constexpr double kShape = 4, kRate = 3;
        std::mt19937_64 random(20240531);
        std::normal_distribution<double> normal;
        std::gamma_distribution<double> gamma(kShape, 1 / kRate);
        constexpr int kBins = 20, kRuns = 2000;
        std::array<std::array<int, kBins>, 3> count{};
        for (int run = 0; run < kRuns; ++run) {
            const double s2 = 1 / gamma(random);
            const Eigen::VectorXd z = Eigen::VectorXd::NullaryExpr(n, [&] { return normal(random); });
            const Eigen::VectorXd truth =
                Eigen::Map<const Eigen::VectorXd>(prior.mean.data(), n) + std::sqrt(s2) * root * z;
            ConjugateRegression model(prior.mean, prior.covariance, kShape, kRate);
            const auto draw = [&](double town, double motorway) {
                const std::array x{town, motorway, 2.0, 10.0};
                const double w = 0.5 + 8.4e-4 * (town + motorway) + std::pow(0.006 * (town + motorway), 2);
                const double mean = Eigen::Map<const Eigen::VectorXd>(x.data(), n).dot(truth);
                return std::tuple(x, w, mean + std::sqrt(s2 * w) * normal(random));
            };
            for (int i = 0; i < 12; ++i) {
                const auto [x, w, y] = draw(50 + 40 * (i % 4), 60 * (i % 5));
                model.observe(x, y, w);
            }
            const auto [x, w, y] = draw(30, 25);   // a tenth of a tank ahead
            const std::array ranks{model.predict(std::array{1.0, 0.0, 0.0, 0.0}, 0).cdf(truth[0]),
                                   model.predict(std::array{0.4, 0.6, 0.0, 0.0}, 0)
                                       .cdf(0.4 * truth[0] + 0.6 * truth[1]),
                                   model.predict(x, w).cdf(y)};
            for (std::size_t k = 0; k < ranks.size(); ++k)
                ++count[k][std::size_t(std::min(ranks[k] * kBins, kBins - 1.0))];
        }
        for (const auto& bins : count) {
            double chi2 = 0;
            for (const int c : bins)
                chi2 += std::pow(c - double(kRuns) / kBins, 2) / (double(kRuns) / kBins);
            QVERIFY2(chi2 < 43.82, qPrintable(QString::number(chi2)));
        }
    }

    // The same for the whole model, screening aside: true rates drawn from its
    // prior, twenty tanks of mixed driving, idling and cold starts, and noise of
    // three kinds; ranks of the truth in the stated posterior, 10 bins, 9 degrees
    // of freedom, 99.9 % point 27.88 (tables). Also the share within the stated
    // 50, 80 and 90 % intervals: not below by more than 2.6 binomial sd, and above
    // by little: evidence fades, which makes the intervals cautious.
    void trueRatesRankUniformlyInWhatTheModelStates()
    {
        const std::vector<Mode> modes{{kTown, {}}, {kMotorway, {}}};
        const RatePrior prior = ratePrior(modes);
        const auto n = Eigen::Index(prior.mean.size());
        const Eigen::MatrixXd root =
            Eigen::MatrixXd(Eigen::Map<const Eigen::MatrixXd>(prior.covariance.data(), n, n)).llt().matrixL();
        std::mt19937_64 random(20261125);
        std::normal_distribution<double> normal;
        std::gamma_distribution<double> gamma(3.5, 1 / 2.5);
        std::array<std::array<int, 10>, 2> bins{};
        std::array<std::array<int, 3>, 2> within{};
        int runs = 0;
        for (int run = 0; run < 1500; ++run) {
            const Eigen::VectorXd z = Eigen::VectorXd::NullaryExpr(n, [&] { return normal(random); });
            const Eigen::VectorXd truth = Eigen::Map<const Eigen::VectorXd>(prior.mean.data(), n) + root * z;
            if (truth.minCoeff() < 0.002)
                continue;   // the model knows that rates are positive
            ++runs;
            const double s2 = 1 / gamma(random);
            ConsumptionModel model(setupOf(modes));
            for (int i = 0; i < 20; ++i) {
                const double km = test::uniform(random, 400, 700), town = test::uniform(random);
                Interval tank = stretch(0, {{kTown, Distance::fromKm(km * town)},
                                            {kMotorway, Distance::fromKm(km * (1 - town))}}, km);
                tank.begin = Instant(std::chrono::days(18000 + 7 * i));
                tank.end = tank.begin + std::chrono::days(7);
                tank.idleHours = town * test::uniform(random, 0, 2);
                tank.coldStarts = std::round(town * km / 10 * test::uniform(random));
                const double litres = km * (town * truth[0] + (1 - town) * truth[1])
                    + tank.idleHours * truth[2] + tank.coldStarts * truth[3];
                const double variance = s2 * (2 * 0.25 + std::pow(0.08 * litres, 2))
                    + NoiseSetup().tauSquared_l2PerKm * km;
                tank.burnt.mean = Volume::fromLitres(std::max(litres + std::sqrt(variance) * normal(random), 1.0));
                model.observe(tank);
            }
            const ModeRates rates = model.rates();
            for (std::size_t i = 0; i < 2; ++i) {
                const double away = truth[Eigen::Index(i)] - rates.longRun[i].litresPerKm();
                const double rank = 0.5 * std::erfc(-away / std::sqrt(2 * rates.posterior[3 * i]));
                ++bins[i][std::size_t(std::min(rank * 10, 9.0))];
                for (std::size_t k = 0; k < 3; ++k)
                    within[i][k] += std::abs(rank - 0.5) < kBandLevels[k] / 2;
            }
        }
        for (std::size_t i = 0; i < 2; ++i) {
            double chi2 = 0;
            for (const int count : bins[i])
                chi2 += std::pow(count - runs / 10.0, 2) / (runs / 10.0);
            QVERIFY2(chi2 < 27.88, qPrintable(QString::number(chi2)));
            for (std::size_t k = 0; k < 3; ++k) {
                const double p = kBandLevels[k], share = double(within[i][k]) / runs;
                QVERIFY2(share > p - 2.6 * std::sqrt(p * (1 - p) / runs) && share < p + 0.06,
                         qPrintable(QString::number(share)));
            }
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
            const ModeRates rates = model.rates();
            const double truth[] = {car.town_lPerKm, car.motorway_lPerKm};
            for (std::size_t i = 0; i < 2; ++i) {
                const double half = 1.645 * std::sqrt(rates.posterior[3 * i]);
                inside += std::abs(rates.longRun[i].litresPerKm() - truth[i]) <= half;
                ++total;
            }
        }
        qInfo("%d of %d true rates within their 90 %% intervals", inside, total);
        QVERIFY(double(inside) / total > 0.82);
    }
};

UNDERMARK_TEST(RateRecoveryTest)
#include "rate_recovery_test.moc"
