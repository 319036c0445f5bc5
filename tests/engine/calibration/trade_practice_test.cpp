// SPDX-License-Identifier: GPL-3.0-or-later
//
// The trade's rules of thumb, as plausibility checks. All of them are common
// practice, no source: they show that the answers are of the right kind, and are
// defaults nowhere.
#include "engine/calibration/calibrate.h"
#include "engine/calibration/level_curve.h"
#include "engine/tank/hidden_reserve.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

constexpr double kTankL = 60;

// Litres in a tank whose lower half narrows towards its floor, by height 0 to 1.
double shapedLitres(double height) { return kTankL * (0.55 * height + 0.45 * height * height); }
double linearLitres(double height) { return kTankL * height; }

// `steps` readings between drained and full, rounded to `decimals` of a volt.
std::vector<CalibrationPoint> poured(double (*litres)(double), int steps, int decimals)
{
    std::vector<CalibrationPoint> points;
    const double scale = std::pow(10, decimals);
    for (int i = 0; i < steps; ++i) {
        const double height = double(i) / (steps - 1);
        const double volts = std::round((0.5 + 3.0 * height) * scale) / scale;
        points.push_back({Volume::fromLitres(litres(height)), Signal::of(volts), {}, {}, 1});
    }
    return points;
}

Sender display(int decimals)
{
    Sender sender;
    sender.resolution = Signal::of(std::pow(10, -decimals));
    return sender;
}

// The curve's worst error against the tank it was poured in, litres.
double worstError(double (*litres)(double), int steps)
{
    const auto fit = fitCalibration(poured(litres, steps, 6), display(6));
    double worst = 0;
    for (double height = 0; height <= 1; height += 0.01)
        worst = std::max(worst, std::abs(fit->curve->read(Signal::of(0.5 + 3.0 * height)).added.mean.litres()
                                         - litres(height)));
    return worst;
}

bool isCoarse(int decimals)
{
    const auto fit = fitCalibration(poured(linearLitres, 7, decimals), display(decimals));
    return std::any_of(fit->findings.begin(), fit->findings.end(),
                       [](const Finding& f) { return f.code == "resolution-too-coarse"; });
}

} // namespace

class TradePracticeTest : public QObject {
    Q_OBJECT
private slots:
    void aLinearSenderNeedsTwoPointsAndAShapedTankMore()
    {
        QVERIFY(worstError(linearLitres, 2) < 1e-3);
        QVERIFY(worstError(shapedLitres, 2) > 5);
        QVERIFY(worstError(shapedLitres, 3) < worstError(shapedLitres, 2) / 3);
        QVERIFY(worstError(shapedLitres, 7) < 0.2);
    }

    void twoDecimalsOfAVoltAreWorthHaving()
    {
        QVERIFY(isCoarse(1));
        QVERIFY(!isCoarse(2));
    }

    // Most road cars still run 20 to 30 km after the gauge shows empty: that must
    // lie between sure and hopeful for a car of which nothing is stated.
    void twentyToThirtyKmPastEmptySurpriseNobody()
    {
        Vehicle car;
        car.capacity = Volume::fromLitres(50);
        const HiddenReserve reserve = HiddenReserve::fromPrior(priorFor(car, {}));
        const RangeLaw law = *RangeLaw::make(
            {Volume::fromLitres(1), Volume()},
            {Consumption::fromLitresPer100Km(7.5), Consumption::fromLitresPer100Km(0.7)});
        const Distances past = distances(law.withFuel(reserve.usableAt({})));
        QVERIFY(past.p99 < Distance::fromKm(20));
        QVERIFY(past.p10 > Distance::fromKm(30));
    }

    // One to two litres stay when the pump starts to spit.
    void oneOrTwoLitresLeftBehindSurpriseNobody()
    {
        Vehicle car;
        car.capacity = Volume::fromLitres(50);
        const Estimate<Volume> left = HiddenReserve::fromPrior(priorFor(car, {})).leftBehind();
        for (const double litres : {1.0, 2.0})
            QVERIFY(abs(Volume::fromLitres(litres) - left.mean) <= left.sd);
    }
};

UNDERMARK_TEST(TradePracticeTest)
#include "trade_practice_test.moc"
