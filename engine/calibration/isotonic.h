// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace undermark {

// Consecutive values that were pooled into one.
struct IsotonicBlock {
    std::size_t first = 0;   // index of the first value pooled
    std::size_t count = 0;
    double mean = 0.0;       // weighted mean of the pooled values
    double weight = 0.0;     // sum of their weights, > 0
};

// Weighted isotonic regression: the non-decreasing sequence nearest to `values`
// in weighted least squares, by pooling adjacent violators (Barlow et al.,
// "Statistical Inference under Order Restrictions", 1972). Block means come out
// strictly increasing: equal neighbours are pooled too. `weights` > 0, as many
// as values. No unit of its own. O(n).
std::vector<IsotonicBlock> isotonicBlocks(std::span<const double> values,
                                          std::span<const double> weights);

} // namespace undermark
