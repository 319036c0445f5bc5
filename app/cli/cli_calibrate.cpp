// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli calibrate POINTS.csv: curve, findings, level at a signal, gauge table;
// a saddle tank where every point has two signals; a prior where only the tank's
// shape is known.
#include "app/cli/cli_calibrate.h"

#include "app/cli/cli_kept_calibration.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_tank.h"
#include "app/cli/terminal_words.h"
#include "engine/calibration/calibration_doubt.h"
#include "engine/calibration/lobes.h"
#include "engine/tank/reserve_prior.h"

#include <algorithm>
#include <set>

namespace undermark {

namespace {

// The flags, over what is known of the vehicle's sender.
Sender senderOf(const CalibrateOptions& options, Sender sender)
{
    if (!options.circuit.empty())
        sender.circuit = *fromWord<CircuitKind>(options.circuit);
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
void chooseZero(const CalibrateOptions& options, CalibrateAnswer& answer)
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

Result<void> needCurve(const CalibrateAnswer& answer)
{
    if (answer.gauge.isKnown())
        return {};
    std::string why = "these readings allow no curve";
    if (!answer.gauge.findings().empty())
        why += ": " + said(answer.gauge.findings().front().text);
    return wrongUse(why);
}

// Curve and zero mark from the tank's shape alone.
Result<CalibrateAnswer> computePrior(const CalibrateOptions& options, const Sender& sender)
{
    Result<LevelCurve> curve = priorCurveFrom(options.shape);
    if (!curve)
        return fail(curve.error());
    CalibrateAnswer answer;
    answer.sender = sender;
    answer.gauge = Gauge::prior(std::move(*curve));
    answer.zero = options.zeroLitres ? Volume::fromLitres(*options.zeroLitres)
                                     : 0.1 * answer.gauge.full();
    answer.zeroReason = options.zeroLitres ? "as given" : "a tenth of the full litres";
    return answer;
}

// As said, else as they were for an earlier calibration of the same tank.
Result<void> addLobes(const CalibrateOptions& options, const std::optional<LobeVolumes>& known, CalibrateAnswer& answer)
{
    const Result<Volume> said = seriesSpreadFrom(options.lobe1, options.lobe2);
    if (!said)
        return fail(said.error());
    if (options.lobe1)
        answer.lobes = LobeVolumes{Volume::fromLitres(*options.lobe1), Volume::fromLitres(*options.lobe2)};
    else if (!answer.gauge.hasTwoSignals())
        answer.lobes = known;
    if (answer.lobes)
        answer.gauge = answer.gauge.inSeries(seriesSpread(answer.lobes->first, answer.lobes->second));
    return {};
}

// A later session: its litres count from where the logbook's calibration counts, no row is drained anew.
Result<PointsFile> readLater(const std::string& file, const Calibration& kept, const Sender& sender)
{
    const auto earlier = Gauge::of(kept, sender);
    if (!earlier || !earlier->isKnown())
        return earlier ? wrongUse("the logbook's calibration has no curve to lay levels over", "POINTS.csv alone")
                       : fail(earlier.error());
    return readLevels(file, earlier->full());
}

// From measured points: one signal, or the two of a saddle tank.
Result<CalibrateAnswer> computeFit(const CalibrateOptions& options, const Sender& sender,
                                   const std::optional<Calibration>& kept)
{
    if (options.file.empty())
        return wrongUse("nothing to calibrate from", "POINTS.csv, or --shape");
    auto file = options.overKept ? readLater(options.file, *kept, sender) : readPoints(options.file);
    if (!file)
        return fail(file.error());
    CalibrateAnswer answer;
    answer.file = std::move(*file);
    if (options.overKept) {
        auto laid = laidOver(*kept, answer.file.points, sender);
        if (!laid)
            return fail(laid.error());
        answer.file.points = std::move(laid->points);
        answer.file.warnings.insert(answer.file.warnings.end(), laid->said.begin(), laid->said.end());
    }
    answer.sender = sender;
    auto gauge = Gauge::calibrate(answer.file.points, sender, {.loaded = answer.file.loaded});
    if (!gauge) {
        gauge.error().where.file = options.file;
        return fail(gauge.error());
    }
    answer.gauge = std::move(*gauge);
    chooseZero(options, answer);
    return answer;
}

Result<void> readAt(const CalibrateOptions& options, CalibrateAnswer& answer)
{
    const bool takesTwo = answer.gauge.hasTwoSignals();
    if (options.at2.has_value() != (takesTwo && options.at))
        return wrongUse(takesTwo ? "a saddle tank with two senders is read by both signals"
                                 : "this tank has one signal",
                        takesTwo ? "--at and --at2" : "--at alone");
    if (!options.at)
        return {};
    const auto signalOf = [](const std::optional<double>& value) {
        return value ? std::optional(Signal::of(*value)) : std::nullopt;
    };
    answer.at = answer.gauge.read({Signal::of(*options.at), signalOf(options.at2)},
                                  signalOf(options.noise));
    return {};
}

Result<void> makeTable(const CalibrateOptions& options, CalibrateAnswer& answer)
{
    if (!options.tablePoints)
        return {};
    if (answer.gauge.hasTwoSignals())
        return wrongUse("two signals have no gauge table", "a saddle tank wired in series");
    GaugeTableRequest request;
    request.points = *options.tablePoints;
    request.unit = options.tableUnit == "litres" ? GaugeUnit::litres : GaugeUnit::percent;
    request.decimals = options.decimals.value_or(request.unit == GaugeUnit::litres ? 1 : 0);
    request.zeroMark = answer.zero;
    request.signalStep = answer.sender.resolution;
    if (options.fullLitres)
        request.full = Volume::fromLitres(*options.fullLitres);
    auto table = gaugeTable(*answer.gauge.curve(), request);
    if (!table)
        return fail(table.error());
    answer.table = std::move(*table);
    return {};
}

// Levels that were tried afterwards, against the curve.
Result<void> tryLevels(const CalibrateOptions& options, CalibrateAnswer& answer)
{
    if (options.verify.empty())
        return {};
    if (const auto possible = needCurve(answer); !possible)
        return possible;
    auto verified = verifyLevels(answer.gauge, options.verify);
    if (!verified)
        return fail(verified.error());
    answer.verified = std::move(*verified);
    return {};
}

// The calibration of the logbook, or as it is with one level corrected.
Result<CalibrateAnswer> computeKept(const CalibrateOptions& options, const std::optional<Calibration>& kept,
                                    const Sender& sender)
{
    if (!kept)
        return wrongUse("there is no calibration to verify", "POINTS.csv, or a calibrated vehicle");
    auto gauge = Gauge::of(*kept, sender);
    if (!gauge)
        return fail(gauge.error());
    CalibrateAnswer answer;
    answer.file.points = kept->points;
    answer.sender = sender;
    answer.gauge = std::move(*gauge);
    answer.zero = options.zeroLitres ? Volume::fromLitres(*options.zeroLitres) : kept->zeroMark;
    answer.zeroReason = options.zeroLitres ? "as given" : "as calibrated";
    return answer;
}

Result<CalibrateAnswer> compute(const CalibrateOptions& options, const Sender& sender,
                                const std::optional<Calibration>& kept,
                                const std::optional<LobeVolumes>& lobes)
{
    const bool shape = options.shape.given();
    if (const auto sound = checkShapeFlags(options.shape); !sound)
        return fail(sound.error());
    if (shape && !options.file.empty())
        return wrongUse("measured points need no shape", "either POINTS.csv or --shape");
    Result<CalibrateAnswer> answer = options.ofTheLogbook() ? computeKept(options, kept, sender)
                                     : shape ? computePrior(options, sender) : computeFit(options, sender, kept);
    if (!answer)
        return answer;
    if (const auto tried = tryLevels(options, *answer); !tried)
        return fail(tried.error());
    if (!answer->gauge.isKnown())
        return answer;
    if (const auto added = addLobes(options, lobes, *answer); !added)
        return fail(added.error());
    if (const auto read = readAt(options, *answer); !read)
        return fail(read.error());
    if (const auto made = makeTable(options, *answer); !made)
        return fail(made.error());
    return answer;
}

std::optional<std::string> noteOf(const CalibrateOptions& options)
{
    return options.note.empty() ? std::nullopt : std::optional(options.note);
}

// The car, and which of its tanks is meant.
struct CarAndTank {
    Car car;
    TankAtHand tank;
};

Result<CarAndTank> carAndTank(const CalibrateOptions& options, const CliContext& context)
{
    auto car = namedCar(context, options.save ? OpenMode::readWrite : OpenMode::readOnly);
    auto tank = car ? tankAtHand(*car, options.tank) : fail(car.error());
    return tank ? Result<CarAndTank>({std::move(*car), std::move(*tank)}) : fail(tank.error());
}

// What cannot be is not kept: three and a half hundred litres in a tank of twenty.
Result<void> checkPossible(const CalibrateAnswer& answer, const TankAtHand& tank)
{
    const Volume most = answer.file.points.empty()
        ? answer.gauge.full()
        : std::ranges::max(answer.file.points, {}, &CalibrationPoint::added).added;
    if (most <= kImpossibleOfCapacity * tank.capacity())
        return {};
    const std::string command = tank.further ? "vehicle tank set " + tank.further->value.name : "vehicle set";
    return fail(ErrorCode::badInput,
                Sentence::of("%1 in a tank that takes %2 to the first click cannot be: correct the levels, or the "
                             "tank with %3 --capacity-l",
                             amount(most), amount(tank.capacity()), command));
}

// When the gauge was zeroed anew, where that is said.
Result<std::optional<Instant>> zeroSinceOf(const CalibrateOptions& options)
{
    TankFlags said;
    said.zeroSince = options.zeroSince;
    return zeroSince(said);
}

// Keeps the points as they were read, or the shape as it was stated.
Result<void> save(CarAndTank& at, const CalibrateAnswer& answer, const CalibrateOptions& options)
{
    if (const auto possible = checkPossible(answer, at.tank); !possible)
        return possible;
    if (const auto done = keepSender(at.car, at.tank, answer.sender); !done)
        return done;
    Calibration calibration;
    calibration.time = at.car.time();
    calibration.points = answer.file.points;
    calibration.zeroMark = answer.zero;
    calibration.tank = tankName(options.tank);
    if (options.shape.given())
        calibration.shape = statedShapeFrom(options.shape).value();
    calibration.lobes = answer.lobes;
    calibration.note = noteOf(options);
    const auto since = zeroSinceOf(options);
    if (!since)
        return fail(since.error());
    calibration.zeroSince = *since;
    const auto id = at.car.record(calibration);
    return id ? Result<void>() : fail(id.error());
}

// The logbook's calibration with a level, zero mark or words corrected; its day stays.
Result<void> saveCorrected(CarAndTank& at, const CalibrateAnswer& answer, const CalibrateOptions& options)
{
    if (const auto possible = checkPossible(answer, at.tank); !possible)
        return possible;
    if (const auto done = keepSender(at.car, at.tank, answer.sender); !done)
        return done;
    const Entry<Calibration>& kept = *at.tank.calibration();
    Calibration corrected = kept.value;
    corrected.points = answer.file.points;
    corrected.zeroMark = answer.zero;
    corrected.lobes = answer.lobes;
    if (options.verify.empty() && !options.note.empty())
        corrected.note = options.note;
    const auto since = zeroSinceOf(options);
    if (!since)
        return fail(since.error());
    if (*since)
        return restateZero(at.car, {kept.id, kept.recorded, corrected}, answer.zero, *since);
    return corrected == kept.value ? Result<void>() : at.car.revise(kept.id, corrected);
}

Result<void> saveVerification(Car& car, const CalibrateAnswer& answer, const CalibrateOptions& options)
{
    VerificationRecord record = recordOf(*answer.verified, car.time());
    record.tank = tankName(options.tank);
    record.note = noteOf(options);
    const auto id = car.record(record);
    return id ? Result<void>() : fail(id.error());
}

Result<void> keep(CarAndTank& at, const CalibrateAnswer& answer, const CalibrateOptions& options)
{
    if (const auto possible = needCurve(answer); !possible)
        return possible;
    const auto saved = options.ofTheLogbook() ? saveCorrected(at, answer, options) : save(at, answer, options);
    if (!saved)
        return saved;
    return answer.verified ? saveVerification(at.car, answer, options) : Result<void>();
}

Result<void> checkKeptFlags(const CalibrateOptions& options)
{
    const bool ofStep = options.stepLitres || options.stepSignal || options.stepSignal2 || options.leaveOut;
    if (!options.note.empty() && !options.save)
        return wrongUse("a note goes with what is kept", "--save");
    if (!options.zeroSince.empty() && !options.save)
        return wrongUse("when the zero mark came in force goes with what is kept", "--save");
    if (const auto since = zeroSinceOf(options); !since)
        return fail(since.error());
    if (ofStep != options.step.has_value())
        return wrongUse("a level of the logbook's calibration is corrected by its number",
                        "--step N with --total-l, --signal, --signal2 or --leave-out");
    if ((options.kept || options.step) && (!options.file.empty() || options.shape.given()))
        return wrongUse("the logbook's calibration needs no other", "no POINTS.csv and no --shape");
    if (options.overKept && options.file.empty())
        return wrongUse("nothing to lay over the logbook's calibration", "POINTS.csv");
    return {};
}

// The tank's present calibration in the logbook, with the level corrected that the flags name.
Result<std::optional<Calibration>> keptOf(const TankAtHand& tank, const CalibrateOptions& options)
{
    const Entry<Calibration>* latest = tank.calibration();
    if (!latest)
        return wrongUse(options.verify.empty() ? "the logbook has no calibration of this tank" : "there is no calibration to verify",
                        "POINTS.csv, or a calibrated vehicle");
    if (!options.step)
        return latest->value;
    StepCorrection step{*options.step, options.stepLitres, options.stepSignal, options.stepSignal2, options.leaveOut};
    auto corrected = withStep(latest->value, step);
    return corrected ? Result<std::optional<Calibration>>(std::move(*corrected)) : fail(corrected.error());
}

Result<void> runCalibrate(const CalibrateOptions& options, CliContext& context)
{
    if (const auto sound = checkKeptFlags(options); !sound)
        return sound;
    const bool asksKept = options.ofTheLogbook() || options.overKept;
    std::optional<CarAndTank> at;
    if (options.save || asksKept || !context.vehicle.empty() || !options.tank.empty()) {
        auto found = carAndTank(options, context);
        if (!found)
            return fail(found.error());
        at.emplace(std::move(*found));
    }
    Result<std::optional<Calibration>> kept = std::nullopt;
    if (asksKept)
        kept = keptOf(at->tank, options);
    if (!kept)
        return fail(kept.error());
    Sender known;
    known.unit.clear();
    const Entry<Calibration>* before = at ? at->tank.calibration() : nullptr;
    const Result<CalibrateAnswer> answer = compute(options, senderOf(options, at ? at->tank.sender() : known), *kept,
                                                   before ? before->value.lobes : std::nullopt);
    if (!answer)
        return fail(answer.error());
    for (const Sentence& text : answer->file.warnings)
        warn(text);
    if (options.save)
        if (const auto saved = keep(*at, *answer, options); !saved)
            return saved;
    if (context.json)
        printCalibrationJson(*answer, options);
    else
        printCalibrationText(*answer, options);
    return {};
}

void addFlags(CLI::App& command, CalibrateOptions& options)
{
    addText(command, "points", options.file,
            "CSV: poured_l|total_l,signal[,signal2][,signal_sd][,readings][,load]", "POINTS.csv");
    addShapeFlags(command, options.shape);
    addSeriesFlags(command, options.lobe1, options.lobe2);
    addNumber(command, "--at", options.at, kAnyNumber, "litres at this signal");
    addNumber(command, "--at2", options.at2, kAnyNumber, "and the second lobe's signal");
    addNumber(command, "--at-sd", options.noise, kNotNegative, "noise of that signal");
    addCount(command, "--table", options.tablePoints, {2, 100, "2 to 100 points"},
             "gauge table of so many points");
    addChoice(command, "--unit", options.tableUnit, {"percent", "litres"}, "of the gauge table");
    addCount(command, "--decimals", options.decimals, {0, 6, "0 to 6 decimals"},
             "of the gauge table");
    addNumber(command, "--zero-at-l", options.zeroLitres, kNotNegative,
              "litres since drained that are shown as 0");
    addText(command, "--zero-since", options.zeroSince,
            "with --save: when the gauge was zeroed there; with --kept the mark before stays known", "DATE");
    addNumber(command, "--full-at-l", options.fullLitres, kPositive,
              "litres since drained that are shown as full");
    addWordOf<CircuitKind>(command, "--circuit", options.circuit,
                           "kind of the sender's circuit; the vehicle's with --save or --vehicle, else direct");
    addText(command, "--signal-unit", options.signalUnit, "V, mV, ohm, %, ...");
    addNumber(command, "--supply-v", options.supplyVolts, kPositive, "supply of the sender, V");
    addNumber(command, "--pull-up-ohm", options.pullUpOhms, kPositive, "pull-up resistor, ohm");
    addNumber(command, "--signal-step", options.resolution, kPositive,
              "one step of the display; the last decimal in use if not given");
    addText(command, "--verify", options.verify,
            std::string(kVerifyHelp) + "; without POINTS.csv against the logbook's calibration",
            "LEVELS.csv");
    addFlag(command, "--kept", options.kept, "the logbook's calibration, instead of POINTS.csv");
    addFlag(command, "--over-kept", options.overKept,
            "a later session: the levels of POINTS.csv over those of the logbook's calibration");
    addCount(command, "--step", options.step, {1, 1000, "1 to 1000"},
             "a level of the logbook's calibration, counted from 1, as it should have been");
    addNumber(command, "--total-l", options.stepLitres, kNotNegative, "with --step: litres since drained");
    addNumber(command, "--signal", options.stepSignal, kAnyNumber, "with --step: its reading");
    addNumber(command, "--signal2", options.stepSignal2, kAnyNumber, "with --step: and the second lobe's");
    addFlag(command, "--leave-out", options.leaveOut, "with --step: without that level");
    addTankOption(command, options.tank, "the tank that it is of");
    addFlag(command, "--save", options.save, "keep this calibration or shape, and what was verified, in the logbook");
    addText(command, "--note", options.note, "with --save: your own words, which the hand-over sheet shows");
}

} // namespace

Result<Verification> verifyLevels(const Gauge& gauge, const std::string& file)
{
    if (!gauge.isKnown())
        return wrongUse("there is no calibration to verify", "a calibrated vehicle");
    auto levels = readLevels(file, gauge.full());
    if (!levels)
        return fail(levels.error());
    for (const Sentence& text : levels->warnings)
        warn(text);
    auto verified = verify(gauge, levels->points, kJugSd);
    if (!verified)
        verified.error().where.file = file;
    return verified;
}

void addCalibrateCommand(CLI::App& app, CliContext& context)
{
    addCommand<CalibrateOptions>(app, context, "calibrate",
                                 "level curve from readings and poured litres", addFlags, runCalibrate);
}

} // namespace undermark
