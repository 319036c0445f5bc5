// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/map_extract.h"

#include "engine/base/plain_text.h"
#include "engine/roads/compact_list.h"
#include "engine/roads/corridor.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <limits>
#include <optional>
#include <osmium/io/pbf_input.hpp>
#include <osmium/io/reader.hpp>
#include <osmium/osm.hpp>
#include <stdexcept>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <utility>
#include <vector>

namespace undermark {

namespace {

using osmium::osm_entity_bits::type;
using WayId = std::int64_t;
using NodeId = std::int64_t;

constexpr int kPasses = 4;

struct Stopped {};

// Drivable, and what is one-way unless it says otherwise.
constexpr std::array<const char*, 15> kDrivable{
    "motorway",       "motorway_link", "trunk",        "trunk_link", "primary",
    "primary_link",   "secondary",     "secondary_link", "tertiary", "tertiary_link",
    "unclassified",   "residential",   "living_street", "service",   "road"};

bool isOneOf(const char* value, std::initializer_list<const char*> words)
{
    return value && std::ranges::any_of(words, [value](const char* word) { return !std::strcmp(value, word); });
}

// Tags as they lie in the library's buffer, text after text, each ended by a 0. Its own iterator
// runs beyond the end where a damaged text has a 0 inside (found by fuzzing); this one throws.
class Tags {
public:
    explicit Tags(const osmium::TagList& tags)
    {
        const char* at = reinterpret_cast<const char*>(tags.data()) + sizeof(osmium::TagList);
        const char* const end = reinterpret_cast<const char*>(tags.data()) + tags.byte_size();
        const auto text = [&] {
            const auto* zero = at < end ? std::memchr(at, 0, std::size_t(end - at)) : nullptr;
            if (!zero)
                throw std::runtime_error("a tag has no end");
            return std::exchange(at, static_cast<const char*>(zero) + 1);
        };
        while (at < end) {
            const char* key = text();
            m_tags.emplace_back(key, text());
        }
    }
    const char* operator[](std::string_view key) const
    {
        const auto found = std::ranges::find(m_tags, key, [](const auto& tag) { return std::string_view(tag.first); });
        return found == m_tags.end() ? nullptr : found->second;
    }
    auto begin() const { return m_tags.begin(); }
    auto end() const { return m_tags.end(); }

private:
    std::vector<std::pair<const char*, const char*>> m_tags;
};

bool isDrivable(const Tags& tags)
{
    const char* highway = tags["highway"];
    return highway &&
           std::ranges::any_of(kDrivable, [highway](const char* word) { return !std::strcmp(highway, word); }) &&
           !isOneOf(tags["access"], {"no", "private"}) && !isOneOf(tags["motor_vehicle"], {"no", "private"}) &&
           !isOneOf(tags["area"], {"yes"});
}

enum class Ways { both, along, against };

Ways waysOf(const Tags& tags)
{
    const char* oneway = tags["oneway"];
    if (isOneOf(oneway, {"yes", "true", "1"}))
        return Ways::along;
    if (isOneOf(oneway, {"-1", "reverse"}))
        return Ways::against;
    const bool implied = isOneOf(tags["highway"], {"motorway"}) ||
                         isOneOf(tags["junction"], {"roundabout", "circular"});
    return implied && !isOneOf(oneway, {"no", "false", "0"}) ? Ways::along : Ways::both;
}

std::string oneLine(const char* text)
{
    std::string line = printable(text ? text : "");
    std::ranges::replace(line, '\n', ' ');
    return line;
}

MapPump pumpFrom(const osmium::OSMObject& object, const char* kind)
{
    const Tags tags(object.tags());
    MapPump pump;
    pump.id = std::string(kind) + " " + std::to_string(object.id());
    pump.name = pump.id;
    for (const char* key : {"name", "operator", "brand"}) {
        if (const char* value = tags[key]; value && *value) {
            pump.name = oneLine(value);
            break;
        }
    }
    pump.hours = oneLine(tags["opening_hours"]);
    for (const auto& [key, value] : tags) {
        if (std::string_view(key).starts_with("fuel:") && isOneOf(value, {"yes", "no"}))
            pump.fuels[oneLine(key + 5)] = value[0] == 'y';
    }
    return pump;
}

bool isPump(const osmium::OSMObject& object)
{
    return !object.tags().empty() && isOneOf(Tags(object.tags())["amenity"], {"fuel"});
}

struct RoadNode {
    NodeId id = 0;
    std::int32_t x = 0, y = 0; // as the map keeps them: 1e-7 degrees
    friend auto operator<=>(const RoadNode&, const RoadNode&) = default;
};

GeoPosition positionOf(osmium::Location location)
{
    return {location.lat_without_check(), location.lon_without_check()};
}

class ExtractReader {
public:
    ExtractReader(const std::filesystem::path& file, const GeoLine& line, const ExtractOptions& options)
        : m_file(file), m_line(line), m_options(options), m_near(line, options.reach),
          m_nearRoads(line, options.roadReach)
    {
    }

