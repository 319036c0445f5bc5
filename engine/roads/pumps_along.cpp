// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/pumps_along.h"

#include "engine/base/format.h"
#include "engine/roads/detours.h"

#include "engine/base/record_words.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr const char* kClosedForGood = "off"; // as OpenStreetMap writes it

// What the driver knows better. Hours and fuels that he does not tell are left as they are.
void correct(MapPump& pump, const OwnPump& own)
{
    pump.name = own.name;
    if (own.hours)
        pump.hours = *own.hours;
    if (own.fuel)
        pump.fuels = {{wordOf(*own.fuel), true}};
}

const OwnPump* ownAt(const PumpsQuestion& question, const GeoPosition& place)
{
    for (const OwnPump& own : question.own)
        if (geodesicLength({own.latitude, own.longitude}, place) <= kSamePump)
            return &own;
    return nullptr;
}

// Those of the list that the map has not, as the map would have them.
void addOwn(std::vector<MapPump>& pumps, const PumpsQuestion& question)
{
    const std::size_t known = pumps.size();
    for (const OwnPump& own : question.own) {
        const GeoPosition place{own.latitude, own.longitude};
        const bool onMap = std::any_of(pumps.begin(), pumps.begin() + std::ptrdiff_t(known), [&](const MapPump& pump) {
            return geodesicLength(pump.position, place) <= kSamePump;
        });
        if (onMap)
            continue;
        MapPump pump;
        pump.id = "own " + own.name;
        pump.position = place;
        pumps.push_back(std::move(pump)); // the rest by correct()
    }
}

// Of the driver's fuel or a map's tag.
Offer offerOf(const MapPump& pump, const OwnPump* own, const std::string& fuel)
{
    if (fuel.empty())
        return Offer::unknown;
    if (own && own->fuel)
        return fuel == wordOf(*own->fuel) ? Offer::yes : Offer::no;
    return offers(pump, fuel);
}

// Those within reach that may sell the fuel, in order.
std::vector<PumpAlong> within(const GeoLine& line, std::vector<MapPump>&& pumps, const PumpsQuestion& question)
{
    addOwn(pumps, question);
    std::vector<PumpAlong> along;
    for (MapPump& pump : pumps) {
        const OwnPump* const own = ownAt(question, pump.position);
        if (own)
            correct(pump, *own);
        const auto foot = line.nearest(pump.position, question.within);
        const Offer offer = offerOf(pump, own, question.fuel);
        if (!foot || offer == Offer::no || (own && own->hours == kClosedForGood))
            continue;
        PumpAlong found;
        found.own = own != nullptr;
        found.price = own ? own->pricePerLitre : std::nullopt;
        found.at = foot->at;
        found.off = foot->off;
        found.offer = offer;
        found.hours = OpeningHours::parse(pump.hours);
        found.pump = std::move(pump);
        along.push_back(std::move(found));
    }
    std::ranges::sort(along, {}, [](const PumpAlong& pump) { return std::pair(pump.at, pump.pump.id); });
    return along;
}

Result<void> leaveOut(std::vector<PumpAlong>& pumps, const std::vector<std::string>& names)
{
    for (const std::string& name : names) {
        const auto is = [&](const PumpAlong& pump) { return pump.pump.name == name || pump.pump.id == name; };
        if (std::erase_if(pumps, is) == 0)
            return fail(ErrorCode::notFound, Sentence::of("no pump along the track is called this"), {},
                        Sentence::of("a name or id that is listed"), name);
    }
    return {};
}

void addDetours(std::vector<PumpAlong>& pumps, const RoadGraph& roads, const GeoLine& line)
{
    const Detours detours(roads, line);
    for (PumpAlong& pump : pumps) {
        const auto road = detours.of(pump.pump.position, {pump.off, pump.at});
        pump.byRoad = road.has_value();
        pump.detour = road.value_or(pump.off * (2 * kRoadPerStraight));
    }
}

} // namespace

Result<PumpsAlong> findPumpsAlong(const GeoLine& line, const std::filesystem::path& extract,
                                  const PumpsQuestion& question)
{
    ExtractOptions options;
    options.reach = question.within;
    options.roadReach = 1.5 * question.within + Distance::fromKm(1);
    options.progress = question.progress;
    Result<MapExtract> map = readMapExtract(extract, line, options);
    if (!map)
        return fail(map.error());
    PumpsAlong found;
    found.pumps = within(line, std::move(map->pumps), question);
    if (const auto done = leaveOut(found.pumps, question.leaveOut); !done)
        return fail(done.error());
    addDetours(found.pumps, map->roads, line);
    if (map->roadsLeftOut)
        found.notes.push_back(Sentence::of("too many roads within reach: detours are estimated from the straight line"));
    if (map->outside > Distance::fromMetres(50))
        found.notes.push_back(Sentence::of("%1 of the track are outside the map: pumps there are not known",
                                           amount(map->outside, 1)));
    if (found.pumps.empty())
        found.notes.push_back(Sentence::of("the map has no pump within %1 of the track", amount(question.within, 1)));
    const bool anySells = std::ranges::any_of(
        found.pumps, [](const PumpAlong& pump) { return pump.offer == Offer::yes; });
    if (!question.fuel.empty() && !found.pumps.empty() && !anySells)
        found.notes.push_back(Sentence::of("the map says of none of them that it sells %1: ask before you count on one",
                                           question.fuel));
    return found;
}

} // namespace undermark
