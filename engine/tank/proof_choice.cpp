// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tank/proof_choice.h"

#include <algorithm>
#include <map>
#include <optional>

namespace undermark {

namespace {

bool isDrive(const Proof& proof)
{
    return proof.distance
        && (proof.kind == ProofKind::pastZero || proof.kind == ProofKind::stalled);
}

} // namespace

std::vector<ProofUse> usesOfProofs(std::span<const Proof> proofs, std::vector<Instant> fills,
                                   const std::function<Volume(const Proof&)>& burnt)
{
    std::ranges::sort(fills);
    std::vector<ProofUse> uses(proofs.size(), ProofUse::counts);
    std::vector<Volume> litres(proofs.size());
    // A stall first; then the farther; then the one that burnt less.
    const auto tellsMore = [&](std::size_t a, std::size_t b) {
        if (proofs[a].kind != proofs[b].kind)
            return proofs[a].kind == ProofKind::stalled;
        const Distance far = proofs[a].distance->mean, near = proofs[b].distance->mean;
        return far != near ? far > near : litres[a] < litres[b];
    };
    std::map<std::ptrdiff_t, std::size_t> ofTank;   // by the fills before it
    for (std::size_t i = 0; i < proofs.size(); ++i) {
        if (!isDrive(proofs[i]))
            continue;
        litres[i] = burnt(proofs[i]);
        const auto tank = std::ranges::upper_bound(fills, proofs[i].time) - fills.begin();
        const auto [known, isNew] = ofTank.emplace(tank, i);
        if (isNew)
            continue;
        const bool better = tellsMore(i, known->second);
        uses[better ? known->second : i] = ProofUse::sameDrive;
        if (better)
            known->second = i;
    }
    std::optional<std::size_t> most;
    for (const auto& [tank, i] : ofTank) {
        if (proofs[i].kind != ProofKind::pastZero)
            continue;
        const bool better = most && litres[i] > litres[*most];
        if (most)
            uses[better ? *most : i] = ProofUse::covered;
        if (!most || better)
            most = i;
    }
    return uses;
}

} // namespace undermark
