// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/rows.h"

#include "engine/base/record_words.h"

#include <cassert>

namespace undermark::logbook {

namespace {

// The CHECKs admit no other word; a file that holds one all the same is damaged.
[[noreturn]] void unknownWord(const std::string& word)
{
    throw SQLite::Exception("unknown word '" + word + "'", 11 /* SQLITE_CORRUPT */);
}

template <class E>
E takeWord(Cursor& cursor)
{
    const std::string word = cursor.take().getString();
    const std::optional<E> value = fromWord<E>(word);
    if (!value)
        unknownWord(word);
    return *value;
}

constexpr const char* kCounted = "counted";
constexpr const char* kLeftOut = "left-out";

bool countedOf(const std::string& ruling)
{
    if (ruling != kCounted && ruling != kLeftOut)
        unknownWord(ruling);
    return ruling == kCounted;
}

void putTime(Cursor& cursor, Instant time)
{
    cursor.put(static_cast<std::int64_t>(time.time_since_epoch().count()));
}

Instant takeTime(Cursor& cursor)
{
    return Instant(std::chrono::seconds(cursor.takeInteger()));
}

// `unit` reads the quantity in the column's unit, e.g. &Volume::litres.
template <class Q, class Unit>
void putOptional(Cursor& cursor, const std::optional<Q>& value, Unit unit)
{
    if (value)
        cursor.put(((*value).*unit)());
    else
        cursor.putNull();
}

template <class Q, class Unit>
void putEstimate(Cursor& cursor, const std::optional<Estimate<Q>>& value, Unit unit)
{
    putOptional(cursor, value ? std::optional(value->mean) : std::nullopt, unit);
    putOptional(cursor, value ? std::optional(value->sd) : std::nullopt, unit);
}

template <class T>
void putOptional(Cursor& cursor, const std::optional<T>& value)
{
    if (!value)
        cursor.putNull();
    else if constexpr (std::is_same_v<T, std::string>)
        cursor.putText(*value);
    else
        cursor.put(*value);
}

// `from` makes the quantity of a number in the column's unit.
template <class From>
auto takeOptional(Cursor& cursor, From from) -> std::optional<decltype(from(0.0))>
{
    const SQLite::Column column = cursor.take();
    if (column.isNull())
        return std::nullopt;
    return from(column.getDouble());
}

template <class From>
auto takeEstimate(Cursor& cursor, From from) -> std::optional<Estimate<decltype(from(0.0))>>
{
    const auto mean = takeOptional(cursor, from);
    const auto sd = takeOptional(cursor, from);
    if (!mean || !sd)
        return std::nullopt;
    return Estimate<decltype(from(0.0))>{*mean, *sd};
}

std::optional<std::string> takeOptionalText(Cursor& cursor)
{
    const SQLite::Column column = cursor.take();
    return column.isNull() ? std::nullopt : std::optional(column.getString());
}

double plain(double value) { return value; }

} // namespace

const char* const Row<Vehicle>::kind = "vehicle";
const char* const Row<Vehicle>::table = "vehicles";
const char* const Row<Vehicle>::columns =
    "name, fuel, capacity_l, left_behind_l, left_behind_sd_l, unusable_l, unusable_sd_l, "
    "zero_mark_l, lamp_l, circuit, signal_unit, supply_v, pull_up_ohm, resolution";

void Row<Vehicle>::put(Cursor& cursor, const Vehicle& value)
{
    cursor.putText(value.name);
    cursor.putText(wordOf(value.fuel));
    cursor.put(value.capacity.litres());
    putEstimate(cursor, value.leftBehind, &Volume::litres);
    putEstimate(cursor, value.unusable, &Volume::litres);
    putOptional(cursor, value.zeroMark, &Volume::litres);
    putOptional(cursor, value.lamp, &Volume::litres);
    cursor.putText(wordOf(value.sender.circuit));
    cursor.putText(value.sender.unit);
    putOptional(cursor, value.sender.supplyVolts);
    putOptional(cursor, value.sender.pullUpOhms);
    putOptional(cursor, value.sender.resolution, &Signal::value);
}

Vehicle Row<Vehicle>::take(Cursor& cursor)
{
    Vehicle value;
    value.name = cursor.takeText();
    value.fuel = takeWord<FuelKind>(cursor);
    value.capacity = Volume::fromLitres(cursor.takeNumber());
    value.leftBehind = takeEstimate(cursor, Volume::fromLitres);
    value.unusable = takeEstimate(cursor, Volume::fromLitres);
    value.zeroMark = takeOptional(cursor, Volume::fromLitres);
    value.lamp = takeOptional(cursor, Volume::fromLitres);
    value.sender.circuit = takeWord<CircuitKind>(cursor);
    value.sender.unit = cursor.takeText();
    value.sender.supplyVolts = takeOptional(cursor, plain);
    value.sender.pullUpOhms = takeOptional(cursor, plain);
    value.sender.resolution = takeOptional(cursor, Signal::of);
    return value;
}

const char* const Row<Mode>::kind = "mode";
const char* const Row<Mode>::table = "modes";
const char* const Row<Mode>::columns = "name, stated_l_per_km, stated_sd_l_per_km";

void Row<Mode>::put(Cursor& cursor, const Mode& value)
{
    cursor.putText(value.name);
    putEstimate(cursor, value.stated, &Consumption::litresPerKm);
}

Mode Row<Mode>::take(Cursor& cursor)
{
    Mode value;
    value.name = cursor.takeText();
    value.stated = takeEstimate(cursor, Consumption::fromLitresPerKm);
    return value;
}

const char* const Row<Calibration>::kind = "calibration";
const char* const Row<Calibration>::table = "calibrations";
const char* const Row<Calibration>::columns = "time, zero_mark_l";

void Row<Calibration>::put(Cursor& cursor, const Calibration& value)
{
    putTime(cursor, value.time);
    cursor.put(value.zeroMark.litres());
}

Calibration Row<Calibration>::take(Cursor& cursor)
{
    Calibration value;
    value.time = takeTime(cursor);
    value.zeroMark = Volume::fromLitres(cursor.takeNumber());
    return value;
}

const char* const Row<Fill>::kind = "fill";
const char* const Row<Fill>::table = "fills";
const char* const Row<Fill>::columns =
    "time, litres, extent, odometer_km, since_last_km, odometer_reset, price_per_l, "
    "signal_before, blend, temperature_c, displayed_l_per_km, ruling";

void Row<Fill>::put(Cursor& cursor, const Fill& value)
{
    putTime(cursor, value.time);
    cursor.put(value.volume.litres());
    cursor.putText(wordOf(value.extent));
    putOptional(cursor, value.odometer, &Distance::km);
    putOptional(cursor, value.sinceLast, &Distance::km);
    cursor.put(value.odometerReset ? 1 : 0);
    putOptional(cursor, value.pricePerLitre);
    putOptional(cursor, value.signalBefore, &Signal::value);
    putOptional(cursor, value.blend);
    putOptional(cursor, value.temperature, &Temperature::celsius);
    putOptional(cursor, value.displayed, &Consumption::litresPerKm);
    if (value.counted)
        cursor.putText(*value.counted ? kCounted : kLeftOut);
    else
        cursor.putNull();
}

Fill Row<Fill>::take(Cursor& cursor)
{
    Fill value;
    value.time = takeTime(cursor);
    value.volume = Volume::fromLitres(cursor.takeNumber());
    value.extent = takeWord<FillExtent>(cursor);
    value.odometer = takeOptional(cursor, Distance::fromKm);
    value.sinceLast = takeOptional(cursor, Distance::fromKm);
    value.odometerReset = cursor.takeInteger() != 0;
    value.pricePerLitre = takeOptional(cursor, plain);
    value.signalBefore = takeOptional(cursor, Signal::of);
    value.blend = takeOptionalText(cursor);
    value.temperature = takeOptional(cursor, Temperature::fromCelsius);
    value.displayed = takeOptional(cursor, Consumption::fromLitresPerKm);
    if (const auto ruling = takeOptionalText(cursor))
        value.counted = countedOf(*ruling);
    return value;
}

const char* const Row<Trip>::kind = "trip";
const char* const Row<Trip>::table = "trips";
const char* const Row<Trip>::columns = "time, km, mode, idle_min, starts";

void Row<Trip>::put(Cursor& cursor, const Trip& value)
{
    putTime(cursor, value.time);
    cursor.put(value.distance.km());
    cursor.putText(value.mode);
    putOptional(cursor, value.idle ? std::optional(value.idle->count()) : std::nullopt);
    putOptional(cursor, value.starts);
}

Trip Row<Trip>::take(Cursor& cursor)
{
    using Minutes = std::chrono::duration<double, std::ratio<60>>;
    Trip value;
    value.time = takeTime(cursor);
    value.distance = Distance::fromKm(cursor.takeNumber());
    value.mode = cursor.takeText();
    value.idle = takeOptional(cursor, [](double minutes) { return Minutes(minutes); });
    if (const SQLite::Column starts = cursor.take(); !starts.isNull())
        value.starts = starts.getInt();
    return value;
}

const char* const Row<Proof>::kind = "proof";
const char* const Row<Proof>::table = "proofs";
const char* const Row<Proof>::columns =
    "time, kind, litres, litres_sd, left_behind_l, left_behind_sd_l, signal, km, km_sd, mode";

void Row<Proof>::put(Cursor& cursor, const Proof& value)
{
    putTime(cursor, value.time);
    cursor.putText(wordOf(value.kind));
    putEstimate(cursor, value.volume, &Volume::litres);
    putEstimate(cursor, value.leftBehind, &Volume::litres);
    putOptional(cursor, value.signal, &Signal::value);
    putEstimate(cursor, value.distance, &Distance::km);
    putOptional(cursor, value.mode);
}

Proof Row<Proof>::take(Cursor& cursor)
{
    Proof value;
    value.time = takeTime(cursor);
    value.kind = takeWord<ProofKind>(cursor);
    value.volume = takeEstimate(cursor, Volume::fromLitres);
    value.leftBehind = takeEstimate(cursor, Volume::fromLitres);
    value.signal = takeOptional(cursor, Signal::of);
    value.distance = takeEstimate(cursor, Distance::fromKm);
    value.mode = takeOptionalText(cursor);
    return value;
}

void insertParts(const SQLite::Database& database, std::int64_t id, const Vehicle& vehicle)
{
    SQLite::Statement insert(database, "INSERT INTO surge_margins VALUES (?, ?, ?)");
    for (const auto& [mode, margin] : vehicle.surgeMargin) {
        Cursor cursor(insert, 1);
        cursor.put(id);
        cursor.putText(mode);
        cursor.put(margin.litres());
        insert.exec();
        insert.reset();
    }
}

void insertParts(const SQLite::Database& database, std::int64_t id, const Calibration& calibration)
{
    SQLite::Statement insert(database, "INSERT INTO calibration_points VALUES (?, ?, ?, ?, ?, ?, ?)");
    std::int64_t position = 0;
    for (const CalibrationPoint& point : calibration.points) {
        Cursor cursor(insert, 1);
        cursor.put(id);
        cursor.put(position++);
        cursor.put(point.added.litres());
        cursor.put(point.signal.value());
        putOptional(cursor, point.signal2, &Signal::value);
        putOptional(cursor, point.signalSd, &Signal::value);
        cursor.put(point.readings);
        insert.exec();
        insert.reset();
    }
}

void readParts(const SQLite::Database& database, std::int64_t id, Vehicle& vehicle)
{
    SQLite::Statement select(database, "SELECT mode, litres FROM surge_margins WHERE id = ?");
    select.bind(1, id);
    while (select.executeStep()) {
        Cursor cursor(select, 0);
        std::string mode = cursor.takeText();
        vehicle.surgeMargin[std::move(mode)] = Volume::fromLitres(cursor.takeNumber());
    }
}

void readParts(const SQLite::Database& database, std::int64_t id, Calibration& calibration)
{
    SQLite::Statement select(database, "SELECT added_l, signal, signal2, signal_sd, readings "
                                       "FROM calibration_points WHERE id = ? ORDER BY position");
    select.bind(1, id);
    while (select.executeStep()) {
        Cursor cursor(select, 0);
        CalibrationPoint point;
        point.added = Volume::fromLitres(cursor.takeNumber());
        point.signal = Signal::of(cursor.takeNumber());
        point.signal2 = takeOptional(cursor, Signal::of);
        point.signalSd = takeOptional(cursor, Signal::of);
        point.readings = static_cast<int>(cursor.takeInteger());
        calibration.points.push_back(point);
    }
}

} // namespace undermark::logbook
