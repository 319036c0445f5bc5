// SPDX-License-Identifier: GPL-3.0-or-later
//
// Two devices' logbooks made one, whatever each did meanwhile and in whatever order
// they meet.
#include "engine/logbook/backup.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>
#include <random>

using namespace undermark;
using namespace undermark::test;

namespace {

// What is in force, in an order that does not depend on the file.
using Picture = std::map<std::string, std::string>;

template <class T>
void draw(const Logbook& book, const EntryId& vehicle, Picture& picture, auto text)
{
    const auto entries = book.entries<T>(vehicle);
    for (const auto& entry : *entries)
        picture[entry.id.uuid] = text(entry.value) + " " + std::to_string(entry.recorded.time_since_epoch().count());
}

Picture pictureOf(const Logbook& book)
{
    Picture picture;
    const auto vehicles = book.vehicles();
    for (const auto& vehicle : *vehicles) {
        picture[vehicle.id.uuid] = vehicle.value.name + std::to_string(vehicle.value.capacity.litres());
        draw<Mode>(book, vehicle.id, picture, [](const Mode& m) { return m.name; });
        draw<Fill>(book, vehicle.id, picture, [](const Fill& f) { return std::to_string(f.volume.litres()); });
        draw<Trip>(book, vehicle.id, picture, [](const Trip& t) { return std::to_string(t.distance.km()); });
        draw<Calibration>(book, vehicle.id, picture,
                          [](const Calibration& c) { return std::to_string(c.points.size()); });
    }
    return picture;
}

} // namespace

class LogbookMergeTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder{QDir("/dev/shm").exists() ? QStringLiteral("/dev/shm/undermark-XXXXXX")
                                                     : QDir::tempPath() + "/undermark-XXXXXX"};
    int m_files = 0;

    fs::path newFile() { return m_folder.filePath(QString("%1.sqlite").arg(++m_files)).toStdString(); }

    fs::path copyOf(const fs::path& file)
    {
        const fs::path copy = newFile();
        if (!Logbook::open(file, OpenMode::readOnly)->copyTo(copy))
            qFatal("no copy");
        return copy;
    }

    fs::path merged(const fs::path& a, const fs::path& b)
    {
        const fs::path result = copyOf(a);
        const auto report = Logbook::open(result, OpenMode::readWrite)->merge(b);
        if (!report)
            qFatal("%s", describe(report.error()).c_str());
        return result;
    }

    static Picture pictureAt(const fs::path& file) { return pictureOf(*Logbook::open(file, OpenMode::readOnly)); }

    // A car that all devices know, with some fills.
    fs::path shared(EntryId& car)
    {
        const fs::path file = newFile();
        auto book = Logbook::open(file, OpenMode::createIfMissing);
        car = *book->addVehicle(fullVehicle(), kNow);
        for (int i = 0; i < 5; ++i)
            (void)book->add(car, leastFill(at(i)), kNow);
        return file;
    }

    // What a person might do on one device: anything, on anything, at any clock.
    static void live(const fs::path& file, const EntryId& car, std::mt19937& random)
    {
        auto book = Logbook::open(file, OpenMode::readWrite);
        const auto pick = [&](int n) { return std::uniform_int_distribution<int>(0, n - 1)(random); };
        for (int i = 0; i < 25; ++i) {
            const Instant when = kNow + std::chrono::seconds(pick(4));
            const auto fills = *book->entries<Fill>(car);
            const Fill value = leastFill(at(pick(1000)), 1 + pick(50));
            switch (pick(6)) {
            case 0: (void)book->add(car, value, when); break;
            case 1: (void)book->add(car, leastTrip(at(pick(1000))), when); break;
            case 2: (void)book->add(car, Mode{"mode " + std::to_string(random()), {}}, when); break;
            case 3:
                if (!fills.empty())
                    (void)book->undo(fills[std::size_t(pick(int(fills.size())))].id, when);
                break;
            case 4: (void)book->supersede(car, leastVehicle("car " + std::to_string(pick(9))), when); break;
            default:
                if (!fills.empty())
                    (void)book->supersede(fills[std::size_t(pick(int(fills.size())))].id, value, when);
            }
        }
    }

    // A logbook that a program of that schema wrote.
    fs::path ofSchema(int schema)
    {
        const fs::path file = newFile();
        fs::copy_file(fixtureOf(schema), file);
        fs::permissions(file, fs::perms::owner_all);
        return file;
    }

