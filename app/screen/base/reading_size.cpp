// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/reading_size.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr double kLargestBuiltIn = 280; // mm, 11 inches: a desk's screen is read from where one likes

} // namespace

double readingHeight()
{
    const double angle = kReadingAngle / 60 * std::numbers::pi / 180;
    return 2 * kReadingDistance * std::tan(angle / 2);
}

const QList<int>& textPercents()
{
    static const QList<int> kPercents{100, 125, 150, 175, 200};
    return kPercents;
}

int readableTextPercent(double capitals, double diagonal)
{
    if (!(capitals > 0 && diagonal > 0 && diagonal <= kLargestBuiltIn))
        return textPercents().first();
    const auto enough = std::ranges::find_if(textPercents(), [capitals](int percent) {
        return capitals * percent / 100 >= readingHeight();
    });
    return enough == textPercents().end() ? textPercents().last() : *enough;
}

} // namespace undermark
