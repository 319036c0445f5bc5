// SPDX-License-Identifier: GPL-3.0-or-later
//
// Speed of the planner: price only from 1,000 to 1,000,000 points with the
// fitted exponent, stop costs and risk together, and the same optimum by GLPK's
// mixed-integer solver on 40 points.
#include "engine/planning/greedy.h"
#include "engine/planning/plan.h"
#include "engine/planning/search.h"
#include "tests/support/plan_oracles.h"

#include <benchmark/benchmark.h>

using namespace undermark;

namespace {

void priceOnly(benchmark::State& state)
{
    const PlanRequest request = test::longRoute(static_cast<int>(state.range(0)), 1);
    for (auto _ : state)
        benchmark::DoNotOptimize(plan(request));
    state.SetComplexityN(state.range(0));
}
BENCHMARK(priceOnly)
    ->RangeMultiplier(10)
    ->Range(1000, 1000000)
    ->Unit(benchmark::kMillisecond)
    ->Complexity();

// The greedy alone, without the rows of the plan.
void priceOnlyGreedy(benchmark::State& state)
{
    const auto problem =
        planning::makeProblem(test::longRoute(static_cast<int>(state.range(0)), 1));
    for (auto _ : state)
        benchmark::DoNotOptimize(planning::cheapestByPriceOnly(*problem));
    state.SetComplexityN(state.range(0));
}
BENCHMARK(priceOnlyGreedy)
    ->RangeMultiplier(10)
    ->Range(1000, 1000000)
    ->Unit(benchmark::kMillisecond)
    ->Complexity();

void stopCostsAndRisk(benchmark::State& state)
{
    const PlanRequest request = test::withRisk(
        test::longRoute(static_cast<int>(state.range(0)), 2, double(state.range(1))));
    for (auto _ : state)
        benchmark::DoNotOptimize(plan(request));
    state.counters["stops"] = static_cast<double>(plan(request)->stops.size());
}
BENCHMARK(stopCostsAndRisk)
    ->Args({40, 5})
    ->Args({40, 40})
    ->Args({2000, 5})
    ->Args({2000, 40})
    ->Unit(benchmark::kMillisecond);

void stopCosts(benchmark::State& state)
{
    PlanRequest request = test::longRoute(static_cast<int>(state.range(0)), 3, 40);
    request.stopCost = 4;
    for (auto _ : state)
        benchmark::DoNotOptimize(plan(request));
    state.counters["cost"] = plan(request)->cost;
}
BENCHMARK(stopCosts)->Arg(40)->Arg(2000)->Unit(benchmark::kMillisecond);

void stopCostsByMixedInteger(benchmark::State& state)
{
    PlanRequest request = test::longRoute(static_cast<int>(state.range(0)), 3, 40);
    request.stopCost = 4;
    const auto problem = planning::makeProblem(request);
    double cost = 0.0;
    for (auto _ : state)
        cost = *test::optimumByMixedInteger(*problem);
    state.counters["cost"] = cost;
}
BENCHMARK(stopCostsByMixedInteger)->Arg(40)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
