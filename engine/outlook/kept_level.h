// SPDX-License-Identifier: GPL-3.0-or-later
//
// The kept level (LevelRecord) from which the level of now is counted where nothing is told: the
// newest after the last full fill. On its day the answer is that of its reading; later what was
// driven, stood and poured in since comes on top, as it does after a full fill (level.h).
//
//  * Nothing is counted twice: a fill or trip of the same instant or before is in the level
//    already, a newer reading replaces all of an older one, its curve's error and the sender's
//    bias included, and a full fill replaces both.
//  * A partial fill that is told within a day after it, nothing driven in between, may have been
//    poured before and be in it (litresMaybeIn()): where the level stands above what the log
//    expects by more than half of it, it is taken to be.
//  * A reading, or litres since drained, is only good for the calibration that it was taken with;
//    the first one holds as far back as the log. One that the wiring cannot give, or of fewer or
//    more senders than the tank has, is passed over.
//  * Of several tanks all that are in use must have one, taken at one halt; a tank that stands
//    level with the vehicle's own follows from that one.
//
// The way since then: way_since.h.
// Only for the files of engine/outlook.
#pragma once

#include "engine/outlook/outlook.h"

#include <optional>

namespace undermark {

struct KeptLevel {
    Question asked;                    // what would be told of it on its day
    Instant time{};
    std::optional<Distance> odometer;  // then
    Sentence what;                     // "the reading of 2026-04-15"
};

// For a question that tells nothing of any level; nothing: none counts. O(levels + fills).
std::optional<KeptLevel> keptLevel(const CarKnowledge& car, const Question& question);

// Poured in by partial fills told within a day after it, without a trip in between.
Volume litresMaybeIn(const KeptLevel& kept, const CarKnowledge& car);

// Whether it tells what is in a tank.
bool tellsLevel(const Question& question);

} // namespace undermark
