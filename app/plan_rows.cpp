// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/plan_rows.h"

#include "engine/format.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kRiskWorthSaying = 0.0005;

void add(std::string& note, const std::string& text)
{
    note += (note.empty() ? "" : "; ") + text;
}

// Minutes since midnight on arrival, where departure and speed are known.
std::optional<double> clockAt(const PlanRequest& request, const Plan& plan, std::size_t point)
{
    if (!request.departure || !request.speed)
        return std::nullopt;
    const auto& points = request.route.points;
    const auto driving = [&](Distance way) { return 60 * way.km() / request.speed->kmPerHour(); };
    double clock = request.departure->count() + driving(points[point].at - points.front().at);
    for (const PlannedStop& stop : plan.stops) {
        if (stop.point >= point)
            break;
        const RoutePoint& at = points[stop.point];
        clock += at.stopTime.value_or(Minutes{}).count() + driving(at.detour.value_or(Distance()));
        clock += 60 * stop.buy.litres() / pumpFlowOf(request).litresPerHour();
    }
    return std::fmod(clock, 24 * 60.0);
}

void addStop(const PlanRequest& request, const Plan& plan, const PlannedStop& stop,
             std::string& note)
{
    const RoutePoint& point = request.route.points[stop.point];
    if (const auto clock = clockAt(request, plan, stop.point))
        add(note, format("about %02d:%02d", int(*clock) / 60, int(*clock) % 60));
    if (stop.cans > 0)
        add(note, format("pour %d can%s", stop.cans, stop.cans == 1 ? "" : "s"));
    if (point.fuel == FuelSource::zone)
        add(note, "zone");
    if (point.mostPurchase)
        add(note, format("at most %.1f L", point.mostPurchase->litres()));
    if (point.detour && *point.detour > Distance())
        add(note, format("%.1f km off the way", point.detour->km()));
    if (point.stopTime)
        add(note, format("%.0f min", point.stopTime->count()));
}

std::string noteOf(const PlanRequest& request, const Plan& plan, const PlanRow& row)
{
    const RoutePoint& point = request.route.points[row.point];
    const Passage& passage = plan.passages[row.point];
    std::string note;
    const auto gap = std::ranges::lower_bound(plan.gaps, row.point, {}, &Gap::from);
    if (gap != plan.gaps.end() && gap->from == row.point && gap->noReturn)
        add(note, format("no return after %.1f", gap->noReturn->km()));
    if (row.stop)
        addStop(request, plan, *row.stop, note);
    else if (point.fuel == FuelSource::pump || point.fuel == FuelSource::zone)
        add(note, format("%s passed", fuelWord(point.fuel)));
    if (passage.dry >= kRiskWorthSaying)
        add(note, format("dry %s %%", riskPercent(passage.dry).c_str()));
    if (point.idle && *point.idle > Minutes{})
        add(note, format("idles %.0f min", point.idle->count()));
    if (point.timed)
        add(note, "timed");
    if (row.point + 1 == request.route.points.size() && request.tank.end > Volume())
        add(note, format("%.1f L wanted here", request.tank.end.litres()));
    return note;
}

} // namespace

std::vector<PlanRow> planRows(const PlanRequest& request, const Plan& plan,
                              const std::vector<std::size_t>& points)
{
    const std::size_t count = points.empty() ? plan.passages.size() : points.size();
    const auto pointOf = [&](std::size_t k) { return points.empty() ? k : points[k]; };
    std::vector<PlanRow> rows;
    rows.reserve(count);
    auto stop = plan.stops.begin();
    for (std::size_t k = 0; k < count; ++k) {
        PlanRow row;
        row.point = pointOf(k);
        const Passage& passage = plan.passages[row.point];
        row.at = request.route.points[row.point].at;
        if (k > 0)
            row.leg = row.at - rows.back().at;
        for (std::size_t i = row.point + 1; k + 1 < count && i <= pointOf(k + 1); ++i)
            row.needs += plan.passages[i].used;
        row.even = std::max(passage.arrive.mean, Volume());
        row.sure = std::max(passage.arrive.mean - kSureQuantile * passage.arrive.sd, Volume());
        row.leave = std::max(passage.leave, Volume()); // rounding may leave it a hair below
        while (stop != plan.stops.end() && stop->point < row.point)
            ++stop;
        if (stop != plan.stops.end() && stop->point == row.point)
            row.stop = &*stop;
        row.note = noteOf(request, plan, row);
        rows.push_back(std::move(row));
    }
    return rows;
}

std::string placeName(const RoutePoint& point)
{
    if (!point.name.empty())
        return point.name;
    return format("km %.1f", point.at.km());
}

std::string riskPercent(double risk)
{
    if (risk > 0 && risk < 1e-5)
        return "<0.001";
    return format("%.2g", risk * 100);
}

std::vector<std::size_t> stopsAndEnds(const Plan& plan)
{
    std::vector<std::size_t> points{0};
    for (const PlannedStop& stop : plan.stops) {
        if (stop.point != points.back())
            points.push_back(stop.point);
    }
    if (points.back() + 1 != plan.passages.size())
        points.push_back(plan.passages.size() - 1);
    return points;
}

} // namespace undermark
