// SPDX-License-Identifier: GPL-3.0-or-later
//
// Touch screen and command line on one logbook: the screen is this process, which holds
// the logbook open as Car does; the command line is the program itself.
#include "tests/support/cli_runner.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QElapsedTimer>
#include <QTest>

using namespace undermark;
using namespace undermark::test;

class TwoProgramsTest : public QObject {
    Q_OBJECT

    static Logbook opened(const CliRunner& run)
    {
        auto book = Logbook::open(run.logbook().toStdString(), OpenMode::readWrite);
        if (!book)
            qFatal("%s", describe(book.error()).c_str());
        return std::move(*book);
    }

    static std::size_t listed(const CliRunner& run)
    {
        return run("log --json").json()["fills"].size();
    }

private slots:
    void eachSeesWhatTheOtherWroteWhileBothAreOpen()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        Logbook book = opened(run);
        const auto vehicles = *book.vehicles();
        const EntryId car = vehicles.front().id;
        for (int i = 0; i < 5; ++i) {
            const auto version = *book.dataVersion();
            QCOMPARE(run(QString("fill add --litres 31 --trip-meter-km 400 --full --date 2026-10-%1")
                             .arg(10 + i)).exitCode, 0);
            QVERIFY(*book.dataVersion() != version);
            QCOMPARE(book.entries<Fill>(car)->size(), std::size_t(10 + 2 * i));
            QVERIFY(book.add(car, leastFill(at(1'800'000'000 + i)), kNow).has_value());
            QCOMPARE(listed(run), std::size_t(11 + 2 * i));
        }
    }

    // The screen is in the middle of a transaction for less than the waiting time.
    void aShortBusySpellIsWaitedFor()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        {
            SQLite::Database other(run.logbook().toStdString(), SQLite::OPEN_READWRITE);
            other.exec("BEGIN IMMEDIATE");
            QProcess process;
            process.start(QStringLiteral(UNDERMARK_CLI),
                          {"--logbook", run.logbook(), "fill", "add", "--litres", "30", "--trip-meter-km",
                           "400", "--full"});
            QVERIFY(process.waitForStarted());
            QVERIFY(!process.waitForFinished(700));   // it waits
            other.exec("ROLLBACK");
            QVERIFY(process.waitForFinished(20'000));
            QCOMPARE(process.exitCode(), 0);
        }
        QCOMPARE(listed(run), std::size_t(10));
    }

    void aLongBusySpellIsSaidAndNothingIsWrittenOrLost()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        SQLite::Database other(run.logbook().toStdString(), SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE");
        QElapsedTimer timer;
        timer.start();
        const CliAnswer refused = run("fill add --litres 30 --trip-meter-km 400 --full");
        QVERIFY(timer.elapsed() >= 4'500);   // kBusyTimeout
        QCOMPARE(refused.exitCode, 1);
        QCOMPARE(refused.errorLines(), 1);
        QVERIFY(refused.err.contains("another program is writing"));
        QCOMPARE(listed(run), std::size_t(9));   // reading goes on meanwhile
        other.exec("ROLLBACK");
        QCOMPARE(run("fill add --litres 30 --trip-meter-km 400 --full").exitCode, 0);
        QCOMPARE(listed(run), std::size_t(10));
    }

    // Six command lines and the screen write at once: every fill is there, once.
    void manyWritersAtOnceLoseNothing()
    {
        constexpr int kPrograms = 6, kOwn = 40;
        const CliRunner run;
        QVERIFY(run.prepareCar());
        Logbook book = opened(run);
        const auto vehicles = *book.vehicles();
        const EntryId car = vehicles.front().id;
        std::vector<std::unique_ptr<QProcess>> programs;
        for (int i = 0; i < kPrograms; ++i) {
            programs.push_back(std::make_unique<QProcess>());
            programs.back()->start(QStringLiteral(UNDERMARK_CLI),
                                   {"--logbook", run.logbook(), "fill", "add", "--litres",
                                    QString::number(31 + i), "--trip-meter-km", "400", "--full"});
        }
        for (int i = 0; i < kOwn; ++i)
            QVERIFY(book.add(car, leastFill(at(1'800'000'000 + i), 50 + i), kNow).has_value());
        for (const auto& program : programs) {
            QVERIFY(program->waitForFinished(60'000));
            QCOMPARE(program->exitCode(), 0);
        }
        std::multiset<double> litres;
        const auto fills = *book.entries<Fill>(car);
        for (const auto& fill : fills)
            if (fill.value.volume.litres() > 30.5 && fill.value.volume.litres() < 36.5
                && !fill.value.odometer)
                litres.insert(fill.value.volume.litres());
        QCOMPARE(fills.size(), std::size_t(9 + kPrograms + kOwn));
        QCOMPARE(litres, (std::multiset<double>{31, 32, 33, 34, 35, 36}));
        QVERIFY(book.checkIntegrity().has_value());
    }

    // A backup, an export and a bundle of a logbook that is being written to are whole.
    void copiesMadeWhileTheOtherWritesAreWhole()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QProcess backup;
        Logbook book = opened(run);
        const auto vehicles = *book.vehicles();
        const EntryId car = vehicles.front().id;
        const std::vector<Fill> pair{leastFill(at(1'800'000'000), 77), leastFill(at(1'800'000'000), 78)};
        backup.start(QStringLiteral(UNDERMARK_CLI), {"--logbook", run.logbook(), "backup", "--json"});
        int written = 0;
        while (backup.state() != QProcess::NotRunning) {
            QVERIFY(book.addAll<Fill>(car, pair, kNow).has_value());   // both or none
            ++written;
            backup.waitForFinished(1);
        }
        QCOMPARE(backup.exitCode(), 0);
        const auto made = nlohmann::json::parse(backup.readAllStandardOutput().toStdString());
        const auto copy = Logbook::open(made["backup"].get<std::string>(), OpenMode::readOnly);
        QVERIFY(copy.has_value() && copy->checkIntegrity().has_value());
        const std::size_t kept = copy->entries<Fill>(car)->size();
        QVERIFY(kept >= 9 && kept % 2 == 1);
        QCOMPARE(book.entries<Fill>(car)->size(), std::size_t(9 + 2 * written));
    }
};

UNDERMARK_TEST(TwoProgramsTest)
#include "two_programs_test.moc"
