// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QFileInfo>
#include <QTest>
#include <cmath>

using namespace undermark::test;

namespace {

const QString kMapFile = UNDERMARK_SHARED_DATA "/map/small_country_2013.osm.pbf";
const char* const kValley =
    "<gpx version='1.1' creator='t' xmlns='http://www.topografix.com/GPX/1/1'><trk><trkseg>"
    "<trkpt lat='47.06' lon='9.50'/><trkpt lat='47.125' lon='9.5233'/><trkpt lat='47.145' lon='9.5143'/>"
    "<trkpt lat='47.209' lon='9.515'/><trkpt lat='47.27' lon='9.53'/></trkseg></trk></gpx>";
const QString kHalfTank = " --capacity-l 50 --start-l 20 --start-sd-l 1 --rate 8 --rate-sd .5 --end-l 40";

} // namespace

class PumpsTest : public QObject {
    Q_OBJECT
private slots:
    void init()
    {
        if (!QFileInfo::exists(kMapFile))
            QSKIP("the open map is not here");
    }

    // The driver's list stands above the map: what he says is closed is passed, his price is planned
    // with, and a pump that no map has is one more.
    void pumpsOfOnesOwn()
    {
        const CliRunner run;
        const QString track = run.file("valley.gpx", kValley);
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QString ask = "pumps " + kMapFile + " --along " + track + " --json";
        const nlohmann::json before = run(ask).json()["pumps"];
        const nlohmann::json& first = before[0];
        const auto near = [&](const char* more) {
            return run(QString("own-pump add Barn --lat %1 --lon %2 %3 --json")
                           .arg(first["lat"].get<double>() + .0003, 0, 'f', 6).arg(first["lon"].get<double>(), 0, 'f', 6).arg(more));
        };
        const CliAnswer closed = near("--closed");
        QCOMPARE(closed.exitCode, 0);
        QCOMPARE(run(ask).json()["pumps"].size(), before.size() - 1);
        QCOMPARE(run("own-pump remove Barn").exitCode, 0);
        QVERIFY(run(ask).json()["pumps"] == before);
        QCOMPARE(near("--price-per-l 1.5 --hours 24/7").exitCode, 0);
        const nlohmann::json priced = run(ask).json()["pumps"];
        QCOMPARE(priced.size(), before.size());
        QVERIFY(priced[0]["own"] == true && priced[0]["price_per_l"] == 1.5 && priced[0]["name"] == "Barn");
        QVERIFY(priced[0]["opening_hours"] == "24/7" && priced[1]["own"] == false);
        QCOMPARE(run("own-pump add Farm --lat 47.1 --lon 9.52 --fuel diesel").exitCode, 0);
        QCOMPARE(run(ask).json()["pumps"].size(), before.size() + 1);
        QCOMPARE(run(ask + " --fuel petrol").json()["pumps"].size(), run(ask + " --fuel diesel").json()["pumps"].size() - 1);
        QCOMPARE(run("own-pump list --json").json()["pumps"].size(), std::size_t(2));
        for (const char* wrong : {"own-pump add X --lat 91 --lon 0", "own-pump add X --lat 0", "own-pump remove Nobody",
                                  "own-pump add X --lat 0 --lon 0 --closed --hours 24/7",
                                  "own-pump add X --lat 0 --lon 0 --price-per-l -1"}) {
            const CliAnswer answer = run(wrong);
            QVERIFY2(answer.exitCode == 2 && answer.errorLines() == 1, qPrintable(QString(wrong) + ": " + answer.err));
        }
        QCOMPARE(run("own-pump list --json").json()["pumps"].size(), std::size_t(2));
    }

    // What `pumps` lists is what `plan --pumps` may stop at, and what the files hold that it writes.
    void listedPlannedAndWritten()
    {
        const CliRunner run;
        const QString track = run.file("valley.gpx", kValley);
        const nlohmann::json listed = run("pumps " + kMapFile + " --along " + track + " --json").json()["pumps"];
        QVERIFY(listed.size() > 5);
        for (std::size_t i = 0; i < listed.size(); ++i) {
            QVERIFY(listed[i]["detour_km"].get<double>() >= 2 * listed[i]["off_km"].get<double>());
            QVERIFY(listed[i]["off_km"].get<double>() <= 2);
            QVERIFY(i == 0 || listed[i]["at_km"].get<double>() >= listed[i - 1]["at_km"].get<double>());
        }
        const QString gpx = QFileInfo(track).dir().filePath("with.gpx"), csv = QFileInfo(track).dir().filePath("with.csv");
        QCOMPARE(run("pumps " + kMapFile + " --along " + track + " --gpx " + gpx + " --csv " + csv).exitCode, 0);
        const nlohmann::json planned = run("plan " + track + " --pumps " + kMapFile + kHalfTank + " --json").json();
        QCOMPARE(planned["points"].size(), listed.size() + 2);
        QVERIFY(planned["stops"].size() == 1);
        for (const QString& file : {gpx, csv}) {
            const nlohmann::json again = run("plan " + file + kHalfTank + " --json").json();
            QVERIFY2(std::fabs(again["dry_risk"].get<double>() - planned["dry_risk"].get<double>()) < 1e-6,
                     qPrintable(file));
            QVERIFY(again["stops"][0]["name"] == planned["stops"][0]["name"]);
        }
        const std::string name = listed[0]["id"].get<std::string>();
        const nlohmann::json without = run("pumps " + kMapFile + " --along " + track + " --within-km .3 --json").json()["pumps"];
        QVERIFY(without.size() < listed.size());
        QVERIFY(!name.empty());
    }

    void openWhenPassed()
    {
        const CliRunner run;
        const QString track = run.file("valley.gpx", kValley);
        const CliAnswer answer = run("pumps " + kMapFile + " --along " + track + " --depart 23:30 --json");
        for (const nlohmann::json& pump : answer.json()["pumps"]) {
            QVERIFY(pump["on_arrival"] == "unknown"); // the map of 2013 tells no hours
            QVERIFY(pump["open_chance"].get<double>() == .5);
            QVERIFY(std::fabs(pump["passed_at_min"].get<double>() - 23.5 * 60 - pump["at_km"].get<double>()) < 1e-9);
        }
        QVERIFY(run("plan " + track + " --pumps " + kMapFile + " --depart 23:30" + kHalfTank).err.contains("no opening hours"));
    }

    void wrongUse()
    {
        const CliRunner run;
        const QString track = run.file("valley.gpx", kValley);
        const QString table = run.file("route.csv", "at_km,name\n0,a\n10,b\n");
        const QString noMap = run.file("no.osm.pbf", "this is no map, whatever it is called");
        for (const QString& line :
             {"pumps " + kMapFile + " --along " + table, "plan " + table + " --pumps " + kMapFile + kHalfTank,
              "pumps " + noMap + " --along " + track, "pumps " + kMapFile + " --along " + track + " --within-km 0",
              "pumps " + kMapFile + " --along " + track + " --leave-out Nobody", QString("pumps " + kMapFile)}) {
            const CliAnswer answer = run(line);
            QVERIFY2(answer.exitCode == 2 && answer.errorLines() == 1 && answer.out.isEmpty(),
                     qPrintable(line + ": " + answer.err));
        }
        QCOMPARE(run("pumps /nowhere.osm.pbf --along " + track).exitCode, 1);
    }
};

UNDERMARK_TEST(PumpsTest)
#include "pumps_test.moc"
