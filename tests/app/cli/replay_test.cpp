// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/test_main.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <nlohmann/json.hpp>

class ReplayTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    QString file(const char* name, const QByteArray& text)
    {
        QFile out(m_folder.filePath(name));
        if (out.open(QIODevice::WriteOnly))
            out.write(text);
        return out.fileName();
    }

    QString points() { return file("points.csv", "total_l,signal\n0,0.5\n25,2.0\n50,3.5\n"); }

    // 30 min at 60 km/h from 20 L, a halt in which 25 L go in, 30 min more.
    QString fuelStop()
    {
        QByteArray text = "t_s,signal,speed_kmh\n";
        double litres = 20.0;
        for (int t = 0; t < 4200; ++t) {
            const bool stands = t >= 1800 && t < 2400;
            if (t == 2100)
                litres += 25.0;
            litres -= stands ? 0.8 / 3600 : 0.08 * 60 / 3600;
            const double swing = stands ? 0.0 : ((t * 7) % 11 - 5) * 0.2;
            text += QByteArray::number(t) + ',' + QByteArray::number(0.5 + 0.06 * (litres + swing), 'f', 3)
                + ',' + (stands ? "0" : "60") + '\n';
        }
        return file("samples.csv", text);
    }

    int run(const QStringList& arguments, QByteArray* out = nullptr, QByteArray* errors = nullptr)
    {
        QProcess cli;
        cli.start(UNDERMARK_CLI, arguments);
        cli.waitForFinished();
        if (out)
            *out = cli.readAllStandardOutput();
        if (errors)
            *errors = cli.readAllStandardError();
        return cli.exitCode();
    }

private slots:
    void aFuelStopIsReportedWithTimeAndLitres()
    {
        QByteArray out;
        QCOMPARE(run({"replay", fuelStop(), "--calibration", points(), "--json"}, &out), 0);
        const auto json = nlohmann::json::parse(out.toStdString());
        QCOMPARE(json["samples"].get<int>(), 4200);
        QCOMPARE(json["refuels"].size(), std::size_t(1));
        QVERIFY(std::abs(json["refuels"][0]["litres"].get<double>() - 25.0) < 1.5);
        QVERIFY(std::abs(json["refuels"][0]["at_s"].get<double>() - 2100.0) <= 60.0);
        QVERIFY(json["faults"].empty());
        QVERIFY(std::abs(json["first_l"].get<double>() - 20.0) < 1.0);
        QVERIFY(std::abs(json["last_l"].get<double>() - 40.1) < 2.0);
        QVERIFY(json["sd_l"].get<double>() > 0.0);
        QVERIFY(json.contains("nis_mean"));
    }

    void theLogbooksCarIsFollowedWithItsOwnCalibration()
    {
        const QStringList car{"--logbook", m_folder.filePath("car.undermark")};
        QByteArray errors, own, stated;
        QCOMPARE(run(car + QStringList{"replay", fuelStop()}, nullptr, &errors), 2); // no logbook
        QVERIFY2(errors.contains("--calibration") && errors.contains("a calibrated car"), errors);
        QCOMPARE(run(car + QStringList{"vehicle", "add", "--name", "Ibis", "--capacity-l", "50", "--fuel", "petrol"}), 0);
        QCOMPARE(run(car + QStringList{"replay", fuelStop()}, nullptr, &errors), 2);
        QVERIFY2(errors.contains("--calibration") && errors.contains("a calibrated car"), errors);
        QCOMPARE(run(car + QStringList{"--vehicle", "Nobody", "replay", fuelStop()}, nullptr, &errors), 2);
        QVERIFY2(errors.contains("Nobody"), errors);
        QCOMPARE(run(car + QStringList{"calibrate", points(), "--at", "0.8", "--save"}), 0);
        QCOMPARE(run(car + QStringList{"replay", fuelStop(), "--json"}, &own), 0);
        QCOMPARE(run({"replay", fuelStop(), "--calibration", points(), "--json"}, &stated), 0);
        const auto first = nlohmann::json::parse(own.toStdString());
        const auto second = nlohmann::json::parse(stated.toStdString());
        QCOMPARE(first["refuels"].size(), std::size_t(1));
        QCOMPARE(first["first_l"].get<double>(), second["first_l"].get<double>());
        QVERIFY(std::abs(first["last_l"].get<double>() - second["last_l"].get<double>()) < 1.0);
    }

    void trackAndPictureAreWritten()
    {
        const QString track = m_folder.filePath("track.csv"), plot = m_folder.filePath("plot.svg");
        QCOMPARE(run({"replay", fuelStop(), "--calibration", points(), "--out", track, "--plot", plot}), 0);
        QFile rows(track);
        QVERIFY(rows.open(QIODevice::ReadOnly));
        const QList<QByteArray> lines = rows.readAll().trimmed().split('\n');
        QCOMPARE(lines.first(), QByteArray("t_s,litres,sd_l,left_km"));
        QVERIFY(lines.size() > 130);
        double before = 1e9;
        int rises = 0;
        for (const QByteArray& line : lines.mid(1)) {
            const double litres = line.split(',')[1].toDouble();
            rises += litres > before;
            before = litres;
        }
        QCOMPARE(rises, 1);   // the fill, and nothing else
        QFile picture(plot);
        QVERIFY(picture.open(QIODevice::ReadOnly));
        const QByteArray svg = picture.readAll();
        QVERIFY(svg.startsWith("<svg") && svg.trimmed().endsWith("</svg>") && svg.contains("<polyline"));
    }

    void badInputIsNamedAndNothingIsWritten()
    {
        const QString samples = file("bad.csv", "t_s,signal\n0,1.0\n1,\"1,5\"\n");
        const QString track = m_folder.filePath("none.csv");
        QByteArray errors;
        QCOMPARE(run({"replay", samples, "--calibration", points(), "--out", track}, nullptr, &errors), 2);
        QVERIFY(errors.contains("bad.csv:3") && errors.contains("signal"));
        QVERIFY(!QFile::exists(track) && !QFile::exists(track + ".part"));
    }

    void aSaddleTankIsFollowedOverBothSignals()
    {
        const QString both = file("saddle.csv", "total_l,signal,signal2\n0,0,0\n20,4,0\n40,4,4\n60,8,8\n");
        QByteArray text = "t_s,signal,signal2,speed_kmh\n";
        for (int t = 0; t < 600; ++t)
            text += QByteArray::number(t) + ",4,4,60\n";
        QByteArray out;
        QCOMPARE(run({"replay", file("s.csv", text), "--calibration", both, "--json"}, &out), 0);
        QVERIFY(std::abs(nlohmann::json::parse(out.toStdString())["first_l"].get<double>() - 40.0) < 0.5);
    }
};

UNDERMARK_TEST(ReplayTest)
#include "replay_test.moc"
