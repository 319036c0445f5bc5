// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli plan: fuel stops along a route, with the risk as a number.
#include "app/cli/cli_plan.h"
#include "app/car/plan_rows.h"
#include "app/car/plan_sentences.h"
#include "app/cli/cli_sources.h"
#include "app/cli/status_line.h"
#include "app/cli/terminal_words.h"

#include <algorithm>
#include <chrono>
#include <cstdio>

namespace undermark {

namespace {

// Cut and filled up to so many letters, which in UTF-8 are not bytes.
std::string padded(const std::string& text, std::size_t letters)
{
    std::string out;
    std::size_t count = 0;
    for (const char c : text) {
        const bool begins = (static_cast<unsigned char>(c) & 0xc0) != 0x80;
        if (begins && count++ == letters)
            return out;
        out += c;
    }
    return out + std::string(letters - count, ' ');
}

void printRow(const PlanRequest& request, const PlanRow& row, std::optional<double> kgPerLitre)
{
    const RoutePoint& point = request.route.points[row.point];
    const bool last = row.point + 1 == request.route.points.size();
    std::string take = row.stop ? fixed(row.stop->buy.litres()) : "";
    if (row.stop && row.stop->toFull)
        take += " full";
    std::string note = row.note;
    if (row.stop && kgPerLitre)
        note += format("%s%.1f kg", note.empty() ? "" : "; ", row.stop->buy.litres() * *kgPerLitre);
    std::printf("%8.1f %7.1f  %-18s %-13s %7s %8.1f %6.1f  %-10s %6.1f%s%s\n", row.at.km(),
                row.leg.km(), padded(point.name, 18).c_str(),
                padded(last ? "" : point.mode, 13).c_str(),
                last ? "" : fixed(row.needs.litres()).c_str(), row.sure.litres(), row.even.litres(),
                take.c_str(), row.leave.litres(), note.empty() ? "" : "  ", note.c_str());
}

void printShortfall(const PlanRequest& request, const Shortfall& shortfall,
                    const std::vector<Cure>& cures)
{
    std::printf("%s\n", said(shortfallSentence(request.route, shortfall)).c_str());
    if (cures.empty())
        std::printf("  Neither more at the start nor own cans nor driving gentler nor another pump "
                    "would do.\n");
    for (const Cure& cure : cures)
        std::printf("  would do: %s (%s, planned again to be sure)\n    %s\n",
                    said(cureSentence(cure)).c_str(),
                    numberOf(cure.plan.stops.size(), "stop").c_str(), said(cureCaution(cure)).c_str());
}

// "Birch 12.0, Elm 30.5"
std::string whereOf(const PlanRequest& request, const Plan& plan)
{
    std::string where;
    for (const PlannedStop& stop : plan.stops)
        where += (where.empty() ? "" : ", ") + placeName(request.route.points[stop.point]) + " " +
                 fixed(stop.buy.litres());
    return where;
}

void printWhatIfs(const PlanRequest& request, const Plan& base, const std::vector<WhatIf>& whatIfs)
{
    if (whatIfs.empty())
        return;
    const std::string cost = request.currency.empty() ? "cost" : "cost " + request.currency;
    std::printf("\n%-28s %5s %7s %9s %9s  %s\n", "what if", "stops", "litres", cost.c_str(), "dry risk",
                "where, L");
    const auto row = [](const std::string& words, const PlanRequest& asked, const Plan& plan) {
        if (plan.feasible)
            std::printf("%s %5zu %7.1f %9.2f %7s %%  %s\n", padded(words, 28).c_str(),
                        plan.stops.size(), plan.bought.litres(), plan.cost,
                        riskPercent(plan.dryRisk).c_str(), whereOf(asked, plan).c_str());
        else
            std::printf("%s no plan: %.1f L short, the fuel lasts to km %.1f\n",
                        padded(words, 28).c_str(), plan.shortfall->missing.litres(),
                        plan.shortfall->farthest.km());
    };
    row("as it is", request, base);
    for (const WhatIf& whatIf : whatIfs)
        row(said(whatIf.words), whatIf.request, whatIf.plan);
}

// What survives any one closure: how the way goes on from each stop.
void printClosedStops(const ForAnyClosure& planned)
{
    if (!planned.closed.empty())
        std::printf("\nIf a stop turns out to be closed, found out there:\n");
    for (const ClosedStop& closed : planned.closed) {
        const std::string onwards =
            closed.plan.stops.empty()
                ? "the fuel lasts to the finish"
                : "on to " + placeName(closed.request.route.points[closed.plan.stops.front().point]);
        std::printf("  %s: %s (%s, dry %s %%)\n",
                    placeName(closed.request.route.points.front()).c_str(), onwards.c_str(),
                    numberOf(closed.plan.stops.size(), "stop").c_str(),
                    riskPercent(closed.plan.dryRisk).c_str());
    }
    for (const Sentence& sentence : planned.hopeless)
        std::printf("note: %s\n", said(sentence).c_str());
}

std::string turnBackBy(const Gap& gap)
{
    if (!gap.noReturn)
        return "any time";
    return fixed(gap.noReturn->km()) + (gap.oneWay ? " one-way" : "");
}

// The risk, the margin and the point of no return of every way between stops.
void printLegs(const PlanRequest& request, const Plan& plan)
{
    const auto& points = request.route.points;
    std::printf("\n%-40s %7s %9s %9s %9s %13s\n", "leg", "km", "dry risk", "margin L", "margin km",
                "turn back by");
    for (const Gap& gap : plan.gaps) {
        const Passage& arrival = plan.passages[gap.to];
        std::printf(
            "%s %7.1f %7s %% %9.1f %9.1f %13s\n",
            padded(placeName(points[gap.from]) + " to " + placeName(points[gap.to]), 40).c_str(),
            (points[gap.to].at - points[gap.from].at).km(), riskPercent(arrival.dry).c_str(),
            std::max(arrival.margin.litres(), 0.0), std::max(arrival.marginDistance.km(), 0.0),
            turnBackBy(gap).c_str());
    }
}

void printRules(const Plan& plan)
{
    for (const RuleFinding& finding : plan.rules)
        std::printf("%s %s: %s\n", finding.kept ? "kept  " : "BROKEN",
                    said(finding.rule).c_str(), said(finding.text).c_str());
    for (const Sentence& note : plan.notes)
        std::printf("note: %s\n", said(note).c_str());
}

} // namespace

void printPlan(const PlanRequest& request, const Plan& plan, std::optional<double> kgPerLitre)
{
    std::printf("%8s %7s  %-18s %-13s %7s %8s %6s  %-10s %6s  %s\n", "km", "leg", "place",
                "mode on", "needs", "sure", "even", "take on", "leave", "note");
    for (const PlanRow& row : planRows(request, plan))
        printRow(request, row, kgPerLitre);
    std::string bought = fixed(plan.bought.litres()) + " L";
    if (kgPerLitre)
        bought += " (" + fixed(plan.bought.litres() * *kgPerLitre) + " kg)";
    printLegs(request, plan);
    std::printf("\n%s, %s, cost %s. Risk of running dry on the way: %s %%.\n",
                numberOf(plan.stops.size(), "stop").c_str(), bought.c_str(), moneyText(plan.cost, 2, request.currency).c_str(),
                riskPercent(plan.dryRisk).c_str());
    std::printf("%s %s\n", said(startSentence(request.tank)).c_str(),
                said(confidenceSentence(request)).c_str());
    if (const Sentence price = stopCostSentence(request); !price.empty())
        std::printf("%s\n", said(price).c_str());
    if (plan.finish.sd == Volume())
        std::printf(
            "No spread was given (--rate-sd, --start-sd-l): these are bare sums without any "
            "margin; --floor-l keeps one.\n");
    std::printf(
        "sure = litres on arrival with 99 %% probability; an estimate, not a promise.\n"
        "margin = above what the confidence demands; turn back by that km, or there must be "
        "fuel ahead.\n");
}

namespace {

// Planning may take a while: a terminal is told so, and Ctrl-C takes the best plan so far.
class Patience {
public:
    Patience() { catchStop(); }
    bool goOn(std::optional<double> gap)
    {
        const std::chrono::duration<double> since = std::chrono::steady_clock::now() - m_begin;
        if (since.count() > 1)
            m_line.say(format("planning, %.0f s: %s; Ctrl-C takes it%s", since.count(),
                              gap ? format("a plan is there, another saves %.4g at most", *gap).c_str()
                                  : "looking for a first plan",
                              gap ? "" : " when it is there"));
        return !stopAsked();
    }

private:
    std::chrono::steady_clock::time_point m_begin = std::chrono::steady_clock::now();
    StatusLine m_line;
};

// All that `plan` answers.
struct Answer {
    ForAnyClosure planned;
    std::vector<WhatIf> whatIfs;
    std::optional<WhatIf> together; // of several
    std::vector<Cure> cures;
};

Result<Answer> answerTo(const PlanOptions& options, const PlanRequest& request)
{
    Patience patience;
    const GoOn goOn = [&patience](std::optional<double> gap) { return patience.goOn(gap); };
    Answer answer;
    Result<ForAnyClosure> planned = planAsAsked(options, request, goOn);
    if (!planned)
        return fail(planned.error());
    answer.planned = std::move(*planned);
    if (stopAsked())
        return answer;
    Result<std::vector<WhatIf>> whatIfs = whatIfsFrom(options, request);
    if (!whatIfs)
        return fail(whatIfs.error());
    answer.whatIfs = std::move(*whatIfs);
    if (answer.whatIfs.size() > 1) {
        Result<std::optional<WhatIf>> together = whatIfsTogether(options, request);
        if (!together)
            return fail(together.error());
        answer.together = std::move(*together);
    }
    if (answer.planned.plan.feasible || options.anyOneClosed)
        return answer;
    Result<std::vector<Cure>> cures = findCures(request, goOn);
    if (!cures)
        return fail(cures.error());
    answer.cures = std::move(*cures);
    return answer;
}

Json answerJson(const PlanOptions& options, const PlanRequest& request, const Answer& answer)
{
    const Plan& plan = answer.planned.plan;
    Json json = planJson(request, plan, options.kgPerLitre);
    if (options.check)
        json["official_km_per_shown_km"] = officialPerShown(options);
    if (!plan.feasible)
        json["cures"] = curesJson(answer.cures);
    if (options.anyOneClosed)
        json["if_closed"] = closedStopsJson(answer.planned.closed);
    for (const Sentence& sentence : answer.planned.hopeless)
        json["notes"].push_back(said(sentence));
    if (!answer.whatIfs.empty())
        json["what_if"] = whatIfsJson(plan, answer.whatIfs);
    if (answer.together)
        json["what_if_together"] = whatIfsJson(plan, {*answer.together}).front();
    return json;
}

void printAnswer(const PlanOptions& options, const PlanRequest& request, Answer& answer)
{
    const Plan& plan = answer.planned.plan;
    if (plan.feasible)
        printPlan(request, plan, options.kgPerLitre);
    else if (options.anyOneClosed)
        std::printf("There is no plan that survives the closure of any one of its stops.\n");
    else
        printShortfall(request, *plan.shortfall, answer.cures);
    printClosedStops(answer.planned);
    if (const double factor = officialPerShown(options); factor != 1)
        std::printf("km are the car's meter's; official km = %.4f x those.\n", factor);
    printRules(plan);
    if (answer.together)
        answer.whatIfs.push_back(std::move(*answer.together));
    printWhatIfs(request, plan, answer.whatIfs);
}

// What the first car leaves of the crew's cans; its own level and cans are told of it alone.
PlanOptions ofSecondCar(const PlanOptions& options, const PlanRequest& first, const Plan& plan)
{
    PlanOptions second = options;
    second.secondCar.clear();
    second.start = second.startSd = second.signal = second.signal2 = second.odometerKm = {};
    second.cans = {};
    second.tanks = {};
    if (plan.feasible && options.crewCans)
        second.crewCans = first.crewCans - cansPoured(first, plan, FuelSource::crew);
    return second;
}

// One car's plan, as it was asked for.
struct Asked {
    PlanOptions options;
    PlanRequest request;
    Answer answer;

