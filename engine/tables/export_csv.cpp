// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/export_csv.h"

#include "engine/base/instant_text.h"
#include "engine/base/private_file.h"
#include "engine/logbook/record_tables.h"
#include "engine/tables/csv_writer.h"

#include <array>

namespace undermark {

namespace fs = std::filesystem;
using logbook::Cell;
using logbook::CsvField;
using logbook::Measure;
using logbook::PlacedLevel;
using logbook::PlacedPoint;
using logbook::SurgeMargin;
using logbook::partsOf;
using logbook::tableOf;

namespace {

template <class T>
const std::vector<CsvField<T>>& writtenFields()
{
    static const auto fields = [] {
        std::vector<CsvField<T>> all = tableOf<T>().csvFields();
        std::erase_if(all, [](const CsvField<T>& one) { return !one.field.get; });
        return all;
    }();
    return fields;
}

// ",date,litres": each column with a comma in front.
template <class T>
std::string header()
{
    std::string names;
    for (const CsvField<T>& one : writtenFields<T>())
        names += std::string(",") + one.name;
    return names;
}

void putCell(CsvWriter& csv, Measure measure, const Cell& cell)
{
    if (const auto* number = std::get_if<double>(&cell))
        csv.number(*number);
    else if (const auto* text = std::get_if<std::string>(&cell))
        csv.text(*text);
    else if (const auto* whole = std::get_if<std::int64_t>(&cell); !whole)
        csv.text("");
    else if (measure == Measure::date)
        csv.text(instantText(Instant(std::chrono::seconds(*whole))));
    else
        csv.number(double(*whole));
}

template <class T>
CsvWriter& putCells(CsvWriter& csv, const T& record)
{
    for (const CsvField<T>& one : writtenFields<T>())
        putCell(csv, one.measure, one.field.get(record));
    return csv;
}

// The tables in the making.
struct Tables {
    CsvWriter vehicles{header<Vehicle>().substr(1)};
    CsvWriter margins{"vehicle" + header<SurgeMargin>()};
    CsvWriter modes{"vehicle" + header<Mode>()};
    CsvWriter calibrations{"vehicle" + header<Calibration>() + header<PlacedPoint>()};
    CsvWriter fills{"vehicle,id" + header<Fill>()};
    CsvWriter trips{"vehicle,id" + header<Trip>()};
    CsvWriter proofs{"vehicle,id" + header<Proof>()};
    CsvWriter levels{"vehicle,id" + header<LevelRecord>()};
    CsvWriter tanks{"vehicle,id" + header<ExtraTank>()};
    CsvWriter verifications{"vehicle" + header<VerificationRecord>() + header<PlacedLevel>()};

    void add(const VehicleLog& log)
    {
        const Vehicle& vehicle = log.vehicle.value;
        putCells(vehicles, vehicle).endRow();
        for (const SurgeMargin& margin : partsOf(vehicle))
            putCells(margins.text(vehicle.name), margin).endRow();
        for (const auto& mode : log.modes)
            putCells(modes.text(vehicle.name), mode.value).endRow();
        for (const auto& calibration : log.calibrations)
            for (const PlacedPoint& point : partsOf(calibration.value))
                putCells(putCells(calibrations.text(vehicle.name), calibration.value), point).endRow();
        addEntries(fills, vehicle, log.fills);
        addEntries(trips, vehicle, log.trips);
        addEntries(proofs, vehicle, log.proofs);
        addEntries(levels, vehicle, log.levels);
        addEntries(tanks, vehicle, log.tanks);
        for (const auto& verification : log.verifications)
            for (const PlacedLevel& level : partsOf(verification.value))
                putCells(putCells(verifications.text(vehicle.name), verification.value), level).endRow();
    }

    template <class T>
    static void addEntries(CsvWriter& csv, const Vehicle& vehicle, const std::vector<Entry<T>>& entries)
    {
        for (const Entry<T>& entry : entries)
            putCells(csv.text(vehicle.name).text(entry.id.uuid), entry.value).endRow();
    }

    std::array<std::pair<const char*, const CsvWriter*>, 10> files() const
    {
        return {{{"vehicles.csv", &vehicles}, {"surge_margins.csv", &margins}, {"modes.csv", &modes},
                 {"calibrations.csv", &calibrations}, {"fills.csv", &fills}, {"trips.csv", &trips},
                 {"proofs.csv", &proofs}, {"levels.csv", &levels}, {"tanks.csv", &tanks}, {"verifications.csv", &verifications}}};
    }
};

} // namespace

static Result<std::vector<VehicleLog>> readOnce(const Logbook& logbook)
{
    const auto vehicles = logbook.vehicles();
    if (!vehicles)
        return fail(vehicles.error());
    std::vector<VehicleLog> all;
    for (const auto& vehicle : *vehicles) {
        auto log = logbook.load(vehicle.id);
        if (!log)
            return fail(log.error());
        all.push_back(std::move(*log));
    }
    return all;
}

Result<std::vector<VehicleLog>> readForExport(const Logbook& logbook)
{
    constexpr int kTries = 5;
    for (int i = 0; i < kTries; ++i) {
        const auto before = logbook.dataVersion();
        if (!before)
            return fail(before.error());
        auto all = readOnce(logbook);
        const auto after = logbook.dataVersion();
        if (!after)
            return fail(after.error());
        if (*before == *after)
            return all;
    }
    return fail(ErrorCode::busy, Sentence::of("another program goes on writing to the logbook"),
                {logbook.file().string()});
}

Result<void> exportCsv(std::span<const VehicleLog> vehicles, const fs::path& folder)
{
    Tables tables;
    for (const VehicleLog& vehicle : vehicles)
        tables.add(vehicle);
    // Written beside and moved into place, so that there is never half of it.
    const fs::path writing = folder.string() + ".writing";
    std::error_code failed;
    fs::remove_all(writing, failed);
    if (fs::exists(folder))
        return fail(ErrorCode::fileAccess, Sentence::of("the folder is there already"),
                    {folder.string()});
    if (!fs::create_directories(writing, failed))
        return fail(ErrorCode::fileAccess, Sentence::just(failed.message()), {folder.string()});
    fs::permissions(writing, fs::perms::owner_all, failed);
    Result<void> done;
    for (const auto& [name, table] : tables.files())
        if (done)
            done = writePrivateFile(writing / name, table->contents());
    if (done) {
        fs::rename(writing, folder, failed);
        if (failed)
            done = fail(ErrorCode::fileAccess, Sentence::just(failed.message()), {folder.string()});
    }
    if (!done)
        fs::remove_all(writing, failed);
    return done ? syncFolderOf(folder) : done;
}

} // namespace undermark
