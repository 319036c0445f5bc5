// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/consumption_model.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace undermark;

class ConsumptionModelTest : public QObject {
    Q_OBJECT

    static ConsumptionSetup setupOf(std::vector<Mode> modes)
    {
        ConsumptionSetup setup;
        setup.modes = std::move(modes);
        return setup;
    }

    static Mode stated(const char* name, double litresPer100Km, double sd)
    {
        return {name, Estimate<Consumption>{Consumption::fromLitresPer100Km(litresPer100Km),
                                            Consumption::fromLitresPer100Km(sd)}};
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

    static Mix only(const char* mode) { return {{mode, Distance::fromKm(100)}}; }

    static bool near(double a, double b, double tolerance)
    {
        if (std::abs(a - b) <= tolerance)
            return true;
        qWarning("%.12g differs from %.12g", a, b);
        return false;
    }

    static double per100(const RateForecast& f) { return f.rate.mean.litresPer100Km(); }

private slots:
    void beforeAnyStretchTheForecastIsTheStatedPrior()
    {
        const ConsumptionModel model(setupOf({stated(kTown, 11, 0.8), stated(kMotorway, 7.5, 0.5)}));
        QVERIFY(near(per100(model.forecast(only(kTown))), 11, 0.15));
        QVERIFY(near(per100(model.forecast(only(kMotorway))), 7.5, 0.15));
        // At least as wide as stated.
        QVERIFY(model.forecast(only(kTown)).rate.sd.litresPer100Km() > 0.8);
    }

    void withoutStatedRatesThePriorIsWide()
    {
        const ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
        const RateForecast usual = model.forecast();
        QVERIFY(usual.rate.sd / usual.rate.mean > 0.3);
        QVERIFY(usual.degreesOfFreedom > 2);
        QVERIFY(usual.scale < usual.rate.sd);
    }

    void aStatedRatePullsTheOthersAlong()
    {
        const ConsumptionModel plain(setupOf({{kTown, {}}, {kMotorway, {}}}));
        const ConsumptionModel thirsty(setupOf({stated(kTown, 18, 0.5), {kMotorway, {}}}));
        QVERIFY(per100(thirsty.forecast(only(kMotorway)))
                > 1.3 * per100(plain.forecast(only(kMotorway))));
    }

    void kilometresWithoutTripsCountAsTheUsualMix()
    {
        ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
        for (int i = 0; i < 30; ++i)
            model.observe(stretch(48, {}, 600));
        QVERIFY(near(per100(model.forecast()), 8, 0.1));
        // Which mode it was nobody knows: one mode alone stays less certain.
        QVERIFY(model.rates().posterior[0]
                > 4 * std::pow(0.01 * model.forecast().rate.mean.litresPerKm(), 2));
        QVERIFY(per100(model.forecast({{"unheard-of", Distance::fromKm(10)}}))
                == per100(model.forecast()));
    }

    void theUsualMixIsLearntFromTripsAndCarriesItsUncertainty()
    {
        ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
        const double before = model.rates().usualMix[1].ratio();
        for (int i = 0; i < 20; ++i)
            model.observe(stretch(45, {{kMotorway, Distance::fromKm(550)}, {kTown, Distance::fromKm(50)}}, 600));
        const ModeRates rates = model.rates();
        QVERIFY(rates.usualMix[1].ratio() > before);
        QVERIFY(rates.usualMix[1].ratio() > 0.85);
        QVERIFY(near(rates.usualMix[0].ratio() + rates.usualMix[1].ratio(), 1, 1e-12));
        QVERIFY(rates.usualMixVariance > 0);
        // Driving in a known mix of the same shares is surer than in the unknown one.
        const Mix known{{kTown, Distance::fromKm(100 * rates.usualMix[0].ratio())},
                        {kMotorway, Distance::fromKm(100 * rates.usualMix[1].ratio())}};
        QVERIFY(model.forecast(known).rate.sd < model.forecast().rate.sd);
        QVERIFY(near(per100(model.forecast(known)), per100(model.forecast()), 1e-9));
    }

    void ratesAreCorrelatedWhereOnlyTheirSumWasSeen()
    {
        ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
        for (int i = 0; i < 20; ++i)
            model.observe(stretch(50, {{kTown, Distance::fromKm(300)}, {kMotorway, Distance::fromKm(300)}}, 600));
        QVERIFY(model.rates().posterior[1] < 0);
    }

    void ratesArePositive()
    {
        // All fuel is explained by the town, so the motorway seems to burn none.
        ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
        for (int i = 0; i < 40; ++i) {
            const double town = 50 + 10 * (i % 5);
            const double motorway = 400 + 10 * (i % 7);
            model.observe(stretch(town * 0.2 - motorway * 0.01 + 5,
                                  {{kTown, Distance::fromKm(town)}, {kMotorway, Distance::fromKm(motorway)}},
                                  town + motorway));
        }
        const ModeRates rates = model.rates();
        for (std::size_t i = 0; i < rates.mean.size(); ++i) {
            QVERIFY(rates.mean[i].litresPerKm() > 0);
            QVERIFY(rates.posterior[3 * i] >= 0);
        }
    }

    void idlingAndColdStartsAreLearntApart()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        for (int i = 0; i < 60; ++i) {
            Interval s = stretch(0, {{kTown, Distance::fromKm(400)}}, 400);
            s.idleHours = i % 2 ? 12 : 0;
            s.coldStarts = i % 3 ? 40 : 0;
            s.burnt.mean = Volume::fromLitres(400 * 0.09 + s.idleHours * 1.1 + s.coldStarts * 0.2);
            model.observe(s);
        }
        const ModeRates rates = model.rates();
        QVERIFY(near(rates.idle.mean.litresPerHour(), 1.1, 0.12));
        QVERIFY(near(rates.coldStart.mean.litres(), 0.2, 0.03));
        QVERIFY(near(rates.mean[0].litresPer100Km(), 9, 0.3));
    }

