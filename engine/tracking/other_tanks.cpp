// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/other_tanks.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr double kAtHaltLPerMin = 4.0;
constexpr double kOnTheWayLPerMin = 8.0;
constexpr double kOverStated = 1.5;
constexpr double kSdsAtHalt = 1.0;    // of a block's reading, on top of what the pump moves
constexpr double kSdsOnTheWay = 4.0;  // slosh
constexpr double kFallen = 0.03;      // of the range
constexpr double kGain = 0.15;        // of a block of 30 s: an average over three minutes

} // namespace

bool OtherFuel::cameOver(const Rise& rise) const
{
    if (m_tanks.comesOver <= Volume() || rise.litres > m_tanks.comesOver.litres() + 2.0 * rise.sdL)
        return false;
    const double usual = rise.onTheWay ? kOnTheWayLPerMin : kAtHaltLPerMin;
    const double perMinute = m_tanks.transfer ? kOverStated * m_tanks.transfer->litresPerHour() / 60.0 : usual;
    const double sds = rise.onTheWay ? kSdsOnTheWay : kSdsAtHalt;
    return rise.fastestL <= perMinute * m_blockS / 60.0 + sds * rise.sdL;
}

void OtherFuel::give(double litres)
{
    const Volume given = Volume::fromLitres(std::max(0.0, litres));
    m_tanks.hold -= given;
    m_tanks.comesOver -= given;
}

void RestingLevel::begin(double levelL)
{
    m_active = true;
    m_levelL = levelL;
    m_fallenL = 0.0;
}

bool RestingLevel::falls(const BlockSummary& block)
{
    m_fallenL += kGain * (m_levelL - block.levelL - m_fallenL);
    return m_fallenL > kFallen * m_rangeL;
}

} // namespace undermark
