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
    // By hand: 1,000 m up less .012 x 55,584 m = 667 m given back = 333 m; 1,500 kg x 9.80665 x 333 m
    // at 25 % of 32 MJ/L = .61 L, known to 21 % (mass 13 %, efficiency 16 %).
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
        QVERIFY(std::fabs(told["sd"].get<double>() / told["mean"].get<double>() - std::hypot(200.0 / 1500, .04 / .25)) < 1e-9);
        QVERIFY(!without.json()["points"].back().contains("climb_l"));
        QVERIFY(run("plan " + track + " --start-l 40 --date 2026-11-20").out.contains("the climb takes 0.6 L, give or take 0.1 L"));
        const CliAnswer heavy = run("plan " + track + " --start-l 40 --date 2026-11-20 --mass-kg 3000 --mass-sd-kg 0 --json");
        QVERIFY(std::fabs(finish(without) - finish(heavy) - 2 * climb) < 1e-9);
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
