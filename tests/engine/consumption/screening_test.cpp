// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/screening.h"
#include "tests/support/simulated_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class ScreeningTest : public QObject {
    Q_OBJECT

    static ConsumptionModel freshModel()
    {
        ConsumptionSetup setup;
        for (const char* name : {kTown, kOpenRoad, kMotorway})
            setup.modes.push_back({name, std::nullopt});
        return ConsumptionModel(setup);
    }

    // Thirty tanks of about 8 L/100 km; each has an odometer.
    static std::vector<Fill> soundLog()
    {
        test::CarTruth car;
        car.town_lPerKm = 0.085;
        car.motorway_lPerKm = 0.075;
        car.coldStart_l = 0;
        car.tank_l = 55;
        std::mt19937_64 random(5);
        auto fills = test::simulate(car, 30, random).fills;
        for (Fill& fill : fills)
            fill.sinceLast.reset();
        return fills;
    }

    static Screened screened(const std::vector<Fill>& fills, ScreenOptions options = {})
    {
        options.capacity = Volume::fromLitres(58);
        return screen(fills, {}, freshModel(), options);
    }

    static const FillFlag* flagOf(const Screened& result, std::size_t fill)
    {
        for (const FillFlag& flag : result.flags)
            if (flag.fill == fill)
                return &flag;
        return nullptr;
    }

