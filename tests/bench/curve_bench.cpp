// SPDX-License-Identifier: GPL-3.0-or-later
//
// A reading of the level curve against boost's pchip on the same knots. The
// ratio of the two lines is what counts: LevelCurve::read also gives the spread
// and looks for the float's stops.
#include "engine/calibration/level_curve.h"

#include <math.h>   // before pchip.hpp of Boost 1.74, which calls unqualified isnan

#include <boost/math/interpolators/pchip.hpp>

#include <benchmark/benchmark.h>

#include <random>

using namespace undermark;

namespace {

// Sender-like, falling: ohm and litres.
const std::vector<double> kOhms{33, 60, 95, 130, 165, 200, 225, 240};
const std::vector<double> kLitres{60, 52, 41, 30.5, 21, 12, 7, 5};

std::vector<double> readings()
{
    std::mt19937_64 random(1);
    std::uniform_real_distribution<double> ohms(34, 239);
    std::vector<double> values(4096);
    for (double& value : values)
        value = ohms(random);
    return values;
}

void boostPchip(benchmark::State& state)
{
    std::vector<double> ohms = kOhms, litres = kLitres;
    boost::math::interpolators::pchip<std::vector<double>> curve(std::move(ohms), std::move(litres));
    const std::vector<double> at = readings();
    std::size_t i = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(curve(at[i++ & 4095]));
}
BENCHMARK(boostPchip);

void levelCurve(benchmark::State& state)
{
    std::vector<CurveKnot> knots;
    for (std::size_t i = kOhms.size(); i-- > 0;)
        knots.push_back({Signal::of(kOhms[i]), Volume::fromLitres(kLitres[i]), {}, Volume::fromLitres(0.1)});
    const LevelCurve curve = *LevelCurve::fromKnots(knots);
    const std::vector<double> at = readings();
    std::size_t i = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(curve.read(Signal::of(at[i++ & 4095])));
}
BENCHMARK(levelCurve);

} // namespace

BENCHMARK_MAIN();
