// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/route_gpx.h"

#include "engine/base/format.h"
#include "engine/base/plain_text.h"
#include "engine/tables/csv_reader.h"

#include <algorithm>
#include <cstring>
#include <pugixml.hpp>

namespace undermark {

namespace {

constexpr std::uintmax_t kMostGpxBytes = 256u << 20;
constexpr std::size_t kMostWarnings = 5; // of one kind
const NumberRange kHeight{-500, 9000, Sentence::just("metres above the sea")};

Error wrong(const std::filesystem::path& file, Sentence detail, Sentence expected = {},
            std::string found = {})
{
    return {ErrorCode::badInput,
            std::move(detail),
            {file.string()},
            std::move(expected),
            std::move(found)};
}

// The element's name without prefix if it belongs to our namespace, else "".
std::string_view ourName(const pugi::xml_node& node)
{
    const char* name = node.name();
    const char* colon = std::strchr(name, ':');
    const std::string declaration = colon ? "xmlns:" + std::string(name, colon) : "xmlns";
    for (pugi::xml_node scope = node; scope; scope = scope.parent()) {
        if (const pugi::xml_attribute bound = scope.attribute(declaration.c_str()))
            return bound.value() == std::string_view(kGpxNamespace) ? (colon ? colon + 1 : name)
                                                                    : std::string_view();
    }
    return {};
}

// A point of the route and where it is.
struct Placed {
    RoutePoint point;
    GeoPosition position;
};

class GpxReader {
public:
    GpxReader(const std::filesystem::path& file, const GpxOptions& options)
        : m_path(file), m_options(options)
    {
    }

    Result<RouteFile> read()
    {
        if (auto loaded = load(); !loaded)
            return fail(loaded.error());
        const pugi::xml_node gpx = m_document.child("gpx");
        const Result<pugi::xml_node> way = theWay(gpx);
        if (!way)
            return fail(way.error());
        const bool isRoute = way->name() == std::string_view("rte");
        if (auto read = isRoute ? readRoute(*way) : readTrack(*way); !read)
            return fail(read.error());
        if (m_line.size() < 2)
            return fail(wrong(m_path, Sentence::of("the route has no finish"),
                              Sentence::of("two points or more"), std::to_string(m_line.size())));
        for (const pugi::xml_node& waypoint : gpx.children("wpt")) {
            if (auto added = addWaypoint(waypoint); !added)
                return fail(added.error());
        }
        return finished();
    }

private:
    Result<void> load()
    {
        std::error_code problem;
        const auto bytes = std::filesystem::file_size(m_path, problem);
        if (problem)
            return fail(ErrorCode::fileAccess, Sentence::of("the file cannot be opened"),
                        {m_path.string()});
        if (bytes > kMostGpxBytes)
            return fail(wrong(m_path, Sentence::of("the file is too large"),
                              Sentence::of("256 MiB at most")));
        const auto parsed =
            m_document.load_file(m_path.c_str(), pugi::parse_default | pugi::parse_doctype);
        if (!parsed)
            return fail(wrong(m_path, Sentence::of("this is not sound XML: %1 at byte %2",
                                                   std::string(parsed.description()),
                                                   std::to_string(parsed.offset))));
        for (const pugi::xml_node& node : m_document.children()) {
            if (node.type() == pugi::node_doctype)
                return fail(
                    wrong(m_path, Sentence::of("a document type has no place in a GPX file")));
        }
        const pugi::xml_node gpx = m_document.child("gpx");
        if (!gpx || gpx.attribute("version").value() != std::string_view("1.1"))
            return fail(
                wrong(m_path, Sentence::of("this is not GPX 1.1"),
                      Sentence::of("a gpx element of version 1.1"),
                      gpx ? gpx.attribute("version").value() : m_document.first_child().name()));
        return {};
    }

