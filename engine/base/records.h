// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person records about a car: the plain facts, without estimates. The
// logbook stores them, every computation starts from them. Optional means
// "not known"; nothing here is ever 0 or NaN to say so.
#pragma once

#include "engine/base/quantity.h"

#include <array>
#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

// UTC, to the second. The engine never asks for the time; it is passed in.
using Instant = std::chrono::sys_seconds;

enum class FuelKind { petrol, diesel, lpg, ethanol };

// How the sender reaches the number that the person reads.
enum class CircuitKind {
    direct,      // volts (or anything else) as they are
    resistive,   // ohm of the sender, or volts behind a pull-up
    ratiometric, // share of the supply
    percent,     // 0 to 100
    counts,      // of an analogue-to-digital converter
};

struct Sender {
    CircuitKind circuit = CircuitKind::direct;
    std::string unit = "V";                  // of every Signal of this vehicle
    std::optional<double> supplyVolts;
    std::optional<double> pullUpOhms;
    std::optional<Signal> resolution;        // one step of the display or converter
    friend bool operator==(const Sender&, const Sender&) = default;
};

// One row of a calibration: litres added since drained, and the reading then.
struct CalibrationPoint {
    Volume added;                            // cumulative, from 0 (drained)
    Signal signal;                           // mean of the readings
    std::optional<Signal> signal2;           // second lobe of a saddle tank
    std::optional<Signal> signalSd;          // of one reading
    int readings = 1;                        // how many were averaged
    friend bool operator==(const CalibrationPoint&, const CalibrationPoint&) = default;
};

struct Calibration {
    Instant time{};
    std::vector<CalibrationPoint> points;    // in the order they were taken
    Volume zeroMark;                         // litres since drained that are shown as 0
    friend bool operator==(const Calibration&, const Calibration&) = default;
};

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
    std::optional<double> pricePerLitre;     // in the user's currency
    std::optional<Signal> signalBefore;      // read on arrival, before pumping
    std::optional<std::string> blend;        // e0, e10, e85, ...
    std::optional<Temperature> temperature;  // of the fuel
    std::optional<Consumption> displayed;    // the car's own figure since the last fill
    std::optional<bool> counted;             // the user's ruling on a flagged fill: counts, or is
                                             // left out; without one the screening decides
    friend bool operator==(const Fill&, const Fill&) = default;
};

struct Trip {
    Instant time{};
    Distance distance;                       // > 0, or 0 with idling
    std::string mode;
    std::optional<std::chrono::duration<double, std::ratio<60>>> idle;  // minutes
    std::optional<int> starts;               // cold starts
    friend bool operator==(const Trip&, const Trip&) = default;
};

enum class ProofKind {
    drained,  // litres pumped out, from a reading (the zero mark if none), until the pump spat;
              // or the left-behind litres measured with the tank open
    base,     // litres poured after draining, at which zero was read
    stalled,  // the engine starved so many km past the zero mark
    pastZero, // driven so many km past the zero mark, and still running
};

// Evidence about the hidden reserve.
struct Proof {
    Instant time{};
    ProofKind kind = ProofKind::base;
    std::optional<Estimate<Volume>> volume;     // drained, base: litres out or in
    std::optional<Estimate<Volume>> leftBehind; // drained: litres found behind
    std::optional<Signal> signal;               // drained: the reading it started from
    std::optional<Estimate<Distance>> distance; // stalled, pastZero: km past the zero mark
    std::optional<std::string> mode;            // stalled, pastZero: kind of driving
    friend bool operator==(const Proof&, const Proof&) = default;
};

} // namespace undermark
