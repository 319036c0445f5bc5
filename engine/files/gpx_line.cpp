// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/files/gpx_line.h"

#include <GeographicLib/Geodesic.hpp>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr double kKmPerDegree = 111.0; // rough: only to skip what is far

} // namespace

Distance geodesicLength(const GeoPosition& from, const GeoPosition& to)
{
    double metres = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(from.latitude, from.longitude, to.latitude,
                                             to.longitude, metres);
    return Distance::fromMetres(metres);
}

void GeoLine::join(const GeoPosition& place, std::optional<Distance> at)
{
    const Distance step = m_places.empty() ? Distance() : geodesicLength(back(), place);
    m_places.push_back({place, at.value_or(length() + step), false});
}

Distance GeoLine::jump(const GeoPosition& place)
{
    const Distance width = m_places.empty() ? Distance() : geodesicLength(back(), place);
    m_places.push_back({place, length(), true});
    return width;
}

Distance GeoLine::length() const
{
    return m_places.empty() ? Distance() : m_places.back().at;
}

GeoLine::Foot GeoLine::nearest(const GeoPosition& place) const
{
    Foot best{Distance::fromKm(1e9), {}};
    const double narrow = std::cos(place.latitude * std::numbers::pi / 180);
    const auto x = [&](const GeoPosition& p) {
        return std::remainder(p.longitude - place.longitude, 360.0) * narrow;
    };
    const auto y = [&](const GeoPosition& p) { return p.latitude - place.latitude; };
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Place& b = m_places[i];
        const Place& a = i > 0 && !b.afterGap ? m_places[i - 1] : b;
        const double dx = x(b.position) - x(a.position);
        const double dy = y(b.position) - y(a.position);
        const double square = dx * dx + dy * dy;
        const double along = -(x(a.position) * dx + y(a.position) * dy);
        const double part = square > 0 ? std::clamp(along / square, 0.0, 1.0) : 0.0;
        const double rough = std::hypot(x(a.position) + part * dx, y(a.position) + part * dy);
        if (rough * kKmPerDegree > best.off.km() * 1.1 + 0.01)
            continue;
        const double turn = std::remainder(b.position.longitude - a.position.longitude, 360.0);
        const GeoPosition foot{a.position.latitude + part * dy, a.position.longitude + part * turn};
        const Distance off = geodesicLength(place, foot);
        if (off < best.off)
            best = {off, a.at + (b.at - a.at) * part};
    }
    return best;
}

} // namespace undermark
