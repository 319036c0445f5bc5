// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/route_editor.h"

#include <algorithm>
#include <cassert>

namespace undermark {

namespace {

// So many points may be kept for undo(), one route at least: 200 bytes each.
constexpr std::size_t kPointsKept = 500'000;

} // namespace

// A name that was there before is let be: files may hold rows without one.
static Result<void> checkName(const Route& route, std::size_t row, const std::string& name)
{
    if (name == route.points[row].name)
        return {};
    if (name.empty())
        return failInput(Sentence::of("a row needs a name"));
    if (std::ranges::find(route.points, name, &RoutePoint::name) != route.points.end())
        return failInput(Sentence::of("another row has this name"),
                         Sentence::of("a name of its own"), name);
    return {};
}

std::optional<Distance> RouteEditor::leg(std::size_t row) const
{
    assert(row < m_route.points.size());
    if (row == 0)
        return std::nullopt;
    return m_route.points[row].at - m_route.points[row - 1].at;
}

RowEdit RouteEditor::row(std::size_t row) const
{
    assert(row < m_route.points.size());
    return {m_route.points[row], std::nullopt, Behind::moves};
}

Result<void> RouteEditor::change(std::size_t row, const RowEdit& edit)
{
    assert(row < m_route.points.size());
    if (const auto named = checkName(m_route, row, edit.point.name); !named)
        return named;
    Route route = m_route;
    RoutePoint& point = route.points[row];
    point = edit.point;
    point.at = m_route.points[row].at;
    point.climb = m_route.points[row].climb;
    if (edit.leg && row > 0) {
        if (!(*edit.leg >= Distance()))
            return failInput(Sentence::of("the leg is no distance"), Sentence::of("0 km or more"));
        const Distance longer = *edit.leg - *leg(row);
        const std::size_t end = edit.behind == Behind::moves ? route.points.size() : row + 1;
        for (std::size_t i = row; i < end; ++i)
            route.points[i].at += longer;
        if (end < route.points.size() && point.at > route.points[end].at)
            return failInput(
                Sentence::of("the row would lie behind the next one, which stays where it is"));
    }
    return take(std::move(route));
}

Result<void> RouteEditor::addAfter(std::size_t row, const std::string& name)
{
    assert(row < m_route.points.size());
    if (m_route.points.size() == kMostRoutePointsInFile)
        return failInput(Sentence::of("the route is too long"),
                         Sentence::of("%1 rows at most", counted(kMostRoutePointsInFile)));
    Route route = m_route;
    RoutePoint& before = route.points[row];
    const RoutePoint& after = route.points[std::min(row + 1, route.points.size() - 1)];
    RoutePoint point;
    point.name = name;
    point.at = before.at + 0.5 * (after.at - before.at);
    point.mode = before.mode;
    point.timed = before.timed;
    point.climb = before.climb = before.climb * 0.5;
    route.points.insert(route.points.begin() + static_cast<std::ptrdiff_t>(row) + 1, point);
    return take(std::move(route));
}

Result<void> RouteEditor::remove(std::size_t row)
{
    assert(row < m_route.points.size());
    Route route = m_route;
    if (row > 0 && row + 1 < route.points.size()) { // its section joins the one before
        SectionClimb& before = route.points[row - 1].climb;
        before = {before.there + route.points[row].climb.there, before.back + route.points[row].climb.back};
    }
    route.points.erase(route.points.begin() + static_cast<std::ptrdiff_t>(row));
    return take(std::move(route));
}

void RouteEditor::undo()
{
    if (m_past.empty())
        return;
    m_route = std::move(m_past.back());
    m_past.pop_back();
}

Result<void> RouteEditor::take(Route route)
{
    if (route == m_route)
        return {};
    if (const auto sound = checkRoute(route); !sound)
        return sound;
    m_past.push_back(std::exchange(m_route, std::move(route)));
    while (m_past.size() > 1 && m_past.size() * m_route.points.size() > kPointsKept)
        m_past.pop_front();
    return {};
}

} // namespace undermark
