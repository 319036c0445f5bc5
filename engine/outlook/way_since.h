// SPDX-License-Identifier: GPL-3.0-or-later
//
// What was driven, stood and poured in since the level was known last: at the last full fill, or
// where a level was kept (kept_level.h). Only for the files of engine/outlook.
#pragma once

#include "engine/outlook/level.h"

#include <optional>

namespace undermark {

// Position in car.fills, of all tanks together; nothing: there is none.
std::optional<std::size_t> lastFull(const CarKnowledge& car);

// From where the level is counted on.
struct Start {
    Instant time{};
    std::optional<Distance> odometer;
    std::size_t fill = 0; // in car.fills, the first one after it; all that follow are partial
};

// Of a time after the last full fill.
Start startAt(const CarKnowledge& car, Instant time, std::optional<Distance> odometer);

struct Since {
    Mix driven;
    Distance climbed;            // of height beyond the usual
    Estimate<Volume> stood;      // idling and cold starts
    Volume partials;             // poured in since, short of full
    std::size_t partialCount = 0;
    Volume astray;               // sd of what was burnt on way that is known by its share of days alone
};

// By trips and fills after the start; those of the same instant are before it.
Since sinceThen(const CarKnowledge& car, const ModeRates& rates, const Start& start);

// And by the odometer, as told or else of the fills and levels since, where the start has one. Errors: badInput for one
// that is lower than there, said as `lower`.
Result<void> countOdometer(const CarKnowledge& car, std::optional<Distance> odometer, const Start& start, Since& since,
                           Sentence lower);

// The same for a kept level without one: the way between the odometers around it that no trip tells is shared
// out (shareOfWay). Errors: badInput for an odometer told that is lower, or that nothing can be counted from.
Result<void> shareOutWay(const CarKnowledge& car, const Question& question, Consumption usualMix, const Start& start,
                         Since& since);

// Of `untold` way in all, what lies after a level that has the part `share` (0 to 1) of the days after it:
// mean f W, variance W^2 f (1 - f) / 3, the law Beta(2 f, 2 (1 - f)) of a share, which is uniform for f = 1/2
// (judgement, no source).
Estimate<Distance> shareOfWay(Distance untold, double share);

// `level` is what was there at the start; `click`: the scatter of where a pump stops.
void carryOn(Level& level, const Since& since, Volume click);

// One more error of the litres, by so much.
void addSpread(Level& level, Volume sd);

} // namespace undermark
