// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/route_csv.h"
#include "engine/tables/route_csv_writer.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

class RouteCsvTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    std::string fileWith(const QByteArray& text)
    {
        QFile file(m_folder.filePath("route.csv"));
        if (file.open(QIODevice::WriteOnly))
            file.write(text);
        return file.fileName().toStdString();
    }

private slots:
    void readsEveryColumn()
    {
        const auto file =
            readRouteCsv(fileWith("at_km,name,mode,fuel,price_per_l,min_litres,max_litres,stop_min,"
                                  "detour_km,opens,closes,"
                                  "timed,idle_min,colour\n"
                                  "0,Start,road,pump,1.8,5,40,4,1.5,06:30,22:00,1,3,red\n"
                                  "12.5,Finish,,none,,,,,,,,,,\n"));
        QVERIFY2(file, file ? "" : describe(file.error()).c_str());
        const RoutePoint& start = file->route.points[0];
        QCOMPARE(start.fuel, FuelSource::pump);
        QCOMPARE(*start.pricePerLitre, 1.8);
        QCOMPARE(start.leastPurchase->litres(), 5.0);
        QCOMPARE(start.mostPurchase->litres(), 40.0);
        QCOMPARE(start.stopTime->count(), 4.0);
        QCOMPARE(start.detour->km(), 1.5);
        QCOMPARE(start.opens->count(), 390.0);
        QCOMPARE(start.closes->count(), 1320.0);
        QVERIFY(start.timed);
        QCOMPARE(start.idle->count(), 3.0);
        QCOMPARE(file->route.points[1].mode, std::string("road"));
        QVERIFY(!file->route.points[1].pricePerLitre);
        QVERIFY(english(file->warnings.at(0)).find("colour") != std::string::npos);
    }

    // Sections of a public itinerary, each from zero: 16.65 + 33.58 + 23.85 km of
    // stages and 97.54 + 19.53 + 39.74 + 91.68 km of road.
    void sectionsThatStartFromZeroAddUp()
    {
        const auto file = readRouteCsv(fileWith(
            "leg_km,name,mode,fuel\n0,s,road,none\n97.54,a,stage,none\n16.65,b,road,none\n19.53,c,"
            "stage,none\n"
            "33.58,d,road,none\n39.74,e,stage,none\n23.85,f,road,none\n91.68,g,road,none\n"));
        QVERIFY(file);
        double road = 0;
        double stages = 0;
        const auto& points = file->route.points;
        for (std::size_t i = 0; i + 1 < points.size(); ++i)
            (points[i].mode == "stage" ? stages : road) += (points[i + 1].at - points[i].at).km();
        QVERIFY(std::fabs(stages - 74.08) < 1e-9);
        QVERIFY(std::fabs(road - 248.49) < 1e-9);
    }

    // Stages driven twice, the way back to their start, a halt without distance.
    void aDayOfStagesTransportAndServiceIsSummed()
    {
        const auto file = readRouteCsv(fileWith(
            "leg_km,name,mode,fuel,timed,idle_min\n0,Service,road,none,0,\n"
            "10,Start,stage,none,1,5\n16.5,End,road,none,0,\n12,Start,stage,none,1,5\n"
            "16.5,End,road,none,0,\n10,Service,road,zone,0,30\n0,Service out,road,none,0,\n"
            "8,Finish,,none,0,\n"));
        QVERIFY2(file, file ? "" : describe(file.error()).c_str());
        const auto& points = file->route.points;
        QVERIFY(std::fabs(points.back().at.km() - 73) < 1e-9);
        QCOMPARE(points[6].at.km(), points[5].at.km());
        double timed = 0.0;
        for (std::size_t i = 0; i + 1 < points.size(); ++i)
            timed += points[i].timed ? (points[i + 1].at - points[i].at).km() : 0.0;
        QVERIFY(std::fabs(timed - 33) < 1e-9);
    }

    // Odometer check of a public road book: 8.57 km official, 9.43 shown.
    void anOdometerCheckGivesTheFactor()
    {
        const auto factor = tripMeterFactor(Distance::fromKm(8.57), Distance::fromKm(9.43));
        QVERIFY(std::fabs(1 / *factor - 1.100350) < 5e-7);
        QVERIFY(!tripMeterFactor(Distance(), Distance::fromKm(1)));
    }

    void saysWhatIsWrongWithARoute_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("line");
        QTest::addColumn<QString>("words");
        QTest::newRow("backwards")
            << QByteArray("at_km,fuel\n0,none\n9,none\n8,none\n") << 4 << "backwards";
        QTest::newRow("unknown fuel")
            << QByteArray("at_km,fuel\n0,shed\n9,none\n") << 2 << "none, pump, zone, can or crew";
        QTest::newRow("no date") << QByteArray("at_km,fuel,from_date\n0,none,2026-02-30\n9,none,\n") << 2 << "YYYY-MM-DD";
        QTest::newRow("a time for a date") << QByteArray("at_km,fuel,from_date\n0,none,2026-02-03T10:00\n9,none,\n") << 2 << "YYYY-MM-DD";
        QTest::newRow("dates backwards")
            << QByteArray("at_km,fuel,from_date,until_date\n0,none,2026-02-03,2026-02-02\n9,none,,\n") << 2 << "before the first";
        QTest::newRow("no finish") << QByteArray("at_km,fuel\n0,none\n") << 2 << "no finish";
        QTest::newRow("NaN") << QByteArray("at_km,fuel\n0,none\nnan,none\n") << 3 << "outside";
        QTest::newRow("negative leg")
            << QByteArray("leg_km,fuel\n0,none\n-1,none\n") << 3 << "outside";
        QTest::newRow("no distance") << QByteArray("fuel\nnone\nnone\n") << 1 << "at_km";
        QTest::newRow("two distances")
            << QByteArray("at_km,leg_km,fuel\n0,0,none\n") << 1 << "contradict";
        QTest::newRow("clock") << QByteArray("at_km,fuel,opens\n0,none,7:30\n9,none,\n") << 2
                               << "HH:MM";
        QTest::newRow("limits") << QByteArray(
                                       "at_km,fuel,min_litres,max_litres\n0,pump,9,8\n9,none,,\n")
                                << 2 << "above the limit";
        QTest::newRow("timed") << QByteArray("at_km,fuel,timed\n0,none,yes\n9,none,\n") << 2
                               << "1 or 0";
        QTest::newRow("a million rows")
            << "at_km,fuel\n" + QByteArray("5,none\n").repeated(1'000'000) << 200'002 << "too long";
    }

    void saysWhatIsWrongWithARoute()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, line);
        QFETCH(QString, words);
        const auto file = readRouteCsv(fileWith(text));
        QVERIFY(!file);
        QCOMPARE(file.error().code, ErrorCode::badInput);
        QCOMPARE(file.error().where.line, long(line));
        QVERIFY2(QString::fromStdString(describe(file.error())).contains(words),
                 describe(file.error()).c_str());
    }

    void whatIsWrittenIsReadBackAsItWas()
    {
        Route route;
        route.points.resize(4);
        route.points[0].at = Distance::fromKm(1.25);
        route.points[0].mode = "stage";
        RoutePoint& point = route.points[1];
        point.at = Distance::fromKm(100.0 / 3);
        point.name = "=Alder, \"the\" Inn";
        point.fuel = FuelSource::pump;
        point.pricePerLitre = 1.809;
        point.leastPurchase = Volume::fromLitres(5);
        point.mostPurchase = Volume::fromLitres(40.5);
        point.stopTime = Minutes(4);
        point.detour = Distance::fromKm(0.3);
        point.opens = Minutes(390);
        point.closes = Minutes(1440);
        point.timed = true;
        point.idle = Minutes(2.5);
        point.rest = Minutes(480);
        point.due = Minutes(9 * 60 + 5);
        point.firstDay = std::chrono::sys_days(std::chrono::year(2026) / 12 / 5);
        point.lastDay = std::chrono::sys_days(std::chrono::year(2027) / 1 / 2);
        point.climb = {Distance::fromMetres(120.5), Distance::fromMetres(-30.25)};
        point.floor = Volume::fromLitres(3.25);
        route.points[2].at = point.at; // the mode is none on this row and the one above
        route.points[3].at = Distance::fromKm(50);
        route.points[3].mode = "road";
        const std::string path = m_folder.filePath("written.csv").toStdString();
        const auto written = writeRouteCsv(route, path);
        QVERIFY2(written, written ? "" : describe(written.error()).c_str());
        const auto file = readRouteCsv(path);
        QVERIFY2(file, file ? "" : describe(file.error()).c_str());
        QVERIFY(file->warnings.empty());
        QVERIFY(file->route == route);
    }

    void nothingIsWrittenOverAndNoUnsoundRouteIsWritten()
    {
        const std::string path = fileWith("mine");
        Route route;
        route.points.resize(2);
        QCOMPARE(writeRouteCsv(route, path).error().code, ErrorCode::fileAccess);
        QFile file(m_folder.filePath("route.csv"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray("mine"));
        route.points.resize(1);
        const std::string fresh = m_folder.filePath("unsound.csv").toStdString();
        QCOMPARE(writeRouteCsv(route, fresh).error().code, ErrorCode::badInput);
        QVERIFY(!std::filesystem::exists(fresh));
    }

    void onTheWayTheRestOfTheRouteIsLeft()
    {
        const auto file = readRouteCsv(
            fileWith("at_km,name,mode,fuel\n0,a,road,none\n100,b,stage,pump\n200,c,road,none\n"));
        const auto rest = routeFrom(file->route, Distance::fromKm(130));
        QCOMPARE(rest->points.size(), std::size_t(2));
        QCOMPARE(rest->points[0].name, std::string("here"));
        QCOMPARE(rest->points[0].mode, std::string("stage"));
        QCOMPARE(rest->points[0].fuel, FuelSource::none);
        QCOMPARE(routeFrom(file->route, Distance::fromKm(100))->points[0].fuel, FuelSource::pump);
        QVERIFY(!routeFrom(file->route, Distance::fromKm(200)));
    }
};

UNDERMARK_TEST(RouteCsvTest)
#include "route_csv_test.moc"
