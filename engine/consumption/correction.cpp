// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/correction.h"

namespace undermark {

std::optional<Fill> corrected(const Fill& fill, const FillFlag& flag)
{
    if (!flag.volume && !flag.odometer && !(flag.distance && fill.sinceLast))
        return std::nullopt;
    Fill mended = fill;
    if (flag.volume)
        mended.volume = *flag.volume;
    if (flag.odometer)
        mended.odometer = flag.odometer;
    else if (flag.distance && fill.sinceLast)
        mended.sinceLast = flag.distance;
    const bool exact = flag.cause == FlagCause::gallonsAsLitres || flag.cause == FlagCause::milesAsKm;
    mended.counted = exact ? fill.counted : std::optional(false);
    return mended;
}

} // namespace undermark
