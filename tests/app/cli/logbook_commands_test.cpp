// SPDX-License-Identifier: GPL-3.0-or-later
//
// Vehicle, entries, range and reserve as a user meets them; what is refused and
// what is stored and flagged.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QFileInfo>
#include <QTest>

using namespace undermark::test;
using nlohmann::json;

class LogbookCommandsTest : public QObject {
    Q_OBJECT

    static std::string text(const json& value) { return value.get<std::string>(); }

    static void verifyOrdered(const json& d)
    {
        QVERIFY(d["p99"] <= d["p90"] && d["p90"] <= d["p50"] && d["p50"] <= d["p10"]);
    }

    static bool hasFlag(const CliRunner& run, const char* cause)
    {
        const json log = run("log --json").json();
        for (const json& fill : log["fills"])
            for (const json& flag : fill["flags"])
                if (flag["cause"] == cause)
                    return true;
        return false;
    }

private slots:
    void aNewVehicleIsListedAndShownWithItsModes()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel diesel").exitCode, 0);
        QCOMPARE(run("vehicle set --left-behind-l 1.2 --left-behind-sd-l 0.3 --surge-margin-l "
                     "special-stage=2 --lamp-l 7").exitCode, 0);
        QCOMPARE(run("mode add gravel --rate 12").exitCode, 0);
        const json car = run("vehicle show --json").json();
        QCOMPARE(car["capacity_l"].get<double>(), 50.0);
        QCOMPARE(car["left_behind_l"]["sd"].get<double>(), 0.3);
        QCOMPARE(car["surge_margin_l"]["special-stage"].get<double>(), 2.0);
        QCOMPARE(car["modes"].size(), std::size_t(5));
        QCOMPARE(run("vehicle list --json").json()["vehicles"].size(), std::size_t(1));
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel diesel").exitCode, 2);
    }

    // 4.96 V of 5 behind a pull-up is an open wire, which only the circuit tells.
    void aSavedCalibrationKnowsTheVehiclesCircuitAndKeepsTheOneOnTheCommandLine()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString open = run.file("open.csv", "total_l,signal\n0,4.99\n10,2.50\n40,1.20\n");
        QVERIFY(!run("calibrate " + open + " --json").out.contains("open-circuit"));
        QVERIFY(run("calibrate " + open + " --vehicle Wren --json").out.contains("open-circuit"));
        QCOMPARE(run("calibrate " + run.file("ohm.csv", "total_l,signal\n0,180\n5,160\n30,80\n50,10\n")
                     + " --save --signal-unit ohm --signal-step 1").exitCode, 0);
        QCOMPARE(text(run("vehicle show --json").json()["signal_unit"]), std::string("ohm"));
    }

    void everyEntryIsInTheLogWithItsFlags()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("trip add --km 31.5 --mode town --idle-min 6 --starts 2 --date 2026-10-01").exitCode, 0);
        QCOMPARE(run("proof add drained --left-behind-l 1.3").exitCode, 0);
        QCOMPARE(run("proof add base --litres 5.1").exitCode, 0);
        QCOMPARE(run("proof add past-zero --km 25 --mode open-road").exitCode, 0);
        const json log = run("log --json").json();
        QCOMPARE(log["fills"].size(), std::size_t(9));
        QCOMPARE(log["trips"][0]["idle_min"].get<double>(), 6.0);
        QCOMPARE(log["proofs"].size(), std::size_t(3));
        for (const char* list : {"fills", "trips", "proofs"})
            for (const json& entry : log[list])
                QVERIFY(entry["flags"].is_array() && entry["flags"].empty());
        QVERIFY(run("rates --json").json()["usual"]["rate_l_per_100km"]["mean"] > 6.5);
    }

    // v = 20, sd 1.2, c = .075, sd .004: Phi((c d - v)/sqrt(sv^2 + d^2 sc^2)), calculated
    // apart from the project (scipy).
    void rangeWithoutALogbookMeetsThePublishedValues()
    {
        const CliRunner run;
        const json range = run("range --litres 20 --litres-sd 1.2 --rate 7.5 --rate-sd 0.4 --json").json();
        const auto at = [&](const char* p) { return range["to_dry_km"][p].get<double>(); };
        QVERIFY(qAbs(at("p99") - 220.474423) < 5e-7);
        QVERIFY(qAbs(at("p90") - 240.390976) < 5e-7);
        QVERIFY(qAbs(at("p50") - 800.0 / 3) < 1e-6);
        QVERIFY(qAbs(at("p10") - 295.445594) < 5e-7);
        const json zero = run("range --litres 26 --litres-sd 1.2 --rate 7.5 --rate-sd 0.4 --zero-at-l 6 "
                              "--json").json();
        QVERIFY(qAbs(zero["to_zero_km"]["p99"].get<double>() - 220.474423) < 5e-7);
        QVERIFY(!QFileInfo::exists(run.logbook()));   // and nothing is written
    }

    void rangeAnswersFromLogOdometerSignalAndMode()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json full = run("range --date 2026-09-10 --json").json(); // of the last fill
        const json later = run("range --odometer-km 104200 --json").json();
        const json signal = run("range --signal 1.88 --mode motorway --json").json();
        for (const json& answer : {full, later, signal}) {
            verifyOrdered(answer["to_zero_km"]);
            verifyOrdered(answer["to_dry_km"]);
            QVERIFY(answer["to_zero_km"]["p50"] < answer["to_dry_km"]["p50"]);
        }
        QVERIFY(later["to_dry_km"]["p99"] < full["to_dry_km"]["p99"]);
        // The knot is 25 L since drained; the reading may be a little high, never more.
        const double usable = signal["usable_l"]["mean"].get<double>();
        QVERIFY(usable <= 25.0 && usable > 23.5);
        QCOMPARE(text(signal["mode"]), std::string("motorway"));
    }

    // As a reading with the log's rate, but for the rate; so the even distances go as the rates.
    void aReadingAndAStatedRateAnswerTogether()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json stated = run("range --signal 1.88 --rate 10 --json").json();
        const json learnt = run("range --signal 1.88 --json").json();
        QVERIFY(stated["usable_l"]["mean"] == learnt["usable_l"]["mean"]);
        QVERIFY(stated["reserve_l"] == learnt["reserve_l"]);
        QCOMPARE(stated["rate_l_per_100km"]["mean"].get<double>(), 10.0);
        const double even = stated["to_dry_km"]["p50"].get<double>();
        QVERIFY(std::abs(even - stated["usable_l"]["mean"].get<double>() * 10) < 0.5);
        const json doubtful = run("range --signal 1.88 --rate 10 --rate-sd 1 --json").json();
        QVERIFY(doubtful["to_dry_km"]["p99"] < stated["to_dry_km"]["p99"]);
        const json byRoad = run("range --odometer-km 104100 --rate 10 --json").json();
        QVERIFY(byRoad["usable_l"]["mean"] < run("range --odometer-km 104100 --json").json()["usable_l"]["mean"]);
        QCOMPARE(run("range --signal 1.88 --rate 10 --zero-at-l 3").exitCode, 2);
    }

    // How much of it is likely stands in the engine's unlogged_test.
    void aLogThatStoppedDaysAgoIsTakenOnUntilTheOdometerTells()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const CliAnswer onTheDay = run("range --json --date 2026-09-10");
        const CliAnswer later = run("range --json --date 2026-10-25");
        QCOMPARE(onTheDay.err, QByteArray());
        QCOMPARE(onTheDay.json()["unlogged_days"].get<int>(), 0);
        QVERIFY(onTheDay.json()["unlogged_km"].is_null());
        QVERIFY(later.err.contains("45 days without a record") && later.err.contains("odometer"));
        QCOMPARE(later.json()["unlogged_days"].get<int>(), 45);
        QVERIFY(later.json()["unlogged_km"]["mean"].get<double>() > 400);
        QVERIFY(later.json()["to_dry_km"]["p99"] < onTheDay.json()["to_dry_km"]["p99"]);
        const QString route = run.file("way.csv", "at_km,mode,fuel\n0,town,none\n30,,none\n");
        QVERIFY(run("plan " + route + " --date 2026-10-25").err.contains("45 days without a record"));
        const CliAnswer told = run("range --json --date 2026-10-25 --odometer-km 104000");
        QCOMPARE(told.err, QByteArray());
        QVERIFY(told.json()["usable_l"]["mean"] == onTheDay.json()["usable_l"]["mean"]);
    }

    void aVehicleIsRenamedWithAllThatIsItsOwn()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("vehicle add --name Heron --capacity-l 60 --fuel diesel").exitCode, 0);
        const json before = run("log --vehicle Wren --json").json();
        for (const char* wrong : {"vehicle rename Wren Heron", "vehicle rename Robin Ibis"})
            QCOMPARE(run(wrong).exitCode, 2);
        QProcess nameless;
        nameless.start(UNDERMARK_CLI, {"--logbook", run.logbook(), "vehicle", "rename", "Wren", ""});
        QVERIFY(nameless.waitForFinished());
        QCOMPARE(nameless.exitCode(), 2);
        QCOMPARE(run("vehicle rename Wren Ibis").exitCode, 0);
        const json after = run("log --vehicle Ibis --json").json();
        QVERIFY(before["fills"].size() == 9 && after["fills"] == before["fills"]);
        QCOMPARE(run("log --vehicle Wren").exitCode, 2);
        const json cars = run("vehicle list --json").json()["vehicles"];
        QCOMPARE(text(cars[0]["name"]), std::string("Ibis"));
        QCOMPARE(text(cars[1]["name"]), std::string("Heron"));
    }

    void theReserveCitesOnlyWhatIsThere()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QByteArray bare = run("reserve").out;
        QVERIFY(bare.contains("Evidence: none yet") && !bare.contains("calibration"));
        QCOMPARE(run("vehicle set --zero-at-l 6").exitCode, 0);
        QVERIFY(run("reserve").out.contains("the zero mark as it was stated"));
        const CliRunner calibrated;
        QVERIFY(calibrated.prepareCar());
        QVERIFY(calibrated("reserve").out.contains("the calibration and what is usually left behind"));
        QCOMPARE(calibrated("vehicle set --left-behind-l 1.2").exitCode, 0);
        QVERIFY(calibrated("reserve").out.contains("the calibration and what was stated"));
    }

    void theReserveListsItsEvidence()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json before = run("reserve --json").json();
        QCOMPARE(run("proof add drained --left-behind-l 1.3 --left-behind-sd-l 0.2").exitCode, 0);
        const json after = run("reserve --json").json();
        QCOMPARE(after["evidence"].size(), before["evidence"].size() + 1);
        // The engine starves about where the pump spits: what is left behind alone moves both,
        // and says nothing of the reserve; with the unusable litres stated apart it does.
        QVERIFY(std::abs(after["reserve_l"]["sd"].get<double>()
                         - before["reserve_l"]["sd"].get<double>()) < 1e-9);
        verifyOrdered(after["past_zero_km"]);

        const CliRunner stated;
        QVERIFY(stated.prepareCar());
        QCOMPARE(stated("vehicle set --unusable-l 1.3 --unusable-sd-l 0.3").exitCode, 0);
        const json apart = stated("reserve --json").json();
        QCOMPARE(stated("proof add drained --left-behind-l 1.3 --left-behind-sd-l 0.2").exitCode, 0);
        QVERIFY(stated("reserve --json").json()["reserve_l"]["sd"] < apart["reserve_l"]["sd"]);
    }

    void aReadingPastTheFloatsStopIsOneSided()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const CliAnswer low = run("range --signal 3.2 --json");
        QCOMPARE(low.exitCode, 0);
        QCOMPARE(text(low.json()["level_bound"]), std::string("at-most"));
        QVERIFY(low.err.contains("at most"));
        QCOMPARE(text(run("range --signal 0.5 --json").json()["level_bound"]), std::string("at-least"));
    }

    void aReadingTheCircuitCannotGiveFallsBackToTheLog()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        for (const char* signal : {"5.0", "0.0", "9.5"}) {
            const CliAnswer fault = run(QString("range --json --signal ") + signal);
            QCOMPARE(fault.exitCode, 0);
            QCOMPARE(text(fault.json()["level_source"]), std::string("log"));
            QVERIFY(fault.err.startsWith("warning: the sender"));
        }
    }

    void implausibleFillsAreStoredAndFlagged()
    {
        struct Case {
            const char* fill;
            const char* cause;
        };
        for (const auto& [fill, cause] :
             {Case{"--litres 36 --odometer-km 900", "odometer backward"},
              Case{"--litres 75 --odometer-km 104980", "more than fits"},
              Case{"--litres 37 --odometer-km 104250", "second can"}}) {
            const CliRunner run;
            QVERIFY(run.prepareCar());
            const CliAnswer stored = run(QString("fill add --full --date 2026-10-10 ") + fill);
            QCOMPARE(stored.exitCode, 0);
            QVERIFY2(stored.err.startsWith("warning: "), fill);
            QCOMPARE(run("log --json").json()["fills"].size(), std::size_t(10));
            QVERIFY2(hasFlag(run, cause), stored.err.constData());
        }
        const CliRunner reset;
        QVERIFY(reset.prepareCar());
        const CliAnswer swapped =
            reset("fill add --full --date 2026-10-10 --litres 36 --odometer-km 900 --odometer-reset");
        QCOMPARE(swapped.exitCode, 0);
        QVERIFY2(swapped.err.isEmpty(), swapped.err.constData());
        QVERIFY(!hasFlag(reset, "odometer backward"));
    }

    void badInputIsOneLineExitTwoAndNothingWritten_data()
    {
        QTest::addColumn<QString>("line");
        for (const char* line :
             {"fill add --litres abc --odometer-km 1 --full", "fill add --litres 36,5 --odometer-km 1 --full",
              "fill add --litres nan --odometer-km 1 --full", "fill add --litres inf --odometer-km 1 --full",
              "fill add --litres -3 --odometer-km 1 --full", "fill add --litres 0 --odometer-km 1 --full",
              "fill add --litres 30 --odometer-km 1", "fill add --litres 30 --full",
              "fill add --litres 30 --odometer-km 1 --full --partial",
              "fill add --litres 30 --odometer-km 1 --full --date 2026-02-30",
              "trip add --km 5 --mode moon", "trip add --km -5 --mode town", "proof add past-zero --km x",
              "proof add stalled --km 5 --mode moon", "proof add drained", "range --mode moon",
              "range --signal 1 --litres 2", "range --nonsense", "nonsense", "--vehicle Heron range",
              "vehicle set --surge-margin-l moon=2", "vehicle set --capacity-l -4", "plan missing",
              "range --odometer-km 5"})
            QTest::newRow(line) << QString(line);
    }

    void badInputIsOneLineExitTwoAndNothingWritten()
    {
        QFETCH(QString, line);
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QByteArray before = run("log --json").out + run("vehicle show --json").out;
        const CliAnswer refused = run(line);
        if (line != "plan missing")   // a file that is not there is no bad input
            QCOMPARE(refused.exitCode, 2);
        QVERIFY(refused.exitCode != 0);
        QVERIFY2(refused.errorLines() == 1, refused.err.constData());
        QVERIFY(refused.out.isEmpty());
        QCOMPARE(run("log --json").out + run("vehicle show --json").out, before);
    }

    void badCalibrationsNameLineAndColumn()
    {
        const CliRunner run;
        const auto refused = [&](const char* text, const char* words) {
            const CliAnswer answer = run("calibrate " + run.file("bad.csv", text));
            return answer.exitCode == 2 && answer.errorLines() == 1 && answer.err.contains(words);
        };
        QVERIFY(refused("total_l,signal\n0,1\n5,abc\n", "bad.csv:3: column 'signal'"));
        QVERIFY(refused("total_l,signal\n0,1\n-5,2\n", "bad.csv:3: column 'total_l'"));
        QVERIFY(refused("total_l,signal\n0,1\n\"5,0\",2\n", "comma"));
        QVERIFY(refused("total_l,signal\n0,nan\n5,2\n", "column 'signal'"));
        QVERIFY(refused("total_l\n0\n5\n", "column 'signal'"));
        QVERIFY(refused("total_l,signal\n0,1\n", "two or more rows"));
    }

    void noMovementWhilePouringIsAnAnswerWithAnErrorFinding()
    {
        const CliRunner run;
        const CliAnswer dead = run("calibrate --json " + run.file("dead.csv",
                                   "total_l,signal\n0,2.2\n5,2.2\n25,2.2\n50,2.2\n"));
        QCOMPARE(dead.exitCode, 0);
        QCOMPARE(text(dead.json()["findings"][0]["code"]), std::string("no-movement"));
        QCOMPARE(text(dead.json()["findings"][0]["severity"]), std::string("error"));
    }

    void aCalibrationCarriesEveryKnotAndAnswersALevel()
    {
        const CliRunner run;
        const QString points = run.file("p.csv", "total_l,signal\n0,3.02\n5,2.84\n25,1.88\n50,0.55\n");
        const json fit = run("calibrate --json --at 1.88 --table 5 --unit litres --decimals 2 " + points).json();
        QCOMPARE(text(fit["direction"]), std::string("falling"));
        for (const auto& [signal, litres] : {std::pair(3.02, 0.0), {2.84, 5.0}, {1.88, 25.0}, {0.55, 50.0}}) {
            bool found = false;
            for (const json& point : fit["curve"])
                found = found || (point["signal"] == signal && point["litres"] == litres);
            QVERIFY2(found, qPrintable(QString::number(signal)));
        }
        QVERIFY(qAbs(fit["at"]["litres"].get<double>() - 25) < 1e-9);
        QCOMPARE(fit["table"].size(), std::size_t(5));
    }

    void aCalibrationIsVerifiedByLevelsTriedAfterwards()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QString points = run.file("p.csv", "total_l,signal\n0,3.02\n5,2.84\n15,2.37\n25,1.88\n35,1.35\n45,0.8\n50,0.55\n");
        const QString sound = run.file("sound.csv", "poured_l,signal\n-5,0.81\n-10,1.36\n"); // out of the full tank
        const QString off = run.file("off.csv", "total_l,signal\n45,0.81\n30,1.36\n");
        const CliAnswer nothing = run("calibrate --verify " + sound);
        QCOMPARE(nothing.exitCode, 2);
        QVERIFY(nothing.err.contains("there is no calibration to verify"));
        QVERIFY(run("calibrate " + points + " --verify " + sound).out.contains("\nPassed at 99 %"));
        QCOMPARE(run("calibrate --save " + points).exitCode, 0);
        const json kept = run("calibrate --json --verify " + sound).json();
        QVERIFY(kept["verification"] == run("calibrate --json " + points + " --verify " + sound).json()["verification"]);
        QVERIFY(kept["verification"]["passed"].get<bool>());
        QCOMPARE(kept["verification"]["levels"][1]["measured_l"].get<double>(), 35.0);
        const CliAnswer bad = run("calibrate --verify " + off);
        QCOMPARE(bad.exitCode, 0);
        QVERIFY(bad.out.contains("DOES NOT AGREE") && bad.out.contains("NOT PASSED"));
        QCOMPARE(run("calibrate --verify " + run.file("none.csv", "total_l,signal\n")).exitCode, 2);
    }

    void aMissingLogbookIsSaidInOneLine()
    {
        const CliRunner run;
        const CliAnswer missing = run("range");
        QCOMPARE(missing.exitCode, 1);
        QCOMPARE(missing.errorLines(), 1);
        QVERIFY(!QFileInfo::exists(run.logbook()));
    }

    void theDemoMakesALogbookAndNeverWritesOverOne()
    {
        const CliRunner run;
        const CliAnswer demo = run("demo");
        QCOMPARE(demo.exitCode, 0);
        QVERIFY(demo.out.contains("to the zero mark") && demo.out.contains("Evidence:"));
        QCOMPARE(run("log --json").json()["fills"].size(), std::size_t(13));
        QCOMPARE(run("demo").exitCode, 2);
        // The demo's car can be planned for, too.
        const QString route = run.file("route.csv", "at_km,name,mode,fuel,price_per_l\n0,Start,town,none,\n"
                                                    "90,Mill,open-road,pump,1.8\n300,End,open-road,none,\n");
        QVERIFY(run("plan --json " + route).json()["feasible"].is_boolean());
    }
};

UNDERMARK_TEST(LogbookCommandsTest)
#include "logbook_commands_test.moc"
