// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/plot_picture.h"

#include "engine/range/horizon.h"

#include <cmath>

namespace undermark {

namespace {

constexpr double kSlack = 1e-9; // a value on a tick is not beyond it

} // namespace

PlotAxis PlotAxis::around(double low, double high, int most)
{
    PlotAxis axis;
    axis.m_step = tickStep(high - low, most);
    axis.m_low = std::floor(low / axis.m_step + kSlack) * axis.m_step;
    axis.m_high = std::ceil(high / axis.m_step - kSlack) * axis.m_step;
    return axis;
}

QList<HorizonTickMark> PlotAxis::ticks(const UnitFormat& format, bool upwards) const
{
    const int decimals = std::max(0, int(std::ceil(-std::log10(m_step) - kSlack)));
    const int count = int(std::lround((m_high - m_low) / m_step));
    QList<HorizonTickMark> marks;
    for (int i = 0; i <= count; ++i) {
        const double value = m_low + i * m_step;
        const double at = share(value);
        marks.append({upwards ? 1.0 - at : at, format.number(value, decimals), true, i % 2 == 1});
    }
    return marks;
}

} // namespace undermark
