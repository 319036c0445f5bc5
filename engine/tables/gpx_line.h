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
    // is, and where along the line. Sections are short against the globe: the foot is
    // found on a plane around the place, its distance by geodesic. Boxes around each
    // 64 places are looked at first: O(size / 64) where the line is far.
    struct Foot {
        Distance off;
        Distance at;
    };
    std::optional<Foot> nearest(const GeoPosition& place, Distance reach) const;

private:
    // Around the sections that end at 64 places; longitudes are counted from `east`.
    struct Box {
        double east, south, north;
        double left = 0.0, right = 0.0;
        void include(const GeoPosition& position);
        bool isNear(const GeoPosition& position, Distance reach) const;
    };
    void add(const Place& place);
    void compare(std::size_t index, const GeoPosition& place, Foot& best) const;

    std::vector<Place> m_places;
    std::vector<Box> m_boxes;
};

} // namespace undermark
