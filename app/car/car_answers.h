// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a Car (app/car/car.h) answers, made from what is known of it: pure functions.
#pragma once

#include "app/car/notice.h"
#include "engine/outlook/outlook.h"
#include "engine/tracking/heard_tank.h"

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace undermark {

// Everything a logbook teaches about a car; never changed once it is learnt.
using Knowledge = std::shared_ptr<const CarKnowledge>;

// How far one car goes, now, in one driving mode.
struct NowState {
    std::string vehicle;
    std::vector<std::string> modes; // that can be asked for, beside the usual mix
    Outlook outlook;
    Distances pastZero;              // from the zero mark on, in that mode
    std::optional<Instant> recorded; // of the newest fill, trip or kept level
    bool reserveAssumed = false;     // nothing of this car says where its zero mark is
    std::vector<Notice> notices;     // of the level, then of entries that wait for a ruling
};

// Errors: as outlook().
Result<NowState> nowState(const CarKnowledge& car, const Question& question);

// What a tracker of the car's level starts from.
struct Observation {
    Gauge gauge;
    TrackerSettings settings; // with the rate in the usual mix, as it is learnt, and the other tanks
    std::vector<FurtherTank> further{}; // whose senders may be heard too, in order of recording
};
// Errors: notFound where no calibration says what a reading means.
Result<Observation> observationOf(const CarKnowledge& car);

// What a fill of a tank at `now` will most likely be: litres to full, odometer (or the trip
// meter, where no odometer is known), price per litre as last; with what the question tells of
// the level and of what burns more. Of several tanks it is what all of them miss, as far as this
// one takes it. Of a car whose level is not known, or a tank that was never filled: the whole
// tank. `tank` empty, or not there: the vehicle's own.
Fill likelyFill(const CarKnowledge& car, Instant now, const Question& question = {},
                const std::string& tank = {});

// Absent where there was, or is, nothing to estimate it from.
template <class Q> struct Change {
    std::optional<Estimate<Q>> before;
    std::optional<Estimate<Q>> after;
};

// What one fill taught.
struct FillLesson {
    EntryId entry;                // of the fill, to take it back
    Change<Consumption> rate;     // of the usual mix
    Change<Volume> reserve;
    std::vector<Notice> flags;    // what is implausible, with its likely cause
    std::optional<Fill> proposed; // the fill as it would be plausible
};

// Of the entry `id`, a fill of `after` or its correction.
FillLesson lessonOf(const EntryId& id, const CarKnowledge& before, const CarKnowledge& after);

// What the log is made of, but for calibrations.
using LogValue = std::variant<Fill, Trip, Proof, LevelRecord>;

// One row of an entry's history.
struct LogVersion {
    Instant recorded{};
    LogValue value;
    bool withdrawn = false;
};

} // namespace undermark
