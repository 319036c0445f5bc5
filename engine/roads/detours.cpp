// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/detours.h"

#include <algorithm>
#include <boost/graph/compressed_sparse_row_graph.hpp>
#include <boost/graph/dijkstra_shortest_paths_no_color_map.hpp>
#include <cmath>
#include <limits>
#include <vector>

namespace undermark {

namespace {

constexpr Distance kRoadSnap = Distance::fromMetres(250); // from a place to the road it stands at
constexpr double kAlongShare = 0.7; // of an edge's length that a followed edge covers of the track
constexpr double kFarthestKm = 25;  // one way
constexpr double kWindowKm = 10;    // of the track around the foot, where one leaves and returns

struct TooFar {};

struct WithinReach : boost::default_dijkstra_visitor {
    const std::vector<double>* km = nullptr;
    template <class Vertex, class G>
    void examine_vertex(Vertex vertex, const G&) const
    {
        if ((*km)[vertex] > kFarthestKm)
            throw TooFar(); // all that follow are further
    }
};

// Where a place's foot lies on an edge: the share of it from `from`, and how far off.
struct Snap {
    std::size_t edge = 0;
    double part = 0;
    double offKm = 0;
};

} // namespace

struct Detours::Graph {
    struct Length {
        double km = 0;
    };
    using Roads = boost::compressed_sparse_row_graph<boost::directedS, boost::no_property, Length>;
    using Step = std::pair<std::uint32_t, std::uint32_t>;

    const RoadGraph& roads;
    const GeoLine& line;
    Roads ahead, back; // the second with every edge turned
    std::vector<double> km;                    // of each edge
    std::vector<std::optional<double>> trackKm; // of each node that is followed
    std::vector<double> offKm;                 // from the track, of those
    std::vector<bool> followed;                // each edge

    Graph(const RoadGraph& roads_, const GeoLine& line_) : roads(roads_), line(line_)
    {
        follow();
        std::vector<Step> there, turned;
        std::vector<Length> lengths;
        const auto graphOf = [&](const std::vector<Step>& steps) {
            return Roads(boost::edges_are_unsorted_multi_pass, steps.begin(), steps.end(), lengths.begin(),
                         roads.nodes.size());
        };
        for (std::size_t i = 0; i < roads.edges.size(); ++i) {
            Step step{roads.edges[i].from, roads.edges[i].to};
            for (int ways = roads.edges[i].twoWay ? 2 : 1; ways > 0; --ways) {
                there.push_back(step);
                std::swap(step.first, step.second);
                turned.push_back(step);
                lengths.push_back({km[i]});
            }
        }
        ahead = graphOf(there);
        back = graphOf(turned);
    }

    void follow()
    {
        std::vector<std::optional<GeoLine::Foot>> feet(roads.nodes.size());
        for (std::size_t i = 0; i < feet.size(); ++i)
            feet[i] = line.nearest(roads.nodes[i], kTrackWidth);
        trackKm.resize(feet.size());
        offKm.resize(feet.size());
        const auto mark = [&](std::uint32_t node) {
            trackKm[node] = feet[node]->at.km();
            offKm[node] = feet[node]->off.km();
        };
        for (const RoadEdge& edge : roads.edges) {
            km.push_back(geodesicLength(roads.nodes[edge.from], roads.nodes[edge.to]).km());
            const auto &from = feet[edge.from], &to = feet[edge.to];
            bool along = from && to;
            if (along) {
                const double covered = (to->at - from->at).km();
                along = (edge.twoWay ? std::fabs(covered) : covered) >= kAlongShare * km.back();
            }
            followed.push_back(along);
            if (along) {
                mark(edge.from);
                mark(edge.to);
            }
        }
    }

