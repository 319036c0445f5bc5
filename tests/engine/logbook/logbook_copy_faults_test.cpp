// SPDX-License-Identifier: GPL-3.0-or-later
//
// Copies of the logbook when the disk fails: merge, backup, restore, salvage, bundle and
// export. Each call that changes the disk fails once, SQLite's own and the others';
// afterwards the logbook is whole, old or new, and no half of a file is left that could
// be taken for a whole one.
#include "engine/logbook/backup.h"
#include "engine/logbook/database.h"
#include "engine/logbook/salvage.h"
#include "engine/logbook/schema.h"
#include "engine/tables/export_csv.h"
#include "tests/support/fault_calls.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>
#include <functional>

using namespace undermark;
using namespace undermark::test;

namespace {

constexpr DiskFault kCopyFaults[]{DiskFault::ioError, DiskFault::full, DiskFault::shortWrite,
                              DiskFault::readOnly, DiskFault::powerCut};

// Fills in force, or -1 where the file is no sound logbook.
int fillsIn(const fs::path& file)
{
    const auto book = Logbook::open(file, OpenMode::readOnly);
    if (!book || !book->checkIntegrity())
        return -1;
    const auto vehicles = book->vehicles();
    int count = 0;
    for (const auto& vehicle : *vehicles)
        count += static_cast<int>(book->entries<Fill>(vehicle.id)->size());
    return count;
}

} // namespace

class LogbookCopyFaultsTest : public QObject {
    Q_OBJECT
    static constexpr int kOld = 1, kNew = 3;   // fills in the logbook, and in the other file
    QTemporaryDir m_folder{QDir("/dev/shm").exists() ? QStringLiteral("/dev/shm/undermark-XXXXXX")
                                                     : QDir::tempPath() + "/undermark-XXXXXX"};
    fs::path m_work, m_file, m_other;   // the other: same car, two fills more
    std::string m_before;
    long m_failed = 0;

    void startAnew() const
    {
        fs::remove_all(m_work);
        fs::create_directory(m_work);
        writeBytes(m_file, m_before);
    }

    // Runs `act` (true: acknowledged) with every disk call failing once, and `verify`
    // (told what was acknowledged) after each; first with SQLite's, then with the others.
    void failEverywhere(const std::function<bool()>& act, const std::function<void(bool)>& verify)
    {
        for (const DiskFault fault : kCopyFaults)
            for (long n = 1;; ++n, ++m_failed) {
                startAnew();
                FaultVfs disk(m_work);
                disk.arm(fault, n);
                const bool returned = act();
                const bool came = disk.disarm();
                // Nothing is acknowledged after the power is gone.
                const bool done = returned && !(came && fault == DiskFault::powerCut);
                verify(done);
                if (QTest::currentTestFailed())
                    return;
                if (!came) {
                    QVERIFY(done);
                    break;
                }
            }
        for (long n = 1;; ++n, ++m_failed) {
            startAnew();
            armCalls(m_work, n);
            const bool done = act();
            const bool came = disarmCalls() >= n;
            verify(done);
            if (QTest::currentTestFailed())
                return;
            if (!came) {
                QVERIFY(done);
                break;
            }
        }
    }

private slots:
    void initTestCase()
    {
        const fs::path folder = m_folder.path().toStdString();
        m_work = folder / "work";
        m_file = m_work / "log.sqlite";
        m_other = folder / "other.sqlite";
        fs::create_directory(m_work);
        {
            auto book = Logbook::open(m_file, OpenMode::createIfMissing);
            const EntryId car = *book->addVehicle(fullVehicle(), kNow);
            QVERIFY(book->add(car, fullFill(), kNow).has_value());
            QVERIFY(book->copyTo(m_other).has_value());
            auto other = Logbook::open(m_other, OpenMode::readWrite);
            QVERIFY(other->add(car, leastFill(at(1)), kNow).has_value());
            QVERIFY(other->add(car, leastFill(at(2)), kNow).has_value());
        }
        m_before = bytesOf(m_file);
        QCOMPARE(fillsIn(m_file), kOld);
        QCOMPARE(fillsIn(m_other), kNew);
    }

