// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/base/quantity.h"

#include <chrono>
#include <optional>
#include <span>

namespace undermark {

struct TimedSignal {
    std::chrono::duration<double> time;   // since any start, not falling
    Signal signal;
};

// One reading made from many. Fuel sloshes with a memory of some seconds, so
// neighbours tell much the same: the standard error counts effective readings,
// n (1 - r) / (1 + r) with r the lag-1 autocorrelation where it is positive
// (first-order autoregression; e.g. von Storch & Zwiers 1999, 6.6). Over fewer
// readings than the memory lasts it is still too small: take half a minute.
struct SettledReading {
    int readings = 0;
    Signal mean;
    std::optional<Signal> sd;              // of one reading; with two or more
    std::optional<Signal> standardError;   // of the mean; with three or more
    std::optional<Signal> driftPerSecond;  // least-squares slope; with three or more, if time passes
    // As if no drift were there: mean known within the tolerance asked for.
    bool settled = false;
};

// Statistics of a series. Settled means five readings or more, two standard
// errors within `tolerance`, and a drift over the series within `tolerance`.
// Values are shifted by the first one before anything is squared, so that a
// large offset costs no digits (NIST StRD NumAcc3 and 4). No readings: all
// unknown, mean 0. O(n).
SettledReading settle(std::span<const TimedSignal> series, Signal tolerance);

} // namespace undermark
