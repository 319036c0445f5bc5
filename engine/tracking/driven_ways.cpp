// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/driven_ways.h"

#include <algorithm>
#include <utility>

namespace undermark {

namespace {

constexpr Seconds kStands{1.5};        // without moving: steps of a wheel's count come slower than samples
constexpr Seconds kEndsAfter{10.0};
constexpr Seconds kEndsAnywhere{600.0};

void addWay(std::vector<ModeWay>& ways, const std::string& mode, Distance way)
{
    const auto known = std::ranges::find(ways, mode, &ModeWay::mode);
    if (known == ways.end())
        ways.push_back({mode, way});
    else
        known->way += way;
}

} // namespace

void DrivenWays::rename(const std::string& mode, const std::string& another)
{
    if (std::ranges::find(m_ways, mode, &ModeWay::mode) == m_ways.end())
        return;
    std::vector<ModeWay> ways;
    for (const ModeWay& way : m_ways)
        addWay(ways, way.mode == mode ? another : way.mode, way.way);
    m_ways = std::move(ways);
}

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
    addWay(m_ways, mode, way);
}

bool DrivenWays::over(Seconds now) const
{
    if (m_ways.empty())
        return false;
    const bool stood = m_heard - m_moved >= kStands;
    return now - m_heard >= (stood ? kEndsAfter : kEndsAnywhere);
}

} // namespace undermark
