// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which proofs of a log count as evidence of their own. A car passes zero once
// between two fills, so drives past zero that were noted between the same two fills
// are one drive, whatever they are called: of them the farthest counts, of those as
// far the one that burnt least, and none where the drive ended in a stall. Of drives
// between other fills only the one that burnt most counts: whoever has so many litres
// has fewer as well, and what they share (the rate's error) is no second proof.
#pragma once

#include "engine/base/records.h"

#include <functional>
#include <span>
#include <vector>

namespace undermark {

enum class ProofUse {
    counts,
    sameDrive,   // noted again: another entry of the same drive counts
    covered,     // another drive says as much and more
};

// One for each of `proofs`. `fills`: when fuel went in, in any order; `burnt`: expected
// litres of a drive past zero, at its mode's rate and surge margin. O(n log n) and one
// call of `burnt` each.
std::vector<ProofUse> usesOfProofs(std::span<const Proof> proofs, std::vector<Instant> fills,
                                   const std::function<Volume(const Proof&)>& burnt);

} // namespace undermark
