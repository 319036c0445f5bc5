// SPDX-License-Identifier: GPL-3.0-or-later
//
// Route files that are wrong or hostile, through the program as a user runs it:
// one clear line, exit code 2, nothing on stdout. Sizes are such that the old
// tricks (a million rows, entities that multiply, elements without end) would be
// felt; how long it takes is not judged here, only that it ends.
#include "tests/support/test_main.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

class BadRoutesTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QByteArray m_error;
    QByteArray m_text;
    int m_code = -1;

    static QByteArray gpx(const QByteArray& body)
    {
        return "<?xml version='1.0'?><gpx version='1.1' creator='test' "
               "xmlns='http://www.topografix.com/GPX/1/1' xmlns:u='urn:undermark:route:1'>" +
               body + "</gpx>";
    }

    // Entities that stand for ten times the one before: a thousand million letters.
    static QByteArray bomb()
    {
        QByteArray type = "<!DOCTYPE gpx [<!ENTITY a0 'aaaaaaaaaa'>";
        for (int i = 1; i < 9; ++i) {
            const QByteArray before = "&a" + QByteArray::number(i - 1) + ";";
            type += "<!ENTITY a" + QByteArray::number(i) + " '" + before.repeated(10) + "'>";
        }
        return "<?xml version='1.0'?>" + type +
               "]><gpx version='1.1'><rte><rtept lat='1' lon='1'><name>&a8;</name></rtept>"
               "<rtept lat='1' lon='2'/></rte></gpx>";
    }

    void run(const QString& command, const QByteArray& text, const QString& name,
             const QString& flags)
    {
        QFile file(m_folder.filePath(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.close();
        QProcess process;
        process.start(UNDERMARK_CLI,
                      QStringList{command, file.fileName()} + flags.split(' ', Qt::SkipEmptyParts));
        QVERIFY(process.waitForFinished(30000));
        m_code = process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1;
        m_text = process.readAllStandardOutput();
        m_error = process.readAllStandardError();
    }

private slots:
    void isOneLineAndExitCodeTwo_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("words");
        const auto csv = [](const char* what, const QByteArray& text, const QByteArray& words) {
            QTest::newRow(what) << QString("route.csv") << text << words;
        };
        const auto map = [](const char* what, const QByteArray& text, const QByteArray& words) {
            QTest::newRow(what) << QString("route.gpx") << text << words;
        };
        csv("backwards", "at_km,fuel\n0,none\n9,none\n8,none\n", "route.csv:4: column 'at_km'");
        csv("unknown fuel", "at_km,fuel\n0,shed\n9,none\n", "none, pump, zone, can or crew");
        csv("no finish", "at_km,fuel\n0,none\n", "no finish");
        csv("NaN", "at_km,fuel\n0,none\nnan,none\n", "route.csv:3");
        csv("infinite", "at_km,fuel\n0,none\ninf,none\n", "route.csv:3");
        csv("too large a number", "at_km,fuel\n0,none\n1e308,none\n", "route.csv:3");
        csv("NaN for a price", "at_km,fuel,price_per_l\n0,pump,nan\n9,none,\n", "'price_per_l'");
        csv("negative litres", "at_km,fuel,max_litres\n0,pump,-4\n9,none,\n", "'max_litres'");
        csv("comma decimal", "at_km,fuel\n0,none\n\"12,5\",none\n", "comma");
        csv("a unit", "at_km,fuel\n0,none\n12 km,none\n", "12 km");
        csv("no time of day", "at_km,fuel,opens\n0,pump,25:00\n9,none,\n", "HH:MM");
        csv("a zone without a limit", "at_km,fuel,max_litres\n0,zone,\n9,none,\n", "max_litres");
        csv("empty", "", "empty");
        csv("not text", QByteArray(3000, '\xff'), "route.csv");
        csv("a million rows", "at_km,fuel\n" + QByteArray("5,none\n").repeated(1'000'000),
            "too long");
        csv("a line of ten million letters", "at_km,fuel\n0," + QByteArray(10'000'000, 'x') + "\n",
            "column 'fuel'");
        map("an entity bomb", bomb(), "document type");
        map("an entity from a file",
            "<?xml version='1.0'?><!DOCTYPE gpx [<!ENTITY x SYSTEM 'file:///etc/hostname'>]>"
            "<gpx version='1.1'><rte><rtept lat='1' lon='1'><name>&x;</name></rtept></rte></gpx>",
            "document type");
        map("elements without end", gpx(QByteArray("<rte>").repeated(1'000'000)), "sound XML");
        map("a million route points",
            gpx("<rte>" + QByteArray("<rtept lat='1' lon='1'/>").repeated(1'000'000) + "</rte>"),
            "too long");
        map("off the globe", gpx("<rte><rtept lat='91' lon='1'/></rte>"), "-90 to 90");
        map("NaN on the map", gpx("<trk><trkseg><trkpt lat='nan' lon='1'/></trkseg></trk>"), "lat");
        map("no place", gpx("<rte><rtept/><rtept/></rte>"), "lat");
        map("unknown fuel on the map",
            gpx("<rte><rtept lat='1' lon='1'><extensions><u:fuel>shed</u:fuel></extensions></rtept>"
                "<rtept lat='1' lon='2'/></rte>"),
            "none, pump, zone, can or crew");
        map("timed by a word",
            gpx("<rte><rtept lat='1' lon='1'><extensions><u:timed>yes</u:timed></extensions>"
                "</rtept><rtept lat='1' lon='2'/></rte>"),
            "1 or 0");
        map("no finish on the map", gpx("<trk><trkseg><trkpt lat='1' lon='1'/></trkseg></trk>"),
            "no finish");
        map("distances backwards on the map",
            gpx("<rte><rtept lat='1' lon='1'><extensions><u:at_km>9</u:at_km></extensions></rtept>"
                "<rtept lat='1' lon='2'><extensions><u:at_km>8</u:at_km></extensions></rtept>"
                "</rte>"),
            "backwards");
        map("distances here and there",
            gpx("<rte><rtept lat='1' lon='1'/><rtept lat='1' lon='2'><extensions>"
                "<u:at_km>8</u:at_km></extensions></rtept></rte>"),
            "all rtepts or in none");
        map("another program's file", "<osm version='0.6'/>", "GPX 1.1");
    }

    void isOneLineAndExitCodeTwo()
    {
        QFETCH(QString, name);
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, words);
        run("plan", text, name, "--capacity-l 50 --start-l 10 --rate 8 --zone-limits --json");
        QCOMPARE(m_code, 2);
        QVERIFY(m_text.isEmpty());
        QCOMPARE(m_error.count('\n'), 1);
        QVERIFY2(m_error.size() < 500, m_error.left(500).constData());
        QVERIFY2(m_error.contains(words), m_error.constData());
    }

    void aCardOfABadRouteIsNotWritten()
    {
        const QString out = m_folder.filePath("card.pdf");
        run("card", "at_km,fuel\n9,none\n8,none\n", "route.csv",
            "--capacity-l 50 --start-l 10 --rate 8 --out " + out);
        QCOMPARE(m_code, 2);
        QVERIFY(!QFile::exists(out));
    }

    // A track is a line, however many fixes it has.
    void aTrackOfHalfAMillionFixesIsPlanned()
    {
        QByteArray fixes;
        for (int i = 0; i < 500'000; ++i)
            fixes += "<trkpt lat='47' lon='" + QByteArray::number(i * 1e-6, 'f', 6) + "'/>";
        run("plan", gpx("<trk><trkseg>" + fixes + "</trkseg></trk>"), "route.gpx",
            "--capacity-l 50 --start-l 10 --rate 8 --json");
        QCOMPARE(m_code, 0);
        QVERIFY(m_text.contains("\"feasible\": true"));
    }

    void waypointsByNameAndAGapInTheTrack()
    {
        run("plan",
            gpx("<wpt lat='47' lon='0.5'><name>Fuel Alder</name></wpt><trk>"
                "<trkseg><trkpt lat='47' lon='0'/><trkpt lat='47' lon='1'/></trkseg>"
                "<trkseg><trkpt lat='47' lon='1.1'/><trkpt lat='47' lon='1.5'/></trkseg></trk>"),
            "route.gpx", "--capacity-l 50 --start-l 6 --rate 8 --fuel-waypoints Fuel");
        QCOMPARE(m_code, 0);
        QVERIFY2(m_error.contains("gap of 7.6"), m_error.constData()); // 0.1 degree at 47 north
        QVERIFY2(m_text.contains("Fuel Alder"), m_text.constData());
    }
};

UNDERMARK_TEST(BadRoutesTest)
#include "bad_routes_test.moc"
