// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli watch: the level and how far it goes, live.
#include "app/cli/cli_watch.h"

#include <algorithm>
#include <fstream>
#include <iostream>

namespace undermark {

namespace {

constexpr std::chrono::milliseconds kLook{50}; // of the wall clock, between looks at the sources

// The joined samples as a samples CSV; flushed once a second.
class Recording {
public:
    Recording(const std::filesystem::path& file, std::size_t furtherTanks)
        : m_file(file), m_channels(channelsOf(furtherTanks))
    {
        if (file.empty())
            return;
        m_out.open(file);
        m_out << "t_s";
        for (const Channel channel : m_channels)
            m_out << ',' << nameOf(channel);
        m_out << '\n';
    }
    void add(const Sample& sample)
    {
        if (!m_out.is_open())
            return;
        m_out << format("%.17g", sample.time.count());
        for (const Channel channel : m_channels) {
            const auto value = sample.get(channel);
            m_out << ',' << (value ? format("%.17g", *value) : "");
        }
        m_out << '\n';
    }
    Result<void> flush()
    {
        if (!m_file.empty() && !m_out.flush())
            return fail(ErrorCode::fileAccess, Sentence::just("cannot write the file"), {m_file.string()});
        return {};
    }

private:
    std::filesystem::path m_file;
    std::span<const Channel> m_channels;
    std::ofstream m_out;
};

Question questionOf(const std::string& mode)
{
    Question question;
    question.mode = mode;
    return question;
}

class Watch {
public:
    // `keeper`: may be none.
    Watch(LiveSources sources, FollowedLevel followed, DriveKeeper* keeper, const WatchOptions& options, bool json)
        : m_sources(std::move(sources)), m_level(std::move(followed.start)), m_car(std::move(followed.car)),
          m_mode(options.mode), m_keeper(keeper), m_recording(options.record, m_level.tanks().size()),
          m_speedUp(options.speedUp.value_or(1.0)),
          m_json(json)
    {
        if (options.seconds)
            m_until = Seconds(*options.seconds);
    }

    Result<void> run()
    {
        if (const auto writable = m_recording.flush(); !writable)
            return writable;
        const auto begin = std::chrono::steady_clock::now();
        while (!stopAsked() && !m_sources.ended()) {
            const Seconds now = m_speedUp * Seconds(std::chrono::steady_clock::now() - begin);
            m_sources.take(m_until ? std::min(now, *m_until) : now);
            while (const auto sample = m_sources.next())
                if (const auto done = take(*sample); !done)
                    return done;
            if (m_until && now >= *m_until)
                break;
            const Seconds passed = m_sources.recorded() ? m_sample.time : m_sources.now();
            tellKeeper();
            if (const auto done = m_keeper ? m_keeper->look(passed) : false; !done)
                return fail(done.error());
            if (const auto done = secondPassed(passed); !done)
                return done;
            m_sources.wait(kLook);
        }
        m_level.finish();
        if (const auto done = tell(); !done)
            return done;
        return endDrive();
    }

private:
    Result<void> take(const Sample& sample)
    {
        m_recording.add(sample);
        m_sample = sample;
        m_level.take(sample);
        tellKeeper();
        if (const auto done = m_keeper ? m_keeper->take(sample, m_mode) : false; !done)
            return fail(done.error());
        return secondPassed(sample.time);
    }
    // Once a second of the sources' time, or where their clock went back.
    Result<void> secondPassed(Seconds time)
    {
        if (m_told && time - *m_told < Seconds(1) && time >= *m_told - Seconds(1))
            return {};
        m_told = time;
        return tell();
    }
    Result<void> tell()
    {
        if (m_car && m_level.known() && m_level.worthAsking())
            askRange();
        const auto events = m_level.takeEvents();
        const auto tankLevels = m_level.tankLevels();
        const WatchMoment moment{m_sample, m_level.state(), m_range, m_level.sinceFill(), events, m_sources,
                                 m_level.tanks(), tankLevels};
        if (m_json)
            printWatchJson(moment);
        else
            printWatchText(moment);
        std::cout.flush();
        m_notices.tell(m_sources);
        // What was driven before fuel went in is before it in the log.
        if (m_keeper && std::ranges::find(events, TrackerEventKind::refuel, &TrackerEvent::kind) != events.end())
            if (const auto done = m_keeper->fuelWentIn(); !done)
                return fail(done.error());
        return m_recording.flush();
    }
    Result<void> endDrive()
    {
        tellKeeper();
        const auto done = m_keeper ? m_keeper->end() : false;
        return done ? Result<void>() : fail(done.error());
    }
    void tellKeeper()
    {
        if (m_keeper)
            m_keeper->tell(levelsToKeep(m_level));
    }

    void askRange()
    {
        m_range.reset();
        if (const auto now = outlook(*m_car, m_level.ask(questionOf(m_mode))))
            m_range = WatchRange{now->usable, distances(now->toZero), distances(now->toDry)};
    }

    LiveSources m_sources;
    LiveLevel m_level;
    Knowledge m_car; // none: no law, only litres since drained
    std::string m_mode;
    DriveKeeper* m_keeper;
    std::optional<WatchRange> m_range;
    Recording m_recording;
    WatchNotices m_notices;
    double m_speedUp;
    bool m_json;
    std::optional<Seconds> m_until, m_told;
    Sample m_sample;
};

Result<void> runWatch(const WatchOptions& options, const CliContext& context)
{
    Result<LiveSources> sources = openSources(options.sources, context);
    if (!sources)
        return fail(sources.error());
    Result<FollowedLevel> followed = levelFrom(options.level, context);
    if (!followed)
        return fail(followed.error());
    // An unknown mode is said before anything is printed.
    if (followed->car) {
        Question question = questionOf(options.mode);
        question.followed = Estimate<Volume>{};
        if (const auto asked = outlook(*followed->car, question); !asked)
            return fail(asked.error());
    }
    Result<Car> car = options.keepTrips ? namedCar(context, OpenMode::readWrite) : Car::none({});
    if (!car)
        return fail(car.error());
    std::optional<DriveKeeper> keeper;
    if (options.keepTrips) {
        Result<DriveKeeper> started = DriveKeeper::start(*car);
        if (!started)
            return fail(started.error());
        keeper.emplace(std::move(*started));
    }
    catchStop();
    return Watch(std::move(*sources), std::move(*followed), keeper ? &*keeper : nullptr, options, context.json)
        .run();
}

void addWatchOptions(CLI::App& command, WatchOptions& options)
{
    addSourceFlags(command, options.sources);
    addLevelFlags(command, options.level);
    addPath(command, "--record", options.record, "keep what came, as samples CSV", "FILE.csv");
    addNumber(command, "--for", options.seconds, kPositive, "seconds to watch; else until it ends or Ctrl-C");
    addNumber(command, "--speed-up", options.speedUp, kPositive, "plays so many times as fast (1)");
    addFlag(command, "--keep-trips", options.keepTrips,
            "write what is driven into the logbook, a trip a mode and drive, and the level at the end of each");
    addText(command, "--mode", options.mode, "driving mode of the road ahead; else the usual mix", "MODE");
}

} // namespace

void addWatchCommand(CLI::App& app, CliContext& context)
{
    addCommand<WatchOptions>(app, context, "watch", "follow the level live, from the car's own wires",
                             addWatchOptions, runWatch);
}

} // namespace undermark