    // The rte, or else trk, that is driven.
    Result<pugi::xml_node> theWay(const pugi::xml_node& gpx) const
    {
        const char* kind = gpx.child("rte") ? "rte" : "trk";
        std::vector<pugi::xml_node> asked;
        std::string names;
        std::size_t count = 0;
        for (const pugi::xml_node& way : gpx.children(kind)) {
            const std::string_view name = way.child("name").text().as_string();
            names += (names.empty() ? "" : ", ") + std::string(name.empty() ? "-" : name);
            ++count;
            if (m_options.which.empty() || m_options.which == name ||
                m_options.which == std::to_string(count))
                asked.push_back(way);
        }
        if (count == 0)
            return fail(wrong(m_path, Sentence::of("the file has no route and no track"),
                              Sentence::of("a rte or trk element")));
        if (asked.empty())
            return fail(wrong(m_path, Sentence::of("no route or track of this name or number"),
                              Sentence::of("one of %1", printable(names)), m_options.which));
        if (asked.size() > 1)
            return fail(wrong(m_path,
                              Sentence::of("the file has several ways, and only one is driven"),
                              Sentence::of("one %1 element, or the name of one", std::string(kind)),
                              printable(names)));
        return asked.front();
    }

    Result<GeoPosition> positionOf(const pugi::xml_node& node) const
    {
        double degrees[2] = {0, 0};
        static const std::pair<const char*, NumberRange> axes[] = {
            {"lat", {-90, 90, Sentence::of("degrees from -90 to 90")}},
            {"lon", {-180, 180, Sentence::of("degrees from -180 to 180")}}};
        for (int i = 0; i < 2; ++i) {
            const auto value = parseNumber(node.attribute(axes[i].first).value(), axes[i].second);
            if (!value) {
                Error error = value.error();
                error.where.file = m_path.string();
                error.detail = Sentence::of("%1 %2: %3", std::string(node.name()),
                                            std::string(axes[i].first), error.detail);
                return fail(error);
            }
            degrees[i] = *value;
        }
        GeoPosition position{degrees[0], degrees[1]};
        if (const auto height = parseNumber(node.child("ele").text().as_string(), kHeight))
            position.height = *height; // one that is no height is as good as none
        return position;
    }

    Result<void> readRoute(const pugi::xml_node& rte)
    {
        std::size_t measured = 0;
        for (const pugi::xml_node& node : rte.children("rtept")) {
            if (m_line.size() == kMostRoutePointsInFile)
                return fail(
                    wrong(m_path, Sentence::of("the route is too long"),
                          Sentence::of("%1 points at most", counted(kMostRoutePointsInFile))));
            const Result<GeoPosition> position = positionOf(node);
            if (!position)
                return fail(position.error());
            std::optional<Distance> at;
            Result<RoutePoint> point = pointFrom(node, &at);
            if (!point)
                return fail(point.error());
            measured += at.has_value();
            m_line.join(*position, at);
            point->at = m_line.length();
            m_points.push_back({std::move(*point), *position});
        }
        if (measured != 0 && measured != m_points.size())
            return fail(wrong(m_path, Sentence::of("some points state at_km and some do not"),
                              Sentence::of("at_km in all rtepts or in none")));
        return {};
    }

    Result<void> readTrack(const pugi::xml_node& trk)
    {
        for (const pugi::xml_node& segment : trk.children("trkseg")) {
            bool joined = m_line.size() == 0;
            for (const pugi::xml_node& node : segment.children("trkpt")) {
                const Result<GeoPosition> position = positionOf(node);
                if (!position)
                    return fail(position.error());
                if (joined)
                    m_line.join(*position);
                else
                    noteGap(m_line.jump(*position));
                joined = true;
            }
        }
        if (m_line.size() < 2)
            return {};
        RoutePoint end;
        end.name = "start";
        m_points.push_back({end, m_line.front()});
        end.name = "finish";
        end.at = m_line.length();
        m_points.push_back({end, m_line.back()});
        return {};
    }

    void noteGap(Distance width)
    {
        m_warnings.push_back(
            Sentence::of(
                "the track has a gap of %1 after %2: it is not bridged and adds no distance",
                amount(width, 3), amount(m_line.length(), 3)));
    }

