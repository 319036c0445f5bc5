// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a km of height takes, learnt from trips that tell their heights: cars driven step by step
// over invented hills by forces at the wheels, an engine that idles and takes no fuel when pushed.
#include "engine/consumption/consumption_model.h"
#include "engine/roads/climb.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <algorithm>
#include <cmath>
#include <random>

using namespace undermark;

namespace {

constexpr double kStep_m = 250;

struct HillCar {
    double massKg, rolling, dragArea_m2, efficiency;

    // Over one step at 80 km/h, petrol.
    double litres(double rise_m) const
    {
        const double v = 80 / 3.6;
        const double force = massKg * 9.80665 * (rolling + rise_m / kStep_m) + .5 * 1.2 * dragArea_m2 * v * v;
        return (std::max(force, 0.) * kStep_m / efficiency + 9000 * kStep_m / v) / 32e6;
    }
};

// Up and down about where it began: slopes that last some kilometres.
HeightProfile hills(std::mt19937_64& dice, double km, double slope)
{
    std::normal_distribution<double> normal;
    HeightProfile profile{{Distance(), 500}};
    double now = 0;
    for (double at = kStep_m; at <= km * 1000; at += kStep_m) {
        now = .93 * now + std::sqrt(1 - .93 * .93) * slope * normal(dice) - 2e-5 * slope * (profile.back().metres - 500);
        profile.push_back({Distance::fromMetres(at), profile.back().metres + now * kStep_m});
    }
    return profile;
}

double litresOver(const HillCar& car, const HeightProfile& profile)
{
    double litres = 0;
    for (std::size_t i = 1; i < profile.size(); ++i)
        litres += car.litres(profile[i].metres - profile[i - 1].metres);
    return litres;
}

// The beginning of the road that takes so much: people fill by the gauge.
HeightProfile untilBurnt(const HillCar& car, HeightProfile profile, double most_l)
{
    double litres = 0;
    for (std::size_t i = 1; i < profile.size(); ++i) {
        litres += car.litres(profile[i].metres - profile[i - 1].metres);
        if (litres > most_l)
            profile.resize(i + 1);
    }
    return profile;
}

// Of a long hilly road: what it takes beyond the flat, over its climb as it is counted. That is less than
// m g / (efficiency x energy), since falls spare what the air takes too and are counted as sparing less.
double litresPerKmUp(const HillCar& car, std::mt19937_64& dice)
{
    const HeightProfile road = hills(dice, 4500, .05);
    return (litresOver(car, road) - car.litres(0) * double(road.size() - 1)) / netClimb(road).km();
}

ConsumptionModel freshModel(std::optional<double> massKg = {})
{
    ConsumptionSetup setup;
    setup.modes = {{kOpenRoad, {}}};
    setup.facts.capacity = Volume::fromLitres(50);
    setup.facts.massKg = massKg;
    return ConsumptionModel(setup);
}

Interval tankOf(std::size_t number, double litres, double km)
{
    Interval tank;
    tank.burnt.mean = Volume::fromLitres(litres);
    tank.distance = Distance::fromKm(km);
    tank.byMode[kOpenRoad] = tank.distance;
    tank.begin = Instant(std::chrono::days(18000 + 7 * int(number)));
    tank.end = tank.begin + std::chrono::days(7);
    tank.firstFill = number;
    tank.lastFill = number + 1;
    return tank;
}

Interval withClimb(Interval tank, Distance climb)
{
    tank.climbed = climb;
    tank.climbedOver = tank.distance;
    return tank;
}

double litresPerKmUp(const ConsumptionModel& model) { return model.longRun().climb.mean.litresPerKm(); }

} // namespace

