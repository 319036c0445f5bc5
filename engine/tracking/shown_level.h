// SPDX-License-Identifier: GPL-3.0-or-later
//
// The level that is shown. It falls with the estimate and never rises by itself: an
// estimate that stays clearly above it, ten blocks long, becomes a correction that is
// said.
#pragma once

#include "engine/tracking/fuel_filter.h"

#include <optional>

namespace undermark {

class ShownLevel {
public:
    ShownLevel(double rangeL, Estimate<Volume> level) : m_rangeL(rangeL), m_level(level) {}

    const Estimate<Volume>& level() const { return m_level; }
    // A refuel or a new start, said elsewhere: shown as it is, at least 0.
    void set(double litres);
    // After a block; `curveSdL` is the curve's own. The step up, where it is corrected.
    std::optional<Estimate<Volume>> follow(const FuelFilter& filter, double curveSdL);

private:
    double m_rangeL;
    Estimate<Volume> m_level;
    int m_above = 0;     // blocks in a row in which the estimate lay clearly above
};

} // namespace undermark
