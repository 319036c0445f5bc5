// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every call by which a public action of the logbook changes the disk fails once,
// in every way: afterwards the file is sound and holds the old state or the new
// one, and the new one if the action was acknowledged.
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

// What is in force in a logbook, without the ids, which are made anew each time.
struct Content {
    Vehicle vehicle;
    std::vector<Mode> modes;
    std::optional<Calibration> calibration;
    std::vector<Fill> fills;
    std::vector<Trip> trips;
    std::vector<Proof> proofs;
    friend bool operator==(const Content&, const Content&) = default;
};

template <class T>
std::vector<T> values(const std::vector<Entry<T>>& entries)
{
    std::vector<T> all;
    for (const Entry<T>& entry : entries)
        all.push_back(entry.value);
    return all;
}

// The whole file, read through the logbook after an integrity check; nothing
// where that is not possible.
std::optional<std::vector<Content>> contentOf(const fs::path& file)
{
    auto book = Logbook::open(file, OpenMode::readWrite);
    if (!book || !book->checkIntegrity())
        return std::nullopt;
    const auto vehicles = book->vehicles();
    std::vector<Content> all;
    for (const auto& vehicle : *vehicles) {
        const auto log = book->load(vehicle.id);
        if (!log)
            return std::nullopt;
        all.push_back({log->vehicle.value, values(log->modes),
                       log->calibration ? std::optional(log->calibration->value) : std::nullopt,
                       values(log->fills), values(log->trips), values(log->proofs)});
    }
    return all;
}

struct Known {
    EntryId car, fill;
};
using Action = std::function<bool(Logbook&, const Known&)>;

const std::vector<std::pair<const char*, Action>>& actions()
{
    static const std::vector<std::pair<const char*, Action>> all{
        {"add a vehicle",
         [](Logbook& b, const Known&) { return b.addVehicle(leastVehicle(), kNow).has_value(); }},
        {"add a calibration",
         [](Logbook& b, const Known& k) { return b.add(k.car, fullCalibration(), kNow).has_value(); }},
        {"add a fill",
         [](Logbook& b, const Known& k) { return b.add(k.car, leastFill(), kNow).has_value(); }},
        {"add many trips",
         [](Logbook& b, const Known& k) {
             const std::vector<Trip> trips(300, leastTrip());
             return b.addAll<Trip>(k.car, trips, kNow).has_value();
         }},
        {"add a proof",
         [](Logbook& b, const Known& k) { return b.add(k.car, fullProof(), kNow).has_value(); }},
        {"supersede a fill",
         [](Logbook& b, const Known& k) { return b.supersede(k.fill, leastFill(), kNow).has_value(); }},
        {"undo a fill", [](Logbook& b, const Known& k) { return b.undo(k.fill, kNow).has_value(); }}};
    return all;
}

constexpr std::pair<const char*, DiskFault> kFaults[]{{"an error", DiskFault::ioError},
                                                      {"disk full", DiskFault::full},
                                                      {"short write", DiskFault::shortWrite},
                                                      {"read-only", DiskFault::readOnly},
                                                      {"power cut", DiskFault::powerCut}};

} // namespace

class LogbookFaultsTest : public QObject {
    Q_OBJECT
    // In memory where that is to be had: the faults are simulated, the disk's time is not wanted.
    QTemporaryDir m_folder{QDir("/dev/shm").exists() ? QStringLiteral("/dev/shm/undermark-XXXXXX")
                                                     : QDir::tempPath() + "/undermark-XXXXXX"};
    fs::path m_work, m_file;
    std::string m_before;    // bytes of the logbook that every action starts from
    Known m_known;
    long m_failed = 0;

    void restore()
    {
        fs::remove_all(m_work);
        fs::create_directory(m_work);
        writeBytes(m_file, m_before);
    }

private slots:
    void initTestCase()
    {
        m_work = m_folder.filePath("work").toStdString();
        m_file = m_work / "log.sqlite";
        fs::create_directory(m_work);
        {
            auto book = Logbook::open(m_file, OpenMode::createIfMissing);
            QVERIFY(book.has_value());
            m_known.car = *book->addVehicle(fullVehicle(), kNow);
            m_known.fill = *book->add(m_known.car, fullFill(), kNow);
        }
        QCOMPARE(namesIn(m_work).size(), std::size_t(1));   // closed: nothing beside the file
        m_before = bytesOf(m_file);
    }

