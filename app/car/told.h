// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a driver tells without a source of readings: the odometer, a reading, or that the
// needle stands at zero now, which counts until the log knows more; and what makes the car
// burn more than the log says, which counts until it is taken back.
#pragma once

#include "engine/outlook/outlook.h"

namespace undermark {

struct Told {
    enum class What { odometer, reading, needleAtZero };
    What what = What::odometer;
    Instant time{};
    std::optional<Distance> odometer; // always where that was told; else where it is known too
    std::optional<Signal> signal;     // of a reading
    std::optional<Signal> signal2;    // of two senders
    std::optional<Distance> since;    // driven since the needle stood at zero

    friend bool operator==(const Told&, const Told&) = default;
};

// A trailer, a roof box, winter: by the user's word.
struct Load {
    std::string word;  // "towing"; may be empty
    Fraction more;     // than the log says
    Instant since{};   // told
    friend bool operator==(const Load&, const Load&) = default;
};

// What can be told.
inline constexpr Fraction kLeastMore = Fraction::fromPercent(-50);
inline constexpr Fraction kMostMore = Fraction::fromPercent(400);

// "About 30 % more" with the spread that such a word has.
Estimate<Fraction> byWord(Fraction more);

// Whether the log has nothing newer that the level could rest on.
bool stillCounts(const Told& told, const VehicleLog& log);

// What a needle told at zero has proved once it no longer counts: driven so far past the zero
// mark and still running, by the odometer of the first fill since, else by what was told
// since. Absent: nothing of the sort, or no odometer tells how far it was.
std::optional<Proof> proofOf(const Told& told, const VehicleLog& log);

// A reading, as the log keeps it.
LevelRecord levelOf(const Told& told);

// The question that both answer for. Needle at zero: usable is the hidden reserve, less what
// was driven since at the rate of `mode`.
Question questionOf(const std::optional<Told>& told, const std::optional<Load>& load,
                    const CarKnowledge& car, const std::string& mode);

// The newest time in the log that the level rests on: of fills, trips and kept levels. Empty: none.
std::optional<Instant> lastRecorded(const VehicleLog& log);

// Whether a tank of it is in the log: a full fill after it was told, and one before that.
bool isLearnt(const Load& load, const VehicleLog& log);

} // namespace undermark
