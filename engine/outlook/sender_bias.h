// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the log says against the sender: a full fill whose reading was noted before pumping
// tells by how much the reading and the litres pumped miss the full tank.
#pragma once

#include "engine/outlook/car_knowledge.h"

#include <optional>
#include <vector>

namespace undermark {

struct SenderCheck {
    double years;      // since the calibration
    double litres;     // read level + pumped - full: above 0 the sender reads too high
    double curveSdL;   // of the read level
};

// Of one first click, as far as it blurs a check: as the log's fills show, at most as usual, so
// that a creep is not taken for late clicks.
Volume checkedWithin(const CarKnowledge& car);

// One for each full fill since the calibration that notes a reading off the stops. Fills
// kept out by a ruling do not count. None with two signals: a fill notes one. O(fills).
std::vector<SenderCheck> senderChecks(const CarKnowledge& car);

// Litres by which the sender has come to read too high. Kalman filter over the checks, in
// their order, of two states: a creep that walks by 0.4 % of the full tank from one check
// to the next (5 % in a dozen is what loose grounds and worn tracks do; judgement, no
// source), and the curve's own error, which all checks share and which is not creep. A check
// that misses by four of its sd is taken for a slip. Nothing without a check.
std::optional<Estimate<Volume>> senderBias(const CarKnowledge& car);

} // namespace undermark
