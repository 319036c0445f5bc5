// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tank/hidden_reserve.h"

#include "engine/tank/gaussian_state.h"

#include <algorithm>
#include <cassert>

namespace undermark {

namespace {

using Row = HiddenReserve::Row;

constexpr std::size_t kLeftBehind = 0;
constexpr std::size_t kUnusable = 1;
constexpr std::size_t kZero = 2;
constexpr std::size_t kFull = 3;
constexpr std::size_t kScale = 4;

//                           b   u  q0  qF   k
constexpr Row kOffsetRow{    1, -1,  0,  0,  0};
constexpr Row kReserveRow{   1, -1,  1,  0,  0};
constexpr Row kCapacityRow{  1, -1,  0,  1,  0};
constexpr Row kSpanRow{      0,  0, -1,  1,  0};
constexpr Row kZeroRow{      0,  0,  1,  0,  0};
constexpr Row kLeftRow{      1,  0,  0,  0,  0};

double square(double x) { return x * x; }

double variance(const Estimate<Volume>& e)
{
    assert(isFinite(e.mean) && e.sd.litres() >= 0.0 && isFinite(e.sd));
    return square(e.sd.litres());
}

Sentence filledText(Volume filled, Volume aboveZero)
{
    return aboveZero == Volume()
               ? Sentence::of("filled up with %1 from the zero mark", amount(filled))
               : Sentence::of("filled up with %1 from %2 above zero", amount(filled),
                              amount(aboveZero));
}

Sentence drainedText(Volume drained, Volume aboveZero)
{
    return aboveZero == Volume()
               ? Sentence::of("%1 drained from the zero mark", amount(drained))
               : Sentence::of("%1 drained from %2 above zero", amount(drained), amount(aboveZero));
}

Sentence drivenText(bool stalled, Distance way, const std::optional<std::string>& mode)
{
    if (!mode)
        return stalled ? Sentence::of("stalled %1 past zero", amount(way))
                       : Sentence::of("%1 past zero, still running", amount(way));
    return stalled ? Sentence::of("stalled %1 past zero (%2)", amount(way), ModeWord{*mode})
                   : Sentence::of("%1 past zero, still running (%2)", amount(way), ModeWord{*mode});
}

// What is said of a proof that speaks of another zero mark than today's.
Sentence atItsMark(Sentence text, Volume above)
{
    if (above == Volume())
        return text;
    return above > Volume() ? Sentence::of("%1, at a zero mark %2 higher than today's", std::move(text), amount(above))
                            : Sentence::of("%1, at a zero mark %2 lower than today's", std::move(text), amount(abs(above)));
}

// The state and, as one more component, the rate of a drive; `row` gives what is
// left after so many km of it, before the surge margin.
struct Joint {
    static constexpr std::size_t kSize = HiddenReserve::kSize + 1;
    std::array<double, kSize> mean{};
    std::array<double, kSize> row{};
    std::array<double, kSize * kSize> covariance{};
};

Joint joint(const HiddenReserve& state, double rate, double rateSd, double km)
{
    constexpr std::size_t n = HiddenReserve::kSize;
    Joint both;
    for (std::size_t i = 0; i < n; ++i) {
        both.mean[i] = state.mean()[i];
        both.row[i] = kReserveRow[i];
        for (std::size_t j = 0; j < n; ++j)
            both.covariance[i * Joint::kSize + j] = state.covariance()[i * n + j];
    }
    both.mean[n] = rate;
    both.row[n] = -km;
    both.covariance.back() = square(rateSd);
    return both;
}

EvidenceItem item(EvidenceKind kind, std::optional<Instant> time, Sentence text)
{
    return {kind, time, std::move(text), {}, {}, 0.0};
}

Estimate<Volume> litres(double mean, double varianceL2)
{
    return {Volume::fromLitres(mean), Volume::fromLitres(std::sqrt(std::max(varianceL2, 0.0)))};
}

} // namespace

// State = matrix x independent sources. With a calibration the sources are
// (b, v, q0, qF - q0, k): a fill must not learn about q0, so the span is kept
// independent of it, and the summary's covariance goes into the span's spread.
// Without one they are (b, v, r, capacity, k): q0 = r - b + u, qF = capacity - b.
// v is what of u is not linked with b: u = link b + v.
HiddenReserve HiddenReserve::fromPrior(const ReservePrior& prior)
{
    const double leftL2 = variance(prior.leftBehind), unusableL2 = variance(prior.unusable);
    const double link = leftL2 > 0.0 ? prior.linked * std::sqrt(unusableL2 / leftL2) : 0.0;
    const double leftL = prior.leftBehind.mean.litres();
    std::array<double, kSize> source{leftL, prior.unusable.mean.litres() - link * leftL};
    std::array<double, kSize> spread{leftL2, unusableL2 - square(link) * leftL2};
    source[kScale] = 1.0;
    spread[kScale] = square(prior.meterScaleSd.ratio());
    std::array<Row, kSize> matrix{{{1, 0, 0, 0, 0}, {link, 1, 0, 0, 0}, {}, {}, {0, 0, 0, 0, 1}}};
    if (const auto& known = prior.calibration) {
        const double zeroL2 = variance(known->zeroMark);
        source[kZero] = known->zeroMark.mean.litres();
        spread[kZero] = zeroL2;
        source[kFull] = known->full.mean.litres() - source[kZero];
        spread[kFull] = std::max(0.0, variance(known->full) + zeroL2
                                          - 2.0 * known->covarianceL2.value_or(zeroL2));
        matrix[kZero] = {0, 0, 1, 0, 0};
        matrix[kFull] = {0, 0, 1, 1, 0};
    } else {
        source[kZero] = prior.statedReserve.mean.litres();
        spread[kZero] = variance(prior.statedReserve);
        source[kFull] = prior.statedCapacity.mean.litres();
        spread[kFull] = variance(prior.statedCapacity);
        matrix[kZero] = {link - 1, 1, 1, 0, 0};
        matrix[kFull] = {-1, 0, 0, 1, 0};
    }
    HiddenReserve state;
    for (std::size_t i = 0; i < kSize; ++i) {
        for (std::size_t s = 0; s < kSize; ++s) {
            state.m_mean[i] += matrix[i][s] * source[s];
            for (std::size_t j = 0; j < kSize; ++j)
                state.m_covariance[i * kSize + j] += matrix[i][s] * spread[s] * matrix[j][s];
        }
    }
    state.m_zeroOfCurveL = state.m_mean[kZero];
    state.m_spanL = state.m_mean[kFull] - state.m_mean[kZero];
    return state;
}

Estimate<Volume> HiddenReserve::along(const Row& row) const
{
    const Projection p = project(m_mean, m_covariance, row);
    return litres(p.mean, p.variance);
}

Estimate<Volume> HiddenReserve::reserve() const { return along(kReserveRow); }
Estimate<Volume> HiddenReserve::usableCapacity() const { return along(kCapacityRow); }
Estimate<Volume> HiddenReserve::offset() const { return along(kOffsetRow); }
Estimate<Volume> HiddenReserve::leftBehind() const { return along(kLeftRow); }
Estimate<Volume> HiddenReserve::zeroToFull() const { return along(kSpanRow); }

Estimate<Volume> HiddenReserve::toZero(Estimate<Volume> sinceDrained) const
{
    return {sinceDrained.mean - Volume::fromLitres(m_zeroOfCurveL), sinceDrained.sd};
}

Estimate<Volume> HiddenReserve::toDry(Estimate<Volume> sinceDrained, Volume surgeMargin) const
{
    return usableAt(toZero(sinceDrained), surgeMargin);
}

Estimate<Volume> HiddenReserve::usableAt(Estimate<Volume> aboveZero, Volume surgeMargin) const
{
    const Estimate<Volume> r = reserve();
    return litres((aboveZero.mean + r.mean - surgeMargin).litres(),
                  variance(aboveZero) + variance(r));
}

HiddenReserve HiddenReserve::observed(const Row& row, double value, double sdL,
                                      EvidenceItem what) const
{
    HiddenReserve next = *this;
    what.before = reserve();
    what.surprise = conditionOn(next.m_mean, next.m_covariance, row, value, sdL * sdL);
    what.after = next.reserve();
    next.m_evidence.push_back(std::move(what));
    return next;
}

HiddenReserve HiddenReserve::with(const FullFill& fill) const
{
    // litres shown = (qF - level) k, linearised: qF - q0 - above + span (k - 1).
    Row row = kSpanRow;
    row[kScale] = m_spanL;
    const double above = fill.aboveZeroBefore.mean.litres();
    const double sd = std::sqrt(variance(fill.volume) + variance(fill.aboveZeroBefore));
    return observed(row, fill.volume.mean.litres() + above + m_spanL, sd,
                    item(EvidenceKind::fill, fill.time,
                         filledText(fill.volume.mean, fill.aboveZeroBefore.mean)));
}

Result<ProofOutcome> HiddenReserve::with(const Proof& proof, const ProofContext& context) const
{
    switch (proof.kind) {
    case ProofKind::drained:
        return drained(proof, context);
    case ProofKind::base: {
        if (!proof.volume)
            return failInput(Sentence::of("a base proof needs the litres poured after draining"));
        // Zero is read anew on the way up; the needle comes back to it on the way down.
        const double zero = (proof.volume->mean - context.readsHigh.mean - context.zeroAbove).litres();
        return ProofOutcome{observed(kZeroRow, zero,
                                     std::sqrt(variance(*proof.volume) + variance(context.readsHigh)),
                                     item(EvidenceKind::base, proof.time,
                                          atItsMark(Sentence::of("base of %1 poured after draining",
                                                                 amount(proof.volume->mean)),
                                                    context.zeroAbove))),
                            {}};
    }
    case ProofKind::stalled:
    case ProofKind::pastZero:
        break;
    }
    return driven(proof, context);
}

Result<ProofOutcome> HiddenReserve::drained(const Proof& proof, const ProofContext& context) const
{
    if (!proof.volume && !proof.leftBehind)
        return failInput(
            Sentence::of("a drained proof needs the litres pumped out or found behind"));
    HiddenReserve next = *this;
    if (proof.volume) {
        if (proof.signal && !context.aboveZero)
            return failInput(Sentence::of(
                "a drained proof from a reading needs a calibration for that reading"));
        // A reading is above today's mark, whichever was in force.
        const Volume mark = proof.signal ? Volume() : context.zeroAbove;
        const Estimate<Volume> above = proof.signal ? *context.aboveZero : Estimate<Volume>{};
        const double out = (proof.volume->mean - mark).litres();
        const double sd = std::sqrt(variance(*proof.volume) + variance(above));
        next = next.observed(
            kZeroRow, out - above.mean.litres(), sd,
            item(EvidenceKind::drained, proof.time,
                 atItsMark(drainedText(proof.volume->mean, above.mean), mark)));
    }
    if (proof.leftBehind) {
        const double found = proof.leftBehind->mean.litres();
        next = next.observed(
            kLeftRow, found, std::sqrt(variance(*proof.leftBehind)),
            item(EvidenceKind::leftBehind, proof.time,
                 Sentence::of("%1 found left behind", amount(proof.leftBehind->mean, 2))));
    }
    return ProofOutcome{std::move(next), {}};
}

// Over (state, c): the margin r - surge - c d that was left at the end, with the
// route, the crossing and the distance's own error as noise. Stalled: it was 0.
// Still running: it was above 0.
Result<ProofOutcome> HiddenReserve::driven(const Proof& proof, const ProofContext& context) const
{
    if (!proof.distance)
        return failInput(Sentence::of("a proof past zero needs the distance past the zero mark"));
    if (!context.rate)
        return failInput(
            Sentence::of("a proof past zero needs the consumption of its driving mode"));
    const double km = proof.distance->mean.km();
    const double kmSd = proof.distance->sd.km();
    const double rate = context.rate->mean.litresPerKm();
    const double rateSd = context.rate->sd.litresPerKm();
    if (!(std::isfinite(km) && km >= 0.0 && std::isfinite(kmSd) && kmSd >= 0.0))
        return failInput(Sentence::of("the distance past zero must be 0 or more"));
    if (!(std::isfinite(rate) && rate > 0.0 && std::isfinite(rateSd) && rateSd >= 0.0))
        return failInput(Sentence::of("the consumption of a proof must be above 0"));
    const double noiseL2 = square(context.crossingSd.litres())
        + context.routeVarianceL2PerKm * km + (square(rate) + square(rateSd)) * square(kmSd);

    const bool stalled = proof.kind == ProofKind::stalled;
    EvidenceItem what = item(stalled ? EvidenceKind::stalled : EvidenceKind::pastZero, proof.time,
                             atItsMark(drivenText(stalled, proof.distance->mean, proof.mode), context.zeroAbove));
    what.before = reserve();
    const double surge = (context.surgeMargin - context.zeroAbove).litres();
    Joint both = joint(*this, rate, rateSd, km);
    what.surprise = stalled
        ? conditionOn(both.mean, both.covariance, both.row, surge, noiseL2)
        : conditionOnAbove(both.mean, both.covariance, both.row, surge, noiseL2);

    HiddenReserve next = *this;
    for (std::size_t i = 0; i < kSize; ++i) {
        next.m_mean[i] = both.mean[i];
        for (std::size_t j = 0; j < kSize; ++j)
            next.m_covariance[i * kSize + j] = both.covariance[i * Joint::kSize + j];
    }
    what.after = next.reserve();
    next.m_evidence.push_back(std::move(what));
    const double learntSd = std::sqrt(std::max(0.0, both.covariance.back()));
    return ProofOutcome{std::move(next),
                        Estimate<Consumption>{Consumption::fromLitresPerKm(both.mean[kSize]),
                                              Consumption::fromLitresPerKm(learntSd)}};
}

Volume HiddenReserve::reserveSdAfter(const Row& row, double sdL) const
{
    Row mean = m_mean;
    auto covariance = m_covariance;
    conditionOn(mean, covariance, row, 0.0, sdL * sdL);
    return litres(0.0, project(mean, covariance, kReserveRow).variance).sd;
}

} // namespace undermark
