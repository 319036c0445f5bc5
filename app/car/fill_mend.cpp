// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/fill_mend.h"

namespace undermark {

std::optional<Fill> mended(const Fill& fill, const FillFlag& flag)
{
    Fill better = fill;
    if (flag.volume)
        better.volume = *flag.volume;
    if (flag.odometer)
        better.odometer = *flag.odometer;
    return better == fill ? std::nullopt : std::optional(better);
}

} // namespace undermark
