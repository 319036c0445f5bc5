// SPDX-License-Identifier: GPL-3.0-or-later
//
// How far a drive has gone in each mode, from its samples: what the trips are made of that a
// car writes by itself.
//
// Guarantees (each has a test in tests/engine/tracking/driven_ways_test.cpp):
//  * the ways of all modes are together what the samples' distance went on by;
//  * a distance that begins anew, and silence, add nothing and lose nothing;
//  * a drive is over after 10 s of silence that began at a halt, or 10 min of any.
#pragma once

#include "engine/signals/sample.h"

#include <string>
#include <vector>

namespace undermark {

struct ModeWay {
    std::string mode;
    Distance way; // > 0
    friend bool operator==(const ModeWay&, const ModeWay&) = default;
};

class DrivenWays {
public:
    // What the sample's distance went on by was driven in `mode`.
    void add(const Sample& sample, const std::string& mode);
    // What was driven in `mode` was driven in `another`.
    void rename(const std::string& mode, const std::string& another);
    // By `now` of the samples' clock.
    bool over(Seconds now) const;
    // In the order in which the modes were driven first; empty: it has not moved.
    const std::vector<ModeWay>& ways() const { return m_ways; }
    // Another drive; the distance goes on.
    void startAnew() { m_ways.clear(); }

private:
    std::vector<ModeWay> m_ways;
    std::optional<Distance> m_distance; // of the newest sample that had one
    Seconds m_heard{}, m_moved{};       // times of the newest sample, and of the newest that moved
};

} // namespace undermark
