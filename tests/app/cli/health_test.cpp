// SPDX-License-Identifier: GPL-3.0-or-later
//
// check: the file, the sender, and what can be saved of a damaged logbook.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <SQLiteCpp/SQLiteCpp.h>
#include <cmath>

using namespace undermark::test;
using nlohmann::json;

class HealthTest : public QObject {
    Q_OBJECT

    // Signals of prepareCar()'s calibration, straight between its points.
    static double signalAt(double litres)
    {
        constexpr double added[] = {0, 5, 15, 25, 35, 45, 50};
        constexpr double signal[] = {3.020, 2.840, 2.370, 1.880, 1.350, 0.800, 0.550};
        int i = 0;
        while (i < 5 && litres > added[i + 1])
            ++i;
        return signal[i] + (signal[i + 1] - signal[i]) * (litres - added[i]) / (added[i + 1] - added[i]);
    }

    // A car calibrated now, and then `fills` full fills, one every thirty days, whose
    // readings are wrong by `wrong(i)` litres. All in the years to come: dates are free.
    template <class Wrong>
    static json checkAfterFills(const CliRunner& run, int fills, Wrong wrong)
    {
        QDate day = QDate::currentDate().addDays(2);
        for (int i = 0; i < fills; ++i, day = day.addDays(30)) {
            const double litres = 34.0 + i % 5;
            const double level = 50.0 - litres + wrong(i);
            if (run(QString("fill add --litres %1 --odometer-km %2 --full --signal %3 --date %4")
                        .arg(litres).arg(104500 + 500 * i).arg(signalAt(level)).arg(day.toString(Qt::ISODate)))
                    .exitCode != 0)
                return {};
        }
        return run("check --json").json()["sender"];
    }

    static bool found(const json& sender, const char* code)
    {
        for (const json& finding : sender["findings"])
            if (finding["code"] == code)
                return true;
        return false;
    }

private slots:
    void aSoundFileIsCalledSoundAndABackupIsNamed()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("check --json").json()["integrity"].get<std::string>(), std::string("ok"));
        QVERIFY(run("check --json").json()["latest_backup"].is_null());
        QVERIFY(run("check").out.contains("no backup"));
        QCOMPARE(run("backup").exitCode, 0);
        QVERIFY(run("check").out.contains("latest backup logbook.sqlite.backup-"));
    }

    void aSenderThatNobodyReadsIsNotWatched()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json sender = run("check --json").json()["sender"];
        QVERIFY(found(sender, "sender-unwatched"));
        QVERIFY(sender["drift"].is_null());
        QCOMPARE(sender["calibration_age_days"].get<int>(), 0);
    }

    void aSenderThatKeepsToItsCalibrationRaisesNoAlarm()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json sender = checkAfterFills(run, 10, [](int i) { return 0.3 * (i % 3 - 1); });
        QCOMPARE(sender["drift"]["fills"].get<int>(), 10);
        QVERIFY(!found(sender, "sender-drift") && !found(sender, "sender-shifted"));
        QVERIFY(std::abs(sender["drift"]["shift_l"]["mean"].get<double>()) < 0.6);
    }

    // Three litres over nine months, with a reading error of some tenths.
    void aDriftingSenderIsCalledOutWithItsPaceAndWhatToDo()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json sender = checkAfterFills(run, 10, [](int i) { return i / 3.0 + 0.3 * (i % 3 - 1); });
        QVERIFY(found(sender, "sender-drift"));
        QVERIFY(std::abs(sender["drift"]["l_per_year"].get<double>() - 365.25 / 30 / 3) < 1.0);
        QVERIFY(sender["drift"]["p"].get<double>() < 0.01);
        QVERIFY(run("check").out.contains("calibrate again"));
    }

    void aSenderThatMovedOnceIsCalledShifted()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const json sender = checkAfterFills(run, 9, [](int i) { return -6.0 + 0.2 * (i % 3 - 1); });
        QVERIFY(found(sender, "sender-shifted"));
        QVERIFY(!found(sender, "sender-drift"));
        QVERIFY(std::abs(sender["drift"]["shift_l"]["mean"].get<double>() + 6.0) < 0.6);
    }

    void aNewerLogbookIsReadWithAWarningAndNotWritten()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        SQLite::Database(run.logbook().toStdString(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 4");
        const CliAnswer range = run("range --json");
        QCOMPARE(range.exitCode, 0);
        QVERIFY(range.err.contains("newer Undermark") && range.err.contains("not write"));
        const CliAnswer fill = run("fill add --litres 30 --trip-meter-km 400 --full");
        QCOMPARE(fill.exitCode, 1);
        QVERIFY(fill.err.contains("newer Undermark"));
        QCOMPARE(run("log --json").json()["fills"].size(), std::size_t(9));
    }

    void aDamagedLogbookIsRefusedWithWhatToDoAndSalvaged()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QFile file(run.logbook());
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray whole = file.readAll();
        file.close();
        run.file("logbook.sqlite", whole.left(whole.size() - 4096));
        const CliAnswer refused = run("check");
        QCOMPARE(refused.exitCode, 1);
        QCOMPARE(refused.errorLines(), 1);
        QVERIFY(refused.err.contains("--salvage") && refused.err.contains("restore"));
        const QString fresh = run.logbook() + ".fresh";
        const CliAnswer saved = run("check --json --salvage " + fresh);
        QCOMPARE(saved.exitCode, 0);
        QVERIFY(saved.json()["taken"].get<int>() > 5);
        QCOMPARE(run("check --salvage " + fresh).exitCode, 1);   // never over a file
        QVERIFY(run("restore " + fresh).exitCode == 0);
        QCOMPARE(run("check --json").json()["integrity"].get<std::string>(), std::string("ok"));
    }
};

UNDERMARK_TEST(HealthTest)
#include "health_test.moc"
