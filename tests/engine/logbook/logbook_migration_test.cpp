// SPDX-License-Identifier: GPL-3.0-or-later
//
// The steps released, and the machinery of migrations with steps that only this test knows.
#include "engine/logbook/database.h"
#include "engine/logbook/schema.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>
#include <csignal>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace undermark;
using namespace undermark::logbook;
using namespace undermark::test;

namespace {

constexpr std::chrono::milliseconds kWait{2000};

// The released steps; then one that adds what an older program need not know, and one that
// fills a table from rows.
const MigrationStep kSteps[]{
    releasedSteps()[0],
    releasedSteps()[1],
    {3, "ALTER TABLE fills ADD COLUMN station TEXT", 3},
    {4, "CREATE TABLE months (month INTEGER PRIMARY KEY, fills INTEGER NOT NULL) STRICT;"
        "INSERT INTO months SELECT time / 2592000, count(*) FROM fills GROUP BY 1", 5}};
constexpr MigrationStep kBrokenStep[]{
    {1, "ALTER TABLE fills ADD COLUMN station TEXT; INSERT INTO no_such_table VALUES (1)", 1}};
// A row without what it refers to.
constexpr MigrationStep kOrphaningStep[]{
    {1, "PRAGMA defer_foreign_keys = ON; INSERT INTO modes VALUES (9999, 'orphan', NULL, NULL)", 1}};

Schema schemaOf(std::int64_t version, std::span<const MigrationStep> steps)
{
    return {version, createSchemaSql(), steps};
}

std::int64_t number(const fs::path& file, const std::string& sql)
{
    SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
    return database.execAndGet(sql.c_str()).getInt64();
}

std::int64_t versionAt(const fs::path& file) { return number(file, "PRAGMA user_version"); }

constexpr const char* kSumOfFills = "SELECT count(*) * 1000 + sum(litres) FROM fills";

} // namespace

class LogbookMigrationTest : public QObject {
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;
    fs::path m_file;

    std::optional<Error> opened(OpenMode mode, const Schema& schema,
                                std::chrono::milliseconds wait = kWait) const
    {
        const auto database = openDatabase(m_file, mode, wait, schema);
        return database ? std::nullopt : std::optional(database.error());
    }

    std::set<std::string> names() const { return namesIn(m_folder->path().toStdString()); }

    // Anew with the fixture of a schema.
    void startFrom(int schema)
    {
        for (const std::string& name : names())
            fs::remove_all(fs::path(m_folder->path().toStdString()) / name);
        fs::copy_file(fixtureOf(schema), m_file);
        fs::permissions(m_file, fs::perms::owner_read | fs::perms::owner_write);
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>(QDir("/dev/shm").exists()
                                                       ? QStringLiteral("/dev/shm/undermark-XXXXXX")
                                                       : QDir::tempPath() + "/undermark-XXXXXX");
        m_file = m_folder->filePath("log.sqlite").toStdString();
        startFrom(1);
    }

    void everyStepIsTakenAndTheFileAsItWasIsKept()
    {
        for (const int from : {1, 2}) {
            startFrom(from);
            const std::int64_t before = number(m_file, kSumOfFills);
            QVERIFY(!opened(OpenMode::readWrite, schemaOf(5, kSteps)));
            QCOMPARE(versionAt(m_file), std::int64_t(5));
            QCOMPARE(number(m_file, "SELECT readable_by FROM schema_info"), std::int64_t(5));
            QCOMPARE(number(m_file, kSumOfFills), before);
            QVERIFY(number(m_file, "SELECT count(*) FROM months") > 0);
            const std::string name = "log.sqlite.schema-" + std::to_string(from);
            const fs::path kept = m_file.parent_path() / name;
            QCOMPARE(names(), (std::set<std::string>{"log.sqlite", name}));
            QCOMPARE(versionAt(kept), std::int64_t(from));
            QCOMPARE(number(kept, kSumOfFills), before);
            struct stat status{};
            QCOMPARE(::stat(kept.c_str(), &status), 0);
            QCOMPARE(status.st_mode & 07777U, 0600U);
            QVERIFY(Logbook::open(kept, OpenMode::readOnly).has_value());   // and today's program reads it
        }
    }

