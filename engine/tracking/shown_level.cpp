// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/shown_level.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kCorrection = 0.03;     // of the range, or two sd
constexpr int kCorrectionBlocks = 10;

} // namespace

void ShownLevel::set(double litres)
{
    m_level.mean = Volume::fromLitres(std::max(0.0, litres));
    m_above = 0;
}

std::optional<Estimate<Volume>> ShownLevel::follow(const FuelFilter& filter, double curveSdL)
{
    const double sd = std::min(m_rangeL, std::sqrt(std::max(0.0, filter.levelVarianceL2())
                                                   + curveSdL * curveSdL));
    const double estimate = std::max(0.0, filter.levelL());
    const double shown = m_level.mean.litres();
    m_level.sd = Volume::fromLitres(sd);
    m_above = estimate > shown + std::max(kCorrection * m_rangeL, 2.0 * sd) ? m_above + 1 : 0;
    if (m_above < kCorrectionBlocks) {
        m_level.mean = Volume::fromLitres(std::min(shown, estimate));
        return std::nullopt;
    }
    set(estimate);
    return Estimate<Volume>{Volume::fromLitres(estimate - shown), m_level.sd};
}

} // namespace undermark
