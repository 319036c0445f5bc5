// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/isotonic.h"

#include <cassert>

namespace undermark {

std::vector<IsotonicBlock> isotonicBlocks(std::span<const double> values,
                                          std::span<const double> weights)
{
    assert(values.size() == weights.size());
    std::vector<IsotonicBlock> blocks;
    blocks.reserve(values.size());
    for (std::size_t i = 0; i < values.size(); ++i) {
        assert(weights[i] > 0.0);
        IsotonicBlock block{i, 1, values[i], weights[i]};
        while (!blocks.empty() && blocks.back().mean >= block.mean) {
            const IsotonicBlock& below = blocks.back();
            const double weight = below.weight + block.weight;
            // As a step from one mean, so that equal values stay exactly equal.
            const double mean = below.mean + (block.mean - below.mean) * (block.weight / weight);
            block = {below.first, below.count + block.count, mean, weight};
            blocks.pop_back();
        }
        blocks.push_back(block);
    }
    return blocks;
}

} // namespace undermark