    // 40 CFR 600: fuel economies combine by the harmonic mean, weighted by
    // distance; inputs published, 31.2005 computed. A mix of modes
    // does the same because litres per km are what is averaged.
    void aMixOfModesIsTheHarmonicMeanOfTheirEconomies()
    {
        const auto at = [](double mpg) { return Consumption::fromMpgUs(mpg); };
        const Consumption tiny = Consumption::fromLitresPer100Km(0.001);
        const ConsumptionModel model(setupOf({{"city", Estimate<Consumption>{at(27.7), tiny}},
                                              {"highway", Estimate<Consumption>{at(36.9), tiny}}}));
        const Mix mix{{"city", Distance::fromKm(55)}, {"highway", Distance::fromKm(45)}};
        QVERIFY(near(model.forecast(mix).rate.mean.mpgUs(), 31.2005, 5e-4));
    }

    // A long stretch shares omega; what averages out is reported apart.
    void theForecastIsOfALongStretchAndNotOfTheMean()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        std::mt19937_64 random(1);
        std::normal_distribution<double> scatter(0, 0.08);
        for (int i = 0; i < 200; ++i)
            model.observe(stretch(40 * std::exp(scatter(random)), {{kTown, Distance::fromKm(500)}}, 500));
        const RateForecast f = model.forecast(only(kTown));
        QVERIFY(f.rate.sd / f.rate.mean > 0.05);   // far above 0.08 / sqrt(200)
        QVERIFY(f.rate.sd / f.rate.mean < 0.10);
        QVERIFY(f.tauSquaredPerKm > 0);
    }

    void evidenceFadesOverTheMemory()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        for (int i = 0; i < 60; ++i)
            model.observe(stretch(40, {{kTown, Distance::fromKm(500)}}, 500));
        for (int i = 0; i < 60; ++i)   // 30,000 km later the car burns more
            model.observe(stretch(46, {{kTown, Distance::fromKm(500)}}, 500));
        QVERIFY(near(per100(model.forecast(only(kTown))), 9.2, 0.1));
    }

    void withoutATimeTheSeasonIsThatOfTheLastStretch()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        for (int i = 0; i < 150; ++i) {
            Interval tank = stretch(0, {{kTown, Distance::fromKm(500)}}, 500);
            tank.begin = Instant(std::chrono::days(18000 + 10 * i));
            tank.end = tank.begin + std::chrono::days(10);
            const double day = double(18000 + 10 * i);
            tank.burnt.mean = Volume::fromLitres(40 * (1 + 0.1 * std::cos(2 * M_PI * day / 365.25)));
            model.observe(tank);
        }
        Circumstances end, halfAYearOn;
        end.begin = Instant(std::chrono::days(18000 + 1500));
        halfAYearOn.begin = *end.begin + std::chrono::days(182);
        QCOMPARE(per100(model.forecast()), per100(model.forecast({}, end)));
        QVERIFY(std::abs(per100(model.forecast()) - per100(model.forecast({}, halfAYearOn))) > 0.2);
    }

    // No trip logged in years: the usual mix is still that of the prior, and the
    // rates of a car that does not change do not wander.
    void withoutTripsTheRatesOfASteadyCarStay()
    {
        ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}, {kSpecialStage, {}}}));
        const auto share = model.rates().usualMix;
        for (int i = 0; i < 300; ++i) {
            model.observe(stretch(60 + 2 * (i % 3), {}, 400));
            if (i >= 30)
                QVERIFY(near(model.expectedLitres(stretch(1, {}, 400)).litres(), 62, 1.5));
        }
        for (std::size_t i = 0; i < share.size(); ++i)
            QVERIFY(near(model.rates().usualMix[i].ratio(), share[i].ratio(), 1e-9));
    }

    void oneOddTankDoesNotCarryTheRateAway()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        for (int i = 0; i < 40; ++i)
            model.observe(stretch(40 + (i % 3), {{kTown, Distance::fromKm(500)}}, 500));
        const double before = per100(model.forecast(only(kTown)));
        model.observe(stretch(90, {{kTown, Distance::fromKm(500)}}, 500));
        QVERIFY(std::abs(per100(model.forecast(only(kTown))) / before - 1) < 0.06);
    }

    // Full tanks cannot tell noise of the road from that of the day: however calm they
    // are, a short stretch is not taken for surer than the road's noise lets it be.
    void calmTanksDoNotTakeAwayTheNoiseOfTheRoad()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        const auto ratio = [&] {
            const ModeRates rates = model.rates();
            return rates.tauSquaredPerKm / rates.covariance[0];
        };
        const double before = ratio();
        for (int i = 0; i < 60; ++i)
            model.observe(stretch(40 + 0.1 * (i % 3), {}, 500));
        QVERIFY(ratio() > 4 * before);   // the day's part has shrunk, the road's has not
        // But for the bands' own factor, which narrows a little with every hit.
        const double tau2 = NoiseSetup().tauSquared_l2PerKm;
        QVERIFY(model.rates().tauSquaredPerKm > 0.5 * tau2);
        Interval tenth = stretch(4, {}, 50);
        tenth.clickEnds = 0;
        QVERIFY(model.predictLogRatio(tenth).sd() > 0.9 * std::sqrt(tau2 * 50) / 4);
    }

    // Where only the pace tells the tanks apart, bands for a known pace get narrow and
    // those for an unknown one stay wide; both cover what they promise.
    void bandsWithoutThePaceAreKeptApartFromThoseWithIt()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        std::mt19937_64 random(8);
        std::normal_distribution<double> normal;
        std::array<double, 2> covered{};
        Instant now(std::chrono::days(18000));
        constexpr int kTanks = 600, kWarmUp = 100;
        for (int i = 0; i < kTanks; ++i) {
            const int days = 2 << (random() % 5);
            Interval tank = stretch(40, {}, 500 * std::exp(0.12 * (2 - std::log2(days / 2)) / 2
                                                           + 0.02 * normal(random)));
            tank.begin = now;
            tank.end = now += std::chrono::days(days);
            Circumstances known;
            known.begin = tank.begin;
            for (const bool pace : {false, true}) {
                if (pace)
                    known.litresPerDay = litresPerDay(tank.burnt.mean, tank.begin, tank.end);
                const Band band = model.forecastDistance(tank.burnt.mean, known).bands[1];
                covered[pace] += i >= kWarmUp && band.low <= tank.distance && tank.distance <= band.high;
            }
            model.observe(tank);
        }
        for (const double hits : covered) {
            const double share = hits / (kTanks - kWarmUp);
            QVERIFY2(std::abs(share - 0.8) < 2.6 * std::sqrt(0.8 * 0.2 / (kTanks - kWarmUp)),
                     qPrintable(QString::number(share)));
        }
    }

    void bandsAreNestedAndHoldThePoint()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        for (int i = 0; i < 20; ++i)
            model.observe(stretch(40 + (i % 4), {}, 500));
        const DistanceForecast f = model.forecastDistance(Volume::fromLitres(40), {});
        QVERIFY(f.bands[2].low < f.bands[1].low && f.bands[1].low < f.bands[0].low);
        QVERIFY(f.bands[0].low < f.point && f.point < f.bands[0].high);
        QVERIFY(f.bands[0].high < f.bands[1].high && f.bands[1].high < f.bands[2].high);
    }
};

UNDERMARK_TEST(ConsumptionModelTest)
#include "consumption_model_test.moc"
