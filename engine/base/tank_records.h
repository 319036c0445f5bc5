// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is recorded of a tank and its sender. With records.h, which has the rest.
#pragma once

#include "engine/base/quantity.h"

#include <chrono>
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

// Three shapes with one cross-section over their whole length, lying on their side.
enum class TankForm { roundedBox, cylinder, ellipse };

// Inside dimensions. A cylinder's width and height are its diameter.
struct TankDimensions {
    TankForm form = TankForm::roundedBox;
    Distance width;
    Distance height;
    Distance length;
    Distance corner;           // radius of a box's long edges; 0 to half the smaller side
    double tiltDegrees = 0.0;  // of the length against the fuel's surface; -45 to 45
    friend bool operator==(const TankDimensions&, const TankDimensions&) = default;
};

// A curve from the tank's shape, before anything was poured (engine/calibration/tank_shape.h).
struct StatedShape : TankDimensions {
    Signal atFloor, atRoof;                  // the readings there
    friend bool operator==(const StatedShape&, const StatedShape&) = default;
};

// What each lobe of a saddle tank holds whose two senders are wired in series.
struct LobeVolumes {
    Volume first, second;
    friend bool operator==(const LobeVolumes&, const LobeVolumes&) = default;
};

// One session with the jug, or what is known of the tank's shape: then there are no points.
struct Calibration {
    Instant time{};
    std::vector<CalibrationPoint> points;    // in the order they were taken
    Volume zeroMark;                         // litres since drained that are shown as 0
    std::optional<std::string> tank{};         // name of an ExtraTank; absent: the vehicle's own
    std::optional<LobeVolumes> lobes{};
    std::optional<StatedShape> shape{};
    std::optional<std::string> note{};         // the fitter's words
    // When its zero mark came in force. Absent: when it was made; the first one's, as far back
    // as the log.
    std::optional<Instant> zeroSince{};
    friend bool operator==(const Calibration&, const Calibration&) = default;
};

// A level that was tried after a calibration: what was measured and read, and what the curve
// had made of that reading.
struct TriedLevel : CalibrationPoint {
    Estimate<Volume> predicted;              // litres since drained
    bool agrees = false;
    friend bool operator==(const TriedLevel&, const TriedLevel&) = default;
};

// A calibration tried on its own car, as it came out on that day (calibration/verification.h).
struct VerificationRecord {
    Instant time{};
    std::vector<TriedLevel> levels;          // in the order they were tried
    Volume measuredSd;                       // of the litres measured
    Probability confidence;                  // at which levels agree or do not
    bool passed = false;
    std::optional<std::string> tank{};         // name of an ExtraTank; absent: the vehicle's own
    std::optional<std::string> note{};         // the fitter's words
    friend bool operator==(const VerificationRecord&, const VerificationRecord&) = default;
};

// How a further tank feeds the engine.
enum class TankFeed {
    shared,      // level with the vehicle's own: both fall together
    chosen,      // by a tap: one or the other
    pumpedOver,  // into the vehicle's own, from which the engine drinks
};

// A tank beside the vehicle's own, which is stated with the vehicle. Known by its name.
struct ExtraTank {
    std::string name;
    Volume capacity;                            // to the first click; > 0
    TankFeed feed = TankFeed::chosen;
    std::optional<FlowRate> transfer;           // pumpedOver: how fast
    std::optional<Estimate<Volume>> leftBehind; // still there when the pump spits
    std::optional<Estimate<Volume>> unusable;   // still there when it gives no more
    std::optional<Volume> zeroMark;             // usable litres at zero, where not calibrated
    Sender sender;
    std::optional<Instant> zeroSince{};         // when that zero mark came in force; absent: as far back as the log
    friend bool operator==(const ExtraTank&, const ExtraTank&) = default;
};

} // namespace undermark