    void theInterceptedCallsReallyFail()
    {
        startAnew();
        armCalls(m_work, 1);
        std::error_code failed;
        fs::rename(m_file, m_work / "elsewhere", failed);
        QCOMPARE(disarmCalls(), 1L);
        QVERIFY(failed && fs::exists(m_file));
        armCalls(m_work, 1);
        fs::create_directory(m_work / "folder", failed);
        QCOMPARE(disarmCalls(), 1L);
        QVERIFY(failed && !fs::exists(m_work / "folder"));
    }

    void aMergeIsWhollyDoneOrNotAtAll()
    {
        failEverywhere(
            [&] {
                auto book = Logbook::open(m_file, OpenMode::readWrite);
                return book && book->merge(m_other).has_value();
            },
            [&](bool done) {
                const int fills = fillsIn(m_file);
                QVERIFY2(fills == kNew || (!done && fills == kOld), qPrintable(QString::number(fills)));
                QCOMPARE(fillsIn(m_other), kNew);
            });
    }

    void aBackupIsWholeOrNotThere()
    {
        failEverywhere(
            [&] {
                const auto book = Logbook::open(m_file, OpenMode::readWrite);
                return book && backUp(*book, kNow).has_value();
            },
            [&](bool done) {
                QCOMPARE(fillsIn(m_file), kOld);
                const auto backups = backupsOf(m_file);
                QVERIFY(!done || backups.size() == 1);
                for (const fs::path& backup : backups)   // after a power cut one may be left, empty
                    QVERIFY(fillsIn(backup) == kOld || (!done && fillsIn(backup) == -1));
            });
    }

    void aRestoreIsWhollyDoneOrNotAtAllAndKeepsWhatWasThere()
    {
        failEverywhere(
            [&] { return restore(m_other, m_file, kNow).has_value(); },
            [&](bool done) {
                const int fills = fillsIn(m_file);
                QVERIFY2(fills == kNew || (!done && fills == kOld), qPrintable(QString::number(fills)));
                if (fills == kNew) {
                    const auto backups = backupsOf(m_file);
                    QVERIFY(backups.size() == 1 && fillsIn(backups.front()) == kOld);
                }
                QCOMPARE(fillsIn(m_other), kNew);
            });
    }

    void aSalvageIsWholeOrRefusedAndNeverTouchesTheDamagedFile()
    {
        const fs::path fresh = m_work / "fresh.sqlite";
        failEverywhere([&] { return salvage(m_file, fresh, kNow).has_value(); },
                       [&](bool done) {
                           QVERIFY(bytesOf(m_file) == m_before);
                           if (done)
                               QCOMPARE(fillsIn(fresh), kOld);
                       });
    }

    void anExportIsAllItsFilesOrNoFolder()
    {
        const fs::path folder = m_work / "tables";
        failEverywhere(
            [&] {
                const auto book = Logbook::open(m_file, OpenMode::readOnly);
                if (!book)
                    return false;
                const auto vehicles = readForExport(*book);
                return vehicles && exportCsv(*vehicles, folder).has_value();
            },
            [&](bool done) {
                QVERIFY(fs::exists(folder) || !done);   // with its name not synced it may be there
                QVERIFY(!fs::exists(folder.string() + ".writing"));
                if (fs::exists(folder))
                    QCOMPARE(namesIn(folder).size(), std::size_t(10));
                QCOMPARE(fillsIn(m_file), kOld);
            });
    }

    // The copy that a migration keeps: without it, no step is taken.
    void aMigrationWithoutItsCopyDoesNotBegin()
    {
        constexpr int today = logbook::kSchemaVersion, next = today + 1;
        constexpr logbook::MigrationStep steps[]{{today, "ALTER TABLE fills ADD COLUMN station TEXT", today}};
        const logbook::Schema schema{next, logbook::createSchemaSql(), steps};
        const auto version = [&] {
            SQLite::Database database(m_file.string(), SQLite::OPEN_READWRITE);
            return database.execAndGet("PRAGMA user_version").getInt();
        };
        failEverywhere(
            [&] {
                return logbook::openDatabase(m_file, OpenMode::readWrite, kBusyTimeout, schema).has_value();
            },
            [&](bool done) {
                QVERIFY(version() == next || (!done && version() == today));
                if (version() == next)
                    QCOMPARE(fillsIn(m_file.string() + ".schema-" + std::to_string(today)), kOld);
            });
    }

    void cleanupTestCase() { qInfo("%ld calls failed", m_failed); }
};

UNDERMARK_TEST(LogbookCopyFaultsTest)
#include "logbook_copy_faults_test.moc"