class ClimbLearningTest : public QObject {
    Q_OBJECT
private slots:
    // Cars of 700 to 3,300 kg with a tank that suggests 1,500, give or take half: after forty tanks, half of
    // them hilly, each with 5 % of its own, the climb is known better. Its spread is true where what was to be
    // found is what was thought possible; cars that spare far more downhill than is counted (light ones, here
    // .25 to .6 L/km for 1.8) are told too much, never too little.
    void massesThatNobodyStatedAreFound_data()
    {
        QTest::addColumn<bool>("byGauge");
        QTest::newRow("filled by the gauge") << true;
        QTest::newRow("filled every 450 km") << false;
    }
    void massesThatNobodyStatedAreFound()
    {
        QFETCH(bool, byGauge);
        std::mt19937_64 dice(20261127);
        std::normal_distribution<double> normal;
        std::uniform_real_distribution<double> even(0, 1);
        std::vector<double> before, after;
        int possible = 0, within = 0, tooLittle = 0;
        constexpr int kCars = 60;
        for (int c = 0; c < kCars; ++c) {
            const HillCar car{700 * std::pow(3300. / 700, even(dice)), .010 + .003 * even(dice), .5 + .4 * even(dice),
                              .22 + .07 * even(dice)};
            const double truth = litresPerKmUp(car, dice);
            ConsumptionModel model = freshModel();
            const Estimate<Consumption> prior = model.longRun().climb;
            before.push_back(std::abs(std::log(litresPerKmUp(model) / truth)));
            for (std::size_t i = 0; i < 40; ++i) {
                const double slope = even(dice) < .5 ? .005 : .05;
                const HeightProfile road = byGauge ? untilBurnt(car, hills(dice, 1200, slope), 28 + 12 * even(dice))
                                                   : hills(dice, 450, slope);
                const double litres = litresOver(car, road) * std::exp(.05 * normal(dice));
                model.observe(withClimb(tankOf(i, litres, road.back().at.km()), netClimb(road)));
            }
            const Estimate<Consumption> learnt = model.longRun().climb;
            after.push_back(std::abs(std::log(learnt.mean.litresPerKm() / truth)));
            const double score = (learnt.mean.litresPerKm() - truth) / learnt.sd.litresPerKm();
            const bool wasPossible = before.back() < 2 * (prior.sd / prior.mean);
            possible += wasPossible;
            within += wasPossible && std::abs(score) < 2;
            tooLittle += score < -2;
        }
        std::ranges::sort(before);
        std::ranges::sort(after);
        qInfo("error of the climb, median and 90 %%: %.0f and %.0f %% before, %.0f and %.0f %% after; within 2 sd %d of "
              "%d, too little by more %d of %d",
              100 * before[30], 100 * before[54], 100 * after[30], 100 * after[54], within, possible, tooLittle, kCars);
        QVERIFY(after[30] < .3 * before[30]);
        QVERIFY(after[54] < .6 * before[54]);
        // Of a normal law .9545 and .0228 are expected; three binomial standard deviations.
        QVERIFY(within > .9545 * possible - 3 * std::sqrt(.9545 * .0455 * possible));
        QVERIFY(tooLittle < .0228 * kCars + 3 * std::sqrt(.0228 * kCars));
    }

    // Roads as hilly as ever: nothing is told otherwise than without heights.
    void usualHillsStayWithinTheRates()
    {
        ConsumptionModel with = freshModel(), without = freshModel();
        for (std::size_t i = 0; i < 12; ++i) {
            const Interval tank = tankOf(i, 38 + double(i % 3), 450);
            with.observe(withClimb(tank, Distance::fromMetres(4000)));
            without.observe(tank);
        }
        QVERIFY(std::abs(with.usualClimb() - 4.0 / 450) < 1e-12);
        const ModeRates a = with.rates(), b = without.rates();
        QVERIFY(std::abs(a.mean[0] / b.mean[0] - 1) < 1e-9);
        QVERIFY(std::abs(a.covariance[0] / b.covariance[0] - 1) < 1e-9);
        QVERIFY(std::abs(litresPerKmUp(with) / litresPerKmUp(without) - 1) < 1e-9);
        QVERIFY(std::abs(with.forecastDistance(Volume::fromLitres(30), {}).p99() /
                             without.forecastDistance(Volume::fromLitres(30), {}).p99() - 1) < 1e-9);
    }

    // A tank over a pass that its trips tell of is no change of the car, and the rates stay.
    void aPassThatIsToldIsNoThirst()
    {
        const auto after = [](std::optional<Distance> climb) {
            ConsumptionModel model = freshModel(1500);
            for (std::size_t i = 0; i < 12; ++i)
                model.observe(withClimb(tankOf(i, 36, 450), Distance::fromMetres(900)));
            const double perKm = 1500 * 9806.65 / (.25 * 32e6);
            const Interval pass = tankOf(12, 36 + 5 * perKm, 450);
            model.observe(climb ? withClimb(pass, *climb) : pass);
            return model.rates().mean[0].litresPer100Km();
        };
        const double told = after(Distance::fromMetres(5900)), untold = after(std::nullopt);
        qInfo("after a pass of 9.2 L: %.3f L/100 km where it was told, %.3f where not", told, untold);
        QVERIFY(std::abs(told - 8) < .4 * std::abs(untold - 8));
    }

    // A tank that led down counts too, and no road gives fuel back.
    void downhillIsCheaper()
    {
        ConsumptionModel model = freshModel(1500);
        for (std::size_t i = 0; i < 12; ++i)
            model.observe(withClimb(tankOf(i, 36, 450), Distance()));
        const Interval flat = tankOf(12, 36, 450);
        const double level = model.expectedLitres(withClimb(flat, Distance())).litres();
        const double down = model.expectedLitres(withClimb(flat, Distance::fromMetres(-1000))).litres();
        QVERIFY(down < level - 1 && down > level - 3);
        QVERIFY(model.expectedLitres(withClimb(flat, Distance::fromMetres(-1e6))).litres() > .3 * level);
    }

    // By hand: 1,500 kg x 9.80665 x 1,000 m = 14.7 MJ; at 25 % of 32 MJ/L 1.84 L. Known to a tenth and a sixth.
    void aStatedMassIsTaken()
    {
        const Estimate<Consumption> climb = freshModel(1500).longRun().climb;
        QVERIFY(std::abs(climb.mean.litresPerKm() - 1.8387) < 1e-3);
        QVERIFY(std::abs(climb.sd / climb.mean - std::hypot(.1, .16)) < 1e-9);
        QVERIFY(std::abs(freshModel(12000).longRun().climb.mean / climb.mean - 8) < 1e-9);
    }
};

UNDERMARK_TEST(ClimbLearningTest)
#include "climb_learning_test.moc"
