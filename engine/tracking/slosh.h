// SPDX-License-Identifier: GPL-3.0-or-later
//
// Slosh: the fuel's own movement under the float. It is coloured noise, so a
// mean over T seconds is better than one sample, but not by the square root of
// the number of samples.
#pragma once

#include "engine/base/quantity.h"

namespace undermark {

// Variance of the mean over `block` of noise with standard deviation 1 and
// exponential autocorrelation of `correlation` (e-fold): with r = tau/T,
// 2r(1 - r(1 - exp(-1/r))). Between 0 and 1; 1 for an empty block.
// Source: integral of the autocorrelation, see e.g. Priestley, Spectral
// Analysis and Time Series, on the variance of a time average.
double blockMeanVariance(Seconds block, Seconds correlation);

} // namespace undermark
