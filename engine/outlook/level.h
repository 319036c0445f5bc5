// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is known of the level when somebody asks how far: litres as given, a reading, or
// the log. Only for the files of engine/outlook.
#pragma once

#include "engine/outlook/outlook.h"

namespace undermark {

// Litres when the level was last known, and the road driven since, by mode (usual mix:
// empty name).
struct Level {
    LevelSource source = LevelSource::given;
    LevelBound bound = LevelBound::exact;
    std::optional<Volume> boundAt;
    Estimate<Volume> aboveZero;
    Estimate<Volume> usable;
    Mix driven;
    std::optional<Distance> sinceFill;
    std::optional<Unlogged> unlogged;  // of the log: its road is in `driven`, its spread in the litres
    Sentence why;
};

Distance total(const Mix& mix);

// Litres given come before a reading, a reading before the log. A reading that the
// circuit cannot give is said in `warnings` and the log answers; so it does where the
// float rests on its stop and the log agrees. The log is taken on to today, unless the odometer is
// told: the road that no record tells (unlogged.h), in the usual mix. Errors: badInput where neither says.
Result<Level> findLevel(const CarKnowledge& car, const Question& question, const ModeRates& learnt,
                        const RateModel& rates, std::vector<Sentence>& warnings);

} // namespace undermark
