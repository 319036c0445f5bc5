// SPDX-License-Identifier: GPL-3.0-or-later
//
// Export, import, backup, restore and merge as a user meets them.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFileInfo>
#include <QTest>

using namespace undermark::test;
using nlohmann::json;

class TransferTest : public QObject {
    Q_OBJECT

    static std::size_t fills(const CliRunner& run) { return run("log --json").json()["fills"].size(); }

    static QString beside(const CliRunner& run, const char* name)
    {
        return QFileInfo(run.logbook()).dir().filePath(name);
    }

    static bool onlyForItsOwner(const QString& file)
    {
        return (QFileInfo(file).permissions() & (QFile::ReadGroup | QFile::ReadOther | QFile::WriteGroup
                                                 | QFile::WriteOther)) == 0;
    }

private slots:
    void whatIsExportedCanBeImportedElsewhere()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("trip add --km 31.5 --mode town --idle-min 6 --starts 2 --date 2026-10-01").exitCode, 0);
        QCOMPARE(run("export --csv " + beside(run, "tables")).exitCode, 0);
        for (const char* table : {"vehicles", "surge_margins", "modes", "calibrations", "fills", "trips", "proofs", "levels", "tanks", "verifications"})
            QVERIFY(onlyForItsOwner(beside(run, "tables/") + table + ".csv"));
        const CliRunner other;
        QCOMPARE(other("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        QCOMPARE(other("import " + beside(run, "tables/fills.csv")).exitCode, 0);
        QCOMPARE(other("import " + beside(run, "tables/trips.csv")).exitCode, 0); // by its header
        const json a = run("log --json").json(), b = other("log --json").json();
        QCOMPARE(a["fills"].size(), b["fills"].size());
        for (std::size_t i = 0; i < a["fills"].size(); ++i)
            for (const char* field : {"date", "litres", "extent", "odometer_km"})
                QVERIFY(a["fills"][i][field] == b["fills"][i][field]);
        for (const char* field : {"date", "km", "mode", "idle_min", "starts"})
            QVERIFY(a["trips"][0][field] == b["trips"][0][field]);
    }

    void aFormulaInANameIsDefused()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name =1+1 --capacity-l 50 --fuel petrol").exitCode, 0);
        QCOMPARE(run("export --csv " + beside(run, "tables")).exitCode, 0);
        QFile file(beside(run, "tables/vehicles.csv"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.readAll().contains("\n'=1+1,petrol,50,"));
    }

    // Formulas, apostrophes, quotes, commas, spaces at the ends: all come back as typed.
    void hostileTextSurvivesExportAndImport()
    {
        const QStringList blends{"=1+1", "+e85", "-5", "@x", "'quoted", "'=x", "a,b;c", "say\"no\"", "plain"};
        const CliRunner run;
        QVERIFY(run.prepareCar());
        for (int i = 0; i < blends.size(); ++i)
            QCOMPARE(run(QString("fill add --litres 30 --odometer-km %1 --full --date 2026-10-%2 --blend=%3")
                             .arg(104500 + 450 * i).arg(10 + i).arg(blends[i])).exitCode, 0);
        QCOMPARE(run("export --csv " + beside(run, "tables")).exitCode, 0);
        QFile file(beside(run, "tables/fills.csv"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray text = file.readAll();
        for (const char* formula : {",=1", ",+e", ",-5", ",@x"})
            QVERIFY2(!text.contains(formula), formula);
        const CliRunner other;
        QCOMPARE(other("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        QCOMPARE(other("import " + beside(run, "tables/fills.csv")).exitCode, 0);
        const json b = other("log --json").json()["fills"];
        for (int i = 0; i < blends.size(); ++i)
            QCOMPARE(QString::fromStdString(b[std::size_t(9 + i)]["blend"].get<std::string>()), blends[i]);
        QCOMPARE(run("import " + beside(run, "tables/fills.csv") + " --json").json()["added"].get<int>(), 0);
    }

    void anExportHoldsEveryVehicleAndAnImportTakesItsOwn()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("vehicle add --name Lark --capacity-l 40 --fuel diesel").exitCode, 0);
        QCOMPARE(run("vehicle set --vehicle Lark --surge-margin-l town=1").exitCode, 0);
        QCOMPARE(run("fill add --vehicle Lark --litres 30 --odometer-km 5 --full --date 2026-01-02").exitCode, 0);
        QCOMPARE(run("export --csv " + beside(run, "tables")).exitCode, 0);
        const CliRunner other;
        QCOMPARE(other("vehicle add --name Lark --capacity-l 40 --fuel diesel").exitCode, 0);
        const json report = other("import " + beside(run, "tables/fills.csv") + " --json").json();
        QCOMPARE(report["added"].get<int>(), 1);
        QCOMPARE(report["of_others"].get<int>(), 9);
        QFile file(beside(run, "tables/surge_margins.csv"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.readAll().contains("\nLark,town,1\n"));
    }

    // An entry corrected since the export is not brought back by importing it again.
    void aRowWhoseIdIsInTheLogIsNotAddedAgain()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString id = QString::fromStdString(run("log --json").json()["fills"][3]["id"].get<std::string>());
        const QString table = run.file("f.csv", ("date,litres,odometer_km,id\n2026-04-10,99,101500," + id + "\n").toUtf8());
        QCOMPARE(run("import " + table + " --json").json()["added"].get<int>(), 0);
    }

    void anExportNeverOverwrites()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("export --csv " + beside(run, "tables")).exitCode, 0);
        QCOMPARE(run("export --csv " + beside(run, "tables")).exitCode, 1);
        QCOMPARE(run("export --bundle " + beside(run, "points.csv")).exitCode, 1);
        QCOMPARE(run("export").exitCode, 2);
        QCOMPARE(run("export --gpx " + beside(run, "points.csv") + " --route x.gpx").exitCode, 1);
    }

    void aRouteIsExportedAsGpxThatReadsBack()
    {
        const CliRunner run;
        const QString route = run.file("r.gpx", "<gpx version=\"1.1\" creator=\"invented\" xmlns=\"http://www.topografix"
            ".com/GPX/1/1\"><rte><rtept lat=\"60\" lon=\"10\"><name>Start</name></rtept>"
            "<rtept lat=\"60.5\" lon=\"10\"><name>End</name></rtept></rte></gpx>");
        const QString made = beside(run, "made.gpx");
        QCOMPARE(run("export --gpx " + made + " --route " + route).exitCode, 0);
        QVERIFY(onlyForItsOwner(made));
        QFile file(made);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.readAll().contains("at_km"));
        const QString tank = " --capacity-l 50 --start-l 40 --rate 7 --json";
        QCOMPARE(run("plan " + made + tank).out, run("plan " + route + tank).out);
        QCOMPARE(run("export --gpx " + made + "2").exitCode, 2);
    }

    void theUserSaysWhatTheColumnsAndUnitsAre()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QString table = run.file("their.csv", "Day,Gallons,Miles,Note\n2026-01-02,10,1000,x\n2026-01-09,9.5,1300,\n");
        const QString how = " --column date=Day --column litres=Gallons --column odometer_km=Miles "
                            "--litres-in us-gal --km-in mi";
        const CliAnswer preview = run("import " + table + how + " --dry-run");
        QCOMPARE(preview.exitCode, 0);
        QVERIFY(preview.out.contains("Would add 2 fills") && preview.err.contains("Note"));
        QCOMPARE(fills(run), std::size_t(0));
        QCOMPARE(run("import " + table + how).exitCode, 0);
        const json first = run("log --json").json()["fills"][0];
        QCOMPARE(first["litres"].get<double>(), 37.85411784);
        QCOMPARE(first["odometer_km"].get<double>(), 1609.344);
    }

    void datesRatesTemperaturesAndWholePricesAreReadAsTheUserStates()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QString table = run.file("t.csv", "date,litres,odometer_km,price_total,temperature_c,displayed_l_per_100km\n"
                                                "3/4/2026 17:05,40,1000,60,50,25\n");
        const QString how = " --rate-in km-per-l --temperature-in f --dates ";
        QCOMPARE(run("import " + table + how + "mdy").exitCode, 0);
        const json fill = run("log --json").json()["fills"][0];
        QCOMPARE(fill["date"].get<std::string>(), std::string("2026-03-04T17:05:00Z"));
        QCOMPARE(fill["price_per_l"].get<double>(), 1.5);
        QVERIFY(qAbs(fill["temperature_c"].get<double>() - 10) < 1e-9);
        QVERIFY(qAbs(fill["displayed_l_per_100km"].get<double>() - 4) < 1e-9);
        QCOMPARE(run("import " + table + how + "dmy --json").json()["added"].get<int>(), 1);   // another day
        for (const char* bad : {"31.02.2026", "2026.01.02", "1.2.26", "13/13/2026", "1.2.2026x", "..", "1.2.2026 25:00"}) {
            const QString file = run.file("b.csv", QByteArray("date,litres\n") + bad + ",40\n");
            const CliAnswer answer = run("import " + file + " --dates dmy");
            QCOMPARE(answer.exitCode, 2);
            QVERIFY2(answer.err.contains("day, month, year"), answer.err.constData());
        }
    }

    // Two errands of the same length on one day are two trips, however often imported.
    void alikeTripsOfOneDayAreBothKeptAndNotDoubled()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QString table = run.file("t.csv", "date,km,mode\n2026-01-02,12,town\n2026-01-02,12,town\n");
        QCOMPARE(run("import " + table + " --kind trips --json").json()["added"].get<int>(), 2);
        QCOMPARE(run("import " + table + " --kind trips --json").json()["added"].get<int>(), 0);
        const QString more = run.file("m.csv", "date,km,mode\n2026-01-02,12,town\n2026-01-02,12,town\n2026-01-02,12,town\n");
        QCOMPARE(run("import " + more + " --kind trips --json").json()["added"].get<int>(), 1);
    }

    void theHeaderSaysWhatATableHolds()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString trips = run.file("t.csv", "date,km,mode\n2026-10-02,12,town\n");
        QVERIFY(run("import " + trips).out.contains("Added 1 trip."));
        const QString fills = run.file("f.csv", "date,litres,odometer_km\n2026-10-03,36,104500\n2026-10-20,36,105000\n");
        QVERIFY(run("import " + fills).out.contains("Added 2 fills."));
        const QString theirs = run.file("o.csv", "Day,Way,mode\n2026-10-04,12,town\n");
        QVERIFY(run("import " + theirs + " --column date=Day --column km=Way").out.contains("Added 1 trip."));
        const CliAnswer points = run("import " + run.file("p.csv", "total_l,signal\n0,3\n5,2.8\n"));
        QVERIFY(points.exitCode == 2 && points.err.contains("calibrate"));
        QCOMPARE(run("export --csv " + beside(run, "all")).exitCode, 0);
        const CliAnswer proofs = run("import " + beside(run, "all/proofs.csv"));
        QVERIFY(proofs.exitCode == 2 && proofs.err.contains("merge"));
        const CliAnswer neither = run("import " + run.file("n.csv", "date,speed\n2026-10-04,12\n"));
        QVERIFY(neither.exitCode == 2 && neither.err.contains("litres"));
    }

    void whatIsThereAlreadyIsLeftOut()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QString table = run.file("f.csv", "date,litres,odometer_km\n2026-01-02,40,1000\n2026-01-09,41,1500\n"
                                                "2026-01-09,41,1500\n");
        const json first = run("import " + table + " --json").json();
        QCOMPARE(first["added"].get<int>(), 2);
        QCOMPARE(first["duplicates"].get<int>(), 1);
        QVERIFY(QFileInfo::exists(QString::fromStdString(first["backup"].get<std::string>())));
        QCOMPARE(run("import " + table + " --json").json()["added"].get<int>(), 0);
        QCOMPARE(fills(run), std::size_t(2));
    }

    void aBadRowAnywhereMeansThatNothingIsWritten_data()
    {
        QTest::addColumn<QByteArray>("table");
        QTest::addColumn<QByteArray>("says");
        QTest::newRow("text") << QByteArray("date,litres\n2026-01-02,40\n2026-01-03,many\n") << QByteArray(":3");
        QTest::newRow("date") << QByteArray("date,litres\n2026-01-02,40\n03.01.2026,40\n") << QByteArray("YYYY-MM-DD");
        QTest::newRow("comma") << QByteArray("date,litres\n2026-01-02,\"40,5\"\n") << QByteArray("comma");
        QTest::newRow("column") << QByteArray("date,volume\n2026-01-02,40\n") << QByteArray("litres");
        QTest::newRow("empty") << QByteArray("date,litres\n") << QByteArray("no row");
        QTest::newRow("full") << QByteArray("date,litres,full\n2026-01-02,40,yes\n") << QByteArray("1 or 0");
    }

    void aBadRowAnywhereMeansThatNothingIsWritten()
    {
        QFETCH(QByteArray, table);
        QFETCH(QByteArray, says);
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const CliAnswer answer = run("import " + run.file("bad.csv", table));
        QCOMPARE(answer.exitCode, 2);
        QCOMPARE(answer.errorLines(), 1);
        QVERIFY2(answer.err.contains(says), answer.err.constData());
        QCOMPARE(fills(run), std::size_t(0));
        QCOMPARE(run("import " + run.file("bad.csv", table) + " --column nonsense=date").exitCode, 2);
    }

    void aTripOfAnUnknownModeIsRefusedWhole()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QString table = run.file("t.csv", "date,km,mode\n2026-01-02,40,town\n2026-01-03,10,submarine\n");
        const CliAnswer answer = run("import " + table + " --kind trips");
        QCOMPARE(answer.exitCode, 2);
        QVERIFY(answer.err.contains("submarine"));
        QVERIFY(run("log --json").json()["trips"].empty());
    }

    void aBundleMergesOnAnotherDevice()
    {
        const CliRunner phone;
        QVERIFY(phone.prepareCar());
        const QString bundle = beside(phone, "bundle");
        QCOMPARE(phone("export --bundle " + bundle).exitCode, 0);
        QVERIFY(onlyForItsOwner(bundle));
        const CliRunner car;
        const json first = car("merge " + bundle + " --json").json();
        QVERIFY(first["added"].get<int>() > 0);
        QCOMPARE(car("merge " + bundle + " --json").json()["added"].get<int>(), 0);
        // With the odometer and a day: the season, and kilometres that nobody logged, grow with every
        // second between the two.
        const QString asked = "range --odometer-km 104100 --date 2026-10-01 --json";
        QCOMPARE(car(asked).out, phone(asked).out);
        QCOMPARE(car("merge " + phone.file("x.txt", "no logbook")).exitCode, 1);
    }

    void aBackupComesBackAndWhatWasThereIsKept()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json made = run("backup --keep 2 --json").json();
        const QString backup = QString::fromStdString(made["backup"].get<std::string>());
        QVERIFY(onlyForItsOwner(backup));
        QCOMPARE(run("fill add --litres 30 --odometer-km 104500 --full").exitCode, 0);
        QCOMPARE(fills(run), std::size_t(10));
        const json back = run("restore " + backup + " --json").json();
        QCOMPARE(fills(run), std::size_t(9));
        QVERIFY(QFileInfo::exists(QString::fromStdString(back["kept"].get<std::string>())));
        QCOMPARE(run("restore " + QString::fromStdString(back["kept"].get<std::string>())).exitCode, 0);
        QCOMPARE(fills(run), std::size_t(10));
    }
};

UNDERMARK_TEST(TransferTest)
#include "transfer_test.moc"
