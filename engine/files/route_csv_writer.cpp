// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/files/route_csv_writer.h"

#include "engine/files/csv_writer.h"
#include "engine/files/private_file.h"
#include "engine/files/route_csv.h"

#include <cmath>

namespace undermark {

namespace {

std::string clockText(const std::optional<Minutes>& clock)
{
    if (!clock)
        return {};
    const int minutes = static_cast<int>(std::lround(clock->count()));
    char text[32];
    std::snprintf(text, sizeof text, "%02d:%02d", minutes / 60, minutes % 60);
    return text;
}

template <class Q>
std::optional<double> in(const std::optional<Q>& quantity, double (Q::*unit)() const)
{
    return quantity ? std::optional(((*quantity).*unit)()) : std::nullopt;
}

std::optional<double> minutesIn(const std::optional<Minutes>& time)
{
    return time ? std::optional(time->count()) : std::nullopt;
}

void addPoint(CsvWriter& csv, const RoutePoint& point)
{
    csv.number(point.at.km()).text(point.name);
    csv.text(point.mode.empty() ? kUsualMixWord : point.mode).text(fuelWord(point.fuel));
    csv.number(point.pricePerLitre).number(in(point.leastPurchase, &Volume::litres));
    csv.number(in(point.mostPurchase, &Volume::litres)).number(minutesIn(point.stopTime));
    csv.number(in(point.detour, &Distance::km));
    csv.text(clockText(point.opens)).text(clockText(point.closes));
    csv.number(point.timed).number(minutesIn(point.idle)).endRow();
}

} // namespace

Result<void> writeRouteCsv(const Route& route, const std::filesystem::path& file)
{
    if (const auto sound = checkRoute(route); !sound)
        return sound;
    CsvWriter csv("at_km,name,mode,fuel,price_per_l,min_litres,max_litres,stop_min,detour_km,"
                  "opens,closes,timed,idle_min");
    for (const RoutePoint& point : route.points)
        addPoint(csv, point);
    return writePrivateFile(file, csv.contents());
}

} // namespace undermark