    MapExtract read()
    {
        eachObject<osmium::Relation>(0, type::relation, [&](const auto& relation) { noteArea(relation); });
        eachObject<osmium::Way>(1, type::way, [&](const auto& way) { noteWay(way); });
        eachObject<osmium::Node>(2, type::node, [&](const auto& node) { noteNode(node); });
        placeAreas();
        m_places.compact();
        m_found.roadsLeftOut = m_found.roadsLeftOut || m_places.values().size() > kMostRoadNodes;
        if (!m_found.roadsLeftOut)
            readRoads();
        m_found.outside = outside();
        return std::move(m_found);
    }

private:
    template <class Object, class Note>
    void eachObject(int pass, osmium::osm_entity_bits::type kinds, const Note& note)
    {
        osmium::io::Reader reader(osmium::io::File(m_file.string(), "pbf"), kinds, osmium::io::read_meta::no);
        const double size = std::max(double(reader.file_size()), 1.0);
        if (pass == 0)
            noteBox(reader.header());
        while (const osmium::memory::Buffer buffer = reader.read()) {
            for (const auto& object : buffer.select<Object>())
                note(object);
            if (m_options.progress && !m_options.progress((pass + double(reader.offset()) / size) / kPasses))
                throw Stopped();
        }
        reader.close();
    }

    void noteBox(const osmium::io::Header& header)
    {
        for (const osmium::Box& box : header.boxes()) {
            m_box.include(positionOf(box.bottom_left()));
            m_box.include(positionOf(box.top_right()));
        }
        m_boxIsTold = !m_box.isEmpty();
    }

    void noteArea(const osmium::Relation& relation)
    {
        if (!isPump(relation) || !m_seen.insert("r" + std::to_string(relation.id())).second)
            return;
        const std::size_t area = m_areas.size();
        m_areas.push_back({pumpFrom(relation, "relation"), {}});
        for (const osmium::RelationMember& member : relation.members()) {
            if (member.type() == osmium::item_type::way)
                m_memberWays[member.ref()].push_back(area);
            else if (member.type() == osmium::item_type::node)
                m_areaNodes[member.ref()].push_back(area);
        }
    }

    void noteWay(const osmium::Way& way)
    {
        std::vector<std::size_t> areas;
        if (const auto member = m_memberWays.find(way.id()); member != m_memberWays.end()) {
            areas = std::move(member->second);
            m_memberWays.erase(member);
        }
        if (isPump(way) && m_seen.insert("w" + std::to_string(way.id())).second) {
            areas.push_back(m_areas.size());
            m_areas.push_back({pumpFrom(way, "way"), {}});
        }
        for (const std::size_t area : areas) {
            for (const osmium::NodeRef& node : way.nodes())
                m_areaNodes[node.ref()].push_back(area);
        }
    }

    void noteNode(const osmium::Node& node)
    {
        const osmium::Location location = node.location();
        if (!location.valid())
            return;
        const GeoPosition position = positionOf(location);
        if (!m_boxIsTold)
            m_box.include(position);
        if (const auto areas = m_areaNodes.find(node.id()); areas != m_areaNodes.end()) {
            for (const std::size_t area : areas->second)
                m_areas[area].around.include(position);
        }
        if (isPump(node) && m_near.holds(position.latitude, position.longitude) &&
            m_seen.insert("n" + std::to_string(node.id())).second) {
            m_found.pumps.push_back(pumpFrom(node, "node"));
            m_found.pumps.back().position = position;
        }
        if (m_found.roadsLeftOut || !m_nearRoads.holds(position.latitude, position.longitude))
            return;
        m_places.add({node.id(), location.x(), location.y()});
        if (m_places.values().size() > 2 * kMostRoadNodes) {
            m_found.roadsLeftOut = true;
            m_places.clear();
        }
    }

