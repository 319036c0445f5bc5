// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli plan: fuel stops along a route, with the risk as a number.
#include "app/cli_plan.h"

#include <cstdio>

namespace undermark {

namespace {

constexpr double kSure = 2.3263478740408408;   // the normal 99 % quantile: "sure"

Json estimate(const Estimate<Volume>& value)
{
    return {{"mean", value.mean.litres()}, {"sd", value.sd.litres()}};
}

Json stopJson(const PlanRequest& request, const PlannedStop& stop, std::optional<double> kgPerLitre)
{
    const RoutePoint& point = request.route.points[stop.point];
    Json json{{"at_km", point.at.km()},
              {"name", point.name},
              {"fuel", fuelWord(point.fuel)},
              {"buy_l", stop.buy.litres()},
              {"to_full", stop.toFull},
              {"arrive_l", estimate(stop.arrive)},
              {"leave_l", stop.leave.litres()},
              {"cost", stop.cost}};
    if (stop.cans > 0)
        json["cans"] = stop.cans;
    if (kgPerLitre) {
        json["buy_kg"] = stop.buy.litres() * *kgPerLitre;
        json["leave_kg"] = stop.leave.litres() * *kgPerLitre;
    }
    return json;
}

Json passageJson(const PlanRequest& request, const Passage& passage)
{
    const RoutePoint& point = request.route.points[passage.point];
    return {{"at_km", point.at.km()},
            {"name", point.name},
            {"mode", point.mode},
            {"used_l", passage.used.litres()},
            {"arrive_l", estimate(passage.arrive)},
            {"leave_l", passage.leave.litres()},
            {"below_floor_risk", passage.belowFloor},
            {"dry_risk", passage.dry},
            {"margin_l", passage.margin.litres()},
            {"margin_km", passage.marginDistance.km()}};
}

Json gapsJson(const PlanRequest& request, const Plan& plan)
{
    Json gaps = Json::array();
    for (const Gap& gap : plan.gaps) {
        gaps.push_back({{"from_km", request.route.points[gap.from].at.km()},
                        {"to_km", request.route.points[gap.to].at.km()},
                        {"no_return_km", gap.noReturn ? Json(gap.noReturn->km()) : Json(nullptr)}});
    }
    return gaps;
}

Json planJson(const PlanRequest& request, const Plan& plan, std::optional<double> kgPerLitre)
{
    Json json{{"feasible", plan.feasible}, {"stops", Json::array()}};
    for (const PlannedStop& stop : plan.stops)
        json["stops"].push_back(stopJson(request, stop, kgPerLitre));
    if (plan.feasible) {
        json["bought_l"] = plan.bought.litres();
        json["cost"] = plan.cost;
        json["finish_l"] = estimate(plan.finish);
        json["dry_risk"] = plan.dryRisk;
        json["below_floor_risk"] = plan.floorRisk;
        json["stop_min"] = plan.stopTime.count();
        json["litre_km"] = plan.litreKm;
        json["gaps"] = gapsJson(request, plan);
    } else {
        for (const char* unknown : {"bought_l", "cost", "finish_l", "dry_risk"})
            json[unknown] = nullptr;
        json["farthest_km"] = plan.shortfall->farthest.km();
        json["short_l"] = plan.shortfall->missing.litres();
        json["short_before"] = request.route.points[plan.shortfall->towards].name;
    }
    json["points"] = Json::array();
    for (const Passage& passage : plan.passages)
        json["points"].push_back(passageJson(request, passage));
    return json;
}

void printRow(const PlanRequest& request, const Plan& plan, std::size_t i)
{
    const Passage& passage = plan.passages[i];
    const RoutePoint& point = request.route.points[passage.point];
    const double leg = i > 0 ? (point.at - request.route.points[i - 1].at).km() : 0.0;
    const double even = passage.arrive.mean.litres();
    const double sure = even - kSure * passage.arrive.sd.litres();
    std::string take;
    for (const PlannedStop& stop : plan.stops) {
        if (stop.point == passage.point)
            take = fixed(stop.buy.litres()) + (stop.toFull ? " full" : "");
    }
    const std::string need = i + 1 < plan.passages.size() ? fixed(plan.passages[i + 1].used.litres()) : "";
    std::printf("%8.1f %7.1f  %-18.18s %-13.13s %7s %8.1f %6.1f  %-10s %6.1f\n", point.at.km(), leg,
                point.name.c_str(), point.mode.c_str(), need.c_str(), sure, even, take.c_str(),
                passage.leave.litres());
}

void printText(const PlanRequest& request, const Plan& plan)
{
    if (!plan.feasible) {
        const Shortfall& shortfall = *plan.shortfall;
        std::printf("No plan: at this confidence the fuel ends at km %.1f, %.1f L short of %s.\n",
                    shortfall.farthest.km(), shortfall.missing.litres(),
                    request.route.points[shortfall.towards].name.c_str());
        return;
    }
    std::printf("%8s %7s  %-18s %-13s %7s %8s %6s  %-10s %6s\n", "km", "leg", "place", "mode on", "needs",
                "sure", "even", "take on", "leave");
    for (std::size_t i = 0; i < plan.passages.size(); ++i)
        printRow(request, plan, i);
    std::printf("\n%zu stops, %.1f L, cost %.2f. Risk of running dry on the way: %.3g %%.\n",
                plan.stops.size(), plan.bought.litres(), plan.cost, plan.dryRisk * 100);
    std::printf("sure = litres on arrival with 99 %% probability; an estimate, not a promise.\n");
}

Result<void> run(const PlanOptions& options, const CliContext& context)
{
    const Result<PlanRequest> request = requestFrom(options, context);
    if (!request)
        return fail(request.error());
    const Result<Plan> answer = plan(*request);
    if (!answer)
        return fail(answer.error());
    if (context.json)
        print(planJson(*request, *answer, options.kgPerLitre));
    else
        printText(*request, *answer);
    return {};
}

} // namespace

void addPlanCommand(CLI::App& app, CliContext& context)
{
    auto options = std::make_shared<PlanOptions>();
    CLI::App* command = app.add_subcommand("plan", "fuel stops along a route, with the risk as a number");
    addPlanFlags(*command, *options);
    addJson(*command, context);
    onRun(*command, context, [options, &context] { return run(*options, context); });
}

} // namespace undermark
