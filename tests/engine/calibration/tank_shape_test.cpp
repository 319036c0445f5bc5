// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/tank_shape.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

TankShape tank(TankForm form, double width, double height, double length, double corner = 0.0,
               double tilt = 0.0)
{
    const auto m = Distance::fromMetres;
    return *TankShape::make({form, m(width), m(height), m(length), m(corner), tilt});
}

double litres(const TankShape& shape, double heightM)
{
    return shape.volumeAt(Distance::fromMetres(heightM)).litres();
}

bool isNear(double value, double expected, double within)
{
    if (std::abs(value - expected) <= within)
        return true;
    qWarning("%.9f instead of %.9f", value, expected);
    return false;
}

} // namespace

class TankShapeTest : public QObject {
    Q_OBJECT
private slots:
    void aCylinderFillsAsTheHandbookTableSays()
    {
        // V/Vfull at h/D .1 to .5: Perry's handbook, table of horizontal cylinders
        // (from memory).
        const TankShape shape = tank(TankForm::cylinder, 1.0, 1.0, 1.0);
        const double full = shape.capacity().litres();
        const double shares[] = {.052044, .142378, .252316, .373530, .5};
        for (int i = 0; i < 5; ++i)
            QVERIFY(isNear(litres(shape, 0.1 * (i + 1)) / full, shares[i], 5e-7));
    }

    void volumesAgreeWithTheCheckValues()
    {
        // Computed apart from the project from the closed forms of the segments.
        const TankShape cylinder = tank(TankForm::cylinder, 0.4, 0.4, 0.9);
        QVERIFY(isNear(litres(cylinder, 0.1), 22.110655, 1e-6));
        QVERIFY(isNear(litres(cylinder, 0.2), 56.548668, 1e-6));
        QVERIFY(isNear(litres(cylinder, 0.3), 90.986681, 1e-6));
        const TankShape ellipse = tank(TankForm::ellipse, 0.8, 0.5, 0.9);
        QVERIFY(isNear(litres(ellipse, 0.10), 40.256570, 1e-6));
        QVERIFY(isNear(litres(ellipse, 0.25), 141.371669, 1e-6));
        QVERIFY(isNear(litres(ellipse, 0.40), 242.486769, 1e-6));
        const TankShape box = tank(TankForm::roundedBox, 0.8, 0.3, 0.6, 0.08);
        QVERIFY(isNear(litres(box, 0.05), 22.420859, 1e-6));
        QVERIFY(isNear(litres(box, 0.15), 70.351858, 1e-6));
        QVERIFY(isNear(litres(box, 0.30), 140.703716, 1e-6));
    }

    void aBarrelBetweenTwoDomesAgreesWithJones()
    {
        // D. Jones, "Computing Fluid Tank Volumes": D 108 in, L 156 in, ellipsoidal
        // heads 42 in, h 36 in: 2380.96 US gal (from memory, recomputed).
        // The barrel is ours; both heads together are a spheroid's cap, which is
        // pi a h^2 (1 - h / (3 r)).
        const double inch = 0.0254, gallon = 3.785411784;
        const TankShape barrel = tank(TankForm::cylinder, 108 * inch, 108 * inch, 156 * inch);
        const auto heads = [](double h) {   // cubic inches, both
            const double r = 54.0, a = 42.0;
            return M_PI * a * h * h * (1.0 - h / (3.0 * r));
        };
        const auto gallons = [&](double h) {
            return litres(barrel, h * inch) / gallon + heads(h) / 231.0;
        };
        QVERIFY(isNear(gallons(36.0), 2380.96, 0.01));
        QVERIFY(isNear(gallons(84.0), 7103.45, 0.01));
    }

    void aCylinderIsARoundEllipseAndABoxWithHalfItsHeightAsCorner()
    {
        const TankShape cylinder = tank(TankForm::cylinder, 0.4, 0.4, 0.9);
        const TankShape box = tank(TankForm::roundedBox, 0.4, 0.4, 0.9, 0.2);
        for (int i = 0; i <= 8; ++i)
            QVERIFY(isNear(litres(box, 0.05 * i), litres(cylinder, 0.05 * i), 1e-9));
    }

