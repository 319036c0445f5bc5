// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/pumps_along.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <set>

using namespace undermark;

namespace {

const QString kCountry = UNDERMARK_SHARED_DATA "/map/small_country_2013.osm.pbf";

bool osmium(const QStringList& arguments)
{
    QProcess process;
    process.start("osmium", arguments);
    return process.waitForFinished(60'000) && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
}

#define NEEDS_OSMIUM()                                                                             \
    if (!osmium({"--version"}))                                                                    \
    QSKIP("osmium-tool is not installed")

GeoLine lineThrough(std::initializer_list<GeoPosition> places)
{
    GeoLine line;
    for (const GeoPosition& place : places)
        line.join(place);
    return line;
}

// A land at the equator where a thousandth of a degree is 111.3 m from west to east: nodes by
// name of their place, ways by the text given.
class Land {
public:
    explicit Land(const QString& folder) : m_folder(folder) {}

    int node(double east, double north, const QString& tags = {})
    {
        m_nodes += QString("<node id=\"%1\" version=\"1\" lat=\"%2\" lon=\"%3\">%4</node>\n")
                       .arg(++m_last).arg(north / 1000, 0, 'f', 7).arg(east / 1000, 0, 'f', 7).arg(tagsOf(tags));
        return m_last;
    }
    void way(const QList<int>& nodes, const QString& tags)
    {
        QString refs;
        for (const int node : nodes)
            refs += QString("<nd ref=\"%1\"/>").arg(node);
        m_ways += QString("<way id=\"%1\" version=\"1\">%2%3</way>\n").arg(++m_last).arg(refs, tagsOf(tags));
    }
    void relation(int way, const QString& tags)
    {
        m_relations += QString("<relation id=\"%1\" version=\"1\"><member type=\"way\" ref=\"%2\" role=\"outer\"/>%3</relation>\n")
                           .arg(++m_last).arg(way).arg(tagsOf(tags));
    }
    int last() const { return m_last; }

    std::string written()
    {
        QFile file(m_folder + "/land.osm");
        if (!file.open(QIODevice::WriteOnly))
            return {};
        file.write("<?xml version='1.0' encoding='UTF-8'?>\n<osm version=\"0.6\">\n" +
                   (m_nodes + m_ways + m_relations).toUtf8() + "</osm>\n");
        file.close();
        const QString extract = m_folder + "/land.osm.pbf";
        return osmium({"cat", file.fileName(), "-o", extract, "--overwrite"}) ? extract.toStdString() : std::string();
    }

private:
    // "amenity=fuel name=North"
    static QString tagsOf(const QString& tags)
    {
        QString out;
        for (const QString& tag : tags.split(' ', Qt::SkipEmptyParts))
            out += QString("<tag k=\"%1\" v=\"%2\"/>").arg(tag.section('=', 0, 0), tag.section('=', 1));
        return out;
    }

    QString m_folder, m_nodes, m_ways, m_relations;
    int m_last = 0;
};

const PumpAlong* called(const PumpsAlong& found, const char* name)
{
    for (const PumpAlong& pump : found.pumps) {
        if (pump.pump.name == name)
            return &pump;
    }
    return nullptr;
}

constexpr double kStep = 0.1113195; // km of a thousandth of a degree along the equator (WGS84: a pi / 180)

} // namespace

class PumpsAlongTest : public QObject {
    Q_OBJECT
private slots:

