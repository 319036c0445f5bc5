// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli calibrate POINTS.csv: curve, findings, level at a signal, gauge table.
#include "app/cli_logbook.h"
#include "engine/calibration/calibrate.h"
#include "engine/calibration/gauge_table.h"
#include "engine/files/points_csv.h"

#include <iostream>
#include <set>

namespace undermark {

namespace {

struct Options {
    std::string file;
    std::optional<double> at, noise, zeroLitres, fullLitres;
    std::optional<int> tablePoints, decimals;
    std::string tableUnit = "percent", circuit, signalUnit;
    std::optional<double> supplyVolts, pullUpOhms, resolution;
    bool save = false;
};

struct Answer {
    PointsFile file;
    Sender sender;
    CalibrationFit fit;
    Volume zero;
    std::string zeroReason;
    std::optional<LevelReading> at;
    std::optional<GaugeTable> table;
};

constexpr int kDrawnPerPiece = 8;   // curve points between two knots

const std::map<std::string, CircuitKind> kCircuits{{"direct", CircuitKind::direct},
                                                   {"resistive", CircuitKind::resistive},
                                                   {"ratiometric", CircuitKind::ratiometric},
                                                   {"percent", CircuitKind::percent},
                                                   {"counts", CircuitKind::counts}};

const char* wordOf(LevelBound bound)
{
    return bound == LevelBound::exact ? "exact" : bound == LevelBound::atMost ? "at-most" : "at-least";
}

const char* wordOf(Severity severity)
{
    return severity == Severity::info ? "info" : severity == Severity::warning ? "warning" : "error";
}

// The flags, over what is known of the vehicle's sender.
Sender senderOf(const Options& options, Sender sender)
{
    if (!options.circuit.empty())
        sender.circuit = kCircuits.at(options.circuit);
    if (!options.signalUnit.empty())
        sender.unit = options.signalUnit;
    if (options.supplyVolts)
        sender.supplyVolts = options.supplyVolts;
    if (options.pullUpOhms)
        sender.pullUpOhms = options.pullUpOhms;
    if (options.resolution)
        sender.resolution = Signal::of(*options.resolution);
    return sender;
}

// Zero mark where the user names none: the base of a drained, base, full
// calibration, else a tenth of the full litres (common practice, no source).
void chooseZero(const Options& options, Answer& answer)
{
    std::set<double> levels;
    for (const CalibrationPoint& point : answer.file.points)
        levels.insert(point.added.litres());
    if (options.zeroLitres) {
        answer.zero = Volume::fromLitres(*options.zeroLitres);
        answer.zeroReason = "as given";
    } else if (levels.size() == 3) {
        answer.zero = Volume::fromLitres(*std::next(levels.begin()));
        answer.zeroReason = "the base poured after draining";
    } else {
        answer.zero = Volume::fromLitres(0.1 * *levels.rbegin());
        answer.zeroReason = "a tenth of the full litres";
    }
}

Result<void> needCurve(const CalibrationFit& fit)
{
    if (fit.curve)
        return {};
    std::string why = "these readings allow no curve";
    if (!fit.findings.empty())
        why += ": " + fit.findings.front().text;
    return failInput(why);
}

Result<Answer> compute(const Options& options, const Sender& sender)
{
    auto file = readPoints(options.file);
    if (!file)
        return fail(file.error());
    Answer answer{std::move(*file), sender, {}, {}, {}, {}, {}};
    auto fit = fitCalibration(answer.file.points, sender, {.loaded = answer.file.loaded});
    if (!fit)
        return fail(fit.error());
    answer.fit = std::move(*fit);
    chooseZero(options, answer);
    if (!answer.fit.curve)
        return answer;
    if (options.at) {
        const auto noise = options.noise ? std::optional(Signal::of(*options.noise)) : std::nullopt;
        answer.at = answer.fit.curve->read(Signal::of(*options.at), noise);
    }
    if (options.tablePoints) {
        GaugeTableRequest request;
        request.points = *options.tablePoints;
        request.unit = options.tableUnit == "litres" ? GaugeUnit::litres : GaugeUnit::percent;
        request.decimals = options.decimals.value_or(request.unit == GaugeUnit::litres ? 1 : 0);
        request.zeroMark = answer.zero;
        request.signalStep = sender.resolution;
        if (options.fullLitres)
            request.full = Volume::fromLitres(*options.fullLitres);
        auto table = gaugeTable(*answer.fit.curve, request);
        if (!table)
            return fail(table.error());
        answer.table = std::move(*table);
    }
    return answer;
}

Json curveJson(const LevelCurve& curve)
{
    Json points = Json::array();
    const auto add = [&points](Signal signal, Volume added, Volume sd) {
        points.push_back({{"signal", signal.value()}, {"litres", added.litres()}, {"sd", sd.litres()}});
    };
    for (std::size_t i = 0; i < curve.knots().size(); ++i) {
        const CurveKnot& knot = curve.knots()[i];
        add(knot.signal, knot.added, knot.sd);
        for (int k = 1; k < kDrawnPerPiece && i + 1 < curve.knots().size(); ++k) {
            const Signal between = knot.signal
                + (curve.knots()[i + 1].signal - knot.signal) * (double(k) / kDrawnPerPiece);
            const LevelReading read = curve.read(between);
            add(between, read.added.mean, read.added.sd);
        }
    }
    return points;
}

void addCurveJson(const CalibrationFit& fit, Json& json)
{
    const auto litresOr = [](const std::optional<Volume>& v) { return v ? Json(v->litres()) : Json(); };
    json["direction"] = !fit.direction ? Json()
        : Json(*fit.direction == SignalDirection::rising ? "rising" : "falling");
    json["curve"] = fit.curve ? curveJson(*fit.curve) : Json::array();
    json["residual_sd_l"] = litresOr(fit.residualSd);
    json["floor_signal"] = fit.curve ? Json(fit.curve->lowest().signal.value()) : Json();
    json["ceiling_signal"] = fit.curve ? Json(fit.curve->highest().signal.value()) : Json();
    json["unseen_l"] = {
        {"bottom", fit.curve ? Json(fit.curve->lowest().width.litres()) : Json()},
        {"top", fit.curve ? Json(fit.curve->highest().width.litres()) : Json()}};
    json["reads_high_by_l"] = fit.readsHighBy.litres();
    json["uncertainty_l"] = {{"pour", fit.uncertainty.pour.litres()},
                             {"resolution", fit.uncertainty.resolution.litres()},
                             {"readings", fit.uncertainty.readings.litres()},
                             {"residual", litresOr(fit.uncertainty.residual)}};
    json["findings"] = Json::array();
    for (const Finding& finding : fit.findings)
        json["findings"].push_back({{"code", finding.code},
                                    {"severity", wordOf(finding.severity)},
                                    {"text", finding.text}});
}

void printJson(const Answer& answer, const Options& options)
{
    Json json;
    addCurveJson(answer.fit, json);
    json["zero_at_l"] = answer.zero.litres();
    json["zero_reason"] = answer.zeroReason;
    if (answer.at)
        json["at"] = {{"signal", *options.at},
                      {"litres", answer.at->added.mean.litres()},
                      {"sd", answer.at->added.sd.litres()},
                      {"bound", wordOf(answer.at->bound)}};
    if (answer.table) {
        json["table"] = Json::array();
        for (const GaugeTableRow& row : answer.table->rows)
            json["table"].push_back({{"signal", row.signal.value()}, {"value", row.value}});
        json["table_zero_at_l"] = answer.table->zero.litres();
        json["table_full_at_l"] = answer.table->full.litres();
        json["table_interpolation_error_l"] = answer.table->interpolationError.litres();
        json["table_rounding_error_l"] = answer.table->roundingError.litres();
        json["table_worst_error_l"] = answer.table->worstError.litres();
    }
    print(json);
}

void printCurve(const CalibrationFit& fit, const std::string& unit)
{
    std::cout << "Signal " << (*fit.direction == SignalDirection::rising ? "rises" : "falls")
              << " as litres rise. Litres are counted from drained.\n\n"
              << format("%12s %10s %8s\n", unit.empty() ? "signal" : ("signal, " + unit).c_str(),
                        "litres", "+-");
    for (const CurveKnot& knot : fit.curve->knots())
        std::cout << format("%12.4g %10.2f %8.2f\n", knot.signal.value(), knot.added.litres(),
                            knot.sd.litres());
    std::cout << '\n';
    if (fit.residualSd)
        std::cout << "A point misses the curve drawn without it by " << fixed(fit.residualSd->litres(), 2)
                  << " L (root mean square).\n";
    if (fit.readsHighBy > Volume())
        std::cout << "While driving the level may be lower than read by "
                  << fixed(fit.readsHighBy.litres(), 2) << " L.\n";
}

void printTable(const GaugeTable& table, const Options& options)
{
    const int decimals = options.decimals.value_or(options.tableUnit == "litres" ? 1 : 0);
    std::cout << format("\nGauge table, zero at %.2f L, full at %.2f L since drained\n%12s %10s\n",
                        table.zero.litres(), table.full.litres(), "signal",
                        options.tableUnit == "litres" ? "L" : "%");
    for (const GaugeTableRow& row : table.rows)
        std::cout << format("%12.5g %10.*f\n", row.signal.value(), decimals, row.value);
    std::cout << format("Worst error %.2f L: straight lines %.2f L, rounding %.2f L.\n",
                        table.worstError.litres(), table.interpolationError.litres(),
                        table.roundingError.litres());
}

void printText(const Answer& answer, const Options& options)
{
    for (const Finding& finding : answer.fit.findings)
        std::cout << format("%-8s%s: %s\n", wordOf(finding.severity), finding.code.c_str(),
                            finding.text.c_str());
    if (!answer.fit.findings.empty())
        std::cout << '\n';
    if (!answer.fit.curve) {
        std::cout << "No curve can be made from these readings.\n";
        return;
    }
    printCurve(answer.fit, answer.sender.unit);
    std::cout << format("Zero mark at %.2f L: %s.\n", answer.zero.litres(), answer.zeroReason.c_str());
    if (answer.at)
        std::cout << format("At signal %.6g: %s%.2f L since drained, +- %.2f L (estimate).\n", *options.at,
                            answer.at->bound == LevelBound::exact ? ""
                                : answer.at->bound == LevelBound::atMost ? "at most " : "at least ",
                            answer.at->added.mean.litres(), answer.at->added.sd.litres());
    if (answer.table)
        printTable(*answer.table, options);
}

// Keeps the points as they were read, and the sender where flags changed it.
Result<void> save(OpenVehicle& car, const Answer& answer)
{
    Vehicle vehicle = car.vehicle.value;
    if (!(vehicle.sender == answer.sender)) {
        vehicle.sender = answer.sender;
        if (const auto done = car.logbook.supersede(car.vehicle.id, vehicle, now()); !done)
            return done;
    }
    const Calibration calibration{now(), answer.file.points, answer.zero};
    if (const auto id = car.logbook.add(car.vehicle.id, calibration, now()); !id)
        return fail(id.error());
    return {};
}

Result<void> run(const Options& options, CliContext& context)
{
    Sender known;
    known.unit.clear();
    std::optional<OpenVehicle> car;
    if (options.save || !context.vehicle.empty()) {
        auto open = openVehicle(context, options.save ? OpenMode::readWrite : OpenMode::readOnly);
        if (!open)
            return fail(open.error());
        known = open->vehicle.value.sender;
        car = std::move(*open);
    }
    const Result<Answer> answer = compute(options, senderOf(options, known));
    if (!answer)
        return fail(answer.error());
    for (const std::string& text : answer->file.warnings)
        warn(text);
    if (options.save) {
        if (const auto possible = needCurve(answer->fit); !possible)
            return possible;
        if (const auto saved = save(*car, *answer); !saved)
            return saved;
    }
    if (context.json)
        printJson(*answer, options);
    else
        printText(*answer, options);
    return {};
}

void addFlags(CLI::App& command, Options& options)
{
    command.add_option("points", options.file, "CSV: added_l,signal[,signal_sd][,readings][,load]")
        ->required()->type_name("POINTS.csv");
    addNumber(command, "--at", options.at, kAnyNumber, "litres at this signal");
    addNumber(command, "--at-sd", options.noise, kNotNegative, "noise of that signal");
    addCount(command, "--table", options.tablePoints, {2, 100, "2 to 100 points"},
             "gauge table of so many points");
    command.add_option("--unit", options.tableUnit, "of the gauge table")
        ->check(CLI::IsMember({"percent", "litres"}));
    addCount(command, "--decimals", options.decimals, {0, 6, "0 to 6 decimals"}, "of the gauge table");
    addNumber(command, "--zero-at-l", options.zeroLitres, kNotNegative,
              "litres since drained that are shown as 0");
    addNumber(command, "--full-at-l", options.fullLitres, kPositive,
              "litres since drained that are shown as full");
    command.add_option("--circuit", options.circuit, "kind of the sender's circuit; the vehicle's with --save or --vehicle, else direct")
        ->check(CLI::IsMember({"direct", "resistive", "ratiometric", "percent", "counts"}));
    command.add_option("--signal-unit", options.signalUnit, "V, mV, ohm, %, ...");
    addNumber(command, "--supply-v", options.supplyVolts, kPositive, "supply of the sender, V");
    addNumber(command, "--pull-up-ohm", options.pullUpOhms, kPositive, "pull-up resistor, ohm");
    addNumber(command, "--signal-step", options.resolution, kPositive,
              "one step of the display; the last decimal in use if not given");
    command.add_flag("--save", options.save, "keep this calibration in the logbook");
}

} // namespace

void addCalibrateCommand(CLI::App& app, CliContext& context)
{
    auto options = std::make_shared<Options>();
    CLI::App* command = app.add_subcommand("calibrate", "level curve from readings and poured litres");
    addFlags(*command, *options);
    addJson(*command, context);
    onRun(*command, context, [options, &context] { return run(*options, context); });
}

} // namespace undermark
