// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/killed_writer.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace undermark;
using namespace undermark::test;

// Nothing acknowledged is lost, and nothing that is not ours is touched.
class LogbookSafetyTest : public QObject {
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;
    fs::path m_file;
    EntryId m_car;

    static std::optional<ErrorCode> openingFails(const fs::path& file, OpenMode mode)
    {
        const auto book = Logbook::open(file, mode, std::chrono::milliseconds(20));
        return book ? std::nullopt : std::optional(book.error().code);
    }

    // In every mode the file is refused with `code` and keeps every byte.
    static void isRefusedAndKept(const fs::path& file, ErrorCode code)
    {
        const std::string before = bytesOf(file);
        for (const auto mode : {OpenMode::readOnly, OpenMode::readWrite, OpenMode::createIfMissing}) {
            QVERIFY(openingFails(file, mode) == code);
            QVERIFY(bytesOf(file) == before);
        }
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_file = m_folder->filePath("log.sqlite").toStdString();
        auto book = Logbook::open(m_file, OpenMode::createIfMissing);
        QVERIFY2(book.has_value(), book ? "" : describe(book.error()).c_str());
        m_car = *book->addVehicle(fullVehicle(), kNow);
        QVERIFY(book->add(m_car, fullFill(), kNow).has_value());
    }

    void onlyTheOwnerCanReadANewLogbook()
    {
        struct stat status{};
        QCOMPARE(::stat(m_file.c_str(), &status), 0);
        QCOMPARE(status.st_mode & 07777U, 0600U);
    }

