// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/record_tables.h"

#include "engine/logbook/column_units.h"
#include "engine/logbook/fill_columns.h"
#include "engine/logbook/sender_columns.h"

namespace undermark::logbook {

const ColumnRange kPossibleTime{-2208988800.0, 253402300799.0,
                                "$ BETWEEN -2208988800 AND 253402300799",
                                Sentence::of("a time in the years 1900 to 9999")};

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
         SenderColumns<Vehicle>::circuit(),
         SenderColumns<Vehicle>::unit(),
         SenderColumns<Vehicle>::supply(),
         SenderColumns<Vehicle>::pullUp(),
         SenderColumns<Vehicle>::resolution(),
         C::text<&Vehicle::currency>("currency", "currency", TextRule::currency),
         C::number<&Vehicle::massKg, AsItIs>("mass_kg", kOverZero, "mass"),
         C::time<&Vehicle::zeroSince>("zero_since", kPossibleTime, "zero since")},
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
         ruling(),
         C::text<&Fill::currency>("currency", "currency", TextRule::currency)
             .asked("of the price, by its three letters (ISO 4217); the vehicle's own if not said"),
         C::text<&Fill::tank>("tank", "tank").asked("the further tank that was filled; the vehicle's own if not said")});
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
             .asked("cold starts"),
         C::text<&Trip::journalId>("journal_id", "journal id"),
         C::number<&Trip::climb, InMetres>("climb_m", kAny, "climb")
             .asked("metres that rise, less what falls give back: at most 12 m for each km downhill")},
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
         C::text<&Proof::mode>("mode", "mode"),
         C::text<&Proof::tank>("tank", "tank")},
        {bothOrNeither("litres", "litres_sd"), bothOrNeither("left_behind_l", "left_behind_sd_l"),
         bothOrNeither("km", "km_sd")});
    return proofs;
}

template <>
const Table<LiveSource>& tableOf<LiveSource>()
{
    using C = ColumnOf<LiveSource>;
    static const Table<LiveSource> sources = table<LiveSource>(
        "source", "sources",
        {C::text<&LiveSource::spec>("spec", "source"),
         C::text<&LiveSource::reading>("reading", "map of signals", TextRule::longText),
         C::text<&LiveSource::dbc>("dbc", "DBC file", TextRule::document),
         C::text<&LiveSource::tank>("tank", "tank")});
    return sources;
}

template <>
const Table<OwnPump>& tableOf<OwnPump>()
{
    using C = ColumnOf<OwnPump>;
    static const Table<OwnPump> pumps = table<OwnPump>(
        "pump", "pumps",
        {C::text<&OwnPump::name>("name", "name"),
         C::number<&OwnPump::latitude, AsItIs>("latitude", kLatitude, "latitude"),
         C::number<&OwnPump::longitude, AsItIs>("longitude", kLongitude, "longitude"),
         C::text<&OwnPump::hours>("hours", "hours"),
         C::word<&OwnPump::fuel>("fuel"),
         C::text<&OwnPump::note>("note", "note"),
         C::number<&OwnPump::pricePerLitre, PerLitre>("price_per_l", kFromZero, "price")});
    return pumps;
}

template <>
const Table<Photo>& tableOf<Photo>()
{
    using C = ColumnOf<Photo>;
    static const Table<Photo> photos = table<Photo>(
        "photo", "photos",
        {C::time<&Photo::time>("time", kPossibleTime, "time").as("date"),
         C::text<&Photo::sha256>("sha256", "hash", TextRule::hash),
         C::word<&Photo::format>("format"),
         C::word<&Photo::step>("step"),
         C::number<&Photo::added, InLitres>("added_l", kFromZero, "added").as("total_l"),
         C::text<&Photo::tank>("tank", "tank"),
         C::text<&Photo::note>("note", "note")});
    return photos;
}

template <>
const Table<HandOverRecord>& tableOf<HandOverRecord>()
{
    using C = ColumnOf<HandOverRecord>;
    static const Table<HandOverRecord> handOvers = table<HandOverRecord>(
        "hand-over", "hand_overs",
        {C::time<&HandOverRecord::time>("time", kPossibleTime, "time").as("date"),
         C::text<&HandOverRecord::note>("note", "note")});
    return handOvers;
}

template <>
const Table<LevelRecord>& tableOf<LevelRecord>()
{
    using L = LevelRecord;
    using C = ColumnOf<L>;
    static const Table<L> levels = table<L>(
        "level", "levels",
        {C::time<&L::time>("time", kPossibleTime, "date").as("date"),
         C::number<&L::signal, InSenderUnit>("signal", kAny, "signal").asked("the sender's reading, at rest"),
         C::number<&L::signal2, InSenderUnit>("signal2", kAny, "signal2")
             .asked("and the second lobe's, of a saddle tank with two senders"),
         C::number<&L::signalSd, InSenderUnit>("signal_sd", kFromZero, "signal sd")
             .asked("noise of the reading (0.3 % of the sender's span)"),
         C::mean<&L::usable, InLitres>("usable_l", kFromZero, "litres"),
         C::sd<&L::usable, InLitres>("usable_sd_l", kFromZero, "litres sd"),
         C::mean<&L::added, InLitres>("added_l", kAny, "added").as("total_l"),
         C::sd<&L::added, InLitres>("added_sd_l", kFromZero, "added sd").as("total_sd_l"),
         C::number<&L::odometer, InKm>("odometer_km", kFromZero, "odometer").asked("odometer then"),
         C::word<&L::origin>("origin").withDefault(),
         C::text<&L::journalId>("journal_id", "journal id"),
         C::text<&L::tank>("tank", "tank").asked("the further tank that it is of; the vehicle's own if not said"),
         C::text<&L::note>("note", "note").asked("your own words")},
        {bothOrNeither("usable_l", "usable_sd_l"), bothOrNeither("added_l", "added_sd_l"),
         "coalesce(signal, usable_l, added_l) IS NOT NULL",
         "signal IS NOT NULL OR coalesce(signal2, signal_sd) IS NULL"});
    return levels;
}

const std::vector<const TableShape*>& valueTables()
{
    static const std::vector<const TableShape*> all{
        &tableOf<Vehicle>(),     &tableOf<SurgeMargin>(), &tableOf<Mode>(),
        &tableOf<Calibration>(), &tableOf<PlacedPoint>(), &tableOf<Fill>(),
        &tableOf<Trip>(),        &tableOf<Proof>(),       &tableOf<ExtraTank>(),
        &tableOf<VerificationRecord>(), &tableOf<PlacedLevel>(), &tableOf<LiveSource>(),
        &tableOf<OwnPump>(),     &tableOf<Photo>(),
        &tableOf<HandOverRecord>(), &tableOf<LevelRecord>()};
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

std::vector<PlacedLevel> partsOf(const VerificationRecord& verification)
{
    std::vector<PlacedLevel> parts;
    for (const TriedLevel& level : verification.levels)
        parts.push_back({level, std::int64_t(parts.size())});
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

void addPart(VerificationRecord& verification, PlacedLevel part)
{
    verification.levels.push_back(static_cast<const TriedLevel&>(part));
}

} // namespace undermark::logbook
