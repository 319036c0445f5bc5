// SPDX-License-Identifier: GPL-3.0-or-later
//
// `watch` and `vehicle source test`: one drive as a truck's frames, as an adapter sends them,
// and as a table; what a driver must be told, and what must not disturb.
#include "tests/support/cli_runner.h"
#include "tests/support/pseudo_terminal.h"
#include "tests/support/test_main.h"

#include <QElapsedTimer>
#include <QTest>
#include <QThread>
#include <cmath>
#include <set>
#include <random>
#include <sys/stat.h>

using namespace undermark::test;

namespace {

// A second of a drive, as a J1939 bus steps it: 0.4 % of level, 1/256 km/h, 5 m.
struct Second {
    int level, speed, distance;
};

// From 30 of 50 L at 90 km/h and 10 L/100 km, a halt of ten minutes in which `poured` litres
// go in, and on; the level swings as fuel does.
std::vector<Second> driveOf(int seconds, double poured = 0)
{
    std::vector<Second> drive;
    double litres = 30.0, km = 0.0;
    for (int t = 0; t < seconds; ++t) {
        const bool stands = poured > 0 && t >= 900 && t < 1500;
        if (t == 1200)
            litres += poured;
        const double kmh = stands ? 0.0 : 90.0;
        km += kmh / 3600;
        litres -= stands ? 0.8 / 3600 : 0.1 * kmh / 3600;
        const double swing = stands ? 0.0 : 1.2 * std::sin(t * 2.0) + 0.8 * std::sin(t * 0.9);
        drive.push_back({int(std::lround((litres + swing) * 2 / 0.4)), int(std::lround(kmh * 256)), int(std::lround(km / 0.005))});
    }
    return drive;
}

std::string hexLowFirst(unsigned value, int bytes)
{
    std::string hex;
    for (int i = 0; i < bytes; ++i)
        hex += QString("%1").arg(value >> (8 * i) & 0xFF, 2, 16, QChar('0')).toUpper().toStdString();
    return hex;
}

std::vector<std::pair<std::string, std::string>> framesOf(const Second& now)
{
    return {{"18FEFC31", "FF" + hexLowFirst(unsigned(now.level), 1) + "FFFFFFFFFFFF"},
            {"18FEF100", "FF" + hexLowFirst(unsigned(now.speed), 2) + "FFFFFFFFFF"},
            {"18FEC117", hexLowFirst(unsigned(now.distance), 4) + "FFFFFFFF"}};
}

QByteArray candumpOf(const std::vector<Second>& drive)
{
    std::string text;
    for (std::size_t t = 0; t < drive.size(); ++t)
        for (const auto& [id, data] : framesOf(drive[t]))
            text += "(" + std::to_string(1700000000 + t) + ".000000) can0 " + id + "#" + data + "\n";
    return QByteArray::fromStdString(text);
}

QByteArray tableOf(const std::vector<Second>& drive)
{
    QByteArray text = "t_s,signal,speed_kmh,distance_km\n";
    for (std::size_t t = 0; t < drive.size(); ++t)
        text += QByteArray::number(qulonglong(t)) + ',' + QByteArray::number(drive[t].level * 0.4, 'g', 12) + ','
            + QByteArray::number(drive[t].speed / 256.0, 'g', 12) + ',' + QByteArray::number(drive[t].distance * 0.005, 'g', 12) + '\n';
    return text;
}

const QByteArray kPoints = "total_l,signal\n0,0\n10,20\n20,40\n30,60\n40,80\n50,100\n";

std::vector<nlohmann::json> linesOf(const QByteArray& out)
{
    std::vector<nlohmann::json> lines;
    for (const QByteArray& line : out.split('\n'))
        if (!line.isEmpty())
            lines.push_back(nlohmann::json::parse(line.toStdString()));
    return lines;
}

} // namespace

class WatchTest : public QObject {
    Q_OBJECT
    CliRunner m_run;

