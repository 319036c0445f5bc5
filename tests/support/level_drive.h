// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/tracking/level_tracker.h"

#include <random>
#include <vector>

namespace undermark::test {

// A drive written down second by second: the reading is the true level with
// plain noise, or whatever a test puts in its place.
struct LevelDrive {
    explicit LevelDrive(double startL, TrackerSettings settings = plain())
        : level(startL), tracker(settings)
    {
    }

    static TrackerSettings plain()
    {
        TrackerSettings settings;
        settings.highest = Volume::fromLitres(50.0);
        settings.rate = {Consumption::fromLitresPer100Km(8.0), Consumption::fromLitresPer100Km(1.0)};
        return settings;
    }

    static LevelObservation reading(double litres, ReadingKind kind = ReadingKind::exact)
    {
        return {kind, {Volume::fromLitres(litres), Volume::fromLitres(0.3)}, {}};
    }

    // One second at `kmh` with what the sender says (nothing: no reading).
    void second(double kmh, std::optional<LevelObservation> said)
    {
        level -= kmh > 0.0 ? 0.08 * kmh / 3600.0 : 0.8 / 3600.0;
        TrackerSample sample;
        sample.time = Seconds(time);
        sample.speed = Speed::fromKmPerHour(kmh);
        sample.level = said;
        time += 1.0;
        take(tracker.add(sample));
    }

    void take(std::span<const TrackerEvent> happened)
    {
        events.insert(events.end(), happened.begin(), happened.end());
        const double now = tracker.state().level.mean.litres();
        bool said = false;
        for (const TrackerEvent& event : happened)
            said = said || event.kind == TrackerEventKind::refuel || event.kind == TrackerEventKind::transfer
                || event.kind == TrackerEventKind::correction;
        rose = rose || (known && now > shown + 1e-12 && !said);
        known = tracker.state().mode != TrackerMode::waiting;
        shown = now;
    }

    void run(double seconds, double kmh, double noise = 1.0)
    {
        for (double s = 0; s < seconds; ++s)
            second(kmh, reading(level + (kmh > 0 ? noise : 0.05) * normal(random)));
    }

    // The sender answers `said` whatever the tank does.
    void runSaying(double seconds, double kmh, std::optional<LevelObservation> said)
    {
        for (double s = 0; s < seconds; ++s)
            second(kmh, said);
    }

    int count(TrackerEventKind kind) const
    {
        int n = 0;
        for (const TrackerEvent& event : events)
            n += event.kind == kind;
        return n;
    }

    const TrackerEvent* first(TrackerEventKind kind) const
    {
        for (const TrackerEvent& event : events)
            if (event.kind == kind)
                return &event;
        return nullptr;
    }

    bool hasFault(FaultCode code) const
    {
        const TrackerEvent* fault = first(TrackerEventKind::fault);
        return fault && fault->fault == code && count(TrackerEventKind::fault) == 1;
    }

    double off() const { return tracker.state().level.mean.litres() - level; }
    double sd() const { return tracker.state().level.sd.litres(); }

    double level;
    double time = 0.0;
    LevelTracker tracker;
    std::vector<TrackerEvent> events;
    double shown = 0.0;
    bool known = false, rose = false;
    std::mt19937_64 random{7};
    std::normal_distribution<double> normal;
};

} // namespace undermark::test
