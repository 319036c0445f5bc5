// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person records about a car: the plain facts, without estimates. The
// logbook stores them, every computation starts from them. Optional means
// "not known"; nothing here is ever 0 or NaN to say so.
#pragma once

#include "engine/base/tank_records.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

struct Vehicle {
    std::string name;
    FuelKind fuel = FuelKind::petrol;
    Volume capacity;                         // to the first click, as stated; > 0
    std::optional<Estimate<Volume>> leftBehind; // still there when the pump spits
    std::optional<Estimate<Volume>> unusable;   // still there when the engine starves
    std::optional<Volume> zeroMark;          // usable litres at zero, where there is no calibration
    std::optional<Volume> lamp;              // usable litres at which the lamp lights
    std::map<std::string, Volume> surgeMargin;  // by mode: litres that surge makes unusable
    Sender sender;
    std::optional<std::string> currency{};        // ISO 4217, of fills that state none: "EUR"
    std::optional<double> massKg{};               // as it is driven, with who sits in it; > 0
    std::optional<Instant> zeroSince{};           // when that zero mark came in force; absent: as far back as the log
    friend bool operator==(const Vehicle&, const Vehicle&) = default;
};

// A kind of driving. The rate is what the user states before anything is
// learnt: a wide prior, or nothing.
struct Mode {
    std::string name;
    std::optional<Estimate<Consumption>> stated;
    friend bool operator==(const Mode&, const Mode&) = default;
};

// The modes of a new vehicle; the names are what the user types.
inline constexpr const char* kTown = "town";
inline constexpr const char* kOpenRoad = "open-road";
inline constexpr const char* kMotorway = "motorway";
inline constexpr const char* kSpecialStage = "special-stage";
// What every new vehicle has, in the order in which they are shown.
inline constexpr std::array kStandardModes{kTown, kOpenRoad, kMotorway, kSpecialStage};

enum class FillExtent {
    full,    // to the first click
    partial,
    neck,    // past the click, to the neck
};

struct Fill {
    Instant time{};
    Volume volume;                           // pumped, > 0
    FillExtent extent = FillExtent::full;
    std::optional<Distance> odometer;
    std::optional<Distance> sinceLast;       // trip meter, from the fill before
    bool odometerReset = false;              // a swapped dash started at another value
    std::optional<double> pricePerLitre;     // in `currency`, else in the vehicle's own
    std::optional<Signal> signalBefore;      // read on arrival, before pumping
    std::optional<std::string> blend;        // e0, e10, e85, ...
    std::optional<Temperature> temperature;  // of the fuel
    std::optional<Consumption> displayed;    // the car's own figure since the last fill
    std::optional<bool> counted;             // the user's ruling on a flagged fill: counts, or is
                                             // left out; without one the screening decides
    std::optional<std::string> currency{};     // ISO 4217; absent: the vehicle's own
    std::optional<std::string> tank{};         // name of an ExtraTank; absent: the vehicle's own
    friend bool operator==(const Fill&, const Fill&) = default;
};

struct Trip {
    Instant time{};
    Distance distance;                       // > 0, or 0 with idling
    std::string mode;
    std::optional<std::chrono::duration<double, std::ratio<60>>> idle;  // minutes
    std::optional<int> starts;               // cold starts
    // Written by the car itself: the name of that trip in its journal, so that it is never
    // kept twice. Absent: somebody typed it.
    std::optional<std::string> journalId{};
    std::optional<Distance> climb{};         // of height: what rises less what falls give back (roads/climb.h)
    friend bool operator==(const Trip&, const Trip&) = default;
};

enum class ProofKind {
    drained,  // litres pumped out, from a reading (the zero mark if none), until the pump spat;
              // or the left-behind litres measured with the tank open
    base,     // litres poured after draining, at which zero was read
    stalled,  // the engine starved so many km past the zero mark
    pastZero, // driven so many km past the zero mark, and still running
};

