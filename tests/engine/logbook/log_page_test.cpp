// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/log_page.h"
#include "tests/support/logbook_files.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <random>

using namespace undermark;
using namespace undermark::test;

namespace {

// An entry as it should be listed: kind, id, time.
struct Line {
    LogKind kind;
    std::string id;
    Instant time;
    friend bool operator==(const Line&, const Line&) = default;
};

template <class T>
void append(std::vector<Line>& lines, LogKind kind, const std::vector<Entry<T>>& entries)
{
    for (const auto& entry : entries)
        lines.push_back({kind, entry.id.uuid, entry.value.time});
}

// The whole list, out of the whole log.
std::vector<Line> listed(const VehicleLog& log, std::optional<LogKind> kind)
{
    std::vector<Line> lines;
    append(lines, LogKind::fill, log.fills);
    append(lines, LogKind::trip, log.trips);
    append(lines, LogKind::proof, log.proofs);
    if (log.calibration)
        append(lines, LogKind::calibration, std::vector{*log.calibration});
    append(lines, LogKind::level, log.levels);
    std::erase_if(lines, [&](const Line& line) { return kind && line.kind != *kind; });
    std::ranges::stable_sort(lines, std::ranges::greater(), &Line::time);
    return lines;
}

std::vector<Line> linesOf(const std::vector<LogRow>& rows)
{
    std::vector<Line> lines;
    for (const LogRow& row : rows)
        lines.push_back({row.place.kind, row.id.uuid, row.place.time});
    return lines;
}

constexpr std::optional<LogKind> kChoices[] = {std::nullopt, LogKind::fill, LogKind::trip,
                                               LogKind::proof, LogKind::calibration, LogKind::level};

// Entries of all kinds in few seconds, corrected (also in time), undone and brought back.
void writeAtRandom(Logbook& book, const EntryId& car, std::mt19937& random, int steps)
{
    const auto pick = [&](int below) { return int(random() % unsigned(below)); };
    std::vector<std::pair<LogKind, EntryId>> written;
    for (int i = 0; i < steps; ++i) {
        const Instant time = at(1'700'000'000 + pick(12));
        const LogKind kind = LogKind(pick(5));
        const auto store = [&](const auto& value) {
            if (written.empty() || pick(3) > 0)
                written.emplace_back(kind, book.add(car, value, kNow + std::chrono::seconds(i)).value());
            else if (const auto& [other, id] = written[std::size_t(pick(int(written.size())))]; other == kind)
                QVERIFY(book.supersede(id, value, kNow + std::chrono::seconds(i)));
            else
                (void)book.undo(id, kNow); // nothing may be left to undo
        };
        switch (kind) {
        case LogKind::fill: store(leastFill(time, 1.0 + i)); break;
        case LogKind::trip: store(leastTrip(time)); break;
        case LogKind::proof: store(leastProof(time)); break;
        case LogKind::calibration: store(fullCalibration(time)); break;
        case LogKind::level: store(leastLevel(time)); break;
        }
    }
}

} // namespace

// The list in pages is the list of the whole log.
class LogPageTest : public QObject {
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;
    fs::path m_file;
    std::unique_ptr<Logbook> m_book;
    EntryId m_car;

    std::vector<Line> page(const LogPageWish& wish) const
    {
        return linesOf(m_book->logPage(m_car, wish).value().rows);
    }

    // All pages of so many rows, one after the other.
    std::vector<LogRow> all(std::optional<LogKind> kind, bool newer, int rows) const
    {
        std::vector<LogRow> list;
        LogPageWish wish{kind, {}, newer, 0, rows};
        for (;;) {
            const auto next = m_book->logPage(m_car, wish).value().rows;
            if (next.empty())
                return list;
            list.insert(newer ? list.begin() : list.end(), next.begin(), next.end());
            wish.from = newer ? next.front().place : next.back().place;
        }
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_file = m_folder->filePath("log.sqlite").toStdString();
        m_book = std::make_unique<Logbook>(Logbook::open(m_file, OpenMode::createIfMissing).value());
        m_car = *m_book->addVehicle(leastVehicle(), kNow);
    }

    void pagesOfRandomLogsAreTheWholeListFromEitherEnd()
    {
        for (unsigned seed = 1; seed <= 6; ++seed) {
            init();
            std::mt19937 random(seed);
            const EntryId other = *m_book->addVehicle(leastVehicle("Other"), kNow);
            writeAtRandom(*m_book, other, random, 20);
            writeAtRandom(*m_book, m_car, random, 100);
            const VehicleLog log = m_book->load(m_car).value();
            for (const auto kind : kChoices) {
                const auto whole = listed(log, kind);
                QCOMPARE(m_book->logCount(m_car, kind)->rows, std::int64_t(whole.size()));
                for (const int rows : {1, 3, 64})
                    for (const bool newer : {false, true})
                        QVERIFY2(linesOf(all(kind, newer, rows)) == whole,
                                 qPrintable(QString("seed %1, pages of %2").arg(seed).arg(rows)));
            }
        }
    }

    void eachRowIsFoundByItsNumberAndByItsEntry()
    {
        std::mt19937 random(5);
        writeAtRandom(*m_book, m_car, random, 200);
        const auto rows = all({}, false, 64);
        const auto whole = listed(m_book->load(m_car).value(), {});
        for (std::size_t i = 0; i < rows.size(); ++i) {
            QCOMPARE(*m_book->logRow(m_car, {}, rows[i].id, rows[i].place), std::int64_t(i));
            const auto skipped = page({{}, {}, false, std::int64_t(i), 2});
            QVERIFY(skipped.front() == whole[i]);
            const auto back = page({{}, rows[i].place, true, 0, 2});
            QVERIFY(std::ranges::equal(back, std::span(whole).subspan(i - std::min<std::size_t>(i, 2),
                                                                      std::min<std::size_t>(i, 2))));
        }
    }

