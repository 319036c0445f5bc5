// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_calibrate.h"

#include "app/cli/cli_command.h"
#include "app/cli/terminal_words.h"

#include <iostream>

namespace undermark {

namespace {

constexpr int kDrawnPerPiece = 8;   // curve points between two knots

Json curveJson(const LevelCurve& curve)
{
    Json points = Json::array();
    for (const auto& [signal, added] : curve.drawn(kDrawnPerPiece))
        points.push_back({{"signal", signal.value()}, {"litres", added.mean.litres()}, {"sd", added.sd.litres()}});
    return points;
}

const char* directionOf(const LevelCurve& curve) { return curve.rising() ? "rising" : "falling"; }

void addFindingsJson(const Gauge& gauge, Json& json)
{
    json["findings"] = Json::array();
    const auto add = [&json](const char* code, Severity severity, const std::string& text) {
        json["findings"].push_back({{"code", code}, {"severity", wordOf(severity)}, {"text", text}});
    };
    if (gauge.isPrior())
        add("prior", Severity::info, kPriorText);
    for (const Finding& finding : gauge.findings())
        add(finding.code.c_str(), finding.severity, said(finding.text));
}

void addCurveJson(const Gauge& gauge, Json& json)
{
    const auto litresOr = [](const std::optional<Volume>& v) { return v ? Json(v->litres()) : Json(); };
    const LevelCurve* curve = gauge.curve();
    json["direction"] = curve ? Json(directionOf(*curve)) : Json();
    json["curve"] = curve ? curveJson(*curve) : Json::array();
    json["residual_sd_l"] = litresOr(gauge.residualSd());
    json["floor_signal"] = curve ? Json(curve->lowest().signal.value()) : Json();
    json["ceiling_signal"] = curve ? Json(curve->highest().signal.value()) : Json();
    json["unseen_l"] = {{"bottom", curve ? Json(curve->lowest().width.litres()) : Json()},
                        {"top", curve ? Json(curve->highest().width.litres()) : Json()}};
    json["reads_high_by_l"] = gauge.readsHigh().mean.litres();
    json["reads_high_sd_l"] = gauge.readsHigh().sd.litres();
    json["uncertainty_l"] = {{"pour", gauge.uncertainty().pour.litres()},
                             {"resolution", gauge.uncertainty().resolution.litres()},
                             {"readings", gauge.uncertainty().readings.litres()},
                             {"residual", litresOr(gauge.uncertainty().residual)},
                             {"shape", gauge.uncertainty().shape.litres()},
                             {"unseen_stop", gauge.uncertainty().unseenStop.litres()}};
    if (gauge.isPrior())
        json["uncertainty_l"] = nullptr;   // nothing was poured or read
    addFindingsJson(gauge, json);
}

// Along the pours: both signals and what they read as. Each lobe's own curve apart.
void addLobesJson(const Gauge& gauge, Json& json)
{
    const LevelCurve& first = gauge.lobes().front();
    json["direction"] = directionOf(first);
    json["curve"] = Json::array();
    for (const CalibrationPoint& point : gauge.points()) {
        const LevelReading read = *gauge.read({point.signal, point.signal2});
        json["curve"].push_back({{"signal", point.signal.value()},
                                 {"signal2", point.signal2->value()},
                                 {"litres", read.added.mean.litres()},
                                 {"sd", read.added.sd.litres()}});
    }
    json["residual_sd_l"] = nullptr;
    json["floor_signal"] = first.lowest().signal.value();
    json["ceiling_signal"] = first.highest().signal.value();
    addFindingsJson(gauge, json);
    json["lobes"] = Json::array();
    for (const LevelCurve& lobe : gauge.lobes())
        json["lobes"].push_back({{"direction", directionOf(lobe)},
                                 {"curve", curveJson(lobe)},
                                 {"floor_signal", lobe.lowest().signal.value()},
                                 {"ceiling_signal", lobe.highest().signal.value()}});
}

void printLobes(const Gauge& gauge)
{
    std::cout << "Saddle tank, one sender per lobe; each pour split by which signals moved.\n\n"
              << format("%12s %12s %10s %8s\n", "signal", "signal2", "litres", "+-");
    for (const CalibrationPoint& point : gauge.points()) {
        const LevelReading read = *gauge.read({point.signal, point.signal2});
        std::cout << format("%12.4g %12.4g %10.2f %8.2f\n", point.signal.value(),
                            point.signal2->value(), read.added.mean.litres(),
                            read.added.sd.litres());
    }
    std::cout << format("\nFirst lobe %.2f L, second %.2f L as poured.\n",
                        gauge.lobes()[0].highest().added.litres(),
                        gauge.lobes()[1].highest().added.litres());
}

std::string signalText(const CalibrateOptions& options)
{
    return format("%.6g", *options.at) + (options.at2 ? format(" and %.6g", *options.at2) : "");
}

Json verifiedJson(const Verification& verified)
{
    Json levels = Json::array();
    for (const VerifiedLevel& level : verified.levels) {
        Json row{{"signal", level.point.signal.value()},
                 {"measured_l", level.point.added.litres()},
                 {"predicted_l", {{"mean", level.predicted.added.mean.litres()},
                                  {"sd", level.predicted.added.sd.litres()}}},
                 {"bound", wordOf(level.predicted.bound)},
                 {"deviations", level.deviations},
                 {"agrees", level.agrees}};
        if (level.point.signal2)
            row["signal2"] = level.point.signal2->value();
        levels.push_back(std::move(row));
    }
    return {{"passed", verified.passed()},
            {"confidence", verified.confidence.value()},
            {"allowed_deviations", verified.allowed},
            {"levels", std::move(levels)}};
}

void printVerified(const Verification& verified)
{
    std::cout << format("\nVerified at %s, on the way down:\n%12s %12s  %17s\n",
                        numberOf(verified.levels.size(), "level").c_str(), "signal",
                        "measured, L", "by the curve, L");
    for (const VerifiedLevel& level : verified.levels)
        std::cout << format("%12.4g %12.2f  %9.2f +- %4.2f  %s\n", level.point.signal.value(),
                            level.point.added.litres(), level.predicted.added.mean.litres(),
                            level.predicted.added.sd.litres(),
                            level.agrees ? "agrees" : "DOES NOT AGREE");
    std::cout << format("%s at %.0f %% confidence: each level within %.2f standard deviations.\n",
                        verified.passed() ? "Passed" : "NOT PASSED",
                        verified.confidence.value() * 100.0, verified.allowed);
}

} // namespace

void printCalibrationJson(const CalibrateAnswer& answer, const CalibrateOptions& options)
{
    Json json;
    if (answer.gauge.hasTwoSignals())
        addLobesJson(answer.gauge, json);
    else
        addCurveJson(answer.gauge, json);
    json["prior"] = answer.gauge.isPrior();
    if (answer.gauge.seriesSpread() > Volume())
        json["unequal_emptying_sd_l"] = answer.gauge.seriesSpread().litres();
    json["zero_at_l"] = answer.zero.litres();
    json["zero_reason"] = answer.zeroReason;
    if (answer.at) {
        json["at"] = {{"signal", *options.at},
                      {"litres", answer.at->added.mean.litres()},
                      {"sd", answer.at->added.sd.litres()},
                      {"bound", wordOf(answer.at->bound)}};
        if (options.at2)
            json["at"]["signal2"] = *options.at2;
    }
    if (answer.verified)
        json["verification"] = verifiedJson(*answer.verified);
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

namespace {

void printCurve(const Gauge& gauge, const std::string& unit)
{
    std::cout << "Signal " << (gauge.curve()->rising() ? "rises" : "falls")
              << " as litres rise. Litres are counted from drained.\n\n"
              << format("%12s %10s %8s\n", unit.empty() ? "signal" : ("signal, " + unit).c_str(),
                        "litres", "+-");
    for (const CurveKnot& knot : gauge.curve()->knots())
        std::cout << format("%12.4g %10.2f %8.2f\n", knot.signal.value(), knot.added.litres(),
                            knot.sd.litres());
    std::cout << '\n';
    if (gauge.residualSd())
        std::cout << "A point misses the curve drawn without it by "
                  << fixed(gauge.residualSd()->litres(), 2) << " L (root mean square).\n";
    if (gauge.readsHigh().mean > Volume())
        std::cout << "While driving the level may be lower than read by "
                  << fixed(gauge.readsHigh().mean.litres(), 2) << " L.\n";
}

void printFindings(const Gauge& gauge)
{
    const auto print = [](Severity severity, const char* code, const std::string& text) {
        std::cout << format("%-8s%s: %s\n", wordOf(severity), code, text.c_str());
    };
    if (gauge.isPrior())
        print(Severity::info, "prior", kPriorText);
    for (const Finding& finding : gauge.findings())
        print(finding.severity, finding.code.c_str(), said(finding.text));
    if (gauge.isPrior() || !gauge.findings().empty())
        std::cout << '\n';
}

void printTable(const GaugeTable& table, const CalibrateOptions& options)
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

} // namespace

void printCalibrationText(const CalibrateAnswer& answer, const CalibrateOptions& options)
{
    if (answer.gauge.isPrior())
        std::cout << kPriorText << "\n\n";
    printFindings(answer.gauge);
    if (!answer.gauge.isKnown()) {
        std::cout << "No curve can be made from these readings.\n";
        return;
    }
    if (answer.gauge.hasTwoSignals())
        printLobes(answer.gauge);
    else
        printCurve(answer.gauge, answer.sender.unit);
    if (answer.gauge.seriesSpread() > Volume())
        std::cout << format("Unequal emptying of the two lobes adds %.2f L (standard deviation).\n",
                            answer.gauge.seriesSpread().litres());
    std::cout << format("Zero mark at %.2f L: %s.\n", answer.zero.litres(), answer.zeroReason.c_str());
    if (answer.at)
        std::cout << format("At signal %s: %s%.2f L since drained, +- %.2f L (%s).\n",
                            signalText(options).c_str(),
                            answer.at->bound == LevelBound::exact ? ""
                                : answer.at->bound == LevelBound::atMost ? "at most " : "at least ",
                            answer.at->added.mean.litres(), answer.at->added.sd.litres(),
                            answer.gauge.isPrior() ? "prior" : "estimate");
    if (answer.table)
        printTable(*answer.table, options);
    if (answer.verified)
        printVerified(*answer.verified);
}

} // namespace undermark
