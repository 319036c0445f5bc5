// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli card: the plan on paper.
#include "app/car/plan_sentences.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_plan.h"
#include "app/cli/terminal_words.h"
#include "app/paper/plan_card.h"

#include <cstdio>

namespace undermark {

namespace {

struct CardOptions {
    PlanOptions plan;
    std::filesystem::path out;
    std::string paper = "a5";
    std::string event;
};

// What stands above the plan: the route's file is the event where nothing else is said.
CardWishes wishesOf(const CardOptions& options, const CliContext& context)
{
    CardWishes wishes;
    wishes.paper = options.paper == "a4" ? Paper::a4 : Paper::a5;
    wishes.kgPerLitre = options.plan.kgPerLitre;
    wishes.event = options.event.empty() ? options.plan.route.stem().string() : options.event;
    wishes.day = options.plan.date;
    if (!options.plan.capacity && !options.plan.rate)
        if (const auto car = learnVehicle(context))
            wishes.car = car->vehicle().name;
    if (options.plan.odometerKm)
        wishes.meter = Distance::fromKm(*options.plan.odometerKm);
    return wishes;
}

Result<void> runCard(const CardOptions& options, const CliContext& context)
{
    Result<PlanRequest> request = requestFrom(options.plan, context);
    if (!request)
        return fail(request.error());
    Result<std::optional<WhatIf>> whatIf = whatIfsTogether(options.plan, *request);
    if (!whatIf)
        return fail(whatIf.error());
    std::vector<Sentence> supposed; // the card is of the plan with all of it
    std::string supposedly; // ", supposed: Alder closed, rate up by 10%"
    if (*whatIf) {
        supposedly = ", supposed: " + said((*whatIf)->words);
        supposed.push_back(std::move((*whatIf)->words));
        *request = std::move((*whatIf)->request);
    }
    const Result<ForAnyClosure> planned = planAsAsked(options.plan, *request);
    if (!planned)
        return fail(planned.error());
    const Plan* answer = &planned->plan;
    Result<int> pages = 0;
    if (answer->feasible) {
        CardWishes wishes = wishesOf(options, context);
        wishes.supposed = std::move(supposed);
        pages = writePlanCard(*request, *answer, wishes, options.out);
        if (!pages)
            return fail(pages.error());
    }
    if (context.json) {
        print({{"feasible", answer->feasible},
               {"file", answer->feasible ? Json(options.out.string()) : Json(nullptr)},
               {"pages", *pages}});
    } else if (answer->feasible) {
        std::printf("%s: %zu stops on %s%s\n", options.out.c_str(), answer->stops.size(),
                    *pages == 1 ? "one page" : format("%d pages", *pages).c_str(), supposedly.c_str());
    } else {
        std::printf("No card. %s `plan` says what would do.\n",
                    said(shortfallSentence(request->route, *answer->shortfall)).c_str());
    }
    return {};
}

void addCardOptions(CLI::App& command, CardOptions& options)
{
    addPlanFlags(command, options.plan);
    required(addPath(command, "--out", options.out, "PDF file to write"));
    addText(command, "--event", options.event, "its name, on the card (the route file's)");
    addChoice(command, "--paper", options.paper, {"a5", "a4"}, "a5 or a4");
}

} // namespace

void addCardCommand(CLI::App& app, CliContext& context)
{
    addCommand<CardOptions>(app, context, "card",
                            "the plan on paper for the door pocket (PDF)", addCardOptions, runCard);
}

} // namespace undermark
