// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/files/route_gpx.h"

#include "engine/files/csv_reader.h"

#include <GeographicLib/Geodesic.hpp>
#include <algorithm>
#include <cmath>
#include <cstring>
#include <pugixml.hpp>

namespace undermark {

namespace {

constexpr std::uintmax_t kMostBytes = 256u << 20;

struct Place {
    double lat;
    double lon;
    Distance at;   // along the line
    bool afterGap; // nothing joins it to the place before
};

Error wrong(const std::filesystem::path& file, std::string detail, std::string expected = {},
            std::string found = {})
{
    Error error;
    error.code = ErrorCode::badInput;
    error.file = file.string();
    error.detail = std::move(detail);
    error.expected = std::move(expected);
    error.found = std::move(found);
    return error;
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
        const pugi::xml_node rte = gpx.child("rte");
        const pugi::xml_node trk = gpx.child("trk");
        if (!rte && !trk)
            return fail(
                wrong(m_path, "the file has no route and no track", "a rte or trk element"));
        if (auto read = rte ? readRoute(rte) : readTrack(trk); !read)
            return fail(read.error());
        if (m_line.size() < 2)
            return fail(wrong(m_path, "the route has no finish", "two points or more",
                              std::to_string(m_line.size())));
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
        if (problem) {
            Error error = wrong(m_path, "the file cannot be opened");
            error.code = ErrorCode::fileAccess;
            return fail(error);
        }
        if (bytes > kMostBytes)
            return fail(wrong(m_path, "the file is too large", "256 MiB at most"));
        const auto parsed =
            m_document.load_file(m_path.c_str(), pugi::parse_default | pugi::parse_doctype);
        if (!parsed)
            return fail(
                wrong(m_path, "this is not sound XML: " + std::string(parsed.description()) +
                                  " at byte " + std::to_string(parsed.offset)));
        for (const pugi::xml_node& node : m_document.children()) {
            if (node.type() == pugi::node_doctype)
                return fail(wrong(m_path, "a document type has no place in a GPX file"));
        }
        const pugi::xml_node gpx = m_document.child("gpx");
        if (!gpx || gpx.attribute("version").value() != std::string_view("1.1"))
            return fail(
                wrong(m_path, "this is not GPX 1.1", "a gpx element of version 1.1",
                      gpx ? gpx.attribute("version").value() : m_document.first_child().name()));
        return {};
    }

    Result<Place> placeOf(const pugi::xml_node& node) const
    {
        double degrees[2] = {0, 0};
        const std::pair<const char*, NumberRange> axes[] = {
            {"lat", {-90, 90, "degrees from -90 to 90"}},
            {"lon", {-180, 180, "degrees from -180 to 180"}}};
        for (int i = 0; i < 2; ++i) {
            const auto value = parseNumber(node.attribute(axes[i].first).value(), axes[i].second);
            if (!value) {
                Error error = value.error();
                error.file = m_path.string();
                error.detail = std::string(node.name()) + " " + axes[i].first + ": " + error.detail;
                return fail(error);
            }
            degrees[i] = *value;
        }
        return Place{degrees[0], degrees[1], {}, false};
    }

    // Adds a place to the line; `joined` to the one before or after a gap.
    Result<void> extend(const pugi::xml_node& node, bool joined)
    {
        Result<Place> place = placeOf(node);
        if (!place)
            return fail(place.error());
        if (!m_line.empty()) {
            const Place& before = m_line.back();
            const Distance step = geodesicLength(before.lat, before.lon, place->lat, place->lon);
            place->at = before.at + (joined ? step : Distance());
            place->afterGap = !joined;
            if (!joined)
                noteGap(step, before.at);
        }
        m_line.push_back(*place);
        return {};
    }

    void noteGap(Distance width, Distance at)
    {
        char text[160];
        std::snprintf(
            text, sizeof text,
            "the track has a gap of %.3f km at km %.3f: it is not bridged and adds no distance",
            width.km(), at.km());
        m_result.warnings.emplace_back(text);
    }

    Result<void> readRoute(const pugi::xml_node& rte)
    {
        for (const pugi::xml_node& node : rte.children("rtept")) {
            if (m_line.size() == kMostRoutePointsInFile)
                return fail(wrong(m_path, "the route is too long",
                                  std::to_string(kMostRoutePointsInFile) + " points at most"));
            if (auto extended = extend(node, true); !extended)
                return extended;
            Result<RoutePoint> point = pointFrom(node);
            if (!point)
                return fail(point.error());
            point->at = m_line.back().at;
            m_result.route.points.push_back(std::move(*point));
        }
        return {};
    }

    Result<void> readTrack(const pugi::xml_node& trk)
    {
        for (const pugi::xml_node& segment : trk.children("trkseg")) {
            bool joined = false;
            for (const pugi::xml_node& node : segment.children("trkpt")) {
                if (auto extended = extend(node, joined); !extended)
                    return extended;
                joined = true;
            }
        }
        if (m_line.size() < 2)
            return {};
        RoutePoint end;
        end.name = "start";
        m_result.route.points.push_back(end);
        end.name = "finish";
        end.at = m_line.back().at;
        m_result.route.points.push_back(end);
        return {};
    }

