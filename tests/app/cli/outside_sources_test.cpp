// SPDX-License-Identifier: GPL-3.0-or-later
//
// Sources whose other end is a program of somebody else: a control unit by python3-can behind
// a serial line (socat), a receiver by gpsfake and gpspipe. The kernel's own CAN socket:
// tests/can_guest.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QElapsedTimer>
#include <QStandardPaths>
#include <QTest>
#include <cmath>

using namespace undermark::test;

namespace {

bool hasAll(const QStringList& programs)
{
    return std::ranges::all_of(programs, [](const QString& name) { return !QStandardPaths::findExecutable(name).isEmpty(); });
}

bool hasPythonCan()
{
    return QProcess::execute("/usr/bin/python3", {"-c", "import can, serial"}) == 0;
}

void end(QProcess& process)
{
    process.terminate();
    if (!process.waitForFinished(3000))
        process.kill();
    process.waitForFinished(3000);
}

QByteArray sentence(const QByteArray& body)
{
    unsigned sum = 0;
    for (const char byte : body)
        sum ^= static_cast<unsigned char>(byte);
    return '$' + body + '*' + QByteArray::number(sum, 16).rightJustified(2, '0').toUpper() + "\r\n";
}

} // namespace

class OutsideSourcesTest : public QObject {
    Q_OBJECT
    CliRunner m_run;

private slots:
    // Bitmaps, "wait" before an answer, an answer longer than a frame with its flow control.
    void aControlUnitBehindAnAdapterIsAskedAndAnswers()
    {
        if (!hasAll({"socat"}) || !hasPythonCan())
            QSKIP("socat or python3-can is not installed");
        const QString ours = m_run.file("ours", ""), theirs = m_run.file("theirs", "");
        QVERIFY(QFile::remove(ours) && QFile::remove(theirs));
        QProcess line, unit;
        line.start("socat", {"pty,raw,echo=0,link=" + ours, "pty,raw,echo=0,link=" + theirs});
        QTRY_VERIFY(QFile::exists(ours) && QFile::exists(theirs));
        unit.start("/usr/bin/python3", {UNDERMARK_TEST_DATA "/../support/obd_unit.py", theirs});
        QVERIFY(unit.waitForReadyRead(10000));
        const CliAnswer answer = m_run("vehicle source test --json --for 6 --source slcan:" + ours + ",obd");
        end(unit);
        end(line);
        QCOMPARE(answer.exitCode, 0);
        const auto json = answer.json();
        QCOMPARE(json["speed_kmh"].get<double>(), 60.0);
        QVERIFY(std::abs(json["signal"].get<double>() - 128 * 100 / 255.0) < 1e-9);
        QVERIFY(json["distance_km"].is_number()); // the odometer's, or counted from it
        // The other end takes itself for the adapter's user, too: what it says before any frame
        // (C, S6, O, and C at its end) is no answer of an adapter, and is told as such.
        QVERIFY2(json["sources"][0]["refused"].get<int>() <= 4, json.dump().c_str());
        const QByteArray asked = unit.readAllStandardOutput();
        for (const char* what : {"asked 00", "asked 20", "asked A0", "asked 0D", "asked 2F", "flow control"})
            QVERIFY2(asked.contains(what), asked.constData());
        // At most five questions a second.
        QVERIFY2(asked.count("asked") <= 6 * 5 + 1, asked.constData());
    }

    // A drive north at 43.2 knots, replayed by gpsfake and passed on by gpspipe -r.
    void aReceiverBehindItsDaemonIsHeard()
    {
        if (!hasAll({"gpsfake", "gpspipe", "gpsd", "bash"}))
            QSKIP("gpsd-clients or gpsd is not installed");
        QByteArray drive;
        for (int t = 0; t < 60; ++t) {
            const QByteArray time = "1200" + QByteArray::number(t).rightJustified(2, '0') + ".000";
            const double minutes = t * 0.0120; // 22.24 m a second
            const QByteArray place = "48" + QByteArray::number(minutes, 'f', 4).rightJustified(7, '0') + ",N,01131.0000,E";
            drive += sentence("GPGGA," + time + ',' + place + ",1,08,0.9,545.4,M,46.9,M,,");
            drive += sentence("GPRMC," + time + ",A," + place + ",043.2,000.0,271126,,");
        }
        QProcess fake;
        fake.start("gpsfake", {"-q", "-c", "0.05", "-P", "29471", m_run.file("drive.nmea", drive)});
        QTest::qWait(1500);
        QProcess piped;
        piped.start("bash", {"-c", "timeout 8 gpspipe -r 127.0.0.1:29471 | " UNDERMARK_CLI
                                   " --logbook " + m_run.logbook() + " vehicle source test --json --for 4 --source nmea:-"});
        QVERIFY(piped.waitForFinished());
        end(fake);
        const auto json = nlohmann::json::parse(piped.readAllStandardOutput().toStdString());
        if (json["sources"][0]["frames"].get<int>() == 0)
            QSKIP("gpsd cannot be reached here");
        QVERIFY(std::abs(json["speed_kmh"].get<double>() - 43.2 * 1.852) < 0.01);
    }
};

UNDERMARK_TEST(OutsideSourcesTest)
#include "outside_sources_test.moc"
