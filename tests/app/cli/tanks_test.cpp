// SPDX-License-Identifier: GPL-3.0-or-later
//
// A car of two tanks through the command line; second thoughts about a calibration.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QFileInfo>
#include <QDir>
#include <QRegularExpression>
#include <QTest>
#include <cmath>

using namespace undermark::test;
using nlohmann::json;

namespace {

const QByteArray kAuxPoints = "total_l,signal\n0,0.2\n4,0.6\n12,1.4\n20,2.2\n30,3.2\n";
constexpr const char* kAdd = "vehicle tank add --name aux --capacity-l 30 --feed chosen";

} // namespace

class TanksTest : public QObject {
    Q_OBJECT
    static double usable(const CliRunner& run, const QString& how)
    {
        return run("range --json " + how).json()["usable_l"]["mean"].get<double>();
    }
    // Wren with a calibrated aux tank, both filled at one halt.
    static bool prepareTwo(const CliRunner& run)
    {
        return run.prepareCar() && run(kAdd).exitCode == 0
            && run("calibrate --tank aux --zero-at-l 4 --save " + run.file("aux.csv", kAuxPoints)).exitCode == 0
            && run("fill add --litres 30 --full --odometer-km 104400 --date 2026-09-20T10:00").exitCode == 0
            && run("fill add --litres 29 --full --tank aux --date 2026-09-20T10:05").exitCode == 0;
    }

private slots:
    void aTankIsAddedChangedListedAndTakenBack()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json added = run(QString(kAdd) + " --left-behind-l 1 --json").json();
        QCOMPARE(added["feed"].get<std::string>(), std::string("chosen"));
        QCOMPARE(run(kAdd).exitCode, 2); // the name is taken
        QCOMPARE(run("vehicle tank add --name b --capacity-l 0 --feed chosen").exitCode, 2);
        QCOMPARE(run("vehicle tank add --name b --capacity-l 10 --feed leaking").exitCode, 2);
        QCOMPARE(run("vehicle tank set aux --feed pumped-over --transfer-l-per-min 4").exitCode, 0);
        const json listed = run("vehicle tank list --json").json()["tanks"][0];
        QCOMPARE(listed["feed"].get<std::string>(), std::string("pumped-over"));
        QCOMPARE(listed["transfer_l_per_min"].get<double>(), 4.0);
        QCOMPARE(listed["left_behind_l"]["mean"].get<double>(), 1.0);
        QVERIFY(run("vehicle show").out.contains("aux"));
        QCOMPARE(run("vehicle tank remove aux").exitCode, 0); // with what was changed of it
        QVERIFY(run("vehicle tank list --json").json()["tanks"].empty());
        QVERIFY(run("vehicle tank set aux --capacity-l 3").exitCode != 0);
    }

    void aTankThatEntriesNameStays()
    {
        const CliRunner run;
        QVERIFY(prepareTwo(run));
        QCOMPARE(run("vehicle tank remove aux").exitCode, 2);
        QCOMPARE(run("vehicle tank list --json").json()["tanks"].size(), std::size_t(1));
    }

    void whatIsAskedIsOfBothTanks()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString read = "--signal 1.88 --date 2026-09-20T12:00 ";
        const double one = usable(run, read), reserve = run("reserve --json").json()["reserve_l"]["mean"].get<double>();
        QCOMPARE(run(kAdd).exitCode, 0);
        QCOMPARE(usable(run, read), one); // nothing was ever put in
        QCOMPARE(run("calibrate --tank aux --zero-at-l 4 --save " + run.file("aux.csv", kAuxPoints)).exitCode, 0);
        QCOMPARE(run("fill add --litres 30 --full --odometer-km 104400 --date 2026-09-20T10:00").exitCode, 0);
        QCOMPARE(run("fill add --litres 29 --full --tank aux --date 2026-09-20T10:05").exitCode, 0);
        const json both = run("range --json " + read + "--tank-signal aux=1.4").json();
        QCOMPARE(both["tanks"].size(), std::size_t(2));
        const double aux = both["tanks"][1]["usable_l"]["mean"].get<double>();
        QVERIFY2(std::abs(aux - 12) < 1, qPrintable(QString::number(aux)));
        const double sd0 = both["tanks"][0]["usable_l"]["sd"].get<double>(), sd1 = both["tanks"][1]["usable_l"]["sd"].get<double>();
        QVERIFY(std::abs(both["usable_l"]["sd"].get<double>() - std::hypot(sd0, sd1)) < 1e-9);
        QVERIFY(run("reserve --json").json()["reserve_l"]["mean"].get<double>() > reserve + 3);
        QVERIFY(std::abs(run("reserve --json --tank aux").json()["reserve_l"]["mean"].get<double>() - 4) < 1);
        // The planner starts with the same litres, and so does whoever tells them.
        const QString route = run.file("r.csv", "at_km,name,mode,fuel\n0,A,open-road,none\n50,B,,none\n");
        const json plan = run("plan --json " + route + " --date 2026-09-20T12:00 --signal 1.88 --tank-signal aux=1.4").json();
        QVERIFY(plan["feasible"].get<bool>());
        QVERIFY(usable(run, read + "--tank-litres aux=5") < usable(run, read + "--tank-litres aux=15"));
        QVERIFY(std::abs(usable(run, "--odometer-km 104400 --date 2026-09-20T12:00") - 80) < 3);
    }

    void planAndRangeStartWithTheSameLitres()
    {
        for (const char* feed : {"shared", "chosen", "pumped-over"}) {
            const CliRunner run;
            QVERIFY(prepareTwo(run));
            QCOMPARE(run(QString("vehicle tank set aux --feed ") + feed).exitCode, 0);
            const QString route = run.file("r.csv", "at_km,name,mode,fuel\n0,A,open-road,none\n50,B,,none\n");
            for (const char* how : {"", "--odometer-km 104460 ", "--signal 1.88 ", "--signal 1.88 --tank-signal aux=1.4 "}) {
                const QString asked = QString(how) + "--date 2026-09-20T12:00";
                const json plan = run("plan --json " + route + " " + asked).json();
                const double start = plan["start_l"]["mean"].get<double>();
                QVERIFY2(std::abs(start - usable(run, asked)) < 1e-9, how);
            }
        }
    }

    // A second tank that is seldom filled keeps the fills of the own one from teaching.
    void whatWouldTeachIsSaid()
    {
        const CliRunner run;
        QVERIFY(prepareTwo(run));
        QVERIFY(run("check --json").json()["would_teach"].is_null());
        QCOMPARE(run("fill add --litres 40 --full --odometer-km 104800 --date 2026-09-24T10:00").exitCode, 0);
        QVERIFY(run("check --json").json()["would_teach"].is_null());
        QCOMPARE(run("fill add --litres 40 --full --odometer-km 105200 --date 2026-09-28T10:00").exitCode, 0);
        const CliAnswer check = run("check");
        QVERIFY2(check.out.contains("every tank is filled to the first click, aux too"), qPrintable(check.out));
        QVERIFY(run("range --date 2026-09-28T12:00").err.contains("aux too"));
        QCOMPARE(run("fill add --litres 30 --full --tank aux --date 2026-09-28T10:05").exitCode, 0);
        QVERIFY(run("check --json").json()["would_teach"].is_null());
    }

    // Of prices and costs, wherever they stand; where none is stated, none is named.
    void theCurrencyOfTheCarIsNamed()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString route = run.file("r.csv", "at_km,name,mode,fuel,price_per_l\n0,A,open-road,none,\n300,B,open-road,pump,1.5\n700,C,,none,\n");
        const QString plan = "plan " + route + " --signal 1.0 --date 2026-09-20 ";
        QVERIFY(!run(plan).out.contains("EUR"));
        QVERIFY(run(plan + "--json").json()["currency"].is_null());
        QCOMPARE(run("vehicle set --currency EUR").exitCode, 0);
        const QString out = run(plan).out;
        QVERIFY2(out.contains(QRegularExpression("cost [0-9.]+ EUR")) && out.contains("counts as 1.50 EUR"), qPrintable(out));
        QCOMPARE(run(plan + "--json").json()["currency"].get<std::string>(), std::string("EUR"));
        QCOMPARE(run("fill add --litres 20 --partial --odometer-km 104700 --price-per-l 1.612 --date 2026-09-21").exitCode, 0);
        QCOMPARE(run("fill add --litres 21 --partial --odometer-km 104900 --price-per-l 14.2 --currency SEK --date 2026-09-22").exitCode, 0);
        const QString log = run("log").out;
        QVERIFY2(log.contains("1.612 EUR") && log.contains("14.200 SEK"), qPrintable(log));
    }

    void whatIsToldWronglyIsRefused()
    {
        const CliRunner run;
        QVERIFY(prepareTwo(run));
        for (const char* line : {"range --tank-signal aux", "range --tank-signal =3", "range --tank-litres aux=-2",
                                 "range --litres 20 --tank-litres aux=2", "range --tank-litres roof=2",
                                 "fill add --litres 5 --partial --tank roof", "fill add --litres 5 --partial",
                                 "reserve --tank roof", "sheet x.pdf --tank roof",
                                 "photo add nothing.jpg --tank roof"}) {
            const CliAnswer answer = run(line);
            QVERIFY2(answer.exitCode != 0, line);
            QCOMPARE(answer.errorLines(), 1);
        }
    }

    // Its own zero mark, its own steps.
    void aSheetIsOfOneTank()
    {
        const CliRunner run;
        QVERIFY(prepareTwo(run));
        QCOMPARE(run("sheet " + QFileInfo(run.logbook()).dir().filePath("aux.pdf") + " --tank aux").exitCode, 0);
        QCOMPARE(run("calibrate --verify " + run.file("v.csv", "total_l,signal\n12,1.4\n") + " --tank aux --save").exitCode, 0);
    }

    void aLevelIsCorrectedWhereItStands()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const auto at = [&](const char* signal) {
            return run(QString("calibrate --kept --json --at ") + signal).json()["at"]["litres"].get<double>();
        };
        QVERIFY(std::abs(at("1.88") - 25) < 1);
        QCOMPARE(run("calibrate --step 4 --total-l 28").exitCode, 0); // only looked at
        QVERIFY(std::abs(at("1.88") - 25) < 1);
        QCOMPARE(run("calibrate --step 4 --total-l 28 --save").exitCode, 0);
        QVERIFY(std::abs(at("1.88") - 28) < 1);
        QCOMPARE(run("calibrate --step 4 --leave-out --save").exitCode, 0);
        QCOMPARE(run("calibrate --step 9 --total-l 28 --save").exitCode, 2);
        QCOMPARE(run("calibrate --step 2 --signal2 1 --save").exitCode, 2);
        QCOMPARE(run("calibrate --step 2").exitCode, 2);
        QCOMPARE(run("calibrate --total-l 28").exitCode, 2);
        QCOMPARE(run("calibrate --kept " + run.file("p.csv", "total_l,signal\n0,3\n5,2.8\n50,0.5\n")).exitCode, 2);
    }

    // Its levels beside the earlier ones; where both have one the later counts.
    void aLaterSessionIsLaidOverTheOldOne()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QTest::qWait(1100); // records are told apart to the second
        const QString later = run.file("later.csv", "total_l,signal\n25,1.92\n38,1.2\n");
        const CliAnswer answer = run("calibrate --over-kept --save --json " + later);
        QCOMPARE(answer.exitCode, 0);
        QVERIFY2(answer.err.contains("2 levels of this one"), qPrintable(answer.err));
        const json kept = run("calibrate --kept --json --at 1.92").json();
        QVERIFY(std::abs(kept["at"]["litres"].get<double>() - 25) < 0.5);
        QCOMPARE(run("calibrate --over-kept").exitCode, 2);
    }

    void whatCannotBeIsNotKept()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const CliAnswer answer = run("calibrate --save " + run.file("p.csv", "total_l,signal\n0,3\n5,2.8\n365,0.5\n"));
        QCOMPARE(answer.exitCode, 2);
        QVERIFY2(answer.err.contains("365") && answer.err.contains("vehicle set --capacity-l"), qPrintable(answer.err));
        QVERIFY(std::abs(run("calibrate --kept --json --at 1.88").json()["at"]["litres"].get<double>() - 25) < 1);
    }

    // The hint names the tank that the litres are of.
    void whatCannotBeInAFurtherTankPointsToThatTank()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run(kAdd).exitCode, 0);
        const CliAnswer answer =
            run("calibrate --tank aux --save " + run.file("p.csv", "total_l,signal\n0,0.2\n5,0.6\n50,3\n"));
        QCOMPARE(answer.exitCode, 2);
        QVERIFY2(answer.err.contains("vehicle tank set aux --capacity-l") && answer.err.contains("30"),
                 qPrintable(answer.err));
    }

    // A saddle tank stays one: whoever calibrates it again need not say so.
    void lobesAreKnownToALaterSession()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QByteArray points = "total_l,signal\n0,3\n5,2.8\n28,1.6\n55,0.5\n";
        QCOMPARE(run("calibrate --save --lobe1-l 35 --lobe2-l 20 " + run.file("p.csv", points)).exitCode, 0);
        const auto spread = [&](const QString& how) {
            const json answer = run("calibrate --json " + how).json();
            return answer.value("unequal_emptying_sd_l", 0.0);
        };
        const double said = 15.0 / 2 / std::sqrt(3.0); // between no difference and all of it
        QVERIFY(std::abs(spread("--kept") - said) < 0.01);
        QTest::qWait(1100); // records are told apart to the second
        QCOMPARE(run("calibrate --over-kept --save " + run.file("later.csv", "total_l,signal\n40,1.1\n")).exitCode, 0);
        QVERIFY(std::abs(spread("--kept") - said) < 0.01);
        QTest::qWait(1100);
        QCOMPARE(run("calibrate --save " + run.file("new.csv", points)).exitCode, 0);
        QVERIFY(std::abs(spread("--kept") - said) < 0.01);
        QVERIFY(std::abs(spread("--save --lobe1-l 30 --lobe2-l 25 " + run.file("new.csv", points)) - 5.0 / 2 / std::sqrt(3.0)) < 0.01);
    }

    // Read by it, its zero mark corrected, a level tried: the shape is not said again.
    void aShapeIsKnownToALaterSession()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 60 --fuel petrol").exitCode, 0);
        QCOMPARE(run("calibrate --save --shape cylinder --radius-m 0.15 --length-m 0.9 --empty-signal 0 --full-signal 4 --zero-at-l 6").exitCode, 0);
        const double half = 0.5 * M_PI * 0.15 * 0.15 * 0.9 * 1000;
        const auto atHalf = [&] { return run("calibrate --kept --json --at 2").json()["at"]["litres"].get<double>(); };
        QVERIFY(std::abs(atHalf() - half) < 0.5);
        QCOMPARE(run("calibrate --kept --zero-at-l 5 --save").exitCode, 0);
        QVERIFY(std::abs(atHalf() - half) < 0.5);
        QCOMPARE(run("calibrate --kept --json").json()["zero_at_l"].get<double>(), 5.0);
        QCOMPARE(run("calibrate --save --verify " + run.file("v.csv", "total_l,signal\n31.8,2\n")).exitCode, 0);
        QVERIFY(std::abs(atHalf() - half) < 0.5);
    }

    // Until something is poured; every answer from it says what it is.
    void aShapeIsKeptAndReadBy()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 60 --fuel petrol").exitCode, 0);
        QCOMPARE(run("calibrate --save --shape cylinder --radius-m 0.15 --length-m 0.9 --empty-signal 0 --full-signal 4 --zero-at-l 6").exitCode, 0);
        QCOMPARE(run("fill add --litres 40 --full --odometer-km 1000 --date 2026-05-01").exitCode, 0);
        const json range = run("range --json --signal 2 --date 2026-05-01").json();
        QVERIFY(range["prior"].get<bool>());
        // Half of pi r^2 l, less what no engine reaches (1.5 L of 50, as the size goes).
        const double half = 0.5 * M_PI * 0.15 * 0.15 * 0.9 * 1000;
        QVERIFY(std::abs(range["usable_l"]["mean"].get<double>() - (half - 1.7)) < 1.0);
        QVERIFY(run("range --signal 2 --date 2026-05-01").out.contains("prior"));
    }
};

UNDERMARK_TEST(TanksTest)
#include "tanks_test.moc"
