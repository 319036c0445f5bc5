// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli_command.h"
#include "app/cli_replay_plot.h"
#include "engine/calibration/calibrate.h"
#include "engine/calibration/saddle.h"
#include "engine/files/points_csv.h"
#include "engine/files/samples_csv.h"
#include "engine/tracking/level_tracker.h"
#include "engine/tracking/sender_reading.h"
#include "engine/tracking/transfer_watch.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <iostream>
#include <unistd.h>

namespace undermark {

namespace {

struct ReplayOptions {
    std::filesystem::path samples, calibration, track, plot;
    std::optional<double> rate, rateSd;
};

// One sender, or the two of a saddle tank.
struct LevelSource {
    std::optional<LevelCurve> curve;
    std::optional<SaddleCurves> saddle;

    std::optional<LevelObservation> read(const SampleRow& row) const
    {
        if (!saddle)
            return row.signal ? std::optional(observe(*curve, *row.signal)) : std::nullopt;
        if (!row.signal || !row.signal2)
            return std::nullopt;
        for (const LevelObservation& lobe :
             {observe(saddle->first, *row.signal), observe(saddle->second, *row.signal2)})
            if (lobe.kind == ReadingKind::tooLow || lobe.kind == ReadingKind::tooHigh)
                return lobe;
        const LevelReading both = readSaddle(*saddle, *row.signal, *row.signal2);
        const ReadingKind kind = both.bound == LevelBound::exact ? ReadingKind::exact
            : both.bound == LevelBound::atMost                   ? ReadingKind::atMost
                                                                 : ReadingKind::atLeast;
        return LevelObservation{kind, both.added, {}};
    }

    TrackerSettings settings() const
    {
        TrackerSettings out = trackerSettings(saddle ? saddle->first : *curve);
        if (saddle) {
            const TrackerSettings other = trackerSettings(saddle->second);
            out.lowest += other.lowest;
            out.highest += other.highest;
        }
        return out;
    }
};

struct Replay {
    long samples = 0;
    std::optional<double> firstL;
    TrackState last;
    std::vector<TrackerEvent> events;
    PlotPoints plot;
};

Result<LevelSource> sourceFrom(const std::filesystem::path& file)
{
    const Result<PointsFile> points = readPoints(file);
    if (!points)
        return fail(points.error());
    for (const std::string& warning : points->warnings)
        warn(warning);
    LevelSource sender;
    if (std::ranges::all_of(points->points, [](const auto& p) { return p.signal2.has_value(); })) {
        Result<SaddleCurves> saddle = fitSaddle(points->points);
        if (!saddle) {
            saddle.error().file = file.string();
            return fail(saddle.error());
        }
        sender.saddle = std::move(*saddle);
        return sender;
    }
    Result<CalibrationFit> fit = fitCalibration(points->points, Sender{});
    if (!fit)
        return fail(fit.error());
    for (const Finding& finding : fit->findings)
        if (finding.severity != Severity::info)
            warn(finding.text);
    if (!fit->curve)
        return fail({.code = ErrorCode::badInput, .detail = "this calibration gives no curve",
                     .file = file.string(), .line = 0, .column = {}, .expected = {}, .found = {}});
    sender.curve = std::move(*fit->curve);
    return sender;
}

// The track is written beside its place and moved there when all went well.
class TrackFile {
public:
    explicit TrackFile(const std::filesystem::path& file) : m_file(file), m_part(file)
    {
        m_part += ".part";
        if (!m_file.empty()) {
            m_out.open(m_part);
            m_out << "t_s,litres,sd_l,left_km\n";
        }
    }
    ~TrackFile()
    {
        std::error_code ignored;
        if (m_out.is_open())
            std::filesystem::remove(m_part, ignored);
    }

    void add(const LevelTracker& tracker)
    {
        if (!m_out.is_open())
            return;
        const TrackState& now = tracker.state();
        m_out << format("%.17g,%.17g,%.17g,", now.time.count(), now.level.mean.litres(),
                        now.level.sd.litres());
        if (const auto rate = tracker.rate(); rate && rate->mean.litresPerKm() > 0.0)
            m_out << format("%.17g", (now.level.mean / rate->mean).km());
        m_out << '\n';
    }