    QString points() { return m_run.file("percent.csv", kPoints); }
    CliAnswer watched(const QString& source, const QString& more = "--speed-up 1000000")
    {
        return m_run("watch --json --calibration " + points() + " --source " + source + " " + more);
    }
    static std::size_t eventsIn(const std::vector<nlohmann::json>& lines, const char* list)
    {
        std::size_t count = 0;
        for (const auto& line : lines)
            count += line[list].size();
        return count;
    }

private slots:
    // The adapter's way goes over a real serial line at a hundred times the drive's pace, so
    // its times are those of arrival; the other two have the drive's own.
    void oneDriveEndsAtTheSameLitresWhicheverWayItCame()
    {
        const auto drive = driveOf(900);
        const auto frames = linesOf(watched("candump:" + m_run.file("drive.log", candumpOf(drive)) + ",j1939").out);
        const auto table = linesOf(watched(m_run.file("drive.csv", tableOf(drive))).out);
        QVERIFY(frames.size() > 800 && table.size() > 800);
        const double litres = frames.back()["level_l"]["mean"];
        // 22.5 km at 10 L/100 km from 30 L
        QVERIFY2(std::abs(litres - 27.75) < 0.6, qPrintable(QString::number(litres)));
        QVERIFY(std::abs(litres - table.back()["level_l"]["mean"].get<double>()) < 0.01);
        // The wheels' own count, within 1 %.
        QVERIFY(std::abs(frames.back()["distance_km"].get<double>() - 22.5) < 0.225);

        const PseudoTerminal line;
        if (line.name().empty())
            QSKIP("there are no pseudo-terminals here");
        QProcess cli;
        const QString live = m_run.file("live.jsonl", ""); // a pipe that nobody reads would hold it up
        cli.setStandardOutputFile(live);
        cli.start(UNDERMARK_CLI, {"watch", "--json", "--calibration", points(), "--source",
                                  QString::fromStdString("slcan:" + line.name() + ",j1939"), "--speed-up", "100"});
        QVERIFY(!line.read(5000).empty()); // it opens the adapter
        QElapsedTimer clock;
        clock.start();
        for (std::size_t t = 0; t < drive.size(); ++t) {
            while (clock.elapsed() < qint64(10 * t))
                QThread::usleep(500);
            for (const auto& [id, data] : framesOf(drive[t]))
                QVERIFY(line.write("T" + id + "8" + data + "\r"));
        }
        QThread::msleep(500); // what is on its way arrives
        cli.terminate();
        QVERIFY(cli.waitForFinished(5000));
        QCOMPARE(cli.exitCode(), 0);
        QFile written(live);
        QVERIFY(written.open(QIODevice::ReadOnly));
        const auto last = linesOf(written.readAll()).back();
        QCOMPARE(last["refused"].get<int>(), 0);
        QCOMPARE(last["frames"].get<std::size_t>(), 3 * drive.size());
        // Blocks of half a minute begin elsewhere, and a busy machine is some seconds late.
        QVERIFY2(std::abs(last["level_l"]["mean"].get<double>() - litres) < 0.15,
                 last["level_l"].dump().c_str());
        QVERIFY(std::abs(last["distance_km"].get<double>() - 22.5) < 0.225);
    }

    void aRefuelIsNoticedAndTheWaySinceCounts()
    {
        const auto lines = linesOf(watched("candump:" + m_run.file("fuel.log", candumpOf(driveOf(2700, 15)))).out);
        QCOMPARE(eventsIn(lines, "refuels"), std::size_t(1));
        QCOMPARE(eventsIn(lines, "faults"), std::size_t(0));
        for (const auto& line : lines)
            for (const auto& refuel : line["refuels"])
                QVERIFY(std::abs(refuel["litres"].get<double>() - 15) < 1.0);
        QVERIFY(std::abs(lines.back()["since_fill_km"].get<double>() - 1200 * 90 / 3600.0) < 1.0);
    }

    // A recorded drive of a real car: 48.5 to 52.0 % in 840 s without a fill.
    void aLevelThatCreepsUpIsNoRefuelAndNoFault()
    {
        auto drive = driveOf(840);
        for (std::size_t t = 0; t < drive.size(); ++t)
            drive[t].level = int(std::lround((48.5 + 3.5 * double(t) / 840) / 0.4));
        const auto lines = linesOf(watched(m_run.file("creep.csv", tableOf(drive))).out);
        QCOMPARE(eventsIn(lines, "refuels"), std::size_t(0));
        QCOMPARE(eventsIn(lines, "faults"), std::size_t(0));
    }

