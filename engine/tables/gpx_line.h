// SPDX-License-Identifier: GPL-3.0-or-later
//
// A line over the ground, with its length along WGS84 geodesics (GeographicLib;
// C. F. F. Karney, "Algorithms for geodesics", Journal of Geodesy 87 (2013), 43;
// error below 15 nm).
#pragma once

#include "engine/base/quantity.h"

#include <optional>
#include <vector>

namespace undermark {

// Degrees: latitude from -90 to 90, longitude from -180 to 180.
struct GeoPosition {
    double latitude = 0.0;
    double longitude = 0.0;
    std::optional<double> height = std::nullopt; // metres above the sea, where it is told
    friend bool operator==(const GeoPosition&, const GeoPosition&) = default;
};

// Length of the WGS84 geodesic between two places.
Distance geodesicLength(const GeoPosition& from, const GeoPosition& to);

// How far one goes for a degree of latitude, at least: rough, to leave out what is far.
inline constexpr double kLeastKmPerDegree = 110.0;

// A box around places, wherever the antimeridian lies.
class GeoBox {
public:
    void include(const GeoPosition& place);
    bool isEmpty() const { return m_south > m_north; }
    // A little more than that around it.
    bool isNear(const GeoPosition& place, Distance reach) const;
    GeoPosition middle() const; // of a box that is not empty

private:
    double m_origin = 0.0; // longitude from which west and east are counted
    double m_south = 90.0, m_north = -90.0, m_west = 0.0, m_east = 0.0;
};

// The nearest point to a place of the straight section between two others, on a plane around the
// place: sections are short against the globe.
struct SectionFoot {
    double part = 0.0;    // of the section, from its beginning
    double roughKm = 0.0; // to the place, right to some per mille
    GeoPosition position;
};
SectionFoot footOnSection(const GeoPosition& place, const GeoPosition& from, const GeoPosition& to);

class GeoLine {
public:
    // Adds a place at the end, joined to the one before by the geodesic, or by the
    // road where its distance from the start is known to be `at`.
    void join(const GeoPosition& place, std::optional<Distance> at = std::nullopt);
    // Adds a place behind a gap, which adds no length; returns the gap's width.
    Distance jump(const GeoPosition& place);

    struct Place {
        GeoPosition position;
        Distance at;
        bool afterGap; // not joined to the place before it
    };
    const std::vector<Place>& places() const { return m_places; }

    std::size_t size() const { return m_places.size(); }
    const GeoPosition& front() const { return m_places.front().position; }
    const GeoPosition& back() const { return m_places.back().position; }
    Distance length() const; // of the joined parts

    // The nearest joined part of the line, not further off than `reach`: how far it
    // is, and where along the line: the foot by footOnSection, its distance by geodesic. Boxes around each
    // 64 places are looked at first: O(size / 64) where the line is far.
    struct Foot {
        Distance off;
        Distance at;
    };
    std::optional<Foot> nearest(const GeoPosition& place, Distance reach) const;

private:
    void add(const Place& place);
    void compare(std::size_t index, const GeoPosition& place, Foot& best) const;

    std::vector<Place> m_places;
    std::vector<GeoBox> m_boxes; // each around the sections that end at 64 places
};

} // namespace undermark