private slots:
    // The other device has not been renewed yet: its logbook is brought up on the way in, and
    // is itself left as it is.
    void aLogbookOfAnOlderSchemaIsMigratedOnItsWayIn()
    {
        for (const int schema : {1, 2}) {
            const fs::path today = ofSchema(schema), old = ofSchema(schema);
            {
                auto book = Logbook::open(today, OpenMode::readWrite);
                const EntryId car = book->vehicles()->front().id;
                QVERIFY(schema == 2 || addSchema2(*book, car).has_value());
                QVERIFY(addSchema3(*book, car).has_value());
                QVERIFY(book->add(*book->addVehicle(leastVehicle(), kNow), leastFill(at(9)), kNow).has_value());
            }
            const auto holdsAll = [](const Logbook& book) {
                const EntryId car = book.vehicles()->front().id;
                return holdsSchema2(book, car) && holdsSchema3(book, car);
            };
            const std::string before = bytesOf(old);
            auto book = Logbook::open(today, OpenMode::readWrite);
            const auto report = book->merge(old);
            QVERIFY2(report.has_value(), report ? "" : describe(report.error()).c_str());
            QCOMPARE(report->added, std::int64_t(0));   // the same car, nothing new
            QVERIFY(bytesOf(old) == before);
            QVERIFY(holdsAll(*book));
            // And the old device's program, renewed, takes in what is new.
            auto renewed = Logbook::open(old, OpenMode::readWrite);
            QVERIFY(renewed->merge(today).has_value());
            QVERIFY(holdsAll(*renewed));
            QVERIFY(pictureOf(*renewed) == pictureOf(*book));
            QVERIFY(renewed->checkIntegrity().has_value());
        }
    }

    void mergingIsCommutativeAssociativeAndIdempotent()
    {
        for (unsigned seed = 0; seed < 12; ++seed) {
            std::mt19937 random(seed);
            EntryId car;
            const fs::path start = shared(car);
            const fs::path a = copyOf(start), b = copyOf(start), c = copyOf(start);
            for (const fs::path& device : {a, b, c})
                live(device, car, random);
            const Picture ab = pictureAt(merged(a, b));
            QVERIFY(ab != pictureAt(a) && ab != pictureAt(b));
            QVERIFY(ab == pictureAt(merged(b, a)));
            QVERIFY(pictureAt(merged(merged(a, b), c)) == pictureAt(merged(a, merged(b, c))));
            QVERIFY(pictureAt(merged(merged(a, b), b)) == ab);
            QVERIFY(pictureAt(merged(a, a)) == pictureAt(a));
        }
    }

    // Devices that meet, part and meet again agree in the end.
    void devicesThatKeepMeetingAgree()
    {
        std::mt19937 random(7);
        EntryId car;
        const fs::path a = shared(car), b = copyOf(a);
        for (int round = 0; round < 4; ++round) {
            live(a, car, random);
            live(b, car, random);
            QVERIFY(Logbook::open(a, OpenMode::readWrite)->merge(b).has_value());
        }
        QVERIFY(Logbook::open(b, OpenMode::readWrite)->merge(a).has_value());
        QVERIFY(pictureAt(a) == pictureAt(b));
    }

    void whatCameIsCountedAndTheOtherFileIsOnlyRead()
    {
        EntryId car;
        const fs::path a = shared(car);
        const fs::path b = newFile();
        const EntryId other = *Logbook::open(b, OpenMode::createIfMissing)->addVehicle(fullVehicle(), kNow);
        const auto names = namesIn(m_folder.path().toStdString());
        const std::string bytes = bytesOf(b);
        auto book = Logbook::open(a, OpenMode::readWrite);
        const auto report = book->merge(b);
        QVERIFY2(report.has_value(), report ? "" : describe(report.error()).c_str());
        QCOMPARE(report->added, std::int64_t(5));       // a vehicle and its four modes
        QCOMPARE(report->known, std::int64_t(0));
        QCOMPARE(report->sameName, std::vector<std::string>{"Fjord wagon"});
        QCOMPARE(book->merge(b)->added, std::int64_t(0));
        QCOMPARE(book->merge(b)->known, std::int64_t(5));
        QVERIFY(bytesOf(b) == bytes);
        book = Logbook::open(a, OpenMode::readWrite);
        QVERIFY(namesIn(m_folder.path().toStdString()).size() <= names.size() + 2);
        QVERIFY(book->load(other)->vehicle.value == fullVehicle());
    }

    void whatIsNoLogbookIsRefusedAndNothingChanges()
    {
        EntryId car;
        const fs::path a = shared(car);
        const Picture before = pictureAt(a);
        const fs::path text = newFile();
        writeBytes(text, "date,litres\n2026-01-01,40\n");
        auto book = Logbook::open(a, OpenMode::readWrite);
        QCOMPARE(book->merge(text).error().code, ErrorCode::damaged);
        QCOMPARE(book->merge(newFile()).error().code, ErrorCode::fileAccess);
        QVERIFY(pictureOf(*book) == before);
    }

    // A bundle whose rows break the rules: all or nothing, and one clear error.
    void aTamperedBundleIsBadInput()
    {
        const char* const tricks[] = {
            "PRAGMA ignore_check_constraints = ON; DROP TRIGGER fills_no_UPDATE; UPDATE fills SET litres = -5",
            "DROP TRIGGER entries_no_UPDATE; UPDATE entries SET kind = 'trip' WHERE kind = 'fill'",
            "DROP TRIGGER entries_no_UPDATE; UPDATE entries SET recorded = recorded + 1"};
        for (const char* trick : tricks) {
            EntryId car;
            const fs::path a = shared(car);
            const fs::path b = copyOf(a);
            QVERIFY(Logbook::open(b, OpenMode::readWrite)->add(car, leastFill(at(77)), kNow).has_value());
            SQLite::Database(b.string(), SQLite::OPEN_READWRITE).exec(trick);
            const Picture before = pictureAt(a);
            const auto report = Logbook::open(a, OpenMode::readWrite)->merge(b);
            QVERIFY2(!report, trick);
            QVERIFY(report.error().code == ErrorCode::badInput || report.error().code == ErrorCode::damaged);
            QVERIFY(pictureAt(a) == before);
        }
    }
};

UNDERMARK_TEST(LogbookMergeTest)
#include "logbook_merge_test.moc"
