// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is known of coefficients that cannot be negative.
#pragma once

#include <cstddef>
#include <vector>

namespace undermark {

// Conditions a Gaussian on coefficient i being at least `least`, keeping its
// first two moments: mean and variance of the truncated normal (Johnson, Kotz &
// Balakrishnan 1994, 13.10), carried to the others along their covariance.
// `covariance` is n * n, row by row. O(n^2).
void conditionAbove(std::vector<double>& mean, std::vector<double>& covariance, std::size_t i,
                    double least);

} // namespace undermark
