// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/calibration/gauge_table.h"

#include <string>

namespace undermark {

// The table as CSV: signal, and percent or litres with `decimals` as in its request.
std::string gaugeTableCsv(const GaugeTable& table, GaugeUnit unit, int decimals);

} // namespace undermark
