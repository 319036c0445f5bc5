// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/instant_text.h"

#include "engine/base/format.h"

namespace undermark {

std::string instantText(Instant time)
{
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date(day);
    const std::chrono::hh_mm_ss clock(time - day);
    return format("%04d-%02u-%02uT%02ld:%02ld:%02ld", int(date.year()), unsigned(date.month()),
                  unsigned(date.day()), long(clock.hours().count()), long(clock.minutes().count()),
                  long(clock.seconds().count()));
}

} // namespace undermark
