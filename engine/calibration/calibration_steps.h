// SPDX-License-Identifier: GPL-3.0-or-later
//
// The steps inside fitCalibration(); not for use outside engine/calibration.
// Plain doubles: litres, and signal in the sender's unit.
#pragma once

#include "engine/calibration/calibrate.h"

#include <string>
#include <vector>

namespace undermark::calibration {

// All readings at one amount of litres, on one branch.
struct LevelStep {
    double litres = 0.0;
    double signal = 0.0;          // weighted mean
    double lowest = 0.0;          // the lowest and highest row of the mean
    double highest = 0.0;
    double standardError = 0.0;   // of `signal`; 0 where nothing is known
    double weight = 1.0;          // > 0
    double pourVariance = 0.0;    // litres^2, since drained
    int rows = 0;
};

struct Branches {
    std::vector<LevelStep> up;         // by litres, rows reached by pouring
    std::vector<LevelStep> down;       // by litres, rows reached by draining
};

// Steps pooled by the isotonic regression.
struct Flat {
    std::size_t first = 0, last = 0;   // indices of steps, inclusive
    double signal = 0.0;
    double width = 0.0;                // litres from first to last
    bool moved = false;                // the raw signals differ: not flat, out of order
};

struct Shape {
    bool rising = true;
    double sweep = 0.0;                // signal, of the fit, >= 0
    double roughness = 0.0;            // weighted RMS of raw minus fit, signal
    std::vector<Flat> flats;           // one per knot, by litres
};

// One step of the readings: the sender's, or the last decimal in use.
double resolutionOf(std::span<const CalibrationPoint> points, const Sender& sender);

Branches splitBranches(std::span<const CalibrationPoint> points, double resolution, Fraction pourSd);

// Direction, isotonic fit and flats. `steps` has two or more.
Shape shapeOf(std::span<const LevelStep> steps, double resolution);

// Knots without spread; the lowest and highest carry their width outwards.
std::vector<CurveKnot> knotsOf(std::span<const LevelStep> steps, const Shape& shape);

// True where the fit's sweep is no more than noise and resolution make.
bool isStill(std::span<const LevelStep> steps, const Shape& shape, double resolution);

// Everything the findings are made from.
struct Evidence {
    std::span<const CalibrationPoint> points;    // all of them, faulty ones too
    const Sender& sender;
    std::span<const CalibrationPoint> loaded;
    const Branches& branches;
    const std::vector<LevelStep>& steps;              // of the branch that was fitted
    const Shape& shape;
    double resolution = 0.0;
    double litresSpan = 0.0;
    std::optional<Estimate<Volume>> hysteresis;  // mean and sd of up minus down
};

std::vector<Finding> circuitFindings(std::span<const CalibrationPoint> points, const Sender& sender);
Finding noMovementFinding(const Evidence& evidence);
std::vector<Finding> curveFindings(const Evidence& evidence, const CalibrationFit& fit);

} // namespace undermark::calibration
