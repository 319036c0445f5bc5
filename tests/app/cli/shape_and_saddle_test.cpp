// SPDX-License-Identifier: GPL-3.0-or-later
//
// Tanks that are no single poured curve, from calibration to range: a prior from
// the tank's shape, a saddle tank with two senders, two senders wired in series.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark::test;
using nlohmann::json;

namespace {

const QString kCylinder = "--shape cylinder --radius-m 0.2 --length-m 0.9 --empty-signal 0 "
                          "--full-signal 4";

// Pump's lobe (signal, 0.5 to 3.5 V) 30 L, the other (signal2) 20 L: the first fills,
// spills over, then both rise.
const char* kSaddlePoints = "total_l,signal,signal2\n0,0.5,0.5\n10,1.5,0.5\n20,2.5,0.5\n"
                            "30,2.5,2.0\n40,2.5,3.5\n50,3.5,3.5\n";

// Half an hour at 60 km/h from both lobes full; `transfers`: the second one empties.
QByteArray saddleDrive(bool transfers)
{
    QByteArray text = "t_s,signal,signal2,speed_kmh\n";
    double first = 30.0, second = 20.0;
    for (int t = 0; t < 7200; ++t) {
        (transfers && second > 0.1 ? second : first) -= 0.12 * 60 / 3600;
        const double swing = ((t * 7) % 11 - 5) * 0.01;
        text += QByteArray::number(t) + ',' + QByteArray::number(0.5 + 0.1 * first + swing, 'f', 3) + ','
            + QByteArray::number(0.5 + 0.15 * second, 'f', 3) + ",60\n";
    }
    return text;
}

double number(const json& value) { return value.get<double>(); }

} // namespace

class ShapeAndSaddleTest : public QObject {
    Q_OBJECT
private slots:
    void aShapeCalibratesAsAPrior()
    {
        const CliRunner run;
        const json out = run("calibrate " + kCylinder + " --at 1 --json").json();
        QVERIFY(out["prior"].get<bool>());
        // Cylinder D .4 L .9 m at h .1: 22.110655 L (the circle's segment, closed form).
        QVERIFY(std::abs(number(out["at"]["litres"]) - 22.110655) < 1e-6);
        QVERIFY(number(out["at"]["sd"]) > 3.0);
        QVERIFY(out["uncertainty_l"].is_null());
        QCOMPARE(out["findings"][0]["code"].get<std::string>(), std::string("prior"));
        QVERIFY(run("calibrate " + kCylinder).out.contains("prior"));
        const json poured = run("calibrate " + run.file("p.csv", "total_l,signal\n0,0\n50,1\n")
                                + " --json").json();
        QVERIFY(!poured["prior"].get<bool>());
    }

    void aPriorIsMarkedInRangeAndReplayToo()
    {
        const CliRunner run;
        const json range = run("range --rate 8 " + kCylinder + " --signal 2 --json").json();
        QVERIFY(range["prior"].get<bool>());
        // Half of 113.1 L, less the litres an engine cannot reach (1.5, usual).
        QVERIFY(std::abs(number(range["usable_l"]["mean"]) - 55.05) < 0.01);
        QVERIFY(run("range --rate 8 " + kCylinder + " --signal 2").out.contains("prior"));
        QVERIFY(!run("range --rate 8 --litres 20 --json").json()["prior"].get<bool>());
        const QString drive = run.file("drive.csv", "t_s,signal,speed_kmh\n0,2,0\n30,2,0\n60,2,0\n");
        const QString track = run.file("track.csv", ""), plot = run.file("plot.svg", "");
        const QString line = "replay " + drive + ' ' + kCylinder + " --out " + track + " --plot " + plot;
        const CliAnswer replay = run(line + " --json");
        QVERIFY(replay.json()["prior"].get<bool>());
        QVERIFY(std::abs(number(replay.json()["first_l"]) - 56.5) < 0.5);
        QVERIFY(run(line).out.contains("prior"));
        for (const QString& name : {track, plot}) {
            QFile file(name);
            QVERIFY(file.open(QIODevice::ReadOnly));
            QVERIFY2(file.readAll().contains("prior"), qPrintable(name));
        }
    }

