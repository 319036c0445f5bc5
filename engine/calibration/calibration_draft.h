// SPDX-License-Identifier: GPL-3.0-or-later
//
// A calibration that is being taken: plain facts, kept on disk between two touches
// so that whoever stands there with a can loses nothing to a flat battery.
#pragma once

#include "engine/base/records.h"

#include <optional>
#include <vector>

namespace undermark {

// The steps, in order.
enum class CalibrationStage { prepare, drained, base, pours, full, verify, review };

// Two lobes may be read by two senders in series, or each by its own.
enum class TankWiring { oneSender, inSeries, twoSignals };

// One reading that was typed, or a settled one that stands for several.
struct DraftReading {
    std::chrono::duration<double> time; // since 1970
    Signal signal;
    std::optional<Signal> second;       // two signals: the other lobe's
    std::optional<Signal> sd;           // of one of those it stands for
    int readings = 1;                   // as many independent ones
    bool settled = false;
    friend bool operator==(const DraftReading&, const DraftReading&) = default;
};

// One level of the tank: what went in before it (or out: negative), and the
// readings there.
struct DraftLevel {
    Volume poured;
    std::vector<DraftReading> readings;
    friend bool operator==(const DraftLevel&, const DraftLevel&) = default;
};

struct CalibrationDraft {
    CalibrationStage stage = CalibrationStage::prepare;
    TankWiring wiring = TankWiring::oneSender;
    std::vector<bool> acknowledged;    // cautions, in the order they are shown
    std::vector<DraftLevel> levels;    // done; the first one is drained
    DraftLevel current;                // being taken
    std::optional<std::string> tank;   // name of an ExtraTank; absent: the vehicle's own
    std::optional<std::string> unit;   // in which the readings are taken; else the sender's
    std::optional<Volume> zeroMark;    // as typed at the review
    std::optional<Volume> firstLobe, secondLobe; // in series: what each holds, so typed
};

// The levels as the logbook stores them: litres since drained, readings averaged
// (each by how many it stands for; the sd is that of all of them together).
std::vector<CalibrationPoint> pointsOf(const std::vector<DraftLevel>& levels);

} // namespace undermark