    // The open extract, read by osmium-tool (an independent reader of its tags): every station
    // once, its place within 50 m, and along the line as a scan over short steps finds it.
    void everyStationOfASmallCountry()
    {
        if (!QFile::exists(kCountry))
            QSKIP("the open map is not here");
        NEEDS_OSMIUM();
        QTemporaryDir folder;
        const QString stations = folder.filePath("stations.osm.pbf"), listed = folder.filePath("stations.geojson");
        QVERIFY(osmium({"tags-filter", kCountry, "nwr/amenity=fuel", "-o", stations}));
        QVERIFY(osmium({"export", stations, "-u", "type_id", "--geometry-types", "point,polygon", "-o", listed}));
        QFile file(listed);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QJsonArray features = QJsonDocument::fromJson(file.readAll()).object()["features"].toArray();

        const GeoLine line = lineThrough({{47.05, 9.48}, {47.10, 9.52}, {47.16, 9.51}, {47.22, 9.53}, {47.27, 9.53}});
        PumpsQuestion question;
        question.within = Distance::fromKm(30);
        const auto found = findPumpsAlong(line, kCountry.toStdString(), question);
        QVERIFY2(found, found ? "" : describe(found.error()).c_str());

        std::set<std::string> ids;
        for (const PumpAlong& pump : found->pumps)
            QVERIFY2(ids.insert(pump.pump.id).second, pump.pump.id.c_str());
        int stationsListed = 0;
        for (const auto& value : features) {
            const QJsonObject feature = value.toObject();
            if (feature["properties"].toObject()["amenity"] != "fuel")
                continue;
            ++stationsListed;
            const QJsonObject geometry = feature["geometry"].toObject();
            QJsonArray ring = geometry["coordinates"].toArray();
            while (ring.at(0).isArray() && ring.at(0).toArray().at(0).isArray())
                ring = ring.at(0).toArray();
            if (!ring.at(0).isArray())
                ring = QJsonArray({QJsonValue(ring)});
            double nearest = 1e9; // of the outline's corners
            const PumpAlong* best = nullptr;
            for (const PumpAlong& pump : found->pumps) {
                for (const auto& corner : ring) {
                    const GeoPosition place{corner.toArray().at(1).toDouble(), corner.toArray().at(0).toDouble()};
                    const double off = geodesicLength(place, pump.pump.position).metres();
                    if (off < nearest) {
                        nearest = off;
                        best = &pump;
                    }
                }
            }
            QVERIFY(best);
            QVERIFY2(nearest < 50, best->pump.id.c_str());
        }
        QCOMPARE(int(found->pumps.size()), stationsListed);
        QCOMPARE(stationsListed, 16); // as the data's list of sources says
        for (const PumpAlong& pump : found->pumps) {
            QVERIFY(pump.detour >= 2 * pump.off);
            double nearest = 1e9, at = 0;
            const auto& places = line.places();
            for (std::size_t i = 1; i < places.size(); ++i) {
                for (int k = 0; k <= 1000; ++k) {
                    const double part = k / 1000.0;
                    const GeoPosition &a = places[i - 1].position, &b = places[i].position;
                    const GeoPosition foot{a.latitude + part * (b.latitude - a.latitude),
                                           a.longitude + part * (b.longitude - a.longitude)};
                    const double off = geodesicLength(foot, pump.pump.position).km();
                    if (off < nearest) {
                        nearest = off;
                        at = places[i - 1].at.km() + part * (places[i].at - places[i - 1].at).km();
                    }
                }
            }
            QVERIFY2(std::fabs(at - pump.at.km()) < 0.05, pump.pump.id.c_str());
        }
    }

    // Worked by hand: roads along a straight track from (0, 0) to (40, 0) thousandths of a degree.
    void detoursByRoad()
    {
        NEEDS_OSMIUM();
        QTemporaryDir folder;
        Land land(folder.path());
        QList<int> main;
        for (int east = 0; east <= 40; east += 5)
            main << land.node(east, 0);
        land.way(main, "highway=primary");
        // A side road 4 to the north, with a pump at its end; its track passes it at 10.
        land.way({main[2], land.node(10, 4)}, "highway=residential");
        land.node(10, 4, "amenity=fuel name=North");
        // A bow from 15 to 25, and a pump in its middle: leaving at 15 and returning at 25 costs
        // 2 x 3 up and down more than the track.
        const int west = land.node(15, 3), east = land.node(25, 3);
        land.way({main[3], west}, "highway=service");
        land.way({west, east}, "highway=service oneway=yes");
        land.way({east, main[5]}, "highway=service");
        land.node(20, 3, "amenity=fuel name=Bow");
        // At the road itself.
        land.node(33, 0.1, "amenity=fuel name=Beside");
        // Over the track leads a road without a way down; the pump on it is reached by none.
        land.way({land.node(30, -6), land.node(30, 6)}, "highway=tertiary bridge=yes");
        land.node(30, 6, "amenity=fuel name=Over");
        // A private road does not count.
        land.way({main[7], land.node(35, -5)}, "highway=service access=private");
        land.node(35, -5, "amenity=fuel name=Private");
        const std::string extract = land.written();
        QVERIFY(!extract.empty());

        const auto found = findPumpsAlong(lineThrough({{0, 0}, {0, .02}, {0, .04}}), extract, {});
        QVERIFY2(found, found ? "" : describe(found.error()).c_str());
        QCOMPARE(found->pumps.size(), std::size_t(5));
        const auto* north = called(*found, "North");
        QVERIFY(std::fabs(north->detour.km() - 8 * kStep) < .01 && north->byRoad);
        QVERIFY(std::fabs(north->at.km() - 10 * kStep) < .001);
        const auto* bow = called(*found, "Bow");
        QVERIFY(std::fabs(bow->detour.km() - 6 * kStep) < .01 && bow->byRoad);
        // Driven the other way, one is past it at 15 and comes back to 25: 8 + 8 by road, 10 again.
        const auto turned = findPumpsAlong(lineThrough({{0, .04}, {0, .02}, {0, 0}}), extract, {});
        QVERIFY(turned);
        QVERIFY(std::fabs(called(*turned, "Bow")->detour.km() - 26 * kStep) < .01);
        const auto* beside = called(*found, "Beside");
        QVERIFY(std::fabs(beside->detour.km() - .2 * kStep) < .01 && beside->byRoad);
        for (const char* name : {"Over", "Private"}) {
            const auto* pump = called(*found, name);
            QVERIFY2(!pump->byRoad, name);
            QVERIFY(std::fabs(pump->detour.km() - 2 * kRoadPerStraight * pump->off.km()) < 1e-9);
        }
        for (const PumpAlong& pump : found->pumps)
            QVERIFY(pump.detour >= 2 * pump.off);
    }

