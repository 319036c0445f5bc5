// SPDX-License-Identifier: GPL-3.0-or-later
//
// Litres from a tank's shape, for the time before anything was poured: a prior,
// replaced by the calibration as soon as there is one, and called a prior
// wherever it is shown.
//
// Three shapes with one cross-section over their whole length, lying on their
// side: a box whose four long edges are rounded, a cylinder, an ellipse (base/tank_records.h).
//
// Guarantees (tests/engine/calibration/tank_shape_test.cpp):
//  * volumes agree with the tables named there;
//  * volume never falls as height rises;
//  * lying level and tilted, a full tank holds the same.
//
// Simplifications: flat ends, no baffles, no walls' thickness; inside dimensions.
#pragma once

#include "engine/base/tank_records.h"
#include "engine/calibration/level_curve.h"

namespace undermark {

class TankShape {
public:
    // badInput: a dimension that is not above 0 or over 10 m, a corner too large for
    // the box, a cylinder of unequal width and height, a tilt beyond 45 degrees.
    static Result<TankShape> make(const TankDimensions& dimensions);

    Volume capacity() const;
    const TankDimensions& dimensions() const { return m_dimensions; }

    // Litres when the fuel stands `height` above the floor at half the length, where
    // the sender is thought to be. Level: the segment's area (closed form) times the
    // length. Tilted: that area integrated along the length (Gauss-Kronrod, 1e-9);
    // heights below 0 and above the roof then still mean something.
    Volume volumeAt(Distance height) const;

private:
    explicit TankShape(const TankDimensions& dimensions) : m_dimensions(dimensions) {}
    double areaM2(double heightM) const;
    double boxAreaM2(double heightM) const;
    double ellipseAreaM2(double heightM) const;
    double reachM() const;     // how far the surface climbs from half the length to an end
    TankDimensions m_dimensions;
};

// The level curve before any pour: the float follows the fuel from floor to roof
// and its signal is straight in the height. Its spread is 5 % of the capacity
// (dimensions by tape, bulges, baffles; judgement, no source). Litres are counted
// from an empty tank. badInput where both signals are equal.
Result<LevelCurve> priorCurve(const TankShape& tank, Signal atFloor, Signal atRoof);

// Usable litres by such a curve: what is in the tank at `signal` less what the engine
// cannot reach, not below 0. The noise of the reading is small beside the shape's.
Estimate<Volume> usableByShape(const LevelCurve& prior, Signal signal, Estimate<Volume> unusable);

} // namespace undermark
