// SPDX-License-Identifier: GPL-3.0-or-later
//
// A calibration that is being taken, as it is kept on disk between two touches:
// whoever stands there with a can loses nothing to a flat battery.
#pragma once

#include "engine/calibration/settled_reading.h"
#include "engine/error.h"
#include "engine/records.h"

#include <filesystem>
#include <optional>
#include <vector>

namespace undermark {

// The steps, in order.
enum class CalibrationStage { prepare, drained, base, pours, full, verify, review };

// One level of the tank: what went in before it (or out: negative), and the
// readings there.
struct DraftLevel {
    Volume poured;
    std::vector<TimedSignal> readings; // time since 1970
};

struct CalibrationDraft {
    CalibrationStage stage = CalibrationStage::prepare;
    std::vector<bool> acknowledged;    // cautions, in the order they are shown
    std::vector<DraftLevel> levels;    // done; the first one is drained
    DraftLevel current;                // being taken
    std::optional<Volume> zeroMark;    // as typed at the review
};

// The levels as the logbook stores them: litres since drained, readings averaged.
std::vector<CalibrationPoint> pointsOf(const std::vector<DraftLevel>& levels);

// The draft in `folder`: written to a new file, synced, and renamed over the old
// one, so that there is always one whole draft. Errors: fileAccess.
Result<void> keepDraft(const CalibrationDraft& draft, const std::filesystem::path& folder);
// Nothing where there is none. Errors: fileAccess; damaged, the file is left there.
Result<std::optional<CalibrationDraft>> findDraft(const std::filesystem::path& folder);
void dropDraft(const std::filesystem::path& folder);

} // namespace undermark
