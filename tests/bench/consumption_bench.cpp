// SPDX-License-Identifier: GPL-3.0-or-later
//
// Speed of learning consumption: the model of a whole logbook, one more fill
// after many, and a long backtest.
#include "engine/consumption/backtest.h"
#include "tests/support/simulated_car.h"

#include <benchmark/benchmark.h>

using namespace undermark;

namespace {

ConsumptionModel freshModel()
{
    ConsumptionSetup setup;
    for (const char* name : {kTown, kOpenRoad, kMotorway, kSpecialStage})
        setup.modes.push_back({name, std::nullopt});
    return ConsumptionModel(setup);
}

// Each stretch has `tripsEach` trips, half in town.
test::SimulatedLog logOf(std::size_t tanks, std::size_t tripsEach)
{
    std::mt19937_64 random(1);
    test::CarTruth car;
    car.tripsLogged = tripsEach > 0 ? 1 : 0;
    auto log = test::simulate(car, tanks, random);
    std::vector<Trip> split;
    for (const Trip& trip : log.trips)
        for (std::size_t i = 0; i < tripsEach / 2; ++i) {
            split.push_back(trip);
            split.back().distance = trip.distance / (double(tripsEach) / 2);
        }
    log.trips = std::move(split);
    return log;
}

void modelOfALogbook(benchmark::State& state)
{
    const auto log = logOf(2000, 10);
    for (auto _ : state) {
        ConsumptionModel model = freshModel();
        for (const Interval& stretch : intervalsFrom(log.fills, log.trips))
            model.observe(stretch);
        benchmark::DoNotOptimize(model.forecast());
    }
}
BENCHMARK(modelOfALogbook)->Unit(benchmark::kMillisecond);

void screenALogbook(benchmark::State& state)
{
    const auto log = logOf(2000, 10);
    for (auto _ : state)
        benchmark::DoNotOptimize(screen(log.fills, log.trips, freshModel()).flags.size());
}
BENCHMARK(screenALogbook)->Unit(benchmark::kMillisecond);

// Must not depend on how much was learnt before.
void oneMoreFill(benchmark::State& state)
{
    const auto log = logOf(std::size_t(state.range(0)), 2);
    const auto stretches = intervalsFrom(log.fills, log.trips);
    ConsumptionModel model = freshModel();
    for (const Interval& stretch : stretches)
        model.observe(stretch);
    for (auto _ : state) {
        ConsumptionModel next = model;
        next.observe(stretches.back());
        benchmark::DoNotOptimize(next.observed());
    }
}
BENCHMARK(oneMoreFill)->Arg(10)->Arg(1000)->Arg(10000)->Unit(benchmark::kMicrosecond);

void backtestOfALongLog(benchmark::State& state)
{
    const auto stretches = intervalsFrom(logOf(10000, 0).fills, {});
    for (auto _ : state)
        benchmark::DoNotOptimize(backtest(stretches, freshModel()).meanError);
}
BENCHMARK(backtestOfALongLog)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
