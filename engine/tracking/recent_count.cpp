// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/recent_count.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr double kWindowS = 600.0;

} // namespace

void RecentCount::restart(const Moment& now)
{
    m_set = true;
    m_sinceS = now.timeS;
    m_highest.fill({now.filter.levelL(), now.usedL});
}

void RecentCount::add(const Moment& now)
{
    if (!m_set || now.timeS < m_sinceS) {   // the clock went back
        restart(now);
        return;
    }
    const Count here{now.filter.levelL(), now.usedL};
    if (now.timeS - m_sinceS > kWindowS) {
        m_highest = {here, m_highest[0]};
        m_sinceS = now.timeS;
    } else if (here.levelL >= m_highest[0].at(now)) {
        m_highest[0] = here;
    }
}

double RecentCount::levelL(const Moment& now) const
{
    if (!m_set)
        return now.filter.levelL();
    return std::max(m_highest[0].at(now), m_highest[1].at(now));
}

bool RecentCount::comesBack(double lowL, double highL, const Moment& now) const
{
    return levelL(now) > 0.5 * (lowL + highL);
}

} // namespace undermark
