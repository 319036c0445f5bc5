// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/climb.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <numbers>
#include <random>

using namespace undermark;

namespace {

HeightProfile heights(std::initializer_list<std::pair<double, double>> kmAndMetres)
{
    HeightProfile profile;
    for (const auto& [km, metres] : kmAndMetres)
        profile.push_back({Distance::fromKm(km), metres});
    return profile;
}

Climb whole(const HeightProfile& profile)
{
    return climbBetween(profile, profile.front().at, profile.back().at, kRollingResistance);
}

double litres(const HeightProfile& profile)
{
    const Climb climb = whole(profile);
    return (litresPerHeight(ClimbingCar())->mean * Distance::fromMetres(climb.up - climb.back)).litres();
}

// A tile of SRTM3 whose height is `plane` of north and east, 0 to 1.
void writeTile(const QString& file, double (*plane)(double, double), int unknownRow = -1)
{
    QByteArray bytes;
    for (int row = 0; row < 1201; ++row) {
        for (int column = 0; column < 1201; ++column) {
            const int metres = row == unknownRow ? -32768 : int(std::lround(plane(1 - row / 1200.0, column / 1200.0)));
            bytes += char(metres >> 8 & 0xff);
            bytes += char(metres & 0xff);
        }
    }
    QFile out(file);
    QVERIFY(out.open(QIODevice::WriteOnly));
    out.write(bytes);
}

} // namespace

class ClimbTest : public QObject {
    Q_OBJECT
private slots:

    // By hand: 1,500 kg up 1,000 m is 1500 x 9.80665 x 1000 = 14.71 MJ at the wheels; at 25 % and
    // 32 MJ/L that is 14.71 / 8 = 1.839 L.
    void athousandMetres()
    {
        const HeightProfile up = heights({{0, 200}, {20, 1200}});
        QVERIFY(std::fabs(litres(up) - 1.8387) < 1e-4);
        const Estimate<Consumption> told = *litresPerHeight(ClimbingCar());
        QVERIFY(std::fabs(told.sd / told.mean - std::hypot(200.0 / 1500, .04 / .25)) < 1e-12);
        ClimbingCar diesel;
        diesel.fuel = FuelKind::diesel;
        QVERIFY(std::fabs(litresPerHeight(diesel)->mean.litresPerKm() - 1.8387 * 32 / 36) < 1e-4);
        for (ClimbingCar none : {ClimbingCar{-1}, ClimbingCar{1500, 0, 0}, ClimbingCar{1500, 0, 1}, ClimbingCar{1500, NAN}})
            QCOMPARE(int(litresPerHeight(none).error().code), int(ErrorCode::badInput));
    }

    // 1,000 m up on 20 km and 100 m down on 20 km: there 900 m net (the fall is gentler than rolling); back
    // 100 m up, and 240 of the 1,000 given back.
    void sectionsThereAndBack()
    {
        Route route;
        for (const double km : {0.0, 10.0, 40.0})
            route.points.emplace_back().at = Distance::fromKm(km);
        addClimbs(route, heights({{0, 200}, {20, 1200}, {40, 1100}}), .012);
        QVERIFY(std::fabs(route.points[0].climb.there.metres() - 500) < 1e-9);
        QVERIFY(std::fabs(route.points[0].climb.back.metres() + 120) < 1e-9);
        QVERIFY(std::fabs(route.points[1].climb.there.metres() - 400) < 1e-9);
        QVERIFY(std::fabs(route.points[1].climb.back.metres() - (100 - 120)) < 1e-9);
        QCOMPARE(route.points[2].climb, SectionClimb());
    }

    // Down 1,000 m on 20 km: rolling costs .012 x 20,000 = 240 m of height, the rest is braked.
    void downGivesBackWhatRollingCosts()
    {
        const Climb steep = whole(heights({{0, 1200}, {20, 200}}));
        QCOMPARE(steep.up, 0.0);
        QVERIFY(std::fabs(steep.back - 240) < 1e-9);
        const Climb gentle = whole(heights({{0, 300}, {20, 200}}));
        QVERIFY(std::fabs(gentle.back - 100) < 1e-9);
    }

