// SPDX-License-Identifier: GPL-3.0-or-later
//
// Heights of a track through the real program.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark::test;

namespace {

// 111.2 km along a meridian, a pass of 1,000 m in the middle of it.
const char* const kPass =
    "<gpx version='1.1' creator='t' xmlns='http://www.topografix.com/GPX/1/1'><trk><trkseg>"
    "<trkpt lat='46.0' lon='9'><ele>400</ele></trkpt><trkpt lat='46.5' lon='9'><ele>1400</ele></trkpt>"
    "<trkpt lat='47.0' lon='9'><ele>400</ele></trkpt></trkseg></trk></gpx>";

double finish(const CliAnswer& answer) { return answer.json()["finish_l"]["mean"].get<double>(); }

} // namespace

class PlanHeightsTest : public QObject {
    Q_OBJECT
private slots:
    // By hand: 1,000 m up less .012 x 55,584 m = 667 m given back = 333 m; 1,500 kg (30 for each of 50 L) x
    // 9.80665 x 333 m at 25 % of 32 MJ/L = .61 L, known to 52 % (mass 50 %, efficiency 16 %).
    void aPassCostsItsLitres()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString track = run.file("pass.gpx", kPass);
        const CliAnswer with = run("plan " + track + " --start-l 40 --date 2026-11-20 --json");
        const CliAnswer without = run("plan " + track + " --start-l 40 --date 2026-11-20 --no-heights --json");
        QCOMPARE(with.exitCode, 0);
        const double climb = finish(without) - finish(with);
        const double byHand = 1500 * 9.80665 * (1000 - .012 * 55584) / (.25 * 32e6);
        QVERIFY2(std::fabs(climb - byHand) < .005, qPrintable(QString::number(climb)));
        const nlohmann::json told = with.json()["points"].back()["climb_l"];
        QVERIFY(std::fabs(told["mean"].get<double>() - climb) < 1e-9);
        QVERIFY(std::fabs(told["sd"].get<double>() / told["mean"].get<double>() - std::hypot(.5, .04 / .25)) < 1e-9);
        QVERIFY(!without.json()["points"].back().contains("climb_l"));
        QVERIFY(run("plan " + track + " --start-l 40 --date 2026-11-20").out.contains("the climb takes 0.6 L, give or take 0.3 L"));
        const CliAnswer heavy = run("plan " + track + " --start-l 40 --date 2026-11-20 --mass-kg 3000 --mass-sd-kg 0 --json");
        QVERIFY(std::fabs(finish(without) - finish(heavy) - 2 * climb) < 1e-9);
    }

    // A drive's track tells its km and its climb; what is usual of it is within the rates: a way as hilly costs
    // what it costs without heights, a lower pass less.
    void usualHillsAreCountedOnce()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString pass = run.file("pass.gpx", kPass), low = run.file("low.gpx", QByteArray(kPass).replace("1400", "1200"));
        const CliAnswer trip = run("trip add --track " + pass + " --mode open-road --date 2026-11-01 --json");
        QVERIFY2(trip.exitCode == 0, qPrintable(trip.err));
        QVERIFY(std::fabs(trip.json()["climb_m"].get<double>() - (1000 - .012 * 55584)) < 1);
        QVERIFY(std::fabs(trip.json()["km"].get<double>() - 111.16) < .02);
        const auto finishOf = [&](const QString& track, const char* flags) {
            return finish(run("plan " + track + " --start-l 40 --date 2026-11-20 --json " + flags));
        };
        QCOMPARE(run("fill add --litres 20 --full --odometer-km 100000 --date 2026-10-30").exitCode, 0);
        QCOMPARE(run("fill add --litres 9.3 --full --odometer-km 100111.2 --date 2026-11-02").exitCode, 0);
        const auto rates = run("rates --json").json();
        QVERIFY(std::fabs(rates["usual_climb_m_per_km"].get<double>() - (1000 - .012 * 55584) / 111.16) < .02);
        QVERIFY(std::fabs(finishOf(pass, "") - finishOf(pass, "--no-heights")) < .01);
        const double byHand = rates["climb_l_per_km"]["mean"].get<double>() * .2; // 200 m less than usual
        const double saved = finishOf(low, "") - finishOf(low, "--no-heights");
        QVERIFY2(std::fabs(saved - byHand) < .01 * byHand, qPrintable(QString("%1 %2").arg(saved).arg(byHand)));
    }

    // What was climbed since the tank was full is gone: by hand as above, 1,000 m take 1.84 L.
    void aClimbSinceTheFillIsBurnt()
    {
        const auto usable = [](const char* climb) {
            const CliRunner run;
            return run.prepareCar()
                           && run("fill add --litres 20 --full --odometer-km 100000 --date 2026-10-30").exitCode == 0
                           && run(QString("trip add --km 40 --mode open-road --date 2026-11-01 ") + climb).exitCode == 0
                       ? run("range --json --date 2026-11-02").json()["usable_l"]["mean"].get<double>()
                       : 0.0;
        };
        QVERIFY(std::fabs(usable("") - usable("--climb-m 1000") - 1500 * 9806.65 / (.25 * 32e6)) < .005);
    }

    void aTripsTrackIsRefusedInOneLine()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString table = run.file("route.csv", "at_km,name,fuel\n0,a,none\n10,b,none\n");
        for (const QString& wrong : {QString("trip add --mode town"), QString("trip add --mode town --heights ."),
                                     "trip add --mode town --track " + table, QString("trip add --mode town --km 3 --track nowhere.gpx"),
                                     QString("trip add --mode town --km 3 --climb-m high")}) {
            const CliAnswer answer = run(wrong);
            QVERIFY2(answer.exitCode != 0 && answer.errorLines() == 1 && answer.out.isEmpty(), qPrintable(wrong + answer.err));
        }
        QVERIFY(run("log --json").json()["trips"].empty());
    }

    // A table may say the climb itself; --no-heights leaves it out.
    void aTableTellsItsClimb()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString table = run.file("hill.csv", "at_km,mode,fuel,climb_m,climb_back_m\n0,open-road,none,1000,-200\n60,,none,,\n");
        const QString plan = "plan " + table + " --start-l 40 --date 2026-11-20 --json";
        const double climb = finish(run(plan + " --no-heights")) - finish(run(plan));
        QVERIFY(std::fabs(climb - 1500 * 9806.65 / (.25 * 32e6)) < .005);
        const QString wrong = run.file("wrong.csv", "at_km,mode,fuel,climb_m\n0,open-road,none,steep\n60,,none,\n");
        const CliAnswer refused = run("plan " + wrong + " --start-l 40");
        QVERIFY2(refused.exitCode == 2 && refused.errorLines() == 1 && refused.err.contains("wrong.csv:2: column 'climb_m'"), qPrintable(refused.err));
    }

    // The sheet's mass is what climbs; a flag of the plan comes before it.
    void theSheetsMassClimbs()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString plan = "plan " + run.file("pass.gpx", kPass) + " --start-l 40 --date 2026-11-20 --json";
        const auto climbOf = [&](const QString& flags) {
            return run(plan + flags).json()["points"].back()["climb_l"]["mean"].get<double>();
        };
        QCOMPARE(run("vehicle set --mass-kg 3000").exitCode, 0);
        const double heavy = climbOf("");
        QCOMPARE(run("vehicle set --mass-kg 1000").exitCode, 0);
        QCOMPARE(run("vehicle show --json").json()["mass_kg"].get<double>(), 1000.0);
        QVERIFY(std::fabs(heavy / climbOf("") - 3) < 1e-6);
        QVERIFY(std::fabs(climbOf(" --mass-kg 3000") / heavy - 1) < .01);
    }

    // A stated rate is that of the way as it is, unless a grid is named.
    void aStatedRateIsTakenAsItIs()
    {
        const CliRunner run;
        const QString track = run.file("pass.gpx", kPass), flags = " --capacity-l 50 --start-l 40 --date 2026-11-20 --rate 8 --json";
        const CliAnswer stated = run("plan " + track + flags);
        QVERIFY(!stated.json()["points"].back().contains("climb_l"));
        QVERIFY(std::fabs(finish(stated) - (40 - 1.1116 * 8)) < .02);
        const QString table = run.file("route.csv", "at_km,name\n0,a\n10,b\n");
        for (const QString& wrong : {"plan " + track + flags + " --heights /nowhere", "plan " + table + flags + " --heights .",
                                     "plan " + track + flags + " --heights . --no-heights",
                                     "plan " + track + flags + " --mass-kg 0", "plan " + track + flags + " --efficiency 100"}) {
            const CliAnswer answer = run(wrong);
            QVERIFY2(answer.exitCode != 0 && answer.errorLines() == 1 && answer.out.isEmpty(), qPrintable(wrong + answer.err));
        }
    }
};

UNDERMARK_TEST(PlanHeightsTest)
#include "plan_heights_test.moc"
