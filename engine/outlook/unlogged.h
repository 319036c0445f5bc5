// SPDX-License-Identifier: GPL-3.0-or-later
//
// The road that no record tells. A log stops where somebody wrote last, the car does not: D
// days later it has usually gone on by
//
//     X = road of E days,    E = (1 - told) min(D, gap) + max(D - gap, 0)
//
// `told` is the share of the road that trips tell of as it is driven, `gap` the days, one at
// least, that nine of ten gaps between this log's records keep within. Who logs every trip
// has driven nothing unlogged until the silence is longer than usual; who logs fills only, or
// trips when filling, has driven all of those days. D is in whole days: on the day of the record itself nothing is taken off.
//
// The road of E days is gamma distributed (the law of a sum of independent steps forward), of
//
//     mean  m = E K / T,    variance  m^2 c^2 (S / E) (max(1, E / S) + E / T)
//
// K km in T days over the last stretches from full to full, S days in a usual one, c the
// relative scatter of one. Over fewer days than S it is what independent days make of it, over
// more it grows with the days, since season and holidays do not average out; E / T is what the
// mean itself is not known by. c^2 is Pearson's estimate, sum (k - m d)^2 / (m max(d, S)),
// with two stretches' worth of c = 0.5 in it (judgement, no source). Walking forward over three
// real logs (unlogged_test) the road stays within the 99 % point 99 days of 100.
//
// More than the tank held cannot be driven without a fill that is not in the log, and what
// that may have put in is not counted on: X is held to the road to dry. Of the law of X
// the level takes the mean and the 99 % point, as those of a normal law, so that what is sure
// stays sure; at the hopeful end it is a little too wide.
#pragma once

#include "engine/consumption/interval.h"
#include "engine/outlook/car_knowledge.h"

namespace undermark {

// How far a car goes in its days, by its last stretches.
struct DailyRoad {
    double kmPerDay = 0.0;         // K / T
    double relativeVariance = 0.0; // c^2, of the road of one usual stretch
    double usualDays = 1.0;        // S
    double observedDays = 1.0;     // T
    double told = 0.0;             // share of the road that trips tell of as it is driven, 0 to 1
};

// Over the last twenty of these stretches. `told` is 2 sum km (1 - u) / K over the trips in
// them, at the part u of their stretch: 1 for trips spread over it, 0 for those told at its end.
// Nothing where the stretches do not fill a day. O(stretches + trips).
std::optional<DailyRoad> dailyRoad(std::span<const Interval> stretches, std::span<const Entry<Trip>> trips);

// Mean and spread of the road of so many days (> 0), held to `most` >= 0; mean + 2.326 sd is
// its 99 % point.
Estimate<Distance> roadOf(double days, const DailyRoad& road, Distance most);

struct Unlogged {
    std::chrono::days silence{};            // whole days since the road was told last, from 1 on
    bool longerThanUsual = false;           // than nine of ten gaps of this log; where it has none, a week
    std::optional<Estimate<Distance>> road; // nothing: no stretch says how far the car goes in a day
    bool mayBeAll = false;                  // the 99 % point of the road reaches dry
};

// What was driven since the last trip, full fill or odometer, of a tank that holds `toDry`;
// `from`: since then, where that is later. Nothing where `today` is not known, on the day of the record, where trips tell all of the
// road and the silence is no longer than usual, and where the log has emptied the tank already. O(fills + trips).
std::optional<Unlogged> unloggedRoad(const CarKnowledge& car, std::optional<Instant> today,
                                     Distance toDry, std::optional<Instant> from = {});

// The days and what they may have used, and what would tell more.
Sentence sentenceOf(const Unlogged& unlogged);

} // namespace undermark