    // A one-way road the wrong way is no way back: the long way round is.
    void oneWayAndRoundabout()
    {
        NEEDS_OSMIUM();
        QTemporaryDir folder;
        Land land(folder.path());
        QList<int> main;
        for (int east = 0; east <= 20; east += 5)
            main << land.node(east, 0);
        land.way(main, "highway=primary");
        const int up = land.node(5, 5), far = land.node(15, 5);
        land.way({main[1], up}, "highway=tertiary oneway=yes");
        land.way({up, far}, "highway=tertiary");
        land.way({main[3], far}, "highway=tertiary oneway=-1"); // from `far` down
        land.node(5, 5, "amenity=fuel name=Corner");
        const std::string extract = land.written();
        const auto found = findPumpsAlong(lineThrough({{0, 0}, {0, .02}}), extract, {});
        QVERIFY(found);
        // 5 up, 10 along (as on the track), 5 down.
        QVERIFY(std::fabs(called(*found, "Corner")->detour.km() - 10 * kStep) < .01);
        // Driven the other way, one leaves at 15 only against the one-way: by no road.
        const auto turned = findPumpsAlong(lineThrough({{0, .02}, {0, 0}}), extract, {});
        QVERIFY(turned);
        const double km = called(*turned, "Corner")->detour.km();
        // Up at 5, back over 15 (down there), and along the track again from 15 to 5: 5 + 10 + 5 + 10.
        QVERIFY2(std::fabs(km - 30 * kStep) < .01, qPrintable(QString::number(km / kStep)));
    }

    void nodesWaysAndRelations()
    {
        NEEDS_OSMIUM();
        QTemporaryDir folder;
        Land land(folder.path());
        land.node(1, 1, "amenity=fuel operator=Op opening_hours=24/7 fuel:diesel=yes fuel:lpg=no");
        const QList<int> ring{land.node(5, 1), land.node(6, 1), land.node(6, 2), land.node(5, 2)};
        land.way(ring + QList<int>{ring[0]}, "amenity=fuel name=Area fuel:octane_95=yes");
        const QList<int> outer{land.node(9, 1), land.node(10, 1), land.node(10, 2)};
        land.way(outer + QList<int>{outer[0]}, "");
        land.relation(land.last(), "type=multipolygon amenity=fuel name=Many fuel:octane_98=no");
        land.node(12, 1, "amenity=fuel_station name=None");
        land.node(12, 1, "disused:amenity=fuel name=Gone");
        const std::string extract = land.written();
        const GeoLine line = lineThrough({{0, 0}, {0, .02}});

        const auto all = findPumpsAlong(line, extract, {});
        QVERIFY(all);
        QCOMPARE(all->pumps.size(), std::size_t(3));
        QCOMPARE(all->pumps[0].pump.name, std::string("Op"));
        QVERIFY(all->pumps[0].hours.has_value());
        QVERIFY(std::fabs(all->pumps[1].at.km() - 5.5 * kStep) < .001);
        QVERIFY(std::fabs(all->pumps[2].at.km() - 9.5 * kStep) < .001);

        PumpsQuestion question;
        question.fuel = "petrol";
        const auto petrol = findPumpsAlong(line, extract, question);
        QCOMPARE(petrol->pumps.size(), std::size_t(2)); // Many denies it
        QCOMPARE(int(petrol->pumps[0].offer), int(Offer::unknown));
        QCOMPARE(int(petrol->pumps[1].offer), int(Offer::yes));
        QCOMPARE(petrol->notes.size(), all->notes.size());
        question.fuel = "disel"; // a slip: nothing is left out, and that is said
        QCOMPARE(findPumpsAlong(line, extract, question)->pumps.size(), std::size_t(3));
        QCOMPARE(findPumpsAlong(line, extract, question)->notes.size(), all->notes.size() + 1);
        question.fuel = "lpg";
        QCOMPARE(findPumpsAlong(line, extract, question)->pumps.size(), std::size_t(2));
        question.fuel.clear();
        question.leaveOut = {"Area"};
        QCOMPARE(findPumpsAlong(line, extract, question)->pumps.size(), std::size_t(2));
        question.leaveOut = {"Nowhere"};
        QCOMPARE(int(findPumpsAlong(line, extract, question).error().code), int(ErrorCode::notFound));

        // Twice in one file: still each once.
        const QString once = QString::fromStdString(extract), twice = folder.filePath("twice.osm.pbf");
        QVERIFY(osmium({"cat", once, once, "-o", twice}));
        QCOMPARE(findPumpsAlong(line, twice.toStdString(), {})->pumps.size(), std::size_t(3));
    }

