// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is known of the level when somebody asks how far: litres as given, a reading, a level
// that was kept, or the log. Only for the files of engine/outlook.
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
    Distance climbed{};                // on it, of height beyond the usual, by the trips that tell it
    std::optional<Instant> asOf{};     // of the kept level that it is counted from
    std::optional<Distance> sinceFill;
    std::optional<Distance> likelySinceFill{};
    std::optional<Unlogged> unlogged;  // of the log: its road is in `driven`, its spread in the litres
    std::vector<TankLevel> tanks{};    // of several: those that were told or follow from one that was
    Sentence why;
};

Distance total(const Mix& mix);

// The road driven since, as the law takes it: the climb by kilometres.
std::vector<RouteLeg> roadSince(const Level& level, const RateModel& rates);

// What the litres or the reading of a question say of the vehicle's own tank; nothing where none is
// told, or the sender cannot give it, which is a warning. Errors: badInput as of findLevel.
Result<std::optional<Level>> toldLevel(const CarKnowledge& car, const Question& question,
                                       std::vector<Sentence>& warnings);

// Of all tanks in use, by the log alone. Errors: badInput where it holds no full fill.
Result<Level> levelByLog(const CarKnowledge& car, const Question& question, const ModeRates& learnt,
                         const RateModel& rates, std::vector<Sentence>& warnings);

// Of a car of several tanks the level is that of all together (levels_of_tanks.h).
// Litres given come before a reading, a reading before the log. Of the log it is the newest of
// what was kept (kept_level.h) and the last full fill, less what was driven and stood since then
// and with what was poured in: one law, whichever it is counted from. A reading that the
// circuit cannot give is said in `warnings` and the log answers; so it does where the
// float rests on its stop and the log agrees. The log is taken on to today, unless the odometer is
// told: the road that no record tells (unlogged.h), in the usual mix. Errors: badInput where neither says.
Result<Level> findLevel(const CarKnowledge& car, const Question& question, const ModeRates& learnt,
                        const RateModel& rates, std::vector<Sentence>& warnings);

} // namespace undermark