// Evidence about the hidden reserve of one tank.
struct Proof {
    Instant time{};
    ProofKind kind = ProofKind::base;
    std::optional<Estimate<Volume>> volume;     // drained, base: litres out or in
    std::optional<Estimate<Volume>> leftBehind; // drained: litres found behind
    std::optional<Signal> signal;               // drained: the reading it started from
    std::optional<Estimate<Distance>> distance; // stalled, pastZero: km past the zero mark
    std::optional<std::string> mode;            // stalled, pastZero: kind of driving
    std::optional<std::string> tank{};            // name of an ExtraTank; absent: the vehicle's own
    friend bool operator==(const Proof&, const Proof&) = default;
};

// How a level came into the log.
enum class LevelOrigin {
    typed,    // by a person
    followed, // by the car itself, when a drive was over
};

// What was in one tank at a time: as its sender was read, or as it was known. One of the three
// is there; litres come before a reading. From the newest the level of now is counted
// (engine/outlook/level.h).
struct LevelRecord {
    Instant time{};
    std::optional<Signal> signal;               // the sender's reading, at rest
    std::optional<Signal> signal2;              // of two senders
    std::optional<Signal> signalSd;             // noise of the reading; absent: as usual at rest
    std::optional<Estimate<Volume>> usable;     // litres down to dry on a level road
    std::optional<Estimate<Volume>> added{};    // litres since drained, as a tracker had them
    std::optional<Distance> odometer{};         // then
    LevelOrigin origin = LevelOrigin::typed;
    std::optional<std::string> journalId{};     // followed: as a trip's
    std::optional<std::string> tank{};          // name of an ExtraTank; absent: the vehicle's own
    std::optional<std::string> note{};
    friend bool operator==(const LevelRecord&, const LevelRecord&) = default;
};

// The car was handed over to whoever drives it, with its sheet.
struct HandOverRecord {
    Instant time{};
    std::optional<std::string> note{};          // to whom, what was said
    friend bool operator==(const HandOverRecord&, const HandOverRecord&) = default;
};

// A source of live readings: where it is, in the words of engine/signals/source_spec.h, and
// which of its values are the tank's reading and what else is heard.
struct LiveSource {
    std::string spec;
    std::optional<std::string> reading;         // the text of its map (frame_values.h); absent: the source's own
    std::optional<std::string> dbc;             // the text of its DBC file, kept with the car
    std::optional<std::string> tank{};            // name of an ExtraTank; absent: the vehicle's own
    friend bool operator==(const LiveSource&, const LiveSource&) = default;
};

// A pump that no map has (a farm's, a club's, a friend's), or what a map has wrong of the one
// that stands there: hours "off" is closed for good.
struct OwnPump {
    std::string name;
    double latitude = 0;                        // degrees north, WGS 84, -90 to 90
    double longitude = 0;                       // degrees east, -180 to 180
    std::optional<std::string> hours;           // as OpenStreetMap writes opening hours
    std::optional<FuelKind> fuel;
    std::optional<std::string> note{};
    std::optional<double> pricePerLitre{};      // >= 0, in the vehicle's currency
    friend bool operator==(const OwnPump&, const OwnPump&) = default;
};

// What a photo was taken at.
enum class PhotoStep { drained, base, reading, full, verification, other };

enum class PhotoFormat { jpeg, png };

// A photo of the car's file. Its bytes lie beside the logbook, named by their hash.
struct Photo {
    Instant time{};
    std::string sha256;                         // of the bytes, 64 lower-case hexadecimal digits
    PhotoFormat format = PhotoFormat::jpeg;
    PhotoStep step = PhotoStep::other;
    std::optional<Volume> added;                // litres since drained at which it was taken
    std::optional<std::string> tank{};            // name of an ExtraTank; absent: the vehicle's own
    std::optional<std::string> note{};
    friend bool operator==(const Photo&, const Photo&) = default;
};

} // namespace undermark