    void aPriorServesACarWithFillsButNoCalibration()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json range = run("range " + kCylinder + " --signal 1 --json").json();
        QVERIFY(range["prior"].get<bool>());
        QVERIFY(number(range["rate_l_per_100km"]["mean"]) > 7.0);
    }

    void whatIsIncompleteOrContradictoryIsRefused_data()
    {
        QTest::addColumn<QString>("line");
        QTest::newRow("no length") << "calibrate --shape cylinder --radius-m 0.2 --empty-signal 0 --full-signal 4";
        QTest::newRow("no signals") << "calibrate --shape cylinder --radius-m 0.2 --length-m 1";
        QTest::newRow("corner too large") << "calibrate --shape box --width-m .4 --height-m .2 --length-m 1 "
                                             "--radius-m .2 --empty-signal 0 --full-signal 4";
        QTest::newRow("dimension without a shape") << "calibrate POINTS --width-m 0.4";
        QTest::newRow("points and a shape") << "calibrate POINTS " + kCylinder;
        QTest::newRow("nothing") << "calibrate";
        QTest::newRow("shape without a reading") << "range --rate 8 " + kCylinder;
        QTest::newRow("one lobe") << "calibrate POINTS --lobe1-l 30";
        QTest::newRow("one signal of two") << "calibrate SADDLE --at 1.5";
        QTest::newRow("a table of two signals") << "calibrate SADDLE --table 5";
        QTest::newRow("two signals of one") << "calibrate POINTS --at 1 --at2 1";
        QTest::newRow("a second signal alone") << "range --signal2 2";
    }

    void whatIsIncompleteOrContradictoryIsRefused()
    {
        QFETCH(QString, line);
        const CliRunner run;
        QVERIFY(!line.startsWith("range --signal2") || run.prepareCar());
        line.replace("POINTS", run.file("p.csv", "total_l,signal\n0,0\n10,1\n50,5\n"));
        line.replace("SADDLE", run.file("s.csv", kSaddlePoints));
        const CliAnswer answer = run(line);
        QCOMPARE(answer.exitCode, 2);
        QCOMPARE(answer.errorLines(), 1);
        QVERIFY(answer.out.isEmpty());
    }

    void aSaddleTankGoesFromCalibrationToRange()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString points = run.file("s.csv", kSaddlePoints);
        const json out = run("calibrate " + points + " --at 1.5 --at2 2.0 --save --zero-at-l 5 --json").json();
        QCOMPARE(out["lobes"].size(), std::size_t(2));
        QCOMPARE(out["curve"].size(), std::size_t(6));
        QCOMPARE(number(out["curve"][5]["litres"]), 50.0);
        QVERIFY(std::abs(number(out["at"]["litres"]) - 20.0) < 0.01);   // 10 and 10
        const json range = run("range --signal 1.5 --signal2 2.0 --json").json();
        QVERIFY(std::abs(number(range["above_zero_l"]["mean"]) - 15.0) < 0.1);
        QVERIFY(number(range["to_zero_km"]["p99"]) < number(range["to_zero_km"]["p50"]));
        // More in the second lobe: exactly that much more.
        const json more = run("range --signal 1.5 --signal2 3.5 --json").json();
        QVERIFY(std::abs(number(more["above_zero_l"]["mean"]) - 25.0) < 0.1);
        QCOMPARE(run("range --signal 1.5").exitCode, 2);
    }

    void aSaddleTankIsReplayedByBothSignals()
    {
        const CliRunner run;
        const QString points = run.file("s.csv", kSaddlePoints);
        const QString drive = run.file("d.csv", saddleDrive(true));
        const json out = run("replay " + drive + " --calibration " + points + " --rate 12 --json").json();
        QVERIFY(std::abs(number(out["last_l"]) - (50.0 - 14.4)) < 1.5);
        QVERIFY(out["faults"].empty());
        const QString kept = run.file("k.csv", saddleDrive(false));
        const json fault = run("replay " + kept + " --calibration " + points + " --rate 12 --json").json();
        QCOMPARE(fault["faults"].size(), std::size_t(1));
        QCOMPARE(fault["faults"][0]["code"].get<std::string>(), std::string("transfer"));
    }

    void aReadingsNoiseIsToldOrAssumed()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const auto sd = [&run](const QString& flags) {
            return number(run("range --signal 1.88 --json" + flags).json()["usable_l"]["sd"]);
        };
        QVERIFY(sd(" --moving") > sd("") + 0.1);
        QVERIFY(sd(" --signal-sd 0.3") > sd(" --moving"));
        QVERIFY(sd(" --signal-sd 0") < sd(""));
        QCOMPARE(run("range --litres 20 --moving").exitCode, 2);
        QCOMPARE(run("range --signal 1.88 --signal-sd 0.1 --moving").exitCode, 2);
    }

    void sendersInSeriesReadWithTheSpreadOfUnequalEmptying()
    {
        // Lobes of 35 and 15 L: |35 - 15| / 2 / sqrt 3 = 5.7735 L (see saddle.h).
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString points = run.file("p.csv", "total_l,signal\n0,0\n10,1\n25,2.5\n50,5\n");
        const QString lobes = " --lobe1-l 35 --lobe2-l 15";
        const json out = run("calibrate " + points + lobes + " --at 2.5 --json").json();
        QVERIFY(std::abs(number(out["unequal_emptying_sd_l"]) - 5.7735) < 1e-4);
        QVERIFY(number(out["at"]["sd"]) >= 5.7735);
        const json wide = run("range --signal 1.88" + lobes + " --json").json();
        const json narrow = run("range --signal 1.88 --json").json();
        QVERIFY(number(wide["usable_l"]["sd"]) > 5.7);
        QVERIFY(number(narrow["usable_l"]["sd"]) < 2.0);
        const QString drive = run.file("d.csv", "t_s,signal,speed_kmh\n0,2.5,0\n30,2.5,0\n60,2.5,0\n");
        const json replay = run("replay " + drive + " --calibration " + points + lobes + " --json").json();
        QVERIFY(number(replay["sd_l"]) > 5.7);
    }
};

UNDERMARK_TEST(ShapeAndSaddleTest)
#include "shape_and_saddle_test.moc"
