// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a driver tells without a source of readings: the odometer, a reading, or that the
// needle stands at zero now. It counts until the log knows more.
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

// Whether the log has nothing newer that the level could rest on.
bool stillCounts(const Told& told, const VehicleLog& log);

// The question that it answers for. Needle at zero: usable is the hidden reserve, less what
// was driven since at the rate of `mode`.
Question questionOf(const Told& told, const CarKnowledge& car, const std::string& mode);

// The newest time in the log that the level rests on: of fills and trips. Empty: none.
std::optional<Instant> lastRecorded(const VehicleLog& log);

} // namespace undermark
