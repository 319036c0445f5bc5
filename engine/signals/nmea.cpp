// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/nmea.h"

#include "engine/signals/text_fields.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>

namespace undermark {

namespace {

constexpr double kFastestKmh = 1000.0; // no road vehicle

// What stands between $ and *, where the checksum is right.
std::optional<std::string_view> soundBody(std::string_view line)
{
    const std::size_t star = line.rfind('*');
    if (!line.starts_with('$') || star == std::string_view::npos || line.size() != star + 3)
        return std::nullopt;
    const std::string_view body = line.substr(1, star - 1);
    unsigned sum = 0;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    return wholeIn(line.substr(star + 1), 16) == sum ? std::optional(body) : std::nullopt;
}

// "4807.038" with N: 48 degrees and 7.038 minutes.
std::optional<double> degrees(std::string_view text, std::string_view half, double most)
{
    const auto number = numberIn(text);
    if (!number || *number < 0.0 || half.size() != 1)
        return std::nullopt;
    const double whole = std::floor(*number / 100.0); // of any size: a cast to a whole number would not do
    const double value = whole + (*number - 100.0 * whole) / 60.0;
    const bool negative = half == "S" || half == "W";
    if (value > most || (!negative && half != "N" && half != "E"))
        return std::nullopt;
    return negative ? -value : value;
}

// "123519[.5]" and "230394".
std::optional<Seconds> utcOf(std::string_view time, std::string_view date)
{
    if (time.size() < 6 || date.size() != 6)
        return std::nullopt;
    const auto pair = [](std::string_view text, std::size_t at) { return wholeIn(text.substr(at, 2), 10); };
    const auto hour = pair(time, 0), minute = pair(time, 2);
    const auto second = numberIn(time.substr(4));
    const auto day = pair(date, 0), month = pair(date, 2), year = pair(date, 4);
    if (!hour || !minute || !second || !day || !month || !year || *hour > 23 || *minute > 59
        || *second < 0.0 || *second >= 61.0)
        return std::nullopt;
    const std::chrono::year_month_day ymd{std::chrono::year(static_cast<int>(2000 + *year)),
                                          std::chrono::month(*month), std::chrono::day(*day)};
    if (!ymd.ok())
        return std::nullopt;
    return Seconds(std::chrono::sys_days(ymd).time_since_epoch()) + Seconds(3600.0 * *hour + 60.0 * *minute + *second);
}

std::optional<Speed> speedOf(std::string_view text, double factor)
{
    const auto value = numberIn(text);
    if (!value || *value < 0.0 || *value * factor > kFastestKmh)
        return std::nullopt;
    return Speed::fromKmPerHour(*value * factor);
}

constexpr std::size_t kMostFields = 24;
using Fields = std::array<std::string_view, kMostFields>;

// $--RMC,time,status,lat,N,lon,E,knots,course,date,…
Heard readRmc(const Fields& field, NmeaFix& out)
{
    if (field[2] != "A")
        return Heard::nothing;
    out.utc = utcOf(field[1], field[9]);
    out.speed = speedOf(field[7], kKmhPerKnot);
    const auto latitude = degrees(field[3], field[4], 90.0), longitude = degrees(field[5], field[6], 180.0);
    if (latitude && longitude)
        out.place = NmeaFix::Place{*latitude, *longitude};
    return out.speed || out.place ? Heard::value : Heard::nothing;
}

// $--VTG,course,T,course,M,knots,N,km/h,K[,mode]
Heard readVtg(const Fields& field, NmeaFix& out)
{
    if (field[8] != "K" || field[9] == "N")
        return Heard::nothing;
    out.speed = speedOf(field[7], 1.0);
    return out.speed ? Heard::value : Heard::nothing;
}

} // namespace

Heard parseNmea(std::string_view line, NmeaFix& out)
{
    out = {};
    const auto body = soundBody(trimmed(line));
    if (!body)
        return Heard::garbled;
    Fields fields{};
    std::string_view rest = *body;
    for (std::string_view& field : fields)
        field = nextField(rest, ',');
    const std::string_view name = fields[0];
    if (name.size() != 5 || name.starts_with('P')) // a maker's own
        return Heard::nothing;
    if (name.ends_with("RMC"))
        return readRmc(fields, out);
    return name.ends_with("VTG") ? readVtg(fields, out) : Heard::nothing;
}

} // namespace undermark
