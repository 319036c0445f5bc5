// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>
#include <csignal>
#include <random>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace undermark;
using namespace undermark::test;

namespace {

constexpr std::size_t kUuidLength = 36;

// The child of a fork: adds fills for ever, telling each one that was acknowledged.
[[noreturn]] void keepWriting(const fs::path& file, const EntryId& car, int pipe, long long first)
{
    auto book = Logbook::open(file, OpenMode::readWrite);
    if (!book)
        _exit(3);
    for (long long i = first;; ++i) {
        const auto id = book->add(car, leastFill(at(i), 1.0 + static_cast<double>(i % 50)), kNow);
        if (!id || ::write(pipe, id->uuid.data(), kUuidLength) != kUuidLength)
            _exit(4);
    }
}

// Everything that the pipe still holds, in UUIDs.
std::vector<std::string> drain(int pipe)
{
    std::string all;
    char buffer[4096];
    for (ssize_t got = 0; (got = ::read(pipe, buffer, sizeof buffer)) > 0;)
        all.append(buffer, static_cast<std::size_t>(got));
    std::vector<std::string> uuids;
    for (std::size_t i = 0; i + kUuidLength <= all.size(); i += kUuidLength)
        uuids.push_back(all.substr(i, kUuidLength));
    return uuids;
}

} // namespace

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
        QVERIFY(openingFails(m_file, OpenMode::readWrite) == ErrorCode::newerSchema);
        QVERIFY(bytesOf(m_file) == before);
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

    // SIGKILL at random instants (fixed seed): of a real process, with real syncs.
    void aKilledWriterLosesNothingThatWasAcknowledged()
    {
        std::mt19937 random(20'260'731);
        std::uniform_int_distribution<int> microseconds(0, 30'000);
        std::set<std::string> acknowledged;
        for (int kill = 0; kill < 20; ++kill) {
            int ends[2];
            QCOMPARE(::pipe(ends), 0);
            const pid_t child = ::fork();
            QVERIFY(child >= 0);
            if (child == 0) {
                ::close(ends[0]);
                keepWriting(m_file, m_car, ends[1], 1'000'000LL * (kill + 1));
            }
            ::close(ends[1]);
            char first[kUuidLength];
            QCOMPARE(::read(ends[0], first, kUuidLength), ssize_t(kUuidLength));
            acknowledged.emplace(first, kUuidLength);
            ::usleep(static_cast<useconds_t>(microseconds(random)));
            QCOMPARE(::kill(child, SIGKILL), 0);
            int status = 0;
            QCOMPARE(::waitpid(child, &status, 0), child);
            QVERIFY(WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL);
            for (const std::string& uuid : drain(ends[0]))
                QVERIFY(acknowledged.insert(uuid).second);
            ::close(ends[0]);

            const auto book = Logbook::open(m_file, OpenMode::readWrite);
            QVERIFY2(book.has_value(), book ? "" : describe(book.error()).c_str());
            QVERIFY(book->checkIntegrity().has_value());
            const auto fills = *book->entries<Fill>(m_car);
            std::multiset<std::string> present;
            for (const auto& fill : fills)
                present.insert(fill.id.uuid);
            for (const std::string& uuid : acknowledged)
                QCOMPARE(present.count(uuid), std::size_t(1));
        }
        qInfo("%zu fills acknowledged over 20 kills", acknowledged.size());
    }
};

UNDERMARK_TEST(LogbookSafetyTest)
#include "logbook_safety_test.moc"
