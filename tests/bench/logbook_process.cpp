// SPDX-License-Identifier: GPL-3.0-or-later
//
// logbook_process [FOLDER]: how long the logbook's ways in and out take with twenty
// years in it, 2,000 fills and 20,000 trips. Medians of five, with real syncs of the
// disk that FOLDER (default: the temporary folder) is on.
#include "engine/logbook/backup.h"
#include "engine/logbook/salvage.h"
#include "engine/tables/export_csv.h"
#include "engine/tables/import_csv.h"
#include "tests/support/long_log.h"

#include <cstdio>
#include <cstdlib>
#include <functional>

using namespace undermark;
namespace fs = std::filesystem;

namespace {

constexpr int kRuns = 5;
const Instant kNow = std::chrono::sys_days{std::chrono::year{2026} / 1 / 1};

template <class T>
T must(Result<T> result)
{
    if (!result) {
        std::fprintf(stderr, "%s\n", describe(result.error()).c_str());
        std::exit(1);
    }
    if constexpr (!std::is_void_v<T>)
        return std::move(*result);
}

void measure(const char* what, const std::function<void()>& prepare, const std::function<void()>& act)
{
    std::vector<double> times;
    for (int i = 0; i < kRuns; ++i) {
        prepare();
        const auto start = std::chrono::steady_clock::now();
        act();
        times.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    std::sort(times.begin(), times.end());
    std::printf("%-46s %7.3f s\n", what, times[kRuns / 2]);
}

} // namespace

int main(int argc, char** argv)
{
    const fs::path folder = (argc > 1 ? fs::path(argv[1]) : fs::temp_directory_path()) / "undermark-logbook-process";
    fs::remove_all(folder);
    fs::create_directories(folder);
    const fs::path file = folder / "long.sqlite", bundle = folder / "bundle", fresh = folder / "fresh.sqlite";
    must(test::writeLongLog(file, 2'000, 20'000));
    must(must(Logbook::open(file, OpenMode::readOnly)).copyTo(bundle));
    std::printf("20 years: 2,000 fills, 20,000 trips, %.1f MB\n", double(fs::file_size(bundle)) / 1e6);
    const auto nothing = [] {};
    const auto forget = [&] {
        for (const char* suffix : {"", "-wal", "-shm"})
            fs::remove(fresh.string() + suffix);
        fs::remove_all(folder / "tables");
    };

    measure("open and load everything", nothing, [&] {
        const auto book = must(Logbook::open(file, OpenMode::readOnly));
        must(book.load(must(book.vehicles()).front().id));
    });
    measure("merge a bundle into an empty logbook", forget, [&] {
        must(must(Logbook::open(fresh, OpenMode::createIfMissing)).merge(bundle));
    });
    measure("merge a bundle that is known already", nothing, [&] {
        must(must(Logbook::open(fresh, OpenMode::readWrite)).merge(bundle));
    });
    measure("backup, the oldest of 2 kept removed", nothing, [&] {
        must(backUp(must(Logbook::open(file, OpenMode::readWrite)), kNow, 2));
    });
    measure("restore", nothing, [&] { must(restore(bundle, file, kNow)); });
    measure("check the whole file", nothing, [&] {
        must(must(Logbook::open(file, OpenMode::readOnly)).checkIntegrity());
    });
    measure("salvage", forget, [&] { must(salvage(file, fresh, kNow)); });
    const auto exportAll = [&] {
        const auto book = must(Logbook::open(file, OpenMode::readOnly));
        must(exportCsv(must(readForExport(book)), folder / "tables"));
    };
    measure("export as CSV", forget, exportAll);
    forget();
    exportAll();
    measure("import 20,000 trips", [&] { fs::remove(fresh); fs::remove(fresh.string() + "-wal"); }, [&] {
        auto book = must(Logbook::open(fresh, OpenMode::createIfMissing));
        Vehicle car;
        car.name = "Long log";
        car.capacity = Volume::fromLitres(52);
        const EntryId id = must(book.addVehicle(car, kNow));
        const auto trips = must(readTable<Trip>(folder / "tables/trips.csv"));
        const auto known = must(book.entries<Trip>(id));
        std::vector<Trip> rows;
        for (const std::size_t i : newRows(trips, known))
            rows.push_back(trips.rows[i]);
        must(book.addAll<Trip>(id, rows, kNow));
    });
    fs::remove_all(folder);
    return 0;
}
