// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/backup.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>
#include <sys/stat.h>

using namespace undermark;
using namespace undermark::test;

class LogbookBackupTest : public QObject {
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;
    fs::path m_file;
    EntryId m_car;

    std::size_t fillsIn(const fs::path& file) const
    {
        const auto book = Logbook::open(file, OpenMode::readOnly);
        return book ? book->entries<Fill>(m_car)->size() : 999;
    }

    void addFill() const
    {
        QVERIFY(Logbook::open(m_file, OpenMode::readWrite)->add(m_car, leastFill(), kNow).has_value());
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_file = m_folder->filePath("log.sqlite").toStdString();
        m_car = *Logbook::open(m_file, OpenMode::createIfMissing)->addVehicle(fullVehicle(), kNow);
        addFill();
    }

    void aBackupIsOneDatedFileThatOnlyItsOwnerCanRead()
    {
        auto book = Logbook::open(m_file, OpenMode::readWrite);
        const auto copy = backUp(*book, at(1'790'000'000));
        QVERIFY2(copy.has_value(), copy ? "" : describe(copy.error()).c_str());
        QCOMPARE(copy->filename().string(), std::string("log.sqlite.backup-20260921T141320Z"));
        struct stat info{};
        QCOMPARE(::stat(copy->c_str(), &info), 0);
        QCOMPARE(info.st_mode & 0777, mode_t(0600));
        QVERIFY(!fs::exists(copy->string() + "-wal"));
        QCOMPARE(fillsIn(*copy), std::size_t(1));
    }

    // The connection that is copied has rows in its write-ahead log.
    void aBackupHoldsWhatWasAcknowledgedAndTheLogbookGoesOn()
    {
        auto book = Logbook::open(m_file, OpenMode::readWrite);
        QVERIFY(book->add(m_car, leastFill(), kNow).has_value());
        const auto copy = backUp(*book, kNow);
        QVERIFY(book->add(m_car, leastFill(), kNow).has_value());
        QCOMPARE(fillsIn(*copy), std::size_t(2));
        QCOMPARE(fillsIn(m_file), std::size_t(3));
    }

    void theNewestAreKeptAndNothingElseIsTouched()
    {
        auto book = Logbook::open(m_file, OpenMode::readWrite);
        writeBytes(m_file.string() + ".notes", "mine");
        for (int i = 0; i < 5; ++i)
            QVERIFY(backUp(*book, at(1'790'000'000 + 60 * (i / 2)), 3).has_value());
        const auto kept = backupsOf(m_file);
        QCOMPARE(kept.size(), std::size_t(3));
        QVERIFY(kept[0].string().ends_with("141520Z"));
        QVERIFY(kept[1].string().ends_with("141420Z-2"));
        QVERIFY(kept[2].string().ends_with("141420Z"));
        QVERIFY(fs::exists(m_file.string() + ".notes"));
    }

    void restoringPutsTheBackupBackAndKeepsWhatWasThere()
    {
        const auto copy = backUp(*Logbook::open(m_file, OpenMode::readWrite), kNow);
        addFill();
        const auto kept = restore(*copy, m_file, kNow);
        QVERIFY2(kept.has_value(), kept ? "" : describe(kept.error()).c_str());
        QCOMPARE(fillsIn(m_file), std::size_t(1));
        QCOMPARE(fillsIn(*kept), std::size_t(2));
        QVERIFY(fs::exists(*copy));
        QVERIFY(restore(*kept, m_file, kNow).has_value());
        QCOMPARE(fillsIn(m_file), std::size_t(2));
    }

    void aDamagedLogbookIsReplacedAndItsBytesAreKept()
    {
        const auto copy = backUp(*Logbook::open(m_file, OpenMode::readWrite), kNow);
        const std::string broken = bytesOf(m_file).substr(0, 3000);
        writeBytes(m_file, broken);
        writeBytes(m_file.string() + "-wal", "a log that belongs to the broken file");
        const auto kept = restore(*copy, m_file, kNow);
        QVERIFY2(kept.has_value(), kept ? "" : describe(kept.error()).c_str());
        QVERIFY(bytesOf(*kept) == broken);
        QVERIFY(!fs::exists(m_file.string() + "-wal"));
        QCOMPARE(fillsIn(m_file), std::size_t(1));
    }

    void whatIsNoBackupChangesNothing()
    {
        const fs::path text = m_folder->filePath("notes.txt").toStdString();
        writeBytes(text, "not a logbook");
        const std::string before = bytesOf(m_file);
        const auto names = namesIn(m_folder->path().toStdString());
        QVERIFY(!restore(text, m_file, kNow));
        QVERIFY(!restore(m_folder->filePath("missing").toStdString(), m_file, kNow));
        QVERIFY(bytesOf(m_file) == before);
        QCOMPARE(namesIn(m_folder->path().toStdString()), names);
    }

    void aLogbookThatAnotherProgramHoldsIsNotReplaced()
    {
        const auto copy = backUp(*Logbook::open(m_file, OpenMode::readWrite), kNow);
        auto other = Logbook::open(m_file, OpenMode::readWrite);
        QVERIFY(other->add(m_car, leastFill(), kNow).has_value());
        const auto refused = restore(*copy, m_file, kNow);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::busy);
        QVERIFY(other->add(m_car, leastFill(), kNow).has_value());
        QCOMPARE(fillsIn(m_file), std::size_t(3));
        QVERIFY(!fs::exists(m_file.string() + ".restoring"));
    }

    void aCopyNeverOverwrites()
    {
        const auto book = Logbook::open(m_file, OpenMode::readOnly);
        const fs::path taken = m_folder->filePath("taken").toStdString();
        writeBytes(taken, "mine");
        QCOMPARE(book->copyTo(taken).error().code, ErrorCode::fileAccess);
        QCOMPARE(bytesOf(taken), std::string("mine"));
        QVERIFY(!book->copyTo(m_folder->filePath("no/such/folder").toStdString()));
    }
};

UNDERMARK_TEST(LogbookBackupTest)
#include "logbook_backup_test.moc"
