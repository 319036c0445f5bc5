// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli reserve: how far the hidden reserve goes, and on what evidence.
#include "app/cli/cli_range.h"
#include "app/cli/cli_tank.h"
#include "app/cli/terminal_words.h"
#include "engine/outlook/outlook.h"
#include "engine/tank/next_proof.h"

#include <iostream>

namespace undermark {

namespace {

const char* proofWord(EvidenceKind kind)
{
    switch (kind) {
    case EvidenceKind::fill: return "fill";
    case EvidenceKind::drained: return "drained";
    case EvidenceKind::leftBehind: return "left-behind";
    case EvidenceKind::base: return "base";
    case EvidenceKind::stalled: return "stalled";
    case EvidenceKind::pastZero: return "past-zero";
    }
    return "";
}

// Of a car of several tanks, by tank.
Json tanksJson(const CarKnowledge& car)
{
    Json tanks = Json::array();
    const auto add = [&](const Json& name, const CarKnowledge& tank, bool inUse) {
        const Estimate<Volume> reserve = tank.reserve.reserve();
        tanks.push_back({{"tank", name}, {"in_use", inUse},
                         {"reserve_l", estimateJson(reserve.mean.litres(), reserve.sd.litres())}});
    };
    add(Json(), car, true);
    for (std::size_t i = 0; i < car.further.size(); ++i)
        add(car.log.tanks[i].value.name, car.further[i], car.further[i].inUse.has_value());
    return tanks;
}

void printTanks(const CarKnowledge& car)
{
    if (car.further.empty())
        return;
    const auto line = [](const std::string& name, const CarKnowledge& tank, const char* besides) {
        const Estimate<Volume> reserve = tank.reserve.reserve();
        std::cout << format("  %-24s %.2f ± %.2f L%s\n", name.c_str(), reserve.mean.litres(), reserve.sd.litres(), besides);
    };
    line("the vehicle's own tank", car, "");
    for (std::size_t i = 0; i < car.further.size(); ++i)
        line(car.log.tanks[i].value.name, car.further[i],
             car.further[i].inUse ? "" : ", not counted before its first fill");
}

Json reserveJson(const CarKnowledge& car, const Distances& past, const std::optional<NextProof>& next)
{
    const Estimate<Volume> reserve = car.hiddenReserve();
    Json json{{"reserve_l", estimateJson(reserve.mean.litres(), reserve.sd.litres())},
              {"past_zero_km", distancesJson(past)},
              {"evidence", Json::array()}};
    for (const EvidenceItem& item : car.reserve.evidence())
        json["evidence"].push_back(
            {{"kind", proofWord(item.kind)},
             {"date", item.time ? dateJson(*item.time) : Json()},
             {"text", said(item.text)},
             {"before_l", estimateJson(item.before.mean.litres(), item.before.sd.litres())},
             {"after_l", estimateJson(item.after.mean.litres(), item.after.sd.litres())},
             {"surprise_sd", item.surprise}});
    if (!car.further.empty())
        json["tanks"] = tanksJson(car);
    if (next)
        json["next_proof"] = {{"text", said(next->text)},
                              {"caution", said(next->caution)},
                              {"sd_now_l", next->sdNow.litres()},
                              {"sd_after_l", next->sdAfter.litres()}};
    return json;
}

// What the reserve rests on before any proof: only what is there.
std::string withoutEvidence(const CarKnowledge& car)
{
    const Vehicle& vehicle = car.vehicle();
    const bool stated = vehicle.leftBehind || vehicle.unusable;
    const std::string under = stated ? "what was stated of the litres left behind and unusable"
                                     : "what is usually left behind";
    if (car.gauge.isKnown())
        return "Evidence: the calibration and " + under + "; no proof yet.\n";
    if (vehicle.zeroMark)
        return "Evidence: none yet but the zero mark as it was stated.\n";
    return "Evidence: none yet. This is what is usual of a tank of this size.\n";
}

} // namespace

Result<void> printReserve(const CarKnowledge& car, const std::string& mode, bool json)
{
    const Result<Distances> past = pastZero(car, mode);
    if (!past)
        return fail(past.error());
    const auto next = suggestNextProof(car.reserve);
    if (json) {
        print(reserveJson(car, *past, next));
        return {};
    }
    const Estimate<Volume> reserve = car.hiddenReserve();
    std::cout << format("%s km past the zero mark are sure (99 %%), %s even, %s hopeful.\n",
                        kmDown(past->p99).c_str(), kmDown(past->p50).c_str(), kmDown(past->p10).c_str())
              << format("Hidden reserve: %.2f ± %.2f L (estimate).\n", reserve.mean.litres(),
                        reserve.sd.litres());
    printTanks(car);
    std::cout << (car.reserve.evidence().empty() ? withoutEvidence(car) : "Evidence:\n");
    for (const EvidenceItem& item : car.reserve.evidence())
        std::cout << format("  %-17s %-44s %5.2f ± %4.2f -> %5.2f ± %4.2f L\n",
                            item.time ? dateText(*item.time).c_str() : "",
                            said(item.text).c_str(), item.before.mean.litres(),
                            item.before.sd.litres(), item.after.mean.litres(),
                            item.after.sd.litres());
    if (next)
        std::cout << format("Next proof: %s. It would leave ± %.2f L.\n  Caution: %s\n",
                            said(next->text).c_str(), next->sdAfter.litres(),
                            said(next->caution).c_str());
    std::cout << "Never test the reserve on a public road.\n";
    return {};
}

namespace {

struct ReserveOptions {
    std::string mode, tank;
};

Result<void> runReserve(const ReserveOptions& o, const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context);
    if (!car)
        return fail(car.error());
    if (o.tank.empty())
        return printReserve(*car, o.mode, context.json);
    const Result<CarKnowledge> tank = carOfTank(*car, o.tank);
    return tank ? printReserve(*tank, o.mode, context.json) : fail(tank.error());
}

} // namespace

void addReserveCommand(CLI::App& app, CliContext& context)
{
    addCommand<ReserveOptions>(
        app, context, "reserve", "how far the hidden reserve goes, and on what evidence",
        [](CLI::App& reserve, ReserveOptions& options) {
            addText(reserve, "--mode", options.mode, "driving mode; default the usual mix");
            addText(reserve, "--tank", options.tank, "that of one further tank; default all tanks together", "NAME");
        },
        runReserve);
}

} // namespace undermark