    void aTiltedBoxIsAPrismOrAWedge()
    {
        // Surface through both ends: the mean height counts. Past the floor at one
        // end: a wedge of half base times height.
        const double degrees = std::atan(0.05 / 0.3) * 180.0 / M_PI;
        QVERIFY(isNear(litres(tank(TankForm::roundedBox, 0.8, 0.3, 0.6, 0, degrees), 0.05), 24.0, 1e-6));
        const double steeper = std::atan(0.1 / 0.3) * 180.0 / M_PI;
        QVERIFY(isNear(litres(tank(TankForm::roundedBox, 0.8, 0.3, 0.6, 0, steeper), 0.05), 27.0, 1e-6));
        QVERIFY(isNear(litres(tank(TankForm::roundedBox, 0.8, 0.3, 0.6, 0, -steeper), 0.05), 27.0, 1e-6));
    }

    void aTiltKeepsWhatFitsAndHalfOfASymmetricTank()
    {
        for (const TankForm form : {TankForm::roundedBox, TankForm::ellipse}) {
            const TankShape level = tank(form, 0.8, 0.3, 0.6);
            const TankShape tilted = tank(form, 0.8, 0.3, 0.6, 0.0, 12.0);
            QCOMPARE(tilted.capacity(), level.capacity());
            QVERIFY(isNear(litres(tilted, 0.15), 0.5 * level.capacity().litres(), 1e-6));
            QVERIFY(isNear(litres(tilted, 5.0), level.capacity().litres(), 1e-6));
            QCOMPARE(litres(tilted, -5.0), 0.0);
        }
    }

    void volumeNeverFallsAsHeightRises()
    {
        for (const double tilt : {0.0, 7.0})
            for (const TankForm form : {TankForm::roundedBox, TankForm::cylinder, TankForm::ellipse}) {
                const TankShape shape = tank(form, 0.4, 0.4, 0.9, 0.0, tilt);
                double before = 0.0;
                for (double height = -0.1; height <= 0.5; height += 0.01) {
                    const double now = shape.volumeAt(Distance::fromMetres(height)).litres();
                    QVERIFY(now >= before);
                    before = now;
                }
            }
    }

    void aPriorCurveFollowsTheShapeAndIsVague()
    {
        const TankShape shape = tank(TankForm::cylinder, 0.4, 0.4, 0.9);
        const auto curve = priorCurve(shape, Signal::of(4.5), Signal::of(0.5));   // falling
        QVERIFY(curve.has_value());
        QVERIFY(!curve->rising());
        const LevelReading quarter = curve->read(Signal::of(3.5));
        QVERIFY(isNear(quarter.added.mean.litres(), 22.110655, 1e-6));
        QVERIFY(isNear(quarter.added.sd.litres(), 0.05 * shape.capacity().litres(), 1e-9));
        // Between the knots the cubic stays within a tenth of the spread.
        for (double s = 0.55; s < 4.5; s += 0.1) {
            const double height = 0.4 * (4.5 - s) / 4.0;
            QVERIFY(isNear(curve->read(Signal::of(s)).added.mean.litres(), litres(shape, height), 0.5));
        }
    }

    void whatATiltHidesIsAStopOfTheFloat()
    {
        const TankShape shape = tank(TankForm::roundedBox, 0.8, 0.3, 0.6, 0.0, 5.0);
        const auto curve = priorCurve(shape, Signal::of(0.0), Signal::of(1.0));
        QVERIFY(curve->lowest().width.litres() > 1.0);
        QVERIFY(curve->read(Signal::of(0.0)).bound == LevelBound::atMost);
        QVERIFY(curve->read(Signal::of(1.0)).bound == LevelBound::atLeast);
    }

    void impossibleDimensionsAreRefused()
    {
        const auto m = Distance::fromMetres;
        QVERIFY(!TankShape::make({TankForm::roundedBox, m(0.0), m(0.3), m(0.6), m(0), 0.0}));
        QVERIFY(!TankShape::make({TankForm::roundedBox, m(0.8), m(0.3), m(0.6), m(0.2), 0.0}));
        QVERIFY(!TankShape::make({TankForm::cylinder, m(0.4), m(0.3), m(0.6), m(0), 0.0}));
        QVERIFY(!TankShape::make({TankForm::ellipse, m(0.4), m(0.3), m(60), m(0), 0.0}));
        QVERIFY(!TankShape::make({TankForm::ellipse, m(0.4), m(0.3), m(0.6), m(0), 60.0}));
        QVERIFY(!priorCurve(tank(TankForm::ellipse, 0.8, 0.5, 0.9), Signal::of(1), Signal::of(1)));
    }
};

UNDERMARK_TEST(TankShapeTest)
#include "tank_shape_test.moc"
