// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/history_model.h"
#include "app/screen/logbook/logbook_view_model.h"
#include "tests/support/logbook_samples.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>
#include <fstream>
#include <random>

using namespace undermark;
using test::at;

namespace {

// So many fills, one a day, and a second connection beside the car's.
struct Log {
    explicit Log(int fills)
    {
        auto logbook = Logbook::open(file, OpenMode::createIfMissing).value();
        vehicle = *logbook.addVehicle(test::leastVehicle(), test::kNow);
        std::vector<Fill> all;
        for (int i = 0; i < fills; ++i)
            all.push_back(fill(i));
        ids = logbook.addAll<Fill>(vehicle, all, test::kNow).value();
        car.emplace(Car::open(file, OpenMode::readWrite, [] { return test::kNow; }).value());
    }
    // No page can be read while it is elsewhere.
    void takeAway() const { std::filesystem::rename(file, file.string() + ".elsewhere"); }
    void bringBack() const { std::filesystem::rename(file.string() + ".elsewhere", file); }
    static Fill fill(int day)
    {
        Fill fill = test::leastFill(at(1'000'000'000 + 86'400LL * day), 30.0 + 0.1 * (day % 100));
        fill.odometer = Distance::fromKm(400.0 * day);
        return fill;
    }
    void writeElsewhere(int day)
    {
        QVERIFY(Logbook::open(file, OpenMode::readWrite)->add(vehicle, fill(day), test::kNow));
    }

    test::TestFolder folder;
    std::filesystem::path file = folder.path / "log.sqlite";
    EntryId vehicle;
    std::vector<EntryId> ids;
    std::optional<Car> car;
};

QString historyCell(const HistoryModel& rows, int row, int role = HistoryModel::Value)
{
    return rows.data(rows.index(row), role).toString();
}

QString valueOf(int day)
{
    return fillSummary(Log::fill(day), UnitFormat());
}

constexpr int kMany = 20'000; // entries

} // namespace

