// SPDX-License-Identifier: GPL-3.0-or-later
//
// Turns what the forecaster promises into worlds that others can compute with.
#pragma once

#include "engine/consumption/coverage.h"
#include "engine/consumption/log_law.h"
#include "engine/consumption/mode_rates.h"

namespace undermark {

// What is promised over one usual stretch, and how much of it is not the common factor.
struct Promise {
    std::vector<LogLawPart> rate;    // of log(rate / rate at factor 1), with all there is
    PromiseFactors factors;
    double roadVariance = 0;         // of the litres of a usual stretch over its litres^2, by its road
    double levelVariance = 0;        // the same by the click that began it
};

// Worlds with which P(rate and road and level use up a usual stretch's litres before d)
// has the promised quantiles at kPromises: the normal law of the scores is split into
// cells, each carried over to factors; then the factors are moved until the quantiles
// are met, within 0.2 %. Cost: about 50 us for each part of the promise.
std::vector<RateWorld> worldsOf(const Promise& promise);

} // namespace undermark
