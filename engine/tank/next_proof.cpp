// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tank/next_proof.h"

#include <array>

namespace undermark {

namespace {

Sentence lowFuel()
{
    return Sentence::of("Do not drive until it stops: running low harms pumps, and in diesels the "
                        "injection.");
}

Sentence draining()
{
    Sentence caution = Sentence::of(
        "Have a qualified person drain it: petrol vapour ignites. Engine cold and off, no ignition "
        "source, ventilated, earthed, approved containers, extinguisher in reach; stop pumping at "
        "the "
        "first spit.");
    caution += lowFuel();
    return caution;
}

struct Candidate {
    NextProofKind kind;
    HiddenReserve::Row row;   // over b, u, q0, qF, k
    double sdL;
    Sentence text;
    Sentence caution;
};

std::array<Candidate, 2> candidates()
{
    return {{
        {NextProofKind::base,
         {0, 0, 1, 0, 0},
         0.2,
         Sentence::of("Drain the tank, pour a measured base and read the zero mark anew"),
         draining()},
        {NextProofKind::measureLeftBehind,
         {1, 0, 0, 0, 0},
         0.2,
         Sentence::of("Drain the tank and measure what the pump left behind, with the tank open"),
         draining()},
    }};
}

} // namespace

std::optional<NextProof> suggestNextProof(const HiddenReserve& reserve)
{
    constexpr double kClearGain = 0.90;
    constexpr double kSomeGain = 0.98;
    const Volume now = reserve.reserve().sd;
    std::optional<NextProof> best;
    for (const Candidate& candidate : candidates()) {
        const Volume after = reserve.reserveSdAfter(candidate.row, candidate.sdL);
        const NextProof proof{candidate.kind, now, after, candidate.text, candidate.caution};
        if (after <= kClearGain * now && now > Volume())
            return proof;
        if (after <= kSomeGain * now && (!best || after < best->sdAfter))
            best = proof;
    }
    return now > Volume() ? best : std::nullopt;
}

} // namespace undermark
