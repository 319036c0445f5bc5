// SPDX-License-Identifier: GPL-3.0-or-later
//
// Flagged fills: listed by log and check with cause and proposal, kept out until
// the user rules on them.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark::test;
using nlohmann::json;

class CheckTest : public QObject {
    Q_OBJECT

    static double usual(const CliRunner& run)
    {
        return run("rates --json").json()["usual"]["rate_l_per_100km"]["mean"].get<double>();
    }

    static json suspects(const CliRunner& run) { return run("check --json").json()["suspect_fills"]; }

    static QString id(const json& suspect)
    {
        return QString::fromStdString(suspect["id"].get<std::string>());
    }

    // Nine ordinary tanks, then one of which 37.5 L were typed as 9.9 gallons.
    static bool prepareGallons(const CliRunner& run)
    {
        return run.prepareCar()
            && run("fill add --litres 9.91 --odometer-km 104500 --full --date 2026-10-10").exitCode == 0;
    }

private slots:
    void aSoundLogHasNothingToList()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const CliAnswer answer = run("check --json");
        QCOMPARE(answer.exitCode, 0);
        QVERIFY(answer.json()["suspect_fills"].empty());
        QVERIFY(answer.json()["odometer_gaps"].empty());
        QVERIFY(run("check").out.contains("The kilometres join up"));
    }

    void checkAndLogListTheCauseAndTheProposal()
    {
        const CliRunner run;
        QVERIFY(prepareGallons(run));
        QVERIFY(run("check").out.contains("1 fill looks wrong"));
        const json found = suspects(run);
        QCOMPARE(found.size(), std::size_t(1));
        QCOMPARE(found[0]["cause"].get<std::string>(), std::string("gallons as litres"));
        QVERIFY(std::abs(found[0]["proposed"]["litres"].get<double>() - 9.91 * 3.785411784) < 1e-9);
        QVERIFY(found[0]["probability"].get<double>() < 0.002);
        const json fills = run("log --json").json()["fills"];
        QCOMPARE(fills.back()["flags"][0]["proposed"]["litres"].get<double>(),
                 found[0]["proposed"]["litres"].get<double>());
        QVERIFY(fills.back()["ruling"].is_null());
        const QByteArray text = run("check").out;
        QVERIFY(text.contains(id(found[0]).left(8).toUtf8()) && text.contains("fill rule"));
        QVERIFY(run("log").out.contains("gallons as litres"));
    }

    void aFlaggedFillTeachesNothingUntilTheUserRules()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const double before = usual(run);
        QCOMPARE(run("fill add --litres 9.91 --odometer-km 104500 --full --date 2026-10-10").exitCode, 0);
        QVERIFY(std::abs(usual(run) - before) < 1e-5);   // the season moves on
        const QString rule = "fill rule " + id(suspects(run)[0]).left(8) + ' ';
        QCOMPARE(run(rule + "accept").exitCode, 0);
        QVERIFY(usual(run) < before - 1e-3);
        QVERIFY(suspects(run).empty());
        QCOMPARE(run("log --json").json()["fills"].back()["ruling"].get<std::string>(), std::string("counts"));
        QCOMPARE(run(rule + "leave-out").exitCode, 0);
        QVERIFY(std::abs(usual(run) - before) < 1e-5);   // the season moves on
        QVERIFY(suspects(run).empty());
        QCOMPARE(run(rule + "reconsider").exitCode, 0);
        QCOMPARE(suspects(run).size(), std::size_t(1));
    }

    void takingTheCorrectionMendsTheFillAndItCounts()
    {
        const CliRunner run;
        QVERIFY(prepareGallons(run));
        QCOMPARE(run("fill rule " + id(suspects(run)[0]) + " correct").exitCode, 0);
        QVERIFY(suspects(run).empty());
        const json fill = run("log --json").json()["fills"].back();
        QVERIFY(std::abs(fill["litres"].get<double>() - 37.513) < 0.001);
        QVERIFY(fill["ruling"].is_null());   // an exact correction needs no exception
    }

    void aCorrectionMayBeTyped()
    {
        const CliRunner run;
        QVERIFY(prepareGallons(run));
        const QString rule = "fill rule " + id(suspects(run)[0]) + ' ';
        QCOMPARE(run(rule + "accept --litres 38").exitCode, 2);
        QCOMPARE(run(rule + "correct --litres 38.2").exitCode, 0);
        QCOMPARE(run("log --json").json()["fills"].back()["litres"].get<double>(), 38.2);
        QVERIFY(suspects(run).empty());
    }

    void aForgottenFillIsNotInvented()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("fill add --litres 37 --odometer-km 105000 --full --date 2026-10-10").exitCode, 0);
        const json found = suspects(run);
        QCOMPARE(found[0]["cause"].get<std::string>(), std::string("forgotten fill"));
        QVERIFY(std::abs(found[0]["proposed"]["missing_l"].get<double>() - 37) < 5);
        const CliAnswer answer = run("fill rule " + id(found[0]) + " correct");
        QCOMPARE(answer.exitCode, 2);
        QVERIFY(answer.err.contains("fill add --partial"));
        // Logged after all, it makes the stretch ordinary.
        QCOMPARE(run("fill add --litres 37.5 --odometer-km 104500 --partial --date 2026-09-25").exitCode, 0);
        QVERIFY(suspects(run).empty());
    }

    void kilometresThatDoNotJoinUpAreListed()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("fill add --litres 37 --odometer-km 104500 --trip-meter-km 240 --full "
                     "--date 2026-10-10").exitCode, 0);
        const json gaps = run("check --json").json()["odometer_gaps"];
        QCOMPARE(gaps.size(), std::size_t(1));
        QCOMPARE(gaps[0]["kind"].get<std::string>(), std::string("meters disagree"));
        QCOMPARE(gaps[0]["unexplained_km"].get<double>(), 260.0);
    }

    void anUnknownIdOrVerdictIsRefused()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const CliAnswer unknown = run("fill rule zzzz accept");
        QCOMPARE(unknown.exitCode, 2);
        QCOMPARE(unknown.errorLines(), 1);
        QCOMPARE(run("fill rule 1 perhaps").exitCode, 2);
    }
};

UNDERMARK_TEST(CheckTest)
#include "check_test.moc"