    void aForeignDatabaseIsRefusedAndKeptToTheByte()
    {
        const fs::path file = m_folder->filePath("other.sqlite").toStdString();
        {
            SQLite::Database other(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
            other.exec("CREATE TABLE fills (id INTEGER); INSERT INTO fills VALUES (1)");
        }
        isRefusedAndKept(file, ErrorCode::damaged);
        QCOMPARE(namesIn(m_folder->path().toStdString()),
                 (std::set<std::string>{"log.sqlite", "other.sqlite"}));
    }

    void aTextFileIsRefusedAndKeptToTheByte()
    {
        const fs::path file = m_folder->filePath("notes.txt").toStdString();
        for (const std::string& text : {std::string("short"), std::string(5000, 'x')}) {
            writeBytes(file, text);
            isRefusedAndKept(file, ErrorCode::damaged);
        }
        QCOMPARE(namesIn(m_folder->path().toStdString()),
                 (std::set<std::string>{"log.sqlite", "notes.txt"}));
    }

    void anEmptyFileIsNoLogbookUnlessOneMayBeMade()
    {
        const fs::path file = m_folder->filePath("empty.sqlite").toStdString();
        writeBytes(file, "");
        QVERIFY(openingFails(file, OpenMode::readOnly) == ErrorCode::damaged);
        QVERIFY(openingFails(file, OpenMode::readWrite) == ErrorCode::damaged);
        QCOMPARE(fs::file_size(file), std::uintmax_t(0));
        QVERIFY(!openingFails(file, OpenMode::createIfMissing));
    }

    void aMissingFileOrAFolderIsAnErrorOfFileAccess()
    {
        const fs::path missing = m_folder->filePath("missing.sqlite").toStdString();
        QVERIFY(openingFails(missing, OpenMode::readOnly) == ErrorCode::fileAccess);
        QVERIFY(openingFails(missing, OpenMode::readWrite) == ErrorCode::fileAccess);
        QVERIFY(!fs::exists(missing));
        QVERIFY(openingFails(m_folder->path().toStdString(), OpenMode::readWrite)
                == ErrorCode::fileAccess);
    }

    void aLogbookCutShortIsRefusedAndCopiedOnce()
    {
        makeSingleFile(m_file);
        const std::string whole = bytesOf(m_file);
        writeBytes(m_file, whole.substr(0, whole.size() - 4096));
        isRefusedAndKept(m_file, ErrorCode::damaged);
        QVERIFY(bytesOf(m_file.string() + ".damaged-1") == bytesOf(m_file));
        QCOMPARE(namesIn(m_folder->path().toStdString()),
                 (std::set<std::string>{"log.sqlite", "log.sqlite.damaged-1"}));
    }

    void aNewerSchemaIsRefusedAndKeptToTheByte()
    {
        makeSingleFile(m_file);
        {
            SQLite::Database raw(m_file.string(), SQLite::OPEN_READWRITE);
            raw.exec("PRAGMA user_version = 7; UPDATE schema_info SET readable_by = 7");
        }
        isRefusedAndKept(m_file, ErrorCode::newerSchema);
    }

    void aNewerSchemaThatThisProgramCanReadOpensForReadingOnly()
    {
        makeSingleFile(m_file);
        {
            SQLite::Database raw(m_file.string(), SQLite::OPEN_READWRITE);
            raw.exec("PRAGMA user_version = 7");
        }
        const std::string before = bytesOf(m_file);
        const auto book = Logbook::open(m_file, OpenMode::readOnly);
        QVERIFY(book.has_value());
        QVERIFY(book->entries<Fill>(m_car)->front().value == fullFill());
        QVERIFY(book->newerSchema().value() == 7);
        QVERIFY(openingFails(m_file, OpenMode::readWrite) == ErrorCode::newerSchema);
        QVERIFY(bytesOf(m_file) == before);
    }

    // Code in a file runs when it is read (a view) or written (a trigger): only ours may.
    void aFileWithCodeOfItsOwnIsRefused()
    {
        makeSingleFile(m_file);
        const std::string clean = bytesOf(m_file);
        for (const char* trick : {
                 "DROP VIEW stale; CREATE VIEW stale AS WITH RECURSIVE t(id) AS (SELECT 1 UNION ALL "
                 "SELECT id + 1 FROM t) SELECT id FROM t",   // would never end
                 "CREATE TRIGGER mine AFTER INSERT ON fills BEGIN INSERT INTO trips SELECT * FROM trips; END",
                 "ALTER TABLE fills RENAME TO hidden; CREATE VIEW fills AS SELECT * FROM hidden"}) {
            writeBytes(m_file, clean);
            SQLite::Database(m_file.string(), SQLite::OPEN_READWRITE).exec(trick);
            isRefusedAndKept(m_file, ErrorCode::damaged);
        }
        writeBytes(m_file, clean);
        QVERIFY(!openingFails(m_file, OpenMode::readWrite));
    }

    // What only SQLite can see: the first page says one thing, the tables are noise.
    void aLogbookBrokenInsideIsRefusedOrReadAndNeverChanged()
    {
        makeSingleFile(m_file);
        std::string bytes = bytesOf(m_file);
        for (std::size_t i = 200; i < 4096; ++i)
            bytes[i] = static_cast<char>(i * 37);
        writeBytes(m_file, bytes);
        isRefusedAndKept(m_file, ErrorCode::damaged);
        QVERIFY(bytesOf(m_file.string() + ".damaged-1") == bytes);
        const auto refused = Logbook::open(m_file, OpenMode::readWrite);
        QVERIFY(english(refused.error().detail).find("take out what is readable") != std::string::npos);
    }

    void theCheckSeesRowsWhoseReferencesAreGone()
    {
        makeSingleFile(m_file);
        SQLite::Database(m_file.string(), SQLite::OPEN_READWRITE)
            .exec("DROP TRIGGER entries_no_DELETE; DELETE FROM entries WHERE kind = 'fill'");
        const auto book = Logbook::open(m_file, OpenMode::readOnly);
        QVERIFY(book.has_value());
        QCOMPARE(book->checkIntegrity().error().code, ErrorCode::damaged);
    }

    void aVehicleWithoutAModeIsDamage()
    {
        SQLite::Database(m_file.string(), SQLite::OPEN_READWRITE)
            .exec("DROP TRIGGER modes_no_DELETE; DELETE FROM modes");
        const auto log = Logbook::open(m_file, OpenMode::readWrite)->load(m_car);
        QVERIFY(!log && log.error().code == ErrorCode::damaged);
    }

    // A flipped byte makes a number that no writer could have written.
    void aNumberOutOfItsColumnsRangeIsDamage()
    {
        for (const char* capacity : {"9e999", "-9e999", "-1", "2e9"}) {
            const fs::path file = m_folder->filePath("flipped.sqlite").toStdString();
            fs::copy_file(m_file, file, fs::copy_options::overwrite_existing);
            const std::string trigger = "vehicles_no_UPDATE";
            SQLite::Database flipped(file.string(), SQLite::OPEN_READWRITE);
            const std::string guard =
                flipped.execAndGet("SELECT sql FROM sqlite_master WHERE name = '" + trigger + "'")
                    .getString();
            flipped.exec("PRAGMA ignore_check_constraints = ON; DROP TRIGGER " + trigger
                         + "; UPDATE vehicles SET capacity_l = " + capacity + "; " + guard);
            const auto book = Logbook::open(file, OpenMode::readOnly);
            QVERIFY(book.has_value());
            const auto log = book->load(m_car);
            QVERIFY2(!log && log.error().code == ErrorCode::damaged, capacity);
        }
    }

    void readingOnlyLeavesNothingBehindAndChangesNothing()
    {
        const auto names = namesIn(m_folder->path().toStdString());
        QCOMPARE(names, std::set<std::string>{"log.sqlite"});
        const std::string before = bytesOf(m_file);
        {
            auto book = Logbook::open(m_file, OpenMode::readOnly);
            QVERIFY(book.has_value());
            QVERIFY(book->entries<Fill>(m_car)->front().value == fullFill());
            const auto refused = book->add(m_car, leastFill(), kNow);
            QVERIFY(!refused);
            QCOMPARE(refused.error().code, ErrorCode::fileAccess);
        }
        QCOMPARE(namesIn(m_folder->path().toStdString()), names);
        QVERIFY(bytesOf(m_file) == before);
    }

    // What a killed writer left in its write-ahead log is read, and left there.
    void readingOnlyLeavesAKilledWritersLogAlone()
    {
        const pid_t child = ::fork();
        QVERIFY(child >= 0);
        if (child == 0) {
            auto book = Logbook::open(m_file, OpenMode::readWrite);
            if (!book || !book->add(m_car, leastFill(), kNow))
                _exit(3);
            ::raise(SIGKILL);
        }
        int status = 0;
        QCOMPARE(::waitpid(child, &status, 0), child);
        QVERIFY(WIFSIGNALED(status));
        const std::string before = bytesOf(m_file);
        const std::string log = bytesOf(m_file.string() + "-wal");
        QVERIFY(!log.empty());
        {
            const auto book = Logbook::open(m_file, OpenMode::readOnly);
            QVERIFY(book.has_value());
            QCOMPARE(book->entries<Fill>(m_car)->size(), std::size_t(2));
        }
        QVERIFY(bytesOf(m_file) == before);
        QVERIFY(bytesOf(m_file.string() + "-wal") == log);
    }

    void aFileHeldByAnotherProgramIsBusy()
    {
        auto book = Logbook::open(m_file, OpenMode::readWrite, std::chrono::milliseconds(20));
        QVERIFY(book.has_value());
        SQLite::Database other(m_file.string(), SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE");
        const auto result = book->add(m_car, leastFill(), kNow);
        QVERIFY(!result);
        QCOMPARE(result.error().code, ErrorCode::busy);
        QCOMPARE(book->entries<Fill>(m_car)->size(), std::size_t(1));   // reading goes on
        other.exec("ROLLBACK");
        QVERIFY(book->add(m_car, leastFill(), kNow).has_value());
    }

    void hostileFileNamesAreOnlyNames()
    {
        for (const char* name : {"a'b\";--.sqlite", "file:x?mode=memory", "車 🚗.sqlite", "%s%n", "?#&"}) {
            const fs::path file = fs::path(m_folder->path().toStdString()) / name;
            QVERIFY2(!openingFails(file, OpenMode::createIfMissing), name);
            QVERIFY2(fs::file_size(file) > 0, name);
            QVERIFY2(!openingFails(file, OpenMode::readOnly), name);
        }
    }

    // The campaign of 1,000 is tests/accuracy/kill_campaign.cpp.
    void aKilledWriterLosesNothingThatWasAcknowledged()
    {
        const KillReport report = killWriters(m_file, m_car, 20, 20'260'731);
        QCOMPARE(report.kills, 20);
        QVERIFY(report.acknowledged >= 20);
        QCOMPARE(report.missing, std::size_t(0));
        QCOMPARE(report.doubled, std::size_t(0));
        QCOMPARE(report.unsound, 0);
    }
};

UNDERMARK_TEST(LogbookSafetyTest)
#include "logbook_safety_test.moc"
