// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_replay_plot.h"

#include "app/cli/cli_command.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::size_t kMostPoints = 2000;
constexpr double kReplayLeft = 60, kReplayTop = 20, kReplayWidth = 900, kReplayHeight = 360;

struct Axes {
    double startS, seconds, fullL;
    double x(double timeS) const { return kReplayLeft + kReplayWidth * (timeS - startS) / seconds; }
    double y(double litres) const
    {
        return kReplayTop + kReplayHeight * (1.0 - std::clamp(litres / fullL, 0.0, 1.0));
    }
};

std::string pair(double x, double y) { return format("%.1f,%.1f ", x, y); }

std::string grid(const Axes& axes)
{
    std::string svg;
    for (int i = 0; i <= 5; ++i) {
        const double litres = axes.fullL * i / 5.0;
        const double y = axes.y(litres);
        svg += format("<path d='M%.0f %.1fh%.0f' stroke='#ccc'/>", kReplayLeft, y, kReplayWidth);
        svg += format("<text x='%.0f' y='%.1f' text-anchor='end'>%.0f L</text>\n", kReplayLeft - 6, y + 4,
                      litres);
        const double timeS = axes.startS + axes.seconds * i / 5.0;
        svg += format("<text x='%.1f' y='%.0f' text-anchor='middle'>%.1f min</text>\n",
                      axes.x(timeS), kReplayTop + kReplayHeight + 18, timeS / 60.0);
    }
    return svg;
}

std::string band(const std::vector<PlotPoint>& points, const Axes& axes)
{
    std::string svg = "<polygon fill='#1b6ca8' fill-opacity='.2' points='";
    for (const PlotPoint& point : points)
        svg += pair(axes.x(point.timeS), axes.y(point.litres + 2.0 * point.sdL));
    for (auto point = points.rbegin(); point != points.rend(); ++point)
        svg += pair(axes.x(point->timeS), axes.y(point->litres - 2.0 * point->sdL));
    return svg + "'/>\n";
}

std::string estimateLine(const std::vector<PlotPoint>& points, const Axes& axes)
{
    std::string svg = "<polyline fill='none' stroke='#1b6ca8' stroke-width='2' points='";
    for (const PlotPoint& point : points)
        svg += pair(axes.x(point.timeS), axes.y(point.litres));
    return svg + "'/>\n";
}

std::string readings(const std::vector<PlotPoint>& points, const Axes& axes)
{
    std::string svg = "<g fill='#888'>";
    for (const PlotPoint& point : points)
        if (point.readingL)
            svg += format("<circle cx='%.1f' cy='%.1f' r='1.5'/>", axes.x(point.timeS),
                          axes.y(*point.readingL));
    return svg + "</g>\n";
}

std::string marks(const std::vector<TrackerEvent>& events, const Axes& axes)
{
    std::string svg;
    for (const TrackerEvent& event : events) {
        const bool refuel = event.kind == TrackerEventKind::refuel;
        if (!refuel && event.kind != TrackerEventKind::fault)
            continue;
        const double x = axes.x(event.onset.count());
        const std::string label = refuel ? format("+%.1f L", event.litres.mean.litres())
                                         : std::string("fault: ") + faultWord(event.fault);
        svg += format("<path d='M%.1f %.0fv%.0f' stroke='%s' stroke-dasharray='%s'/>", x, kReplayTop,
                      kReplayHeight, refuel ? "#2e7d32" : "#b23b00", refuel ? "none" : "6 3");
        svg += format("<text x='%.1f' y='%.0f'>%s</text>\n", x + 4, kReplayTop + 12, label.c_str());
    }
    return svg;
}

} // namespace

void PlotPoints::add(const PlotPoint& point)
{
    if (m_seen++ % m_stride != 0)
        return;
    m_points.push_back(point);
    if (m_points.size() < kMostPoints)
        return;
    for (std::size_t i = 0; 2 * i < m_points.size(); ++i)
        m_points[i] = m_points[2 * i];
    m_points.resize(m_points.size() / 2);
    m_stride *= 2;
}

std::string replaySvg(const std::vector<PlotPoint>& points,
                      const std::vector<TrackerEvent>& events, double fullL, const char* caveat)
{
    Axes axes{0.0, 1.0, fullL};
    if (points.size() > 1) {
        axes.startS = points.front().timeS;
        axes.seconds = std::max(1.0, points.back().timeS - axes.startS);
    }
    return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1000 440' font-family='sans-serif'"
           " font-size='12'>\n<rect width='1000' height='440' fill='white'/>\n"
        + grid(axes) + band(points, axes) + readings(points, axes) + estimateLine(points, axes)
        + marks(events, axes)
        + format("<text x='%.0f' y='430'>dots: read (means of half a minute); line: litres since "
                 "drained, estimated, with two standard deviations%s</text>\n</svg>\n", kReplayLeft, caveat);
}

} // namespace undermark
