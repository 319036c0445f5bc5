// SPDX-License-Identifier: GPL-3.0-or-later
//
// From readings and poured litres to a level curve, its uncertainty, and what
// looks wrong with the sender, its wiring or the readings.
#pragma once

#include "engine/base/error.h"
#include "engine/base/records.h"
#include "engine/base/sentence.h"
#include "engine/base/severity.h"
#include "engine/calibration/level_curve.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace undermark {

// `code` is a stable word for programs; `text` says what was seen and what to do.
// Codes: no-movement, open-circuit, short-circuit, impossible-reading (errors);
// not-monotone, flat-piece, sweep-too-small, resolution-too-coarse, hysteresis,
// stop-at-bottom, stop-at-top, load-offset, repeat-disagrees (warnings);
// hysteresis-unknown, few-points, second-signal-unused (infos).
struct Finding {
    std::string code;
    Severity severity = Severity::info;
    Sentence text;
    friend bool operator==(const Finding&, const Finding&) = default;
};

enum class SignalDirection { rising, falling };   // as litres rise

// What makes a level read off the curve uncertain; each one standard deviation,
// the largest along the curve. The noise of the reading itself comes on top.
struct CurveUncertainty {
    Volume pour;                      // each pour's error, accumulated
    Volume resolution;                // one step of the display, as litres / sqrt 12
    Volume readings;                  // standard errors of the calibration's readings
    std::optional<Volume> residual;   // leave-one-out: how far points miss the others' curve
    Volume shape;                     // what a tank may do between two points
    Volume unseenStop;                // at the last point: the stop may have come before it
};

struct CalibrationFit {
    std::optional<LevelCurve> curve;  // none where the readings allow none: see findings
    std::optional<SignalDirection> direction;
    // RMS litres by which a point misses the curve drawn without it; nothing with
    // two points. With three it is how far the middle one is from a straight line.
    std::optional<Volume> residualSd;
    CurveUncertainty uncertainty;
    // While driving the level is lower than read by this much, and the gauge's zero with
    // it: the hysteresis of a curve poured up. Its sd is part of no knot's; zero for a
    // curve drained down.
    Estimate<Volume> readsHigh;
    bool drainedDown = false;         // the curve is that of the falling branch
    std::vector<Finding> findings;    // errors first
};

struct CalibrationOptions {
    // Sd of one pour as a share of its litres. 0.5 %: the error allowed to a fuel
    // dispenser (OIML R 117, accuracy class 0.5, from memory).
    Fraction pourSd = Fraction::fromPercent(0.5);
    // Readings at litres that `points` cover, taken with electrical load on.
    std::span<const CalibrationPoint> loaded;
};

// What a float's play shifts a curve of `span` litres by that was only poured up.
Estimate<Volume> assumedHysteresis(Volume span);

// Fits a curve. Points in the order taken: rising litres are pours, falling ones
// drains. Direction by weighted correlation; weighted isotonic regression of
// signal on litres; pooled signals become one knot; LevelCurve through the knots.
// Where draining down covers the range, that branch is the curve, since driving
// goes down. Without Sender::resolution it is taken from the decimals in use.
// badInput: fewer than two points, negative or infinite litres, all litres equal.
// O(n^2) in the points up to 400, O(n) beyond (leave-one-out is thinned).
Result<CalibrationFit> fitCalibration(std::span<const CalibrationPoint> points,
                                      const Sender& sender,
                                      const CalibrationOptions& options = {});

} // namespace undermark
