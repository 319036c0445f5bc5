// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/gpx_line.h"

#include <GeographicLib/Geodesic.hpp>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr double kKmPerDegree = 110.0; // rough, and a little short: to skip what is far
constexpr std::size_t kPlacesPerBox = 64;

double cosine(double latitude)
{
    return std::cos(latitude * std::numbers::pi / 180);
}

} // namespace

Distance geodesicLength(const GeoPosition& from, const GeoPosition& to)
{
    double metres = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(from.latitude, from.longitude, to.latitude,
                                             to.longitude, metres);
    return Distance::fromMetres(metres);
}

void GeoLine::Box::include(const GeoPosition& position)
{
    const double x = std::remainder(position.longitude - east, 360.0);
    left = std::min(left, x);
    right = std::max(right, x);
    south = std::min(south, position.latitude);
    north = std::max(north, position.latitude);
}

bool GeoLine::Box::isNear(const GeoPosition& position, Distance reach) const
{
    const double degrees = reach.km() / kKmPerDegree;
    if (position.latitude < south - degrees || position.latitude > north + degrees)
        return false;
    const double narrow = cosine(std::min(std::fabs(position.latitude) + degrees, 90.0));
    if (degrees > 90 * narrow) // near a pole every longitude is near
        return true;
    const double x = std::remainder(position.longitude - east, 360.0);
    const double wide = degrees / narrow;
    const auto within = [&](double turned) {
        return turned >= left - wide && turned <= right + wide;
    };
    return within(x) || within(x - 360) || within(x + 360);
}

void GeoLine::add(const Place& place)
{
    const GeoPosition& position = place.position;
    if (m_places.size() % kPlacesPerBox == 0)
        m_boxes.push_back({position.longitude, position.latitude, position.latitude});
    if (!m_places.empty())
        m_boxes.back().include(back());
    m_boxes.back().include(position);
    m_places.push_back(place);
}

void GeoLine::join(const GeoPosition& place, std::optional<Distance> at)
{
    const Distance step = m_places.empty() ? Distance() : geodesicLength(back(), place);
    add({place, at.value_or(length() + step), false});
}

Distance GeoLine::jump(const GeoPosition& place)
{
    const Distance width = m_places.empty() ? Distance() : geodesicLength(back(), place);
    add({place, length(), true});
    return width;
}

Distance GeoLine::length() const
{
    return m_places.empty() ? Distance() : m_places.back().at;
}

std::optional<GeoLine::Foot> GeoLine::nearest(const GeoPosition& place, Distance reach) const
{
    Foot best{reach, {}};
    bool found = false;
    for (std::size_t box = 0; box < m_boxes.size(); ++box) {
        if (!m_boxes[box].isNear(place, best.off))
            continue;
        const std::size_t first = box * kPlacesPerBox;
        for (std::size_t i = first; i < std::min(first + kPlacesPerBox, m_places.size()); ++i) {
            const Distance before = best.off;
            compare(i, place, best);
            found = found || best.off < before;
        }
    }
    return found ? std::optional(best) : std::nullopt;
}

// Takes the section that ends at `index` where it is nearer than `best`.
void GeoLine::compare(std::size_t index, const GeoPosition& place, Foot& best) const
{
    const double narrow = cosine(place.latitude);
    const auto x = [&](const GeoPosition& p) {
        return std::remainder(p.longitude - place.longitude, 360.0) * narrow;
    };
    const auto y = [&](const GeoPosition& p) { return p.latitude - place.latitude; };
    const Place& b = m_places[index];
    const Place& a = index > 0 && !b.afterGap ? m_places[index - 1] : b;
    const double dx = x(b.position) - x(a.position);
    const double dy = y(b.position) - y(a.position);
    const double square = dx * dx + dy * dy;
    const double along = -(x(a.position) * dx + y(a.position) * dy);
    const double part = square > 0 ? std::clamp(along / square, 0.0, 1.0) : 0.0;
    const double rough = std::hypot(x(a.position) + part * dx, y(a.position) + part * dy);
    if (rough * kKmPerDegree > best.off.km() * 1.1 + 0.01)
        return;
    const double turn = std::remainder(b.position.longitude - a.position.longitude, 360.0);
    const GeoPosition foot{a.position.latitude + part * dy, a.position.longitude + part * turn};
    const Distance off = geodesicLength(place, foot);
    if (off < best.off)
        best = {off, a.at + (b.at - a.at) * part};
}

} // namespace undermark
