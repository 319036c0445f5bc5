// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_view_model.h"
#include "engine/base/record_words.h"
#include "engine/roads/climb.h"
#include "engine/tables/route_file.h"
#include "tests/support/settled.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

namespace {

const QString kOpenMap = UNDERMARK_SHARED_DATA "/map/small_country_2013.osm.pbf";
const char* const kHillyValley =
    "<gpx version='1.1' creator='t' xmlns='http://www.topografix.com/GPX/1/1'><trk><trkseg>"
    "<trkpt lat='47.06' lon='9.50'><ele>480</ele></trkpt><trkpt lat='47.125' lon='9.5233'><ele>460</ele></trkpt>"
    "<trkpt lat='47.145' lon='9.5143'><ele>900</ele></trkpt><trkpt lat='47.209' lon='9.515'><ele>440</ele></trkpt>"
    "<trkpt lat='47.27' lon='9.53'><ele>430</ele></trkpt></trkseg></trk></gpx>";

// A folder with a track and what may be maps, and Ahead looking into it.
struct MappedAhead {
    test::DemoCar car;
    QTemporaryDir folder;
    PlanViewModel plan{car, {}, folder.path()};
    PlanMap& map = *plan.map();

    void write(const QString& name, const QByteArray& bytes)
    {
        QFile file(folder.filePath(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    static int rowOf(FileList& files, const QString& name)
    {
        files.refresh();
        for (int row = 0; row < files.rowCount(); ++row)
            if (files.data(files.index(row), FileList::Name).toString() == name)
                return row;
        return -1;
    }
    void pickTrack()
    {
        write("valley.gpx", kHillyValley);
        plan.pickFile(rowOf(*plan.files(), "valley.gpx"));
        test::settled(plan);
    }
    void pickMap(const QString& name)
    {
        map.pick(rowOf(*map.files(), name));
        QTRY_VERIFY_WITH_TIMEOUT(!map.reading(), 60'000);
        QTRY_VERIFY_WITH_TIMEOUT(!plan.planning(), 60'000);
    }
};

} // namespace

class PlanMapTest : public QObject {
    Q_OBJECT
private slots:
    // Found, planned with, left out by a touch and taken again; the route is what the engine makes
    // of track, map and heights, which is what `plan TRACK.gpx --pumps MAP` plans.
    void pumpsAreFoundAndLeftOut()
    {
        if (!QFile::exists(kOpenMap))
            QSKIP("the open map is not here");
        MappedAhead ahead;
        QVERIFY(QFile::link(kOpenMap, ahead.folder.filePath("country.osm.pbf")));
        ahead.pickTrack();
        QVERIFY(ahead.map.possible() && !ahead.map.found());
        const Route bare = ahead.plan.answer()->route();
        QVERIFY(bare.points.front().climb.there > Distance::fromMetres(50));
        ahead.pickMap("country.osm.pbf");
        QVERIFY(ahead.map.found());
        QVERIFY(ahead.map.line().contains("country"));

        auto file = readRouteFile(ahead.folder.filePath("valley.gpx").toStdString());
        const HeightProfile heights = withoutRipples(profileOf(file->line));
        PumpsQuestion question;
        question.fuel = wordOf(ahead.car.vehicle()->value.fuel);
        const auto found = findPumpsAlong(file->line, kOpenMap.toStdString(), question);
        Route route = withPumps(*file, found->pumps, std::nullopt).file.route;
        addClimbs(route, heights);
        QVERIFY(route.points.size() > bare.points.size() + 3);
        QVERIFY(ahead.plan.answer()->route() == route);
        QVERIFY(ahead.plan.answer()->feasible());
        QCOMPARE(ahead.map.pumps().size(), qsizetype(found->pumps.size()));
        QVERIFY(!ahead.map.pumps().front().name.isEmpty() && !ahead.map.pumps().front().detail.isEmpty());

        ahead.map.toggle(2);
        test::settled(ahead.plan);
        QVERIFY(!ahead.map.pumps()[2].taken);
        QCOMPARE(ahead.plan.answer()->route().points.size(), route.points.size() - 1);
        for (const RoutePoint& point : ahead.plan.answer()->route().points)
            QVERIFY(point.name != route.points[3].name);
        ahead.map.toggle(2);
        test::settled(ahead.plan);
        QVERIFY(ahead.plan.answer()->route() == route);
        ahead.map.toggle(-1);
        ahead.map.toggle(1'000);
        QVERIFY(ahead.plan.answer()->route() == route);
        ahead.map.anotherMap();
        test::settled(ahead.plan);
        QVERIFY(!ahead.map.found() && ahead.plan.answer()->route() == bare);
    }

    // What the driver noted stands above the map here, too.
    void onesOwnPumpIsOnTheWay()
    {
        if (!QFile::exists(kOpenMap))
            QSKIP("the open map is not here");
        MappedAhead ahead;
        QVERIFY(ahead.car.record(OwnPump{"Farm", 47.1, 9.515, "24/7", {}, {}, {}}));
        QVERIFY(QFile::link(kOpenMap, ahead.folder.filePath("country.osm.pbf")));
        ahead.pickTrack();
        ahead.pickMap("country.osm.pbf");
        const QList<MapPumpRow> rows = ahead.map.pumps();
        const auto farm = std::ranges::find_if(rows, [](const MapPumpRow& row) { return row.name.startsWith("Farm"); });
        QVERIFY(farm != rows.end());
        QVERIFY2(farm->detail.contains("your own note") && farm->detail.contains("24/7"), qPrintable(farm->detail));
    }

    void whatIsNoMapChangesNothing()
    {
        MappedAhead ahead;
        ahead.write("no.osm.pbf", "no map, whatever it is called");
        ahead.pickTrack();
        const Route before = ahead.plan.answer()->route();
        ahead.pickMap("no.osm.pbf");
        QVERIFY(!ahead.map.found());
        QCOMPARE(ahead.map.notices().size(), 1);
        QVERIFY(ahead.map.notices()[0].problem());
        QVERIFY(ahead.plan.answer()->route() == before);
    }

    void aMapThatIsLeftIsNotTaken()
    {
        if (!QFile::exists(kOpenMap))
            QSKIP("the open map is not here");
        MappedAhead ahead;
        QVERIFY(QFile::link(kOpenMap, ahead.folder.filePath("country.osm.pbf")));
        ahead.pickTrack();
        QSignalSpy routed(&ahead.map, &PlanMap::routed);
        ahead.map.pick(MappedAhead::rowOf(*ahead.map.files(), "country.osm.pbf"));
        QVERIFY(ahead.map.reading() && !ahead.map.progress().isEmpty());
        ahead.map.stop();
        QVERIFY(!ahead.map.reading());
        QTest::qWait(500);
        QVERIFY(!ahead.map.found());
        QCOMPARE(routed.count(), 0);
    }

    void aTableIsNoTrack()
    {
        MappedAhead ahead;
        ahead.write("route.csv", "at_km,name,fuel\n0,a,none\n50,b,pump\n90,c,none\n");
        ahead.plan.pickFile(MappedAhead::rowOf(*ahead.plan.files(), "route.csv"));
        test::settled(ahead.plan);
        QVERIFY(ahead.plan.loaded() && !ahead.map.possible());
    }
};

UNDERMARK_TEST(PlanMapTest)
#include "plan_map_test.moc"