    void aFileOfTodayIsNotTouchedAndNoCopyIsMade()
    {
        QVERIFY(!opened(OpenMode::readWrite, releasedSchema()));
        fs::remove(m_file.string() + ".schema-1");
        makeSingleFile(m_file);
        const std::string before = bytesOf(m_file);
        QVERIFY(!opened(OpenMode::readOnly, releasedSchema()));
        QVERIFY(bytesOf(m_file) == before);
        QVERIFY(!opened(OpenMode::readWrite, releasedSchema()));
        QCOMPARE(names(), std::set<std::string>{"log.sqlite"});
    }

    void readingOnlyBringsACopyInMemoryUpAndChangesNothing()
    {
        const std::string before = bytesOf(m_file);
        {
            auto database = openDatabase(m_file, OpenMode::readOnly, kWait, schemaOf(5, kSteps));
            QVERIFY2(database.has_value(), database ? "" : describe(database.error()).c_str());
            QCOMPARE(database->execAndGet("PRAGMA user_version").getInt(), 5);
            QVERIFY(database->execAndGet("SELECT count(*) FROM months").getInt() > 0);
            QVERIFY_EXCEPTION_THROWN(database->exec("INSERT INTO months VALUES (1, 1)"), SQLite::Exception);
        }
        QVERIFY(bytesOf(m_file) == before);
        QCOMPARE(names(), std::set<std::string>{"log.sqlite"});
    }

    // What an older program may still read is what the file itself says.
    void anOlderProgramReadsAfterAStepThatSaysSoAndNotAfterTheNext()
    {
        QVERIFY(!opened(OpenMode::readWrite, schemaOf(4, kSteps)));
        QVERIFY(Logbook::open(m_file, OpenMode::readOnly).has_value());
        const auto refused = Logbook::open(m_file, OpenMode::readWrite);
        QVERIFY(!refused && refused.error().code == ErrorCode::newerSchema);
        QVERIFY(!opened(OpenMode::readWrite, schemaOf(5, kSteps)));
        const auto closed = Logbook::open(m_file, OpenMode::readOnly);
        QVERIFY(!closed && closed.error().code == ErrorCode::newerSchema);
        QVERIFY(english(closed.error().detail).find("please update") != std::string::npos);
    }

    void aStepThatFailsChangesNothingAndLeavesOneCopyHoweverOftenItIsTried()
    {
        const std::int64_t before = number(m_file, kSumOfFills);
        for (int i = 0; i < 3; ++i) {
            QVERIFY(opened(OpenMode::readWrite, schemaOf(2, kBrokenStep)));
            QCOMPARE(versionAt(m_file), std::int64_t(1));
            QCOMPARE(number(m_file, "SELECT count(*) FROM pragma_table_info('fills') "
                                    "WHERE name = 'station'"), std::int64_t(0));
            QCOMPARE(number(m_file, kSumOfFills), before);
        }
        QCOMPARE(names(), (std::set<std::string>{"log.sqlite", "log.sqlite.schema-1"}));
    }

    void aStepThatLeavesAReferenceWithoutItsRowIsTakenBack()
    {
        const auto error = opened(OpenMode::readWrite, schemaOf(2, kOrphaningStep));
        QVERIFY(error.has_value());
        QCOMPARE(versionAt(m_file), std::int64_t(1));
        QCOMPARE(number(m_file, "SELECT count(*) FROM modes WHERE id = 9999"), std::int64_t(0));
    }

