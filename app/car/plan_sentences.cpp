// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/plan_sentences.h"

#include "engine/base/format.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr double kLeastShown = 1e-5;

} // namespace

std::string placeName(const RoutePoint& point)
{
    if (!point.name.empty())
        return point.name;
    return format("km %.1f", point.at.km());
}

Part riskPart(double risk)
{
    if (risk > 0 && risk < kLeastShown)
        return Sentence::part(Sentence::of("<%1", amount(kLeastShown * 100, 3)));
    return amount(risk * 100, Digits::significant(2));
}

std::string riskPercent(double risk)
{
    return english(Sentence::just(riskPart(risk)));
}

Sentence aimSentence(Aim aim)
{
    switch (aim) {
    case Aim::cost:
        return Sentence::of("Least cost.");
    case Aim::stops:
        return Sentence::of("Fewest stops.");
    case Aim::time:
        return Sentence::of("Least time.");
    case Aim::weight:
        break;
    }
    return Sentence::of("Lightest car.");
}

Sentence confidenceSentence(const PlanRequest& request)
{
    const auto percent = [](Probability p) { return amount(p.value() * 100, Digits::significant(6), "%"); };
    const auto timed = [](const RoutePoint& point) { return point.timed; };
    Sentence words = Sentence::of("%1 sure on each arrival.", percent(request.confidence));
    if (request.stageConfidence && std::ranges::any_of(request.route.points, timed))
        words = Sentence::of("%1 sure on each arrival, %2 at the end of a timed section.",
                             percent(request.confidence), percent(*request.stageConfidence));
    if (request.tripConfidence)
        words += Sentence::of("%1 sure of the whole way.", percent(*request.tripConfidence));
    return words;
}

Sentence startSentence(const Tank& tank)
{
    if (tank.start.sd == Volume())
        return Sentence::of("Starts with %1.", amount(tank.start.mean));
    return Sentence::of("Starts with %1, give or take %2.", amount(tank.start.mean),
                        amount(tank.start.sd));
}

Sentence stopCostSentence(const PlanRequest& request)
{
    if (request.stopCost == 0)
        return {};
    return Sentence::of("Each stop counts as %1 in the cost.", amount(request.stopCost, 2, request.currency));
}

Sentence stopsSentence(const Plan& plan)
{
    if (plan.stops.empty())
        return Sentence::of("No stop is needed.");
    if (plan.stops.size() == 1)
        return Sentence::of("1 stop, %1 to buy.", amount(plan.bought));
    return Sentence::of("%1 stops, %2 to buy.", counted(plan.stops.size()), amount(plan.bought));
}

Sentence riskSentence(const Plan& plan)
{
    return Sentence::of("Risk of running dry on the way: %1 %.", riskPart(plan.dryRisk));
}

Sentence shortfallSentence(const Route& route, const Shortfall& shortfall)
{
    const auto name = [&route](std::size_t point) {
        return placeName(route.points[std::min(point, route.points.size() - 1)]);
    };
    return Sentence::of("No plan: at this confidence the fuel lasts to %1, behind %2; it is %3 "
                        "short of %4.",
                        amount(shortfall.farthest, 1), name(shortfall.from),
                        amount(shortfall.missing), name(shortfall.towards));
}

Sentence cureSentence(const Cure& cure)
{
    switch (cure.kind) {
    case CureKind::startWithMore:
        return Sentence::of("start with %1 more", amount(cure.litres));
    case CureKind::carryInCans:
        return Sentence::of("carry %1 in own cans", amount(cure.litres));
    case CureKind::driveGentler:
        return Sentence::of("drive so that it burns %1 less", amount(cure.gentler.percent(), 1, "%"));
    case CureKind::anotherPump:
        return Sentence::of("a pump at %1 at the latest", amount(cure.latest, 0));
    }
    return {};
}

Sentence cureCaution(const Cure& cure)
{
    switch (cure.kind) {
    case CureKind::startWithMore:
        return Sentence::of("Engine off, no flame or spark near; to the first click at most.");
    case CureKind::carryInCans:
        return Sentence::of("Approved cans only, filled on the ground and never past their nominal "
                            "volume; poured in with the engine off and no ignition source near. "
                            "Local law and event rules come first.");
    case CureKind::driveGentler:
        return Sentence::of("Not to be relied on: what it burns is known only afterwards.");
    case CureKind::anotherPump:
        return Sentence::of("Make sure beforehand that it is open and sells this fuel.");
    }
    return {};
}

} // namespace undermark
