// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/weigh_proofs.h"

#include "engine/outlook/zero_mark.h"
#include "engine/tank/proof_choice.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace undermark {

namespace {

// Of a proof against what was known before it, in standard deviations.
constexpr double kSurprises = 3.0;
constexpr double kContradicts = 4.0;

// Of a proof whose zero mark is known.
ProofContext contextOf(const Proof& proof, const CarKnowledge& car)
{
    const ZeroThen zero = zeroMarkAt(car, proof.time).value_or(ZeroThen{});
    const Gauge& gauge = zero.gauge ? *zero.gauge : car.gauge;
    ProofContext context;
    context.zeroAbove = zero.above;
    const std::string mode = proof.mode.value_or(std::string());
    const Mix ahead = mode.empty() ? Mix{} : Mix{{mode, Distance::fromKm(1)}};
    const RateForecast rate = car.consumption.model.forecast(ahead);
    context.rate = Estimate<Consumption>{rate.rate.mean * car.burnShare, rate.rate.sd * car.burnShare};
    context.routeVarianceL2PerKm = rate.tauSquaredPerKm * car.burnShare * car.burnShare;
    context.surgeMargin = car.burnShare * car.surgeMargin(mode);
    context.readsHigh = gauge.readsHigh();
    if (proof.signal)
        if (const auto level = gauge.readDriving({*proof.signal, std::nullopt});
            level && level->bound == LevelBound::exact)
            context.aboveZero = car.reserve.toZero(level->added);
    return context;
}

// What was found left behind is told by no gauge.
bool speaksOfZero(const Proof& proof) { return proof.kind != ProofKind::drained || proof.volume; }

// Of the proofs at these positions.
std::vector<ProofUse> usesOf(std::span<const std::size_t> own, const CarKnowledge& car)
{
    std::vector<Instant> fills;
    for (const Entry<Fill>& fill : car.log.fills)
        if (!fill.value.tank)
            fills.push_back(fill.value.time);
    std::vector<Proof> proofs;
    for (const std::size_t at : own)
        proofs.push_back(car.log.proofs[at].value);
    return usesOfProofs(proofs, std::move(fills), [&car](const Proof& proof) {
        const ProofContext context = contextOf(proof, car);
        return context.rate->mean * proof.distance->mean + context.surgeMargin - context.zeroAbove;
    });
}

class ProofScales {
public:
    explicit ProofScales(CarKnowledge& car) : m_car(car) {}

    void weigh(std::size_t at)
    {
        const Result<ProofOutcome> outcome = with(m_car.reserve, at);
        if (!outcome) {
            flag(at, Sentence::of("not used: %1", outcome.error().detail));
            return;
        }
        const double surprise = surpriseOf(*outcome);
        if (std::abs(surprise) > kContradicts) {
            if (!confirms(at, surprise))
                m_waiting.push_back({at, surprise});
            return;
        }
        m_car.reserve = outcome->reserve;
        if (std::abs(surprise) > kSurprises)
            flag(at, Sentence::of("contradicts what was known: check the entry"));
    }

    void flagWaiting()
    {
        for (const Waiting& each : m_waiting)
            flag(each.at,
                 Sentence::of("contradicts what was known: it does not count before another proof "
                              "says the same, or what it contradicts is corrected"));
    }

    void flag(std::size_t at, Sentence text) { m_car.proofFlags.push_back({at, std::move(text)}); }

private:
    struct Waiting {
        std::size_t at;
        double surprise;
    };

    const Proof& proof(std::size_t at) const { return m_car.log.proofs[at].value; }

    Result<ProofOutcome> with(const HiddenReserve& reserve, std::size_t at) const
    {
        return reserve.with(proof(at), contextOf(proof(at), m_car));
    }

    // The most surprising of what the proof told (litres out, litres left behind).
    double surpriseOf(const ProofOutcome& outcome) const
    {
        const auto& items = outcome.reserve.evidence();
        double most = 0.0;
        for (std::size_t i = m_car.reserve.evidence().size(); i < items.size(); ++i)
            if (std::abs(items[i].surprise) > std::abs(most))
                most = items[i].surprise;
        return most;
    }

    // One that waits, and this one after it: both count if they agree.
    bool confirms(std::size_t at, double surprise)
    {
        const auto agrees = [&](const Waiting& each) {
            if (each.surprise * surprise < 0.0 || proof(each.at).time == proof(at).time)
                return false;
            const HiddenReserve before = m_car.reserve;
            m_car.reserve = with(before, each.at)->reserve;
            const Result<ProofOutcome> both = with(m_car.reserve, at);
            const bool fine = std::abs(surpriseOf(*both)) <= kSurprises;
            m_car.reserve = fine ? both->reserve : before;
            return fine;
        };
        const auto other = std::ranges::find_if(m_waiting, agrees);
        if (other == m_waiting.end())
            return false;
        m_waiting.erase(other);
        return true;
    }

    CarKnowledge& m_car;
    std::vector<Waiting> m_waiting;
};

} // namespace

void weighProofs(CarKnowledge& car)
{
    std::vector<std::size_t> own; // those of further tanks are weighed on their own reserves
    ProofScales scales(car);
    for (std::size_t i = 0; i < car.log.proofs.size(); ++i) {
        const Proof& proof = car.log.proofs[i].value;
        if (proof.tank)
            continue;
        if (zeroMarkAt(car, proof.time) || !speaksOfZero(proof))
            own.push_back(i);
        else
            scales.flag(i, Sentence::of("not used: another zero mark was in force then, and nothing says how "
                                        "far it was from today's"));
    }
    const std::vector<ProofUse> uses = usesOf(own, car);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        if (uses[i] == ProofUse::counts)
            scales.weigh(own[i]);
        else if (uses[i] == ProofUse::sameDrive)
            scales.flag(own[i],
                        Sentence::of("the same drive past zero as another entry: it counts once"));
    }
    scales.flagWaiting();
}

} // namespace undermark