class HistoryModelTest : public QObject {
    Q_OBJECT
private slots:
    void everyRowIsThereWhateverTheOrderItIsAskedIn()
    {
        Log log(kMany);
        HistoryModel rows(*log.car);
        rows.refresh({}, std::nullopt);
        QCOMPARE(rows.rowCount(), kMany);
        std::mt19937 random(3);
        for (int i = 0; i < 150; ++i) { // jumps, to both ends, too
            const int row = i == 0 ? kMany - 1 : i == 1 ? 0 : int(random() % kMany);
            QCOMPARE(rows.row(row)->id, log.ids[std::size_t(kMany - 1 - row)]);
            QCOMPARE(historyCell(rows, row), valueOf(kMany - 1 - row));
        }
        for (int row = kMany - 1; row > kMany - 1000; --row) // sliding up
            QCOMPARE(rows.row(row)->id, log.ids[std::size_t(kMany - 1 - row)]);
    }
    void aPageIsReadOnce()
    {
        Log log(1000);
        HistoryModel rows(*log.car);
        rows.refresh({}, std::nullopt);
        const int kept = 4 * LogWindow::kPageRows;
        for (int row = 0; row < kept; ++row)
            (void)historyCell(rows, row);
        log.takeAway();
        for (int row = kept - 1; row >= 0; --row)
            QCOMPARE(historyCell(rows, row), valueOf(999 - row)); // four pages are kept
        QVERIFY(!rows.problem());
        QCOMPARE(historyCell(rows, kept), "not read");
        QVERIFY(rows.problem());
    }
    void openingReadsNoRows()
    {
        Log log(1000);
        HistoryModel rows(*log.car);
        rows.refresh({}, std::nullopt);
        log.takeAway();
        QCOMPARE(rows.rowCount(), 1000);
        QCOMPARE(historyCell(rows, 0), "not read");
    }
    void whatTheLogbookTeachesIsFoundByTheEntry()
    {
        Log log(300);
        HistoryModel rows(*log.car);
        rows.refresh({}, LogKind::fill);
        for (const int row : {0, 70, 298}) { // 400 km with the litres of that day
            const double day = 299 - row;
            const QString rate = UnitFormat().rate(
                {Consumption::fromLitresPer100Km(Log::fill(int(day)).volume.litres() / 4.0), {}});
            QVERIFY2(historyCell(rows, row, HistoryModel::Detail).startsWith(rate),
                     qPrintable(historyCell(rows, row, HistoryModel::Detail) + " is not " + rate));
        }
        QCOMPARE(historyCell(rows, 299, HistoryModel::Detail), "0 km"); // the first ended no stretch
    }
    void rowsWrittenElsewhereAreNeverMixedWithThoseOfBefore()
    {
        Log log(500);
        HistoryModel rows(*log.car);
        rows.refresh({}, std::nullopt);
        const QString first = historyCell(rows, 0);
        log.writeElsewhere(501); // on top
        QSignalSpy stuck(&rows, &HistoryModel::stuck);
        QCOMPARE(historyCell(rows, 0), first);                             // its page is here
        QCOMPARE(historyCell(rows, 200, HistoryModel::Kind), "…"); // and this is not, but of another state
        QCOMPARE(historyCell(rows, 300, HistoryModel::Kind), "…");
        QCOMPARE(stuck.count(), 1);
        QVERIFY(!rows.problem());
        rows.refresh({}, std::nullopt);
        QCOMPARE(rows.rowCount(), 501);
        QCOMPARE(historyCell(rows, 0), valueOf(501));
        QCOMPARE(historyCell(rows, 201), valueOf(500 - 201));
    }
    void theScreenReadsOnByItselfWhenARowIsMissing()
    {
        Log log(500);
        LogbookViewModel view(*log.car);
        log.writeElsewhere(501);
        QCOMPARE(historyCell(*view.rows(), 200, HistoryModel::Kind), "…");
        QTRY_COMPARE(view.rows()->rowCount(), 501);
        QCOMPARE(historyCell(*view.rows(), 200), valueOf(500 - 200));
        QVERIFY(view.listNotices().isEmpty());
    }
    void rowsThatAreKeptStayWithTheirEntries()
    {
        Log log(500);
        HistoryModel rows(*log.car);
        rows.refresh({}, std::nullopt);
        const QList<int> wanted{100, 120, 140};
        for (const int row : wanted)
            (void)historyCell(rows, row); // in sight
        log.writeElsewhere(501);
        auto other = Logbook::open(log.file, OpenMode::readWrite).value();
        QVERIFY(other.undo(log.ids[499 - 120], test::kNow));
        QVERIFY(other.supersede(log.ids[499 - 140], Log::fill(600), test::kNow)); // now the newest
        connect(&rows, &HistoryModel::leaving, this, [&] { rows.setProperty("kept", QVariant::fromValue(wanted)); });
        rows.refresh({}, std::nullopt);
        // two on top; the one that is gone left its place to the one after it
        QCOMPARE(rows.property("kept").value<QList<int>>(), QList<int>({102, 122, 0}));
        QCOMPARE(rows.row(102)->id, log.ids[499 - 100]);
        QCOMPARE(rows.row(122)->id, log.ids[499 - 121]);
        rows.refresh({}, LogKind::fill); // another list
        QVERIFY(rows.property("kept").value<QList<int>>().isEmpty());
    }
    void aFileTakenAwayIsOneNoticeAndIsReadOnceItIsBack()
    {
        Log log(500);
        LogbookViewModel view(*log.car);
        QSignalSpy changed(&view, &LogbookViewModel::changed);
        log.takeAway();
        for (const int row : {10, 200, 300})
            QCOMPARE(historyCell(*view.rows(), row), "not read");
        QTRY_COMPARE(changed.count(), 1); // not again for every row
        QCOMPARE(view.listNotices().size(), 1);
        QVERIFY(view.listNotices()[0].problem());
        QVERIFY2(view.listNotices()[0].text.contains("not there any more"),
                 qPrintable(view.listNotices()[0].text));
        QVERIFY(view.emptyText().isEmpty());
        view.open(200);
        QVERIFY(!view.opened());
        log.bringBack();
        view.refresh();
        QVERIFY(view.listNotices().isEmpty());
        QCOMPARE(historyCell(*view.rows(), 200), valueOf(499 - 200));
    }
    void aFileDamagedWhileItIsShownIsANotice()
    {
        Log log(kMany);
        LogbookViewModel view(*log.car);
        QCOMPARE(historyCell(*view.rows(), 0), valueOf(kMany - 1));
        for (const std::string end : {"", "-wal"}) {
            const std::string name = log.file.string() + end;
            const auto size = std::filesystem::file_size(name);
            std::fstream file(name, std::ios::in | std::ios::out | std::ios::binary);
            file.seekp(4096 * 20);
            file << std::string(size - 4096 * 20, '\x5a');
        }
        for (int row = 0; row < kMany; row += 500) // more than SQLite remembers
            (void)historyCell(*view.rows(), row);
        QTRY_COMPARE(view.listNotices().size(), 1);
        QVERIFY(view.listNotices()[0].problem());
    }
};

UNDERMARK_TEST(HistoryModelTest)
#include "history_model_test.moc"
