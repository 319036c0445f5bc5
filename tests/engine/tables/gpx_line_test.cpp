// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/gpx_line.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <random>

using namespace undermark;

namespace {

// The nearest of all sections, each looked at as a line of its own.
std::optional<GeoLine::Foot> nearestOfEach(const std::vector<GeoPosition>& places,
                                           const GeoPosition& place, Distance reach)
{
    std::optional<GeoLine::Foot> best;
    Distance before;
    for (std::size_t i = 1; i < places.size(); ++i) {
        GeoLine section;
        section.join(places[i - 1]);
        section.join(places[i]);
        const auto foot = section.nearest(place, reach);
        if (foot && (!best || foot->off < best->off))
            best = GeoLine::Foot{foot->off, before + foot->at};
        before += section.length();
    }
    return best;
}

} // namespace

class GpxLineTest : public QObject {
    Q_OBJECT

private slots:
    // Where the line crosses the date line, near a pole, and long sections.
    void theBoxesLeaveOutNothingThatIsNear_data()
    {
        QTest::addColumn<double>("latitude");
        QTest::addColumn<double>("longitude");
        QTest::addColumn<double>("step"); // degrees
        QTest::newRow("mid-latitude") << 47.0 << 11.0 << 0.002;
        QTest::newRow("across the date line") << -17.0 << 179.95 << 0.002;
        QTest::newRow("near a pole") << 89.0 << 10.0 << 0.002;
        QTest::newRow("long sections") << 60.0 << -150.0 << 0.8;
    }

    void theBoxesLeaveOutNothingThatIsNear()
    {
        QFETCH(double, latitude);
        QFETCH(double, longitude);
        QFETCH(double, step);
        std::mt19937 random(3);
        std::uniform_real_distribution<double> turn(-1, 1);
        const auto wrapped = [](double lon) { return std::remainder(lon, 360.0); };
        std::vector<GeoPosition> places{{latitude, longitude}};
        GeoLine line;
        line.join(places[0]);
        for (int i = 0; i < 400; ++i) {
            const GeoPosition& last = places.back();
            places.push_back({std::clamp(last.latitude + step * 0.3 * turn(random), -90.0, 90.0),
                              wrapped(last.longitude + step * (0.5 + turn(random)))});
            line.join(places.back());
        }
        int near = 0;
        for (int i = 0; i < 300; ++i) {
            const GeoPosition& by = places[random() % places.size()];
            const GeoPosition place{std::clamp(by.latitude + step * turn(random), -90.0, 90.0),
                                    wrapped(by.longitude + step * turn(random))};
            const Distance reach = Distance::fromMetres(300 * step / 0.002);
            const auto found = line.nearest(place, reach);
            const auto expected = nearestOfEach(places, place, reach);
            QCOMPARE(found.has_value(), expected.has_value());
            if (!found)
                continue;
            ++near;
            QVERIFY(std::fabs((found->off - expected->off).metres()) < 1e-6);
            QVERIFY(std::fabs((found->at - expected->at).metres()) < 1e-3);
        }
        QVERIFY2(near > 50, qPrintable(QString::number(near)));
    }

    void aGapAddsNoLengthAndIsNotNearAnything()
    {
        GeoLine line;
        line.join({47, 11});
        line.join({47, 11.1});
        const Distance before = line.length();
        const Distance width = line.jump({47, 11.2});
        QCOMPARE(line.length().km(), before.km());
        QCOMPARE(width.km(), geodesicLength({47, 11.1}, {47, 11.2}).km());
        QVERIFY(!line.nearest({47, 11.15}, Distance::fromKm(1)));
        QVERIFY(line.nearest({47, 11.05}, Distance::fromKm(1)));
    }
};

UNDERMARK_TEST(GpxLineTest)
#include "gpx_line_test.moc"
