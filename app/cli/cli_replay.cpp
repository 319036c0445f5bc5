// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_replay.h"

#include "app/cli/cli_command.h"
#include "app/cli/status_line.h"
#include "engine/tracking/gauge_tracker.h"

#include <fstream>
#include <iostream>

namespace undermark {

namespace {

// The track is written beside its place and moved there when all went well.
class TrackFile {
public:
    TrackFile(const std::filesystem::path& file, bool prior)
        : m_file(file), m_part(file), m_prior(prior)
    {
        m_part += ".part";
        if (!m_file.empty()) {
            m_out.open(m_part);
            m_out << "t_s,litres,sd_l,left_km" << (m_prior ? ",prior\n" : "\n");
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
        m_out << (m_prior ? ",1\n" : "\n");
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
            return fail(ErrorCode::fileAccess, Sentence::just("cannot write the file"),
                        {m_file.string()});
        return {};
    }

private:
    std::filesystem::path m_file, m_part;
    bool m_prior;
    std::ofstream m_out;
};

constexpr long kSamplesTold = 1'000'000; // between two words of how far a long file has got

Result<Replay> runReplay(SamplesCsv& file, const Observation& start, TrackFile& track)
{
    Replay out;
    out.prior = start.gauge.isPrior();
    for (const FurtherTank& tank : start.further)
        out.tanks.push_back(tank.name);
    GaugeTracker follower(start.gauge, start.settings, start.further);
    const LevelTracker& tracker = follower.level();
    StatusLine line;
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
    Sample now;
    Seconds before{};
    for (;;) {
        const Result<bool> more = file.next(now);
        if (!more)
            return fail(more.error());
        if (!*more)
            break;
        out.equalTimes += out.samples > 0 && now.time == before;
        before = now.time;
        take(follower.add(now));
        if (++out.samples % kSamplesTold == 0)
            line.say(format("%ld million samples", out.samples / kSamplesTold));
    }
    take(follower.finish());
    out.last = tracker.state();
    return out;
}

Result<void> writePlot(const std::filesystem::path& file, const Replay& replay, double fullL)
{
    if (file.empty())
        return {};
    std::ofstream out(file);
    out << replaySvg(replay.plot.points(), replay.events, fullL,
                     replay.prior ? "; level by the tank's shape: a prior" : "");
    out.close();
    if (!out)
        return fail(ErrorCode::fileAccess, Sentence::just("cannot write the file"),
                    {file.string()});
    return {};
}

Result<void> replay(const ReplayOptions& options, const CliContext& context)
{
    Result<FollowedLevel> followed = levelFrom(options.level, context);
    if (!followed)
        return fail(followed.error());
    const Gauge& gauge = followed->start.gauge;
    Result<SamplesCsv> samples = SamplesCsv::open(options.samples);
    if (!samples)
        return fail(samples.error());
    for (const std::string& name : samples->unknownColumns())
        warn(options.samples.string() + ": column '" + name + "' is not known and left out");
    TrackerSettings& settings = followed->start.settings;
    if (options.rate)
        settings.rate = {Consumption::fromLitresPer100Km(*options.rate),
                         Consumption::fromLitresPer100Km(options.rateSd.value_or(0.15 * *options.rate))};
    TrackFile track(options.track, gauge.isPrior());
    const Result<Replay> done = runReplay(*samples, followed->start, track);
    if (!done)
        return fail(done.error());
    if (const auto written = track.finish(); !written)
        return written;
    if (const auto drawn = writePlot(options.plot, *done, settings.highest.litres()); !drawn)
        return drawn;
    if (context.json)
        printReplayJson(*done);
    else
        printReplayText(*done);
    return {};
}

void addReplayOptions(CLI::App& command, ReplayOptions& options)
{
    required(addPath(command, "samples", options.samples, "samples CSV", "SAMPLES.csv"));
    addLevelFlags(command, options.level);
    addPath(command, "--out", options.track, "write time, litres, spread, distance left",
            "TRACK.csv");
    addPath(command, "--plot", options.plot, "draw reading, estimate and faults", "FILE.svg");
    addNumber(command, "--rate", options.rate, kPositive, "consumption, L/100 km");
    addNumber(command, "--rate-sd", options.rateSd, kNotNegative, "its sd, L/100 km (15 %)");
    addColumns(command, "SAMPLES.csv", kSampleColumns);
}

} // namespace

void addReplayCommand(CLI::App& app, CliContext& context)
{
    addCommand<ReplayOptions>(app, context, "replay",
                              "follow the level over a recorded drive, by the logbook's car or a calibration",
                              addReplayOptions, replay);
}

} // namespace undermark
