// SPDX-License-Identifier: GPL-3.0-or-later
//
// Slips of a calibration that is being taken: what a person at hand would ask about before
// believing it. A question, never a refusal: the tank may be other than it was thought.
#pragma once

#include "engine/base/records.h"
#include "engine/base/sentence.h"

#include <optional>
#include <span>

namespace undermark {

// A stated capacity is to the first click; to the neck some litres more go in, and the
// handbook is out by some per cent. More than this share of it is a slip.
inline constexpr double kMostOfCapacity = 1.15;
// More than this share of it cannot be: no neck and no handbook explain it (judgement, no source).
inline constexpr double kImpossibleOfCapacity = 1.5;
// A slip of the decimal point is a factor of ten. The section of one tank, and so the litres
// that a volt stands for, differs by three at most (judgement, no source).
inline constexpr double kFarFromCurve = 4.0;

// `before`: the levels taken so far, by rising litres but for those taken out again; `level`
// as it would come next (its litres since drained, as theirs). Nothing where it is
// plausible: no more in the tank than `capacity` x kMostOfCapacity and no less than nothing;
// the reading on the fuel's side, and its step, by what the levels so far make of a litre,
// within kFarFromCurve of the litres. A reading that hardly moves says nothing here: that may
// be a stop of the float, and no movement at all is a finding (calibrate.h). O(levels).
std::optional<Sentence> doubtOf(std::span<const CalibrationPoint> before,
                                const CalibrationPoint& level, Volume capacity);

} // namespace undermark
