// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/record_tables.h"

#include "engine/logbook/column_of.h"
#include "engine/logbook/fill_columns.h"

#include <limits>

namespace undermark::logbook {

const ColumnRange kPossibleTime{-2208988800.0, 253402300799.0,
                                "$ BETWEEN -2208988800 AND 253402300799",
                                Sentence::of("a time in the years 1900 to 9999")};

namespace {

constexpr double kBillion = 1e9;
constexpr double kAboveZero = std::numeric_limits<double>::denorm_min();

const ColumnRange kFromZero{0, kBillion, "$ BETWEEN 0 AND 1e9",
                            Sentence::of("a number of 0 or more, up to 1e9")};
const ColumnRange kOverZero{kAboveZero, kBillion, "$ > 0 AND $ <= 1e9",
                            Sentence::of("a number above 0, up to 1e9")};
const ColumnRange kAny{-kBillion, kBillion, "$ BETWEEN -1e9 AND 1e9",
                       Sentence::of("a number from -1e9 to 1e9")};
const ColumnRange kPossibleCelsius{-273.15, kBillion, "$ BETWEEN -273.15 AND 1e9",
                                   Sentence::of("degrees Celsius above absolute zero")};
const ColumnRange kStartCount{0, 1'000'000, "$ BETWEEN 0 AND 1000000", Sentence::of("0 to 1000000")};
const ColumnRange kTypedStartCount{0, 1000, nullptr, Sentence::of("0 to 1000 starts")};
const ColumnRange kPlace{0, kBillion, "$ >= 0", Sentence::of("a number of 0 or more, up to 1e9")};
const ColumnRange kReadingCount{1, kBillion, "$ >= 1", Sentence::of("1 or more")};
const ColumnRange kTypedReadingCount{1, kBillion, nullptr, Sentence::of("a whole number of 1 or more")};

using Minutes = std::chrono::duration<double, std::ratio<60>>;

constexpr auto kSameNumber = [](double number) { return number; };
using InLitres = ColumnUnit<&Volume::fromLitres, &Volume::litres, Measure::volume>;
using InKm = ColumnUnit<&Distance::fromKm, &Distance::km, Measure::distance>;
using InLitresPerKm =
    ColumnUnit<&Consumption::fromLitresPerKm, &Consumption::litresPerKm, Measure::number>;
using InLitresPer100Km =
    ColumnUnit<&Consumption::fromLitresPer100Km, &Consumption::litresPer100Km, Measure::rate>;
using InSenderUnit = ColumnUnit<&Signal::of, &Signal::value, Measure::number>;
using InCelsius = ColumnUnit<&Temperature::fromCelsius, &Temperature::celsius, Measure::temperature>;
using InMinutes = ColumnUnit<[](double number) { return Minutes(number); }, &Minutes::count,
                             Measure::number>;
using PerLitre = ColumnUnit<kSameNumber, kSameNumber, Measure::pricePerVolume>;
using AsItIs = ColumnUnit<kSameNumber, kSameNumber, Measure::number>;

std::string bothOrNeither(const std::string& mean, const std::string& sd)
{
    return "(" + mean + " IS NULL) = (" + sd + " IS NULL)";
}

template <class T>
Table<T> table(const char* kind, const char* name, std::vector<Column<T>> columns,
               std::vector<std::string> checks = {}, const char* partOf = nullptr)
{
    Table<T> made{{kind, name, partOf, std::move(checks), {}}, std::move(columns)};
    made.columns.assign(made.fields.begin(), made.fields.end());
    return made;
}

constexpr auto kCircuit = [](auto& vehicle) -> auto& { return vehicle.sender.circuit; };
constexpr auto kSenderUnit = [](auto& vehicle) -> auto& { return vehicle.sender.unit; };
constexpr auto kSupply = [](auto& vehicle) -> auto& { return vehicle.sender.supplyVolts; };
constexpr auto kPullUp = [](auto& vehicle) -> auto& { return vehicle.sender.pullUpOhms; };
constexpr auto kResolution = [](auto& vehicle) -> auto& { return vehicle.sender.resolution; };

} // namespace

std::string TableShape::names(const std::string& before) const
{
    std::string list;
    for (const ColumnShape& column : columns)
        list += (list.empty() ? "" : ", ") + before + column.name;
    return list;
}

template <>
const Table<Vehicle>& tableOf<Vehicle>()
{
    using C = ColumnOf<Vehicle>;
    static const Table<Vehicle> vehicles = table<Vehicle>(
        "vehicle", "vehicles",
        {C::text<&Vehicle::name>("name", "name").as("vehicle"),
         C::word<&Vehicle::fuel>("fuel"),
         C::number<&Vehicle::capacity, InLitres>("capacity_l", kOverZero, "capacity"),
         C::mean<&Vehicle::leftBehind, InLitres>("left_behind_l", kFromZero, "left behind"),
         C::sd<&Vehicle::leftBehind, InLitres>("left_behind_sd_l", kFromZero, "left behind sd"),
         C::mean<&Vehicle::unusable, InLitres>("unusable_l", kFromZero, "unusable"),
         C::sd<&Vehicle::unusable, InLitres>("unusable_sd_l", kFromZero, "unusable sd"),
         C::number<&Vehicle::zeroMark, InLitres>("zero_mark_l", kFromZero, "zero mark").as("zero_at_l"),
         C::number<&Vehicle::lamp, InLitres>("lamp_l", kFromZero, "lamp"),
         C::word<kCircuit>("circuit"),
         C::text<kSenderUnit>("signal_unit", "signal unit", TextRule::anyText),
         C::number<kSupply, AsItIs>("supply_v", kOverZero, "supply"),
         C::number<kPullUp, AsItIs>("pull_up_ohm", kOverZero, "pull-up"),
         C::number<kResolution, InSenderUnit>("resolution", kOverZero, "resolution")},
        {bothOrNeither("left_behind_l", "left_behind_sd_l"),
         bothOrNeither("unusable_l", "unusable_sd_l")});
    return vehicles;
}

template <>
const Table<SurgeMargin>& tableOf<SurgeMargin>()
{
    using C = ColumnOf<SurgeMargin>;
    static const Table<SurgeMargin> margins = table<SurgeMargin>(
        "vehicle", "surge_margins",
        {C::text<&SurgeMargin::mode>("mode", "surge margin"),
         C::number<&SurgeMargin::margin, InLitres>("litres", kFromZero, "surge margin")
             .as("surge_margin_l")},
        {}, "vehicles");
    return margins;
}

template <>
const Table<Mode>& tableOf<Mode>()
{
    using C = ColumnOf<Mode>;
    static const Table<Mode> modes = table<Mode>(
        "mode", "modes",
        {C::text<&Mode::name>("name", "mode").as("mode"),
         C::mean<&Mode::stated, InLitresPerKm>("stated_l_per_km", kOverZero, "rate")
             .inTables({C::csvMean<&Mode::stated, InLitresPer100Km>("stated_l_per_100km")}),
         C::sd<&Mode::stated, InLitresPerKm>("stated_sd_l_per_km", kFromZero, "rate sd")
             .inTables({C::csvSd<&Mode::stated, InLitresPer100Km>("stated_sd_l_per_100km")})},
        {bothOrNeither("stated_l_per_km", "stated_sd_l_per_km")});
    return modes;
}

template <>
const Table<Calibration>& tableOf<Calibration>()
{
    using C = ColumnOf<Calibration>;
    static const Table<Calibration> calibrations = table<Calibration>(
        "calibration", "calibrations",
        {C::time<&Calibration::time>("time", kPossibleTime, "time").as("date"),
         C::number<&Calibration::zeroMark, InLitres>("zero_mark_l", kFromZero, "zero mark")
             .as("zero_at_l")});
    return calibrations;
}

template <>
const Table<PlacedPoint>& tableOf<PlacedPoint>()
{
    using P = PlacedPoint;
    using C = ColumnOf<P>;
    static const Table<P> points = table<P>(
        "calibration", "calibration_points",
        {C::count<&P::position>("position", kPlace, "position").inTables({}),
         C::number<&P::added, InLitres>("added_l", kFromZero, "added").as("total_l"),
         C::number<&P::signal, InSenderUnit>("signal", kAny, "signal"),
         C::number<&P::signal2, InSenderUnit>("signal2", kAny, "signal2"),
         C::number<&P::signalSd, InSenderUnit>("signal_sd", kFromZero, "signal sd"),
         C::count<&P::readings>("readings", kReadingCount, "readings")
             .typed(kTypedReadingCount)
             .withDefault()},
        {}, "calibrations");
    return points;
}

template <>
const Table<Fill>& tableOf<Fill>()
{
    using C = ColumnOf<Fill>;
    static const Table<Fill> fills = table<Fill>(
        "fill", "fills",
        {C::time<&Fill::time>("time", kPossibleTime, "date").as("date"),
         C::number<&Fill::volume, InLitres>("litres", kOverZero, "litres").asked("litres pumped"),
         C::word<&Fill::extent>("extent").toldAsKept().inTables(extentInTables()),
         C::number<&Fill::odometer, InKm>("odometer_km", kFromZero, "odometer").asked("odometer"),
         C::number<&Fill::sinceLast, InKm>("since_last_km", kFromZero, "trip meter")
             .as("trip_meter_km")
             .asked("km since the last fill", &kOverZero),
         C::flag<&Fill::odometerReset>("odometer_reset")
             .asked("a swapped dash starts at another value"),
         C::number<&Fill::pricePerLitre, PerLitre>("price_per_l", kFromZero, "price")
             .inTables({C::csvNumber<&Fill::pricePerLitre, PerLitre>("price_per_l", kFromZero),
                        totalPrice(kFromZero)})
             .asked("price per litre"),
         C::number<&Fill::signalBefore, InSenderUnit>("signal_before", kAny, "signal")
             .as("signal")
             .asked("the sender's reading on arrival, before pumping"),
         C::text<&Fill::blend>("blend", "blend").asked("e0, e5, e10, e85, diesel, …"),
         C::number<&Fill::temperature, InCelsius>("temperature_c", kPossibleCelsius, "temperature")
             .asked("temperature of the fuel"),
         C::number<&Fill::displayed, InLitresPerKm>("displayed_l_per_km", kOverZero, "displayed rate")
             .inTables({C::csvNumber<&Fill::displayed, InLitresPer100Km>("displayed_l_per_100km",
                                                                        kOverZero)})
             .asked("the car's own figure"),
         ruling()});
    return fills;
}

template <>
const Table<Trip>& tableOf<Trip>()
{
    using C = ColumnOf<Trip>;
    static const Table<Trip> trips = table<Trip>(
        "trip", "trips",
        {C::time<&Trip::time>("time", kPossibleTime, "date").as("date"),
         C::number<&Trip::distance, InKm>("km", kFromZero, "km").asked("km driven"),
         C::text<&Trip::mode>("mode", "mode").asked("driving mode"),
         C::number<&Trip::idle, InMinutes>("idle_min", kFromZero, "idle minutes")
             .asked("minutes standing with the engine running"),
         C::count<&Trip::starts>("starts", kStartCount, "starts")
             .typed(kTypedStartCount)
             .asked("cold starts")},
        {"km > 0 OR coalesce(idle_min, 0) > 0"});
    return trips;
}

template <>
const Table<Proof>& tableOf<Proof>()
{
    using C = ColumnOf<Proof>;
    static const Table<Proof> proofs = table<Proof>(
        "proof", "proofs",
        {C::time<&Proof::time>("time", kPossibleTime, "date").as("date"),
         C::word<&Proof::kind>("kind"),
         C::mean<&Proof::volume, InLitres>("litres", kFromZero, "litres"),
         C::sd<&Proof::volume, InLitres>("litres_sd", kFromZero, "litres sd"),
         C::mean<&Proof::leftBehind, InLitres>("left_behind_l", kFromZero, "left behind"),
         C::sd<&Proof::leftBehind, InLitres>("left_behind_sd_l", kFromZero, "left behind sd"),
         C::number<&Proof::signal, InSenderUnit>("signal", kAny, "signal"),
         C::mean<&Proof::distance, InKm>("km", kFromZero, "km"),
         C::sd<&Proof::distance, InKm>("km_sd", kFromZero, "km sd"),
         C::text<&Proof::mode>("mode", "mode")},
        {bothOrNeither("litres", "litres_sd"), bothOrNeither("left_behind_l", "left_behind_sd_l"),
         bothOrNeither("km", "km_sd")});
    return proofs;
}

const std::vector<const TableShape*>& valueTables()
{
    static const std::vector<const TableShape*> all{
        &tableOf<Vehicle>(),     &tableOf<SurgeMargin>(), &tableOf<Mode>(), &tableOf<Calibration>(),
        &tableOf<PlacedPoint>(), &tableOf<Fill>(),        &tableOf<Trip>(), &tableOf<Proof>()};
    return all;
}

std::vector<SurgeMargin> partsOf(const Vehicle& vehicle)
{
    std::vector<SurgeMargin> parts;
    for (const auto& [mode, margin] : vehicle.surgeMargin)
        parts.push_back({mode, margin});
    return parts;
}

std::vector<PlacedPoint> partsOf(const Calibration& calibration)
{
    std::vector<PlacedPoint> parts;
    for (const CalibrationPoint& point : calibration.points)
        parts.push_back({point, std::int64_t(parts.size())});
    return parts;
}

void addPart(Vehicle& vehicle, SurgeMargin part)
{
    vehicle.surgeMargin[std::move(part.mode)] = part.margin;
}

void addPart(Calibration& calibration, PlacedPoint part)
{
    calibration.points.push_back(static_cast<const CalibrationPoint&>(part));
}

} // namespace undermark::logbook
