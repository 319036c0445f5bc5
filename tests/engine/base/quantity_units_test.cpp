// SPDX-License-Identifier: GPL-3.0-or-later
//
// Boost.Units as an oracle: the same conversions by a general library. In a file
// of its own, because its headers are slow to compile.
#include "engine/base/quantity.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <boost/units/base_units/imperial/gallon.hpp>
#include <boost/units/base_units/imperial/mile.hpp>
#include <boost/units/base_units/metric/liter.hpp>
#include <boost/units/base_units/us/gallon.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/volume.hpp>

using namespace undermark;
namespace units = boost::units;

namespace {

using Litre = units::metric::liter_base_unit::unit_type;
using UsGallon = units::us::gallon_base_unit::unit_type;
using ImperialGallon = units::imperial::gallon_base_unit::unit_type;
using Mile = units::imperial::mile_base_unit::unit_type;

// What a unit is in SI: cubic metres, metres.
template <class Si, class Unit>
double inSi(double value)
{
    return units::quantity<Si>(value * Unit()).value();
}

double cubicMetres(double litres) { return inSi<units::si::volume, Litre>(litres); }

bool close(double ours, double theirs, double relative)
{
    return qAbs(ours / theirs - 1) < relative;
}

constexpr double kRounding = 1e-14;
// Boost 1.74 has the US gallon with eight digits only: 4e-9 off.
constexpr double kTheirUsGallon = 1e-7;

} // namespace

class QuantityUnitsTest : public QObject {
    Q_OBJECT
private slots:
    void gallonsAreThoseOfBoostUnits()
    {
        for (const double v : {0.3, 1.0, 12.5, 60.0}) {
            QVERIFY(close(cubicMetres(Volume::fromImperialGallons(v).litres()),
                          inSi<units::si::volume, ImperialGallon>(v), kRounding));
            QVERIFY(close(cubicMetres(Volume::fromUsGallons(v).litres()),
                          inSi<units::si::volume, UsGallon>(v), kTheirUsGallon));
        }
    }

    void milesAreThoseOfBoostUnits()
    {
        for (const double v : {0.1, 1.0, 242.0})
            QVERIFY(close(Distance::fromMiles(v).metres(), inSi<units::si::length, Mile>(v), kRounding));
    }

    // Litres per distance is an area: both sides in square metres.
    void milesPerGallonAreThoseOfBoostUnits()
    {
        for (const double mpg : {8.0, 24.0, 55.0}) {
            const double imperial = inSi<units::si::volume, ImperialGallon>(1)
                / inSi<units::si::length, Mile>(mpg);
            const double us = inSi<units::si::volume, UsGallon>(1) / inSi<units::si::length, Mile>(mpg);
            const auto squareMetres = [](Consumption c) {
                return cubicMetres(c.litresPerKm()) / Distance::fromKm(1).metres();
            };
            QVERIFY(close(squareMetres(Consumption::fromMpgImperial(mpg)), imperial, kRounding));
            QVERIFY(close(squareMetres(Consumption::fromMpgUs(mpg)), us, kTheirUsGallon));
        }
    }

    void whatGoesInComesOutInEveryUnit()
    {
        for (const double v : {0.7, 8.0, 41.3}) {
            QVERIFY(close(Volume::fromUsGallons(v).usGallons(), v, kRounding));
            QVERIFY(close(Volume::fromImperialGallons(v).imperialGallons(), v, kRounding));
            QVERIFY(close(Distance::fromMiles(v).miles(), v, kRounding));
            QVERIFY(close(Consumption::fromMpgUs(v).mpgUs(), v, kRounding));
            QVERIFY(close(Consumption::fromMpgImperial(v).mpgImperial(), v, kRounding));
            QVERIFY(close(Consumption::fromKmPerLitre(v).kmPerLitre(), v, kRounding));
        }
    }
};

UNDERMARK_TEST(QuantityUnitsTest)
#include "quantity_units_test.moc"