    // Whatever the hills: a way that ends as high as it began costs no less than the flat, and
    // its legs cost together what it costs whole.
    void loopsCostNoLessThanTheFlat()
    {
        std::mt19937 random(7);
        std::normal_distribution<double> step(0, 15);
        for (int loop = 0; loop < 200; ++loop) {
            HeightProfile profile = heights({{0, 500}});
            for (int i = 1; i < 300; ++i)
                profile.push_back({Distance::fromKm(.1 * i), profile.back().metres + step(random)});
            profile.push_back({Distance::fromKm(30), 500});
            const HeightProfile smooth = withoutRipples(profile);
            QVERIFY(litres(profile) >= 0);
            QVERIFY(litres(smooth) >= -1e-12);
            Climb legs;
            for (const auto& [from, to] : {std::pair(0.0, 7.0), std::pair(7.0, 19.5), std::pair(19.5, 30.0)})
                legs += climbBetween(profile, Distance::fromKm(from), Distance::fromKm(to), .012);
            QVERIFY(std::fabs(legs.up - whole(profile).up) < 1e-6);
            QVERIFY(std::fabs(legs.back - whole(profile).back) < 1e-6);
        }
    }

    void ripplesAreNoHills()
    {
        std::mt19937 random(11);
        std::normal_distribution<double> noise(0, 1.5);
        HeightProfile flat, hill;
        for (int i = 0; i <= 1000; ++i) {
            const Distance at = Distance::fromKm(.02 * i);
            flat.push_back({at, 300 + noise(random)});
            hill.push_back({at, 300 + 200 * std::sin(std::numbers::pi * i / 1000) + noise(random)});
        }
        QVERIFY(whole(flat).up > 500); // as read: half a kilometre of noise
        QCOMPARE(whole(withoutRipples(flat)).up, 0.0);
        const double up = whole(withoutRipples(hill)).up;
        QVERIFY2(std::fabs(up - 200) < 10, qPrintable(QString::number(up)));
        const HeightProfile smooth = withoutRipples(hill);
        for (std::size_t i = 0; i < smooth.size(); ++i)
            QVERIFY(std::fabs(smooth[i].metres - hill[i].metres) < 12);
    }

    void gapsAndOutsideAddNothing()
    {
        HeightProfile profile = heights({{0, 100}, {10, 200}, {20, 900}, {30, 1000}});
        profile[2].afterGap = true;
        QVERIFY(std::fabs(whole(profile).up - 200) < 1e-9);
        QCOMPARE(climbBetween(profile, Distance::fromKm(40), Distance::fromKm(50), .012).up, 0.0);
        QCOMPARE(climbBetween({}, Distance(), Distance::fromKm(50), .012).up, 0.0);
    }

    void heightsOfTheTrack()
    {
        GeoLine line;
        line.join({0, 0, 100.0});
        line.join({0, .01});
        line.join({0, .02, 180.0});
        const HeightProfile profile = profileOf(line);
        QCOMPARE(profile.size(), std::size_t(2));
        QVERIFY(std::fabs(whole(profile).up - 80) < 1e-9);
        QVERIFY(profileOf(GeoLine()).empty());
    }

    // Planes are told exactly between the points of a grid; the sea and the unknown are gaps.
    void heightsOfAGrid()
    {
        QTemporaryDir folder;
        writeTile(folder.filePath("N47E009.hgt"), [](double north, double east) { return 1200 * north + 600 * east; });
        writeTile(folder.filePath("S01W001.hgt"), [](double north, double) { return 1200 * north; }, 600);
        GeoLine line;
        line.join({47.25, 9.25});
        line.join({47.75, 9.5});
        const auto profile = profileFromGrid(line, folder.path().toStdString());
        QVERIFY(profile);
        QVERIFY(std::fabs(profile->front().metres - 450) < 1);
        QVERIFY(std::fabs(profile->back().metres - 1200) < 1);
        QVERIFY(std::fabs(whole(*profile).up - 750) < 2);
        QVERIFY(profile->size() > 600); // 58.7 km in steps of 90 m

        GeoLine south;
        south.join({-.9, -.5});
        south.join({-.1, -.5});
        const auto hole = profileFromGrid(south, folder.path().toStdString());
        QVERIFY(hole);
        QCOMPARE(std::ranges::count_if(*hole, &HeightPoint::afterGap), 1);

        GeoLine sea;
        sea.join({10.2, 10.2});
        sea.join({10.3, 10.2});
        QVERIFY(profileFromGrid(sea, folder.path().toStdString())->empty());

        QFile broken(folder.filePath("N10E010.hgt"));
        QVERIFY(broken.open(QIODevice::WriteOnly));
        broken.write("short");
        broken.close();
        QCOMPARE(int(profileFromGrid(sea, folder.path().toStdString()).error().code), int(ErrorCode::badInput));
        QCOMPARE(int(profileFromGrid(sea, "/nowhere").error().code), int(ErrorCode::fileAccess));
    }
};

UNDERMARK_TEST(ClimbTest)
#include "climb_test.moc"