    Json json() const { return answerJson(options, request, answer); }
};

Result<Asked> planAsked(PlanOptions options, const CliContext& context)
{
    Result<PlanRequest> request = requestFrom(options, context);
    if (!request)
        return fail(request.error());
    Result<Answer> answer = answerTo(options, *request);
    return answer ? Result<Asked>({std::move(options), std::move(*request), std::move(*answer)}) : fail(answer.error());
}

Result<void> runPlan(const PlanOptions& options, const CliContext& context)
{
    if (!options.secondCar.empty() && (options.rate || options.capacity))
        return wrongUse("--second-car is one of the logbook, and so is the first", "no --capacity-l and --rate");
    Result<Asked> first = planAsked(options, context);
    if (!first)
        return fail(first.error());
    std::optional<Asked> second;
    if (!options.secondCar.empty()) {
        CliContext other = context;
        other.vehicle = options.secondCar;
        Result<Asked> asked = planAsked(ofSecondCar(options, first->request, first->answer.planned.plan), other);
        if (!asked)
            return fail(asked.error());
        second = std::move(*asked);
    }
    if (context.json) {
        Json json = first->json();
        if (second) {
            json["second_car"] = second->json();
            json["second_car"]["name"] = options.secondCar;
        }
        print(json);
        return {};
    }
    printAnswer(options, first->request, first->answer);
    if (second) {
        std::printf("\nSecond car, %s, with %s of the crew:\n", options.secondCar.c_str(),
                    numberOf(std::size_t(second->request.crewCans), "can").c_str());
        printAnswer(second->options, second->request, second->answer);
    }
    return {};
}

} // namespace

void addPlanCommand(CLI::App& app, CliContext& context)
{
    addCommand<PlanOptions>(app, context, "plan",
                            "fuel stops along a route, with the risk as a number", addPlanFlags,
                            runPlan);
}

} // namespace undermark
