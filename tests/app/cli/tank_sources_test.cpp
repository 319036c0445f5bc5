// SPDX-License-Identifier: GPL-3.0-or-later
//
// A car of two tanks that are both heard, through the real program: each has a recording of its
// own sender, kept with the car; the pump between them fails on the way.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark::test;
using nlohmann::json;

namespace {

const QByteArray kBesidePoints = "total_l,signal\n0,0.2\n10,1.2\n20,2.2\n30,3.2\n";

// The own sender of prepareCar(), between its points by straight lines.
double ownVolts(double litres)
{
    constexpr double kLitres[] = {0, 5, 15, 25, 35, 45, 50}, kVolts[] = {3.02, 2.84, 2.37, 1.88, 1.35, 0.80, 0.55};
    int i = 0;
    while (i < 5 && litres > kLitres[i + 1])
        ++i;
    return kVolts[i] + (kVolts[i + 1] - kVolts[i]) * (litres - kLitres[i]) / (kLitres[i + 1] - kLitres[i]);
}

// From 25 and 24 L at 90 km/h and 10 L/100 km, a reading a second; after half an hour 2 L/min come
// over for five minutes, and then the pump has failed. Both levels swing.
struct TwoRecordings {
    QByteArray own = "t_s,signal,speed_kmh,distance_km\n", beside = "t_s,signal\n", both = "t_s,signal,tank1_signal,speed_kmh\n";
    double ownL = 25.0, besideL = 24.0;

    explicit TwoRecordings(int seconds)
    {
        for (int t = 0; t < seconds; ++t) {
            ownL -= 0.1 * 90 / 3600;
            if (t >= 1800 && t < 2100) {
                ownL += 2.0 / 60;
                besideL -= 2.0 / 60;
            }
            const double swing = 0.6 * std::sin(t * 2.0) + 0.4 * std::sin(t * 0.9);
            const QByteArray time = QByteArray::number(t), read = QByteArray::number(ownVolts(ownL + swing), 'f', 4),
                             other = QByteArray::number(0.2 + (besideL - 0.7 * swing) / 10, 'f', 4);
            own += time + ',' + read + ",90," + QByteArray::number(t * 0.025, 'f', 3) + '\n';
            beside += time + ',' + other + '\n';
            both += time + ',' + read + ',' + other + ",90\n";
        }
    }
};

std::vector<json> jsonLines(const QByteArray& out)
{
    std::vector<json> lines;
    for (const QByteArray& line : out.split('\n'))
        if (!line.isEmpty())
            lines.push_back(json::parse(line.toStdString()));
    return lines;
}

} // namespace

class TankSourcesTest : public QObject {
    Q_OBJECT

