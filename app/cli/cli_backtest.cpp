// SPDX-License-Identifier: GPL-3.0-or-later
//
// backtest FILLS.csv: walks forward over a log and says how good the forecast
// of each tank's distance would have been.
#include "app/cli/cli_backtest_plot.h"
#include "app/cli/cli_command.h"
#include "app/cli/cli_corrections.h"
#include "app/cli/terminal_words.h"
#include "engine/consumption/backtest.h"
#include "engine/tables/fill_log.h"

#include <algorithm>
#include <iostream>
#include <memory>

namespace undermark {

namespace {

struct BacktestOptions {
    std::filesystem::path file;
    std::filesystem::path plot;
    bool withoutDays = false;
    CorrectionOptions corrections;
};

// The log as tanks. `row[i]` is the data row that ended tank i.
struct Log {
    std::vector<Interval> tanks;
    std::vector<long> row;
};

Log tanksOf(const Imported<Fill>& file, std::span<const Fill> corrected)
{
    std::vector<Fill> fills;
    std::vector<long> row;
    // Where the file gives the km since the fill before, its first row is a tank
    // too: it began with a full one.
    if (file.rows.front().sinceLast) {
        Fill begin = file.rows.front();
        begin.volume = Volume();
        begin.extent = FillExtent::full;
        fills.push_back(begin);
        row.push_back(0);
    }
    for (std::size_t i = 0; i < file.rows.size(); ++i) {
        fills.push_back(corrected[i]);
        row.push_back(long(i) + 1);
    }
    Log log{intervalsFrom(fills, {}), {}};
    for (const Interval& tank : log.tanks)
        log.row.push_back(row[tank.lastFill]);
    return log;
}

// Dates and odometers that go backward are implausible, not malformed.
void warnOf(const Imported<Fill>& file, const std::string& name)
{
    for (const std::string& column : file.unknownColumns)
        warn(format("%s: column '%s' is not known and was left out", name.c_str(), column.c_str()));
    for (std::size_t i = 1; i < file.rows.size(); ++i) {
        const Fill& fill = file.rows[i];
        const Fill& before = file.rows[i - 1];
        const std::string place = name + ":" + std::to_string(file.lines[i]);
        if (fill.time < before.time)
            warn(place + ": the date is before that of the row above");
        if (fill.odometer && before.odometer && *fill.odometer <= *before.odometer)
            warn(place + ": the odometer is not above that of the row before, the stretch is left out");
    }
}

ConsumptionModel freshModel()
{
    ConsumptionSetup setup;
    for (const char* name : kStandardModes)
        setup.modes.push_back({name, std::nullopt});
    return ConsumptionModel(std::move(setup));
}

Json perBand(const std::array<Distance, 3>& km)
{
    return {{"p50", km[0].km()}, {"p80", km[1].km()}, {"p90", km[2].km()}};
}

// Coverage of fewer outcomes than this says nothing.
constexpr std::size_t kLeastStretches = 10;

Json horizon(const BandScores& scores)
{
    if (scores.count < kLeastStretches)
        return nullptr;
    return {{"stretches", scores.count},
            {"p50", scores.coverage[0]},
            {"p80", scores.coverage[1]},
            {"p90", scores.coverage[2]}};
}

// What each horizon was judged on, or why it could not be.
Json horizonNotes(const Backtest& test)
{
    const auto note = [](const BandScores& scores, const std::string& what, const std::string& why) {
        return scores.count >= kLeastStretches
            ? "judged on " + what
            : "unknown: " + std::to_string(scores.count) + " in this log, "
                + std::to_string(kLeastStretches) + " are needed" + why;
    };
    return {{"tenth_of_a_tank",
             note(test.shortStretch, "stretches from full to full of at most a fifth of the usual litres",
                  "; only a tank filled up again after at most a fifth of it tells of so short a way")},
            {"one_tank", note(test.oneTank, "every tank from the eleventh", "")},
            {"three_tanks", note(test.threeTanks, "three tanks in a row from the log, overlapping", "")}};
}

Json forecastRow(const TankForecast& tank, long row)
{
    const auto& bands = tank.forecast.bands;
    return {{"row", row},
            {"km", tank.forecast.point.km()},
            {"lo50", bands[0].low.km()},
            {"hi50", bands[0].high.km()},
            {"lo80", bands[1].low.km()},
            {"hi80", bands[1].high.km()},
            {"lo90", bands[2].low.km()},
            {"hi90", bands[2].high.km()},
            {"p99_km", tank.forecast.p99().km()},
            {"p90_km", tank.forecast.p90().km()},
            {"p10_km", tank.forecast.p10().km()},
            {"actual_km", tank.actual.km()},
            {"flagged", tank.flagged}};
}

Json backtestJson(const Backtest& test, const Backtest& withoutDays, const Log& log, bool days)
{
    const auto& c = test.oneTank.coverage;
    Json json{{"tanks", test.tanks},
              {"forecast_from", days ? "litres, date, earlier tanks"
                                     : "litres, season, earlier tanks"},
              {"mape", test.meanError},
              {"mape_without_days", withoutDays.meanError},
              {"baseline_mape",
               {{"last", test.baseline.last},
                {"mean5", test.baseline.mean5},
                {"mean10", test.baseline.mean10},
                {"ewma", test.baseline.ewma}}},
              {"over_promised", test.overPromised},
              {"coverage", {{"p50", c[0]}, {"p80", c[1]}, {"p90", c[2]}}},
              {"kept", {{"p99", test.kept.p99}, {"p90", test.kept.p90}, {"p10", test.kept.p10}}},
              {"coverage_by_horizon",
               {{"tenth_of_a_tank", horizon(test.shortStretch)},
                {"one_tank", horizon(test.oneTank)},
                {"three_tanks", horizon(test.threeTanks)}}},
              {"horizon_notes", horizonNotes(test)},
              {"mean_width", perBand(test.oneTank.width)},
              {"interval_score", perBand(test.oneTank.intervalScore)}};
    if (test.forecasts.empty())   // too short a log: nothing is known, which is not 0
        for (const char* unknown : {"mape", "mape_without_days", "baseline_mape", "over_promised",
                                    "coverage", "kept", "mean_width", "interval_score"})
            json[unknown] = nullptr;
    Json flagged = Json::array();
    for (const FillFlag& flag : test.flags)
        flagged.push_back({{"row", log.row[flag.fill]},
                           {"cause", causeName(flag.cause)},
                           {"text", said(flag.text)},
                           {"probability", flag.probability}});
    Json forecasts = Json::array();
    for (const TankForecast& tank : test.forecasts)
        forecasts.push_back(forecastRow(tank, log.row[tank.tank]));
    json["flagged"] = std::move(flagged);
    json["forecasts"] = std::move(forecasts);
    return json;
}

void printBacktest(const Backtest& test, const Backtest& withoutDays, const Log& log)
{
    const auto percent = [](double share) { return fixed(100 * share) + " %"; };
    std::cout << format("%zu tanks, %zu forecast from the tanks before them\n", test.tanks,
                        test.forecasts.size());
    if (test.forecasts.empty()) {
        std::cout << "Forecasts begin with the eleventh tank: the log is too short for them.\n";
        return;
    }
    std::cout << "mean error           " << percent(test.meanError) << " (" << percent(withoutDays.meanError)
              << " if the days a tank lasted are not used)\n"
              << "  as the last tank   " << percent(test.baseline.last) << '\n'
              << "  mean of 5, of 10   " << percent(test.baseline.mean5) << ", "
              << percent(test.baseline.mean10) << '\n'
              << "  moving mean        " << percent(test.baseline.ewma) << '\n'
              << "promised > 10 % too far: " << percent(test.overPromised) << " of tanks\n\n"
              << "band   covered  mean width km  interval score km\n";
    for (std::size_t k = 0; k < kBandLevels.size(); ++k)
        std::cout << format("%3.0f %%  %6.1f %%  %13.0f  %17.0f\n", 100 * kBandLevels[k],
                            100 * test.oneTank.coverage[k], test.oneTank.width[k].km(),
                            test.oneTank.intervalScore[k].km());
    std::cout << format("went as far as was promised with 99 %%: %.1f %%, 90 %%: %.1f %%, 10 %%: %.1f %%\n",
                        100 * test.kept.p99, 100 * test.kept.p90, 100 * test.kept.p10);
    if (test.threeTanks.count >= kLeastStretches)
        std::cout << format("over three tanks the bands covered %.1f / %.1f / %.1f %%\n",
                            100 * test.threeTanks.coverage[0], 100 * test.threeTanks.coverage[1],
                            100 * test.threeTanks.coverage[2]);
    const BandScores& tenth = test.shortStretch;
    if (tenth.count >= kLeastStretches)
        std::cout << format("over about a tenth of a tank (%zu early fills) %.1f / %.1f / %.1f %%\n",
                            tenth.count, 100 * tenth.coverage[0], 100 * tenth.coverage[1],
                            100 * tenth.coverage[2]);
    else
        std::cout << "a tenth of a tank ahead: this log cannot tell, no tank was filled up so early "
                     "often enough\n";
    std::cout << format("\nflagged: %zu, held for a slip or for a change until you rule or the next tanks tell\n", test.flags.size());
    for (const FillFlag& flag : test.flags)
        std::cout << format("  row %ld, %s: ", log.row[flag.fill], causeName(flag.cause))
                  << said(flag.text) << '\n';
}

// Adds to the JSON, or prints, what the corrections changed.
void reportCorrections(const BacktestOptions& options, const Imported<Fill>& file,
                       const CorrectedFills& corrected,
                       const Backtest& shown, Json& json, bool print)
{
    if (!anyOf(options.corrections))
        return;
    const Log plain = tanksOf(file, file.rows);
    const Backtest without = backtest(plain.tanks, freshModel(), !options.withoutDays);
    json["corrections"] =
        correctionsJson(options.corrections, corrected,
                        [](std::size_t i) { return Json(i + 1); },
                        {{"mape", {{"without", without.meanError}, {"with", shown.meanError}}}});
    if (print)
        printCorrections(options.corrections, corrected,
                         format("mean error %.2f %% -> %.2f %%", 100 * without.meanError,
                                100 * shown.meanError));
}

Result<void> runBacktest(const BacktestOptions& options, const CliContext& context)
{
    const auto file = readFillLog(options.file);
    if (!file)
        return fail(file.error());
    warnOf(*file, options.file.string());
    const CorrectedFills corrected = correctFills(file->rows, options.corrections);
    const Log log = tanksOf(*file, corrected.fills);
    const Backtest withDays = backtest(log.tanks, freshModel(), true);
    const Backtest withoutDays = backtest(log.tanks, freshModel(), false);
    const Backtest& shown = options.withoutDays ? withoutDays : withDays;
    if (!options.plot.empty()) {
        std::vector<Instant> when;
        for (const Interval& tank : log.tanks)
            when.push_back(tank.end);
        if (const auto written = writeBacktestPlot(options.plot, shown, when); !written)
            return fail(written.error());
    }
    Json json = backtestJson(shown, withoutDays, log, !options.withoutDays);
    if (!context.json)
        printBacktest(shown, withoutDays, log);
    reportCorrections(options, *file, corrected, shown, json, !context.json);
    if (context.json)
        print(json);
    return {};
}

} // namespace

void addBacktestCommand(CLI::App& app, CliContext& context)
{
    auto options = std::make_shared<BacktestOptions>();
    CLI::App& command = addSubcommand(app, "backtest",
                                      "how good the forecast of each tank's distance would have been");
    required(addPath(command, "file", options->file,
                     "fills: date,litres,km (or odometer_km)[,full][,blend][,temperature_c]",
                     "FILLS.csv"));
    addPath(command, "--plot", options->plot, "draw forecast, band and outcome over time",
            "FILE.svg");
    addFlag(command, "--without-days", options->withoutDays,
            "do not use how many days a tank lasted");
    addCorrections(command, options->corrections);
    addOneOf(
        command, "--fuel", {"petrol", "diesel"},
        [options](const std::string& word) { options->corrections.fuel = *fromWord<FuelKind>(word); },
        "for --at-15c: petrol or diesel; default petrol");
    addJson(command, context);
    onRun(command, context, [options, &context] { return runBacktest(*options, context); });
}

} // namespace undermark
