// SPDX-License-Identifier: GPL-3.0-or-later
//
// What goes into the level tracker and what comes out. Litres are the
// calibration's own: litres since drained.
#pragma once

#include "engine/base/quantity.h"
#include "engine/base/sentence.h"
#include "engine/tracking/slosh.h"

#include <optional>
#include <span>
#include <string>

namespace undermark {

// What one reading says about the tank.
enum class ReadingKind {
    exact,       // the level, with a spread
    atMost,      // the float rests on its lower stop
    atLeast,     // the float rests on its upper stop
    tooLow,      // the signal is below anything this sender gives
    tooHigh,     // the signal is above anything this sender gives
};

struct LevelObservation {
    ReadingKind kind = ReadingKind::exact;
    Estimate<Volume> level;      // the level, or the bound; the curve's own sd
    Volume flat;                 // litres over which the reading need not move here
};

// One row of a recorded drive. Whatever is absent is unknown.
struct TrackerSample {
    Seconds time{};
    std::optional<LevelObservation> level;
    std::optional<Speed> speed;
    std::optional<FlowRate> fuelRate;
    std::optional<Distance> distance;    // since any fixed start
};

// Tanks of the car beside the one that is followed (TankFeed, engine/base/tank_records.h).
struct OtherTanks {
    double share = 1.0;                  // of what the car burns, that this one gives: of tanks level with
                                         // each other by what they take; 0 to 1
    Volume hold;                         // at most, in those that may feed instead, or are pumped over
    Volume comesOver;                    // at most, of it, in those that are pumped over into this one
    std::optional<FlowRate> transfer;    // how fast, where it is stated
};

struct TrackerSettings {
    Volume lowest;                       // ends of the calibrated curve
    Volume highest;                      // > lowest
    bool signalRises = true;             // with the level; names open and short
    std::optional<Estimate<Consumption>> rate;   // stated or learnt; else a wide guess
    FlowRate idle = FlowRate::fromLitresPerHour(0.8);   // engine running, car standing
    std::optional<Estimate<Volume>> lastKnown;   // litres when last seen
    std::optional<Estimate<Fraction>> scale;     // of the source, when last seen
    Seconds sinceLastKnown{};
    double falseAlarmsPer1000Km = 0.05;  // wanted from the cumulative sum
    Seconds block{30.0};                 // readings are averaged over this
    OtherTanks others;                   // of one tank: none
    Seconds sloshCorrelation{4.0};       // e-fold, measured in one car: 3.4 to 4.2 s
};

enum class FaultCode {
    stuck,          // reading does not move while fuel is burnt
    stuckAtStop,    // the same, on the float's upper stop
    open,           // signal at its high end: broken wire or contact
    shortCircuit,   // signal at its low end
    offsetJump,     // reading shifted in one step
    drift,          // reading and consumption part slowly
    dropout,        // no reading at all
    intermittent,   // reading falls out and comes back
    transfer,       // a saddle's lobe, or a tank that stands level with the own, does not empty
    transferStopped, // no more is pumped over from a further tank in which there is fuel
    sourceScale,    // fuel flow or distance source counts implausibly
    otherTankFeeds, // the level stands while fuel is burnt, which another tank may give
};

enum class TrackerEventKind {
    refuel, fault, faultCleared, gap, clockJump, correction, onUpperStop, onLowerStop,
    transfer, // fuel was pumped over from another tank
};

// Something that happened, said once. Litres: added for a refuel (where tanks share their
// level, to all of them), come over for a transfer, burnt since the onset for a fault, the step
// for a correction; 0 where it says nothing.
struct TrackerEvent {
    TrackerEventKind kind = TrackerEventKind::gap;
    Seconds time{};                      // when it was decided
    Seconds onset{};                     // when it began
    Estimate<Volume> litres;
    Distance distance;                   // driven since the onset
    FaultCode fault = FaultCode::stuck;  // of fault and faultCleared
    std::size_t tank = 0;                // a further one that it is about, 1 the first; 0 the vehicle's own
    Volume cameOver{}, left{};           // of a transfer that stopped: from it, and usable in it still
    friend bool operator==(const TrackerEvent&, const TrackerEvent&) = default;
};

// Where the litres come from just now.
enum class TrackerMode { waiting, level, upperStop, lowerStop, consumptionOnly };

struct TrackState {
    TrackerMode mode = TrackerMode::waiting;
    Seconds time{};                      // of the last block
    Estimate<Volume> level;              // never rises but by refuel, transfer or correction
    Estimate<Fraction> scale;            // litres burnt per litre the source counted
    std::optional<Volume> reading;       // mean of the last block, or the stop's bound
    double nisMean = 0.0;                // of the innovations so far; near 1 is honest
    long nisCount = 0;
    long blocks = 0;
    Volume used;                         // since the start, by the source, scaled
    Distance driven;
    bool rising = false;                 // the reading has risen, and it is not clear yet whether it stays
};

// "stuck", "open", ... as in JSON.
const char* faultWord(FaultCode code);
// What it means and what to check, in plain words; two sentences.
Sentence faultText(FaultCode code);
// The same of an event; `tanks`: the names of the further ones, in order of recording.
Sentence faultText(const TrackerEvent& event, std::span<const std::string> tanks);
// Whose the event is; empty: the vehicle's own.
std::string tankOf(const TrackerEvent& event, std::span<const std::string> tanks);

} // namespace undermark
