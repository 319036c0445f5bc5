// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli demo: the demo car's logbook, made anew, and what it answers.
#include "app/car/car.h"
#include "app/car/demo_logbook.h"
#include "app/car/logbook_place.h"
#include "app/cli/cli_plan.h"
#include "app/cli/cli_range.h"
#include "app/cli/terminal_words.h"

#include <iostream>

namespace undermark {

namespace {

Result<void> printDemoRange(const CarKnowledge& car)
{
    Question question;
    question.mode = kOpenRoad;
    const Result<Outlook> now = outlook(car, question);
    if (!now)
        return fail(now.error());
    std::cout << "How far, on the open road (" << said(now->why) << ")\n";
    printRange(distances(now->toZero), distances(now->toDry));
    std::cout << format("%.1f ± %.1f L above the zero mark, %.2f ± %.2f L/100 km\n\n",
                        now->aboveZero.mean.litres(), now->aboveZero.sd.litres(),
                        now->rate.mean.litresPer100Km(), now->rate.sd.litresPer100Km());
    return {};
}

Result<void> printDemoPlan(const CarKnowledge& car)
{
    const Result<TankAndRate> both = tankFromCar(car);
    if (!both)
        return fail(both.error());
    const PlanRequest request = planRequest(demoRoute(), *both);
    const Result<Plan> answer = plan(request);
    if (!answer)
        return fail(answer.error());
    std::cout << "\nA day of the Seven Weirs Rally, at least cost\n";
    if (answer->feasible)
        printPlan(request, *answer);
    else
        std::cout << "no plan at this confidence\n";
    return {};
}

Result<void> runDemo(const CliContext& context)
{
    const bool own = context.logbook != defaultLogbook();
    const std::filesystem::path file = own ? context.logbook : demoLogbook();
    if (const auto made = makeDemoLogbook(file, own ? Existing::refuse : Existing::replace); !made)
        return fail(made.error());
    auto opened = Car::open(file, OpenMode::readOnly, demoDay);
    const auto known = opened ? opened->knowledge() : fail(opened.error());
    if (!known)
        return fail(known.error());
    const CarKnowledge& car = **known;
    std::cout << car.vehicle().name << ", an invented car: " << car.log.fills.size() << " fills, "
              << car.log.trips.size() << " trips\n\n";
    if (const auto done = printDemoRange(car); !done)
        return done;
    if (const auto done = printReserve(car, kOpenRoad, false); !done)
        return done;
    return printDemoPlan(car);
}

} // namespace

void addDemoCommand(CLI::App& app, CliContext& context)
{
    CLI::App& demo = addSubcommand(app, "demo",
                                   "make the demo car's logbook and show what it answers");
    onRun(demo, context, [&context] { return runDemo(context); });
}

} // namespace undermark
