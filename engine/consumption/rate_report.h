// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is known about the rates, and how it came about: for the `rates` command
// and the logbook page.
#pragma once

#include "engine/consumption/consumption_model.h"

namespace undermark {

struct RateLine {
    std::string mode;                    // empty: the usual mix
    Estimate<Consumption> rate;          // of the long run: posterior, without the noise of a
                                         // single drive and without the trend below
    Consumption low90;                   // 90 % interval of the rate
    Consumption high90;
    std::optional<Fraction> share;       // of usual driving; nothing for the usual mix itself
    // Further tanks like the last ones until the interval is at most as wide as
    // wanted; 0 if it already is, nothing if 200 would not do.
    std::optional<int> tanksToNarrow;
};

// What one stretch taught.
struct Lesson {
    std::size_t lastFill = 0;
    Volume expected;
    Volume burnt;
    Consumption usualBefore;             // rate of the usual mix
    Consumption usualAfter;
    bool learnt = true;                  // false: flagged, or left out
};

struct RateReport {
    RateLine usual;
    std::vector<RateLine> modes;
    Estimate<FlowRate> idle;
    Estimate<Volume> coldStart;
    Estimate<Consumption> climb;         // of a km of height
    double usualClimb = 0;               // km of height in a km of usual road, which the rates hold
    Fraction trend;                      // how the car does just now against the long run, +0.03 = thirstier
    Fraction trendLow90;                 // its 90 % interval
    Fraction trendHigh90;
    std::vector<Lesson> lessons;         // the last ones, oldest first
};

struct RateReportOptions {
    Consumption wantedWidth = Consumption::fromLitresPer100Km(1);   // of the 90 % interval
    std::size_t lessons = 5;
    Circumstances now;
};

// `beliefs` by interval as from screen(), may be shorter; `fresh` has learnt from nothing yet.
// O(intervals * modes^3).
RateReport reportRates(std::span<const Interval> intervals, const std::vector<Belief>& beliefs,
                       ConsumptionModel fresh, const RateReportOptions& options = {});

} // namespace undermark