    // The simulated disk itself: what was not synced is gone after a power cut.
    void aPowerCutTakesWhatWasNotSynced()
    {
        for (const bool synced : {true, false}) {
            fs::remove_all(m_work);
            fs::create_directory(m_work);
            FaultVfs disk(m_work);
            disk.arm(DiskFault::powerCut, 1'000);
            {
                SQLite::Database db(m_file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
                db.exec(synced ? "PRAGMA synchronous = FULL" : "PRAGMA synchronous = OFF");
                db.execAndGet("PRAGMA journal_mode = WAL");
                db.exec("CREATE TABLE t(x)");
                for (int i = 0; i < 1'000 && disk.calls() < 1'000; ++i)
                    db.tryExec("INSERT INTO t VALUES(1)");
            }
            QVERIFY(disk.disarm());
            SQLite::Database db(m_file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
            QCOMPARE(db.tableExists("t"), synced);
        }
    }

    void everyActionIsWhollyDoneOrNotAtAll_data()
    {
        QTest::addColumn<int>("action");
        QTest::addColumn<int>("fault");
        for (int a = 0; a < int(actions().size()); ++a)
            for (int f = 0; f < int(std::size(kFaults)); ++f)
                QTest::addRow("%s, %s", actions()[std::size_t(a)].first, kFaults[f].first) << a << f;
    }

    void everyActionIsWhollyDoneOrNotAtAll()
    {
        QFETCH(int, action);
        QFETCH(int, fault);
        const Action& act = actions()[std::size_t(action)].second;
        restore();
        const auto before = contentOf(m_file);
        {
            auto book = Logbook::open(m_file, OpenMode::readWrite);
            QVERIFY(act(*book, m_known));
        }
        const auto after = contentOf(m_file);
        QVERIFY(before && after && *before != *after);
        long n = 1;
        for (;; ++n) {
            restore();
            FaultVfs disk(m_work);
            disk.arm(kFaults[fault].second, n);
            bool acknowledged = false;
            {
                auto book = Logbook::open(m_file, OpenMode::readWrite);
                acknowledged = book && act(*book, m_known);
            }
            if (!disk.disarm()) {
                QVERIFY(acknowledged);
                break;
            }
            const auto now = contentOf(m_file);
            QVERIFY2(now.has_value(), qPrintable(QString("call %1: not readable").arg(n)));
            QVERIFY2(*now == *after || (!acknowledged && *now == *before),
                     qPrintable(QString("call %1, acknowledged %2").arg(n).arg(acknowledged)));
        }
        QVERIFY(n > 2);
        m_failed += n - 1;
    }

    void anInterruptedCreationCanBeRepeated_data()
    {
        QTest::addColumn<int>("fault");
        for (int f = 0; f < int(std::size(kFaults)); ++f)
            QTest::addRow("%s", kFaults[f].first) << f;
    }

    void anInterruptedCreationCanBeRepeated()
    {
        QFETCH(int, fault);
        long n = 1;
        for (;; ++n) {
            fs::remove_all(m_work);
            fs::create_directory(m_work);
            FaultVfs disk(m_work);
            disk.arm(kFaults[fault].second, n);
            { const auto book = Logbook::open(m_file, OpenMode::createIfMissing); }
            if (!disk.disarm())
                break;
            auto again = Logbook::open(m_file, OpenMode::createIfMissing);
            QVERIFY2(again.has_value(), again ? "" : describe(again.error()).c_str());
            QVERIFY(again->checkIntegrity().has_value());
            QVERIFY(again->addVehicle(leastVehicle(), kNow).has_value());
        }
        QVERIFY(n > 2);
        m_failed += n - 1;
    }

    void cleanupTestCase() { qInfo("%ld calls failed", m_failed); }
};

UNDERMARK_TEST(LogbookFaultsTest)
#include "logbook_faults_test.moc"
