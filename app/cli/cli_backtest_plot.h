// SPDX-License-Identifier: GPL-3.0-or-later
//
// Draws a backtest as SVG: the 90 % and 50 % bands, the forecast and the outcome
// of each tank over time, flagged tanks as rings.
#pragma once

#include "engine/base/error.h"
#include "engine/consumption/backtest.h"

#include <filesystem>

namespace undermark {

// `when[i]` is the end of tank i. Errors: fileAccess.
Result<void> writeBacktestPlot(const std::filesystem::path& file, const Backtest& test,
                               std::span<const Instant> when);

} // namespace undermark
