// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a campaign counts, and how it is printed: rates with exact bounds.
#pragma once

#include "engine/tracking/tracker_types.h"
#include "tests/support/simulated_tank.h"

#include <algorithm>
#include <array>
#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <cstdio>
#include <map>
#include <vector>

namespace undermark::test {

inline constexpr std::array kFaults{SimulatedFault::stuck, SimulatedFault::open,
                             SimulatedFault::shortCircuit, SimulatedFault::offsetJump,
                             SimulatedFault::dropout, SimulatedFault::intermittent};
inline constexpr std::array kFaultNames{"stuck", "open", "short", "offset jump", "dropout", "intermittent"};

struct Delay {
    int raised = 0, found = 0, dry = 0;
    double carried = 0.0, quarter = 0.0;
    std::vector<double> litres;         // burnt between onset and the alarm, per 50 L of tank
};

// How far the level shown lay from the truth, in its own sd.
struct Spread {
    int highBy2 = 0, highBy3 = 0, lowBy2 = 0, blocks = 0;

    void add(double z)
    {
        ++blocks;
        highBy2 += z > 2.0;
        highBy3 += z > 3.0;
        lowBy2 += z < -2.0;
    }
    void print(const char* when) const
    {
        std::printf("%-28s too high by 2 sd %.4f, by 3 sd %.4f; too low by 2 sd %.4f of %d blocks\n",
                    when, double(highBy2) / blocks, double(highBy3) / blocks, double(lowBy2) / blocks,
                    blocks);
    }
};

struct Totals {
    int tanks = 0, noCurve = 0, dry = 0, dryUnwarned = 0;
    double km = 0.0, carried = 0.0, quarter = 0.0, nis = 0.0, soundKm = 0.0;
    int nisTanks = 0, falseAlarms = 0, fills = 0, fillsFound = 0, falseRefuels = 0;
    Spread sound;                       // while the level is read
    std::array<Spread, 4> blind;        // by consumption only, by source
    std::map<FaultCode, int> falseCodes;
    std::array<Delay, kFaults.size()> delays;
    std::array<double, 4> carriedBy{}, quarterBy{};   // by source
};

inline void printRate(const char* what, int count, int of)
{
    using Binomial = boost::math::binomial_distribution<>;
    const double low = count ? Binomial::find_lower_bound_on_p(of, count, 0.025) : 0.0;
    const double high = count == of ? 1.0 : Binomial::find_upper_bound_on_p(of, count, 0.025);
    std::printf("%-46s %6d of %-6d %.5f (95 %%: %.5f to %.5f)\n", what, count, of,
                of ? double(count) / of : 0.0, low, high);
}

// Exact bound of a Poisson mean (Garwood 1936, by chi-squared).
inline double poissonBound(int count, double probability)
{
    if (count == 0 && probability < 0.5)
        return 0.0;
    const double freedom = 2.0 * (probability < 0.5 ? count : count + 1);
    return 0.5 * quantile(boost::math::chi_squared(freedom), probability);
}

inline void report(Totals& t)
{
    const int driven = t.tanks - t.noCurve;
    std::printf("%d tanks, %d without a curve, %.0f km\n", t.tanks, t.noCurve, t.km);
    printRate("ran dry", t.dry, driven);
    printRate("ran dry without any fault told", t.dryUnwarned, driven);
    std::printf("false alarms %d, per 1,000 km with a sound sender %.4f (95 %%: %.4f to "
                "%.4f):", t.falseAlarms, 1000.0 * t.falseAlarms / t.soundKm,
                1000.0 * poissonBound(t.falseAlarms, 0.025) / t.soundKm,
                1000.0 * poissonBound(t.falseAlarms, 0.975) / t.soundKm);
    for (const auto& [code, count] : t.falseCodes)
        std::printf(" %s %d", faultWord(code), count);
    std::printf("\ncarried into each fill: %.3f of the quarter rule's\n", t.carried / t.quarter);
    printRate("fills found by level (sound sender, 5 to 25 L)", t.fillsFound, std::max(1, t.fills));
    std::printf("carried with speed %.2f, distance %.2f, fuel rate %.2f, level alone %.2f\n",
                t.carriedBy[0] / t.quarterBy[0], t.carriedBy[1] / t.quarterBy[1],
                t.carriedBy[2] / t.quarterBy[2], t.carriedBy[3] / t.quarterBy[3]);
    std::printf("refuels that were none: %d\n", t.falseRefuels);
    std::printf("NIS, mean over sound tanks: %.3f\n", t.nis / std::max(1, t.nisTanks));
    t.sound.print("shown, sound sender:");
    constexpr std::array kSources{"by speed only:", "by distance only:", "by fuel rate only:",
                                  "by the clock only:"};
    for (std::size_t i = 0; i < kSources.size(); ++i)
        t.blind[i].print(kSources[i]);
    for (std::size_t i = 0; i < kFaults.size(); ++i) {
        Delay& delay = t.delays[i];
        std::sort(delay.litres.begin(), delay.litres.end());
        const auto part = [&](double share) {
            return delay.litres.empty() ? 0.0
                                        : delay.litres[std::size_t(share * double(delay.litres.size() - 1))];
        };
        std::printf("%-13s found %4d of %4d, dry %d, carried %.2f; litres until found (50 L tank) "
                    "median %.2f, 95 %% %.2f\n",
                    kFaultNames[i], delay.found, delay.raised, delay.dry,
                    delay.quarter > 0.0 ? delay.carried / delay.quarter : 0.0, part(0.5), part(0.95));
    }
}

} // namespace undermark::test
