// SPDX-License-Identifier: GPL-3.0-or-later
//
// Speed of the planner: price only from 1,000 to 1,000,000 points with the
// fitted growth exponent, stop costs and risk together, and the same optimum by GLPK's
// mixed-integer solver on 40 points.
#include "engine/planning/any_closure.h"
#include "engine/planning/left_of_plan.h"
#include "engine/planning/plan.h"
#include "engine/planning/search/search.h"
#include "engine/planning/what_if.h"
#include "tests/support/plan_oracles.h"

#include <benchmark/benchmark.h>
#include <climits>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <malloc.h>

using namespace undermark;

namespace {

void priceOnly(benchmark::State& state)
{
    const PlanRequest request = test::longRoute(static_cast<int>(state.range(0)), 1);
    for (auto _ : state)
        benchmark::DoNotOptimize(plan(request));
}
BENCHMARK(priceOnly)->RangeMultiplier(10)->Range(1000, 1000000)->Unit(benchmark::kMillisecond);

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

// On the way: a pump of the plan is closed, a section driven again, the middle of the way reached.
PlanRequest wayOf(const benchmark::State& state)
{
    PlanRequest request = test::withRisk(test::longRoute(static_cast<int>(state.range(0)), 2, double(state.range(1))));
    for (std::size_t i = 0; i < request.route.points.size(); ++i)
        request.route.points[i].name = std::to_string(i);
    return request;
}

void lostPump(benchmark::State& state)
{
    const PlanRequest request = wayOf(state);
    const std::string name = request.route.points[plan(request)->stops.front().point].name;
    for (auto _ : state)
        benchmark::DoNotOptimize(whatIfClosed(request, name));
}
BENCHMARK(lostPump)->Args({200, 5})->Args({200, 20})->Unit(benchmark::kMillisecond);

// The same over a pass on every other section, which takes away what lets runs be dropped.
void lostPumpOverHills(benchmark::State& state)
{
    PlanRequest request = wayOf(state);
    request.rates.climb = {Consumption::fromLitresPerKm(1.84), Consumption::fromLitresPerKm(.39)};
    auto& points = request.route.points;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Distance climb = Distance::fromMetres((i % 2 == 0 ? 40 : -10) * double(state.range(1)) / 5);
        points[i].climb = {climb, -1 * climb};
    }
    const std::string name = points[plan(request)->stops.front().point].name;
    for (auto _ : state)
        benchmark::DoNotOptimize(whatIfClosed(request, name));
}
BENCHMARK(lostPumpOverHills)->Args({200, 5})->Args({200, 20})->Unit(benchmark::kMillisecond);

