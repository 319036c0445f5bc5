// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli rates: consumption by driving mode with its interval, how the car
// does just now, what the last fills taught, and how many more would narrow it.
#include "app/cli/cli_corrections.h"
#include "app/cli/cli_logbook.h"
#include "engine/consumption/displayed_scale.h"
#include "engine/consumption/rate_report.h"

#include <iostream>
#include <memory>

namespace undermark {

namespace {

struct RatesOptions {
    std::optional<double> width;   // L/100 km
    CorrectionOptions corrections;
};

double usualRate(const CarKnowledge& car)
{
    return car.consumption.model.forecast({}, car.now()).rate.mean.litresPer100Km();
}

std::optional<DisplayedScale> displayedScale(const CarKnowledge& car)
{
    return learnDisplayedScale(car.corrections.fills, car.consumption.intervals,
                               car.consumption.beliefs);
}

Json lineJson(const RateLine& line, Fraction trend)
{
    return {{"mode", line.mode.empty() ? Json() : Json(line.mode)},
            {"rate_l_per_100km",
             estimateJson(line.rate.mean.litresPer100Km(), line.rate.sd.litresPer100Km())},
            {"now_l_per_100km", line.rate.mean.litresPer100Km() * (1 + trend.ratio())},
            {"low90", line.low90.litresPer100Km()},
            {"high90", line.high90.litresPer100Km()},
            {"share", line.share ? Json(line.share->ratio()) : Json()},
            {"tanks_to_narrow", line.tanksToNarrow ? Json(*line.tanksToNarrow) : Json()}};
}

Json lessonJson(const CarKnowledge& car, const Lesson& lesson)
{
    const Entry<Fill>& fill = car.log.fills[lesson.lastFill];
    return {{"id", fill.id.uuid},
            {"date", dateJson(fill.value.time)},
            {"expected_l", lesson.expected.litres()},
            {"burnt_l", lesson.burnt.litres()},
            {"usual_before", lesson.usualBefore.litresPer100Km()},
            {"usual_after", lesson.usualAfter.litresPer100Km()},
            {"learnt", lesson.learnt}};
}

Json scaleJson(const std::optional<DisplayedScale>& scale)
{
    if (!scale)
        return nullptr;
    return {{"factor", scale->factor},
            {"relative_sd", scale->relativeSd},
            {"next_relative_sd", scale->nextRelativeSd},
            {"readings", scale->readings}};
}

Json ratesJson(const RateReport& report, const CarKnowledge& car)
{
    Json json{{"usual", lineJson(report.usual, report.trend)}, {"modes", Json::array()}};
    for (const RateLine& line : report.modes)
        json["modes"].push_back(lineJson(line, report.trend));
    json["idle_l_per_h"] = estimateJson(report.idle.mean.litresPerHour(), report.idle.sd.litresPerHour());
    json["cold_start_l"] = estimateJson(report.coldStart.mean.litres(), report.coldStart.sd.litres());
    json["climb_l_per_km"] = estimateJson(report.climb.mean.litresPerKm(), report.climb.sd.litresPerKm());
    json["usual_climb_m_per_km"] = 1000 * report.usualClimb;
    json["trend"] = report.trend.ratio();
    json["trend_90"] = {{"low", report.trendLow90.ratio()}, {"high", report.trendHigh90.ratio()}};
    json["displayed_scale"] = scaleJson(displayedScale(car));
    json["lessons"] = Json::array();
    for (const Lesson& lesson : report.lessons)
        json["lessons"].push_back(lessonJson(car, lesson));
    return json;
}

void printLine(const RateLine& line)
{
    const std::string share = line.share ? fixed(line.share->percent(), 0) + " %" : "";
    const std::string tanks = line.tanksToNarrow ? std::to_string(*line.tanksToNarrow) : "over 200";
    std::cout << format("%-16s %8.2f   %6.2f to %-6.2f %7s   %s\n",
                        line.mode.empty() ? "usual mix" : line.mode.c_str(),
                        line.rate.mean.litresPer100Km(), line.low90.litresPer100Km(),
                        line.high90.litresPer100Km(), share.c_str(), tanks.c_str());
}

void printRates(const RateReport& report, const CarKnowledge& car, double width)
{
    std::cout << format("%-16s %8s   %-16s %7s   more tanks to narrow it to %.2g\n", "L/100 km", "rate",
                        "90 % interval", "share", width);
    printLine(report.usual);
    for (const RateLine& line : report.modes)
        printLine(line);
    std::cout << format("\nidling %.2f ± %.2f L/h, a cold start %.2f ± %.2f L, 100 m of height %.2f ± %.2f L\n"
                        "these are of the long run; just now the car burns %+.1f %% (90 %%: %+.0f to %+.0f %%)\n",
                        report.idle.mean.litresPerHour(), report.idle.sd.litresPerHour(),
                        report.coldStart.mean.litres(), report.coldStart.sd.litres(),
                        0.1 * report.climb.mean.litresPerKm(), 0.1 * report.climb.sd.litresPerKm(),
                        report.trend.percent(), report.trendLow90.percent(),
                        report.trendHigh90.percent());
    if (const auto scale = displayedScale(car))
        std::cout << format("the car's own figure: the pump says %.3f ± %.3f times as much (%zu fills); "
                            "one more figure is good to %.1f %%\n",
                            scale->factor, scale->factor * scale->relativeSd, scale->readings,
                            100 * scale->nextRelativeSd);
    if (!report.lessons.empty())
        std::cout << "\nwhat the last fills taught\n";
    for (const Lesson& lesson : report.lessons)
        std::cout << format("  %s  %.1f L, expected %.1f L: usual mix %.2f -> %.2f L/100 km%s\n",
                            dateText(car.log.fills[lesson.lastFill].value.time).c_str(),
                            lesson.burnt.litres(), lesson.expected.litres(),
                            lesson.usualBefore.litresPer100Km(), lesson.usualAfter.litresPer100Km(),
                            lesson.learnt ? "" : " (doubtful)");
}

Result<void> runRates(const RatesOptions& o, const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context, o.corrections);
    if (!car)
        return fail(car.error());
    RateReportOptions options;
    options.wantedWidth = Consumption::fromLitresPer100Km(o.width.value_or(1));
    options.now = car->now();
    const Screened& known = car->consumption;
    const RateReport report = reportRates(known.intervals, known.beliefs,
                                          ConsumptionModel(known.model.setup()), options);
    Json json = ratesJson(report, *car);
    if (!context.json)
        printRates(report, *car, o.width.value_or(1));
    if (anyOf(o.corrections)) {
        const Result<CarKnowledge> plain = learnVehicle(context);
        if (!plain)
            return fail(plain.error());
        const double without = usualRate(*plain);
        const double with = usualRate(*car);
        json["corrections"] = correctionsJson(
            o.corrections, car->corrections,
            [&car](std::size_t i) { return Json(car->log.fills[i].id.uuid); },
            {{"usual_l_per_100km", {{"without", without}, {"with", with}}}});
        if (!context.json)
            printCorrections(o.corrections, car->corrections,
                             format("usual mix %.3f -> %.3f L/100 km", without, with));
    }
    if (context.json)
        print(json);
    return {};
}

} // namespace

void addRatesCommand(CLI::App& app, CliContext& context)
{
    CLI::App& rates = addSubcommand(app, "rates",
                                    "consumption by driving mode, and what the last fills taught");
    auto o = std::make_shared<RatesOptions>();
    addNumber(rates, "--width", o->width, kPositive,
              "wanted width of the 90 % interval, L/100 km; default 1");
    addCorrections(rates, o->corrections);
    addJson(rates, context);
    onRun(rates, context, [o, &context] { return runRates(*o, context); });
}

} // namespace undermark
