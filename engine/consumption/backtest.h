// SPDX-License-Identifier: GPL-3.0-or-later
//
// Walks forward over a log and forecasts each tank's distance before it is
// learnt from: the proof, on the user's own data, of what the range is worth.
//
// What a forecast may know is what is known at the pump before the odometer is
// read: the litres that went in and the date, and all tanks before. The date
// gives the season and how many days the litres lasted. With
// `pace = false` the days are withheld, and only litres and season are used.
#pragma once

#include "engine/consumption/screening.h"

#include <span>
#include <vector>

namespace undermark {

inline constexpr std::size_t kWarmUpTanks = 10;   // forecasts begin with the eleventh

struct TankForecast {
    std::size_t tank = 0;        // position in the intervals given
    DistanceForecast forecast;
    Distance actual;
    bool flagged = false;        // decided after the forecast
};

// Of all forecasts, flagged ones too. Means where not said otherwise.
struct BandScores {
    std::size_t count = 0;
    std::array<double, 3> coverage{};        // share of outcomes within the band, per kBandLevels
    std::array<Distance, 3> width{};
    std::array<Distance, 3> intervalScore{};
};

// Shares of tanks that went at least as far as was promised with 99, 90 and 10 %.
struct Kept {
    double p99 = 0;
    double p90 = 0;
    double p10 = 0;
};

// Mean of |forecast - actual| / actual of simple forecasters on the same tanks:
// litres over the rate of the last tank, the mean rate of the last 5 and 10, and
// the exponentially weighted mean rate (0.3 for the newest).
struct BaselineErrors {
    double last = 0;
    double mean5 = 0;
    double mean10 = 0;
    double ewma = 0;
};

struct Backtest {
    std::size_t tanks = 0;                   // in the log
    std::vector<TankForecast> forecasts;
    double meanError = 0;                    // of |forecast - actual| / actual
    BaselineErrors baseline;
    double overPromised = 0;                 // share promised more than 10 % too far
    Kept kept;
    BandScores oneTank;
    BandScores threeTanks;                   // this tank and the next two as one stretch
    BandScores shortStretch;                 // tanks of at most a fifth of the usual litres
    std::vector<FillFlag> flags;             // `fill` is the position in the intervals
};

// O(tanks * modes^3). `tanks` in order of time.
Backtest backtest(std::span<const Interval> tanks, ConsumptionModel model, bool pace = true);

} // namespace undermark
