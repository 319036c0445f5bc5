// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/record_tables.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>
#include <cstdlib>

using namespace undermark;
using namespace undermark::test;

// What was recorded stays, whatever is corrected, undone or written by others.
class LogbookHistoryTest : public QObject {
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;
    fs::path m_file;
    std::unique_ptr<Logbook> m_book;
    EntryId m_car;

    std::vector<double> litresListed() const
    {
        const auto fills = m_book->entries<Fill>(m_car).value();
        std::vector<double> volumes;
        for (const auto& fill : fills)
            volumes.push_back(fill.value.volume.litres());
        return volumes;
    }

    // `more`: beside them those of schema 2, one a kind.
    static void holdsTheSamples(const Logbook& book, std::size_t more = 0)
    {
        const auto vehicles = book.vehicles();
        QVERIFY(vehicles.has_value());
        QCOMPARE(vehicles->size(), std::size_t(1));
        const auto log = book.load(vehicles->front().id);
        QVERIFY(log.has_value());
        QVERIFY(log->vehicle.value == fullVehicle() && log->vehicle.recorded == kNow);
        QVERIFY(log->calibration && log->calibration->value == fullCalibration());
        QCOMPARE(log->modes.size(), std::size_t(4));
        QCOMPARE(log->modes[3].value.name, std::string(kSpecialStage));
        const auto holds = [&](const auto& entries, const auto& full, const auto& least) {
            return entries.size() == 2 + more && entries[0].value == full
                   && std::ranges::find(entries, least, [](const auto& each) { return each.value; }) != entries.end();
        };
        QVERIFY(holds(log->fills, fullFill(), leastFill()));
        QVERIFY(holds(log->trips, fullTrip(), leastTrip()));
        QVERIFY(holds(log->proofs, fullProof(), leastProof()));
    }

    fs::path copyOf(int schema) const
    {
        const fs::path copy = m_folder->filePath("copy.sqlite").toStdString();
        fs::copy_file(fixtureOf(schema), copy, fs::copy_options::overwrite_existing);
        fs::permissions(copy, fs::perms::owner_read | fs::perms::owner_write);
        return copy;
    }

    static std::vector<std::string> allTables()
    {
        std::vector<std::string> names{"entries"};
        for (const logbook::TableShape* table : logbook::valueTables())
            names.push_back(table->name);
        return names;
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_file = m_folder->filePath("log.sqlite").toStdString();
        auto book = Logbook::open(m_file, OpenMode::createIfMissing);
        QVERIFY2(book.has_value(), book ? "" : describe(book.error()).c_str());
        m_book = std::make_unique<Logbook>(std::move(*book));
        m_car = *m_book->addVehicle(fullVehicle(), kNow);
    }

    void noTableCanBeChangedOrEmptiedEvenByRawSql()
    {
        QVERIFY(m_book->add(m_car, fullCalibration(), kNow).has_value());
        QVERIFY(m_book->add(m_car, fullFill(), kNow).has_value());
        QVERIFY(m_book->add(m_car, fullTrip(), kNow).has_value());
        QVERIFY(m_book->add(m_car, fullProof(), kNow).has_value());
        QVERIFY(addSchema2(*m_book, m_car).has_value());
        QVERIFY(addSchema3(*m_book, m_car).has_value());
        SQLite::Database raw(m_file.string(), SQLite::OPEN_READWRITE);
        for (const std::string& table : allTables()) {
            const int rows = raw.execAndGet("SELECT count(*) FROM " + table).getInt();
            QVERIFY2(rows > 0, table.c_str());
            QVERIFY_EXCEPTION_THROWN(raw.exec("DELETE FROM " + table), SQLite::Exception);
            QVERIFY_EXCEPTION_THROWN(raw.exec("UPDATE " + table + " SET id = id"),
                                     SQLite::Exception);
            QCOMPARE(raw.execAndGet("SELECT count(*) FROM " + table).getInt(), rows);
        }
    }