    Result<RoutePoint> pointFrom(const pugi::xml_node& node) const
    {
        RoutePoint point;
        point.name = node.child("name").text().as_string();
        for (const pugi::xml_node& own : node.child("extensions").children()) {
            const std::string_view name = ourName(own);
            if (name.empty())
                continue;
            if (auto set = setField(point, name, own.text().as_string()); !set)
                return fail(set.error());
        }
        return point;
    }

    Result<void> setField(RoutePoint& point, std::string_view name, std::string_view text) const
    {
        if (name == "mode") {
            point.mode = std::string(text);
            return {};
        }
        if (name == "timed") {
            point.timed = text == "1";
            return {};
        }
        if (name == "fuel") {
            for (const FuelSource source :
                 {FuelSource::none, FuelSource::pump, FuelSource::zone, FuelSource::can}) {
                if (text == fuelWord(source)) {
                    point.fuel = source;
                    return {};
                }
            }
            return fail(wrong(m_path, "this kind of fuel point is not known",
                              "none, pump, zone or can", std::string(text)));
        }
        const Result<double> value = parseNumber(text, kNotNegative);
        if (!value) {
            Error error = value.error();
            error.file = m_path.string();
            error.column = std::string(name);
            return fail(error);
        }
        if (name == "price_per_l")
            point.pricePerLitre = *value;
        else if (name == "min_litres")
            point.leastPurchase = Volume::fromLitres(*value);
        else if (name == "max_litres")
            point.mostPurchase = Volume::fromLitres(*value);
        else if (name == "stop_min")
            point.stopTime = Minutes(*value);
        else if (name == "detour_km")
            point.detour = Distance::fromKm(*value);
        else if (name == "idle_min")
            point.idle = Minutes(*value);
        return {};
    }

    Result<void> addWaypoint(const pugi::xml_node& node)
    {
        Result<RoutePoint> point = pointFrom(node);
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
        const Result<Place> place = placeOf(node);
        if (!place)
            return fail(place.error());
        const auto [off, at] = nearest(*place);
        if (off > m_options.reach) {
            m_result.warnings.push_back("waypoint '" + point->name +
                                        "' is too far from the line and is left out");
            return {};
        }
        point->at = at;
        m_fromWaypoints.push_back(std::move(*point));
        return {};
    }

    // How far a place is from the line, and where along it. Sections are short
    // against the globe: the foot is found on a plane around the place, its
    // distance by geodesic.
    std::pair<Distance, Distance> nearest(const Place& place) const
    {
        Distance best = Distance::fromKm(1e9);
        Distance at;
        const double narrow = std::cos(place.lat * M_PI / 180);
        const auto x = [&](const Place& p) {
            return std::remainder(p.lon - place.lon, 360.0) * narrow;
        };
        const auto y = [&](const Place& p) { return p.lat - place.lat; };
        for (std::size_t i = 0; i < m_line.size(); ++i) {
            const Place& b = m_line[i];
            const Place& a = i > 0 && !b.afterGap ? m_line[i - 1] : b;
            const double dx = x(b) - x(a);
            const double dy = y(b) - y(a);
            const double square = dx * dx + dy * dy;
            const double part =
                square > 0 ? std::clamp(-(x(a) * dx + y(a) * dy) / square, 0.0, 1.0) : 0.0;
            const double lat = a.lat + part * (b.lat - a.lat);
            const double lon = a.lon + part * std::remainder(b.lon - a.lon, 360.0);
            const double roughKm = std::hypot(x(a) + part * dx, y(a) + part * dy) * 111.0;
            if (roughKm > best.km() * 1.1 + 0.01)
                continue;
            const Distance off = geodesicLength(place.lat, place.lon, lat, lon);
            if (off < best) {
                best = off;
                at = a.at + (b.at - a.at) * part;
            }
        }
        return {best, at};
    }

    Result<RouteFile> finished()
    {
        auto& points = m_result.route.points;
        for (RoutePoint& point : m_fromWaypoints) {
            // At the very finish a waypoint would hide it; it goes in before.
            const auto behind = std::ranges::upper_bound(points.begin(), points.end() - 1, point.at,
                                                         {}, &RoutePoint::at);
            points.insert(behind, std::move(point));
        }
        for (std::size_t i = 1; i < points.size(); ++i) {
            if (points[i].mode.empty())
                points[i].mode = points[i - 1].mode;
        }
        if (const auto sound = checkRoute(m_result.route); !sound) {
            Error error = sound.error();
            error.file = m_path.string();
            return fail(error);
        }
        return std::move(m_result);
    }

    std::filesystem::path m_path;
    GpxOptions m_options;
    pugi::xml_document m_document;
    std::vector<Place> m_line;
    std::vector<RoutePoint> m_fromWaypoints;
    RouteFile m_result;
};

} // namespace

Distance geodesicLength(double lat1, double lon1, double lat2, double lon2)
{
    double metres = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(lat1, lon1, lat2, lon2, metres);
    return Distance::fromMetres(metres);
}

Result<RouteFile> readRouteGpx(const std::filesystem::path& file, const GpxOptions& options)
{
    return GpxReader(file, options).read();
}

} // namespace undermark