    void aVersionThatWasNeverReleasedIsRefusedAndNotCopied()
    {
        SQLite::Database(m_file.string(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 0");
        const auto error = opened(OpenMode::readWrite, schemaOf(5, kSteps));
        QVERIFY(error && error->code == ErrorCode::damaged);
        QCOMPARE(names(), std::set<std::string>{"log.sqlite"});
    }

    void whereTheCopyCannotBeKeptNothingIsMigrated()
    {
        const fs::path inTheWay = m_file.string() + ".schema-1.writing";
        fs::create_directories(inTheWay / "full");
        const auto error = opened(OpenMode::readWrite, schemaOf(5, kSteps));
        QVERIFY(error && error->code == ErrorCode::fileAccess);
        QCOMPARE(versionAt(m_file), std::int64_t(1));
    }

    // Every disk call of a migration fails once, in every way: afterwards the file is
    // sound, of one of the versions on the way, with every row, and goes on from there.
    void aMigrationCutShortAnywhereGoesOnFromThere()
    {
        const std::string start = bytesOf(m_file);
        const std::int64_t rows = number(m_file, kSumOfFills);
        const fs::path work = fs::path(m_folder->path().toStdString()) / "work";
        const fs::path file = work / "log.sqlite";
        std::set<std::int64_t> reached;
        long failed = 0;
        for (const DiskFault fault : {DiskFault::ioError, DiskFault::full, DiskFault::shortWrite,
                                      DiskFault::readOnly, DiskFault::powerCut})
            for (long n = 1;; ++n, ++failed) {
                fs::remove_all(work);
                fs::create_directory(work);
                writeBytes(file, start);
                FaultVfs disk(work);
                disk.arm(fault, n);
                { const auto database = openDatabase(file, OpenMode::readWrite, kWait, schemaOf(5, kSteps)); }
                if (!disk.disarm())
                    break;
                reached.insert(versionAt(file));
                QVERIFY(versionAt(file) >= 1 && versionAt(file) <= 5);
                QCOMPARE(number(file, kSumOfFills), rows);
                if (versionAt(file) > 1)
                    QCOMPARE(versionAt(file.string() + ".schema-1"), std::int64_t(1));
                auto again = openDatabase(file, OpenMode::readWrite, kWait, schemaOf(5, kSteps));
                QVERIFY2(again.has_value(), again ? "" : describe(again.error()).c_str());
                QCOMPARE(again->execAndGet("PRAGMA user_version").getInt(), 5);
                QCOMPARE(again->execAndGet("PRAGMA integrity_check").getString(), std::string("ok"));
            }
        QCOMPARE(reached, (std::set<std::int64_t>{1, 2, 3, 4, 5}));
        qInfo("%ld calls failed during migrations", failed);
    }

    // The ignition is turned off while the new program opens the old logbook.
    void aMigrationKilledAtAnyInstantGoesOnFromThere()
    {
        for (const int from : {1, 2}) {
            startFrom(from);
            const std::int64_t rows = number(m_file, kSumOfFills);
            std::set<std::int64_t> reached;
            QElapsedTimer whole;
            whole.start();
            QVERIFY(!opened(OpenMode::readWrite, releasedSchema()));
            const double step = double(whole.nsecsElapsed()) / 1000.0 / 30.0;   // us
            // To twice as long as a whole one takes; on a busy machine later still.
            const auto both = [&] { return reached.contains(from) && reached.contains(kSchemaVersion); };
            for (int i = 0; i < 60 || (!both() && i < 600); ++i) {
                startFrom(from);
                const pid_t child = ::fork();
                if (child == 0)
                    _exit(opened(OpenMode::readWrite, releasedSchema()) ? 1 : 0);
                ::usleep(useconds_t(step * i));
                ::kill(child, SIGKILL);
                ::waitpid(child, nullptr, 0);
                reached.insert(versionAt(m_file));
                QCOMPARE(number(m_file, kSumOfFills), rows);
                auto book = Logbook::open(m_file, OpenMode::readWrite);
                QVERIFY2(book.has_value(), book ? "" : describe(book.error()).c_str());
                QVERIFY(book->checkIntegrity().has_value());
                QCOMPARE(versionAt(m_file), std::int64_t(kSchemaVersion));
            }
            QVERIFY(both());
        }
    }

    void twoProgramsMayMigrateAtOnce()
    {
        std::vector<pid_t> children;
        for (int i = 0; i < 4; ++i) {
            const pid_t child = ::fork();
            if (child == 0) {
                const auto error = opened(OpenMode::readWrite, schemaOf(5, kSteps), std::chrono::seconds(30));
                if (error)
                    qWarning("%s", describe(*error).c_str());
                _exit(error ? 1 : 0);
            }
            children.push_back(child);
        }
        for (const pid_t child : children) {
            int status = 1;
            QCOMPARE(::waitpid(child, &status, 0), child);
            QCOMPARE(status, 0);
        }
        QCOMPARE(versionAt(m_file), std::int64_t(5));
        QCOMPARE(number(m_file, "SELECT sum(fills) FROM months"), number(m_file, "SELECT count(*) FROM fills"));
    }
};

UNDERMARK_TEST(LogbookMigrationTest)
#include "logbook_migration_test.moc"
