// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/backtest.h"
#include "tests/support/simulated_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class BacktestTest : public QObject {
    Q_OBJECT

    static ConsumptionModel freshModel()
    {
        ConsumptionSetup setup;
        for (const char* name : {kTown, kOpenRoad, kMotorway, kSpecialStage})
            setup.modes.push_back({name, std::nullopt});
        return ConsumptionModel(setup);
    }

    static std::vector<Interval> tanks(unsigned seed, std::size_t count)
    {
        std::mt19937_64 random(seed);
        const test::CarTruth car = test::randomCar(random);
        return intervalsFrom(test::simulate(car, count, random).fills, {});
    }

private slots:
    void everyTankFromTheEleventhIsForecast()
    {
        const auto log = tanks(3, 50);
        const Backtest test = backtest(log, freshModel());
        QCOMPARE(test.tanks, log.size());
        QCOMPARE(test.forecasts.size(), log.size() - kWarmUpTanks);
        QCOMPARE(test.forecasts.front().tank, kWarmUpTanks);
        QCOMPARE(test.oneTank.count, log.size() - kWarmUpTanks);
        QCOMPARE(backtest(std::span(log).first(8), freshModel()).forecasts.size(), std::size_t(0));
    }

    // A forecast that knew its own distance, or later tanks, would change.
    void aForecastKnowsNothingOfItsOwnDistanceOrOfLaterTanks()
    {
        const auto log = tanks(4, 60);
        auto altered = log;
        for (std::size_t i = 30; i < altered.size(); ++i)
            altered[i].distance = altered[i].distance * (1.2 + 0.01 * double(i));
        altered[31].burnt.mean = altered[31].burnt.mean * 3;
        const Backtest before = backtest(log, freshModel());
        const Backtest after = backtest(altered, freshModel());
        for (std::size_t i = 0; i <= 30 - kWarmUpTanks; ++i) {
            QCOMPARE(before.forecasts[i].forecast.point.km(), after.forecasts[i].forecast.point.km());
            QCOMPARE(before.forecasts[i].forecast.bands[2].low.km(),
                     after.forecasts[i].forecast.bands[2].low.km());
        }
        QVERIFY(before.forecasts[25].forecast.point != after.forecasts[25].forecast.point);
    }

    void scoresAreThoseOfTheForecastsShown()
    {
        const Backtest test = backtest(tanks(5, 80), freshModel());
        double error = 0, covered = 0, width = 0, score = 0;
        for (const TankForecast& tank : test.forecasts) {
            const Band& band = tank.forecast.bands[1];
            const double actual = tank.actual.km();
            error += std::abs(tank.forecast.point.km() - actual) / actual;
            covered += band.low.km() <= actual && actual <= band.high.km();
            width += band.high.km() - band.low.km();
            score += band.high.km() - band.low.km()
                + 10 * (std::max(band.low.km() - actual, 0.0) + std::max(actual - band.high.km(), 0.0));
        }
        const double n = double(test.forecasts.size());
        QVERIFY(std::abs(test.meanError - error / n) < 1e-12);
        QVERIFY(std::abs(test.oneTank.coverage[1] - covered / n) < 1e-12);
        QVERIFY(std::abs(test.oneTank.width[1].km() - width / n) < 1e-9);
        QVERIFY(std::abs(test.oneTank.intervalScore[1].km() - score / n) < 1e-9);
    }

    // Three tanks of the same rate and a fourth twice as thirsty: by hand.
    void baselinesAreTheSimpleOnes()
    {
        std::vector<Interval> log(12);
        for (std::size_t i = 0; i < log.size(); ++i) {
            log[i].burnt.mean = Volume::fromLitres(i == 10 ? 60 : 40);
            log[i].distance = Distance::fromKm(500);
            log[i].begin = Instant(std::chrono::hours(24 * 7 * i));
            log[i].end = log[i].begin + std::chrono::hours(24 * 7);
        }
        const BaselineErrors b = backtest(log, freshModel()).baseline;
        // Tank 11 burns 0.12 after 0.08: forecast 750 km, error 0.5. Tank 12 burns
        // 0.08 after: last 0.12 -> 333.3 km, error 1/3; mean of 5 0.088, of 10
        // 0.084, EWMA 0.092.
        QVERIFY(std::abs(b.last - (0.5 + 1 - 0.08 / 0.12) / 2) < 1e-12);
        QVERIFY(std::abs(b.mean5 - (0.5 + 1 - 0.08 / 0.088) / 2) < 1e-12);
        QVERIFY(std::abs(b.mean10 - (0.5 + 1 - 0.08 / 0.084) / 2) < 1e-12);
        QVERIFY(std::abs(b.ewma - (0.5 + 1 - 0.08 / 0.092) / 2) < 1e-12);
    }

    // Pooled over simulated cars with seasons, drift and slips, the bands cover
    // their level: 30 cars, 2,700 forecasts. Tanks of one car are correlated, so
    // the allowance is 2.6 binomial sd of a third as many.
    void bandsCoverTheirLevelAtOneTankAndAtThree()
    {
        std::array<double, 3> one{}, three{};
        double n1 = 0, n3 = 0;
        for (unsigned seed = 100; seed < 130; ++seed) {
            const Backtest test = backtest(tanks(seed, 100), freshModel());
            n1 += double(test.oneTank.count);
            n3 += double(test.threeTanks.count);
            for (std::size_t k = 0; k < 3; ++k) {
                one[k] += test.oneTank.coverage[k] * double(test.oneTank.count);
                three[k] += test.threeTanks.coverage[k] * double(test.threeTanks.count);
            }
        }
        for (std::size_t k = 0; k < 3; ++k) {
            const double p = kBandLevels[k];
            const double allowed = 2.6 * std::sqrt(p * (1 - p) / (n1 / 3));
            QVERIFY2(std::abs(one[k] / n1 - p) < allowed, qPrintable(QString::number(one[k] / n1)));
            QVERIFY2(std::abs(three[k] / n3 - p) < allowed, qPrintable(QString::number(three[k] / n3)));
        }
    }

    // A tenth of a tank ahead: no log of fills knows that truth, a simulated car
    // does. 40 cars, 3,500 forecasts.
    void bandsCoverTheirLevelATenthOfATankAhead()
    {
        std::array<double, 3> covered{};
        double n = 0;
        for (unsigned seed = 300; seed < 340; ++seed) {
            std::mt19937_64 random(seed);
            const auto log = test::simulate(test::randomCar(random), 100, random);
            ConsumptionModel model = freshModel();
            for (const Interval& tank : intervalsFrom(log.fills, {})) {
                Circumstances now;
                now.begin = tank.begin;
                const auto ahead = model.forecastDistance(Volume::fromLitres(log.tenth_l), now, 0);
                const Distance actual = Distance::fromKm(log.tenth_km[tank.firstFill]);
                n += model.observed() >= kWarmUpTanks;
                for (std::size_t k = 0; k < 3 && model.observed() >= kWarmUpTanks; ++k)
                    covered[k] += ahead.bands[k].low <= actual && actual <= ahead.bands[k].high;
                model.observe(tank);
            }
        }
        for (std::size_t k = 0; k < 3; ++k) {
            const double p = kBandLevels[k];
            QVERIFY2(std::abs(covered[k] / n - p) < 2.6 * std::sqrt(p * (1 - p) / n),
                     qPrintable(QString::number(covered[k] / n)));
        }
    }

    // Tanks filled up again at once: the log itself tells of short stretches.
    void bandsCoverTheirLevelOverShortStretchesOfTheLog()
    {
        std::array<double, 3> covered{};
        double n = 0;
        for (unsigned seed = 400; seed < 430; ++seed) {
            std::mt19937_64 random(seed);
            test::CarTruth car = test::randomCar(random);
            car.topUps = 0.2;
            const Backtest test =
                backtest(intervalsFrom(test::simulate(car, 150, random).fills, {}), freshModel());
            n += double(test.shortStretch.count);
            for (std::size_t k = 0; k < 3; ++k)
                covered[k] += test.shortStretch.coverage[k] * double(test.shortStretch.count);
        }
        QVERIFY(n > 300);
        for (std::size_t k = 0; k < 3; ++k) {
            const double p = kBandLevels[k];
            QVERIFY2(std::abs(covered[k] / n - p) < 2.6 * std::sqrt(p * (1 - p) / (n / 3)),
                     qPrintable(QString::number(covered[k] / n)));
        }
    }

    void fewEntriesAreFlaggedAndTheSlipsAreAmongThem()
    {
        std::size_t flags = 0, count = 0, slips = 0, caught = 0;
        for (unsigned seed = 200; seed < 220; ++seed) {
            std::mt19937_64 random(seed);
            const auto log = test::simulate(test::randomCar(random), 150, random);
            const auto stretches = intervalsFrom(log.fills, {});
            const Backtest test = backtest(stretches, freshModel());
            flags += test.flags.size();
            count += test.tanks;
            slips += std::size_t(std::ranges::count(log.slip, true));
            for (const FillFlag& flag : test.flags)
                caught += log.slip[stretches[flag.fill].lastFill];
        }
        QVERIFY(slips > 10);
        QVERIFY(double(caught) / double(slips) > 0.7);
        QVERIFY(double(flags) / double(count) < 0.04);
    }
};

UNDERMARK_TEST(BacktestTest)
#include "walk_forward_test.moc"
