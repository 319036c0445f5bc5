// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/driven_ways.h"

#include <algorithm>
#include <utility>

namespace undermark {

namespace {

constexpr Seconds kStands{1.5};        // without moving: steps of a wheel's count come slower than samples
constexpr Seconds kEndsAfter{10.0};
constexpr Seconds kEndsAnywhere{600.0};

} // namespace

void DrivenWays::add(const Sample& sample, const std::string& mode)
{
    m_heard = sample.time;
    if (!sample.distance)
        return;
    const Distance before = std::exchange(m_distance, sample.distance).value_or(*sample.distance);
    const Distance way = *sample.distance - before;
    if (!(way > Distance{}))
        return;
    m_moved = sample.time;
    const auto known = std::ranges::find(m_ways, mode, &ModeWay::mode);
    if (known == m_ways.end())
        m_ways.push_back({mode, way});
    else
        known->way += way;
}

bool DrivenWays::over(Seconds now) const
{
    if (m_ways.empty())
        return false;
    const bool stood = m_heard - m_moved >= kStands;
    return now - m_heard >= (stood ? kEndsAfter : kEndsAnywhere);
}

} // namespace undermark
