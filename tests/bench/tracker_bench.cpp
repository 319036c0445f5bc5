// SPDX-License-Identifier: GPL-3.0-or-later
//
// Samples per second through the tracker: levels ready made, and from signals
// through the curve.
#include "engine/tracking/level_tracker.h"
#include "engine/tracking/sender_reading.h"
#include "tests/support/simulated_tank.h"

#include <benchmark/benchmark.h>

using namespace undermark;

namespace {

struct Recorded {
    std::vector<TrackerSample> samples;
    std::vector<Signal> signals;
    std::optional<LevelCurve> curve;
};

const Recorded& recorded()
{
    static const Recorded drive = [] {
        Recorded out;
        test::Random random(5);
        test::SimulatedCar car(random);
        std::vector<CurveKnot> knots;
        for (const CalibrationPoint& point : car.calibrate(12, random))
            if (knots.empty() || point.signal != knots.back().signal)
                knots.push_back({point.signal, point.added, {}, Volume::fromLitres(0.3)});
        out.curve = *LevelCurve::fromKnots(knots);
        car.fill(car.capacityL);
        car.settle();
        for (int i = 0; i < 200000; ++i) {
            if (car.litres < 5.0)
                car.fill(car.capacityL);
            const auto now = car.step(true, random);
            out.signals.push_back(now.signal.value_or(Signal::of(0.0)));
            out.samples.push_back({Seconds(0.1 * i), observe(*out.curve, out.signals.back()),
                                   now.speed, now.fuelRate, now.distance});
        }
        return out;
    }();
    return drive;
}

void filterOnly(benchmark::State& state)
{
    const Recorded& drive = recorded();
    for (auto _ : state) {
        LevelTracker tracker(trackerSettings(Gauge::prior(*drive.curve)));
        for (const TrackerSample& sample : drive.samples)
            benchmark::DoNotOptimize(tracker.add(sample));
    }
    state.SetItemsProcessed(state.iterations() * long(drive.samples.size()));
}
BENCHMARK(filterOnly);

void fromSignals(benchmark::State& state)
{
    const Recorded& drive = recorded();
    for (auto _ : state) {
        LevelTracker tracker(trackerSettings(Gauge::prior(*drive.curve)));
        for (std::size_t i = 0; i < drive.samples.size(); ++i) {
            TrackerSample sample = drive.samples[i];
            sample.level = observe(*drive.curve, drive.signals[i]);
            benchmark::DoNotOptimize(tracker.add(sample));
        }
    }
    state.SetItemsProcessed(state.iterations() * long(drive.samples.size()));
}
BENCHMARK(fromSignals);

} // namespace

BENCHMARK_MAIN();