private slots:
    void aSoundLogIsNotFlagged()
    {
        const Screened result = screened(soundLog());
        QCOMPARE(result.flags.size(), std::size_t(0));
        QCOMPARE(result.model.observed(), std::size_t(30));
    }

    void aForgottenFillIsRecognisedAndItsLitresProposed()
    {
        auto fills = soundLog();
        const double lost = fills[15].volume.litres();
        fills.erase(fills.begin() + 15);
        const Screened result = screened(fills);
        const FillFlag* flag = flagOf(result, 15);
        QVERIFY(flag && result.flags.size() == 1);
        QCOMPARE(causeName(flag->cause), "forgotten fill");
        QVERIFY(std::abs(flag->missing->litres() - lost) < 0.4 * lost);
        QCOMPARE(result.model.observed(), std::size_t(29));
        QVERIFY(result.beliefs[14] == Belief::doubtful);
    }

    void gallonsTypedAsLitresAreRecognised()
    {
        for (const double perGallon : {kLitresPerUsGallon, kLitresPerImperialGallon}) {
            auto fills = soundLog();
            const double litres = fills[12].volume.litres();
            fills[12].volume = Volume::fromLitres(litres / perGallon);
            const Screened result = screened(fills);
            const FillFlag* flag = flagOf(result, 12);
            QVERIFY(flag && result.flags.size() == 1);
            QCOMPARE(causeName(flag->cause), "gallons as litres");
            QVERIFY(std::abs(flag->volume->litres() - litres) < 0.25 * litres);
        }
    }

    void milesTypedAsKilometresAreRecognised()
    {
        auto fills = soundLog();
        for (std::size_t i = 1; i < fills.size(); ++i)
            fills[i].sinceLast = *fills[i].odometer - *fills[i - 1].odometer;
        for (Fill& fill : fills)
            fill.odometer.reset();
        const double km = fills[20].sinceLast->km();
        fills[20].sinceLast = Distance::fromKm(km / kKmPerMile);
        const Screened result = screened(fills);
        const FillFlag* flag = flagOf(result, 20);
        QVERIFY(flag && result.flags.size() == 1);
        QCOMPARE(causeName(flag->cause), "miles as km");
        QVERIFY(std::abs(flag->distance->km() - km) < 1e-9);
    }

    void aSlipOfTheOdometerIsToldByTheNextStretch()
    {
        auto fills = soundLog();
        const double truth = fills[18].odometer->km();
        *fills[18].odometer += Distance::fromKm(300);
        const Screened result = screened(fills);
        const FillFlag* flag = flagOf(result, 18);
        QVERIFY(flag);
        QCOMPARE(causeName(flag->cause), "wrong odometer");
        QVERIFY(std::abs(flag->odometer->km() - truth) < 100);
        QVERIFY(flagOf(result, 19));   // measured from it: doubtful as well
        QVERIFY(!isBelieved(result.beliefs[17]) && !isBelieved(result.beliefs[18])
                && isBelieved(result.beliefs[19]));
    }

    void anOdometerThatGoesBackIsFlaggedUnlessResetWasSaid()
    {
        auto fills = soundLog();
        for (std::size_t i = 10; i < fills.size(); ++i)
            *fills[i].odometer = *fills[i].odometer - Distance::fromKm(3000);
        QCOMPARE(causeName(flagOf(screened(fills), 10)->cause), "odometer backward");
        fills[10].odometerReset = true;
        QCOMPARE(screened(fills).flags.size(), std::size_t(0));
    }

    void moreThanFitsIsFlaggedEvenInTheFirstFill()
    {
        auto fills = soundLog();
        fills[0].volume = Volume::fromLitres(80);
        const Screened result = screened(fills);
        QCOMPARE(causeName(flagOf(result, 0)->cause), "more than fits");
    }

    void aSecondCanIsRecognised()
    {
        auto fills = soundLog();
        fills[16].volume += Volume::fromLitres(20);
        const Screened result = screened(fills);
        const FillFlag* flag = flagOf(result, 16);
        QVERIFY(flag);
        QVERIFY(flag->cause == FlagCause::secondCan || flag->cause == FlagCause::moreThanFits);
    }

    void theUserRules()
    {
        auto fills = soundLog();
        fills.erase(fills.begin() + 15);
        ScreenOptions options;
        options.rulings.resize(fills.size());
        options.rulings[15] = true;
        const Screened counted = screened(fills, options);
        QCOMPARE(counted.flags.size(), std::size_t(0));
        QCOMPARE(counted.model.observed(), std::size_t(29));
        options.rulings[15] = false;
        const Screened left = screened(fills, options);
        QCOMPARE(left.flags.size(), std::size_t(0));
        QCOMPARE(left.model.observed(), std::size_t(28));
    }

    // A trailer, a new engine: not one slip after the other.
    void aLastingChangeIsBelievedWithTheSecondTank()
    {
        auto fills = soundLog();
        for (std::size_t i = 15; i < fills.size(); ++i)
            fills[i].volume = fills[i].volume * 1.6;
        const Screened before = screen(std::span(fills).first(15), {}, freshModel(), {});
        const Screened after = screen(std::span(fills).first(17), {}, freshModel(), {});
        const auto rate = [](const Screened& s) { return s.model.forecast().rate.mean; };
        QVERIFY(rate(after) / rate(before) > 1.45);
        const Screened result = screen(fills, {}, freshModel(), {});
        QVERIFY(result.flags.size() >= 1 && result.flags.size() <= 3);
        QVERIFY(isBelieved(result.beliefs.back()));
    }

    // 41 L on 1.6 km of a car that burns 8 L/100 km: the click explains some of a litre.
    void aFullTankOnAFewKilometresIsAsked()
    {
        auto fills = soundLog();
        Fill slip = fills.back();
        slip.time += std::chrono::hours(20);
        *slip.odometer += Distance::fromKm(1.6);
        slip.volume = Volume::fromLitres(41);
        fills.push_back(slip);
        const Screened result = screened(fills);
        QVERIFY(flagOf(result, fills.size() - 1));
        fills.back().volume = Volume::fromLitres(0.3);
        QVERIFY(!flagOf(screened(fills), fills.size() - 1));
    }

    // A two-fold jump while hardly anything is known.
    void aJumpAmongTheFirstTanksIsAsked()
    {
        const auto sound = soundLog();
        for (const std::size_t at : {2, 3}) {
            std::vector<Fill> fills(sound.begin(), sound.begin() + 5);
            fills[at].volume = fills[at].volume / 2;
            QVERIFY(flagOf(screened(fills), at) || flagOf(screened(fills), at + 1));
        }
    }
};

UNDERMARK_TEST(ScreeningTest)
#include "screening_test.moc"
