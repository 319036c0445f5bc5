// SPDX-License-Identifier: GPL-3.0-or-later
//
// The one answer for one car now: how far to the zero mark and to dry, with its
// probability, from whatever is known of the level.
#pragma once

#include "engine/base/sentence.h"
#include "engine/outlook/car_knowledge.h"
#include "engine/outlook/joint_law.h"
#include "engine/outlook/unlogged.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

// What is told of one of several tanks: a reading, or litres, or that it is followed.
struct TankTold {
    std::optional<Signal> signal;
    std::optional<Signal> signal2;            // of two senders
    std::optional<Estimate<Volume>> usable;   // litres of this tank down to dry
    std::optional<Estimate<Volume>> followed{}; // litres since drained, as a tracker has them
    std::optional<Signal> signalSd{};         // of `signal`; absent: as the question says
};

// At most one of signal, followed, usable and odometer; none asks the log, and what level it has
// kept since the last full fill (kept_level.h). Of a car of several
// tanks signal and followed are of the vehicle's own, usable is the sum, and the odometer may be
// told besides: by it the log says what is in tanks of which nothing is told.
struct Question {
    std::optional<Signal> signal;
    std::optional<Signal> signalSd;           // noise of the reading, else by `motion`
    Motion motion = Motion::atRest;
    std::optional<Signal> signal2;            // with `signal`: the other lobe of a saddle tank
    Volume seriesSpread;                      // two senders in series: seriesSpread() of lobes.h;
                                              // none: as the calibration states them
    std::optional<Estimate<Volume>> followed; // litres since drained, as a tracker has them
    std::optional<Estimate<Volume>> usable;   // litres down to dry on a level road
    std::optional<Distance> odometer;
    std::map<std::string, TankTold> tanks{};  // by name; empty: the vehicle's own, litres only
    std::string mode{};                       // empty: the usual mix
    std::optional<Estimate<Consumption>> rate; // as stated, of every mode: instead of the log's
    Circumstances now;                        // today (else the car's), and the user's word on what burns more
};

enum class LevelSource { signal, given, log };

// Of one of several tanks.
struct TankLevel {
    std::string tank;                         // empty: the vehicle's own
    Estimate<Volume> usable;                  // down to where it gives no more
};

struct Outlook {
    std::string mode;
    LevelSource source = LevelSource::log;
    LevelBound bound = LevelBound::exact;     // of a signal at or past a float stop
    std::optional<Volume> boundAt;            // at most or at least so many usable litres
    Estimate<Volume> usable;                  // down to dry on a level road
    Estimate<Volume> aboveZero;               // down to the zero mark; may be negative
    Estimate<Volume> reserve;                 // below it
    Estimate<Consumption> rate;               // of `mode`, predictive
    std::optional<Instant> asOf;              // of the kept level that it is counted from; absent: none
    std::optional<Distance> sinceFill;        // driven since the last full fill, as far as told
    std::optional<Distance> likelySinceFill;  // and with what nobody wrote down, on average
    std::optional<Unlogged> unlogged;         // and since then, where the log answers days later
    RangeLaw toZero;
    RangeLaw toDry;                           // surge margin of the mode taken off
    JointLaw law;                             // what all of the above are read off
    std::vector<TankLevel> tanks;             // of several: those that were told
    std::vector<Sentence> warnings;
    Sentence why; // one line: what the answer rests on
};

// Errors: notFound for an unknown mode; badInput where the level cannot be known
// (no full fill in the log and no reading), the odometer runs backwards, or a
// second signal is missing or not wanted.
// A reading that the circuit cannot give is a warning, and the log answers.
Result<Outlook> outlook(const CarKnowledge& car, const Question& question);

// Distances from the zero mark to dry in a mode (empty: the usual mix): the same law with
// the hidden reserve as all that is left; `now` as in a Question. Errors: notFound for an
// unknown mode.
Result<Distances> pastZero(const CarKnowledge& car, const std::string& mode,
                           const Circumstances& now = {});

// What would teach this car its consumption, where further tanks keep the full fills of its own
// from doing so: two of those, at least, since all tanks were full at one halt.
std::optional<Sentence> whatWouldTeach(const CarKnowledge& car);

} // namespace undermark
