// SPDX-License-Identifier: GPL-3.0-or-later
//
// rates as a user meets it: intervals, trend, lessons, the car's own figure, and
// the corrections that are off unless asked for.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark::test;
using nlohmann::json;

class RatesTest : public QObject {
    Q_OBJECT

    // Ten tanks of 40 L over 500 km, each with these flags.
    static bool prepareTanks(const CliRunner& run, const QString& flags)
    {
        bool fine = run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode == 0;
        for (int i = 0; i < 10; ++i)
            fine = fine && run(QString("fill add --litres 40 --odometer-km %1 --full --date 2026-01-%2 ")
                               .arg(1000 + 500 * i).arg(10 + i) + flags).exitCode == 0;
        return fine;
    }

    static double usual(const json& rates) { return rates["usual"]["rate_l_per_100km"]["mean"].get<double>(); }

private slots:
    void everyRateHasItsIntervalAndTheTanksThatWouldNarrowIt()
    {
        const CliRunner run;
        QVERIFY(prepareTanks(run, ""));
        const json rates = run("rates --json").json();
        QCOMPARE(rates["modes"].size(), std::size_t(4));
        double share = 0;
        for (const json& line : rates["modes"]) {
            const double mean = line["rate_l_per_100km"]["mean"].get<double>();
            QVERIFY(line["low90"].get<double>() < mean && mean < line["high90"].get<double>());
            share += line["share"].get<double>();
        }
        QVERIFY(std::abs(share - 1) < 1e-9);
        QVERIFY(rates["trend_90"]["low"] < rates["trend"] && rates["trend"] < rates["trend_90"]["high"]);
        const auto needed = [&](const char* width) {
            return run(QString("rates --json --width ") + width).json()["usual"]["tanks_to_narrow"];
        };
        QCOMPARE(needed("20").get<int>(), 0);
        QVERIFY(needed("1.1").get<int>() > 0);
        QVERIFY(needed("0.001").is_null());   // not within 200 tanks
        QCOMPARE(run("rates --width 0").exitCode, 2);
    }

    void theLastFillsSayWhatTheyTaught()
    {
        const CliRunner run;
        QVERIFY(prepareTanks(run, ""));
        QCOMPARE(run("fill add --litres 44 --odometer-km 6000 --full --date 2026-01-20").exitCode, 0);
        const json lessons = run("rates --json").json()["lessons"];
        QCOMPARE(lessons.size(), std::size_t(5));
        const json& last = lessons.back();
        QCOMPARE(last["burnt_l"].get<double>(), 44.0);
        QVERIFY(last["expected_l"].get<double>() < 42);
        QVERIFY(last["usual_after"] > last["usual_before"]);
        QVERIFY(last["learnt"].get<bool>());
        QVERIFY(run("rates").out.contains("what the last fills taught"));
    }

    // Pump 8 L/100 km, display 6.956: the factor is 1.15.
    void theFactorOfTheCarsOwnFigureIsLearnt()
    {
        const CliRunner run;
        QVERIFY(prepareTanks(run, "--displayed-l-per-100km 6.9565"));
        const json scale = run("rates --json").json()["displayed_scale"];
        QVERIFY(std::abs(scale["factor"].get<double>() - 1.15) < 0.01);
        QCOMPARE(scale["readings"].get<int>(), 9);   // the first fill only begins
        QVERIFY(scale["relative_sd"] < scale["next_relative_sd"]);
        QVERIFY(run("rates").out.contains("the car's own figure"));
        const CliRunner none;
        QVERIFY(prepareTanks(none, ""));
        QVERIFY(none("rates --json").json()["displayed_scale"].is_null());
    }

    // API MPMS 11.1 (1980), calculated apart from the project: 745 kg/m3 at 30 C, factor .98171: 50 L are 49.0854 L.
    void litresAtFifteenDegreesAreOffUnlessAskedForAndShown()
    {
        const CliRunner run;
        QVERIFY(prepareTanks(run, "--temperature-c 30"));
        const json plain = run("rates --json").json();
        QVERIFY(!plain.contains("corrections"));
        const json rates = run("rates --json --at-15c").json();
        const json& corrections = rates["corrections"];
        QVERIFY(corrections["at_15c"].get<bool>() && !corrections["blend_energy"].get<bool>());
        QCOMPARE(corrections["changed"].size(), std::size_t(10));
        QVERIFY(std::abs(corrections["changed"][0]["after_l"].get<double>() - 40 * 0.98171) < 5e-4);
        QCOMPARE(corrections["effect"]["usual_l_per_100km"]["without"].get<double>(),
                 run("range --litres 20 --json").json()["rate_l_per_100km"]["mean"].get<double>());
        QVERIFY(corrections["effect"]["usual_l_per_100km"]["with"]
                < corrections["effect"]["usual_l_per_100km"]["without"]);
        QVERIFY(usual(rates) < usual(plain));
        QVERIFY(run("rates --at-15c").out.contains("volume at 15 C: 10 of 10 fills changed"));
        // The log itself is as it was typed.
        QCOMPARE(run("log --json").json()["fills"][3]["litres"].get<double>(), 40.0);
    }

    // Published tables: e10 holds .966 of the energy of e0.
    void energyOfTheBlendIsOffUnlessAskedForAndShown()
    {
        const CliRunner run;
        QVERIFY(prepareTanks(run, "--blend e10"));
        const json range = run("range --litres 20 --json --blend-energy").json();
        const json& corrections = range["corrections"];
        QCOMPARE(corrections["changed"].size(), std::size_t(9));
        QVERIFY(std::abs(corrections["changed"][0]["after_l"].get<double>() - 40 * 0.966) < 1e-9);
        QVERIFY(corrections["effect"]["to_dry_p50_km"]["with"] > corrections["effect"]["to_dry_p50_km"]["without"]);
        QVERIFY(!run("range --litres 20 --json").json().contains("corrections"));
        QCOMPARE(run("range --litres 20 --rate 8 --blend-energy").exitCode, 2);
    }

    void whatIsNotKnownIsCountedAndLeftAsItIs()
    {
        const CliRunner run;
        QVERIFY(prepareTanks(run, ""));
        const json rates = run("rates --json --at-15c --blend-energy").json();
        QVERIFY(rates["corrections"]["changed"].empty());
        QCOMPARE(rates["corrections"]["not_known"].get<int>(), 19);   // 10 temperatures, 9 blends
        QVERIFY(std::abs(usual(rates) - usual(run("rates --json").json())) < 1e-5);   // the clock moves on
    }
};

UNDERMARK_TEST(RatesTest)
#include "rates_test.moc"