    void aFloatThatSticksIsTold()
    {
        auto drive = driveOf(5400);
        for (std::size_t t = 600; t < drive.size(); ++t)
            drive[t].level = drive[600].level;
        const auto lines = linesOf(watched(m_run.file("stuck.csv", tableOf(drive))).out);
        QCOMPARE(eventsIn(lines, "faults"), std::size_t(1));
        QCOMPARE(lines.back()["mode"].get<std::string>(), std::string("consumption_only"));
    }

    // Rubbish among the frames, another sender of speed, a minute of silence, a clock that
    // goes back an hour: said, each once, and no refuel and no fault of the sender.
    void whatDisturbsIsSaidOnceAndChangesNothing()
    {
        const auto drive = driveOf(900);
        QByteArray text;
        int t = 0;
        for (const QByteArray& line : candumpOf(drive).split('\n')) {
            const int second = t++ / 3;
            if (second > 300 && second < 420)
                continue;
            text += second < 600 ? line : QByteArray(line).replace("(1700000", "(1699996");
            text += '\n';
            if (t % 50 == 0)
                text += "(1700000000.0) can0 18FEF10B#FF0010FFFFFFFFFF\n\x01\xff garbage \x80\n";
        }
        const CliAnswer answer = watched("candump:" + m_run.file("disturbed.log", text) + ",j1939");
        QCOMPARE(answer.exitCode, 0);
        const auto lines = linesOf(answer.out);
        QCOMPARE(answer.err.count("not understood"), 1);
        QCOMPARE(answer.err.count("several senders"), 1);
        QCOMPARE(answer.errorLines(), 2);
        QCOMPARE(eventsIn(lines, "refuels"), std::size_t(0));
        QCOMPARE(eventsIn(lines, "faults"), std::size_t(0));
        QVERIFY(eventsIn(lines, "gaps") >= 1);
        QVERIFY(eventsIn(lines, "clock_jumps") >= 1);
        QVERIFY(std::abs(lines.back()["level_l"]["mean"].get<double>() - 27.75) < 0.8);
        QVERIFY(lines.back()["refused"].get<int>() > 10);
    }