    void valuesAreThoseOfTheWholeLog()
    {
        QVERIFY(m_book->add(m_car, fullCalibration(), kNow));
        QVERIFY(m_book->add(m_car, fullFill(), kNow));
        QVERIFY(m_book->add(m_car, fullTrip(), kNow));
        QVERIFY(m_book->add(m_car, fullProof(), kNow));
        const auto rows = m_book->logPage(m_car, {{}, {}, false, 0, 9}).value().rows;
        QCOMPARE(rows.size(), std::size_t(4)); // in the order of the samples' times
        QVERIFY(std::get<Proof>(rows[0].value) == fullProof());
        QVERIFY(std::get<Trip>(rows[1].value) == fullTrip());
        QVERIFY(std::get<Fill>(rows[2].value) == fullFill());
        QVERIFY(std::get<Calibration>(rows[3].value) == fullCalibration());
    }

    void whatIsWrittenBetweenTwoPagesShiftsNothingAndShowsInTheState()
    {
        for (int i = 0; i < 20; ++i)
            QVERIFY(m_book->add(m_car, leastFill(at(1'700'000'000 + i), 1.0 + i), kNow));
        const auto whole = listed(m_book->load(m_car).value(), {});
        const LogPage first = m_book->logPage(m_car, {{}, {}, false, 0, 5}).value();
        auto other = Logbook::open(m_file, OpenMode::readWrite).value();
        QVERIFY(other.add(m_car, leastFill(at(1'800'000'000)), kNow)); // above the first page
        const LogPage second =
            m_book->logPage(m_car, {{}, first.rows.back().place, false, 0, 5}).value();
        QVERIFY(std::ranges::equal(linesOf(second.rows), std::span(whole).subspan(5, 5)));
        QVERIFY(first.state != second.state);
        QVERIFY(second.state == m_book->state().value());
        QVERIFY(second.state == m_book->load(m_car)->state);
        QVERIFY(m_book->undo(first.rows.front().id, kNow)); // by this program itself
        QVERIFY(m_book->logCount(m_car, {})->state != second.state);
    }

    void anEntryThatMovedOrWentHasARowStill()
    {
        std::vector<EntryId> ids;
        for (int i = 0; i < 6; ++i)
            ids.push_back(*m_book->add(m_car, leastFill(at(1'700'000'000 + i)), kNow));
        const auto rows = all({}, false, 64); // ids[5] is row 0
        QVERIFY(m_book->supersede(ids[1], leastFill(at(1'700'000'100)), kNow));
        QCOMPARE(*m_book->logRow(m_car, {}, ids[1], rows[4].place), 0);
        QCOMPARE(*m_book->logRow(m_car, {}, ids[3], rows[2].place), 3);
        QVERIFY(m_book->undo(ids[3], kNow));
        QCOMPARE(*m_book->logRow(m_car, {}, ids[3], rows[2].place), 3); // where it was
    }

    void twentyThousandEntriesAreListedAsTheWholeLog()
    {
        std::vector<Fill> fills;
        for (int i = 0; i < 20'000; ++i)
            fills.push_back(leastFill(at(1'600'000'000 + i / 3), 1.0 + i % 50));
        const auto ids = m_book->addAll<Fill>(m_car, fills, kNow).value();
        for (std::size_t i = 0; i < ids.size(); i += 1000)
            QVERIFY(m_book->supersede(ids[i], leastFill(at(1'600'500'000), 2.0), kNow));
        const auto whole = listed(m_book->load(m_car).value(), {});
        QVERIFY(linesOf(all({}, false, 64)) == whole);
        QVERIFY(linesOf(all(LogKind::fill, true, 64)) == whole);
        const auto middle = page({{}, {}, false, 9'990, 20});
        QVERIFY(std::ranges::equal(middle, std::span(whole).subspan(9'990, 20)));
    }

    void aLogbookMadeBeforeTheIndexesIsListedAlikeAndGetsThem()
    {
        std::mt19937 random(9);
        writeAtRandom(*m_book, m_car, random, 100);
        const auto whole = listed(m_book->load(m_car).value(), {});
        m_book.reset();
        SQLite::Database raw(m_file.string(), SQLite::OPEN_READWRITE);
        raw.exec("DROP INDEX fills_time; DROP INDEX trips_time; DROP INDEX proofs_time; DROP INDEX levels_time");
        m_book = std::make_unique<Logbook>(Logbook::open(m_file, OpenMode::readOnly).value());
        QVERIFY(linesOf(all({}, false, 7)) == whole);
        m_book = std::make_unique<Logbook>(Logbook::open(m_file, OpenMode::readWrite).value());
        QVERIFY(linesOf(all({}, false, 7)) == whole);
        QCOMPARE(raw.execAndGet("SELECT count(*) FROM sqlite_master WHERE name LIKE '%s_time'").getInt(), 4);
    }

    void aFileTakenAwayAndAStrangersCarAreErrors()
    {
        QVERIFY(m_book->add(m_car, leastFill(), kNow));
        QCOMPARE(m_book->logPage({"no such"}, {}).error().code, ErrorCode::notFound);
        fs::rename(m_file, m_file.string() + ".elsewhere");
        QCOMPARE(m_book->logPage(m_car, {}).error().code, ErrorCode::fileAccess);
        QCOMPARE(m_book->logCount(m_car, {}).error().code, ErrorCode::fileAccess);
        fs::rename(m_file.string() + ".elsewhere", m_file);
        QCOMPARE(m_book->logCount(m_car, {})->rows, 1);
    }
};

UNDERMARK_TEST(LogPageTest)
#include "log_page_test.moc"