    Result<void> finish()
    {
        if (m_file.empty())
            return {};
        m_out.flush();
        const bool good = m_out.good();
        m_out.close();
        std::error_code problem;
        if (good)
            std::filesystem::rename(m_part, m_file, problem);
        if (!good || problem)
            return fail({ErrorCode::fileAccess, "cannot write the file", m_file.string(), 0, {}, {}, {}});
        return {};
    }

private:
    std::filesystem::path m_file, m_part;
    std::ofstream m_out;
};

void progress(long samples)
{
    static const bool terminal = isatty(STDERR_FILENO);
    if (terminal && samples % 1000000 == 0)
        std::cerr << format("\r%ld million samples", samples / 1000000) << std::flush;
}

Result<Replay> runReplay(SamplesCsv& file, const LevelSource& sender, const TrackerSettings& settings,
                         TrackFile& track)
{
    Replay out;
    LevelTracker tracker(settings);
    TransferWatch transfer(settings.highest - settings.lowest);
    long blocks = 0;
    const auto take = [&](std::span<const TrackerEvent> events) {
        out.events.insert(out.events.end(), events.begin(), events.end());
        const TrackState& now = tracker.state();
        if (now.blocks == blocks || now.mode == TrackerMode::waiting)
            return;
        blocks = now.blocks;
        if (!out.firstL)
            out.firstL = now.level.mean.litres();
        track.add(tracker);
        out.plot.add({now.time.count(), now.level.mean.litres(), now.level.sd.litres(),
                      now.reading ? std::optional(now.reading->litres()) : std::nullopt});
    };
    for (;;) {
        const auto row = file.next();
        if (!row)
            return fail(row.error());
        if (!*row)
            break;
        const SampleRow& now = **row;
        take(tracker.add({now.time, sender.read(now), now.speed, now.fuelRate, now.distance}));
        if (sender.saddle && now.signal && now.signal2
            && transfer.add(now.time, sender.saddle->first.read(*now.signal).added.mean,
                            observe(sender.saddle->second, *now.signal2)))
            out.events.push_back({.kind = TrackerEventKind::fault, .time = now.time,
                                  .onset = now.time, .litres = {transfer.fallen(), {}},
                                  .distance = {}, .fault = FaultCode::transfer});
        progress(++out.samples);
    }
    take(tracker.finish());
    out.last = tracker.state();
    return out;
}

const char* modeWord(TrackerMode mode)
{
    switch (mode) {
    case TrackerMode::waiting: return "waiting";
    case TrackerMode::level: return "level";
    case TrackerMode::upperStop: return "upper_stop";
    case TrackerMode::lowerStop: return "lower_stop";
    case TrackerMode::consumptionOnly: return "consumption_only";
    }
    return "";
}

Json eventJson(const TrackerEvent& event)
{
    const double at = event.time.count();
    const double onset = event.onset.count();
    switch (event.kind) {
    case TrackerEventKind::refuel:
        return {{"at_s", onset}, {"litres", event.litres.mean.litres()},
                {"sd_l", event.litres.sd.litres()}, {"decided_s", at}};
    case TrackerEventKind::fault:
        return {{"code", faultWord(event.fault)}, {"at_s", at}, {"text", faultText(event.fault)},
                {"onset_s", onset}, {"litres_since_onset", event.litres.mean.litres()},
                {"km_since_onset", event.distance.km()}};
    case TrackerEventKind::faultCleared:
        return {{"code", faultWord(event.fault)}, {"at_s", at}};
    case TrackerEventKind::gap:
    case TrackerEventKind::clockJump: return {{"at_s", at}, {"before_s", onset}};
    case TrackerEventKind::correction: return {{"at_s", at}, {"litres", event.litres.mean.litres()}};
    case TrackerEventKind::onUpperStop:
        return {{"stop", "upper"}, {"at_s", at}, {"litres", event.litres.mean.litres()}};
    case TrackerEventKind::onLowerStop:
        return {{"stop", "lower"}, {"at_s", at}, {"litres", event.litres.mean.litres()}};
    }
    return {};
}

void printJson(const Replay& replay)
{
    Json json;
    const TrackState& last = replay.last;
    const bool known = replay.firstL.has_value();
    json["samples"] = replay.samples;
    json["first_l"] = known ? Json(*replay.firstL) : Json();
    json["last_l"] = known ? Json(last.level.mean.litres()) : Json();
    json["sd_l"] = known ? Json(last.level.sd.litres()) : Json();
    for (const char* list : {"refuels", "faults", "faults_cleared", "gaps", "clock_jumps",
                             "corrections", "stops"})
        json[list] = Json::array();
    for (const TrackerEvent& event : replay.events) {
        constexpr std::array<const char*, 8> kLists{"refuels", "faults", "faults_cleared", "gaps",
                                                    "clock_jumps", "corrections", "stops", "stops"};
        json[kLists[static_cast<std::size_t>(event.kind)]].push_back(eventJson(event));
    }
    json["nis_mean"] = last.nisCount > 0 ? Json(last.nisMean) : Json();
    json["mode"] = modeWord(last.mode);
    json["scale"] = {{"mean", last.scale.mean.ratio()}, {"sd", last.scale.sd.ratio()}};
    json["used_l"] = last.used.litres();
    json["driven_km"] = last.driven.km();
    print(json);
}

std::string eventLine(const TrackerEvent& event)
{
    const std::string at = format("%8.0f s  ", event.onset.count());
    const double litres = event.litres.mean.litres();
    switch (event.kind) {
    case TrackerEventKind::refuel:
        return at + format("refuel of about %.1f L (give or take %.1f): log what the pump showed",
                           litres, event.litres.sd.litres());
    case TrackerEventKind::fault:
        return at + format("fault %s, found %.0f s later after %.1f L: ", faultWord(event.fault),
                           (event.time - event.onset).count(), litres) + faultText(event.fault);
    case TrackerEventKind::faultCleared:
        return at + format("fault %s is over since %.0f s", faultWord(event.fault),
                           event.time.count());
    case TrackerEventKind::gap:
        return at + format("no samples until %.0f s", event.time.count());
    case TrackerEventKind::clockJump:
        return at + format("the clock went back to %.0f s", event.time.count());
    case TrackerEventKind::correction: return at + format("level corrected by %+.1f L", litres);
    case TrackerEventKind::onUpperStop:
        return at + format("float on its upper stop: at least %.1f L", litres);
    case TrackerEventKind::onLowerStop:
        return at + format("float on its lower stop: at most %.1f L", litres);
    }
    return at;
}

void printText(const Replay& replay)
{
    std::cout << format("%ld samples, %.1f km\n", replay.samples, replay.last.driven.km());
    if (replay.firstL)
        std::cout << format("%.1f L at first, %.1f L at last (estimated, sd %.1f L), litres since "
                            "drained\n",
                            *replay.firstL, replay.last.level.mean.litres(),
                            replay.last.level.sd.litres());
    else
        std::cout << "no level was read\n";
    for (const TrackerEvent& event : replay.events)
        std::cout << eventLine(event) << '\n';
}

Result<void> writePlot(const std::filesystem::path& file, const Replay& replay, double fullL)
{
    if (file.empty())
        return {};
    std::ofstream out(file);
    out << replaySvg(replay.plot.points(), replay.events, fullL);
    out.close();
    if (!out)
        return fail({ErrorCode::fileAccess, "cannot write the file", file.string(), 0, {}, {}, {}});
    return {};
}

Result<void> replay(const ReplayOptions& options, const CliContext& context)
{
    const Result<LevelSource> sender = sourceFrom(options.calibration);
    if (!sender)
        return fail(sender.error());
    Result<SamplesCsv> samples = SamplesCsv::open(options.samples);
    if (!samples)
        return fail(samples.error());
    for (const std::string& name : samples->unknownColumns())
        warn(options.samples.string() + ": column '" + name + "' is not known and left out");
    TrackerSettings settings = sender->settings();
    if (options.rate)
        settings.rate = {Consumption::fromLitresPer100Km(*options.rate),
                         Consumption::fromLitresPer100Km(options.rateSd.value_or(0.15 * *options.rate))};
    TrackFile track(options.track);
    const Result<Replay> done = runReplay(*samples, *sender, settings, track);
    if (!done)
        return fail(done.error());
    if (const auto written = track.finish(); !written)
        return written;
    if (const auto drawn = writePlot(options.plot, *done, settings.highest.litres()); !drawn)
        return drawn;
    if (context.json)
        printJson(*done);
    else
        printText(*done);
    return {};
}

} // namespace

void addReplayCommand(CLI::App& app, CliContext& context)
{
    CLI::App* command = app.add_subcommand("replay", "follow the level over a recorded drive");
    const auto options = std::make_shared<ReplayOptions>();
    command->add_option("samples", options->samples, "samples CSV")->required()->type_name("SAMPLES.csv");
    command->add_option("--calibration", options->calibration, "points CSV")->required()
        ->type_name("POINTS.csv");
    command->add_option("--out", options->track, "write time, litres, spread, distance left")
        ->type_name("TRACK.csv");
    command->add_option("--plot", options->plot, "draw reading, estimate and faults")
        ->type_name("FILE.svg");
    addNumber(*command, "--rate", options->rate, kPositive, "consumption, L/100 km");
    addNumber(*command, "--rate-sd", options->rateSd, kNotNegative, "its sd, L/100 km (15 %)");
    addJson(*command, context);
    onRun(*command, context, [options, &context] { return replay(*options, context); });
}

} // namespace undermark