    void acrossTheAntimeridian()
    {
        NEEDS_OSMIUM();
        QTemporaryDir folder;
        Land land(folder.path());
        land.node(179'995, 1, "amenity=fuel name=West");
        land.node(-179'995, 1, "amenity=fuel name=East");
        land.node(180'000, 1, "amenity=fuel name=Edge");
        const auto found = findPumpsAlong(lineThrough({{0, 179.99}, {0, -179.99}}), land.written(), {});
        QVERIFY(found);
        QCOMPARE(found->pumps.size(), std::size_t(3));
        QVERIFY(std::fabs(called(*found, "Edge")->at.km() - 10 * kStep) < .001);
        QVERIFY(std::fabs(called(*found, "West")->at.km() - 5 * kStep) < .001);
        QVERIFY(std::fabs(called(*found, "East")->at.km() - 15 * kStep) < .001);
    }

    void noPumpAndOutside()
    {
        if (!QFile::exists(kCountry))
            QSKIP("the open map is not here");
        const auto found = findPumpsAlong(lineThrough({{46, 8}, {46.1, 8}}), kCountry.toStdString(), {});
        QVERIFY(found);
        QVERIFY(found->pumps.empty());
        QCOMPARE(found->notes.size(), std::size_t(2)); // outside the map; no pump
    }

    // Cut short anywhere, or with bytes turned over: an answer or one error, never a crash.
    void damagedExtracts()
    {
        NEEDS_OSMIUM();
        QTemporaryDir folder;
        Land land(folder.path());
        const int a = land.node(0, 0), b = land.node(10, 0);
        land.way({a, b}, "highway=primary");
        land.node(5, 0, "amenity=fuel name=Only");
        const std::string extract = land.written();
        QFile file(QString::fromStdString(extract));
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray whole = file.readAll();
        const GeoLine line = lineThrough({{0, 0}, {0, .01}});
        const std::string broken = folder.filePath("broken.osm.pbf").toStdString();
        const auto tried = [&](const QByteArray& bytes) {
            QFile out(QString::fromStdString(broken));
            if (!out.open(QIODevice::WriteOnly))
                return ErrorCode::internal;
            out.write(bytes);
            out.close();
            const auto found = findPumpsAlong(line, broken, {});
            return found ? ErrorCode::busy : found.error().code;
        };
        QCOMPARE(int(tried(whole)), int(ErrorCode::busy)); // it is read
        int refused = 0;
        for (int length = 0; length < whole.size(); length += 7) {
            const ErrorCode code = tried(whole.left(length));
            QVERIFY(code == ErrorCode::badInput || code == ErrorCode::busy);
            refused += code == ErrorCode::badInput;
        }
        QVERIFY(refused > whole.size() / 7 - 4); // but between two blocks
        for (int at = 0; at < whole.size(); at += 5) {
            QByteArray turned = whole;
            turned[at] = char(turned[at] ^ 0x55);
            const ErrorCode code = tried(turned);
            QVERIFY(code == ErrorCode::badInput || code == ErrorCode::busy);
        }
        QCOMPARE(int(tried("<osm version=\"0.6\"></osm>")), int(ErrorCode::badInput));
        QCOMPARE(int(findPumpsAlong(line, folder.path().toStdString(), {}).error().code), int(ErrorCode::fileAccess));
    }

    void stopped()
    {
        if (!QFile::exists(kCountry))
            QSKIP("the open map is not here");
        PumpsQuestion question;
        double most = 0;
        question.progress = [&](double share) {
            most = std::max(most, share);
            return share < .4;
        };
        const auto found = findPumpsAlong(lineThrough({{47.05, 9.48}, {47.27, 9.53}}), kCountry.toStdString(), question);
        QVERIFY(!found);
        QVERIFY(most >= .4 && most <= 1);
    }
};

UNDERMARK_TEST(PumpsAlongTest)
#include "pumps_along_test.moc"
