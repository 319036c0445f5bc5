// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tracker's inner constants, in one place. Shares are of the calibrated
// range, so that a 12 L and a 120 L tank behave alike.
#pragma once

#include "engine/tracking/slosh.h"

namespace undermark::tuning {

// Slow error of the reading: tilt on a hill, hysteresis. Measured on four open
// drives: means over 300 s still scatter by 0.6 to 0.9 % of the range.
inline constexpr double kBias = 0.015;
inline constexpr double kBiasS = 150.0;
inline constexpr double kBiasGain = 0.02;       // how fast its size is learnt, per block
inline constexpr double kLeastBias = 0.1;       // of kBias
inline constexpr double kMostBias = 2.5;
inline constexpr double kLeastNoise = 0.1;      // of the block's own noise, below that

// Consumption: sd 0.32 L over one litre; a stated rate wanders by 1.7 % per
// litre^0.5 (30 % per sqrt(10 L) where the rate is only guessed).
inline constexpr double kUseL2PerL = 0.1;
inline constexpr double kMeasuredUseL2PerL = 0.01;      // an injector's count is off by a constant
inline constexpr double kMeasuredScale2PerL = 0.00003;
inline constexpr double kScale2PerL = 0.0003;
inline constexpr double kGuessedScale2PerL = 0.01;
inline constexpr double kTimeScale2PerL = 0.02;  // level alone: litres per hour change with the road

// Level alone and no sender: litres per hour differ by 60 % from stretch to
// stretch (town, open road, motorway; some 2 L each), so the usual value is known
// by the number of stretches seen, and the road ahead differs by a quarter besides.
inline constexpr double kStretch = 0.6;
inline constexpr double kStretchL = 2.0;
inline constexpr double kRoadPriorL = 5.0;      // weight of the guess
inline constexpr double kRoadAhead = 0.25;
inline constexpr double kRoadUseL2PerL = 0.8;

inline constexpr double kCurvePart = 0.2;       // the curve's error is another after 20 % of it
inline constexpr double kCurveMost = 0.04;      // a worse curve is wrong as a whole, not by places

// Slosh of one reading: never believed smaller than this.
inline constexpr double kLeastStanding = 0.003;
inline constexpr double kLeastMoving = 0.01;
inline constexpr double kSloshGain = 0.1;
inline constexpr double kHarsh = 0.7;           // m/s^2, mean over a block; doubles the variance

// Jumps: held back beyond so many sd. A fault needs 6 % of the range as well.
inline constexpr double kGate = 4.0;
inline constexpr double kGateUp = 3.3;          // more than was thought needs less to be doubted
inline constexpr double kRefuelJump = 0.04;
inline constexpr double kFaultJump = 0.06;
inline constexpr int kRefuelBlocks = 3;
inline constexpr int kFaultBlocks = 5;
inline constexpr int kEndBlocks = 2;            // a jump to an end of the range
inline constexpr int kEndBlocksStanding = 6;    // the key may be off: no hurry, little is burnt
inline constexpr double kStandingRise = 0.04;   // within one halt
inline constexpr double kFuelStopS = 180.0;     // a halt this long ago may have been for fuel

// No movement: more than this is burnt while the reading stays within a band.
inline constexpr double kStillBurnt = 0.032;
inline constexpr double kStillSds = 0.55;        // of the slow error, on top
inline constexpr double kDead = 0.1;           // of the usual variance within a block
inline constexpr double kStillBand = 0.008;

inline constexpr double kCusumAllowance = 0.5;
inline constexpr double kDrift = 0.06;          // of the range: less than that is no fault
inline constexpr int kThin = 2;                 // blocks per value of the cumulative sum
inline constexpr double kNisGain = 0.005;

inline constexpr double kLostFuel = 0.06;       // chance that a step down was fuel lost
// Taking the sender back. A reading off by anything lies within 80 % of the range.
inline constexpr double kAnyOffset = 0.8;
inline constexpr double kLikelyRight = 1.0;     // of a wire that healed, a float that came loose
inline constexpr double kSureRight = 25.0;      // of a reading that had been shifted
inline constexpr double kStepBack = 0.3;        // of the shift that may be left or too much
inline constexpr double kCreep = 0.12;          // of the range, from its end
inline constexpr double kReturnAbove = 0.05;    // of the range
inline constexpr int kAgreeing = 4;             // blocks until the sender is taken back
inline constexpr double kCorrection = 0.03;
inline constexpr int kCorrectionBlocks = 10;

inline constexpr int kOffStopBlocks = 40;       // a float this long off its stop has left it
inline constexpr double kLongGapS = 600.0;
inline constexpr double kParkedL2PerDay = 0.09;
inline constexpr double kDropoutS = 60.0;
inline constexpr double kContactShare = 0.1;    // of the instants of a block
inline constexpr int kContactBlocks = 4;
inline constexpr int kContactMemory = 20;       // blocks

// A measured flow 2.5 times off, or a stated rate 3 times, after 8 % of the range.
inline constexpr double kImplausible = 2.5;
inline constexpr double kScaleBurnt = 0.08;

// Values of the cumulative sum between false alarms: 1000 km at 40 km/h.
inline double runLength(double falseAlarmsPer1000Km, Seconds block)
{
    const double values = 1000.0 / 40.0 * 3600.0 / (block.count() * kThin);
    return values / falseAlarmsPer1000Km;
}

} // namespace undermark::tuning