    // REPLACE deletes without asking DELETE triggers.
    void replacingARowByRawSqlIsRefused()
    {
        QVERIFY(m_book->add(m_car, leastFill(at(5), 7.5), kNow).has_value());
        QVERIFY(m_book->add(m_car, fullCalibration(), kNow).has_value());
        QVERIFY(m_book->add(m_car, fullTrip(), kNow).has_value());
        QVERIFY(m_book->add(m_car, fullProof(), kNow).has_value());
        QVERIFY(addSchema2(*m_book, m_car).has_value());
        QVERIFY(addSchema3(*m_book, m_car).has_value());
        SQLite::Database raw(m_file.string(), SQLite::OPEN_READWRITE);
        for (const std::string& table : allTables()) {
            const std::string replace = "INSERT OR REPLACE INTO " + table + " SELECT * FROM " + table;
            QVERIFY_EXCEPTION_THROWN(raw.exec(replace), SQLite::Exception);
        }
        QVERIFY_EXCEPTION_THROWN(   // another id, but the UUID of a row that is there
            raw.exec("INSERT OR REPLACE INTO entries SELECT id + 1000, uuid, kind, vehicle, recorded, "
                     "corrects, revision, withdraws FROM entries WHERE kind = 'fill'"),
            SQLite::Exception);
        QCOMPARE(litresListed(), (std::vector<double>{7.5, fillOfTank().volume.litres()}));
        QVERIFY(holdsSchema2(*m_book, m_car));
        QVERIFY(holdsSchema3(*m_book, m_car));
    }

