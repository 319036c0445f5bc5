// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/gpx_line.h"

#include <GeographicLib/Geodesic.hpp>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr double kMeanKmPerDegree = 111.2;
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

void GeoBox::include(const GeoPosition& place)
{
    if (isEmpty())
        m_origin = place.longitude;
    const double x = std::remainder(place.longitude - m_origin, 360.0);
    m_west = std::min(m_west, x);
    m_east = std::max(m_east, x);
    m_south = std::min(m_south, place.latitude);
    m_north = std::max(m_north, place.latitude);
}

bool GeoBox::isNear(const GeoPosition& place, Distance reach) const
{
    const double degrees = reach.km() / kLeastKmPerDegree;
    if (place.latitude < m_south - degrees || place.latitude > m_north + degrees)
        return false;
    const double narrow = cosine(std::min(std::fabs(place.latitude) + degrees, 90.0));
    if (degrees > 90 * narrow) // near a pole every longitude is near
        return true;
    const double x = std::remainder(place.longitude - m_origin, 360.0);
    const double wide = degrees / narrow;
    const auto within = [&](double turned) {
        return turned >= m_west - wide && turned <= m_east + wide;
    };
    return within(x) || within(x - 360) || within(x + 360);
}

GeoPosition GeoBox::middle() const
{
    return {(m_south + m_north) / 2, std::remainder(m_origin + (m_west + m_east) / 2, 360.0)};
}

SectionFoot footOnSection(const GeoPosition& place, const GeoPosition& from, const GeoPosition& to)
{
    const double narrow = cosine(place.latitude);
    const auto x = [&](const GeoPosition& p) {
        return std::remainder(p.longitude - place.longitude, 360.0) * narrow;
    };
    const double ax = x(from), ay = from.latitude - place.latitude;
    const double dx = x(to) - ax, dy = to.latitude - from.latitude;
    const double square = dx * dx + dy * dy;
    const double part = square > 0 ? std::clamp(-(ax * dx + ay * dy) / square, 0.0, 1.0) : 0.0;
    const double turn = std::remainder(to.longitude - from.longitude, 360.0);
    return {part, std::hypot(ax + part * dx, ay + part * dy) * kMeanKmPerDegree,
            {from.latitude + part * dy, from.longitude + part * turn}};
}

void GeoLine::add(const Place& place)
{
    const GeoPosition& position = place.position;
    if (m_places.size() % kPlacesPerBox == 0)
        m_boxes.emplace_back();
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
    const Place& b = m_places[index];
    const Place& a = index > 0 && !b.afterGap ? m_places[index - 1] : b;
    const SectionFoot foot = footOnSection(place, a.position, b.position);
    if (foot.roughKm > best.off.km() * 1.1 + 0.01)
        return;
    const Distance off = geodesicLength(place, foot.position);
    if (off < best.off)
        best = {off, a.at + (b.at - a.at) * foot.part};
}

} // namespace undermark
