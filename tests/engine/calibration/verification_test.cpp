// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/verification.h"
#include "engine/base/normal_law.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace undermark;

namespace {

CalibrationPoint levelAt(double litres, double signal)
{
    CalibrationPoint point;
    point.added = Volume::fromLitres(litres);
    point.signal = Signal::of(signal);
    return point;
}

// 0 to 50 L in eleven steps, .5 to 4.5 V; each pour is a share of itself wrong.
std::vector<CalibrationPoint> poured(std::mt19937* chance)
{
    std::normal_distribution<double> normal;
    std::vector<CalibrationPoint> points;
    double really = 0;
    for (int i = 0; i <= 10; ++i) {
        if (i > 0)
            really += 5 * (1 + (chance ? 0.005 * normal(*chance) : 0));
        points.push_back(levelAt(5.0 * i, 0.5 + 0.08 * really));
    }
    return points;
}

} // namespace

class VerificationTest : public QObject {
    Q_OBJECT
private slots:
    // By hand: the difference over the root of the two squared spreads, and the normal's
    // two-sided quantiles, 2.5758 for 99 % (standard tables) and 2.8070 for half as much left.
    void itIsTheClosedForm()
    {
        const Gauge gauge = *Gauge::calibrate(poured(nullptr), Sender{});
        const Signal half = Signal::of(2.5);
        const LevelReading read = *gauge.readDriving({half, {}});
        const auto one = verify(gauge, std::vector{levelAt(24.0, 2.5)}, Volume::fromLitres(0.2));
        QVERIFY(one.has_value());
        QVERIFY(std::abs(one->allowed - 2.5758) < 1e-4);
        const double expected = (24.0 - read.added.mean.litres()) / std::hypot(read.added.sd.litres(), 0.2);
        QCOMPARE(one->levels[0].deviations, expected);
        const auto two = verify(gauge, std::vector{levelAt(25.0, 2.5), levelAt(15.0, 1.7)}, Volume::fromLitres(0.2));
        QVERIFY(std::abs(two->allowed - 2.8070) < 1e-4);
        QVERIFY(two->passed());
        QVERIFY(!verify(gauge, std::vector{levelAt(25.0, 2.5), levelAt(12.0, 1.7)}, Volume::fromLitres(0.2))->passed());
    }
    // 2,000 calibrations of a straight sender, each tried at three levels by a jug.
    void aTrueCurvePassesAsOftenAsStated()
    {
        std::mt19937 chance(11);
        std::normal_distribution<double> normal;
        const double play = Gauge::calibrate(poured(nullptr), Sender{})->readsHigh().mean.litres();
        int passed = 0, caught = 0;
        constexpr int kCars = 2000;
        for (int car = 0; car < kCars; ++car) {
            const Gauge gauge = *Gauge::calibrate(poured(&chance), Sender{});
            std::vector<CalibrationPoint> levels, off;
            for (const double litres : {45.0, 30.0, 15.0}) {
                const double signal = 0.5 + 0.08 * (litres + play); // down, it reads high
                levels.push_back(levelAt(litres + 0.2 * normal(chance), signal));
                off.push_back(levelAt(levels.back().added.litres() - 5.0, signal));
            }
            passed += verify(gauge, levels, Volume::fromLitres(0.2), Probability::of(0.9))->passed();
            caught += !verify(gauge, off, Volume::fromLitres(0.2), Probability::of(0.9))->passed();
        }
        const double sd = std::sqrt(0.9 * 0.1 / kCars);
        QVERIFY2(passed / double(kCars) > 0.9 - 3 * sd, qPrintable(QString::number(passed)));
        QVERIFY2(caught == kCars, qPrintable(QString::number(caught))); // 5 L less than it says
    }
    void aStopIsABound()
    {
        std::vector<CalibrationPoint> points = poured(nullptr);
        points[10].signal = points[9].signal = Signal::of(4.1); // the float stands at its stop from 45 L on
        const Gauge gauge = *Gauge::calibrate(points, Sender{});
        const auto at = [&](double litres) {
            return verify(gauge, std::vector{levelAt(litres, 4.1)}, Volume::fromLitres(0.2))->passed();
        };
        QVERIFY(at(49));
        QVERIFY(at(46));
        QVERIFY(!at(30)); // it would show
    }
    void whatCannotBeTriedIsRefused()
    {
        const Gauge gauge = *Gauge::calibrate(poured(nullptr), Sender{});
        const Volume jug = Volume::fromLitres(0.2);
        QVERIFY(!verify(Gauge(), std::vector{levelAt(25, 2.5)}, jug));
        QVERIFY(!verify(gauge, {}, jug));
        CalibrationPoint two = levelAt(25, 2.5);
        two.signal2 = Signal::of(1);
        QVERIFY(!verify(gauge, std::vector{two}, jug));
    }
};

UNDERMARK_TEST(VerificationTest)
#include "verification_test.moc"
