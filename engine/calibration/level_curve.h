// SPDX-License-Identifier: GPL-3.0-or-later
//
// Litres since drained as a function of the sender's signal: a monotone cubic
// through knots, with a spread, that never extrapolates.
//
// Guarantees (calibration_test.cpp, calibration_findings_test.cpp in tests/engine/calibration):
//  * it passes through every knot, and between two knots stays between them;
//  * litres rise along the curve and never turn;
//  * two knots give the straight line;
//  * outside the knots, and on a stop of the float, the level is one-sided;
//  * signalAt() undoes read() to rounding.
#pragma once

#include "engine/base/error.h"
#include "engine/base/quantity.h"

#include <optional>
#include <span>
#include <vector>

namespace undermark {

// A signal and the litres it stands for. Where the signal did not move over
// some litres (a stop of the float, a jam), `width` says over how many: at the
// lowest knot they lie below `added`, at the highest above it, elsewhere half
// on either side.
struct CurveKnot {
    Signal signal;
    Volume added;    // since drained
    Volume width;    // >= 0
    Volume sd;       // of `added`, everything but the noise of the reading; >= 0
    Volume between{};  // sd of the curve's shape midway to the next knot up; >= 0
    friend bool operator==(const CurveKnot&, const CurveKnot&) = default;
};

enum class LevelBound {
    exact,    // the level is `added` +- sd
    atMost,   // on or beyond the lower end: no more than `added`
    atLeast,  // on or beyond the upper end: no less than `added`
};

struct LevelReading {
    LevelBound bound = LevelBound::exact;
    Estimate<Volume> added;    // litres since drained, or the end it lies beyond
};

// One point of a curve that is drawn.
struct DrawnLevel {
    Signal signal;
    Estimate<Volume> added;
};

class LevelCurve {
public:
    // Knots in order of rising litres, at least two, litres strictly rising and
    // signals strictly rising or strictly falling. badInput otherwise.
    //
    // Slopes at the knots are the Fritsch-Butland weighted harmonic means
    // (boost::math::interpolators::pchip computes them), at both ends the
    // shape-preserving three-point formula (Fritsch & Carlson 1980; Moler,
    // "Numerical Computing with MATLAB", 3.6). Each piece is kept as its cubic, so
    // that a reading costs one search and finds value, slope and spread at once.
    static Result<LevelCurve> fromKnots(std::vector<CurveKnot> knots);

    // Level at a signal. Its spread: that of the knots on either side, linear between
    // them, with the shape's, a parabola. `noise` is the sd of this reading: it widens
    // the spread by noise x |dV/ds|, and a reading within its noise (half a percent of
    // the signal's span at most) of a stop of the float counts as on it. O(log knots),
    // no allocation.
    LevelReading read(Signal signal, std::optional<Signal> noise = std::nullopt) const;

    // |dV/ds|: litres per unit of signal, at the nearest end outside the knots.
    double litresPerSignal(Signal signal) const;

    // Signal at a level; the nearest end outside the curve.
    Signal signalAt(Volume added) const;

    // To be drawn by straight lines: the knots as they are and between two of them the curve at
    // `perPiece` - 1 equal steps of the signal, by rising litres.
    std::vector<DrawnLevel> drawn(int perPiece) const;

    bool rising() const { return m_knots.front().signal < m_knots.back().signal; }
    std::span<const CurveKnot> knots() const { return m_knots; }   // by rising litres
    const CurveKnot& lowest() const { return m_knots.front(); }
    const CurveKnot& highest() const { return m_knots.back(); }

private:
    // litres(s) = c0 + c1 u + c2 u^2 + c3 u^3, u = s - start; the knots' sd is linear in
    // u, the shape's is bend u (width - u).
    struct Cubic {
        double start, c0, c1, c2, c3, sd, sdPerSignal, width, bend;
    };
    LevelCurve() = default;
    void addPieces();
    const Cubic& pieceAt(double signal) const;

    std::vector<CurveKnot> m_knots;
    std::vector<Cubic> m_pieces;     // by rising signal
    std::vector<double> m_starts;    // m_pieces[i].start, packed for the search
    double m_lowSignal = 0.0, m_highSignal = 0.0;
};

} // namespace undermark
