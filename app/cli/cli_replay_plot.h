// SPDX-License-Identifier: GPL-3.0-or-later
//
// The picture of `replay --plot`: what was read, the estimate with its band,
// refuels and faults, over time, as SVG.
#pragma once

#include "engine/tracking/tracker_types.h"

#include <string>
#include <vector>

namespace undermark {

struct PlotPoint {
    double timeS = 0.0;
    double litres = 0.0;
    double sdL = 0.0;
    std::optional<double> readingL;
};

// Keeps at most some 2,000 points of a drive of any length: when full, every
// other one goes and from then on only every other one is taken.
class PlotPoints {
public:
    void add(const PlotPoint& point);
    const std::vector<PlotPoint>& points() const { return m_points; }

private:
    std::vector<PlotPoint> m_points;
    long m_seen = 0, m_stride = 1;
};

// Litres from 0 to `fullL`; `caveat` ends the caption. Events that are neither refuel nor fault are left out.
std::string replaySvg(const std::vector<PlotPoint>& points,
                      const std::vector<TrackerEvent>& events, double fullL, const char* caveat);

} // namespace undermark
