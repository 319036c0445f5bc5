// SPDX-License-Identifier: GPL-3.0-or-later
//
// One car's gauge: what a reading says in litres since drained, whatever the tank is
// wired like: one sender, two in series, or one in each lobe of a saddle tank.
//
// Guarantees (tests/engine/calibration/gauge_test.cpp):
//  * a gauge that was never calibrated, or whose readings allow no curve, reads nothing;
//  * two lobes are read by both signals or not at all;
//  * driving, level and zero are read lower by the hysteresis, a bound from above never is;
//  * a reading has noise, more while the car moves, unless the caller says how much;
//  * senders in series are less sure by their unequal emptying.
#pragma once

#include "engine/calibration/calibrate.h"
#include "engine/calibration/circuit.h"

namespace undermark {

// What the sender says at one moment; `other`: the second lobe's.
struct SenderReading {
    Signal signal;
    std::optional<Signal> other;
};

// How the reading was taken: the fuel at rest, or sloshing.
enum class Motion { atRest, moving };

class Gauge {
public:
    Gauge() = default;   // not calibrated

    // By one signal, or by two where every point has both. badInput as
    // fitCalibration() and fitLobes() say.
    static Result<Gauge> calibrate(std::span<const CalibrationPoint> points, const Sender& sender,
                                   const CalibrationOptions& options = {});
    // As it was recorded: its points, or the tank's shape where there are none; with its lobes.
    // badInput as calibrate() and TankShape::make() say.
    static Result<Gauge> of(const Calibration& calibration, const Sender& sender);
    // A curve that nobody poured, from the tank's shape.
    static Gauge prior(LevelCurve curve);
    // The same with senders in series whose lobes empty unequally (seriesSpread()).
    Gauge inSeries(Volume spread) const;

    bool isKnown() const { return !lobes().empty(); }
    bool isPrior() const { return m_isPrior; }
    bool hasTwoSignals() const { return lobes().size() == 2; }
    // A curve for each signal, the lobe with the pump first; none: see findings().
    std::span<const LevelCurve> lobes() const;
    // The curve where one signal is enough, else none.
    const LevelCurve* curve() const;
    // What the curves were drawn through, as taken.
    std::span<const CalibrationPoint> points() const { return m_points; }

    // Litres since drained at a reading, as the curve has it. `noise`: sd of each signal,
    // none if absent. Nothing where isKnown() is false or the reading has not the signals
    // that are needed.
    std::optional<LevelReading> read(const SenderReading& reading,
                                     std::optional<Signal> noise = std::nullopt) const;
    // The same on the way down: lowered by what the sender reads high there, with that
    // shift's spread. A level of at most so much is true as it stands. `noise` as stated;
    // if absent 0.3 % of each signal's span at rest (one measured car idling: .24 %) and
    // 3.6 % moving (the same car, means of ten seconds).
    std::optional<LevelReading> readDriving(const SenderReading& reading,
                                            std::optional<Signal> noise = std::nullopt,
                                            Motion motion = Motion::atRest) const;
    // Why the wiring cannot have given this reading, or nothing. What the circuit
    // does not tell the calibrated sweep may: nothing at all is a short where the sweep
    // stays well away from it, and a whole sweep beyond either end lies no stop of a float.
    std::optional<CircuitFault> faultOf(const SenderReading& reading, const Sender& sender) const;

    // Litres since drained, the stops' own included. Only where isKnown().
    Volume lowest() const;
    Volume full() const;
    // How well so many litres since drained are known to be what the gauge shows there.
    // Where they were poured and read the curve's shape between its points does not
    // matter, only the pours' error and the reading's. Only where isKnown().
    Estimate<Volume> known(Volume added) const;
    // Litres since drained when, on the way down, the gauge is back at what it showed at
    // `added` on the way up: the needle's zero. Only where isKnown().
    Estimate<Volume> knownDriving(Volume added) const;

    Estimate<Volume> readsHigh() const { return m_fit.readsHigh; }   // on the way down
    // Of the calibration by one signal; empty or zero with two.
    const std::vector<Finding>& findings() const { return m_fit.findings; }
    std::optional<Volume> residualSd() const { return m_fit.residualSd; }
    const CurveUncertainty& uncertainty() const { return m_fit.uncertainty; }
    Volume seriesSpread() const { return m_seriesSpread; }

private:
    LevelReading readWith(const SenderReading& reading, Signal noise, Signal otherNoise) const;
    Volume sdBetweenPoints(Volume added) const;

    CalibrationFit m_fit;
    std::vector<LevelCurve> m_both;   // with two signals; of m_fit only readsHigh counts then
    std::vector<CalibrationPoint> m_points;
    Volume m_seriesSpread;
    bool m_isPrior = false;
};

} // namespace undermark
