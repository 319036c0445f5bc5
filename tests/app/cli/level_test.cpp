// SPDX-License-Identifier: GPL-3.0-or-later
//
// Levels kept, answered from, corrected and taken back on the command line; and when a zero mark
// came in force.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark::test;
using nlohmann::json;

namespace {

constexpr const char* kOnTheDay = " --date 2026-09-20T10:00";

} // namespace

class LevelTest : public QObject {
    Q_OBJECT

    // All but where the level is known from.
    static json figures(const CliRunner& run, const QString& how)
    {
        const json all = run("range --json " + how).json();
        json some;
        for (const char* key : {"usable_l", "above_zero_l", "reserve_l", "rate_l_per_100km", "to_zero_km", "to_dry_km"})
            some[key] = all[key];
        return some;
    }
    static std::string idOf(const CliRunner& run, std::size_t which = 0)
    {
        return run("level list --json").json()["levels"][which]["id"].get<std::string>();
    }

private slots:
    void rangeAndPlanCountOnFromWhatWasKept()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString route = run.file("route.csv", "at_km,name,mode,fuel\n0,Start,open-road,none\n120,End,,none\n");
        const json asked = figures(run, QString("--signal 1.9") + kOnTheDay);
        const json planned = run("plan " + route + " --json --signal 1.9" + kOnTheDay).json();
        const CliAnswer kept = run(QString("level add --signal 1.9") + kOnTheDay);
        QCOMPARE(kept.exitCode, 0);
        QVERIFY2(kept.out.startsWith("Kept: 2026-09-20 10:00  reading 1.900"), kept.out.constData());
        QVERIFY(figures(run, kOnTheDay) == asked); // to the last digit
        const json answer = run(QString("range --json") + kOnTheDay).json();
        QCOMPARE(answer["level_as_of"].get<std::string>(), std::string("2026-09-20T10:00:00Z"));
        QVERIFY(answer["why"].get<std::string>().find("from the reading of 2026-09-20") != std::string::npos);
        const json later = run("plan " + route + " --json" + kOnTheDay).json();
        QCOMPARE(later["dry_risk"].get<double>(), planned["dry_risk"].get<double>());
        QCOMPARE(later["finish_l"].dump(), planned["finish_l"].dump());

