// SPDX-License-Identifier: GPL-3.0-or-later
//
// The hidden reserve: usable litres at the zero mark, and what is known of it.
//
// Calibration sees q, litres since drained: q0 at the zero mark, qF at full. It
// cannot see e = left-behind - unusable. Reserve r = q0 + e, usable capacity =
// qF + e. The state is jointly Gaussian and is conditioned on evidence; e is
// kept as its two parts, because each can be observed by itself:
//
//     x = (left-behind b, unusable u, q0, qF, meter scale k)
//
//     evidence                       observes
//     full fill from a zero reading  (qF - q0) k
//     tank volume known elsewhere    qF + b
//     base poured, drained           q0 (drained: or the level read, less its litres above zero)
//     left-behind measured           b
//     stalled d km past zero         r - surge margin - c d
//     driven b km past zero          Phi((r - surge margin - c b)/s)
//
// Where a proof speaks of a zero mark that was h litres above today's, q0 + h and r + h stand in
// the place of q0 and r.
//
// The first four are linear: the Kalman update (Joseph form). The last two are
// over r and the rate c jointly; Phi is met by matching its first two moments
// (Rasmussen and Williams 2006, section 3.9: exact for one such factor).
//
// Guarantees (each has a test in tests/engine/tank/hidden_reserve_test.cpp):
//  * fills never change the reserve while the capacity is known only through the
//    calibration: pours accumulate, so the errors of q0 are in qF too and qF - q0
//    says nothing about q0, nor about e;
//  * the order of linear evidence does not matter;
//  * stalled early lowers the reserve and raises the rate, driven far past zero
//    does the opposite, and a short drive past zero changes next to nothing;
//  * the covariance stays positive semidefinite;
//  * to the zero mark the offset cancels.
//
// Simplifications: the meter scale is linearised at the prior's qF - q0; a level
// above zero has errors of its own, independent of the state (later pours,
// reading); the covariance between reserve and rate is used in the update and
// then dropped, because the next drive's rate drifts anew. Drives past zero count
// as independent of each other: pass on those that proof_choice.h lets count.
#pragma once

#include "engine/base/error.h"
#include "engine/base/records.h"
#include "engine/base/sentence.h"
#include "engine/range/range_law.h"
#include "engine/tank/reserve_prior.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

enum class EvidenceKind { fill, drained, leftBehind, base, stalled, pastZero };

// One piece of evidence and what it did to the reserve.
struct EvidenceItem {
    EvidenceKind kind;
    std::optional<Instant> time;
    Sentence text; // "31 km past zero, still running (town)"
    Estimate<Volume> before;
    Estimate<Volume> after;
    // What was seen against what was expected, in sd; beyond 3 it contradicts
    // what was known (a typo, another tank state) and should be asked about. A
    // drive past zero can surprise only downwards.
    double surprise;
};

// A fill to the first click from a known level; own errors (click, reading) of
// this one fill in the sd's, what all fills share is the meter scale's.
struct FullFill {
    std::optional<Instant> time;
    Estimate<Volume> volume;                 // as the pump showed it
    Estimate<Volume> aboveZeroBefore;        // 0 with the reading's sd for a zero reading
};

// How the car was driven past zero, and where a drained tank was read.
struct ProofContext {
    std::optional<Estimate<Consumption>> rate;      // predictive, of the proof's mode
    double routeVarianceL2PerKm = 0.0;
    Volume surgeMargin;                             // of the proof's mode
    Volume crossingSd = kCrossingSd;
    std::optional<Estimate<Volume>> aboveZero;      // of the proof's signal, off the curve
    Estimate<Volume> readsHigh;                     // the gauge on the way down: zero is lower by it
    Volume zeroAbove{};                             // the zero mark in force then, above today's
};

class HiddenReserve;

// The state after a proof, and the rate where the proof spoke about it too.
struct ProofOutcome;

class HiddenReserve {
public:
    // Spreads >= 0 and finite numbers are the caller's business (asserted).
    static HiddenReserve fromPrior(const ReservePrior& prior);

    HiddenReserve with(const FullFill& fill) const;

    // A base counts only where it was poured anew: the base of the calibration
    // itself is in the prior already. badInput where the proof lacks what its
    // kind needs (litres, distance), the distance is negative, or the context
    // lacks the rate (stalled, pastZero) or the level (drained from a signal).
    Result<ProofOutcome> with(const Proof& proof, const ProofContext& context) const;

    // Usable litres at the zero mark, on a level road.
    Estimate<Volume> reserve() const;
    // Usable litres at the first click.
    Estimate<Volume> usableCapacity() const;
    Estimate<Volume> offset() const;         // e
    Estimate<Volume> leftBehind() const;     // b
    // Litres from the zero mark to the first click: qF - q0, without the offset.
    Estimate<Volume> zeroToFull() const;

    // Litres above the zero mark at a level of `sinceDrained` litres read off
    // the calibration's curve. Its sd is that of the level above the zero mark
    // (later pours, reading, curve) and comes back unchanged.
    Estimate<Volume> toZero(Estimate<Volume> sinceDrained) const;

    // Usable litres at that level, less `surgeMargin`: the offset enters once,
    // Var = Var(level) + Var(r).
    Estimate<Volume> toDry(Estimate<Volume> sinceDrained, Volume surgeMargin = {}) const;

    // Usable litres at so many litres above the zero mark, known independently of
    // this state (not zeroToFull(): at full it is usableCapacity()).
    Estimate<Volume> usableAt(Estimate<Volume> aboveZero, Volume surgeMargin = {}) const;

    const std::vector<EvidenceItem>& evidence() const { return m_evidence; }

    // b, u, q0, qF, k; the covariance row-major.
    static constexpr std::size_t kSize = 5;
    using Row = std::array<double, kSize>;
    const Row& mean() const { return m_mean; }
    const std::array<double, kSize * kSize>& covariance() const { return m_covariance; }

    // The sd of the reserve after an observation of `row` with error `sdL`,
    // whatever its value: what a proof not yet made would leave.
    Volume reserveSdAfter(const Row& row, double sdL) const;

private:
    HiddenReserve() = default;
    Estimate<Volume> along(const Row& row) const;
    HiddenReserve observed(const Row& row, double value, double sdL, EvidenceItem item) const;
    Result<ProofOutcome> drained(const Proof& proof, const ProofContext& context) const;
    Result<ProofOutcome> driven(const Proof& proof, const ProofContext& context) const;

    Row m_mean{};
    std::array<double, kSize * kSize> m_covariance{};
    double m_zeroOfCurveL = 0.0;             // the calibration's q0: where its curve has its zero
    double m_spanL = 0.0;                    // qF - q0 where the meter scale is linearised
    std::vector<EvidenceItem> m_evidence;
};

struct ProofOutcome {
    HiddenReserve reserve;
    std::optional<Estimate<Consumption>> rate;
};

} // namespace undermark
