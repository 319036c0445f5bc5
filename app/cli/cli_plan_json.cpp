// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_plan.h"

#include "app/car/plan_rows.h"
#include "app/car/plan_sentences.h"
#include "app/cli/terminal_words.h"

namespace undermark {

namespace {

Json estimate(const Estimate<Volume>& value)
{
    return {{"mean", value.mean.litres()}, {"sd", value.sd.litres()}};
}

Json stopJson(const PlanRequest& request, const PlannedStop& stop, std::optional<double> kgPerLitre)
{
    const RoutePoint& point = request.route.points[stop.point];
    Json json{{"at_km", point.at.km()},         {"name", point.name},
              {"fuel", fuelWord(point.fuel)},   {"buy_l", stop.buy.litres()},
              {"to_full", stop.toFull},         {"arrive_l", estimate(stop.arrive)},
              {"leave_l", stop.leave.litres()}, {"cost", stop.cost}};
    if (stop.cans > 0)
        json["cans"] = stop.cans;
    if (stop.toFull)
        json["buy_sd_l"] = stop.buySd.litres();
    if (stop.wait > Minutes{})
        json["wait_min"] = stop.wait.count();
    if (!stop.why.empty())
        json["why"] = said(stop.why);
    if (kgPerLitre) {
        json["arrive_kg"] = {{"mean", stop.arrive.mean.litres() * *kgPerLitre},
                             {"sd", stop.arrive.sd.litres() * *kgPerLitre}};
        json["buy_kg"] = stop.buy.litres() * *kgPerLitre;
        json["leave_kg"] = stop.leave.litres() * *kgPerLitre;
    }
    return json;
}

Json passageJson(const PlanRequest& request, const Passage& passage,
                 std::optional<double> kgPerLitre)
{
    const RoutePoint& point = request.route.points[passage.point];
    Json json{{"at_km", point.at.km()},
              {"name", point.name},
              {"mode", point.mode},
              {"used_l", passage.used.litres()},
              {"arrive_l", estimate(passage.arrive)},
              {"leave_l", passage.leave.litres()},
              {"below_floor_risk", passage.belowFloor},
              {"dry_risk", passage.dry},
              {"margin_l", passage.margin.litres()},
              {"margin_km", passage.marginDistance.km()}};
    if (passage.goPast) {
        json["past_with_l"] = passage.goPast->with.litres();
        json["past_to"] = request.route.points[passage.goPast->next].name;
        if (const auto gauge = gaugeAt(request.tank, passage.goPast->with))
            json["past_with_gauge_percent"] = gauge->percent();
    }
    if (passage.climb.mean != Volume()) // of used_l
        json["climb_l"] = estimate(passage.climb);
    if (passage.clock) // of the day of the departure, or a later one
        json["clock_min"] = passage.clock->count();
    if (passage.late)
        json["late_min"] = passage.late->count();
    if (kgPerLitre) {
        json["arrive_kg"] = {{"mean", passage.arrive.mean.litres() * *kgPerLitre},
                             {"sd", passage.arrive.sd.litres() * *kgPerLitre}};
        json["leave_kg"] = passage.leave.litres() * *kgPerLitre;
    }
    return json;
}

Json gapsJson(const PlanRequest& request, const Plan& plan)
{
    Json gaps = Json::array();
    for (const Gap& gap : plan.gaps) {
        gaps.push_back({{"from_km", request.route.points[gap.from].at.km()},
                        {"to_km", request.route.points[gap.to].at.km()},
                        {"no_return_km", gap.noReturn ? Json(gap.noReturn->km()) : Json(nullptr)},
                        {"one_way", gap.oneWay}});
    }
    return gaps;
}

Json rulesJson(const Plan& plan)
{
    Json rules = Json::array();
    for (const RuleFinding& finding : plan.rules) {
        rules.push_back({{"rule", said(finding.rule)},
                         {"kept", finding.kept},
                         {"text", said(finding.text)},
                         {"over_km", finding.overBy.km()},
                         {"short_l", finding.shortBy.litres()}});
    }
    return rules;
}

} // namespace

Json planJson(const PlanRequest& request, const Plan& plan, std::optional<double> kgPerLitre)
{
    Json json{{"feasible", plan.feasible},
              {"stops", Json::array()},
              {"start_l", estimate(request.tank.start)},
              {"currency", request.currency.empty() ? Json() : Json(request.currency)}};
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
        json["trip_gap"] = plan.tripGap;
        if (kgPerLitre)
            json["bought_kg"] = plan.bought.litres() * *kgPerLitre;
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
        json["points"].push_back(passageJson(request, passage, kgPerLitre));
    if (!plan.rules.empty())
        json["rules"] = rulesJson(plan);
    for (const Sentence& note : plan.notes)
        json["notes"].push_back(said(note));
    return json;
}

namespace {

const char* wordOf(CureKind kind)
{
    switch (kind) {
    case CureKind::startWithMore:
        return "start-with-more";
    case CureKind::carryInCans:
        return "carry-in-cans";
    case CureKind::driveGentler:
        return "drive-gentler";
    case CureKind::anotherPump:
        return "another-pump";
    }
    return "";
}

} // namespace

Json curesJson(const std::vector<Cure>& cures)
{
    Json json = Json::array();
    for (const Cure& cure : cures) {
        Json one{{"text", said(cureSentence(cure))},
                 {"caution", said(cureCaution(cure))},
                 {"kind", wordOf(cure.kind)},
                 {"feasible", cure.plan.feasible}};
        if (cure.kind == CureKind::driveGentler)
            one["less_percent"] = cure.gentler.percent();
        else if (cure.kind == CureKind::anotherPump)
            one["latest_km"] = cure.latest.km();
        else
            one["litres"] = cure.litres.litres();
        one["stops"] = cure.plan.stops.size();
        one["dry_risk"] = cure.plan.dryRisk;
        json.push_back(std::move(one));
    }
    return json;
}

Json closedStopsJson(const std::vector<ClosedStop>& closed)
{
    Json json = Json::array();
    for (const ClosedStop& one : closed) {
        const RoutePoint& place = one.request.route.points.front();
        json.push_back({{"at_km", place.at.km()},
                        {"name", place.name},
                        {"plan", planJson(one.request, one.plan, {})}});
    }
    return json;
}

Json whatIfsJson(const Plan& base, const std::vector<WhatIf>& whatIfs)
{
    Json json = Json::array();
    for (const WhatIf& whatIf : whatIfs) {
        Json one{{"what", said(whatIf.words)},
                 {"plan", planJson(whatIf.request, whatIf.plan, {})}};
        if (base.feasible && whatIf.plan.feasible) {
            one["cost_change"] = whatIf.plan.cost - base.cost;
            one["bought_change_l"] = (whatIf.plan.bought - base.bought).litres();
            one["stops_change"] =
                static_cast<long>(whatIf.plan.stops.size()) - static_cast<long>(base.stops.size());
        }
        json.push_back(std::move(one));
    }
    return json;
}

} // namespace undermark
