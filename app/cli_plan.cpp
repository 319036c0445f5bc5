// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli plan: fuel stops along a route, with the risk as a number.
#include "app/cli_plan.h"

#include <algorithm>
#include <cstdio>

namespace undermark {

namespace {

constexpr double kSure = 2.3263478740408408; // the normal 99 % quantile: "sure"

void printRow(const PlanRequest& request, const Plan& plan, std::size_t i)
{
    const Passage& passage = plan.passages[i];
    const RoutePoint& point = request.route.points[passage.point];
    const double leg = i > 0 ? (point.at - request.route.points[i - 1].at).km() : 0.0;
    const double even = std::max(passage.arrive.mean.litres(), 0.0); // never "-0.0"
    const double sure = std::max(even - kSure * passage.arrive.sd.litres(), 0.0);
    std::string take;
    for (const PlannedStop& stop : plan.stops) {
        if (stop.point == passage.point)
            take = fixed(stop.buy.litres()) + (stop.toFull ? " full" : "");
    }
    const std::string need =
        i + 1 < plan.passages.size() ? fixed(plan.passages[i + 1].used.litres()) : "";
    std::printf("%8.1f %7.1f  %-18.18s %-13.13s %7s %8.1f %6.1f  %-10s %6.1f\n", point.at.km(), leg,
                point.name.c_str(), point.mode.c_str(), need.c_str(), sure, even, take.c_str(),
                passage.leave.litres());
}

void printShortfall(const PlanRequest& request, const Shortfall& shortfall,
                    const std::vector<Cure>& cures)
{
    std::printf("No plan: at this confidence the fuel lasts to km %.1f, %.1f L short of %s.\n",
                shortfall.farthest.km(), shortfall.missing.litres(),
                request.route.points[shortfall.towards].name.c_str());
    for (const Cure& cure : cures)
        std::printf("  would do: %s (%zu stops, planned again to be sure)\n",
                    cureWords(cure).c_str(), cure.plan.stops.size());
}

void printWhatIfs(const Plan& base, const std::vector<WhatIf>& whatIfs)
{
    if (whatIfs.empty())
        return;
    std::printf("\n%-32s %6s %8s %9s %9s\n", "what if", "stops", "litres", "cost", "dry risk");
    const auto row = [](const std::string& words, const Plan& plan) {
        if (plan.feasible)
            std::printf("%-32.32s %6zu %8.1f %9.2f %8.3g %%\n", words.c_str(), plan.stops.size(),
                        plan.bought.litres(), plan.cost, plan.dryRisk * 100);
        else
            std::printf("%-32.32s no plan: %.1f L short, the fuel lasts to km %.1f\n",
                        words.c_str(), plan.shortfall->missing.litres(),
                        plan.shortfall->farthest.km());
    };
    row("as it is", base);
    for (const WhatIf& whatIf : whatIfs)
        row(whatIf.words, whatIf.plan);
}

void printRules(const Plan& plan)
{
    for (const RuleFinding& finding : plan.rules)
        std::printf("%s %s: %s\n", finding.kept ? "kept  " : "BROKEN", finding.rule.c_str(),
                    finding.text.c_str());
    for (const std::string& note : plan.notes)
        std::printf("note: %s\n", note.c_str());
}

void printGaps(const PlanRequest& request, const Plan& plan)
{
    for (const Gap& gap : plan.gaps) {
        if (gap.noReturn)
            std::printf("Turn back by km %.1f, or there must be fuel at %s.\n", gap.noReturn->km(),
                        request.route.points[gap.to].name.c_str());
    }
}

} // namespace

void printPlan(const PlanRequest& request, const Plan& plan)
{
    std::printf("%8s %7s  %-18s %-13s %7s %8s %6s  %-10s %6s\n", "km", "leg", "place", "mode on",
                "needs", "sure", "even", "take on", "leave");
    for (std::size_t i = 0; i < plan.passages.size(); ++i)
        printRow(request, plan, i);
    std::printf("\n%zu stop%s, %.1f L, cost %.2f. Risk of running dry on the way: %.3g %%.\n",
                plan.stops.size(), plan.stops.size() == 1 ? "" : "s", plan.bought.litres(),
                plan.cost, plan.dryRisk * 100);
    printGaps(request, plan);
    std::printf("sure = litres on arrival with 99 %% probability; an estimate, not a promise.\n");
}

namespace {

Result<void> run(const PlanOptions& options, const CliContext& context)
{
    const Result<PlanRequest> request = requestFrom(options, context);
    if (!request)
        return fail(request.error());
    const Result<Plan> answer = plan(*request);
    if (!answer)
        return fail(answer.error());
    const Result<std::vector<WhatIf>> whatIfs = whatIfsFrom(options, *request);
    if (!whatIfs)
        return fail(whatIfs.error());
    const Result<std::vector<Cure>> cures =
        answer->feasible ? std::vector<Cure>() : findCures(*request);
    if (!cures)
        return fail(cures.error());
    if (context.json) {
        Json json = planJson(*request, *answer, options.kgPerLitre);
        if (!answer->feasible)
            json["cures"] = curesJson(*cures);
        if (!whatIfs->empty())
            json["what_if"] = whatIfsJson(*answer, *whatIfs);
        print(json);
        return {};
    }
    if (answer->feasible)
        printPlan(*request, *answer);
    else
        printShortfall(*request, *answer->shortfall, *cures);
    printRules(*answer);
    printWhatIfs(*answer, *whatIfs);
    return {};
}

} // namespace

void addPlanCommand(CLI::App& app, CliContext& context)
{
    auto options = std::make_shared<PlanOptions>();
    CLI::App* command =
        app.add_subcommand("plan", "fuel stops along a route, with the risk as a number");
    addPlanFlags(*command, *options);
    addJson(*command, context);
    onRun(*command, context, [options, &context] { return run(*options, context); });
}

} // namespace undermark
