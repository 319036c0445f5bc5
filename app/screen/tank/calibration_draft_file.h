// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where an unfinished calibration is kept: beside its logbook, one file a car.
#pragma once

#include "engine/base/error.h"
#include "engine/calibration/calibration_draft.h"

#include <filesystem>
#include <string>

namespace undermark {

std::filesystem::path draftFile(const std::filesystem::path& folder, const std::string& id);

// Written to a new file, synced, and renamed over the old one, so that there is
// always one whole draft. Errors: fileAccess.
Result<void> keepDraft(const CalibrationDraft& draft, const std::filesystem::path& file);
// Nothing where there is none. Errors: fileAccess; damaged, the file is left there.
Result<std::optional<CalibrationDraft>> findDraft(const std::filesystem::path& file);
void dropDraft(const std::filesystem::path& file);

} // namespace undermark
