// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/export_csv.h"

#include "engine/base/format.h"
#include "engine/base/private_file.h"
#include "engine/base/record_words.h"
#include "engine/tables/csv_writer.h"

namespace undermark {

namespace fs = std::filesystem;

namespace {

std::string dateOf(Instant time)
{
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date(day);
    const std::chrono::hh_mm_ss clock(time - day);
    return format("%04d-%02u-%02uT%02ld:%02ld:%02ld", int(date.year()), unsigned(date.month()),
                  unsigned(date.day()), long(clock.hours().count()), long(clock.minutes().count()),
                  long(clock.seconds().count()));
}

// Mean and sd of an estimate, two cells.
template <class Q>
void pair(CsvWriter& csv, const std::optional<Estimate<Q>>& estimate, double (Q::*unit)() const)
{
    csv.number(estimate ? std::optional((estimate->mean.*unit)()) : std::nullopt);
    csv.number(estimate ? std::optional((estimate->sd.*unit)()) : std::nullopt);
}

void addVehicle(CsvWriter& csv, const Vehicle& v)
{
    csv.text(v.name).text(wordOf(v.fuel)).number(v.capacity.litres());
    pair(csv, v.leftBehind, &Volume::litres);
    pair(csv, v.unusable, &Volume::litres);
    csv.number(in(v.zeroMark, &Volume::litres)).number(in(v.lamp, &Volume::litres));
    csv.text(wordOf(v.sender.circuit)).text(v.sender.unit);
    csv.number(v.sender.supplyVolts).number(v.sender.pullUpOhms);
    csv.number(in(v.sender.resolution, &Signal::value)).endRow();
}

void addMode(CsvWriter& csv, const Vehicle& v, const Mode& mode)
{
    csv.text(v.name).text(mode.name);
    pair(csv, mode.stated, &Consumption::litresPer100Km);
    csv.endRow();
}

void addMargins(CsvWriter& csv, const Vehicle& v)
{
    for (const auto& [mode, margin] : v.surgeMargin)
        csv.text(v.name).text(mode).number(margin.litres()).endRow();
}

void addCalibration(CsvWriter& csv, const Vehicle& v, const Calibration& c)
{
    for (const CalibrationPoint& point : c.points)
        csv.text(v.name).text(dateOf(c.time)).number(c.zeroMark.litres()).number(point.added.litres())
            .number(point.signal.value()).number(in(point.signal2, &Signal::value))
            .number(in(point.signalSd, &Signal::value)).number(double(point.readings)).endRow();
}

void addFill(CsvWriter& csv, const Vehicle& v, const Entry<Fill>& entry)
{
    const Fill& fill = entry.value;
    csv.text(v.name).text(entry.id.uuid).text(dateOf(fill.time)).number(fill.volume.litres())
        .number(fill.extent != FillExtent::partial).number(fill.extent == FillExtent::neck)
        .number(in(fill.odometer, &Distance::km)).number(in(fill.sinceLast, &Distance::km))
        .number(double(fill.odometerReset)).number(fill.pricePerLitre)
        .number(in(fill.signalBefore, &Signal::value)).text(fill.blend.value_or(""))
        .number(in(fill.temperature, &Temperature::celsius))
        .number(in(fill.displayed, &Consumption::litresPer100Km))
        .number(fill.counted ? std::optional(double(*fill.counted)) : std::nullopt).endRow();
}

void addTrip(CsvWriter& csv, const Vehicle& v, const Entry<Trip>& entry)
{
    const Trip& trip = entry.value;
    csv.text(v.name).text(entry.id.uuid).text(dateOf(trip.time)).number(trip.distance.km())
        .text(trip.mode).number(trip.idle ? std::optional(trip.idle->count()) : std::nullopt)
        .number(trip.starts ? std::optional(double(*trip.starts)) : std::nullopt).endRow();
}

void addProof(CsvWriter& csv, const Vehicle& v, const Entry<Proof>& entry)
{
    const Proof& proof = entry.value;
    csv.text(v.name).text(entry.id.uuid).text(dateOf(proof.time)).text(wordOf(proof.kind));
    pair(csv, proof.volume, &Volume::litres);
    pair(csv, proof.leftBehind, &Volume::litres);
    csv.number(in(proof.signal, &Signal::value));
    pair(csv, proof.distance, &Distance::km);
    csv.text(proof.mode.value_or("")).endRow();
}

} // namespace

static Result<std::vector<ExportedVehicle>> readOnce(const Logbook& logbook)
{
    const auto vehicles = logbook.vehicles();
    if (!vehicles)
        return fail(vehicles.error());
    std::vector<ExportedVehicle> all;
    for (const auto& vehicle : *vehicles) {
        auto log = logbook.load(vehicle.id);
        if (!log)
            return fail(log.error());
        auto calibrations = logbook.entries<Calibration>(vehicle.id);
        if (!calibrations)
            return fail(calibrations.error());
        all.push_back({std::move(*log), std::move(*calibrations)});
    }
    return all;
}

Result<std::vector<ExportedVehicle>> readForExport(const Logbook& logbook)
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

Result<void> exportCsv(std::span<const ExportedVehicle> vehicles, const fs::path& folder)
{
    CsvWriter cars("vehicle,fuel,capacity_l,left_behind_l,left_behind_sd_l,unusable_l,unusable_sd_l,"
                   "zero_at_l,lamp_l,circuit,signal_unit,supply_v,pull_up_ohm,resolution");
    CsvWriter margins("vehicle,mode,surge_margin_l");
    CsvWriter modes("vehicle,mode,stated_l_per_100km,stated_sd_l_per_100km");
    CsvWriter calibrations("vehicle,date,zero_at_l,added_l,signal,signal2,signal_sd,readings");
    CsvWriter fills("vehicle,id,date,litres,full,to_the_neck,odometer_km,trip_meter_km,odometer_reset,"
                    "price_per_l,signal,blend,temperature_c,displayed_l_per_100km,counted");
    CsvWriter trips("vehicle,id,date,km,mode,idle_min,starts");
    CsvWriter proofs("vehicle,id,date,kind,litres,litres_sd,left_behind_l,left_behind_sd_l,signal,km,"
                     "km_sd,mode");
    for (const auto& [log, calibrationsOfIt] : vehicles) {
        const Vehicle& v = log.vehicle.value;
        addVehicle(cars, v);
        addMargins(margins, v);
        for (const auto& mode : log.modes)
            addMode(modes, v, mode.value);
        for (const auto& calibration : calibrationsOfIt)
            addCalibration(calibrations, v, calibration.value);
        for (const auto& fill : log.fills)
            addFill(fills, v, fill);
        for (const auto& trip : log.trips)
            addTrip(trips, v, trip);
        for (const auto& proof : log.proofs)
            addProof(proofs, v, proof);
    }
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
    const std::pair<const char*, const CsvWriter*> tables[] = {
        {"vehicles.csv", &cars}, {"surge_margins.csv", &margins}, {"modes.csv", &modes},   {"calibrations.csv", &calibrations},
        {"fills.csv", &fills},   {"trips.csv", &trips},   {"proofs.csv", &proofs}};
    Result<void> done;
    for (const auto& [name, table] : tables)
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
