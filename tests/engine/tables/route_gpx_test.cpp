// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/route_gpx.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

class RouteGpxTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    std::string fileWith(const QByteArray& body, bool whole = false)
    {
        QFile file(m_folder.filePath("route.gpx"));
        if (file.open(QIODevice::WriteOnly))
            file.write(
                whole
                    ? body
                    : "<?xml version='1.0'?><gpx version='1.1' creator='test' "
                      "xmlns='http://www.topografix.com/GPX/1/1' xmlns:u='urn:undermark:route:1'>" +
                          body + "</gpx>");
        return file.fileName().toStdString();
    }

private slots:
    // GeographicLib's documentation and GeodSolve.
    void distancesAreGeodesicsOfWgs84()
    {
        QVERIFY(std::fabs(geodesicLength({40.6, -73.8}, {51.6, -0.5}).metres() - 5551759.400319) <
                1e-5);
        QVERIFY(std::fabs(geodesicLength({-41.32, 174.81}, {40.96, -5.50}).metres() -
                          19959679.267354) < 1e-5);
    }

    // The same by the program GeodSolve, where it is installed.
    void agreesWithGeodSolve()
    {
        const QString program = QStandardPaths::findExecutable("GeodSolve");
        if (program.isEmpty())
            QSKIP("GeodSolve (geographiclib-tools) is not installed");
        QProcess process;
        process.start(program, {"-i", "-p", "6", "--input-string", "47.1 11.3 48.2 12.9"});
        QVERIFY(process.waitForFinished());
        const double metres = process.readAllStandardOutput().trimmed().split(' ').at(2).toDouble();
        QVERIFY(metres > 100000);
        QVERIFY(std::fabs(geodesicLength({47.1, 11.3}, {48.2, 12.9}).metres() - metres) < 1e-5);
    }

    void everyRoutePointIsAPointWithOurExtensions()
    {
        const auto file = readRouteGpx(
            fileWith("<rte><rtept lat='47' "
                     "lon='11'><name>A</name><extensions><u:mode>road</u:mode></extensions></rtept>"
                     "<rtept lat='47' lon='12'><name>B</name><extensions><u:fuel>zone</u:fuel>"
                     "<u:max_litres>20</u:max_litres><o:fuel "
                     "xmlns:o='urn:other'>shed</o:fuel></extensions></rtept>"
                     "<rtept lat='48' lon='12'><name>C</name></rtept></rte>"));
        QVERIFY2(file, file ? "" : describe(file.error()).c_str());
        const auto& points = file->route.points;
        QCOMPARE(points.size(), std::size_t(3));
        QCOMPARE(points[1].fuel, FuelSource::zone);
        QCOMPARE(points[1].mostPurchase->litres(), 20.0);
        QCOMPARE(points[2].mode, std::string("road"));
        const Distance whole =
            geodesicLength({47, 11}, {47, 12}) + geodesicLength({47, 12}, {48, 12});
        QCOMPARE(points[2].at.km(), whole.km());
    }

    void aNewSegmentIsAGapThatIsReportedAndNotBridged()
    {
        const auto file = readRouteGpx(fileWith(
            "<trk><trkseg><trkpt lat='47' lon='11'/><trkpt lat='47.1' lon='11'/></trkseg>"
            "<trkseg><trkpt lat='48' lon='11'/><trkpt lat='48.1' lon='11'/></trkseg></trk>"));
        QVERIFY(file);
        const Distance driven =
            geodesicLength({47, 11}, {47.1, 11}) + geodesicLength({48, 11}, {48.1, 11});
        QVERIFY(std::fabs((file->route.points.back().at - driven).metres()) < 1e-6);
        QCOMPARE(file->warnings.size(), std::size_t(1));
        QVERIFY(english(file->warnings[0]).find("gap") != std::string::npos);
    }

    void waypointsNearTheLineBecomeFuelPoints()
    {
        const QByteArray body =
            "<wpt lat='47.0500' lon='11.001'><name>Fuel Alder</name></wpt>"
            "<wpt lat='47.0700' "
            "lon='11.0'><name>Beech</name><extensions><u:fuel>zone</u:fuel></extensions></wpt>"
            "<wpt lat='47.0800' lon='11.0'><name>View</name></wpt>"
            "<wpt lat='47.0500' lon='11.5'><name>Fuel Far</name></wpt>"
            "<trk><trkseg><trkpt lat='47' lon='11'/><trkpt lat='47.1' lon='11'/></trkseg></trk>";
        GpxOptions options;
        options.fuelWaypoints = "Fuel";
        const auto file = readRouteGpx(fileWith(body), options);
        QVERIFY(file);
        const auto& points = file->route.points;
        QCOMPARE(points.size(), std::size_t(4)); // start, Alder, Beech, finish
        QCOMPARE(points[1].name, std::string("Fuel Alder"));
        QCOMPARE(points[1].fuel, FuelSource::pump);
        QVERIFY(std::fabs(points[1].at.km() - geodesicLength({47, 11}, {47.05, 11}).km()) < 0.002);
        QCOMPARE(points[2].fuel, FuelSource::zone);
        QCOMPARE(file->warnings.size(), std::size_t(1));
        QCOMPARE(readRouteGpx(fileWith(body))->route.points.size(), std::size_t(3));
    }

    void saysWhatIsWrong_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<bool>("whole");
        QTest::addColumn<QString>("words");
        QTest::newRow("not XML") << QByteArray("at_km,fuel\n") << true << "XML";
        QTest::newRow("cut short") << QByteArray("<gpx version='1.1'><rte>") << true << "XML";
        QTest::newRow("another kind of XML") << QByteArray("<svg/>") << true << "GPX 1.1";
        QTest::newRow("nothing in it") << QByteArray() << false << "no route";
        QTest::newRow("no finish")
            << QByteArray("<rte><rtept lat='1' lon='1'/></rte>") << false << "no finish";
        QTest::newRow("off the globe")
            << QByteArray("<rte><rtept lat='91' lon='1'/></rte>") << false << "-90 to 90";
        QTest::newRow("NaN") << QByteArray("<rte><rtept lat='nan' lon='1'/></rte>") << false
                             << "outside";
        QTest::newRow("unknown fuel")
            << QByteArray("<rte><rtept lat='1' lon='1'><extensions><u:fuel>shed</u:fuel>"
                          "</extensions></rtept></rte>")
            << false << "none, pump, zone, can or crew";
        QTest::newRow("entity bomb")
            << QByteArray(
                   "<?xml version='1.0'?><!DOCTYPE gpx [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b "
                   "'&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;'><!ENTITY c '&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;'>]>"
                   "<gpx version='1.1'><rte><rtept lat='1' "
                   "lon='1'><name>&c;</name></rtept></rte></gpx>")
            << true << "document type";
    }

    void saysWhatIsWrong()
    {
        QFETCH(QByteArray, text);
        QFETCH(bool, whole);
        QFETCH(QString, words);
        const auto file = readRouteGpx(fileWith(text, whole));
        QVERIFY(!file);
        QCOMPARE(file.error().code, ErrorCode::badInput);
        QVERIFY2(QString::fromStdString(describe(file.error())).contains(words),
                 describe(file.error()).c_str());
        QVERIFY(describe(file.error()).find('\n') == std::string::npos);
    }
};

UNDERMARK_TEST(RouteGpxTest)
#include "route_gpx_test.moc"
