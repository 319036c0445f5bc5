// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is taken for granted about a tank before any evidence on its reserve.
#pragma once

#include "engine/base/records.h"

#include <optional>

namespace undermark {

// What the calibration leaves behind: litres since drained.
struct CalibrationSummary {
    Estimate<Volume> zeroMark;               // q0
    Estimate<Volume> full;                   // qF
    // Cov(q0, qF), L^2; Var(q0) when absent: the pours of q0 are part of qF's.
    std::optional<double> covarianceL2;
};

// Where the state starts. priorFor() fills it from the vehicle and the defaults
// below; all of these are common practice without a source.
struct ReservePrior {
    Estimate<Volume> leftBehind;
    Estimate<Volume> unusable;
    double linked = 0.0;                     // correlation of the two, 0 to 1
    std::optional<CalibrationSummary> calibration;
    Estimate<Volume> statedReserve;          // used without a calibration
    Estimate<Volume> statedCapacity;         // the same; qF + b
    Fraction meterScaleSd;                   // what is common to all fills: meter, click, reading
};

// What lies on a tank's floor where no pump reaches it grows with the floor: with the
// capacity to the power of 2/3, since tanks of all sizes are shaped much alike. 1 for 50 L,
// of which the litres below are told; a third for a kart, three for a lorry. (Geometry;
// that all follow it is judgement, no source.)
double floorShare(Volume capacity);

// One to two litres stay when the pump spits.
inline constexpr Estimate<Volume> kUsualLeftBehind{Volume::fromLitres(1.5),
                                                   Volume::fromLitres(0.7)};
// The engine starves where the feed pump spits, give or take so much (judgement, no
// source): unusable = left-behind + N(0, sd^2). So the two are linked, and e is 0 +- 0.8 L
// (of a tank of 50 L) however much is left behind: who finds a litre more of it has no more to drive on. What
// the owner states as unusable is knowledge of its own and not linked.
inline constexpr Volume kStarvesFromSpitSd = Volume::fromLitres(0.8);
// A reserve nobody stated is a tenth of the tank, give or take half of that.
inline constexpr Fraction kUsualReserve = Fraction::fromRatio(0.10);
inline constexpr Fraction kUsualReserveSd = Fraction::fromRatio(0.05);
// A stated zero mark: a tenth of it, and not below this.
inline constexpr Fraction kStatedReserveSd = Fraction::fromRatio(0.10);
inline constexpr Volume kStatedReserveLeastSd = Volume::fromLitres(0.5);
// A capacity from the handbook, against the one at hand.
inline constexpr Fraction kStatedCapacitySd = Fraction::fromRatio(0.03);
// Pump meters may be half a per cent out (legal limit, from memory); the click
// and the way of reading add as much.
inline constexpr Fraction kMeterScaleSd = Fraction::fromRatio(0.008);
// How well a jug and a trip meter tell where nobody says so: common practice, no source.
inline constexpr Volume kJugSd = Volume::fromLitres(0.2);
inline constexpr Distance kTripMeterSd = Distance::fromKm(0.5);
// Needle or figure at the moment it reaches zero.
inline constexpr Volume kCrossingSd = Volume::fromLitres(0.5);

// Litres that stay when the pump spits: as stated, else as usual for the capacity.
Estimate<Volume> leftBehindOf(const Vehicle& vehicle);
// Litres that no engine reaches: as stated, else as much as is left behind, and vaguer.
Estimate<Volume> unusableOf(const Vehicle& vehicle);

ReservePrior priorFor(const Vehicle& vehicle, const std::optional<CalibrationSummary>& calibration);

} // namespace undermark
