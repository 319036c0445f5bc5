// SPDX-License-Identifier: GPL-3.0-or-later
//
// Writing GPX, and a real track through the reader. The order of elements is
// checked by xmllint against tests/data/gpx_order.xsd, which this project wrote
// itself from memory of the schema (it is not on this machine, and tests fetch
// nothing).
#include "engine/tables/route_gpx_writer.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <numbers>

using namespace undermark;

class RouteGpxWriterTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    std::string path(const char* name) { return m_folder.filePath(name).toStdString(); }

    void write(const char* name, const QByteArray& text)
    {
        QFile file(m_folder.filePath(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(text);
    }

    // Every field set on the point in the middle.
    static RouteFile sample()
    {
        RouteFile file;
        file.route.points.resize(3);
        file.positions = {{47.0, 11.0}, {47.1234567890123, 11.5}, {47.2, -0.000012345}};
        RoutePoint& point = file.route.points[1];
        point.at = Distance::fromKm(123.456789012345678);
        point.name = "Alder & <Beech> \"ä\"";
        point.mode = "special stage";
        point.fuel = FuelSource::zone;
        point.pricePerLitre = 1.799;
        point.leastPurchase = Volume::fromLitres(5.1);
        point.mostPurchase = Volume::fromLitres(40.3);
        point.stopTime = Minutes(7);
        point.detour = Distance::fromKm(0.3);
        point.opens = Minutes(6 * 60 + 5);
        point.closes = Minutes(22 * 60 + 30);
        point.idle = Minutes(3);
        point.rest = Minutes(480);
        point.due = Minutes(9 * 60 + 5);
        point.firstDay = std::chrono::sys_days(std::chrono::year(2026) / 12 / 5);
        point.lastDay = std::chrono::sys_days(std::chrono::year(2027) / 1 / 2);
        point.climb = {Distance::fromMetres(120.5), Distance::fromMetres(-30.25)};
        point.floor = Volume::fromLitres(3.25);
        point.timed = true;
        file.route.points[2].at = Distance::fromKm(2000);
        file.route.points[0].mode = file.route.points[2].mode = "open road";
        return file;
    }

    // Haversine formula, km.
    static double onSphere(const GeoPosition& a, const GeoPosition& b)
    {
        const double degree = std::numbers::pi / 180;
        const double up = std::sin((b.latitude - a.latitude) * degree / 2);
        const double across = std::sin((b.longitude - a.longitude) * degree / 2);
        const double h = up * up + std::cos(a.latitude * degree) * std::cos(b.latitude * degree) *
                                       across * across;
        return 2 * 6371.0 * std::asin(std::sqrt(h));
    }

    static int lint(const QStringList& arguments)
    {
        QProcess process;
        process.start("xmllint", arguments);
        process.waitForFinished();
        return process.exitCode();
    }

private slots:
    void whatIsWrittenReadsBackAsTheSame()
    {
        const RouteFile file = sample();
        QVERIFY(writeRouteGpx(file, path("route.gpx")));
        const auto back = readRouteGpx(path("route.gpx"));
        QVERIFY2(back, back ? "" : describe(back.error()).c_str());
        QCOMPARE(back->route.points.size(), std::size_t(3));
        for (std::size_t i = 0; i < 3; ++i) {
            const RoutePoint& a = file.route.points[i];
            const RoutePoint& b = back->route.points[i];
            QVERIFY(file.positions[i] == back->positions[i]);
            QCOMPARE(b.at.km(), a.at.km());
            QCOMPARE(b.name, a.name);
            QCOMPARE(b.mode, a.mode);
            QCOMPARE(b.fuel, a.fuel);
            QCOMPARE(b.timed, a.timed);
            QVERIFY(b.pricePerLitre == a.pricePerLitre && b.leastPurchase == a.leastPurchase &&
                    b.mostPurchase == a.mostPurchase && b.stopTime == a.stopTime &&
                    b.detour == a.detour && b.opens == a.opens && b.closes == a.closes &&
                    b.idle == a.idle && b.rest == a.rest && b.due == a.due && b.climb == a.climb && b.firstDay == a.firstDay && b.lastDay == a.lastDay && b.floor == a.floor);
        }
    }

    void theElementsStandInTheSchemasOrder()
    {
        if (QStandardPaths::findExecutable("xmllint").isEmpty())
            QSKIP("xmllint (libxml2-utils) is not installed");
        QVERIFY(writeRouteGpx(sample(), path("route.gpx")));
        const QString file = m_folder.filePath("route.gpx");
        const QString schema = QStringLiteral(UNDERMARK_TEST_DATA "/gpx_order.xsd");
        QCOMPARE(lint({"--noout", "--nonet", "--schema", schema, file}), 0);
        // The check itself: extensions before the name are refused.
        QFile written(file);
        QVERIFY(written.open(QIODevice::ReadOnly));
        QString text = QString::fromUtf8(written.readAll());
        const QRegularExpression name("<name>.*?</name>");
        const QString found = name.match(text).captured();
        text.remove(found).replace("</rtept>", found + "</rtept>");
        write("wrong.gpx", text.toUtf8());
        QCOMPARE(lint({"--noout", "--nonet", m_folder.filePath("wrong.gpx")}), 0); // sound XML
        QVERIFY(lint({"--noout", "--nonet", "--schema", schema, m_folder.filePath("wrong.gpx")}) !=
                0);
    }

    void aRouteWithoutPlacesIsRefused()
    {
        RouteFile file = sample();
        file.positions.clear();
        QCOMPARE(writeRouteGpx(file, path("none.gpx")).error().code, ErrorCode::badInput);
        QVERIFY(!QFile::exists(m_folder.filePath("none.gpx")));
        QCOMPARE(writeRouteGpx(sample(), path("no/such/folder.gpx")).error().code,
                 ErrorCode::fileAccess);
    }

    // A waypoint lies on the measured road, not on the shorter geodesic.
    void aWaypointBetweenMeasuredPointsIsPlacedByTheRoad()
    {
        write("way.gpx",
              "<gpx version='1.1' xmlns='http://www.topografix.com/GPX/1/1' "
              "xmlns:u='urn:undermark:route:1'><wpt lat='47.05' lon='11'><name>Fuel</name>"
              "<extensions><u:fuel>pump</u:fuel></extensions></wpt><rte>"
              "<rtept lat='47' lon='11'><extensions><u:at_km>0</u:at_km></extensions></rtept>"
              "<rtept lat='47.1' lon='11'><extensions><u:at_km>20</u:at_km></extensions></rtept>"
              "</rte></gpx>");
        const auto file = readRouteGpx(path("way.gpx"));
        QVERIFY2(file, file ? "" : describe(file.error()).c_str());
        QCOMPARE(file->route.points.size(), std::size_t(3));
        QVERIFY(std::fabs(file->route.points[1].at.km() - 10) < 0.001);
    }

    // bmwcarit/barefoot, Apache-2.0: 1194 fixes at 1 Hz. The 13.65 km that SOURCES.md
    // states (two decimals) are the length on a sphere of 6371 km, as summed here; on
    // the ellipsoid at 48 degrees north the same fixes are 0.19 % further apart:
    // 13.673468 km by GeodSolve (geographiclib-tools) run over the same fixes.
    void aRealTrackHasItsStatedLength()
    {
        QFile file(QStringLiteral(UNDERMARK_SHARED_DATA "/track/city_drive_1hz.json"));
        if (!file.open(QIODevice::ReadOnly))
            QSKIP("the shared open data is not beside the checkout");
        const QJsonArray fixes = QJsonDocument::fromJson(file.readAll()).array();
        QCOMPARE(fixes.size(), 1194);
        QByteArray gpx = "<gpx version='1.1' xmlns='http://www.topografix.com/GPX/1/1'><trk>"
                         "<trkseg>";
        double sphereKm = 0.0;
        std::optional<GeoPosition> before;
        for (const QJsonValue& fix : fixes) {
            const QString point = fix.toObject().value("point").toString(); // POINT(lon lat)
            const QStringList place = point.mid(6).chopped(1).split(' ');
            const GeoPosition here{place[1].toDouble(), place[0].toDouble()};
            sphereKm += before ? onSphere(*before, here) : 0.0;
            before = here;
            gpx += "<trkpt lat='" + place[1].toUtf8() + "' lon='" + place[0].toUtf8() + "'/>";
        }
        write("track.gpx", gpx + "</trkseg></trk></gpx>");
        const auto track = readRouteGpx(path("track.gpx"));
        QVERIFY2(track, track ? "" : describe(track.error()).c_str());
        QCOMPARE(track->route.points.size(), std::size_t(2));
        const double km = track->route.points.back().at.km();
        QVERIFY2(std::fabs(sphereKm - 13.65) < 0.005, qPrintable(QString::number(sphereKm)));
        QVERIFY2(std::fabs(km - 13.673468) < 1e-6, qPrintable(QString::number(km, 'f', 7)));
        QVERIFY(track->warnings.empty());
    }
};

UNDERMARK_TEST(RouteGpxWriterTest)
#include "route_gpx_writer_test.moc"
