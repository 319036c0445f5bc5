// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every table of values, each column once. From tableOf() follow the file's schema, how a
// record becomes a row and comes back, what merge and salvage carry over, what is refused
// as impossible, the columns of imported and exported tables, the options of the commands
// that add to the log and the JSON that they answer. A new column is a member of the record,
// one line in record_tables.cpp (of tanks and calibrations: tank_tables.cpp) and a step of the schema (migrate.h).
#pragma once

#include "engine/base/records.h"
#include "engine/logbook/column.h"

#include <type_traits>

namespace undermark::logbook {

// A vehicle's surge margins and the points of a calibration, taken or tried, have tables of
// their own.
struct SurgeMargin {
    std::string mode;
    Volume margin;
};
struct PlacedPoint : CalibrationPoint {
    std::int64_t position = 0;   // from 0, in the order in which they were taken
};
struct PlacedLevel : TriedLevel {
    std::int64_t position = 0;
};
std::vector<SurgeMargin> partsOf(const Vehicle& vehicle);
std::vector<PlacedPoint> partsOf(const Calibration& calibration);
std::vector<PlacedLevel> partsOf(const VerificationRecord& verification);
void addPart(Vehicle& vehicle, SurgeMargin part);
void addPart(Calibration& calibration, PlacedPoint part); // in the order of their positions
void addPart(VerificationRecord& verification, PlacedLevel part);

template <class T, class... Ts>
inline constexpr bool kIsOneOf = (std::is_same_v<T, Ts> || ...);
template <class T>
inline constexpr bool kHasParts = kIsOneOf<T, Vehicle, Calibration, VerificationRecord>;
template <class T>
using PartOf = typename decltype(partsOf(std::declval<const T&>()))::value_type;

// A record that has a time of its own, by which it is listed.
template <class T>
inline constexpr bool kHasTime = !kIsOneOf<T, Vehicle, Mode, ExtraTank, LiveSource, OwnPump>;
// A record that is of one tank of its vehicle, named where it is not the vehicle's own.
template <class T>
inline constexpr bool kOfTank =
    kIsOneOf<T, Calibration, Fill, Proof, VerificationRecord, LiveSource, Photo, LevelRecord>;
// A record that the car's own journal may have written, once.
template <class T>
inline constexpr bool kOfJournal = kIsOneOf<T, Trip, LevelRecord>;
// A record that other records name, so that it keeps its name.
template <class T>
inline constexpr bool kIsNamed = kIsOneOf<T, Mode, ExtraTank>;

extern const ColumnRange kPossibleTime;   // of whatever is recorded, in seconds UTC

template <class T>
const Table<T>& tableOf();
template <> const Table<Vehicle>& tableOf<Vehicle>();
template <> const Table<SurgeMargin>& tableOf<SurgeMargin>();
template <> const Table<Mode>& tableOf<Mode>();
template <> const Table<Calibration>& tableOf<Calibration>();
template <> const Table<PlacedPoint>& tableOf<PlacedPoint>();
template <> const Table<Fill>& tableOf<Fill>();
template <> const Table<Trip>& tableOf<Trip>();
template <> const Table<Proof>& tableOf<Proof>();
template <> const Table<ExtraTank>& tableOf<ExtraTank>();
template <> const Table<VerificationRecord>& tableOf<VerificationRecord>();
template <> const Table<PlacedLevel>& tableOf<PlacedLevel>();
template <> const Table<LiveSource>& tableOf<LiveSource>();
template <> const Table<OwnPump>& tableOf<OwnPump>();
template <> const Table<Photo>& tableOf<Photo>();
template <> const Table<HandOverRecord>& tableOf<HandOverRecord>();
template <> const Table<LevelRecord>& tableOf<LevelRecord>();

// All of them, those that are referred to first.
const std::vector<const TableShape*>& valueTables();

} // namespace undermark::logbook
