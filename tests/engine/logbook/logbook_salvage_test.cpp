// SPDX-License-Identifier: GPL-3.0-or-later
//
// Out of a damaged logbook comes what is whole in it, and nothing that was never there.
#include "engine/logbook/salvage.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>
#include <random>
#include <sys/stat.h>

using namespace undermark;
using namespace undermark::test;

namespace {

constexpr std::size_t kPage = 4096;
constexpr int kFills = 600;
constexpr std::size_t kMostOnAPage = 160;   // fills of the samples' size

// The fills of all vehicles by id.
std::map<std::string, Fill> fillsOf(const fs::path& file)
{
    std::map<std::string, Fill> fills;
    const auto book = Logbook::open(file, OpenMode::readOnly);
    if (!book || !book->checkIntegrity())
        qFatal("unsound: %s", book ? "integrity" : describe(book.error()).c_str());
    const auto vehicles = book->vehicles();
    for (const auto& vehicle : *vehicles) {
        const auto entries = book->entries<Fill>(vehicle.id);
        for (const auto& fill : *entries)
            fills[fill.id.uuid] = fill.value;
    }
    return fills;
}

} // namespace

class LogbookSalvageTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder{QDir("/dev/shm").exists() ? QStringLiteral("/dev/shm/undermark-XXXXXX")
                                                     : QDir::tempPath() + "/undermark-XXXXXX"};
    fs::path m_whole, m_broken, m_fresh;
    std::string m_bytes;
    EntryId m_car, m_corrected, m_undone;
    std::map<std::string, Fill> m_fills;

    // Breaks the file and salvages it; what comes out holds nothing of its own making.
    std::optional<SalvageReport> salvaged(const std::string& bytes) const
    {
        writeBytes(m_broken, bytes);
        fs::remove(m_fresh);
        const auto report = salvage(m_broken, m_fresh, kNow);
        if (bytesOf(m_broken) != bytes)
            qFatal("the damaged file was changed");
        return report ? std::optional(*report) : std::nullopt;
    }