    void aCorrectionHidesTheRowBeforeAndKeepsIt()
    {
        const EntryId id = *m_book->add(m_car, leastFill(at(10), 10), kNow);
        QVERIFY(m_book->supersede(id, leastFill(at(10), 20), kNow).has_value());
        // A clock that ran backwards does not make a correction older.
        QVERIFY(m_book->supersede(id, leastFill(at(10), 30), at(1'000)).has_value());
        const auto listed = *m_book->entries<Fill>(m_car);
        QCOMPARE(listed.size(), std::size_t(1));
        QVERIFY(listed[0].id == id && listed[0].recorded == at(1'000));
        QCOMPARE(listed[0].value.volume.litres(), 30.0);
        const auto versions = *m_book->versions<Fill>(id);
        QCOMPARE(versions.size(), std::size_t(3));
        QCOMPARE(versions[0].uuid, id.uuid);
        QVERIFY(versions[0].value == leastFill(at(10), 10) && !versions[0].withdrawn);
        QVERIFY(versions[1].value == leastFill(at(10), 20) && !versions[1].withdrawn);
    }

    void undoTakesBackStepByStepAndACorrectionBringsBack()
    {
        const EntryId id = *m_book->add(m_car, leastFill(at(10), 10), kNow);
        QVERIFY(m_book->supersede(id, leastFill(at(10), 20), kNow).has_value());
        QVERIFY(m_book->undo(id, kNow).has_value());
        QCOMPARE(litresListed(), std::vector<double>{10});
        QVERIFY(m_book->undo(id, kNow).has_value());
        QVERIFY(litresListed().empty());
        QCOMPARE(m_book->undo(id, kNow).error().code, ErrorCode::badInput);
        QVERIFY(m_book->supersede(id, leastFill(at(10), 30), kNow).has_value());
        QCOMPARE(litresListed(), std::vector<double>{30});
        const auto versions = *m_book->versions<Fill>(id);
        QCOMPARE(versions.size(), std::size_t(3));
        QVERIFY(versions[0].withdrawn == kNow && versions[1].withdrawn == kNow);
        QVERIFY(!versions[2].withdrawn);
        QVERIFY(m_book->undo(id, kNow).has_value());
        QVERIFY(litresListed().empty());
    }

    void manyAreUndoneAtOnceOrNone()
    {
        std::vector<EntryId> ids;
        for (const double litres : {10.0, 20.0, 30.0})
            ids.push_back(*m_book->add(m_car, leastFill(at(10), litres), kNow));
        ids.push_back({"00000000-0000-4000-8000-000000000000"});
        QCOMPARE(m_book->undoAll(ids, kNow).error().code, ErrorCode::notFound);
        QCOMPARE(litresListed(), (std::vector<double>{10, 20, 30}));
        ids.pop_back();
        QVERIFY(m_book->undoAll(ids, kNow).has_value());
        QVERIFY(litresListed().empty());
        QCOMPARE(m_book->undoAll(ids, kNow).error().code, ErrorCode::badInput);
    }

    void aModeThatTripsNameKeepsItsNameAndCannotBeUndone()
    {
        const EntryId snow = *m_book->add(m_car, Mode{"snow", std::nullopt}, kNow);
        Trip trip = leastTrip();
        trip.mode = "snow";
        const EntryId driven = *m_book->add(m_car, trip, kNow);
        QCOMPARE(m_book->undo(snow, kNow).error().code, ErrorCode::badInput);
        QCOMPARE(m_book->supersede(snow, Mode{"ice", std::nullopt}, kNow).error().code,
                 ErrorCode::badInput);
        QVERIFY(m_book->undo(driven, kNow).has_value());
        QVERIFY(m_book->undo(snow, kNow).has_value());
        QCOMPARE(m_book->entries<Mode>(m_car)->size(), std::size_t(4));
    }

    void twoOpenLogbooksSeeEachOthersRows()
    {
        auto other = Logbook::open(m_file, OpenMode::readWrite);
        QVERIFY(other.has_value());
        const auto mine = *m_book->dataVersion();
        const auto theirs = *other->dataVersion();
        const EntryId id = *m_book->add(m_car, leastFill(at(1), 11), kNow);
        QCOMPARE(*m_book->dataVersion(), mine);   // own writes do not count
        QVERIFY(*other->dataVersion() != theirs);
        QCOMPARE(other->entries<Fill>(m_car)->front().value.volume.litres(), 11.0);
        QVERIFY(other->supersede(id, leastFill(at(1), 12), kNow).has_value());
        QVERIFY(*m_book->dataVersion() != mine);
        QCOMPARE(litresListed(), std::vector<double>{12});
    }

    void theFixtureOfSchema1IsReadInEveryField()
    {
        const fs::path copy = copyOf(1);
        const auto book = Logbook::open(copy, OpenMode::readWrite);
        QVERIFY2(book.has_value(), book ? "" : describe(book.error()).c_str());
        holdsTheSamples(*book);
        QVERIFY(book->checkIntegrity().has_value());
    }

    void theFixtureOfSchema2IsReadInEveryField()
    {
        const fs::path copy = copyOf(2);
        for (const OpenMode mode : {OpenMode::readOnly, OpenMode::readWrite}) {
            const auto book = Logbook::open(copy, mode);
            QVERIFY2(book.has_value(), book ? "" : describe(book.error()).c_str());
            holdsTheSamples(*book, 1);
            QVERIFY(holdsSchema2(*book, book->vehicles()->front().id));
            QVERIFY(book->checkIntegrity().has_value());
        }
    }

    void olderFixturesTakeWhatWasAddedSince()
    {
        for (const int schema : {1, 2}) {
            const fs::path copy = copyOf(schema);
            {
                auto book = Logbook::open(copy, OpenMode::readWrite);
                const EntryId car = book->vehicles()->front().id;
                QVERIFY(schema == 2 || addSchema2(*book, car).has_value());
                QVERIFY(addSchema3(*book, car).has_value());
            }
            const auto book = Logbook::open(copy, OpenMode::readOnly);
            QVERIFY(holdsSchema2(*book, book->vehicles()->front().id));
            QVERIFY(holdsSchema3(*book, book->vehicles()->front().id));
            QVERIFY(book->checkIntegrity().has_value());
        }
    }

    void theFixturesHelperStillWritesTheSameContent()
    {
        const fs::path fresh = m_folder->filePath("fresh.sqlite").toStdString();
        QVERIFY(writeFixture(fresh).has_value());
        QVERIFY(!fs::exists(fresh.string() + "-wal") && !fs::exists(fresh.string() + "-shm"));
        if (const char* target = std::getenv("UNDERMARK_WRITE_FIXTURE"))
            fs::copy_file(fresh, target, fs::copy_options::skip_existing);
        const auto book = Logbook::open(fresh, OpenMode::readWrite);
        const EntryId car = book->vehicles()->front().id;
        QVERIFY(holdsSchema2(*book, car) && holdsSchema3(*book, car));
        QCOMPARE(book->entries<Fill>(car)->size(), std::size_t(3));
    }
};

UNDERMARK_TEST(LogbookHistoryTest)
#include "logbook_history_test.moc"