void repeatedStage(benchmark::State& state)
{
    const PlanRequest request = wayOf(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(whatIfRepeated(request, "100"));
}
BENCHMARK(repeatedStage)->Args({200, 5})->Args({200, 20})->Unit(benchmark::kMillisecond);

void plannedOn(benchmark::State& state)
{
    const PlanRequest request = wayOf(state);
    const auto whole = plan(request);
    for (auto _ : state)
        benchmark::DoNotOptimize(plan(*leftOfPlan(request, *whole, request.route.points[100].at)));
}
BENCHMARK(plannedOn)->Args({200, 5})->Args({200, 20})->Unit(benchmark::kMillisecond);

void anyOneClosed(benchmark::State& state)
{
    const PlanRequest request = wayOf(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(planForAnyClosure(request));
}
BENCHMARK(anyOneClosed)->Args({40, 20})->Args({200, 20})->Unit(benchmark::kMillisecond);

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

// The risk of the whole way, .03; `gap` in parts of the objective, 0 where the plan is
// proven the best.
void tripConfidenceOf(benchmark::State& state, PlanRequest request, Aim aim)
{
    request.confidence = Probability::of(0.9);
    request.tripConfidence = Probability::of(0.97);
    request.aim = aim;
    double gap = 0.0;
    for (auto _ : state) {
        const auto best = plan(request);
        gap = best->tripGap / (aim == Aim::weight ? best->litreKm : best->cost);
    }
    state.counters["gap"] = gap;
}

PlanRequest tripOf(const benchmark::State& state)
{
    return test::withRisk(
        test::longRoute(static_cast<int>(state.range(0)), 3, static_cast<double>(state.range(1))));
}

void tripConfidence(benchmark::State& state)
{
    tripConfidenceOf(state, tripOf(state), Aim::cost);
}
BENCHMARK(tripConfidence)
    ->Args({10, 40})
    ->Args({40, 40})
    ->Args({40, 80})
    ->Args({100, 40})
    ->Args({200, 20})
    ->Args({2000, 40})
    ->Args({2000, 5})
    ->Unit(benchmark::kMillisecond);

// Stopped at once: the first plan that keeps it, with its gap.
void tripConfidenceFirst(benchmark::State& state)
{
    PlanRequest request = tripOf(state);
    request.confidence = Probability::of(0.9);
    request.tripConfidence = Probability::of(0.97);
    double gap = 0.0;
    for (auto _ : state) {
        const auto first = plan(request, [](std::optional<double>) { return false; });
        gap = first->tripGap / first->cost;
    }
    state.counters["gap"] = gap;
}
BENCHMARK(tripConfidenceFirst)
    ->Args({40, 40})
    ->Args({200, 20})
    ->Args({2000, 40})
    ->Args({2000, 5})
    ->Unit(benchmark::kMillisecond);

void tripConfidenceLightest(benchmark::State& state)
{
    tripConfidenceOf(state, tripOf(state), Aim::weight);
}
BENCHMARK(tripConfidenceLightest)
    ->Args({10, 40})
    ->Args({25, 40})
    ->Args({40, 40})
    ->Unit(benchmark::kMillisecond);

// The sections take turns in so many modes, whose rates are uncertain together.
void tripConfidenceLightestByModes(benchmark::State& state)
{
    PlanRequest request = tripOf(state);
    const auto modes = static_cast<std::size_t>(state.range(2));
    const double rate[] = {9, 7, 8, 35}; // L/100 km
    const double sd[] = {0.5, 0.3, 0.4, 2.5};
    request.rates.modes.clear();
    request.rates.mean.clear();
    request.rates.covariance.clear();
    for (std::size_t i = 0; i < modes; ++i) {
        request.rates.modes.push_back(std::to_string(i));
        request.rates.mean.push_back(Consumption::fromLitresPer100Km(rate[i]));
        for (std::size_t j = 0; j < modes; ++j)
            request.rates.covariance.push_back(sd[i] * sd[j] * 1e-4 * (i == j ? 1.0 : 0.5));
    }
    for (std::size_t i = 0; i < request.route.points.size(); ++i)
        request.route.points[i].mode = std::to_string(i % modes);
    request.tank.capacity = Volume::fromLitres(70);
    request.tank.start.mean = Volume::fromLitres(30);
    tripConfidenceOf(state, std::move(request), Aim::weight);
}
BENCHMARK(tripConfidenceLightestByModes)
    ->Args({10, 40, 2})
    ->Args({25, 40, 2})
    ->Args({40, 40, 2})
    ->Args({10, 40, 3})
    ->Args({25, 40, 3})
    ->Args({40, 40, 3})
    ->Args({10, 40, 4})
    ->Unit(benchmark::kMillisecond);

// Least squares of log time over log n.
double exponent(const std::vector<std::pair<int, double>>& times)
{
    double sx = 0, sy = 0, sxx = 0, sxy = 0;
    for (const auto& [n, ms] : times) {
        const double x = std::log(n);
        const double y = std::log(ms);
        sx += x, sy += y, sxx += x * x, sxy += x * y;
    }
    const auto count = static_cast<double>(times.size());
    return (count * sxy - sx * sy) / (count * sxx - sx * sx);
}

// Best of a few runs, in milliseconds of processor time: other programs on the
// machine do not count.
double quickest(const PlanRequest& request, int runs)
{
    double best = 1e300;
    for (int i = 0; i < runs; ++i) {
        const std::clock_t start = std::clock();
        benchmark::DoNotOptimize(plan(request));
        best = std::min(best, 1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    return best;
}

// How plan() grows with price alone.
void printGrowth(const char* words)
{
    std::vector<std::pair<int, double>> times;
    std::printf("price only, %s\n%10s %10s %10s\n", words, "points", "ms", "ns/point");
    for (const int n : {1'000, 10'000, 100'000, 200'000, 1'000'000}) {
        const double ms = quickest(test::longRoute(n, 1), n < 50'000 ? 40 : 5);
        times.emplace_back(n, ms);
        std::printf("%10d %10.3f %10.1f\n", n, ms, ms * 1e6 / n);
    }
    std::printf("fitted growth exponent: %.3f\n\n", exponent(times));
}

} // namespace

// The C library gives blocks above 32 MiB back to the system, which then has to
// map and clear them again for the next plan: that alone costs more than the
// plan. Both ways are printed; the benchmarks keep their memory.
int main(int argc, char** argv)
{
    benchmark::Initialize(&argc, argv);
    printGrowth("memory mapped anew by the system for every plan of a million points");
    mallopt(M_MMAP_THRESHOLD, 1 << 30);
    mallopt(M_TRIM_THRESHOLD, INT_MAX);
    printGrowth("memory kept by the process");
    benchmark::RunSpecifiedBenchmarks();
}