    void theLawOfTheLogbooksCarIsAsked()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QByteArray text = "t_s,signal,speed_kmh\n"; // 25 L since drained
        for (int t = 0; t < 300; ++t)
            text += QByteArray::number(t) + ",1.88,0\n";
        const QString file = run.file("still.csv", text);
        const auto last = linesOf(run("watch --json --speed-up 1000000 --source " + file).out).back();
        const auto asked = run("range --json --signal 1.88").json();
        QVERIFY2(std::abs(last["usable_l"]["mean"].get<double>() - asked["usable_l"]["mean"].get<double>()) < 0.5,
                 last["usable_l"].dump().c_str());
        for (const char* where : {"to_zero_km", "to_dry_km"}) {
            QVERIFY(std::abs(last[where]["p50"].get<double>() / asked[where]["p50"].get<double>() - 1) < 0.05);
            QVERIFY(last[where]["p99"] <= last[where]["p90"] && last[where]["p90"] <= last[where]["p50"]
                    && last[where]["p50"] <= last[where]["p10"]);
        }
        const CliAnswer text1 = run("watch --speed-up 1000000 --source " + file);
        QCOMPARE(text1.exitCode, 0);
        QVERIFY(text1.out.contains("km to dry"));
        QCOMPARE(run("watch --mode moon --source " + file).exitCode, 2);
    }

    // UNDERMARK_KILLS=200 is the whole of it. What a killed program had told on its output is
    // held against the trips that the next start finds: km of 90 km/h.
    void killedAtAnyInstantNoTripIsTwiceAndAtMostTenSecondsAreLost()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString drive = run.file("drive.csv", tableOf(driveOf(1800)));
        const QString nothing = run.file("nothing.csv", "t_s,signal\n0,1.5\n");
        const auto kmOfTrips = [&] {
            double km = 0;
            const auto log = run("log --json").json();
            for (const auto& entry : log["trips"])
                km += entry["km"].get<double>();
            return km;
        };
        std::mt19937 random(17);
        double before = kmOfTrips();
        const int kills = qEnvironmentVariableIsSet("UNDERMARK_KILLS") ? qEnvironmentVariableIntValue("UNDERMARK_KILLS") : 6;
        for (int kill = 0; kill < kills; ++kill) {
            QProcess cli;
            const QString told = run.file("told.jsonl", "");
            cli.setStandardOutputFile(told);
            cli.start(UNDERMARK_CLI, {"--logbook", run.logbook(), "watch", "--json", "--keep-trips", "--source", drive, "--speed-up", "1500"});
            QVERIFY(cli.waitForStarted());
            QThread::msleep(random() % 1500);
            cli.kill();
            QVERIFY(cli.waitForFinished());
            double driven = 0;
            QFile written(told);
            QVERIFY(written.open(QIODevice::ReadOnly));
            for (const QByteArray& line : written.readAll().split('\n'))
                if (line.endsWith('}')) {
                    const auto km = nlohmann::json::parse(line.toStdString())["distance_km"];
                    driven = km.is_null() ? driven : km.get<double>();
                }
            const CliAnswer next = run("watch --keep-trips --speed-up 100 --source " + nothing);
            QVERIFY2(next.exitCode == 0, next.err.constData());
            const double after = kmOfTrips(), kept = after - before;
            // A second may have been driven and not been told; the first sample says from where.
            QVERIFY2(kept > driven - 10 * 0.025 - 0.06 && kept < driven + 0.06,
                     qPrintable(QString("driven %1, kept %2, kill %3").arg(driven).arg(kept).arg(kill)));
            before = after;
        }
        std::set<std::string> drives; // one level each, at most, whenever it was killed
        const auto levels = run("level list --json").json()["levels"];
        for (const auto& level : levels)
            drives.insert(level["journal_id"].get<std::string>());
        QVERIFY(!levels.empty());
        QCOMPARE(drives.size(), levels.size());
    }

    void whatIsRecordedReplaysToTheSameLitres()
    {
        const QString table = m_run.file("recorded.csv", tableOf(driveOf(600)));
        const QString kept = m_run.file("kept.csv", "");
        ::unlink(qPrintable(kept));
        const auto lines = linesOf(watched(table, "--speed-up 1000000 --record " + kept).out);
        struct stat status{};
        QCOMPARE(::stat(qPrintable(kept), &status), 0);
        QCOMPARE(status.st_mode & 07777U, 0600U);
        const auto replayed = m_run("replay " + kept + " --json --calibration " + points()).json();
        QVERIFY(std::abs(replayed["last_l"].get<double>() - lines.back()["level_l"]["mean"].get<double>()) < 1e-6);
        QCOMPARE(m_run("watch --calibration " + points() + " --source " + table + " --record /nonexistent/x.csv").exitCode, 1);
    }

    void itEndsWhenItIsToldTo()
    {
        const PseudoTerminal line;
        if (line.name().empty())
            QSKIP("there are no pseudo-terminals here");
        QElapsedTimer clock;
        clock.start();
        const CliAnswer answer = watched(QString::fromStdString("lines:" + line.name()), "--for 2");
        QCOMPARE(answer.exitCode, 0);
        QVERIFY(clock.elapsed() >= 1900 && clock.elapsed() < 10000);
        const auto lines = linesOf(answer.out);
        QVERIFY(!lines.empty() && lines.back()["level_l"].is_null());
        QCOMPARE(lines.back()["mode"].get<std::string>(), std::string("waiting"));
    }

    // As a session that ends asks it to, in the middle of a drive.
    void whatIsDrivenIsWrittenWhenItIsAskedToEnd()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const PseudoTerminal line;
        if (line.name().empty())
            QSKIP("there are no pseudo-terminals here");
        QProcess cli;
        cli.setStandardOutputFile(QProcess::nullDevice());
        cli.start(UNDERMARK_CLI, {"--logbook", run.logbook(), "watch", "--keep-trips", "--source",
                                  QString::fromStdString("slcan:" + line.name() + ",j1939"), "--speed-up", "100"});
        QVERIFY(!line.read(5000).empty());
        const auto drive = driveOf(300);
        QElapsedTimer clock;
        clock.start();
        for (std::size_t t = 0; t < drive.size(); ++t) {
            while (clock.elapsed() < qint64(10 * t))
                QThread::usleep(500);
            for (const auto& [id, data] : framesOf(drive[t]))
                QVERIFY(line.write("T" + id + "8" + data + "\r"));
        }
        cli.terminate();
        QVERIFY(cli.waitForFinished(5000));
        QCOMPARE(cli.exitCode(), 0);
        const auto log = run("log --json").json();
        double km = 0;
        for (const auto& trip : log["trips"])
            km += trip["km"].get<double>();
        QVERIFY2(std::abs(km - 7.5) < 0.6, qPrintable(QString::number(km))); // what was on its way may be lost
    }

    // A pipe that says nothing for a while does not hold up what is told each second.
    void aSilentPipeIsNoReasonToFallSilent()
    {
        QProcess cli;
        cli.start("bash", {"-c", "(echo 2.5; sleep 5) | " UNDERMARK_CLI " --logbook " + m_run.logbook()
                                     + " watch --json --for 3 --calibration " + points() + " --source lines:-"});
        QVERIFY(cli.waitForFinished(15000));
        const auto lines = linesOf(cli.readAllStandardOutput());
        QVERIFY2(lines.size() >= 3, qPrintable(QString::number(lines.size())));
        QVERIFY(lines.back()["age_s"]["signal"].get<double>() > 1.5);
    }

    void wrongUseIsOneLineAndExitTwo()
    {
        for (const QString& wrong : {QString("watch"), QString("watch --source usb:x"), QString("vehicle source test"),
                                     QString("watch --source lines:/dev/null --speed-up 0")}) {
            const CliAnswer answer = m_run(wrong);
            QCOMPARE(answer.exitCode, 2);
            QCOMPARE(answer.errorLines(), 1);
        }
        QCOMPARE(m_run("watch --source lines:/nonexistent --calibration " + points()).exitCode, 1);
    }

    // Added from its own folder, heard from any; what is kept is understood without its files.
    void aVehiclesSourcesAreKeptAndHeardWhereNoneIsNamed()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString dbc = run.file("car.dbc", "BO_ 496 Tank: 8 X\n SG_ Level : 7|8@0+ (0.4,0) [0|100] \"%\" X\n");
        const QString map = run.file("map.json", R"({"signal":{"dbc":"Tank.Level","factor":0.02,"offset":0.5}})");
        QByteArray frames;
        for (int t = 0; t < 100; ++t)
            frames += "(" + QByteArray::number(1000 + t) + ".0) can0 1F0#AA00000000000000\n"; // 170 · 0.4 % = 68 %
        const QString log = run.file("tank.log", frames);
        const auto added = run("vehicle source add --json candump:" + log + ",dbc=" + dbc + " --map " + map);
        QVERIFY2(added.exitCode == 0, added.err.constData());
        const QString speeds = run.file("speed.csv", "t_s,speed_kmh\n0,36\n1,36\n99,36\n");
        QCOMPARE(run("vehicle source add " + speeds).exitCode, 0);
        QVERIFY(QFile::remove(dbc) && QFile::remove(map));
        const auto kept = run("vehicle source list --json").json()["sources"];
        QCOMPARE(kept.size(), std::size_t(2));
        QCOMPARE(kept[0]["source"].get<std::string>(), ("candump:" + log + ",dbc=" + dbc).toStdString());
        QVERIFY(kept[0]["map"].get<std::string>().find("Tank.Level") != std::string::npos);
        QVERIFY(run("vehicle show").out.contains("speed.csv"));

        bool heard = false;
        for (const auto& line : linesOf(run("watch --json --speed-up 1000000").out))
            heard = heard || (line["signal"].is_number() && std::abs(line["signal"].get<double>() - (68 * 0.02 + 0.5)) < 1e-9);
        QVERIFY(heard);
        const auto tested = run("vehicle source test --json --for 2").json();
        QCOMPARE(tested["sources"].size(), std::size_t(2));
        QCOMPARE(tested["speed_kmh"].get<double>(), 36.0);
        // One that is named is heard alone.
        QCOMPARE(run("vehicle source test --json --for 2 --source " + speeds).json()["sources"].size(), std::size_t(1));

        const CliAnswer twice = run("vehicle source add " + speeds);
        QCOMPARE(twice.exitCode, 2);
        QCOMPARE(twice.errorLines(), 1);
        QCOMPARE(run("vehicle source remove " + speeds).exitCode, 0);
        QCOMPARE(run("vehicle source remove " + speeds).exitCode, 2);
        QCOMPARE(run("vehicle source remove " + QString::fromStdString(kept[0]["id"].get<std::string>()).left(8)).exitCode, 0);
        QVERIFY(run("vehicle source list").out.contains("No source yet"));
        QCOMPARE(run("watch").exitCode, 2);
    }

    void sourcesMayBeSetWithWhatElseIsKnownOfTheCar()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString map = run.file("map.json", R"({"signal":{"id":"0x1F0","bits":"8|8@1+"}})");
        QCOMPARE(run("vehicle set --lamp-l 7 --source can:can0 --source nmea:/dev/ttyS0@4800 --map " + map).exitCode, 0);
        QCOMPARE(run("vehicle set --source can:can0 --map " + map).exitCode, 0); // is kept already
        const auto kept = run("vehicle source list --json").json()["sources"];
        QCOMPARE(kept.size(), std::size_t(2));
        QCOMPARE(kept[0]["source"].get<std::string>(), std::string("can:can0"));
        QVERIFY(kept[0]["map"].is_string() && kept[1]["map"].is_null());
        QCOMPARE(run("vehicle show --json").json()["lamp_l"].get<double>(), 7.0);
        // What is refused leaves all as it was.
        for (const QString& wrong : {QString("--lamp-l 8 --source usb:x"), QString("--lamp-l 8 --source nmea:x --source candump:-"),
                                     "--lamp-l 8 --map " + map})
            QCOMPARE(run("vehicle set " + wrong).exitCode, 2);
        QCOMPARE(run("vehicle source list --json").json()["sources"].size(), std::size_t(2));
        QCOMPARE(run("vehicle show --json").json()["lamp_l"].get<double>(), 7.0);
    }

    void aSourceThatCannotBeUnderstoodIsNotKept()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString dbc = run.file("car.dbc", "BO_ 496 Tank: 8 X\n SG_ Level : 7|8@0+ (0.4,0) [0|100] \"%\" X\n");
        const QString map = run.file("map.json", R"({"signal":{"dbc":"Tank.Fuel"}})");
        for (const QString& wrong : {QString("usb:x"), QString("candump:-"), "can:can0,dbc=" + dbc,
                                     "can:can0,dbc=" + dbc + " --map " + map}) {
            const CliAnswer answer = run("vehicle source add " + wrong);
            QVERIFY2(answer.exitCode == 2, qPrintable(wrong));
            QCOMPARE(answer.errorLines(), 1);
        }
        QCOMPARE(run("vehicle source add can:can0,dbc=/nonexistent.dbc --map " + map).exitCode, 1);
        QVERIFY(run("vehicle source list --json").json()["sources"].empty());
        // A bus that this machine has not may be kept all the same: the car has it.
        QCOMPARE(run("vehicle source add can:can0,j1939").exitCode, 0);
        QCOMPARE(run("vehicle source list --json").json()["sources"][0]["source"].get<std::string>(), std::string("can:can0,j1939"));
    }

    void aSourceIsTested()
    {
        const QString log = m_run.file("test.log", candumpOf(driveOf(60)) + "rubbish\n");
        const CliAnswer answer = m_run("vehicle source test --json --for 2 --source candump:" + log + ",j1939");
        QCOMPARE(answer.exitCode, 0);
        const auto json = answer.json();
        QCOMPARE(json["sources"][0]["refused"].get<int>(), 0); // not reached in two seconds
        QVERIFY(json["signal"].get<double>() > 50 && json["speed_kmh"].get<double>() == 90.0);
        const CliAnswer text = m_run("vehicle source test --for 0.5 --source " + m_run.file("bad.csv", "volts\n2.5\n"));
        QVERIFY(text.out.contains("1 not understood, the first 'volts'"));
    }
};

UNDERMARK_TEST(WatchTest)
#include "watch_test.moc"
