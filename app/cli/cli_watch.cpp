// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli watch: the level and how far it goes, live.
#include "app/cli/cli_watch.h"

#include <fstream>
#include <iostream>

namespace undermark {

namespace {

constexpr std::chrono::milliseconds kLook{50}; // of the wall clock, between looks at the sources

// The joined samples as a samples CSV; flushed once a second.
class Recording {
public:
    explicit Recording(const std::filesystem::path& file) : m_file(file)
    {
        if (file.empty())
            return;
        m_out.open(file);
        m_out << "t_s";
        for (const Channel channel : kChannels)
            m_out << ',' << nameOf(channel);
        m_out << '\n';
    }
    void add(const Sample& sample)
    {
        if (!m_out.is_open())
            return;
        m_out << format("%.17g", sample.time.count());
        for (const Channel channel : kChannels) {
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
    std::ofstream m_out;
};

class Watch {
public:
    Watch(LiveSources sources, GaugeTracker tracker, LiveRange range, const WatchOptions& options, bool json)
        : m_sources(std::move(sources)), m_tracker(std::move(tracker)), m_range(std::move(range)),
          m_recording(options.record), m_speedUp(options.speedUp.value_or(1.0)), m_json(json)
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
            if (const auto done = secondPassed(m_sources.recorded() ? m_sample.time : m_sources.now()); !done)
                return done;
            m_sources.wait(kLook);
        }
        keep(m_tracker.finish());
        return tell();
    }

private:
    Result<void> take(const Sample& sample)
    {
        m_recording.add(sample);
        m_sample = sample;
        keep(m_tracker.add(sample));
        return secondPassed(sample.time);
    }
    void keep(std::span<const TrackerEvent> events)
    {
        for (const TrackerEvent& event : events) {
            if (event.kind == TrackerEventKind::refuel)
                m_atFill = m_tracker.level().state().driven;
            m_events.push_back(event);
        }
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
        const TrackState& state = m_tracker.level().state();
        const WatchMoment moment{m_sample, state, m_range.at(state), state.driven - m_atFill, m_events, m_sources};
        if (m_json)
            printWatchJson(moment);
        else
            printWatchText(moment);
        std::cout.flush();
        m_events.clear();
        m_notices.tell(m_sources);
        return m_recording.flush();
    }

    LiveSources m_sources;
    GaugeTracker m_tracker;
    LiveRange m_range;
    Recording m_recording;
    WatchNotices m_notices;
    double m_speedUp;
    bool m_json;
    std::optional<Seconds> m_until, m_told;
    Sample m_sample;
    Distance m_atFill;
    std::vector<TrackerEvent> m_events;
};

Question questionOf(const Estimate<Volume>& level, const std::string& mode)
{
    Question question;
    question.followed = level;
    question.mode = mode;
    return question;
}

Result<void> runWatch(const WatchOptions& options, const CliContext& context)
{
    Result<LiveSources> sources = openSources(options.sources, context);
    if (!sources)
        return fail(sources.error());
    Result<FollowedLevel> followed = levelFrom(options.level, context);
    if (!followed)
        return fail(followed.error());
    const Knowledge& car = followed->car;
    // An unknown mode is said before anything is printed.
    if (car) {
        if (const auto asked = outlook(*car, questionOf({}, options.mode)); !asked)
            return fail(asked.error());
    }
    catchStop();
    return Watch(std::move(*sources), GaugeTracker(std::move(followed->start.gauge), followed->start.settings),
                 LiveRange(car, options.mode), options, context.json)
        .run();
}

void addWatchOptions(CLI::App& command, WatchOptions& options)
{
    addSourceFlags(command, options.sources);
    addLevelFlags(command, options.level);
    addPath(command, "--record", options.record, "keep what came, as samples CSV", "FILE.csv");
    addNumber(command, "--for", options.seconds, kPositive, "seconds to watch; else until it ends or Ctrl-C");
    addNumber(command, "--speed-up", options.speedUp, kPositive, "plays so many times as fast (1)");
    addText(command, "--mode", options.mode, "driving mode of the road ahead; else the usual mix", "MODE");
}

} // namespace

const std::optional<LiveRange::Answer>& LiveRange::at(const TrackState& state)
{
    if (!m_car || state.mode == TrackerMode::waiting)
        return m_answer;
    const bool fresh = m_asked && std::abs((state.time - m_asked->time).count()) < 30.0
        && abs(state.level.mean - m_asked->level.mean) < Volume::fromLitres(0.2)
        && state.driven - m_asked->driven < Distance::fromKm(1.0);
    if (fresh)
        return m_answer;
    m_asked = state;
    m_answer.reset();
    if (const auto now = outlook(*m_car, questionOf(state.level, m_mode)))
        m_answer = Answer{now->usable, distances(now->toZero), distances(now->toDry)};
    return m_answer;
}

void addWatchCommand(CLI::App& app, CliContext& context)
{
    addCommand<WatchOptions>(app, context, "watch", "follow the level live, from the car's own wires",
                             addWatchOptions, runWatch);
}

} // namespace undermark
