// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/route_csv_writer.h"

#include "engine/base/private_file.h"
#include "engine/tables/csv_writer.h"
#include "engine/tables/route_csv.h"

namespace undermark {

namespace {

std::optional<double> minutesIn(const std::optional<Minutes>& time)
{
    return time ? std::optional(time->count()) : std::nullopt;
}

std::optional<double> metresIn(Distance height)
{
    return height == Distance() ? std::nullopt : std::optional(height.metres());
}

void addPoint(CsvWriter& csv, const RoutePoint& point)
{
    csv.number(point.at.km()).text(point.name);
    csv.text(point.mode.empty() ? kUsualMixWord : point.mode).text(fuelWord(point.fuel));
    csv.number(point.pricePerLitre).number(in(point.leastPurchase, &Volume::litres));
    csv.number(in(point.mostPurchase, &Volume::litres)).number(minutesIn(point.stopTime));
    csv.number(in(point.detour, &Distance::km));
    csv.text(point.opens ? clockText(*point.opens) : "").text(point.closes ? clockText(*point.closes) : "");
    csv.number(point.timed).number(minutesIn(point.idle));
    csv.number(in(point.floor, &Volume::litres)).number(minutesIn(point.rest));
    csv.text(point.due ? clockText(*point.due) : "");
    csv.number(metresIn(point.climb.there)).number(metresIn(point.climb.back));
    csv.text(point.firstDay ? dayText(*point.firstDay) : "").text(point.lastDay ? dayText(*point.lastDay) : "").endRow();
}

} // namespace

Result<void> writeRouteCsv(const Route& route, const std::filesystem::path& file)
{
    if (const auto sound = checkRoute(route); !sound)
        return sound;
    CsvWriter csv("at_km,name,mode,fuel,price_per_l,min_litres,max_litres,stop_min,detour_km,"
                  "opens,closes,timed,idle_min,floor_l,rest_min,due,climb_m,climb_back_m,from_date,until_date");
    for (const RoutePoint& point : route.points)
        addPoint(csv, point);
    return writePrivateFile(file, csv.contents());
}

} // namespace undermark