    // `at` takes at_km where a point of a route states it.
    Result<RoutePoint> pointFrom(const pugi::xml_node& node, std::optional<Distance>* at) const
    {
        RoutePoint point;
        point.name = node.child("name").text().as_string();
        std::ranges::replace_if(
            point.name, [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
        for (const pugi::xml_node& own : node.child("extensions").children()) {
            const std::string_view name = ourName(own);
            const std::string_view text = own.text().as_string();
            Result<void> set;
            if (at && name == "at_km") {
                const Result<double> km = parseNumber(text, kNotNegative);
                if (km)
                    *at = Distance::fromKm(*km);
                else
                    set = fail(km.error());
            } else if (!name.empty()) {
                set = setGpxField(point, name, text);
            }
            if (!set) {
                Error error = set.error();
                error.where.file = m_path.string();
                return fail(error);
            }
        }
        for (const std::string& text : {point.name, point.mode}) {
            if (!isPlainUtf8(text))
                return fail(wrong(m_path, Sentence::of("a name is not text that can be shown"),
                                  Sentence::of("UTF-8 without control characters"),
                                  printable(text)));
        }
        return point;
    }

    Result<void> addWaypoint(const pugi::xml_node& node)
    {
        Result<RoutePoint> point = pointFrom(node, nullptr);
        if (!point)
            return fail(point.error());
        const bool named = !m_options.fuelWaypoints.empty() &&
                           point->name.find(m_options.fuelWaypoints) != std::string::npos;
        if (named && point->fuel == FuelSource::none)
            point->fuel = FuelSource::pump;
        const bool ours =
            std::ranges::any_of(node.child("extensions").children(),
                                [](const auto& own) { return !ourName(own).empty(); });
        if (!named && !ours)
            return {};
        const Result<GeoPosition> position = positionOf(node);
        if (!position)
            return fail(position.error());
        const auto foot = m_line.nearest(*position, m_options.reach);
        if (!foot) {
            if (++m_tooFar > kMostWarnings)
                return {};
            m_warnings.push_back(Sentence::of(
                "waypoint '%1' is too far from the line and is left out", point->name));
            return {};
        }
        point->at = foot->at;
        m_fromWaypoints.push_back({std::move(*point), *position});
        return {};
    }

    Result<RouteFile> finished()
    {
        // At the very finish a waypoint would hide it: all go in before it.
        const Placed finish = std::move(m_points.back());
        m_points.back() = {};
        m_points.pop_back();
        std::ranges::move(m_fromWaypoints, std::back_inserter(m_points));
        std::ranges::stable_sort(m_points, {},
                                 [](const Placed& placed) { return placed.point.at; });
        m_points.push_back(finish);
        if (m_tooFar > kMostWarnings)
            m_warnings.push_back(Sentence::of("and %1 more waypoints are too far from the line",
                                              counted(m_tooFar - kMostWarnings)));
        RouteFile file;
        file.warnings = std::move(m_warnings);
        file.line = m_line;
        for (Placed& placed : m_points) {
            auto& points = file.route.points;
            if (placed.point.mode.empty() && !points.empty())
                placed.point.mode = points.back().mode;
            points.push_back(std::move(placed.point));
            file.positions.push_back(placed.position);
        }
        if (const auto sound = checkRoute(file.route); !sound) {
            Error error = sound.error();
            error.where.file = m_path.string();
            return fail(error);
        }
        return file;
    }

    std::filesystem::path m_path;
    GpxOptions m_options;
    pugi::xml_document m_document;
    GeoLine m_line;
    std::vector<Placed> m_points;
    std::vector<Placed> m_fromWaypoints;
    std::vector<Sentence> m_warnings;
    std::size_t m_tooFar = 0;
};

} // namespace

Result<RouteFile> readRouteGpx(const std::filesystem::path& file, const GpxOptions& options)
{
    return GpxReader(file, options).read();
}

} // namespace undermark