    static bool prepare(const CliRunner& run)
    {
        return run.prepareCar() && run("vehicle tank add --name aux --capacity-l 30 --feed pumped-over").exitCode == 0
            && run("calibrate --tank aux --zero-at-l 4 --save " + run.file("aux.csv", kBesidePoints)).exitCode == 0
            && run("fill add --litres 30 --full --odometer-km 104400 --date 2026-09-20T10:00").exitCode == 0
            && run("fill add --litres 29 --full --tank aux --date 2026-09-20T10:05").exitCode == 0;
    }
    // All of one list, from all lines.
    static std::vector<json> all(const std::vector<json>& lines, const char* list)
    {
        std::vector<json> found;
        for (const json& line : lines)
            for (const json& each : line[list])
                found.push_back(each);
        return found;
    }
    static bool tellsThePump(const std::vector<json>& transfers, const std::vector<json>& faults)
    {
        if (transfers.size() != 1 || faults.size() != 1)
            return false;
        const json &over = transfers[0], &fault = faults[0];
        return over["tank"] == "aux" && std::abs(over["litres"].get<double>() - 10) < 1.0
            && fault["code"] == "transfer_stopped" && fault["tank"] == "aux"
            && std::abs(fault["left_l"].get<double>() - 14) < 1.5 && std::abs(fault["came_over_l"].get<double>() - 10) < 1.0
            && fault["text"].get<std::string>().starts_with("No more fuel comes over from aux: about ");
    }

private slots:
    void aPumpThatFailedIsSaidAndTheLevelsAreOfBothTanks()
    {
        const CliRunner run;
        QVERIFY(prepare(run));
        const TwoRecordings drive(6000);
        QCOMPARE(run("vehicle source add " + run.file("own.csv", drive.own)).exitCode, 0);
        const CliAnswer kept = run("vehicle source add " + run.file("beside.csv", drive.beside) + " --tank aux");
        QVERIFY2(kept.out.contains("of aux"), kept.out.constData());
        QCOMPARE(run("vehicle source list --json").json()["sources"][1]["tank"].get<std::string>(), std::string("aux"));

        const QString recorded = run.file("recorded.csv", "");
        const auto lines = jsonLines(run("watch --json --speed-up 1000000 --record " + recorded).out);
        QVERIFY(lines.size() > 5900);
        QVERIFY2(tellsThePump(all(lines, "transfers"), all(lines, "faults")),
                 qPrintable(QString::fromStdString(json(all(lines, "transfers")).dump() + json(all(lines, "faults")).dump())));
        QVERIFY(all(lines, "refuels").empty());
        // Said while there is still a lot in the own tank: 7 L and less after it stopped.
        const double burnt = (all(lines, "faults")[0]["at_s"].get<double>() - 2100) * 0.0025;
        QVERIFY2(burnt > 2 && burnt < 7, qPrintable(QString::number(burnt)));

        const json& last = lines.back();
        QVERIFY(std::abs(last["tank_levels_l"]["aux"]["mean"].get<double>() - drive.besideL) < 0.5);
        // What is asked of the same readings by hand is the same.
        const QString asked = QString("range --json --signal %1 --tank-signal aux=%2")
                                  .arg(ownVolts(drive.ownL)).arg(0.2 + drive.besideL / 10);
        QVERIFY2(std::abs(last["usable_l"]["mean"].get<double>() - run(asked).json()["usable_l"]["mean"].get<double>()) < 1.2,
                 last.dump().c_str());
        const CliAnswer text = run("watch --speed-up 1000000");
        QVERIFY(text.out.contains("No more fuel comes over from aux: about "));
        QVERIFY(text.out.contains("L came over from aux"));

        // What the car keeps at the end is of both tanks, and the log answers from it.
        QCOMPARE(run("watch --speed-up 1000000 --keep-trips").exitCode, 0);
        const json levels = run("level list --json").json()["levels"];
        QCOMPARE(levels.size(), std::size_t(2));
        QVERIFY2(levels[0]["tank"] != levels[1]["tank"], levels.dump().c_str());
        const json after = run("range --json").json();
        QVERIFY2(after["level_as_of"].is_string(), after.dump().c_str());
        QVERIFY2(std::abs(after["usable_l"]["mean"].get<double>() - last["usable_l"]["mean"].get<double>()) < 0.6,
                 after["usable_l"].dump().c_str());

        const json replayed = run("replay --json " + recorded).json();
        QVERIFY(tellsThePump(replayed["transfers"], replayed["faults"]));
        QVERIFY(run("replay " + recorded).out.contains("No more fuel comes over from aux"));
    }

    // The same of one source of both tanks, as a table or as sources of one call.
    void aSourceMayTellOfSeveralTanks()
    {
        const CliRunner run;
        QVERIFY(prepare(run));
        const TwoRecordings drive(6000);
        const auto table = jsonLines(run("watch --json --speed-up 1000000 --source " + run.file("both.csv", drive.both)).out);
        QVERIFY(tellsThePump(all(table, "transfers"), all(table, "faults")));
        const auto named = jsonLines(run("watch --json --speed-up 1000000 --source " + run.file("own.csv", drive.own)
                                         + " --tank-source aux=" + run.file("beside.csv", drive.beside)).out);
        QVERIFY(tellsThePump(all(named, "transfers"), all(named, "faults")));
        // Unheard, only what the log lets be there counts, and nothing is said of the pump.
        const auto alone = jsonLines(run("watch --json --speed-up 1000000 --source " + run.file("own.csv", drive.own)).out);
        QVERIFY(all(alone, "faults").empty());
        QVERIFY(!alone.back().contains("tank_levels_l"));
        QVERIFY(alone.back()["usable_l"]["mean"].get<double>() < table.back()["usable_l"]["mean"].get<double>() - 10);
    }

    void aTankThatCannotBeHeardIsRefused()
    {
        const CliRunner run;
        QVERIFY(prepare(run));
        const QString file = run.file("beside.csv", "t_s,signal\n0,1\n");
        for (const QString& wrong : {"vehicle source add " + file + " --tank nobody", "watch --tank-source " + file,
                                     "watch --tank-source nobody=" + file, "watch --tank-source aux=radio:" + file}) {
            const CliAnswer answer = run(wrong);
            QVERIFY2(answer.exitCode == 2 && answer.errorLines() == 1, qPrintable(wrong + answer.err));
        }
        for (const char* more : {"b", "c", "d", "e"})
            QCOMPARE(run(QString("vehicle tank add --capacity-l 10 --feed chosen --name ") + more).exitCode, 0);
        QCOMPARE(run("vehicle source add " + file + " --tank d").exitCode, 0);
        const CliAnswer fifth = run("vehicle source add " + file + "2 --tank e");
        QVERIFY2(fifth.exitCode == 2 && fifth.err.contains("4 further tanks"), fifth.err.constData());
        QCOMPARE(run("vehicle source list --json").json()["sources"].size(), std::size_t(1));
    }
};

UNDERMARK_TEST(TankSourcesTest)
#include "tank_sources_test.moc"