        QCOMPARE(run("trip add --km 50 --mode motorway --date 2026-09-20T12:00").exitCode, 0);
        QCOMPARE(run("fill add --litres 10 --partial --odometer-km 104600 --date 2026-09-20T13:00").exitCode, 0);
        const json driven = run("range --json --date 2026-09-20T14:00").json();
        const double rate = run("range --json --mode motorway --date 2026-09-20T14:00").json()["rate_l_per_100km"]["mean"].get<double>();
        const double before = answer["usable_l"]["mean"].get<double>();
        QVERIFY(driven["usable_l"]["mean"].get<double>() < before + 10 - 0.5 * rate * 0.99);
        QVERIFY(driven["usable_l"]["sd"].get<double>() > answer["usable_l"]["sd"].get<double>());
        QCOMPARE(run("fill add --litres 30 --full --odometer-km 104700 --date 2026-09-21").exitCode, 0);
        QVERIFY(run("range --json --date 2026-09-21").json()["level_as_of"].is_null());
    }

    void levelsAreListedCorrectedAndTakenBack()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json before = figures(run, kOnTheDay);
        QVERIFY(run("level list --json").json()["levels"].empty());
        const json added = run(QString("level add --json --litres 20 --litres-sd 0.5 --odometer-km 104120 --note ferry") + kOnTheDay).json();
        QCOMPARE(added["usable_l"]["mean"].get<double>(), 20.0);
        QCOMPARE(added["usable_l"]["sd"].get<double>(), 0.5);
        QCOMPARE(added["origin"].get<std::string>(), std::string("typed"));
        QVERIFY(figures(run, kOnTheDay) == figures(run, QString("--litres 20 --litres-sd 0.5") + kOnTheDay));
        QVERIFY(run("log").out.contains("20.0 ± 0.5 L usable, 104120 km, ferry"));
        QCOMPARE(run("log --json").json()["levels"].size(), std::size_t(1));
        const QString id = QString::fromStdString(idOf(run)).left(8);
        QCOMPARE(run("level correct " + id + " --signal 1.9").exitCode, 0);
        QVERIFY(figures(run, kOnTheDay) == figures(run, QString("--signal 1.9") + kOnTheDay));
        const json now = run("level list --json").json()["levels"][0];
        QVERIFY(now["usable_l"].is_null() && now["note"].get<std::string>() == "ferry");
        QCOMPARE(run("level remove " + id).exitCode, 0); // with what was corrected of it
        QVERIFY(run("level list --json").json()["levels"].empty());
        QVERIFY(figures(run, kOnTheDay) == before);
        QCOMPARE(run("level remove " + id).exitCode, 2);
    }

    void whatCannotBeIsRefusedAndNothingIsWritten()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        for (const QString& wrong : {QString("level add"), QString("level add --litres -3"), QString("level add --signal x"),
                                     QString("level add --litres 3 --signal2 1"), QString("level add --signal 1 --litres-sd 1"),
                                     QString("level add --signal 1 --date yesterday")}) {
            const CliAnswer answer = run(wrong);
            QVERIFY2(answer.exitCode == 2 && answer.errorLines() == 1, qPrintable(wrong + answer.err));
        }
        QCOMPARE(run("level add --signal 1 --tank aux").exitCode, 2); // there is no such tank
        QVERIFY(run("level list --json").json()["levels"].empty());
        // What is merely not answered from is kept, and said.
        const CliAnswer old = run("level add --signal 1.9 --date 2026-05-01");
        QVERIFY(old.exitCode == 0 && old.err.contains("answers do not count on from it"));
    }

    void whatIsExportedComesBackAndOnce()
    {
        const CliRunner run, other;
        QVERIFY(run.prepareCar() && other.prepareCar());
        QCOMPARE(run(QString("level add --signal 1.9 --signal-sd 0.01 --odometer-km 104100.5") + kOnTheDay).exitCode, 0);
        QCOMPARE(run("level add --litres 12.25 --litres-sd 0.5 --date 2026-09-22").exitCode, 0);
        const QString folder = run.file("x", "") + ".tables";
        QCOMPARE(run("export --csv " + folder).exitCode, 0);
        for (const char* added : {"Added 2 levels", "Added 0 levels; 2 are in the log already"})
            QVERIFY(other("import " + folder + "/levels.csv").out.startsWith(added));
        json mine = run("level list --json").json(), theirs = other("level list --json").json();
        for (json* levels : {&mine, &theirs})
            for (json& level : (*levels)["levels"])
                level.erase("id");
        QVERIFY(mine == theirs);
        const QString bad = run.file("bad.csv", "date,signal,odometer_km\n2026-09-25,,104200\n");
        const CliAnswer refused = run("import " + bad);
        QVERIFY(refused.exitCode == 2 && refused.err.contains("a level needs a reading or litres"));
    }

    // Zeroed anew 3 L higher, on a day that is told: proofs of before it are of the mark before.
    void aZeroMarkThatWasMovedKeepsOlderProofs()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("proof add base --litres 5.2 --date 2026-06-20").exitCode, 0);
        const double before = run("reserve --json").json()["reserve_l"]["mean"].get<double>();
        QCOMPARE(run("vehicle set --zero-at-l 8 --zero-since 2026-08-01").exitCode, 0);
        const json after = run("reserve --json").json();
        QVERIFY(std::abs(after["reserve_l"]["mean"].get<double>() - before - 3) < 0.15);
        QVERIFY(run("log --json").json()["proofs"][0]["flags"].empty());
        QCOMPARE(run("vehicle set --zero-since 2026-13-01").exitCode, 2);
        QCOMPARE(run("calibrate --kept --zero-at-l 8 --zero-since 2026-08-01").exitCode, 2); // not without --save
    }

    // Of a mark that is only stated nothing says what it was before.
    void aProofOlderThanTheStatedMarkIsFlagged()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol --zero-at-l 6 --zero-since 2026-08-01").exitCode, 0);
        QCOMPARE(run("vehicle show --json").json()["zero_since"].get<std::string>(), std::string("2026-08-01T00:00:00Z"));
        const CliAnswer old = run("proof add past-zero --km 30 --date 2026-07-01");
        QVERIFY(old.exitCode == 0 && old.err.contains("another zero mark was in force then"));
        QVERIFY(run("proof add past-zero --km 30 --date 2026-08-20").err.isEmpty());
    }
};

UNDERMARK_TEST(LevelTest)
#include "level_test.moc"
