// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/route_gpx_writer.h"

#include <pugixml.hpp>

namespace undermark {

namespace {

void addText(pugi::xml_node node, const std::string& name, const std::string& text)
{
    node.append_child(name.c_str()).text().set(text.c_str());
}

// The schema's order: name before extensions.
void addGpxPoint(pugi::xml_node rte, const RoutePoint& point, const GeoPosition& position)
{
    pugi::xml_node node = rte.append_child("rtept");
    node.append_attribute("lat").set_value(unrounded(position.latitude).c_str());
    node.append_attribute("lon").set_value(unrounded(position.longitude).c_str());
    if (!point.name.empty())
        addText(node, "name", point.name);
    pugi::xml_node own = node.append_child("extensions");
    addText(own, "u:at_km", unrounded(point.at.km()));
    for (const auto& [name, text] : gpxFields(point))
        addText(own, "u:" + name, text);
}

} // namespace

Result<void> writeRouteGpx(const RouteFile& route, const std::filesystem::path& file)
{
    const auto& points = route.route.points;
    if (route.positions.size() != points.size())
        return failInput(Sentence::of("the places of this route are not known, and GPX needs them"),
                         Sentence::of("a route that was read from GPX"));
    pugi::xml_document document;
    pugi::xml_node head = document.append_child(pugi::node_declaration);
    head.append_attribute("version") = "1.0";
    head.append_attribute("encoding") = "UTF-8";
    pugi::xml_node gpx = document.append_child("gpx");
    gpx.append_attribute("version") = "1.1";
    gpx.append_attribute("creator") = "Undermark";
    gpx.append_attribute("xmlns") = "http://www.topografix.com/GPX/1/1";
    gpx.append_attribute("xmlns:u") = kGpxNamespace;
    pugi::xml_node rte = gpx.append_child("rte");
    for (std::size_t i = 0; i < points.size(); ++i)
        addGpxPoint(rte, points[i], route.positions[i]);
    if (document.save_file(file.c_str(), "  "))
        return {};
    return fail(ErrorCode::fileAccess, Sentence::of("the file cannot be written"), {file.string()});
}

} // namespace undermark