private slots:
    void initTestCase()
    {
        const fs::path folder = m_folder.path().toStdString();
        m_whole = folder / "whole.sqlite";
        m_broken = folder / "broken.sqlite";
        m_fresh = folder / "fresh.sqlite";
        {
            auto book = Logbook::open(m_whole, OpenMode::createIfMissing);
            m_car = *book->addVehicle(fullVehicle(), kNow);
            QVERIFY(book->add(m_car, fullCalibration(), kNow).has_value());
            QVERIFY(book->add(m_car, leastTrip(), kNow).has_value());
            QVERIFY(book->add(m_car, fullProof(), kNow).has_value());
            std::vector<Fill> fills;
            for (int i = 0; i < kFills; ++i)
                fills.push_back(leastFill(at(1'000'000 + i), 20.0 + i % 40));
            const auto ids = *book->addAll<Fill>(m_car, fills, kNow);
            m_corrected = ids[10];
            m_undone = ids[20];
            QVERIFY(book->supersede(m_corrected, leastFill(at(1'000'010), 99), kNow).has_value());
            QVERIFY(book->undo(m_undone, kNow).has_value());
        }
        makeSingleFile(m_whole);
        m_bytes = bytesOf(m_whole);
        m_fills = fillsOf(m_whole);
        QCOMPARE(m_fills.size(), std::size_t(kFills - 1));
    }

    void aSoundLogbookComesOutWhole()
    {
        const auto report = salvaged(m_bytes);
        QVERIFY(report.has_value());
        QCOMPARE(report->lost + report->standIns, std::int64_t(0));
        QVERIFY(!report->gaps);
        QVERIFY(fillsOf(m_fresh) == m_fills);
        const auto book = Logbook::open(m_fresh, OpenMode::readWrite);
        const auto log = book->load(m_car);
        QVERIFY(log->vehicle.value == fullVehicle());
        QVERIFY(log->calibration->value == fullCalibration());
        QVERIFY(log->proofs.front().value == fullProof());
        QCOMPARE(book->versions<Fill>(m_corrected)->size(), std::size_t(2));
        struct stat status{};
        QCOMPARE(::stat(m_fresh.c_str(), &status), 0);
        QCOMPARE(status.st_mode & 07777U, 0600U);
    }

    // Rows in the write-ahead log that a killed writer left count as well.
    void whatIsOnlyInTheWriteAheadLogIsTakenToo()
    {
        const fs::path live = m_broken.string() + ".live";
        fs::copy_file(m_whole, live);
        auto book = Logbook::open(live, OpenMode::readWrite);
        QVERIFY(book->add(m_car, leastFill(at(5), 5), kNow).has_value());
        const fs::path copy = m_broken.string() + ".killed";
        fs::copy_file(live, copy);
        fs::copy_file(live.string() + "-wal", copy.string() + "-wal");
        fs::remove(m_fresh);
        QVERIFY(salvage(copy, m_fresh, kNow).has_value());
        QCOMPARE(fillsOf(m_fresh).size(), m_fills.size() + 1);
    }

    // Each page broken in turn, all zeros or all noise: nothing is invented, and what is
    // lost is no more than a page holds.
    void aBrokenPageCostsWhatIsOnIt_data()
    {
        QTest::addColumn<bool>("noise");
        QTest::newRow("zeros") << false;
        QTest::newRow("noise") << true;
    }

    void aBrokenPageCostsWhatIsOnIt()
    {
        QFETCH(bool, noise);
        std::mt19937 random(7);
        const std::size_t pages = m_bytes.size() / kPage;
        QVERIFY(pages > 30);
        std::size_t hopeless = 0, costly = 0, tried = 0;
        for (std::size_t page = 1; page < pages; page += noise ? 3 : 1, ++tried) {   // page 0 says what the file is
            std::string bytes = m_bytes;
            for (std::size_t i = 0; i < kPage; ++i)
                bytes[page * kPage + i] = noise ? static_cast<char>(random()) : '\0';
            if (!salvaged(bytes)) {
                ++hopeless;   // a root page of the ledger, or of the schema
                continue;
            }
            std::size_t kept = 0;
            const auto found = fillsOf(m_fresh);
            for (const auto& [id, fill] : found) {
                const auto original = m_fills.find(id);
                if (original != m_fills.end() && original->second == fill)
                    ++kept;
                else   // undone or corrected: an older state of an entry may be back
                    QVERIFY(fill.volume.litres() == 20.0 + 10 || fill.volume.litres() == 20.0 + 20
                            || fill.volume.litres() == 99);
            }
            costly += kept + kMostOnAPage < m_fills.size();
        }
        // Nothing is left without the root of the ledger or of the schema; all fills are
        // gone with their table's root, or with the part of the schema that names it.
        qInfo("%zu pages broken in turn: %zu times nothing was left, %zu times more was lost than is on "
              "the page", tried, hopeless, costly);
        QVERIFY(hopeless <= 2 && costly <= 2);
    }

    void aFileCutShortGivesWhatIsBeforeTheCut()
    {
        const auto half = salvaged(m_bytes.substr(0, m_bytes.size() / 4 * 3));
        QVERIFY(half.has_value());
        QVERIFY(half->lost > 0 || half->gaps);
        const auto fills = fillsOf(m_fresh);
        QVERIFY(!fills.empty() && fills.size() < m_fills.size());
        for (const auto& [id, fill] : fills)
            QVERIFY(id == m_corrected.uuid || id == m_undone.uuid || m_fills.at(id) == fill);
    }

    void entriesOfALostVehicleHangOnAStandIn()
    {
        const fs::path file = m_broken.string() + ".lost-car";
        fs::copy_file(m_whole, file, fs::copy_options::overwrite_existing);
        SQLite::Database(file.string(), SQLite::OPEN_READWRITE)
            .exec("PRAGMA foreign_keys = OFF; DROP TRIGGER vehicles_no_DELETE; DELETE FROM vehicles; "
                  "DROP TRIGGER modes_no_DELETE; DELETE FROM modes");
        fs::remove(m_fresh);
        const auto report = salvage(file, m_fresh, kNow);
        QVERIFY2(report.has_value(), report ? "" : describe(report.error()).c_str());
        QCOMPARE(report->standIns, std::int64_t(3));   // the car, and two modes that are named
        const auto book = Logbook::open(m_fresh, OpenMode::readOnly);
        const auto cars = book->vehicles();
        QCOMPARE(cars->size(), std::size_t(1));
        QCOMPARE(cars->front().value.name, std::string("Salvaged 1"));
        QCOMPARE(cars->front().value.capacity.litres(), 99.0);
        const auto log = book->load(cars->front().id);
        QCOMPARE(log->fills.size(), m_fills.size());
        QVERIFY(log->calibration.has_value());
    }

    void aLogbookOfSchema1ComesOutWholeAsOneOfToday()
    {
        const auto report = salvaged(bytesOf(fixtureOf(1)));
        QVERIFY(report.has_value());
        QCOMPARE(report->lost + report->standIns, std::int64_t(0));
        const auto book = Logbook::open(m_fresh, OpenMode::readWrite);
        const auto log = book->load(book->vehicles()->front().id);
        QVERIFY(log->calibration->value == fullCalibration());
        QCOMPARE(log->fills.size(), std::size_t(2));
        QVERIFY(log->fills.front().value == fullFill());
        QCOMPARE(log->trips.size() + log->proofs.size(), std::size_t(4));
    }

    void aLogbookOfSchema2ComesOutWholeAsOneOfToday()
    {
        const auto report = salvaged(bytesOf(fixtureOf(2)));
        QVERIFY(report.has_value());
        QCOMPARE(report->lost + report->standIns, std::int64_t(0));
        const auto book = Logbook::open(m_fresh, OpenMode::readWrite);
        QVERIFY(holdsSchema2(*book, book->vehicles()->front().id));
    }

    void whatLaterSchemasAddedComesOutAndALostTankHasAStandIn()
    {
        const fs::path file = m_broken.string() + ".tanks";
        EntryId car;
        {
            auto book = Logbook::open(file, OpenMode::createIfMissing);
            car = *book->addVehicle(fullVehicle(), kNow);
            QVERIFY(addSchema2(*book, car).has_value());
            QVERIFY(addSchema3(*book, car).has_value());
        }
        makeSingleFile(file);
        const auto whole = salvaged(bytesOf(file));
        QVERIFY(whole.has_value());
        QCOMPARE(whole->lost + whole->standIns, std::int64_t(0));
        QVERIFY(holdsSchema2(*Logbook::open(m_fresh, OpenMode::readOnly), car));
        QVERIFY(holdsSchema3(*Logbook::open(m_fresh, OpenMode::readOnly), car));
        SQLite::Database(file.string(), SQLite::OPEN_READWRITE)
            .exec("DROP TRIGGER tanks_no_DELETE; DELETE FROM tanks");
        fs::remove(m_fresh);
        const auto report = salvage(file, m_fresh, kNow);
        QVERIFY(report.has_value());
        QCOMPARE(report->standIns, std::int64_t(1));
        const auto log = Logbook::open(m_fresh, OpenMode::readOnly)->load(car);
        QCOMPARE(log->tanks.size(), std::size_t(1));
        QCOMPARE(log->tanks.front().value.name, std::string(kWingTank));
        QCOMPARE(log->tanks.front().value.capacity.litres(), fillOfTank().volume.litres());
    }

    void aVehicleWhoseModesAreAllLostHasTheStandardOnes()
    {
        const fs::path whole = m_broken.string() + ".new-car", file = m_broken.string() + ".lost-modes";
        const EntryId car = *Logbook::open(whole, OpenMode::createIfMissing)->addVehicle(fullVehicle(), kNow);
        fs::copy_file(whole, file, fs::copy_options::overwrite_existing);
        SQLite::Database(file.string(), SQLite::OPEN_READWRITE)
            .exec("DROP TRIGGER modes_no_DELETE; DELETE FROM modes");
        fs::remove(m_fresh);
        const auto report = salvage(file, m_fresh, kNow);
        QVERIFY2(report.has_value(), report ? "" : describe(report.error()).c_str());
        QCOMPARE(report->standIns, std::int64_t(kStandardModes.size()));
        const auto log = Logbook::open(m_fresh, OpenMode::readOnly)->load(car);
        QVERIFY(log.has_value());
        QCOMPARE(log->modes.size(), kStandardModes.size());
        for (std::size_t i = 0; i < kStandardModes.size(); ++i)
            QCOMPARE(log->modes[i].value.name, std::string(kStandardModes[i]));
    }

    void valuesThatNoLogbookAcceptsAreLost()
    {
        const fs::path file = m_broken.string() + ".tampered";
        fs::copy_file(m_whole, file, fs::copy_options::overwrite_existing);
        SQLite::Database(file.string(), SQLite::OPEN_READWRITE)
            .exec("PRAGMA ignore_check_constraints = ON; DROP TRIGGER fills_no_UPDATE; "
                  "UPDATE fills SET litres = -1 WHERE id % 2 = 0");
        fs::remove(m_fresh);
        const auto report = salvage(file, m_fresh, kNow);
        QVERIFY(report && report->lost >= kFills / 2);
        const auto fills = fillsOf(m_fresh);
        for (const auto& [id, fill] : fills)
            QVERIFY(fill.volume.litres() > 0);
    }

    // Found by fuzzing: a view in place of a table can be endless work.
    void codeInTheFileIsNotRun()
    {
        const fs::path file = m_broken.string() + ".view";
        fs::copy_file(m_whole, file, fs::copy_options::overwrite_existing);
        SQLite::Database(file.string(), SQLite::OPEN_READWRITE)
            .exec("PRAGMA foreign_keys = OFF; DROP TABLE entries; CREATE VIEW entries AS WITH RECURSIVE "
                  "n(id) AS (SELECT 1 UNION ALL SELECT id + 1 FROM n) SELECT id, '' AS uuid, 'fill' AS kind, "
                  "1 AS vehicle, 0 AS recorded, NULL AS corrects, 0 AS revision, NULL AS withdraws FROM n");
        fs::remove(m_fresh);
        const auto report = salvage(file, m_fresh, kNow);
        QVERIFY(!report && report.error().code == ErrorCode::damaged);
        QVERIFY(english(report.error().detail).find("views") != std::string::npos);
        QCOMPARE(report.error().where.file, file.string());
        QVERIFY(!fs::exists(m_fresh));
        fs::remove(file);
    }

    void nothingIsOverwrittenAndNothingIsLeftBehind()
    {
        fs::remove(m_fresh);
        const auto names = namesIn(m_folder.path().toStdString());
        const fs::path text = m_broken.string() + ".txt";
        writeBytes(text, std::string(5000, 'x'));
        QCOMPARE(salvage(text, m_fresh, kNow).error().code, ErrorCode::damaged);
        QCOMPARE(salvage(text.string() + ".missing", m_fresh, kNow).error().code, ErrorCode::fileAccess);
        QVERIFY(!fs::exists(m_fresh));
        QCOMPARE(salvage(m_whole, text, kNow).error().code, ErrorCode::fileAccess);
        QCOMPARE(bytesOf(text), std::string(5000, 'x'));
        fs::remove(text);
        QCOMPARE(namesIn(m_folder.path().toStdString()), names);
    }
};

UNDERMARK_TEST(LogbookSalvageTest)
#include "logbook_salvage_test.moc"