    void placeAreas()
    {
        for (Area& area : m_areas) {
            if (area.around.isEmpty())
                continue;
            area.pump.position = area.around.middle();
            if (m_near.holds(area.pump.position.latitude, area.pump.position.longitude))
                m_found.pumps.push_back(std::move(area.pump));
        }
        m_areas.clear();
    }

    void readRoads()
    {
        constexpr std::uint32_t unused = std::numeric_limits<std::uint32_t>::max();
        const auto& places = m_places.values();
        std::vector<std::uint32_t> index(places.size(), unused);
        const auto indexOf = [&](NodeId id) {
            const auto found = std::ranges::lower_bound(places, id, {}, &RoadNode::id);
            if (found == places.end() || found->id != id)
                return unused;
            std::uint32_t& at = index[std::size_t(found - places.begin())];
            if (at == unused) {
                at = std::uint32_t(m_found.roads.nodes.size());
                m_found.roads.nodes.push_back(positionOf(osmium::Location(found->x, found->y)));
            }
            return at;
        };
        CompactList<RoadEdge> edges;
        eachObject<osmium::Way>(3, type::way, [&](const osmium::Way& way) {
            const Tags tags(way.tags());
            if (!isDrivable(tags))
                return;
            const Ways ways = waysOf(tags);
            std::uint32_t before = unused;
            for (const osmium::NodeRef& node : way.nodes()) {
                const std::uint32_t here = indexOf(node.ref());
                if (before != unused && here != unused && before != here)
                    edges.add(ways == Ways::against ? RoadEdge{here, before, false}
                                                    : RoadEdge{before, here, ways == Ways::both});
                before = here;
            }
        });
        edges.compact();
        m_found.roads.edges.assign(edges.values().begin(), edges.values().end());
        m_places.clear();
    }

    Distance outside() const
    {
        Distance out;
        const auto& places = m_line.places();
        for (std::size_t i = 1; i < places.size(); ++i) {
            if (m_box.isEmpty() || !m_box.isNear(places[i].position, Distance()))
                out += places[i].at - places[i - 1].at;
        }
        return out;
    }

    struct Area {
        MapPump pump;
        GeoBox around;
    };

    std::filesystem::path m_file;
    const GeoLine& m_line;
    const ExtractOptions& m_options;
    Corridor m_near, m_nearRoads;
    GeoBox m_box; // of the extract: as its header tells, else of its nodes
    bool m_boxIsTold = false;
    std::unordered_set<std::string> m_seen; // stations: an extract may hold an object twice
    std::vector<Area> m_areas;
    std::unordered_map<WayId, std::vector<std::size_t>> m_memberWays;
    std::unordered_map<NodeId, std::vector<std::size_t>> m_areaNodes;
    CompactList<RoadNode> m_places;
    MapExtract m_found;
};

} // namespace

Result<MapExtract> readMapExtract(const std::filesystem::path& file, const GeoLine& line,
                                  const ExtractOptions& options)
{
    std::error_code problem;
    if (!std::filesystem::is_regular_file(file, problem))
        return fail(ErrorCode::fileAccess, Sentence::of("the file cannot be opened"), {file.string()});
    try {
        return ExtractReader(file, line, options).read();
    } catch (const Stopped&) {
        return fail(ErrorCode::badInput, Sentence::of("stopped"), {file.string()});
    } catch (const std::system_error&) {
        return fail(ErrorCode::fileAccess, Sentence::of("the file cannot be read"), {file.string()});
    } catch (const std::exception& damage) {
        return fail(ErrorCode::badInput, Sentence::of("this is no sound extract: %1", printable(damage.what())),
                    {file.string()}, Sentence::of("an OpenStreetMap extract (.osm.pbf)"));
    }
}

} // namespace undermark
