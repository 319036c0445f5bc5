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

    // Ten tanks of 40 L on 500 km, one after the other.
    static ConsumptionModel tenTanks()
    {
        ConsumptionSetup setup = setupOf({{kTown, {}}, {kMotorway, {}}});
        setup.facts.capacity = Volume::fromLitres(55);
        ConsumptionModel model(setup);
        for (int i = 0; i < 10; ++i)
            model.observe(nextTank(model, 40 + i % 3 - 1, 500));
        return model;
    }

    static Interval nextTank(const ConsumptionModel& model, double litres, double km, int days = 10)
    {
        Interval tank = stretch(litres, {}, km);
        tank.begin = Instant(std::chrono::days(18000 + 10 * int(model.observed())));
        tank.end = tank.begin + std::chrono::days(days);
        tank.firstFill = model.observed();
        tank.lastFill = tank.firstFill + 1;
        return tank;
    }

    static double sure(const ConsumptionModel& model, double litres = 45)
    {
        return model.forecastDistance(Volume::fromLitres(litres), {}, 0).p99().km();
    }

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
        QVERIFY(near(per100(model.forecast()), 8, 0.15));
        // Which mode it was nobody knows: one mode alone stays less certain.
        QVERIFY(model.longRun().covariance[0]
                > 4 * std::pow(0.01 * model.forecast().rate.mean.litresPerKm(), 2));
        QVERIFY(per100(model.forecast({{"unheard-of", Distance::fromKm(10)}}))
                == per100(model.forecast()));
    }

    void theUsualMixIsLearntFromTrips()
    {
        ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
        const double before = model.rates().usualMix[1].ratio();
        for (int i = 0; i < 20; ++i)
            model.observe(stretch(45, {{kMotorway, Distance::fromKm(550)}, {kTown, Distance::fromKm(50)}}, 600));
        const ModeRates rates = model.rates();
        QVERIFY(rates.usualMix[1].ratio() > before);
        QVERIFY(rates.usualMix[1].ratio() > 0.85);
        QVERIFY(near(rates.usualMix[0].ratio() + rates.usualMix[1].ratio(), 1, 1e-12));
        const Mix known{{kTown, Distance::fromKm(100 * rates.usualMix[0].ratio())},
                        {kMotorway, Distance::fromKm(100 * rates.usualMix[1].ratio())}};
        QVERIFY(near(per100(model.forecast(known)), per100(model.forecast()), 1e-9));
    }

    void ratesAreCorrelatedWhereOnlyTheirSumWasSeen()
    {
        ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
        for (int i = 0; i < 20; ++i)
            model.observe(stretch(50, {{kTown, Distance::fromKm(300)}, {kMotorway, Distance::fromKm(300)}}, 600));
        QVERIFY(model.longRun().covariance[1] < 0);
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
            QVERIFY(rates.covariance[3 * i] >= 0);
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
        const LongRunRates rates = model.longRun();
        QVERIFY(near(rates.idle.mean.litresPerHour(), 1.1, 0.12));
        QVERIFY(near(rates.coldStart.mean.litres(), 0.2, 0.03));
        QVERIFY(near(rates.rate[0].litresPer100Km(), 9, 0.3));
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
        // What is stated is the median of the long run. The forecast is a mean over what the
        // car does just now, higher in every mode alike, by half its log's variance.
        const std::vector<Consumption> rate = model.longRun().rate;
        QVERIFY(near((0.55 * rate[0] + 0.45 * rate[1]).mpgUs(), 31.2005, 5e-4));
        const Mix mix{{"city", Distance::fromKm(55)}, {"highway", Distance::fromKm(45)}};
        const double just = per100(model.forecast(mix)) / (0.55 * rate[0] + 0.45 * rate[1]).litresPer100Km();
        QVERIFY(just > 1 && just < 1.01);
        QVERIFY(near(per100(model.forecast(only("city"))) / rate[0].litresPer100Km(), just, 1e-9));
        QVERIFY(near(per100(model.forecast(only("highway"))) / rate[1].litresPer100Km(), just, 1e-9));
    }

    void theLevelFollowsACarThatBurnsMore()
    {
        ConsumptionModel model(setupOf({{kTown, {}}}));
        for (int i = 0; i < 60; ++i)
            model.observe(stretch(40, {{kTown, Distance::fromKm(500)}}, 500));
        for (int i = 0; i < 12; ++i)
            model.observe(stretch(46, {{kTown, Distance::fromKm(500)}}, 500));
        QVERIFY(near(per100(model.forecast(only(kTown))), 9.2, 0.15));
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
                QVERIFY(near(model.expectedLitres(stretch(62, {}, 400)).litres(), 62, 1.5));
        }
        for (std::size_t i = 0; i < share.size(); ++i)
            QVERIFY(near(model.rates().usualMix[i].ratio(), share[i].ratio(), 1e-9));
    }

    // Fifty years of a fill a day, each a little larger than the last: rounding must not grow.
    void thousandsOfAlikeStretchesLeaveTheNumbersSound()
    {
        ConsumptionModel model(setupOf({{kTown, {}}, {kMotorway, {}}}));
        for (int i = 0; i < 20000; ++i) {
            Interval tank = nextTank(model, 30 + 0.1 * (i % 100), 400, 1);
            tank.begin = Instant(std::chrono::days(10000 + i));
            tank.end = tank.begin + std::chrono::days(1);
            model.observe(tank);
        }
        const ModeRates rates = model.rates();
        double weights = 0;
        for (const RateWorld& world : rates.worlds)
            weights += world.weight;
        QVERIFY(near(weights, 1, 1e-9));
        for (const std::size_t mode : {0, 1})
            QVERIFY(model.longRun().covariance[3 * mode] > 0);
        QVERIFY(near(per100(model.forecast()), 35.0 / 4, 1));
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
        const double before = model.rates().covariance[0];
        for (int i = 0; i < 60; ++i)
            model.observe(stretch(40 + 0.1 * (i % 3), {}, 500));
        QVERIFY(model.rates().covariance[0] < before / 30);   // the day's part has shrunk, the road's has not
        const double tau2 = 1.14e-3;     // measured on real trips, L^2/km
        QVERIFY(model.rates().tauSquaredPerKm > 0.9 * tau2);
        Interval tenth = stretch(4, {}, 50);
        tenth.clickEnds = 0;
        QVERIFY(model.predictLogRatio(tenth).sd > 0.9 * std::sqrt(tau2 * 50) / 4);
    }

    // A rise to 13 L/100 km, 45 L in the tank: truly 346 km. It may be a slip or not.
    void aRiseBringsSureDownAtOnce()
    {
        ConsumptionModel model = tenTanks();
        const double before = sure(model);
        QVERIFY(before > 430);
        for (int i = 0; i < 4; ++i) {
            model.observe(nextTank(model, 52, 400), Belief::doubtful);
            QVERIFY2(sure(model) < 346, qPrintable(QString::number(sure(model))));
        }
        QVERIFY(near(per100(model.forecast()), 13, 0.4));
    }

    void aSlipIsForgottenWhenTheNextTankIsAsBefore()
    {
        ConsumptionModel model = tenTanks();
        const double before = per100(model.forecast());
        model.observe(nextTank(model, 30, 500), Belief::doubtful);
        QVERIFY(model.agreement() < 0.95);
        for (int i = 0; i < 3; ++i)
            model.observe(nextTank(model, 40, 500));
        QVERIFY(near(per100(model.forecast()), before, 0.15));
    }

    void whatTheUserRulesTrueIsNoSlip()
    {
        ConsumptionModel open = tenTanks(), ruled = tenTanks();
        open.observe(nextTank(open, 52, 400), Belief::doubtful);
        ruled.observe(nextTank(ruled, 52, 400), Belief::ruledTrue);
        QVERIFY(per100(ruled.forecast()) > per100(open.forecast()));
        ConsumptionModel leftOut = tenTanks();
        const double before = per100(leftOut.forecast());
        leftOut.observe(nextTank(leftOut, 52, 400), Belief::leftOut);
        QCOMPARE(per100(leftOut.forecast()), before);
    }

    // 0.05 L on 4 km, just after a full tank: within the click, whatever the car.
    void aStretchNoLargerThanTheClickTeachesNextToNothing()
    {
        ConsumptionModel model = tenTanks();
        const double before = sure(model);
        model.observe(nextTank(model, 0.05, 4, 0));
        QVERIFY2(std::abs(sure(model) / before - 1) < 0.01, qPrintable(QString::number(sure(model))));
    }

    void theUsersWordRaisesTheRateWithItsOwnSpread()
    {
        const ConsumptionModel model = tenTanks();
        Circumstances towing;
        towing.burnsMore = {Fraction::fromPercent(30), Fraction::fromPercent(10)};
        const RateForecast plain = model.forecast(), more = model.forecast({}, towing);
        QVERIFY(near(more.rate.mean / plain.rate.mean, 1.3, 1e-9));
        QVERIFY(more.rate.sd / more.rate.mean > 0.1 / 1.3);
        QVERIFY(more.rate.sd / more.rate.mean > plain.rate.sd / plain.rate.mean);
    }

    // Vehicles that people drive: a full tank goes so far. Before any fill "sure" must not
    // be more, and "hopeful" not less; after one full tank "sure" is near it.
    void beforeAnyFillThePriorIsAsWideAsWhatPeopleDrive()
    {
        struct Driven {
            double capacity_l, range_km;
        };
        for (const Driven& d : {Driven{6, 40}, {6, 200}, {12, 220}, {17, 380}, {40, 800}, {60, 400},
                                {80, 350}, {70, 1100}, {300, 900}, {600, 1800}}) {
            ConsumptionSetup setup = setupOf({{kTown, {}}, {kOpenRoad, {}}, {kMotorway, {}}});
            setup.facts.capacity = Volume::fromLitres(d.capacity_l);
            ConsumptionModel model(setup);
            const auto fresh = model.forecastDistance(*setup.facts.capacity, {}, 0);
            QVERIFY2(fresh.p99().km() < d.range_km, qPrintable(QString::number(fresh.p99().km())));
            QVERIFY2(fresh.promised[0].km() > d.range_km, qPrintable(QString::number(fresh.promised[0].km())));
            const double burnt_l = 0.9 * d.capacity_l;
            model.observe(nextTank(model, burnt_l, 0.9 * d.range_km));
            const double after_km = sure(model, d.capacity_l);
            QVERIFY2(after_km < d.range_km && after_km > 0.5 * d.range_km, qPrintable(QString::number(after_km)));
        }
    }

    // The worlds say over one usual tank what the forecast promises.
    void theWorldsHoldWhatIsPromised()
    {
        ConsumptionModel model = tenTanks();
        for (const bool odd : {false, true}) {
            if (odd)
                model.observe(nextTank(model, 50, 400), Belief::doubtful);
            const ModeRates rates = model.rates();
            double weights = 0, factor = 0;
            for (const RateWorld& world : rates.worlds) {
                weights += world.weight;
                factor += world.weight * world.factorMean;
            }
            QVERIFY(near(weights, 1, 1e-9));
            QVERIFY(near(factor, 1, 1e-9));
            const DistanceForecast promised = model.forecastDistance(Volume::fromLitres(40), {}, 1);
            const auto dryBefore = [&](Distance d) {   // all in the usual mix, 40 L from a click
                double r = 0, own = 0, sum = 0;
                for (std::size_t i = 0; i < 2; ++i) {
                    r += rates.usualMix[i].ratio() * rates.mean[i].litresPerKm();
                    for (std::size_t j = 0; j < 2; ++j)
                        own += rates.usualMix[i].ratio() * rates.usualMix[j].ratio() * rates.residual[2 * i + j];
                }
                for (const RateWorld& w : rates.worlds) {
                    const double variance = d.km() * d.km() * (w.factorMean * w.factorMean * own + w.factorSd * w.factorSd * r * r)
                        + rates.tauSquaredPerKm * d.km() + std::pow(rates.lastClick.sd.litres(), 2);
                    const double away = (40 - rates.lastClick.mean.litres()) - w.factorMean * r * d.km();
                    sum += w.weight * 0.5 * std::erfc(away / std::sqrt(2 * variance));
                }
                return sum;
            };
            QVERIFY2(near(dryBefore(promised.p99()), 0.01, 0.005), odd ? "odd" : "");
            QVERIFY2(near(dryBefore(promised.p90()), 0.10, 0.03), odd ? "odd" : "");
            QVERIFY2(near(dryBefore(promised.p10()), 0.90, 0.03), odd ? "odd" : "");
        }
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
                    known.days = daysBetween(tank.begin, tank.end);
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