    std::optional<Snap> snap(const GeoPosition& place) const;
    std::vector<double> shortest(const Roads& graph, const std::vector<std::pair<std::uint32_t, double>>& starts) const;
    std::optional<double> half(const std::vector<double>& road, const GeoLine::Foot& foot, bool out) const;
};

std::optional<Snap> Detours::Graph::snap(const GeoPosition& place) const
{
    const double reach = kRoadSnap.km() / kLeastKmPerDegree;
    std::optional<Snap> best;
    for (std::size_t i = 0; i < roads.edges.size(); ++i) {
        const GeoPosition &a = roads.nodes[roads.edges[i].from], &b = roads.nodes[roads.edges[i].to];
        if (std::min(a.latitude, b.latitude) > place.latitude + reach ||
            std::max(a.latitude, b.latitude) < place.latitude - reach)
            continue;
        const SectionFoot foot = footOnSection(place, a, b);
        if (foot.roughKm <= (best ? best->offKm : kRoadSnap.km()))
            best = Snap{i, foot.part, foot.roughKm};
    }
    return best;
}

// Km from the starts (a node, and how far it is already) to every node; huge where out of reach.
std::vector<double> Detours::Graph::shortest(const Roads& graph,
                                             const std::vector<std::pair<std::uint32_t, double>>& starts) const
{
    // One start at a time: there are two at most, the ends of the edge that the place stands at.
    std::vector<double> least(roads.nodes.size(), std::numeric_limits<double>::max());
    for (const auto& [start, before] : starts) {
        std::vector<double> far(roads.nodes.size());
        WithinReach visitor;
        visitor.km = &far;
        try {
            boost::dijkstra_shortest_paths_no_color_map(
                graph, start,
                boost::weight_map(boost::get(&Length::km, graph))
                    .distance_map(boost::make_iterator_property_map(far.begin(), boost::get(boost::vertex_index, graph)))
                    .visitor(visitor));
        } catch (const TooFar&) {
        }
        for (std::size_t i = 0; i < far.size(); ++i) {
            if (far[i] <= kFarthestKm)
                least[i] = std::min(least[i], before + far[i]);
        }
    }
    return least;
}

// The least that leaving the track (or returning to it) adds, over where that is done.
std::optional<double> Detours::Graph::half(const std::vector<double>& road, const GeoLine::Foot& foot,
                                           bool out) const
{
    const double window = kWindowKm + 3 * foot.off.km();
    std::optional<double> least;
    for (std::size_t i = 0; i < road.size(); ++i) {
        if (!trackKm[i] || road[i] > 2 * kFarthestKm || std::fabs(*trackKm[i] - foot.at.km()) > window)
            continue;
        const double covered = out ? foot.at.km() - *trackKm[i] : *trackKm[i] - foot.at.km();
        const double added = std::max(road[i] + offKm[i] - covered, foot.off.km());
        if (!least || added < *least)
            least = added;
    }
    return least;
}

Detours::Detours(const RoadGraph& roads, const GeoLine& line) : m_graph(new Graph(roads, line)) {}
Detours::~Detours() = default;

std::optional<Distance> Detours::of(const GeoPosition& place, const GeoLine::Foot& foot) const
{
    const auto snap = m_graph->snap(place);
    if (!snap)
        return std::nullopt;
    if (m_graph->followed[snap->edge]) // it stands at the road that is driven
        return 2 * std::max(foot.off, Distance::fromKm(snap->offKm));
    const RoadEdge& edge = m_graph->roads.edges[snap->edge];
    const double km = m_graph->km[snap->edge];
    // To the place: the search goes backwards from it, through `from`, or `to` where two-way.
    std::vector<std::pair<std::uint32_t, double>> before{{edge.from, snap->offKm + snap->part * km}};
    std::vector<std::pair<std::uint32_t, double>> behind{{edge.to, snap->offKm + (1 - snap->part) * km}};
    if (edge.twoWay) {
        before.emplace_back(edge.to, snap->offKm + (1 - snap->part) * km);
        behind.emplace_back(edge.from, snap->offKm + snap->part * km);
    }
    const auto out = m_graph->half(m_graph->shortest(m_graph->back, before), foot, true);
    const auto back = m_graph->half(m_graph->shortest(m_graph->ahead, behind), foot, false);
    if (!out || !back)
        return std::nullopt;
    return Distance::fromKm(*out + *back);
}

} // namespace undermark
